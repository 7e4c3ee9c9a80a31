/** The entry rules of a plan as Excel's rules of data validation (ExcelApi 1.8). */
import { isoDay } from "../../day-number";
import { boundsOf, refusalOf, refusalOfChoice, type Refusal, type Bounds } from "../../rules/bounds";
import type { Box, EntryRule, SheetPlan } from "../../port";

type Operator = Excel.BasicDataValidation["operator"];

const OPERATORS: Readonly<Record<Bounds["operator"], Operator>> = {
  between: "Between",
  greaterThan: "GreaterThan",
  greaterThanOrEqual: "GreaterThanOrEqualTo",
};

/**
 * The day of a date cell in ISO 8601 ("1990-01-01"). @types/office-js says of DateTimeDataValidation.formula1: "passed
 * in as a Date, a Range object, or a string formula (where the string is either a stringified date/time in ISO8601
 * format, ...)". A day in ISO 8601 is read alike in every locale; a Date would carry the time zone of this computer,
 * and a day number is not in that list.
 */
const isoDate = isoDay;

function ruleOf(entry: EntryRule): Excel.DataValidationRule {
  const { operator, values } = boundsOf(entry);
  const [low, high] = values;
  const compared = OPERATORS[operator];
  return entry.kind === "date"
    ? {
        date: {
          formula1: isoDate(low),
          ...(high !== undefined && { formula2: isoDate(high) }),
          operator: compared,
        },
      }
    : { decimal: { formula1: low, ...(high !== undefined && { formula2: high }), operator: compared } };
}

/** A rule of Excel with its messages, for a box. */
export interface CellRule {
  readonly box: Box;
  readonly rule: Excel.DataValidationRule;
  readonly alert: Excel.DataValidationErrorAlert;
}

const alert = ({ title, message }: Refusal): Excel.DataValidationErrorAlert => ({
  showAlert: true,
  style: "Stop",
  title,
  message,
});

/** Neighbouring cells of a column with the same choices share a rule. */
function choiceRules({ cells, hostWords }: SheetPlan): CellRule[] {
  const rules: { box: Box; list: string; choices: readonly string[] }[] = [];
  const last = new Map<number, (typeof rules)[number]>();
  for (const { row, col, choices } of [...cells].sort((a, b) => a.row - b.row)) {
    if (!choices) continue;
    const list = choices.join(",");
    const above = last.get(col);
    const joins = above && above.list === list && above.box.row + above.box.rows === row;
    const next = joins
      ? Object.assign(above, { box: { ...above.box, rows: above.box.rows + 1 } })
      : { box: { row, col, rows: 1, cols: 1 }, list, choices };
    if (!joins) rules.push(next);
    last.set(col, next);
  }
  return rules.map(({ box, list, choices }) => ({
    box,
    rule: { list: { inCellDropDown: true, source: list } },
    alert: alert(refusalOfChoice(choices, hostWords)),
  }));
}

export const rulesOf = (plan: SheetPlan): CellRule[] => [
  ...choiceRules(plan),
  ...(plan.entries ?? []).map((entry) => ({
    box: entry.box,
    rule: ruleOf(entry),
    alert: alert(refusalOf(entry, plan.hostWords)),
  })),
];
