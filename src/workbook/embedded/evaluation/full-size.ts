/**
 * The size of a range in Excel, where a sheet has 1,048,576 rows and 16,384 columns. The sheet on this page has fewer, and the engine gives a
 * function only those cells of A:A, 1:1 or A1:A2000 that the sheet has.
 */
import { LAST_COLUMN, LAST_ROW } from "../../rules/names";
import type { Argument } from "./held";

interface Read {
  readonly zone: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
  /** Without its last row for whole columns, without its last column for whole rows. */
  readonly unboundedZone?: { readonly right?: number; readonly bottom?: number };
}

export interface Size {
  readonly rows: number;
  readonly columns: number;
}

const sizes = new WeakMap<object, Size>();

function sizeIn({ zone, unboundedZone = zone }: Read): Size {
  const { right = LAST_COLUMN - 1, bottom = LAST_ROW - 1 } = unboundedZone;
  return { rows: bottom - zone.top + 1, columns: right - zone.left + 1 };
}

/** The cells of a range; a list of their own keeps the size of the range, if the sheet of this page has only some of its cells. */
export function withSize<T>(columns: T[][], range: Read): T[][] {
  const { rows, columns: width } = sizeIn(range);
  if (columns.length === width && columns[0]?.length === rows) return columns;
  const own = [...columns];
  sizes.set(own, { rows, columns: width });
  return own;
}

/** The size of an argument in Excel; undefined if the sheet of this page has all its cells. */
export const fullSize = (given: Argument): Size | undefined =>
  typeof given === "object" && given !== null ? sizes.get(given) : undefined;
