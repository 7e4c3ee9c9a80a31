/** Whether a sheet can be made from a plan: every port asks this before it makes one. */
import { cellAddress } from "./address";
import { LONGEST_FORMULA, LONGEST_TEXT } from "./limits";
import { faultOfName } from "./names";
import { WorkbookError, type CellPlan, type SheetPlan } from "./port";

const NAMED = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_][\w.]*)\}/g;

const faultOfFormula = (formula: string, names: SheetPlan["names"]): string | undefined => {
  const absent = [...formula.matchAll(NAMED)].find(
    ([, name]) => name !== undefined && !Object.hasOwn(names, name),
  )?.[1];
  if (absent) return `the formula ${formula} refers to {${absent}}, which has no cells`;
  const { length } = formula.replace(NAMED, (whole, name?: string) => name ?? whole);
  return length > LONGEST_FORMULA
    ? `a formula has ${length} characters, and ${LONGEST_FORMULA} at most are taken`
    : undefined;
};

function faultOfCell({ row, col, value, formula }: CellPlan, { rows, cols, names }: SheetPlan): string | undefined {
  if (row >= rows || col >= cols) return `it lies outside the sheet's ${rows} rows and ${cols} columns`;
  if (formula !== undefined) return faultOfFormula(formula, names);
  return typeof value === "string" && value.length > LONGEST_TEXT
    ? `its text has ${value.length} characters, and ${LONGEST_TEXT} at most are taken`
    : undefined;
}

function faultOf(plan: SheetPlan): string | undefined {
  const seen = new Set<string>();
  for (const name of Object.keys(plan.names)) {
    const fault = faultOfName(name);
    if (fault) return fault;
    if (seen.has(name.toLowerCase())) return `the name "${name}" differs from another in capitals only`;
    seen.add(name.toLowerCase());
  }
  for (const cell of plan.cells) {
    const fault = faultOfCell(cell, plan);
    if (fault) return `cell ${cellAddress(cell.row, cell.col)}: ${fault}`;
  }
  return undefined;
}

/** Refuses a plan that Excel would refuse, before anything is changed. */
export function checkPlan(plan: SheetPlan): void {
  const fault = faultOf(plan);
  if (fault) throw new WorkbookError(`The sheet "${plan.name}" could not be made and nothing was changed: ${fault}.`);
}
