/** A line that a hand would draw on the plot, as data: what the worksheet's LINES functions spill and the plots draw. */
export interface ConstructionLine {
  /** As a draughtsman would letter it: "readings", "tangent at the inflection", "d100". */
  readonly label: string;
  /** points: symbols only; curve: a smooth or jointed curve; construction: a full line of the method; guide: a thin dashed line to an axis. */
  readonly style: "points" | "curve" | "construction" | "guide";
  /** x, y in the coordinates that the method's plot is drawn in: minutes, root minutes, or stress. */
  readonly points: readonly (readonly [x: number, y: number])[];
}
