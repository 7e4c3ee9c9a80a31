/** An issue of a report whose locked values were changed is told of when the sheet is compared with it. */
import { demoSheet } from "../../../../src/datasheet";
import { comparedWith, issuesOf, type IssueOf } from "../../../../src/pane/screens/report/issues";
import { makeReport, REPORTS } from "../../../../src/pane/screens/report/make-report";
import { ISSUE_COLUMNS } from "../../../../src/report/issue";
import { firstOf } from "../../../../src/reduction/numeric/lists";
import { opened } from "../../../workbook/embedded/opened";

jest.setTimeout(240_000);

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
  expect(await compared()).toEqual({ changes: [], lock: "kept" });

  // A reading of the sheet may change: the issue is still the one that was locked.
  const { readings_03 = [] } = await port.readNames(sheet, ["readings_03"]);
  const reading = Number(readings_03[0]?.[0]);
  await port.fillNames(sheet, { readings_03: [reading + 1] });
  const changed = await compared();
  expect([changed.lock, changed.changes.length > 0]).toEqual(["kept", true]);

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
