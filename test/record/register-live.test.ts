/** The live formulas of the register, calculated on a workbook with a register and a data sheet. */
import "../workbook/embedded/engine-in-node";
import { blankSheet } from "../../src/datasheet";
import { registerSheet } from "../../src/datasheet/register-sheet";
import { liveFormula, liveState } from "../../src/record/register";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import { liveTable, SET_KEY } from "../../src/record/register-sets";
import { boxesByName } from "../../src/record/places";
import type { Box, CellValue } from "../../src/workbook/port";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

beforeAll(() => registerRealFunctions({ blankAs: null }));

const NAMES = ["registered_diameter", "lever_ratio", "register_state"];

test.each([
  ["an English register", "en", ["frame", "ring", "ring"]],
  ["a German register", "de", ["Rahmen", "Ring", "Ring"]],
] as const)(
  "they follow %s in the unit of the sheet; a number that is not there keeps the value, and the sheet says so",
  async (_, language, kinds) => {
    const port = new EmbeddedPort(newWorkbook());
    const register = await port.insertSheet(registerSheet("SI", language));
    const sheet = await port.insertSheet(blankSheet("US", { loads: 4, readingRows: 30 }));
    await port.fillNames(register, {
      register_kind: kinds,
      register_number: ["R-7", "R-7", "12"],
      register_diameter: [null, 63.5, null],
      register_lever_ratio: [10],
    });
    await port.fillNames(sheet, { ring_number: ["R-7"], frame_number: ["R-7"] });
    const place = async (name: string): Promise<Box> =>
      (await port.listNames(sheet)).flatMap((one) =>
        one.name === name && one.place !== "lost" ? [one.place] : [],
      )[0]!;
    const put = async (name: string, formula: string): Promise<void> => {
      const { row, col } = await place(name);
      await port.writeCells(sheet, [{ row, col, formula }], true);
    };
    await put("registered_diameter", liveFormula(register, { cell: "registered_diameter", kind: "ring" }, 2.4));
    await put("lever_ratio", liveFormula(register, { cell: "lever_ratio", kind: "frame" }, 9));
    await put("register_state", liveState(register, ["ring", "frame"]));
    const values = async () => await port.readNames(sheet, NAMES);
    expect(await values()).toEqual({
      registered_diameter: [[2.5]],
      lever_ratio: [[10]],
      register_state: [[""]],
    });
    await port.fillNames(register, { register_diameter: [null, 50.8] });
    expect(Number((await values()).registered_diameter![0]![0])).toBeCloseTo(2, 12);
    await port.fillNames(sheet, { ring_number: ["R-99"] });
    expect((await values()).registered_diameter).toEqual([[2.4]]);
    expect((await values()).register_state).toEqual([["ring R-99 is not in the register: its values were kept; "]]);
    // A ring that the register has without a diameter keeps the value too.
    await port.fillNames(sheet, { ring_number: ["12"] });
    expect(await values()).toMatchObject({ registered_diameter: [[2.4]], register_state: [[""]] });
  },
);

test("a live deflection set follows the register in the units of the sheet, and keeps the table where it is not there", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const register = await port.insertSheet(registerSheet("SI"));
  const sheet = await port.insertSheet(blankSheet("US", { loads: 4, readingRows: 30 }));
  await port.fillNames(register, {
    register_kind: ["ring", "deflection set", "deflection set"],
    register_number: ["D-1", "D-1", "D-2"],
    register_frame: [null, "LF-2", "LF-3"],
    register_disks: [null, "coarse disks"],
    register_calibrated: [null, 46_388],
    register_due: [null, 46_753],
    register_set: ["D-2", "D-1", "D-1", "D-1"],
    register_set_stress: [10, 25, 50, 100],
    register_set_loading: [1, 0, 0.0127, 0.0254],
    register_set_unloading: [1, null, 0.0203],
  });
  expect((await port.readNames(register, [SET_KEY]))[SET_KEY]!.slice(0, 5)).toEqual([
    ["D-2/1"],
    ["D-1/1"],
    ["D-1/2"],
    ["D-1/3"],
    [""],
  ]);
  await port.fillNames(sheet, { deflection_set: ["D-1"] });
  const boxes = boxesByName(await port.listNames(sheet));
  const held = { apparatus_stress: [0.25, 0.5], apparatus_loading: [0, 0.001], apparatus_unloading: ["", ""] };
  const rest = (cells: readonly CellValue[]): CellValue[] => Array.from({ length: 12 }, (_, row) => cells[row] ?? "");
  const table = liveTable(register, {
    apparatus_stress: rest(held.apparatus_stress),
    apparatus_loading: rest(held.apparatus_loading),
    apparatus_unloading: rest(held.apparatus_unloading),
  });
  const at = (name: string, formula: string, row = 0) => {
    const { row: top, col } = boxes.get(name)!;
    return { row: top + row, col, formula };
  };
  await port.writeCells(
    sheet,
    [
      ...Object.entries(table).flatMap(([name, formulas]) => formulas.map((formula, row) => at(name, formula, row))),
      at("deflection_set_frame", liveFormula(register, { cell: "deflection_set_frame", kind: "deflection set" }, "")),
      at("deflection_set_due", liveFormula(register, { cell: "deflection_set_due", kind: "deflection set" }, "")),
      at("register_state", liveState(register, ["deflection set"])),
    ],
    true,
  );
  const read = async (name: string) => (await port.readNames(sheet, [name]))[name]!.map(([cell]) => cell!);
  const near = (cells: readonly CellValue[]) =>
    cells.slice(0, 4).map((cell) => (cell === "" ? "" : Number(Number(cell).toPrecision(6))));
  expect(near(await read("apparatus_stress"))).toEqual([0.261068, 0.522136, 1.04427, ""]);
  expect(near(await read("apparatus_loading"))).toEqual([0, 0.0005, 0.001, ""]);
  expect(near(await read("apparatus_unloading"))).toEqual(["", 0.000799213, "", ""]);
  expect([await read("deflection_set_frame"), await read("deflection_set_due")]).toEqual([["LF-2"], [46_753]]);
  expect([await read("register_state"), await read("input_remark")]).toEqual([[""], [""]]);
  await port.fillNames(sheet, { deflection_set: ["D-9"] });
  expect(near(await read("apparatus_stress"))).toEqual([0.25, 0.5, "", ""]);
  expect(await read("register_state")).toEqual(["deflection set D-9 is not in the register: its values were kept; "]);
  // The register has a row of equipment for the set, and no deflections.
  await port.fillNames(register, { register_number: [null, "D-9"] });
  expect(near(await read("apparatus_stress"))).toEqual([0.25, 0.5, "", ""]);
  expect(await read("register_state")).toEqual([
    "deflection set D-9 has no deflections in the register: the table was kept; ",
  ]);
});
