/** Number formats between Excel's spelling and the engine's. */
import { DEFAULT_LOCALE, helpers } from "@odoo/o-spreadsheet";

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
  engine
    .replace(/(?<=[0#.])e(?![a-z])/g, "E+00")
    .replace(/hhhh(?=:)/g, "[h]")
    .replace(/(?<=[sm]) a$/, " AM/PM");
