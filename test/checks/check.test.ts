import {
  agree,
  ask,
  cannotAsk,
  check,
  figure,
  gravest,
  shown,
  within,
  type Answer,
  type Status,
} from "../../src/checks/check";
import { readRecord } from "../../src/record/record";
import { english, say, verbatim } from "../../src/reduction/message";
import { badInput, given } from "../../src/reduction/outcome";
import { inEnglish } from "../in-english";

const record = readRecord({});
const inInches = readRecord({ length_unit: [["in"]] });
const remedy = say`mend it`;
const answer = (status: Status, used?: number): Answer => ({
  status,
  used,
  sentence: say`it is ${verbatim(status)}`,
});

describe("a number as a figure", () => {
  test("has the unit of its kind, and a ratio in percent", () => {
    expect(figure(record, say`w`, 0.25, "percent")).toMatchObject({ value: 25, unit: "%" });
    expect(figure(record, say`t`, 8, "minutes")).toMatchObject({ value: 8, unit: "min" });
    expect(figure(record, say`m`, 8, "mass")).toMatchObject({ value: 8, unit: "g" });
    expect(figure(record, say`T`, 8, "celsius")).toMatchObject({ value: 8, unit: "C" });
    expect(figure(record, say`d`, 8, "divisions")).toMatchObject({ value: 8, unit: "div" });
    for (const kind of ["ratio", "number"] as const)
      expect(figure(record, say`r`, 0.25, kind)).toMatchObject({ value: 0.25, unit: "" });
  });

  test("of a length is in the unit of the sheet, in that of the record without one", () => {
    expect(figure(record, say`height`, 25.4, "length")).toMatchObject({ value: 25.4, unit: "mm" });
    const { value, unit } = figure(inInches, say`height`, 25.4, "length");
    expect([value, unit]).toEqual([expect.closeTo(1, 12), "in"]);
    expect(figure(inInches, say`stress`, 100, "stress")).toMatchObject({ value: 100, unit: "kPa" });
  });

  test("is shown to four digits, with its unit if it has one", () => {
    expect(english(shown({ what: say`w`, value: 99.51666, unit: "%" }))).toBe("99.52 %");
    expect(english(shown({ what: say`w`, value: 0.851666, unit: "" }))).toBe("0.8517");
  });
});

describe("a number within ranges", () => {
  const levels = { stop_below: 10, stop_above: 50, explain_below: 20, explain_above: 40, note_above: 35 };
  const of = (value: number) => inEnglish(within(record, say`S`, value, "number", levels, remedy));

  test("fails at the gravest level whose limit it passes, and says which limit", () => {
    expect(of(9)).toMatchObject({ status: "stop", sentence: "S is 9, below 10: mend it" });
    expect(of(51)).toMatchObject({ status: "stop", sentence: "S is 51, above 50: mend it" });
    expect(of(19)).toMatchObject({ status: "explain", sentence: "S is 19, below 20: mend it" });
    expect(of(41)).toMatchObject({ status: "explain", sentence: "S is 41, above 40: mend it" });
    expect(of(36)).toMatchObject({ status: "note", sentence: "S is 36, above 35: mend it" });
  });

  test("at a limit does not fail by this limit", () => {
    expect(of(10).status).toBe("explain");
    expect(of(50).status).toBe("explain");
    expect(of(20).status).toBe("pass");
    expect(of(40).status).toBe("note");
    expect(of(35).status).toBe("pass");
  });

  test("shows the number and the limit that it passes, or to which it is nearest", () => {
    const compared = (value: number) => of(value).compared?.map((one) => [one.what, one.value]);
    expect(compared(9)).toEqual([
      ["S", 9],
      ["limit", 10],
    ]);
    expect(compared(22)?.[1]).toEqual(["limit", 20]);
    expect(compared(34)?.[1]).toEqual(["limit", 40]);
  });

  test("uses all of its range at the limit, and less the further it is from it", () => {
    expect(of(20).used).toBe(1);
    // 2 above a limit of 20.
    expect(of(22).used).toBeCloseTo(1 / 1.1, 12);
    expect(of(34).used).toBeCloseTo(1 / (1 + 6 / 40), 12);
    expect(within(record, say`S`, 3, "number", { stop_below: 0 }, remedy).used).toBeCloseTo(0, 12);
  });

  test("names the range in which it passes: both ends, or the one that there is", () => {
    const passes = (value: number, [explain_below, explain_above]: readonly [number?, number?]) =>
      english(within(record, say`S`, value, "number", { explain_below, explain_above }, remedy).sentence);
    expect(passes(30, [20, 40])).toBe("S is 30, within 20 to 40");
    expect(passes(30, [20, undefined])).toBe("S is 30, not below 20");
    expect(passes(30, [undefined, 40])).toBe("S is 30, not above 40");
    expect(english(within(record, say`S`, 30, "number", { note_above: 40 }, remedy).sentence)).toBe(
      "S is 30, not above 40",
    );
    expect(
      english(
        within(record, say`S`, 30, "number", { note_below: 1, note_above: 40, stop_below: 2, stop_above: 50 }, remedy)
          .sentence,
      ),
    ).toBe("S is 30, within 2 to 50");
  });

  test("takes the ends of its ranges from the limits of a question, and leaves others out", () => {
    const limits = { stop_below: 1, explain_above: 40, share: 0.5 };
    expect(english(within(record, say`S`, 30, "number", limits, remedy).sentence)).toBe("S is 30, not above 40");
  });
});

describe("two numbers that should agree", () => {
  const pair = [figure(record, say`one`, 10, "number"), figure(record, say`the other`, 12, "number")] as const;
  const of = (value: number, limits: { explain?: number; stop?: number }) =>
    inEnglish(agree(record, pair, { value, kind: "number" }, limits, remedy));

  test("fail at the gravest limit that their difference passes, whatever its sign", () => {
    for (const sign of [1, -1]) {
      expect(of(sign * 2, { explain: 1, stop: 1.5 })).toMatchObject({
        status: "stop",
        sentence: "one is 10, the other 12: they differ by 2, more than 1.5; mend it",
      });
      expect(of(sign * 2, { explain: 1, stop: 2 }).status).toBe("explain");
      expect(of(sign * 2, { explain: 2, stop: 3 })).toMatchObject({
        status: "pass",
        used: 1,
        sentence: "one is 10, the other 12: they differ by 2, not more than 2",
      });
    }
  });

  test("say what a percentage of their difference is a part of", () => {
    const parts = { value: 0.4, kind: "percent", of: say`of primary compression` } as const;
    expect(inEnglish(agree(record, pair, parts, { explain: 0.15 }, remedy)).sentence).toBe(
      "one is 10, the other 12: they differ by 40 % of primary compression, more than 15 %; mend it",
    );
  });

  test("use the share of their difference in the limit that is asked first", () => {
    expect(of(1, { explain: 4, stop: 8 }).used).toBe(0.25);
    expect(of(1, { stop: 8 }).used).toBe(0.125);
    expect(of(1, { stop: 8 }).compared).toEqual(inEnglish(pair));
    expect(of(9, { stop: 8 }).compared).toEqual(inEnglish(pair));
  });
});

describe("one answer for several loads", () => {
  const cases = (...answers: Answer[]) => answers.map((one, i) => ({ load: say`load ${i + 1}`, answer: one }));

  test("is the gravest, of the first load that has it, and names the others that are as grave", () => {
    const all = cases(answer("pass"), answer("explain"), answer("note"), answer("explain"));
    expect(inEnglish(gravest(all))).toMatchObject({
      status: "explain",
      sentence: "load 2: it is explain; also load 4",
    });
    expect(gravest([...all, ...cases(answer("stop"))]).status).toBe("stop");
    expect(gravest(cases(answer("note"), answer("pass"))).status).toBe("note");
  });

  test("names many other loads by their numbers alone, in runs", () => {
    const failing = [2, 3, 4, 5, 9].map((load) => ({
      load: { ...say`load ${load} (100 kPa)`, load },
      answer: answer("explain"),
    }));
    expect(inEnglish(gravest(failing)).sentence).toBe("load 2 (100 kPa): it is explain; also loads 3 to 5, 9");
    expect(inEnglish(gravest(failing.slice(0, 3))).sentence).toBe(
      "load 2 (100 kPa): it is explain; also load 3 (100 kPa); also load 4 (100 kPa)",
    );
    const unloadings = failing
      .slice(0, 4)
      .map(({ load, answer: one }) => ({ load: say`unloading from ${load}`, answer: one }));
    expect(inEnglish(gravest(unloadings)).sentence).toBe(
      "unloading from load 2 (100 kPa): it is explain; also unloading from load 3 (100 kPa); also unloading from load 4 (100 kPa); also unloading from load 5 (100 kPa)",
    );
  });

  test("repeats the sentence, and not the load, for a second answer about the same load", () => {
    const same = [answer("stop"), { ...answer("stop"), sentence: say`it is worse` }].map((one) => ({
      load: say`load 1`,
      answer: one,
    }));
    expect(english(gravest(same).sentence)).toBe("load 1: it is stop; it is worse");
  });

  test("is the pass that is nearest to its limit, if all pass", () => {
    const all = cases(answer("pass", 0.2), answer("cannot be asked"), answer("pass", 0.7), answer("pass"));
    expect(inEnglish(gravest(all))).toMatchObject({ status: "pass", used: 0.7, sentence: "load 3: it is pass" });
    expect(english(gravest(cases(answer("pass"), answer("pass"))).sentence)).toBe("load 1: it is pass");
  });

  test("says why it cannot be asked of the first load, or of no load", () => {
    expect(gravest(cases(answer("cannot be asked", 1), answer("cannot be asked", 2))).used).toBe(1);
    expect(inEnglish(gravest([], say`no load`))).toEqual({ status: "cannot be asked", sentence: "no load" });
    expect(inEnglish(gravest([]))).toEqual({ status: "cannot be asked", sentence: "" });
  });
});

test("a refusal is the reason why a question cannot be asked", () => {
  const passed = answer("pass");
  expect(ask(given(1), () => passed)).toBe(passed);
  expect(ask(badInput(say`row 2 is blank`), () => passed)).toEqual(cannotAsk(say`row 2 is blank`));
});

test("a question is asked with its own limits, or with those of the firm", () => {
  const row = check("Q99", { stop: 5, explain: 2 }, (asked, _reduced, limits) => ({
    status: asked === record ? "pass" : "stop",
    used: 10 * limits.stop + limits.explain,
    sentence: remedy,
  }));
  expect([row.id, row.limits]).toEqual(["Q99", { stop: 5, explain: 2 }]);
  expect(row.evaluate(record)).toMatchObject({ status: "pass", used: 52 });
  expect(row.evaluate(record, { "Q99.stop": 7, "Q98.explain": 9 })).toMatchObject({ status: "pass", used: 72 });
  expect(row.evaluate(record, { "Q99.explain": 0 })).toMatchObject({ status: "pass", used: 50 });
});
