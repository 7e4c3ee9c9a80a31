/** A plot as data: defined once, drawn as SVG in the pane and as a chart in a workbook. */
import { type Message } from "../reduction/message";
import type { ConstructionLine } from "../reduction/construction";

export interface PlotAxis {
  /** The label with its unit: "Time, minutes". */
  readonly label: string;
  /** log: whole decades with a full minor grid. root: the values are roots of minutes, drawn on an even axis from 0. */
  readonly scale: "log" | "root" | "linear";
  readonly domain: readonly [low: number, high: number];
  /** True if values increase downward (y) or to the left (x). */
  readonly reversed: boolean;
}

/** One series. Style, dashes, symbols and labels distinguish the lines; never colour alone. */
export interface PlotSeries extends Omit<ConstructionLine, "style" | "label"> {
  /** The name of the series: `labelIn` of `words.ts` puts it into the language of the reader. */
  readonly label: string;
  /** As in a construction line; "joined": a thin line from point to point. */
  readonly style: ConstructionLine["style"] | "joined";
  /** The symbol of a series of points. */
  readonly symbol?: "filled" | "open" | "cross";
  /** The shape of filled and open symbols; circles if omitted. */
  readonly shape?: "circle" | "triangle";
  /** True if the line stands behind the others, for comparison: it is drawn faintly. */
  readonly isBehind?: boolean;
  /** The label beside the line; none if omitted. */
  readonly letters?: string;
}

/** The scale of a construction: a stretch of the curve is drawn at a stated slope, so that a ruler can check it. */
export interface DrawnScale {
  /** Change of y per log cycle of the stretch. */
  readonly perCycle: number;
  /** Rise over run of the stretch on the paper: 2 is 63 degrees. */
  readonly slope: number;
}

export interface PlotSpec {
  readonly title: string;
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly series: readonly PlotSeries[];
  /** The remarks of the method, and the reason if the method does not apply to these readings. */
  readonly remarks: readonly Message[];
  readonly refusal?: Message;
  /** Notes for a reader of the drawing: its scale, and points beyond the frame. */
  readonly notes: readonly string[];
  readonly drawnScale?: DrawnScale;
}
