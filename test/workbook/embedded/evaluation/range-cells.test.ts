/** The cells of a range are those that the engine itself gives. */
import "../engine-in-node";
import { helpers, registries } from "@odoo/o-spreadsheet";
import { EmbeddedPort, newWorkbook } from "../../../../src/workbook/embedded";
import { Model } from "../../../../src/workbook/embedded/engine";
import type { Evaluator, SheetRange } from "../../../../src/workbook/embedded/evaluation/engine-parts";
import { evaluationOf } from "../../../../src/workbook/embedded/evaluation/plugin";
import { toZone } from "../../../../src/workbook/embedded/zones";
import { boxOf } from "../../../../src/workbook/address";

const ROWS = 30;

const cells = {
  A1: "1",
  A2: "=A1+1",
  A3: "text",
  A4: "=1/0",
  A5: "'https://example.org",
  A6: "https://example.org",
  B2: "=TRANSPOSE(A1:D1)",
  C3: "=SUM(B1:E3)",
  D1: "TRUE",
  F1: "=TRANSPOSE(A1:A3)",
  G1: "in the way",
};

function workbook(): Model {
  const model = new Model({
    sheets: [
      { id: "one", name: "One", colNumber: 10, rowNumber: ROWS, cells, formats: { "H1:H9": 1 } },
      { id: "two", name: "Two", colNumber: 3, rowNumber: 5, cells: { A1: "=One!A2*2" } },
    ],
    formats: { 1: "0.00" },
  } as object);
  // A formula that gave several cells, and is deleted.
  model.dispatch("UPDATE_CELL", { sheetId: "one", col: 0, row: 19, content: "=TRANSPOSE(A1:A3)" });
  model.dispatch("UPDATE_CELL", { sheetId: "one", col: 0, row: 19, content: "" });
  return model;
}

const evaluatorOf = (model: Model): Evaluator => evaluationOf(model as never).evaluator;

const inSheet = (sheetId: string, address: string): SheetRange => ({ sheetId, zone: toZone(boxOf(address)!) });

const RANGES = [
  ...["A1:A6", "A1:J30", "B1:E4", "H1:I9", "F1:H3", "C3:C3", "J30:J30", "A20:C20"].map((one) => inSheet("one", one)),
  inSheet("two", "A1:C5"),
  // Beyond the sheet, and on no sheet.
  inSheet("two", "A1:F9"),
  inSheet("two", "E7:F9"),
  { ...inSheet("two", "A1:B2"), sheetId: "", invalidSheetName: "Three" },
];

test.each([false, true])("evaluated before: %s", (isEvaluated) => {
  const own = evaluatorOf(workbook());
  const engine = evaluatorOf(workbook());
  own.updateCompilationParameters();
  // The engine's own methods, without the corrections.
  const { computeAndSave, updateCompilationParameters } = Object.getPrototypeOf(engine);
  engine.computeAndSave = computeAndSave;
  updateCompilationParameters.call(engine);
  for (const evaluator of [own, engine])
    if (!isEvaluated) evaluator.clearEvaluatedRanges([inSheet("one", "A1:J30"), inSheet("two", "A1:C5")]);
  for (const range of RANGES) {
    const found = own.compilationParams.ensureRange(range);
    expect(found).toEqual(engine.compilationParams.ensureRange(range));
    expect(own.compilationParams.ensureRange(range)).toBe(found);
  }
});

test("blank cells are the same in the next evaluation, and a cell that was blank before has its value", () => {
  const model = workbook();
  const evaluator = evaluatorOf(model);
  const read = () => {
    evaluator.updateCompilationParameters();
    return evaluator.compilationParams.ensureRange(inSheet("one", "A7:A12"))[0];
  };
  const before = read();
  expect(before.map(({ value }) => value)).toEqual([null, null, null, null, null, null]);
  model.dispatch("UPDATE_CELL", { sheetId: "one", col: 0, row: 7, content: "8" } as never);
  const after = read();
  expect(after.map(({ value }) => value)).toEqual([null, 8, null, null, null, null]);
  expect(after[0]).toBe(before[0]);
  model.dispatch("UPDATE_CELL", { sheetId: "one", col: 0, row: 7, content: "=TRANSPOSE(D1:F1)" } as never);
  model.dispatch("UPDATE_CELL", { sheetId: "one", col: 0, row: 7, content: "" } as never);
  model.dispatch("UPDATE_CELL", { sheetId: "one", col: 0, row: 8, content: "=SEQUENCE(3)" } as never);
  expect(read().map(({ value }) => value)).toEqual([null, null, 1, 2, 3, null]);
});

/** The ranges that formulas were given, while a sheet was inserted whose columns A to E read the same ranges. */
async function givenTo(content: string): Promise<{ readonly given: Set<unknown>; readonly values: unknown }> {
  const given = new Set<unknown>();
  registries.functionRegistry.add("GIVEN", {
    description: "Keeps the range that it is given.",
    args: [helpers.arg("range (any, range<any>)", "")],
    // The engine's type of a computation does not tell the arguments of one function.
    compute: ((range: unknown) => {
      given.add(range);
      return 1;
    }) as never,
  });
  try {
    const port = new EmbeddedPort(newWorkbook());
    await port.writeCells("Sheet1", [{ row: 0, col: 0, value: 7 }]);
    const name = await port.insertSheet({
      ...{ name: "Reader", rows: 40, cols: 8, columnWidths: {}, merges: [], freezeRows: 0, names: {} },
      cells: [
        ...[0, 1, 2, 3, 4].map((col) => ({ row: 0, col, kind: "result" as const, formula: `=${content}` })),
        { row: 30, col: 6, kind: "input", value: 3 },
        { row: 30, col: 7, kind: "result", formula: "=SEQUENCE(3)" },
      ],
    });
    return { given, values: await port.values(name, "A1:E1") };
  } finally {
    // The type of the registry does not tell that entries can be removed.
    (registries.functionRegistry as unknown as { remove(key: string): void }).remove("GIVEN");
  }
}

test.each([
  ["of another sheet", "GIVEN(Sheet1!A1:A90)", 1, 1],
  ["of the sheet itself without a formula", "GIVEN(F2:G40)+SUM(F2:G40)", 1, 4],
  ["of the sheet itself with a formula", "GIVEN(F2:H40)+SUM(F2:H40)", 2, 10],
])(
  "columns of a new sheet that read the same range %s are given its cells so many times, and again when a formula has filled blank ones",
  async (_, content, times, value) => {
    const { given, values } = await givenTo(content);
    expect(values).toEqual([Array(5).fill(value)]);
    expect(given.size).toBe(times);
  },
);
