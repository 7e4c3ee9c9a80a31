/** The data sheets of the workbook and what the chosen one holds, followed as cells change. */
import { FILE_SHEET_PREFIX, LAYOUT_NAMES, layoutFrom } from "../../../exchange/logger/file-sheet";
import { DATA_SHEET_NAME } from "../../../specification/load-table";
import { TARGET_NAMES, targetOf, type Target } from "../../../exchange/logger/target";
import type { SheetValues, WorkbookPort } from "../../../workbook/port";
import type { Remembered } from "./layout-choices";
import { chosenOf, useChosenSheet } from "../../live/use-chosen-sheet";

export interface DataSheets {
  /** undefined until the workbook has answered. */
  readonly names?: readonly string[];
  readonly chosen?: string;
  readonly target?: Target;
  /** Layouts of files that were brought in before, one for each apparatus, the latest. */
  readonly remembered: readonly Remembered[];
  readonly error?: string;
}

function rememberedIn(sheets: readonly SheetValues[]): Remembered[] {
  const found = new Map<string, Remembered>();
  for (const { sheet, values } of sheets) {
    if (!sheet.startsWith(FILE_SHEET_PREFIX)) continue;
    const [apparatus, kept] = LAYOUT_NAMES.map((name) => String(values[name]?.[0]?.[0] ?? "").trim());
    const layout = layoutFrom(kept);
    if (apparatus && layout) found.set(apparatus, { apparatus, layout });
  }
  return [...found.values()];
}

async function look(port: WorkbookPort, wanted: string | undefined): Promise<DataSheets> {
  const all = await port.readSheets([DATA_SHEET_NAME, ...LAYOUT_NAMES]);
  const found = all.filter(({ values }) => values[DATA_SHEET_NAME]);
  const names = found.map(({ sheet }) => sheet);
  const chosen = chosenOf(found, wanted);
  const target = chosen === undefined ? undefined : targetOf(await port.readNames(chosen, TARGET_NAMES));
  return { names, chosen, target, remembered: rememberedIn(all) };
}

const NOTHING_READ: DataSheets = { remembered: [] };
const sheetOf = ({ chosen }: DataSheets): string | undefined => chosen;

/** `still` keeps the picture as it is, while the pane itself writes. */
export const useDataSheets = (
  port: WorkbookPort,
  still: boolean,
): DataSheets & { readonly choose: (sheet: string) => void; readonly again: () => void } =>
  useChosenSheet({ port, start: NOTHING_READ, read: look, sheetOf, still });
