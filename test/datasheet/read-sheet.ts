/** The values of a calculated sheet by name, as `readNames` of a port gives them. */
import type { NamedValues } from "../../src/record/record";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { calculate } from "./sheet-in-engine";

export async function namedValues(plan: SheetPlan): Promise<Record<string, CellValue[][]>> {
  const sheet = await calculate(plan);
  return Object.fromEntries(
    Object.entries(plan.names).map(([name, { rows }]) => [
      name,
      Array.from({ length: rows }, (_, row) => [sheet.value(name, row)]),
    ]),
  );
}

/** The values with some replaced: a value for one cell, a list for a column from its top. */
export function withValues(
  values: NamedValues,
  changes: Record<string, CellValue | readonly CellValue[]>,
): NamedValues {
  const changed: Record<string, readonly (readonly CellValue[])[]> = { ...values };
  for (const [name, value] of Object.entries(changes)) {
    const list: readonly CellValue[] = Array.isArray(value) ? value : [value as CellValue];
    const rest = (values[name] ?? []).slice(list.length);
    changed[name] = [...list.map((cell) => [cell]), ...rest];
  }
  return changed;
}

/** The values without some names. */
export const withoutNames = (values: NamedValues, ...names: string[]): NamedValues =>
  Object.fromEntries(Object.entries(values).filter(([name]) => !names.includes(name)));
