/**
 * INDEX of a range of one row with a single number: Office takes the number as that of the column ([MS-OI29500]
 * 2.1.973, on part 1, section 18.17.7.166); the engine would look for that row and give an error.
 * Casts: the engine's type of a computation does not tell the arguments of one function.
 */
import { registries } from "@odoo/o-spreadsheet";

interface Held {
  readonly value: unknown;
}

type Index = (this: unknown, range: Held | readonly Held[][], row?: Held, column?: Held) => unknown;

const { functionRegistry } = registries;
const index = functionRegistry.get("INDEX");
const compute = index.compute as Index;

// The engine's ranges are columns of cells.
const liesInOneRow = (range: Parameters<Index>[0]): boolean =>
  Array.isArray(range) && range.length > 1 && range.every((column: readonly Held[]) => column.length === 1);

const corrected: Index = function (range, row, column) {
  return column === undefined && liesInOneRow(range)
    ? compute.call(this, range, { value: 0 }, row)
    : compute.call(this, range, row, column);
};

functionRegistry.replace("INDEX", { ...index, compute: corrected as typeof index.compute });
