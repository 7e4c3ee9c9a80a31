import { SAMPLE_TYPES } from "../../../../exchange/ags4/dictionary";

export const checks = {
  heading: "Checks",
  purpose:
    "Questions that a reviewer asks of a test, answered from the data sheet. Each shows the two numbers that were compared. Nothing on the sheet is changed.",
  otherLimits: (others: readonly string[], read: string) =>
    `${others.map((one) => `“${one}”`).join(", ")} lists limits too and is not read: “${read}” is`,
  emptyTitle: "No data sheet in this workbook",
  empty: "Insert one on the tab “Data sheet”, or name the cells of your own; then the questions can be asked.",
  reading: "Asking…",
  again: "Try again",
  passed: (passed: number, asked: number, all: number) =>
    `${passed} of ${asked} questions pass; ${all - asked} of ${all} cannot be asked of this sheet.`,
  cells: "Cells",
  cellsWhole: "No formula was overwritten or lost, every result follows from its inputs, and nothing in use is hidden.",
  cellsFound: (count: number) => (count === 1 ? "1 cell to mend" : `${count} cells to mend`),
  show: "Show",
  showCell: (address: string) => `Show ${address}`,
  filter: "Show questions",
  filters: {
    open: "to be answered",
    all: "all",
    answered: "answered by the reviewer",
    cannot: "that cannot be asked",
  },
  find: "Containing",
  none: "No question matches.",
  groups: {
    stop: "Stop: correct it, or answer the question",
    explain: "Explain",
    note: "Note",
    pass: "Pass",
    "cannot be asked": "Cannot be asked",
  },
  found: "Found",
  against: "Compared with",
  basis: "Basis",
  about: "Cells:",
  answer: "Answer",
  by: "Initials",
  save: "Keep the answer",
  needBoth: "Enter a sentence and your initials.",
  kept: (id: string, test: string, sheet: string) => `The answer to ${id} for “${test}” is on the sheet “${sheet}”.`,
  answered: (by: string, when: string) => `Answered by ${by}, ${when}:`,
  stale: "The finding has changed since this answer: look at it again.",
  limits: "Limits",
  limitsDefault:
    "All limits are the defaults. A firm's own limits are on a sheet, each with the person who changed it and the reason.",
  limitsFrom: (sheet: string) => `The limits of the sheet “${sheet}” apply.`,
  insertLimits: "Insert a sheet of limits",
  showLimits: "Show the sheet of limits",
  limitsInserted: (sheet: string) => `The sheet “${sheet}” lists every limit. Enter your own there.`,
  /** The limit in words, such as "Q05, explain below". */
  changed: (name: string, from: string, to: string, by: string | undefined, why: string | undefined) =>
    `${name}: ${to} in place of ${from}${by ? `, by ${by}` : ""}${why ? `: ${why}` : ""}`,
  ags: {
    heading: "AGS4 file",
    purpose:
      "The consolidation groups as a strict AGS4 file, edition 4.1.1. It contains the values that the sheet shows, rounded as the format requires.",
    issue: "Issue number",
    date: "Date of the file",
    producer: "Producer",
    recipient: "Recipient",
    status: "Status",
    statuses: { Draft: "Draft", Checked: "Checked", Final: "Final" },
    sampleType: "Kind of sample",
    sampleTypes: SAMPLE_TYPES,
    fromSheet: (word: string) => `as on the sheet (${word})`,
    notChosen: "choose",
    make: "Download the file",
    makeText: "Show the file",
    handedOver: (name: string) =>
      `${name} was made and passed to the browser to be saved. If nothing was saved, copy its text from here.`,
    copyInto: (name: string) =>
      `Excel does not let a pane save files here. Copy the text into a plain text editor and save it as ${name}.`,
    fileText: "Text of the file",
    respelt: "Spelt otherwise:",
    leftOut: "What the file has no place for",
    nothingLeftOut: "The file contains everything that the record contains.",
  },
};
