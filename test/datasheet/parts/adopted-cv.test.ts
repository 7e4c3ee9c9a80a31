/** cv that the engineer adopts for ranges of stress on the sheet, and the results that go on with it. */
import { demoSheet, fillSheet, type SheetValues } from "../../../src/datasheet";
import { runChecks } from "../../../src/checks";
import { readRecord } from "../../../src/record/record";
import { english } from "../../../src/reduction/message";
import { namedValues } from "../read-sheet";

const sheet = async (typed: SheetValues = {}, system: "SI" | "US" = "SI") => {
  const values = await namedValues(fillSheet(demoSheet(system), typed));
  const cell = (name: string, row = 0) => values[name]?.[row]?.[0];
  return { cell, record: readRecord(values), number: (name: string, row = 0) => Number(cell(name, row)) };
};
const REASON = "field rate of settlement nearby";

test("blank: the ranges run from the in-situ stress over the preconsolidation stress to the greatest load, and say whose cv they have", async () => {
  const { cell, number, record } = await sheet();
  const bounds = [0, 1].map((row) => [number("adopted_cv_low", row), number("adopted_cv_high", row)]);
  const yieldStress = number("preconsolidation_stress");
  expect(bounds).toEqual([
    [62, yieldStress],
    [yieldStress, Math.max(...record.loads.map(({ stress = 0 }) => stress))],
  ]);
  expect([0, 1, 2].map((row) => cell("adopted_cv_source", row))).toEqual([
    "as by log time, 1 load",
    expect.stringMatching(/^as by log time, \d loads$/),
    "",
  ]);
  // The loads that begin and end beyond the preconsolidation stress; their geometric mean.
  const virgin = record.loads.flatMap(({ stress = 0, results, words }, index) =>
    words.load_branch === "loading" && (record.loads[index - 1]?.stress ?? 0) >= yieldStress && results.cv_chosen
      ? [{ stress, cv: results.cv_chosen }]
      : [],
  );
  const mean = Math.exp(virgin.reduce((sum, { cv }) => sum + Math.log(cv), 0) / virgin.length);
  expect(virgin.length).toBeGreaterThan(2);
  expect(number("cv_virgin")).toBeCloseTo(mean, 9);
  expect(cell("adopted_cv_constructed", 1)).toBe(cell("cv_virgin"));
  expect([cell("cv_another"), cell("design_cv_from")]).toEqual(["", "between the loads, on log stress"]);
  expect(record.adopted).toEqual({});
});

test("an adopted cv is in use, is named, and the design values go on with it; the cv of the loads stays beside it", async () => {
  const plain = await sheet();
  const { cell, number, record } = await sheet({
    adopted_cv: [2.5, 0.8],
    adopted_cv_reason: [REASON],
    adopted_cv_by: ["XY"],
    adopted_cv_day: [48000],
  });
  expect([number("cv_recompression"), number("cv_virgin")]).toEqual([2.5, 0.8]);
  expect(cell("adopted_cv_constructed", 1)).toBe(plain.cell("cv_virgin"));
  expect([cell("adopted_cv_source", 0), cell("adopted_cv_source", 1)]).toEqual([
    "adopted",
    "adopted, no reason, no initials",
  ]);
  // The middle of the increase is 62 + 50 = 112 kPa, below the preconsolidation stress.
  expect(number("design_cv")).toBe(2.5);
  expect(cell("design_cv_from")).toMatch(/^adopted for 62 to 125\.\d+$/);
  expect(number("design_k") / plain.number("design_k")).toBeCloseTo(2.5 / plain.number("design_cv"), 9);
  expect(cell("preconsolidation_remark")).toMatch(
    /^cv, recompression adopted: 2\.5 from 62 to 125\.\d+ by XY, field rate of settlement nearby; cv, virgin adopted: 0\.8 .* by no initials, no reason/,
  );
  expect(record.adopted?.cv_recompression).toMatchObject({ value: 2.5, from: 62, reason: REASON, by: "XY" });
  expect(record.overrides.map(({ of, by }) => [of, by])).toEqual([
    ["cv, recompression, adopted", "XY"],
    ["cv, virgin, adopted", undefined],
  ]);
});

test("the person states the stresses; where ranges overlap the lower row counts", async () => {
  const { cell, number } = await sheet({
    adopted_cv_from: [undefined, undefined, 100],
    adopted_cv_to: [undefined, undefined, 200],
    adopted_cv: [2.5, undefined, 1.5],
  });
  expect([number("cv_another"), number("design_cv")]).toEqual([1.5, 1.5]);
  expect(cell("design_cv_from")).toBe("adopted for 100 to 200");
});

test("a cv without its stresses, or with the greater first, is not used, and the cell and the check say so", async () => {
  const unfinished: SheetValues[] = [
    { adopted_cv: [undefined, undefined, 1.5] },
    { adopted_cv: [undefined, undefined, 1.5], adopted_cv_from: [undefined, undefined, 200] },
  ];
  for (const typed of unfinished) {
    const { cell, record } = await sheet(typed);
    expect(cell("adopted_cv_source", 2)).toBe("give both stresses, the lower first");
    expect([cell("cv_another"), cell("design_cv_from")]).toEqual(["", "between the loads, on log stress"]);
    const asked = runChecks(record).find(({ check }) => check.id === "Q73");
    expect([asked?.answer.status, asked && english(asked.answer.sentence)]).toEqual([
      "explain",
      expect.stringMatching(/adopted without a range of stress: enter the stresses in .*\(adopted_cv_from\)/),
    ]);
  }
  const { cell } = await sheet({
    adopted_cv: [undefined, undefined, 1.5],
    adopted_cv_from: [undefined, undefined, 200],
    adopted_cv_to: [undefined, undefined, 100],
  });
  expect([cell("adopted_cv_source", 2), cell("cv_another")]).toEqual(["give both stresses, the lower first", ""]);
  expect([cell("design_cv"), cell("design_cv_from")].map(String).some((shown) => shown.startsWith("#"))).toBe(false);
});

test("in US units the range and the cv of the record are converted", async () => {
  const { number, record } = await sheet({ adopted_cv: [undefined, 0.05] }, "US");
  const adopted = record.adopted?.cv_virgin;
  // 1 ft2/day = 0.3048^2 m2 x 365.25 per year; 1 tsf = 95.7605 kPa.
  expect(adopted?.value).toBeCloseTo(0.05 * 0.3048 ** 2 * 365.25, 9);
  expect(adopted?.from).toBeCloseTo(number("preconsolidation_stress") * 95.76052, 2);
});

test("the check asks for the reason of an adopted cv beyond the cv of the loads of its range", async () => {
  const answer = async (typed: SheetValues) => {
    const asked = runChecks((await sheet(typed)).record).find(({ check }) => check.id === "Q73");
    return [asked?.answer.status, asked && english(asked.answer.sentence)];
  };
  expect(await answer({})).toEqual(["pass", "no cv is adopted: those of the loads are used"]);
  expect(await answer({ adopted_cv: [undefined, 50] })).toEqual([
    "explain",
    expect.stringMatching(
      /^cv, virgin: 50 m2\/yr is adopted; the loads that end within the range give .*: give the reason in/,
    ),
  ]);
  expect(await answer({ adopted_cv: [undefined, 50], adopted_cv_reason: [undefined, REASON] })).toEqual([
    "pass",
    expect.stringMatching(/; the reason: field rate of settlement nearby$/),
  ]);
});
