/**
 * Completes the data that the engine's reader makes of a file, by what was read of each sheet.
 * Casts: the engine's reader returns data without types.
 */
import { say, verbatim, type Message } from "../../../../reduction/message";
import { helpers } from "@odoo/o-spreadsheet";
import { asShares } from "../../../in-slices";
import type { Protection } from "../../protection";
import { bareText, inZonesOf, TEXT_FORMAT } from "../../typing/text";
import type { Cells } from "../cells";
import { putCharts } from "../charts";
import { putAllHours } from "../looks";
import { placeFigures } from "../pictures";
import type { Parts } from "../parts";
import { loading } from "./by-sheet";
import { makeRoom, mergesWithin, rangesWithin, within, type Sized } from "../room";
import type { Names } from "./names";
import type { Kept } from "./sheet";

type Sheet = Record<string, any>;

/**
 * Removes apostrophes in cells of text format, where the engine would show them: the format alone keeps a text from
 * being read as a number or a date.
 */
function bareTexts(sheet: any, formats: Readonly<Record<string, string>>): void {
  const isText = inZonesOf(sheet.formats, (id) => formats[id] === TEXT_FORMAT);
  for (const [address, content] of Object.entries<string>(sheet.cells))
    if (content?.startsWith?.("'") && isText(address)) sheet.cells[address] = bareText(content);
}

/** The engine reads a negative limit in a file as a formula. */
const plainNumber = (limit: string): string => limit.replace(/^=(?=-[\d.]+(?:e[+-]?\d+)?$)/i, "");

/** Cuts open rows to the size of the sheet. */
const protectionWithin = (sheet: Sized, protection: Protection | undefined): Protection | undefined =>
  protection && { ...protection, open: protection.open.flatMap((zone) => within(zone, sheet) ?? []) };

/** Rows in a closed group lose their own hidden mark: the group hides them, and opening the group shows them. */
const inGroups = (
  rows: Cells["rows"],
  groups: readonly { readonly isFolded: boolean; readonly start: number; readonly end: number }[],
): Cells["rows"] => {
  const closed = groups.filter(({ isFolded }) => isFolded);
  if (closed.length === 0) return rows;
  return Object.fromEntries(
    Object.entries(rows).map(([row, own]) => {
      const isIn = closed.some(({ start, end }) => start <= Number(row) && Number(row) <= end);
      return [row, isIn ? { ...own, isHidden: false } : own];
    }),
  );
};

/** Gives the sheet its cells, with the formulas that only the engine's own reader understands. */
function putCells(sheet: Sheet, { read: cells, own }: Kept): void {
  const formulas = Object.fromEntries([...cells.left].map((at) => [at, sheet.cells[at] ?? cells.cells[at]]));
  const { styles, formats, borders, rowNumber, colNumber } = cells;
  Object.assign(sheet, own, { styles, formats, borders, rowNumber, colNumber });
  sheet.cells = { ...cells.cells, ...formulas };
  sheet.rows = inGroups(cells.rows, sheet.headerGroups?.ROW ?? []);
  // The engine's own lock would lock inputs too.
  sheet.isLocked = false;
}

/** Makes room for the named cells, the merges and the figures. Returns what was cut. */
function fitted(sheets: readonly Sheet[], sized: ReadonlyMap<string, Sized>, ranges: Names["ranges"]): Message[] {
  for (const range of Object.values(ranges)) {
    const { sheetName, xc } = helpers.splitReference(range);
    const { right, bottom } = helpers.toZone(xc);
    const sheet = sized.get(sheetName!);
    if (sheet) makeRoom(sheet, { col: right, row: bottom });
  }
  return sheets.flatMap((sheet) => {
    const { merges, remarks } = mergesWithin(sheet.merges, sheet as Sized);
    sheet.merges = merges;
    for (const figure of sheet.figures) {
      makeRoom(sheet as Sized, { col: figure.col ?? 0, row: figure.row ?? 0 });
      figure.col = Math.min(figure.col ?? 0, sheet.colNumber - 1);
      figure.row = Math.min(figure.row ?? 0, sheet.rowNumber - 1);
    }
    return remarks;
  });
}

/** The names, cut to their sheets, and a sentence for each that was cut. */
function namedWithin(ranges: Names["ranges"], sized: ReadonlyMap<string, Sized>) {
  const cut: Message[] = [];
  const entries = Object.entries(ranges).flatMap(([name, range]) => {
    const { sheetName, xc } = helpers.splitReference(range);
    const [present] = rangesWithin([xc], sized.get(sheetName!)!);
    if (present !== xc)
      cut.push(
        say`The name ${verbatim(name)} leads to ${verbatim(xc)}, far beyond the cells of its sheet: it was cut there.`,
      );
    return present === undefined ? [] : [[name, range.slice(0, range.length - xc.length) + present]];
  });
  return { named: Object.fromEntries(entries) as Names["ranges"], cut };
}

/**
 * A conditional format sets neither the size of a font nor the wrapping of a text, in Excel or here: the engine's reader gives each
 * one its defaults, which would prevail over those of the cell.
 */
function withoutDefaults(style: Sheet | undefined): void {
  delete style?.["fontSize"];
  delete style?.["wrapping"];
}

/** Completes the rules of entry, the conditional formats, the protection and the panes of a sheet. */
function putRules(sheet: Sheet, { words, protection }: Kept): void {
  for (const rule of sheet.dataValidationRules) {
    rule.words = words.get(rule.ranges.join(" "));
    rule.criterion.values = rule.criterion.values.map(plainNumber);
  }
  for (const { rule } of sheet.conditionalFormats) withoutDefaults(rule.style);
  for (const list of ["dataValidationRules", "conditionalFormats"])
    sheet[list] = sheet[list].flatMap((one: { ranges: string[] }) => {
      const ranges = rangesWithin(one.ranges, sheet as Sized);
      return ranges.length > 0 ? [{ ...one, ranges }] : [];
    });
  sheet.protection = protectionWithin(sheet as Sized, protection);
  const { xSplit = 0, ySplit = 0 } = sheet.panes ?? {};
  sheet.panes = { xSplit: xSplit < sheet.colNumber ? xSplit : 0, ySplit: ySplit < sheet.rowNumber ? ySplit : 0 };
}

/** The share of the work that is done when the engine has read the sheets. */
const LOADED_SHARE = 0.6;

/** The data of the workbook, and what was cut, in steps that give the share that is done. */
export function* dataOf(
  rest: Parts,
  pictures: Readonly<Record<string, unknown>>,
  kept: ReadonlyMap<string, Kept>,
  { ranges }: Names,
) {
  const isWhole = [...kept.values()].some(({ read }) => read.left.size > 0);
  const data = yield* asShares(loading(rest, pictures, isWhole), (share) => LOADED_SHARE * share);
  putAllHours(data.formats);
  const sheets: readonly Sheet[] = data.sheets;
  const keptOf = ({ name }: Sheet): Kept => kept.get(name)!;
  for (const [at, sheet] of sheets.entries()) {
    putCells(sheet, keptOf(sheet));
    bareTexts(sheet, data.formats);
    placeFigures(sheet as never, keptOf(sheet).frames);
    yield LOADED_SHARE + ((1 - LOADED_SHARE) * (at + 1)) / sheets.length;
  }
  const sized = new Map<string, Sized>(sheets.map((sheet) => [sheet.name, sheet as Sized]));
  const cut = fitted(sheets, sized, ranges);
  yield 1;
  for (const sheet of sheets) putCharts(sheet as never, keptOf(sheet).charts, data.sheets);
  const { named, cut: cutNames } = namedWithin(ranges, sized);
  yield 1;
  data.namedRanges = named;
  for (const sheet of sheets) putRules(sheet, keptOf(sheet));
  return { data, cut: [...cut, ...cutNames] };
}
