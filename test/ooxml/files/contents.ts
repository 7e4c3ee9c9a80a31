/** The contents that a reader finds in an .xlsx file, for comparing readers. */
import { areaOf, attribute, children, elements, type Area, type Package } from "../package";
import { elementsOf } from "../package-rules";
import type { XmlElement } from "../xml";

export type Value = string | number | boolean;

export interface Cell {
  /** The value shown; errors as "#N/A". Absent if the cell shows nothing. */
  readonly value?: Value;
  readonly formula?: string;
}

export interface SheetContents {
  /** By address, without cells that hold and show nothing. */
  readonly cells: ReadonlyMap<string, Cell>;
  /** "A1:B2" */
  readonly merges: readonly string[];
  /** By cell: "decimal between 1 5". */
  readonly rules: ReadonlyMap<string, string>;
}

export interface Contents {
  readonly sheets: ReadonlyMap<string, SheetContents>;
  /** "mass Test!$A$1", sorted, without print areas and similar names. */
  readonly names: readonly string[];
}

/** The contents as stored in the file, the cells of its arrays by sheet, and its number of charts. */
export interface StoredContents extends Contents {
  readonly arrays: ReadonlyMap<string, ReadonlySet<string>>;
  readonly charts: number;
}

const letters = (column: number): string =>
  (column > 26 ? letters(Math.floor((column - 1) / 26)) : "") + String.fromCharCode(65 + ((column - 1) % 26));

export const addressAt = (column: number, row: number): string => `${letters(column)}${row}`;

function* addressesIn({ left, top, right, bottom }: Area): Generator<string> {
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++) yield addressAt(column, row);
}

/** A rule as text, with numbers by value and texts without quotes, so that rules of different readers compare equal. */
export function ruleText(type: string, operator: string, bounds: readonly string[]): string {
  const isNumber = (bound: string): boolean => bound.trim() !== "" && Number.isFinite(Number(bound));
  return [
    type,
    ...(type === "list" ? [] : [operator]),
    ...bounds.map((one) => (isNumber(one) ? String(Number(one)) : one)),
  ].join(" ");
}

/** "'Sheet'!$A$1:$B$2" without unnecessary quotes. */
export const referenceText = (sheet: string, cells: string): string => `${sheet}!${cells.replaceAll("$", "")}`;

export function nameText(name: string, reference: string): string {
  const [, quoted, bare, cells] = /^(?:'((?:[^']|'')+)'|([^'!]+))!(.+)$/.exec(reference) ?? [];
  return `${name} ${cells ? referenceText(quoted?.replaceAll("''", "'") ?? bare, cells) : reference}`;
}

const plain = (text: string): string =>
  text.replace(/_x([0-9A-F]{4})_/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)));

function valueOf(cell: XmlElement, strings: readonly string[]): Value | undefined {
  const text = children(cell, "v")[0]?.textContent;
  if (text == null || text === "") return undefined;
  switch (attribute(cell, "t")) {
    case "s":
      return strings[Number(text)];
    case "b":
      return text === "1";
    case "str":
    case "e":
      return plain(text);
    default:
      return Number(text);
  }
}

/** The text of a shared string: its runs, without phonetic text. */
const stringOf = (string: XmlElement): string =>
  plain(
    elements(string, "t")
      .filter(({ parentElement }) => parentElement?.localName !== "rPh")
      .map(({ textContent }) => textContent)
      .join(""),
  );

export function storedContents(file: Package): StoredContents {
  const strings = file
    .targets(file.workbook, "sharedStrings")
    .flatMap((path) => elementsOf(file, path, "si").map(stringOf));
  const arrays = new Map<string, ReadonlySet<string>>();
  const sheets = file.sheets.map(({ name, path }): [string, SheetContents] => {
    const { documentElement: root } = file.xml(path);
    const cells = elements(root, "c").flatMap((cell): [string, Cell][] => {
      const formula = children(cell, "f")[0]?.textContent;
      const value = valueOf(cell, strings);
      return formula == null && value === undefined
        ? []
        : [[attribute(cell, "r")!, { ...(value !== undefined && { value }), ...(formula != null && { formula }) }]];
    });
    const inArrays = elements(root, "f").flatMap((formula) => {
      const area = attribute(formula, "t") === "array" ? areaOf(attribute(formula, "ref")!) : undefined;
      return area ? [...addressesIn(area)] : [];
    });
    arrays.set(name, new Set(inArrays));
    const rules = elements(root, "dataValidation").flatMap((rule) => {
      const bounds = ["formula1", "formula2"].flatMap((one) => children(rule, one)[0]?.textContent ?? []);
      const list = attribute(rule, "type") === "list" ? bounds.map((one) => one.replace(/^"(.*)"$/s, "$1")) : bounds;
      const text = ruleText(attribute(rule, "type") ?? "none", attribute(rule, "operator") ?? "between", list);
      return attribute(rule, "sqref")!
        .split(" ")
        .flatMap((reference) => [...addressesIn(areaOf(reference)!)].map((at): [string, string] => [at, text]));
    });
    const merges = elements(root, "mergeCell").map((one) => attribute(one, "ref")!);
    return [name, { cells: new Map(cells), merges: merges.sort(), rules: new Map(rules) }];
  });
  const names = elementsOf(file, file.workbook, "definedName")
    .filter((one) => !attribute(one, "name")!.startsWith("_xlnm."))
    .map((one) => nameText(attribute(one, "name")!, one.textContent));
  const charts = file.paths.filter((path) => file.typeOf(path)?.endsWith("drawingml.chart+xml")).length;
  return { sheets: new Map(sheets), names: names.sort(), arrays, charts };
}

const DAY = 86_400_000;
/** The day number of a date, in the calendar that begins on 1899-12-30. */
export const dayNumber = (date: Date): number => date.getTime() / DAY + 25_569;
