/** A plot as data: what is to be drawn, said once; drawn as SVG in the pane and, from the same data, as a chart in a workbook. */
import { type Message } from "../reduction/message";
import type { ConstructionLine } from "../reduction/construction";

export interface PlotAxis {
  /** With its unit: "Time, minutes". */
  readonly label: string;
  /** log: whole decades with a full minor grid; root: the coordinate is already the root of minutes, drawn evenly from 0. */
  readonly scale: "log" | "root" | "linear";
  readonly domain: readonly [low: number, high: number];
  /** Values increase downward (y) or to the left (x). */
  readonly reversed: boolean;
}

/** One series. What a line means is told by its style, its dashes, its symbols and its lettering; never by colour alone. */
export interface PlotSeries extends Omit<ConstructionLine, "style"> {
  /** As for a construction line; joined: a thin line from point to point. */
  readonly style: ConstructionLine["style"] | "joined";
  /** Of a series of points. */
  readonly symbol?: "filled" | "open" | "cross";
  /** Of filled and open symbols; circles, if it is left out. */
  readonly shape?: "circle" | "triangle";
  /** What is lettered beside the line; nothing, if it is left out. */
  readonly letters?: string;
}

/** The scale a construction was made at: a stretch of the curve is drawn at a stated slope, so that a ruler can check it. */
export interface DrawnScale {
  /** Change of y per log cycle of the stretch. */
  readonly perCycle: number;
  /** Rise over run of that stretch on the paper: 2 is 63 degrees. */
  readonly slope: number;
}

export interface PlotSpec {
  readonly title: string;
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly series: readonly PlotSeries[];
  /** What the method remarks; and why it draws nothing, where it does not apply to these readings. */
  readonly remarks: readonly Message[];
  readonly refusal?: Message;
  /** What a reader of the drawing should know: its scale, or what lies beyond the frame. */
  readonly notes: readonly string[];
  readonly drawnScale?: DrawnScale;
}
