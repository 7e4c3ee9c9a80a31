export const adopt = {
  title: "Wert von Hand einsetzen",
  what: "Ein hier eingesetzter Wert steht in der Tabelle der eingesetzten Werte des Blattes, und das Blatt rechnet mit ihm weiter. Was die Konstruktionen ergeben, bleibt daneben stehen.",
  quantity: "Was eingesetzt wird",
  quantities: {
    preconsolidation_stress: "Vorbelastungsspannung σ′p",
    compression_index: "Kompressionsbeiwert Cc",
    recompression_index: "Wiederbelastungsbeiwert Cr",
    swelling_index: "Schwellbeiwert Cs",
    c_alpha_chosen: "Cα, Stauchung je Dekade",
    cv_recompression: "cv, Wiederbelastung",
    cv_virgin: "cv, Erstbelastung",
    cv_another: "cv, anderer Bereich",
  },
  gave: (value: string) => `Die Konstruktionen ergeben ${value}.`,
  gaveNone: "Die Konstruktionen ergeben keinen Wert.",
  range: (least: string, greatest: string) => `Der Versuch ergibt ${least} bis ${greatest}.`,
  stands: (value: string, by: string, day: string, reason: string) =>
    `Auf dem Blatt eingesetzt: ${[value, by, day, reason].filter(Boolean).join("; ")}.`,
  noValue: "kein Wert",
  noInitials: "ohne Kürzel",
  noReason: "ohne Begründung",
  stresses: (list: string) => `In der Zeile eingetragene Spannungen: ${list}.`,
  entries: {
    value: "Eingesetzter Wert",
    from: "Ab Spannung",
    to: "Bis Spannung",
    reason: "Begründung",
    by: "Kürzel",
  },
  entryIn: (entry: string, unit: string) => (unit === "" ? entry : `${entry} (${unit})`),
  nowUsed: (value: string) => `Leer: ${value}, wie auf dem Blatt`,
  reasonHint: "Nötig außerhalb des Bereichs, den der Versuch ergibt",
  faults: {
    "not above 0": (entry: string) => `${entry}: eine Zahl über 0 eingeben.`,
    "no stress": (entry: string) => `${entry}: Das Blatt hat hier keine Spannung, deshalb eine eingeben.`,
    "not above the lower": (entry: string) => `${entry}: Die obere Spannung muss über der unteren liegen.`,
    "no initials": (entry: string) => `${entry}: das eigene eingeben; ohne Kürzel wird kein Wert eingesetzt.`,
    formula: (entry: string) =>
      `${entry}: mit einem Buchstaben beginnen; was mit =, +, - oder @ beginnt, wird zu einer Formel.`,
    outside: (entry: string) =>
      `${entry}: Der Wert liegt außerhalb dessen, was der Versuch ergibt; angeben, warum er eingesetzt wird.`,
    "no range": (entry: string) =>
      `${entry}: Der Versuch ergibt keinen Wert zum Vergleich; angeben, warum dieser eingesetzt wird.`,
  },
  adopt: (sheet: string) => `In „${sheet}“ einsetzen`,
  takeBack: "Zurücknehmen…",
  askReplace: (standing: string) => `Die Zeile ist nicht leer. ${standing} Das wird durch die Eingaben ersetzt.`,
  askTakeBack: (standing: string) =>
    `${standing} Wert, Kürzel, Tag und Begründung dieser Zeile werden geleert, und das Blatt verwendet wieder den Wert der Konstruktionen.`,
  replaceYes: "Ersetzen",
  takeBackYes: "Zurücknehmen",
  no: "Behalten",
  writing: "Wird geschrieben…",
  done: (quantity: string, sheet: string) => `${quantity}: Der Wert ist auf „${sheet}“ eingesetzt.`,
  takenBack: (quantity: string, sheet: string) =>
    `${quantity}: Der eingesetzte Wert ist auf „${sheet}“ zurückgenommen; das Blatt verwendet den Wert der Konstruktionen.`,
  changedMeanwhile:
    "Die Zeile wurde inzwischen auf dem Blatt geändert. Es wurde nichts geschrieben: nachsehen, was dort steht, und noch einmal versuchen.",
  noCells: (missing: string) =>
    `Dieses Blatt hat keine Zellen dafür (keine Zellen namens ${missing}), deshalb lässt sich der Wert nicht einsetzen. Ein neues Datenblatt einfügen und die Ablesungen übernehmen.`,
};
