import { COLLAPSE, SWELLING_PRESSURE, WETTING_STRAIN } from "../../src/functions/wetting";
import { refusal } from "./refusal";

const column = (cells: readonly unknown[]): any[][] => cells.map((cell) => [cell]);
const labels = (rows: any[][]): string[] => rows.map(([label]) => String(label));

test("WETTING_STRAIN takes the height before wetting for a blank reference, from the web and from the desktop", () => {
  for (const blank of [null, undefined, 0, ""]) expect(WETTING_STRAIN(20, 19, blank)).toBeCloseTo(0.05, 12);
  expect(WETTING_STRAIN(20, 21)).toBeCloseTo(-0.05, 12);
  expect(WETTING_STRAIN(20, 19, 25)).toBeCloseTo(0.04, 12);
  expect(refusal(() => WETTING_STRAIN(20, null))).toMatch(/^#VALUE! the height after wetting is blank or zero/);
  expect(refusal(() => WETTING_STRAIN(20, "19 mm"))).toMatch(/^#VALUE! .*without the unit/);
});

test("COLLAPSE spills its items in the listed order, or gives one", () => {
  const rows = COLLAPSE(19, 18, 20, 200);
  expect(labels(rows)).toEqual(["potential", "index", "class", "remark"]);
  expect(rows.map(([, value]) => value)).toEqual([0.05, 0.05, "moderate", "ok"]);
  rows.forEach(([label, value]) => expect(COLLAPSE(19, 18, 20, 200, label)).toEqual([[value]]));
});

test("COLLAPSE gives the index at 200 kPa in any unit, and otherwise says why it has none", () => {
  expect(COLLAPSE(19, 18, 20, 2, "index", "tsf")).toEqual([[0.05]]);
  expect(COLLAPSE(19, 18, 20, 4, "index", "ksf")).toEqual([[0.05]]);
  expect(COLLAPSE(19, 18, 20, 2, "index", "kgf/cm2")).toEqual([[0.05]]);
  expect(
    COLLAPSE(19, 18, 20, 100)
      .slice(1, 3)
      .map(([, value]) => value),
  ).toEqual(["", ""]);
  expect(refusal(() => COLLAPSE(19, 18, 20, 100, "index"))).toMatch(/^#N\/A .*under 200 kPa, not 100 kPa/);
  expect(refusal(() => COLLAPSE(19, 18, 20, 200, "class", "tsf"))).toMatch(/^#N\/A .*not 200 tsf/);
  for (const blank of [null, 0, ""])
    expect(refusal(() => COLLAPSE(19, 18, 20, blank, "class"))).toMatch(/^#VALUE! .*give the stress/);
  expect(COLLAPSE(19, 18, 20, null, "potential")).toEqual([[0.05]]);
});

test("SWELLING_PRESSURE spills its items in the listed order, from a row or a column", () => {
  const [stresses, strains] = [
    [25, 50, 100, 200],
    [-0.06, -0.03, -0.01, 0.01],
  ];
  const rows = SWELLING_PRESSURE(column(stresses), column(strains));
  expect(labels(rows)).toEqual(["pressure", "low", "high", "remark"]);
  rows.forEach(([label, value]) =>
    expect(SWELLING_PRESSURE([stresses], [strains], "Zero Strain", label)).toEqual([[value]]),
  );
  expect(refusal(() => SWELLING_PRESSURE(column(stresses), column(strains), "guess"))).toMatch(
    /^#VALUE! the method is "guess": use one of zero strain, load back, constant volume/,
  );
  expect(refusal(() => SWELLING_PRESSURE(column(stresses.slice(0, 3)), column(strains.slice(0, 3))))).toMatch(
    /^#N\/A /,
  );
  expect(refusal(() => SWELLING_PRESSURE(column(stresses), column(["a", 1, 2, 3])))).toMatch(/^#VALUE! row 1 /);
});
