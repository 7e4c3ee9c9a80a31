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
  /** Of a text in which the mark may part decimals or thousands. */
  whichNumber: (typed: string, decimal: string, thousands: string) =>
    `Is “${typed}” ${decimal} or ${thousands}? Type it as one of these.`,
  unexpected: (what: string) =>
    `Something failed that should not have (${what}). The workbook is as it was. Try again; please report it if it happens again.`,
  stopped: "Stopped. The workbook is as it was.",
  noHost: "This pane works beside a workbook: open it from Excel, or run the page that comes with the add-in.",
  onRequest: {
    title: "Calculation is on request",
    may: "Excel calculates this workbook only when it is asked (manual calculation). What the pane shows of the sheet may be old after a change.",
    calculate: "Calculate now",
  },
  unknown: {
    title: "Unknown functions or names",
    what: "Formulas of this test have a function or a name that is not known, and their cells show an error (in Excel #NAME?). Press “Enter formulas again” on the tab “Data sheet”. If the error stays, check that the add-in is loaded, and attach missing names there.",
  },
  daysFrom1904: {
    title: "Days are counted from 1904",
    off: "This workbook counts its days from 1904, and this pane counts from 1900: every date that the pane reads or writes is four years and one day off on the sheet. Use a workbook that counts from 1900, or switch the option off before dates are entered (File, Options, Advanced, Use 1904 date system).",
  },
  /** What an earlier pane left half done. */
  unfinished: {
    title: "Not finished",
    begun: (work: string, since: string) =>
      `${work} began on ${since} and has not ended: the pane was closed or reloaded, or another window is still at it.`,
    work: {
      sheet: (sheet: string) => `Making the sheet “${sheet}”`,
      cells: (sheet: string) => `Writing cells of the sheet “${sheet}”`,
      protection: (sheet: string) => `Writing into the protected sheet “${sheet}”`,
      readings: (sheet: string) => `Importing readings into “${sheet}”`,
      "readings again": (sheet: string) => `Adding new readings of a file to “${sheet}”`,
      summary: (sheet: string) => `Writing the rows of “${sheet}”`,
      layout: (sheet: string) => `Laying out results on “${sheet}”`,
    },
    remedy: {
      sheet: "The sheet is incomplete: delete it, and make it again.",
      cells: "Some of its cells may hold the new content and others the old: compare them, and write again.",
      protection:
        "Its protection is lifted: look at what was written last, and protect it again (Data sheet, Sheet check).",
      readings:
        "The data sheet is written last, in one step: if it lacks the readings, import the file again. A sheet of kept lines that says “not finished” can be deleted.",
      "readings again": "Read the file again: what stands on the sheet already does not come twice.",
      summary: "Rows may be missing or old: bring the summary up to date.",
      layout:
        "Cells may have names, and no labels and formulas yet: write the missing formulas (Data sheet, Sheet check), and type the labels.",
    },
    leftBehind: (sheet: string) => `The new sheet “${sheet}” is incomplete: delete it, and make it again.`,
    done: "Done",
  },
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
