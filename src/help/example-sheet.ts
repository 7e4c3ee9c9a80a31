/**
 * The sheet of the examples on the help page: copied to A1 of an empty sheet, it lets a reader try every example. The
 * load of 400 kPa and the whole test come from the invented demonstration (src/datasheet/demo-test), rounded.
 */
export type Cell = number | string;

interface Column {
  readonly heading: string;
  readonly cells: readonly Cell[];
}

export const EXAMPLE_SHEET: readonly Column[] = [
  { heading: "Time (min)", cells: [0, 0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440] },
  {
    heading: "Reading (mm)",
    cells: [3.056, 3.194, 3.236, 3.282, 3.348, 3.442, 3.576, 3.768, 4.004, 4.296, 4.506, 4.594, 4.65, 4.71, 4.814],
  },
  {
    heading: "Stress (kPa)",
    cells: [5, 12.5, 25, 50, 100, 200, 400, 100, 25, 100, 400, 800, 1600, 3200, 800, 200, 50],
  },
  {
    heading: "Void ratio",
    cells: [
      1.45, 1.4241, 1.4045, 1.3851, 1.3629, 1.2361, 1.0675, 1.1066, 1.1457, 1.1065, 1.0675, 0.8989, 0.7302, 0.5618,
      0.6008, 0.64, 0.6791,
    ],
  },
  { heading: "Calibration stress (kPa)", cells: [12.5, 25, 50, 100, 200, 400] },
  { heading: "Deflection (mm)", cells: [0.008, 0.014, 0.021, 0.029, 0.038, 0.048] },
  { heading: "Pick", cells: ["tail_from", "straight_to"] },
  { heading: "Value", cells: [240, 15] },
  { heading: "Load", cells: [6, 6, 7] },
  { heading: "Pick of load", cells: ["d0", "d100", "d0"] },
  { heading: "Value of pick", cells: [3.09, 4.55, 4.81] },
  { heading: "Load number", cells: [1, 2, 3, 4] },
  {
    heading: "Remark on load",
    cells: ["the tail is short", "ok", "ok", "the tail is short"],
  },
  {
    heading: "Name",
    cells: [
      "diameter",
      "registered_diameter",
      "ring_mass",
      "ring_and_wet_before",
      "ring_and_dry",
      "specific_gravity",
      "length_unit",
    ],
  },
  { heading: "Value of name", cells: [63.5, 61.8, 74.36, 211.04, 163.67, 2.72, "mm"] },
  { heading: "Load of cv (kPa)", cells: [25, 50, 100, 200, 400, 800, 1600] },
  { heading: "cv (m2/yr)", cells: [8.2, "not read", 6.1, 2.4, 1.3, 1.2, 1.1] },
  { heading: "Wetted under (kPa)", cells: [25, 50, 100, 200] },
  { heading: "Strain on wetting", cells: [-0.061, -0.028, -0.006, 0.011] },
  { heading: "Loaded back to (kPa)", cells: [10, 20, 40, 80, 160, 320] },
  { heading: "Strain after swelling", cells: [-0.072, -0.063, -0.047, -0.026, -0.003, 0.024] },
];

const ROWS = 1 + Math.max(...EXAMPLE_SHEET.map(({ cells }) => cells.length));

/** The rows of the sheet, headings first, blanks as null. */
export const exampleRows = (): (Cell | null)[][] =>
  Array.from({ length: ROWS }, (_, row) =>
    EXAMPLE_SHEET.map(({ heading, cells }) => (row === 0 ? heading : (cells[row - 1] ?? null))),
  );
