/** What the form of adopted values writes, on a calculated data sheet: the formulas of the sheet go on with it. */
import "../../../workbook/embedded/engine-in-node";
import { demoSheet } from "../../../../src/datasheet";
import {
  adoptRow,
  cellNames,
  cellsToAdopt,
  cellsToTakeBack,
  rangeGiven,
  replaces,
} from "../../../../src/pane/screens/results/adopt-rows";
import { resultsOf } from "../../../../src/pane/screens/results/results";
import { readRecord, RECORD_NAMES } from "../../../../src/record/record";
import { opened } from "../../../workbook/embedded/opened";

const SIGNED = { reason: "aged clay", by: "AB", day: 46_355 };

test("the preconsolidation stress and a cv in use follow what was adopted, and go back when it is taken back", async () => {
  const { port, sheet } = await opened(demoSheet("SI"));
  const read = () => port.readNames(sheet, RECORD_NAMES);
  const start = await read();
  const shown = async (...names: string[]) => {
    const values = await read();
    return names.map((name) => values[name]![0]![0]);
  };
  const record = readRecord(start);
  const { methods } = resultsOf(start, record);
  const row = adoptRow(start, "preconsolidation_stress");
  expect(row).toMatchObject({ missing: [], unit: "kPa", constructed: start.preconsolidation_stress![0]![0] });
  expect(rangeGiven(row, start, record, methods)).toEqual([methods!.least, methods!.greatest]);

  const stress = cellsToAdopt("preconsolidation_stress", { value: 150, ...SIGNED });
  expect(replaces(stress, row.standing)).toBe(false);
  await port.fillNames(sheet, stress, [], cellNames("preconsolidation_stress"));
  await port.fillNames(sheet, cellsToAdopt("cv_virgin", { value: 2.5, ...SIGNED }), [], cellNames("cv_virgin"));
  expect(await shown("preconsolidation_stress", "adopted_source", "cv_virgin")).toEqual([150, "adopted", 2.5]);
  const adopted = await read();
  expect(readRecord(adopted).adopted).toMatchObject({
    preconsolidation_stress: { value: 150, reason: "aged clay", by: "AB", day: "2026-11-29" },
    cv_virgin: { value: 2.5, from: 150 },
  });
  // What the constructions give stays beside the adopted value.
  const after = adoptRow(adopted, "preconsolidation_stress");
  expect([after.constructed, replaces(stress, after.standing)]).toEqual([row.constructed, true]);

  await port.fillNames(sheet, cellsToTakeBack("preconsolidation_stress"));
  await port.fillNames(sheet, cellsToTakeBack("cv_virgin"));
  const names = ["preconsolidation_stress", "adopted_source", "cv_virgin"] as const;
  expect(await shown(...names)).toEqual(names.map((name) => start[name]![0]![0]));
  expect(readRecord(await read()).adopted).toEqual({});
});
