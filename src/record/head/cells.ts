/** The cells of a sheet as the sentences of its head name them, and what they hold. */
import { verbatim, type Message, type Value } from "../../reduction/message";
import type { Field } from "../../specification/field";
import { everyWord } from "../../specification/list-words";
import type { Limits } from "../../specification/measures";
import { UNUSUAL_REMARK } from "../../specification/formulas";
import { asColumn } from "../../workbook/lists";
import type { CellValue, SheetName } from "../../workbook/port";
import { englishWord } from "../cells";
import { boxesByName, cellBeside } from "../places";
import type { NamedValues, TestRecord } from "../record";

/** A sentence of the head, with the first cell that it names. */
export interface HeadSentence {
  readonly kind: "impossible" | "entry" | "unusual" | "jump" | "missing" | "running";
  readonly sentence: Message;
  /** The address of the cell, such as "N19". */
  readonly address?: string;
  /** The entries that the sentence says cannot be; none if it is about what follows from entries. */
  readonly cells?: readonly NamedCell[];
}

/** A cell of the sheet, with its name. */
export interface NamedCell {
  readonly name: string;
  readonly address: string;
}

/** A data sheet as the pane reads it. Without its names, a sentence has the names of cells in the place of addresses. */
export interface ReadSheet {
  readonly values: NamedValues;
  readonly record: TestRecord;
  readonly names?: readonly SheetName[];
}

export const isNumber = (value: CellValue | undefined): value is number => typeof value === "number";

/** The cells of a sheet, and what its sentences call them. */
export class Cells {
  readonly #values: NamedValues;
  readonly #names: readonly SheetName[];

  constructor({ values, names = [] }: ReadSheet) {
    this.#values = values;
    this.#names = names;
  }

  /** The cells of a column; none if the sheet lacks its name. */
  column(name: string): readonly CellValue[] {
    return asColumn(this.#values[name] ?? []).map(([value = ""]) => value);
  }

  /** A single cell; undefined if the sheet lacks its name. */
  cell(name: string): CellValue | undefined {
    return this.column(name)[0];
  }

  /** The numbers of these cells; undefined unless each has one. */
  numbers<N extends string>(names: Readonly<Record<N, string>>): Readonly<Record<N, number>> | undefined {
    const found = Object.entries<string>(names).map(([key, name]) => [key, this.cell(name)] as const);
    if (!found.every(([, value]) => isNumber(value))) return undefined;
    // Object.fromEntries types the keys as strings; they are those of the names.
    return Object.fromEntries(found) as Record<N, number>;
  }

  address(name: string, row = 1): string {
    return cellBeside(this.#names, name, row) ?? name;
  }

  at(name: string, row?: number): Value {
    return verbatim(this.address(name, row));
  }

  named(name: string, row?: number): NamedCell {
    return { name, address: this.address(name, row) };
  }

  /** A sentence about an impossible input. */
  impossible(sentence: Message, name: string, row?: number): HeadSentence {
    const cell = this.named(name, row);
    return { kind: "impossible", sentence, address: cell.address, cells: [cell] };
  }

  /** A sentence about two inputs of which one is wrong; it leads to the first of them. */
  oneOf(kind: HeadSentence["kind"], sentence: Message, names: readonly [string, string]): HeadSentence {
    return { kind, sentence, address: this.address(names[0]), cells: names.map((name) => this.named(name)) };
  }

  /** A sentence about what follows from inputs that are each possible, with the cell that it names first. */
  contradiction(sentence: Message, name: string, row?: number): HeadSentence {
    return { kind: "impossible", sentence, address: this.address(name, row) };
  }

  /** The row of the sheet in which a column begins. */
  firstRow(name: string): Value {
    const box = boxesByName(this.#names).get(name);
    return box ? box.row + 1 : verbatim(name);
  }
}

/** The label of a field: the pane calls the field as the sheet does. */
export function quoted({ name, label }: Pick<Field, "name" | "label">): Value {
  const alone = label.trim();
  return { verbatim: alone, cell: name, label: alone };
}

export const fits = (value: CellValue, { least, above, most }: Limits): boolean =>
  isNumber(value) &&
  (least === undefined || (above ? value > least : value >= least)) &&
  (most === undefined || value <= most);

/** Whether a cell has this word of a list, in any language of a sheet. */
export const isSame = (value: CellValue, word: string): boolean =>
  englishWord(String(value)).toLowerCase() === word.toLowerCase();

/** Whether a cell has a word of its list in any language of a sheet, or a unit of it, which `englishWord` leaves as it is. */
export const isOnList = (value: CellValue, { choices = [] }: Pick<Field, "choices">): boolean =>
  choices.flatMap(everyWord).some((choice) => isSame(value, choice));

/** The row, from 1, of the last cell for which this holds; undefined if there is none. */
export const lastRow = (
  cells: readonly CellValue[],
  holds: (value: CellValue, index: number) => boolean,
): number | undefined =>
  cells.reduce<number | undefined>((last, value, index) => (holds(value, index) ? index + 1 : last), undefined);

/** Whether the sheet tells of unusual numbers, of slips and of picks that cannot be used: sheets up to version 9 do not. */
export const tellsUnusual = (cells: Cells): boolean => cells.cell(UNUSUAL_REMARK) !== undefined;

/** A sentence that lists these cells; none if there is no cell. */
export function listing(
  kind: HeadSentence["kind"],
  sentence: (cells: Value) => Message,
  named: readonly NamedCell[],
): HeadSentence[] {
  const addresses = named.map(({ address }) => address);
  const [address] = addresses;
  if (address === undefined) return [];
  return [{ kind, sentence: sentence(verbatim(addresses.join(" "))), address, cells: named }];
}
