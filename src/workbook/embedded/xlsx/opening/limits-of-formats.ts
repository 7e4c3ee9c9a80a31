/** Days that bound the conditional formats of a workbook that counts days from 1904. */
import { boxOf } from "../../../address";
import { all } from "../../../file/xml";
import type { Box } from "../../../port";
import type { Cells, FileStyle } from "../cells";

const NUMBER = /^\s*=?\s*\d+(?:\.\d+)?\s*$/;

const isWithin = (at: string, boxes: readonly Box[]): boolean => {
  const cell = boxOf(at);
  return boxes.some(
    ({ row, col, rows, cols }) =>
      cell && cell.row >= row && cell.row < row + rows && cell.col >= col && cell.col < col + cols,
  );
};

/**
 * Counts the limits from 1900 where a conditional format covers a cell that shows a day: the limits of a comparison with the cell,
 * and the numbers of a scale of colours or of symbols. Numbers inside other formulas stay, as those in cells do.
 */
export function patchLimits(
  document: Document,
  addedDays: number,
  { formats }: Pick<Cells, "formats">,
  styles: readonly FileStyle[],
): void {
  if (addedDays === 0) return;
  const ofDays = new Set(styles.filter(({ dayFrom }) => dayFrom !== undefined).map(({ format }) => format + 1));
  const days = Object.keys(formats).filter((at) => ofDays.has(formats[at] ?? 0));
  const moved = (text: string): string =>
    NUMBER.test(text) ? String(Number(text.replace("=", "")) + addedDays) : text;
  for (const format of all(document, "conditionalFormatting")) {
    const boxes = (format.getAttribute("sqref") ?? "").split(/\s+/).flatMap((part) => boxOf(part) ?? []);
    if (!days.some((at) => isWithin(at, boxes))) continue;
    for (const rule of all(format, "cfRule").filter((one) => one.getAttribute("type") === "cellIs"))
      for (const limit of all(rule, "formula")) limit.textContent = moved(limit.textContent);
    for (const step of all(format, "cfvo"))
      if (step.getAttribute("type") === "num") step.setAttribute("val", moved(step.getAttribute("val") ?? ""));
  }
}
