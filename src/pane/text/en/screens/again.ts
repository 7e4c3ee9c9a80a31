import { whole } from "../numbers";

/** A logger's file that is read again while it is being written. */
export const again = {
  heading: "This file was read before",
  looking: "Comparing the file with the lines that were kept…",
  same: (sheet: string) => `Nothing is new in the file since it was read to the sheet “${sheet}”.`,
  grown: (lines: number, sheet: string) =>
    `${lines === 1 ? "1 line is" : `${whole(lines)} lines are`} new since it was read to “${sheet}”. What was read before stays as it is.`,
  waits: "The last line and the last rows under a load wait until the file goes on.",
  finished: "The file is finished: read it to its end",
  load: (load: number, rows: number, kept: number, from: number, to: number) =>
    `Load ${load} goes on: ${whole(rows)} new rows, lines ${whole(from)} to ${whole(to)}; ${whole(kept)} to the sheet`,
  newLoad: (load: number, rows: number, kept: number, from: number, to: number) =>
    `Load ${load} begins: ${whole(rows)} rows, lines ${whole(from)} to ${whole(to)}; ${whole(kept)} to the sheet`,
  without: (load: number | null, from: number, to: number) =>
    load === null
      ? `Lines ${whole(from)} to ${whole(to)} belong to no load of the sheet and are not written: read the file as a new one, below, and give them a load`
      : `Lines ${whole(from)} to ${whole(to)} seem to be load ${load}, which holds readings already: they are not written; read the file as a new one, below, to replace them`,
  faults: (count: number) =>
    count === 1
      ? "1 of the new lines is left out or used with a remark:"
      : `${whole(count)} of the new lines are left out or used with a remark:`,
  recut: (line: number) =>
    `Line ${whole(line)} was cut short when it was read, and is whole now. Its reading on the sheet`,
  recutChoices: { write: "is written again, as the file has it now", leave: "stays as it is" },
  factor: (now: string, wanted: string) =>
    wanted === ""
      ? `Dial factor is ${now} on the sheet, but the readings of this file are divisions: write them nevertheless`
      : `Dial factor is ${now} on the sheet; the readings of this file need ${wanted}: write them nevertheless`,
  recutOpen: "Choose one: the cut line may have given a wrong reading",
  changed: (lines: string, count: number, missing: number) =>
    [
      count > 0 &&
        `${count === 1 ? "Line" : "Lines"} ${lines}${count > 20 ? ` and ${whole(count - 20)} more` : ""} of the file changed since ${count === 1 ? "it was" : "they were"} read.`,
      missing > 0 && `The file is ${whole(missing)} ${missing === 1 ? "line" : "lines"} shorter than what was kept.`,
      "Nothing is written. To take the file as it is now, read it as a new one, below: it asks before it replaces readings.",
    ]
      .filter(Boolean)
      .join(" "),
  otherLoads: (line: number) =>
    `The file now shows a load beginning near line ${whole(line)}, in lines that were read before. Nothing is written: read the file as a new one, below, and check its loads.`,
  nothing: "No new reading is ready to be written.",
  write: (sheet: string) => `Write what is new to “${sheet}”`,
  writing: "Writing what is new…",
  stopped: "Stopped. The data sheet was not changed: write what is new to go on.",
  done: (readings: number, sheet: string, fileSheet: string) =>
    `${readings === 1 ? "1 reading was" : `${whole(readings)} readings were`} added to “${sheet}”. The new lines and the hash of the file are on “${fileSheet}”.`,
  full: (sheet: string) =>
    `The list of readings on the sheet “${sheet}” is full, and nothing was written: read the file as a new one, below.`,
  filled: (load: number, sheet: string) =>
    `Readings of load ${load} were entered on “${sheet}” in the meantime, and nothing was written there. What is new in the file was looked up again below: compare it with these readings, and write it if it is still missing.`,
  orNew: "Or read it as a new file:",
};
