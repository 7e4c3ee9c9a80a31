/** Decides whether cells may be written. Every port asks before it changes a cell. */
import { say, verbatim, type Message } from "../../reduction/message";
import { cellAddress, quoted } from "../address";
import { faultOfText, LONGEST_FORMULA } from "../limits";
import { LAST_COLUMN, LAST_ROW, localName } from "./names";
import { WorkbookError, type CellContent, type CellValue } from "../port";
import { referencesOf, withReferences, type Reference } from "../references";

/** The present state of a cell. */
export interface Standing {
  /** A formula as a person types it ("=..."), or a constant; "" is blank. */
  readonly content: CellValue;
  /** The value that it shows. */
  readonly shown: CellValue;
  /** True if its number format is text ("@"): a formula would stay a text there. */
  readonly isText: boolean;
}

export interface WriteCheck {
  readonly sheet: string;
  readonly cells: readonly CellContent[];
  /** True if cells that are not blank may be overwritten. */
  readonly replace: boolean;
  readonly standing: (cell: CellContent) => Standing;
  readonly hasName: (reference: Reference) => boolean;
}

const short = (content: CellValue): string => {
  const text = String(content);
  return text.length > 30 ? `${text.slice(0, 30)}...` : text;
};

/** The reason why the formula is too long for a cell; undefined if it is not. */
function faultOfLength(formula: string): Message | undefined {
  const { length } = withReferences(formula, ({ name, sheet }) =>
    sheet === undefined ? localName(name) : `${quoted(sheet)}!${localName(name)}`,
  );
  return length > LONGEST_FORMULA
    ? say`a formula has ${length} characters, and ${LONGEST_FORMULA} at most are taken`
    : undefined;
}

/** Faults that can be found without the workbook. */
function faultOfContent(cell: CellContent): Message | undefined {
  if (cell.row < 0 || cell.col < 0 || cell.row >= LAST_ROW || cell.col >= LAST_COLUMN)
    return say`no sheet has such a cell`;
  if ("formula" in cell)
    return cell.formula.startsWith("=") ? faultOfLength(cell.formula) : say`a formula begins with =`;
  return faultOfText(cell.value);
}

function faultOfCell(cell: CellContent, { sheet, replace, standing, hasName }: WriteCheck): Message | undefined {
  const { content, shown, isText } = standing(cell);
  if (cell.shown !== undefined && String(cell.shown) !== String(shown))
    return say`somebody else has changed it in the meantime, and it shows ${verbatim(short(shown))} by now`;
  if (content !== "" && !replace && !cell.replaces)
    return say`it holds ${verbatim(short(content))} already: say that it may be replaced, or clear it`;
  if (!("formula" in cell)) return undefined;
  if (isText) return say`it has the format of a text, in which a formula stays a text: give it the format General`;
  const absent = referencesOf(cell.formula).find((reference) => !hasName(reference));
  return (
    absent &&
    say`its formula refers to "${verbatim(absent.name)}", which has no cells on the sheet "${verbatim(absent.sheet ?? sheet)}"`
  );
}

/**
 * Throws if Excel would refuse a content, if a name has no cells, or if a cell is not blank and must not be replaced.
 */
export function checkWrite(check: WriteCheck): void {
  const { sheet, cells } = check;
  const seen = new Set<string>();
  for (const cell of cells) {
    const address = cellAddress(cell.row, cell.col);
    const fault =
      faultOfContent(cell) ?? (seen.has(address) ? say`it is to be written twice` : faultOfCell(cell, check));
    seen.add(address);
    if (fault)
      throw new WorkbookError(
        say`${verbatim(address)} of the sheet "${verbatim(sheet)}" could not be written, and nothing was changed: ${fault}.`,
      );
  }
}

/**
 * Groups cells of a column that stand below one another, from the top, so that they need few large writes instead of
 * one write per cell.
 */
export function columnRuns(cells: readonly CellContent[]): CellContent[][] {
  const sorted = [...cells].sort((a, b) => a.col - b.col || a.row - b.row);
  const runs: CellContent[][] = [];
  for (const cell of sorted) {
    const last = runs.at(-1)?.at(-1);
    if (last && last.col === cell.col && last.row + 1 === cell.row) runs.at(-1)?.push(cell);
    else runs.push([cell]);
  }
  return runs;
}
