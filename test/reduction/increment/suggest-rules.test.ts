/** Which construction is suggested, rule by rule; test/reduction/increment/suggest.test.ts has how often it is the nearer one. */
import { suggestMethod } from "../../../src/reduction/increment/suggest";
import type { Increment } from "../../../src/reduction/increment/reduce";
import { english, say, type Message } from "../../../src/reduction/message";
import { given, notApplicable } from "../../../src/reduction/outcome";
import { cleanOf, exact, FIT } from "./constructions/exact-load";

interface Made {
  /** cv by log time and by root time, over that of the fit. */
  readonly log?: number | string;
  readonly root?: number | string;
  readonly said?: readonly [log: readonly Message[], root: readonly Message[]];
  readonly misfit?: number;
  readonly fit?: Increment["fit"];
}
/** A load with the rate of the fit, and constructions as far as the suggestion asks for them; a text is a refusal. */
function load({ log = 1, root = 1, said = [[], []], misfit = 0.1, fit }: Made): Increment {
  const theory = given({ ...FIT, misfit, rateLow: 0.9 * FIT.rate, rateHigh: 1.1 * FIT.rate });
  const construction = (found: number | string, value: (factor: number) => object, remarks: readonly Message[]) =>
    typeof found === "string" ? notApplicable(say`${{ verbatim: found }}`) : given(value(found) as never, remarks);
  return {
    ...{ cleaned: given(cleanOf(exact())), theory, fit: fit ?? theory },
    logTime: construction(log, (factor) => ({ t50: 0.197 / (factor * FIT.rate) }), said[0]),
    rootTime: construction(
      root,
      (factor) => ({ t90: 0.848 / (factor * FIT.rate), straight: { from: 0.25, to: 8 } }),
      said[1],
    ),
  };
}
const of = (made: Made) => {
  const found = suggestMethod(load(made));
  return found.ok ? found.value : `${found.fault}: ${english(found.reason)}`;
};

test("the only one that applies, with the reason why the other does not", () => {
  expect(of({ log: "no log" })).toMatchObject({ method: "root time", why: "the only one" });
  expect(of({ root: "no root" })).toMatchObject({ method: "log time", why: "the only one" });
  const found = of({ root: "no root" });
  expect(typeof found === "string" ? found : english(found.otherRefusal!)).toBe("no root");
});

test("none where neither applies: one reason if both have the same, else both", () => {
  expect(of({ log: "too few", root: "too few" })).toBe("method: too few");
  expect(of({ log: "no log", root: "no root" })).toBe("method: neither construction applies: no log; no root");
});

test("the one whose cv lies nearer to that of the fit, as a ratio; log time if both are as near", () => {
  expect(of({ log: 1.05, root: 1.2 })).toMatchObject({ method: "log time", why: "nearer to the fit" });
  expect(of({ log: 1.2, root: 1.05 })).toMatchObject({ method: "root time", why: "nearer to the fit" });
  expect(of({ log: 1 / 1.05, root: 1.06 })).toMatchObject({ method: "log time" });
  expect(of({ log: 1.06, root: 1 / 1.05 })).toMatchObject({ method: "root time" });
  expect(of({ log: 1.1, root: 1.1 })).toMatchObject({ method: "log time" });
});

test("the figures beside it: ratio of both, each over the fit, within its interval, readings of the straight part", () => {
  expect(of({ log: 1.05, root: 1.2 })).toMatchObject({
    ratio: expect.closeTo(1.2 / 1.05, 9),
    overFit: { "log time": expect.closeTo(1.05, 9), "root time": expect.closeTo(1.2, 9) },
    inInterval: { "log time": true, "root time": false },
    // 0.25, 0.5, 1, 2, 4 and 8 min.
    straightReadings: 6,
  });
  expect(of({ log: 0.85, root: 0.95 })).toMatchObject({ inInterval: { "log time": false, "root time": true } });
});

describe("readings that depart from theory by more than 1.2 % of primary, or have no fit", () => {
  const a = say`a`;
  const [b, c] = [say`b`, say`c`];
  const by = (log: readonly Message[], root: readonly Message[], more: Made = { misfit: 0.0121 * 400 }) =>
    of({ log: 1, root: 1.3, said: [log, root], ...more });

  test("the one with fewer remarks of its own, log time if both have as many", () => {
    expect(by([a, b], [a])).toMatchObject({ method: "root time", why: "fewer remarks", remarks: { "log time": [b], "root time": [] } }); // prettier-ignore
    expect(by([a], [a, b, c])).toMatchObject({ method: "log time", why: "fewer remarks" });
    expect(by([a, b], [a, c])).toMatchObject({ method: "log time", why: "as many remarks" });
    expect(by([], [])).toMatchObject({ method: "log time", why: "as many remarks", straightReadings: 6 });
  });
  test("the fit decides up to that misfit, in either direction of the dial", () => {
    expect(by([], [a], { misfit: 0.0119 * 400 })).toMatchObject({ why: "nearer to the fit" });
    const falling = given({ ...FIT, primary: -400, misfit: 0.0119 * 400 });
    expect(by([], [a], { fit: falling })).toMatchObject({ why: "nearer to the fit" });
    expect(by([], [a], { fit: notApplicable(say`no fit`) })).toMatchObject({ why: "fewer remarks" });
  });
});
