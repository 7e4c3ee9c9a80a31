const listed = (sheets: readonly string[]): string => sheets.map((sheet) => `„${sheet}“`).join(", ");

export const many = {
  heading: "Mehrere auf einmal",
  purpose:
    "Für alle Datenblätter der Arbeitsmappe oder für die gewählten. Ein Blatt, das nicht gelingt, wird mit dem Grund genannt; die übrigen laufen weiter.",
  what: "Was gemacht wird",
  kinds: { reports: "Berichte", ags4: "Eine AGS4-Datei", pictures: "Bilder" },
  sheets: "Datenblätter",
  all: "Alle",
  none: "Keines",
  noneChosen: "Mindestens ein Datenblatt wählen.",
  paper: "Papier",
  papers: { sheet: "nach den Einheiten des Blatts", A4: "A4", Letter: "Letter" },
  plots: "Diagramme",
  picturesOf: {
    compression: "Druck-Setzungs-Kurve",
    field: "Feldkurve",
    intrinsic: "Porenindex",
    cv: "cv über der Spannung",
    cAlpha: "Cα über der Spannung",
    time: "Zeit-Setzungs-Kurven aller Laststufen",
  },
  noPlot: "Mindestens ein Diagramm wählen.",
  format: "Format",
  formats: { svg: "SVG", png: "PNG, 300 Punkte je Zoll" },
  asOnSheets: "wie auf jedem Blatt",
  makeReports: (count: number) => (count === 1 ? "1 Bericht machen" : `${count} Berichte machen`),
  makeAgs4: (count: number) =>
    count === 1 ? "AGS4-Datei von 1 Blatt machen" : `Eine AGS4-Datei von ${count} Blättern machen`,
  makePictures: (count: number) =>
    count === 1 ? "Bilder von 1 Blatt speichern" : `Bilder von ${count} Blättern speichern`,
  working: "Ein Blatt nach dem anderen…",
  stopped: "Angehalten. Keine Datei wurde gemacht.",
  reportsMade: (reports: readonly string[]) =>
    reports.length === 0
      ? "Kein Bericht wurde gemacht."
      : reports.length === 1
        ? `1 Bericht wurde gemacht: ${listed(reports)}.`
        : `${reports.length} Berichte wurden gemacht: ${listed(reports)}.`,
  reportsStopped: (reports: readonly string[]) =>
    reports.length === 0
      ? "Angehalten. Kein Bericht wurde gemacht."
      : `Angehalten. Vorher ${reports.length === 1 ? "wurde 1 Bericht" : `wurden ${reports.length} Berichte`} gemacht, und ${reports.length === 1 ? "er bleibt" : "sie bleiben"}: ${listed(reports)}. Keiner ist halb fertig.`,
  ags4Made: (name: string, count: number) =>
    `${name} ist fertig, mit ${count === 1 ? "1 Versuch" : `${count} Versuchen`}. Wurde nichts gespeichert, den Text von hier kopieren.`,
  leftOut: (what: readonly string[]) => `Die Datei hat keinen Platz für: ${what.join("; ")}.`,
  picturesMade: (name: string, count: number) =>
    `${name} ist fertig, mit ${count === 1 ? "1 Bild" : `${count} Bildern`}, und wurde dem Browser zum Speichern übergeben.`,
  noPictures: (reasons: readonly string[]) => `Es gibt nichts zu zeichnen. ${[...new Set(reasons)].join(" ")}`,
  noSaving:
    "Excel lässt den Aufgabenbereich hier keine Dateien speichern: Bilder vieler Blätter lassen sich nicht sichern. Diagramme einfügen (Diagramme) oder dort einzelne Bilder kopieren.",
  gone: (sheet: string) => `„${sheet}“ wurde nicht gefunden.`,
  failed: (count: number) => (count === 1 ? "1 ist nicht gelungen" : `${count} sind nicht gelungen`),
  failure: (called: string, reason: string) => `„${called}“: ${reason}`,
  noSheets: "In dieser Arbeitsmappe gibt es noch kein Datenblatt.",
};
