/** An issue of a report whose locked values were changed is told of when the sheet is compared with it. */
import { demoSheet } from "../../../../src/datasheet";
import { comparedWith, issuesOf, saidOfChange, type IssueOf } from "../../../../src/pane/screens/report/issues";
import { makeReport, REPORTS } from "../../../../src/pane/screens/report/make-report";
import { ISSUE_COLUMNS, ISSUE_HASH } from "../../../../src/report/issue";
import { REPORT_OF } from "../../../../src/report/report";
import { firstOf } from "../../../../src/reduction/numeric/lists";
import { opened } from "../../../workbook/embedded/opened";

/** A column in which one row changes and the others stay. */
const valueAt = (row: number, value: number): (number | null)[] => [...Array<null>(row).fill(null), value];

test("compares with an issue as it was locked; a changed locked value, day or hash is told of, whatever the sheet has", async () => {
  const { port, sheet } = await opened(demoSheet("SI"));
  const { report } = await makeReport(port, sheet, { preparedBy: "AB", now: new Date(2031, 5, 1), lockedBy: "EF" });
  const issue = async (): Promise<IssueOf> =>
    firstOf(
      issuesOf(sheet, [
        { sheet: report, values: await port.readNames(report, REPORTS.names), names: [], contents: {} },
      ]),
    );
  const compared = async () => comparedWith(port, sheet, await issue());
  expect((await issue()).valuesHash).toMatch(/^[0-9a-f]{64}$/);
  expect(await compared()).toEqual({ changes: [], lock: "kept", system: "SI" });

  // Readings of the sheet may change: the issue is still the one that was locked.
  const { readings_03 = [] } = await port.readNames(sheet, ["readings_03"]);
  const reading = Number(readings_03[0]?.[0]);
  const raised = readings_03.map(([value]) => (typeof value === "number" ? value + 1 : null));
  await port.fillNames(sheet, { readings_03: raised });
  const changed = await compared();
  // What a person changed is told before what follows from it.
  expect([
    changed.lock,
    changed.changes[0]?.name,
    changed.changes.length > raised.filter((one) => one !== null).length,
  ]).toEqual(["kept", "readings_03", true]);

  // Somebody lifts the protection of the report, and changes a locked value to that of the sheet.
  await port.protect(report, false);
  const { issue_name = [], issue_row = [] } = await port.readNames(report, ISSUE_COLUMNS);
  const at = issue_name.findIndex(([name], row) => name === "readings_03" && issue_row[row]?.[0] === 1);
  await port.fillNames(report, { issue_value: valueAt(at, reading + 1) });
  expect((await compared()).lock).toBe("changed");
  await port.fillNames(report, { issue_value: valueAt(at, reading) });
  expect((await compared()).lock).toBe("kept");
  await port.fillNames(report, { issue_by: ["GH"] });
  expect((await compared()).lock).toBe("changed");
  // An issue of an older version has no SHA-256 of its values.
  await port.fillNames(report, { issue_values_sha256: [""] });
  expect((await compared()).lock).toBe("unknown");
});

test("the issues of a test are listed oldest first, whatever the order of their sheets", () => {
  const report = (number: number) => ({
    ...{ sheet: `Report ${number}`, names: [], contents: {} },
    values: { [REPORT_OF]: [["BH-1"]], issue_number: [[number]], [ISSUE_HASH]: [["0".repeat(64)]] },
  });
  expect(issuesOf("BH-1", [2, 10, 1].map(report)).map(({ number }) => number)).toEqual([1, 2, 10]);
});

test("where the workbook is calculated on request, an issue asks for a calculation before it reads what it keeps", async () => {
  const { port, sheet } = await opened(demoSheet("SI"));
  const steps: string[] = [];
  const lookAt = port.lookAt.bind(port);
  jest.spyOn(port, "lookAt").mockImplementation(async (asked) => {
    steps.push("read");
    return (await lookAt(asked)).map((one) => ({ ...one, isOnRequest: true }));
  });
  jest.spyOn(port, "calculate").mockImplementation(async () => void steps.push("calculate"));
  jest.spyOn(port, "insertSheet").mockResolvedValue("Report");
  const made = { preparedBy: "AB", now: new Date(2031, 5, 1) };
  await makeReport(port, sheet, made);
  expect(steps).not.toContain("calculate");
  steps.length = 0;
  await makeReport(port, sheet, { ...made, lockedBy: "EF" });
  expect(steps.slice(0, 3)).toEqual(["read", "calculate", "read"]);
});

test.each([
  ["a result to the digits of its cell", "void_ratio_initial", 0.694239163, 0.7012, "SI", "0.694", "0.701"],
  ["a length in inches to four decimals", "height_end", 0.630312345678, 0.5, "US", "0.6303", "0.5000"],
  ["a stress in tsf to three decimals", "preconsolidation_stress", 10.3668120033, 9.5, "US", "10.367", "9.500"],
  ["a share in percent", "water_content_initial", 0.25630252, 0.31, "SI", "25.6%", "31.0%"],
  ["a reading as it was typed", "readings_03", 1203.5, 1230.5, "SI", "1203.5", "1230.5"],
  ["values that their cells show alike", "height_middle", 0.678907946333, 0.67890523018, "US", "0.678908", "0.678905"],
  ["shares that their cells show alike", "water_content_initial", 0.256314, 0.256302, "SI", "25.631%", "25.63%"],
  ["a level of the readings", "log_d100", 1203.43119, 1209.1, "SI", "1203.4", "1209.1"],
  ["levels in inches", "log_d100", 0.0757288503055, 0.0757265957841, "US", "0.075729", "0.075727"],
  ["a date as a day", "date_tested", 48000, "", "SI", "2031-06-01", "blank"],
  ["a word as it stands", "drainage", "double", "single", "SI", "double", "single"],
] as const)("tells %s", (_, name, before, after, system, from, to) => {
  expect(saidOfChange({ name, from: before, to: after }, system)).toEqual({ from, to });
});
