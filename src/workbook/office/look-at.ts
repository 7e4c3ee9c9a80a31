/** What is asked of several sheets, read together: one request for the names, one for the cells, one for each sheet's hidden rows. */
import { WorkbookError, type Asked, type Box, type CellValue, type Looked, type SheetName } from "../port";
import { noSheet } from "../sheet-names";
import { hiddenIn, usedOf } from "./hidden";
import { localName, withPlanNames } from "./names";
import { NAME_PROPERTIES, placesOf } from "./places";
import { readMixed, type Property } from "./read";
import { codeOf } from "./sentence";
import { sheetNamesOf } from "./upkeep";

/** With more names than this, all names of the sheet are loaded at once. */
const FEW = 40;

interface Found {
  readonly sheet: Excel.Worksheet;
  readonly boxes: ReadonlyMap<string, Box>;
  readonly names?: readonly SheetName[];
  /** Where hidden lines are asked for. */
  readonly used?: Excel.Range;
}

/** Where the names stand that are asked for, of all sheets in one request. */
async function find(context: Excel.RequestContext, asked: readonly Asked[]): Promise<Found[]> {
  const shared = context.workbook.names.load(NAME_PROPERTIES);
  const loaded = asked.map(({ sheet: name, values, contents = [], names = false, hidden = false }) => {
    const sheet = context.workbook.worksheets.getItem(name).load("name");
    const wanted = [...new Set([...values, ...contents])];
    const all = names || wanted.length > FEW ? sheet.names.load(NAME_PROPERTIES) : undefined;
    const few = all ? [] : wanted.map((one) => sheet.names.getItemOrNullObject(localName(one)).load("name,type,value"));
    return { sheet, wanted, all, few, used: hidden ? usedOf(sheet) : undefined };
  });
  await context.sync();
  return loaded.map(({ sheet, wanted, all, few, used }, i) => {
    const of = { own: all?.items ?? few.filter(({ isNullObject }) => !isNullObject), shared: shared.items };
    return {
      sheet,
      boxes: placesOf(sheet.name, of, wanted),
      used,
      ...(asked[i].names && { names: sheetNamesOf(sheet.name, of) }),
    };
  });
}

const typed = (content: CellValue): CellValue =>
  typeof content === "string" && content.startsWith("=") ? withPlanNames(content) : content;

async function read(context: Excel.RequestContext, asked: readonly Asked[]): Promise<Looked[]> {
  const found = await find(context, asked);
  const places = found.flatMap(({ sheet, boxes }, of) =>
    (["values", "formulas"] as const).flatMap((property: Property) =>
      ((property === "values" ? asked[of].values : asked[of].contents) ?? []).flatMap((name) => {
        const box = boxes.get(name);
        return box ? [{ of, name, sheet, box, property }] : [];
      }),
    ),
  );
  const cells = await readMixed(context, places);
  const of = (index: number, property: Property): Record<string, CellValue[][]> =>
    Object.fromEntries(
      places.flatMap((place, i) => (place.of === index && place.property === property ? [[place.name, cells[i]]] : [])),
    );
  const looked: Looked[] = [];
  for (const [index, { sheet, names, used }] of found.entries()) {
    const contents = Object.entries(of(index, "formulas")).map(([name, rows]) => [
      name,
      rows.map((row) => row.map(typed)),
    ]);
    looked.push({
      sheet: sheet.name,
      values: of(index, "values"),
      contents: Object.fromEntries(contents),
      ...(names && { names }),
      ...(used && { hidden: await hiddenIn(context, used) }),
    });
  }
  return looked;
}

export async function lookAt(context: Excel.RequestContext, asked: readonly Asked[]): Promise<Looked[]> {
  if (asked.length === 0) return [];
  try {
    return await read(context, asked);
  } catch (error) {
    if (codeOf(error) !== "ItemNotFound") throw error;
    const sheets = context.workbook.worksheets.load("items/name");
    await context.sync();
    const present = sheets.items.map(({ name }) => name.toLowerCase());
    const gone = asked.find(({ sheet }) => !present.includes(sheet.toLowerCase()));
    throw gone ? new WorkbookError(noSheet(gone.sheet)) : error;
  }
}
