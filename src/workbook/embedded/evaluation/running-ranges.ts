/**
 * A range of one cell keeps what is fixed at both of its ends, as in a running sum =SUM(A$1:A1). The engine keeps the first end alone: it
 * makes A$1 of A$1:A1, so that every copy of the formula further down sums A1 alone.
 * Casts: the engine's types do not include the inner parts of its model, nor what is fixed in a range.
 */
import { Model } from "@odoo/o-spreadsheet";
import type { Part } from "./range-parts";

interface Range {
  /** What is fixed: once for a cell, or for both ends. A range that is no reference has none. */
  readonly parts: readonly Part[];
}

interface Ranges {
  getRangeFromSheetXC(sheetId: string, reference: string): Range;
  /** The ranges as a formula that is copied so many columns and rows further on reads them. */
  createAdaptedRanges(ranges: readonly Range[], columns: number, rows: number, sheetId: string): Range[];
}

interface Inside {
  readonly coreGetters: Ranges;
  setupCorePluginConfig(): unknown;
}

const TWO_CELLS = /(\$?)[a-z]+(\$?)\d+:(\$?)[a-z]+(\$?)\d+$/i;

/** What is fixed at each end of a reference, if it is not the same at both. */
function endsThatDiffer(reference: string): readonly Part[] | null {
  const [, column = "", row = "", lastColumn = "", lastRow = ""] = TWO_CELLS.exec(reference) ?? [];
  if (column === lastColumn && row === lastRow) return null;
  return [
    { colFixed: column !== "", rowFixed: row !== "" },
    { colFixed: lastColumn !== "", rowFixed: lastRow !== "" },
  ];
}

const inside = Model.prototype as unknown as Inside;
const { setupCorePluginConfig } = inside;
/** The engine calls this for each workbook before it reads the cells, when the functions that make ranges are there. */
inside.setupCorePluginConfig = function () {
  const { getRangeFromSheetXC, createAdaptedRanges } = this.coreGetters;
  Object.assign(this.coreGetters, {
    getRangeFromSheetXC(sheetId, reference) {
      const range = getRangeFromSheetXC(sheetId, reference);
      const ends = range.parts.length === 1 && reference.includes("$") && endsThatDiffer(reference);
      return ends ? { ...range, parts: ends } : range;
    },
    createAdaptedRanges(ranges, columns, rows, sheetId) {
      return createAdaptedRanges(ranges, columns, rows, sheetId).map((adapted, at) => {
        const parts = ranges[at]?.parts ?? [];
        return parts.length > adapted.parts.length ? { ...adapted, parts } : adapted;
      });
    },
  } satisfies Ranges);
  return setupCorePluginConfig.call(this);
};
