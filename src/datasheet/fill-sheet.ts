/** Writes values into the inputs of a sheet that is laid out. */
import type { CellPlan, CellValue, SheetPlan } from "../workbook/port";

/** Values by name: one value for a cell, a list for a range, which is filled from its top. */
export type SheetValues = Readonly<Record<string, CellValue | readonly (CellValue | undefined)[]>>;

/**
 * Writes values into the inputs of the plan. Throws for a name that the plan does not have, or for a cell that contains
 * a formula.
 */
export function fillSheet(plan: SheetPlan, values: SheetValues): SheetPlan {
  const typed = new Map<string, { readonly row: number; readonly col: number; readonly value: CellValue }>();
  const key = (row: number, col: number) => `${row} ${col}`;
  for (const [name, value] of Object.entries(values)) {
    const box = plan.names[name];
    if (!box) throw new Error(`the sheet has no name "${name}"`);
    const list = Array.isArray(value) ? value : [value];
    if (list.length > box.rows) throw new Error(`"${name}" has ${box.rows} rows and was given ${list.length} values`);
    list.forEach((item, index) => {
      const [row, col] = [box.row + index, box.col];
      if (item !== undefined) typed.set(key(row, col), { row, col, value: item });
    });
  }
  const cells = plan.cells.map((cell) => {
    const entered = typed.get(key(cell.row, cell.col));
    if (entered === undefined) return cell;
    if (cell.formula) throw new Error(`row ${cell.row}, column ${cell.col} holds a formula and takes no value`);
    typed.delete(key(cell.row, cell.col));
    return { ...cell, value: entered.value };
  });
  const beyond = [...typed.values()].map((one): CellPlan => ({ ...one, kind: "input" }));
  return { ...plan, cells: [...cells, ...beyond] };
}
