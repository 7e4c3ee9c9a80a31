import fc from "../properties";
import {
  COMPRESSIBILITY,
  CASAGRANDE_LINES,
  COMPRESSION_INDEX,
  COMPRESSION_INDICES,
  CONDUCTIVITY,
  CONSTRAINED_MODULUS,
  C_ALPHA_RATIO,
  FIELD_CURVE,
  VOLUME_COMPRESSIBILITY,
  OCR,
  PRECONSOLIDATION,
  PRECONSOLIDATION_LINES,
  PRECONSOLIDATION_SPREAD,
  RECOMPRESSION_INDEX,
  SAMPLE_QUALITY,
  SWELLING_INDEX,
  TEMPERATURE_FACTOR,
  WORK_LINES,
} from "../../src/functions/curve";
import { makeCurve } from "../generators/compression-curves";
import { refusal } from "./refusal";

const column = (cells: readonly unknown[]): any[][] => cells.map((cell) => [cell]);

// A made test with a loop and a final unloading: two straight lines that meet at 160, Cr 0.05, Cc 0.5, Cs 0.06.
const e = (stress: number) => 1.2 - 0.05 * Math.log10(stress / 10) - 0.45 * Math.max(0, Math.log10(stress / 160));
const LOADS = [10, 20, 40, 80, 160, 320, 640, 1280];
const STRESSES = [...LOADS.slice(0, 7), 160, 40, 160, 640, 1280, 320, 80];
const down = (from: number, to: number, slope: number) => e(from) + slope * Math.log10(from / to);
const VOIDS = [
  ...LOADS.slice(0, 7).map(e),
  down(640, 160, 0.05),
  down(640, 40, 0.05),
  down(640, 160, 0.05),
  e(640),
  e(1280),
  down(1280, 320, 0.06),
  down(1280, 80, 0.06),
];
const [S, E] = [column(STRESSES), column(VOIDS)];
const STRAIN = column(VOIDS.map((value) => (VOIDS[0] - value) / (1 + VOIDS[0])));

test("PRECONSOLIDATION spills items in the listed order, or gives one as an array of one cell", () => {
  const table = PRECONSOLIDATION(S, E);
  expect(table.map(([label]) => label)).toEqual(["stress", "low", "high", "remark"]);
  expect(table[0][1]).toBeCloseTo(160, -1);
  for (const [label, value] of table) expect(PRECONSOLIDATION(S, E, null, label)).toEqual([[value]]);
  expect(PRECONSOLIDATION(S, E, "casagrande", null, "e", null as any)).toEqual(table);
  expect(PRECONSOLIDATION([STRESSES], [VOIDS])).toEqual(table);
  const strain = PRECONSOLIDATION(S, STRAIN, "Casagrande", "STRESS", "Strain")[0][0];
  expect(strain / table[0][1]).toBeCloseTo(1, 6);
});

test("unknown words are refused with the list of accepted words", () => {
  expect(refusal(() => PRECONSOLIDATION(S, E, "schmertmann"))).toContain("use one of casagrande, work, bilog");
  expect(refusal(() => PRECONSOLIDATION(S, E, null, "stres"))).toContain("use one of stress, low, high, remark");
  expect(refusal(() => PRECONSOLIDATION(S, E, null, null, "void"))).toContain("use one of e, strain");
});

test("PRECONSOLIDATION_SPREAD gives a row per method with the points it used, then the summary", () => {
  const rows = PRECONSOLIDATION_SPREAD(S, E);
  expect(rows.map(([label]) => label)).toEqual([
    "casagrande",
    "work",
    "bilog",
    "intersection",
    "pacheco_silva",
    "janbu",
    "median",
    "spread",
    "low",
    "high",
    "verdict",
    "remark",
  ]);
  expect(rows[0][2]).toBe("recompression 10 to 160, virgin 160 to 1280");
  expect(rows[5].slice(0, 2)).toEqual(["janbu", ""]);
  expect(rows[5][2]).toContain("coarser");
  for (const row of rows) expect(row).toHaveLength(3);
});

test("lines are rows of label, x, y, and end at the stress of the method", () => {
  const methods = {
    casagrande: CASAGRANDE_LINES(S, E),
    work: WORK_LINES(S, E),
    bilog: PRECONSOLIDATION_LINES(S, E, "bilog"),
    pacheco_silva: PRECONSOLIDATION_LINES(S, E, "pacheco_silva"),
  };
  for (const [method, rows] of Object.entries(methods)) {
    for (const [label, x, y] of rows) {
      expect(typeof label).toBe("string");
      expect(Number.isFinite(x) && Number.isFinite(y)).toBe(true);
    }
    const guide = rows.find(([label]) => label === "preconsolidation stress")!;
    expect(guide[1]).toBeCloseTo(PRECONSOLIDATION(S, E, method, "stress")[0][0], 9);
  }
  const labels = new Set(methods.casagrande.map(([label]) => label));
  expect(labels).toEqual(
    new Set([
      "first loading",
      "smooth curve",
      "virgin line",
      "greatest curvature",
      "horizontal",
      "tangent",
      "bisector",
      "preconsolidation stress",
    ]),
  );
});

test("Pacheco Silva's construction begins at the initial value given, and no other method changes", () => {
  const e0 = E[0][0] + 0.03;
  const given = (method: string, initial?: number) =>
    PRECONSOLIDATION(S, E, method, "stress", "e", null as any, null, initial)[0][0];
  // The initial value in a first row without stress is the older form.
  const byRow = PRECONSOLIDATION([[0], ...S], [[e0], ...E], "pacheco_silva", "stress")[0][0];
  expect(given("pacheco_silva", e0)).toBeCloseTo(byRow, 9);
  expect(given("pacheco_silva", e0)).toBeLessThan(given("pacheco_silva") * 0.995);
  for (const method of ["casagrande", "work", "bilog", "intersection"])
    expect([method, given(method, e0)]).toEqual([method, given(method)]);
  const spread = (rows: any[][]) => rows.find(([label]) => label === "pacheco_silva")![1];
  expect(spread(PRECONSOLIDATION_SPREAD(S, E, "e", e0))).toBeCloseTo(byRow, 9);
  const lines = PRECONSOLIDATION_LINES(S, E, "pacheco_silva", "e", null as any, e0);
  expect(lines.find(([label]) => label === "initial value")![2]).toBeCloseTo(e0, 9);
});

test("the bisector halves the angle on a drawing with the stated slope", () => {
  for (const slope of [1, 1.5, 3]) {
    const rows = CASAGRANDE_LINES(S, E, "e", null as any, slope);
    const fall = (wanted: string): number => {
      const [[, x1, y1], [, x2, y2]] = rows.filter(([label]) => label === wanted);
      return (y1 - y2) / Math.log10(x2 / x1);
    };
    const angle = (wanted: string) => Math.atan((slope * fall(wanted)) / fall("virgin line"));
    expect(fall("horizontal")).toBeCloseTo(0, 12);
    expect(angle("bisector")).toBeCloseTo(angle("tangent") / 2, 9);
  }
});

test.each([COMPRESSION_INDEX, RECOMPRESSION_INDEX, SWELLING_INDEX])(
  "%p refuses void ratios in percent and heights in mm, and takes void ratios of peat",
  (index) => {
    const stresses = [[10], [20], [40], [80], [160], [320], [80], [20]];
    const ratios = [0.8, 0.79, 0.77, 0.7, 0.6, 0.5, 0.52, 0.55];
    const asked = (factor: number) => index(stresses, ratios.map((e) => [factor * e])) as number; // prettier-ignore
    expect(refusal(() => asked(100))).toMatch(
      /^#VALUE! void ratios of 50 to 80 are those of no soil: void ratios are ratios/,
    );
    expect(asked(30)).toBeCloseTo(30 * asked(1), 6);
    // The heights of a specimen with 11 mm of solids.
    const heights = ratios.map((e) => [11 * (1 + e)]);
    expect(refusal(() => index(stresses, heights))).toMatch(/void ratios of 16.5 to 19.8 are those of no soil.* or heights$/); // prettier-ignore
  },
);

test("each index is taken from its own branch, as void ratio and as strain", () => {
  expect(COMPRESSION_INDEX(S, E)).toBeCloseTo(0.5, 6);
  expect(RECOMPRESSION_INDEX(S, E)).toBeCloseTo(0.05, 6);
  expect(SWELLING_INDEX(S, E)).toBeCloseTo(0.06, 6);
  expect(COMPRESSION_INDEX(S, STRAIN, null, null, "strain") * (1 + VOIDS[0])).toBeCloseTo(0.5, 6);
  expect(COMPRESSION_INDEX(S, E, 320, 640)).toBeCloseTo(0.5, 9);
  expect(COMPRESSION_INDEX(S, E, 640, 320)).toBeCloseTo(0.5, 9);
  expect(COMPRESSION_INDEX(S, E, 20, 60)).toBeCloseTo(0.05, 9);
  expect(SWELLING_INDEX(S, E, 100, 900)).toBeCloseTo(0.06, 9);
  expect(refusal(() => COMPRESSION_INDEX(S, E, 320))).toContain("needs both");
  expect(refusal(() => COMPRESSION_INDEX(S, E, 5, 60))).toMatch(/^#N\/A/);
  expect(refusal(() => SWELLING_INDEX(column(LOADS), column(LOADS.map(e))))).toMatch(/^#N\/A/);
});

test("COMPRESSION_INDICES says from which points each index was taken, and gives the strain ratios", () => {
  const rows = COMPRESSION_INDICES(S, E);
  const of = (label: string) => rows.find(([name]) => name === label)!;
  expect(rows.map(([label]) => label)).toEqual(["Cc", "Cr", "Cs", "Cc_ratio", "Cr_ratio", "Cs_ratio", "remark"]);
  expect(of("Cc")[2]).toBe("virgin line 160 to 1280");
  expect(of("Cr")[2]).toBe("reload loop 40 to 640");
  expect(of("Cs")[2]).toBe("final unloading 80 to 1280");
  expect(of("Cc_ratio")[1]).toBeCloseTo(0.5 / 2.2, 6);
  expect(COMPRESSION_INDICES(S, STRAIN, "Cc", "strain", 1.2)[0][0]).toBeCloseTo(0.5, 6);
  expect(refusal(() => COMPRESSION_INDICES(S, STRAIN, "Cc", "strain"))).toContain("initial void ratio");
  const loading = COMPRESSION_INDICES(column(LOADS), column(LOADS.map(e)));
  expect(loading[1][2]).toBe("initial loading 10 to 160");
  expect(loading[6][1]).toContain("a reload loop is better");
});

test("the remark of COMPRESSION_INDICES tells doubts about the virgin line, and why an index is missing", () => {
  // From 320 on every void ratio is 0.1 lower: somebody touched the dial under that load.
  const touched = column(E.map(([value], i) => (i > 4 ? value - 0.1 : value)));
  expect(COMPRESSION_INDICES(S.slice(0, 6), touched.slice(0, 6), "remark")[0][0]).toBe(
    "no Cc: the curve turns down only in the last load step: there is no virgin line yet; load further; or give the two stresses between which the slope is wanted; no Cr: the curve turns down only in the last load step: there is no virgin line yet; load further; no Cs: the test has no unloading: there is no swelling index",
  );
  const [[remark]] = COMPRESSION_INDICES(S, touched, "remark");
  expect(remark).toMatch(/^the virgin line rests on 2 points only; the virgin part flattens beyond stress 320/);
});

test("void ratios in percent, and a row without a value, are remarked", () => {
  const remark = (values: any[][]) => COMPRESSION_INDICES(S.slice(0, values.length), values, "remark")[0][0];
  const percent = E.map(([value]) => [100 * value]);
  expect(remark(percent)).toMatch(
    /^void ratios of [\d.]+ to 12\d are those of no soil: void ratios are ratios, 0.85 for 85 percent/,
  );
  expect(PRECONSOLIDATION(S, percent, null, "remark")[0][0]).toMatch(/are those of no soil/);
  expect(remark(E.map(([value]) => [9.6 * (1 + value)]))).toMatch(/are those of no soil.* or heights/);
  // Four loads of a peat test that has just begun.
  expect(remark([15, 14, 13, 12].map((e) => [e]))).not.toMatch(/no soil/);
  expect(remark(E)).toBe("ok");
  expect(remark(E.map((cell, i) => (i === 1 ? [""] : cell)))).toBe("row 2: no void ratio against the stress, left out");
});

test("every function of the curve questions a stress typed as 4000 for 400, and names its row", () => {
  const typed = column(STRESSES.map((stress) => (stress === 320 ? 3200 : stress)));
  for (const compute of [
    () => PRECONSOLIDATION(typed, E, null, "stress"),
    () => PRECONSOLIDATION_SPREAD(typed, E),
    () => CASAGRANDE_LINES(typed, E),
    () => COMPRESSION_INDEX(typed, E),
    () => SWELLING_INDEX(typed, E),
    () => FIELD_CURVE(typed, E, 50),
  ])
    expect(refusal(compute)).toMatch(/^#VALUE! row 6: the stress 3200 does not fit .* 320 would/);
});

test("text, a negative stress and ranges of two lengths are refused by name", () => {
  const put = (cells: unknown[], k: number, value: unknown) => column(cells.map((cell, i) => (i === k ? value : cell)));
  expect(refusal(() => PRECONSOLIDATION(put(STRESSES, 2, "forty"), E))).toMatch(/^#VALUE! row 3 of the stresses/);
  expect(refusal(() => PRECONSOLIDATION(S, put(VOIDS, 4, "n/a")))).toMatch(/^#VALUE! row 5 of the values/);
  expect(refusal(() => PRECONSOLIDATION(put(STRESSES, 3, -80), E))).toMatch(/^#VALUE! row 4: the stress is -80/);
  expect(refusal(() => PRECONSOLIDATION(S, E.slice(1)))).toContain("same length");
  expect(refusal(() => PRECONSOLIDATION(S, STRAIN))).toContain('kind "strain"');
  expect(refusal(() => PRECONSOLIDATION(S, E, null, null, "strain"))).toContain('kind "e"');
  expect(refusal(() => PRECONSOLIDATION(column([null, ""]), column([null, ""])))).toMatch(/^#VALUE! there is no row/);
});

test("picks by hand", () => {
  const picked = (rows: any[][]) => PRECONSOLIDATION(S, E, "casagrande", null, "e", rows);
  const automatic = PRECONSOLIDATION(S, E);
  expect(picked([["virgin_from", null]])).toEqual(automatic);
  expect(picked([["virgin_from", 0]])).toEqual(automatic);
  const byHand = picked([
    ["virgin_from", 320],
    ["virgin_to", 1280],
    ["greatest_curvature", 100],
  ]);
  expect(byHand[0][1]).not.toBe(automatic[0][1]);
  expect(byHand[3][1]).toContain("picked by hand");
  expect(refusal(() => picked([["virgin", 320]]))).toContain("recompression_from");
  expect(refusal(() => PRECONSOLIDATION(S, E, null, null, null, [["virgin_from"]]))).toContain("two columns");
});

describe("blank cells: 0 from desktop Excel, null or empty text from the web", () => {
  const everywhere = (stresses: unknown[], values: unknown[], kind: string) =>
    [
      () => PRECONSOLIDATION(column(stresses), column(values), null, null, kind),
      () => PRECONSOLIDATION_SPREAD(column(stresses), column(values), kind),
      () => CASAGRANDE_LINES(column(stresses), column(values), kind),
      () => [[COMPRESSION_INDEX(column(stresses), column(values), null, null, kind)]],
      () => COMPRESSION_INDICES(column(stresses), column(values), null, kind),
      () => SAMPLE_QUALITY(column(stresses), column(values), stresses[3] || 50, null, 1.2, kind),
    ].map((compute) => {
      try {
        return compute();
      } catch (error) {
        return String(error);
      }
    });

  test("the answers are the same, whichever cells are blank", () => {
    const scenarios = ["rounding, noise", "loop and unloading", "swelling at seating", "twelve points"];
    fc.assert(
      fc.property(
        fc.constantFrom(...scenarios),
        fc.nat(1000),
        fc.array(fc.record({ row: fc.nat(20), stress: fc.boolean(), value: fc.boolean() }), { maxLength: 3 }),
        fc.nat(6),
        (scenario, seed, blanks, trailing) => {
          const { stresses, values, kind } = makeCurve(scenario, seed);
          const blanked = (blank: unknown) => {
            const s: unknown[] = [...stresses];
            const v: unknown[] = values.map((value) => (value === 0 ? blank : value));
            for (const { row, stress, value } of blanks) {
              if (stress && row < s.length) s[row] = blank;
              if (value && row < v.length) v[row] = blank;
            }
            const tail = Array.from({ length: trailing }, () => blank);
            return everywhere([...s, ...tail], [...v, ...tail], kind);
          };
          const desktop = blanked(0);
          expect(blanked(null)).toEqual(desktop);
          expect(blanked("")).toEqual(desktop);
        },
      ),
      { numRuns: 40 },
    );
  });

  test("a value that is blank under a stress is left out, and the remark names its row", () => {
    const voids = VOIDS.map((value, i) => (i === 2 ? null : value));
    expect(PRECONSOLIDATION(S, column(voids), null, "remark")[0][0]).toContain("row 3: no void ratio");
    const strains = STRAIN.map(([value], i) => (i === 2 ? 0 : value));
    expect(PRECONSOLIDATION(S, column(strains), null, "remark", "strain")[0][0]).toContain("row 3: no strain");
    // Strain is measured from the first loaded row: zero is a value there.
    expect(PRECONSOLIDATION(S, STRAIN, null, "remark", "strain")).toEqual(PRECONSOLIDATION(S, E, null, "remark"));
  });

  test("trailing blanks and a first row at zero stress do not change Casagrande's answer", () => {
    const blank = Array.from({ length: 5000 }, () => [null]);
    expect(PRECONSOLIDATION([...S, ...blank], [...E, ...blank])).toEqual(PRECONSOLIDATION(S, E));
    const withZero = PRECONSOLIDATION([[0], ...S], [[1.25], ...E], null, "stress")[0][0];
    expect(withZero).toBeCloseTo(PRECONSOLIDATION(S, E, null, "stress")[0][0], 9);
  });
});

test("stiffness over one load agrees with hand calculation", () => {
  // e 0.90 to 0.85 from 100 to 200 kPa on e0 = 1.0.
  expect(COMPRESSIBILITY(100, 200, 0.9, 0.85)).toBeCloseTo(0.0005, 12);
  expect(VOLUME_COMPRESSIBILITY(100, 200, 0.9, 0.85)).toBeCloseTo((1000 * 0.05) / 1.9 / 100, 12);
  expect(VOLUME_COMPRESSIBILITY(100, 200, 0.9, 0.85, "e", "initial", 1)).toBeCloseTo((1000 * 0.05) / 2 / 100, 12);
  expect(VOLUME_COMPRESSIBILITY(100, 200, 0.05, 0.075, "strain", "initial")).toBeCloseTo(0.25, 12);
  expect(VOLUME_COMPRESSIBILITY(100, 200, 0.05, 0.075, "strain")).toBeCloseTo(0.25 / 0.95, 12);
  expect(VOLUME_COMPRESSIBILITY(100, 200, 0.05, 0.075, "strain")).toBeCloseTo(
    VOLUME_COMPRESSIBILITY(100, 200, 0.9, 0.85),
    12,
  );
  expect(COMPRESSIBILITY(100, 200, 0.05, 0.075, "strain", 1)).toBeCloseTo(0.0005, 12);
  expect(CONSTRAINED_MODULUS(100, 200, 0.9, 0.85)).toBeCloseTo((100 * 1.9) / 0.05, 9);
  expect(VOLUME_COMPRESSIBILITY(1, 2, 0.9, 0.85, "e", "start", null, "tsf", "ft2/ton")).toBeCloseTo(0.05 / 1.9, 9);
  expect(VOLUME_COMPRESSIBILITY(1, 2, 0.9, 0.85, null, null, null, "tsf")).toBeCloseTo(
    (0.05 / 1.9 / 95.7605) * 1000,
    5,
  );
  // Unloading: swelling over the decrease of stress.
  expect(COMPRESSIBILITY(200, 100, 0.85, 0.86)).toBeCloseTo(0.0001, 12);
});

test("stiffness refuses a load that gives no number", () => {
  expect(refusal(() => VOLUME_COMPRESSIBILITY(100, 100, 0.9, 0.85))).toMatch(
    /^#N\/A the stress is the same .*water added/,
  );
  expect(refusal(() => VOLUME_COMPRESSIBILITY(100, 200, 0.85, 0.9))).toMatch(
    /^#N\/A the specimen swelled under the load/,
  );
  expect(refusal(() => CONSTRAINED_MODULUS(100, 200, 0.9, 0.9))).toMatch(/^#N\/A/);
  expect(refusal(() => VOLUME_COMPRESSIBILITY(100, 200, 0.9, 0.85, "e", "initial"))).toContain("initial void ratio");
  expect(refusal(() => COMPRESSIBILITY(100, 200, 0.05, 0.075, "strain"))).toContain("initial void ratio");
  expect(refusal(() => VOLUME_COMPRESSIBILITY(100, 200, null, 0.85))).toContain("the void ratio before");
});

test("CONDUCTIVITY works in the units of both practices", () => {
  const k = CONDUCTIVITY(1, 1);
  expect(k).toBeCloseTo((9.80665e-3 / 31557600) * 1, 15);
  expect(CONDUCTIVITY(1, 1, "m2/yr", "m2/MN", "cm/s")).toBeCloseTo(100 * k, 12);
  expect(CONDUCTIVITY(1, 1, null, null, "m/yr")).toBeCloseTo(9.80665e-3, 9);
});

test("OCR and TEMPERATURE_FACTOR", () => {
  expect(OCR(150, 100)).toBe(1.5);
  expect(refusal(() => OCR(150, 0))).toMatch(/^#VALUE!/);
  expect(TEMPERATURE_FACTOR(20)).toBeCloseTo(1, 12);
  expect(TEMPERATURE_FACTOR(15)).toBeGreaterThan(TEMPERATURE_FACTOR(25));
  for (const wrong of [null, 0, -3, 68]) expect(refusal(() => TEMPERATURE_FACTOR(wrong))).toMatch(/^#VALUE!.*Celsius/);
});

test("FIELD_CURVE runs parallel to the reload loop up to yield, then straight to 0.42 e0 on the laboratory line", () => {
  const rows = FIELD_CURVE(S, E, 50, 160);
  const of = (label: string) => rows.find(([name]) => name === label)!;
  expect(of("in situ")).toEqual(["in situ", 50, VOIDS[0]]);
  // Cr of the loop is 0.05, of the rebound at the end 0.06: the loop is preferred, and the row says so.
  expect(of("Cr")[1]).toBeCloseTo(0.05, 9);
  expect(of("Cr")[2]).toBe("reload loop 40 to 640");
  const bend = VOIDS[0] - 0.05 * Math.log10(160 / 50);
  expect(of("preconsolidation")[2]).toBeCloseTo(bend, 6);
  const meets = of("meets the laboratory line");
  expect(meets[2]).toBeCloseTo(0.42 * VOIDS[0], 12);
  // The laboratory virgin line falls 0.5 a cycle from e(160).
  expect(Math.log10(meets[1] / 160)).toBeCloseTo((e(160) - 0.42 * VOIDS[0]) / 0.5, 5);
  expect(of("Cc")[1]).toBeCloseTo((bend - meets[2]) / Math.log10(meets[1] / 160), 6);
  expect(of("Cc")[1]).toBeGreaterThan(0.5);
  expect(of("remark")[1]).toContain("beyond the greatest load");
  expect(FIELD_CURVE(S, E, 50, 160, 0.4)[2][2]).toBeCloseTo(0.4 * VOIDS[0], 12);
  expect(FIELD_CURVE(S, E, 160, 160).map(([label]) => label)).not.toContain("preconsolidation");
  const strain = FIELD_CURVE(S, STRAIN, 50, 160, null, VOIDS[0], "strain");
  rows.slice(0, 5).forEach(([, stress], i) => expect(strain[i][1]).toBeCloseTo(stress, 5));
  expect(refusal(() => FIELD_CURVE(S, STRAIN, 50, 160, null, null, "strain"))).toContain("initial void ratio");
  expect(refusal(() => FIELD_CURVE(S, E, 50, 160, 42))).toMatch(/^#VALUE!.*factor/);
});

test("FIELD_CURVE uses the final unloading only without a loop, and initial loading only without both", () => {
  const rebound = [...LOADS, 320, 80];
  const voids = [...LOADS.map(e), down(1280, 320, 0.06), down(1280, 80, 0.06)];
  const row = (stresses: number[], values: number[], label: string) =>
    FIELD_CURVE(column(stresses), column(values), 50, 160).find(([name]) => name === label)!;
  expect(row(rebound, voids, "Cr")[1]).toBeCloseTo(0.06, 9);
  expect(row(rebound, voids, "Cr")[2]).toBe("final unloading 80 to 1280");
  expect(row(rebound, voids, "remark")[1]).toContain("Cr from the final unloading: the test has no reload loop");
  expect(row(LOADS, LOADS.map(e), "Cr")[2]).toBe("initial loading 10 to 160");
  // In normally consolidated clay the field curve has no recompression.
  expect(row(LOADS, LOADS.map(e), "remark")[1]).toContain("Cr from initial loading");
});

test("SAMPLE_QUALITY by void ratio and by strain, with and without the initial void ratio", () => {
  const rows = SAMPLE_QUALITY(S, E, 80, 160, 1.25);
  const change = (1.25 - e(80)) / 1.25;
  expect(rows.map(([label]) => label)).toEqual(["de_e0", "class", "strain", "strain_class", "OCR", "remark"]);
  expect(rows[0][1]).toBeCloseTo(change, 9);
  expect(rows[1][1]).toBe("poor");
  expect(rows[2][1]).toBeCloseTo((change * 1.25) / 2.25, 9);
  expect(rows[3][1]).toBe("D");
  expect(rows[4][1]).toBe(2);
  const strain = SAMPLE_QUALITY(S, STRAIN, 80, 160, null, "strain");
  expect(strain[0][1]).toBe("");
  expect(strain[2][1]).toBeCloseTo((VOIDS[0] - e(80)) / (1 + VOIDS[0]), 9);
  expect(refusal(() => SAMPLE_QUALITY(S, E, 5000, 160))).toMatch(/^#N\/A.*outside the loads/);
  expect(SAMPLE_QUALITY(S, E, 80, null, null, null, "OCR")[0][0]).toBeCloseTo(2, 0);
});

test("SAMPLE_QUALITY of a specimen that swelled much has its numbers and no class, and says why", () => {
  // The zero reading is a factor off: every void ratio lies 1.3 too high.
  const quality = (item?: string, refusal?: string) =>
    SAMPLE_QUALITY(S, column(VOIDS.map((value) => value + 1.3)), 80, 160, 1.25, "e", item, refusal);
  const rows = quality();
  expect(rows[0][1]).toBeLessThan(-0.5);
  expect([rows[1][1], rows[3][1]]).toEqual(["", ""]);
  expect(rows[5][1]).toBe(
    "the specimen swelled up to the in-situ stress; above 3 % it has no class: check the zero reading",
  );
  for (const item of ["class", "strain_class"]) {
    expect(refusal(() => quality(item))).toMatch(/^#N\/A.*swelled up to the in-situ stress/);
    expect(quality(item, "words")).toEqual([[""]]);
  }
});

test("C_ALPHA_RATIO remarks a ratio outside the usual range, and names no soil for it", () => {
  expect(C_ALPHA_RATIO(0.02, 0.5, "remark")).toEqual([["ok"]]);
  expect(C_ALPHA_RATIO(0.1, 0.5)[1]).toEqual(["soil", "", ""]);
  expect(C_ALPHA_RATIO(0.1, 0.5, "remark")[0][0]).toContain("outside 0.01 to 0.07");
});

test("C_ALPHA_RATIO compares with the soil that is named: the table, plus or minus 0.01", () => {
  expect(C_ALPHA_RATIO(0.03, 0.5, "remark", "peat")[0][0]).toBe("ok");
  expect(C_ALPHA_RATIO(0.02, 0.5, "remark", "Peat")[0][0]).toContain("outside 0.05 to 0.07, usual for peat");
  expect(C_ALPHA_RATIO(0.02, 0.5, "remark", 0)).toEqual(C_ALPHA_RATIO(0.02, 0.5, "remark"));
  expect(refusal(() => C_ALPHA_RATIO(0.02, 0.5, null, "clay"))).toContain("use one of granular soil");
});

test("without yield every function says so with #N/A, and gives no number", () => {
  const straight = column(LOADS.map((stress) => 1 - 0.03 * Math.log10(stress)));
  for (const compute of [
    () => PRECONSOLIDATION(column(LOADS), straight, null, "stress"),
    () => PRECONSOLIDATION_SPREAD(column(LOADS), straight),
    () => CASAGRANDE_LINES(column(LOADS), straight),
    () => WORK_LINES(column(LOADS), straight),
    () => COMPRESSION_INDEX(column(LOADS), straight),
    () => FIELD_CURVE(column(LOADS), straight, 50),
  ])
    expect(refusal(compute)).toMatch(/^#N\/A no bend/);
  expect(COMPRESSION_INDEX(column(LOADS), straight, 20, 80)).toBeCloseTo(0.03, 9);
});
