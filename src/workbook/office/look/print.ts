/**
 * Sets the printed pages of a new sheet (ExcelApi 1.9), and freezes its first rows. A setting that Excel refuses is
 * reported; the sheet is complete without it.
 */
import { say, verbatim, listed, type Message } from "../../../reduction/message";
import { boxAddress } from "../../address";
import { footerOf } from "../../look/footer";
import { charactersAcross, isLandscape } from "../../look/paper";
import type { Box, SheetPlan } from "../../port";
import { widthInPoints } from "../grid";
import { rangeOf } from "../reading/read";

type Paper = NonNullable<SheetPlan["paper"]>;

const PAPER_SIZES: Readonly<Record<Paper, Excel.PageLayout["paperSize"]>> = { A4: "A4", Letter: "Letter" };

/** Short and long side in points: ISO 216 and ANSI Y14.1. */
const SIDES: Readonly<Record<Paper, readonly [number, number]>> = { A4: [595, 842], Letter: [612, 792] };

/** Left and right margin in points, as in a new sheet of Excel: 0.7 inch. */
const MARGIN = 50.4;

/**
 * The longest print area, in characters. Excel's object model for macros takes 255; the limit of the JavaScript library
 * is not documented, so longer areas are avoided.
 */
const LONGEST_AREA = 255;

/**
 * What stands between the areas of a print area. Some desktop Excels take only the list separator of the computer's region, in German a
 * semicolon (office-js issues 1167 and 1985, of `Worksheet.getRanges`; the typings of `setPrintArea` do not say which they take).
 */
const COMMA = ",";
const SEMICOLON = ";";

const areaOf = (pages: readonly Box[], separator: string): string => pages.map(boxAddress).join(separator);

/** The smallest box around pages. */
function around(pages: readonly Box[]): Box {
  const row = Math.min(...pages.map((page) => page.row));
  const col = Math.min(...pages.map((page) => page.col));
  return {
    row,
    col,
    rows: Math.max(...pages.map((page) => page.row + page.rows)) - row,
    cols: Math.max(...pages.map((page) => page.col + page.cols)) - col,
  };
}

/** The scale in percent at which the columns of a box are as wide as the paper. */
function scaleOf(box: Box, { columnWidths, paper = "A4" }: SheetPlan, landscape: boolean): number {
  const room = SIDES[paper][landscape ? 1 : 0] - 2 * MARGIN;
  // widthInPoints adds the margin of one column; a box has the margins of all its columns.
  const width = widthInPoints(charactersAcross(box, columnWidths)) + (box.cols - 1) * widthInPoints(0);
  return Math.max(10, Math.min(100, Math.floor((100 * room) / width)));
}

type Way = (sheet: Excel.Worksheet, layout: Excel.PageLayout) => void;

/** One setting, with words that follow "did not take"; without words, the first rows are frozen. */
interface Setting {
  readonly what?: Message;
  readonly set: Way;
  /** Other ways to the same, which are tried in this order if Excel refuses the first. */
  readonly others?: readonly Way[];
}

/**
 * The ways to make each page an area of its own, as wide as the paper. Many pages, and pages whose areas Excel refuses, become one
 * area with breaks, at a scale: Excel ignores breaks if it fits pages to the paper (Microsoft, "Insert, move, or delete page breaks in
 * a worksheet").
 */
function pagesOf(plan: SheetPlan): Pick<Setting, "set" | "others"> {
  const pages = plan.pages ?? [{ row: 0, col: 0, rows: plan.rows, cols: plan.cols }];
  const landscape = isLandscape(pages, plan.columnWidths);
  const asAreas =
    (area: string): Way =>
    (_, layout) => {
      layout.orientation = landscape ? "Landscape" : "Portrait";
      // Some desktop Excels do not fit pages unless their Page Layout tab is in front (office-js issue 1860): they keep
      // this scale.
      layout.zoom = { scale: Math.min(...pages.map((page) => scaleOf(page, plan, landscape))) };
      layout.zoom = { horizontalFitToPages: 1 };
      layout.setPrintArea(area);
    };
  const withBreaks: Way = (sheet, layout) => {
    layout.orientation = landscape ? "Landscape" : "Portrait";
    const whole = around(pages);
    layout.leftMargin = MARGIN;
    layout.rightMargin = MARGIN;
    layout.zoom = { scale: scaleOf(whole, plan, landscape) };
    layout.setPrintArea(boxAddress(whole));
    sheet.horizontalPageBreaks.removePageBreaks();
    const tops = [...new Set(pages.map(({ row }) => row))].sort((a, b) => a - b);
    for (const row of tops.slice(1)) sheet.horizontalPageBreaks.add(rangeOf(sheet, { row, col: 0, rows: 1, cols: 1 }));
    const lefts = [...new Set(pages.map(({ col }) => col))].sort((a, b) => a - b);
    if (lefts.length === 1) return;
    sheet.verticalPageBreaks.removePageBreaks();
    for (const col of lefts.slice(1)) sheet.verticalPageBreaks.add(rangeOf(sheet, { row: 0, col, rows: 1, cols: 1 }));
  };
  const area = areaOf(pages, COMMA);
  if (area.length > LONGEST_AREA) return { set: withBreaks };
  if (pages.length === 1) return { set: asAreas(area) };
  // Breaks go across the whole sheet: they would cut pages that lie beside one another.
  const isColumn = pages.every(({ col }) => col === pages[0]?.col);
  return { set: asAreas(area), others: [asAreas(areaOf(pages, SEMICOLON)), ...(isColumn ? [withBreaks] : [])] };
}

function settingsOf(plan: SheetPlan): Setting[] {
  const { paper, freezeRows } = plan;
  return [
    { what: say`the printed pages`, ...pagesOf(plan) },
    ...(freezeRows > 0
      ? [
          // Refused by builds of Excel 2019 without a reason (office-js issue 2196).
          { set: (sheet: Excel.Worksheet) => sheet.freezePanes.freezeRows(freezeRows) },
          {
            what: say`the rows repeated on each page`,
            set: (sheet: Excel.Worksheet, layout: Excel.PageLayout) =>
              layout.setPrintTitleRows(sheet.getRangeByIndexes(0, 0, freezeRows, 1).getEntireRow()),
          },
        ]
      : []),
    {
      what: say`the footer`,
      set: (_, layout) => {
        const footer = layout.headersFooters.defaultForAllPages;
        const { left, right } = footerOf(plan);
        footer.leftFooter = left;
        footer.centerFooter = "";
        footer.rightFooter = right;
      },
    },
    ...(paper
      ? [
          {
            what: say`the paper size ${verbatim(paper)}`,
            set: (_: Excel.Worksheet, layout: Excel.PageLayout) => {
              layout.paperSize = PAPER_SIZES[paper];
            },
          },
        ]
      : []),
  ];
}

const NOT_FROZEN = say`Excel did not freeze the first rows of the sheet: choose View, Freeze Panes.`;

/** Tries ways one after another, each in a request of its own, until Excel takes one. */
async function isTaken(context: Excel.RequestContext, sheet: Excel.Worksheet, ways: readonly Way[]): Promise<boolean> {
  for (const way of ways) {
    try {
      way(sheet, sheet.pageLayout);
      await context.sync();
      return true;
    } catch {
      // The next way is tried.
    }
  }
  return false;
}

/**
 * Sets the pages and the frozen rows in one request; if it is refused, one setting after another. Returns sentences on
 * the settings that failed.
 */
export async function layOut(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  plan: SheetPlan,
): Promise<Message[]> {
  const settings = settingsOf(plan);
  try {
    for (const { set } of settings) set(sheet, sheet.pageLayout);
    await context.sync();
    return [];
  } catch {
    const refused: Message[] = [];
    const left: Message[] = [];
    for (const { what, set, others = [] } of settings) {
      if (await isTaken(context, sheet, [set, ...others])) continue;
      if (what) refused.push(what);
      else left.push(NOT_FROZEN);
    }
    return refused.length === 0
      ? left
      : [
          say`Excel did not take ${listed(refused)} of the sheet, as where no printer is set up: look at Page Layout before you print.`,
          ...left,
        ];
  }
}
