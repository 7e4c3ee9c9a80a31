/** The symbols of a chart, alike in every host: their sizes in points, from 2 to 72 in Excel. */
import type { ChartSeries } from "../port";

/** Above this many cells symbols are small, so that the series of a logger looks like a line of dots. */
const MANY = 60;

/**
 * The size of the symbols of a series with a number of cells. In a small chart they are half as large: symbols of the usual size
 * cover the curve and its construction.
 */
export function markSize(symbol: ChartSeries["symbol"], cells: number, isSmall: boolean | undefined): number {
  const size = symbol === "cross" ? 8 : cells > MANY ? 3 : 6;
  return isSmall ? Math.max(2, Math.floor(size / 2)) : size;
}
