/**
 * A data sheet in a firm's own layout: the names that it lacks, in groups; the names that a person must attach first;
 * and the formulas that its cells still lack. The functions read names and contents as a workbook port returns them,
 * and change nothing.
 */
import { say, type Message } from "../reduction/message";
import { layoutOf } from "../record/places";
import { labelOn } from "../record/labels/sheet-labels";
import type { NamedValues } from "../record/record";
import { FIELDS, type NamedField } from "../specification/fields";
import { LOAD_PARTS, LOAD_WORKINGS } from "../specification/load-table";
import { formatOf } from "../specification/measures";
import { REMARK_PARTS, REMARKS, SECTIONS } from "../specification/main-page";
import { namesOf, namesOfColumns } from "../specification/parts";
import { PICK_TABLE } from "../specification/pick-table";
import { loadOfReadings } from "../specification/readings";
import {
  columnsBeside,
  NAMES_WITH_FORMULAS,
  neededFirst,
  placedFormulas,
  rowsNamed,
  spillOf,
  WORKING_NAMES,
  type Layout,
  type PlacedFormula,
} from "../specification/placed-formulas";
import { LANGUAGE_CELL, LANGUAGE_NAMES, type SheetLanguage } from "../specification/text/language";
import { besideIn, titleIn, wordsOf } from "../specification/text/words";
import { cellAddress } from "../workbook/address";
import { indexInList, liesAcross } from "../workbook/lists";
import type { Box, CellValue, SheetName } from "../workbook/port";

/** The column of load numbers is an input, not a result. */
const LOAD_NUMBER: NamedField = {
  name: "load_number",
  label: "Load number",
  measure: "count",
  kind: "input",
  column: true,
};

/** Every name that a person may attach to cells. */
export const ATTACHABLE: readonly NamedField[] = [LOAD_NUMBER, ...FIELDS];

const BY_NAME: ReadonlyMap<string, NamedField> = new Map(ATTACHABLE.map((field) => [field.name, field]));

const WORKING_LABELS: ReadonlyMap<string, string> = new Map(
  [...LOAD_WORKINGS.columns, ...REMARK_PARTS].map(({ name, label }) => [name, label]),
);

/** The names of one part of the data sheet, under the title of the part. */
interface Group {
  readonly title: string;
  readonly fields: readonly NamedField[];
}

const group = (title: string, names: readonly string[]): Group => ({
  title,
  fields: names.flatMap((name) => BY_NAME.get(name) ?? []),
});

/** The names of the readings: two of each load, in the order of the loads. */
const READING_NAMES = FIELDS.map(({ name }) => name).filter((name) => loadOfReadings(name) !== undefined);

/** The groups in the order of the data sheet. */
const GROUPS: readonly Group[] = [
  ...SECTIONS.map(({ title, panels }) => group(title, namesOf(panels.flat()))),
  ...LOAD_PARTS.map(({ title, columns }) => group(title, namesOfColumns(columns))),
  group("Readings", READING_NAMES),
  group("Picks by hand", namesOf([PICK_TABLE])),
  group("Remarks", namesOf(REMARKS)),
];

export interface MissingName {
  readonly name: string;
  readonly label: string;
  /** True for a result; it is calculated once the names in `needs` have cells. */
  readonly isResult: boolean;
  readonly needs: readonly string[];
}

export interface MissingGroup {
  readonly title: string;
  readonly missing: readonly MissingName[];
  /** The number of names of the group that the sheet has. */
  readonly present: number;
}

/** A cell that should get a formula but contains something else. */
export interface HeldCell {
  readonly name: string;
  readonly cell: PlacedFormula;
}

export interface FirmLayout {
  readonly groups: readonly MissingGroup[];
  /** Inputs that the main results wait for; the input that most of these results need comes first. */
  readonly first: readonly MissingName[];
  /** The formulas for blank cells that have a name. */
  readonly unwritten: readonly PlacedFormula[];
  /** Cells of results in which a person typed a value. */
  readonly held: readonly HeldCell[];
  /** Results that have cells but whose formulas wait for other names. */
  readonly waiting: readonly MissingName[];
}

const missingName = (name: string, layout: Layout): MissingName => {
  const field = BY_NAME.get(name);
  const isResult = field !== undefined && field.kind !== "input";
  return {
    name,
    label: labelOf(name, layout.language),
    isResult,
    needs: isResult ? neededFirst(name, layout) : [],
  };
};

const isHeld = (content: CellValue | undefined): boolean =>
  content !== undefined && (typeof content !== "string" || content.trim() !== "");

/** The first results that a person wants of a test: the preconsolidation stress, Cc, cv, mv and C alpha. */
const AIMS = ["preconsolidation_stress", "compression_index", "cv_chosen", "volume_compressibility", "c_alpha"];

/** The inputs without cells that the results in `AIMS` wait for; the input that most of them need comes first. */
function firstNames(layout: Layout): MissingName[] {
  const counts = new Map<string, number>();
  for (const aim of AIMS)
    for (const name of neededFirst(aim, layout))
      if (BY_NAME.get(name)?.kind === "input") counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1]).map(([name]) => missingName(name, layout));
}

/**
 * Returns what a sheet in a firm's layout still lacks. `contents` are the contents of the cells of
 * `NAMES_WITH_FORMULAS`; formulas are in `language` where neither a cell nor a formula of the sheet says its language.
 */
export function firmLayout(
  names: readonly SheetName[],
  values: NamedValues,
  contents: NamedValues,
  language: SheetLanguage = "en",
): FirmLayout {
  const layout = layoutOf(names, values, contents, language);
  const unwritten: PlacedFormula[] = [];
  const held: HeldCell[] = [];
  const waiting: MissingName[] = [];
  for (const name of [...NAMES_WITH_FORMULAS, ...WORKING_NAMES.filter((one) => contents[one])]) {
    const box = layout.places.get(name);
    const placed = placedFormulas(name, layout);
    if (!box || !placed) continue;
    const cells = placed.cells.map((cell) => ({ cell, content: contents[name]?.[indexInList(box, cell)]?.[0] }));
    unwritten.push(...cells.filter(({ content }) => !isHeld(content)).map(({ cell }) => cell));
    held.push(
      ...cells
        .filter(({ content }) => isHeld(content) && !String(content).startsWith("="))
        .map(({ cell }) => ({ name, cell })),
    );
    const isBlank = !contents[name]?.some(([content]) => isHeld(content));
    if (placed.lacks.length > 0 && isBlank) waiting.push(missingName(name, layout));
  }
  return {
    groups: GROUPS.map(({ title, fields }) => {
      const missing = fields.filter(({ name }) => !layout.places.has(name));
      return {
        title: titleIn(wordsOf(layout.language ?? "en"), title),
        present: fields.length - missing.length,
        missing: missing.map(({ name }) => missingName(name, layout)),
      };
    }),
    ...{ first: firstNames(layout), unwritten, held, waiting },
  };
}

/** A name with the cells that it gets. */
export interface Naming {
  readonly name: string;
  readonly box: Box;
  /** The number format, for cells that have none of their own. */
  readonly format?: string;
}

/** Whether the series of a selection are its columns or its rows. */
export type SeriesLie = "columns" | "rows";

const counted: Readonly<Record<SeriesLie, (count: number) => Message>> = {
  columns: (count) => (count === 1 ? say`1 column` : say`${count} columns`),
  rows: (count) => (count === 1 ? say`1 row` : say`${count} rows`),
};

/**
 * What belongs to selected lines, in pairs of times and readings: as it is, or, if the loads share their times, the first again
 * before each of the others.
 * @example inPairs(["times", "load 1", "load 2"], true) // ["times", "load 1", "times", "load 2"]
 */
export function inPairs<T>(ofLines: readonly T[], isShared: boolean): readonly T[] {
  if (!isShared) return ofLines;
  const times = ofLines.slice(0, 1);
  return ofLines.slice(1).flatMap((readings) => [...times, readings]);
}

/**
 * Attaches the names of readings to columns that stand side by side or were picked one after the other, or to rows in the
 * same way: first the times and readings of one load, then those of the next load. If the loads share their times, the
 * first line has them, and every other line the readings of a load. Returns a sentence instead if the lines do not form
 * whole pairs.
 */
export function readingLines(
  boxes: readonly Box[],
  fromLoad: number,
  lie: SeriesLie,
  isShared: boolean,
): readonly Naming[] | { sentence: Message } {
  const selected = boxes.flatMap(({ row, col, rows, cols }) =>
    lie === "columns"
      ? Array.from({ length: cols }, (_, index): Box => ({ row, col: col + index, rows, cols: 1 }))
      : Array.from({ length: rows }, (_, index): Box => ({ row: row + index, col, rows: 1, cols })),
  );
  const lines = inPairs(selected, isShared);
  const names = READING_NAMES.slice(2 * (fromLoad - 1));
  if (isShared && lines.length === 0)
    return {
      sentence: say`Selected: ${counted[lie](selected.length)}. Select the times, and the readings of each load.`,
    };
  if (lines.length % 2 === 1 || lines.length === 0)
    return {
      sentence: say`Selected: ${counted[lie](lines.length)}. Every load has two, its times and its readings: select both of each load.`,
    };
  if (lines.length > names.length)
    return {
      sentence: say`${lines.length / 2} loads from load ${fromLoad} on are more than the names reach to: select fewer.`,
    };
  return lines.flatMap((box, index) => {
    const name = names[index];
    return name === undefined ? [] : [{ name, box }];
  });
}

/** Results without cells of their own, and the free cells that they can get. */
export interface Workings {
  readonly namings: readonly Naming[];
  /** The labels beside single cells and above columns. */
  readonly labels: readonly { readonly row: number; readonly col: number; readonly value: string }[];
  /** The cells that must be free. */
  readonly area: readonly Box[];
}

/** The names without cells whose formulas can be written once all these names have cells, in or beyond the cell `at`. */
function layable(layout: Layout, at: Box): string[] {
  const placed = (names: readonly string[]): Layout["places"] => {
    const places = new Map(layout.places);
    for (const name of names) places.set(name, boxOfResult(name, layout, at));
    return places;
  };
  let names = [...WORKING_NAMES, ...NAMES_WITH_FORMULAS].filter((name) => !layout.places.has(name));
  for (let before = -1; before !== names.length;) {
    before = names.length;
    const places = placed(names);
    names = names.filter((name) => placedFormulas(name, { ...layout, places })?.lacks.length === 0);
  }
  // Of the workings only those without which a formula is too long.
  const places = placed(names.filter((name) => !WORKING_NAMES.includes(name)));
  const lacked = new Set(
    [...places.keys()].flatMap((name) => placedFormulas(name, { ...layout, places })?.lacks ?? []),
  );
  return names.filter((name) => !WORKING_NAMES.includes(name) || lacked.has(name));
}

const LOAD_COLUMNS = new Set(
  [...LOAD_PARTS.map(({ columns }) => columns), LOAD_WORKINGS.columns].flatMap(namesOfColumns),
);

/**
 * The cells for a result: as many as the other columns of its table have, or as many as the table has rows with names. A result of the loads stands in the rows of the
 * loads, or in their columns if the table of the loads lies on its side.
 */
function boxOfResult(name: string, { places }: Layout, { row, col }: Box): Box {
  const beside = columnsBeside(name).flatMap((one) => places.get(one) ?? [])[0];
  if (!beside) return { row, col, rows: rowsNamed(name), cols: 1, ...spillOf(name) };
  const isOfLoads = LOAD_COLUMNS.has(name);
  return liesAcross(beside)
    ? { row, col: isOfLoads ? beside.col : col, rows: 1, cols: beside.cols }
    : { row: isOfLoads ? beside.row : row, col, rows: beside.rows, cols: 1 };
}

/**
 * Chooses free cells for the results that this sheet has no cells for. A sheet that names no language, and has no formula of
 * `contents` in words of another one, gets a cell that names `language` first, so that what is laid out is in that language. Results of the loads go to
 * the right of the cell `at`, in the rows of the loads; if the table of the loads lies on its side, from the row of `at` down, in the columns of
 * the loads. The others go below one another from that cell down, below the loads.
 */
export function workings(
  names: readonly SheetName[],
  values: NamedValues,
  at: Box,
  language: SheetLanguage = "en",
  contents: NamedValues = {},
): Workings {
  const layout = layoutOf(names, values, contents, language);
  const asksLanguage = language !== "en" && layout.language === language && !layout.places.has(LANGUAGE_CELL);
  const wanted = layable(layout, { ...at, col: at.col + LOAD_COLUMNS.size }).filter(
    (name) => !name.startsWith("pick_"),
  );
  const table = layout.places.get("load_stress");
  const ofLoads = table ? wanted.filter((name) => LOAD_COLUMNS.has(name)) : [];
  const others = wanted.filter((name) => !LOAD_COLUMNS.has(name));
  const isAcross = table !== undefined && liesAcross(table);
  let row = isAcross ? at.row + ofLoads.length + 1 : Math.max(at.row, table ? table.row + table.rows + 1 : 0);
  const columns = ofLoads.map((name, index): Naming => {
    const place = isAcross ? { ...at, row: at.row + index } : { ...at, col: at.col + index };
    return { name, box: boxOfResult(name, layout, place) };
  });
  const words = wordsOf(language);
  const ofLanguage = asksLanguage && wanted.length > 0 ? [{ row, col: at.col + 1, rows: 1, cols: 1 }] : [];
  row += ofLanguage.length;
  const singles = others.map((name): Naming => {
    const isSpill = spillOf(name) !== undefined;
    const box = boxOfResult(name, layout, { ...at, row: row + Number(isSpill), col: at.col + Number(!isSpill) });
    row = box.row + box.rows;
    return { name, box };
  });
  const heading = ({ name, box }: Naming) => ({
    row: box.row - 1,
    col: box.col,
    value: labelOf(name, layout.language),
  });
  const beside = ({ name, box }: Naming) => ({ row: box.row, col: box.col - 1, value: labelOf(name, layout.language) });
  return {
    namings: [...ofLanguage.map((box) => ({ name: LANGUAGE_CELL, box })), ...columns, ...singles].map((one) => ({
      ...one,
      format: formatOfName(one.name, values),
    })),
    labels: [
      ...ofLanguage.flatMap(({ row: of, col }) => [
        { row: of, col: col - 1, value: besideIn(words, "Language of this sheet") },
        { row: of, col, value: LANGUAGE_NAMES[language] },
      ]),
      ...(isAcross
        ? columns.filter(({ box }) => box.col > 0).map(beside)
        : columns.filter(({ box }) => box.row > 0).map(heading)),
      ...singles.map((one) => (spillOf(one.name) ? heading(one) : beside(one))),
    ],
    area: [...columns, ...singles].map(({ box }) => box),
  };
}

/** The number format for a name. Spilled tables have none, because their rows have different measures. */
function formatOfName(name: string, { length_unit: unit }: NamedValues): string | undefined {
  const measure = BY_NAME.get(name)?.measure;
  const system = String(unit?.[0]?.[0] ?? "").toLowerCase() === "in" ? "US" : "SI";
  return measure && !spillOf(name) ? formatOf(measure, system) : undefined;
}

/** The label of a name in lists and sentences, in the language of the sheet. */
export const labelOf = (name: string, language: SheetLanguage = "en"): string => {
  const label = labelOn(language, name);
  const own = BY_NAME.get(name)?.label.trim() ?? WORKING_LABELS.get(name) ?? name;
  const called = label === name.replaceAll("_", " ") ? own : label;
  // The label of a table is a title of the sheet.
  return titleIn(wordsOf(language), called);
};

/** The list of names in a sentence: "Ring (ring_mass), Diameter (diameter)". */
export const calledAll = (names: readonly string[], language?: SheetLanguage): string =>
  names.map((name) => `${labelOf(name, language)} (${name})`).join(", ");

/** The address of a cell, such as "B12". */
export const placeOfCell = ({ row, col }: PlacedFormula): string => cellAddress(row, col);
