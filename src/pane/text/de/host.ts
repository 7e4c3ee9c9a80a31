/** Die Wörter der Seite von `npm start`. */
import type { HostWords } from "../host";

export const host: HostWords = {
  open: ".xlsx öffnen",
  save: ".xlsx speichern",
  saveValues: "Nur Werte speichern",
  chooseFile: "Zu öffnende Arbeitsmappe",
  decimalMark: "Dezimalzeichen",
  point: "Punkt: 0.5",
  comma: "Komma: 0,5",
  stop: "Anhalten",
  help: "Hilfe",
  licences: "Bestandteile und Lizenzen",
  divider: "Breite des Aufgabenbereichs",
  pane: "Aufgabenbereich von Clayledger",
  yes: "Ja",
  no: "Nein",
  refused: "Eingaben, die nicht übernommen wurden",
  dismiss: "Ausblenden",
  dismissThis: (sentence) => `Ausblenden: ${sentence}`,
  moreRefused: (count) =>
    count === 1 ? "1 ältere Eingabe wurde nicht übernommen." : `${count} ältere Eingaben wurden nicht übernommen.`,
  close: "Schließen",
  licencesAbout:
    "Die Tabellenkalkulation dieser Seite ist das Werk anderer. Ihre Dateien werden so ausgeliefert, wie sie veröffentlicht wurden, neben unserem eigenen Code im Ordner „vendor“: Dort lassen sie sich durch andere Fassungen mit derselben Schnittstelle ersetzen.",
  licence: "Lizenz",
  sheetSource: "Quelltext auf github.com/odoo/o-spreadsheet",
  owlSource: "Quelltext auf github.com/odoo/owl",
  orLater: "GNU LGPL 3.0 oder neuer",
  chart: "Diagramme des Blatts, MIT",
  adapter: "mit seinem Adapter",
  luxon: "und Luxon",
  dates: "für Daten",
  bootstrap: "Formatvorlage, MIT",
  icons: "Symbole, Schrift unter SIL OFL 1.1, Formatvorlage unter MIT",
  ownLicence:
    "Clayledger selbst steht unter der MIT-Lizenz. Alles, was in seine eigenen Dateien gebündelt ist, und alles oben Genannte steht nach Paketen mit Lizenz und Hinweisen in",
  failedInside: (cause) =>
    `Etwas ist fehlgeschlagen, was nicht fehlschlagen sollte (${cause}). Die Arbeitsmappe ist unverändert; bitte melden, wenn es bleibt.`,
  notStarted: (cause) =>
    `Die Seite konnte nicht starten: ${cause}. Neu laden; wenn das nicht hilft, den Build noch einmal laufen lassen.`,
  isOpen: (name) => `${name} ist geöffnet.`,
  opening: (name) => `${name} wird geöffnet`,
  saving: (name) => `${name} wird gespeichert`,
  redoing: "Der Schritt wird wiederholt",
  saved: (name) => `${name} liegt jetzt bei den Downloads des Browsers.`,
  valuesSheet: "Nur Werte",
  valuesFile: (name) => `${name} Werte.xlsx`,
  valuesNotice: (fileName, when) =>
    `Diese Datei ist eine Kopie mit Werten.\nJede Formel von ${fileName} wurde durch den Wert ersetzt, den sie am ${when} zeigte.\nNichts folgt hier einer Änderung: die Arbeitsmappe selbst ändern und eine neue Kopie speichern.`,
  savedValues: (name) => `${name} ist gespeichert: Werte statt Formeln.`,
  stopped: "Angehalten: Keine Datei wurde erstellt und keine geöffnet.",
  redoStopped:
    "Angehalten: Die Arbeitsmappe ist unverändert. Wiederholen holt den Schritt, sobald es wieder verlangt wird.",
  unsaved: (name, next) =>
    `${name} hat Änderungen, die nicht gespeichert sind. ${next} trotzdem öffnen und sie verlieren?`,
  openCopy: "Kopie öffnen",
  forgetCopy: "Vergessen",
  copyKept: (name, when) =>
    `${name} wurde mit Änderungen geschlossen, die nicht gespeichert waren. Dieser Browser hat eine Kopie vom ${when}.`,
  copyOpen: (name) => `Die Kopie von ${name} ist geöffnet. Sie steht noch in keiner Datei: bitte speichern.`,
  copyForgotten: (name) => `Die Kopie von ${name} ist vergessen.`,
  copyGone: (name) =>
    `Die Kopie von ${name} ist nicht mehr da: Sie wurde in einem anderen Fenster geöffnet oder vergessen.`,
  noCopy: (cause) =>
    `Dieser Browser behält keine Kopie von Änderungen, die nicht gespeichert sind (${cause}): bitte oft speichern.`,
  notOpened: (name) => `${name} wurde nicht geöffnet.`,
};
