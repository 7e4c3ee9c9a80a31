/** What the lines of the calculation book are worked out from: the record of the test, and the cells of its sheet. */
import type { NamedValues, TestRecord } from "../../record/record";
import type { Reduced } from "../../record/reduced-test";
import { digits, type Digits, type Message, type Value } from "../../reduction/message";
import type { Worked } from "../line";

export type Cell = number | undefined;
export type Line = { readonly said: Value; readonly result?: number; readonly worked?: Worked } | undefined;

export interface Sheet {
  readonly record: TestRecord;
  readonly values: NamedValues;
  readonly reduced: Reduced;
  readonly cell: (name: string, row?: number) => Cell;
  readonly line: (id: string, numbers: readonly Cell[], after?: Message) => Line;
}

/** The lines of some results, by the names of their cells. */
export type Lines = Readonly<Record<string, (sheet: Sheet) => Line>>;

export const less = (a: Cell, b: Cell): Cell => (a === undefined || b === undefined ? undefined : a - b);

export const few = (value: number): Digits => digits(value, 4);

export const construction = (said: Message) => (): Line => ({ said });
