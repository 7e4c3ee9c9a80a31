/** How messages name rows of the readings. */
import { say, digits, listed, type Message, type Value } from "../../message";
import { firstOf, lastOf, nth } from "../../numeric/lists";
import type { Series } from "../readings";

/** Rows of the range, of many only the first three, each as `called` calls it. */
export const rowsCalled = (rows: readonly number[], called: (row: number) => Value = Number): Message =>
  rows.length === 1
    ? say`row ${called(firstOf(rows))}`
    : rows.length <= 4
      ? say`rows ${listed(rows.slice(0, -1).map(called))} and ${called(lastOf(rows))}`
      : say`rows ${listed(rows.slice(0, 3).map(called))} and ${rows.length - 3} more`;

/** A row with its time, by which a person finds the reading on the sheet: "9 (15 min)". */
const withTime = (row: Value, time: number): Message => say`${row} (${digits(time, 4)} min)`;

/** The same of the rows of a column of times. */
export const withTimeIn =
  (times: Float64Array) =>
  (row: number): Message =>
    withTime(row, nth(times, row - 1));

/** The row of a point with its time: "row 9 (15 min)". */
export const rowWithTime = ({ rows, times }: Series, index: number): Message =>
  withTime(nth(rows, index), nth(times, index));

/** The remark that rows are left out, and why. */
export const leftOut = (rows: readonly number[], why: Message, called?: (row: number) => Value): Message =>
  rows.length === 1
    ? say`${rowsCalled(rows, called)} is left out: ${why}`
    : say`${rowsCalled(rows, called)} are left out: ${why}`;
