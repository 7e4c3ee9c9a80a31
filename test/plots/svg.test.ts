/**
 * @jest-environment jsdom
 */
import type { PlotSeries, PlotSpec, SeriesLabel } from "../../src/plots/spec";
import { drawPlot, frameOf } from "../../src/plots/svg";
import { translated } from "../../src/pane/text/messages";
import { english } from "../../src/reduction/message";

const line = (label: SeriesLabel, style: PlotSeries["style"], points: PlotSeries["points"]): PlotSeries => ({
  label,
  style,
  points,
  letters: style === "points" ? undefined : label,
});

const spec = (change: Partial<PlotSpec> = {}): PlotSpec => ({
  title: "Log of time",
  x: { label: "Time (min)", scale: "log", domain: [0.1, 1000], reversed: false },
  y: { label: "Deformation (mm)", scale: "linear", domain: [0, 1], reversed: true },
  series: [
    line("tangent", "construction", [
      [1, 0.2],
      [100, 0.9],
    ]),
    line("d100", "guide", [
      [0.1, 0.8],
      [50, 0.8],
    ]),
    {
      ...line("readings", "points", [
        [0, 0.05],
        [0.25, 0.1],
        [10, 0.5],
        [500, 0.85],
      ]),
      symbol: "filled",
    },
    { ...line("unloading", "points", [[1, 0.3]]), symbol: "open" },
  ],
  remarks: [],
  notes: [],
  ...change,
});

const draw = (change: Partial<PlotSpec> = {}, width = 400): SVGSVGElement => drawPlot(spec(change), { width });
const named = (svg: SVGSVGElement, label: string): Element => {
  const found = svg.querySelector(`[data-label="${label}"]`);
  if (!found) throw new Error(`nothing is drawn for ${label}`);
  return found;
};
const centres = (svg: SVGSVGElement, label: string): [number, number][] =>
  [...named(svg, label).querySelectorAll("circle")].map((dot) => [
    Number(dot.getAttribute("cx")),
    Number(dot.getAttribute("cy")),
  ]);

test("every line is drawn, and lines of the construction have a label", () => {
  const svg = draw();
  for (const label of ["tangent", "d100"]) expect(named(svg, label).querySelectorAll("path")).toHaveLength(1);
  const lettering = [...named(svg, "lettering").querySelectorAll("text")].map((text) => text.textContent);
  expect(lettering.sort()).toEqual(["d100", "tangent"]);
});

test("the log plot has no reading at time zero, and all other readings", () => {
  expect(centres(draw(), "readings")).toHaveLength(3);
});

test("deformation increases downward on a reversed axis, otherwise upward", () => {
  const [down, up] = [true, false].map((reversed) =>
    centres(draw({ y: { ...spec().y, reversed } }), "readings").map(([, y]) => y),
  );
  expect(down[2]).toBeGreaterThan(down[0]);
  expect(up[2]).toBeLessThan(up[0]);
});

test("equal ratios of time are equal distances", () => {
  const series: PlotSeries[] = [
    line("readings", "points", [
      [1, 0.1],
      [10, 0.2],
      [100, 0.3],
    ]),
  ];
  const [a, b, c] = centres(draw({ series }), "readings").map(([x]) => x);
  expect(b - a).toBeGreaterThan(20);
  expect(c - b).toBeCloseTo(b - a, 6);
});

test("guides are dashed and open symbols unfilled, so that the plot reads without colour", () => {
  const svg = draw();
  expect(named(svg, "d100").outerHTML).toContain("stroke-dasharray");
  expect(named(svg, "tangent").outerHTML).not.toContain("stroke-dasharray");
  expect(named(svg, "unloading").getAttribute("fill")).not.toBe(named(svg, "readings").getAttribute("fill"));
});

test("a log axis has all grid lines: eight between two decades", () => {
  const svg = draw({ y: { ...spec().y, domain: [0, 1] } });
  const [first] = svg.querySelectorAll(`[data-label="minor grid"]`);
  expect(first.querySelectorAll("line")).toHaveLength(4 * 8);
});

test("axis labels name the quantity and its unit", () => {
  expect(draw().textContent).toContain("Time (min)");
  expect(draw().textContent).toContain("Deformation (mm)");
  expect(draw().getAttribute("role")).toBe("img");
  expect(draw().getAttribute("aria-label")).toContain("tangent");
});

test("with a stated scale the stretch has the stated slope on paper", () => {
  const perCycle = 0.3;
  const drawn = { drawnScale: { perCycle, slope: 2 }, y: { ...spec().y, domain: [0.4, 1] as const, reversed: false } };
  const series: PlotSeries[] = [
    line("virgin line", "points", [
      [10, 0.9],
      [100, 0.9 - perCycle],
    ]),
  ];
  const [[x0, y0], [x1, y1]] = centres(draw({ ...drawn, series }), "virgin line");
  expect((y1 - y0) / (x1 - x0)).toBeCloseTo(2, 6);
});

test("frameOf gives the plotting area as drawn; a height that is asked for is kept", () => {
  const frame = frameOf(spec(), { width: 400, height: 300 });
  const drawn = drawPlot(spec(), { width: 400, height: 300, document });
  expect(drawn.getAttribute("height")).toBe("300");
  const rect = drawn.querySelector("rect")!;
  expect(Number(rect.getAttribute("x"))).toBeCloseTo(frame.left, 0);
  expect(Number(rect.getAttribute("height"))).toBeCloseTo(frame.bottom - frame.top, 0);
  expect(frameOf(spec(), { width: 400 }).height).toBe(
    Number(drawPlot(spec(), { width: 400, document }).getAttribute("height")),
  );
});

test("triangles distinguish a second set of symbols", () => {
  const paths = (shape?: "triangle") =>
    [...drawPlot({ ...spec(), series: [{ label: "a", style: "points", symbol: "open", shape, points: [[1, 0.5]] }] }, { width: 400, document }).querySelectorAll('[data-label="a"] *')].map((mark) => mark.outerHTML); // prettier-ignore
  expect(paths("triangle")).not.toEqual(paths());
});

test("the ticks have the decimal mark of the reader's language", () => {
  const ticks = (inWords?: typeof english): string[] =>
    [...drawPlot(spec(), { width: 400, inWords }).querySelectorAll("text")].map((text) => text.textContent ?? "");
  expect(ticks(english)).toEqual(ticks());
  expect(ticks(english)).toEqual(expect.arrayContaining(["0.1", "0.2", "1000"]));
  const german = ticks((value) => translated(value, "de"));
  expect(german).toEqual(expect.arrayContaining(["0,1", "0,2", "1000"]));
  expect(german.filter((tick) => /^\d+\.\d/.test(tick))).toEqual([]);
});

test("the decades of a narrow log axis have as many labels as do not touch; each keeps its grid line", () => {
  const x = { ...spec().x, domain: [0.1, 10000] as const };
  const drawn = (width: number) => {
    const svg = drawPlot({ ...spec(), x }, { width });
    const texts = [...svg.querySelectorAll("text")].map((text) => text.textContent ?? "");
    return [
      texts.filter((text) => ["0.1", "1", "10", "100", "1000", "10\u2009000"].includes(text)),
      named(svg, "grid").querySelectorAll("line").length,
    ];
  };
  expect(drawn(400)).toEqual([["0.1", "1", "10", "100", "1000", "10\u2009000"], 6]);
  expect(drawn(190)).toEqual([["0.1", "10", "1000"], 6]);
});
