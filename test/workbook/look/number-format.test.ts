/**
 * Numbers have three significant figures whatever their unit: the format itself, in the embedded sheet and in the pane.
 */
import "../embedded/engine-in-node";
import { convert, unitsOf } from "../../../src/reduction/units";
import { blankSheet } from "../../../src/datasheet";
import { toXlsx } from "../../../src/datasheet/xlsx";
import { numberText } from "../../../src/pane/text/number";
import { EmbeddedPort, newWorkbook } from "../../../src/workbook/embedded";
import { toEngineFormat, toExcelFormat } from "../../../src/workbook/embedded/look/formats";
import { LEVELS, partFor, THREE_FIGURES } from "../../../src/workbook/look/number-format";
import type { SheetPlan } from "../../../src/workbook/port";

/** Number of significant digits: "4.40e-08" has 3, "0.0432" has 3, "11.35" has 4. */
const figures = (shown: string): number =>
  shown
    .replace(/e.*$/i, "")
    .replace(/[^\d.]/g, "")
    .replace(/^0*\.?0*(?=[1-9])/, "")
    .replace(".", "").length;

test("partFor gives the section of a format for a number", () => {
  expect([4.4e-8, 0.0999, 0.1, 0.432, 1, 11.35].map((value) => partFor(THREE_FIGURES, value))).toEqual([
    "0.00E+00",
    "0.00E+00",
    "0.000",
    "0.000",
    "0.00",
    "0.00",
  ]);
  expect(partFor("[>=1]0.0;0.00", 1)).toBe("0.0");
  expect(partFor("[>=1]0.0;0.00", 0.5)).toBe("0.00");
  for (const plain of ["0.000", "0.0%", "yyyy-mm-dd", "0.00;-0.00"]) expect(partFor(plain, 0.01)).toBe(plain);
});

/** A cv of 1.4 m2/yr and an mv of 0.3 m2/MN in every unit that the sheet offers. */
const VALUES = [
  ...unitsOf("cv").map((unit) => [unit, convert(1.4, "cv", "m2/yr", unit)] as const),
  ...unitsOf("mv").map((unit) => [unit, convert(0.3, "mv", "m2/MN", unit)] as const),
];

const plan: SheetPlan = {
  ...blankSheet("SI", { readingRows: 1, loads: 1 }),
  rows: VALUES.length,
  cols: 2,
  names: { shown: { row: 0, col: 0, rows: VALUES.length, cols: 1 } },
  merges: [],
  entries: [],
  rowHeights: {},
  open: [],
  cells: [
    ...VALUES.map(([, value], row) => ({
      row,
      col: 0,
      kind: "result" as const,
      formula: `=1*${value}`,
      format: THREE_FIGURES,
    })),
    // A file with a data sheet has dynamic arrays.
    { row: 0, col: 1, kind: "result", formula: "=INDEX(A1:A2,1)" },
  ],
};

test.each(["as it is made", "saved and opened again"])(
  "the embedded sheet shows three figures or more, %s",
  async (how) => {
    const port = new EmbeddedPort(newWorkbook());
    if (how === "as it is made") await port.insertSheet(plan);
    else await port.insertFile(await toXlsx(plan));
    const { getters } = port.workbook.model;
    const sheetId = getters.getActiveSheetId();
    VALUES.forEach(([unit, value], row) => {
      const { formattedValue } = getters.getEvaluatedCell({ sheetId, row, col: 0 });
      expect([unit, formattedValue, figures(formattedValue) >= 3]).toEqual([unit, formattedValue, true]);
      expect(Number(formattedValue) / value).toBeCloseTo(1, 2);
    });
  },
);

test("the pane shows the same digits, and a file keeps the original format", () => {
  for (const [unit, value] of VALUES)
    expect([unit, figures(numberText(value, THREE_FIGURES)) >= 3]).toEqual([unit, true]);
  expect(numberText(4.4e-8, THREE_FIGURES)).toBe("4.40×10⁻⁸");
  expect(toExcelFormat(toEngineFormat(THREE_FIGURES))).toBe(THREE_FIGURES);
});

test.each([
  ["SI", ["2.014", "102.2", "16.655"]],
  ["US", ["2.014", "102.2", "0.01235"]],
] as const)(
  "the embedded sheet shows levels of readings rounded, %s, and a file keeps their format",
  async (system, shown) => {
    const numbers = [2.0140824, 102.20067, system === "SI" ? 16.655 : 0.0123456];
    const format = LEVELS[system];
    const port = new EmbeddedPort(newWorkbook());
    const cells = numbers.map((value, row) => ({
      row,
      col: 0,
      kind: "result" as const,
      formula: `=1*${value}`,
      format,
    }));
    await port.insertSheet({ ...plan, cells });
    const { getters } = port.workbook.model;
    const sheetId = getters.getActiveSheetId();
    const at = (row: number): string => getters.getEvaluatedCell({ sheetId, row, col: 0 }).formattedValue;
    expect(numbers.map((_, row) => at(row))).toEqual(shown);
    expect(toExcelFormat(toEngineFormat(format))).toBe(format);
  },
);
