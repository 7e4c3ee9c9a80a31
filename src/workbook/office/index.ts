/**
 * The workbook port for Excel, through the globals `Excel` and `Office` of the Office JavaScript library (ExcelApi 1.9;
 * notes of 1.18, files of 1.13 and spill parents of 1.12 if the host has them).
 */
import { say, verbatim, type Message } from "../../reduction/message";
import { isFormula } from "../contents";
import { firstOf, nth } from "../../reduction/numeric/lists";
import { boxAddress } from "../address";
import { asColumn, lengthOf, liesAcross } from "../lists";
import { checkFill } from "../rules/fill";
import { blockAddresses, joined, sideBySide } from "../picked";
import {
  WorkbookError,
  type Asked,
  type Box,
  type CellContent,
  type CellValue,
  type Change,
  type FoundSheet,
  type Inserted,
  type KindOfWork,
  type Looked,
  type NamedAddress,
  type NamedColumns,
  type Selection,
  type SheetName,
  type SheetPlan,
  type SheetValues,
  type Unsubscribe,
  type WorkbookPort,
  type WorkNote,
} from "../port";
import type { Course } from "../in-slices";
import { hiddenSheet } from "../rules/sheet-names";
import { run, runOn } from "./batch";
import { wantedOf, writeColumns, type Column } from "./fill";
import { followChanges, followSelection } from "./follow";
import { hiddenLines } from "./reading/hidden";
import { withInputsOpen } from "./inputs";
import { insertFile } from "./insert-file";
import { note, strike, unfinishedWork } from "./journal";
import { lookAt } from "./reading/look-at";
import { LAST_COLUMN, LAST_ROW, withPlanNames } from "./names";
import { insertSheet } from "./new-sheet";
import { isWhole, itemsOf, NAME_PROPERTIES, type Named } from "./reading/places";
import {
  boxOfRange,
  namedCells,
  PLACE_OF_ONE,
  readBoxes,
  readValues,
  withNamesThere,
  type Wanted,
} from "./reading/read";
import { reenterFormulas } from "./reenter";
import { findSheets, readSheets } from "./reading/sheets";
import { listNames, nameAll, protect } from "./upkeep";
import { writeCells } from "./write-cells";

type Values = Selection["values"];

const PLACE = "items/rowIndex,items/columnIndex,items/rowCount,items/columnCount";

/** The smallest box around boxes. */
function around(boxes: readonly Box[]): Box {
  const row = Math.min(...boxes.map((box) => box.row));
  const col = Math.min(...boxes.map((box) => box.col));
  const bottom = Math.max(...boxes.map((box) => box.row + box.rows));
  const right = Math.max(...boxes.map((box) => box.col + box.cols));
  return { row, col, rows: bottom - row, cols: right - col };
}

/** Cuts whole columns and whole rows to the filled rows and columns. */
function cutToUsed(box: Box, used: Box): Box {
  return {
    ...box,
    ...(box.rows === LAST_ROW && { row: used.row, rows: used.rows }),
    ...(box.cols === LAST_COLUMN && { col: used.col, cols: used.cols }),
  };
}

/** The selected blocks; whole columns or rows are cut to their filled part. */
async function pickedBlocks(context: Excel.RequestContext, selected: Excel.RangeAreas): Promise<Box[]> {
  const picked = selected.areas.items.map(boxOfRange);
  if (!picked.some(isWhole)) return picked;
  const filled = selected.getUsedRangeAreasOrNullObject(true).load("address");
  await context.sync();
  if (filled.isNullObject) return picked.map((box) => cutToUsed(box, { ...box, rows: 1, cols: 1 }));
  filled.areas.load(PLACE);
  await context.sync();
  const used = around(filled.areas.items.map(boxOfRange));
  return picked.map((box) => cutToUsed(box, used));
}

const valuesOf = async (
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  blocks: readonly Box[],
): Promise<Values> =>
  joined(
    await readBoxes(
      context,
      blocks.map((box) => ({ within: sheet, box })),
      "values",
    ),
  );

/** The names of a sheet that lead to cells of it, with their boxes; others are left out. */
async function namedItems(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  names: readonly string[],
): Promise<Map<string, Named<Excel.NamedItem>>> {
  const own = sheet.names.load(NAME_PROPERTIES);
  const shared = context.workbook.names.load(NAME_PROPERTIES);
  sheet.load("name");
  await context.sync();
  return itemsOf(sheet.name, { own: own.items, shared: shared.items }, names);
}

/** Reads the cells of each name with a reader. */
async function readNamed(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  names: readonly string[],
  read: (context: Excel.RequestContext, wanted: readonly Wanted[]) => Promise<CellValue[][][]>,
): Promise<Record<string, CellValue[][]>> {
  return withNamesThere(async (byPlace) => {
    const places = [...(await namedItems(context, sheet, names))];
    const cells = await read(
      context,
      places.map(([, named]) => namedCells(named, byPlace ? sheet : undefined)),
    );
    return Object.fromEntries(places.map(([name], i) => [name, nth(cells, i)]));
  });
}

/** What the cells of a column hold, and what they show. */
interface Present {
  readonly contents: readonly CellValue[];
  readonly shown: readonly CellValue[];
}

/**
 * What each column's cells hold and show. In the content an apostrophe stands before a text that begins like a formula: Excel returns it
 * like a formula, but the cell shows it as text.
 */
async function presentIn(
  context: Excel.RequestContext,
  columns: ReadonlyMap<string, Column>,
): Promise<Map<string, Present>> {
  const doubtful = [...columns].filter(([, { before }]) => before.some(isFormula));
  const values = await readBoxes(context, wantedOf(doubtful.map(([, column]) => column)), "values");
  const present = new Map(
    [...columns].map(([name, { before }]): [string, Present] => [name, { contents: before, shown: before }]),
  );
  doubtful.forEach(([name, { before }], i) => {
    const shown = asColumn(nth(values, i)).map((line) => firstOf(line));
    const contents = before.map((content, row) =>
      isFormula(content) && nth(shown, row) === content ? `'${String(content)}` : content,
    );
    present.set(name, { contents, shown });
  });
  return present;
}

export class OfficePort implements WorkbookPort {
  readonly host = "excel";
  readonly #listeners = new Set<(change: Change) => void>();

  /**
   * On the Mac and on an iPad a download through a link does nothing, by design of the host (office-js issues 2700,
   * 3385).
   */
  get savesFiles(): boolean {
    return !["Mac", "iOS"].includes(String(Office.context.platform));
  }

  sheetNames(): Promise<string[]> {
    return run(say`list the sheets`, async (context) => {
      const sheets = context.workbook.worksheets.load("items/name");
      await context.sync();
      return sheets.items.map(({ name }) => name);
    });
  }

  activeSheet(): Promise<string> {
    return run(say`look which sheet is in front`, async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet().load("name");
      await context.sync();
      return sheet.name;
    });
  }

  readSheets = (names: readonly string[]): Promise<SheetValues[]> =>
    run(say`read the sheets`, (context) => readSheets(context, names));

  findSheets = (names: readonly string[]): Promise<FoundSheet[]> =>
    run(say`look for the data sheets`, (context) => findSheets(context, names));

  lookAt = (asked: readonly Asked[]): Promise<Looked[]> =>
    run(say`read the named cells`, (context) => lookAt(context, asked));

  /**
   * The library has no property for it. DATE gives the number of this day: 0 if days are counted from 1904, otherwise 1462. That
   * `Workbook.functions` counts as the workbook does is not documented.
   */
  countsFrom1904 = (): Promise<boolean> =>
    run(say`look how the workbook counts days`, async (context) => {
      const first = context.workbook.functions.date(1904, 1, 1).load("value");
      await context.sync();
      return first.value === 0;
    });

  calculate = (): Promise<void> =>
    run(say`calculate the workbook`, async (context) => {
      context.workbook.application.calculate("Recalculate");
      await context.sync();
    });

  insertSheet = (
    plan: SheetPlan,
    tell: (sentence: Message) => void = () => undefined,
    course?: Course,
  ): Promise<string> => insertSheet(plan, tell, course);

  selection(): Promise<Selection> {
    return run(say`read the selection`, async (context) => {
      // A selected chart or picture is not a range: Excel refuses, and the sentence says what to select.
      const selected = context.workbook.getSelectedRanges();
      const sheet = selected.worksheet.load("name");
      selected.areas.load(PLACE);
      await context.sync();
      const blocks = sideBySide(await pickedBlocks(context, selected));
      return {
        sheet: sheet.name,
        address: blocks.map((box) => boxAddress(box).replaceAll("$", "")).join(","),
        values: await valuesOf(context, sheet, blocks),
      };
    });
  }

  values(sheet: string, address: string): Promise<Values> {
    return runOn(sheet, say`read ${verbatim(address)} of the sheet "${verbatim(sheet)}"`, async (context, found) => {
      const ranges = blockAddresses(address).map((part) => found.getRange(part).load(PLACE_OF_ONE));
      const filled = found.getUsedRangeOrNullObject(true).load(PLACE_OF_ONE);
      await context.sync();
      const used = filled.isNullObject ? { row: 0, col: 0, rows: 1, cols: 1 } : boxOfRange(filled);
      return valuesOf(context, found, sideBySide(ranges.map((range) => cutToUsed(boxOfRange(range), used))));
    });
  }

  show(sheet: string, address: string): Promise<void> {
    return runOn(sheet, say`show ${verbatim(address)} of the sheet "${verbatim(sheet)}"`, async (context, found) => {
      found.load("visibility");
      // The address is loaded first, so that a wrong address is refused before the sheet comes to the front.
      const range = found.getRange(blockAddresses(address)[0]).load("address");
      await context.sync();
      if (found.visibility !== "Visible")
        throw new WorkbookError(hiddenSheet(sheet, found.visibility === "VeryHidden"));
      found.activate();
      range.select();
      await context.sync();
    });
  }

  readContents(sheet: string, names: readonly string[]): Promise<Record<string, Values>> {
    const typed = (content: CellValue): CellValue => (isFormula(content) ? withPlanNames(content) : content);
    return runOn(sheet, say`read the formulas of the sheet "${verbatim(sheet)}"`, async (context, found) => {
      const contents = await readNamed(context, found, names, (same, wanted) => readBoxes(same, wanted, "formulas"));
      return Object.fromEntries(
        Object.entries(contents).map(([name, rows]) => [name, rows.map((row) => row.map(typed))]),
      );
    });
  }

  hidden = (sheet: string): Promise<{ rows: number[]; cols: number[] }> =>
    runOn(sheet, say`look for hidden rows of the sheet "${verbatim(sheet)}"`, hiddenLines);

  readNames = (sheet: string, names: readonly string[]): Promise<Record<string, Values>> =>
    runOn(sheet, say`read the named cells of the sheet "${verbatim(sheet)}"`, (context, found) =>
      readNamed(context, found, names, readValues),
    );

  fillNames(
    sheet: string,
    values: NamedColumns,
    blank: readonly string[] = [],
    free: readonly string[] = [],
    held: NamedColumns = {},
  ): Promise<void> {
    const doing = say`write into the sheet "${verbatim(sheet)}"`;
    return runOn(sheet, doing, async (context, found) => {
      // Loaded with the names.
      const protection = found.protection.load("protected");
      const names = [...new Set([...Object.keys(values), ...blank, ...Object.keys(held)])];
      const blankColumns = new Map(
        [...(await namedItems(context, found, names))].map(([name, { item, box }]): [string, Column] => [
          name,
          {
            within: item.getRange(),
            before: Array<CellValue>(lengthOf(box)).fill(""),
            isAcross: liesAcross(box),
          },
        ]),
      );
      const contents = await readBoxes(context, wantedOf([...blankColumns.values()]), "formulas");
      const columns = new Map(
        [...blankColumns].map(([name, column], i): [string, Column] => [
          name,
          { ...column, before: asColumn(nth(contents, i)).map((line) => firstOf(line)) },
        ]),
      );
      const present = await presentIn(context, columns);
      checkFill(
        sheet,
        values,
        { blank, free, held },
        (name) => present.get(name)?.contents,
        (name) => present.get(name)?.shown,
      );
      await withInputsOpen(context, found, protection, { columns, values }, (first) =>
        writeColumns(context, columns, { sheet, values, doing }, first),
      );
    });
  }

  writeCells = (
    sheet: string,
    cells: readonly CellContent[],
    replace = false,
    names?: readonly SheetName[],
  ): Promise<void> =>
    runOn(sheet, say`write into the sheet "${verbatim(sheet)}"`, (context, found) =>
      writeCells(context, found, { sheet, cells, replace, names }),
    );

  listNames = (sheet: string): Promise<SheetName[]> =>
    runOn(sheet, say`look at the names of the sheet "${verbatim(sheet)}"`, listNames);

  async nameAll(sheet: string, names: readonly NamedAddress[], before?: readonly SheetName[]): Promise<void> {
    await runOn(sheet, say`name cells of the sheet "${verbatim(sheet)}"`, (context, found) =>
      nameAll(context, found, names, before),
    );
    // Excel has no event for names.
    this.#listeners.forEach((listener) => listener("sheets"));
  }

  reenterFormulas = (sheet: string, course?: Course): Promise<{ found: number; left: number }> =>
    runOn(sheet, say`enter the formulas of the sheet "${verbatim(sheet)}" again`, (context, found) =>
      reenterFormulas(context, found, course),
    );

  insertFile = (file: Uint8Array): Promise<Inserted> =>
    run(say`insert the sheets of the file`, (context) => insertFile(context, file));

  isProtected = (sheet: string): Promise<boolean> =>
    runOn(sheet, say`look at the sheet "${verbatim(sheet)}"`, async (context, found) => {
      found.protection.load("protected");
      await context.sync();
      return found.protection.protected;
    });

  protect = (sheet: string, on: boolean): Promise<void> =>
    runOn(
      sheet,
      on ? say`protect the sheet "${verbatim(sheet)}"` : say`lift the protection of the sheet "${verbatim(sheet)}"`,
      (context, found) => protect(context, found, on),
    );

  async onChange(listener: (change: Change) => void): Promise<Unsubscribe> {
    const stop = await followChanges(listener);
    this.#listeners.add(listener);
    return () => {
      this.#listeners.delete(listener);
      stop();
    };
  }

  onSelect = (listener: () => void): Promise<Unsubscribe> => followSelection(listener);

  noteWork = (kind: KindOfWork, sheet: string): Promise<string> =>
    run(say`write into the workbook`, async (context) => {
      const id = note(context, kind, sheet);
      await context.sync();
      return id;
    });

  strikeWork = (id: string): Promise<void> =>
    run(say`write into the workbook`, async (context) => {
      strike(context, id);
      await context.sync();
    });

  unfinishedWork = (): Promise<WorkNote[]> => run(say`look for unfinished work`, unfinishedWork);
}
