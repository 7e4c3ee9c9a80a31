export const register = {
  heading: "Geräteverzeichnis",
  purpose:
    "Ringe, Rahmen, Messuhren und Waagen mit ihren Maßen und den Tagen ihrer Kalibrierung, auf einem Blatt dieser Arbeitsmappe.",
  open: "Ins Verzeichnis sehen",
  mode: "Werte des Verzeichnisses stehen auf diesem Blatt",
  modes: { frozen: "fest, mit dem Tag", live: "als lebende Formeln" },
  modeHints: {
    frozen: "Sie bleiben, wie sie heute sind, was immer das Verzeichnis später sagt.",
    live: "Sie folgen dem Verzeichnis. Wo es die Nummer nicht hat, bleibt der Wert von heute, und das Blatt sagt es.",
  },
  takenLive: (sheet: string, count: number) =>
    count === 1 ? `Eine Formel ist auf „${sheet}“ geschrieben.` : `${count} Formeln sind auf „${sheet}“ geschrieben.`,
  none: "Diese Arbeitsmappe hat noch kein Geräteverzeichnis.",
  insert: "Geräteverzeichnis einfügen",
  inserted: (sheet: string) => `„${sheet}“ ist eingefügt: Tragen Sie dort die Geräte ein, jedes in eine Zeile.`,
  noUnit: (sheet: string) => `„${sheet}“ nennt keine Längeneinheit: Wählen Sie über der Tabelle eine aus.`,
  several: (used: string) => `Die Arbeitsmappe hat mehrere Geräteverzeichnisse: „${used}“ wird verwendet.`,
  kinds: { ring: "Ring", frame: "Rahmen", dial: "Messuhr", balance: "Waage" },
  nothing:
    "Das Datenblatt nennt noch keinen Ring, keinen Rahmen, keine Messuhr und keine Waage: Tragen Sie die Nummern ein; dann wird hier angeboten, was das Verzeichnis hat.",
  unknown: (kind: string, number: string) =>
    `Im Verzeichnis fehlt: ${kind} „${number}“. Das Blatt behält, was es hat: Prüfen Sie die Nummer, oder tragen Sie das Gerät ins Verzeichnis ein.`,
  repeated: (kind: string, number: string) =>
    `Mehrere Zeilen des Verzeichnisses: ${kind} „${number}“. Die letzte gilt.`,
  cells: {
    registered_diameter: "Ring, Durchmesser",
    registered_height: "Ring, Höhe",
    registered_ring_mass: "Ring, Masse",
    lever_ratio: "Rahmen, Hebelverhältnis",
    frame_calibration_due: "Rahmen, Kalibrierung fällig",
    dial_factor: "Messuhr, Skalenwert",
    dial_calibration_due: "Messuhr, Kalibrierung fällig",
    balance_calibration_due: "Waage, Kalibrierung fällig",
  },
  line: (what: string, registered: string) => `${what}: ${registered}`,
  instead: (held: string) => `statt ${held}`,
  same: (count: number) =>
    count === 1
      ? "Ein Wert ist bereits der des Verzeichnisses."
      : `${count} Werte sind bereits die des Verzeichnisses.`,
  take: "Gewählte Werte übernehmen",
  takenFrom: (register: string, day: string) => `${register}, ${day}`,
  taken: (sheet: string, count: number) =>
    count === 1
      ? `Ein Wert ist in „${sheet}“ eingetragen, mit dem Tag.`
      : `${count} Werte sind in „${sheet}“ eingetragen, mit dem Tag.`,
  measured: "Gemessene Maße bleiben, wie sie eingetippt wurden: Die Prüfungen vergleichen sie mit dem Verzeichnis.",
};
