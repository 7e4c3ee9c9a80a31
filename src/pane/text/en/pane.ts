export const pane = {
  title: "Clayledger",
  language: "English",
  tabs: {
    label: "Screens",
    next: "What next",
    sheet: "Data sheet",
    readings: "Readings",
    bench: "Bench",
    plot: "Plots",
    review: "Review",
    results: "Results",
    checks: "Checks",
    byHand: "By hand",
    report: "Report",
    summary: "Summary",
    about: "About",
  },
  unexpected: (what: string) =>
    `Something failed that should not have (${what}). The workbook is as it was. Try again; please report it if it happens again.`,
  noHost: "This pane works beside a workbook: open it from Excel, or run the page that comes with the add-in.",
  test: {
    group: "Current test",
    label: "Test",
    none: "No data sheet yet",
    /** Read aloud when another test becomes the current test. */
    now: (sheet: string) => `Current test: ${sheet}`,
    pin: "Pin",
    pinLong: "Pin this test",
    pinHint: "Stays with this test, whichever sheet is in front.",
    pinned: (front: string) => `Pinned, while “${front}” is in front.`,
    noTest: (front: string) => `“${front}” is in front but is not a data sheet: the pane stays with this test.`,
  },
};
