/** A plot as data: defined once, drawn as SVG in the pane and as a chart in a workbook. */
import { type Message } from "../reduction/message";
import type { ConstructionLine, LineLabel } from "../reduction/construction";

export interface PlotAxis {
  /** The label with its unit: "Time, minutes". */
  readonly label: string;
  /** log: whole decades with a full minor grid. root: the values are roots of minutes, drawn on an even axis from 0. */
  readonly scale: "log" | "root" | "linear";
  readonly domain: readonly [low: number, high: number];
  /** True if values increase downward (y) or to the left (x). */
  readonly reversed: boolean;
}

/** The coefficients that are drawn in symbols of their own. */
export type CoefficientName = "log time" | "root time" | "C alpha";

/** The name of a series of a plot of the program: that of a line of a construction, or of what a plot alone draws. */
export type SeriesLabel =
  | LineLabel
  | "test"
  | "loading"
  | "wetting"
  | "rate at the end"
  | "in-situ stress"
  | "preconsolidation stress of the sheet"
  | "cv reported"
  | `${CoefficientName}, ${"first loading" | "reloading" | "virgin" | "not virgin"}`
  | "laboratory curve"
  | "laboratory loads"
  | "field curve"
  | "in situ"
  | "yield of the field curve"
  | "yield of the laboratory curve"
  | "field curve meets laboratory line"
  | "void index of the test"
  | "void index of the loads"
  | "intrinsic compression line"
  | "sedimentation compression line";

/**
 * One series. Style, dashes, symbols and labels distinguish the lines; never colour alone. A chart that a person made in
 * the workbook has labels of any text.
 */
export interface PlotSeries<Label extends string = SeriesLabel> extends Omit<ConstructionLine, "style" | "label"> {
  /** The name of the series: `labelIn` of `words.ts` puts it into the language of the reader. */
  readonly label: Label;
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

export interface PlotSpec<Label extends string = SeriesLabel> {
  readonly title: string;
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly series: readonly PlotSeries<Label>[];
  /** The remarks of the method, and the reason if the method does not apply to these readings. */
  readonly remarks: readonly Message[];
  readonly refusal?: Message;
  /** Notes for a reader of the drawing: its scale, and points beyond the frame. */
  readonly notes: readonly string[];
  readonly drawnScale?: DrawnScale;
}
