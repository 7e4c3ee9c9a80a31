/** An .xlsx file as a package of parts (ISO/IEC 29500-2): its parts, their content types, and their relationships. */
import { strFromU8, unzipSync } from "fflate";
import { parsed, type XmlDocument, type XmlElement } from "./xml";

export interface Relation {
  readonly id: string;
  /** The last word of the relationship's type: "worksheet". */
  readonly kind: string;
  /** The path of the target part, or an address outside the file. */
  readonly target: string;
  readonly isExternal: boolean;
}

export const attribute = (element: XmlElement, name: string): string | undefined =>
  element.getAttribute(name) ?? undefined;

export const numberOf = (element: XmlElement, name: string, otherwise = NaN): number =>
  Number(element.getAttribute(name) ?? otherwise);

/** The elements with a name below `within`, in order, with any prefix. */
export function elements(within: XmlDocument | XmlElement, name: string, found: XmlElement[] = []): XmlElement[] {
  for (let child = within.firstElementChild; child; child = child.nextElementSibling) {
    if (child.localName === name) found.push(child);
    elements(child, name, found);
  }
  return found;
}

export function children(within: XmlElement, name?: string): XmlElement[] {
  const found: XmlElement[] = [];
  for (let child = within.firstElementChild; child; child = child.nextElementSibling)
    if (name === undefined || child.localName === name) found.push(child);
  return found;
}

export class Package {
  readonly entries: Readonly<Record<string, Uint8Array>>;
  readonly #documents = new Map<string, XmlDocument>();
  readonly #relations = new Map<string, Relation[]>();

  constructor(readonly bytes: Uint8Array) {
    this.entries = unzipSync(bytes);
  }

  get paths(): string[] {
    return Object.keys(this.entries);
  }

  has(path: string): boolean {
    return path in this.entries;
  }

  text(path: string): string {
    return strFromU8(this.entries[path]);
  }

  xml(path: string): XmlDocument {
    const known = this.#documents.get(path);
    if (known) return known;
    let document: XmlDocument;
    try {
      document = parsed(this.text(path));
    } catch (error) {
      throw new Error(`${path}: ${String(error)}`);
    }
    this.#documents.set(path, document);
    return document;
  }

  /** Lets go what was parsed: of many files it takes much room. */
  letGo(): void {
    this.#documents.clear();
  }

  /** The content type of a part, from its own entry or its file ending. */
  typeOf(path: string): string | undefined {
    const root = this.xml("[Content_Types].xml").documentElement;
    const own = children(root, "Override").find((one) => attribute(one, "PartName") === `/${path}`);
    const ending = path.split(".").pop()?.toLowerCase();
    const byEnding = children(root, "Default").find((one) => attribute(one, "Extension")?.toLowerCase() === ending);
    return (own ?? byEnding)?.getAttribute("ContentType") ?? undefined;
  }

  /** The relationships of a part; of the package for "". */
  relations(path: string): Relation[] {
    const known = this.#relations.get(path);
    if (known) return known;
    const at = relationsPath(path);
    const found = this.has(at)
      ? elements(this.xml(at), "Relationship").map((one): Relation => {
          const isExternal = attribute(one, "TargetMode") === "External";
          const target = attribute(one, "Target") ?? "";
          return {
            id: attribute(one, "Id") ?? "",
            kind: attribute(one, "Type")?.split("/").pop() ?? "",
            target: isExternal ? target : resolved(target, path),
            isExternal,
          };
        })
      : [];
    this.#relations.set(path, found);
    return found;
  }

  /** The parts that relationships of a kind lead to, from a part. */
  targets(path: string, kind: string): string[] {
    return this.relations(path).flatMap((one) => (one.kind === kind && this.has(one.target) ? [one.target] : []));
  }

  get workbook(): string {
    return this.targets("", "officeDocument")[0];
  }

  /** Name and part of each sheet, in order. */
  get sheets(): { readonly name: string; readonly path: string; readonly element: XmlElement }[] {
    const relations = new Map(this.relations(this.workbook).map(({ id, target }) => [id, target]));
    return elements(this.xml(this.workbook), "sheet").map((element) => ({
      name: attribute(element, "name") ?? "",
      path: relations.get(attribute(element, "r:id") ?? "") ?? "",
      element,
    }));
  }
}

const relationsPath = (path: string): string =>
  path === "" ? "_rels/.rels" : path.replace(/([^/]+)$/, "_rels/$1.rels");

export const ownerOf = (relations: string): string => relations.replace(/_rels\/([^/]*)\.rels$/, "$1");

function resolved(target: string, from: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps = from.split("/").slice(0, -1);
  for (const step of target.split("/"))
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  return steps.join("/");
}

/** Cells of a sheet, counted from 1. */
export interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;

const column = (letters: string): number => [...letters].reduce((sum, one) => sum * 26 + one.charCodeAt(0) - 64, 0);

/** "B4" or "B4:C18"; undefined for anything else. */
export function areaOf(reference: string): Area | undefined {
  const found = /^\$?([A-Z]{1,3})\$?(\d+)(?::\$?([A-Z]{1,3})\$?(\d+))?$/.exec(reference);
  if (!found) return undefined;
  const [, left, top, right = left, bottom = top] = found;
  const area = { left: column(left), top: Number(top), right: column(right), bottom: Number(bottom) };
  const isOnSheet = area.top >= 1 && area.bottom <= LAST_ROW && area.right <= LAST_COLUMN;
  return isOnSheet && area.left <= area.right && area.top <= area.bottom ? area : undefined;
}

const overlap = (a: Area, b: Area): boolean =>
  a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom;

/** Pairs of areas that share a cell. The areas are sorted by their tops, so that a sheet of thousands is fast. */
export function overlapping<T extends { readonly area: Area }>(all: readonly T[]): [T, T][] {
  const sorted = [...all].sort((a, b) => a.area.top - b.area.top);
  const pairs: [T, T][] = [];
  sorted.forEach((one, index) => {
    for (let next = index + 1; next < sorted.length && sorted[next].area.top <= one.area.bottom; next++)
      if (overlap(one.area, sorted[next].area)) pairs.push([one, sorted[next]]);
  });
  return pairs;
}
