export const register = {
  heading: "Geräteverzeichnis",
  purpose:
    "Ringe, Rahmen, Messuhren, Waagen und Verformungssätze mit ihren Werten und den Tagen ihrer Kalibrierung, auf einem Blatt dieser Arbeitsmappe oder in einer Datei des Büros.",
  open: "Ins Verzeichnis sehen",
  mode: "Werte des Verzeichnisses stehen auf diesem Blatt",
  modes: { frozen: "fest, mit dem Tag", live: "als lebende Formeln" },
  modeHints: {
    frozen: "Sie bleiben, wie sie heute sind, was immer das Verzeichnis später sagt.",
    live: "Sie folgen dem Verzeichnis. Wo es die Nummer nicht hat, bleibt der Wert von heute, und das Blatt sagt es.",
  },
  takenLive: (sheet: string, count: number) =>
    count === 1 ? `Eine Formel ist auf „${sheet}“ geschrieben.` : `${count} Formeln sind auf „${sheet}“ geschrieben.`,
  changedMeanwhile: (sheet: string) =>
    `„${sheet}“ wurde inzwischen dort geändert, wo geschrieben werden sollte. Nichts wurde geschrieben: ansehen und noch einmal versuchen.`,
  none: "Diese Arbeitsmappe hat noch kein Geräteverzeichnis.",
  insert: "Geräteverzeichnis einfügen",
  inserted: (sheet: string) => `„${sheet}“ ist eingefügt: dort die Geräte eintragen, jedes in eine Zeile.`,
  noUnit: (sheet: string) => `„${sheet}“ nennt keine Längeneinheit: über der Tabelle eine wählen.`,
  several: (used: string) => `Die Arbeitsmappe hat mehrere Geräteverzeichnisse: „${used}“ wird verwendet.`,
  kinds: { ring: "Ring", frame: "Rahmen", dial: "Messuhr", balance: "Waage", "deflection set": "Verformungssatz" },
  nothing:
    "Das Datenblatt nennt noch keinen Ring, keinen Rahmen, keine Messuhr, keine Waage und keinen Verformungssatz: die Nummern eintragen; dann wird hier angeboten, was das Verzeichnis hat.",
  unknown: (kind: string, number: string, cell: string | undefined) =>
    `Im Verzeichnis fehlt: ${kind} „${number}“${cell ? ` (Zelle ${cell})` : ""}. Das Blatt behält, was es hat: die Nummer prüfen, oder das Gerät ins Verzeichnis eintragen.`,
  repeated: (kind: string, number: string) =>
    `Mehrere Zeilen des Verzeichnisses: ${kind} „${number}“. Die letzte gilt.`,
  cells: {
    registered_diameter: "Ring, Durchmesser",
    registered_height: "Ring, Höhe",
    registered_ring_mass: "Ring, Masse",
    lever_ratio: "Rahmen, Hebelverhältnis",
    frame_calibration_due: "Rahmen, Kalibrierung fällig",
    dial_factor: "Messuhr, Uhrfaktor",
    dial_calibration_due: "Messuhr, Kalibrierung fällig",
    balance_calibration_due: "Waage, Kalibrierung fällig",
    deflection_set_frame: "Verformungssatz, Rahmen",
    deflection_set_due: "Verformungssatz, Kalibrierung fällig",
    calibration_date: "Verformungssatz, Tag, Filtersteine und Papier",
    apparatus_stress: "Verformungssatz, Tabelle",
  },
  line: (what: string, registered: string) => `${what}: ${registered}`,
  instead: (held: string) => `statt ${held}`,
  same: (count: number) =>
    count === 1
      ? "Ein Wert ist bereits der des Verzeichnisses."
      : `${count} Werte sind bereits die des Verzeichnisses.`,
  take: "Gewählte Werte übernehmen",
  rows: (count: number) => (count === 1 ? "1 Zeile" : `${count} Zeilen`),
  withoutTable: (number: string) =>
    `Das Verzeichnis hat den Verformungssatz „${number}“ ohne Verformungen, oder mit mehr Zeilen als die Tabelle des Blatts. Das Blatt behält seine Tabelle: die Zeilen des Satzes im Verzeichnis ansehen.`,
  file: "Verzeichnis aus Datei lesen",
  fileHint:
    "Ein Verzeichnis in einer .xlsx des Hauses wird über seine Namen gelesen und nicht eingefügt. Seine Werte kommen als feste Zahlen hinein, mit Datei, Tag und SHA-256; beim nächsten Lesen wird eine geänderte Datei gemeldet.",
  noRegisterIn: (file: string) =>
    `„${file}“ hat kein Geräteverzeichnis: eine Datei wählen, deren Zellen die Namen eines eingefügten Verzeichnisses haben (register_kind, register_number und die übrigen).`,
  fileRead: (file: string) => `Gelesen: ${file}.`,
  fileSame: (file: string, day: string) => `${file} ist unverändert, seit ihre Werte am ${day} übernommen wurden.`,
  fileChanged: (file: string, day: string) =>
    `${file} ist geändert, seit ihre Werte am ${day} übernommen wurden. Das Blatt behält, was es hat: Abweichende Werte stehen unten.`,
  ownAgain: (sheet: string) => `Wieder „${sheet}“ ansehen`,
  set: {
    heading: "Verformungssatz aus einem Lauf mit Metallscheibe",
    purpose:
      "Für einen Lauf mit einer Metallscheibe an der Stelle des Probekörpers, auf diesem Blatt eingetragen wie ein Versuch: die Ablesung am Ende jeder Laststufe, abzüglich der Ablesung unter der Anfangsspannung.",
    found: (rows: number, from: string, to: string, most: string) =>
      `Die Laststufen dieses Blatts geben ${rows} Spannungen von ${from} bis ${to}; die größte Verformung bei Belastung ist ${most}.`,
    fields: {
      number: "Nummer des Satzes",
      frame: "Rahmen",
      disks: "Filtersteine",
      paper: "Filterpapier",
      by: "Von",
    },
    write: (register: string) => `Satz in „${register}“ eintragen`,
    written: (number: string, register: string, rows: number) =>
      `Verformungssatz „${number}“ ist in „${register}“ eingetragen, ${rows} Zeilen. Dort eintragen, wann er fällig ist.`,
    refused: {
      "no number": "Dem Satz eine Nummer geben.",
      "number taken": "Das Verzeichnis hat schon einen Verformungssatz dieser Nummer: eine andere eingeben.",
      "no table":
        "Dieses Verzeichnis hat keine Tabelle der Verformungssätze: ein neues einfügen und die Geräte übertragen.",
      "no units":
        "Das Verzeichnis nennt seine Einheiten der Länge und der Spannung nicht: beide über der Tabelle wählen.",
      "no room": "Das Verzeichnis hat keine leeren Zeilen mehr für den Satz: in seinen Tabellen Zeilen einfügen.",
    },
  },
  taken: (sheet: string, count: number) =>
    count === 1
      ? `Ein Wert ist in „${sheet}“ eingetragen, mit dem Tag.`
      : `${count} Werte sind in „${sheet}“ eingetragen, mit dem Tag.`,
  measured: "Gemessene Maße bleiben, wie sie eingetippt wurden: Die Prüfungen vergleichen sie mit dem Verzeichnis.",
};
