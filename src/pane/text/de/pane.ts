export const pane = {
  title: "Clayledger",
  language: "Deutsch",
  tabs: {
    label: "Ansichten",
    sheet: "Datenblatt",
    readings: "Ablesungen",
    plot: "Diagramme",
    review: "Durchsicht",
    results: "Ergebnisse",
    checks: "Prüfungen",
    byHand: "Von Hand",
    report: "Bericht",
    about: "Info",
  },
  unexpected: (what: string) =>
    `Es ist etwas fehlgeschlagen, was nicht fehlschlagen sollte (${what}). Die Arbeitsmappe ist wie zuvor. Bitte noch einmal versuchen; bleibt es dabei, bitte melden.`,
  noHost:
    "Dieser Bereich arbeitet neben einer Arbeitsmappe: aus Excel öffnen oder die Seite starten, die zum Add-In gehört.",
  dataSheet: "Datenblatt",
};
