/**
 * What a file may have and the sheet on the page does not keep, told in one sentence: a person who saves from here must not lose it
 * unawares. What is left out for another reason (a rule, a link, a name) has a sentence of its own.
 * Kinds of content: [MS-XLSX] 2.1 and 2.2.4, ISO/IEC 29500-1, 12.3 and 18.
 */
import { listed, say, templateOf, type Message } from "../../../../reduction/message";
import type { Archive } from "../../../file/zip";
import { all, first } from "../../../file/xml";
import { fromFileFormula } from "../formula";
import type { Parts } from "../parts";

type Kind = readonly [called: Message, pattern: RegExp];

/** Kinds that have a part of their own, by its content type. */
const BY_TYPE: readonly Kind[] = [
  [say`pivot tables (the values stay)`, /pivotTable\+xml/],
  [say`slicers and timelines`, /ms-excel\.(?:slicer|timeline)\+xml/i],
  [say`comments with answers (as notes they stay)`, /threadedcomments\+xml/i],
  [say`queries and connections to data`, /spreadsheetml\.(?:connections|queryTable)\+xml/],
  [say`buttons and other controls`, /controlproperties\+xml|activeX/i],
  [say`diagrams`, /drawingml\.diagram|chartex\+xml/i],
  [say`data of other programs (custom XML)`, /customXmlProperties\+xml/],
  [say`the digital signature`, /digital-signature/],
];

/** Kinds of a drawing; its part has the usual prefixes. */
const OF_DRAWING: readonly Kind[] = [[say`shapes and text boxes`, /<xdr:(?:sp|cxnSp|grpSp)[\s>]/]];

/** Extensions of a sheet by their number ([MS-XLSX] 2.2.4.1): only Excel knows them. */
const EXTENSIONS: readonly Kind[] = [
  [say`sparklines`, /05C60535-1F16-4fd2-B633-F4F36F0B64E0/i],
  [say`conditional formats of Excel 2010 and later`, /78C0D931-6437-407d-A8EE-F0AAD7539E65/i],
  [say`rules of entry that read another sheet`, /CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF/i],
];

/** Elements of a sheet by their names. */
const ELEMENTS: readonly (readonly [called: Message, element: string])[] = [
  [say`scenarios`, "scenario"],
  [say`ranges that some people may edit`, "protectedRange"],
  [say`objects of other programs`, "oleObject"],
];

/** Types of conditional formats that the engine leaves out. */
const LEFT_OUT = new Set(["aboveAverage", "containsErrors", "notContainsErrors", "timePeriod"]);

/** Properties that a person gives a workbook (docProps/core.xml). */
const PROPERTIES = /<(?:\w+:)?(?:title|subject|keywords|description|category)(?:\s[^>]*)?>[^<]/;

const found = (kinds: readonly Kind[], text: string): Message[] =>
  kinds.filter(([, pattern]) => pattern.test(text)).map(([called]) => called);

/** What a sheet has that is not kept. Call it before its part is changed. */
export function notKeptOf(document: Document): Message[] {
  const extensions = all(document, "ext").map((one) => one.getAttribute("uri") ?? "");
  const protection = first(document, "sheetProtection");
  const isLeftOut = all(document, "cfRule").some((rule) => LEFT_OUT.has(rule.getAttribute("type") ?? ""));
  return [
    ...found(EXTENSIONS, extensions.join(" ")),
    ...(isLeftOut ? [say`conditional formats for averages, errors or days`] : []),
    ...ELEMENTS.filter(([, element]) => first(document, element)).map(([called]) => called),
    ...(protection?.getAttribute("password") || protection?.getAttribute("hashValue")
      ? [say`the password of a protected sheet`]
      : []),
  ];
}

/** What the file has beside its sheets that is not kept. */
export function notKeptBeside(archive: Archive, parts: Parts, workbook: Document, strings: string): Message[] {
  // These parts are read for the sentence only: the workbook opens without them, damaged or not.
  const textOf = (path: string): string => {
    try {
      return archive.has(path) ? new TextDecoder().decode(archive.read(path)) : "";
    } catch {
      return "";
    }
  };
  const drawings = parts.paths().filter((path) => path.startsWith("xl/drawings/"));
  const names = all(workbook, "definedName").map((name) => name.getAttribute("name"));
  return [
    ...found(BY_TYPE, textOf("[Content_Types].xml")),
    ...found(OF_DRAWING, drawings.map((path) => parts.get(path) ?? "").join("")),
    ...(/<rPr[\s>]/.test(strings) ? [say`the look of single words in a cell`] : []),
    ...(/<rPh[\s>]/.test(strings) ? [say`phonetic text`] : []),
    ...(names.includes("_xlnm.Print_Titles") ? [say`rows and columns printed on every page`] : []),
    ...(all(workbook, "sheet").some((sheet) => sheet.getAttribute("state") === "veryHidden")
      ? [say`sheets that only a macro can show (they are hidden as others are)`]
      : []),
    ...(first(workbook, "workbookProtection") ? [say`the protection of the workbook's structure`] : []),
    ...(PROPERTIES.test(textOf("docProps/core.xml")) || archive.has("docProps/custom.xml")
      ? [say`properties of the document`]
      : []),
  ];
}

/** The sentence about what is not kept. */
export function toldNotKept(kinds: readonly Message[]): Message[] {
  const once = [...new Map(kinds.map((kind) => [templateOf(kind), kind])).values()];
  return once.length === 0
    ? []
    : [
        say`The sheet on this page does not keep these contents of the file: ${listed(once)}. Keep the file, and save under another name.`,
      ];
}

/** 1 January 1904 is this day in the count from 1900 (ISO/IEC 29500-1, 18.17.4.1). */
const DAYS_TO_1904 = 1462;

/** What is added to the days of the file: it may count them from 1904 (ISO/IEC 29500-1, 18.2.28), the engine counts from 1900. */
export const addedDaysOf = (workbook: Document): number =>
  /^(?:1|true)$/.test(first(workbook, "workbookPr")?.getAttribute("date1904") ?? "") ? DAYS_TO_1904 : 0;

/** The sentence about a workbook whose days were counted from 1904, with the number of cells that were converted. */
export const toldDays = (addedDays: number, moved: number): Message[] =>
  addedDays === 0
    ? []
    : [
        say`The file counts days from 1904 and the sheet on this page from 1900: the dates in ${moved} cells were converted and show the same days. Dates typed as numbers inside formulas, or in cells without a date format, were not: check those.`,
      ];

const OF_TEXT = new Set(["containsText", "notContainsText", "beginsWith", "endsWith"]);

/** Conditional formats of a text have the text in their formula too: other programs write it there alone. */
function giveTexts(document: Document): void {
  for (const rule of all(document, "cfRule")) {
    if (!OF_TEXT.has(rule.getAttribute("type") ?? "") || rule.getAttribute("text")) continue;
    const [, text] = /"((?:[^"]|"")*)"/.exec(first(rule, "formula")?.textContent ?? "") ?? [];
    if (text !== undefined) rule.setAttribute("text", text.replaceAll('""', '"'));
  }
}

/**
 * The engine reads formulas of rules and conditional formats as they are in the file, although it knows newer functions without their prefix,
 * and takes a text in quotes for a text with quotes.
 */
function readableFormulas(document: Document): void {
  for (const one of ["formula", "formula1", "formula2"].flatMap((name) => all(document, name))) {
    const type = one.parentElement?.getAttribute("type");
    if (type === "list") continue;
    const formula = fromFileFormula(one.textContent ?? "", (name) => name);
    one.textContent = type === "cellIs" && formula.startsWith('"') ? `=${formula}` : formula;
  }
}

/**
 * Gives each conditional format an element of its own, in the order of their priorities: the engine reads the first of an
 * element, and its first format prevails.
 */
export function partFormats(document: Document): void {
  giveTexts(document);
  readableFormulas(document);
  for (const formats of all(document, "conditionalFormatting"))
    for (const rule of all(formats, "cfRule").slice(1).reverse()) {
      const own = document.createElementNS(formats.namespaceURI, "conditionalFormatting");
      own.setAttribute("sqref", formats.getAttribute("sqref") ?? "");
      own.append(rule);
      formats.after(own);
    }
  const root = document.documentElement;
  // Those of Excel 2010 and later stand in an extension.
  const parted = [...root.children].filter(({ localName }) => localName === "conditionalFormatting");
  const priority = (one: Element): number => Number(first(one, "cfRule")?.getAttribute("priority") ?? 0);
  const behind = parted.at(-1)?.nextSibling ?? null;
  for (const one of [...parted].sort((a, b) => priority(a) - priority(b))) root.insertBefore(one, behind);
}
