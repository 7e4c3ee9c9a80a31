/** Converts number formats between the spelling of Excel and that of the engine. */
import { DEFAULT_LOCALE, helpers } from "@odoo/o-spreadsheet";
import { LEVELS, partFor, THREE_FIGURES } from "../../look/number-format";

/**
 * Formats with conditions, which the engine does not know, and the format that the engine gets instead. Its spelling is
 * unique, so that the file gets the original format back. `shownBySize` then shows the number by the condition.
 */
const BY_SIZE: readonly { readonly excel: string; readonly engine: string }[] = [
  { excel: THREE_FIGURES, engine: "0.00e;-0.00e" },
  { excel: LEVELS.SI, engine: "0.0##;-0.0##" },
  { excel: LEVELS.US, engine: "0.0####;-0.0####" },
];

/** The format of the engine in which a number is shown, if the format of its cell follows the size of the number. */
export function shownBySize(engineFormat: string | undefined, value: unknown): string | undefined {
  if (typeof value !== "number" || !engineFormat?.includes(";")) return undefined;
  const kept = BY_SIZE.find(({ engine }) => engine === engineFormat);
  return kept && toEngineFormat(partFor(kept.excel, value));
}

/** An unsupported format would turn the cell into an error, so each format is tried before it is used. */
function isSupported(format: string): boolean {
  try {
    helpers.formatValue(0, { format, locale: DEFAULT_LOCALE });
    return true;
  } catch {
    return false;
  }
}

/**
 * From the spelling of Excel to that of the engine: "0.00E+00" is "0.00e", "General" is "". A format that the engine
 * lacks becomes "".
 */
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

/** From the spelling of the engine to that of Excel. */
export const toExcelFormat = (engine: string): string =>
  BY_SIZE.find((one) => one.engine === engine)?.excel ??
  engine
    .replace(/(?<=[0#.])e(?![a-z])/g, "E+00")
    .replace(/hhhh(?=:)/g, "[h]")
    .replace(/(?<=[sm]) a$/, " AM/PM");
