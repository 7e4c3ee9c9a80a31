/**
 * One input that cannot be, in the finished demonstration: no result, no cell of the load table and no design value shows an
 * error, and the line at the head of the sheet names the cell. The pane makes the same sentences from the values.
 */
import "../workbook/embedded/engine-in-node";
import { demoSheet } from "../../src/datasheet";
import { FIELDS, type NamedField } from "../../src/specification/fields";
import { isDate } from "../../src/specification/measures";
import { headOf } from "../../src/record/head-of-sheet";
import { readRecord } from "../../src/record/record";
import { english } from "../../src/reduction/message";
import { cellAddress } from "../../src/workbook/address";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import { runBatch } from "../../src/workbook/embedded/engine";
import { registerRealFunctions } from "../workbook/embedded/real-functions";

const plan = demoSheet("SI");

/** The table of picks says itself, row by row, which of its rows cannot be used. */
const OF_PICKS = /^pick_/;

type Case = readonly [name: string, index: number, content: string];

const isText = ({ measure }: NamedField): boolean => measure === "text";
/** Any text can be in its cell. */
const isFree = (field: NamedField): boolean => isText(field) && !field.choices;
const isDay = ({ measure }: NamedField): boolean => isDate(measure);
const READINGS = /^(times|readings)_/;

/** Whether a series of readings is beyond what the test tries: one load stands for all. */
const isOtherSeries = (name: string): boolean => READINGS.test(name) && !/_03$/.test(name);

const tried = FIELDS.filter(
  (field) =>
    field.kind === "input" && plan.names[field.name] && !isOtherSeries(field.name) && !OF_PICKS.test(field.name),
);

/** Numbers that no cell can have: a slip of the decimal point, or two numbers that became one. */
const BEYOND = ["1e9", "-1e9", "1e300"];

/** Limits belong to a measure: its first entry meets all of these numbers, the others one. */
const beyond = ({ name, measure }: NamedField): string[] =>
  tried.find((one) => one.measure === measure)?.name === name ? BEYOND : BEYOND.slice(0, 1);

/** Contents that cannot be, and whether the head of the sheet must name them. */
function casesOf(field: NamedField): Case[] {
  const { name } = field;
  if (isDay(field)) return ["-5", "abc"].map((content) => [name, 0, content]);
  if (isFree(field)) return [];
  if (isText(field)) return [[name, 0, "nonsense"]];
  if (READINGS.test(name))
    return [0, 3, 14].flatMap((index) => ["abc", ...BEYOND].map((content): Case => [name, index, content]));
  const rows = name === "load_stress" ? [0, 4, 15] : [0];
  return rows.flatMap((row) => ["-5", "0", "abc", ...beyond(field)].map((content): Case => [name, row, content]));
}

/** Inputs of which any number, or a number below 0, can be. */
const ANY_NUMBER = ["zero_reading", "apparatus_loading", "apparatus_unloading"];
const MAY_BE_ZERO = [
  "depth",
  "sample_top",
  "fines_content",
  "clay_content",
  "organic_content",
  "swelling_pressure",
  "pore_salt",
  "seating_stress",
  "apparatus_stress",
  "design_increase",
];
const canBe = ([name, , content]: Case): boolean =>
  (ANY_NUMBER.includes(name) && ["-5", "0"].includes(content)) || (MAY_BE_ZERO.includes(name) && content === "0");

/** Further cases: numbers that are each within their limits, and cannot be together. */
const TOGETHER: readonly Case[] = [
  ["initial_height", 0, "9"],
  ["initial_height", 0, "10.4"],
  ["specific_gravity", 0, "0.5"],
  ["ring_and_dry", 0, "50"],
  ["ring_and_dry", 0, "212"],
  ["ring_and_wet_after", 0, "20"],
  ["ring_and_wet_before", 0, "2110.3"],
  ["ring_mass", 0, "163.66"],
  ["dial_factor", 0, "2"],
  ["load_stress", 4, "3"],
  ["load_stress", 4, "9999"],
  ["readings_03", 14, "9000"],
  ["times_03", 4, "-1"],
];

interface Typed {
  readonly row: number;
  readonly col: number;
  readonly content: string;
}

async function workbook() {
  await registerRealFunctions({ blankAs: null });
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet(plan);
  const { model } = port.workbook;
  const { getters } = model;
  const sheetId = getters.getActiveSheetId();
  const evaluated = plan.cells.filter(({ formula, kind }) => formula !== undefined || kind === "result");
  const value = (row: number, col: number) => getters.getEvaluatedCell({ sheetId, row, col });
  return {
    /** "D23 #VALUE! why" of every cell that shows an error. */
    errors: (): string[] =>
      evaluated.flatMap(({ row, col }) => {
        const { type, value: shown, message } = value(row, col) as { type: string; value: unknown; message?: string };
        return type === "error" ? [`${cellAddress(row, col)} ${String(shown)} ${message ?? ""}`] : [];
      }),
    remark: (load: number): string =>
      String(value(plan.names.load_remark.row + load - 1, plan.names.load_remark.col).value),
    head: (): string => String(value(plan.names.missing_inputs.row, plan.names.missing_inputs.col).value),
    headInFull: (): string => String(value(plan.names.missing_in_full.row, plan.names.missing_in_full.col).value),
    /** The sentences of the head as the pane makes them. */
    headFromValues(): string {
      const values = Object.fromEntries(
        NAMES_OF_HEAD.map(({ name, place }) => [
          name,
          Array.from({ length: place.rows }, (_, row) => [value(place.row + row, place.col).value ?? ""]),
        ]),
      );
      return headOf({ values, names: NAMES_OF_HEAD, record: readRecord(values) })
        .map(({ sentence }) => `${english(sentence)} `)
        .join("");
    },
    /** What a cell holds. */
    content: (row: number, col: number): string => String(value(row, col).value ?? ""),
    /** Types into cells as one step. */
    type(typed: readonly Typed[]): void {
      const commands = typed.map((one) => ({ type: "UPDATE_CELL", sheetId, ...one }));
      // The engine refuses what a cell holds already.
      expect(runBatch(model, commands).filter((refusal) => !refusal.includes("NoChanges"))).toEqual([]);
    },
  };
}

/** Every name but the readings of the loads that nothing is typed into. */
const NAMES_OF_HEAD = Object.entries(plan.names)
  .filter(([name]) => !/^(times|readings)_(?!01|03)/.test(name))
  .map(([name, place]) => ({ name, place, scope: "sheet" as const }));

test("any texts may stand in the cells for free texts", async () => {
  const sheet = await workbook();
  const free = tried.filter(isFree).map(({ name }) => plan.names[name]);
  expect(free.length).toBeGreaterThan(20);
  sheet.type(free.map(({ row, col }) => ({ row, col, content: "nonsense" })));
  expect(free.map(({ row, col }) => sheet.content(row, col))).toEqual(free.map(() => "nonsense"));
  expect([sheet.errors(), sheet.head(), sheet.headInFull(), sheet.headFromValues()]).toEqual([[], "", "", ""]);
});

test("no error anywhere, and the head of the sheet names the cell", async () => {
  const sheet = await workbook();
  expect([sheet.errors(), sheet.head()]).toEqual([[], ""]);
  const faults: string[] = [];
  // The cell of one case gets its content back in the step that tries the next.
  let back: Typed[] = [];
  for (const one of [...tried.flatMap(casesOf), ...TOGETHER]) {
    const [name, index, content] = one;
    const col = plan.names[name].col;
    const row = plan.names[name].row + index;
    const address = cellAddress(row, col);
    const held =
      back.find((restored) => restored.row === row && restored.col === col)?.content ?? sheet.content(row, col);
    sheet.type([...back, { row, col, content }]);
    back = [{ row, col, content: held }];
    const [first] = sheet.errors();
    if (first) faults.push(`${name} in ${address} is ${content}: ${first}`);
    const head = sheet.head();
    const [inFull, made] = [sheet.headInFull(), sheet.headFromValues()];
    if (made !== inFull)
      faults.push(`${name} in ${address} is ${content}: the head says "${inFull}", the pane "${made}"`);
    const isNamed = READINGS.test(name)
      ? /load 3\b/i.test(head) || /the time curve is refused: row \d+/.test(sheet.remark(3))
      : head.includes(address);
    if (!canBe(one) && !isNamed) faults.push(`${name} in ${address} is ${content}: the head says "${head}"`);
  }
  sheet.type(back);
  expect(faults).toEqual([]);
  expect([sheet.errors(), sheet.head()]).toEqual([[], ""]);
});
