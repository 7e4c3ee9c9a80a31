/** What is missing. */
import { listed } from "../../reduction/message";
import * as sentences from "../../specification/sentences/of-head";
import { NEEDED_INPUTS } from "../../specification/head/missing";
import type { LoadRecord, TestRecord } from "../record";
import { type HeadSentence, isNumber, Cells } from "./cells";

/** The last load that has readings and no stress, if the load after it has no stress either. */
const withoutStress = (cells: Cells, { loads }: TestRecord): LoadRecord | undefined =>
  loads
    .filter(
      ({ number, row, readings }) =>
        cells.column("load_stress")[row - 1] === "" &&
        readings.some(({ reading }) => reading !== undefined) &&
        !loads.some((next) => next.number === number + 1 && (next.stress ?? 0) > 0),
    )
    .at(-1);

/** The list of what is missing, with its first cell. */
export function missing(cells: Cells, record: TestRecord): HeadSentence[] {
  const inputs = NEEDED_INPUTS.filter(([name]) => cells.cell(name) === "");
  const stresses = cells.column("load_stress");
  const lacksStresses = stresses.length > 0 && !stresses.some(isNumber);
  const bare = withoutStress(cells, record);
  const load = cells.cell("next_load");
  const items = [
    ...inputs.map(([name, words]) => sentences.inputMissing(words, cells.at(name))),
    ...(lacksStresses ? [sentences.stressesMissing(cells.at("load_stress"))] : []),
    ...(bare && !lacksStresses ? [sentences.stressMissing(bare.number, cells.at("load_stress", bare.row))] : []),
    ...(isNumber(load) ? [sentences.readingsMissing(load, cells.firstRow("times_01"))] : []),
  ];
  if (items.length === 0) return [];
  const first = inputs[0]?.[0] ?? (lacksStresses || bare ? "load_stress" : undefined);
  const row = inputs[0] || lacksStresses ? 1 : bare?.row;
  const sentence = sentences.missing(listed(items, "; "));
  return [{ kind: "missing", sentence, ...(first !== undefined && { address: cells.address(first, row) }) }];
}
