/** The constructions of the example sheet, drawn for the help page. */
import { JSDOM } from "jsdom";
import type { Language } from "../pane/text/language";
import { translated } from "../pane/text/messages";
import { compressionPlot } from "../plots/compression";
import type { PlotSpec } from "../plots/spec";
import { drawPlot } from "../plots/svg";
import { logTimePlot, rootTimePlot } from "../plots/time";
import type { InWords } from "../plots/words";
import { METHOD_NAMES } from "../reduction/curve/method-words";
import { reduceIncrement } from "../reduction/increment/reduce";
import { english, say, verbatim } from "../reduction/message";
import { firstOf, nth } from "../reduction/numeric/lists";
import type { Outcome } from "../reduction/outcome";
import { EXAMPLE_SHEET } from "./example-sheet";

export interface Picture {
  readonly notes: readonly string[];
  readonly svg: string;
}

/** px */
const WIDTH = 560;

const column = (index: number): number[] => nth(EXAMPLE_SHEET, index).cells.map(Number);
const [times, readings, stresses, voidRatios] = [column(0), column(1), column(2), column(3)];

const TIME_PLOTS = { "log time": logTimePlot, "root time": rootTimePlot } as const;
const isTimePlot = (name: string): name is keyof typeof TIME_PLOTS => name in TIME_PLOTS;

function specOf(name: string, inWords: InWords): Outcome<PlotSpec> {
  const parts = name.split(", ");
  const construction = firstOf(parts);
  if (isTimePlot(construction))
    return TIME_PLOTS[construction](times, readings, {
      inWords,
      readingLabel: inWords(say`Reading (${verbatim("mm")})`),
      increment: reduceIncrement(times, readings, {}, parts[1] === "drawn" ? "drawn" : "aided"),
    });
  const method = METHOD_NAMES.find((one) => one === name);
  if (method === undefined) throw new Error(`There is no picture "${name}"`);
  return compressionPlot(stresses, voidRatios, "e", { method, inWords });
}

/**
 * Draws a picture by its name: "log time" or "root time", optionally followed by ", drawn", or a method of the
 * preconsolidation stress. Its letters are in the language.
 */
export function drawPicture(name: string, language: Language): Picture {
  const inWords: InWords = (value) => translated(value, language);
  const spec = specOf(name, inWords);
  const refusal = spec.ok ? spec.value.refusal : spec.reason;
  if (!spec.ok || refusal) throw new Error(`The picture "${name}" cannot be drawn: ${refusal && english(refusal)}`);
  const { document } = new JSDOM().window;
  return {
    notes: spec.value.notes,
    svg: drawPlot(spec.value, { width: WIDTH, document, inWords }).outerHTML,
  };
}
