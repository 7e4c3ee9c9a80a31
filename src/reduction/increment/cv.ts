/** Coefficient of consolidation from a time read off a construction: cv = T Hdr^2 / t. */

/** T at U = 50 % in the log-time hand method (exact 0.19673). Source: Casagrande & Fadum (1940); ASTM D2435 and ISO 17892-5 use it. */
export const T50 = 0.197;

/** T at U = 90 % in the root-time hand method (exact 0.84809). Source: Taylor (1942); ASTM D2435 and ISO 17892-5 use it. */
export const T90 = 0.848;

/** Abscissae of the second root-time line over those of the straight part (exact 1.1546). Source: Taylor (1942), as the standards state it. */
export const LINE_FACTOR = 1.15;

export type Drainage = "double" | "single";

/** Longest drainage path: half the height if both faces drain. Same unit as the height. */
export const drainagePath = (height: number, drainage: Drainage): number =>
  drainage === "double" ? height / 2 : height;

/** cv in mm2/min from the time factor, the time in minutes and the mid-increment height in mm. */
export const coefficientOfConsolidation = (T: number, time: number, height: number, drainage: Drainage): number =>
  (T * drainagePath(height, drainage) ** 2) / time;
