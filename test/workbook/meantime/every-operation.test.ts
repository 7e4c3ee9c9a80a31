/** Every place of the program that writes into a workbook belongs to an operation of the table of this folder. */
import { OPERATIONS } from "./operations";
import { writingCalls } from "./writing-calls";

const IN_TABLE = new Set(Object.values(OPERATIONS).flatMap(({ calls }) => calls));

test("every place that writes is in the table", () =>
  expect(writingCalls().filter((call) => !IN_TABLE.has(call))).toEqual([]));

test("the table names no place that is gone", () => {
  const calls = writingCalls();
  expect([...IN_TABLE].filter((call) => !calls.includes(call))).toEqual([]);
});
