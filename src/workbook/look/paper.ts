/** The width of cells, and portrait or landscape for their pages. */
import type { Box, SheetPlan } from "../port";

const DEFAULT_WIDTH = 8.43;

/** The width of a box in characters of the default font. */
export const charactersAcross = ({ col, cols }: Box, widths: SheetPlan["columnWidths"]): number =>
  Array.from({ length: cols }, (_, index) => widths[col + index] ?? DEFAULT_WIDTH).reduce(
    (sum, width) => sum + width,
    0,
  );

/** Pages wider than this many characters are in landscape. */
const UPRIGHT = 100;

export const isLandscape = (pages: readonly Box[], widths: SheetPlan["columnWidths"]): boolean =>
  pages.some((page) => charactersAcross(page, widths) > UPRIGHT);
