import type { Catalogue } from "../../catalogue";

export const checks: Catalogue["checks"] = {
  heading: "Prüfung",
  purpose:
    "Fragen, die ein Prüfer an einen Versuch stellt, beantwortet aus dem Datenblatt. Jede zeigt die beiden verglichenen Zahlen. Am Blatt wird nichts geändert.",
  otherLimits: (others: readonly string[], read: string) =>
    `Auch ${others.map((one) => `„${one}“`).join(", ")} führt Grenzwerte und wird nicht gelesen: Gelesen wird „${read}“`,
  emptyTitle: "Kein Datenblatt in dieser Arbeitsmappe",
  empty:
    "In der Ansicht „Datenblatt“ eines einfügen, oder die Zellen des eigenen benennen; dann können die Fragen gestellt werden.",
  reading: "Es wird gefragt…",
  again: "Noch einmal versuchen",
  passed: (passed: number, asked: number, all: number) =>
    `${passed} von ${asked} Fragen sind erfüllt; ${all - asked} von ${all} können diesem Blatt nicht gestellt werden.`,
  cells: "Zellen",
  cellsWhole:
    "Keine Formel wurde überschrieben oder ging verloren, jedes Ergebnis folgt aus den Eingaben, und nichts Benutztes ist ausgeblendet.",
  cellsFound: (count: number) => (count === 1 ? "1 Zelle zu berichtigen" : `${count} Zellen zu berichtigen`),
  show: "Zeigen",
  showCell: (address: string) => `${address} zeigen`,
  filter: "Fragen zeigen",
  filters: {
    open: "die zu beantworten sind",
    all: "alle",
    answered: "die der Prüfer beantwortet hat",
    cannot: "die nicht gestellt werden können",
  },
  find: "Enthält",
  none: "Keine Frage passt dazu.",
  groups: {
    stop: "Halt: berichtigen oder verantworten",
    explain: "Erklären",
    note: "Vermerken",
    pass: "Erfüllt",
    "cannot be asked": "Nicht zu stellen",
  },
  found: "Gefunden",
  against: "Verglichen mit",
  basis: "Grundlage",
  about: "Zellen:",
  answer: "Antwort",
  by: "Kürzel",
  save: "Antwort festhalten",
  needBoth: "Einen Satz und das eigene Kürzel eingeben.",
  kept: (id: string, test: string, sheet: string) =>
    `Die Antwort auf ${id} zu „${test}“ steht auf dem Blatt „${sheet}“.`,
  answered: (by: string, when: string) => `Beantwortet von ${by}, ${when}:`,
  stale: "Die Frage sagt inzwischen etwas anderes: bitte noch einmal ansehen.",
  limits: "Grenzwerte",
  limitsDefault:
    "Alle Grenzwerte sind die vorgegebenen. Eigene stehen auf einem Blatt, jeder mit Namen und Begründung der Änderung.",
  limitsFrom: (sheet: string) => `Es gelten die Grenzwerte des Blattes „${sheet}“.`,
  insertLimits: "Blatt mit Grenzwerten einfügen",
  showLimits: "Blatt mit Grenzwerten zeigen",
  limitsInserted: (sheet: string) => `Das Blatt „${sheet}“ führt alle Grenzwerte auf. Die eigenen dort eintragen.`,
  /** "Q05, explain below" */
  changed: (name: string, from: string, to: string, by: string | undefined, why: string | undefined) =>
    `${name}: ${to} statt ${from}${by ? `, von ${by}` : ""}${why ? `: ${why}` : ""}`,
  ags: {
    heading: "AGS4-Datei",
    purpose:
      "Die Gruppen des Ödometerversuchs als strenge AGS4-Datei, Ausgabe 4.1.1. Sie enthält, was das Blatt zeigt, gerundet nach dem Format.",
    issue: "Nummer der Ausgabe",
    date: "Datum der Datei",
    producer: "Ersteller",
    recipient: "Empfänger",
    status: "Status",
    // In der Datei stehen die englischen Wörter.
    statuses: { Draft: "Draft (Entwurf)", Checked: "Checked (geprüft)", Final: "Final (endgültig)" },
    sampleType: "Art der Probe",
    sampleTypes: {
      B: "große gestörte Probe",
      BLK: "Blockprobe",
      C: "Kernprobe",
      D: "kleine gestörte Probe",
      L: "Linerprobe, gerammt",
      M: "Probe nach Mazier",
      P: "Kolbenprobe",
      TW: "dünnwandig, eingedrückt",
      U: "ungestört, offenes Rohr",
      UT: "dünnwandiges offenes Rohr",
    },
    fromSheet: (word: string) => `wie auf dem Blatt (${word})`,
    notChosen: "wählen",
    make: "Datei herunterladen",
    makeText: "Datei anzeigen",
    handedOver: (name: string) =>
      `${name} wurde erstellt und zum Speichern übergeben. Wurde nichts gespeichert, hier den Text kopieren.`,
    copyInto: (name: string) =>
      `Excel speichert hier keine Datei aus dem Aufgabenbereich. Den Text in einen einfachen Texteditor kopieren und als ${name} speichern.`,
    fileText: "Text der Datei",
    respelt: "Anders geschrieben:",
    leftOut: "Wofür die Datei keinen Platz hat",
    nothingLeftOut: "Die Datei enthält alles, was der Versuch festhält.",
  },
};
