/** The workbook of the stand-in as a text, to compare two ends of a piece of work. */
import type { StrictExcel } from "../../excel/strict-excel";

const GENERAL = '{"numberFormat":"General"}';

/**
 * The workbook as text. Ids are numbered as they appear: they depend on what was made first. A cell of the general format
 * is a cell without a format.
 */
export function seen(excel: StrictExcel): string {
  const text = JSON.stringify(excel.picture(), (key, value) => {
    const list = value instanceof Map || value instanceof Set ? [...value] : value;
    return key === "looks" ? list.filter(([, look]: [number, object]) => JSON.stringify(look) !== GENERAL) : list;
  });
  const ids = new Map<string, number>();
  return text.replace(/\{\w+-\d+\}/g, (id) => {
    if (!ids.has(id)) ids.set(id, ids.size);
    return `{${ids.get(id)}}`;
  });
}
