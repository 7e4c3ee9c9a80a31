/** The workbook before an operation, in the strict stand-in for Excel and in the engine of the embedded sheet. */
import { webcrypto } from "node:crypto";
import { TextDecoder, TextEncoder } from "node:util";
import "../office/engine";
import { OfficePort } from "../../../src/workbook/office";
import type { Book } from "../../excel/book/book";
import { StrictExcel } from "../../excel/strict-excel";
import type { Operation } from "./operations";
import { both } from "./sheets";

// jsdom has neither.
Object.assign(globalThis, { TextDecoder, TextEncoder });
if (!globalThis.crypto?.subtle) Object.defineProperty(globalThis, "crypto", { value: webcrypto, configurable: true });

const evaluator = () => 7;

/** The stand-in with a copy of a workbook. */
export const standInOf = (book: Book): StrictExcel => new StrictExcel({ platform: "desktop", evaluator, book });

export async function bookBefore({
  plans = both,
  sheet = "Data",
  selected,
  isProtected,
  prepare,
}: Operation): Promise<Book> {
  const port = new OfficePort();
  const excel = new StrictExcel({ platform: "desktop", sheets: ["Sheet1"], evaluator });
  for (const plan of plans()) await port.insertSheet(plan);
  excel.sheet("Sheet1").remove();
  await prepare?.(port);
  excel.select(sheet, selected ?? "A1");
  if (isProtected) excel.sheet(sheet).protect({ allowInsertRows: true });
  return excel.picture();
}
