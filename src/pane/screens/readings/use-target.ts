/** Reads the data sheet for the readings, and the layouts of files that were imported before. */
import { useMemo } from "react";
import { readBeforeFrom } from "../../../exchange/logger/again";
import { KEPT_NAMES, LAYOUT_NAMES, layoutFrom, linesKept } from "../../../exchange/logger/file-sheet";
import { targetOf, type Target } from "../../../exchange/logger/target";
import { loadsThatShareTimes } from "../../../record/places";
import type { Looked } from "../../../workbook/port";
import { useTest } from "../../live/use-test";
import type { Want } from "../../live/want";
import type { NamedValues } from "../../../record/record";
import type { KeptFile } from "./again-state";
import type { Remembered } from "./layout-choices";

const WANT: Want = { beside: [{ mark: LAYOUT_NAMES[0], names: [...LAYOUT_NAMES, ...KEPT_NAMES] }] };

export interface DataSheet {
  /** The id of the current test. */
  readonly id: string;
  readonly sheet: string;
  readonly target: Target;
  /** The values of its names. */
  readonly values: NamedValues;
  /** The loads whose times stand in cells that other loads share. */
  readonly sharing: readonly number[];
}

export interface Targets {
  /** True if the workbook has a data sheet; undefined until it has answered. */
  readonly isThere?: boolean;
  /** The current test; undefined until it was read. */
  readonly dataSheet?: DataSheet;
  /** The layouts of files that were imported before: the latest one for each apparatus. */
  readonly remembered: readonly Remembered[];
  /** Sheets that keep the lines of a file that was read before, in the order of the workbook. */
  readonly kept: readonly KeptFile[];
  readonly error?: string;
  readonly again: () => Promise<void>;
}

const said = (cells: Looked["values"][string] | undefined): string => String(cells?.[0]?.[0] ?? "").trim();

function rememberedIn(sheets: readonly Looked[]): Remembered[] {
  const found = new Map<string, Remembered>();
  for (const { values } of sheets) {
    const [apparatus, layout] = [said(values.logger_apparatus), layoutFrom(said(values.logger_layout))];
    if (apparatus && layout) found.set(apparatus, { apparatus, layout });
  }
  return [...found.values()];
}

function keptIn(sheets: readonly Looked[]): KeptFile[] {
  return sheets.flatMap(({ sheet, values }): KeptFile[] => {
    const [layout, read] = [layoutFrom(said(values.logger_layout)), readBeforeFrom(said(values.logger_read))];
    const lines = linesKept(said(values.logger_kept));
    if (!layout || !read || lines === undefined) return [];
    return [{ sheet, file: said(values.logger_file), dataSheet: said(values.logger_for), lines, layout, read }];
  });
}

export function useTarget(): Targets {
  const { tests, reading, error, again } = useTest(WANT);
  const remembered = useMemo(() => rememberedIn(reading?.beside ?? []), [reading?.beside]);
  const kept = useMemo(() => keptIn(reading?.beside ?? []), [reading?.beside]);
  const dataSheet = useMemo(
    () =>
      reading && {
        ...{ id: reading.id, sheet: reading.sheet, target: targetOf(reading.values), values: reading.values },
        sharing: loadsThatShareTimes(reading.names),
      },
    [reading],
  );
  return { isThere: tests && tests.length > 0, dataSheet, remembered, kept, error, again };
}
