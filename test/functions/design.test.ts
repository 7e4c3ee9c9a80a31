import fc from "../properties";
import { CURVE_AT, CV_AT, CV_RANGE, DESIGN_PARAMETERS, INTRINSIC, SETTLEMENT } from "../../src/functions/design";
import {
  COMPRESSION_INDICES,
  CONSTRAINED_MODULUS,
  FIELD_CURVE,
  VOLUME_COMPRESSIBILITY,
} from "../../src/functions/curve";
import { CONVERT_UNIT } from "../../src/functions/loading";
import { refusal } from "./refusal";

const column = (cells: readonly unknown[]): any[][] => cells.map((cell) => [cell]);
const row = (cells: readonly unknown[]): any[][] => [[...cells]];
const byLabel = (rows: any[][]): Record<string, any> => Object.fromEntries(rows);
const labels = (rows: any[][]): string[] => rows.map(([label]) => String(label));

const LOADS = [10, 20, 40, 80, 160, 320, 640, 1280, 320, 80];
const VOIDS = [1.2, 1.19, 1.175, 1.155, 1.12, 0.99, 0.84, 0.69, 0.72, 0.75];
const [S, E] = [column(LOADS), column(VOIDS)];
const STRAIN = column(VOIDS.map((e) => (1.2 - e) / 2.2));

describe("CURVE_AT", () => {
  test("takes a column or a row, blanks at the end, and a row that was not loaded yet", () => {
    const value = CURVE_AT(S, E, 300);
    expect(value).toBeGreaterThan(0.99);
    expect(CURVE_AT(row(LOADS), row(VOIDS), 300)).toBe(value);
    for (const blank of [null, 0, ""]) {
      expect(CURVE_AT(column([blank, ...LOADS, blank]), column([1.21, ...VOIDS, blank]), 300)).toBe(value);
      expect(CURVE_AT(S, E, 300, blank, blank)).toBe(value);
    }
  });

  test("without a kind, values that rise are taken as strains; a kind that is given is used", () => {
    const strain = (1.2 - CURVE_AT(S, E, 300)) / 2.2;
    expect(CURVE_AT(S, STRAIN, 300)).toBeCloseTo(strain, 12);
    expect(CURVE_AT(S, STRAIN, 300, "loading", "strain")).toBe(CURVE_AT(S, STRAIN, 300));
    expect(refusal(() => CURVE_AT(S, STRAIN, 300, null, "e"))).toMatch(/^#VALUE! .*give kind "strain"/);
    expect(refusal(() => CURVE_AT(S, column(VOIDS.map((_, i) => i)), 300))).toMatch(/^#VALUE! .*strains are ratios/);
  });

  test("refuses a stress beyond the curve with #N/A, and bad input with #VALUE!", () => {
    expect(refusal(() => CURVE_AT(S, E, 1300))).toMatch(/^#N\/A the stress \(1300\) lies beyond the loading curve/);
    expect(refusal(() => CURVE_AT(S, E, 70, "unloading"))).toMatch(/^#N\/A .*unloading curve, from 80 to 1280/);
    expect(refusal(() => CURVE_AT(S.slice(0, 8), E.slice(0, 8), 100, "unloading"))).toMatch(/^#N\/A .*no unloading/);
    expect(refusal(() => CURVE_AT(S, E, 0))).toMatch(/^#VALUE! the stress is blank or zero/);
    expect(refusal(() => CURVE_AT(S, E, "100 kPa"))).toMatch(/^#VALUE! .*without the unit/);
    expect(refusal(() => CURVE_AT(S, E.slice(1), 100))).toMatch(/^#VALUE! .*same length/);
    expect(refusal(() => CURVE_AT(S, E, 100, "reload"))).toMatch(/^#VALUE! the branch is "reload": use one of/);
  });
});

describe("CV_AT", () => {
  const [s, cv] = [column([50, 100, 200, 400]), column([8, 4, 2, 1])];

  test("leaves out blanks, words and #N/A, and refuses other errors and numbers stored as text", () => {
    const without = CV_AT(column([50, 200, 400]), column([8, 2, 1]), 100);
    const notAvailable = { type: "Error", basicType: "Error", basicValue: "#N/A", errorType: "NotAvailable" };
    for (const none of [null, 0, "", "not read", "-", "#N/A", notAvailable])
      expect(CV_AT(s, column([8, none, 2, 1]), 100)).toBe(without);
    // The range may include the headings.
    expect(CV_AT(column(["Stress", 50, 200, 400]), column(["cv", 8, 2, 1]), 100)).toBe(without);
    expect(refusal(() => CV_AT(s, column([8, "4", 2, 1]), 100))).toMatch(/^#VALUE! row 2 .*stored as text/);
    expect(refusal(() => CV_AT(s, column([8, "4,1", 2, 1]), 100))).toMatch(/^#VALUE! row 2 /);
    for (const pasted of ["４", "٤", "½", "~4", "−4", "(4)", "\u200b4", ">4"])
      expect(refusal(() => CV_AT(s, column([8, pasted, 2, 1]), 100))).toMatch(/^#VALUE! row 2 of the values of cv /);
    expect(refusal(() => CV_AT(s, column([8, "#VALUE!", 2, 1]), 100))).toMatch(/^#VALUE! row 2 .*the error #VALUE!/);
  });

  test("takes a row like a column, and refuses a stress beyond the loads with #N/A", () => {
    expect(CV_AT(row([50, 100, 200, 400]), row([8, 4, 2, 1]), 300)).toBe(CV_AT(s, cv, 300));
    expect(refusal(() => CV_AT(s, cv, 401))).toMatch(/^#N\/A .* from 50 to 400/);
    expect(refusal(() => CV_AT(s, column(["a", "b", null, 0]), 100))).toMatch(/^#N\/A no load/);
    expect(refusal(() => CV_AT(s, cv, null))).toMatch(/^#VALUE! the stress is blank/);
    expect(refusal(() => CV_AT(s, cv.slice(1), 100))).toMatch(/^#VALUE! .*same length/);
  });

  test("gives the cv adopted for a range, and says so; blank rows and 0 are no range", () => {
    const ranges = [column([60, 120, null]), column([120, 800, 0]), column([5, 0.9, ""])] as const;
    expect([CV_AT(s, cv, 100, ...ranges), CV_AT(s, cv, 700, ...ranges), CV_AT(s, cv, 50, ...ranges)]).toEqual([
      5, 0.9, 8,
    ]);
    expect(CV_AT(s, cv, 100, ...ranges, "from")).toBe("adopted for 60 to 120");
    expect(CV_AT(s, cv, 50, ...ranges, "from")).toBe("between the loads, on log stress");
    for (const none of ["", null, 0] as any[]) expect(CV_AT(s, cv, 100, none, none, none)).toBe(4);
    expect(refusal(() => CV_AT(s, cv, 100, ranges[0], ranges[1], column([5])))).toMatch(/^#VALUE! .*same length/);
    expect(refusal(() => CV_AT(s, cv, 100, ...ranges, "mean"))).toMatch(/^#VALUE! the item is "mean"/);
  });
});

describe("CV_RANGE", () => {
  const [s, cv] = [column([50, 100, 200, 400]), column([8, 4, 2, 1])];

  test("spills its items in the listed order, or gives one", () => {
    const table = CV_RANGE(s, cv, 100, 400);
    expect(labels(table)).toEqual(["mean", "least", "greatest", "loads", "remark"]);
    expect(table[0]?.[1]).toBeCloseTo(Math.SQRT2, 12);
    expect(CV_RANGE(s, cv, 100, 400, "loads")).toEqual([[2]]);
    // A blank cell on the desktop is 0: the range begins at no stress.
    expect(CV_RANGE(s, cv, 0, 400, "loads")).toEqual([[4]]);
  });

  test("refuses a range without a load with #N/A, and bad input with #VALUE!", () => {
    expect(refusal(() => CV_RANGE(s, cv, 3000, 6000))).toMatch(/^#N\/A no load that has a cv/);
    expect(refusal(() => CV_RANGE(s, cv, 400, 100))).toMatch(/^#VALUE! the range is 400 to 100/);
    expect(refusal(() => CV_RANGE(s, cv, 100, null))).toMatch(/^#VALUE! the upper stress is blank/);
  });
});

describe("DESIGN_PARAMETERS", () => {
  const rows = DESIGN_PARAMETERS(S, E, 50);
  const table = byLabel(rows);

  test("spills its items in the listed order, or gives one", () => {
    const items = ["e_in_situ", "e_final", "mv", "M", "CR", "RR", "SR", "modulus_number", "remark"];
    expect(labels(rows)).toEqual(items);
    for (const item of items)
      expect(DESIGN_PARAMETERS(S, E, 50, null, null, null, null, item)).toEqual([[table[item]]]);
  });

  test("from the field curve: e, mv and CR of its points; a stress beyond it is refused by name", () => {
    const field = (increase: number, item?: string, refusal?: string) =>
      (DESIGN_PARAMETERS as (...cells: any[]) => any[][])(
        ...[S, E, 50, increase, 150, 1.2, "e", item, "kPa", "m2/MN", "field", 0.42, null, null, refusal],
      );
    const points = FIELD_CURVE(S, E, 50, 150, 0.42, 1.2, "e");
    const [[, from, e0], [, at, eYield], [, to, eEnd]] = points as [any[], any[], any[]];
    const found = byLabel(field(200));
    expect([from, e0, found.e_in_situ]).toEqual([50, 1.2, 1.2]);
    const virgin = (eYield - eEnd) / Math.log10(to / at);
    expect(found.e_final).toBeCloseTo(eYield - virgin * Math.log10(250 / at), 12);
    expect(found.mv).toBeCloseTo((1000 * (1.2 - found.e_final)) / 2.2 / 200, 9);
    expect(found.CR).toBeCloseTo(byLabel(points).Cc / 2.2, 12);
    expect([found.RR, found.SR]).toEqual([table.RR, table.SR]);
    const beyond = /the in-situ stress plus the increase \(\d+\) lies beyond the field curve, from 50 to/;
    expect(refusal(() => field(1e5))).toMatch(beyond);
    expect(field(1e5, "remark", "words")[0]?.[0]).toMatch(beyond);
    expect(field(1e5, "mv", "words")).toEqual([[""]]);
    expect(field(1e5, undefined, "words")).toEqual([["remark", expect.stringMatching(beyond), ""]]);
  });

  test("agrees with CURVE_AT at both ends, and with the functions for each item", () => {
    expect(table.e_in_situ).toBe(CURVE_AT(S, E, 50));
    expect(table.e_final).toBe(CURVE_AT(S, E, 150));
    expect(table.mv).toBeCloseTo(VOLUME_COMPRESSIBILITY(50, 150, table.e_in_situ, table.e_final), 12);
    expect(table.M).toBeCloseTo(CONSTRAINED_MODULUS(50, 150, table.e_in_situ, table.e_final), 9);
    const indices = byLabel(COMPRESSION_INDICES(S, E));
    expect([table.CR, table.RR, table.SR]).toEqual([indices.Cc_ratio, indices.Cr_ratio, indices.Cs_ratio]);
    expect(table.modulus_number * table.CR).toBeCloseTo(Math.LN10, 12);
  });

  test.each(["psf", "ksf", "tsf", "kgf/cm2", "MPa"])("gives mv and M in %s for the same soil", (unit) => {
    const stresses = column(LOADS.map((stress) => CONVERT_UNIT(stress, "kPa", unit)));
    const other = byLabel(
      DESIGN_PARAMETERS(stresses, E, CONVERT_UNIT(50, "kPa", unit), null, null, null, null, null, unit, "1/tsf"),
    );
    for (const item of ["e_in_situ", "e_final", "CR", "RR", "SR", "modulus_number"] as const)
      expect(other[item]).toBeCloseTo(table[item], 9);
    expect(CONVERT_UNIT(other.mv, "1/tsf", "m2/MN")).toBeCloseTo(table.mv, 9);
    expect(CONVERT_UNIT(other.M, unit, "kPa")).toBeCloseTo(table.M, 6);
  });

  test("treats blank options, and a blank in-situ stress, alike from the web and from the desktop", () => {
    for (const blank of [null, 0, ""]) {
      expect(DESIGN_PARAMETERS(S, E, 50, blank, blank, blank, blank, blank, blank, blank)).toEqual(rows);
      const without = byLabel(DESIGN_PARAMETERS(S, E, blank));
      expect([without.e_in_situ, without.mv, without.CR]).toEqual(["", "", table.CR]);
      expect(without.remark).toContain("no in-situ stress");
      expect(refusal(() => DESIGN_PARAMETERS(S, E, blank, null, null, null, null, "mv"))).toMatch(
        /^#VALUE! the in-situ stress is blank/,
      );
    }
  });

  test("needs the initial void ratio for strains only to give e", () => {
    const strain = byLabel(DESIGN_PARAMETERS(S, STRAIN, 50, null, null, null, "strain"));
    expect(strain.e_in_situ).toBe("");
    expect(strain.mv).toBeCloseTo(table.mv, 9);
    const withVoidRatio = byLabel(DESIGN_PARAMETERS(S, STRAIN, 50, null, null, 1.2, "strain"));
    expect(withVoidRatio.e_final).toBeCloseTo(table.e_final, 9);
    expect(refusal(() => DESIGN_PARAMETERS(S, STRAIN, 50, null, null, null, "strain", "e_in_situ"))).toMatch(
      /^#VALUE! .*initial void ratio/,
    );
  });

  test("refuses a stress beyond the curve with #N/A by name, gives an item that does not need that stress, and gives #N/A for SR without an unloading", () => {
    const beyond = /^#N\/A the in-situ stress plus the increase \(2050\) lies beyond/;
    for (const item of [null, "remark", "mv", "M", "e_final"])
      expect(refusal(() => DESIGN_PARAMETERS(S, E, 50, 2000, null, null, null, item))).toMatch(beyond);
    expect(DESIGN_PARAMETERS(S, E, 50, 2000, null, null, null, "CR")).toEqual([[table.CR]]);
    expect(refusal(() => DESIGN_PARAMETERS(S, E, 5))).toMatch(/^#N\/A the in-situ stress \(5\) lies beyond/);
    const loading = [S.slice(0, 8), E.slice(0, 8)] as const;
    expect(byLabel(DESIGN_PARAMETERS(...loading, 50)).SR).toBe("");
    expect(refusal(() => DESIGN_PARAMETERS(...loading, 50, null, null, null, null, "SR"))).toMatch(
      /^#N\/A .*no unloading/,
    );
    expect(refusal(() => DESIGN_PARAMETERS(S, E, -50))).toMatch(/^#VALUE! the in-situ stress is -50/);
    expect(refusal(() => DESIGN_PARAMETERS(S, E, 50, null, null, null, null, "k"))).toMatch(/^#VALUE! the item is "k"/);
  });
});

describe("SETTLEMENT", () => {
  test("spills its items in the listed order, or gives one; the remark includes the caution", () => {
    const rows = SETTLEMENT(4, 100, 120, 150, 0.15, 0.025);
    expect(labels(rows)).toEqual(["recompression", "virgin", "settlement", "remark"]);
    rows.forEach(([label, value]) => expect(SETTLEMENT(4, 100, 120, 150, 0.15, 0.025, label)).toEqual([[value]]));
    expect(byLabel(rows).remark).toMatch(/one layer in one dimension/);
  });

  test("accepts a blank ratio if it is not needed", () => {
    for (const blank of [null, 0, ""])
      expect(SETTLEMENT(4, 100, 120, 100, 0.15, blank, "settlement")).toEqual(
        SETTLEMENT(4, 100, 120, 100, 0.15, 0.025, "settlement"),
      );
    expect(refusal(() => SETTLEMENT(4, 100, 120, 150, 0.15, null))).toMatch(
      /^#VALUE! the recompression ratio is blank/,
    );
    expect(refusal(() => SETTLEMENT(4, 100, 120, 150, 15, 2.5))).toMatch(/^#VALUE! .*enter strain per log cycle/);
    expect(refusal(() => SETTLEMENT(4, 100, 1e12, 150, 0.5, 0.025))).toMatch(/^#N\/A .*whole thickness/);
  });
});

describe("INTRINSIC", () => {
  test("spills its items in the listed order; without void ratio and stress their indices are blank", () => {
    const rows = INTRINSIC(0.56, 2.68, 1.2, 100);
    expect(labels(rows)).toEqual(["e_L", "e_100", "C_c", "void_index", "line_index", "remark"]);
    rows.forEach(([label, value]) => expect(INTRINSIC(0.56, 2.68, 1.2, 100, label)).toEqual([[value]]));
    for (const blank of [null, 0, ""]) {
      const without = byLabel(INTRINSIC(0.56, 2.68, blank, blank));
      expect([without.void_index, without.line_index, without.remark]).toEqual(["", "", "ok"]);
      expect(refusal(() => INTRINSIC(0.56, 2.68, blank, blank, "void_index"))).toMatch(
        /^#VALUE! .*needs the void ratio/,
      );
      expect(refusal(() => INTRINSIC(0.56, 2.68, blank, blank, "line_index"))).toMatch(/^#VALUE! .*needs the stress/);
    }
    expect(refusal(() => INTRINSIC(56, 2.68))).toMatch(/^#VALUE! .*0.56 for 56 %/);
    expect(refusal(() => INTRINSIC(0.04, 2.68))).toMatch(/^#N\/A /);
  });

  test("never gives an infinite number or NaN", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true }), fc.double({ noNaN: true }), fc.double({ noNaN: true }), (a, b, c) => {
        try {
          for (const [, value] of INTRINSIC(a, b, c, c)) if (typeof value === "number") expect(value).not.toBeNaN();
        } catch (error) {
          expect(String(error)).not.toContain("NaN");
        }
      }),
    );
  });
});
