/** Number formats between Excel's spelling and the engine's. */
import { DEFAULT_LOCALE, helpers } from "@odoo/o-spreadsheet";
import { partFor, THREE_FIGURES } from "../number-format";

/**
 * Formats with conditions, which the engine does not know, and what it keeps in their place: a spelling that nothing else has,
 * so that the format goes back into a file as it came. `shownBySize` then shows the number as the condition wants it.
 */
const BY_SIZE: readonly { readonly excel: string; readonly engine: string }[] = [
  { excel: THREE_FIGURES, engine: "0.00e;-0.00e" },
];

/** The engine's format in which a number is to be shown, where its cell has a format that follows the number's size. */
export function shownBySize(engineFormat: string | undefined, value: unknown): string | undefined {
  if (typeof value !== "number" || !engineFormat?.includes(";")) return undefined;
  const kept = BY_SIZE.find(({ engine }) => engine === engineFormat);
  return kept && toEngineFormat(partFor(kept.excel, value));
}

/** An unsupported format would turn the whole cell into an error, so each is tried before it is used. */
function isSupported(format: string): boolean {
  try {
    helpers.formatValue(0, { format, locale: DEFAULT_LOCALE });
    return true;
  } catch {
    return false;
  }
}

/** Excel's spelling to the engine's: "0.00E+00" is "0.00e", "General" is "". A format that the engine lacks is left out (""). */
export function toEngineFormat(excel: string): string {
  if (excel === "General") return "";
  const bySize = BY_SIZE.find((one) => one.excel === excel);
  if (bySize) return bySize.engine;
  const format = excel
    .replace(/E[+-]0+/g, "e")
    .replace(/\[h+\](?=:)/gi, "hhhh")
    .replace(/(?<!h)h(?=:)/g, "hh")
    .replace(/AM\/PM/gi, "a")
    .replace(/\[(?:black|blue|cyan|green|magenta|red|white|yellow|color ?\d+)\]/gi, "")
    .replace(/[_*]./g, "");
  return isSupported(format) ? format : "";
}

/** The engine's spelling to Excel's. */
export const toExcelFormat = (engine: string): string =>
  BY_SIZE.find((one) => one.engine === engine)?.excel ??
  engine
    .replace(/(?<=[0#.])e(?![a-z])/g, "E+00")
    .replace(/hhhh(?=:)/g, "[h]")
    .replace(/(?<=[sm]) a$/, " AM/PM");
