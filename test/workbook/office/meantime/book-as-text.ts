/** The workbook of the stand-in as a text, to compare two ends of a piece of work. */
import type { StrictExcel } from "../../../excel/strict-excel";

/** Cells in the order of their places, whichever was written first. */
const inOrder = (list: readonly unknown[]): unknown[] =>
  [...list].sort((a, b) => (Array.isArray(a) && Array.isArray(b) ? Number(a[0]) - Number(b[0]) || 0 : 0));

const GENERAL = '{"numberFormat":"General"}';
/** A look that says no more than the general format. */
const isGeneral = (look: { readonly numberFormat?: unknown }): boolean =>
  look.numberFormat === "General" && JSON.stringify(look) === GENERAL;

/** A value as JSON can have it: maps and sets as lists, looks without those of the general format. (JSON.stringify with a function takes twice the time.) */
function plainOf(value: unknown, isInOrder: boolean, key = ""): unknown {
  if (typeof value !== "object" || value === null) return value;
  const plain = (one: unknown): unknown => plainOf(one, isInOrder);
  if (Array.isArray(value)) return value.map(plain);
  if (value instanceof Map || value instanceof Set) {
    const list = isInOrder ? inOrder([...value]) : [...value];
    return (key === "looks" ? list.filter((one) => !isGeneral((one as [number, object])[1])) : list).map(plain);
  }
  const made: Record<string, unknown> = {};
  for (const [name, held] of Object.entries(value)) made[name] = plainOf(held, isInOrder, name);
  return made;
}

/**
 * The workbook as text. Ids are numbered as they appear: they depend on what was made first. A cell of the general format
 * is a cell without a format. With `isInOrder` it does not matter which cell was written first, nor that General was written.
 */
export function seen(excel: StrictExcel, isInOrder = false): string {
  excel.settle();
  const text = JSON.stringify(plainOf(excel.book, isInOrder));
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
