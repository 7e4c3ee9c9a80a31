export const check = {
  heading: "Sheet check",
  purpose:
    "A data sheet works through the names of its cells; its layout does not matter. The check lists the names that are missing or double on the sheet in front, and what does not work without them. It changes nothing.",
  look: "Check the sheet in front",
  looking: "Looking at the sheet…",
  of: (sheet: string) => `The sheet “${sheet}”`,
  version: (version: number | undefined) =>
    version === undefined ? "It does not say which version of the data sheet it is." : `Data sheet version ${version}.`,
  whole: "Every name is there exactly once, and no cell contains a value that it must not contain.",
  faulty: (count: number) =>
    count === 1 ? "1 formula is missing or changed" : `${count} formulas are missing or changed`,
  mend: "Write its formula",
  mendAt: (place: string) => `Write the formula of ${place}`,
  mended: (places: string, sheet: string) => `The formula is written into ${places} of “${sheet}”.`,
  stop: (count: number) => (count === 1 ? "1 thing does not work" : `${count} things do not work`),
  consider: (count: number) => (count === 1 ? "1 thing to look at" : `${count} things to look at`),
  news: "New since this sheet was made",
  newsHint: "The sheet works as it is. A newly inserted sheet has everything that is new.",
  formulas: "Formulas and protection",
  reenter: "Enter formulas again",
  reentering: "Entering the formulas again…",
  stoppedReentering: "Stopped. The formulas that were entered stay: enter the others again.",
  reenterHint: "For results that show #NAME? or stay blank, as when the add-in came after the sheet.",
  reentered: (found: number, left: number) =>
    found === 0
      ? "Every formula is bound to the add-in."
      : left === 0
        ? `${found} ${found === 1 ? "formula was" : "formulas were"} entered again and ${found === 1 ? "works" : "work"}.`
        : `${found} ${found === 1 ? "formula was" : "formulas were"} entered again; ${left} still ${left === 1 ? "shows" : "show"} #NAME?: attach missing names, or see that the add-in is there.`,
  lift: "Lift protection",
  protect: "Protect all but inputs",
  protectHint:
    "There is no password: the protection prevents mistakes, not intended changes. Rows can be inserted under protection. To delete rows, lift the protection first: Excel deletes no row that contains a locked cell.",
  lifted: (sheet: string) => `“${sheet}” is not protected any more.`,
  protected: (sheet: string) => `“${sheet}” is protected, except for its inputs.`,
  own: "A sheet of your own",
  ownHint:
    "Your firm's own .xlsx, made from the template or given the names here. Its sheets are inserted as new sheets; no other sheet is changed.",
  insert: "Insert sheets from a file…",
  inserting: "Inserting the sheets…",
  inserted: (sheets: readonly string[]) => `Inserted: ${sheets.map((sheet) => `“${sheet}”`).join(", ")}.`,
  attach: "Name a cell",
  attachHint:
    "Choose what it is, select its cell (or the cells of its column or row) on the sheet, then attach the name.",
  name: "Name",
  missingGroup: "Not on the sheet",
  presentGroup: "On the sheet",
  give: "Attach to the selected cells",
  move: (name: string) => `Move ${name} here anyway`,
  attached: (name: string, place: string, sheet: string) => `${name} is now at ${place} of “${sheet}”.`,
  missing: "Names without cells",
  missingHint:
    "Choose a name, select its cells on the sheet, and attach it. A result is written into its cells as soon as what it needs has cells.",
  find: "Search",
  first: "Needed first",
  missingOf: (title: string, missing: number, all: number) => `${title}: ${missing} of ${all}`,
  nothingFound: "No name without cells has this in its label.",
  after: (names: string) => `after ${names}`,
  layout: "Formulas of your own layout",
  layoutHint:
    "Formulas go into blank cells that have a name, and cells keep their formats. A cell that holds something is left as it is.",
  writeMissing: (count: number) => (count === 1 ? "Write the missing formula" : `Write all ${count} missing formulas`),
  written: (count: number, sheet: string) =>
    count === 1 ? `1 formula is written on “${sheet}”.` : `${count} formulas are written on “${sheet}”.`,
  leftHeld: (places: string) => `Left as they are, because they hold something else: ${places}.`,
  leftWaiting: (names: string) =>
    `Not written yet: ${names}. They need names that have no cells so far: see “Names without cells”.`,
  formulaWritten: (name: string) => `The formula of ${name} is written.`,
  formulaWaits: (names: string) => `Its formula is written once these have cells: ${names}.`,
  formulaHeld: (places: string) => `${places} contains something else, which was left unchanged.`,
  replace: (places: string) => `Write the formula over what ${places} holds`,
  fromLoad: "First load",
  fromLoadWrong: "Enter the number of a load.",
  readings: "Readings of several loads",
  readingsHint:
    "Select the columns of times and readings, side by side or one after the other: times and readings of the first load, then of the next. Rows are selected in the same way if the series lie in rows.",
  sharedTimes: "The first of them has the times of all loads",
  sharedTimesHint:
    "Select the times first, then the readings of each load. Type the readings on the sheet, or enter them at the bench at the times of the column: a time of one load would count for all, so no file is imported into these loads.",
  nameReadings: { columns: "Attach to the selected columns", rows: "Attach to the selected rows" },
  noTimes: (cells: string, load: number, name: string) =>
    `Nothing was named: ${cells} would be the times of load ${load}, but its numbers do not rise as minutes since loading do. If one column or row has the times of all loads, tick that above, and select it first. If these are the times, correct them, or attach ${name} to them by itself.`,
  readingsNamed: (from: number, to: number, sheet: string) =>
    from === to
      ? `The readings of load ${from} have their names on “${sheet}”.`
      : `The readings of loads ${from} to ${to} have their names on “${sheet}”.`,
  workings: "Lay out the rest from the selected cell",
  workingsHint:
    "Results that have no cell get free ones, with labels: those of loads in the rows of the loads, from the column of the selected cell on, the others below them. Nothing is written over. If no cell at the right is free, insert columns there first.",
  workingsHeld: (place: string) =>
    `The results would cover ${place}, which is not blank. Nothing was written: select a cell with free cells to its right and below, or insert columns first.`,
  nameGone: (name: string) => `Then somebody took ${name} away again: attach it once more.`,
  workingsNamed: (sheet: string) =>
    `The cells of “${sheet}” have their names already: write the missing formulas, and type the labels.`,
  laidOut: (count: number, sheet: string) =>
    count === 1 ? `1 result was laid out on “${sheet}”.` : `${count} results were laid out on “${sheet}”.`,
  nothingToLayOut: "Every result that can be calculated has a cell.",
  oneBlock: "Select one cell, or one block of cells.",
};
