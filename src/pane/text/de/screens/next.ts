const several = (count: number, one: string, many: string): string => (count === 1 ? one : `${count} ${many}`);

export const next = {
  heading: "Wie weiter",
  again: "Noch einmal lesen",
  emptyTitle: "In dieser Arbeitsmappe ist kein Datenblatt",
  empty: "Ein leeres, das Beispiel oder das Blatt des eigenen Büros einfügen. Was dann zu tun ist, steht hier.",
  reading: "Das Datenblatt wird gelesen…",
  openSheet: "Zum Datenblatt",
  stagesLabel: "Wie weit der Versuch ist",
  stages: {
    received: "Eingegangen",
    sized: "Vermessen",
    loaded: "Belastet",
    reduced: "Ausgewertet",
    reviewed: "Durchgesehen",
    checked: "Geprüft",
    reported: "Berichtet",
  },
  notBegun: {
    received: "Projekt, Bohrung, Probe und Boden: Noch ist nichts eingetragen.",
    sized: "Ring, Maße und Massen: Noch ist nichts eingetragen.",
    loaded: "Noch hat keine Laststufe eine Spannung oder eine Ablesung.",
    reduced: "Die Ergebnisse folgen aus Maßen, Massen und Ablesungen.",
    reviewed: "Beginnt, wenn jede Laststufe ihre Ablesungen hat.",
    checked: "Beginnt, wenn die Ergebnisse stehen.",
    reported: "Beginnt, wenn die Fragen beantwortet sind.",
  },
  states: { done: "erledigt", "not begun": "nicht begonnen" },
  open: (count: number) => `${count} zu tun`,
  goToCell: (cell: string) => `Zur Zelle ${cell}`,
  screens: {
    readings: "Ablesungen öffnen",
    results: "Ergebnisse öffnen",
    review: "Durchsicht öffnen",
    checks: "Prüfungen öffnen",
    report: "Bericht öffnen",
  },
  toCell: (label: string, address: string) => `${label}, ${address}: zur Zelle`,
  noCell: (label: string) => `${label} (keine Zelle dieses Namens auf dem Blatt)`,
  oneOf: (labels: readonly string[]) => labels.join(" oder "),
  ofLoads: (label: string, loads: readonly number[]) =>
    `${label}, ${loads.length === 1 ? "Laststufe" : "Laststufen"} ${loads.join(", ")}`,
  more: (count: number) => `und ${count} weitere`,
  showWhat: (count: number) => (count === 1 ? "Zeigen" : `Alle ${count} zeigen`),
  noLoads: "Die Spannung der ersten Laststufe",
  noReadings: (load: number) => `Ablesungen der Laststufe ${load}`,
  follow: (count: number) =>
    count === 1 ? "1 Ergebnis folgt, wenn dies getan ist." : `${count} Ergebnisse folgen, wenn dies getan ist.`,
  noConstruction: (load: number, method: string, reason: string) => `Laststufe ${load}, ${method}: ${reason}`,
  methods: { "log time": "log t", "root time": "Wurzel t" },
  unsignedPick: (row: number, load: string) => `Festlegung in Zeile ${row}${load}: Begründung oder Kürzel fehlt`,
  ofCurve: ", die Druck-Setzungs-Kurve",
  ofLoad: (load: number) => `, Laststufe ${load}`,
  formulasChanged: (count: number, first: string) =>
    `${count} Formeln wurden überschrieben, gingen verloren oder wurden geändert, oder ihre Werte folgen nicht (Prüfungen führt sie auf). Die erste: ${first}`,
  readingsChanged: (number: number, report: string, day: string) =>
    `Ablesungen wurden seit Ausgabe ${number} („${report}“, ${day}) geändert: damit vergleichen, dann neu prüfen und ausgeben`,
  noReport: "In der Arbeitsmappe ist noch kein Bericht über diesen Versuch.",
  toLook: "In der Durchsicht anzusehen",
  allDone: "Es ist nichts mehr zu tun.",
  partsHeading: "Teile des Blatts",
  partsCount: (missing: number, asked: number) =>
    missing === 0
      ? `Alle ${asked} Angaben, die ein Bericht verlangt, sind da (Frage Q63).`
      : `${missing} von ${asked} Angaben, die ein Bericht verlangt, fehlen (Frage Q63).`,
  partMissing: (count: number) => `${count} ${count === 1 ? "fehlt" : "fehlen"}`,
  toPart: (title: string, missing: number) =>
    missing === 0
      ? `${title}: hingehen`
      : `${title}: zur ersten von ${several(missing, "einer fehlenden Zelle", "fehlenden Zellen")}`,
};
