/** A few names of every sheet, found in two requests however many sheets there are; a third reads what they hold. */
import type { Box, FoundSheet, SheetValues } from "../port";
import { localName } from "./names";
import { NAME_PROPERTIES, placesOf } from "./places";
import { readValues } from "./read";
import { runsOf } from "./requests";

/** Names asked for in one request, each of about 700 bytes. */
const NAMES_PER_REQUEST = 2_000;

interface Listed {
  readonly sheets: readonly Excel.Worksheet[];
  /** undefined where what is in front holds no cells: a chart sheet. */
  readonly active?: string;
}

async function list(context: Excel.RequestContext): Promise<Listed> {
  const { worksheets } = context.workbook;
  try {
    const sheets = worksheets.load("items/name,items/id");
    const active = worksheets.getActiveWorksheet().load("id");
    await context.sync();
    return { sheets: sheets.items, active: active.id };
  } catch {
    const sheets = worksheets.load("items/name,items/id");
    await context.sync();
    return { sheets: sheets.items };
  }
}

export interface SheetAndNames {
  readonly sheet: Excel.Worksheet;
  readonly names: readonly string[];
}

/** The boxes behind a few names of sheets that are loaded with their names; a name that leads to no cells is left out. */
export async function boxesOf(
  context: Excel.RequestContext,
  wanted: readonly SheetAndNames[],
): Promise<ReadonlyMap<string, Box>[]> {
  const shared = context.workbook.names.load(NAME_PROPERTIES);
  const asked = wanted.flatMap(({ sheet, names }, of) => names.map((name) => ({ sheet, name, of })));
  const items = wanted.map((): Excel.NamedItem[] => []);
  for (const part of runsOf(asked, () => 1, NAMES_PER_REQUEST)) {
    for (const { sheet, name, of } of part)
      items[of].push(sheet.names.getItemOrNullObject(localName(name)).load("name,type,value"));
    await context.sync();
  }
  if (asked.length === 0) await context.sync();
  return wanted.map(({ sheet, names }, of) => {
    const own = items[of].filter(({ isNullObject }) => !isNullObject);
    return placesOf(sheet.name, { own, shared: shared.items }, names);
  });
}

export async function findSheets(context: Excel.RequestContext, names: readonly string[]): Promise<FoundSheet[]> {
  const { sheets, active } = await list(context);
  const boxes = await boxesOf(
    context,
    sheets.map((sheet) => ({ sheet, names })),
  );
  return sheets.map(({ id, name }, i) => ({ id, sheet: name, isActive: id === active, has: [...boxes[i].keys()] }));
}

export async function readSheets(context: Excel.RequestContext, names: readonly string[]): Promise<SheetValues[]> {
  const { sheets, active } = await list(context);
  const boxes = await boxesOf(
    context,
    sheets.map((sheet) => ({ sheet, names })),
  );
  const places = sheets.flatMap((sheet, i) => [...boxes[i]].map(([name, box]) => ({ sheet, name, box })));
  const cells = places.length > 0 ? await readValues(context, places) : [];
  return sheets.map((sheet) => ({
    sheet: sheet.name,
    isActive: sheet.id === active,
    values: Object.fromEntries(
      places.flatMap(({ sheet: owner, name }, i) => (owner === sheet ? [[name, cells[i]]] : [])),
    ),
  }));
}
