export const register = {
  heading: "Register",
  purpose:
    "Rings, frames, dials and balances, with their sizes and the days of their calibration, on a sheet of this workbook.",
  open: "Look at the register",
  mode: "Values of the register stand on this sheet",
  modes: { frozen: "frozen, with the day", live: "as live formulas" },
  modeHints: {
    frozen: "They stay as they are today, whatever the register says later.",
    live: "They follow the register. Where it has no such number, the value of today stays, and the sheet says so.",
  },
  takenLive: (sheet: string, count: number) =>
    count === 1 ? `One formula is written to “${sheet}”.` : `${count} formulas are written to “${sheet}”.`,
  none: "This workbook has no register yet.",
  insert: "Insert a register",
  inserted: (sheet: string) => `“${sheet}” is inserted: enter the equipment there, one row for each.`,
  noUnit: (sheet: string) => `“${sheet}” does not say its unit of length: choose one above the table.`,
  several: (used: string) => `The workbook has several registers: “${used}” is used.`,
  kinds: { ring: "ring", frame: "frame", dial: "dial", balance: "balance" },
  nothing:
    "The data sheet names no ring, frame, dial or balance yet: enter their numbers, and what the register has is offered here.",
  unknown: (kind: string, number: string) =>
    `The register has no ${kind} “${number}”. The sheet keeps what it has: check the number, or enter it in the register.`,
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
  },
  line: (what: string, registered: string) => `${what}: ${registered}`,
  instead: (held: string) => `instead of ${held}`,
  same: (count: number) =>
    count === 1 ? "One value is the register's already." : `${count} values are the register's already.`,
  take: "Take the chosen values",
  takenFrom: (register: string, day: string) => `${register}, ${day}`,
  taken: (sheet: string, count: number) =>
    count === 1
      ? `One value is written to “${sheet}”, with the day.`
      : `${count} values are written to “${sheet}”, with the day.`,
  measured: "Measured sizes stay as they were typed: the checks compare them with the register's.",
};
