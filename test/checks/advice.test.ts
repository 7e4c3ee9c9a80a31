/** The advice before the next load is put on: for the demonstration, and for records with a fault. */
import { adviceOn } from "../../src/checks/advice";
import { demoSheet } from "../../src/datasheet";
import { readRecord, type NamedValues } from "../../src/record/record";
import { namedValues } from "../datasheet/read-sheet";

let values: NamedValues;
beforeAll(async () => {
  values = await namedValues(demoSheet("SI"));
}, 60_000);

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

test("a virgin line that ends soon after yield needs a further load", () =>
  expect(advised(until("load_stress", 6))).toContain("Q44 explain"));

test("a blank sheet gets no advice", () => expect(adviceOn(readRecord({}))).toEqual([]));
