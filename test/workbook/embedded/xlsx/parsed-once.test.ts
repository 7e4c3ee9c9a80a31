/** What the add-in reads of a file itself is not parsed again for the engine, which parses every part that it is given with each sheet. */
import "../engine-in-node";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../../src/workbook/embedded";
import type { SheetPlan } from "../../../../src/workbook/port";

const box = (row: number, col: number, rows = 1) => ({ row, col, rows, cols: 1 });
const axis = { label: "x", scale: "linear", domain: [0, 9], reversed: false } as const;

const sheet = (name: string): SheetPlan => ({
  ...{ name, rows: 20, cols: 5, columnWidths: {}, merges: [], freezeRows: 0 },
  names: { mass: box(1, 0) },
  cells: [
    { row: 1, col: 0, kind: "input", value: 61.25, note: "weighed twice" },
    { row: 2, col: 0, kind: "input", value: "ring 7" },
    { row: 3, col: 0, kind: "result", formula: "={mass}*2" },
  ],
  charts: [
    {
      ...{ title: "readings", box: { row: 5, col: 1, rows: 9, cols: 3 }, x: axis, y: axis },
      series: [{ name: "readings", x: { box: box(1, 0, 3) }, y: { box: box(1, 0, 3) }, style: "points" }],
    },
  ],
});

test("our charts, the notes, the texts and the names of a file are parsed once", async () => {
  const port = new EmbeddedPort(newWorkbook());
  for (const name of ["First", "Second", "Third"]) await port.insertSheet(sheet(name));
  const bytes = await saveXlsx(port.workbook);
  const parse = jest.spyOn(DOMParser.prototype, "parseFromString");
  const { workbook } = openXlsx(bytes);
  const texts = parse.mock.calls.map(([text]) => text);
  parse.mockRestore();
  const parsed = (element: string): number => texts.filter((text) => text.includes(`${element}>`)).length;
  expect(workbook.model.getters.getSheetIds()).toHaveLength(4);
  expect({
    charts: parsed("scatterChart"),
    notes: parsed("commentList"),
    texts: parsed("</si"),
    names: parsed("definedNames"),
  }).toEqual({ charts: 3, notes: 3, texts: 1, names: 1 });
});
