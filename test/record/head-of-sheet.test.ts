/** The sentences at the head of a sheet, made from the values of its cells: they are those that the sheet shows. */
import { blankSheet, demoSheet, fillSheet, type SheetValues } from "../../src/datasheet";
import { demoTest } from "../../src/datasheet/demo-test";
import { headOf, type HeadSentence } from "../../src/record/head-of-sheet";
import { readRecord, type NamedValues } from "../../src/record/record";
import { HAND_TIMES } from "../../src/specification/readings";
import { wordIn } from "../../src/specification/list-words";
import { labelOn } from "../../src/record/labels/sheet-labels";
import { english } from "../../src/reduction/message";
import { cellAddress } from "../../src/workbook/address";
import { charactersToPixels } from "../../src/workbook/embedded/look/styles";
import { translated } from "../../src/pane/text/messages";
import { calculate } from "../datasheet/sheet-in-engine";
import { namedValues } from "../datasheet/read-sheet";
import { textWidth } from "../datasheet/text-width";
import type { SheetPlan } from "../../src/workbook/port";

const changed = (values: SheetValues): SheetPlan => fillSheet(demoSheet("SI"), values);
const addressIn = (plan: SheetPlan, name: string): string => cellAddress(plan.names[name].row, plan.names[name].col);

/** The pixels of the row at the head, and the number of lines that it shows. */
const { columnWidths, rowHeights, merges } = blankSheet("SI");
const ROW = 3;
const HEAD = Array.from({ length: merges.find(({ row }) => row === ROW)!.cols }, (_, col) => columnWidths[col]);
const ROOM = HEAD.reduce<number>((sum, width) => sum + charactersToPixels(width), 0);
const LINES = Math.floor((rowHeights?.[ROW] ?? 0) / 10.4);

/** Breaks a text between words, as a cell does; returns the number of lines. */
const linesOf = (text: string): number => {
  let lines = 1;
  let width = 0;
  for (const word of text.split(" ")) {
    const more = textWidth(`${word} `, "regular");
    if (width + more > ROOM - 8) {
      lines++;
      width = 0;
    }
    width += more;
  }
  return lines;
};

interface Read {
  readonly text: string;
  readonly sentences: HeadSentence[];
  readonly inWords: string[];
}

const readHead = async (plan: SheetPlan): Promise<Read> => {
  const values = await namedValues(plan);
  const names = Object.entries(plan.names).map(([name, place]) => ({ name, place, scope: "sheet" as const }));
  const sentences = headOf({ values, names, record: readRecord(values) });
  return {
    text: String(values.missing_in_full[0][0]).trim(),
    sentences,
    inWords: sentences.map(({ sentence }) => english(sentence)),
  };
};

describe("ring + dry soil of 300 g in the demonstration", () => {
  const plan = changed({ ring_and_dry: 300 });

  test("gives three sentences, each with its first cell, in English as the sheet has them", async () => {
    const { text, sentences, inWords } = await readHead(plan);
    expect(sentences.map(({ kind }) => kind)).toEqual(["impossible", "impossible", "impossible"]);
    expect(sentences.map(({ address }) => address)).toEqual(
      ["ring_and_wet_before", "ring_and_wet_after", "initial_height"].map((name) => addressIn(plan, name)),
    );
    expect(inWords.join(" ")).toBe(text);
    const values = await namedValues(plan);
    expect(values.missing_inputs).toEqual(values.missing_in_full);
  });

  test("does not tell each load that its readings are wrong", async () =>
    expect(String((await calculate(plan)).value("load_remark"))).not.toContain("correct the readings"));
});

test("if the sentences do not fit, the head names the first and says how many more there are", async () => {
  const plan = changed({
    ...{ ring_and_dry: 300, specific_gravity: -1, diameter: 0, dial_factor: 0, drainage: "both", ring_mass: -5 },
  });
  const { text, inWords } = await readHead(plan);
  expect(inWords.length).toBeGreaterThan(5);
  expect(inWords.join(" ")).toBe(text);
  expect((await calculate(plan)).value("missing_inputs")).toBe(
    `${inWords[0]} And ${inWords.length - 1} more: see What next.`,
  );
});

test("the longest texts fit into the row at the head", async () => {
  const blank = await calculate(blankSheet("SI"));
  const said = String(blank.value("missing_inputs"));
  expect(said).toMatch(/^Missing: specific gravity, /);
  expect(LINES).toBe(3);
  expect(linesOf(said)).toBeLessThanOrEqual(LINES);
  expect(linesOf("number and word; ".repeat(23).slice(0, 390))).toBeLessThanOrEqual(LINES);
});

const BEYOND = { apparatus_stress: [50, 100, 200, 400, 800, 1600, 3200, 6400, 9000, 9500, 9600] };
const TOO_LOW = { readings_16: Array(15).fill(9000) };
const PICKED = { pick_load: [3, 4], pick_of: ["cv by", "procedure"], pick_after: ["log", "by eye"] };

const BAD_PICKS = {
  pick_load: [30, 4, 5, "x", 6],
  pick_of: ["d100", "d75", "d0", "d0", "d0"],
  pick_after: [2000, 5, "abc", "automatic", 1200],
};
/** The masses of the demonstration from which the ring was taken off, although the mass of the ring stands on the sheet. */
const WITHOUT_RING = { ring_and_wet_before: 136.67, ring_and_wet_after: 111.6, ring_and_dry: 89.3 };

/** The readings of load 5 of the demonstration, with a dial that was reset by 600 divisions after the ninth reading. */
const RESET = { readings_05: demoTest("SI").readings[4]!.map((reading, index) => reading + (index > 8 ? 600 : 0)) };

/** The demonstration with what a technician mistakes: times in seconds, and readings from a load on. */
const ofLoads = (name: string, column: (index: number) => readonly (number | string)[]): SheetValues =>
  Object.fromEntries(READ.map((_, index) => [`${name}_${String(index + 1).padStart(2, "0")}`, column(index)]));
const READ = demoTest("SI").readings;
const IN_SECONDS = ofLoads("times", () => HAND_TIMES.map((time) => 60 * time));
const BACKWARDS = ofLoads("readings", (index) =>
  READ[index]!.map((reading) => (index < 4 ? reading : 2 * READ[3]!.at(-1)! - reading)),
);
const PAST_ZERO = ofLoads("readings", (index) =>
  READ[index]!.map((reading) => (index < 10 ? reading : reading - 2400)),
);
/** A test that has come as far as its fourth load, whose stress has a digit too many. */
const LEAP_AT_END = {
  load_stress: [12.5, 25, 50, 1000, ...Array(12).fill("")],
  ...Object.fromEntries(
    READ.map((_, index) => [`readings_${String(index + 1).padStart(2, "0")}`, Array(15).fill("")]).slice(4),
  ),
};
/** The last reading of load 11 has a digit wrong. */
const LAST_MISTYPED = { readings_11: READ[10]!.map((reading, index) => reading + (index === 14 ? 180 : 0)) };
const NO_READINGS: SheetValues = {
  ...ofLoads("readings", () => Array<string>(15).fill("")),
  load_stress: [12.5, 25, 50, ...Array<string>(13).fill("")],
};
const PICK_OF_LOAD = { pick_load: ["curve"], pick_of: ["d0"], pick_after: [50] };
const TEXT_PICKED = { pick_load: ["curve"], pick_of: ["virgin from"], pick_after: ["abc"] };

describe("slips in times, stresses and readings", () => {
  const told = async (values: SheetValues) => {
    const plan = changed(values);
    const [{ sentences, text }, { errors, value }] = [await readHead(plan), await calculate(plan)];
    const cell = (name: string, row = 0) => cellAddress(plan.names[name].row + row, plan.names[name].col);
    return { text, errors, value, addresses: sentences.map(({ address }) => address), cell };
  };

  test("times in seconds are named once, with the first load that has them", async () => {
    const { text, addresses, cell } = await told(IN_SECONDS);
    expect(text).toBe("Load 1: check whether the times are seconds: the last one is 86400 min, which is 60 days.");
    expect(addresses).toEqual([cell("times_01")]);
  });

  test("a dial read backwards is named with the load and the cell of its sense, and no cell shows an error", async () => {
    const { text, errors, value, addresses, cell } = await told(BACKWARDS);
    expect(text).toBe(
      `The specimen swelled under load 5 and is highest under the greatest stress: correct readings taken backwards or after the dial passed its zero, the sense of the readings, ${cell("dial_sense")}, or the stresses.`,
    );
    expect(errors).toEqual([]);
    expect(addresses).toEqual([cell("readings_05")]);
    // The remark that names the load stands last in its cell, without a mark behind it.
    expect(String(value("load_remark", 4))).toMatch(/; the specimen swelled under the load: no cv, mv, k or C alpha$/);
  });

  test("a dial that passes its zero is named with the load under which it did", async () => {
    const { text, addresses, cell } = await told(PAST_ZERO);
    expect(text).toMatch(/Load 11: check whether load was taken off, the dial passed its zero or was read backwards: /);
    expect(addresses).toContain(cell("readings_11"));
  });

  test("a second load with the stress of the first is named with its cell, unless water is marked", async () => {
    const load_stress = [12.5, 12.5, 25, 50];
    const { text, addresses, cell } = await told({ load_stress, load_mark: [""] });
    expect(text).toMatch(/Load 2: check whether this stress is an increment, as it is that of load 1 /);
    expect(addresses).toContain(cell("load_stress", 1));
    expect((await told({ load_stress, load_mark: ["inundated"] })).text).not.toContain("increment");
  });

  test("a stress ten times too large is named once, with its row and its cell, and not the load after it", async () => {
    const { text, addresses, cell } = await told({ load_stress: [12.5, 25, 500, 100, 200] });
    expect(text).toMatch(/row 3: the stress 500 does not fit the rows around it, where about 50 would: /);
    expect(text).not.toMatch(/more than 8 times|Load 4|row 4/);
    expect(addresses).toEqual([cell("load_stress", 2)]);
  });

  test("a stress that leaps is named with its load and its cell where the curve is not refused for it", async () => {
    const { text, addresses, cell } = await told(LEAP_AT_END);
    expect(text).toMatch(
      /^Load 4: check whether the stress was mistyped: it is more than 8 times that of the load before/,
    );
    expect(addresses).toContain(cell("load_stress", 3));
  });

  test("a German sheet names a stress out of order once too", async () => {
    const { text } = await readHead(fillSheet(demoSheet("SI", "de"), { load_stress: [12.5, 25, 500, 100, 200] }));
    expect(text).toMatch(/^Laststufen, ab \w+: Zeile 3: die Spannung 500 passt nicht /);
    expect(text).not.toContain("8-Fache");
  });

  test("a load that was applied before the load above it is named with the cell of its moment", async () => {
    const load_started = [48_000.5625, 48_001.5625, 48_001.0625];
    const { text, addresses, cell } = await told({ load_started });
    expect(text).toMatch(
      /Load 3: check whether a moment of loading is half a day off, as 1:30 for 13:30, or lacks its time: applied before /,
    );
    expect(addresses).toContain(cell("load_started", 2));
  });

  test("a second load that leaps is named before there are readings, until the next load is above it", async () => {
    const { text, addresses, cell } = await told({ ...NO_READINGS, load_stress: [0.8, 16, 3.2, 6.4] });
    expect(text).toMatch(
      /Load 2: check whether the stress was mistyped: it is more than 8 times that of the load before/,
    );
    expect(addresses).toContain(cell("load_stress", 1));
    expect((await told({ ...NO_READINGS, load_stress: [0.8, 16, ...Array<string>(14).fill("")] })).text).toContain(
      "Load 2: check whether the stress",
    );
    expect((await told({ ...NO_READINGS, load_stress: [1, 12.5, 25, 50] })).text).not.toContain("check whether");
  });

  test("two loads at the same moment are named before there are readings; two dates without a time are not", async () => {
    const { text, addresses, cell } = await told({ ...NO_READINGS, load_started: [48_000.5, 48_000.5] });
    expect(text).toMatch(/Load 2: check whether the moment of loading was mistyped: it is that of the load above\./);
    expect(addresses).toContain(cell("load_started", 1));
    expect(
      (await told({ ...NO_READINGS, load_started: [48_000, 48_000, ...Array<string>(14).fill("")] })).text,
    ).not.toContain("check whether");
  });

  test("a last reading that the constructions leave out is named, because the curve is drawn through it", async () => {
    const { text, value, addresses, cell } = await told(LAST_MISTYPED);
    expect(text).toBe("Load 11: check whether the last reading was mistyped: the load ends with it.");
    expect(addresses).toEqual([cell("readings_11")]);
    expect(value("end_reading", 10)).toBe(READ[10]!.at(-1)! + 180);
    expect(String(value("load_remark", 10))).toMatch(
      /row 15 \(1440 min\) is left out as a wrong reading: .*; check whether the last reading was mistyped: /,
    );
  });

  test("a wrong reading before the last one is left out, and no last reading is asked about", async () => {
    const { text, value } = await told({
      readings_11: READ[10]!.map((reading, index) => reading + (index === 13 ? 180 : 0)),
    });
    expect(String(value("load_remark", 10))).toContain("row 14 (480 min) is left out as a wrong reading");
    expect(text).toBe("");
  });

  test("a load's pick of the curve is named by its cell, and no cell shows an error", async () => {
    const { text, errors, cell } = await told(PICK_OF_LOAD);
    expect(text).toBe(`Choose a word of the list: ${cell("pick_of")}.`);
    expect(errors).toEqual([]);
  });

  test("a pick of the curve that is a text is named by its cell and its row", async () => {
    const { text, errors, cell } = await told(TEXT_PICKED);
    expect(text).toBe(
      `Loads, from ${cell("load_stress")} on: row 1 of the table of picks holds the text "abc" where a number is needed: correct or clear that cell. Enter a number that can be: ${cell("pick_after")}.`,
    );
    // The results that the pick would change give no value.
    expect(errors).toContainEqual(expect.stringMatching(new RegExp(`^${cell("preconsolidation_stress")} #VALUE!`)));
  });

  test("loads of a week and the steps of a logger are none", async () => {
    const week = [...HAND_TIMES.slice(0, -1), 10_080];
    const fast = HAND_TIMES.map((_, index) => 0.005 * 2.3 ** index);
    const load_started = READ.map((_, index) => 48_000 + 7 * index);
    const times = ofLoads("times", (index) => (index % 2 ? week : fast));
    // Up to the end of the week the tail goes on as it fell from 480 to 1440 min.
    const later = Math.log(10_080 / 480) / Math.log(1440 / 480);
    const readings = ofLoads("readings", (index) => {
      const [ofLoad, tail] = [READ[index]!.slice(0, -1), READ[index]!.slice(-2)];
      return [...ofLoad, Math.round(tail[0]! + (index % 2 ? later : 1) * (tail[1]! - tail[0]!))];
    });
    expect((await told({ ...times, ...readings, load_started })).text).not.toContain("check whether");
  });
});

test("a dial that was reset within a load is named at the head in the words of the load's remark, with its first cell", async () => {
  const plan = changed({ ...RESET, in_situ_stress: "" });
  const { sentences, inWords, text } = await readHead(plan);
  expect(sentences.map(({ kind }) => kind)).toEqual(["jump", "missing"]);
  expect(inWords[0]).toMatch(
    /^Load 5: the readings jump by \d+ at row 10 \(30 min\), and follow .* contains the jump\.$/,
  );
  expect(inWords.join(" ")).toBe(text);
  expect(sentences[0]!.address).toBe(cellAddress(plan.names.readings_05.row + 9, plan.names.readings_05.col));
  const said = inWords[0]!.slice("Load 5: ".length, -1);
  expect(String((await calculate(plan)).value("load_remark", 4)).split("; ")).toContain(said);
});

test("entries from which no result follows are named by their cells, and no result stays blank", async () => {
  const plan = changed({ date_ended: "soon", condition: "x", seating_mark: "x", registered_diameter: "wide" });
  const { sentences, inWords, text } = await readHead(plan);
  const at = (name: string): string => addressIn(plan, name);
  expect(sentences.map(({ kind }) => kind)).toEqual(["entry", "entry", "entry"]);
  expect(inWords).toEqual([
    `Enter a date: ${at("date_ended")}.`,
    `Enter a number that can be: ${at("registered_diameter")}.`,
    `Choose a word of the list: ${at("condition")} ${at("seating_mark")}.`,
  ]);
  expect(inWords.join(" ")).toBe(text);
  expect((await calculate(plan)).value("preconsolidation_stress")).toBeGreaterThan(0);
});

test("a German sheet names the reset in German, in the words of the pane", async () => {
  const { text, sentences } = await readHead(fillSheet(demoSheet("SI", "de"), RESET));
  expect(text).toMatch(/^Laststufe 5: die Ablesungen springen bei Zeile 10 \(30 min\) um \d+ und folgen .*\.$/);
  expect(text).toBe(sentences.map(({ sentence }) => translated(sentence, "de")).join(" "));
});

describe.each<[string, SheetValues]>([
  ["a dial that was reset", RESET],
  [
    "entries from which no result follows",
    { date_started: "March", depth_unit: "x", load_mark: ["x", "", 7], load_started: ["", "noon"], lever_ratio: -2 },
  ],
  ["limits of numbers", { test_temperature: 70, pore_salt: -1, liquid_limit: -3, initial_height: "thick" }],
  ["the number of a load, and words", { c_alpha_load: 99, drainage: "both", curve_from: "d50" }],
  ["columns", { apparatus_stress: [50, "x", -100], load_stress: [12.5, "y"] }],
  ["picks by hand", PICKED],
  ["masses", { ring_mass: 250, ring_and_wet_after: 5000 }],
  ["a table of deflection that ends too soon", BEYOND],
  ["a height below that of solids", TOO_LOW],
  ["a stress of the curve that does not fit", { load_stress: [12.5, 25, 50, 1000] }],
  ["readings without a stress", { load_stress: [...Array(15).fill(undefined), ""] }],
  [
    "sizes, deflections and stresses that no test has in their unit",
    { initial_height: 900, apparatus_loading: [0, 8, 14], seating_stress: 200_000 },
  ],
  ["sizes and stresses that few tests have", { initial_height: 200, diameter: 300, in_situ_stress: 20_000 }],
  ["a height in the place of the diameter", { initial_height: 63.5, diameter: 25.4 }],
  ["masses without the ring", WITHOUT_RING],
  ["picks that cannot be used", BAD_PICKS],
  ["times in seconds", IN_SECONDS],
  ["a dial read backwards from load 5 on", BACKWARDS],
  ["a dial that passes its zero under load 11", PAST_ZERO],
  ["a load's pick of the curve", PICK_OF_LOAD],
  ["a stress that leaps, and a curve that is not refused for it", LEAP_AT_END],
  ["a stress that leaps, and a curve that is refused for it", { load_stress: [12.5, 25, 500, 100, 200] }],
  [
    "a second load that leaps, before the next one and before readings",
    { ...NO_READINGS, load_stress: [0.8, 16, 3.2, 6.4] },
  ],
  ["a last reading that is left out of the constructions", LAST_MISTYPED],
  ["two loads at the same moment, before readings", { ...NO_READINGS, load_started: [48_000.5, 48_000.5] }],
  ["blank inputs", { diameter: "", in_situ_stress: "", zero_reading: "" }],
])("%s", (_, values) => {
  test("the sentences made from the values are those of the sheet", async () => {
    const { text, inWords } = await readHead(changed(values));
    expect(inWords.length).toBeGreaterThan(0);
    expect(inWords.join(" ")).toBe(text);
  });

  test("the sentences of a German sheet are the same values", async () => {
    const german = await readHead(fillSheet(demoSheet("SI", "de"), values));
    expect(german.sentences).toEqual((await readHead(changed(values))).sentences);
    expect(german.text).not.toBe(german.inWords.join(" "));
  });
});

test("a blank sheet, and one with the first stresses alone, list what is missing", async () => {
  const blank = await readHead(blankSheet("SI"));
  expect(blank.sentences.map(({ kind }) => kind)).toEqual(["missing"]);
  const first = await readHead(fillSheet(blankSheet("SI"), { load_stress: [12.5, 25] }));
  for (const { text, inWords } of [blank, first]) expect(inWords.join(" ")).toBe(text);
  expect(first.text).toContain("readings of load 1, in row ");
});

test("the pane words them in German, and calls a cell as the sheet does", async () => {
  const { sentences } = await readHead(changed({ ...PICKED, dial_factor: 0, in_situ_stress: "" }));
  const sheet = { label: (cell: string) => labelOn("de", cell), word: (word: string) => wordIn("de", word) };
  const german = sentences.map(({ sentence }) => translated(sentence, "de", sheet));
  expect(german[0]).toMatch(/^Uhrfaktor, \w+: eine Zahl größer als 0 und nicht größer als 1000 eingeben\.$/);
  expect(german[1]).toMatch(/^Festlegung „cv nach“, \w+: log t, Wurzel t oder automatisch eingeben\.$/);
  expect(german.at(-1)).toMatch(/^Es fehlt: In-situ-Spannung \(für OCR, Feldkurve und Güte\), \w+\.$/);
  expect(sentences.every(({ address }) => address !== undefined)).toBe(true);
});

test("a blank German sheet lists all that is missing in the three lines of its head", async () => {
  const head = String((await namedValues(blankSheet("SI", { language: "de" }))).missing_inputs[0][0]);
  expect(head).toMatch(/^Es fehlt: Korndichte Gs, /);
  expect(linesOf(head)).toBeLessThanOrEqual(LINES);
});

test("a running test that has no virgin line yet asks for further loads", async () => {
  const later = Array.from({ length: 14 }, (_, index) => `readings_${String(index + 3).padStart(2, "0")}`);
  const { text, sentences, inWords } = await readHead(
    changed(Object.fromEntries(later.map((name) => [name, Array(15).fill("")]))),
  );
  expect(sentences.map(({ kind }) => kind)).toEqual(["missing", "running"]);
  expect(inWords.join(" ")).toBe(text);
});

test("a cell with an error is no impossible entry; a sheet that is older than the line at its head says nothing", () => {
  const values = {
    missing_in_full: [[""]],
    diameter: [["#REF!"]],
    apparatus_stress: [["#N/A"]],
    drainage: [["#REF!"]],
  };
  const ofValues = (given: NamedValues) => headOf({ values: given, record: readRecord(given) });
  expect(ofValues(values)).toEqual([]);
  expect(ofValues({ diameter: [[-5]] })).toEqual([]);
  expect(ofValues({ ...values, diameter: [[-5]] })).toHaveLength(1);
});

test.each([
  ["SI", {}],
  ["US", {}],
  ["SI", { cv_unit: "m2/yr", conductivity_unit: "m/yr" }],
] as const)("no unit of a German sheet is refused (%s, %p)", async (system, units) => {
  const { text, inWords } = await readHead(fillSheet(demoSheet(system, "de"), units));
  expect(inWords).toEqual([]);
  expect(text).toBe("");
});

describe("numbers in another unit than that of the sheet", () => {
  const inInches = (values: SheetValues): SheetPlan => fillSheet(demoSheet("US"), values);

  test("sizes in mm on a sheet in inches are named, and there are no void ratios", async () => {
    const plan = inInches({ initial_height: 25.4, diameter: 63.5 });
    const { sentences, inWords } = await readHead(plan);
    const [diameter, height] = ["diameter", "initial_height"].map((name) => addressIn(plan, name));
    expect(inWords).toEqual([
      `Correct the number or its unit, too large for an oedometer test: ${diameter} ${height}.`,
    ]);
    expect(sentences[0]!.cells!.map(({ name }) => name)).toEqual(["diameter", "initial_height"]);
    expect((await calculate(plan)).value("void_ratio_initial")).toBe("");
    expect((await calculate(plan)).errors).toEqual([]);
  });

  test("the same sizes in mm on a sheet in mm are not, nor the sizes of a Rowe cell in inches", async () => {
    expect((await readHead(changed({}))).text).toBe("");
    const rowe = inInches({ diameter: 9.92, initial_height: 3.54 });
    expect((await readHead(rowe)).text).not.toContain("oedometer test");
  });

  test("stresses in Pa on a sheet in kPa, and deflections in micrometres, are named", async () => {
    const plan = changed({ load_stress: [12.5, 25, 50, 100, 200_000], apparatus_loading: [0, 8, 14] });
    const [stress, deflection] = [
      cellAddress(plan.names.load_stress.row + 4, plan.names.load_stress.col),
      cellAddress(plan.names.apparatus_loading.row + 2, plan.names.apparatus_loading.col),
    ];
    expect((await readHead(plan)).inWords[0]).toBe(
      `Correct the number or its unit, too large for an oedometer test: ${deflection} ${stress}.`,
    );
  });

  test("a large specimen is remarked, and has its results", async () => {
    const plan = changed({ initial_height: 25.4, diameter: 270, ring_mass: 500, ring_and_wet_before: 2971 });
    const filled = fillSheet(plan, { ring_and_wet_after: 2800, ring_and_dry: 2115 });
    const { sentences, inWords } = await readHead(filled);
    expect(sentences.map(({ kind }) => kind)).toEqual(["unusual"]);
    expect(inWords[0]).toBe(
      `Check the number and its unit, unusual for an oedometer test: ${addressIn(plan, "diameter")}.`,
    );
    expect((await calculate(filled)).value("void_ratio_initial")).toBeGreaterThan(1);
  });
});

test("the lowest cells of the picks by hand that cannot be used are named, a cell of each kind", async () => {
  const plan = changed(BAD_PICKS);
  const at = (name: string, row: number): string => cellAddress(plan.names[name].row + row - 1, plan.names[name].col);
  expect((await readHead(plan)).inWords).toEqual([
    `Enter a number that can be: ${at("pick_load", 4)} ${at("pick_after", 3)}.`,
    `Choose a word of the list: ${at("pick_of", 2)}.`,
  ]);
});

test.each<[string, SheetValues, RegExp]>([
  [
    "masses without the ring",
    WITHOUT_RING,
    /^The bulk density is 0\.77 Mg\/m3: check the masses, D20 with its ring and N19, /,
  ],
  [
    "height and diameter exchanged",
    { initial_height: 63.5, diameter: 25.4 },
    /The height, I19, is not less than the diameter, D19: check/,
  ],
  ["the height in cm", { initial_height: 2.54 }, /^The solids alone would fill the ring: correct the height, I19, /],
  [
    "ring and dry soil exchanged",
    { ring_mass: 163.66, ring_and_dry: 74.36 },
    /^Ring \+ dry soil, N20, must be heavier than the ring, N19/,
  ],
  [
    "wet and dry soil exchanged",
    { ring_and_wet_before: 163.66, ring_and_dry: 211.03 },
    /^Ring \+ wet soil before, D20, must be heavier than ring \+ dry soil, N20/,
  ],
])("a slip of the weighing: %s", async (_, values, said) => {
  const { text, inWords } = await readHead(changed(values));
  expect(text).toMatch(said);
  expect(inWords.length).toBeLessThanOrEqual(3);
});

/** The zero reading of the demonstration in divisions of 0.002 mm. */
const ZERO = 400;

describe("results that no soil has", () => {
  const ASKED =
    /zero reading, I38, lies more than a tenth of the height from the first reading of load 1, [A-Z]+\d+: check both/;

  test("a zero reading a factor off is named with both cells; one that is a little off is not", async () => {
    const far = await readHead(changed({ zero_reading: 10 * ZERO }));
    expect(far.inWords.join(" ")).toBe(far.text);
    expect(far.text).toMatch(ASKED);
    expect(far.sentences.map(({ kind, address }) => [kind, address])).toEqual([["unusual", "I38"]]);
    expect((await readHead(changed({ zero_reading: ZERO + 100 }))).text).toBe("");
  });

  test("a stress typed close to the one before gives a Cc that is rare, and the head says so", async () => {
    // Load 5 has 200, and load 4 before it 100.
    const plan = changed({ load_stress: [12.5, 25, 50, 100, 102, 400] });
    const { text, inWords } = await readHead(plan);
    expect(inWords.join(" ")).toBe(text);
    expect(text).toContain(`Cc, ${addressIn(plan, "compression_index")}, over 1 + e0 is `);
    expect(text).toContain(", which is rare outside peat: check the stresses and the last readings of the loads.");
  });

  test("a sheet of version 13 asks neither", async () => {
    const values = await namedValues(changed({ zero_reading: 10 * ZERO }));
    const said = (version: number) => {
      const named = { ...values, template_version: [[version]] };
      return headOf({ values: named, record: readRecord(named) }).length;
    };
    expect([said(13), said(14)]).toEqual([0, 1]);
  });
});
