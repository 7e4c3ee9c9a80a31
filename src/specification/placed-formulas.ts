/**
 * Writes the formulas of a name for cells anywhere on a sheet, such as a sheet in a firm's own layout. The formulas
 * refer to single cells by name and to the cells of a table row by row. Inputs that a test can do without count as
 * blank if the sheet has no cells for them.
 */
import { columnLetters } from "../workbook/address";
import { addressInList, cellOfList, lengthOf, liesAcross } from "../workbook/lists";
import { LONGEST_FORMULA } from "../workbook/limits";
import type { Box } from "../workbook/port";
import { isSpill, isTable, type Column, type Table } from "./field";
import { CHOICE_REMARK, ENTRY_REMARK, INPUT_REMARK, PAST_EVERY_ROW, SIZE_REMARK, UNUSUAL_REMARK } from "./formulas";
import { loadSuffix } from "./readings";
import { REMARK_PARTS } from "./remarks";
import { ALL_PARTS } from "./parts";
import type { SheetLanguage } from "./text/language";
import { formulaIn, wordsOf } from "./text/words";

/**
 * The positions of the names on a sheet, and the load number of each row; without `loadNumbers`, the rows count from 1.
 * The formulas show their texts in the language of the sheet: English, if it is left out.
 */
export interface Layout {
  readonly language?: SheetLanguage;
  readonly places: ReadonlyMap<string, Box>;
  readonly loadNumbers?: readonly number[];
}

export interface PlacedFormula {
  readonly row: number;
  readonly col: number;
  /** The formula; `{name}` stands for a name of the sheet. */
  readonly formula: string;
}

export interface PlacedFormulas {
  readonly cells: readonly PlacedFormula[];
  /** The names that the formula needs and the sheet has no cells for, in the order of the formula. */
  readonly lacks: readonly string[];
}

/** The inputs that a test can do without: a formula reads them as blank if the sheet has no cells for them. */
const OPTIONAL: ReadonlySet<string> = new Set([
  "seating_stress",
  "seating_mark",
  "load_mark",
  "load_started",
  "test_temperature",
  "pore_salt",
  "apparatus_stress",
  "apparatus_loading",
  "apparatus_unloading",
  "final_height_measured",
  "curve_from",
  "time_method",
  "time_procedure",
  "field_factor",
  "pick_load",
  "pick_of",
  "pick_after",
  "pick_remark",
  "load_remark",
  "test_state",
  "date_ended",
  "preconsolidation_method",
  "adopted_constructed",
  "adopted_value",
  "adopted_by",
  "adopted_reason",
  "adopted_cv_from",
  "adopted_cv_to",
  "adopted_cv_low",
  "adopted_cv_high",
  "adopted_cv_constructed",
  "adopted_cv",
  "adopted_cv_by",
  "adopted_cv_reason",
  "design_increase",
  "design_curve",
  "swelling_pressure",
  "swelling_method",
  "wetting_reference",
  "input_remark",
  "choice_remark",
  "entry_remark",
  "size_remark",
  "unusual_remark",
  "curve_gap",
]);

/** Remarks on inputs: they are of the inputs that the sheet has, and need no other. */
const ON_INPUTS: readonly string[] = [INPUT_REMARK, CHOICE_REMARK, ENTRY_REMARK, SIZE_REMARK, UNUSUAL_REMARK];
const OF_WHAT_IS_THERE: ReadonlySet<string> = new Set([
  ...ON_INPUTS,
  ...REMARK_PARTS.filter((part) => ON_INPUTS.includes(part.of)).map(({ name }) => name),
]);

/** The formulas of the parts of remarks, by their names. */
const PARTS: ReadonlyMap<string, string> = new Map(REMARK_PARTS.map(({ name, formula }) => [name, formula]));

/** Results that count as blank while the sheet has no cells for the input beside them. */
const BLANK_WITHOUT: Readonly<Record<string, string>> = {
  salt_mass: "pore_salt",
  water_density: "test_temperature",
  apparatus_deflection_seating: "apparatus_stress",
};

type Formula =
  | { readonly of: "cell"; readonly formula: string }
  | { readonly of: "spill"; readonly formula: string; readonly rows: number; readonly cols: number }
  | { readonly of: "column"; readonly column: Column; readonly table: Table }
  /** A column that the formula of the column `anchor` spills into; `number` is its place in the spilled row. */
  | { readonly of: "spilled"; readonly anchor: Column; readonly number: number; readonly table: Table };

/** The columns of a table into which the formula of `anchor` spills, including `anchor` itself. */
const spilledTogether = ({ columns }: Table, anchor: Column): readonly Column[] => {
  const first = columns.indexOf(anchor);
  const end = columns.findIndex((column, index) => index > first && !column.spilled);
  return columns.slice(first, end < 0 ? undefined : end);
};

function formulasOfTable(table: Table): [string, Formula][] {
  let anchor: Column | undefined;
  return table.columns.flatMap((column): [string, Formula][] => {
    if (!column.spilled) anchor = column;
    if (column.spilled && anchor) {
      const number = spilledTogether(table, anchor).indexOf(column) + 1;
      return [[column.name, { of: "spilled", anchor, number, table }]];
    }
    const hasFormula = column.formula !== undefined || column.byRow?.some(({ formula }) => formula !== undefined);
    return hasFormula && (column.kind !== "label" || column.isWorking)
      ? [[column.name, { of: "column", column, table }]]
      : [];
  });
}

/** A spilled table has three columns: label, value and words. */
const SPILL_COLUMNS = 3;

const FORMULAS: ReadonlyMap<string, Formula> = new Map(
  [...ALL_PARTS, ...REMARK_PARTS].flatMap((part): [string, Formula][] => {
    if (isTable(part)) return formulasOfTable(part);
    if (isSpill(part))
      return [[part.name, { of: "spill", formula: part.formula, rows: part.spills.length, cols: SPILL_COLUMNS }]];
    return part.formula ? [[part.name, { of: "cell", formula: part.formula }]] : [];
  }),
);

/** The cells that only formulas of remarks read. On a sheet without them, the remarks have their formulas in their place. */
export const WORKING_NAMES: readonly string[] = [...FORMULAS].flatMap(([name, found]) =>
  PARTS.has(name) || (found.of === "column" && found.column.isWorking) ? [name] : [],
);

/**
 * The names that have a formula, in the order of the sheet. A sheet needs no workings, unless a formula is too long without
 * them, so they are not among the names.
 */
export const NAMES_WITH_FORMULAS: readonly string[] = [...FORMULAS.keys()].filter(
  (name) => !WORKING_NAMES.includes(name),
);

/**
 * The size of a spilled table, which fills more cells than the one that a person selects; undefined for other names.
 */
export function spillOf(name: string): { readonly rows: number; readonly cols: number } | undefined {
  const found = FORMULAS.get(name);
  return found?.of === "spill" ? { rows: found.rows, cols: found.cols } : undefined;
}

/** The names of all columns of the table that contains this name; an empty list for a single cell. */
export function columnsBeside(name: string): readonly string[] {
  const found = FORMULAS.get(name);
  return found && "table" in found ? found.table.columns.map((column) => column.name) : [];
}

/** The number of rows of a column whose table has a row for each thing that it names; 1 for other names. */
export function rowsNamed(name: string): number {
  const found = FORMULAS.get(name);
  return found && "table" in found && found.table.columns.some(({ kind, byRow }) => kind === "label" && byRow)
    ? found.table.rows
    : 1;
}

class Placing {
  readonly lacks = new Set<string>();
  /** The workings that the sheet does not have, and whose formulas stand in their place. */
  readonly inPlace = new Set<string>();
  readonly #layout: Layout;

  constructor(layout: Layout) {
    this.#layout = layout;
  }

  has(name: string): boolean {
    return this.#layout.places.has(name);
  }

  /** Returns `{name}`; if the sheet does not have the name, the formula of a part of a remark, or an empty text. */
  single(name: string): string {
    if (this.has(name)) return `{${name}}`;
    const part = PARTS.get(name);
    if (part !== undefined) {
      this.inPlace.add(name);
      return `(${this.singles(part.slice(1))})`;
    }
    if (!this.#countsAsBlank(name)) this.lacks.add(name);
    return '""';
  }

  /** The cell of a column in a row of its table; the formula of a working that the sheet does not have. */
  beside(name: string, index: number, table: Table): string {
    const box = this.#layout.places.get(name);
    if (!box) {
      const working = table.columns.find((column) => column.name === name && column.isWorking)?.formula;
      if (working === undefined) return this.single(name);
      this.inPlace.add(name);
      return `(${this.#ofRow(working.slice(1), index, table)})`;
    }
    if (index >= lengthOf(box)) this.lacks.add(name);
    return addressInList(box, index);
  }

  /**
   * The value in the nearest row above that has a number in the first column of the table, or the start value. The
   * formula of the second row tests the first row directly, because the embedded sheet cannot look up a value in a
   * range of one cell.
   */
  above(name: string, index: number, { columns }: Table): string {
    const [first] = columns;
    const start = columns.find((column) => column.name === name)?.start ?? '""';
    const from = this.singles(`(${start.replace(/^=/, "")})`);
    const [numbers, box] = [first && this.#layout.places.get(first.name), this.#layout.places.get(name)];
    if (!numbers || !box) return first && !numbers ? this.single(first.name) : this.single(name);
    if (index === 0) return from;
    if (index === 1) return `IF(ISNUMBER(${addressInList(numbers, 0)}),${addressInList(box, 0)},${from})`;
    const before = (list: Box): string =>
      `$${columnLetters(list.col)}$${list.row + 1}:${addressInList(list, index - 1)}`;
    return `LOOKUP(${PAST_EVERY_ROW},${before(numbers)},${before(box)})`;
  }

  singles(formula: string): string {
    return this.#addresses(this.#alongLists(formula)).replace(/\{(\w+)\}/g, (_, name: string) => this.single(name));
  }

  /** A formula that counts the rows of a list, or takes or names one of them, does so by columns if the list lies across. */
  #alongLists(formula: string): string {
    const liesSo = (name: string): boolean => {
      const box = this.#layout.places.get(name);
      return box !== undefined && liesAcross(box);
    };
    return (
      formula
        .replace(
          /ADDRESS\((SUMPRODUCT\(MAX\((?:(?!SUMPRODUCT).)*?\*)ROW\(\{(\w+)\}\)\)\),COLUMN\(INDEX\(\{\2\},1\)\),4\)/g,
          (whole, counted: string, name: string) =>
            liesSo(name) ? `ADDRESS(ROW(INDEX({${name}},1)),${counted}COLUMN({${name}}))),4)` : whole,
        )
        .replace(/ROW\(\{(\w+)\}\)-ROW\(INDEX\(\{\1\},1\)\)/g, (whole, name: string) =>
          liesSo(name) ? whole.replaceAll("ROW(", "COLUMN(") : whole,
        )
        // The embedded sheet counts the rows of a range, even of one row: the whole of the column is taken instead.
        .replace(/\bINDEX\(\{(\w+)\},/g, (whole, name: string) => (liesSo(name) ? `${whole}0,` : whole))
    );
  }

  /** A cell that the sheet does not have has no address and no row: Excel refuses a formula with `ROW("")`. */
  #addresses(formula: string): string {
    const unless = (content: string) => (whole: string, name: string) => {
      if (!this.has(name)) this.single(name);
      return this.has(name) ? whole : content;
    };
    return formula
      .replace(/ADDRESS\(ROW\(\{(\w+)\}\),COLUMN\(\{\1\}\),4\)/g, unless('""'))
      .replace(/ROW\(\{(\w+)\}\)/g, unless("0"));
  }

  /** The formula of a column for one of its rows. */
  inRow(formula: string, index: number, table: Table): string {
    return this.singles(this.#ofRow(formula, index, table));
  }

  /** The formula with the cells of its row, and the number of its load. */
  #ofRow(formula: string, index: number, table: Table): string {
    const load = this.#layout.loadNumbers?.[index] ?? index + 1;
    const numbered = formula.replaceAll("#", loadSuffix(load));
    return numbered.replace(/\[(\^?)(\w+)\]/g, (_, up: string, name: string) =>
      up ? this.above(name, index, table) : this.beside(name, index, table),
    );
  }

  #countsAsBlank(name: string): boolean {
    const without = BLANK_WITHOUT[name];
    return OPTIONAL.has(name) || (without !== undefined && !this.has(without));
  }
}

/** True if the columns that a formula spills into stand side by side, in their order. */
function spillsInPlace(columns: readonly Column[], places: Layout["places"]): boolean {
  const [anchor] = columns.map(({ name }) => places.get(name));
  return columns.every(({ name }, index) => {
    const box = places.get(name);
    return box && anchor && !liesAcross(box) && box.row === anchor.row && box.col === anchor.col + index;
  });
}

/** The formula for one cell of a row that another formula would spill. It is blank while that formula is blank. */
function partOfSpill(formula: string, number: number): string {
  const [, blank, whole] = /^=IF\(((?:[^,()]|\([^()]*\))*),"",(.*)\)$/s.exec(formula) ?? [];
  return blank === undefined || whole === undefined
    ? `=INDEX(${formula.slice(1)},1,${number})`
    : `=IF(${blank},"",INDEX(${whole},1,${number}))`;
}

function formulaInRow(found: Formula, index: number, placing: Placing, layout: Layout): string | undefined {
  if (found.of === "cell" || found.of === "spill") return index === 0 ? placing.singles(found.formula) : undefined;
  const { table } = found;
  const anchor = found.of === "column" ? found.column : found.anchor;
  const together = spilledTogether(table, anchor);
  const written = placing.inRow(anchor.byRow?.[index]?.formula ?? anchor.formula ?? "", index, table);
  if (together.length === 1) return written;
  if (!spillsInPlace(together, layout.places)) return partOfSpill(written, found.of === "column" ? 1 : found.number);
  return found.of === "column" ? written : undefined;
}

const isTooLong = (formula: string): boolean => formula.replace(/[{}]/g, "").length > LONGEST_FORMULA;

/**
 * The formulas for the cells of a name: one for each row of a column, and none if the formula of another column spills
 * into this column. A formula that is too long with its workings in it lacks these. Returns undefined if the name has no cells or no formula.
 */
export function placedFormulas(name: string, layout: Layout): PlacedFormulas | undefined {
  const box = layout.places.get(name);
  const found = FORMULAS.get(name);
  if (!box || !found) return undefined;
  const words = wordsOf(layout.language ?? "en");
  const rows = Array.from({ length: lengthOf(box) }, (_, index) => {
    const placing = new Placing(layout);
    const written = formulaInRow(found, index, placing, layout);
    const formula = written === undefined ? undefined : formulaIn(words, written);
    const lacks = OF_WHAT_IS_THERE.has(name)
      ? new Set([...placing.lacks].filter((one) => one === "load_number"))
      : placing.lacks;
    return { index, formula, lacks, inPlace: placing.inPlace };
  });
  // A row that lacks its readings gets no formula; the other rows get theirs.
  const whole = rows.filter(({ lacks }) => lacks.size === 0);
  const long = whole.find(({ formula = "", inPlace }) => inPlace.size > 0 && isTooLong(formula));
  if (long) return { lacks: [...long.inPlace], cells: [] };
  const lacks = whole.length > 0 ? [] : [...(rows[0]?.lacks ?? [])];
  return {
    lacks,
    cells: whole.flatMap(({ index, formula }) =>
      formula === undefined ? [] : [{ ...cellOfList(box, index), formula }],
    ),
  };
}

/** What the formula of each name lacks on a layout: many results need the same names, and each is asked once. */
const LACKED = new WeakMap<Layout, Map<string, readonly string[]>>();

/** The names that the formula of this name needs and the layout has no cells for, wherever the name itself stands. */
function lackedBy(name: string, layout: Layout): readonly string[] {
  const known = LACKED.get(layout) ?? new Map<string, readonly string[]>();
  LACKED.set(layout, known);
  const before = known.get(name);
  if (before) return before;
  const places = new Map(layout.places).set(name, layout.places.get(name) ?? { row: 0, col: 0, rows: 1, cols: 1 });
  const lacks = placedFormulas(name, { ...layout, places })?.lacks ?? [];
  known.set(name, lacks);
  return lacks;
}

/**
 * The names that must have cells before the formula of this name can be written, including the names that their own
 * formulas need.
 */
export function neededFirst(name: string, layout: Layout): readonly string[] {
  const reached = new Set<string>();
  const visit = (one: string): void => {
    for (const lacking of lackedBy(one, layout))
      if (!reached.has(lacking)) {
        reached.add(lacking);
        visit(lacking);
      }
  };
  visit(name);
  return [...reached];
}
