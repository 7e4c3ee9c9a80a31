/**
 * Finds a few names of every sheet in two requests, however many sheets there are; a third request reads their cells.
 */
import type { FoundSheet, SheetValues } from "../../port";
import { localName } from "../names";
import { itemsOf, NAME_PROPERTIES, type Named as NamedCells } from "./places";
import { namedCells, readValues, withNamesThere } from "./read";
import { runsOf } from "../requests";

/** Names per request, each of about 700 bytes. */
const NAMES_PER_REQUEST = 2_000;

const PROPERTIES = "items/name,items/id,items/visibility";

interface Listed {
  readonly sheets: readonly Excel.Worksheet[];
  /** undefined if a chart sheet is in front, which has no cells. */
  readonly active?: string;
}

async function list(context: Excel.RequestContext): Promise<Listed> {
  const { worksheets } = context.workbook;
  try {
    const sheets = worksheets.load(PROPERTIES);
    const active = worksheets.getActiveWorksheet().load("id");
    await context.sync();
    return { sheets: sheets.items, active: active.id };
  } catch {
    const sheets = worksheets.load(PROPERTIES);
    await context.sync();
    return { sheets: sheets.items };
  }
}

interface Named {
  readonly sheet: Excel.Worksheet;
  readonly items: ReadonlyMap<string, NamedCells<Excel.NamedItem>>;
}

/** A few names of each sheet with their boxes, without names that lead to no cells. */
export async function namedBoxes(
  context: Excel.RequestContext,
  sheets: readonly Excel.Worksheet[],
  names: readonly string[],
): Promise<Named[]> {
  const shared = context.workbook.names.load(NAME_PROPERTIES);
  const asked = sheets.map((sheet): { sheet: Excel.Worksheet; own: Excel.NamedItem[] } => ({ sheet, own: [] }));
  const items = asked.flatMap(({ sheet, own }) => names.map((name) => ({ sheet, own, name })));
  for (const part of runsOf(items, () => 1, NAMES_PER_REQUEST)) {
    for (const { sheet, own, name } of part)
      own.push(sheet.names.getItemOrNullObject(localName(name)).load("name,type,value"));
    // A name leads to a sheet by the name that the sheet has in the same request.
    for (const sheet of sheets) sheet.load("name");
    await context.sync();
  }
  if (items.length === 0) await context.sync();
  return asked.map(({ sheet, own }) => {
    const present = own.filter(({ isNullObject }) => !isNullObject);
    return { sheet, items: itemsOf(sheet.name, { own: present, shared: shared.items }, names) };
  });
}

export async function findSheets(context: Excel.RequestContext, names: readonly string[]): Promise<FoundSheet[]> {
  const { sheets, active } = await list(context);
  const found = await namedBoxes(context, sheets, names);
  return found.map(({ sheet: { id, name, visibility }, items }) => ({
    id,
    sheet: name,
    isActive: id === active,
    has: [...items.keys()],
    ...(visibility === "VeryHidden" && { isVeryHidden: true }),
  }));
}

export const readSheets = (context: Excel.RequestContext, names: readonly string[]): Promise<SheetValues[]> =>
  withNamesThere((byPlace) => readEvery(context, names, byPlace));

async function readEvery(
  context: Excel.RequestContext,
  names: readonly string[],
  byPlace: boolean,
): Promise<SheetValues[]> {
  const { sheets, active } = await list(context);
  const found = await namedBoxes(context, sheets, names);
  const places = found.flatMap(({ sheet, items }) =>
    [...items].map(([name, named]) => ({ ...namedCells(named, byPlace ? sheet : undefined), sheet, name })),
  );
  const cells = places.length > 0 ? await readValues(context, places) : [];
  return sheets.map((sheet) => ({
    sheet: sheet.name,
    isActive: sheet.id === active,
    values: Object.fromEntries(
      places.flatMap(({ sheet: of, name }, i) => (of === sheet ? [[name, cells[i] ?? []]] : [])),
    ),
  }));
}
