/** The advice before the next load is put on: for the demonstration, and for records with a fault. */
import { adviceOn } from "../../src/checks/advice";
import { demoSheet } from "../../src/datasheet";
import { readRecord, type NamedValues } from "../../src/record/record";
import type { CellValue } from "../../src/workbook/port";
import { namedValues } from "../datasheet/read-sheet";

let values: NamedValues;
beforeAll(async () => {
  values = await namedValues(demoSheet("SI"));
});

const advised = (changes: NamedValues = {}): string[] =>
  adviceOn(readRecord({ ...values, ...changes })).map(({ check, answer }) => `${check.id} ${answer.status}`);

/** The cells of a column from the first row to this row. */
const until = (name: string, rows: number): NamedValues => ({
  [name]: (values[name] ?? []).map(([cell], row) => [row < rows ? (cell ?? "") : ""]),
});
test("the demonstration has no fault, so it gets no advice of the gravest kind", () =>
  expect(advised().filter((one) => one.endsWith("stop"))).toEqual([]));

test("the first advice is about a load that was changed after 30 min, before the end of primary", () =>
  expect(advised(until("readings_05", 10))[0]).toBe("Q30 stop"));

test("the gravest advice comes first, whatever the number of its question", () => {
  const faults = {
    ...changed("readings_05", (r, row) => (row === 1 || row === 2 ? "" : r)),
    ...until("readings_06", 10),
  };
  const said = advised(faults).map((one) => one.split(" ")[1]);
  expect(advised(faults)).toEqual(expect.arrayContaining(["Q27 explain", "Q30 stop"]));
  const order = ["stop", "explain", "note"];
  expect(said).toEqual([...said].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
  expect(said[0]).toBe("stop");
});

test("a virgin line that ends soon after yield needs a further load", () =>
  expect(advised(until("load_stress", 6))).toContain("Q44 explain"));

/** The cells of a column, each number changed. */
const changed = (name: string, change: (value: number, row: number) => CellValue): NamedValues => ({
  [name]: (values[name] ?? []).map(([cell], row) => [typeof cell === "number" ? change(cell, row) : (cell ?? "")]),
});

// Each fault alone brings its question, with its status.
test.each([
  [
    "the first reading after 0.5 min",
    () => changed("readings_05", (r, row) => (row === 1 || row === 2 ? "" : r)),
    "Q27 explain",
  ],
  ["two readings before t50", () => changed("readings_05", (r, row) => (row > 0 && row < 6 ? "" : r)), "Q28 explain"],
  ["no reading before t50", () => changed("readings_05", (r, row) => (row > 0 && row < 8 ? "" : r)), "Q28 stop"],
  ["a dial fifty times as coarse", () => changed("readings_05", (r) => Math.round(r / 50)), "Q37 explain"],
  ["an apparatus that yields three times as much", () => changed("apparatus_loading", (d) => 3 * d), "Q40 explain"],
  ["an apparatus that yields twenty times as much", () => changed("apparatus_loading", (d) => 20 * d), "Q40 stop"],
  ["a poor sample at the in-situ stress", () => ({ in_situ_stress: [[120]] }), "Q51 explain"],
] as const)("%s is told before the next load", (_, changes, expected) => {
  expect(advised()).not.toContain(expected);
  expect(advised(changes())).toContain(expected);
});

test("a blank sheet gets no advice", () => expect(adviceOn(readRecord({}))).toEqual([]));
