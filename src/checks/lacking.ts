/**
 * Finds what a report must show but the sheet does not contain. Question Q63 and the pane use this same count. A cell
 * that shows an error counts as blank.
 */
import { cellNamed, type TestRecord } from "../record/record";
import { listed, say, type Message } from "../reduction/message";
import { REQUIRED_CELLS } from "../record/cell-rows";

/** A required item that the sheet does not contain. */
export interface Lacking {
  /** The names of its cells; one filled cell is enough. */
  readonly names: readonly [string, ...string[]];
  /** For a column of the load table: the loads without a value; empty if the sheet has no load at all. */
  readonly loads?: readonly number[];
}

/** True if a cell of the test contains something that a report can show. */
export const holds = ({ words, numbers, results, remarks }: TestRecord, name: string): boolean => {
  const parts: readonly Readonly<Record<string, unknown>>[] = [words, numbers, results, remarks];
  return parts.some((part) => part[name] !== undefined);
};

const holdsOfLoad = ({ stress, results }: TestRecord["loads"][number], name: string): boolean => {
  const shown: Readonly<Record<string, unknown>> = results;
  return name === "load_stress" ? stress !== undefined : shown[name] !== undefined;
};

/** True unless the sheet has no cells for what a report requires; such a sheet is not a complete data sheet. */
export const asksForReport = ({ missing }: TestRecord): boolean =>
  !(missing.includes("project") && missing.includes("report_number"));

/** The missing items in the order of the report, and the number of required items. */
export function requiredOf(record: TestRecord): { readonly lacking: readonly Lacking[]; readonly asked: number } {
  const lacking = REQUIRED_CELLS.flatMap((required): Lacking[] => {
    if (!("ofLoads" in required)) return required.some((name) => holds(record, name)) ? [] : [{ names: required }];
    const { ofLoads: name } = required;
    const without = record.loads.filter((load) => !holdsOfLoad(load, name)).map(({ number }) => number);
    return record.loads.length === 0 || without.length > 0 ? [{ names: [name], loads: without }] : [];
  });
  return { lacking, asked: REQUIRED_CELLS.length };
}

/** The item in words, such as "Ring number (ring_number)" or "Strain at the end (strain_end) of load 2, 3". */
export function lackingNamed({ names, loads = [] }: Lacking): Message {
  const cells = names.map((name) => say`${cellNamed(name)}`).reduce((all, one) => say`${all} or ${one}`);
  return loads.length > 0 ? say`${cells} of load ${listed(loads)}` : cells;
}
