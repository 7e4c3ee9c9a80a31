export const pane = {
  title: "Clayledger",
  language: "English",
  tabs: {
    label: "Screens",
    sheet: "Data sheet",
    readings: "Readings",
    plot: "Plots",
    review: "Review",
    results: "Results",
    checks: "Checks",
    byHand: "By hand",
    report: "Report",
    about: "About",
  },
  unexpected: (what: string) =>
    `Something failed that should not have (${what}). The workbook is as it was. Try again; please report it if it stays.`,
  noHost: "This pane works beside a workbook: open it from Excel, or run the page that comes with the add-in.",
  dataSheet: "Data sheet",
};
