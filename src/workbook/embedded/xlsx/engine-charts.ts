/**
 * The engine writes charts that others made with their elements in an order of its own; Excel takes them only in the
 * order of the schema (ISO/IEC 29500-1, 21.2) and takes the drawing out of a file that has another.
 */
import { say, type Message } from "../../../reduction/message";
import { all, child, first } from "../../file/xml";
import { finishedFormula } from "./formula";
import { RELATIONS } from "./namespaces";
import { pathOf, relationsOf, type Parts } from "./parts";

const words = (text: string): readonly string[] => text.split(" ");
const AXIS =
  "axId scaling delete axPos majorGridlines title numFmt majorTickMark minorTickMark tickLblPos txPr crossAx crosses";

/** The elements that may be below an element, in their order. Elements that the engine orders well are left out. */
const ORDERS: Readonly<Record<string, readonly string[]>> = {
  chartSpace: words("roundedCorners chart spPr"),
  plotArea: words("layout barChart lineChart scatterChart radarChart pieChart doughnutChart catAx valAx spPr"),
  barChart: words("barDir grouping varyColors ser dLbls gapWidth overlap axId"),
  lineChart: words("grouping varyColors ser dLbls axId"),
  scatterChart: words("scatterStyle varyColors ser dLbls axId"),
  radarChart: words("radarStyle varyColors ser dLbls axId"),
  pieChart: words("varyColors ser dLbls"),
  doughnutChart: words("varyColors ser dLbls holeSize"),
  ser: words("idx order tx spPr invertIfNegative marker dPt dLbls trendline cat xVal val yVal smooth"),
  trendline: words("spPr trendlineType order period dispRSqr dispEq"),
  catAx: words(`${AXIS} auto`),
  valAx: words(`${AXIS} crossBetween majorUnit`),
  scaling: words("orientation max min"),
};

/** The plots whose series have no curves to be made smooth. */
const WITHOUT_SMOOTH = new Set(["barChart", "radarChart"]);

/** The engine writes a pie as a ring with a hole of 0, which Excel's rings do not have. */
function asPie(ring: Element): void {
  const pie = ring.ownerDocument.createElementNS(ring.namespaceURI, "c:pieChart");
  pie.append(...Array.from(ring.children).filter((child) => child.localName !== "holeSize"));
  ring.replaceWith(pie);
}

/** Puts the charts that the engine wrote in order. A name of a series that the engine did not find is left out. */
export function orderCharts(parts: Parts): void {
  for (const path of parts.paths().filter((one) => /^xl\/charts\/chart\d+\.xml$/.test(one))) {
    const document = parts.document(path);
    for (const hole of all(document, "holeSize")) if (hole.getAttribute("val") === "0") asPie(hole.parentElement!);
    for (const cache of all(document, "numCache")) if (cache.children.length === 0) cache.remove();
    for (const smooth of all(document, "smooth"))
      if (WITHOUT_SMOOTH.has(smooth.parentElement!.parentElement!.localName)) smooth.remove();
    for (const formula of all(document, "f"))
      if (formula.textContent === "#REF") formula.parentElement!.parentElement!.remove();
      else formula.textContent = finishedFormula(formula.textContent ?? "");
    for (const [name, order] of Object.entries(ORDERS))
      for (const element of all(document, name)) {
        const children = Array.from(element.children);
        element.replaceChildren(...order.flatMap((one) => children.filter((child) => child.localName === one)));
      }
  }
}

/** The charts that the drawings of a file show. */
function shownCharts(parts: Parts): Document[] {
  const drawings = parts
    .paths()
    .filter((path) => /^xl\/drawings\/[^/]+\.xml$/.test(path) && parts.has(relationsOf(path)));
  return drawings.flatMap((drawing) => {
    const shown = all(parts.document(drawing), "chart").map((one) => one.getAttributeNS(RELATIONS, "id"));
    return all(parts.document(relationsOf(drawing)), "Relationship")
      .filter((relation) => shown.includes(relation.getAttribute("Id")))
      .map((relation) => pathOf(relation.getAttribute("Target") ?? "", drawing))
      .filter((path) => parts.has(path))
      .map((path) => parts.document(path));
  });
}

/** Gives a series the name that its cell showed as a text. Returns false if no cell gives the name. */
function nameByText(series: Element): boolean {
  const name = child(series, "tx");
  const cell = name && child(name, "strRef");
  if (!cell) return false;
  const shown = first(cell, "v")?.textContent ?? "";
  if (shown === "") name.remove();
  else {
    const text = name.ownerDocument.createElementNS(name.namespaceURI, "c:v");
    text.textContent = shown;
    name.replaceChildren(text);
  }
  return true;
}

/**
 * The engine takes the cell with the name of a series for the x values of a scatter chart, and the x values of the first series for all.
 * So the names become texts, which leaves the first series its x values. Returns what is not kept. Call it when the add-in's own charts
 * are taken out of the drawings.
 */
export function keepScatterCharts(parts: Parts): Message[] {
  const scattered = shownCharts(parts).map((chart) => all(chart, "scatterChart").flatMap((plot) => all(plot, "ser")));
  const xOf = (series: Element): string | undefined => {
    const x = child(series, "xVal");
    return x && first(x, "f")?.textContent;
  };
  const isNamed = scattered.map((all) => all.map(nameByText).includes(true)).includes(true);
  const hasOwnX = scattered.some((all) => new Set(all.map(xOf)).size > 1);
  return [
    ...(isNamed ? [say`cells that give the series of a scatter chart their names (the names stay as texts)`] : []),
    ...(hasOwnX
      ? [say`x values of the second and further series of a scatter chart (all take those of the first)`]
      : []),
  ];
}
