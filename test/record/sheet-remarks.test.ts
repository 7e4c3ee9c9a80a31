/** The remarks calculated from a record are those that the cells of its sheet show. */
import { demoSheet } from "../../src/datasheet";
import { readRecord, type NamedValues, type TestRecord } from "../../src/record/record";
import { remarkOfLoad, remarkOfTest } from "../../src/record/sheet-remarks";
import { english } from "../../src/reduction/message";
import { namedValues } from "../datasheet/read-sheet";

jest.setTimeout(120_000);

describe.each(["SI", "US"] as const)("the demonstration, %s", (system) => {
  let values: NamedValues;
  let record: TestRecord;
  beforeAll(async () => {
    values = await namedValues(demoSheet(system));
    record = readRecord(values);
  });

  test("the remarks of every load agree", () => {
    expect(record.loads.length).toBeGreaterThan(10);
    for (const { number, row } of record.loads)
      expect(english(remarkOfLoad(record, number)!)).toBe(values.load_remark[row - 1][0]);
    expect(remarkOfLoad(record, 99)).toBeUndefined();
  });

  test.each([
    "specimen_remark",
    "preconsolidation_remark",
    "preconsolidation_verdict",
    "field_remark",
    "quality_remark",
    "quality_class",
  ] as const)("%s", (name) => {
    const remark = remarkOfTest(record, name);
    expect(remark && (english(remark) || "ok")).toBe(values[name][0][0]);
  });

  test("a typed cell gives no remark of the reduction", () =>
    expect(remarkOfTest(record, "test_remarks")).toBeUndefined());
});
