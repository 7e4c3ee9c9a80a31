/**
 * Copies the sheets of another workbook: the commands make them again in this workbook, under free names.
 * Casts: the engine gives the data of a workbook without types.
 */
import { say, verbatim, type Message } from "../../reduction/message";
import { quoted, unquoted } from "../address";
import { helpers, tokenize } from "@odoo/o-spreadsheet";
import { freeSheetName } from "../rules/sheet-names";
import { CHART_TAG, copyChart, type KeptChart } from "./look/chart";
import { plainData, type Command, type Model } from "./engine";
import { dataBySheet } from "./evaluation/making";
import { addNames } from "./named-ranges";
import { freeNames, renameIn, type LocalNames } from "./names";
import { formulaAt } from "./typing/locale";
import { noteGetters, setNotes } from "./notes";
import { printOf, setPrint } from "./look/print";
import { protectionOf, setProtection } from "./protection";
import { addRules, type NewRule } from "./typing/rules-at-once";
import type { OpenWorkbook } from "./workbook";
import type { Zone } from "./zones";

export interface InsertedSheet {
  readonly sheetId: string;
  readonly name: string;
  readonly names: LocalNames;
  readonly lost: readonly string[];
}

type Sheet = Record<string, any>;

/** Every word of a formula that could be a name. */
const wordsOf = (formula: string): string[] => {
  const tokens = tokenize(formula);
  return tokens
    .filter(({ type }, i) => type === "SYMBOL" && tokens[i + 1]?.type !== "LEFT_PAREN")
    .map(({ value }) => value)
    .filter((word) => !helpers.isEvaluationError(word) && /^[\p{L}_]/u.test(word));
};

const TRUTHS = /^(true|false)$/i;

/**
 * The names of a sheet in the workbook that it is copied to. A name that only its formulas use gets a new name too: it
 * must not lead to the cells of another test.
 */
function ownNames(source: Model, sheet: Sheet, local: LocalNames, taken: readonly string[]) {
  const { getters } = source;
  const localOf = new Map([...local].map(([name, called]) => [called.toLowerCase(), name]));
  const nameOf = (word: string): string => localOf.get(word.toLowerCase()) ?? word;
  const here = getters.getNamedRanges().filter(({ range }) => range.sheetId === sheet.id);
  const words = Object.values(sheet.cells as Record<string, string>)
    .filter((content) => content.startsWith("="))
    .flatMap(wordsOf)
    .filter((word) => !TRUTHS.test(word))
    .map(nameOf);
  // The first spelling of a name is used throughout: names ignore upper and lower case.
  const wanted = new Map([...here.map(({ name }) => nameOf(name)), ...words].map((name) => [name.toLowerCase(), name]));
  const names = freeNames([...wanted.values()], taken);
  const called = (word: string): string => names.get(wanted.get(nameOf(word).toLowerCase()) ?? "") ?? word;
  const ranges = here.map(({ name, range }) => ({ name: called(name), zone: range.zone }));
  return { names, called, ranges };
}

/** What inserts the sheets of a workbook into another. */
export interface Insertion {
  readonly commands: readonly Command[];
  readonly sheets: readonly InsertedSheet[];
  readonly remarks: readonly Message[];
}

/**
 * Reads the sheets from the engine's export in steps that give the share that is done. Returns the commands in an order in which
 * they can be carried out.
 */
export function* insertCommands(target: Model, source: OpenWorkbook): Generator<number, Insertion> {
  const { data, withCells } = dataBySheet(() => plainData(source.model) as any);
  yield 0;
  const commands: Command[] = [];
  const inserted: InsertedSheet[] = [];
  const remarks: Message[] = [];
  const takenSheets = target.getters.getSheetIds().map((id) => target.getters.getSheetName(id));
  const takenNames = target.getters.getNamedRanges().map(({ name }) => name);
  const idOf = new Map<string, string>();
  for (const sheet of data.sheets) idOf.set(sheet.id, target.uuidGenerator.smallUuid());
  const nameOf = new Map<string, string>();
  for (const sheet of data.sheets as Sheet[]) {
    const name = freeSheetName(sheet.name, takenSheets);
    takenSheets.push(name);
    nameOf.set(sheet.name, name);
    commands.push({
      type: "CREATE_SHEET",
      sheetId: idOf.get(sheet.id)!,
      name,
      position: takenSheets.length - 1,
      cols: sheet.colNumber,
      rows: sheet.rowNumber,
    });
  }
  for (const [at, sheet] of (data.sheets as Sheet[]).entries()) {
    yield at / data.sheets.length;
    const part = withCells(sheet);
    sheet.cells = cellsOf(source.model, sheet.id);
    const sheetId = idOf.get(sheet.id)!;
    const { names, called, ranges } = ownNames(
      source.model,
      sheet,
      source.localNames.get(sheet.id) ?? new Map(),
      takenNames,
    );
    for (const called of names.values()) takenNames.push(called);
    inserted.push({ sheetId, name: nameOf.get(sheet.name)!, names, lost: source.lost?.get(sheet.id) ?? [] });
    if (ranges.length > 0) commands.push(addNames(sheetId, ranges));
    const looks = cellLooks(part, sheet);
    for (const command of [
      ...sheetLooks(part, sheet, sheetId),
      ...contents(sheet, sheetId, called, nameOf, looks),
      // The looks that the contents have not taken.
      ...blankLooks(sheetId, looks),
    ])
      commands.push(command);
    commands.push(setNotes(sheetId, noteGetters(source.model).getNotes(sheet.id)));
    for (const { id, tag, col, row, offset, width, height, data: chart } of sheet.figures as Sheet[])
      if (tag === CHART_TAG)
        commands.push(
          copyChart(
            sheetId,
            `${sheetId}-${id}`,
            { col, row, offset, size: { width, height } },
            chart as KeptChart,
            (of) => idOf.get(of)!,
          ),
        );
    const charts = (sheet.figures as Sheet[]).filter(({ tag }) => tag !== "image" && tag !== CHART_TAG).length;
    if (charts > 0)
      remarks.push(
        charts === 1
          ? say`1 chart of "${verbatim(sheet.name)}" did not come along.`
          : say`${charts} charts of "${verbatim(sheet.name)}" did not come along.`,
      );
    const print = printOf(source.model, sheet.id);
    if (print) commands.push(setPrint(sheetId, print));
    commands.push(setProtection(sheetId, protectionOf(source.model, sheet.id)));
    // The commands have them now: with 40 data sheets the page has no room for both.
    Object.assign(sheet, { cells: {}, styles: {}, formats: {}, borders: {} });
  }
  return { commands, sheets: inserted, remarks };
}

/** The content of every cell as typed, by address; the export of the engine packs similar cells together. */
function cellsOf({ getters }: Model, sheetId: string): Record<string, string> {
  const cells: Record<string, string> = {};
  for (const cell of Object.values(getters.getCells(sheetId))) {
    const position = getters.getCellPosition(cell.id);
    const content = cell.isFormula ? formulaAt(getters, position) : cell.content;
    if (content) cells[helpers.toXC(position.col, position.row)] = content;
  }
  return cells;
}

const zone = (address: string) => helpers.toZone(address);

/** The style and the format of a cell. */
interface CellLook {
  readonly style?: object;
  readonly format?: string;
}

/** The looks of the cells of a sheet, by address. */
function cellLooks(data: any, sheet: Sheet): Map<string, CellLook> {
  const found = new Map<string, CellLook>();
  for (const [kind, zones, of] of [
    ["style", sheet.styles, data.styles],
    ["format", sheet.formats, data.formats],
  ])
    for (const [address, id] of Object.entries(zones)) {
      const { left, right, top, bottom } = zone(address);
      for (let row = top; row <= bottom; row++)
        for (let col = left; col <= right; col++) {
          const at = helpers.toXC(col, row);
          found.set(at, { ...found.get(at), [kind]: of[id as string] });
        }
    }
  return found;
}

/** Gives blank cells their looks: those that are left when every cell with a content has taken its own. */
function blankLooks(sheetId: string, looks: ReadonlyMap<string, CellLook>): Command[] {
  const groups = new Map<string, { readonly look: CellLook; readonly target: Zone[] }>();
  const places = [...looks].map(([address, look]) => ({ ...helpers.toCartesian(address), look }));
  for (const { col, row, look } of places.sort((a, b) => a.col - b.col || a.row - b.row)) {
    const key = JSON.stringify(look);
    const { target } = groups.get(key) ?? groups.set(key, { look, target: [] }).get(key)!;
    const above = target.at(-1);
    const isBelow = above?.left === col && above.bottom === row - 1;
    target.splice(isBelow ? -1 : target.length, 1, {
      left: col,
      right: col,
      top: isBelow ? above.top : row,
      bottom: row,
    });
  }
  return [...groups.values()].map(({ look, target }) => ({ type: "SET_FORMATTING", sheetId, target, ...look }));
}

function sheetLooks(data: any, sheet: Sheet, sheetId: string): Command[] {
  const commands: Command[] = [];
  const add = (type: string, payload: object) => commands.push({ type, sheetId, ...payload });
  for (const address of sheet.merges) add("ADD_MERGE", { target: [zone(address)], force: true });
  for (const [dimension, headers] of [
    ["COL", sheet.cols],
    ["ROW", sheet.rows],
  ]) {
    for (const [size, elements] of bySize(headers)) add("RESIZE_COLUMNS_ROWS", { dimension, elements, size });
    const hidden = Object.keys(headers ?? {}).filter((index) => headers[index].isHidden);
    if (hidden.length > 0) add("HIDE_COLUMNS_ROWS", { dimension, elements: hidden.map(Number) });
  }
  for (const [address, id] of Object.entries(sheet.borders))
    add("SET_BORDERS_ON_TARGET", { target: [zone(address)], border: data.borders[id as string] });
  const { xSplit, ySplit } = sheet.panes ?? {};
  if (ySplit) add("FREEZE_ROWS", { quantity: ySplit });
  if (xSplit) add("FREEZE_COLUMNS", { quantity: xSplit });
  add("SET_GRID_LINES_VISIBILITY", { areGridLinesVisible: sheet.areGridLinesVisible });
  for (const figure of sheet.figures as Sheet[])
    if (figure.tag === "image")
      add("CREATE_IMAGE", {
        figureId: `${sheetId}-${figure.id}`,
        col: figure.col ?? 0,
        row: figure.row ?? 0,
        offset: figure.offset ?? { x: figure.x ?? 0, y: figure.y ?? 0 },
        size: { width: figure.width, height: figure.height },
        definition: figure.data,
      });
  return commands;
}

/** Header numbers in groups of equal size. */
function bySize(headers: Record<string, { size?: number }>): Map<number, number[]> {
  const sizes = new Map<number, number[]>();
  for (const [index, { size }] of Object.entries(headers ?? {}))
    if (size !== undefined) sizes.set(size, [...(sizes.get(size) ?? []), Number(index)]);
  return sizes;
}

function contents(
  sheet: Sheet,
  sheetId: string,
  called: (name: string) => string,
  sheetNames: Map<string, string>,
  looks: Map<string, CellLook>,
): Command[] {
  /** A cell with its look is made once, and not again for its style and its format. */
  const lookOf = (address: string): CellLook | undefined => {
    const look = looks.get(address);
    looks.delete(address);
    return look;
  };
  const renamed = (formula: string): string => `=${renameIn(withSheets(formula.slice(1), sheetNames), called)}`;
  const commands: Command[] = Object.entries(sheet.cells as Record<string, string>).map(([xc, content]) => ({
    type: "UPDATE_CELL",
    sheetId,
    ...helpers.toCartesian(xc),
    content: content.startsWith("=") ? renamed(content) : content,
    ...lookOf(xc),
  }));
  // Rules may cover whole columns; the size of the sheet follows from its content and its names.
  const rangesOf = (addresses: string[]) =>
    addresses
      .map(zone)
      .map((one) => ({
        ...one,
        right: Math.min(one.right, sheet.colNumber - 1),
        bottom: Math.min(one.bottom, sheet.rowNumber - 1),
      }))
      .filter(({ left, right, top, bottom }) => left <= right && top <= bottom)
      .map((_zone) => ({ _sheetId: sheetId, _zone }));
  const rules: NewRule[] = sheet.dataValidationRules.map(({ id, ranges, ...rule }: any) => ({
    ranges: rangesOf(ranges),
    rule: { id: `${sheetId}-${id}`, ...rule },
  }));
  commands.push(
    ...addRules(
      sheetId,
      rules.filter(({ ranges }) => ranges.length > 0),
    ),
  );
  for (const { id, ranges, ...format } of sheet.conditionalFormats)
    if (rangesOf(ranges).length > 0)
      commands.push({
        type: "ADD_CONDITIONAL_FORMAT",
        sheetId,
        ranges: rangesOf(ranges),
        cf: { id: `${sheetId}-${id}`, ...format },
      });
  return commands;
}

/** Replaces references to sheets of the file by their present names. */
const withSheets = (formula: string, sheetNames: Map<string, string>): string =>
  formula.replace(/("(?:\\"|[^"])*")|'((?:[^']|'')+)'!|([\p{L}_][\p{L}\p{N}_.]*)!/gu, (whole, text, within, bare) => {
    const now = text === undefined ? sheetNames.get(unquoted(within, bare)) : undefined;
    return now === undefined ? whole : `${quoted(now)}!`;
  });
