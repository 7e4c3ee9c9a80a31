/** A register in a firm's file: read by its names, told of when it has changed since its values were taken. */
import "../../../workbook/embedded/engine-in-node";
import ExcelJS from "exceljs";
import { text } from "../../../../src/pane/text";
import { registerOfFile, saidSource, sinceTaken, type ChosenFile } from "../../../../src/pane/screens/register/source";
import { readRegister } from "../../../../src/record/register";
import { readSets } from "../../../../src/record/register-sets";
import { boxAddress } from "../../../../src/workbook/address";
import type { CellValue } from "../../../../src/workbook/port";

/** A file with columns that have the names of a register, from the first row of a sheet down. */
async function fileWith(name: string, columns: Readonly<Record<string, readonly CellValue[]>>): Promise<ChosenFile> {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Equipment");
  Object.entries(columns).forEach(([called, cells], col) => {
    cells.forEach((value, row) => (sheet.getCell(row + 1, col + 1).value = value));
    workbook.definedNames.add(`Equipment!${boxAddress({ row: 0, col, rows: cells.length, cols: 1 })}`, called);
  });
  const bytes = new Uint8Array((await workbook.xlsx.writeBuffer()) as ArrayBuffer);
  return { name, arrayBuffer: async () => Uint8Array.from(bytes).buffer };
}
const fileOf = (diameter: number): Promise<ChosenFile> =>
  fileWith("equipment.xlsx", {
    register_length_unit: ["mm"],
    register_stress_unit: ["kPa"],
    register_kind: ["ring", "deflection set"],
    register_number: ["R-7", "D-1"],
    register_diameter: [diameter, ""],
    register_frame: ["", "LF-2"],
    register_set: ["D-1", "D-1"],
    register_set_stress: [50, 100],
    register_set_loading: [0.01, 0.02],
    register_set_unloading: ["", ""],
  });

test("its equipment and its deflection sets are read by their names", async () => {
  const { called, values, hash } = await registerOfFile(await fileOf(63.5));
  expect(called).toBe("equipment.xlsx, Equipment");
  expect(hash).toMatch(/^[0-9a-f]{12}$/);
  expect(readRegister(values)?.map(({ kind, number, diameter, frame }) => [kind, number, diameter, frame])).toEqual([
    ["ring", "R-7", 63.5, undefined],
    ["deflection set", "D-1", undefined, "LF-2"],
  ]);
  expect(readSets(values)).toEqual([
    { set: "D-1", stress: 50, loading: 0.01, unloading: undefined },
    { set: "D-1", stress: 100, loading: 0.02, unloading: undefined },
  ]);
});

test("the sheet says file, sheet, day and SHA-256; read again, a changed file is told of", async () => {
  // A file that is made again has another time in it.
  const file = await fileOf(63.5);
  const before = await registerOfFile(file);
  const said = saidSource(before, "2031-03-07");
  expect(said).toMatch(/^equipment\.xlsx, Equipment, 2031-03-07, SHA-256 [0-9a-f]{12}$/);
  expect(sinceTaken(await registerOfFile(file), said)).toEqual({ isSame: true, day: "2031-03-07" });
  expect(sinceTaken(await registerOfFile(await fileOf(63.4)), said)).toEqual({ isSame: false, day: "2031-03-07" });
});

test("a sheet without values of the file, or with values of another register, says nothing", async () => {
  const file = await registerOfFile(await fileOf(63.5));
  expect(sinceTaken(file, undefined)).toBeUndefined();
  expect(sinceTaken(file, "Register, 2031-03-07")).toBeUndefined();
  expect(sinceTaken(file, "other.xlsx, Register, 2031-03-07, SHA-256 0123456789ab")).toBeUndefined();
});

test("a file without a register is refused", async () => {
  const file = await fileWith("test.xlsx", { diameter: [63.5] });
  await expect(registerOfFile(file)).rejects.toThrow(text.register.noRegisterIn("test.xlsx"));
});
