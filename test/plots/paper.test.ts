/** @jest-environment jsdom */
import { compressionPlot } from "../../src/plots/compression";
import { cvPlot } from "../../src/plots/coefficients";
import { brokenInto, paperPlot, svgFile } from "../../src/plots/paper";
import { logTimePlot } from "../../src/plots/time";
import { compressionCurve, timeCurve } from "./curves";
import { english } from "../../src/reduction/message";

const specs = [
  compressionPlot(compressionCurve.stresses, compressionCurve.voidRatios, "e"),
  logTimePlot(timeCurve.times, timeCurve.readings),
  cvPlot([25, 50, 100], [9, 8, 4], [11, 10, 5], { chosen: "log time", yieldStress: 60 }),
].map((outcome) => {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
});

describe.each(specs)("$title on paper", (spec) => {
  // The page is dark while the file is made.
  document.body.style.setProperty("--plot-ink", "#f0f0f0");
  const file = svgFile(paperPlot(spec, { widthMm: 120 }));

  test("the file is complete, well-formed XML", () => {
    const read = new DOMParser().parseFromString(file, "image/svg+xml");
    expect(read.querySelector("parsererror")).toBeNull();
    expect(read.documentElement.namespaceURI).toBe("http://www.w3.org/2000/svg");
    expect(file.startsWith("<?xml")).toBe(true);
  });

  test("it has no variable, class or style of the page, and no colour except black and grey", () => {
    // A clip path is a part of the same file.
    expect(file).not.toMatch(/var\(|class=|<style|currentColor|paint-order|url\((?!#)/);
    const inks = new Set([...file.matchAll(/(?:fill|stroke)="([^"]+)"/g)].map(([, ink]) => ink));
    expect([...inks].every((ink) => ["none", "#000", "#fff", "#c0c0c0", "#000000"].includes(ink))).toBe(true);
    expect(file).toContain('font-family="Arial, Helvetica, sans-serif"');
  });

  test("it has the width asked for, the shape of its view box, a title and a description", () => {
    const svg = paperPlot(spec, { widthMm: 120 });
    const [, , width, height] = svg.getAttribute("viewBox")!.split(" ").map(Number);
    expect(svg.getAttribute("width")).toBe("120mm");
    expect(parseFloat(svg.getAttribute("height")!) / 120).toBeCloseTo(height / width, 3);
    expect(svg.querySelector("title")!.textContent).toBe(spec.title);
    expect(svg.querySelector("desc")!.textContent).toContain("Drawn:");
  });

  test("a heading stands above the drawing in whole lines and adds their height", () => {
    const heading = "Demonstration, load 5 (200 kPa), log of time, with a name that is long for a column";
    const [plain, headed] = [paperPlot(spec, { widthMm: 85 }), paperPlot(spec, { widthMm: 85, heading })];
    const box = (svg: SVGSVGElement) => svg.getAttribute("viewBox")!.split(" ").map(Number);
    const [, top, , height] = box(headed);
    expect(top).toBeLessThan(0);
    expect(height).toBeCloseTo(box(plain)[3]! - top!, 2);
    const lines = [...headed.querySelectorAll("text[font-weight=bold]")];
    expect(lines.map((line) => line.textContent).join(" ")).toBe(heading);
    for (const line of lines) expect(Number(line.getAttribute("y"))).toBeLessThan(0);
  });

  test("it includes all its notes, none cut off", () => {
    const words = [...paperPlot(spec, { widthMm: 85 }).querySelectorAll("text")]
      .map((one) => one.textContent)
      .join(" ");
    for (const note of spec.notes) expect(words).toContain(note);
  });
});

test("a word that is too long for a line is broken", () => {
  expect(brokenInto("one two three four", 9)).toEqual(["one two", "three", "four"]);
  expect(brokenInto("unbreakable", 4)).toEqual(["unbreakable"]);
});
