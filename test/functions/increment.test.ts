import fc from "../properties";
import * as F from "../../src/functions/increment";
import { BY_HAND, degree, SCENARIOS } from "../generators/time-curves";
import { refusal } from "./refusal";

const column = (values: readonly unknown[]) => values.map((value) => [value]);
const row = (values: readonly unknown[]) => [[...values]];
const T50_TRUE = 4;
const readings = BY_HAND.map((t) => {
  const T = (0.19673075 * t) / T50_TRUE;
  return Math.round(1e4 * (1 + degree(T) + (0.05 / 3) * Math.log10(1 + (T / 1.10135) ** 3))) / 1e4;
});
const times = column(BY_HAND);
const dial = column(readings);
const cvTrue = (0.19673075 * 9.6 ** 2) / T50_TRUE;

const labels = (table: any[][]) => table.map(([label]) => label);

test("readings in divisions of a dial beside a height are remarked, and their strain is refused", () => {
  const divisions = column(readings.map((reading) => Math.round(500 * reading)));
  const remark = (name: "LOG_TIME" | "ROOT_TIME" | "FIT_TIME", height: number) =>
    F[name](times, divisions, height, "remark")[0][0];
  for (const name of ["LOG_TIME", "ROOT_TIME", "FIT_TIME"] as const) {
    expect(remark(name, 19.2)).toMatch(
      /the readings move by 5\d\d, more than the height of 19.2: they are in another unit; cv/,
    );
    expect(remark(name, 1920)).not.toMatch(/another unit/);
  }
  expect(refusal(() => F.SECONDARY(times, divisions, 19.2))).toMatch(
    /^#VALUE! the readings move by 5\d\d, more than the initial height of 19.2: give both in one unit/,
  );
  expect(F.SECONDARY(times, divisions, 9600)).toBeCloseTo(F.SECONDARY(times, dial, 19.2), 4);
});

test("a dial that was reset by more than the height of the specimen is not taken for one in another unit", () => {
  const reset = column(readings.map((reading, i) => (i < 5 ? reading : reading - 25)));
  for (const name of ["LOG_TIME", "ROOT_TIME", "FIT_TIME"] as const) {
    const [[remark]] = F[name](times, reset, 19.2, "remark");
    expect(remark).toMatch(/the readings jump by -25/);
    expect(remark).not.toMatch(/another unit/);
  }
  expect(F.SECONDARY(times, reset, 19.2)).toBeCloseTo(F.SECONDARY(times, dial, 19.2), 4);
});

test("a tail that holds a jump of the dial has no slope by log time or by the fit, and one behind or before the jump has", () => {
  const slopes = (from: number) => {
    const jumped = column(readings.map((reading, i) => (BY_HAND[i]! >= from ? reading + 0.2 : reading)));
    return (["LOG_TIME", "FIT_TIME"] as const).map((name) => () => F[name](times, jumped, 19.2, "tail_slope")[0][0]);
  };
  // Primary ends at 22 min.
  for (const slope of slopes(240))
    expect(refusal(slope)).toMatch(/^#N\/A the readings jump by 0\.\d+ at row \d+ \(240 min\)/);
  for (const slope of slopes(2)) expect(slope()).toBeCloseTo(0.05, 2);
});

test.each(["LOG_TIME", "ROOT_TIME", "FIT_TIME"] as const)(
  "%s remarks a height that few specimens have and times that may be seconds, and takes those of a Rowe cell and of peat",
  (name) => {
    const remark = (height: unknown, unit?: string, t = times) =>
      F[name](t, dial, height, "remark", null, "m2/yr", unit)[0][0];
    for (const [height, unit] of [[192], [1.92], [19.2, "cm"], [19.2, "in"]] as const)
      expect(remark(height, unit)).toMatch(
        /the height is [\d.]+ mm, and few specimens have less than 5 or more than 100/,
      );
    for (const [height, unit] of [[90], [7], [1.92, "cm"], [0.75, "in"], [null]] as const)
      expect(remark(height, unit)).not.toMatch(/few specimens/);
    const seconds = column(BY_HAND.map((t) => 60 * t));
    expect(remark(19.2, "mm", seconds)).toContain(
      "check whether the times are seconds: the last one is 86400 min, which is 60 days",
    );
    expect(remark(19.2, "mm", column(BY_HAND.map((t) => 30 * t)))).not.toMatch(/seconds/);
  },
);

describe("the table and its items", () => {
  test.each([
    ["LOG_TIME", ["d0", "d50", "d100", "t50", "t100", "cv", "tail_slope", "remark"]],
    ["ROOT_TIME", ["d0", "d90", "d100", "t90", "cv", "remark"]],
    ["FIT_TIME", ["d0", "d100", "cv", "cv_low", "cv_high", "tail_slope", "misfit", "remark"]],
  ] as const)("%s", (name, items) => {
    const table = F[name](times, dial, 19.2);
    expect(labels(table)).toEqual(items);
    table.forEach((line) => expect(line).toHaveLength(3));
    expect(table[table.length - 1]).toEqual(["remark", "ok", ""]);
    items.forEach((item, i) => expect(F[name](times, dial, 19.2, item)).toEqual([[table[i][1]]]));
    expect(F[name](times, dial, 19.2, items[0].toUpperCase())).toEqual([[table[0][1]]]);
  });

  test("units are those of the readings, minutes, and the cv unit", () => {
    expect(F.LOG_TIME(times, dial, 19.2, null, null, "cm2/s", "cm").map(([, , unit]) => unit)).toEqual([
      "cm",
      "cm",
      "cm",
      "min",
      "min",
      "cm2/s",
      "cm/cycle",
      "",
    ]);
  });

  test("cv = 0.197 Hdr2/t50 and 0.848 Hdr2/t90 in the unit asked for", () => {
    const item = (f: any, name: string, unit = "mm2/min", drainage = "double") =>
      f(times, dial, 19.2, name, drainage, unit)[0][0];
    const t50 = item(F.LOG_TIME, "t50");
    const t90 = item(F.ROOT_TIME, "t90");
    expect(item(F.LOG_TIME, "cv")).toBeCloseTo((0.197 * 9.6 ** 2) / t50, 9);
    expect(item(F.ROOT_TIME, "cv")).toBeCloseTo((0.848 * 9.6 ** 2) / t90, 9);
    expect(item(F.LOG_TIME, "cv", "mm2/min", "single")).toBeCloseTo((0.197 * 19.2 ** 2) / t50, 9);
    expect(item(F.LOG_TIME, "cv", "m2/yr") / item(F.LOG_TIME, "cv")).toBeCloseTo(0.52596, 6);
    expect(Math.abs(item(F.FIT_TIME, "cv") / cvTrue - 1)).toBeLessThan(0.005);
    expect(item(F.FIT_TIME, "cv_low")).toBeLessThan(cvTrue);
    expect(item(F.FIT_TIME, "cv_high")).toBeGreaterThan(cvTrue);
  });

  test("without a height only cv is missing", () => {
    for (const none of [undefined, null, "", 0]) {
      const table = F.LOG_TIME(times, dial, none);
      expect(table.find(([label]) => label === "cv")).toEqual(["cv", "", "m2/yr"]);
      expect(table[3][1]).toBeGreaterThan(3.9);
      expect(refusal(() => F.LOG_TIME(times, dial, none, "cv"))).toMatch(/^#VALUE! cv needs the height/);
      expect(refusal(() => F.FIT_TIME(times, dial, none, "cv_low"))).toMatch(/^#VALUE! cv needs the height/);
    }
  });

  test("inches give the same cv", () => {
    const inches = F.LOG_TIME(times, column(readings.map((r) => r / 25.4)), 19.2 / 25.4, "cv", "double", "m2/yr", "in");
    expect(inches[0][0] / F.LOG_TIME(times, dial, 19.2, "cv")[0][0]).toBeCloseTo(1, 4);
  });

  test("a cv that is unlikely for a soil gets a remark", () => {
    expect(F.LOG_TIME(times, dial, 0.0192, "remark", "double", "m2/yr", "mm")[0][0]).toMatch(
      /check the units of time and height/,
    );
  });

  test("rows are accepted like columns", () => {
    expect(F.LOG_TIME(row(BY_HAND), row(readings), 19.2)).toEqual(F.LOG_TIME(times, dial, 19.2));
  });
});

describe("blank cells: 0 on the desktop, null or an empty string on the web", () => {
  const cell = fc.constantFrom(0, null, "");
  const blanked = fc.record({
    blanks: fc.array(fc.boolean(), { minLength: BY_HAND.length, maxLength: BY_HAND.length }),
    timeBlanks: fc.array(fc.integer({ min: 0, max: 9 }), { minLength: BY_HAND.length, maxLength: BY_HAND.length }),
    trailing: fc.integer({ min: 0, max: 5 }),
    zero: fc.constantFrom("none", "reading", "blank"),
    hosts: fc.tuple(cell, cell),
    scenario: fc.constantFrom(...SCENARIOS.filter(({ name }) => /dial of 0.01 mm|13 hand|much sec|slow/.test(name))),
    seed: fc.integer({ min: 1, max: 50 }),
  });

  const outcome = (compute: () => unknown) => {
    try {
      return JSON.stringify(compute());
    } catch (error: any) {
      return `${error.code} ${error.message}`;
    }
  };

  test("give the same answers, the same remarks and the same refusals", () => {
    fc.assert(
      fc.property(blanked, ({ blanks, timeBlanks, trailing, zero, hosts, scenario, seed }) => {
        const curve = scenario.make(seed);
        const as = (blank: unknown) => {
          const t: unknown[] = curve.times.map((time, i) => (timeBlanks[i] === 0 && i > 0 ? blank : time));
          const d: unknown[] = curve.readings.map((reading, i) => (blanks[i] && i % 3 === 0 ? blank : reading));
          if (zero !== "none") {
            t.unshift(0);
            d.unshift(zero === "reading" ? 0.004 : blank);
          }
          for (let i = 0; i < trailing; i++) {
            t.push(blank);
            d.push(blank);
          }
          return [column(t), column(d)] as const;
        };
        const picksAs = (blank: unknown) => [
          ["d0", blank],
          [blank, blank],
          ["tail_from", 100],
        ];
        const [first, second] = hosts;
        for (const f of [F.LOG_TIME, F.ROOT_TIME, F.FIT_TIME])
          expect(outcome(() => f(...as(first), 20, first, first, first, first, picksAs(first)))).toBe(
            outcome(() => f(...as(second), 20, second || undefined, undefined, null, second || "", picksAs(second))),
          );
        expect(outcome(() => F.TIME_CURVE(...as(first)))).toBe(outcome(() => F.TIME_CURVE(...as(second))));
        expect(outcome(() => F.SECONDARY(...as(first), 20, first, first))).toBe(
          outcome(() => F.SECONDARY(...as(second), 20)),
        );
      }),
      { numRuns: 60 },
    );
  });

  test("thousands of trailing blanks change nothing and cost little time", () => {
    const blanks = new Array(20000).fill(null);
    const long = [column([...BY_HAND, ...blanks]), column([...readings, ...blanks])] as const;
    expect(F.LOG_TIME(...long, 19.2)).toEqual(F.LOG_TIME(times, dial, 19.2));
  });
});

describe("bad input gives a message at the cell, with the row and the remedy", () => {
  test("text in a time column", () => {
    const typed: any[][] = column(BY_HAND);
    typed[4] = ["2 min"];
    expect(refusal(() => F.LOG_TIME(typed, dial))).toMatch(/^#VALUE! row 5 of the times holds the text "2 min"/);
  });
  test("lengths that differ", () => {
    expect(refusal(() => F.ROOT_TIME(times, dial.slice(1)))).toBe(
      "#VALUE! the times have 14 cells and the readings have 13: choose two ranges of the same length",
    );
  });
  test("a negative time", () => {
    expect(refusal(() => F.FIT_TIME(column([-1, ...BY_HAND]), column([1, ...readings])))).toMatch(
      /^#VALUE! row 1 of the times is -1/,
    );
  });
  test("two columns for one", () => {
    expect(
      refusal(() =>
        F.LOG_TIME(
          BY_HAND.map((t) => [t, t]),
          dial,
        ),
      ),
    ).toMatch(/^#VALUE! the times must be one column/);
  });
  test("too few readings", () => {
    expect(refusal(() => F.LOG_TIME(column([1, 2, 4]), column([1, 2, 3])))).toMatch(
      /^#N\/A 6 readings at different times are needed; there are 3/,
    );
  });
  test("a word that is not known", () => {
    expect(refusal(() => F.LOG_TIME(times, dial, 19.2, "cw"))).toMatch(/^#VALUE! the item is "cw": use one of d0, d50/);
    expect(refusal(() => F.LOG_TIME(times, dial, 19.2, "cv", "both"))).toMatch(/^#VALUE! the drainage is "both"/);
    expect(refusal(() => F.LOG_TIME(times, dial, 19.2, "cv", "double", "m/yr"))).toMatch(
      /^#VALUE! the cv unit is "m\/yr"/,
    );
  });
  test("a height that is not a height", () => {
    expect(refusal(() => F.LOG_TIME(times, dial, -19))).toMatch(/^#VALUE! the height is -19/);
    expect(refusal(() => F.LOG_TIME(times, dial, "tall"))).toMatch(/^#VALUE! the height holds the text "tall"/);
  });
  test("a method that does not apply gives #N/A, with the remedy", () => {
    const line = column(BY_HAND.map((t) => 1 + 0.1 * Math.log10(t / 0.1)));
    expect(refusal(() => F.LOG_TIME(times, line, 19.2))).toMatch(/^#N\/A the log-of-time method does not apply: .*; /);
  });
});

describe("picks", () => {
  test("a range of names and values is accepted, in any case, and blanks are skipped", () => {
    const picks = [
      ["D0", 1.01],
      ["", ""],
      ["d100", 1.99],
      ["d90", 0],
    ];
    const table = F.LOG_TIME(times, dial, 19.2, null, null, null, null, picks);
    expect(table[0]).toEqual(["d0", 1.01, "mm"]);
    expect(table[7][1]).toBe("picked by hand: d0 = 1.01, d100 = 1.99");
    expect(F.TIME_CURVE(times, dial, picks)[0].slice(0, 3)).toEqual([1.01, 1.5, 1.99]);
  });
  test("picks that contradict the readings, or have unknown names, are refused", () => {
    const picked = (picks: any) => refusal(() => F.LOG_TIME(times, dial, 19.2, null, null, null, null, picks));
    expect(picked([["d100", 3]])).toMatch(/^#VALUE! the picked d100 \(3\) lies outside the readings/);
    expect(picked([["d55", 3]])).toMatch(/^#VALUE! the name in row 1 of the picks is "d55": use one of d0, d100/);
    expect(picked([["d0", "x"]])).toMatch(/^#VALUE! row 1 of the picks holds the text "x"/);
    expect(picked([["d0", 1, 2]])).toMatch(/^#VALUE! the picks must be a range of two columns/);
    expect(picked("d0")).toMatch(/^#VALUE! the picks must be a range of two columns/);
  });
});

describe("procedure", () => {
  const drawn = (name: "LOG_TIME" | "ROOT_TIME", word: unknown) =>
    F[name](times, dial, 19.2, null, null, null, null, null as any, word);
  test("omitted, blank, 0 and aided give the same; drawn gives another construction of the same items", () => {
    for (const name of ["LOG_TIME", "ROOT_TIME"] as const) {
      const aided = F[name](times, dial, 19.2);
      for (const word of [undefined, null, "", 0, "aided", "Aided"]) expect(drawn(name, word)).toEqual(aided);
      const table = drawn(name, "DRAWN");
      expect(labels(table)).toEqual(labels(aided));
      expect(table).not.toEqual(aided);
      expect(table[table.length - 1][1]).toMatch(/^(log|root) time as drawn: /);
      expect(F.TIME_CURVE(times, dial, null as any, "drawn")[0][name === "LOG_TIME" ? 0 : 8]).toBe(
        table[name === "LOG_TIME" ? 0 : 3][1],
      );
    }
  });
  test("the lines are those of the chosen procedure", () => {
    const straight = (rows: any[][]) => rows.filter(([label]) => label === "secondary tail").map(([, , y]) => y);
    const lines = F.LOG_TIME_LINES(times, dial, null as any, "drawn");
    expect(straight(lines)).not.toEqual(straight(F.LOG_TIME_LINES(times, dial)));
    expect(F.LOG_TIME_LINES(times, dial, 19.2 as any, "drawn")).toEqual(lines);
  });
  test("an unknown word is refused, and the refusal names both procedures", () => {
    const misspelt = '#VALUE! the procedure is "drawm": use one of aided, drawn';
    expect(refusal(() => drawn("LOG_TIME", "drawm"))).toBe(misspelt);
    expect(refusal(() => drawn("ROOT_TIME", "drawm"))).toBe(misspelt);
    expect(refusal(() => F.TIME_CURVE(times, dial, null as any, "drawm"))).toBe(misspelt);
    expect(refusal(() => F.LOG_TIME_LINES(times, dial, null as any, "drawm"))).toBe(misspelt);
    expect(refusal(() => F.ROOT_TIME_LINES(times, dial, null as any, "drawm"))).toBe(misspelt);
    expect(refusal(() => drawn("LOG_TIME", 5))).toMatch(/^#VALUE! the procedure is "5": use one of aided, drawn/);
  });
  test("bad input is refused as in the aided procedure", () => {
    const late: any[][] = column([-1, ...BY_HAND]);
    const more = column([1, ...readings]);
    expect(refusal(() => F.LOG_TIME(late, more, 19.2, null, null, null, null, null as any, "drawn"))).toBe(
      refusal(() => F.LOG_TIME(late, more)),
    );
    const line = column(BY_HAND.map((t) => 1 + 0.1 * Math.log10(t / 0.1)));
    expect(refusal(() => F.LOG_TIME(times, line, 19.2, null, null, null, null, null as any, "drawn"))).toBe(
      refusal(() => F.LOG_TIME(times, line)),
    );
  });
});

describe("creep that was not measured", () => {
  // t100 = 900 min, primary 400, read to 1440 min; true slopes 12 and 80 a cycle. A fit gives 15.9 and 59.
  const tail = (slope: number, late: readonly number[]) => {
    const t = [...BY_HAND.slice(0, -1), ...late];
    return [t, t.map((m) => Math.round(10 * (1000 + 400 * degree((1.10135 * m) / 900) + (slope / 3) * Math.log10(1 + (m / 900) ** 3))) / 10)].map(column); // prettier-ignore
  };
  test.each([
    [12, [1440]],
    [80, [1440]],
    [12, [720, 960, 1200, 1440]],
    [80, [720, 960, 1200, 1440]],
  ])(
    "a slope of %d a cycle, last readings at %j min: no slope is given, but d100 and cv, and the remark says that d100 leans on the fit",
    (slope, late) => {
      const [t, d] = tail(slope, late);
      const reason =
        /^#N\/A .*past the end of primary.* secondary compression needs 0.25 of a log cycle; go on reading/;
      expect(refusal(() => F.LOG_TIME(t, d, 19.2, "tail_slope"))).toMatch(reason);
      expect(refusal(() => F.FIT_TIME(t, d, 19.2, "tail_slope"))).toMatch(reason);
      expect(refusal(() => F.SECONDARY(t, d, 20))).toMatch(reason);
      expect(refusal(() => F.SECONDARY(t, d, 20, 240, 1440))).toMatch(/^#N\/A .*past the end of primary/);
      const table = F.LOG_TIME(t, d, 19.2);
      expect(table[6]).toEqual(["tail_slope", "", "mm/cycle"]);
      expect(Math.abs(table[2][1] - 1400)).toBeLessThan(8);
      expect(table[5][1]).toBeGreaterThan(0);
      expect(table[7][1]).toMatch(/d100 leans on that of the fit to theory/);
      expect(table[7][1]).toMatch(/corrected by up to [\d.]+ in the readings, [\d.]+ % of primary .* row 1[3-7]/);
      expect(table[7][1]).toMatch(/the slope of the tail is not given/);
      const [row] = F.TIME_CURVE(t, d);
      expect(row[9]).toBe("");
      expect(row[2]).toBe(table[2][1]);
    },
  );
  test("a tail of a third of a cycle gives a slope", () => {
    const [t, d] = tail(80, [920, 1400, 2000]);
    expect(Math.abs(F.LOG_TIME(t, d, 19.2, "tail_slope")[0][0] / 80 - 1)).toBeLessThan(0.15);
    expect(Math.abs(F.SECONDARY(t, d, 2000) / 0.04 - 1)).toBeLessThan(0.15);
  });
});

describe("SECONDARY", () => {
  test("gives strain per log cycle", () => {
    expect(F.SECONDARY(times, dial, 20)).toBeCloseTo(0.0025, 4);
    expect(F.SECONDARY(times, dial, 20, 240, 1440)).toBeCloseTo(0.0025, 5);
    expect(F.SECONDARY(times, column(readings.map((r) => 9 - r)), 20)).toBeCloseTo(0.0025, 4);
  });
  test("refuses a span without readings", () => {
    expect(refusal(() => F.SECONDARY(times, dial, 20, 700, 900))).toMatch(
      /^#N\/A secondary compression needs 2 readings/,
    );
    expect(refusal(() => F.SECONDARY(times, dial, 0))).toMatch(/^#VALUE! the initial height is blank or zero/);
  });
});

describe("TIME_CURVE", () => {
  test("gives the row of the data sheet, with the same numbers as the functions", () => {
    const log = F.LOG_TIME(times, dial);
    const root = F.ROOT_TIME(times, dial);
    expect(F.TIME_CURVE(times, dial)).toEqual([
      [
        log[0][1],
        log[1][1],
        log[2][1],
        log[3][1],
        log[4][1],
        root[0][1],
        root[1][1],
        root[2][1],
        root[3][1],
        log[6][1],
        "ok",
      ],
    ]);
  });
  test("leaves the cells of a method that refuses blank, and says why", () => {
    const [cells] = F.TIME_CURVE(times.slice(0, 9), dial.slice(0, 9));
    expect(cells.slice(0, 5)).toEqual(["", "", "", "", ""]);
    expect(cells[8]).toBeGreaterThan(15);
    expect(cells[10]).toMatch(/the log-of-time method does not apply: the readings stop/);
  });
  test("gives a blank row for an unused load", () => {
    const blank = new Array(11).fill("");
    expect(F.TIME_CURVE(column([null, null]), column([null, ""]))).toEqual([blank]);
    expect(F.TIME_CURVE(column([0, 0]), column([0, 0]))).toEqual([blank]);
    expect(F.TIME_CURVE(times, column(BY_HAND.map(() => null)))).toEqual([blank]);
  });
  test("refuses bad input with an error", () => {
    expect(refusal(() => F.TIME_CURVE(column(["a", 1]), column([1, 2])))).toMatch(/^#VALUE! row 1 of the times/);
  });
});

describe("LINES", () => {
  test.each([
    [
      "LOG_TIME_LINES",
      [
        "readings",
        "early parabola",
        "4:1 pair",
        "offset",
        "same offset",
        "steepest tangent",
        "secondary tail",
        "d0",
        "d50",
        "d100",
        "half distance",
        "t50",
        "t100",
      ],
    ],
    ["ROOT_TIME_LINES", ["readings", "straight part", "1.15 line", "1.15 abscissae", "d0", "d90", "d100", "root t90"]],
  ] as const)("%s gives rows of label, x, y", (name, expected) => {
    const rows = F[name](times, dial);
    expect([...new Set(labels(rows))]).toEqual(expected);
    rows.forEach(([, x, y]) => expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true));
    for (const height of [19.2, [[19.2]]]) expect(F[name](times, dial, height as any)).toEqual(rows);
    expect(refusal(() => F[name](times.slice(0, 6), dial.slice(0, 6)))).toMatch(/^#N\/A/);
  });
});

describe("theory", () => {
  test("degree and time factor are inverse to each other", () => {
    expect(F.DEGREE_OF_CONSOLIDATION(0.19673075)).toBeCloseTo(0.5, 6);
    expect(F.TIME_FACTOR(0.9)).toBeCloseTo(0.848085, 6);
    expect(F.TIME_FACTOR(F.DEGREE_OF_CONSOLIDATION([[0.3]]))).toBeCloseTo(0.3, 12);
    expect(refusal(() => F.TIME_FACTOR(1))).toMatch(/^#VALUE! the degree of consolidation is 1/);
    expect(refusal(() => F.DEGREE_OF_CONSOLIDATION(-0.1))).toMatch(/^#VALUE! the time factor is -0.1/);
  });
  test("cv follows from a time read by hand", () => {
    expect(F.CV_FROM_T50(4, 20, "single", "mm2/min")).toBeCloseTo((0.197 * 400) / 4, 12);
    expect(F.CV_FROM_T90(4, 2, "double", "mm2/min", "cm")).toBeCloseTo((0.848 * 100) / 4, 12);
    expect(refusal(() => F.CV_FROM_T50(0, 20))).toMatch(/^#VALUE! t50 is blank or zero/);
    expect(refusal(() => F.CV_FROM_T90(4, null))).toMatch(/^#VALUE! the height is blank/);
  });
});
