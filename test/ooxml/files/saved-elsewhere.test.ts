/**
 * Workbooks of ours that LibreOffice has opened and saved: they open here with the same contents, and can be inserted
 * into other workbooks.
 */
import "../../workbook/embedded/engine-in-node";
import { blankSheet } from "../../../src/datasheet";
import { templateBytes } from "../../../src/datasheet/templates";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../src/workbook/embedded";
import { mayWrite, protectionOf } from "../../../src/workbook/embedded/protection";
import { baseFile, contentsOf } from "../../workbook/embedded/xlsx/base-file";
import { foreignFile } from "./foreign-file";
import { savedByLibreOffice } from "./libreoffice-reader";

const isLeftOut = process.env.CLAYLEDGER_NO_LIBREOFFICE === "1" && !process.env.CI;

(isLeftOut ? describe.skip : describe)("saved by LibreOffice", () => {
  const before: Uint8Array[] = [];
  let after: Uint8Array[];

  beforeAll(async () => {
    const { CLAYLEDGER_LIBREOFFICE: program, CLAYLEDGER_LIBREOFFICE_MISSING: missing } = process.env;
    if (!program) throw new Error(missing ?? "the set-up of these tests has not run");
    before.push(await baseFile(), await foreignFile(), await templateBytes("SI"));
    after = savedByLibreOffice(program, before);
  });

  /** Contents by sheet and address, without formats: LibreOffice spells some in its own way. */
  const cellsOf = (bytes: Uint8Array) =>
    contentsOf(openXlsx(bytes).workbook).map(({ name, cells, notes, merges, names }) => ({
      ...{ name, notes, merges, names: [...names].sort() },
      cells: Object.fromEntries(Object.entries(cells).map(([at, [formula, value]]) => [at, [formula, value]])),
    }));

  test("a small workbook has the same cells, notes, merged cells and names", () => {
    expect(cellsOf(after[0]!)).toEqual(cellsOf(before[0]!));
  });

  test("a workbook of another library has them too, also after it was saved here again", async () => {
    expect(cellsOf(after[1]!)).toEqual(cellsOf(before[1]!));
    // A text with quotes is put together from pieces, in brackets without meaning.
    const bare = (sheets: ReturnType<typeof cellsOf>) => JSON.stringify(sheets).replace(/[()]/g, "");
    expect(bare(cellsOf(await saveXlsx(openXlsx(after[1]!).workbook)))).toBe(bare(cellsOf(before[1]!)));
  });

  test("a template is inserted into another workbook with every name, constant and rule", async () => {
    const port = new EmbeddedPort(newWorkbook());
    const { sheets } = await port.insertFile(after[2]!);
    const other = new EmbeddedPort(newWorkbook());
    const wanted = await other.insertFile(before[2]!);
    expect(sheets).toEqual(wanted.sheets);
    const [mine, its] = [port, other].map(({ workbook }) => contentsOf(workbook)[1]!);
    expect(mine!.names.sort()).toEqual(its!.names.sort());
    // LibreOffice ends rules 1,024 rows below their first row.
    const begun = (rules: readonly string[]) =>
      rules.map((rule) => rule.replace(/:[A-Z]+\d+/g, "").replace("0.000000001", "1e-9")).sort();
    expect(begun(mine!.rules)).toEqual(begun(its!.rules));
    const constants = ({ cells }: typeof its & object) =>
      Object.fromEntries(Object.entries(cells).filter(([, [formula]]) => !String(formula).startsWith("=")));
    expect(Object.keys(constants(mine!))).toEqual(Object.keys(constants(its!)));
  });

  test("a protected template has its readings open, down to 1,000 rows below the last row with cells", () => {
    const { model } = openXlsx(after[2]!).workbook;
    const protection = protectionOf(model, model.getters.getActiveSheetId());
    expect(protection.on).toBe(true);
    const { times_01, readings_24, pick_load } = blankSheet("SI").names;
    const lastWithCells = pick_load!.row + pick_load!.rows - 1;
    // LibreOffice does not save the look of rows further below.
    const rows = Math.min(times_01!.rows, lastWithCells + 1000 - times_01!.row + 1);
    const locked = Array.from({ length: rows }, (_, row) => row).filter(
      (row) =>
        !mayWrite(protection, times_01!.col, times_01!.row + row) ||
        !mayWrite(protection, readings_24!.col, readings_24!.row + row),
    );
    expect(rows).toBeGreaterThan(1000);
    expect(locked).toEqual([]);
  });
});
