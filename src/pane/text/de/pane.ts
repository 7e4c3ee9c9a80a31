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
  unexpected: (what: string) =>
    `Es ist etwas fehlgeschlagen, was nicht fehlschlagen sollte (${what}). Die Arbeitsmappe ist wie zuvor. Bitte noch einmal versuchen; bleibt es dabei, bitte melden.`,
  noHost:
    "Dieser Bereich arbeitet neben einer Arbeitsmappe: aus Excel öffnen oder die Seite starten, die zum Add-In gehört.",
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
