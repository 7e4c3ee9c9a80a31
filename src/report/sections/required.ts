/** Finds the items that a report must show and a data sheet lacks, with their cells. */
import { REQUIRED } from "../../specification/required";
import { called, type DataCells, type ReportedLoad } from "../page/source";

/** An item that the report should show and cannot. */
export interface Missing {
  readonly item: number;
  /** True if a report without the item is unfinished; false if the item is needed only if it was measured. */
  readonly isRequired: boolean;
  /** What is missing, and the cell to fill. */
  readonly sentence: string;
}

/** A cell that shows an error counts as empty. */
const isEmpty = (cells: DataCells, name: string, row = 0): boolean => {
  const value = cells.value(name, row);
  return value === "" || (typeof value === "string" && /^#[A-Z][A-Z0-9_/]*[!?]?$/i.test(value));
};

const loadsNamed = (loads: readonly ReportedLoad[]): string =>
  `${loads.length === 1 ? "load" : "loads"} ${loads.map(({ number }) => number).join(", ")}`;

/** The missing ones of the nineteen items, in their order; `plots` are reasons why a plot could not be drawn. */
export function missingItems(
  cells: DataCells,
  loads: readonly ReportedLoad[],
  plots: readonly string[] = [],
): Missing[] {
  const found: Missing[] = [];
  for (const { item, needs, whereMeasured = [], ofLoads = [], ofSomeLoads = [] } of REQUIRED) {
    const add = (isRequired: boolean, sentence: string) => found.push({ item, isRequired, sentence });
    for (const need of needs) {
      const choices = typeof need === "string" ? [need] : need;
      if (choices.every((name) => isEmpty(cells, name)))
        add(true, choices.map((name) => called(cells, name)).join(", or "));
    }
    for (const name of whereMeasured)
      if (isEmpty(cells, name)) add(false, `${called(cells, name)}: only where it was measured or is known`);
    if (item === 12 && loads.length === 0) add(true, `loads: ${called(cells, "load_stress")}, holds none`);
    for (const name of [...ofLoads, ...ofSomeLoads]) {
      const without = loads.filter(({ row }) => isEmpty(cells, name, row));
      if (without.length === 0) continue;
      const cell = called(cells, name, without.length === 1 ? without[0].row : undefined);
      const optional = ofSomeLoads.includes(name);
      const why = optional ? `: ${WHY[name]}` : "";
      add(!optional, `${cell}, of ${loadsNamed(without)}${why}`);
    }
    if (item === 11) {
      const untimed = loads.filter(({ readings }) => readings === 0);
      if (untimed.length)
        add(true, `duration of ${loadsNamed(untimed)}: no readings were entered, so that none can be given`);
    }
    if (item === 15) for (const reason of plots) add(true, reason);
  }
  return found;
}

const WHY: Readonly<Record<string, string>> = {
  volume_compressibility: "wetting, or the specimen moved against the load; the remark on the load says which",
  cv_chosen: "nothing consolidated, or the construction chosen gave none; the remark on the load says why",
  c_alpha: "nothing consolidated, or no straight tail; the remark on the load says why",
  load_temperature: "no temperature was entered",
};
