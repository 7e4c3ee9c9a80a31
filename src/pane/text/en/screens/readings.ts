import { whole } from "../numbers";

export const readings = {
  heading: "Bring readings in",
  promise: "The file is only read. Nothing in the workbook changes until you write it, in the last step.",

  fileHeading: "File or rows",
  open: "Open a text file",
  openHint: "Delimited text from any logger: .csv, .txt, .dat",
  paste: "Or paste rows here",
  usePasted: "Read the pasted rows",
  nothingPasted: "Paste the rows first, headings included.",
  opening: "Reading the file…",
  pasted: "Pasted rows",
  other: "Other file",
  lines: (count: number, encoding: string) => `${whole(count)} ${count === 1 ? "line" : "lines"}, ${encoding}`,
  hash: "SHA-256",
  hashHint: "Written beside the readings, so that the file can be recognised later.",
  noHash: "not worked out: this page is not on a secure address",

  refused: {
    empty: "The file is empty: choose the file that the logger wrote.",
    archive: "This is a workbook or an archive, not text: open it and save its readings as delimited text (.csv).",
    "not text": "This is not a text file: choose the delimited text that the logger wrote.",
  },
  notUnicode: "The file is not Unicode: it was read as Windows-1252; check signs such as ° and µ in the headings.",

  columnsHeading: "Columns and units",
  offered: "These choices were found in the file. Check each of them, the units above all; then confirm.",
  remembered: "As for an earlier file",
  notRemembered: "as this file shows",
  apparatus: "Apparatus",
  apparatusHint: "The choices are remembered under this name, in the workbook",
  preview: "First lines of the file",
  line: "Line",
  choose: "choose…",
  notSaid: "The file does not say",
  delimiter: "Columns are separated by",
  delimiters: { ",": "comma", ";": "semicolon", "\t": "tab" },
  decimal: "Decimal mark",
  decimals: { ".": "point", ",": "comma" },
  firstLine: "Readings begin in line",
  time: "Time",
  timeForm: "Time is in",
  timeForms: {
    s: "seconds",
    min: "minutes",
    h: "hours",
    d: "days",
    "h:mm:ss": "h:mm:ss, elapsed",
    "m:ss": "m:ss, elapsed",
    clock: "time of day",
  },
  date: "Date",
  noDate: "none, or with the time",
  dateOrder: "Order of the date",
  dateOrders: { ymd: "year, month, day", dmy: "day, month, year", mdy: "month, day, year" },
  timesRun: "Times",
  timesRuns: { test: "run on through the test", load: "begin again with each load" },
  reading: "Reading",
  readingUnit: "Reading is in",
  division: "divisions",
  sense: "On compression readings",
  senses: { rise: "rise", fall: "fall" },
  load: "Load",
  noLoad: "no column",
  loadKind: "Load column holds",
  loadKinds: { stress: "stress", force: "force", number: "number of the load" },
  loadUnit: "Load is in",
  lever: "Lever ratio",
  temperature: "Temperature",
  celsius: "degrees Celsius",
  leverHint: "1 where the force is on the specimen",
  noReading: "Numbers that mean no reading",
  noReadingHint: "Separated by spaces",
  inColumn: (letters: string, what: string) => `column ${letters}, ${what}`,
  roles: { time: "time", date: "date", reading: "reading", load: "load" },
  readAs: (line: number, what: string) => `Line ${whole(line)} is read as: ${what}`,
  readAsTime: (minutes: string) => `${minutes} min`,
  readAsReading: (reading: string, unit: string) => `reading ${reading} ${unit}`,
  readAsLoad: (load: string, unit: string) => `load ${load} ${unit}`.trim(),
  noneRead: "No line can be read with these choices. The first fault:",
  missing: (names: readonly string[]) => `Still to be chosen: ${names.join("; ").toLowerCase()}.`,
  confirm: "Use these columns",
  changed: "Columns have changed: confirm them again.",

  loadsHeading: "Loads found",
  readingLines: "Reading the lines…",
  stop: "Stop",
  stopped: "Stopped. Nothing was changed; confirm the columns to read again.",
  noRows: "No line of the file could be read with these columns. See the lines below, and correct the choices above.",
  way: "Find loads by",
  ways: {
    load: "changes of the load",
    restart: "times that begin again",
    interval: "more frequent readings",
    none: "not at all: one load",
  },
  rule: "At time 0 of a load",
  rules: {
    before: "reading before, time from first row",
    first: "first row of the load",
    "last row": "last row before, with its time",
  },
  zeroShown: (rule: string, loads: number, of: number) =>
    of === 0
      ? "The early readings do not show when the loads were applied: see the first minutes of the curves."
      : `“${rule}”: in ${loads} of ${of} loads the early readings then lie straightest against root time.`,
  thinning: "Rows for the sheet",
  thinnings: { even: "about 20 per log cycle", hand: "times of a hand schedule", all: "all that fit" },
  tooMany: (found: number, most: number) =>
    `Found this way, the file has ${whole(found)} stretches. No test has more than ${most} loads: the column may count lines or bursts. The file is shown as one stretch: choose another way here or another load column above, or split it by hand.`,
  whichLoad: "Load on the sheet",
  noneOfThem: "none",
  loadName: (load: number, stress: string) => `Load ${load}${stress && `, ${stress}`}`,
  stretch: (index: number) => `Stretch ${index}`,
  stretchLines: (from: number, to: number) => `lines ${whole(from)} to ${whole(to)}`,
  stretchRows: (kept: number, rows: number) => `${whole(kept)} of ${whole(rows)} rows to the sheet`,
  stretchNone: (rows: number) => `${whole(rows)} rows, not to the sheet`,
  passedReadings: (load: number, passed: string) =>
    `Load ${load} is the next without readings: load ${passed} holds readings already`,
  passedStress: (load: number, stress: string, passed: string) =>
    `Goes to load ${load}: it is the next with ${stress} on the sheet. Passed over: ${passed}. If a stress on the sheet is typed wrong, correct it; else choose the load here`,
  noLoadOfStress: (stress: string, after: number) =>
    after === 0
      ? `No load of the sheet has ${stress}: correct a stress on the sheet that is typed wrong, or choose the load here`
      : `No load of the sheet after load ${after} has ${stress}: correct a stress on the sheet that is typed wrong, or choose the load here`,
  runsBack: (count: number) => `${whole(count)} rows run back in time and are left out`,
  join: "Join to the one before",
  split: "Begin another load at line",
  splitButton: "Split",
  splitWrong: "Enter a line that was read and lies within a stretch",
  twice: (loads: string) => `Given to more than one stretch: load ${loads}. Change one, or join the stretches.`,
  timesShared: (loads: readonly number[]) =>
    `Nothing is written to load ${loads.join(", ")}: the times stand in cells that other loads share, and those of the file would count for all of them. Name columns of times for these loads alone, or type the readings on the sheet.`,
  faultsTitle: (out: number, used: number) =>
    [
      out > 0 && `${whole(out)} ${out === 1 ? "line is" : "lines are"} left out`,
      used > 0 && `${whole(used)} ${used === 1 ? "is" : "are"} used with a remark`,
    ]
      .filter(Boolean)
      .join("; "),
  backwards: "The file begins with its newest line: its lines are read from the last to the first.",
  noFaults: "Every line is used.",
  fault: (line: number, said: string) => `Line ${whole(line)}: ${said}`,
  moreFaults: (count: number) => `and ${whole(count)} more, listed on the sheet of the file`,
  faults: {
    blank: "no reading or no time; left out",
    text: "not a number here; left out",
    code: "means no reading; left out",
    short: "cells are missing; left out",
    cut: "the last line is cut short; left out",
    "maybe-cut": "the last line may be cut short; used, compare it with the logger",
    heading: "a heading that comes again; left out",
    words: "words, no readings; left out",
    back: "time runs back; left out until it has passed the line before",
    repeat: "repeats the line before; left out",
    "same-time": "the same time as the line before with another reading; left out",
    "no-load": "no load; used, under the load around it",
    midnight: "midnight has passed; used, a day later",
    far: "far off all others; used: if it means no reading, add it to the numbers that do",
  },

  writeHeading: "Write to the data sheet",
  noSheet: "There is no data sheet in this workbook: insert one on the screen “Data sheet”, then come back here.",
  again: "Look again",
  looking: "Looking for data sheets…",
  holds: (load: number, count: number) =>
    `Load ${load} holds ${count} ${count === 1 ? "reading" : "readings"}: replace them`,
  inputs: {
    dial_factor: "Dial factor",
    dial_sense: "Readings on compression",
    zero_reading: "Zero reading",
  },
  fillBlank: (dates: number, temperatures: number) =>
    `Fill blank cells from the file: ${[
      ...(dates > 0 ? [dates === 1 ? "1 date" : `${dates} dates`] : []),
      ...(temperatures > 0 ? [temperatures === 1 ? "1 temperature" : `${temperatures} temperatures`] : []),
    ].join(", ")}`,
  fillIn: (name: string, wanted: string) => `Fill in ${name}: ${wanted}`,
  doesNotSuit: (name: string, now: string, wanted: string) =>
    `${name} is ${now} on the sheet; the readings of this file need ${wanted}`,
  longDivision: (name: string, now: string, unit: string) =>
    `${name} is ${now} on the sheet, but the readings of this file are divisions: is one division ${now} ${unit}?`,
  clear: (name: string) => `No: clear ${name}, to be typed on the sheet`,
  changeTo: (name: string, wanted: string) => `Change ${name} to ${wanted}`,
  keepAs: (name: string, now: string) => `Keep ${name} at ${now}`,
  /** Behind the choice to keep a cell: by how much the sheet will misread the file. */
  tooLarge: (times: string) => `every deformation comes out ${times} times too large`,
  tooSmall: (times: string) => `every deformation comes out ${times} times too small`,
  shifted: (by: string) => `every deformation is wrong by ${by} of the readings`,
  turnedRound: "compression is taken for swelling",
  chooseOne: "Choose one: the sheet would otherwise misread the file",
  staying: (count: number, loads: string) =>
    `It also applies to the readings that stay on the sheet: ${count === 1 ? "load" : "loads"} ${loads}.`,
  undecided: (names: string) => `Nothing can be written yet: choose above what counts for ${names}.`,
  inputChanged: (name: string, now: string, wanted: string, file: string) =>
    `${name} was changed from ${now} to ${wanted} for the readings of ${file}.`,
  inputKept: (name: string, now: string, wanted: string, file: string) =>
    `${name} was kept at ${now}, where the readings of ${file} need ${wanted}.`,
  inputCleared: (name: string, now: string, file: string) =>
    `${name} was ${now} and was cleared, because the readings of ${file} are divisions.`,
  inputLeft: (name: string, now: string, file: string) => `${name} was kept at ${now} for the divisions of ${file}.`,
  stressesToo: "Stresses are written where the sheet has none.",
  keep: (lines: number) => `Keep ${lines === 1 ? "the line" : `all ${whole(lines)} lines`} of the file in the workbook`,
  keepHint: (sheet: string) => `On a sheet of its own, “${sheet}”, with the file's name and hash.`,
  doesNotKeep: (sheet: string) =>
    `The file's name and hash are written to the sheet “${sheet}”, its lines are not: keep the file itself elsewhere.`,
  cannotKeep: (most: number) =>
    `The file is too long to be kept in a workbook, which takes ${whole(most)} lines. Its name and hash are kept; keep the file itself elsewhere.`,
  write: (count: number, sheet: string) => `Write ${count} ${count === 1 ? "load" : "loads"} to “${sheet}”`,
  nothingToWrite: "No load is to be written: give a stretch a load above, or agree to replace what its load holds.",
  keeping: "Keeping the lines of the file…",
  writing: "Writing the readings…",
  stoppedKeeping: (sheet: string, lines: number) =>
    `Stopped. Nothing was written to the data sheet. The sheet “${sheet}” holds the first ${whole(lines)} lines: write again to go on, or delete it.`,
  sheetRenamed: (sheet: string, now: string) =>
    `The sheet “${sheet}” was renamed to “${now}” while the file was being written. Nothing was written to the data sheet. Write again.`,
  sheetGone: (sheet: string) =>
    `The sheet “${sheet}” was deleted, or another workbook was opened, while the file was being written. Nothing was written to the data sheet. Bring it back (undo, or open its workbook), or choose another data sheet, and write again.`,
  linesStand: (sheet: string, lines: number) =>
    `The sheet “${sheet}” holds the first ${whole(lines)} lines of the file: delete it if it is not wanted.`,
  failedAfter: (sheet: string) => `The sheet “${sheet}” is there already and will be used again.`,
  done: (loads: string, sheet: string, fileSheet: string) =>
    `${loads} written to “${sheet}”. The file's name, hash and lines are on “${fileSheet}”.`,
  doneWithoutLines: (loads: string, sheet: string, fileSheet: string) =>
    `${loads} written to “${sheet}”. The file's name and hash are on “${fileSheet}”; its lines are not in the workbook: keep the file itself.`,
  notKept: (sheet: string, line: number) =>
    `Line ${whole(line)} of the file differs on the sheet “${sheet}”, because of a change or an undo in the meantime. Nothing was written to the data sheet. Write again; if that does not help, untick that the lines are kept.`,
  doneLoads: (count: number) => (count === 1 ? "One load was" : `${count} loads were`),
};
