/** The workbook port for Excel, by the Office JavaScript library's globals `Excel` and `Office` (ExcelApi 1.9; notes 1.18). */
import {
  WorkbookError,
  type Box,
  type CellValue,
  type Inserted,
  type NamedColumns,
  type Selection,
  type SheetName,
  type SheetPlan,
  type Unsubscribe,
  type WorkbookPort,
} from "../port";
import { boxAddress } from "../../datasheet/address";
import { checkFill } from "../fill";
import { blockAddresses, joined, sideBySide } from "../picked";
import { isLandscape } from "../paper";
import { addCharts } from "./charts";
import { writeColumns } from "./fill";
import { blocks, slices, widthInPoints, type Block } from "./grid";
import { boundsOf, CHOICE_TITLE, choiceMessage, titleOf } from "../bounds";
import { freeSheetName, hiddenSheet } from "../sheet-names";
import { LAST_COLUMN, LAST_ROW, localName, withPlanNames } from "./names";
import { insertFile, listNames, nameCells, protect, PROTECTION, reenterFormulas } from "./upkeep";
import { isTaken, PROTECTED, told } from "./sentence";

type Values = Selection["values"];

/** A batch that waits while a cell is being edited, and tells its failure in a sentence. */
async function run<T>(doing: string, batch: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, batch);
  } catch (error) {
    throw told(error, doing);
  }
}

const rangeOf = (sheet: Excel.Worksheet, { row, col, rows, cols }: Box): Excel.Range =>
  sheet.getRangeByIndexes(row, col, rows, cols);

/** Adds a sheet under a free name. Chart sheets are not listed, yet hold names: those are met by trying the next one. */
async function addSheet(context: Excel.RequestContext, wanted: string): Promise<Excel.Worksheet> {
  const { protection, worksheets } = context.workbook;
  protection.load("protected");
  worksheets.load("items/name");
  await context.sync();
  if (protection.protected) throw new WorkbookError(PROTECTED);
  const taken = worksheets.items.map(({ name }) => name);
  for (;;) {
    const name = freeSheetName(wanted, taken);
    const sheet = worksheets.add(name);
    sheet.load("id,name");
    try {
      await context.sync();
      return sheet;
    } catch (error) {
      if (!isTaken(error) || taken.includes(name)) throw error;
      taken.push(name);
    }
  }
}

async function addNames(context: Excel.RequestContext, sheet: Excel.Worksheet, plan: SheetPlan): Promise<void> {
  for (const [name, box] of Object.entries(plan.names)) sheet.names.add(localName(name), rangeOf(sheet, box));
  await context.sync();
}

/** Formulas before formats: a formula typed into a cell already formatted as text would stay text. */
async function fillCells(context: Excel.RequestContext, sheet: Excel.Worksheet, cut: readonly Block[]): Promise<void> {
  for (const { box, formulas, formats, looks } of cut) {
    const range = rangeOf(sheet, box);
    range.formulas = formulas;
    range.numberFormat = formats;
    range.setCellProperties(looks);
    await context.sync();
  }
}

async function furnish(context: Excel.RequestContext, sheet: Excel.Worksheet, plan: SheetPlan): Promise<void> {
  plan.merges.forEach((box) => rangeOf(sheet, box).merge());
  for (const [col, characters] of Object.entries(plan.columnWidths))
    sheet.getRangeByIndexes(0, Number(col), 1, 1).getEntireColumn().format.columnWidth = widthInPoints(characters);
  for (const [row, points] of Object.entries(plan.rowHeights ?? {}))
    sheet.getRangeByIndexes(Number(row), 0, 1, 1).getEntireRow().format.rowHeight = points;
  for (const { row, col, choices } of plan.cells) {
    if (!choices) continue;
    const { dataValidation } = sheet.getRangeByIndexes(row, col, 1, 1);
    dataValidation.rule = { list: { inCellDropDown: true, source: choices.join(",") } };
    dataValidation.errorAlert = {
      showAlert: true,
      style: "Stop",
      title: CHOICE_TITLE,
      message: choiceMessage(choices),
    };
  }
  for (const entry of plan.entries ?? []) {
    const { dataValidation } = rangeOf(sheet, entry.box);
    const { operator, values } = boundsOf(entry);
    const [formula1, formula2] = values.map((value) => (entry.kind === "date" ? isoDate(value) : value));
    const rule = {
      formula1,
      ...(formula2 !== undefined && { formula2 }),
      operator: (operator.charAt(0).toUpperCase() + operator.slice(1)) as "Between",
    };
    dataValidation.rule = entry.kind === "date" ? { date: rule as Excel.DateTimeDataValidation } : { decimal: rule };
    dataValidation.errorAlert = { showAlert: true, style: "Stop", title: titleOf(entry), message: entry.message };
  }
  for (const box of plan.open ?? []) rangeOf(sheet, box).format.protection.locked = false;
  if (plan.freezeRows > 0) sheet.freezePanes.freezeRows(plan.freezeRows);
  await context.sync();
}

/** The day of a date cell, as the library takes dates. */
const isoDate = (day: number): string => new Date((day - 25_569) * 86_400_000).toISOString().slice(0, 10);

async function addNotes(context: Excel.RequestContext, sheet: Excel.Worksheet, plan: SheetPlan): Promise<void> {
  if (!Office.context.requirements.isSetSupported("ExcelApi", "1.18")) return;
  for (const { row, col, note } of plan.cells) {
    if (!note) continue;
    const added = sheet.notes.add(sheet.getRangeByIndexes(row, col, 1, 1), note);
    added.width = 240;
    added.height = 15 * Math.ceil(note.length / 40) + 15;
  }
  await context.sync();
}

/** Each page as wide as the paper, the frozen rows on every page; file, sheet, page number and versions in the footer. */
async function layOutPrint(context: Excel.RequestContext, sheet: Excel.Worksheet, plan: SheetPlan): Promise<void> {
  const layout = sheet.pageLayout;
  const pages = plan.pages ?? [{ row: 0, col: 0, rows: plan.rows, cols: plan.cols }];
  layout.orientation = isLandscape(pages, plan.columnWidths)
    ? Excel.PageOrientation.landscape
    : Excel.PageOrientation.portrait;
  layout.zoom = { horizontalFitToPages: 1 };
  layout.setPrintArea(pages.map(boxAddress).join(","));
  if (plan.freezeRows > 0) layout.setPrintTitleRows(sheet.getRangeByIndexes(0, 0, plan.freezeRows, 1).getEntireRow());
  if (plan.paper) layout.paperSize = plan.paper === "A4" ? Excel.PaperType.a4 : Excel.PaperType.letter;
  const footer = layout.headersFooters.defaultForAllPages;
  footer.leftFooter = "&F  |  &A";
  footer.centerFooter = "Page &P of &N";
  footer.rightFooter = `${plan.footer ?? ""}  |  Printed &D &T`.replace(/^ {2}\| {2}/, "");
  await context.sync();
}

/** Takes an unfinished sheet out again, and says how the workbook stands. */
async function remove(sheet: { id: string; name: string } | undefined): Promise<string> {
  if (!sheet) return "The workbook is as it was.";
  try {
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      context.workbook.worksheets.getItem(sheet.id).delete();
      await context.sync();
    });
    return "The workbook is as it was.";
  } catch {
    return `An unfinished sheet "${sheet.name}" was left behind: delete it.`;
  }
}

const CELLS_PER_READ = 50_000;
const MOST_CELLS = 1_000_000;

const PLACE_OF_ONE = "rowIndex,columnIndex,rowCount,columnCount";
const PLACE = "items/rowIndex,items/columnIndex,items/rowCount,items/columnCount";

const boxOf = ({ rowIndex: row, columnIndex: col, rowCount: rows, columnCount: cols }: Excel.Range): Box => ({
  row,
  col,
  rows,
  cols,
});

/** The smallest box around boxes. */
function around(boxes: readonly Box[]): Box {
  const row = Math.min(...boxes.map((box) => box.row));
  const col = Math.min(...boxes.map((box) => box.col));
  const bottom = Math.max(...boxes.map((box) => box.row + box.rows));
  const right = Math.max(...boxes.map((box) => box.col + box.cols));
  return { row, col, rows: bottom - row, cols: right - col };
}

/** Whole columns and whole rows, cut to the rows and columns that are filled in. */
function cutToUsed(box: Box, used: Box | undefined): Box {
  if (!used) return box;
  return {
    ...box,
    ...(box.rows === LAST_ROW && { row: used.row, rows: used.rows }),
    ...(box.cols === LAST_COLUMN && { col: used.col, cols: used.cols }),
  };
}

/** The values of ranges side by side, in pieces that stay below what Excel on the web can send at once. */
async function valuesOf(context: Excel.RequestContext, ranges: readonly Excel.Range[]): Promise<Values> {
  for (const range of ranges) range.load("rowCount,columnCount");
  await context.sync();
  const cells = ranges.reduce((sum, { rowCount, columnCount }) => sum + rowCount * columnCount, 0);
  if (cells > MOST_CELLS) throw new WorkbookError(`The range has ${cells} cells: choose fewer than ${MOST_CELLS}.`);
  const blocks: CellValue[][][] = [];
  for (const range of ranges) {
    const block: CellValue[][] = [];
    for (const part of slices({ row: 0, col: 0, rows: range.rowCount, cols: range.columnCount }, CELLS_PER_READ)) {
      const piece = range.getCell(part.row, part.col).getResizedRange(part.rows - 1, part.cols - 1);
      piece.load("values");
      await context.sync();
      block.push(...piece.values);
    }
    blocks.push(block);
  }
  return joined(blocks);
}

async function sheetCalled(context: Excel.RequestContext, name: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItemOrNullObject(name);
  await context.sync();
  if (sheet.isNullObject) throw new WorkbookError(`There is no sheet called "${name}" in this workbook.`);
  return sheet;
}

/** The ranges of a sheet's local names, with a property loaded; names that are absent or have lost their cells are left out. */
async function namedRanges(
  context: Excel.RequestContext,
  sheet: string,
  names: readonly string[],
  property: "values" | "formulas",
): Promise<Map<string, Excel.Range>> {
  const own = (await sheetCalled(context, sheet)).names;
  const shared = context.workbook.names;
  const items = names.map((name) => ({
    name,
    own: own.getItemOrNullObject(localName(name)).load("type"),
    shared: shared.getItemOrNullObject(localName(name)).load("type"),
  }));
  await context.sync();
  const isRange = (item: Excel.NamedItem): boolean => !item.isNullObject && item.type === "Range";
  const found = items.flatMap(({ name, own, shared }) => {
    const item = [own, shared].find(isRange);
    if (!item) return [];
    const range = item.getRangeOrNullObject().load("rowCount,columnCount");
    return [{ name, range, owner: item === shared ? range.worksheet.load("name") : undefined }];
  });
  await context.sync();
  const here = found.filter(({ range, owner }) => !range.isNullObject && (!owner || owner.name === sheet));
  let cells = 0;
  for (const { range } of here) {
    cells += range.rowCount * range.columnCount;
    if (cells > CELLS_PER_READ) {
      await context.sync();
      cells = range.rowCount * range.columnCount;
    }
    range.load(property);
  }
  await context.sync();
  return new Map(here.map(({ name, range }) => [name, range]));
}

export class OfficePort implements WorkbookPort {
  readonly host = "excel";

  sheetNames(): Promise<string[]> {
    return run("list the sheets", async (context) => {
      const sheets = context.workbook.worksheets.load("items/name");
      await context.sync();
      return sheets.items.map(({ name }) => name);
    });
  }

  async insertSheet(plan: SheetPlan): Promise<string> {
    const cut = blocks(plan);
    let made: { id: string; name: string } | undefined;
    let doing = "add a sheet";
    try {
      return await Excel.run({ delayForCellEdit: true }, async (context) => {
        const sheet = await addSheet(context, plan.name);
        made = { id: sheet.id, name: sheet.name };
        doing = "name the cells of the new sheet";
        await addNames(context, sheet, plan);
        doing = "fill in the new sheet";
        await fillCells(context, sheet, cut);
        doing = "lay out the new sheet";
        await furnish(context, sheet, plan);
        doing = "add the notes to the new sheet";
        await addNotes(context, sheet, plan);
        // A machine without a printer refuses any page set-up: the sheet is whole without it.
        await layOutPrint(context, sheet, plan).catch(() => undefined);
        doing = "draw the charts of the new sheet";
        await addCharts(context, sheet, plan.charts ?? []);
        doing = "protect the new sheet";
        if (plan.isProtected) sheet.protection.protect(PROTECTION);
        await context.sync();
        doing = "show the new sheet";
        if (!plan.behind) {
          sheet.activate();
          sheet.getCell(0, 0).select();
          await context.sync();
        }
        return made.name;
      });
    } catch (error) {
      throw told(error, doing, await remove(made));
    }
  }

  selection(): Promise<Selection> {
    return run("read the selection", async (context) => {
      const selected = context.workbook.getSelectedRanges();
      // Whole columns or rows, chosen by their heads, are cut to what is filled in.
      const filled = selected.getUsedRangeAreasOrNullObject(true);
      selected.areas.load(PLACE);
      selected.worksheet.load("name");
      filled.areas.load(PLACE);
      await context.sync();
      const used = filled.isNullObject ? undefined : around(filled.areas.items.map(boxOf));
      const picked = selected.areas.items.map(boxOf).map((box) => cutToUsed(box, used));
      const blocks = sideBySide(picked);
      return {
        sheet: selected.worksheet.name,
        address: blocks.map((box) => boxAddress(box).replaceAll("$", "")).join(","),
        values: await valuesOf(
          context,
          blocks.map((box) => rangeOf(selected.worksheet, box)),
        ),
      };
    });
  }

  values(sheet: string, address: string): Promise<Values> {
    return run(`read ${address} of the sheet "${sheet}"`, async (context) => {
      const found = await sheetCalled(context, sheet);
      const ranges = blockAddresses(address).map((part) => found.getRange(part).load(PLACE_OF_ONE));
      await context.sync();
      return valuesOf(
        context,
        sideBySide(ranges.map((range) => ({ ...boxOf(range), range }))).map(({ range }) => range),
      );
    });
  }

  show(sheet: string, address: string): Promise<void> {
    return run(`show ${address} of the sheet "${sheet}"`, async (context) => {
      const found = (await sheetCalled(context, sheet)).load("visibility");
      await context.sync();
      if (found.visibility !== "Visible")
        throw new WorkbookError(hiddenSheet(sheet, found.visibility === "VeryHidden"));
      found.activate();
      found.getRange(blockAddresses(address)[0]).select();
      await context.sync();
    });
  }

  readContents(sheet: string, names: readonly string[]): Promise<Record<string, Values>> {
    return run(`read the formulas of the sheet "${sheet}"`, async (context) => {
      const found = await namedRanges(context, sheet, names, "formulas");
      const typed = (content: CellValue): CellValue =>
        typeof content === "string" && content.startsWith("=") ? withPlanNames(content) : content;
      return Object.fromEntries(
        [...found].map(([name, range]) => [name, (range.formulas as CellValue[][]).map((row) => row.map(typed))]),
      );
    });
  }

  hidden(sheet: string): Promise<{ rows: number[]; cols: number[] }> {
    return run(`look for hidden rows of the sheet "${sheet}"`, async (context) => {
      const used = (await sheetCalled(context, sheet)).getUsedRangeOrNullObject().load("rowIndex,columnIndex");
      await context.sync();
      if (used.isNullObject) return { rows: [], cols: [] };
      const rows = used.getRowProperties({ rowHidden: true });
      const cols = used.getColumnProperties({ columnHidden: true });
      await context.sync();
      return {
        rows: rows.value.flatMap(({ rowHidden }, i) => (rowHidden ? [used.rowIndex + i] : [])),
        cols: cols.value.flatMap(({ columnHidden }, i) => (columnHidden ? [used.columnIndex + i] : [])),
      };
    });
  }

  readNames(sheet: string, names: readonly string[]): Promise<Record<string, Values>> {
    return run(`read the named cells of the sheet "${sheet}"`, async (context) => {
      const found = await namedRanges(context, sheet, names, "values");
      return Object.fromEntries([...found].map(([name, range]) => [name, range.values as Values]));
    });
  }

  async fillNames(sheet: string, values: NamedColumns, blank: readonly string[] = []): Promise<void> {
    const doing = `write into the sheet "${sheet}"`;
    return run(doing, async (context) => {
      const names = [...new Set([...Object.keys(values), ...blank])];
      const found = await namedRanges(context, sheet, names, "formulas");
      const columns = new Map(
        [...found].map(([name, range]) => [
          name,
          { range, before: range.formulas.map(([first]) => first as CellValue) },
        ]),
      );
      checkFill(sheet, values, blank, (name) => columns.get(name)?.before);
      await writeColumns(context, columns, values, doing);
    });
  }

  listNames = (sheet: string): Promise<SheetName[]> =>
    run(`look at the names of the sheet "${sheet}"`, async (context) =>
      listNames(context, await sheetCalled(context, sheet)),
    );

  nameCells = (sheet: string, name: string, address: string, replace = false): Promise<void> =>
    run(`give ${address} of the sheet "${sheet}" a name`, async (context) =>
      nameCells(context, await sheetCalled(context, sheet), name, address, replace),
    );

  reenterFormulas = (sheet: string): Promise<{ found: number; left: number }> =>
    run(`enter the formulas of the sheet "${sheet}" again`, async (context) =>
      reenterFormulas(context, await sheetCalled(context, sheet)),
    );

  insertFile = (file: Uint8Array): Promise<Inserted> =>
    run("insert the sheets of the file", (context) => insertFile(context, file));

  isProtected = (sheet: string): Promise<boolean> =>
    run(`look at the sheet "${sheet}"`, async (context) => {
      const { protection } = await sheetCalled(context, sheet);
      protection.load("protected");
      await context.sync();
      return protection.protected;
    });

  protect = (sheet: string, on: boolean): Promise<void> =>
    run(`${on ? "protect" : "lift the protection of"} the sheet "${sheet}"`, async (context) =>
      protect(context, await sheetCalled(context, sheet), on),
    );

  onChange(listener: () => void): Promise<Unsubscribe> {
    return run("follow the selection", async (context) => {
      let pending: ReturnType<typeof setTimeout> | undefined;
      // Entering a value fires several events at once: the listener hears one.
      const soon = async (): Promise<void> => {
        pending ??= setTimeout(() => {
          pending = undefined;
          listener();
        }, 50);
      };
      const { workbook } = context;
      const handlers: OfficeExtension.EventHandlerResult<any>[] = [
        workbook.onSelectionChanged.add(soon),
        workbook.worksheets.onActivated.add(soon),
        workbook.worksheets.onChanged.add(soon),
        workbook.worksheets.onCalculated.add(soon),
      ];
      await context.sync();
      return () => {
        clearTimeout(pending);
        const stop = async (same: Excel.RequestContext): Promise<void> => {
          handlers.forEach((handler) => handler.remove());
          await same.sync();
        };
        Excel.run(handlers[0].context, stop).catch(() => undefined);
      };
    });
  }
}
