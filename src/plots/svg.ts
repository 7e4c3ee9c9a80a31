/** Draws a PlotSpec as an SVG element, in black and white, on a page that has a document. */
import * as Plot from "@observablehq/plot";
import { firstOf } from "../reduction/numeric/lists";
import { along, evenTicks, evenTickText, logTicks, scaledShape, spacedLabels, tickText } from "./axes";
import { placeLabels, type Frame, type Pixel } from "./lettering";
import { english, listed, say, verbatim } from "../reduction/message";
import type { PlotAxis, PlotSeries, PlotSpec } from "./spec";
import { labelIn, type InWords } from "./words";

export interface SvgOptions {
  /** Width of the whole drawing, in pixels. */
  readonly width: number;
  /** The height in pixels; if omitted, the height that the plot needs. */
  readonly height?: number;
  readonly document?: Document;
  readonly inks?: Inks;
  /** The font, a CSS family. */
  readonly font?: string;
  /** The language of the description for readers who cannot see the plot; English if omitted. */
  readonly inWords?: InWords;
  /** Draws symbols and lines in their frame and grid, without text: for a small picture among others. */
  readonly isBare?: boolean;
}

export interface Inks {
  readonly ink: string;
  readonly paper: string;
  readonly grid: string;
  readonly construction: string;
}

/** CSS variables of the page set these colours (dark theme, high contrast). */
const PAGE_INKS: Inks = {
  ink: "var(--plot-ink, #111)",
  paper: "var(--plot-paper, #fff)",
  grid: "var(--plot-grid, #c8c8c8)",
  construction: "var(--plot-construction, #0b4f9c)",
};

/** px */
export const FONT_SIZE = 11;
const MARGINS = { left: 58, right: 22, top: 14, bottom: 44 };
const BARE_MARGIN = { left: 1, right: 1, top: 1, bottom: 1 };

/** Width, dashes and ink of each style. */
const STROKE: Record<PlotSeries["style"], { width: number; dashes?: string; ink: "ink" | "construction" }> = {
  points: { width: 1, ink: "ink" },
  joined: { width: 0.75, ink: "ink" },
  curve: { width: 1.25, ink: "ink" },
  construction: { width: 1.5, ink: "construction" },
  guide: { width: 1, dashes: "5 3", ink: "construction" },
};

/** Opacity of a line behind the others: it is seen on white and on black paper, and the lines in front stand out. */
const BEHIND = 0.4;

/**
 * The height of the plotting area: by the stated scale if there is one; otherwise 3:4, or nearly square if the plot is
 * narrow.
 */
function frameHeight({ x, y, drawnScale }: PlotSpec<string>, width: number): number {
  const shape = drawnScale && scaledShape(x, y, drawnScale);
  return shape ? shape * width : Math.max(0.75 * width, Math.min(300, 1.1 * width));
}

/** The position of the plotting area in the drawing, and the size of the drawing, in pixels. */
export function frameOf(
  spec: PlotSpec<string>,
  { width, height, isBare = false }: Pick<SvgOptions, "width" | "height" | "isBare">,
): Frame & Size {
  const margin = isBare ? BARE_MARGIN : MARGINS;
  const inner = width - margin.left - margin.right;
  const innerHeight = height === undefined ? frameHeight(spec, inner) : height - margin.top - margin.bottom;
  return {
    left: margin.left,
    top: margin.top,
    right: margin.left + inner,
    bottom: margin.top + innerHeight,
    width,
    height: innerHeight + margin.top + margin.bottom,
  };
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/**
 * The preferred place of a label: at the axis for a level, at the end for a line, at either end for a vertical line.
 */
const nearOf = ({ style, points }: PlotSeries<string>): "start" | "end" | undefined =>
  style !== "guide" ? "end" : firstOf(points)[1] === points[1]?.[1] ? "start" : undefined;

/** Grid lines and tick labels of an axis, with the decimal mark of the reader. */
function ticksOf(
  axis: PlotAxis,
  pixels: number,
  mark: string,
): { major: number[]; minor: number[]; text: (value: number) => string } {
  if (axis.scale === "log") {
    const { decades, minor } = logTicks(axis.domain);
    const labels = spacedLabels(decades.map(tickText), pixels / (decades.length - 1), FONT_SIZE);
    return { major: decades, minor, text: (value) => (labels[decades.indexOf(value)] ?? "").replace(".", mark) };
  }
  const major = evenTicks(axis.domain, pixels / 42);
  const text = evenTickText(major);
  return { major, minor: evenTicks(axis.domain, pixels / 10), text: (value) => text(value).replace(".", mark) };
}

/** What the marks of a drawing share. */
interface Drawing {
  readonly spec: PlotSpec<string>;
  readonly frame: Frame;
  readonly decimalMark: string;
  readonly inks: Inks;
  readonly isBare: boolean;
}

type Point = readonly [number, number];

const isLine = ({ style }: PlotSeries<string>): boolean => style !== "points";

/** The points of a series that the axes can show: a logarithmic axis shows none at or below zero. */
const drawable = ({ x }: PlotSpec<string>, { points }: PlotSeries<string>): Point[] =>
  points.filter(([at]) => x.scale !== "log" || at > 0);

const inFrame =
  ({ x, y }: PlotSpec<string>) =>
  ([atX, atY]: Point): boolean =>
    atX >= x.domain[0] && atX <= x.domain[1] && atY >= y.domain[0] && atY <= y.domain[1];

/** Places the letters of the series beside their lines, clear of points and of other lines. */
function labelsOf({ spec, frame, isBare }: Drawing) {
  const [width, height] = [frame.right - frame.left, frame.bottom - frame.top];
  const pixel = ([x, y]: Point): Pixel => [
    frame.left + along(spec.x, x, width),
    frame.bottom - along(spec.y, y, height),
  ];
  const pixels = (series: PlotSeries<string>) => drawable(spec, series).map(pixel);
  const points = spec.series.filter((series) => !isLine(series));
  return placeLabels(
    spec.series.flatMap(({ letters, ...series }) =>
      isBare || letters === undefined ? [] : [{ text: letters, line: pixels(series), near: nearOf(series) }],
    ),
    points.flatMap((series) => drawable(spec, series).filter(inFrame(spec)).map(pixel)),
    spec.series.filter((series) => isLine(series) && series.letters === undefined).map(pixels),
    { left: frame.left + 2, right: frame.right - 2, top: frame.top + 2, bottom: frame.bottom - 2 },
    FONT_SIZE,
  );
}

/** The grid, the frame and the axes; a bare drawing has no minor grid and no axes. */
function groundMarks({ spec, frame, inks, isBare, decimalMark }: Drawing): Plot.Markish[] {
  const xTicks = ticksOf(spec.x, frame.right - frame.left, decimalMark);
  const yTicks = ticksOf(spec.y, frame.bottom - frame.top, decimalMark);
  const minor = { stroke: inks.grid, strokeWidth: 0.5, render: labelled("minor grid") };
  const major = { stroke: inks.grid, strokeWidth: 1.2, render: labelled("grid") };
  const lettered = { labelAnchor: "center", labelArrow: "none", color: inks.ink } as const;
  return [
    Plot.ruleX(isBare ? [] : xTicks.minor, minor),
    Plot.ruleY(isBare ? [] : yTicks.minor, minor),
    Plot.ruleX(xTicks.major, major),
    Plot.ruleY(yTicks.major, major),
    Plot.frame({ stroke: inks.ink }),
    ...(isBare
      ? []
      : [
          Plot.axisX(xTicks.major, { tickFormat: xTicks.text, label: spec.x.label, labelOffset: 36, ...lettered }),
          Plot.axisY(yTicks.major, { tickFormat: yTicks.text, label: spec.y.label, labelOffset: 50, ...lettered }),
        ]),
  ];
}

/** The lines, and in front of them the points. */
function seriesMarks({ spec, inks, isBare }: Drawing): Plot.Markish[] {
  const lines = spec.series.filter(isLine);
  const points = spec.series.filter((series) => !isLine(series));
  return [
    ...lines.map((series) =>
      Plot.line(drawable(spec, series), {
        stroke: inks[STROKE[series.style].ink],
        strokeWidth: STROKE[series.style].width,
        strokeDasharray: STROKE[series.style].dashes,
        strokeOpacity: series.isBehind ? BEHIND : 1,
        clip: true,
        render: labelled(series.label),
      }),
    ),
    ...points.map((series) =>
      Plot.dot(drawable(spec, series).filter(inFrame(spec)), {
        r: series.symbol === "cross" ? 5 : isBare || series.points.length > 60 ? 1.8 : 3,
        symbol: series.symbol === "cross" ? "times" : (series.shape ?? "circle"),
        fill: series.symbol === "open" ? inks.paper : inks.ink,
        stroke: series.symbol === "cross" ? inks.construction : inks.ink,
        strokeWidth: 1.4,
        render: labelled(series.label),
      }),
    ),
  ];
}

const scaleOf = (axis: PlotAxis): Plot.ScaleOptions => ({
  type: axis.scale === "log" ? "log" : "linear",
  domain: [...axis.domain],
  reverse: axis.reversed,
  label: null,
  axis: null,
});

export function drawPlot(spec: PlotSpec<string>, options: SvgOptions): SVGSVGElement {
  const { document: page = document, inks = PAGE_INKS, font = "system-ui, sans-serif", isBare = false } = options;
  const { width, height, ...frame } = frameOf(spec, options);
  // A number in the words of the reader has the reader's decimal mark: "0.5" or "0,5".
  const decimalMark = options.inWords?.(0.5).charAt(1) ?? ".";
  const drawing: Drawing = { spec, frame, inks, isBare, decimalMark };
  const labels = labelsOf(drawing);
  // If there is no legend and no caption, Plot returns the drawing itself and not a figure that contains it.
  const svg = Plot.plot({
    document: page,
    style: {
      font: `${FONT_SIZE}px ${font}`,
      background: inks.paper,
      color: inks.ink,
      display: "block",
      height: "auto",
      maxWidth: "100%",
      whiteSpace: "pre",
    },
    width,
    height,
    marginLeft: frame.left,
    marginRight: width - frame.right,
    marginTop: frame.top,
    marginBottom: height - frame.bottom,
    x: scaleOf(spec.x),
    y: scaleOf(spec.y),
    marks: [...groundMarks(drawing), ...seriesMarks(drawing), () => lettering(page, labels, inks)],
  }) as SVGSVGElement;

  // The pane's content security policy refuses style sheets with text: the styles were set on the drawing above.
  for (const sheet of svg.querySelectorAll("style")) sheet.remove();
  // The drawing is one picture with one description; names of its parts are only for people who open the file.
  for (const part of svg.querySelectorAll("[aria-label]")) part.removeAttribute("aria-label");
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", describe(spec, options.inWords ?? english));
  return svg;
}

/** Names the group that a mark draws, for people who open the file. */
const labelled =
  (label: string): Plot.RenderFunction =>
  (index, scales, values, dimensions, context, next) => {
    const drawn = next!(index, scales, values, dimensions, context);
    drawn?.setAttribute("data-label", label);
    return drawn;
  };

function lettering(page: Document, labels: ReturnType<typeof placeLabels>, inks: Inks): SVGElement {
  const group = page.createElementNS("http://www.w3.org/2000/svg", "g");
  group.setAttribute("data-label", "lettering");
  group.setAttribute("text-anchor", "start");
  for (const { text, x, y, width, anchor } of labels) {
    if (anchor) {
      const leader = page.createElementNS("http://www.w3.org/2000/svg", "line");
      const at = { x1: anchor[0], y1: anchor[1], x2: Math.min(Math.max(anchor[0], x), x + width), y2: y };
      for (const [name, value] of Object.entries(at)) leader.setAttribute(name, value.toFixed(1));
      leader.setAttribute("stroke", inks.ink);
      leader.setAttribute("stroke-width", "0.8");
      group.append(leader);
    }
    const label = page.createElementNS("http://www.w3.org/2000/svg", "text");
    label.setAttribute("x", x.toFixed(1));
    label.setAttribute("y", y.toFixed(1));
    label.setAttribute("dy", "0.35em");
    label.setAttribute("fill", inks.ink);
    label.setAttribute("stroke", inks.paper);
    label.setAttribute("stroke-width", "3");
    label.setAttribute("stroke-linejoin", "round");
    label.setAttribute("paint-order", "stroke");
    label.textContent = text;
    group.append(label);
  }
  return group;
}

/** Describes the plot in one sentence, for readers who cannot see it. */
const describe = ({ title, x, y, series }: PlotSpec<string>, words: InWords): string =>
  words(
    say`${verbatim(title)}. ${verbatim(y.label)} against ${verbatim(x.label)}. Drawn: ${listed(series.map(({ label }) => verbatim(labelIn(words, label))))}.`,
  );
