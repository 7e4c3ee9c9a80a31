/**
 * A reviewer calculates the report again from what is printed. Each input lies anywhere within half a unit of its last
 * printed digit; the printed result must lie within what these inputs give, and half a unit of its own.
 */
import { demoSheet, fillSheet } from "../../src/datasheet";
import { COLUMNS } from "../../src/report/page/page";
import { cellsOf, reported } from "./report-in-engine";

/** A printed number with half a unit of its last digit. */
interface Printed {
  readonly value: number;
  readonly half: number;
}

function read(text: string): Printed {
  const digits = /^-?\d+(?:\.(\d+))?(%?)$/.exec(text);
  if (!digits) throw new Error(`"${text}" is no printed number`);
  const scale = digits[2] ? 0.01 : 1;
  return { value: parseFloat(text) * scale, half: 0.5 * scale * 10 ** -(digits[1]?.length ?? 0) };
}
/** A number that stands in print as it was typed. */
const typed = (text: string): Printed => ({ ...read(text), half: 0 });
const exact = (value: number): Printed => ({ value, half: 0 });

/** The least and the greatest result with each input at both ends of what it may be. */
function span(inputs: readonly Printed[], f: (...values: number[]) => number): readonly [number, number] {
  let corners: number[][] = [[]];
  for (const { value, half } of inputs)
    corners = corners.flatMap((corner) => [-half, half].map((by) => [...corner, value + by]));
  const results = corners.map((corner) => f(...corner));
  return [Math.min(...results), Math.max(...results)];
}

/** The most units of a result's last digit that the inputs in print may leave open. */
const MOST_OPEN = 3;

/** What is wrong with a printed result: nothing if it follows from the inputs in print. */
function departure(
  what: string,
  result: string,
  inputs: readonly Printed[],
  f: (...values: number[]) => number,
  mostOpen: number,
): string[] {
  const [least, greatest] = span(inputs, f);
  const { value, half } = read(result);
  const slack = 1e-9 * Math.abs(value);
  const [from, to] = [least - half - slack, greatest + half + slack];
  const open = (greatest - least) / (2 * half);
  return [
    ...(value < from || value > to
      ? [`${what}: ${result} in print, from ${least} to ${greatest} by the inputs in print`]
      : []),
    ...(open > mostOpen
      ? [`${what}: ${result} in print, and the inputs in print leave ${open} units of its last digit open`]
      : []),
  ];
}

type Page = ReturnType<typeof cellsOf>;

/** The text beside a label, `right` columns further. */
function beside(page: Page, label: string, right = 3): string {
  const found = page.find(({ text }) => text === label);
  const value = found && page.find(({ row, col }) => row === found.row && col === found.col + right);
  if (!value) throw new Error(`nothing stands beside "${label}"`);
  return value.text;
}

/** The rows of a table of loads: a function gives the text of a load by the two lines of a heading, and the unit for load 0. */
function tableOf(page: Page, title: string, loads: number) {
  const at = (row: number, col: number) => page.find((cell) => cell.row === row && cell.col === col)?.text ?? "";
  const titles = page.filter(({ text }) => text === title || text === `${title}, continued`).map(({ row }) => row);
  const rows = new Map<number, number>();
  let heads = 0;
  for (const top of titles) {
    heads = top + 1;
    for (let row = top + 4; /^\d+$/.test(at(row, 0)); row++) rows.set(Number(at(row, 0)), row);
  }
  expect(rows.size).toBe(loads);
  return (load: number, first: string, second = ""): string => {
    const col = Array.from({ length: COLUMNS }, (_, one) => one).find(
      (one) => at(heads, one) === first && at(heads + 1, one) === second,
    );
    if (col !== undefined && load === 0) return at(heads + 2, col);
    if (col === undefined) throw new Error(`${title} has no column "${first} ${second}"`);
    return at(rows.get(load)!, col);
  };
}

const LOADS = 16;
/** Factors between the units of the sheet. */
const UNITS = {
  // mm2/min in m2/yr; 1/kPa in m2/MN; grams of water in a mm3; m2/yr times m2/MN times the weight of water in m/s.
  SI: { cv: 0.52596, mv: 1000, water: 0.001, density: 1000, k: 9806.65e-6 / 31_557_600 },
  // in2/min in ft2/day; 1/tsf in ft2/ton; grams of water in a cubic inch; g/in3 in pcf; ft2/day times ft2/ton times the weight in ft/day.
  US: { cv: 10, mv: 1, water: 16.387064, density: 1728 / 453.59237, k: 62.428 / 2000 },
} as const;

/** The power of ten in a unit: -9 of "10⁻⁹ m/s". */
function powerOf(unit: string): number {
  const raised = /^10(⁻?)([⁰¹²³⁴⁵⁶⁷⁸⁹]) /.exec(unit);
  return raised ? (raised[1] ? -1 : 1) * "⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(raised[2]!) : 0;
}

describe.each(["SI", "US"] as const)("%s: what is printed follows from what is printed", (system) => {
  const unit = UNITS[system];
  let page: Page;
  let departures: (
    what: string,
    result: string,
    inputs: readonly Printed[],
    f: (...v: number[]) => number,
    mostOpen?: number,
  ) => void;
  let found: string[];
  let counted: number;

  beforeAll(async () => {
    page = cellsOf(await reported(demoSheet(system))).filter(({ col }) => col < COLUMNS);
  });
  beforeEach(() => {
    [found, counted] = [[], 0];
    departures = (what, result, inputs, f, mostOpen = MOST_OPEN) => {
      counted++;
      found.push(...departure(what, result, inputs, f, mostOpen));
    };
  });

  test("the specimen: water contents, densities, height of solids, void ratios, saturation", () => {
    const of = (label: string) => read(beside(page, label));
    const asTyped = (label: string) => typed(beside(page, label));
    const [Hf, Hs] = ["Final height Hf", "Height of solids"].map(of);
    const [H0, D] = ["Initial height H0", "Diameter"].map(asTyped);
    const [wet, wetAfter, dry, Gs] = ["Initial wet mass", "Final wet mass", "Dry mass", "Gs of solids"].map(asTyped);
    const says = (label: string, inputs: readonly (Printed | undefined)[], f: (...v: number[]) => number) =>
      departures(label, beside(page, label), inputs as Printed[], f);
    const water = (m: number, d: number) => (m - d) / d;
    says("Initial water content w0", [wet, dry], water);
    says("Final water content wf", [wetAfter, dry], water);
    says("Height of solids", [dry, Gs, D], (m, g, d) => m / (g * unit.water * (Math.PI / 4) * d ** 2));
    says("Initial void ratio e0", [H0, Hs], (H, h) => H / h - 1);
    says("Final void ratio ef", [Hf, Hs], (H, h) => H / h - 1);
    for (const [S, m, e] of [
      ["Initial saturation S0", wet, of("Initial void ratio e0")],
      ["Final saturation Sf", wetAfter, of("Final void ratio ef")],
    ] as const)
      says(S, [m, dry, Gs, e], (w, d, g, ratio) => (water(w, d) * g) / ratio);
    for (const [density, m, H] of [
      ["Initial bulk density", wet, H0],
      ["Initial dry density", dry, H0],
      ["Final bulk density", wetAfter, Hf],
      ["Final dry density", dry, Hf],
    ] as const)
      says(density, [m, H, D], (mass, h, d) => (unit.density * mass) / (h * (Math.PI / 4) * d ** 2));
    expect([counted, found]).toEqual([11, []]);
  });

  test("each load: heights from the readings, strain, e at its end and at d100, cv, mv, C alpha, k", () => {
    const [loads, times, heights] = [
      "Loads",
      "Time curves and intervals of the loads",
      "Levels and heights of the loads",
    ].map((title) => tableOf(page, title, LOADS)) as [
      ReturnType<typeof tableOf>,
      ReturnType<typeof tableOf>,
      ReturnType<typeof tableOf>,
    ];
    const H0 = typed(beside(page, "Initial height H0"));
    const Hs = read(beside(page, "Height of solids"));
    const [zero, factor] = ["Zero reading", "Dial factor"].map((label) => typed(beside(page, label))) as [
      Printed,
      Printed,
    ];
    const isNumber = (text: string) => /\d/.test(text);
    const height = (H: number, level: number, from: number, f: number, frame: number) => H - (level - from) * f + frame;
    for (let load = 1; load <= LOADS; load++) {
      const frame = read(heights(load, "Frame", "deflect."));
      const end = heights(load, "Height", "at end");
      const last = typed(heights(load, "Last", "reading"));
      departures(`height of load ${load}`, end, [H0, last, zero, factor, frame], height);
      departures(`e of load ${load}`, loads(load, "e", "at end"), [read(end), Hs], (H, h) => H / h - 1);
      const deformation = read(heights(load, "Deform.", "corrected"));
      departures(`strain of load ${load}`, loads(load, "Strain", "at end"), [deformation, H0], (d, H) => d / H);
      const before = load === 1 ? H0 : read(heights(load - 1, "Height", "at end"));
      const stresses = [load === 1 ? beside(page, "Seating stress") : loads(load - 1, "Stress"), loads(load, "Stress")];
      const mv = (H: number, h: number, from: number, to: number) => ((H - h) / H / (to - from)) * unit.mv;
      if (isNumber(loads(load, "mv")))
        departures(`mv of load ${load}`, loads(load, "mv"), [before, read(end), ...stresses.map(typed)], mv);
      for (const [by, time, T] of [
        ["log time", "t50", 0.197],
        ["root time", "t90", 0.848],
      ] as const) {
        if (!isNumber(heights(load, "d100", by))) continue;
        const [d0, d100] = ["d0", "d100"].map((level) => read(heights(load, level, by))) as [Printed, Printed];
        const half = heights(load, "H at 50%", by);
        departures(
          `H at 50 % of load ${load} by ${by}`,
          half,
          [H0, d0, d100, zero, factor, frame],
          (H, a, b, z, f, c) => height(H, (a + b) / 2, z, f, c),
        );
        if (loads(load, "cv", "by") !== "root" && by === "log time")
          departures(
            `e at d100 of load ${load}`,
            loads(load, "e", "at d100"),
            [H0, d100, zero, factor, frame, Hs],
            (...v) => height(...(v.slice(0, 5) as [number, number, number, number, number])) / v[5]! - 1,
          );
        const cv = times(load, "cv by", by);
        if (isNumber(cv))
          departures(
            `cv of load ${load} by ${by}`,
            cv,
            [exact(T), read(half), read(times(load, time, by))],
            (c, H, t) => ((c * (H / 2) ** 2) / t) * unit.cv,
          );
      }
      const k = loads(load, "k");
      if (isNumber(k)) {
        const [cv, mvOfLoad] = [read(loads(load, "cv")), read(loads(load, "mv"))];
        departures(`k of load ${load}`, k, [cv, mvOfLoad], (c, m) => (c * m * unit.k) / 10 ** powerOf(loads(0, "k")));
      }
      const creep = loads(load, "C alpha", "in strain");
      if (isNumber(creep))
        departures(
          `C alpha of load ${load}`,
          creep,
          [read(heights(load, "Tail, per", "log cycle")), factor, H0],
          (s, f, H) => (s * f) / H,
        );
    }
    expect([counted, found]).toEqual([149, []]);
  });

  test("the test: indices, ratios, OCR, and the design values", () => {
    const loads = tableOf(page, "Loads", LOADS);
    const of = (label: string, right = 3) => read(beside(page, label, right));
    const says = (label: string, inputs: readonly Printed[], f: (...v: number[]) => number, mostOpen = MOST_OPEN) =>
      departures(label, beside(page, label), inputs, f, mostOpen);
    const atEnd = (load: number) => read(loads(load, "e", "at end"));
    const e0 = of("Initial void ratio e0");
    const [Cc, Cr, Cs] = ["Compression index Cc", "Recompression index Cr", "Swelling index Cs"].map((one) =>
      of(one),
    ) as [Printed, Printed, Printed];
    // Loads 5 to 13 double the stress from 200 to 3200 kPa (2 to 32 tsf) along the virgin line, without the loop of loads 7 to 10.
    says("Compression index Cc", [5, 6, 11, 12, 13].map(atEnd), (...e) => {
      const rise = e.reduce((sum, one, index) => sum + (index - 2) * one, 0) / 10;
      return -rise / Math.log10(2);
    });
    says("Recompression index Cr", [atEnd(8), atEnd(10)], (from, to) => (from - to) / Math.log10(16));
    says("Swelling index Cs", [atEnd(16), atEnd(13)], (to, from) => (to - from) / Math.log10(64));
    const [before, inSitu] = [
      of("  before rounding (for OCR)"),
      of(system === "SI" ? "In-situ stress, kPa" : "In-situ stress, tsf"),
    ];
    says("Overconsolidation ratio", [before, { ...inSitu, half: 0 }], (p, v) => p / v);
    says("C alpha / Cc, by void ratio", [of("C alpha, strain per log cycle"), e0, Cc], (c, e, C) => (c * (1 + e)) / C);
    for (const [ratio, index] of [
      ["Compression ratio CR", Cc],
      ["Recompression ratio RR", Cr],
      ["Swelling ratio SR", Cs],
    ] as const)
      says(ratio, [index, e0], (C, e) => C / (1 + e));
    says("Modulus number (Janbu)", [of("Compression ratio CR")], (CR) => Math.LN10 / CR);
    const [from, to] = [of("e at the in-situ stress"), of("e after the increase")];
    const said = page.map(({ text }) => /loading curve over ([\d.]+) /.exec(text)?.[1]).find(Boolean);
    const increase = read(said!);
    // The report says that these two follow only within 0.001 of the change of e.
    says("mv over the increase", [from, to, increase], (a, b, by) => ((a - b) / (1 + a) / by) * unit.mv, Infinity);
    says("Constrained modulus M", [from, to, increase], (a, b, by) => (by * (1 + a)) / (a - b), Infinity);
    const power = powerOf(beside(page, "k from cv and mv", 4));
    const [cv, mv] = [of("cv in the middle of it"), of("mv over the increase")];
    says("k from cv and mv", [cv, mv], (c, m) => (c * m * unit.k) / 10 ** power);
    expect([counted, found]).toEqual([12, []]);
  });
});

test("what was typed with more decimals is printed with them, so that the height of solids follows", async () => {
  const given = { specific_gravity: 2.685, diameter: 63.485, seating_stress: 5.25 };
  const made = await reported(fillSheet(demoSheet("SI"), given));
  const page = cellsOf(made).filter(({ col }) => col < COLUMNS);
  const labels = ["Gs of solids", "Diameter", "Seating stress", "Dry mass"];
  expect(labels.map((label) => beside(page, label))).toEqual(["2.685", "63.485", "5.25", "89.30"]);
  const [Gs, D, , dry] = labels.map((label) => typed(beside(page, label))) as [Printed, Printed, Printed, Printed];
  const solids = (m: number, g: number, d: number) => m / (g * UNITS.SI.water * (Math.PI / 4) * d ** 2);
  expect(departure("Hs", beside(page, "Height of solids"), [dry, Gs, D], solids, MOST_OPEN)).toEqual([]);
  expect(beside(page, "Dial factor", 4)).toBe("mm/div");
});
