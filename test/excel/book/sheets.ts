/** Adds, renames, moves and deletes sheets, by the rules of Excel. */
import { accessDenied, invalidArgument, Refusal } from "../refusal";
import { newSheet, same, sheetByName, type Book, type Sheet } from "./book";
import { loseSheet } from "./names";

/** The most characters of a sheet name (Excel specifications and limits). */
const LONGEST_NAME = 31;

export function checkSheetName(book: Book, name: string, itself?: Sheet): void {
  if (name === "" || name.length > LONGEST_NAME)
    throw invalidArgument(`A sheet's name has 1 to ${LONGEST_NAME} characters, not ${name.length}.`);
  if (/[[\]:*?/\\]/.test(name) || /^'|'$/.test(name) || same(name, "History"))
    throw invalidArgument(`A sheet cannot be called "${name}".`);
  const other = sheetByName(book, name);
  if (other && other !== itself)
    throw new Refusal("ItemAlreadyExists", "A resource with the same name or identifier already exists.");
}

export function structureMustBeOpen(book: Book): void {
  if (book.structure.on) throw accessDenied("The structure of the workbook is protected.");
}

export function addSheet(book: Book, id: string, name?: string): Sheet {
  structureMustBeOpen(book);
  let free = name;
  for (let count = book.sheets.length + 1; free === undefined; count++)
    if (!sheetByName(book, `Sheet${count}`)) free = `Sheet${count}`;
  checkSheetName(book, free);
  const sheet = newSheet(id, free);
  book.sheets.push(sheet);
  return sheet;
}

export function removeSheet(book: Book, sheet: Sheet): void {
  structureMustBeOpen(book);
  if (sheet.visibility === "VeryHidden")
    throw new Refusal("InvalidOperation", "A sheet that is very hidden cannot be deleted.");
  const visible = book.sheets.filter(({ visibility }) => visibility === "Visible");
  if (visible.length === 1 && visible[0] === sheet)
    throw new Refusal("InvalidOperation", "A workbook must contain at least one visible worksheet.");
  const index = book.sheets.indexOf(sheet);
  book.sheets.splice(index, 1);
  loseSheet(book, sheet.id);
  if (book.active === sheet.id) {
    const next = book.sheets.slice(index).concat(book.sheets.slice(0, index).reverse());
    book.active = next.find(({ visibility }) => visibility === "Visible")!.id;
  }
  if (book.selection.kind !== "nothing" && book.selection.sheet === sheet.id)
    book.selection = { kind: "cells", sheet: book.active, boxes: [{ row: 0, col: 0, rows: 1, cols: 1 }] };
}
