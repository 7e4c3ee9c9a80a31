export const summary = {
  heading: "Übersicht des Projekts",
  purpose:
    "Eine Zeile für jedes Datenblatt der Arbeitsmappe, auf einem eigenen Blatt, mit Formeln, die den Datenblättern folgen. Werte in anderen Einheiten werden umgerechnet; die Einheit steht in der Überschrift.",
  units: "Einheiten der Übersicht",
  SI: "SI (kPa, m, Mg/m3, m2/a)",
  US: "US (tsf, ft, pcf, ft2/d)",
  insert: "Übersicht einfügen",
  insertHint: "Legt ein neues Blatt an. Kein anderes Blatt wird verändert.",
  update: (sheet: string) => `„${sheet}“ aktualisieren`,
  updateHint:
    "Fügt Zeilen für neue Datenblätter hinzu und zählt offene Prüffragen neu. Eigene Zeilen, Spalten und Zellen bleiben.",
  charts: "Diagramme einfügen",
  chartsHint:
    "Spannungen über der Tiefe; Druck-Setzungs-Kurven in Porenzahl, Stauchung, e/e0 und Porenindex, und cv, übereinander; Cc über w0 und Fließgrenze, auf einem neuen Blatt.",
  files: "Probekörper aus Dateien hinzufügen…",
  filesHint:
    "Jede .xlsx wird über ihre Namen gelesen und nicht eingefügt. Ihre Werte kommen als feste Zahlen hinein, mit Datei, Tag und SHA-256 der Datei.",
  reading: "Die Datenblätter werden gelesen…",
  readingFiles: "Die Dateien werden gelesen…",
  writing: "Die Übersicht wird geschrieben…",
  stop: "Anhalten",
  stopped: "Angehalten. Nichts wurde geschrieben.",
  none: "In dieser Arbeitsmappe gibt es noch keine Übersicht: Zuerst eine einfügen.",
  noSheets: "In dieser Arbeitsmappe gibt es kein Datenblatt: Zuerst eines einfügen (Datenblatt).",
  nothingToDraw: "Keines der Datenblätter hat schon ein Ergebnis, das sich zeichnen lässt.",
  movedMeanwhile: (sheet: string) =>
    `Zeilen von „${sheet}“ wurden inzwischen eingefügt oder gelöscht, oder seine Namen wurden geändert.`,
  changedMeanwhile: (sheet: string) =>
    `„${sheet}“ wurde inzwischen geändert, und keine Diagramme wurden eingefügt: noch einmal einfügen.`,
  inserted: (sheet: string) => `Eingefügt: „${sheet}“.`,
  upToDate: (sheet: string) => `„${sheet}“ ist auf dem Stand.`,
  chartsInserted: (sheet: string) => `Die Diagramme stehen auf „${sheet}“.`,
  undrawn: (sheets: readonly string[]) =>
    `Ohne Kurven, weil Namen von Laststufen oder Einheiten fehlen: ${sheets.map((sheet) => `„${sheet}“`).join(", ")}. Die Namen vergeben (Datenblatt, Blattprüfung) und die Diagramme erneut einfügen.`,
  added: (called: readonly string[]) => `Hinzugefügt: ${called.join("; ")}.`,
  left: (cells: readonly string[]) => `Unverändert, weil dort etwas anderes eingegeben ist: ${cells.join(", ")}.`,
  gone: (rows: readonly number[]) =>
    rows.length === 1
      ? `Zeile ${rows[0]} gehört zu einem Datenblatt, das es nicht mehr gibt. Die Zeile blieb stehen: Bei Bedarf löschen.`
      : `Die Zeilen ${rows.join(", ")} gehören zu Datenblättern, die es nicht mehr gibt. Sie blieben stehen: Bei Bedarf löschen.`,
  changed: (files: readonly string[]) =>
    `Seit dem letzten Lesen verändert und neu gelesen: ${files.join("; ")}. Die Zeilen mit dem vergleichen, was daraus übernommen wurde.`,
  same: (files: readonly string[]) => `Seit dem letzten Lesen unverändert: ${files.join("; ")}.`,
  withoutRoom: (called: readonly string[]) =>
    `Keine freie Zeile für: ${called.join("; ")}. Dafür eine weitere Übersicht einfügen.`,
  unread: (sheets: readonly string[]) =>
    `Nicht gelesen, weil sie keinen der Namen des Datenblatts haben: ${sheets.map((sheet) => `„${sheet}“`).join(", ")}.`,
  twins: (pairs: readonly (readonly [string, string])[]) =>
    `Von demselben Probekörper: ${pairs.map((pair) => [...pair].map((sheet) => `„${sheet}“`).join(" und ")).join("; ")}. Nachsehen, ob eines davon eine Kopie ist.`,
  skipped: (file: string, why: string) => `„${file}“ wurde übergangen. ${why}`,
  noDataSheet: "Die Datei hat kein Datenblatt: Keines ihrer Blätter hat die Namen.",
  noResults: "Die Datei zeigt keine Ergebnisse: In Excel mit dem Add-In öffnen, speichern und neu wählen.",
};
