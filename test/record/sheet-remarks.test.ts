/** The remarks made from the values of a sheet are those that its cells show; what a person typed is kept. */
import { demoSheet, fillSheet, type SheetValues } from "../../src/datasheet";
import { readRecord, type NamedValues, type TestRecord } from "../../src/record/record";
import { messageOf, remarkOfLoad, remarkOfTest, saidInCell } from "../../src/record/sheet-remarks";
import { english, type Message } from "../../src/reduction/message";
import { HAND_TIMES } from "../../src/specification/readings";
import { namedValues } from "../datasheet/read-sheet";

const OF_TEST = [
  "specimen_remark",
  "preconsolidation_remark",
  "preconsolidation_verdict",
  "field_remark",
  "quality_remark",
  "quality_class",
] as const;

describe.each(["SI", "US"] as const)("the demonstration, %s", (system) => {
  let values: NamedValues;
  let record: TestRecord;
  beforeAll(async () => {
    values = await namedValues(demoSheet(system));
    record = readRecord(values);
  });

  test("the remarks of every load agree", () => {
    expect(record.loads.length).toBeGreaterThan(10);
    for (const { number, row } of record.loads)
      expect(english(messageOf(remarkOfLoad(record, number)!))).toBe(values.load_remark[row - 1][0]);
    expect(remarkOfLoad(record, 99)).toBeUndefined();
  });

  test.each(OF_TEST)("%s", (name) => {
    const remark = remarkOfTest({ values, record }, name);
    expect(remark && english(messageOf(remark))).toBe(values[name][0][0]);
  });

  test("a typed cell gives no remark of the reduction", () =>
    expect(remarkOfTest({ values, record }, "test_remarks")).toBeUndefined());

  test("what a person typed over a formula is kept", () => {
    const remark = remarkOfTest({ values, record }, "specimen_remark");
    expect(english(saidInCell(record, "shells in the upper half", remark))).toBe("shells in the upper half");
    expect(english(saidInCell(record, "shells", undefined))).toBe("shells");
  });
});

/** What the cells of remarks of a sheet say, and the cells themselves. */
async function said(values: SheetValues, language: "en" | "de") {
  const read = await namedValues(fillSheet(demoSheet("SI", language), values));
  const record = readRecord(read);
  const ofLoads = record.loads.map(({ number, row }) => ({
    text: String(read.load_remark[row - 1][0]).trim(),
    remark: remarkOfLoad(record, number),
  }));
  const ofTest = OF_TEST.map((name) => ({
    text: String(read[name][0][0]).trim(),
    remark: remarkOfTest({ values: read, record }, name),
  }));
  const cells = [...ofLoads, ...ofTest].filter(({ text }) => text !== "" && !text.startsWith("#"));
  return cells.map(({ text, remark }) => ({ text, message: saidInCell(record, text, remark) }));
}

/** The text that a message repeats, if it is nothing but a text. */
const repeated = ({ values: [value] }: Message): string | undefined =>
  typeof value === "object" && "verbatim" in value ? value.verbatim : undefined;

/** A text of a cell as a person reads it: beside other remarks, "ok" is left out. */
const read = (text: string): string => text.replace(/(?<=.); ok$/, "");

/** A text with numbers of twelve digits at most, and without the mark at its end. */
const shortened = (text: string): string =>
  text.replace(/\d+\.\d{9,}/g, (number) => Number(number).toPrecision(12)).replace(/;$/, "");

const UNCORRECTED = { apparatus_stress: Array(11).fill("") };
const DAY = 48_000;

describe.each<[string, SheetValues, RegExp]>([
  [
    "times in seconds",
    { times_05: HAND_TIMES.map((time) => 60 * time) },
    /^check whether the times are seconds: the last one is 86400 min, which is 60 days(; |$)/,
  ],
  [
    "times in hours",
    { times_05: HAND_TIMES.map((time) => time / 60) },
    /^check whether the times are hours: the last one is 24 min, and the next load was applied 60 times as long after/,
  ],
  [
    "times of day",
    { times_05: HAND_TIMES.map((time) => 540 + time) },
    /^check whether the times are times of day, or count from the start of the test: they begin at 540 min, /,
  ],
  [
    "increments for stresses",
    { load_stress: [12.5, 12.5, 25, 50, 100, 200, 300], load_mark: [""] },
    /^check whether this stress is an increment, as it is that of load 1 and no water is marked: the sheet takes total/,
  ],
  [
    "a time of day without PM",
    { load_started: [...Array.from({ length: 4 }, (_, index) => DAY + 0.5625 + index), DAY + 4.0625] },
    /^check whether a moment of loading is half a day off, as 1:30 for 13:30, or lacks its time: the last time is 1440 min, and the next load was applied 720 min/,
  ],
  [
    "a seating stress that is load 1",
    { seating_stress: 12.5, load_mark: [""], seating_mark: "" },
    /^check whether the seating stress is smaller than load 1, as the two are equal and no water is marked: enter /,
  ],
  [
    "unloading typed as loading",
    { load_stress: [12.5, 25, 50, 100, 200, 400, 800, 1600] },
    /^check whether load was taken off, the dial passed its zero or was read backwards: the specimen swelled .*; the specimen swelled under the load: no cv/,
  ],
  ["no table of deflection", UNCORRECTED, /^not corrected for the apparatus; /],
  ["a table that does not reach every stress", { load_stress: [12.5, 25, 30_000] }, /does not reach this stress/],
  ["a table that does not reach the seating stress", { seating_stress: 20_000 }, /does not reach the seating stress/],
  [
    "times, moments, and a time curve that is refused",
    { load_started: [DAY + 1, DAY], times_03: [-1] },
    /the time in row 1 \(-1 min\) is before the load.*; the time curve is refused: row 1 of the times/,
  ],
  ["a stress that turns back alone", { load_stress: [12.5, 25, 6, 100] }, /turns back under this load alone/],
  [
    "a stress with a digit too many, typed last",
    { load_stress: [12.5, 25, 50, 1000] },
    /^check whether the stress was mistyped: it is more than 8 times that of the load before/,
  ],
  [
    "a stress without its decimal sign",
    { load_stress: [0.8, 1.6, 32, 6.4] },
    /^check whether the stress was mistyped: it is more than 8 times that of the load before/,
  ],
  [
    "a second load without its decimal sign",
    { load_stress: [0.8, 16, 3.2, 6.4] },
    /^check whether the stress was mistyped: it is more than 8 times that of the load before/,
  ],
  [
    "two loads at the same moment",
    { load_started: [DAY + 0.5, DAY + 1.5, DAY + 1.5] },
    /check whether the moment of loading was mistyped: it is that of the load above/,
  ],
  ["a mark of wetting", { load_mark: ["", "", "wetting"] }, /marked as wetting, but/],
  ["points at d100", { curve_from: "d100" }, /no d100: the curve shows the end/],
  [
    "adopted values",
    {
      ...{ adopted_value: [120, 0.5], adopted_by: ["AB"], adopted_reason: ["agreed on 3 May, by letter"] },
      ...{
        adopted_cv: [0.4, "", 2],
        adopted_cv_by: ["AB"],
        adopted_cv_from: ["", "", 10],
        adopted_cv_to: ["", "", 90],
      },
    },
    /^Preconsolidation stress adopted: 120 by AB, agreed on 3 May, by letter \(the constructions gave [\d.]+\); Compression index Cc adopted: 0.5 by no initials, no reason \(.*cv, another range adopted: 2 from 10 to 90 by no initials, no reason$/,
  ],
])("%s", (_, values, expected) => {
  test("the messages are the texts of the sheet", async () => {
    const cells = await said(values, "en");
    expect(cells.some(({ text }) => expected.test(text))).toBe(true);
    for (const { text, message } of cells) {
      expect(shortened(english(message))).toBe(shortened(read(text)));
      expect(repeated(message)).toBeUndefined();
    }
  });

  test("a German sheet gives the same messages", async () => {
    const [german, inEnglish] = [await said(values, "de"), await said(values, "en")];
    expect(german.map(({ message }) => message)).toEqual(inEnglish.map(({ message }) => message));
    expect(german.map(({ text }) => text)).not.toEqual(inEnglish.map(({ text }) => text));
  });
});

test.each<[string, SheetValues, number]>([
  ["a second load that leaps, and a third one that is a text", { load_stress: [0.8, 16, "abc", 32, 64] }, 1],
  ["a third load that leaps, and a first one that is a text", { load_stress: ["abc", 16, 320, 640] }, 2],
])("%s: sheet and record ask about the stress", async (_, values, at) => {
  const { text, message } = (await said(values, "en"))[at];
  expect(text).toMatch(/^check whether the stress was mistyped: it is more than 8 times that of the load before/);
  expect(shortened(english(message))).toBe(shortened(read(text)));
});
