/** What Excel takes out of a chart, or shows otherwise than a person who made it expects, although the chart fits its schema. */
import { attribute, children, elements, type Package } from "./package";
import { type Rule } from "./package-rules";
import type { XmlElement } from "./xml";

/** The charts of a file, with the path of each. */
export const chartsOf = (file: Package): { path: string; root: XmlElement }[] =>
  file.paths
    .filter((path) => file.typeOf(path)?.endsWith("drawingml.chart+xml"))
    .map((path) => ({ path, root: file.xml(path).documentElement }));

const words = (text: string): readonly string[] => text.split(" ");
const OF_POINTS = words("b ctr l r t");
const OF_STACKS = words("ctr inBase inEnd");

/** The places of labels that Excel offers for a plot; a plot that is not here has one place, which is not written. */
const PLACES: Readonly<Record<string, readonly string[]>> = {
  scatterChart: OF_POINTS,
  lineChart: OF_POINTS,
  bubbleChart: OF_POINTS,
  barChart: [...OF_STACKS, "outEnd"],
  pieChart: words("bestFit ctr inEnd outEnd"),
};

const placesOf = (plot: XmlElement): readonly string[] =>
  children(plot, "grouping").some((one) => /stacked/i.test(attribute(one, "val") ?? ""))
    ? OF_STACKS
    : (PLACES[plot.localName] ?? []);

const ofCharts =
  (rule: (root: XmlElement) => string[]): Rule =>
  (file) =>
    chartsOf(file).flatMap(({ path, root }) => rule(root).map((said) => `${path}: ${said}`));

const plotsOf = (root: XmlElement): XmlElement[] =>
  elements(root, "plotArea").flatMap((area) => children(area).filter((one) => one.localName.endsWith("Chart")));

export const CHART_RULES: Readonly<Record<string, Rule>> = {
  // XlsxWriter issue 170 ("top" in columns: Excel does not read the file), PptxGenJS issues 768 and 815, EPPlus issue 2294; the places of
  // each plot are those of Excel's own window (from memory).
  "labels stand where Excel puts those of the plot": ofCharts((root) =>
    plotsOf(root).flatMap((plot) =>
      elements(plot, "dLblPos")
        .map((one) => attribute(one, "val") ?? "")
        .filter((place) => !placesOf(plot).includes(place))
        .map((place) => `a label of a ${plot.localName} stands at ${place}`),
    ),
  ),
  // From memory: without `delete` Excel hides the axis, and without `smooth` it draws a curve through the points of a line, because both
  // are true where an element of this kind has no value (ISO/IEC 29500-1, 21.2.2.40 and 21.2.2.194); without `crossBetween`, which the
  // standard asks of an axis of values (21.2.2.10), it does not read the chart.
  "axes are shown and lines are straight, as it is written": ofCharts((root) => {
    const axes = ["catAx", "valAx", "dateAx", "serAx"].flatMap((name) => elements(root, name));
    const lacking = (one: XmlElement, name: string): string[] =>
      children(one, name).some((child) => child.hasAttribute("val")) ? [] : [`a ${one.localName} has no ${name}`];
    return [
      ...axes.flatMap((axis) => [
        ...lacking(axis, "delete"),
        ...(axis.localName === "valAx" ? lacking(axis, "crossBetween") : []),
      ]),
      ...plotsOf(root)
        .filter(({ localName }) => localName === "scatterChart" || localName === "lineChart")
        .flatMap((plot) => children(plot, "ser"))
        .flatMap((series) => lacking(series, "smooth")),
    ];
  }),
};
