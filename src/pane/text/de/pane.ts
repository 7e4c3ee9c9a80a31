export const pane = {
  title: "Clayledger",
  language: "Deutsch",
  tabs: {
    label: "Ansichten",
    next: "Wie weiter",
    sheet: "Datenblatt",
    readings: "Ablesungen",
    bench: "Am Gerät",
    plot: "Diagramme",
    review: "Durchsicht",
    results: "Ergebnisse",
    checks: "Prüfungen",
    byHand: "Von Hand",
    report: "Bericht",
    summary: "Übersicht",
    about: "Info",
  },
  whichNumber: (typed: string, decimal: string, thousands: string) =>
    `Ist „${typed}“ ${decimal} oder ${thousands}? In einer dieser Formen eingeben.`,
  unexpected: (what: string) =>
    `Es ist etwas fehlgeschlagen, was nicht fehlschlagen sollte (${what}). Die Arbeitsmappe ist wie zuvor. Bitte noch einmal versuchen; bleibt es dabei, bitte melden.`,
  stopped: "Angehalten. Die Arbeitsmappe ist wie zuvor.",
  noHost:
    "Dieser Bereich arbeitet neben einer Arbeitsmappe: aus Excel öffnen oder die Seite starten, die zum Add-In gehört.",
  onRequest: {
    title: "Berechnung auf Anforderung",
    may: "Excel berechnet diese Arbeitsmappe nur auf Anforderung (manuelle Berechnung). Was hier vom Blatt gezeigt wird, kann nach einer Änderung veraltet sein.",
    calculate: "Jetzt berechnen",
  },
  unknown: {
    title: "Unbekannte Funktionen oder Namen",
    what: "Formeln dieses Versuchs enthalten eine Funktion oder einen Namen, den das Programm nicht kennt; ihre Zellen zeigen einen Fehler (in Excel #NAME?). In der Ansicht „Datenblatt“ auf „Formeln neu eingeben“ drücken. Bleibt der Fehler, prüfen, ob das Add-In geladen ist, und dort fehlende Namen vergeben.",
  },
  daysFrom1904: {
    title: "Tage zählen ab 1904",
    off: "Diese Arbeitsmappe zählt ihre Tage ab 1904, dieser Bereich ab 1900: Jedes Datum, das der Bereich liest oder schreibt, ist auf dem Blatt um vier Jahre und einen Tag verschoben. Eine Arbeitsmappe nehmen, die ab 1900 zählt, oder die Option ausschalten, bevor Daten eingetragen werden (Datei, Optionen, Erweitert, 1904-Datumswerte verwenden).",
  },
  unfinished: {
    title: "Nicht fertig",
    begun: (work: string, since: string) =>
      `${work}: begonnen am ${since} und nicht beendet. Der Bereich wurde geschlossen oder neu geladen, oder ein anderes Fenster arbeitet noch daran.`,
    work: {
      sheet: (sheet: string) => `Blatt „${sheet}“ anlegen`,
      cells: (sheet: string) => `Zellen des Blatts „${sheet}“ schreiben`,
      protection: (sheet: string) => `In das geschützte Blatt „${sheet}“ schreiben`,
      readings: (sheet: string) => `Ablesungen in „${sheet}“ einlesen`,
      "readings again": (sheet: string) => `Neue Ablesungen einer Datei in „${sheet}“ schreiben`,
      summary: (sheet: string) => `Zeilen von „${sheet}“ schreiben`,
      layout: (sheet: string) => `Ergebnisse auf „${sheet}“ anordnen`,
    },
    remedy: {
      sheet: "Das Blatt ist unvollständig: löschen und neu anlegen.",
      cells: "Einige Zellen können den neuen Inhalt haben und andere den alten: vergleichen und noch einmal schreiben.",
      protection:
        "Der Blattschutz ist aufgehoben: ansehen, was zuletzt geschrieben wurde, und das Blatt wieder schützen (Datenblatt, Blattprüfung).",
      readings:
        "Das Datenblatt wird zuletzt geschrieben, in einem Schritt: Fehlen ihm die Ablesungen, die Datei noch einmal einlesen. Ein Blatt mit Zeilen der Datei, auf dem „nicht fertig“ („not finished“) steht, kann gelöscht werden.",
      "readings again": "Die Datei noch einmal lesen: Was schon auf dem Blatt steht, kommt nicht doppelt.",
      summary: "Zeilen können fehlen oder alt sein: die Übersicht auf den neuesten Stand bringen.",
      layout:
        "Zellen können Namen haben und noch keine Beschriftungen und Formeln: die fehlenden Formeln schreiben (Datenblatt, Blattprüfung) und die Beschriftungen eintippen.",
    },
    leftBehind: (sheet: string) => `Das neue Blatt „${sheet}“ ist unvollständig: löschen und neu anlegen.`,
    done: "Erledigt",
  },
  test: {
    group: "Aktueller Versuch",
    label: "Versuch",
    none: "Noch kein Datenblatt",
    now: (sheet: string) => `Aktueller Versuch: ${sheet}`,
    pin: "Anheften",
    pinLong: "Diesen Versuch anheften",
    pinHint: "Bleibt bei diesem Versuch, welches Blatt auch vorn ist.",
    pinned: (front: string) => `Angeheftet, während „${front}“ vorn ist.`,
    noTest: (front: string) => `„${front}“ ist vorn und kein Datenblatt: Dieser Versuch bleibt.`,
  },
};
