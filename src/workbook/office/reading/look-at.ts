/**
 * Reads several sheets together: one request for the names, one for the cells, and one for the hidden rows of each
 * sheet.
 */
import { isFormula } from "../../contents";
import { WorkbookError, type Asked, type CellValue, type Looked, type SheetName } from "../../port";
import { noSheet } from "../../rules/sheet-names";
import { hiddenIn, usedOf } from "./hidden";
import { localName, withPlanNames } from "../names";
import { itemsOf, NAME_PROPERTIES, type Named } from "./places";
import { namedCells, readMixed, withNamesThere, type Property, type WantedProperty } from "./read";
import { codeOf } from "../sentence";
import { sheetNamesOf } from "../upkeep";

/** For more names than this, all names of the sheet are loaded at once. */
const FEW = 40;

interface Found {
  readonly asked: Asked;
  readonly sheet: Excel.Worksheet;
  readonly items: ReadonlyMap<string, Named<Excel.NamedItem>>;
  readonly names?: readonly SheetName[];
  /** Loaded if hidden rows and columns are asked for. */
  readonly used?: Excel.Range;
  readonly isOnRequest: boolean;
}

/** The positions of the names that are asked for, of all sheets in one request. */
async function find(context: Excel.RequestContext, wanted: readonly Asked[]): Promise<Found[]> {
  const shared = context.workbook.names.load(NAME_PROPERTIES);
  const application = context.workbook.application.load("calculationMode");
  const loaded = wanted.map((asked) => {
    const sheet = context.workbook.worksheets.getItem(asked.sheet).load("name");
    const names = [...new Set([...asked.values, ...(asked.contents ?? [])])];
    const all = asked.names || names.length > FEW ? sheet.names.load(NAME_PROPERTIES) : undefined;
    const few = all ? [] : names.map((one) => sheet.names.getItemOrNullObject(localName(one)).load("name,type,value"));
    return { asked, sheet, names, all, few, used: asked.hidden ? usedOf(sheet) : undefined };
  });
  await context.sync();
  return loaded.map(({ asked, sheet, names, all, few, used }) => {
    const of = { own: all?.items ?? few.filter(({ isNullObject }) => !isNullObject), shared: shared.items };
    return {
      asked,
      sheet,
      items: itemsOf(sheet.name, of, names),
      used,
      isOnRequest: application.calculationMode === "Manual",
      ...(asked.names && { names: sheetNamesOf(sheet.name, of) }),
    };
  });
}

interface Place extends WantedProperty {
  readonly name: string;
}

/** The cells of one sheet that are asked for. */
const placesIn = ({ asked, sheet, items }: Found, byPlace: boolean): Place[] => {
  const of = (property: Property, names: readonly string[] = []): Place[] =>
    names.flatMap((name) => {
      const named = items.get(name);
      return named ? [{ ...namedCells(named, byPlace ? sheet : undefined), name, property }] : [];
    });
  return [...of("values", asked.values), ...of("formulas", asked.contents)];
};

const typed = (content: CellValue): CellValue => (isFormula(content) ? withPlanNames(content) : content);

async function read(context: Excel.RequestContext, asked: readonly Asked[], byPlace: boolean): Promise<Looked[]> {
  const found = (await find(context, asked)).map((one) => ({ ...one, places: placesIn(one, byPlace) }));
  // In the same order as the places.
  const cells = (
    await readMixed(
      context,
      found.flatMap(({ places }) => places),
    )
  ).values();
  const looked: Looked[] = [];
  for (const { sheet, names, used, isOnRequest, places } of found) {
    const values: Record<string, CellValue[][]> = {};
    const contents: Record<string, CellValue[][]> = {};
    for (const { name, property } of places) {
      const rows = cells.next().value ?? [];
      if (property === "values") values[name] = rows;
      else contents[name] = rows.map((row) => row.map(typed));
    }
    looked.push({
      sheet: sheet.name,
      values,
      contents,
      ...(names && { names }),
      ...(isOnRequest && { isOnRequest }),
      ...(used && { hidden: await hiddenIn(context, used) }),
    });
  }
  return looked;
}

export async function lookAt(context: Excel.RequestContext, asked: readonly Asked[]): Promise<Looked[]> {
  if (asked.length === 0) return [];
  try {
    return await withNamesThere((byPlace) => read(context, asked, byPlace));
  } catch (error) {
    if (codeOf(error) !== "ItemNotFound") throw error;
    const sheets = context.workbook.worksheets.load("items/name");
    await context.sync();
    const present = sheets.items.map(({ name }) => name.toLowerCase());
    const gone = asked.find(({ sheet }) => !present.includes(sheet.toLowerCase()));
    throw gone ? new WorkbookError(noSheet(gone.sheet)) : error;
  }
}
