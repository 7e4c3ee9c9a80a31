export const report = {
  heading: "Bericht",
  purpose:
    "Legt ein neues Blatt mit allem an, was ein Leser braucht: Ergebnisse, Laststufen, Diagramme, Messunsicherheit, Bemerkungen, von Hand gewählte Punkte, nicht bestandene Prüfungen, Hinweise. Seine Zahlen folgen dem Datenblatt. Ein älterer Bericht wird nie überschrieben.",
  looking: "Das Datenblatt wird gelesen…",
  none: "In dieser Arbeitsmappe ist kein Datenblatt. In der Ansicht „Datenblatt“ eines einfügen, oder dort den Zellen eines eigenen Blatts Namen geben.",
  lacks: (count: number) => (count === 1 ? "1 Pflichtangabe fehlt" : `${count} Pflichtangaben fehlen`),
  lacksHint: "Der Bericht kann trotzdem angelegt werden: er führt auf, was fehlt, mit der Zelle.",
  whole: "Keine Pflichtangabe fehlt.",
  others: (count: number) =>
    count === 1
      ? "1 Angabe, die nur verlangt ist, wo gemessen wurde"
      : `${count} Angaben, die nur verlangt sind, wo gemessen wurde`,
  item: (item: number, sentence: string) => `${sentence}. (Punkt ${item})`,
  open: (count: number) =>
    count === 0
      ? "Alle Prüfungen, die gestellt werden konnten, sind bestanden."
      : count === 1
        ? "1 Prüfung ist nicht bestanden: sie steht im Bericht."
        : `${count} Prüfungen sind nicht bestanden: sie stehen im Bericht.`,
  paper: "Papier",
  language: "Sprache des Berichts",
  languageHint: "Der Bericht behält sie; der nächste Bericht zu diesem Blatt beginnt mit ihr.",
  curve: "Druck-Setzungs-Kurve in",
  curveHint: "Auf der ersten Seite. Die andere steht bei den Diagrammen.",
  curves: { e: "Porenzahl", strain: "Stauchung" },
  preparedBy: "Angelegt von",
  preparedByHint: "Name oder Kürzel dessen, der den Bericht anlegt.",
  make: (test: string) => `Bericht zu „${test}“ anlegen`,
  making: "Der Bericht wird angelegt…",
  made: (test: string, sheet: string) =>
    `Der Bericht zu „${test}“ steht auf dem neuen Blatt „${sheet}“, das jetzt vorn ist.`,
  carried: (sheet: string) => `Auf „${sheet}“ geänderte Fehlergrenzen wurden übernommen.`,
  reports: "Berichte zu diesem Blatt",
  show: (sheet: string) => `„${sheet}“ zeigen`,
  issues: "Ausgaben",
  issuesHint:
    "Eine Ausgabe ist ein Bericht mit allen Werten des Datenblatts, wie sie jetzt sind, neben den lebenden Zahlen, mit Tag, Kürzel und SHA-256 der Ablesungen. Ihre Werte ändern sich nie.",
  lockedBy: "Festgeschrieben von",
  needsInitials: "Kürzel eingeben: Eine Ausgabe sagt, wer sie festgeschrieben hat.",
  lock: (number: number, test: string) => `Ausgabe ${number} von „${test}“ machen und festschreiben`,
  issue: (number: number, report: string, day: string, by: string) =>
    `Ausgabe ${number} auf „${report}“, festgeschrieben am ${day} von ${by}`,
  compare: (number: number, report: string) => `Mit Ausgabe ${number} vergleichen („${report}“)`,
  tampered: (number: number, report: string) =>
    `Ausgabe ${number} auf „${report}“ wurde nach dem Festschreiben geändert: Ihre Werte, ihr Tag oder ihr Kürzel haben nicht mehr den mit ihnen festgeschriebenen SHA-256. Die Ausgabe aus einer Datei oder einem Druck ihres Tages nehmen.`,
  withoutHash: (number: number) =>
    `Ausgabe ${number} wurde von einer älteren Version ohne SHA-256 ihrer Werte festgeschrieben: Ob sie seither geändert wurden, lässt sich nicht sagen.`,
  unchanged: (number: number) => `Alle Werte sind wie in Ausgabe ${number}.`,
  changes: (count: number, number: number) =>
    count === 1 ? `1 Wert ist nicht wie in Ausgabe ${number}.` : `${count} Werte sind nicht wie in Ausgabe ${number}.`,
  changesList: "Was sich geändert hat",
  change: (what: string, cell: string, from: string, to: string) => `${what}, ${cell}: von ${from} auf ${to}`,
  rowOf: (label: string, row: number) => `${label}, Zeile ${row}`,
  blank: "leer",
  noIssue: (report: string) => `„${report}“ hat keine festgeschriebenen Werte: Seine Namen wurden gelöscht.`,
  readingsChanged: "Ablesungen wurden geändert, nachdem ein Bericht festgeschrieben war.",
  readingsChangedSince: (number: number, report: string, day: string) =>
    `Sie sind nicht die von Ausgabe ${number} („${report}“, ${day}): damit vergleichen (Bericht).`,
  again: "Noch einmal lesen",
};
