import {
  FIT_LIMITS,
  judge,
  LOG_TIME_LIMITS,
  ROOT_TIME_LIMITS,
  type Signals,
} from "../../../src/reduction/increment/signals";
import { say } from "../../../src/reduction/message";
import { inEnglish } from "../../in-english";

const GOOD: Signals = {
  steps: 500,
  primarySteps: 400,
  clearness: 300,
  steepness: 6,
  bend: 5,
  lastT: 10,
  firstU: 0.05,
  early: 6,
  misfit: 0.002,
  drift: 1,
};
const judged = (changed: Partial<Signals>, limits = LOG_TIME_LIMITS) =>
  inEnglish(judge({ ...GOOD, ...changed }, limits, say`try ROOT_TIME`));

test("a good record is neither refused nor remarked", () => {
  for (const limits of [LOG_TIME_LIMITS, ROOT_TIME_LIMITS, FIT_LIMITS])
    expect(judged({}, limits)).toEqual({ remarks: [] });
});

// Limits: the numerical study named in signals.ts.
test.each<[Partial<Signals>, Partial<Signals>, RegExp]>([
  [{ steps: 9 }, { steps: 11 }, /only 9 steps of the instrument: it is lost in the resolution/],
  [{ clearness: 24 }, { clearness: 26 }, /only 24 times the scatter .* lost in the noise/],
  [{ steepness: 1.4 }, { steepness: 1.6 }, /no inflection in the readings.*; try ROOT_TIME/],
  [{ bend: 1.25 }, { bend: 1.35 }, /no inflection in the readings.*; try ROOT_TIME/],
  [{ lastT: 1.5 }, { lastT: 1.7 }, /the readings stop at about 98 % of primary/],
  [{ firstU: 0.42 }, { firstU: 0.38 }, /about 42 % of primary compression was over before the first reading/],
  [{ early: 1 }, { early: 2 }, /only 1 of the readings lie in the first half/],
])("log time refuses %j and not %j", (beyond, within, message) => {
  expect(judged(beyond).refusal).toMatch(message);
  expect(judged(within).refusal).toBeUndefined();
});

test.each<[Partial<Signals>, Partial<Signals>, RegExp]>([
  [{ primarySteps: 39 }, { primarySteps: 41 }, /only 39 steps of the instrument: cv is uncertain/],
  [{ clearness: 59 }, { clearness: 61 }, /only 59 times the scatter/],
  [{ steepness: 2.1 }, { steepness: 2.3 }, /nearly as steep/],
  [{ bend: 1.6 }, { bend: 1.8 }, /nearly as steep/],
  [{ lastT: 2.9 }, { lastT: 3.1 }, /end of primary is uncertain/],
  [{ firstU: 0.32 }, { firstU: 0.28 }, /d0 is uncertain/],
  [{ early: 2 }, { early: 3 }, /only 2 readings in the first half/],
  [{ misfit: 0.013 }, { misfit: 0.011 }, /depart from theory by 1.3 % of primary/],
  [{ misfit: 0.008, drift: 2 }, { misfit: 0.006, drift: 2 }, /by 0.8 % of primary .* in a row to the same side/],
  [{ misfit: 0.01, drift: 1.6 }, { misfit: 0.01, drift: 1.4 }, /in a row to the same side/],
])("log time remarks %j and not %j", (beyond, within, message) => {
  expect(judged(beyond).remarks.join("; ")).toMatch(message);
  expect(judged(within).remarks).toEqual([]);
});

test("root time and the fit need less of a record than log time", () => {
  expect(judged({ lastT: 1 }, ROOT_TIME_LIMITS)).toEqual({ remarks: [] });
  expect(judged({ lastT: 0.8 }, ROOT_TIME_LIMITS).refusal).toMatch(/the readings stop/);
  expect(judged({ lastT: 1, firstU: 0.39, early: 2 }, FIT_LIMITS)).toEqual({ remarks: [] });
  expect(judged({ lastT: 0.4 }, FIT_LIMITS).refusal).toMatch(/the readings stop/);
});
