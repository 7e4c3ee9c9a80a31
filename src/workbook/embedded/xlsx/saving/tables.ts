/**
 * Tables as Excel takes them: it takes a table out of the file whose headings are not texts that differ, or which has no row of data (the
 * headings: exceljs issue 106; the others from memory). Cells are not changed for it: such a table has no row of headings in the file.
 */
import { nth } from "../../../../reduction/numeric/lists";
import { boxOf } from "../../../address";
import { all, first } from "../../../file/xml";
import type { Place } from "../../evaluation/engine-parts";
import type { Model } from "../../engine";
import { pathOf, relationsOf, type Parts } from "../parts";

const LONGEST = 255;

/** The tables of the part of a sheet. */
function tablesOf(parts: Parts, sheetPath: string): Element[] {
  const relations = relationsOf(sheetPath);
  if (!parts.has(relations)) return [];
  return all(parts.document(relations), "Relationship")
    .filter((one) => one.getAttribute("Type")?.endsWith("/table"))
    .map((one) => parts.document(pathOf(one.getAttribute("Target") ?? "", sheetPath)).documentElement);
}

/** What is typed into a heading; undefined for a formula. */
function typedAt({ getters }: Model, place: Place): string | undefined {
  const cell = getters.getCell(place);
  return cell?.isFormula ? undefined : (cell?.content ?? "").replace(/^'/, "");
}

const isHeading = (heading: string | undefined): heading is string =>
  heading !== undefined && heading.trim() !== "" && heading.length <= LONGEST;

/** A line feed within a heading, as Excel writes it in the name of a column. */
const asName = (heading: string): string => heading.replaceAll("\n", "_x000a_");

/** Gives the tables of a sheet headings that Excel takes, or none. */
export function patchTables(parts: Parts, sheetPath: string, model: Model, sheetId: string): void {
  for (const table of tablesOf(parts, sheetPath)) {
    const columns = all(table, "tableColumn");
    const box = boxOf(table.getAttribute("ref") ?? "");
    if (!box || table.getAttribute("headerRowCount") === "0") continue;
    const totals = Number(table.getAttribute("totalsRowCount") ?? 0);
    const headings = columns.map((_, at) => typedAt(model, { sheetId, row: box.row, col: box.col + at }));
    const differ = new Set(headings.map((heading) => heading?.trim().toLowerCase())).size === headings.length;
    if (differ && headings.every(isHeading) && box.rows > 1 + totals) {
      columns.forEach((column, at) => column.setAttribute("name", asName(nth(headings, at))));
      continue;
    }
    table.setAttribute("headerRowCount", "0");
    if (box.rows === totals) table.setAttribute("totalsRowCount", "0");
    first(table, "autoFilter")?.remove();
    columns.forEach((column, at) => column.setAttribute("name", `Column${at + 1}`));
  }
}
