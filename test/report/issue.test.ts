/** An issue of a report: its locked values, what changed since, and the file that keeps them. */
import fc from "../properties";
import { demoSheet } from "../../src/datasheet";
import { RECORD_NAMES, type NamedValues } from "../../src/record/record";
import {
  changesSince,
  ISSUE_COLUMNS,
  ISSUE_NAMES,
  issueText,
  kept,
  keptIn,
  lockedValues,
  readingsText,
} from "../../src/report/issue";
import { EmbeddedPort, openXlsx, saveXlsx } from "../../src/workbook/embedded";
import type { SheetName } from "../../src/workbook/port";
import { reported } from "./report-in-engine";

const NAMES: readonly SheetName[] = ["depth", "readings_01", "project"].map((name, row) => ({
  name,
  scope: "sheet" as const,
  place: { row: 10 * row, col: 1, rows: name === "readings_01" ? 5 : 1, cols: 1 },
}));
const VALUES: NamedValues = {
  depth: [[7.3]],
  readings_01: [[100], [""], [120], [""], [""]],
  project: [["Causeway"]],
};
const now = (changes: NamedValues) => kept({ ...VALUES, ...changes }, NAMES);
const before = kept(VALUES, NAMES);

test("keeps every value with its name, row and cell; blanks are left out", () =>
  expect(before).toEqual([
    { name: "depth", row: 1, cell: "B1", value: 7.3 },
    { name: "readings_01", row: 1, cell: "B11", value: 100 },
    { name: "readings_01", row: 3, cell: "B13", value: 120 },
    { name: "project", row: 1, cell: "B21", value: "Causeway" },
  ]));

test("lists each changed, cleared and added value, from, to, and its cell", () => {
  const readings_01 = [[100], [110], [121], [""], [""]];
  expect(changesSince(before, now({ depth: [[""]], readings_01 }))).toEqual([
    { name: "depth", row: 1, cell: "B1", from: 7.3, to: "" },
    { name: "readings_01", row: 3, cell: "B13", from: 120, to: 121 },
    { name: "readings_01", row: 2, cell: "B12", from: "", to: 110 },
  ]);
});

test("a number that only its last digits differ in is no change; a number typed as text is none either", () => {
  expect(changesSince(before, now({ depth: [[7.3 + 1e-14]] }))).toEqual([]);
  expect(changesSince(before, now({ depth: [["7.3"]] }))).toEqual([]);
});

test("the text that is hashed has the readings only: it changes with a reading, and not with the project", () => {
  const text = readingsText(VALUES);
  expect(readingsText({ ...VALUES, project: [["Other"]] })).toBe(text);
  expect(readingsText({ ...VALUES, readings_01: [[100], [""], [120]] })).toBe(text);
  expect(readingsText({ ...VALUES, readings_01: [[100], [""], [120.5]] })).not.toBe(text);
});

test("the text of an issue changes with each of its values, and with its number, day, initials and hash of readings", () => {
  const mark = { number: 1, day: "2026-03-09 14:05", by: "EF", hash: "ab12" };
  const text = issueText(mark, before);
  const others = [
    ...before.map((_, changed) =>
      issueText(
        mark,
        before.map((one, at) => (at === changed ? { ...one, value: 1 } : one)),
      ),
    ),
    issueText(mark, before.slice(1)),
    ...[{ number: 2 }, { day: "2026-03-10 14:05" }, { by: "GH" }, { hash: "ab13" }].map((other) =>
      issueText({ ...mark, ...other }, before),
    ),
  ];
  for (const other of others) expect(other).not.toBe(text);
});

test("a number is kept with the 15 digits that Excel keeps of it, so that its text is the same when it is read again", () => {
  const [one] = lockedValues({ depth: [[0.1 + 0.2]] }, NAMES);
  expect(one?.value).toBe(0.3);
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      const written = lockedValues({ depth: [[value]] }, NAMES);
      const again = lockedValues({ depth: [[written[0]?.value ?? 0]] }, NAMES);
      expect(again).toEqual(written);
    }),
  );
});

test("a locked report survives a saved file; its values stay, and a changed reading is found with its cell", async () => {
  const mark = { number: 1, day: "2026-03-09 14:05", by: "EF", hash: "ab12", valuesHash: "cd34" };
  const { port, sheet, report } = await reported(demoSheet("SI"), { issue: mark });
  const reopened = new EmbeddedPort(openXlsx(await saveXlsx(port.workbook)).workbook);
  for (const one of [port, reopened]) {
    const said = await one.readNames(report, ISSUE_NAMES);
    expect(ISSUE_NAMES.map((name) => said[name]![0]![0])).toEqual([1, "2026-03-09 14:05", "EF", "ab12", "cd34"]);
    const locked = keptIn(await one.readNames(report, ISSUE_COLUMNS));
    const present = async () => kept(await one.readNames(sheet, RECORD_NAMES), await one.listNames(sheet));
    expect(locked.length).toBeGreaterThan(900);
    // What is read from the cells is hashed alike, before and after the file.
    const { values, names } = { values: await one.readNames(sheet, RECORD_NAMES), names: await one.listNames(sheet) };
    expect(issueText(mark, locked)).toBe(issueText(mark, lockedValues(values, names)));
    expect(changesSince(locked, await present())).toEqual([]);
    const [[reading]] = (await one.readNames(sheet, ["readings_03"])).readings_03 as [[number]];
    await one.fillNames(sheet, { readings_03: [reading + 1] });
    const changes = changesSince(locked, await present());
    expect(changes.find(({ name }) => name === "readings_03")).toMatchObject({
      row: 1,
      from: reading,
      to: reading + 1,
    });
    expect(keptIn(await one.readNames(report, ISSUE_COLUMNS))).toEqual(locked);
  }
});
