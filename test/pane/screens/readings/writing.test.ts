import type { Layout } from "../../../../src/exchange/logger/layout";
import type { Target } from "../../../../src/exchange/logger/target";
import type { LoadChoices, Stretch } from "../../../../src/pane/screens/readings/stretches";
import {
  answered,
  columnsOf,
  NO_ANSWERS,
  writingOf,
  type Answers,
} from "../../../../src/pane/screens/readings/writing";

const LAYOUT = { readingUnit: "mm", sense: "rise" } as Layout;
const CHOICES: LoadChoices = { way: "load", rule: "before", thinning: "even" };
const stretch = (load: number): Stretch => ({
  from: 0,
  to: 3,
  load,
  fromLine: 1,
  toLine: 3,
  lasts: 2,
  series: { times: [0, 1, 2], readings: [load, load + 0.1, load + 0.2], lines: [1, 2, 3], leftOut: 0 },
  kept: [0, 2],
});
const TARGET: Target = {
  loads: [0, 3, 0, 5].map((held) => ({ held, used: held })),
  room: 60,
  zeroReading: "",
  dialFactor: 0.002,
  dialSense: "rise",
  lengthUnit: "mm",
  stressUnit: "kPa",
  frame: "",
  remarks: "",
};
const of = (answers: Answers, target: Target = TARGET) =>
  writingOf({ target, layout: LAYOUT, stretches: [stretch(1), stretch(2)], choices: CHOICES }, answers);
const remark = ({ name, answer }: { name: string; answer?: string }) => `${name}: ${answer}.`;

test("a blank cell is filled in; a cell that holds something else waits for an answer", () =>
  expect(of(NO_ANSWERS).inputs).toEqual([
    { name: "dial_factor", now: 0.002, wanted: 1, answer: undefined },
    { name: "zero_reading", now: "", wanted: 1, answer: "change" },
  ]));

test("a load with readings is written only if the person agreed; loads that stay are named", () => {
  expect(of(NO_ANSWERS)).toMatchObject({ holding: [2], taken: [{ load: 1 }], staying: [2, 4] });
  const agreed = answered(NO_ANSWERS, { do: "replace", load: 2, agreed: true });
  expect(of(agreed)).toMatchObject({ holding: [2], taken: [{ load: 1 }, { load: 2 }], staying: [4] });
  expect(answered(agreed, { do: "replace", load: 2, agreed: false })).toEqual(NO_ANSWERS);
});

test.each(["change", "keep"] as const)("%s: the cell and the remark say so", (answer) => {
  const answers = answered(NO_ANSWERS, { do: "input", name: "dial_factor", answer });
  const { columns, blank } = columnsOf(of(answers), TARGET, answers, remark);
  expect(columns.dial_factor).toEqual(answer === "change" ? [1] : undefined);
  expect(columns.test_remarks).toEqual([`dial_factor: ${answer}.`]);
  expect(columns.zero_reading).toEqual([1]);
  expect(columns.readings_01).toEqual([1, 1.2]);
  expect(blank).toEqual(["readings_01"]);
});

test("a sheet without a cell for remarks gets none", () => {
  const target = { ...TARGET, remarks: undefined };
  const answers = answered(NO_ANSWERS, { do: "input", name: "dial_factor", answer: "keep" });
  expect(columnsOf(of(answers, target), target, answers, remark).columns.test_remarks).toBeUndefined();
});

test("another sheet cancels all answers", () =>
  expect(answered(answered(NO_ANSWERS, { do: "replace", load: 2, agreed: true }), { do: "forget" })).toBe(NO_ANSWERS));
