/** Blocks of cells that were selected together (with Ctrl), joined side by side. */
import { listed, say, type Value } from "../reduction/message";
import { firstOf, neighbours, nth } from "../reduction/numeric/lists";
import { WorkbookError, type Box, type CellValue } from "./port";

/** The addresses of the blocks of "B4:B18,D4:D18". */
export const blockAddresses = (address: string): string[] => address.split(",").map((part) => part.trim());

/** The blocks in order of their columns; refuses blocks in different rows, and overlapping blocks. */
export function sideBySide<T extends Box>(blocks: readonly T[]): T[] {
  const ordered = [...blocks].sort((a, b) => a.col - b.col);
  if (ordered.some(({ row, rows }) => row !== firstOf(ordered).row || rows !== firstOf(ordered).rows))
    throw new WorkbookError(
      say`The blocks picked together stand in different rows (${listed(ordered.map(rowsOf))}): pick blocks that begin and end in the same rows, or one block.`,
    );
  if (neighbours(ordered).some(([before, { col }]) => col < before.col + before.cols))
    throw new WorkbookError(say`Some cells were picked twice: pick each column once, holding Ctrl from the second on.`);
  return ordered;
}

const rowsOf = ({ row, rows }: Box): Value => (rows === 1 ? row + 1 : say`${row + 1} to ${row + rows}`);

/** The rows of several blocks as the rows of one block. */
export const joined = (blocks: readonly (readonly (readonly CellValue[])[])[]): CellValue[][] =>
  (blocks[0] ?? []).map((_, row) => blocks.flatMap((block) => nth(block, row)));
