/** The constructions of the example sheet, drawn for the help page. */
import { JSDOM } from "jsdom";
import { compressionPlot } from "../plots/compression";
import type { PlotSpec } from "../plots/spec";
import { drawPlot } from "../plots/svg";
import { logTimePlot, rootTimePlot } from "../plots/time";
import { METHOD_NAMES, type MethodName } from "../reduction/curve/preconsolidation";
import type { Outcome } from "../reduction/outcome";
import { EXAMPLE_SHEET } from "./example-sheet";

export interface Picture {
  readonly title: string;
  readonly notes: readonly string[];
  readonly svg: string;
}

/** px */
const WIDTH = 560;

const [times, readings, stresses, voidRatios] = EXAMPLE_SHEET.map(({ cells }) => cells.map(Number));

function specOf(name: string): Outcome<PlotSpec> {
  if (name === "log time") return logTimePlot(times, readings, { readingLabel: "Reading (mm)" });
  if (name === "root time") return rootTimePlot(times, readings, { readingLabel: "Reading (mm)" });
  if (!METHOD_NAMES.includes(name as MethodName)) throw new Error(`There is no picture "${name}"`);
  return compressionPlot(stresses, voidRatios, "e", { method: name as MethodName });
}

/** A picture by its name: "log time", "root time", or a method of the preconsolidation stress. */
export function drawPicture(name: string): Picture {
  const spec = specOf(name);
  if (!spec.ok || spec.value.refusal !== undefined)
    throw new Error(`The picture "${name}" cannot be drawn: ${spec.ok ? spec.value.refusal : spec.reason}`);
  const { document } = new JSDOM().window;
  return {
    title: `The construction on the example sheet: ${name.replace("_", " ")}`,
    notes: spec.value.notes,
    svg: drawPlot(spec.value, { width: WIDTH, document }).outerHTML,
  };
}
