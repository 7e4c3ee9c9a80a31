/** The rules of entry in a file are those that the engine writes for the whole workbook, and it is asked once for equal ones. */
import "../../engine-in-node";
import { strFromU8, unzipSync } from "fflate";
import { newWorkbook, saveXlsx } from "../../../../../src/workbook/embedded";
import { Model, runBatch, type Command } from "../../../../../src/workbook/embedded/engine";

const PICTURE = "data:image/png;base64,iVBORw0KGgo=";

const rule = (sheetId: string, row: number, criterion: object, isBlocking = true): Command => ({
  ...{
    type: "ADD_DATA_VALIDATION_RULE",
    sheetId,
    ranges: [{ _sheetId: sheetId, _zone: { left: 0, right: 0, top: row, bottom: row + 1 } }],
  },
  rule: { id: `${sheetId} ${row}`, criterion, isBlocking },
});

/** A sheet with rules of each kind, a link, and a picture; `most` is a limit of a rule. */
const sheetWithRules = (sheetId: string, position: number, most: string): Command[] => [
  { type: "CREATE_SHEET", sheetId, name: `Sheet of ${sheetId}`, position, cols: 6, rows: 20 },
  rule(sheetId, 0, { type: "isValueInList", values: ["sand & gravel", 'a "clay"', "<silt>"] }),
  rule(sheetId, 2, { type: "isBetween", values: ["0", most] }, false),
  rule(sheetId, 4, { type: "customFormula", values: ["=B1<ROUND(B2,1)"] }),
  rule(sheetId, 6, { type: "isValueInRange", values: ["D1:D3"] }),
  { type: "UPDATE_CELL", sheetId, col: 1, row: 1, content: "[a page](https://example.org)" },
  { type: "CREATE_IMAGE", sheetId, figureId: `p${sheetId}`, col: 1, row: 5, offset: { x: 0, y: 0 }, size: { width: 9, height: 9 }, definition: { path: PICTURE, size: { width: 9, height: 9 }, mimetype: "image/png" } }, // prettier-ignore
];

/** The rules in the part of a sheet, without the empty mark that the engine writes. */
const rulesIn = (part: string): string =>
  (/<dataValidations[^]*<\/dataValidations>/.exec(part)?.[0] ?? "").replaceAll(/ errorStyle=""|\s+(?=<)/g, "");

test("rules of each kind, on two sheets that are alike and on another one", async () => {
  const workbook = newWorkbook();
  const { model } = workbook;
  expect(
    runBatch(model, [
      ...sheetWithRules("one", 1, "9"),
      ...sheetWithRules("two", 2, "9"),
      ...sheetWithRules("three", 3, "10"),
    ]),
  ).toEqual([]);
  const { files } = await model.exportXLSX();
  const exported = jest.spyOn(Model.prototype, "exportXLSX");
  const saved = unzipSync(await saveXlsx(workbook));
  // The workbook, and the rules of two kinds of sheets: no cell has a formula.
  expect(exported).toHaveBeenCalledTimes(3);
  exported.mockRestore();
  for (const number of [0, 1, 2, 3]) {
    const path = `xl/worksheets/sheet${number}.xml`;
    const whole = files.find((file) => file.path === path) as { content: string };
    const part = strFromU8(saved[path]!);
    // The engine leaves quotes within a list as they are, and Excel cannot read them.
    expect(rulesIn(part)).toBe(rulesIn(whole.content).replace('a "clay"', 'a ""clay""'));
    expect(rulesIn(part).match(/<dataValidation /g)?.length ?? 0).toBe(number === 0 ? 0 : 4);
    const order = [...part.matchAll(/<(sheetData|dataValidations|hyperlinks|drawing)\b/g)].map(([, name]) => name);
    expect(order).toEqual(number === 0 ? ["sheetData"] : ["sheetData", "dataValidations", "hyperlinks", "drawing"]);
  }
});

test("a sheet that has only boxes to tick has no list of rules, since the format wants a rule in a list", async () => {
  const workbook = newWorkbook();
  const box = rule(workbook.model.getters.getActiveSheetId(), 0, { type: "isBoolean", values: [] });
  expect(runBatch(workbook.model, [box])).toEqual([]);
  const saved = unzipSync(await saveXlsx(workbook));
  expect(strFromU8(saved["xl/worksheets/sheet0.xml"]!)).not.toContain("<dataValidations");
});
