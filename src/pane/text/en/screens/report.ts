export const report = {
  heading: "Report",
  purpose:
    "Makes a new sheet with everything that a reader needs: results, loads, plots, uncertainty, remarks, picks by hand, checks that did not pass, cautions. Its numbers follow the data sheet. An older report is never overwritten.",
  looking: "Looking at the data sheet…",
  none: "There is no data sheet in this workbook. Put one in on the Data sheet tab, or attach names to one of your own there.",
  lacks: (count: number) => (count === 1 ? "1 required item is missing" : `${count} required items are missing`),
  lacksHint: "The report can be made anyway: it lists each missing item with its cell.",
  whole: "Nothing that a report must show is missing.",
  others: (count: number) =>
    count === 1
      ? "1 item that is required only if it was measured"
      : `${count} items that are required only if they were measured`,
  item: (item: number, sentence: string) => `${sentence}. (Item ${item})`,
  open: (count: number) =>
    count === 0
      ? "Every check that could be asked has passed."
      : count === 1
        ? "1 check has not passed: the report prints it."
        : `${count} checks have not passed: the report prints them.`,
  paper: "Paper",
  language: "Language of the report",
  languageHint: "The report keeps it; the next report of this sheet begins with it.",
  curve: "Compression curve in",
  curveHint: "On the first page. The other curve is among the plots.",
  curves: { e: "void ratio", strain: "strain" },
  preparedBy: "Prepared by",
  preparedByHint: "Name or initials of who makes the report.",
  make: (test: string) => `Make the report of “${test}”`,
  making: "Making the report…",
  made: (test: string, sheet: string) =>
    `The report of “${test}” is on the new sheet “${sheet}”, which is in front now.`,
  carried: (sheet: string) => `Limits of error that were changed on “${sheet}” were copied.`,
  reports: "Reports of this sheet",
  show: (sheet: string) => `Show “${sheet}”`,
  again: "Look again",
  issues: "Issues",
  issuesHint:
    "An issue is a report with every value of the data sheet as it is now, beside the live numbers, with the day, your initials and the SHA-256 of the readings. Its values never change.",
  lockedBy: "Locked by",
  needsInitials: "Enter your initials: an issue says who locked it.",
  lock: (number: number, test: string) => `Make and lock issue ${number} of “${test}”`,
  issue: (number: number, report: string, day: string, by: string) =>
    `Issue ${number} on “${report}”, locked on ${day} by ${by}`,
  compare: (number: number, report: string) => `Compare with issue ${number} (“${report}”)`,
  tampered: (number: number, report: string) =>
    `Issue ${number} on “${report}” was changed after it was locked: its values, day or initials no longer have the SHA-256 that was locked with them. Take the issue from a file or a print of its day.`,
  withoutHash: (number: number) =>
    `Issue ${number} was locked by an older version, without a SHA-256 of its values: whether they were changed since cannot be told.`,
  unchanged: (number: number) => `Every value is as in issue ${number}.`,
  changes: (count: number, number: number) =>
    count === 1 ? `1 value is not as in issue ${number}.` : `${count} values are not as in issue ${number}.`,
  changesList: "What changed",
  change: (what: string, cell: string, from: string, to: string) => `${what}, ${cell}: from ${from} to ${to}`,
  rowOf: (label: string, row: number) => `${label}, row ${row}`,
  blank: "blank",
  noIssue: (report: string) => `“${report}” has no locked values: its names were deleted.`,
  readingsChanged: "Readings changed after a report was locked.",
  readingsChangedSince: (number: number, report: string, day: string) =>
    `They are not those of issue ${number} (“${report}”, ${day}): compare with it (Report).`,
};
