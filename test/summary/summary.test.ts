/**
 * A summary of sheets in different units, calculated. Its live values are those of the records; it grows, and keeps
 * what a person typed.
 */
import "../workbook/embedded/engine-in-node";
import { demoSheet } from "../../src/datasheet";
import { readRecord, RECORD_NAMES } from "../../src/record/record";
import { COLUMN_NAMES, COLUMNS, NEEDED_NAMES, SUMMARY_UNITS, type Beside } from "../../src/summary/columns";
import { wordsOf } from "../../src/specification/text/words";
import { FIRST_ROW, summarySheet, UNIT_NAMES } from "../../src/summary/summary-sheet";
import { twins, update, type FileSpecimen, type Specimen, type Standing } from "../../src/summary/update";
import type { EmbeddedPort } from "../../src/workbook/embedded";
import type { CellValue } from "../../src/workbook/port";
import { opened } from "../workbook/embedded/opened";

const BESIDE: Beside = { open: 3, day: 46_000.5 };

let port: EmbeddedPort;
beforeEach(async () => {
  ({ port } = await opened(
    demoSheet("SI"),
    { ...demoSheet("US"), name: "Demonstration of US units" },
    summarySheet("SI"),
  ));
});

async function specimens(): Promise<Specimen[]> {
  const sheets = (await port.findSheets(NEEDED_NAMES)).filter(({ has }) => has.includes("times_01"));
  const looked = await port.lookAt(sheets.map(({ sheet }) => ({ sheet, values: RECORD_NAMES })));
  return looked.map(({ sheet, values }, index) => ({
    sheet,
    record: readRecord(values),
    has: new Set(sheets[index]?.has),
    beside: BESIDE,
  }));
}

async function standing(): Promise<Standing> {
  const [found] = await port.lookAt([{ sheet: "Summary", values: UNIT_NAMES, contents: COLUMN_NAMES, names: true }]);
  const values = await port.values("Summary", "A1:AZ205");
  const filled = new Set(values.flatMap((row, index) => (row.some((value) => value !== "") ? [index] : [])));
  return { names: found!.names!, values: found!.values, contents: found!.contents, filled };
}

async function bring(files: readonly FileSpecimen[] = []) {
  const done = update(await standing(), await specimens(), files);
  await port.writeCells("Summary", done.fresh);
  await port.writeCells("Summary", done.renewed, true);
  return done;
}

const column = async (name: string): Promise<CellValue[]> =>
  (await port.readNames("Summary", [name]))[name]!.map(([value]) => value!);

test("a row for each sheet is live, and shows the values of the sheet's record in the units of the summary", async () => {
  const { added, left, gone } = await bring();
  expect([added, left, gone]).toEqual([["Demonstration", "Demonstration of US units"], [], []]);
  const records = await specimens();
  for (const { name, value } of COLUMNS.filter(({ formula }) => formula)) {
    const shown = await column(name);
    records.forEach(({ record }, index) => {
      const expected = value(record, BESIDE, SUMMARY_UNITS.SI, wordsOf("en")) ?? "";
      if (typeof expected === "number") expect([name, shown[index]]).toEqual([name, expect.closeTo(expected, 9)]);
      else expect([name, shown[index]]).toEqual([name, expected]);
    });
  }
  expect((await column("summary_sheet")).slice(0, 3)).toEqual(["Demonstration", "Demonstration of US units", ""]);
  expect((await column("summary_open_checks")).slice(0, 3)).toEqual([3, 3, ""]);
  const before = (await column("summary_in_situ_stress"))[0];
  await port.fillNames("Demonstration", { in_situ_stress: [99] });
  expect([before, (await column("summary_in_situ_stress"))[0]]).toEqual([62, 99]);
});

test("a sheet that was added, renamed or deleted is recognized, and the rows and cells of a person stay", async () => {
  await bring();
  await port.writeCells("Summary", [
    { row: FIRST_ROW + 2, col: 3, value: "a row of my own" },
    { row: FIRST_ROW + 3, col: 40, value: "and a column" },
  ]);
  await port.writeCells("Summary", [{ row: FIRST_ROW, col: 1, value: "typed" }], true);
  const { model } = port.workbook;
  (model as any).dispatch("RENAME_SHEET", {
    sheetId: model.getters.getSheetIdByName("Demonstration of US units"),
    oldName: "Demonstration of US units",
    newName: "Boring 2",
  });
  await port.insertSheet({ ...demoSheet("SI"), name: "Boring 3" });
  const done = await bring();
  expect([done.added, done.left, done.gone]).toEqual([["Boring 3"], ["B6"], []]);
  expect((await column("summary_sheet")).slice(0, 6)).toEqual(["Demonstration", "Boring 2", "", "", "Boring 3", ""]);
  expect((await column("summary_boring"))[0]).toBe("typed");
  expect((await column("summary_specimen"))[2]).toBe("a row of my own");
  expect((await bring()).fresh).toEqual([]);

  (model as any).dispatch("DELETE_SHEET", {
    sheetId: model.getters.getSheetIdByName("Boring 2"),
    sheetName: "Boring 2",
  });
  expect((await bring()).gone).toEqual([FIRST_ROW + 2]);
});

test("a specimen of another file is constant; a changed file is reported, an unchanged file is left", async () => {
  const [, us] = await specimens();
  const of = (hash: string): FileSpecimen => ({
    record: us!.record,
    beside: { ...BESIDE, file: "b.xlsx, Test", hash },
  });
  const first = await bring([of("aa")]);
  expect(first.added).toEqual(["Demonstration", "Demonstration of US units", "b.xlsx, Test"]);
  expect((await column("summary_sheet"))[2]).toBe("b.xlsx, Test");
  const stresses = await column("summary_preconsolidation_stress");
  expect(stresses[2]).toBeCloseTo(stresses[1] as number, 9);
  expect((await column("summary_day"))[2]).toBe(46_000);
  const contents = await port.readContents("Summary", ["summary_compression_index"]);
  expect(String(contents.summary_compression_index![2]![0])).not.toMatch(/^=/);

  const again = await bring([of("aa")]);
  expect([again.added, again.changed]).toEqual([[], []]);
  const changed = await bring([of("bb")]);
  expect([changed.added, changed.changed]).toEqual([[], ["b.xlsx, Test"]]);
  expect((await column("summary_sha256"))[2]).toBe("bb");
});

test("sheets and files of the same specimen are found", async () => {
  const [si, us] = await specimens();
  const other = { ...us!.record, words: { ...us!.record.words, specimen: "other" } };
  expect(
    twins([
      { called: "A", record: si!.record },
      { called: "B", record: { ...si!.record } },
      { called: "C", record: other },
    ]),
  ).toEqual([["A", "B"]]);
});
