/** A plot for paper: black on white at a stated width, with its notes below, complete in one file. */
import type { PlotSpec } from "./spec";
import type { InWords } from "./words";
import { drawPlot, FONT_SIZE, type Inks } from "./svg";

const PIXELS_PER_MM = 96 / 25.4;
const MARGIN = 4;
const NOTE_FONT = 10;
const NOTE_LINE = 14;

/** Font names: the file asks for the first of these that the machine has. */
const FONT = "Arial, Helvetica, sans-serif";

const INKS: Inks = { ink: "#000", paper: "#fff", grid: "#c0c0c0", construction: "#000" };

export interface PaperOptions {
  /** Width of the printed picture, mm. */
  readonly widthMm: number;
  /** A line above the drawing, with the names of the test and the plot. */
  readonly heading?: string;
  readonly document?: Document;
  /** The language of the description; English if omitted. */
  readonly inWords?: InWords;
}

/** Breaks words into lines of at most `most` characters. */
export function brokenInto(words: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(/\s+/)) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= most) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Few programs know paint-order: each halo becomes an element of its own behind its text. */
function separateHalos(svg: SVGSVGElement): void {
  for (const words of svg.querySelectorAll("text[paint-order]")) {
    // The copy of an element is an element, although the DOM types it as a node only.
    const halo = words.cloneNode(true) as Element;
    halo.removeAttribute("paint-order");
    halo.setAttribute("fill", INKS.paper);
    halo.setAttribute("aria-hidden", "true");
    words.before(halo);
    for (const name of ["paint-order", "stroke", "stroke-width", "stroke-linejoin"]) words.removeAttribute(name);
  }
}

/** An SVG element without classes, styles and variables of a page; its size is in mm. */
export function paperPlot(
  spec: PlotSpec<string>,
  { widthMm, heading = "", document: page = document, inWords }: PaperOptions,
): SVGSVGElement {
  const width = widthMm * PIXELS_PER_MM;
  const svg = drawPlot(spec, { width, document: page, inks: INKS, font: FONT, inWords });
  const drawn = Number(svg.getAttribute("height"));
  const notes = spec.notes.flatMap((note) => brokenInto(note, Math.floor((width - 2 * MARGIN) / (0.55 * NOTE_FONT))));
  const headings = heading === "" ? [] : brokenInto(heading, Math.floor((width - 2 * MARGIN) / (0.6 * FONT_SIZE)));
  /** The heading gets its own space above the drawing, whose coordinates stay the same. */
  const top = headings.length ? -(headings.length * NOTE_LINE + MARGIN) : 0;
  const height = drawn - top + (notes.length ? notes.length * NOTE_LINE + MARGIN : 0);

  for (const part of [svg, ...svg.querySelectorAll("[class]")]) part.removeAttribute("class");
  svg.removeAttribute("style");
  svg.setAttribute("font-family", FONT);
  svg.setAttribute("font-size", String(FONT_SIZE));
  svg.removeAttribute("color");
  for (const part of [svg, ...svg.querySelectorAll("*")])
    for (const { name, value } of [...part.attributes]) if (value === "currentColor") part.setAttribute(name, INKS.ink);
  svg.setAttribute("fill", INKS.ink);
  svg.setAttribute("width", `${widthMm}mm`);
  svg.setAttribute("height", `${(height / PIXELS_PER_MM).toFixed(2)}mm`);
  svg.setAttribute("viewBox", `0 ${top} ${width.toFixed(2)} ${height.toFixed(2)}`);

  separateHalos(svg);

  const add = (name: string, attributes: Record<string, string>, words = ""): SVGElement => {
    const element = page.createElementNS("http://www.w3.org/2000/svg", name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.textContent = words;
    return element;
  };
  svg.prepend(
    add("title", {}, spec.title),
    add("desc", {}, svg.getAttribute("aria-label") ?? ""),
    add("rect", {
      ...(top && { y: String(top) }),
      width: "100%",
      height: "100%",
      fill: INKS.paper,
      "data-label": "paper",
    }),
  );
  headings.forEach((words, line) => {
    const at = { x: String(MARGIN), y: String(top + NOTE_LINE * (line + 0.9)), "font-weight": "bold" };
    svg.append(add("text", { ...at, "text-anchor": "start" }, words));
  });
  notes.forEach((note, line) => {
    const at = { x: String(MARGIN), y: String(drawn + NOTE_LINE * (line + 0.8)), "font-size": String(NOTE_FONT) };
    svg.append(add("text", { ...at, "text-anchor": "start" }, note));
  });
  return svg;
}

/** The text of an SVG file. */
export const svgFile = (svg: SVGSVGElement): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(svg)}\n`;
