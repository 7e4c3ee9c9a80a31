/** A copy with values: what every formula shows stands in the file as a constant, and the file says so. */
import "./engine-in-node";
import { strFromU8, unzipSync } from "fflate";
import { demoSheet } from "../../../src/datasheet";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../src/workbook/embedded";
import { complaintsOf } from "../../ooxml/complaints";
import { registerRealFunctions } from "./real-functions";

beforeAll(() => registerRealFunctions({ blankAs: null }));

const LINES = ["This file is a copy with values.", "Made of <demonstration> & co."];

test("a copy of the demonstration has its values and names, no formula, and a last sheet that says so", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const sheet = await port.insertSheet(demoSheet("SI"));
  const file = await saveXlsx(port.workbook, undefined, { sheet: "Nur Werte", lines: LINES });
  expect(complaintsOf(file)).toEqual([]);
  const sheets = Object.entries(unzipSync(file)).filter(([path]) => path.startsWith("xl/worksheets/"));
  for (const [, part] of sheets) expect(strFromU8(part)).not.toMatch(/<f[ >]/);

  const copy = new EmbeddedPort(openXlsx(file).workbook);
  expect(await copy.sheetNames()).toEqual(["Sheet1", sheet, "Nur Werte"]);
  expect((await copy.values("Nur Werte", "A1:A2")).flat()).toEqual(LINES);
  const names = ["void_ratio_initial", "compression_index", "load_stress", "cv_log_time", "load_remark", "ring_mass"];
  expect(await copy.readNames(sheet, names)).toEqual(await port.readNames(sheet, names));
  expect(await port.readContents(sheet, ["void_ratio_initial"])).toEqual({
    void_ratio_initial: [[expect.stringMatching(/^=/)]],
  });
});
