export const report = {
  heading: "Bericht",
  purpose:
    "Legt ein neues Blatt mit allem an, was ein Leser braucht: Ergebnisse, Laststufen, Diagramme, Messunsicherheit, Bemerkungen, von Hand gewählte Punkte, nicht bestandene Prüfungen, Hinweise. Seine Zahlen folgen dem Datenblatt. Ein älterer Bericht wird nie überschrieben.",
  looking: "Das Datenblatt wird gelesen…",
  none: "In dieser Arbeitsmappe ist kein Datenblatt. Fügen Sie auf dem Reiter Datenblatt eines ein, oder geben Sie dort den Zellen eines eigenen Blatts Namen.",
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
  languages: { en: "English", de: "Deutsch" },
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
  again: "Noch einmal lesen",
};
