/** @jest-environment jsdom */
/** Reports, one AGS4 file and pictures of several data sheets, without a page; one sheet fails, or the work is stopped. */
import { strFromU8, unzipSync } from "fflate";
import { demoSheet } from "../../../../src/datasheet";
import { demoTest } from "../../../../src/datasheet/demo-test";
import { ags4Of, picturesOf, reportsOf, type Course } from "../../../../src/pane/screens/many/many";
import { text } from "../../../../src/pane/text";
import { asTyped } from "../../../../src/reduction/message";
import { Stopped, unwatched } from "../../../../src/workbook/in-slices";
import { WorkbookError, type CellValue, type SheetPlan } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";
import { sheetOf } from "../../fake-workbook";

const words = text.many;
const SHEETS = ["BH-1", "BH-2"];
let port: FakePort;
let shares: number[];
let stop: AbortController;
const course = (): Course => ({
  tell: (share) => void shares.push(share),
  signal: stop.signal,
  now: new Date("2031-03-21T12:00:00Z"),
});

/** Void ratios at the ends of the loads: results that the workbook of these tests does not calculate. */
const ENDS = demoTest("SI").loads.map((stress, index, all) => {
  const past = Math.max(...all.slice(0, index + 1));
  return 1.5 - 0.05 * Math.log10(past) - 0.5 * Math.log10(1 + past / 100) + 0.06 * Math.log10(past / stress);
});

beforeEach(() => {
  port = new FakePort();
  shares = [];
  stop = new AbortController();
  port.workbook.sheets = SHEETS.map((sheet) => sheetOf(demoSheet("SI"), sheet));
  const typed: Record<string, CellValue> = { sample_top: 7, sample_type: "UT", sample_id: "X1-7" };
  for (const [index, sheet] of SHEETS.entries()) {
    for (const [name, value] of Object.entries(typed)) port.put(sheet, name, 0, value);
    port.put(sheet, "specimen", 0, index === 0 ? "a" : "b");
    ENDS.forEach((e, row) => port.put(sheet, "void_ratio_end", row, e));
  }
});

const TRANSMISSION = { issue: "1", date: "2031-03-21", producer: "Lab", recipient: "Office", status: "Draft" };
const REPORTS = { language: "en", curve: "e", preparedBy: "EF" } as const;

describe("reports", () => {
  test("one of each sheet, with the share that is done", async () => {
    const { sentence, failed } = await reportsOf(port, SHEETS, REPORTS, course());
    expect([sentence, failed]).toEqual([words.reportsMade(["Report BH-1", "Report BH-2"]), []]);
    expect(shares).toEqual([0.5, 1]);
  });

  test("a sheet that fails is listed with the reason, leaves nothing, and the others go on", async () => {
    const insert = port.insertSheet.bind(port);
    port.insertSheet = async (plan: SheetPlan) => {
      if (plan.name === "Report BH-1") throw new WorkbookError(asTyped("The workbook is protected."));
      return insert(plan);
    };
    const { sentence, failed } = await reportsOf(port, SHEETS, REPORTS, course());
    expect(sentence).toBe(words.reportsMade(["Report BH-2"]));
    expect(failed).toEqual([{ called: "BH-1", reason: "The workbook is protected." }]);
    expect(await port.sheetNames()).toEqual([...SHEETS, "Report BH-2"]);
  });

  test("after a stop, whole reports stay and are named", async () => {
    const stopping = { ...course(), tell: () => stop.abort() };
    const { sentence } = await reportsOf(port, SHEETS, REPORTS, stopping);
    expect(sentence).toBe(words.reportsStopped(["Report BH-1"]));
    expect(await port.sheetNames()).toEqual([...SHEETS, "Report BH-1"]);
  });

  test("a stop in the middle of a report reaches the host, which takes that report back; the others stay", async () => {
    const insert = port.insertSheet.bind(port);
    const insertSheet = async (plan: SheetPlan, _: unknown, { signal } = unwatched()): Promise<string> => {
      if (plan.name === "Report BH-2") stop.abort();
      if (signal.aborted) throw new Stopped();
      return insert(plan);
    };
    Object.assign(port, { insertSheet });
    const { sentence, failed } = await reportsOf(port, SHEETS, REPORTS, course());
    expect([sentence, failed]).toEqual([words.reportsStopped(["Report BH-1"]), []]);
    expect(await port.sheetNames()).toEqual([...SHEETS, "Report BH-1"]);
  });
});

describe("one AGS4 file", () => {
  test("has every sheet", async () => {
    const { sentence, failed, file } = await ags4Of(port, SHEETS, TRANSMISSION, course());
    expect([sentence, failed]).toEqual([words.ags4Made(file!.name, 2), []]);
    expect(file!.content).toMatch(/"SPEC_REF".*\r\n[\s\S]*"a"[\s\S]*"b"/);
  });

  test("lists a sheet that lacks a key with its cell", async () => {
    port.put("BH-2", "boring", 0, "");
    const { failed } = await ags4Of(port, SHEETS, TRANSMISSION, course());
    expect(failed).toEqual([{ called: "BH-2", reason: expect.stringMatching(/needs Boring: fill in/) }]);
  });

  test("is not made after a stop, or without any test", async () => {
    await expect(ags4Of(port, SHEETS, TRANSMISSION, { ...course(), tell: () => stop.abort() })).rejects.toThrow(
      Stopped,
    );
    stop = new AbortController();
    for (const sheet of SHEETS) port.put(sheet, "boring", 0, "");
    await expect(ags4Of(port, SHEETS, TRANSMISSION, course())).rejects.toThrow(/No test can be written/);
  });
});

describe("pictures", () => {
  const wanted = { plots: ["compression", "cAlpha", "time"], format: "svg", widthMm: 120 } as const;

  test("stand in one zip under names of sheet and plot; a plot that cannot be drawn is listed", async () => {
    const { file, failed } = await picturesOf(port, SHEETS, wanted, course());
    const zip = unzipSync(file!.content as Uint8Array);
    const names = Object.keys(zip);
    expect(names.filter((name) => /^BH-1, (?!Load).*\.svg$/.test(name))).toHaveLength(1);
    expect(names.filter((name) => /^BH-2, Load \d+ .*log of time\.svg$/.test(name))).toHaveLength(16);
    expect(strFromU8(zip[names[0]!]!)).toMatch(/<svg/);
    expect(failed).toEqual(
      SHEETS.map((sheet) => ({
        called: `${sheet}, ${words.picturesOf.cAlpha}`,
        reason: expect.stringMatching(/^No load that was put on has a value/),
      })),
    );
  });

  test("of sheets that no file name can tell apart are all in the file", async () => {
    const called = ["BH<1", "BH>1"];
    port.workbook.sheets.forEach((sheet, index) => (sheet.name = called[index]!));
    const { file, failed } = await picturesOf(port, called, { ...wanted, plots: ["compression"] }, course());
    expect(failed).toEqual([]);
    const names = Object.keys(unzipSync(file!.content as Uint8Array));
    expect(names).toHaveLength(2);
    expect(names[1]).toBe(names[0]!.replace(/\.svg$/, " (2).svg"));
  });

  test("are not saved after a stop; without any picture the reasons are told", async () => {
    await expect(picturesOf(port, SHEETS, wanted, { ...course(), tell: () => stop.abort() })).rejects.toThrow(Stopped);
    stop = new AbortController();
    await expect(picturesOf(port, SHEETS, { ...wanted, plots: ["cAlpha"] }, course())).rejects.toThrow(
      /There is nothing to draw/,
    );
  });
});
