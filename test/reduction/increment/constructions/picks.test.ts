/** Picks by hand of a load: their names and words, the picks that are refused, and which rows of a table count. */
import {
  checkPicks,
  PICK_NAMES,
  PICK_WORDS,
  pickNamed,
  pickRemarks,
  pickSaid,
  standingRows,
  type Picks,
} from "../../../../src/reduction/increment/constructions/picks";
import { english } from "../../../../src/reduction/message";

test("every pick is found by its words and by its short name, whatever the case and the spaces about them", () => {
  for (const name of PICK_NAMES) {
    expect(pickNamed(PICK_WORDS[name])).toBe(name);
    expect(pickNamed(` ${PICK_WORDS[name].toUpperCase()} `)).toBe(name);
    expect(pickNamed(name)).toBe(name);
    expect(english(pickSaid(name))).toBe(PICK_WORDS[name]);
  }
  expect(pickNamed("Loop from")).toBe("loop_from");
  expect(pickNamed("Something")).toBe("something");
  expect(english(pickSaid("something"))).toBe("something");
});

test("the remark names the picks of a method in its own order, and none without a pick", () => {
  const said = (picks: Picks) => pickRemarks(picks, ["d0", "tail_from", "d100"]).map(english);
  expect(said({ d100: 1390.5, d0: 1000, pair_at: 1 })).toEqual(["picked by hand: d0 = 1000, d100 = 1390.5"]);
  expect(said({ tail_from: 0 })).toEqual(["picked by hand: tail from = 0"]);
  expect(said({ pair_at: 1 })).toEqual([]);
});

describe("picks that cannot be", () => {
  const refusal = (picks: Picks) => {
    const checked = checkPicks(picks);
    return checked.ok ? "taken" : `${checked.fault}: ${english(checked.reason)}`;
  };
  test("a negative time is refused, and 0 is not", () => {
    expect(refusal({ pair_at: -1 })).toBe("input: the picked 4:1 pair has a negative time: give minutes");
    expect(refusal({ pair_at: 0 })).toBe("taken");
    for (const span of ["straight", "tail", "tangent"] as const)
      for (const end of ["from", "to"] as const) {
        expect(refusal({ [`${span}_${end}`]: -0.1 })).toBe(
          `input: the picked ${span} span has a negative time: give minutes`,
        );
        expect(refusal({ [`${span}_${end}`]: 0 })).toBe("taken");
      }
    // Readings may be negative.
    expect(refusal({ d0: -1, d90: -2, d100: -3 })).toBe("taken");
  });
  test("a span that runs backwards, or holds one moment, is refused", () => {
    expect(refusal({ straight_from: 4, straight_to: 2 })).toBe(
      "input: the picked straight part from (4 min) must come before straight part to (2 min)",
    );
    expect(refusal({ tail_from: 4, tail_to: 4 })).toBe(
      "input: the picked tail from (4 min) must come before tail to (4 min)",
    );
    expect(refusal({ tangent_from: 5, tangent_to: 4 })).toBe(
      "input: the picked tangent from (5 min) must come before tangent to (4 min)",
    );
    expect(refusal({ tangent_from: 4, tangent_to: 4.01 })).toBe("taken");
    expect(refusal({ tail_to: 1, tangent_from: 5 })).toBe("taken");
  });
  test("picks that can be are returned as they are", () => {
    const picks = { d0: 5, tail_from: 100 };
    expect(checkPicks(picks)).toMatchObject({ ok: true, value: picks });
  });
});

describe("the rows of a table that count", () => {
  const standing = (...rows: [load: number | "curve", of: string, after: number | string][]) =>
    [...standingRows(rows.map(([load, of, after]) => ({ load, of, after })), 3).entries()].map(([of, { after }]) => [of, after]); // prettier-ignore

  test("are those of the load, the last of each pick, in the order of the table", () => {
    expect(standing([3, "d0", 5], [3, "Tail from", 90], [2, "d0", 7], ["curve", "d0", 8], [3, "d0", 6])).toEqual([
      ["tail_from", 90],
      ["d0", 6],
    ]);
  });
  test("a row that says automatic cancels the rows before it, not those after it", () => {
    expect(standing([3, "d0", 5], [3, "d0", " Automatic "])).toEqual([]);
    expect(standing([3, "d0", "automatic"], [3, "d0", 5])).toEqual([["d0", 5]]);
  });
  test("an unfinished row does not count: without a pick or without a value, blank or 0", () => {
    expect(standing([3, "d0", 5], [3, "d0", ""], [3, "d0", 0], [3, "", 7], [3, "0", 7])).toEqual([["d0", 5]]);
    expect(
      standingRows(
        [
          { load: 3, of: "d0" },
          { load: 3, after: 5 },
        ],
        3,
      ).size,
    ).toBe(0);
  });
  test("a pick of a word keeps its word", () => {
    expect(standing([3, "cv by", "root time"])).toEqual([["cv by", "root time"]]);
  });
});
