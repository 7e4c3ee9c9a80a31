/** Counts the charts of each sheet of an .xlsx file, which exceljs does not read. */
import { strFromU8, unzipSync } from "fflate";

/** "../charts/chart1.xml", relative to "xl/drawings", is "xl/charts/chart1.xml". */
const targetsOf = (parts: Readonly<Record<string, Uint8Array>>, folder: string, file: string, kind: string): string[] =>
  [...strFromU8(parts[`${folder}/_rels/${file}.rels`] ?? new Uint8Array()).matchAll(/<Relationship\b[^>]*>/g)]
    .map(([tag]) => tag)
    .filter((tag) => new RegExp(`Type="[^"]*/${kind}"`).test(tag))
    .map((tag) => /Target="([^"]*)"/.exec(tag)![1].replace(/^.*\//, ""));

/** By the number of the sheet's part, from 1. */
export function chartsOfSheets(bytes: Uint8Array): (sheet: number) => number {
  const parts = unzipSync(bytes);
  return (sheet) =>
    targetsOf(parts, "xl/worksheets", `sheet${sheet}.xml`, "drawing").flatMap((drawing) =>
      targetsOf(parts, "xl/drawings", drawing, "chart"),
    ).length;
}
