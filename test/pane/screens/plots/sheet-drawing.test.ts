import { loadsRead } from "../../../../src/record/load-curve";
import { readRecord, type TestRecord } from "../../../../src/record/record";
import { brief } from "../../../../src/pane/screens/plots/small-plots";
import {
  drawSheet,
  picksOf,
  SHEET_CHOICES,
  smallPlots,
  timeCurve,
} from "../../../../src/pane/screens/plots/sheet-drawing";
import type { PlotSpec } from "../../../../src/plots/spec";
import type { Outcome } from "../../../../src/reduction/outcome";
import type { CellValue } from "../../../../src/workbook/port";
import { inputsOfDemo } from "./plot-sheets";
import { english, asTyped, say } from "../../../../src/reduction/message";
import { logTimeRefuses } from "../../../../src/reduction/increment/constructions/refusals";
import { inEnglish } from "../../../in-english";

const recordOf = (change: Record<string, CellValue[]> = {}): TestRecord =>
  readRecord(
    Object.fromEntries(
      Object.entries({ ...inputsOfDemo(), ...change }).map(([name, values]) => [name, values.map((value) => [value])]),
    ),
  );
const valueOf = (outcome: Outcome<PlotSpec>): PlotSpec => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
};
const seriesOf = (spec: PlotSpec, label: string) => spec.series.find((series) => series.label === label)!;
const record = recordOf();
/** Void ratios of an elastic soil. */
const elastic = (stress: number): number => 1.4 - 0.1 * Math.log10(stress);
const stresses = record.loads.map(({ stress }) => stress!);

describe("compression curve", () => {
  test("of a sheet without results is calculated from its readings", () => {
    const spec = valueOf(drawSheet(record, SHEET_CHOICES));
    expect(seriesOf(spec, "test").points.map(([stress]) => stress)).toEqual(stresses);
    expect(seriesOf(spec, "bisector")).toBeDefined();
    expect(spec.notes[0]).toContain("end of each load");
  });

  test("shows the numbers of the sheet if it has them, with a gap for a blank", () => {
    const shown = stresses.map((stress, index): CellValue => (index === 2 ? "" : elastic(stress)));
    const spec = valueOf(drawSheet(recordOf({ void_ratio_end: shown }), SHEET_CHOICES));
    expect(seriesOf(spec, "test").points.map(([, e]) => e)).toEqual(shown.filter((e) => e !== ""));
  });

  test("is in the stress unit of the sheet", () => {
    const inTsf = recordOf({ stress_unit: ["tsf"] });
    const spec = valueOf(drawSheet(inTsf, SHEET_CHOICES));
    expect(spec.x.label).toContain("(tsf)");
    seriesOf(spec, "test").points.forEach(([stress], index) => expect(stress).toBeCloseTo(stresses[index], 9));
  });

  test("the sheet says whether the curve is in void ratio or strain; the other is drawn where it is chosen", () => {
    const inStrain = recordOf({ curve_shown: ["strain"] });
    const drawn = (of: TestRecord, value?: "e" | "strain") =>
      valueOf(drawSheet(of, { ...SHEET_CHOICES, ...(value && { value }) })).y.label;
    expect(drawn(inStrain)).toBe(drawn(record, "strain"));
    expect(drawn(inStrain, "e")).toBe(drawn(record));
    expect(drawn(record)).not.toBe(drawn(inStrain));
  });

  test("in strain increases downward", () => {
    const spec = valueOf(drawSheet(record, { ...SHEET_CHOICES, value: "strain" }));
    expect(spec.y).toMatchObject({ reversed: true, label: "Axial strain" });
  });

  test("at d100, a load that has none stands at its end, and the note names it", () => {
    const ends = stresses.map(elastic);
    const primaries = ends.map((e, index): CellValue => (index === 1 ? "" : e + 0.01));
    const change = { void_ratio_end: ends, void_ratio_d100: primaries, curve_from: ["d100"] };
    const spec = valueOf(drawSheet(recordOf(change), SHEET_CHOICES));
    expect(seriesOf(spec, "test").points[0][1]).toBeCloseTo(ends[0] + 0.01, 9);
    expect(seriesOf(spec, "test").points[1][1]).toBeCloseTo(ends[1], 9);
    expect(spec.notes[0]).toContain("end of load 2");
    const end = valueOf(drawSheet(recordOf(change), { ...SHEET_CHOICES, at: "end" }));
    expect(seriesOf(end, "test").points[0][1]).toBeCloseTo(ends[0], 9);
  });

  test("marks the in-situ stress, and the preconsolidation stress of the sheet if it is not the one drawn", () => {
    const spec = valueOf(drawSheet(recordOf({ in_situ_stress: [60], preconsolidation_stress: [300] }), SHEET_CHOICES));
    expect(seriesOf(spec, "in-situ stress").letters).toBe("σ′v0 60 kPa");
    expect(seriesOf(spec, "preconsolidation stress of the sheet").letters).toContain("300 kPa");
    const drawn = seriesOf(spec, "preconsolidation stress").points[0][0];
    const same = valueOf(drawSheet(recordOf({ preconsolidation_stress: [drawn] }), SHEET_CHOICES));
    expect(seriesOf(same, "preconsolidation stress of the sheet")).toBeUndefined();
  });
});

describe("coefficients", () => {
  test("cv is drawn by both methods, with the chosen one joined; a load may choose another method than the test", () => {
    const drawn = (change: Record<string, CellValue[]>) =>
      valueOf(drawSheet(recordOf(change), { ...SHEET_CHOICES, plot: "cv" }));
    const log = stresses.map((_, index) => 2 + index);
    const root = stresses.map((_, index) => 3 + index);
    const results = { cv_log_time: log, cv_root_time: root };
    const joined = (spec: PlotSpec) => seriesOf(spec, "cv reported").points.map(([, cv]) => cv);
    expect(joined(drawn({ ...results, time_method: ["log time"] }))[0]).toBe(2);
    expect(joined(drawn({ ...results, time_method: ["root time"] }))[0]).toBe(3);
    const picks = { pick_load: [1], pick_of: ["cv by"], pick_after: ["root time"] };
    const mixed = joined(drawn({ ...results, time_method: ["log time"], ...picks }));
    expect(mixed.slice(0, 2)).toEqual([3, 3]);
    expect(joined(drawn({ ...results, time_method: ["log time"] })).slice(0, 2)).toEqual([2, 3]);
  });

  test("cv is in the unit of the sheet", () => {
    const spec = valueOf(
      drawSheet(recordOf({ cv_unit: ["mm2/min"], cv_log_time: stresses.map(() => 2.5) }), {
        ...SHEET_CHOICES,
        plot: "cv",
      }),
    );
    expect(spec.y.label).toContain("(mm2/min)");
    expect(spec.series.find(({ label }) => label.startsWith("log time"))!.points[0][1]).toBeCloseTo(2.5, 9);
  });

  test("without any C alpha the plot is refused", () => {
    expect(drawSheet(record, { ...SHEET_CHOICES, plot: "cAlpha" })).toMatchObject({ ok: false });
    const spec = valueOf(
      drawSheet(recordOf({ c_alpha: stresses.map(() => 0.005) }), {
        ...SHEET_CHOICES,
        plot: "cAlpha",
        stressScale: "log",
      }),
    );
    expect(spec.x.scale).toBe("log");
  });
});

describe("time curves", () => {
  const load = loadsRead(record).find(({ stress }) => stress === 200)!;

  test("a pick by hand moves the construction, and gets a remark; a later row that says automatic cancels it", () => {
    const d100 = (of: TestRecord) => seriesOf(valueOf(timeCurve(of, load, "log")), "d100").points[0][1];
    const automatic = d100(record);
    const rows = {
      pick_load: [load.number],
      pick_of: ["d100"],
      pick_after: [automatic - 5],
      pick_reason: ["bedding"],
      pick_by: ["AB"],
    };
    const picked = recordOf(rows);
    expect(d100(picked)).toBeCloseTo(automatic - 5, 9);
    expect(
      valueOf(timeCurve(picked, load, "log"))
        .remarks.map(english)
        .join(),
    ).toContain("picked by hand: d100");
    expect(picksOf(picked, load.number).map(([name, { reason, by }]) => [name, reason, by])).toEqual([
      ["d100", "bedding", "AB"],
    ]);
    expect(picksOf(picked, load.number + 1)).toEqual([]);
    const back = recordOf({
      pick_load: [load.number, load.number],
      pick_of: ["d100", "d100"],
      pick_after: [automatic - 5, "automatic"],
    });
    expect(d100(back)).toBeCloseTo(automatic, 9);
  });

  test("shows the load that is asked for, or the first; a sheet without readings says what to do", () => {
    const choices = { ...SHEET_CHOICES, plot: "time" as const };
    expect(valueOf(drawSheet(record, { ...choices, load: load.number })).title).toBe(
      `Load ${load.number} (200 kPa), log of time`,
    );
    expect(valueOf(drawSheet(record, choices)).title).toContain("Load 1 ");
    expect(inEnglish(drawSheet(readRecord({}), choices))).toMatchObject({
      ok: false,
      reason: expect.stringContaining("readings"),
    });
  });

  test.each(["log", "root"] as const)("small plots of all loads share the span of time (%s)", (axis) => {
    const plots = smallPlots(record, axis);
    expect(plots).toHaveLength(loadsRead(record).length);
    const domains = plots.map(({ drawn }) => valueOf(drawn).x.domain);
    for (const domain of domains) expect(domain).toEqual(domains[0]);
    const widest = Math.max(...loadsRead(record).map((one) => valueOf(timeCurve(record, one, axis)).x.domain[1]));
    expect(domains[0][1]).toBe(widest);
  });

  test("a reason is shortened to the clause that says why", () => {
    const { reason } = logTimeRefuses(say`no inflection in the readings: try ROOT_TIME`);
    expect(english(reason)).toBe("the log-of-time method does not apply: no inflection in the readings: try ROOT_TIME");
    expect(brief(reason)).toBe("no inflection in the readings");
    expect(brief(asTyped("x".repeat(90)))).toHaveLength(90);
    expect(brief(say`the method does not apply`)).toBe("the method does not apply");
  });
});
