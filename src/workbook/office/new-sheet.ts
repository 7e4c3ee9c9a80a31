/**
 * Makes a new sheet from a plan, completely or not at all. Parts that the sheet can do without are reported instead.
 */
import { say, verbatim, type Message } from "../../reduction/message";
import { Stopped, type Course } from "../in-slices";
import { FONT } from "../look/look";
import { refuseReadElsewhere } from "../rules/moved";
import { checkPlan } from "../rules/plan-check";
import { WorkbookError, type SheetPlan } from "../port";
import { rowBands } from "../look/row-bands";
import { freeSheetName } from "../rules/sheet-names";
import { addCharts } from "./look/charts";
import { blocks, widthInPoints, type Block } from "./grid";
import { note, strike } from "./journal";
import { localName } from "./names";
import { layOut } from "./look/print";
import { rangeOf } from "./reading/read";
import { bytesOf, goOn, send, type Step } from "./requests";
import { rulesOf } from "./look/rules";
import { isTaken, PROTECTED, told } from "./sentence";
import { listNames, PROTECTION } from "./upkeep";

/** A sheet that was asked for; it has an id once Excel has answered. */
interface Begun {
  readonly name: string;
  readonly id?: string;
  /** The id of the note that the sheet is being made. */
  readonly noted: string;
}

/**
 * Adds a sheet under a free name. Chart sheets are not listed but have names: if the name is taken, the next one is
 * tried. `begin` gets each name before Excel is asked for it.
 */
async function addSheet(
  context: Excel.RequestContext,
  wanted: string,
  begin: (begun: Begun | undefined) => void,
): Promise<{ readonly sheet: Excel.Worksheet; readonly noted: string }> {
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
    const noted = note(context, "sheet", name);
    begin({ name, noted });
    try {
      await context.sync();
      begin({ name: sheet.name, id: sheet.id, noted });
      return { sheet, noted };
    } catch (error) {
      if (!isTaken(error)) throw error;
      begin(undefined);
      if (taken.includes(name)) throw error;
      taken.push(name);
    }
  }
}

/** The font of the cells, set before any cell gets its look: Excel's default font differs from workbook to workbook. */
const fontStep = (sheet: Excel.Worksheet, { rows, cols }: SheetPlan): Step => ({
  act: () => {
    const { font } = rangeOf(sheet, { row: 0, col: 0, rows, cols }).format;
    font.name = FONT.name;
    font.size = FONT.size;
  },
});

const nameSteps = (sheet: Excel.Worksheet, { names }: SheetPlan): Step[] =>
  Object.entries(names).map(([name, box]) => ({
    act: () => sheet.names.add(localName(name), rangeOf(sheet, box)),
  }));

/** Formulas come before formats: a formula typed into a cell of text format would stay a text. */
const cellSteps = (sheet: Excel.Worksheet, cut: readonly Block[]): Step[] =>
  cut.map(({ box, formulas, formats, looks }) => ({
    bytes: bytesOf([formulas, formats, looks]),
    act: () => {
      const range = rangeOf(sheet, box);
      range.formulas = formulas;
      range.numberFormat = formats;
      range.setCellProperties(looks);
    },
  }));

function furnishSteps(sheet: Excel.Worksheet, plan: SheetPlan): Step[] {
  const column = (col: number): Excel.RangeFormat => sheet.getRangeByIndexes(0, col, 1, 1).getEntireColumn().format;
  const rows = (first: number, count: number): Excel.RangeFormat =>
    sheet.getRangeByIndexes(first, 0, count, 1).getEntireRow().format;
  return [
    ...plan.merges.map((box) => ({ act: () => rangeOf(sheet, box).merge() })),
    ...Object.entries(plan.columnWidths).map(([col, characters]) => ({
      act: () => {
        column(Number(col)).columnWidth = widthInPoints(characters);
      },
    })),
    ...rowBands(plan.rowHeights ?? {}).map((band) => ({
      act: () => {
        rows(band.first, band.rows).rowHeight = band.points;
      },
    })),
    ...rulesOf(plan).map(({ box, rule, alert }) => ({
      bytes: bytesOf([rule, alert]),
      act: () => {
        const { dataValidation } = rangeOf(sheet, box);
        dataValidation.rule = rule;
        dataValidation.errorAlert = alert;
      },
    })),
    ...(plan.open ?? []).map((box) => ({
      act: () => {
        rangeOf(sheet, box).format.protection.locked = false;
      },
    })),
  ];
}

/** Notes have Excel's own size: on the web their width and height cannot be set (@types/office-js, Note.height). */
async function addNotes(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  plan: SheetPlan,
): Promise<Message | undefined> {
  const noted = plan.cells.flatMap(({ row, col, note }) => (note ? [{ row, col, note }] : []));
  if (noted.length === 0 || !Office.context.requirements.isSetSupported("ExcelApi", "1.18")) return undefined;
  try {
    await send(
      context,
      noted.map(({ row, col, note }) => ({
        bytes: bytesOf(note),
        act: () => sheet.notes.add(sheet.getRangeByIndexes(row, col, 1, 1), note),
      })),
    );
    return undefined;
  } catch {
    return say`Excel did not take all notes of the sheet: what each cell means stands in the add-in's help.`;
  }
}

const AS_IT_WAS = say`The workbook is as it was.`;

/** Deletes an unfinished sheet, and says what the workbook holds then. */
async function remove(begun: Begun | undefined): Promise<Message> {
  if (!begun) return AS_IT_WAS;
  try {
    await Excel.run({ delayForCellEdit: true }, async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(begun.id ?? begun.name).load("id");
      strike(context, begun.noted);
      await context.sync();
      if (sheet.isNullObject) return;
      if (begun.id === undefined) {
        // A sheet that is known only by its name may belong to somebody else: it stays if it holds anything.
        const used = sheet.getUsedRangeOrNullObject().load("address");
        await context.sync();
        if (!used.isNullObject) return;
      }
      sheet.delete();
      await context.sync();
    });
    return AS_IT_WAS;
  } catch {
    return say`An unfinished sheet "${verbatim(begun.name)}" was left behind: delete it.`;
  }
}

/** The formulas and charts that stand by now follow their cells; before, rows may have been inserted above these. */
async function checkRead(context: Excel.RequestContext, plan: SheetPlan): Promise<void> {
  if (!plan.reads) return;
  const sheet = context.workbook.worksheets.getItemOrNullObject(plan.reads.sheet).load("name");
  await context.sync();
  refuseReadElsewhere(plan, sheet.isNullObject ? undefined : await listNames(context, sheet));
}

/** The share of the work that is done when the cells are filled in, as a rule. */
const FILLED_IN = 0.8;

/**
 * `tell` gets a sentence for each part that the sheet was made without. Throws Stopped if a person stops the work between
 * two requests; the sheet is then deleted again.
 */
export async function insertSheet(
  plan: SheetPlan,
  tell: (sentence: Message) => void,
  course?: Course,
): Promise<string> {
  checkPlan(plan);
  const cut = blocks(plan);
  let made: Begun | undefined;
  let doing = say`add a sheet`;
  try {
    return await Excel.run({ delayForCellEdit: true }, async (context) => {
      const { sheet, noted } = await addSheet(context, plan.name, (begun) => (made = begun));
      doing = say`fill in the new sheet`;
      goOn(course, 0);
      await send(
        context,
        [fontStep(sheet, plan), ...nameSteps(sheet, plan), ...cellSteps(sheet, cut), ...furnishSteps(sheet, plan)],
        course && { ...course, tell: (share) => course.tell(share * FILLED_IN) },
      );
      goOn(course, FILLED_IN);
      const left = [await addNotes(context, sheet, plan), ...(await layOut(context, sheet, plan))];
      goOn(course, (1 + FILLED_IN) / 2);
      doing = say`draw the charts of the new sheet`;
      await addCharts(context, sheet, plan.charts ?? []);
      await checkRead(context, plan);
      doing = say`show the new sheet`;
      if (plan.isProtected) sheet.protection.protect(PROTECTION);
      if (!plan.behind) {
        sheet.activate();
        sheet.getCell(0, 0).select();
      }
      strike(context, noted);
      await context.sync();
      left.forEach((sentence) => sentence && tell(sentence));
      return sheet.name;
    });
  } catch (error) {
    const after = await remove(made);
    if (error instanceof WorkbookError && after !== AS_IT_WAS)
      throw new WorkbookError(say`${error.said} ${after}`, { cause: error });
    throw error instanceof Stopped && after === AS_IT_WAS ? error : told(error, doing, after);
  }
}
