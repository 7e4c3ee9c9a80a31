/** @jest-environment jsdom */
/**
 * The built functions (npm run build), called by Excel's own custom-functions runtime in the way of a shared runtime:
 * calls arrive over the bridge of the host, and answers to Excel leave over it.
 */
import fs from "fs";
import path from "path";
import { translateAnswers } from "../../../src/pane/live/sheet-language";
import { setLanguage } from "../../../src/pane/text/language";
import { translateBy } from "../../../src/record/told";
import { isTranslation } from "../../datasheet/german/meaning";

interface Declared {
  id: string;
  parameters: { dimensionality?: string; optional?: boolean }[];
  result: { dimensionality?: string };
}

/** An answer to Excel: a value, or the number of an error with its message. 1 is #N/A, 7 is #VALUE!. */
type Told = { value: unknown } | { error: number; message: string };
const NOT_AVAILABLE = 1;
const VALUE = 7;

/** Call flags: error cells are allowed; cells may arrive as data types. */
const ERRORS = 4;
const DATA_TYPES = 8;

const dist = path.resolve(__dirname, "../../../dist");
const declared: Declared[] = JSON.parse(fs.readFileSync(path.join(dist, "functions.json"), "utf8")).functions;

const bridge = {
  onMessageFromHost: undefined as unknown as (text: string) => void,
  answers: new Map<number, Told>(),
  sendMessageToHost(text: string): void {
    const { id, message } = JSON.parse(text);
    for (const { Name, ArgumentInfo } of message.body.Actions)
      if (Name === "SetInvocationArrayResults")
        for (const [call, succeeded, value, error] of ArgumentInfo.Arguments[0])
          this.answers.set(call, succeeded ? { value } : { error, message: value });
    const body = JSON.stringify({
      Results: message.body.Actions.map(({ Id }: any) => ({ ActionId: Id, Value: null })),
    });
    this.onMessageFromHost(JSON.stringify({ id, type: 2, message: { statusCode: 200, headers: {}, body } }));
  },
};

beforeAll(() => {
  Object.assign(globalThis, { _richApiNativeBridge: bridge });
  // The runtime looks for its own script element.
  document.head.innerHTML = '<script src="https://localhost/custom-functions-runtime.js"></script>';
  const library = require.resolve("@microsoft/office-js/dist/custom-functions-runtime.js");
  for (const file of [library, path.join(dist, "functions.js")]) (0, eval)(fs.readFileSync(file, "utf8"));
});

let calls = 0;

/** Calls functions as one recalculation does. Omitted optional arguments arrive as null, as Excel fills them in. */
async function calculate(formulas: [id: string, cells: unknown[]][], flags = ERRORS): Promise<Told[]> {
  const entries = formulas.map(([id, cells]) => {
    const { parameters } = declared.find((one) => one.id === id)!;
    const padded = parameters.map((_, index) => cells[index] ?? null);
    return { messageCategory: 1, messageType: 1000, message: [++calls, id, padded, "Sheet1!A1", flags] };
  });
  bridge.onMessageFromHost(JSON.stringify({ type: 3, message: { entries } }));
  const ids = entries.map(({ message }) => message[0] as number);
  while (!ids.every((id) => bridge.answers.has(id))) await new Promise((resolve) => setTimeout(resolve, 20));
  return ids.map((id) => bridge.answers.get(id)!);
}

const column = (values: readonly unknown[]): unknown[][] => values.map((value) => [value]);
const times = column([0, 0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440]);
/** Terzaghi's theory in its usual approximation (T = pi/4 U^2 up to 60 %), T = t / 40 min, with a little creep. */
const readings = times.map(([t]) => {
  const T = (t as number) / 40;
  const U = T < 0.283 ? Math.sqrt((4 * T) / Math.PI) : 1 - 10 ** (-(T + 0.0851) / 0.933);
  return [2 + U + 0.03 * Math.log10(1 + (t as number))];
});

test("returns a value, an error cell named with its remedy, and a method that does not apply", async () => {
  const [value, spoiled, none] = await calculate([
    ["WATER_CONTENT", [150, 120]],
    ["WATER_CONTENT", [150, { type: "CustomFunctionError", code: "#DIV/0!" }]],
    ["LOG_TIME", [column([0, 1, 2, 4, 8]), column([1, 2, 3, 4, 5])]],
  ]);
  expect(value).toEqual({ value: 0.25 });
  expect(spoiled).toMatchObject({ error: VALUE, message: expect.stringMatching(/dry mass.*#DIV\/0!/) });
  expect(none).toMatchObject({ error: NOT_AVAILABLE, message: expect.stringMatching(/\w+ \w+/) });
});

test("an answer that may spill is always a complete rectangle, for one item too", async () => {
  const told = await calculate([
    ["LOG_TIME", [times, readings, 19]],
    ["LOG_TIME", [times, readings, 19, "t50"]],
    ["LOG_TIME_LINES", [times, readings]],
    ["ROOT_TIME", [times, readings, 19]],
    ["LOAD_SCHEDULE", [12.5, 400]],
    ["READING_TIMES", []],
    ["DEFORMATION", [readings, 2]],
  ]);
  for (const one of told) {
    const rows = (one as { value: unknown[][] }).value;
    expect(Array.isArray(rows) && rows.length > 0 && rows.every(Array.isArray)).toBe(true);
    expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
    expect(rows.flat().filter((cell) => cell === null || cell === undefined)).toEqual([]);
  }
  expect(told[1]).toEqual({ value: [[expect.closeTo(0.197 * 40, 0)]] });
});

test("a German word is answered in German where the pane runs in the same page, otherwise in English", async () => {
  const asked: Parameters<typeof calculate>[0] = [
    ["LOG_TIME", [times, readings, 500, "remark"]],
    ["LOG_TIME", [times, readings, 500, "Bemerkung"]],
    ["WATER_CONTENT", [150, "x"]],
  ];
  const [english, alone, refused] = await calculate(asked);
  expect(alone).toEqual(english);
  expect(refused).toMatchObject({ error: VALUE, message: expect.stringMatching(/^the dry mass holds the text "x"/) });
  translateAnswers();
  setLanguage("de");
  const [same, german, told] = await calculate(asked);
  translateBy(undefined);
  setLanguage("en");
  expect(same).toEqual(english);
  const textOf = (one: Told): string => String((one as { value: unknown[][] }).value[0]?.[0]);
  expect(textOf(english)).toMatch(/unlikely|cv/);
  expect(isTranslation(textOf(english), textOf(german))).toBe(true);
  expect(textOf(german)).not.toBe(textOf(english));
  expect(told).toMatchObject({
    error: VALUE,
    message: expect.stringMatching(/^die Trockenmasse: dort steht der Text "x"/),
  });
});

test("a blank cell is the same as 0 (desktop), null and blank text (web)", async () => {
  const withBlank = (blank: unknown): unknown[][] => [...readings.slice(0, 6), [blank], ...readings.slice(7)];
  const told = await calculate([0, null, ""].map((blank) => ["LOG_TIME", [times, withBlank(blank), 19]]));
  expect(told[0]).toHaveProperty("value");
  expect(told[1]).toEqual(told[0]);
  expect(told[2]).toEqual(told[0]);
});

/**
 * A cell with an error in the form that Excel passes if the add-in accepts data types. Source: Excel.ErrorCellValue of
 * @types/office-js.
 */
test("an error that arrives as a data type is named with its remedy, alone and within a range", async () => {
  const error = { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" };
  const cell = { value: JSON.stringify(error) };
  const [alone, within] = await calculate(
    [
      ["WATER_CONTENT", [150, cell]],
      ["LOG_TIME", [times, [...readings.slice(0, 3), [cell], ...readings.slice(4)], 19]],
    ],
    DATA_TYPES,
  );
  expect(alone).toMatchObject({ error: VALUE, message: expect.stringMatching(/dry mass.*#DIV\/0!/) });
  expect(within).toMatchObject({ error: VALUE, message: expect.stringMatching(/row 4 of the readings.*#DIV\/0!/) });
});

test("a formatted number arrives as its number", async () => {
  const formatted = { type: "FormattedNumber", basicType: "Double", basicValue: 120, numberFormat: "0.00" };
  const told = await calculate([["WATER_CONTENT", [150, { value: JSON.stringify(formatted) }]]], DATA_TYPES);
  expect(told).toEqual([{ value: 0.25 }]);
});

test("every declared function is found, and says what is wrong with blank cells", async () => {
  const told = await calculate(
    declared.map(({ id, parameters }) => [
      id,
      parameters.map(({ dimensionality, optional }) =>
        optional ? null : dimensionality === "matrix" ? [[null]] : null,
      ),
    ]),
  );
  const failed = told.map((one, index) => ({ id: declared[index].id, ...one }));
  expect(failed.filter((one) => "error" in one && ![VALUE, NOT_AVAILABLE].includes(one.error))).toEqual([]);
  expect(failed.filter((one) => "error" in one && (!one.message || /failed inside/.test(one.message)))).toEqual([]);
});
