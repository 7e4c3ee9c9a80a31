/** Values that the engineer adopts on the sheet, and the results that depend on them. */
import { demoSheet, fillSheet, type SheetValues } from "../../../src/datasheet";
import { runChecks } from "../../../src/checks";
import { readRecord } from "../../../src/record/record";
import { reduced } from "../../../src/record/reduced-test";
import { english } from "../../../src/reduction/message";
import { namedValues } from "../read-sheet";

const sheet = async (typed: SheetValues = {}) => {
  const values = await namedValues(fillSheet(demoSheet("SI"), typed));
  const cell = (name: string, row = 0) => values[name]?.[row]?.[0];
  const record = readRecord(values);
  return { cell, record, number: (name: string, row = 0) => Number(cell(name, row)) };
};
const REASON = "two sister specimens read 118";

test("blank: the sheet uses the results of the constructions, and says so", async () => {
  const { cell, record } = await sheet();
  const rows = [0, 1, 2, 3, 4];
  const inUse = [
    "preconsolidation_stress",
    "compression_index",
    "recompression_index",
    "swelling_index",
    "c_alpha_chosen",
  ];
  expect(inUse.map((name) => cell(name))).toEqual(rows.map((row) => cell("adopted_constructed", row)));
  expect(rows.map((row) => cell("adopted_source", row))).toEqual([
    "as by Casagrande",
    "as by the virgin line",
    "as by loop or unloading",
    "as by the unloading",
    "as by load 11",
  ]);
  expect([record.adopted, record.faults]).toEqual([{}, []]);
});

test("another method: its stress is in use, and Casagrande's stress stays in the table of methods", async () => {
  const { cell, number, record } = await sheet({ preconsolidation_method: "Pacheco Silva" });
  expect(number("preconsolidation_stress")).toBeCloseTo(115.1, 1);
  expect(cell("adopted_source")).toBe("as by Pacheco Silva");
  expect(number("preconsolidation_spread", 0)).toBeNaN();
  const { preconsolidation } = reduced(record);
  expect(preconsolidation.ok && preconsolidation.value.stress).toBeCloseTo(number("preconsolidation_stress"), 6);
  expect(number("overconsolidation_ratio")).toBeCloseTo(number("preconsolidation_stress") / 62, 9);
});

test("typed values and the results that depend on them are in use; the results of the constructions stay beside them", async () => {
  const plain = await sheet();
  const { cell, number, record } = await sheet({
    adopted_value: [118, 0.6, undefined, undefined, 0.01],
    adopted_reason: [REASON, "agreed"],
    adopted_by: ["XY", "XY"],
    adopted_day: [48000, 48000],
  });
  expect([number("preconsolidation_stress"), number("compression_index"), number("c_alpha_chosen")]).toEqual([
    118, 0.6, 0.01,
  ]);
  expect(number("recompression_index")).toBe(plain.number("recompression_index"));
  expect(cell("adopted_constructed")).toBe(plain.cell("preconsolidation_stress"));
  expect(number("overconsolidation_ratio")).toBeCloseTo(118 / 62, 9);
  const e0 = number("void_ratio_initial");
  expect(number("c_alpha_ratio")).toBeCloseTo((0.01 * (1 + e0)) / 0.6, 9);
  expect(number("field_compression_index")).not.toBe(plain.number("field_compression_index"));
  expect([0, 4].map((row) => cell("adopted_source", row))).toEqual(["adopted", "adopted, no reason, no initials"]);
  expect(cell("preconsolidation_remark")).toMatch(
    /^Preconsolidation stress adopted: 118 by XY, two sister specimens read 118 \(the constructions gave 125\.\d\); Compression index Cc adopted: 0\.6 /,
  );
  expect(record.adopted?.preconsolidation_stress).toEqual({ value: 118, reason: REASON, by: "XY", day: "2031-06-01" });
  const { preconsolidation, compressionIndex } = reduced(record);
  expect(preconsolidation.ok && preconsolidation.value.stress).toBe(118);
  expect(compressionIndex.ok && english(compressionIndex.value.basis)).toBe("adopted value (agreed)");
  expect(record.overrides.map(({ of, reason, by }) => [of, reason, by])).toEqual([
    ["Preconsolidation stress, adopted", REASON, "XY"],
    ["Compression index Cc, adopted", "agreed", "XY"],
    ["C alpha-epsilon, adopted", undefined, undefined],
  ]);
});

test("the sheet asks for the reason of an adopted stress outside the range of the methods", async () => {
  const question = async (typed: SheetValues) => {
    const answered = runChecks((await sheet(typed)).record).find(({ check }) => check.id === "Q66");
    return { status: answered?.answer.status, said: answered ? english(answered.answer.sentence) : "" };
  };
  expect((await question({})).status).toBe("pass");
  expect(await question({ adopted_value: [120] })).toEqual({
    status: "pass",
    said: expect.stringMatching(/^120 kPa is adopted; the methods read 115\.\d to 129\.\d kPa$/),
  });
  const bare = await question({ adopted_value: [180] });
  expect(bare).toEqual({ status: "explain", said: expect.stringMatching(/give the reason in Reason of adoption/) });
  expect(await question({ adopted_value: [180], adopted_reason: ["cemented"] })).toEqual({
    status: "pass",
    said: expect.stringMatching(/; the reason: cemented$/),
  });
});
