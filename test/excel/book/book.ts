/** The content of a workbook as plain data: a copy of it is a picture for a later comparison. */
import type { Box } from "./address";

export type Value = string | number | boolean;

export interface Cell {
  /** The value that the cell shows; for a formula, its last result. */
  value: Value;
  formula?: string;
  /** False for a constant text that looks like an error ("#N/A" in a cell of text format). */
  isError?: boolean;
  /** Size of the spill of a formula that spills. */
  spill?: { readonly rows: number; readonly cols: number };
  /** The first cell of the spill that fills this cell. */
  filledFrom?: readonly [row: number, col: number];
}

export interface NameOf {
  name: string;
  refers: Refers;
  comment: string;
  visible: boolean;
}

export type Refers =
  | { readonly kind: "cells"; readonly areas: readonly { readonly sheet: string; readonly box: Box }[] }
  | { readonly kind: "lost" }
  | { readonly kind: "formula"; readonly formula: string };

export interface Rule {
  readonly box: Box;
  readonly rule?: Readonly<Record<string, unknown>>;
  readonly errorAlert?: Readonly<Record<string, unknown>>;
  readonly prompt?: Readonly<Record<string, unknown>>;
  readonly ignoreBlanks?: boolean;
}

export interface Series {
  name: string;
  x?: { readonly sheet: string; readonly box: Box };
  y?: { readonly sheet: string; readonly box: Box };
  /** True if Excel made it itself from the cells it was given. */
  isGuessed?: boolean;
  properties: Record<string, unknown>;
  points: Record<number, Record<string, unknown>>;
}

export interface Chart {
  id: string;
  name: string;
  type: string;
  from?: Box;
  to?: Box;
  properties: Record<string, unknown>;
  series: Series[];
}

export interface Note {
  content: string;
  width?: number;
  height?: number;
  visible?: boolean;
}

export type Visibility = "Visible" | "Hidden" | "VeryHidden";

export interface Sheet {
  readonly id: string;
  name: string;
  visibility: Visibility;
  readonly cells: Map<number, Cell>;
  /** Looks set on single cells, by path ("format.font.bold", "numberFormat"). */
  readonly looks: Map<number, Record<string, unknown>>;
  /** Looks set on large areas at once; the last one counts, and the look of a single cell comes before them. */
  readonly areaLooks: { readonly box: Box; readonly path: string; readonly value: unknown }[];
  names: NameOf[];
  rules: Rule[];
  protection: { on: boolean; password?: string; options: Readonly<Record<string, unknown>> };
  charts: Chart[];
  readonly notes: Map<number, Note>;
  merges: Box[];
  /** Blocks of array formulas (Ctrl, Shift, Enter): no part of a block can be changed. */
  arrays: Box[];
  /** In points. */
  readonly widths: Map<number, number>;
  readonly heights: Map<number, number>;
  readonly hiddenRows: Set<number>;
  readonly hiddenCols: Set<number>;
  frozen: { rows: number; cols: number };
  /** Page layout and other settings, by path ("pageLayout.orientation"). */
  readonly settings: Record<string, unknown>;
}

export type Selection =
  | { readonly kind: "cells"; readonly sheet: string; readonly boxes: readonly Box[] }
  | { readonly kind: "chart"; readonly sheet: string; readonly chart: string }
  | { readonly kind: "nothing" };

export interface Book {
  sheets: Sheet[];
  names: NameOf[];
  structure: { on: boolean; password?: string };
  active: string;
  selection: Selection;
  /** What add-ins keep in the workbook, by key. */
  readonly settings: Map<string, unknown>;
}

/** The key of a cell in the maps of its sheet. */
export const keyOf = (row: number, col: number): number => row * 16_384 + col;
export const placeOf = (key: number): [row: number, col: number] => [Math.floor(key / 16_384), key % 16_384];

export const newSheet = (id: string, name: string): Sheet => ({
  id,
  name,
  visibility: "Visible",
  cells: new Map(),
  looks: new Map(),
  areaLooks: [],
  names: [],
  rules: [],
  protection: { on: false, options: {} },
  charts: [],
  notes: new Map(),
  merges: [],
  arrays: [],
  widths: new Map(),
  heights: new Map(),
  hiddenRows: new Set(),
  hiddenCols: new Set(),
  frozen: { rows: 0, cols: 0 },
  settings: {},
});

export const same = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

export const sheetById = (book: Book, id: string): Sheet | undefined => book.sheets.find((sheet) => sheet.id === id);
export const sheetByName = (book: Book, name: string): Sheet | undefined =>
  book.sheets.find((sheet) => same(sheet.name, name));

/** A copy of plain data, with its maps and sets. */
export function copyOf<T>(value: T): T {
  if (typeof value !== "object" || value === null) return value;
  if (Array.isArray(value)) return value.map(copyOf) as T;
  if (value instanceof Set) return new Set(value) as T;
  // Loops: the copies were 5 % of the tests that carry out operations again and again.
  if (value instanceof Map) {
    const copy = new Map<unknown, unknown>();
    for (const [key, one] of value) copy.set(key, copyOf(one));
    return copy as T;
  }
  const copy: Record<string, unknown> = {};
  for (const key of Object.keys(value)) copy[key] = copyOf((value as Record<string, unknown>)[key]);
  return copy as T;
}
