/**
 * @jest-environment jsdom
 * @jest-environment-options {"customExportConditions": ["node", "node-addons"]}
 */
/** Every kind of sheet of the project, made in the strict stand-in for Excel and read back cell by cell. */
import { OfficePort } from "../../../src/workbook/office";
import type { SheetPlan } from "../../../src/workbook/port";
import { StrictExcel, type Options } from "../../excel/strict-excel";
import { shownBy } from "./engine";
import { ALONE, demonstration, type Demonstration } from "./plans";
import { differences } from "./reading/read-back";

const port = new OfficePort();

/** The lowest version that the manifest requires, the first with files, the last without notes, the newest. */
const VERSIONS = ["1.9", "1.13", "1.17", "1.20"];
const EXCELS: readonly Options[] = (["web", "desktop"] as const).flatMap((platform) =>
  VERSIONS.map((version) => ({ platform, version })),
);
const OLDEST: Options = { platform: "web", version: "1.9" };
const NEWEST: Options = { platform: "desktop", version: "1.20" };

const hasNotes = ({ version }: Options): boolean => version === "1.20";

/** Makes the sheet in a workbook with another sheet, and returns the differences from the plan. */
async function made(plan: SheetPlan, options: Options, others: readonly string[] = ["Notes"]): Promise<string[]> {
  const excel = new StrictExcel({ ...options, sheets: others });
  const before = excel.picture();
  const name = await port.insertSheet(plan);
  expect(excel.faults).toEqual([]);
  expect(excel.picture().sheets.slice(0, others.length)).toEqual(before.sheets);
  expect(excel.sheetNames).toEqual([...others, name]);
  return differences(excel, name, plan, hasNotes(options)).slice(0, 8);
}

describe.each(EXCELS)("in Excel, $platform, ExcelApi $version", (options) => {
  test.each([ALONE[0], ALONE[1]])("%s", async (_, plan) => expect(await made(plan, options)).toEqual([]));
});

describe.each([OLDEST, NEWEST])("sheets that stand by themselves, $platform, ExcelApi $version", (options) => {
  test.each(ALONE.slice(2))("%s", async (_, plan) => expect(await made(plan, options)).toEqual([]));
});

describe("sheets made from the demonstration", () => {
  let demo: Demonstration;
  beforeAll(async () => {
    demo = await demonstration();
  });

  test.each([OLDEST, NEWEST])("$platform, ExcelApi $version", async (options) => {
    for (const [title, plan] of demo.made) {
      const others = [demo.sheet, ...(plan.charts ? ["Series"] : [])];
      expect([title, await made(plan, options, others)]).toEqual([title, []]);
    }
  });

  test("the demonstration shows the same in Excel as in the engine", async () => {
    const excel = new StrictExcel({ evaluator: shownBy(demo.engine) });
    expect(await port.insertSheet((await import("../../../src/datasheet")).demoSheet("SI"))).toBe(demo.sheet);
    const wanted = ["preconsolidation_stress", "void_ratio_end", "log_cv"];
    const read = await port.readNames(demo.sheet, wanted);
    expect(read).toEqual(await demo.engine.readNames(demo.sheet, wanted));
    expect(read.preconsolidation_stress[0][0]).toEqual(expect.any(Number));
    expect(excel.faults).toEqual([]);
  });
});
