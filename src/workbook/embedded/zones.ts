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

/** Neighbouring zones in a column, or whole rows, joined to one zone. */
export function joinedZones(zones: readonly Zone[]): Zone[] {
  const found: Zone[] = [];
  for (const zone of [...zones].sort((a, b) => a.left - b.left || a.right - b.right || a.top - b.top)) {
    const last = found.at(-1);
    if (last && last.left === zone.left && last.right === zone.right && last.bottom === zone.top - 1)
      found.splice(-1, 1, { ...last, bottom: zone.bottom });
    else found.push(zone);
  }
  return found;
}
