/** The results screen on the demonstration, and on sheets that lack names or hold unusable values. */
import { demoSheet, type System } from "../../../../src/datasheet";
import { readRecord, RECORD_NAMES, type NamedValues } from "../../../../src/record/record";
import { resultsOf, type Line, type Results } from "../../../../src/pane/screens/results/results";
import { METHOD_WORDS } from "../../../../src/reduction/curve/method-words";
import { numberText } from "../../../../src/pane/text/number";
import { withoutNames, withValues } from "../../../datasheet/read-sheet";
import { opened } from "../../../workbook/embedded/opened";

const lineOf = ({ groups }: Results, name: string): Line =>
  groups.flatMap(({ lines }) => lines).find((line) => line.name === name)!;
const of = (values: NamedValues): Results => resultsOf(values, readRecord(values));

async function demoValues(system: System): Promise<NamedValues> {
  const { port, sheet } = await opened(demoSheet(system));
  return port.readNames(sheet, RECORD_NAMES);
}

describe.each<System>(["SI", "US"])("the demonstration, %s", (system) => {
  let values: NamedValues;
  let results: Results;
  beforeAll(async () => {
    values = await demoValues(system);
    results = of(values);
  });

  test("every number is that of its cell, in the unit of the sheet", () => {
    for (const { shown, low, high } of results.groups.flatMap(({ lines }) => lines))
      for (const one of [shown, low, high]) if (one) expect(one.value).toBe(values[one.name][one.row][one.col]);
    const { shown } = lineOf(results, "preconsolidation_stress");
    expect(shown!.unit).toBe(values.stress_unit[0][0]);
    expect(numberText(shown!.value, shown!.format)).toBe(shown!.value.toFixed(system === "SI" ? 1 : 3));
    expect(lineOf(results, "compression_index").shown!.unit).toBe("");
  });

  test("the preconsolidation stress lies in its interval, and the spread of methods is that of the sheet", () => {
    const { shown, low, high } = lineOf(results, "preconsolidation_stress");
    expect(low!.value).toBeLessThanOrEqual(shown!.value);
    expect(high!.value).toBeGreaterThanOrEqual(shown!.value);
    const { methods, least, greatest, median, count, unit } = results.methods!;
    const byMethod = values.preconsolidation_spread
      .slice(0, 6)
      .flatMap(([, value]) => (typeof value === "number" ? value : []));
    expect(count).toBe(byMethod.length);
    expect([least, greatest]).toEqual([Math.min(...byMethod), Math.max(...byMethod)]);
    expect(median).toBeCloseTo(values.preconsolidation_spread.find(([label]) => label === "Median")![1] as number, 9);
    expect(unit).toBe(values.stress_unit[0][0]);
    for (const { method, shown: own } of methods)
      if (own) expect(values.preconsolidation_spread[own.row][0]).toBe(METHOD_WORDS[method]);
  });

  test("cv is summarized over loads that begin at or above the preconsolidation stress, and over no others", () => {
    const stress = lineOf(results, "preconsolidation_stress").shown!.value;
    const virgin = results.loads.filter(({ isVirgin }) => isVirgin);
    expect(virgin.length).toBeGreaterThan(1);
    const applied = values.load_stress.map(([value]) => Number(value));
    for (const { row, isVirgin } of results.loads)
      expect(isVirgin).toBe(
        row > 0 &&
          applied[row - 1] >= stress &&
          applied[row - 1] === Math.max(...applied.slice(0, row)) &&
          applied[row] > applied[row - 1],
      );
    const cvs = virgin.flatMap(({ row }) => {
      const cv = values.cv_chosen[row][0];
      return typeof cv === "number" ? cv : [];
    });
    expect(results.virginCv).toMatchObject({
      count: cvs.length,
      least: { value: Math.min(...cvs) },
      greatest: { value: Math.max(...cvs) },
    });
  });

  test("a reload above the preconsolidation stress is not virgin, and neither is a load that begins on it", () => {
    const stress = lineOf(results, "preconsolidation_stress").shown!.value;
    const steps = [1, 4, 2, 4, 8, 4, 16].map((step) => step * stress);
    const { loads } = of(withValues(values, { load_stress: steps }));
    // From the yield stress on; 4 to 8 after 2 was reloaded to 4; not 2 to 4, and not 4 to 16 after unloading from 8.
    expect(loads.slice(0, steps.length).map(({ isVirgin }) => isVirgin)).toEqual([
      false,
      true,
      false,
      false,
      true,
      false,
      false,
    ]);
  });

  test("nothing is assumed in it, and every load is there", () => {
    expect(results.assumed).toEqual([]);
    expect(results.loads.map(({ number }) => number)).toEqual(readRecord(values).loads.map(({ number }) => number));
    expect(results.faults).toEqual([]);
  });

  test("assumptions are listed, with the number if there is one", () => {
    const changed = of(
      withValues(values, {
        specific_gravity_basis: "assumed",
        seating_stress: "",
        apparatus_stress: Array(12).fill(""),
        apparatus_loading: Array(12).fill(""),
        apparatus_unloading: Array(12).fill(""),
      }),
    );
    expect(changed.assumed.map(({ what }) => what)).toEqual(["gs assumed", "no deflections", "no seating"]);
    expect(changed.assumed[0].shown?.value).toBe(values.specific_gravity[0][0]);
    expect(of(withValues(values, { specific_gravity_basis: "" })).assumed.map(({ what }) => what)).toEqual([
      "gs unsaid",
    ]);
  });

  test("a missing number says why: no cell, an error, blank inputs by their labels, or no answer", () => {
    expect(lineOf(of(withoutNames(values, "void_ratio_initial")), "void_ratio_initial").absence).toEqual({
      why: "no cell",
    });
    expect(lineOf(of(withValues(values, { swelling_index: "#N/A" })), "swelling_index").absence).toEqual({
      why: "error",
      code: "#N/A",
    });
    const blank = of(withValues(values, { overconsolidation_ratio: "", in_situ_stress: "" }));
    expect(lineOf(blank, "overconsolidation_ratio").absence).toEqual({
      why: "blank inputs",
      cells: ["In-situ effective stress"],
    });
    expect(lineOf(of(withValues(values, { swelling_index: "" })), "swelling_index").absence).toEqual({
      why: "no answer",
    });
  });

  test("a result whose formula a firm's layout has no cells for says which cell it needs, and a blank unit is asked for", () => {
    const without = withValues(withoutNames(values, "solids_height"), { void_ratio_initial: "" });
    expect(lineOf(of(without), "void_ratio_initial").absence).toEqual({
      why: "needs a cell",
      cell: "Height of solids",
    });
    const noCurve = withValues(withoutNames(values, "void_ratio_curve"), { compression_index: "" });
    expect(lineOf(of(noCurve), "compression_index").absence).toMatchObject({ why: "needs a cell" });
    const noUnit = withValues(withoutNames(values, "length_unit"), { void_ratio_initial: "" });
    expect(lineOf(of(noUnit), "void_ratio_initial").absence).toEqual({
      why: "blank inputs",
      cells: ["Unit of length"],
    });
  });

  test("one method alone is not a spread, and without a preconsolidation stress no load is virgin", () => {
    const one = values.preconsolidation_spread.map((row, index) => (index === 0 ? row : row.map(() => "")));
    const changed = of({ ...values, preconsolidation_spread: one, preconsolidation_stress: [["#N/A"]] });
    expect(changed.methods).toBeUndefined();
    expect(changed.virginCv).toBeUndefined();
    expect(changed.loads.some(({ isVirgin }) => isVirgin)).toBe(false);
  });
});

test("a result says by which method it is read, whether lines were picked, and who adopted it", async () => {
  const values = await demoValues("SI");
  const sourceIn = (typed: Record<string, string | number | (string | number)[]>, name: string) =>
    lineOf(of(withValues(values, typed)), name).source;
  expect(sourceIn({}, "preconsolidation_stress")).toEqual({
    from: "construction",
    method: "casagrande",
    isPicked: false,
  });
  const picks = { pick_load: ["curve", "curve"], pick_of: ["greatest curvature", "loop to"], pick_after: [90, 200] };
  expect(sourceIn(picks, "preconsolidation_stress")).toMatchObject({ method: "casagrande", isPicked: true });
  // The method of work does not use the greatest curvature, and Cc not the line through the loop.
  const byWork = { ...picks, preconsolidation_method: "Work" };
  expect(sourceIn(byWork, "preconsolidation_stress")).toMatchObject({ method: "work", isPicked: false });
  expect(sourceIn(picks, "compression_index")).toEqual({ from: "construction", isPicked: false });
  expect(sourceIn(picks, "recompression_index")).toEqual({ from: "construction", isPicked: true });
  const adopted = { adopted_value: [118], adopted_by: ["XY"], adopted_reason: ["sister specimens"] };
  expect(sourceIn({ ...picks, ...adopted }, "preconsolidation_stress")).toEqual({
    from: "adopted",
    by: "XY",
    reason: "sister specimens",
  });
  expect(sourceIn({}, "overconsolidation_ratio")).toBeUndefined();
  const ofCv = { adopted_cv: ["", 0.8], adopted_cv_by: ["", "XY"], adopted_cv_reason: ["", "field rate"] };
  expect(lineOf(of(withValues(values, ofCv)), "cv_virgin")).toMatchObject({
    source: { from: "adopted", by: "XY", reason: "field rate" },
    over: { from: { value: values.preconsolidation_stress?.[0]?.[0], unit: "kPa" }, to: { unit: "kPa" } },
  });
  expect(lineOf(of(values), "cv_recompression").source).toBeUndefined();
});
