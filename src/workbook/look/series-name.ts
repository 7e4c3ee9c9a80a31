/** The most characters of the name of a series in Excel (@types/office-js, ChartSeries.name). */
const LONGEST = 255;

/**
 * The name of a series of a chart, made valid for Excel: cut to its length, and without "=" at its beginning, behind
 * which Excel expects the address of the cells that hold the name (from memory).
 */
export function seriesName(name: string): string {
  const text = name.replace(/^=+/, "");
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 3)}...` : text;
}
