/** The table of picks by hand as worksheet functions read it, and its effect on the time curves. */
import fc from "../properties";
import { PRECONSOLIDATION } from "../../src/functions/curve";
import * as I from "../../src/functions/increment";
import { LAST_PICK, LOAD_PICKS } from "../../src/functions/picks";
import { PICK_NAMES } from "../../src/reduction/increment/constructions/picks";

const column = (cells: readonly unknown[]): any[][] => cells.map((cell) => [cell]);
const refusal = (compute: () => unknown): string => {
  try {
    return `no refusal: ${JSON.stringify(compute())}`;
  } catch (error) {
    return `${(error as { code: string }).code} ${(error as Error).message}`;
  }
};

type Row = readonly [load: unknown, of: unknown, after: unknown];
/** The three columns of a table. */
const table = (...rows: readonly Row[]): [any[][], any[][], any[][]] => [
  column(rows.map(([load]) => load)),
  column(rows.map(([, of]) => of)),
  column(rows.map(([, , after]) => after)),
];

const TIMES = column([0, 0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440]);
/**
 * Half consolidated after about 5 minutes, then creep: calculated below by a textbook's formula for small and large
 * times.
 */
const READINGS = column(
  TIMES.map(([t]) => {
    const T = 0.0394 * t;
    const u = T < 0.2 ? Math.sqrt((4 * T) / Math.PI) : 1 - (8 / Math.PI ** 2) * Math.exp((-(Math.PI ** 2) * T) / 4);
    return Math.round(1000 + 400 * u + 20 * Math.log10(1 + t / 30));
  }),
);

describe("LOAD_PICKS", () => {
  test("gives the picks of one load with the row of each; the last row counts", () => {
    const picks = table(
      [3, "d100", 1390],
      [2, "d0", 990],
      [3, "d0", 1002],
      [3, "D100 ", 1395],
      [3, "cv by", "root time"],
    );
    expect(LOAD_PICKS(3, ...picks)).toEqual([
      ["d0", 1002, "row 3 of the table of picks"],
      ["d100", 1395, "row 4 of the table of picks"],
    ]);
    expect(LOAD_PICKS(1, ...picks)).toEqual([["", "", ""]]);
  });

  test("gives the picks of the compression curve, in words or short names, and not those of a load", () => {
    const picks = table(["Curve", "virgin from", 400], [3, "d0", 990], ["curve", "greatest_curvature", 90]);
    expect(LOAD_PICKS("curve", ...picks)).toEqual([
      ["virgin_from", 400, "row 1 of the table of picks"],
      ["greatest_curvature", 90, "row 3 of the table of picks"],
    ]);
    expect(LOAD_PICKS(3, ...picks)).toEqual([["d0", 990, "row 2 of the table of picks"]]);
    expect(LAST_PICK("curve", "virgin from", ...picks)).toBe(400);
    expect(refusal(() => LAST_PICK("curve", "d0", ...picks))).toMatch(
      /the pick is "d0": use one of greatest_curvature/,
    );
    expect(refusal(() => LAST_PICK(3, "virgin from", ...picks))).toMatch(/use one of d0/);
  });

  test("automatic cancels earlier rows, and later rows count again", () => {
    const rows: Row[] = [
      [1, "d0", 990],
      [1, "d0", "Automatic"],
    ];
    expect(LOAD_PICKS(1, ...table(...rows))).toEqual([["", "", ""]]);
    expect(LOAD_PICKS(1, ...table(...rows, [1, "d0", 991]))[0][1]).toBe(991);
  });

  test.each([[null], [""], [0]])("a blank that arrives as %p is not a pick, and leaves the pick before it", (blank) => {
    const picks = table([1, "d0", 990], [1, "d0", blank], [blank, blank, blank], [1, blank, 5]);
    expect(LOAD_PICKS(1, ...picks)).toEqual([["d0", 990, "row 1 of the table of picks"]]);
    expect(LOAD_PICKS(blank, ...picks)).toEqual([["", "", ""]]);
  });

  test("each load gets its own last values, in any order of loads", () => {
    const row = fc.tuple(
      fc.integer({ min: 1, max: 4 }),
      fc.constantFrom(...PICK_NAMES),
      fc.integer({ min: 1, max: 99 }),
    );
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 48 }), (rows) => {
        for (const load of [1, 2, 3, 4]) {
          const last = new Map(rows.filter(([of]) => of === load).map(([, name, value]) => [name, value]));
          const found = LOAD_PICKS(load, ...table(...rows)).filter(([name]) => name !== "");
          expect(new Map(found.map(([name, value]) => [name, value]))).toEqual(last);
        }
      }),
    );
  });

  test("refuses an error among the loads, such as that of a lost name, and skips a text", () => {
    const lost = { code: "#REF!", message: "" } as any;
    expect(refusal(() => LOAD_PICKS(1, lost, lost, lost))).toMatch(
      /^#VALUE! row 1 of the loads of the picks holds the error/,
    );
    expect(LOAD_PICKS(1, ...table(["1", "d0", 990], [{ basicType: "Double", basicValue: 1 }, "d0", 991]))[0][1]).toBe(
      991,
    );
  });

  test("refuses columns with different rows", () => {
    const [loads, names] = table([1, "d0", 990]);
    expect(refusal(() => LOAD_PICKS(1, loads, names, column([1, 2])))).toMatch(
      /^#VALUE! the picks have 1 loads, 1 names and 2 values: choose the same rows of each/,
    );
    expect(
      refusal(() =>
        LOAD_PICKS(
          1,
          [
            [1, 2],
            [3, 4],
          ],
          names,
          names,
        ),
      ),
    ).toMatch(/one column or one row/);
  });
});

describe("TIME_CURVE with the picks of a load", () => {
  const curve = (...rows: readonly Row[]) => I.TIME_CURVE(TIMES, READINGS, LOAD_PICKS(7, ...table(...rows)))[0];

  test("a table without a pick of the load changes nothing", () => {
    expect(curve([6, "d0", 990])).toEqual(I.TIME_CURVE(TIMES, READINGS)[0]);
  });

  test("each construction uses its picks, and the remark names them", () => {
    const automatic = I.TIME_CURVE(TIMES, READINGS)[0];
    const picked = curve([7, "d100", 1388], [7, "d90", 1350]);
    expect([picked[2], picked[6]]).toEqual([1388, 1350]);
    expect(picked[7]).toBeCloseTo(picked[5] + (1350 - picked[5]) / 0.9, 9);
    expect(picked[10]).toMatch(/picked by hand: d100 = 1388/);
    expect(picked[3]).not.toBe(automatic[3]);
  });

  test.each<[Row, RegExp]>([
    [[7, "d99", 5], /the name in row 2 of the table of picks is "d99": use one of d0/],
    [[7, "d0", "late"], /row 2 of the table of picks holds the text "late" where a number is needed/],
    [[7, "d0", "1,5"], /row 2 of the table of picks holds the text "1,5", which is not a number here/],
    [[7, "d0", { code: "#REF!", message: "" }], /row 2 of the table of picks holds the error #REF!/],
  ])("a row that cannot be used is named: %j", (row, reason) => {
    expect(refusal(() => curve([6, "d0", 990], row))).toMatch(reason);
  });
});

describe("LAST_PICK", () => {
  const picks = table([3, "cv by", "root time"], [3, "tail_from", 60], [2, "cv by", "root"], [4, "cv by", "automatic"]);
  test("gives the last value, or the value given as otherwise", () => {
    expect(LAST_PICK(3, "cv by", ...picks, "log time")).toBe("root time");
    expect(LAST_PICK(4, "cv by", ...picks, "log time")).toBe("log time");
    expect(LAST_PICK(3, "tail_from", ...picks)).toBe(60);
    expect(LAST_PICK(3, "d0", ...picks, 12)).toBe(12);
    expect(LAST_PICK(3, "d0", ...picks)).toBe("");
  });

  test("refuses a word that is not a construction, and names its row", () => {
    expect(refusal(() => LAST_PICK(2, "cv by", ...picks, "log time"))).toBe(
      '#VALUE! "cv by" in row 3 of the table of picks is "root": use one of log time, root time',
    );
    expect(refusal(() => LAST_PICK(2, "t50", ...picks))).toMatch(/the pick is "t50": use one of d0/);
  });
});

describe("the words of a German table", () => {
  const german = table(
    [3, "cv nach", "Wurzel t"],
    [3, "Kriechast ab", 60],
    [4, "Verfahren", "automatisch"],
    ["Kurve", "Erstbelastung ab", 200],
    [5, "CV NACH", "root time"],
  );
  test("count as the English ones, in any case; a word picked stays in its language", () => {
    expect(LAST_PICK(3, "cv by", ...german, "log time")).toBe("Wurzel t");
    expect(LAST_PICK(5, "cv nach", ...german, "log t")).toBe("root time");
    expect(LAST_PICK(4, "procedure", ...german, "gestützt")).toBe("gestützt");
    expect(LAST_PICK(3, "tail from", ...german)).toBe(60);
    expect(LAST_PICK("Kurve", "virgin_from", ...german)).toBe(200);
    expect(LOAD_PICKS("curve", ...german)).toEqual([["virgin_from", 200, "row 4 of the table of picks"]]);
    expect(LOAD_PICKS(3, ...german)).toEqual([["tail_from", 60, "row 2 of the table of picks"]]);
  });

  test("are arguments of every function that takes a word", () => {
    expect(I.CV_FROM_T50(4, 20, "einseitig", "mm2/min")).toBe(I.CV_FROM_T50(4, 20, "single", "mm2/min"));
    expect(I.CV_FROM_T50(4, 20, "BEIDSEITIG", "mm2/min")).toBe(I.CV_FROM_T50(4, 20, "double", "mm2/min"));
    expect(refusal(() => I.CV_FROM_T50(4, 20, "allseitig"))).toMatch(
      /the drainage is "allseitig": use one of double, single/,
    );
    const [stresses, ratios] = [
      column([10, 20, 40, 80, 160, 320, 640]),
      column([1, 0.99, 0.97, 0.93, 0.82, 0.68, 0.54]),
    ];
    for (const [word, short] of [
      ["Arbeit", "work"],
      ["doppeltlogarithmisch", "bilog"],
      ["Schnittpunkt", "intersection"],
    ])
      expect(PRECONSOLIDATION(stresses, ratios, word, "stress")).toEqual(
        PRECONSOLIDATION(stresses, ratios, short, "stress"),
      );
  });
});
