/**
 * Reads the part of one sheet. What the engine would not read, or would read differently, is taken out of the part; the rest is
 * left for the engine's reader.
 */
import { say, verbatim, type Message } from "../../../../reduction/message";
import { cellAddress } from "../../../address";
import { heldText } from "../../../file/escapes";
import type { LightElement } from "../../../file/light-xml";
import { all, append, first, parseXml } from "../../../file/xml";
import type { Note } from "../../notes";
import type { Protection } from "../../protection";
import { numberCells, readCells, type Cells, type Surroundings } from "../cells";
import { takeCharts, type FileChart } from "../charts";
import { readFrames, type Frame } from "../pictures";
import { readComments } from "../comments";
import { fromFileFormula } from "../formula";
import { patchColours } from "../looks";
import { readSheetPart, type SheetPart } from "../package";
import { pathOf, relationsOf, type Parts } from "../parts";
import { readPrint } from "../print";
import { readProtection } from "../protection";
import { readWords, type Words } from "../words";
import { patchLimits } from "./limits-of-formats";
import { renamer, type Names } from "./names";
import { notKeptOf, partFormats } from "./not-kept";

/**
 * Corrects the rules for the engine's reader: a second bound is kept only where a rule has two; other programs write
 * one everywhere. Days that bound a rule are counted from 1900.
 */
function patchRules(document: Document, addedDays: number): void {
  for (const rule of all(document, "dataValidation")) {
    const isOpen = !/^(?:between|notBetween)$/.test(rule.getAttribute("operator") ?? "between");
    if (isOpen || /^(?:list|custom)$/.test(rule.getAttribute("type") ?? ""))
      all(rule, "formula2").forEach((bound) => bound.remove());
    if (!all(rule, "formula1").some((bound) => bound.textContent.trim() !== "")) rule.remove();
    if (addedDays === 0 || rule.getAttribute("type") !== "date") continue;
    for (const bound of [...all(rule, "formula1"), ...all(rule, "formula2")])
      if (/^[\d.]+$/.test(bound.textContent.trim())) bound.textContent = String(Number(bound.textContent) + addedDays);
  }
}

/** The attributes of an element, but for some and for those of other namespaces. */
const attributesOf = ({ attributes }: LightElement, without: readonly string[]): Record<string, string> =>
  Object.fromEntries([...attributes].filter(([name]) => !name.includes(":") && !without.includes(name)));

/**
 * Leaves in the rows only the parts that the engine's reader still reads: groups of rows, and formulas of tables and of
 * other files.
 */
function emptySheet(document: Document, lines: readonly LightElement[], { cells, left, colNumber }: Cells): void {
  let groups = 0;
  const data = first(document, "sheetData") ?? append(document.documentElement, "sheetData");
  // Replaces all rows at once: the time to remove a single row grows with the number of rows left.
  const rest = document.createElementNS(data.namespaceURI, "sheetData");
  data.replaceWith(rest);
  for (const line of lines) {
    const isGrouped = line.hasAttribute("outlineLevel") || line.hasAttribute("collapsed");
    const wanted = left.size === 0 ? [] : line.children.filter((cell) => left.has(cell.getAttribute("r") ?? ""));
    if (wanted.length === 0 && !(isGrouped && groups++ < MOST_GROUPED)) continue;
    const row = append(rest, "row", attributesOf(line, ["s"]));
    for (const cell of wanted)
      append(
        append(row, "c", attributesOf(cell, ["s", "t"])),
        ...(["f", {}, heldText((cells[cell.getAttribute("r") ?? ""] ?? "").slice(1))] as const),
      );
  }
  // The described columns reach as far as the last cell.
  append(append(rest, "row", { r: "1" }), "c", { r: cellAddress(0, colNumber - 1) });
  for (const column of all(document, "col")) column.removeAttribute("style");
  for (const link of all(document, "hyperlink")) link.remove();
}

/**
 * More grouped rows than this are not read: the engine's reader takes a time that grows with the square of their
 * number.
 */
const MOST_GROUPED = 5000;

/** The relationships of the part of a sheet that are of a kind: "hyperlink". */
function relationshipsOf(parts: Parts, sheetPath: string, kind: string): Element[] {
  const relations = relationsOf(sheetPath);
  if (!parts.has(relations)) return [];
  return all(parts.document(relations), "Relationship").filter((one) => one.getAttribute("Type")?.endsWith(`/${kind}`));
}

/** Targets of the links of a sheet out of the file, by relationship. */
const linksOf = (parts: Parts, sheetPath: string): Map<string, string> =>
  new Map(
    relationshipsOf(parts, sheetPath, "hyperlink").map((one) => [
      one.getAttribute("Id") ?? "",
      one.getAttribute("Target") ?? "",
    ]),
  );

/** Takes the notes of a sheet, found by the relationships of its part: the engine's reader would parse them, and reads none. */
function takeNotes(parts: Parts, sheetPath: string): Note[] {
  const [comments] = relationshipsOf(parts, sheetPath, "comments");
  const part = comments && pathOf(comments.getAttribute("Target") ?? "", sheetPath);
  return part && parts.has(part) ? readComments(parseXml(parts.take(part))) : [];
}

/** Kinds of rules that the engine drops. */
const UNKNOWN_RULES = new Set(["whole", "time", "textLength"]);

/** Content of a sheet that the engine would not read, or would read differently. */
export interface Kept {
  readonly read: Cells;
  readonly own: Record<string, unknown>;
  readonly protection: Protection;
  readonly words: ReadonlyMap<string, Words>;
  readonly charts: readonly FileChart[];
  readonly frames: readonly Frame[];
  readonly remarks: readonly Message[];
  /** Kinds of contents that the sheet on the page does not keep. */
  readonly notKept: readonly Message[];
}

/** What all sheets of a file have in common. */
export interface OfFile extends Pick<Surroundings, "strings" | "sheetNames" | "styles" | "isLight" | "addedDays"> {
  readonly parts: Parts;
  readonly names: Names;
  /** By sheet name: the area that is printed. */
  readonly areas: ReadonlyMap<string | undefined, string>;
  readonly isOpen: Parameters<typeof readProtection>[2];
}

/** The sentence about rules that were left out. */
function droppedRules(document: Document, name: string): Message[] {
  const dropped = all(document, "dataValidation").filter((rule) => UNKNOWN_RULES.has(rule.getAttribute("type") ?? ""));
  return dropped.length === 0
    ? []
    : [
        say`Rules of "${verbatim(name)}" for whole numbers, times or lengths of text (${dropped.length}) were left out: the sheet on this page has none such.`,
      ];
}

/** Reads a sheet called `name` in steps. The XML of one sheet is held at a time. */
export function* readSheet(sheet: SheetPart, name: string, file: OfFile): Generator<number, Kept> {
  const { parts, names, areas, isOpen, strings, sheetNames, styles, isLight, addedDays } = file;
  // The text of the sheet is unpacked in a step of its own.
  parts.get(sheet.path);
  yield 0;
  const { document, rows, remarks } = readSheetPart(parts, sheet);
  numberCells(rows, name);
  const dropped = droppedRules(document, name);
  const notKept = notKeptOf(document);
  const { rename, qualified } = renamer(names, name);
  const read = yield* readCells(document, rows, {
    ...{ sheet: name, strings, sheetNames, styles, isLight, addedDays },
    formula: (text) => fromFileFormula(qualified(text), rename),
    links: linksOf(parts, sheet.path),
  });
  patchRules(document, addedDays);
  patchLimits(document, addedDays, read, styles);
  partFormats(document);
  const kept = {
    read,
    notKept,
    own: { printLayout: readPrint(document, areas.get(name)), notes: takeNotes(parts, sheet.path) },
    protection: readProtection(document, rows, isOpen),
    words: readWords(all(document, "dataValidation")),
    charts: takeCharts(parts, sheet.path),
    frames: readFrames(parts, sheet.path),
    remarks: [...remarks, ...dropped, ...read.remarks],
  };
  emptySheet(document, rows, read);
  patchColours(document);
  parts.settle();
  return kept;
}
