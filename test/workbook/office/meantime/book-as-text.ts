/** The workbook of the stand-in as a text, to compare two ends of a piece of work. */
import type { StrictExcel } from "../../../excel/strict-excel";

const GENERAL = '{"numberFormat":"General"}';

/** Cells in the order of their places, whichever was written first. */
const inOrder = (list: readonly unknown[]): unknown[] =>
  [...list].sort((a, b) => (Array.isArray(a) && Array.isArray(b) ? Number(a[0]) - Number(b[0]) || 0 : 0));

/**
 * The workbook as text. Ids are numbered as they appear: they depend on what was made first. A cell of the general format
 * is a cell without a format. With `isInOrder` it does not matter which cell was written first, nor that General was written.
 */
export function seen(excel: StrictExcel, isInOrder = false): string {
  const text = JSON.stringify(excel.picture(), (key, value) => {
    const list = value instanceof Map || value instanceof Set ? (isInOrder ? inOrder([...value]) : [...value]) : value;
    return key === "looks" ? list.filter(([, look]: [number, object]) => JSON.stringify(look) !== GENERAL) : list;
  });
  const ids = new Map<string, number>();
  const plain = isInOrder ? text.replaceAll(',"numberFormat":"General"', "") : text;
  return plain.replace(/\{\w+-\d+\}/g, (id) => {
    if (!ids.has(id)) ids.set(id, ids.size);
    return `{${ids.get(id)}}`;
  });
}

/** The workbook as text without the notes on unfinished work. */
export function withoutNotes(excel: StrictExcel): string {
  const { settings } = excel.book;
  const kept = [...settings];
  settings.clear();
  const text = seen(excel);
  for (const [key, value] of kept) settings.set(key, value);
  return text;
}
