/** A few named cells of every sheet, read in three requests however many sheets there are. */
import type { SheetValues } from "../port";
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

export async function readSheets(context: Excel.RequestContext, names: readonly string[]): Promise<SheetValues[]> {
  const { sheets, active } = await list(context);
  const shared = context.workbook.names.load(NAME_PROPERTIES);
  const asked = sheets.flatMap((sheet) => names.map((name) => ({ sheet, name })));
  const items = new Map<Excel.Worksheet, Excel.NamedItem[]>(sheets.map((sheet) => [sheet, []]));
  for (const part of runsOf(asked, () => 1, NAMES_PER_REQUEST)) {
    for (const { sheet, name } of part)
      items.get(sheet)?.push(sheet.names.getItemOrNullObject(localName(name)).load("name,type,value"));
    await context.sync();
  }
  if (asked.length === 0) await context.sync();
  const places = sheets.flatMap((sheet) => {
    const own = (items.get(sheet) ?? []).filter(({ isNullObject }) => !isNullObject);
    return [...placesOf(sheet.name, { own, shared: shared.items }, names)].map(([name, box]) => ({ sheet, name, box }));
  });
  const cells = places.length > 0 ? await readValues(context, places) : [];
  return sheets.map((sheet) => ({
    sheet: sheet.name,
    isActive: sheet.id === active,
    values: Object.fromEntries(
      places.flatMap(({ sheet: owner, name }, i) => (owner === sheet ? [[name, cells[i]]] : [])),
    ),
  }));
}
