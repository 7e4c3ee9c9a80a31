const several = (count: number, one: string, many: string): string => (count === 1 ? `1 ${one}` : `${count} ${many}`);

export const next = {
  heading: "What next",
  again: "Read again",
  emptyTitle: "There is no data sheet in this workbook",
  empty: "Insert a blank one, the worked demonstration, or your firm's own. Then this screen shows what to do next.",
  reading: "Reading the data sheet…",
  openSheet: "Go to Data sheet",
  stagesLabel: "How far the test has come",
  stages: {
    received: "Received",
    sized: "Sized",
    loaded: "Loaded",
    reduced: "Reduced",
    reviewed: "Reviewed",
    checked: "Checked",
    reported: "Reported",
  },
  /** One line about a stage that has not begun. */
  notBegun: {
    received: "Project, boring, sample and soil: nothing is entered yet.",
    sized: "Ring, sizes and masses: nothing is entered yet.",
    loaded: "No load has a stress or a reading yet.",
    reduced: "Results follow from sizes, masses and readings.",
    reviewed: "Begins when every load has its readings.",
    checked: "Begins when the results are complete.",
    reported: "Begins when the questions are answered.",
  },
  states: { done: "done", "not begun": "not begun" },
  open: (count: number) => `${count} to do`,
  /** Buttons that lead to the place of the work on a stage. */
  goToCell: (cell: string) => `Go to ${cell}`,
  screens: {
    readings: "Open Readings",
    results: "Open Results",
    review: "Open Review",
    checks: "Open Checks",
    report: "Open Report",
  },
  toCell: (label: string, address: string) => `${label}, ${address}: go to the cell`,
  noCell: (label: string) => `${label} (no cell of that name on the sheet)`,
  oneOf: (labels: readonly string[]) => labels.join(" or "),
  ofLoads: (label: string, loads: readonly number[]) =>
    `${label}, ${loads.length === 1 ? "load" : "loads"} ${loads.join(", ")}`,
  more: (count: number) => `and ${count} more`,
  showWhat: (count: number) => (count === 1 ? "Show what" : `Show all ${count}`),
  noLoads: "The first load's stress",
  noReadings: (load: number) => `Readings of load ${load}`,
  follow: (count: number) =>
    count === 1 ? "1 result follows when these are done." : `${count} results follow when these are done.`,
  noConstruction: (load: number, method: string, reason: string) => `Load ${load}, ${method}: ${reason}`,
  methods: { "log time": "log of time", "root time": "root of time" },
  unsignedPick: (row: number, load: string) => `Pick in row ${row}${load}: no reason or no initials`,
  ofCurve: ", the compression curve",
  ofLoad: (load: number) => `, load ${load}`,
  formulasChanged: (count: number, first: string) =>
    `${count} formulas were overwritten, lost or changed, or their values do not follow (Checks lists them). The first: ${first}`,
  readingsChanged: (number: number, report: string, day: string) =>
    `Readings were changed since issue ${number} (“${report}”, ${day}): compare with it, then check and issue again`,
  noReport: "No report of this test is in the workbook yet.",
  toLook: "To be looked at in Review",
  allDone: "Nothing is left to do.",
  partsHeading: "Parts of the sheet",
  partsCount: (missing: number, asked: number) =>
    missing === 0
      ? `All ${asked} things that a report requires are there (question Q63).`
      : `${missing} of ${asked} things that a report requires are missing (question Q63).`,
  partMissing: (count: number) => `${count} missing`,
  toPart: (title: string, missing: number) =>
    missing === 0
      ? `${title}: go to it`
      : `${title}: go to the first of ${several(missing, "missing cell", "missing cells")}`,
};
