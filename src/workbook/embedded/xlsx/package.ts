/**
 * The parts of an .xlsx file that belong to its workbook, found by the relationships between them (ISO/IEC 29500-2, 9),
 * under the paths and content types that the engine's reader expects. The names and content types in the file do not
 * matter; a part that no relationship leads to is not read.
 */
import { say, verbatim, listed, type Message } from "../../../reduction/message";
import { WorkbookError } from "../../port";
import { damaged, type Archive } from "../../file/zip";
import { checkStyleCount } from "./looks";
import { MAIN, PACKAGE_RELATIONS, partText, RELATIONS } from "./namespaces";
import { Parts, pathOf, relationsOf } from "./parts";
import { plainText } from "../../file/escapes";
import { lightElements, lightOf, type LightElement } from "../../file/light-xml";
import { all, attributeInXml, childrenOf } from "../../file/xml";

export const WORKBOOK = "xl/workbook.xml";
export const STYLES = "xl/styles.xml";
/** The hidden name that stores the decimal mark of a workbook: `","`. */
export const DECIMAL_MARK = "clayledger_decimal_mark";
export const STRINGS = "xl/sharedStrings.xml";
const THEME = "xl/theme/theme1.xml";

/** A hundred times as many as a test needs; the page becomes slow long before Excel does. */
const MOST_SHEETS = 250;

/** The part of a sheet of cells. It is parsed later: one sheet at a time. */
export interface SheetPart {
  readonly name: string;
  readonly path: string;
  /** The path in the file. */
  readonly called: string;
  /** The ids of the relationships of the part. */
  readonly ids: ReadonlySet<string>;
}

export interface Package {
  readonly parts: Parts;
  /** Pictures by path, as the engine takes them. */
  readonly pictures: Readonly<Record<string, { readonly imageSrc: string }>>;
  /** The sheets of cells, in the order of their tabs. */
  readonly sheets: readonly SheetPart[];
  /** The index of the active sheet. */
  readonly front: number | undefined;
  readonly remarks: readonly Message[];
}

interface Relation {
  readonly id: string;
  /** The last word of the relationship's type: "worksheet". */
  readonly kind: string;
  readonly target: string;
  readonly isExternal: boolean;
}

/** The relationships of a part; empty if the file has no part for them. */
function relationsIn(archive: Archive, from: string): Relation[] {
  const path = relationsOf(from);
  if (!archive.has(path)) return [];
  const document = new Parts([[path, partText(archive.read(path), path)]]).document(path);
  return all(document, "Relationship").map((one) => ({
    id: one.getAttribute("Id") ?? "",
    kind: one.getAttribute("Type")?.split("/").pop() ?? "",
    target: one.getAttribute("Target") ?? "",
    isExternal: one.getAttribute("TargetMode") === "External",
  }));
}

/** The path that a relationship leads to, as in the archive; the relationship may write it with percent signs. */
function targetOf(archive: Archive, from: string, { target }: Relation): string {
  const path = pathOf(target, from);
  if (archive.has(path)) return path;
  try {
    return decodeURIComponent(path);
  } catch {
    return path;
  }
}

/** Relationships as XML text: id, type and target. */
const relationsText = (list: readonly { id: string; kind: string; target: string; isExternal?: boolean }[]): string =>
  `<Relationships xmlns="${PACKAGE_RELATIONS}">${list
    .map(
      ({ id, kind, target, isExternal }) =>
        `<Relationship Id="${attributeInXml(id)}" Type="${RELATIONS}/${kind}" Target="${attributeInXml(target)}"${isExternal ? ' TargetMode="External"' : ""}/>`,
    )
    .join("")}</Relationships>`;

/** The new path of a part of a kind, by its number, and its content type. */
const PLACES: Readonly<Record<string, { readonly path: (number: number) => string; readonly type?: string }>> = {
  worksheet: { path: (number) => `xl/worksheets/sheet${number}.xml`, type: "spreadsheetml.worksheet" },
  drawing: { path: (number) => `xl/drawings/drawing${number}.xml`, type: "drawing" },
  chart: { path: (number) => `xl/charts/chart${number}.xml`, type: "drawingml.chart" },
  comments: { path: (number) => `xl/comments${number}.xml` },
  table: { path: (number) => `xl/tables/table${number}.xml`, type: "spreadsheetml.table" },
  pivotTable: { path: (number) => `xl/pivotTables/pivotTable${number}.xml`, type: "spreadsheetml.pivotTable" },
  externalLink: { path: (number) => `xl/externalLinks/externalLink${number}.xml`, type: "spreadsheetml.externalLink" },
};
const SINGLE_TYPES: readonly (readonly [string, string])[] = [
  [WORKBOOK, "spreadsheetml.sheet.main"],
  [STYLES, "spreadsheetml.styles"],
  [THEME, "theme"],
];
/** The kinds that a part of a kind may lead to. */
const LEADS_TO: Readonly<Record<string, readonly string[]>> = {
  worksheet: ["drawing", "comments", "table", "pivotTable"],
  drawing: ["chart", "image"],
};

const PICTURE_TYPES: Readonly<Record<string, string>> = { jpg: "jpeg", svg: "svg+xml" };

function dataAddress(path: string, content: Uint8Array): string {
  const ending = path.split(".").pop()!.toLowerCase();
  let binary = "";
  for (let i = 0; i < content.length; i += 8192) binary += String.fromCharCode(...content.subarray(i, i + 8192));
  return `data:image/${PICTURE_TYPES[ending] ?? ending};base64,${btoa(binary)}`;
}

/** The colours for a file without a theme: those of Office since 2013. */
const USUAL_COLOURS = [
  ...["000000", "FFFFFF", "44546A", "E7E6E6", "4472C4", "ED7D31"],
  ...["A5A5A5", "FFC000", "5B9BD5", "70AD47", "0563C1", "954F72"],
];
const COLOUR_NAMES = "dk1 lt1 dk2 lt2 accent1 accent2 accent3 accent4 accent5 accent6 hlink folHlink".split(" ");
const USUAL_THEME =
  `<a:theme xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><a:themeElements><a:clrScheme>` +
  COLOUR_NAMES.map((name, i) => `<a:${name}><a:srgbClr val="${USUAL_COLOURS[i]}"/></a:${name}>`).join("") +
  `</a:clrScheme></a:themeElements></a:theme>`;

const USUAL_STYLES =
  `<styleSheet xmlns="${MAIN}"><fonts><font><sz val="11"/><name val="Calibri"/></font></fonts><fills><fill><patternFill patternType="none"/></fill></fills>` +
  `<borders><border/></borders><cellXfs><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellXfs></styleSheet>`;

/** The path of the workbook's part; undefined if the archive has none. */
export function workbookPath(archive: Archive): string | undefined {
  const main = relationsIn(archive, "").find(({ kind }) => kind === "officeDocument");
  const path = main ? targetOf(archive, "", main) : "xl/workbook.xml";
  return archive.has(path) ? path : undefined;
}

/** A part as XML whose root is in the namespace of spreadsheets. */
function sheetPart(parts: Parts, path: string, root: string, called: string): Document {
  let document: Document;
  try {
    document = parts.document(path);
  } catch {
    throw damaged(say`its part ${verbatim(called)} is not valid XML`);
  }
  const { localName, namespaceURI } = document.documentElement;
  if (localName !== root || namespaceURI !== MAIN)
    throw damaged(
      say`its part ${verbatim(called)} is none of a workbook (it begins with <${verbatim(localName)}> of "${verbatim(namespaceURI ?? "")}")`,
    );
  return document;
}

/** The ids of relationships that a sheet names outside its cells. */
function namedIds(sheet: Element): string[] {
  const beside = [...sheet.children].filter(({ localName }) => localName !== "sheetData");
  return beside
    .flatMap((element) => [element, ...(element.localName.endsWith("s") ? element.children : [])])
    .flatMap((element) => element.getAttributeNS(RELATIONS, "id") ?? []);
}

const ROWS = /<sheetData(?:\s[^>]*)?(?<!\/)>([^]*)<\/sheetData\s*>/;

/** Takes the rows out of the part of a sheet. They are most of it, and are not parsed by the browser. */
function takeRows(parts: Parts, { path }: SheetPart): LightElement[] | undefined {
  const text = parts.get(path) ?? "";
  const rows = ROWS.exec(text)?.[1];
  if (rows === undefined) return undefined;
  try {
    const taken = [...lightElements(rows)];
    parts.set(path, text.replace(ROWS, "<sheetData/>"));
    return taken;
  } catch {
    return undefined;
  }
}

/** The part of a sheet as XML without its rows, the rows, and a sentence if it names parts that the file does not lead to. */
export function readSheetPart(parts: Parts, sheet: SheetPart) {
  const { name, path, called, ids } = sheet;
  const taken = takeRows(parts, sheet);
  const document = sheetPart(parts, path, "worksheet", called);
  const rows = taken ?? all(document, "sheetData").flatMap((data) => [...childrenOf(data)].map(lightOf));
  const isLacking = namedIds(document.documentElement).some((one) => !ids.has(one));
  const remarks = isLacking
    ? [
        say`The sheet "${verbatim(name)}" names parts that the file does not lead to: pictures, notes, links or tables of it are missing here.`,
      ]
    : [];
  return { document, rows: rows.filter(({ localName }) => localName === "row"), remarks };
}

const SHEET_WORDS: Readonly<Record<string, Message>> = {
  chartsheet: say`chart sheet`,
  dialogsheet: say`dialog sheet`,
  xlMacrosheet: say`macro sheet`,
  xlIntlMacrosheet: say`macro sheet`,
};

/** Takes the parts of a workbook out of an archive. */
class Taking {
  readonly parts = new Parts([]);
  readonly pictures: Record<string, { imageSrc: string }> = {};
  readonly types: [string, string][] = [];
  /** Paths that relationships lead to, and that the file does not have. */
  readonly missing: string[] = [];
  readonly relations: readonly Relation[];
  readonly #counts = new Map<string, number>();

  constructor(
    readonly archive: Archive,
    readonly main: string,
  ) {
    this.relations = relationsIn(archive, main).filter(({ isExternal }) => !isExternal);
  }

  take(from: string, to: string): void {
    this.parts.set(to, partText(this.archive.read(from), from));
  }

  /** The path in the archive of a part that the workbook leads to. */
  pathOf(relation: Relation | undefined): string | undefined {
    return relation && targetOf(this.archive, this.main, relation);
  }

  #next(kind: string): number {
    const count = (this.#counts.get(kind) ?? 0) + 1;
    this.#counts.set(kind, count);
    return count;
  }

  /** Takes the only part of a kind. Returns false if there is none. */
  single(kind: string, to: string, root: string): boolean {
    const from = this.pathOf(this.relations.find((one) => one.kind === kind));
    if (from === undefined) return false;
    if (!this.archive.has(from)) {
      this.missing.push(from);
      return false;
    }
    this.take(from, to);
    if (kind === "styles") checkStyleCount(this.parts.get(to)!);
    if (root) sheetPart(this.parts, to, root, from);
    return true;
  }

  /** Takes a part and the parts that it leads to. Returns its new path. The part of a sheet is read when its sheet is. */
  part(kind: string, from: string): string {
    const { path, type } = PLACES[kind]!;
    const to = path(this.#next(kind));
    if (kind === "worksheet") this.parts.setLater(to, () => partText(this.archive.read(from), from));
    else this.take(from, to);
    if (type) this.types.push([to, type]);
    const led = relationsIn(this.archive, from).flatMap((relation) => this.#led(kind, from, relation));
    // Each path is two folders deep, or a path two folders deep leads to it.
    const relative = led.map((one) =>
      one.target.startsWith("/xl/") ? { ...one, target: `..${one.target.slice(3)}` } : one,
    );
    if (led.length > 0) this.parts.set(relationsOf(to), relationsText(relative));
    return to;
  }

  /** Takes what a relationship of a part leads to. */
  #led(kind: string, from: string, relation: Relation): Relation[] {
    if (relation.kind === "hyperlink") return [relation];
    if (relation.isExternal || !LEADS_TO[kind]?.includes(relation.kind)) return [];
    const target = targetOf(this.archive, from, relation);
    if (!this.archive.has(target)) {
      this.missing.push(target);
      return [];
    }
    const taken = relation.kind === "image" ? this.#picture(target) : this.part(relation.kind, target);
    return [{ ...relation, target: `/${taken}` }];
  }

  #picture(from: string): string {
    const to = `xl/media/image${this.#next("image")}.${from.split(".").pop()}`;
    this.pictures[to] = { imageSrc: dataAddress(from, this.archive.read(from)) };
    return to;
  }
}

/** Takes the parts of which a workbook has one each. */
function* takeSingles(taking: Taking): Generator<number> {
  if (!taking.single("styles", STYLES, "styleSheet")) taking.parts.set(STYLES, USUAL_STYLES);
  yield 0;
  taking.single("sharedStrings", STRINGS, "sst");
  yield 0;
  // A theme that the file names but does not have is ignored: it only gives colours.
  const named = taking.missing.length;
  if (!taking.single("theme", THEME, "")) taking.parts.set(THEME, USUAL_THEME);
  taking.missing.length = named;
}

/** The sheets of cells of a workbook. */
interface Sheets extends Pick<Package, "sheets" | "remarks"> {
  /** From the position of a sheet in the file to its position here. */
  readonly positions: ReadonlyMap<number, number>;
  readonly led: readonly { readonly id: string; readonly kind: string; readonly target: string }[];
}

/** Takes the sheets of cells, in steps that give the share that is done. */
function* takeSheets(taking: Taking, workbook: Document): Generator<number, Sheets> {
  const entries = all(workbook, "sheet");
  if (entries.length > MOST_SHEETS)
    throw new WorkbookError(
      say`The file has ${entries.length} sheets, and at most ${MOST_SHEETS} can be opened here: move those that are wanted to a workbook of their own in Excel.`,
    );
  const led: Sheets["led"][number][] = [];
  const positions = new Map<number, number>();
  const sheets: SheetPart[] = [];
  const remarks: Message[] = [];
  for (const [at, entry] of entries.entries()) {
    const name = plainText(entry.getAttribute("name") ?? "");
    const id = entry.getAttributeNS(RELATIONS, "id");
    const relation = taking.relations.find((one) => one.id === id);
    const from = taking.pathOf(relation);
    if (relation && relation.kind !== "worksheet") {
      remarks.push(
        say`The ${SHEET_WORDS[relation.kind] ?? say`sheet`} "${verbatim(name)}" was left out: it has no cells.`,
      );
      entry.remove();
      continue;
    }
    if (from === undefined || !taking.archive.has(from)) throw damaged(say`its sheet "${verbatim(name)}" is missing`);
    const path = taking.part("worksheet", from);
    entry.setAttribute("name", name);
    entry.setAttributeNS(RELATIONS, "r:id", `sheet${at}`);
    led.push({ id: `sheet${at}`, kind: "worksheet", target: path.slice("xl/".length) });
    positions.set(at, sheets.length);
    sheets.push({ name, path, called: from, ids: new Set(relationsIn(taking.archive, from).map((one) => one.id)) });
    yield (at + 1) / entries.length;
  }
  if (sheets.length === 0)
    throw new WorkbookError(
      say`The file has no sheet of cells, so there is nothing to open here: choose another file.`,
    );
  return { sheets, positions, led, remarks };
}

/** Gives names of a sheet its position here; takes the links to other files. */
function follow(taking: Taking, workbook: Document, positions: Sheets["positions"]): void {
  for (const name of all(workbook, "definedName")) {
    const local = name.getAttribute("localSheetId");
    if (local === null) continue;
    const position = positions.get(Number(local));
    if (position === undefined) name.remove();
    else name.setAttribute("localSheetId", String(position));
  }
  for (const reference of all(workbook, "externalReference")) {
    const id = reference.getAttributeNS(RELATIONS, "id");
    const from = taking.pathOf(taking.relations.find((one) => one.id === id));
    if (from !== undefined && taking.archive.has(from)) taking.part("externalLink", from);
  }
}

/** Writes the relationships of the workbook and the content types. */
function describe({ parts, types }: Taking, led: Sheets["led"]): void {
  parts.set(relationsOf(WORKBOOK), relationsText(led));
  const overrides = [...SINGLE_TYPES, ...types].map(
    ([path, type]) =>
      `<Override PartName="/${path}" ContentType="application/vnd.openxmlformats-officedocument.${type}+xml"/>`,
  );
  parts.set(
    "[Content_Types].xml",
    `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">${overrides.join("")}</Types>`,
  );
}

/** Reads the parts of the workbook at `main` in steps; each gives the share that is done. A missing part that the workbook needs is refused with a sentence. */
export function* readPackage(archive: Archive, main: string): Generator<number, Package> {
  const taking = new Taking(archive, main);
  const { parts, pictures, missing } = taking;
  taking.take(main, WORKBOOK);
  const workbook = sheetPart(parts, WORKBOOK, "workbook", main);
  yield* takeSingles(taking);
  const { sheets, positions, led, remarks: said } = yield* takeSheets(taking, workbook);
  follow(taking, workbook, positions);
  const remarks = [...said];
  if (taking.relations.some(({ kind }) => kind === "vbaProject"))
    remarks.push(say`The macros of the file were left out: the sheet on this page runs none.`);
  if (missing.length > 0)
    remarks.push(
      say`The file names parts that it does not have, which were left out: ${listed(missing.map(verbatim))}.`,
    );
  describe(taking, led);
  const view = all(workbook, "workbookView")[0];
  const front = positions.get(Number(view?.getAttribute("activeTab") ?? 0));
  return { parts, pictures, sheets, front, remarks };
}
