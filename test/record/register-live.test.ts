/** The live formulas of the register, calculated on a workbook with a register and a data sheet. */
import "../workbook/embedded/engine-in-node";
import { blankSheet } from "../../src/datasheet";
import { registerSheet } from "../../src/datasheet/register-sheet";
import { liveFormula, liveState } from "../../src/record/register";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { Box } from "../../src/workbook/port";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

jest.setTimeout(120_000);

const NAMES = ["registered_diameter", "lever_ratio", "register_state"];

test("they follow the register in the unit of the sheet; a number that is not there keeps the value, and the sheet says so", async () => {
  await registerRealFunctions({ blankAs: null });
  const port = new EmbeddedPort(newWorkbook());
  const register = await port.insertSheet(registerSheet("SI"));
  const sheet = await port.insertSheet(blankSheet("US", { loads: 4, readingRows: 30 }));
  await port.fillNames(register, {
    register_kind: ["frame", "ring", "ring"],
    register_number: ["R-7", "R-7", "12"],
    register_diameter: [null, 63.5, null],
    register_lever_ratio: [10],
  });
  await port.fillNames(sheet, { ring_number: ["R-7"], frame_number: ["R-7"] });
  const place = async (name: string): Promise<Box> =>
    (await port.listNames(sheet)).flatMap((one) => (one.name === name && one.place !== "lost" ? [one.place] : []))[0]!;
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
});
