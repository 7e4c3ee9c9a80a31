/** The marks of a construction on the plot of readings, such as d50 and t100. */
type Mark = `${"d" | "t"}${number}`;

/** The name that a draughtsman writes beside a line. */
export type LineLabel =
  | "readings"
  | "readings less the jump"
  | "first loading"
  | "early parabola"
  | "4:1 pair"
  | "offset"
  | "same offset"
  | "steepest tangent"
  | "secondary tail"
  | "half distance"
  | "straight part"
  | `${number} line`
  | `${number} abscissae`
  | "root t90"
  | "smooth curve"
  | "virgin line"
  | "greatest curvature"
  | "horizontal"
  | "tangent"
  | "bisector"
  | "recompression line"
  | "initial value"
  | "vertical to the curve"
  | "horizontal to the virgin line"
  | "line before yield"
  | "line after yield"
  | "work"
  | "modulus"
  | "preconsolidation stress"
  | "reloading"
  | "unloading"
  | Mark;

/**
 * A line that a person would draw by hand on the plot, as data: the worksheet's LINES functions spill it and the plots
 * draw it.
 */
export interface ConstructionLine {
  readonly label: LineLabel;
  /** points: symbols only; curve: a smooth or jointed curve; construction: a full line of the method; guide: a thin dashed line to an axis. */
  readonly style: "points" | "curve" | "construction" | "guide";
  /** x, y in the coordinates of the plot of the method: minutes, root minutes, or stress. */
  readonly points: readonly (readonly [x: number, y: number])[];
}
