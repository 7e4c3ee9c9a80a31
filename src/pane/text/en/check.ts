export const check = {
  heading: "Sheet check",
  purpose:
    "A data sheet works by the names of its cells, however it looks. This tells what is missing or doubled on the sheet in front, and what will not work without it. Nothing is changed by looking.",
  look: "Check the sheet in front",
  looking: "Looking at the sheet…",
  of: (sheet: string) => `The sheet “${sheet}”`,
  version: (version: number | undefined) =>
    version === undefined ? "It does not say which version of the data sheet it is." : `Data sheet version ${version}.`,
  whole: "Every name is there, once, and no cell holds what it should not.",
  stop: (count: number) => (count === 1 ? "1 thing does not work" : `${count} things do not work`),
  consider: (count: number) => (count === 1 ? "1 thing to look at" : `${count} things to look at`),
  news: "New since this sheet was made",
  newsHint: "The sheet works as it is. What is new stands on a newly inserted sheet.",
  formulas: "Formulas and protection",
  reenter: "Enter formulas again",
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
    "There is no password: protection keeps formulas from slips, not from people. Rows can be put in while it stands. To take rows out, lift it first: Excel deletes no row that holds a locked cell.",
  lifted: (sheet: string) => `“${sheet}” is not protected any more.`,
  protected: (sheet: string) => `“${sheet}” is protected, but for its inputs.`,
  own: "A sheet of your own",
  ownHint:
    "Your firm's own .xlsx, made from the template or given the names here. Its sheets come in as new sheets; no other is touched.",
  insert: "Insert sheets from a file…",
  inserting: "Inserting the sheets…",
  inserted: (sheets: readonly string[]) => `Inserted: ${sheets.map((sheet) => `“${sheet}”`).join(", ")}.`,
  attach: "Name a cell",
  attachHint: "Choose what it is, select its cell (or the cells of its column) on the sheet, then attach the name.",
  name: "Name",
  missingGroup: "Not on the sheet",
  presentGroup: "On the sheet",
  give: "Attach to the selected cells",
  move: (name: string) => `Move ${name} here all the same`,
  attached: (name: string, place: string, sheet: string) => `${name} is now at ${place} of “${sheet}”.`,
  oneBlock: "Select one cell, or one block of cells.",
};
