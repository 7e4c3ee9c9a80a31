/**
 * A line that a person would draw by hand on the plot, as data: the worksheet's LINES functions spill it and the plots
 * draw it.
 */
export interface ConstructionLine {
  /** The name a draughtsman writes beside the line: "readings", "tangent at the inflection", "d100". */
  readonly label: string;
  /** points: symbols only; curve: a smooth or jointed curve; construction: a full line of the method; guide: a thin dashed line to an axis. */
  readonly style: "points" | "curve" | "construction" | "guide";
  /** x, y in the coordinates of the plot of the method: minutes, root minutes, or stress. */
  readonly points: readonly (readonly [x: number, y: number])[];
}
