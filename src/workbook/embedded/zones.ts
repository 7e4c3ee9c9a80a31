/** Converts boxes of the port to zones of the engine, and back. */
import { helpers } from "@odoo/o-spreadsheet";
import type { Box } from "../port";

export interface Zone {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export const toZone = ({ row, col, rows, cols }: Box): Zone => ({
  left: col,
  right: col + cols - 1,
  top: row,
  bottom: row + rows - 1,
});

export const toBox = ({ left, right, top, bottom }: Zone): Box => ({
  row: top,
  col: left,
  rows: bottom - top + 1,
  cols: right - left + 1,
});

/** "B4:C18" */
export const addressOf = ({ left, right, top, bottom }: Zone): string => {
  const from = helpers.toXC(left, top);
  return left === right && top === bottom ? from : `${from}:${helpers.toXC(right, bottom)}`;
};
