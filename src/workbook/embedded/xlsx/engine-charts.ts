/**
 * The engine writes charts that others made with their elements in an order of its own; Excel takes them only in the
 * order of the schema (ISO/IEC 29500-1, 21.2) and takes the drawing out of a file that has another.
 */
import { all } from "../../file/xml";
import type { Parts } from "./parts";

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
    for (const [name, order] of Object.entries(ORDERS))
      for (const element of all(document, name)) {
        const children = Array.from(element.children);
        element.replaceChildren(...order.flatMap((one) => children.filter((child) => child.localName === one)));
      }
  }
}
