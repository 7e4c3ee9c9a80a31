/** A model that is made in steps equals one that the engine makes at once, and every formula is calculated as often. */
import "../engine-in-node";
import { CompiledFormula, registries } from "@odoo/o-spreadsheet";
import fc from "../../../properties";
import { newWorkbook } from "../../../../src/workbook/embedded";
import { Model, plainData, runBatch, type Command } from "../../../../src/workbook/embedded/engine";
import { columnBands } from "../../../../src/workbook/embedded/evaluation/column-bands";
import { dataBySheet, making } from "../../../../src/workbook/embedded/evaluation/making";
import { ONLY_COPIED } from "../../../../src/workbook/embedded/evaluation/plugin";
import { atOnce } from "../../../../src/workbook/in-slices";
import { counted, sheetCommands, shown, zone } from "./sheets";

const CELLS = [
  "5",
  "=mass_1+mass_2",
  "=COUNTED(D4)",
  "=SUM(list_2)",
  "='Sheet 2'!B1",
  "=SEQUENCE(4)",
  "=F1",
  "=SUM(A1:F9)",
];

const cell = fc.record({
  sheetId: fc.constantFrom("s1", "s2", "s3"),
  row: fc.nat(8),
  col: fc.nat(5),
  content: fc.constantFrom(...CELLS),
});

const LOOKS: readonly Command[] = [
  { type: "ADD_MERGE", sheetId: "s2", target: [zone(10, 0, 2)], force: true },
  { type: "SET_FORMATTING", sheetId: "s1", target: [zone(0, 0, 4)], style: { bold: true }, format: "0.00" },
  { type: "SET_ZONE_BORDERS", sheetId: "s3", target: [zone(3, 1, 2)], border: { position: "all", style: "thin", color: "#000" } }, // prettier-ignore
];

function dataWith(cells: readonly object[]): object {
  const { model } = newWorkbook();
  runBatch(model, [1, 2, 3].flatMap(sheetCommands));
  runBatch(model, [...LOOKS, ...cells.map((one) => ({ type: "UPDATE_CELL", ...one }))]);
  return plainData(model);
}

/** The engine changes the data that it is given, and takes only objects of its own realm. */
const copyOf = (data: object): object => JSON.parse(JSON.stringify(data));

const inSteps = (data: object): Model => atOnce(making(() => new Model(copyOf(data))));

test("values, contents and looks are the same, whatever the sheets read of one another", () => {
  fc.assert(
    fc.property(fc.array(cell, { maxLength: 12 }), (cells) => {
      const data = dataWith(cells);
      const model = inSteps(data);
      expect(shown(model)).toEqual(shown(new Model(copyOf(data))));
      expect(plainData(model)).toEqual({ ...data, revisionId: expect.anything() });
    }),
    { numRuns: 60 },
  );
});

test("a sheet with many formulas is read in several bands of columns, and is the same", () => {
  const wide = Array.from({ length: 240 }, (_, at) => ({
    ...{ sheetId: "s2", row: 20 + (at % 40), col: 3 * Math.floor(at / 40) },
    content: at === 0 ? "1" : `=${at % 40 === 0 ? `N(A59)+${at}` : `SUM(A${20 + (at % 40)}:B${20 + (at % 40)})`}`,
  }));
  const looks: readonly Command[] = [
    { type: "ADD_MERGE", sheetId: "s2", target: [zone(12, 23, 24)], force: true },
    { type: "SET_FORMATTING", sheetId: "s2", target: [{ left: 1, right: 9, top: 19, bottom: 70 }], style: { bold: true }, format: "0.00" }, // prettier-ignore
    { type: "SET_ZONE_BORDERS", sheetId: "s2", target: [{ left: 2, right: 11, top: 19, bottom: 22 }], border: { position: "all", style: "thin", color: "#000" } }, // prettier-ignore
  ];
  const { model: source } = newWorkbook();
  runBatch(source, [1, 2, 3].flatMap(sheetCommands));
  runBatch(source, [
    { type: "ADD_COLUMNS_ROWS", sheetId: "s2", sheetName: "Sheet 2", dimension: "ROW", base: 5, position: "after", quantity: 80 }, // prettier-ignore
    { type: "ADD_COLUMNS_ROWS", sheetId: "s2", sheetName: "Sheet 2", dimension: "COL", base: 3, position: "after", quantity: 20 }, // prettier-ignore
    ...looks,
    ...wide.map((one) => ({ type: "UPDATE_CELL", ...one })),
  ]);
  const data = plainData(source);
  const sheet = (data as { sheets: { id: string; cells: Record<string, string>; styles: object; formats: object }[] }).sheets.find(({ id }) => id === "s2")!; // prettier-ignore
  expect(columnBands(sheet as never).length).toBeGreaterThan(2);
  const Borders = registries.corePluginRegistry.get("borders");
  const ofMerges = jest.spyOn(Borders.prototype as unknown as { addBordersToMerge(): void }, "addBordersToMerge");
  const model = inSteps(data);
  // The borders of the merge are read once, and not with every band.
  expect(ofMerges).toHaveBeenCalledTimes(1);
  ofMerges.mockRestore();
  expect(plainData(model)).toEqual({ ...data, revisionId: expect.anything() });
  expect(shown(model)).toEqual(shown(new Model(copyOf(data))));
});

test("the heights of rows and the colours in use are the same", () => {
  // Without a browser the engine measures no heights of texts: here each is as high as its font says.
  const context = { save: () => undefined, restore: () => undefined, font: "", measureText: () => ({ width: 1, fontBoundingBoxAscent: parseFloat(context.font.replace(/\D*/, "")), fontBoundingBoxDescent: 0 }) }; // prettier-ignore
  const canvas = jest.spyOn(OffscreenCanvas.prototype, "getContext").mockImplementation(() => context as never);
  const { model: source } = newWorkbook();
  runBatch(source, [1, 2, 3].flatMap(sheetCommands));
  runBatch(source, [
    { type: "SET_FORMATTING", sheetId: "s1", target: [zone(1, 0, 2)], style: { fontSize: 30, fillColor: "#123456" } },
    { type: "SET_FORMATTING", sheetId: "s3", target: [zone(0, 3, 4)], style: { fontSize: 40, textColor: "#654321" } },
    { type: "UPDATE_CELL", sheetId: "s1", col: 0, row: 1, content: "high" },
  ]);
  const data = plainData(source);
  const lookOf = ({ getters }: Model) => ({
    colours: getters.getCustomColors(),
    heights: getters.getSheetIds().map((id) => [0, 1, 2, 3, 4, 5].map((row) => getters.getRowSize(id, row))),
  });
  const model = inSteps(data);
  const atOnceMade = new Model(copyOf(data));
  expect(lookOf(model)).toEqual(lookOf(atOnceMade));
  expect(Math.max(...lookOf(model).heights.flat())).toBeGreaterThan(30);
  expect(lookOf(model).colours).toEqual(expect.arrayContaining(["#123456", "#654321"]));
  // A later change adds its colour, and makes its row higher.
  for (const one of [model, atOnceMade])
    runBatch(one, [{ type: "SET_FORMATTING", sheetId: "s2", target: [zone(0, 1, 1)], style: { fillColor: "#ABCDEF", fontSize: 50 } }]); // prettier-ignore
  expect(lookOf(model)).toEqual(lookOf(atOnceMade));
  expect(lookOf(model).colours).toContain("#ABCDEF");
  canvas.mockRestore();
});

test("the cells with a function that the engine follows are the same, and a later formula joins them", () => {
  const { model: source } = newWorkbook();
  runBatch(source, [1, 2, 3].flatMap(sheetCommands));
  const typed = (sheetId: string, row: number, content: string): Command => ({ type: "UPDATE_CELL", sheetId, col: 5, row, content }); // prettier-ignore
  runBatch(source, [typed("s1", 5, "=SUBTOTAL(9,A1:A3)"), typed("s3", 6, "=1+subtotal(9,A1:A3)"), typed("s3", 7, "=SUM(A1)"), typed("s3", 8, "=Aggregate(9,5,A1:A3)")]); // prettier-ignore
  const data = plainData(source);
  const followed = ({ getters }: Model) =>
    getters.getCellsWithTrackedFormula("SUBTOTAL").map((id) => getters.getCellPosition(id)).sort((a, b) => a.row - b.row); // prettier-ignore
  const model = inSteps(data);
  const [first, second, third] = [{ sheetId: "s1", col: 5, row: 5 }, { sheetId: "s3", col: 5, row: 6 }, { sheetId: "s3", col: 5, row: 8 }]; // prettier-ignore
  expect(followed(new Model(copyOf(data)))).toEqual([first, second, third]);
  expect(followed(model)).toEqual([first, second, third]);
  runBatch(model, [typed("s2", 9, "=SUBTOTAL(9,A1:A3)"), typed("s1", 5, "=2")]);
  expect(followed(model)).toEqual([second, third, { sheetId: "s2", col: 5, row: 9 }]);
});

test("a model that is only copied follows no cells, and takes a formula", () => {
  const data = dataWith([]);
  const model = atOnce(making(() => new Model(copyOf(data), ONLY_COPIED)));
  expect(model.dispatch("UPDATE_CELL", { sheetId: "s1", row: 0, col: 0, content: "=SUBTOTAL(9,B1)" })).toMatchObject({ isSuccessful: true }); // prettier-ignore
  expect(model.getters.getCellsWithTrackedFormula("SUBTOTAL")).toHaveLength(1);
});

test("a formula is calculated once, and again when a cell that it reads is changed", () => {
  const data = dataWith([]);
  let model!: Model;
  expect(counted(() => (model = inSteps(data)))).toBe(counted(() => new Model(copyOf(data))));
  const type = (content: string) => model.dispatch("UPDATE_CELL", { sheetId: "s1", row: 0, col: 0, content });
  expect(counted(() => type("70"))).toBe(1);
  expect(shown(model)).toEqual(shown(new Model(copyOf(plainData(model)))));
  model.dispatch("REQUEST_UNDO");
  expect(shown(model)).toEqual(shown(new Model(copyOf(data))));
});

test("the sheet that comes first is in front, as if the engine had made the model", () => {
  expect(inSteps(dataWith([])).getters.getActiveSheetId()).toBe("sheet1");
});

test("columns that read a range into which a later column spills show what it spills", () => {
  const cells = {
    A1: "=SUM(list)",
    A2: "=MATCH(3,list,0)",
    B1: "=COUNT(D1:D9)",
    D1: "=SEQUENCE(4)",
    F1: "=SUM(list)",
    F2: "=MATCH(3,list,0)",
    F3: "=COUNT(D1:D9)",
  };
  const data = { sheets: [{ id: "s", name: "S", cells }], namedRanges: { list: "S!D1:D9" } };
  const model = inSteps(data);
  const value = (col: number, row: number) => model.getters.getEvaluatedCell({ sheetId: "s", col, row }).value;
  expect([value(0, 0), value(0, 1), value(1, 0)]).toEqual([10, 3, 4]);
  expect([value(5, 0), value(5, 1), value(5, 2)]).toEqual([10, 3, 4]);
});

test("the data of a workbook sheet by sheet are those of the whole; before a sheet is asked for, none of its cells is gone through", () => {
  const { model } = newWorkbook();
  runBatch(model, [1, 2, 3].flatMap(sheetCommands));
  runBatch(model, LOOKS);
  const texts = jest.spyOn(CompiledFormula.prototype, "toFormulaString");
  // The engine gives the data of a workbook without types.
  const { data, withCells } = dataBySheet(() => plainData(model) as any);
  expect(texts).not.toHaveBeenCalled();
  texts.mockRestore();
  const whole = plainData(model) as any;
  const spelt = ({ styles, formats, borders }: any, sheet: any) => ({
    ...sheet,
    ...Object.fromEntries(
      Object.entries({ styles, formats, borders }).map(([kind, list]: [string, any]) => [
        kind,
        Object.fromEntries(Object.entries(sheet[kind]).map(([at, id]) => [at, list[id as string]])),
      ]),
    ),
  });
  for (const [at, sheet] of data.sheets.entries())
    expect(spelt(withCells(sheet), sheet)).toEqual(spelt(whole, whole.sheets[at]));
});
