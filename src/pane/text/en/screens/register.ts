export const register = {
  heading: "Register",
  purpose:
    "Rings, frames, dials, balances and deflection sets, with their values and the days of their calibration, on a sheet of this workbook or in a file of the firm.",
  open: "Look at the register",
  mode: "Values of the register stand on this sheet",
  modes: { frozen: "frozen, with the day", live: "as live formulas" },
  modeHints: {
    frozen: "They stay as they are today, whatever the register says later.",
    live: "They follow the register. Where it has no such number, the value of today stays, and the sheet says so.",
  },
  takenLive: (sheet: string, count: number) =>
    count === 1 ? `One formula is written to “${sheet}”.` : `${count} formulas are written to “${sheet}”.`,
  changedMeanwhile: (sheet: string) =>
    `“${sheet}” was changed in the meantime where this would be written. Nothing was written: look at it, and try again.`,
  none: "This workbook has no register yet.",
  insert: "Insert a register",
  inserted: (sheet: string) => `“${sheet}” is inserted: enter the equipment there, one row for each.`,
  noUnit: (sheet: string) => `“${sheet}” does not say its unit of length: choose one above the table.`,
  several: (used: string) => `The workbook has several registers: “${used}” is used.`,
  kinds: { ring: "ring", frame: "frame", dial: "dial", balance: "balance", "deflection set": "deflection set" },
  nothing:
    "The data sheet names no ring, frame, dial, balance or deflection set yet: enter their numbers, and what the register has is offered here.",
  unknown: (kind: string, number: string, cell: string | undefined) =>
    `The register has no ${kind} “${number}”${cell ? ` (cell ${cell})` : ""}. The sheet keeps what it has: check the number, or enter it in the register.`,
  repeated: (kind: string, number: string) =>
    `The register has the ${kind} “${number}” in several rows: the last one counts.`,
  cells: {
    registered_diameter: "Ring, diameter",
    registered_height: "Ring, height",
    registered_ring_mass: "Ring, mass",
    lever_ratio: "Frame, lever ratio",
    frame_calibration_due: "Frame, calibration due",
    dial_factor: "Dial, factor",
    dial_calibration_due: "Dial, calibration due",
    balance_calibration_due: "Balance, calibration due",
    deflection_set_frame: "Deflection set, frame",
    deflection_set_due: "Deflection set, calibration due",
    calibration_date: "Deflection set, day, disks and paper",
    apparatus_stress: "Deflection set, table",
  },
  line: (what: string, registered: string) => `${what}: ${registered}`,
  instead: (held: string) => `instead of ${held}`,
  same: (count: number) =>
    count === 1 ? "One value is the register's already." : `${count} values are the register's already.`,
  take: "Take the chosen values",
  rows: (count: number) => (count === 1 ? "1 row" : `${count} rows`),
  withoutTable: (number: string) =>
    `The register has the deflection set “${number}” without deflections, or with more rows than the table of the sheet. The sheet keeps its table: look at the rows of the set in the register.`,
  file: "Read a register file",
  fileHint:
    "A register in an .xlsx of the firm is read by its names and is not inserted. Its values come in as constants, with file, day and SHA-256; read again, a changed file is told of.",
  noRegisterIn: (file: string) =>
    `“${file}” has no register: choose a file whose cells have the names of an inserted register (register_kind, register_number and the others).`,
  fileRead: (file: string) => `Read: ${file}.`,
  fileSame: (file: string, day: string) => `${file} has not changed since its values were taken on ${day}.`,
  fileChanged: (file: string, day: string) =>
    `${file} has changed since its values were taken on ${day}. The sheet keeps what it has: values that differ are below.`,
  ownAgain: (sheet: string) => `Look at “${sheet}” again`,
  set: {
    heading: "Deflection set from a run on a disk",
    purpose:
      "For a run on a metal disk in the place of the specimen, entered on this sheet like a test: the reading at the end of each load, less the reading under the seating stress.",
    found: (rows: number, from: string, to: string, most: string) =>
      `The loads of this sheet give ${rows} stresses from ${from} to ${to}; the greatest deflection on loading is ${most}.`,
    fields: { number: "Number of the set", frame: "Frame", disks: "Porous disks", paper: "Filter paper", by: "By" },
    write: (register: string) => `Write the set to “${register}”`,
    written: (number: string, register: string, rows: number) =>
      `Deflection set “${number}” is written to “${register}”, ${rows} rows. Enter there when it is due.`,
    refused: {
      "no number": "Enter a number for the set.",
      "number taken": "The register has a deflection set of this number already: enter another number.",
      "no table": "This register has no table of deflection sets: insert a new register, and copy the equipment there.",
      "no units": "The register does not say its units of length and stress: choose them above the table.",
      "no room": "The register has no blank rows left for the set: insert rows in its tables.",
    },
  },
  taken: (sheet: string, count: number) =>
    count === 1
      ? `One value is written to “${sheet}”, with the day.`
      : `${count} values are written to “${sheet}”, with the day.`,
  measured: "Measured sizes stay as they were typed: the checks compare them with the register's.",
};
