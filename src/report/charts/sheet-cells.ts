/** The cells of a data sheet that series are drawn from, by name, and the axes of their plots. */
import { notBelowZero } from "../../plots/axes";
import type { PlotAxis, PlotSpec } from "../../plots/spec";
import type { Cells } from "../../plots/time";
import type { InWords } from "../../plots/words";
import { textOf } from "../../record/cells";
import { picksOfCurve } from "../../record/picks";
import { readRecord, type NamedValues } from "../../record/record";
import { OF_CURVE, type CurvePicks } from "../../reduction/curve/picks";
import { english, listed, say, verbatim } from "../../reduction/message";
import { badInput, type Outcome } from "../../reduction/outcome";
import { rulesOf } from "../../specification/versions";
import { isError } from "../../workbook/cell-error";
import { roundedDomain } from "../../workbook/look/chart-axis";
import { asColumn, lengthOf, liesAcross, partOfList } from "../../workbook/lists";
import type { Box, CellValue, ChartAxis, SheetName } from "../../workbook/port";
import { addressOn, type SeriesBlock } from "./series-block";
import type { Frame } from "./series-lines";

/**
 * A data sheet of the workbook: its names as `listNames` gives them, and its values as `readNames` gives them, in the
 * units of the sheet.
 */
export interface DataSheet {
  readonly sheet: string;
  readonly names: readonly SheetName[];
  readonly values: NamedValues;
  /** The language of titles, axes and names of series; English if omitted. */
  readonly inWords?: InWords;
}

/** A column of cells: the address of the whole column and of each cell. */
export interface Source {
  readonly whole: string;
  readonly cell: (index: number) => string;
  readonly rows: number;
}

export const sourceOf = (sheet: string, box: Box, rows = lengthOf(box)): Source => ({
  whole: addressOn(sheet, partOfList(box, 0, rows)),
  cell: (index) => addressOn(sheet, partOfList(box, index, 1)),
  rows,
});

const axisOf = ({ label, scale, domain, reversed }: PlotAxis): ChartAxis =>
  scale === "log"
    ? { label, scale, domain, reversed }
    : { label, scale: "linear", domain: roundedDomain(notBelowZero(domain)), reversed };

export const frameOf = ({ x, y }: PlotSpec): Frame => ({ x: axisOf(x), y: axisOf(y) });

export const lastOf = (cells: Cells): number =>
  cells.reduce<number>((last, cell, row) => (cell === null ? last : row + 1), 0);

/** The axes, columns and series of a block; its title is said apart. */
export type DrawnColumns = Pick<SeriesBlock, "x" | "y" | "columns" | "series">;

/** The cells that a data sheet has under its names. */
export class Sheet {
  readonly #places: ReadonlyMap<string, Box>;
  constructor(private readonly data: DataSheet) {
    this.#places = new Map(
      data.names.flatMap(({ name, place }) => (place === "lost" ? [] : [[name, place] as const])).reverse(),
    );
  }

  /** The picks by hand of the compression curve. The record is read only if the table of picks has a row. */
  get curvePicks(): CurvePicks {
    const isPicked = (this.data.values.pick_load ?? []).some((row) => row.some((cell) => cell !== ""));
    return isPicked ? picksOfCurve(readRecord(this.data.values).picks) : {};
  }

  get words(): InWords {
    return this.data.inWords ?? english;
  }

  get name(): string {
    return this.data.sheet;
  }

  box(name: string): Box | undefined {
    return this.#places.get(name);
  }

  source(name: string): Source | undefined {
    const box = this.box(name);
    return box && sourceOf(this.data.sheet, box);
  }

  address(name: string): string | undefined {
    return this.source(name)?.whole;
  }

  /** One cell of a list, by a formula for its number from 1. */
  taken(name: string, number: string): string | undefined {
    const box = this.box(name);
    const whole = this.address(name);
    return box && whole && `INDEX(${whole},${liesAcross(box) ? "0," : ""}${number})`;
  }

  numbers(name: string): (number | null)[] {
    return asColumn(this.data.values[name] ?? []).map(([cell]) => (typeof cell === "number" ? cell : null));
  }

  number(name: string): number | undefined {
    return this.numbers(name)[0] ?? undefined;
  }

  /** The text of a cell, a word of a list in English; "" for anything else. */
  word(name: string, row = 0): string {
    const cell: CellValue = asColumn(this.data.values[name] ?? [])[row]?.[0] ?? "";
    return typeof cell === "string" && !isError(cell) ? textOf(name, cell.trim()) : "";
  }

  /** A refusal that names the missing cells; undefined if none is missing. */
  lacks(...names: readonly string[]): Outcome<never> | undefined {
    const absent = names.filter((name) => !this.#places.has(name));
    return absent.length === 0
      ? undefined
      : badInput(
          say`the sheet "${verbatim(this.data.sheet)}" has no cells named ${listed(absent.map(verbatim))}: name them in the sheet check`,
        );
  }
}

export const titled = (sheet: Sheet, words: string): string =>
  [words, sheet.word("boring"), sheet.word("sample")].filter(Boolean).join(", ");

/** The columns of the table of picks; undefined if the sheet has none. */
function tableOfPicks(sheet: Sheet): readonly [loads: string, columns: string] | undefined {
  const [loads, of, after] = ["pick_load", "pick_of", "pick_after"].map((name) => sheet.address(name));
  return loads && of && after ? [loads, `${loads},${of},${after}`] : undefined;
}

/** The picks by hand of a load, if the sheet has a table of picks; blank if the load has none. */
export function picksOf(sheet: Sheet, load: number): string | undefined {
  const [loads, columns] = tableOfPicks(sheet) ?? [];
  return loads && `IF(COUNT(${loads})=0,"",CLAY.LOAD_PICKS(${load},${columns}))`;
}

/** The picks by hand of the compression curve, if the formulas of the sheet read them. */
export function curvePicksOf(sheet: Sheet): { readonly formula?: string; readonly picks: CurvePicks } {
  const [, columns] = tableOfPicks(sheet) ?? [];
  const isPicked = rulesOf({ version: sheet.number("template_version") }).curveIsPicked;
  if (!columns || !isPicked) return { picks: {} };
  return {
    formula: `CLAY.LOAD_PICKS("${OF_CURVE}",${columns})`,
    picks: sheet.curvePicks,
  };
}

/** A chart covers this many rows beyond those with readings: room for a test that is still running. */
export const ROOM = 24;
