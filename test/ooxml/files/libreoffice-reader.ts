/**
 * Reads .xlsx files with LibreOffice, which converts all of them in one run to flat OpenDocument text (ISO/IEC 26300).
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { attribute, children, elements, numberOf } from "../package";
import {
  addressAt,
  dayNumber,
  referenceText,
  ruleText,
  type Cell,
  type Contents,
  type SheetContents,
  type Value,
} from "./contents";
import { parsed, type XmlElement } from "../xml";

export interface OfficeContents extends Contents {
  readonly charts: number;
}

/** The files as LibreOffice converts them, in order. It writes only to a temporary folder, and needs no home. */
function converted(program: string, files: readonly Uint8Array[], to: "fods" | "xlsx"): Buffer[] {
  const folder = mkdtempSync(path.join(tmpdir(), "clayledger-files-"));
  const out = path.join(folder, "out");
  try {
    const paths = files.map((bytes, index) => {
      const at = path.join(folder, `file-${index}.xlsx`);
      writeFileSync(at, bytes);
      return at;
    });
    const profile = `-env:UserInstallation=${pathToFileURL(path.join(folder, "profile")).href}`;
    execFileSync(program, [profile, "--headless", "--convert-to", to, "--outdir", out, ...paths], {
      env: { ...process.env, HOME: path.join(folder, "no-home") },
      stdio: ["ignore", "pipe", "pipe"],
    });
    return paths.map((at) => readFileSync(path.join(out, path.basename(at).replace(/xlsx$/, to))));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The contents of each file, in order. */
export const readByLibreOffice = (program: string, files: readonly Uint8Array[]): OfficeContents[] =>
  converted(program, files, "fods").map((bytes) => contentsOf(bytes.toString("utf8")));

/** The files as LibreOffice opens and saves them, in order. */
export const savedByLibreOffice = (program: string, files: readonly Uint8Array[]): Uint8Array[] =>
  converted(program, files, "xlsx").map((bytes) => new Uint8Array(bytes));

/** The text of a paragraph: runs, spaces, tabs and line breaks. */
function paragraph(element: XmlElement): string {
  let text = "";
  for (const one of element.childNodes) {
    if (typeof one === "string") text += one;
    else if (one.localName === "s") text += " ".repeat(Number(attribute(one, "text:c") ?? 1));
    else if (one.localName === "tab") text += "\t";
    else if (one.localName === "line-break") text += "\n";
    else text += paragraph(one);
  }
  return text;
}

function valueOf(cell: XmlElement): Value | undefined {
  const text = children(cell, "p").map(paragraph).join("\n");
  const truth = CONSTANT.exec(attribute(cell, "table:formula") ?? "")?.[1];
  if (truth) return truth === "TRUE";
  if (attribute(cell, "calcext:value-type") === "error") return text;
  switch (attribute(cell, "office:value-type")) {
    case "float":
    case "percentage":
    case "currency":
      return Number(attribute(cell, "office:value"));
    case "boolean":
      return attribute(cell, "office:boolean-value") === "true";
    case "date":
      return dayNumber(new Date(`${attribute(cell, "office:date-value")!.replace(/^([^T]*)$/, "$1T00:00:00")}Z`));
    case "string":
      return text || undefined;
    default:
      return undefined;
  }
}

/** Constants that are errors or logical values, which OpenDocument writes as formulas: "of:=#N/A", "of:=TRUE()". */
const CONSTANT = /^of:=(?:#.*|(TRUE|FALSE)\(\))$/;

const formulaOf = (cell: XmlElement): string | undefined => {
  const formula = attribute(cell, "table:formula");
  return formula === undefined || CONSTANT.test(formula) ? undefined : formula;
};

const OPERATORS: Readonly<Record<string, string>> = {
  ">": "greaterThan",
  ">=": "greaterThanOrEqual",
  "<": "lessThan",
  "<=": "lessThanOrEqual",
};

/** "of:cell-content-is-decimal-number() and cell-content-is-between(1,24)" in the words of the .xlsx file. */
function conditionText(condition: string): string {
  const list = /^of:cell-content-is-in-list\((.*)\)$/s.exec(condition)?.[1];
  if (list !== undefined)
    return ruleText("list", "", [
      list.startsWith("[") ? list.replace(/[[\].]/g, "") : list.replace(/^"|"$/g, "").replaceAll('";"', ","),
    ]);
  const type = condition.includes("is-date()") ? "date" : "decimal";
  const between = /is-between\(([^,]*),([^)]*)\)/.exec(condition);
  if (between) return ruleText(type, "between", between.slice(1));
  const [, sign, bound] = /cell-content\(\)([<>]=?)(.*)$/.exec(condition) ?? [];
  if (!sign) throw new Error(`a condition of another kind: ${condition}`);
  return ruleText(type, OPERATORS[sign], [bound]);
}

/** "$'Sheet 1'.$B$4:.$C$18" in the spelling of the .xlsx file. */
function addressText(address: string): string {
  const [, quoted, bare, cells] = /^\$?(?:'((?:[^']|'')+)'|([^'.]+))\.(.*)$/.exec(address) ?? [];
  return referenceText(quoted?.replaceAll("''", "'") ?? bare, cells.replaceAll(":.", ":"));
}

/** Rows repeated to the end of the sheet by a rule would be a million: at most this many are read. */
const MOST_REPEATED = 20_000;

function sheetOf(table: XmlElement, conditions: ReadonlyMap<string, string>): SheetContents {
  const cells = new Map<string, Cell>();
  const rules = new Map<string, string>();
  const merges: string[] = [];
  let row = 1;
  for (const line of elements(table, "table-row")) {
    const rows = numberOf(line, "table:number-rows-repeated", 1);
    let column = 1;
    for (const cell of children(line)) {
      const columns = numberOf(cell, "table:number-columns-repeated", 1);
      const rule = conditions.get(attribute(cell, "table:content-validation-name") ?? "");
      const [value, formula] = [valueOf(cell), formulaOf(cell)];
      const [across, down] = ["columns", "rows"].map((of) => numberOf(cell, `table:number-${of}-spanned`, 1));
      if (across > 1 || down > 1)
        merges.push(`${addressAt(column, row)}:${addressAt(column + across - 1, row + down - 1)}`);
      if (rule !== undefined || value !== undefined || formula !== undefined)
        for (let y = row; y < row + Math.min(rows, MOST_REPEATED); y++)
          for (let x = column; x < column + columns; x++) {
            const at = addressAt(x, y);
            if (rule !== undefined) rules.set(at, rule);
            if ((value !== undefined || formula !== undefined) && cell.localName === "table-cell")
              cells.set(at, { ...(value !== undefined && { value }), ...(formula !== undefined && { formula }) });
          }
      column += columns;
    }
    row += rows;
  }
  return { cells, rules, merges: merges.sort() };
}

function contentsOf(text: string): OfficeContents {
  // Charts contain sheets of their own.
  const bare = text.replace(/<draw:object[\s>].*?<\/draw:object>/gs, "");
  const document = parsed(bare);
  const conditions = new Map(
    elements(document, "content-validation").map((one) => [
      attribute(one, "table:name")!,
      conditionText(attribute(one, "table:condition")!),
    ]),
  );
  const names = elements(document, "named-range")
    .filter((one) => !attribute(one, "table:name")!.startsWith("_xlnm."))
    .map((one) => `${attribute(one, "table:name")} ${addressText(attribute(one, "table:cell-range-address")!)}`);
  return {
    sheets: new Map(
      elements(document, "table").map((table) => [attribute(table, "table:name")!, sheetOf(table, conditions)]),
    ),
    names: names.sort(),
    charts: (text.match(/<chart:chart /g) ?? []).length,
  };
}
