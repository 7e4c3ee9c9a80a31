/**
 * Rules of packages (ISO/IEC 29500-2) and of the relationships between the parts of SpreadsheetML, which no schema
 * holds.
 */
import { attribute, children, elements, ownerOf, type Package } from "./package";
import type { XmlElement } from "./xml";

export type Rule = (file: Package) => string[];

const SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const OFFICE = "application/vnd.openxmlformats-officedocument";

/** The content type of a part by the kind of relationship that leads to it (ISO/IEC 29500-1, 12.3, 13.2.4 and 14.2). */
const TYPES: Readonly<Record<string, string>> = {
  officeDocument: `${SPREADSHEET}.sheet.main+xml`,
  worksheet: `${SPREADSHEET}.worksheet+xml`,
  styles: `${SPREADSHEET}.styles+xml`,
  sharedStrings: `${SPREADSHEET}.sharedStrings+xml`,
  sheetMetadata: `${SPREADSHEET}.sheetMetadata+xml`,
  comments: `${SPREADSHEET}.comments+xml`,
  table: `${SPREADSHEET}.table+xml`,
  theme: `${OFFICE}.theme+xml`,
  drawing: `${OFFICE}.drawing+xml`,
  chart: `${OFFICE}.drawingml.chart+xml`,
  vmlDrawing: `${OFFICE}.vmlDrawing`,
  "extended-properties": `${OFFICE}.extended-properties+xml`,
  "core-properties": "application/vnd.openxmlformats-package.core-properties+xml",
};

const CONTENT_TYPES = "[Content_Types].xml";
const isPart = (path: string): boolean => path !== CONTENT_TYPES;
const isRelations = (path: string): boolean => path.endsWith(".rels");
const isXml = (path: string): boolean => /\.(xml|rels|vml)$/.test(path);

export const repeated = (values: readonly string[]): string[] => [
  ...new Set(values.filter((value, index) => values.indexOf(value) < index)),
];

/** Paths of the parts that relationships lead to, starting from the package. */
function reached(file: Package): Set<string> {
  const found = new Set<string>();
  const visit = (from: string): void => {
    for (const { target, isExternal } of file.relations(from))
      if (!isExternal && file.has(target) && !found.has(target)) {
        found.add(target);
        visit(target);
      }
  };
  visit("");
  return found;
}

/** Elements of core properties, each allowed once (ISO/IEC 29500-2, annex D; its schema needs those of Dublin Core). */
const CORE = new Set(
  (
    "category contentStatus created creator description identifier keywords language lastModifiedBy lastPrinted modified " +
    "revision subject title version"
  ).split(" "),
);

/** Lists with a count attribute. */
const COUNTED =
  "mergeCells dataValidations numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs metadataTypes cellMetadata".split(
    " ",
  );

export const PACKAGE_RULES: Readonly<Record<string, Rule>> = {
  "names of parts are plain, and differ by more than capitals": (file) => [
    ...file.paths.filter((path) => /\/$|\\|^\/|\/\/|%/.test(path)).map((path) => `"${path}" is no name of a part`),
    ...repeated(file.paths.map((path) => path.toLowerCase())).map((path) => `"${path}" is there twice`),
  ],
  "every part has one content type, and no type is of a part that is not there": (file) => {
    const root = file.xml(CONTENT_TYPES).documentElement;
    const named = children(root, "Override").map((one) => attribute(one, "PartName") ?? "");
    const endings = children(root, "Default").map((one) => (attribute(one, "Extension") ?? "").toLowerCase());
    return [
      ...file.paths.filter((path) => isPart(path) && !file.typeOf(path)).map((path) => `${path} has no content type`),
      ...named
        .filter((name) => !file.has(name.slice(1)))
        .map((name) => `a content type is of ${name}, which is not there`),
      ...repeated([...named, ...endings]).map((name) => `${name} has two content types`),
    ];
  },
  "a part's content type is that of the relationship that leads to it": (file) =>
    ["", ...file.paths].flatMap((path) =>
      file
        .relations(path)
        .filter(({ kind, target, isExternal }) => {
          if (isExternal || !file.has(target)) return false;
          const type = file.typeOf(target) ?? "";
          return kind === "image" ? !type.startsWith("image/") : TYPES[kind] !== type;
        })
        .map(({ kind, target }) => `${target} is led to as ${kind} and is of type ${file.typeOf(target)}`),
    ),
  "every relationship has an id of its own and leads to a part that is there": (file) => [
    ...file.paths
      .filter((path) => isRelations(path) && path !== "_rels/.rels" && !file.has(ownerOf(path)))
      .map((path) => `${path} belongs to no part`),
    ...["", ...file.paths].flatMap((path) => {
      const relations = file.relations(path);
      return [
        ...relations
          .filter(({ isExternal, target }) => !isExternal && !file.has(target))
          .map(({ id, target }) => `${path}: ${id} leads to ${target}, which is not there`),
        ...repeated(relations.map(({ id }) => id)).map((id) => `${path}: two relationships are called ${id}`),
      ];
    }),
  ],
  "every relationship that a part speaks of is there": (file) =>
    file.paths
      .filter((path) => isXml(path) && isPart(path) && !isRelations(path))
      .flatMap((path) => {
        const known = new Set(file.relations(path).map(({ id }) => id));
        const asked = [...file.text(path).matchAll(/\s(?:r:(?:id|embed|link|pict)|o:relid)="([^"]*)"/g)].map(
          ([, id]) => id,
        );
        return asked
          .filter((id) => !known.has(id))
          .map((id) => `${path} speaks of ${id}, which is no relationship of it`);
      }),
  "every part is led to": (file) => {
    const found = reached(file);
    return file.paths
      .filter((path) => isPart(path) && !isRelations(path) && !found.has(path))
      .map((path) => `no relationship leads to ${path}`);
  },
  "core properties stand once each": (file) =>
    file.targets("", "core-properties").flatMap((path) => {
      const names = children(file.xml(path).documentElement).map(({ localName }) => localName);
      return [
        ...names.filter((name) => !CORE.has(name)).map((name) => `${path}: ${name} is no core property`),
        ...repeated(names).map((name) => `${path}: ${name} stands twice`),
      ];
    }),
  "counts are those of what is listed": (file) =>
    file.paths
      .filter((path) => /spreadsheetml\.(worksheet|styles|sheetMetadata)\+xml$/.test(file.typeOf(path) ?? ""))
      .flatMap((path) =>
        COUNTED.flatMap((name) => elements(file.xml(path), name))
          .filter((one) => one.hasAttribute("count") && Number(attribute(one, "count")) !== one.children.length)
          .map((one) => `${path}: ${one.localName} counts ${attribute(one, "count")} and lists ${one.children.length}`),
      ),
  "no part declares entities": (file) =>
    file.paths
      .filter((path) => isXml(path) && /<!(DOCTYPE|ENTITY)/.test(file.text(path)))
      .map((path) => `${path} has a DOCTYPE`),
};

/** The elements with a name in a part; none if the file has no such part. */
export const elementsOf = (file: Package, path: string, name: string): XmlElement[] =>
  file.has(path) ? elements(file.xml(path), name) : [];

export const textOf = (element: XmlElement | undefined): string => element?.textContent ?? "";

export interface Sheet {
  readonly name: string;
  readonly path: string;
  readonly root: XmlElement;
}

export const sheetsOf = (file: Package): Sheet[] =>
  file.sheets.map(({ name, path }) => ({ name, path, root: file.xml(path).documentElement }));

/** Applies a rule to each sheet; the sheet name comes before its complaint. */
export const ofSheets =
  (rule: (sheet: Sheet, file: Package) => string[]): Rule =>
  (file) =>
    sheetsOf(file).flatMap((sheet) => rule(sheet, file).map((said) => `"${sheet.name}": ${said}`));
