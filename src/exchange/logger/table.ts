/** Lines of delimited text as cells. */
import { parse } from "papaparse";
import type { Delimiter } from "./layout";

/**
 * The cells of each line. Every line is a record of its own: a quotation mark that is never closed, as in 25.4", does
 * not take the rest of the file with it.
 */
export function cellsOf(lines: readonly string[], delimiter: Delimiter): string[][] {
  const read = parse<string[]>(lines.join("\n"), { delimiter, newline: "\n", skipEmptyLines: false });
  if (read.errors.length === 0 && read.data.length === lines.length) return read.data;
  return lines.map((line) => {
    const alone = parse<string[]>(line, { delimiter, newline: "\n" });
    const [cells] = alone.data;
    return alone.errors.length === 0 && alone.data.length === 1 && cells ? cells : line.split(delimiter);
  });
}
