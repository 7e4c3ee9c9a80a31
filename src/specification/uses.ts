/** Lists the results that the sheet calculates from each of its names, and so loses if the name is lost. */
import { isTable, type Column } from "./field";
import { loadSuffix, MOST_LOADS } from "./readings";
import { ALL_PARTS } from "./parts";

interface Worked {
  readonly name: string;
  readonly label: string;
  readonly needs: readonly string[];
}

const ALL_LOADS = Array.from({ length: MOST_LOADS }, (_, index) => loadSuffix(index + 1));

/** The names in a formula; `{times_#}` stands for the times of every load. */
function needsOf({ formula = "", start = "", byRow = [] }: Pick<Column, "formula" | "start" | "byRow">): string[] {
  const ofRows = byRow.map((row) => row.formula ?? "").join("");
  const names = [...`${formula}${start}${ofRows}`.matchAll(/\{([\w#]+)\}|\[\^?(\w+)\]/g)].flatMap(
    ([, name, own]) => name ?? own ?? [],
  );
  return [
    ...new Set(names.flatMap((name) => (name.includes("#") ? ALL_LOADS.map((load) => name.replace("#", load)) : name))),
  ];
}

/** A spilled column depends on the nearest column to its left that has a formula of its own. */
function columns(list: readonly Column[]): Worked[] {
  let spilling = "";
  return list.map((column) => {
    if (!column.spilled) spilling = column.name;
    return { ...column, needs: column.spilled ? [spilling] : needsOf(column) };
  });
}

const WORKED: readonly Worked[] = ALL_PARTS.flatMap((part) =>
  isTable(part) ? columns(part.columns) : [{ ...part, needs: needsOf(part) }],
);

/** A result that is calculated from a name. */
export interface Use {
  readonly name: string;
  readonly label: string;
}

function findUses(name: string): readonly Use[] {
  const reached = new Set([name]);
  for (let before = 0; before < reached.size;) {
    before = reached.size;
    for (const { name: own, needs } of WORKED) if (needs.some((need) => reached.has(need))) reached.add(own);
  }
  reached.delete(name);
  return WORKED.filter((one) => reached.has(one.name)).map((one) => ({ name: one.name, label: one.label.trim() }));
}

const found = new Map<string, readonly Use[]>();

/**
 * All results that the sheet calculates from a name, directly or through other results, in the order of the sheet. They
 * are found once: a check of the sheet asks for every name that it lacks.
 */
export function resultsFrom(name: string): readonly Use[] {
  const uses = found.get(name) ?? findUses(name);
  found.set(name, uses);
  return uses;
}
