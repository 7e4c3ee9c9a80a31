/** Finds the items that a report must show and a data sheet lacks, with their cells. */
import { inRuns, say, type Message } from "../../reduction/message";
import { filledIn, REQUIRED } from "../../specification/required";
import { isError } from "../../workbook/cell-error";
import { called, type DataCells, type ReportedLoad } from "../page/source";

/** An item that the report should show and cannot. */
export interface Missing {
  readonly item: number;
  /** True if a report without the item is unfinished; false if the item is needed only if it was measured. */
  readonly isRequired: boolean;
  /** What is missing, and the cell to fill. */
  readonly sentence: Message;
}

/** A cell that shows an error counts as empty. */
const isEmpty = (cells: DataCells, name: string, row = 0): boolean => {
  const value = cells.value(name, row);
  return value === "" || isError(value);
};

/** "load 3", "loads 1, 2, 5 to 9" */
const loadsNamed = (loads: readonly ReportedLoad[]): Message => {
  const numbers = inRuns(loads.map(({ number }) => number));
  return loads.length === 1 ? say`load ${numbers}` : say`loads ${numbers}`;
};

/** The cells in words, such as "Laboratory (laboratory), cell B6, or Sample id (sample_id), cell B8". */
function either(cells: DataCells, names: readonly string[]): Message {
  const ofSheet = names.filter((name) => cells.has(name));
  const [first = "", ...others] = ofSheet.length > 0 ? ofSheet : names;
  return others.reduce<Message>((sentence, name) => say`${sentence}, or ${called(cells, name)}`, toFill(cells, first));
}

/** A cell; of a result that follows from a mark, the cell of the mark as well. */
function toFill(cells: DataCells, name: string): Message {
  const mark = filledIn(name, (cell) => cells.has(cell));
  const result = called(cells, name);
  return mark === undefined ? result : say`${result}, by a mark: ${called(cells, mark)}, or a row below it`;
}

/** The missing ones of the nineteen items, in their order; `plots` are reasons why a plot could not be drawn. */
export function missingItems(
  cells: DataCells,
  loads: readonly ReportedLoad[],
  plots: readonly Message[] = [],
): Missing[] {
  const found: Missing[] = [];
  for (const { item, needs, whereMeasured = [], ofLoads = [], ofSomeLoads = [] } of REQUIRED) {
    const add = (isRequired: boolean, sentence: Message) => found.push({ item, isRequired, sentence });
    for (const need of needs) {
      const choices = typeof need === "string" ? [need] : need;
      if (choices.every((name) => isEmpty(cells, name))) add(true, either(cells, choices));
    }
    const asked = new Set<string>();
    for (const need of whereMeasured) {
      const choices = typeof need === "string" ? [need] : need;
      const name = choices.find((choice) => cells.has(choice)) ?? choices[0];
      if (name === undefined || asked.has(name) || choices.some((choice) => !isEmpty(cells, choice))) continue;
      asked.add(name);
      add(false, say`${called(cells, name)}: only where it was measured or is known`);
    }
    if (item === 12 && loads.length === 0) add(true, say`loads: ${called(cells, "load_stress")}, holds none`);
    for (const name of [...ofLoads, ...ofSomeLoads]) {
      const without = loads.filter(({ row }) => isEmpty(cells, name, row));
      if (without.length === 0) continue;
      const cell = called(cells, name, without.length === 1 ? without[0]?.row : undefined);
      const why = ofSomeLoads.includes(name) ? WHY[name] : undefined;
      const of = say`${cell}, of ${loadsNamed(without)}`;
      add(!why, why ? say`${of}: ${why}` : of);
    }
    if (item === 11) {
      const untimed = loads.filter(({ readings }) => readings === 0);
      if (untimed.length)
        add(true, say`duration of ${loadsNamed(untimed)}: no readings were entered, so that none can be given`);
    }
    if (item === 15) for (const reason of plots) add(true, reason);
  }
  return found;
}

const WHY: Readonly<Record<string, Message>> = {
  volume_compressibility: say`wetting, or the specimen moved against the load; the remark on the load says which`,
  cv_chosen: say`nothing consolidated, or the construction chosen gave none; the remark on the load says why`,
  c_alpha: say`nothing consolidated, or no straight tail; the remark on the load says why`,
  load_temperature: say`no temperature was entered`,
};
