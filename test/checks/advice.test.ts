/** What is said before the next load goes on, on the demonstration and on records that want a remedy. */
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

/** A column down to a row. */
const until = (name: string, rows: number): NamedValues => ({
  [name]: (values[name] ?? []).map(([cell], row) => [row < rows ? (cell ?? "") : ""]),
});
test("the demonstration, which runs well, gets no advice of the gravest kind", () =>
  expect(advised().filter((one) => one.endsWith("stop"))).toEqual([]));

test("a load that was changed within primary, at 30 min, is told of first", () =>
  expect(advised(until("readings_05", 10))[0]).toBe("Q30 stop"));

test("a virgin line that ends soon after yield asks for a further load", () =>
  expect(advised(until("load_stress", 6))).toContain("Q44 explain"));

test("a sheet that holds nothing yet gets no advice", () => expect(adviceOn(readRecord({}))).toEqual([]));
