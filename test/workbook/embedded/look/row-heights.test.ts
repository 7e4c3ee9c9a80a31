/** The heights of rows are those that the engine finds, and a number on one line is not measured. */
import "../engine-in-node";
import { registries } from "@odoo/o-spreadsheet";
import { newWorkbook } from "../../../../src/workbook/embedded";
import { runBatch, type Command } from "../../../../src/workbook/embedded/engine";
import fc from "../../../properties";

type Heights = { prototype: { getCellHeight(place: object): number } };
// The engine's types do not include the inner parts of its plugins.
const OURS = registries.coreViewsPluginRegistry.get("row_size") as unknown as Heights;
const ENGINES = Object.getPrototypeOf(OURS) as Heights;

/** The texts that were measured. A letter is as wide as its font is high, and a bold or an italic font is higher. */
const measured: string[] = [];
const context = {
  ...{ save: () => undefined, restore: () => undefined, font: "" },
  measureText(text: string) {
    measured.push(text);
    const { font } = context;
    const size = Number(/(\d+)px/.exec(font)![1]) + (font.includes("bold") ? 3 : 0) + (font.includes("italic") ? 5 : 0);
    return { width: size * text.length, fontBoundingBoxAscent: size, fontBoundingBoxDescent: 0 };
  },
};
let canvas: jest.SpyInstance;
let compared: jest.SpyInstance | undefined;
beforeEach(() => {
  canvas = jest.spyOn(OffscreenCanvas.prototype, "getContext").mockImplementation(() => context as never);
  measured.length = 0;
});
afterEach(() => {
  canvas.mockRestore();
  compared?.mockRestore();
});

const typed = (row: number, content: string, format?: string): Command => ({ type: "UPDATE_CELL", sheetId: "sheet1", row, col: 1, content, format }); // prettier-ignore
const styled = (row: number, style: object): Command => ({ type: "SET_FORMATTING", sheetId: "sheet1", target: [{ left: 1, right: 1, top: row, bottom: row }], style }); // prettier-ignore
const merged = (row: number): Command => ({ type: "ADD_MERGE", sheetId: "sheet1", target: [{ left: 1, right: 1, top: row, bottom: row + 1 }], force: true }); // prettier-ignore

/** The engine keeps what it has measured in a font: no other test has these sizes. */
const SIZES = [29, 43];
const first = [0, 1, 2, 3, 4].map((row) => styled(row, { fontSize: SIZES[0] }));

const style = fc.record(
  {
    fontSize: fc.constantFrom(...SIZES),
    bold: fc.boolean(),
    italic: fc.boolean(),
    wrapping: fc.constantFrom("wrap", "overflow", "clip"),
    rotation: fc.constantFrom(0, 0.7),
  },
  { requiredKeys: [] },
);
/** Numbers that no other test has, in any format. */
const NUMBERS = ["41234.5179", "-317.2519", "1.5179E-7", "12345678901234567890"];
const content = fc.constantFrom(...NUMBERS, "two words", "two\nlines", "=1/3", "");
const format = fc.constantFrom(undefined, "0.000000000", "@");
const command = fc.oneof(
  fc.tuple(fc.nat(4), content, format).map((given) => typed(...given)),
  fc.tuple(fc.nat(4), style).map((given) => styled(...given)),
  fc.nat(3).map(merged),
);

test("every cell is as high as the engine finds it, whatever it holds and however it looks", () => {
  const ours = OURS.prototype.getCellHeight;
  const found: { readonly ours: number; readonly engine: number }[] = [];
  compared = jest.spyOn(OURS.prototype, "getCellHeight").mockImplementation(function (this: object, place) {
    const height = ours.call(this, place);
    found.push({ ours: height, engine: ENGINES.prototype.getCellHeight.call(this, place) });
    return height;
  });
  fc.assert(
    fc.property(fc.array(command, { minLength: 20, maxLength: 40 }), (commands) => {
      found.length = 0;
      const { model } = newWorkbook();
      runBatch(model, [...first, ...commands]);
      expect(found.map(({ ours }) => ours)).toEqual(found.map(({ engine }) => engine));
    }),
    { numRuns: 100 },
  );
});

test("of many numbers in one font, one is measured; each makes its row as high as the font", () => {
  const { model } = newWorkbook();
  const rows = Array.from({ length: 40 }, (_, row) => row);
  runBatch(model, [styled(0, {}), ...rows.map((row) => styled(row, { fontSize: 37 }))]);
  measured.length = 0;
  runBatch(model, rows.map((row) => typed(row, String(row * 1.37)))); // prettier-ignore
  expect(measured).toHaveLength(1);
  const heights = new Set(rows.map((row) => model.getters.getRowSize("sheet1", row)));
  // 37 points are 49 px, and the engine adds 3 px above and below.
  expect([...heights]).toEqual([55]);
});
