/** Attaches names to a firm's own cells, and writes the formulas of the data sheet into them if they are blank. */
import {
  boxAddress,
  boxOf,
  calledAll,
  cellsOfLines,
  inPairs,
  cellsToName,
  placeOfCell,
  looksLikeTimes,
  readingLines,
  workings,
  CHECKED_NAMES,
  firmLayout,
  type SeriesLie,
  type Workings,
} from "../../../datasheet";
import { layoutOf } from "../../../record/places";
import { NAMES_WITH_FORMULAS, placedFormulas, type PlacedFormula } from "../../../specification/placed-formulas";
import { LANGUAGE_CELL } from "../../../specification/text/language";
import { indexInList, isIn } from "../../../workbook/lists";
import { blockAddresses } from "../../../workbook/picked";
import { asTyped } from "../../../reduction/message";
import {
  WorkbookError,
  type Box,
  type Looked,
  type NamedAddress,
  type SheetName,
  type WorkbookPort,
} from "../../../workbook/port";
import { noted } from "../../live/unfinished";
import { asShown, type SeenOfSheet } from "../as-shown";
import { language } from "../../text/language";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import type { Offer } from "./sheet-check-state";
import { lookAtSheet, NameTaken, type Done } from "./sheet-upkeep";

const words = text.check;

const plain = (box: Box): string => boxAddress(box).replaceAll("$", "");

const hasOwn = (names: readonly SheetName[], name: string): boolean =>
  names.some((one) => one.name.toLowerCase() === name.toLowerCase() && one.place !== "lost" && one.scope === "sheet");

/** The addresses of the first and the last cell: "B40", or "B40 – B51". */
export const placesOf = (cells: readonly PlacedFormula[]): string => {
  const [first, last] = [cells[0], cells.at(-1)];
  return first && last && last !== first
    ? `${placeOfCell(first)} – ${placeOfCell(last)}`
    : first
      ? placeOfCell(first)
      : "";
};

/**
 * The selected cells, and the names of their sheet from before: if a row is inserted later, the names lie elsewhere, and if it was
 * inserted between the two, the selection was read after it.
 */
async function selectionAndNames(port: WorkbookPort) {
  for (let sheet = await port.activeSheet(); ;) {
    const names = await port.listNames(sheet);
    const selection = await port.selection();
    if (selection.sheet === sheet) return { ...selection, names };
    ({ sheet } = selection);
  }
}

/**
 * Attaches a name to the selected cells. Throws `NameTaken` if the name refers to other cells and `replace` is false.
 */
export async function attachName(port: WorkbookPort, name: string, replace: boolean): Promise<Done> {
  const { sheet, address, values, names } = await selectionAndNames(port);
  const box = boxOf(address);
  if (!box) throw new WorkbookError(asTyped(words.oneBlock));
  const cells = cellsToName(name, box, values.flat().filter((value) => value !== "").length);
  if ("sentence" in cells) throw new WorkbookError(cells.sentence);
  const place = plain(cells.box);
  const isPresent = hasOwn(names, name);
  // The cells of a result may be more than were selected.
  const [first, last] = [values[0]?.[0], values[cells.box.rows - 1]?.[cells.box.cols - 1]];
  const ends = first === undefined || last === undefined ? undefined : ([first, last] as const);
  try {
    await port.nameAll(sheet, [{ name, address: place, replace, ...(ends && { ends }) }], names);
  } catch (error) {
    if (!isPresent || replace) throw error;
    throw new NameTaken(asTyped(sentenceOf(error)), { cause: error });
  }
  const attached = words.attached(name, place, sheet);
  return withFormula(port, sheet, name, attached).catch((error: unknown) => {
    throw new WorkbookError(asTyped(`${attached} ${sentenceOf(error)}`), { cause: error });
  });
}

/**
 * Handles the formulas of a name that has just got its cells: writes them into blank cells, and offers them for the
 * other cells.
 */
async function withFormula(port: WorkbookPort, sheet: string, name: string, attached: string): Promise<Done> {
  const asked = { values: ["load_number", LANGUAGE_CELL], contents: [...new Set([name, ...NAMES_WITH_FORMULAS])] };
  const [found] = await port.lookAt([{ sheet, ...asked, names: true }]);
  const layout = layoutOf(found?.names ?? [], found?.values ?? {}, found?.contents ?? {}, language());
  const placed = placedFormulas(name, layout);
  const box = layout.places.get(name);
  if (!box) throw new WorkbookError(asTyped(words.nameGone(name)));
  if (!placed) return { sheet, telling: { intent: "success", sentence: attached } };
  if (placed.lacks.length > 0)
    return {
      sheet,
      telling: {
        intent: "success",
        sentence: `${attached} ${words.formulaWaits(calledAll(placed.lacks, layout.language))}`,
      },
    };
  const isBlank = (cell: PlacedFormula): boolean => (found?.contents[name]?.[indexInList(box, cell)]?.[0] ?? "") === "";
  const [blank, held] = [placed.cells.filter(isBlank), placed.cells.filter((cell) => !isBlank(cell))];
  await port.writeCells(sheet, blank, false, found?.names);
  const sentences = [
    attached,
    ...(blank.length > 0 ? [words.formulaWritten(name)] : []),
    ...(held.length > 0 ? [words.formulaHeld(placesOf(held))] : []),
  ];
  return {
    sheet,
    telling: { intent: held.length > 0 ? "warning" : "success", sentence: sentences.join(" ") },
    ...(held.length > 0 && { offer: { sheet, cells: held, seen: seenOf(found) } }),
  };
}

/**
 * Writes formulas over the contents of their cells, after the person agreed. Writes nothing if rows were inserted, or a cell was
 * typed into, since the cells were found.
 */
export async function mendCells(port: WorkbookPort, { sheet, cells, seen }: Offer): Promise<Done> {
  await port.writeCells(sheet, asShown(seen, cells), true, seen.names);
  return { sheet, telling: { intent: "success", sentence: words.mended(placesOf(cells), sheet) } };
}

/** Writes the formulas of all cells that have a name and are blank. */
export async function writeMissing(port: WorkbookPort): Promise<Done> {
  const sheet = await port.activeSheet();
  const { layout, seen } = await lookAtSheet(port, sheet);
  await port.writeCells(sheet, layout.unwritten, false, seen.names);
  const { held, waiting } = layout;
  const sentences = [
    words.written(layout.unwritten.length, sheet),
    ...(held.length > 0 ? [words.leftHeld(held.map(({ cell }) => placeOfCell(cell)).join(", "))] : []),
    ...(waiting.length > 0
      ? [
          words.leftWaiting(
            calledAll(
              waiting.map(({ name }) => name),
              language(),
            ),
          ),
        ]
      : []),
  ];
  return {
    sheet,
    telling: { intent: held.length + waiting.length > 0 ? "warning" : "success", sentence: sentences.join(" ") },
  };
}

const seenOf = ({ names = [], values = {}, contents = {} }: Partial<Looked> = {}): SeenOfSheet => ({
  names,
  values,
  contents,
});

const addressed = ({ name, box }: { readonly name: string; readonly box: Box }) => ({ name, address: plain(box) });

/**
 * Attaches the names of the readings, from this load on, to the selected columns or rows. Throws if a name already refers
 * to other cells, or if the cells of times do not look like times. If `isShared` is true, the first column or row has the
 * times of all these loads.
 */
export async function attachReadings(
  port: WorkbookPort,
  fromLoad: number | undefined,
  lie: SeriesLie,
  isShared = false,
): Promise<Done> {
  if (fromLoad === undefined) throw new WorkbookError(asTyped(words.fromLoadWrong));
  const { sheet, address, values } = await port.selection();
  const boxes = blockAddresses(address).flatMap((part) => boxOf(part) ?? []);
  const lines = readingLines(boxes, fromLoad, lie, isShared);
  if ("sentence" in lines) throw new WorkbookError(lines.sentence);
  const cells = inPairs(cellsOfLines(boxes, values, lie), isShared);
  const doubtful = lines.findIndex((_, at) => at % 2 === 0 && !looksLikeTimes(cells[at] ?? []));
  const times = lines[doubtful];
  if (times) throw new WorkbookError(asTyped(words.noTimes(plain(times.box), fromLoad + doubtful / 2, times.name)));
  const named = lines.map((line, at): NamedAddress => {
    const shown = cells[at] ?? [];
    return { ...addressed(line), ends: [shown[0] ?? "", shown.at(-1) ?? ""] };
  });
  await port.nameAll(sheet, named);
  const sentence = words.readingsNamed(fromLoad, fromLoad + lines.length / 2 - 1, sheet);
  return { sheet, telling: { intent: "success", sentence } };
}

/** Gives free cells, with labels and formulas, to results that have none. Throws if one of the cells is not blank. */
export async function layOutWorkings(port: WorkbookPort): Promise<Done> {
  const { sheet, address } = await port.selection();
  const at = boxOf(address);
  if (!at) throw new WorkbookError(asTyped(words.oneBlock));
  const [found] = await port.lookAt([{ sheet, values: CHECKED_NAMES, contents: NAMES_WITH_FORMULAS, names: true }]);
  const { names = [], values = {}, contents = {} } = found ?? {};
  const { namings, labels, area } = workings(names, values, at, language(), contents);
  if (namings.length === 0) return { sheet, telling: { intent: "info", sentence: words.nothingToLayOut } };
  const wanted = [...area, ...labels.map(({ row, col }) => ({ row, col, rows: 1, cols: 1 }))];
  const held = await firstHeld(port, sheet, wanted);
  if (held) throw new WorkbookError(asTyped(words.workingsHeld(held)));
  const own = namings.map(({ name, box }): SheetName => ({ name, scope: "sheet", place: box }));
  await noted(port, "layout", sheet, async () => {
    await port.nameAll(sheet, namings.map(addressed), found?.names);
    await withLabels(port, sheet, { namings, labels, names: [...(found?.names ?? []), ...own] });
  });
  return {
    sheet,
    telling: {
      intent: "success",
      sentence: words.laidOut(namings.filter(({ name }) => name !== LANGUAGE_CELL).length, sheet),
    },
  };
}

interface Named extends Pick<Workings, "namings" | "labels"> {
  /** The names of the sheet, those that the cells have just got among them. */
  readonly names: readonly SheetName[];
}

/** Writes the labels and the formulas of cells that have just got their names, in one step. */
async function withLabels(port: WorkbookPort, sheet: string, { namings, labels, names }: Named): Promise<void> {
  try {
    const { seen } = await lookAtSheet(port, sheet);
    // The cell that names the language gets its word with the labels; the formulas are in this language.
    const box = namings.find(({ name }) => name === LANGUAGE_CELL)?.box;
    const word = labels.find(({ row, col }) => box && isIn({ row, col }, box))?.value;
    const values = { ...seen.values, ...(word !== undefined && { [LANGUAGE_CELL]: [[word]] }) };
    const { unwritten, held } = firmLayout(seen.names, values, seen.contents ?? {});
    // A new cell into which somebody typed in the meantime is among them: the workbook then refuses all of them, and names the cell.
    const formulas = [...unwritten, ...held.map(({ cell }) => cell)].flatMap((cell) => {
      const naming = namings.find(({ box }) => isIn(cell, box));
      return naming ? [{ ...cell, ...(naming.format && { format: naming.format }) }] : [];
    });
    await port.writeCells(sheet, [...labels, ...formulas], false, names);
  } catch (error) {
    throw new WorkbookError(asTyped(`${sentenceOf(error)} ${words.workingsNamed(sheet)}`), { cause: error });
  }
}

/** The address of the first of these cells that is not blank. */
async function firstHeld(port: WorkbookPort, sheet: string, boxes: readonly Box[]): Promise<string | undefined> {
  const [top, left] = [Math.min(...boxes.map(({ row }) => row)), Math.min(...boxes.map(({ col }) => col))];
  const bottom = Math.max(...boxes.map(({ row, rows }) => row + rows));
  const right = Math.max(...boxes.map(({ col, cols }) => col + cols));
  const around: Box = { row: top, col: left, rows: bottom - top, cols: right - left };
  const values = await port.values(sheet, plain(around));
  for (const { row, col, rows, cols } of boxes)
    for (let down = row; down < row + rows; down++)
      for (let across = col; across < col + cols; across++)
        if ((values[down - top]?.[across - left] ?? "") !== "")
          return plain({ row: down, col: across, rows: 1, cols: 1 });
  return undefined;
}
