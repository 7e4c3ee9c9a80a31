/** Names of sheets and of the workbook: valid names, and the cells they lead to. */
import { invalidArgument, Refusal } from "../refusal";
import { addressOf, boxOf, columnOf, quoted, unquoted, COLS, ROWS, type Box } from "./address";
import { same, sheetById, sheetByName, type Book, type NameOf, type Refers } from "./book";

function looksLikeCell(name: string): boolean {
  if (/^(r\d*)?(c\d*)?$/i.test(name)) return true;
  const [, letters, digits] = /^([a-z]{1,3})(\d+)$/i.exec(name) ?? [];
  return Boolean(letters) && columnOf(letters) < COLS && Number(digits) >= 1 && Number(digits) <= ROWS;
}

/**
 * Letters, digits, "_", "." and "?", first a letter, "_" or "\"; at most 255; no cell's address; not TRUE or FALSE; and
 * none that begins with "_xl", which Excel keeps for itself (MS-OI29500, 2.1.568).
 */
export function checkName(name: string): void {
  const isWord = /^[\p{L}_\\][\p{L}\p{N}_.?\\]*$/u.test(name) && name.length <= 255;
  if (!isWord || looksLikeCell(name) || /^(true|false)$|^_xl/i.test(name))
    throw invalidArgument(`The syntax of the name "${name}" isn't correct.`);
}

export function checkFree(names: readonly NameOf[], name: string): void {
  if (names.some((one) => same(one.name, name)))
    throw new Refusal("ItemAlreadyExists", `There is a name "${name}" already.`);
}

const REFERENCE =
  /^(?:('(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}|\$?\d+:\$?\d+)$/iu;

/** Splits at commas outside quotes and brackets. */
export const parts = (text: string): string[] =>
  text.match(/(?:'(?:[^']|'')*'|"(?:[^"]|"")*"|\([^()]*\)|[^,'"])+/g) ?? [];

/** The target of the formula of a name ("=Sheet1!$A$1", "=5"). */
export function refersTo(book: Book, formula: string, home?: string): Refers {
  const text = formula.replace(/^=/, "");
  if (/#REF!/.test(text)) return { kind: "lost" };
  const areas: { sheet: string; box: Box }[] = [];
  for (const part of parts(text)) {
    const [, named, address] = REFERENCE.exec(part.trim()) ?? [];
    const box = address ? boxOf(address) : undefined;
    const sheet = named ? sheetByName(book, unquoted(named)) : sheetById(book, home ?? book.active);
    if (!box) return { kind: "formula", formula: `=${text}` };
    if (!sheet) throw invalidArgument(`The formula ${formula} leads to a sheet that isn't there.`);
    areas.push({ sheet: sheet.id, box });
  }
  return { kind: "cells", areas };
}

/** The formula of a name as Excel returns it: "=Sheet1!$A$1:$B$2". */
export function formulaOf(
  book: Book,
  { refers }: NameOf,
  write: (box: Box) => string = (box) => addressOf(box, "$"),
): string {
  if (refers.kind === "lost") return "=#REF!";
  if (refers.kind === "formula") return refers.formula;
  return `=${refers.areas
    .map(({ sheet, box }) => {
      const owner = sheetById(book, sheet);
      return owner ? `${quoted(owner.name)}!${write(box)}` : "#REF!";
    })
    .join(",")}`;
}

/** The type of a name in Excel: "Range", "Error", "Double", "String", "Boolean" or "Array". */
export function typeOf(book: Book, name: NameOf): string {
  const { refers } = name;
  if (refers.kind === "lost") return "Error";
  if (refers.kind === "cells") return refers.areas.every(({ sheet }) => sheetById(book, sheet)) ? "Range" : "Error";
  const text = refers.formula.slice(1);
  if (/^"/.test(text)) return "String";
  if (/^(true|false)$/i.test(text)) return "Boolean";
  if (/^\{/.test(text)) return "Array";
  return /^[+-]?\d+$/.test(text) ? "Integer" : "Double";
}

/** Names that led to cells of a deleted sheet lead nowhere afterwards. */
export function loseSheet(book: Book, id: string): void {
  for (const name of [...book.names, ...book.sheets.flatMap(({ names }) => names)])
    if (name.refers.kind === "cells" && name.refers.areas.some(({ sheet }) => sheet === id))
      name.refers = { kind: "lost" };
}
