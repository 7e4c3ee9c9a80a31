/**
 * Lets the engine read the parts of a file sheet by sheet. It would read all of them at once: with 40 data sheets the page did not react
 * for most of a second, although the cells are read elsewhere.
 * Casts: the engine's reader returns data without types.
 */
import { load } from "@odoo/o-spreadsheet";
import { parseXml, writeXml } from "../../../file/xml";
import { STYLES } from "../package";
import { pathOf, relationsOf, type Parts } from "../parts";

const TYPES = "[Content_Types].xml";

const isSheet = (path: string): boolean => /^xl\/worksheets\/[^/]+\.xml$/.test(path);

/** Parts by which a formula of one sheet leads to another one: they are read with all sheets. */
const isShared = (path: string): boolean => /^xl\/(?:tables|pivotTables|externalLinks)\//.test(path);

/** Of the styles, conditional formats need these; the cells have theirs from the first sheet's reading. */
const OF_CONDITIONS = new Set(["dxfs", "colors"]);

/** A sheet and all parts to which it leads. */
function ownParts(parts: Parts, path: string, found = new Set<string>()): Set<string> {
  if (found.has(path) || !parts.has(path)) return found;
  found.add(path);
  const relations = relationsOf(path);
  if (!parts.has(relations)) return found;
  found.add(relations);
  for (const [, target = ""] of parts.get(relations)!.matchAll(/\bTarget="([^"]*)"/g))
    ownParts(parts, pathOf(target, path), found);
  return found;
}

/** The list of the types of all parts, without those that are read with another sheet. */
const typesWithout = (types: string, others: ReadonlySet<string>): string =>
  types.replace(/<Override\b[^>]*\bPartName="\/([^"]*)"[^>]*\/>/g, (whole, path: string) =>
    others.has(path) ? "" : whole,
  );

function ofConditions(styles: string): string {
  const document = parseXml(styles);
  for (const one of [...document.documentElement.children]) if (!OF_CONDITIONS.has(one.localName)) one.remove();
  return writeXml(document);
}

/**
 * The engine's data of a workbook, read in steps that give the share that is done. `isWhole` says that cells of one sheet can only be read
 * together with other sheets.
 */
export function* loading(
  parts: Parts,
  pictures: Readonly<Record<string, unknown>>,
  isWhole: boolean,
): Generator<number, any> {
  const paths = parts.paths();
  const sheets = paths.filter(isSheet).sort((a, b) => a.localeCompare(b, undefined, { numeric: true }));
  if (isWhole || sheets.length < 2 || paths.some(isShared))
    return load({ ...Object.fromEntries(parts.entries()), ...pictures } as never);
  const own = sheets.map((path) => ownParts(parts, path));
  const owned = new Set(own.flatMap((one) => [...one]));
  const common = Object.fromEntries(parts.entries().filter(([path]) => !owned.has(path)));
  const styles = ofConditions(common[STYLES]!);
  let whole: any;
  for (const [at, paths] of own.entries()) {
    const others = new Set([...owned].filter((path) => !paths.has(path)));
    const data: any = load({
      ...common,
      ...(whole && { [STYLES]: styles }),
      ...Object.fromEntries([...paths].map((path) => [path, parts.get(path)])),
      [TYPES]: typesWithout(common[TYPES]!, others),
      ...pictures,
    } as never);
    if (whole) whole.sheets.push(...data.sheets);
    else whole = data;
    yield (at + 1) / sheets.length;
  }
  // Figures of different sheets have the same numbers: the engine gives them new ones.
  return load({ ...whole, uniqueFigureIds: false } as never);
}
