/** Characters that XML forbids, in every place of a workbook where a person or the add-in can put a text. */
import "../engine-in-node";
import { strFromU8, unzipSync } from "fflate";
import fc, { anyCharacter } from "../../../properties";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx, type OpenWorkbook } from "../../../../src/workbook/embedded";
import { Model } from "../../../../src/workbook/embedded/engine";
import { heldText, plainText } from "../../../../src/workbook/file/escapes";
import type { SheetPlan } from "../../../../src/workbook/port";
import { freeSheetName } from "../../../../src/workbook/rules/sheet-names";

/**
 * Control characters, halves of a surrogate pair, the two code points that are not characters, and texts that look like
 * their spelling.
 */
const HARD = ["\0", "\x07", "\x0b", "\x0c", "\r", "\x1a", "\x1b", "\ufffe", "\uffff", "\ud83d", "\ude00", "_x0041_"];

const box = (row: number, col: number, rows = 1, cols = 1) => ({ row, col, rows, cols });

/** A sheet with `odd` in each of its texts. */
const sheetWith = (odd: string): SheetPlan => ({
  ...{ name: `S${odd}`, rows: 30, cols: 6, columnWidths: {}, merges: [], freezeRows: 0 },
  names: { mass: box(0, 0) },
  cells: [
    { row: 0, col: 0, kind: "input", value: `a${odd}b`, note: `note ${odd}` },
    { row: 1, col: 0, kind: "input", value: `a${odd}`, format: "@" },
    { row: 2, col: 0, kind: "input", choices: [`rise ${odd}`, "fall"] },
    { row: 0, col: 1, kind: "result", formula: "=A1" },
    { row: 1, col: 1, kind: "result", formula: `="x${odd}y"` },
    { row: 2, col: 1, kind: "result", formula: "=TRANSPOSE(A1:A2)" },
    { row: 0, col: 2, kind: "result", formula: "={mass}" },
  ],
  entries: [{ box: box(5, 0, 3), kind: "number", least: 0, message: `A mass ${odd}.` }],
  pages: [box(0, 0, 10, 3)],
  footer: `Foot ${odd}`,
  charts: [
    {
      title: `Title ${odd}`,
      box: box(10, 0, 10, 4),
      x: { label: `x ${odd}`, scale: "log", domain: [1, 100], reversed: false },
      y: { label: `y ${odd}`, scale: "linear", domain: [0, 10], reversed: true },
      series: [{ name: `Line ${odd}`, x: { box: box(5, 0, 3) }, y: { box: box(5, 1, 3) }, style: "line" }],
    },
  ],
});

/** Characters that XML 1.0 forbids (2.2, production 2), and halves of surrogate pairs. */
const FORBIDDEN =
  /[\0-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;

const textsOf = (bytes: Uint8Array) => Object.entries(unzipSync(bytes)).map(([path, part]) => [path, strFromU8(part)]);

/** Rules, footers, notes and charts. */
const wordsIn = (bytes: Uint8Array) =>
  textsOf(bytes).map(([path, text]) =>
    /worksheets\/sheet/.test(path)
      ? text.match(/<dataValidation [^]*?<\/dataValidation>|<oddFooter>[^<]*/g)?.sort()
      : /charts|comments/.test(path)
        ? text
        : "",
  );

const valuesOf = async (workbook: OpenWorkbook) => {
  const port = new EmbeddedPort(workbook);
  const sheets = await port.sheetNames();
  return Promise.all(sheets.map(async (sheet) => [sheet, await port.values(sheet, "A1:C3")]));
};

test.each(HARD.map((odd) => [JSON.stringify(odd), odd]))(
  "a workbook full of %s is saved, and opens unchanged",
  async (_, odd) => {
    const port = new EmbeddedPort(newWorkbook());
    await port.insertSheet(sheetWith(odd));
    const saved = await saveXlsx(port.workbook);
    for (const [path, text] of textsOf(saved)) expect([path, FORBIDDEN.exec(text)]).toEqual([path, null]);
    const again = openXlsx(saved).workbook;
    expect(await valuesOf(again)).toEqual(await valuesOf(port.workbook));
    expect(wordsIn(await saveXlsx(again))).toEqual(wordsIn(saved));
  },
);

test("any text is written without forbidden characters, and read back unchanged", () =>
  fc.assert(
    fc.property(fc.string({ unit: anyCharacter }), fc.constantFrom("", ...HARD), (text, odd) => {
      const held = heldText(text + odd + text);
      expect(FORBIDDEN.test(held)).toBe(false);
      expect(plainText(held)).toBe(text + odd + text);
    }),
  ));

test("a part that could not be read again is refused with a sentence, and no file is offered", async () => {
  const workbook = newWorkbook();
  const exported = Object.getOwnPropertyDescriptor(Model.prototype, "exportXLSX")!.value as Model["exportXLSX"];
  const broken = { path: "xl/broken.xml", content: "<a>\x07</a>" };
  const exporting = jest.spyOn(Model.prototype, "exportXLSX").mockImplementationOnce(async function (this: Model) {
    const { name, files } = await exported.call(this);
    return { name, files: [...files, broken] } as never;
  });
  await expect(saveXlsx(workbook)).rejects.toThrow(/not saved: its part xl\/broken\.xml .* The workbook is as it was/);
  exporting.mockRestore();
});

test("a sheet name holds no control character and no half of a surrogate pair, wherever it is cut", () => {
  expect(freeSheetName("BH\x07-1\ud83d", [])).toBe("BH-1");
  expect(freeSheetName(`${"x".repeat(30)}😀`, [])).toBe("x".repeat(30));
});
