/** Whether a sheet can be made from a plan: every port asks this before it makes one. */
import { say, verbatim, type Message } from "../../reduction/message";
import { cellAddress } from "../address";
import { faultOfText, LONGEST_FORMULA } from "../limits";
import { faultOfName, localName } from "./names";
import { WorkbookError, type CellPlan, type SheetPlan } from "../port";

const NAMED = /"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_][\w.]*)\}/g;

const faultOfFormula = (formula: string, names: SheetPlan["names"]): Message | undefined => {
  const absent = [...formula.matchAll(NAMED)].find(
    ([, name]) => name !== undefined && !Object.hasOwn(names, name),
  )?.[1];
  if (absent) return say`the formula ${verbatim(formula)} refers to {${verbatim(absent)}}, which has no cells`;
  const { length } = formula.replace(NAMED, (whole, name?: string) => (name === undefined ? whole : localName(name)));
  return length > LONGEST_FORMULA
    ? say`a formula has ${length} characters, and ${LONGEST_FORMULA} at most are taken`
    : undefined;
};

/** The most characters of a list of choices, with its commas (Microsoft, "Data validation": 255). */
const LONGEST_LIST = 255;

/** Excel reads a list of choices as one text, with a comma between two choices. */
function faultOfChoices(choices: readonly string[]): Message | undefined {
  const parted = choices.find((choice) => choice.includes(","));
  if (parted !== undefined) return say`its choice "${verbatim(parted)}" has a comma, at which Excel parts a list`;
  const { length } = choices.join();
  return length > LONGEST_LIST
    ? say`its choices have ${length} characters together, and ${LONGEST_LIST} at most are taken`
    : undefined;
}

function faultOfCell(
  { row, col, value, formula, choices = [] }: CellPlan,
  { rows, cols, names }: SheetPlan,
): Message | undefined {
  if (row >= rows || col >= cols) return say`it lies outside the sheet's ${rows} rows and ${cols} columns`;
  const fault = faultOfChoices(choices);
  if (fault) return fault;
  if (formula !== undefined) return faultOfFormula(formula, names);
  return faultOfText(value);
}

function faultOf(plan: SheetPlan): Message | undefined {
  const seen = new Set<string>();
  for (const name of Object.keys(plan.names)) {
    const fault = faultOfName(name);
    if (fault) return fault;
    if (seen.has(name.toLowerCase())) return say`the name "${verbatim(name)}" differs from another in capitals only`;
    seen.add(name.toLowerCase());
  }
  for (const cell of plan.cells) {
    const fault = faultOfCell(cell, plan);
    if (fault) return say`cell ${verbatim(cellAddress(cell.row, cell.col))}: ${fault}`;
  }
  return undefined;
}

/** Refuses a plan that Excel would refuse, before anything is changed. */
export function checkPlan(plan: SheetPlan): void {
  const fault = faultOf(plan);
  if (fault)
    throw new WorkbookError(
      say`The sheet "${verbatim(plan.name)}" could not be made and nothing was changed: ${fault}.`,
    );
}
