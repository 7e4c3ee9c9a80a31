/** The sentences at the head of a sheet, read back as messages: the same in English, whole in German, each with its cell. */
import { blankSheet, demoSheet, fillSheet, type SheetValues } from "../../src/datasheet";
import { headOf, headSentences, impossibleInputs } from "../../src/record/head-of-sheet";
import { readRecord } from "../../src/record/record";
import { english, templateOf } from "../../src/reduction/message";
import { cellAddress } from "../../src/workbook/address";
import { charactersToPixels } from "../../src/workbook/embedded/look/styles";
import { translated } from "../../src/pane/text/messages";
import { calculate } from "../datasheet/sheet-in-engine";
import { namedValues } from "../datasheet/read-sheet";
import { textWidth } from "../datasheet/text-width";
import type { SheetPlan } from "../../src/workbook/port";

jest.setTimeout(240_000);

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

describe("ring + dry soil of 300 g in the demonstration", () => {
  const plan = changed({ ring_and_dry: 300 });

  test("gives three sentences, each with its first cell, in English as the sheet has them", async () => {
    const values = await namedValues(plan);
    const said = impossibleInputs(readRecord(values));
    expect(said.map(({ address }) => address)).toEqual(
      ["ring_and_wet_before", "ring_and_wet_after", "initial_height"].map((name) => addressIn(plan, name)),
    );
    expect(said.map(({ sentence }) => english(sentence)).join(" ")).toBe(String(values.missing_in_full[0][0]).trim());
    expect(values.missing_inputs).toEqual(values.missing_in_full);
  });

  test("does not tell each load that its readings are wrong", async () =>
    expect(String((await calculate(plan)).value("load_remark"))).not.toContain("correct the readings"));
});

test("if the sentences do not fit, the head names the first and says how many more there are", async () => {
  const sheet = await calculate(
    changed({ ring_and_dry: 300, specific_gravity: -1, diameter: 0, dial_factor: 0, drainage: "both", ring_mass: -5 }),
  );
  const [whole, head] = [String(sheet.value("missing_in_full")), String(sheet.value("missing_inputs"))];
  const said = headSentences(whole);
  expect(said.length).toBeGreaterThan(5);
  expect(head).toBe(`${english(said[0].sentence)} And ${said.length - 1} more: see What next.`);
  expect(said.map(({ sentence }) => english(sentence)).join(" ")).toBe(whole.trim());
});

test("the longest texts fit into the row at the head", async () => {
  const blank = await calculate(blankSheet("SI"));
  const said = String(blank.value("missing_inputs"));
  expect(said).toMatch(/^Missing: specific gravity, /);
  expect(LINES).toBe(3);
  expect(linesOf(said)).toBeLessThanOrEqual(LINES);
  expect(linesOf("number and word; ".repeat(23).slice(0, 390))).toBeLessThanOrEqual(LINES);
});

describe("a German sheet", () => {
  const said = async (values: SheetValues) => {
    const record = readRecord(await namedValues(fillSheet(demoSheet("SI", "de"), values)));
    return { sentences: headOf(record), text: (record.remarks.missing_in_full ?? "").trim() };
  };

  test("says what cannot be in German, and every sentence is read back, each with its cell", async () => {
    const heavy = await said({ ring_and_dry: 300, drainage: "allseitig", dial_factor: 0, in_situ_stress: "" });
    expect(heavy.text).toMatch(/^Uhrfaktor, \w+: Zahl über 0 eingeben\. .*ein Wort der Liste wählen\. /);
    expect(heavy.text).toMatch(/Es fehlt: In-situ-Spannung \(für OCR, Feldkurve und Güte\), \w+\.$/);
    expect(heavy.sentences.filter(({ sentence }) => templateOf(sentence) === "{0}")).toEqual([]);
    expect(heavy.sentences.map(({ kind }) => kind)).toEqual([...Array(5).fill("impossible"), "missing"]);
    expect(heavy.sentences.every(({ address }) => address !== undefined)).toBe(true);
    const words = heavy.sentences.map(({ sentence }) => english(sentence));
    // An English pane quotes each label as the sheet has it.
    expect(words[0]).toMatch(/^Uhrfaktor, \w+: enter a number greater than 0\.$/);
    expect(words[2]).toMatch(
      /^Ring \+ feuchter Boden vorher, \w+, must be heavier than Ring \+ trockener Boden, \w+, or as heavy/,
    );
    expect(words[5]).toMatch(/^Missing: in-situ stress \(for OCR, field curve and quality\), \w+\.$/);
  });

  test("says why a load gives no point", async () => {
    const reach = await said({ apparatus_stress: [50, 100, 200, 400, 800, 1600, 3200, 6400, 9000, 9500, 9600] });
    const height = await said({ readings_16: Array(15).fill(9000) });
    for (const { sentences, text } of [reach, height]) {
      expect(text).toMatch(/^Laststufe \d+ gibt keinen Punkt der Kurve: .*$/);
      expect(sentences.map(({ sentence }) => templateOf(sentence).slice(0, 31))).toEqual(
        ["Load {0} gives no point of the c"].map((one) => one.slice(0, 31)),
      );
      expect(sentences.map(({ sentence }) => translated(sentence, "de"))[0]).not.toContain("{");
    }
  });

  test("blank, lists all that is missing in the three lines of its head", async () => {
    const values = await namedValues(blankSheet("SI", { language: "de" }));
    const head = String(values.missing_inputs[0][0]);
    expect(head).toMatch(/^Es fehlt: Korndichte Gs, /);
    expect(linesOf(head)).toBeLessThanOrEqual(LINES);
    const [missing] = headOf(readRecord(values));
    expect(english(missing.sentence)).toMatch(
      /^Missing: specific gravity, \w+; diameter, .*stresses of the loads, from \w+\.$/,
    );
  });
});

test("every shape of a sentence is read back, and worded in German", () => {
  const sentences = [
    "Height, I19: enter a number greater than 0 and not more than 60.",
    "Fines, I19: enter a number not less than 0 and not more than 100.",
    "Dial factor, N31: enter a number greater than 0.",
    "Salt, N31: enter a number not less than 0.5.",
    "Zero reading, AB31: enter a number.",
    "C alpha of load number, D40: enter the number of a load.",
    "Drainage, D40: choose a word of its list.",
    "Ring + dry soil, N20, must be heavier than the ring, N19: correct one of them.",
    "The water content by ring + wet soil after, I20, is above 1500 %: correct it.",
    "Load 5 gives no point of the curve: its height at the end is not above the height of solids: correct its last readings, the initial height, I19, the zero reading, N31, the dial factor, I31, or the sense of the readings, I32.",
    "Load 16 gives no point of the curve: the table of deflection, from A40 on, does not reach its stress, B90, or the seating stress, B84: correct the stress, or extend the table.",
    "Loads, from B92 on: row 4: the stress 1000 does not fit the rows around it: check it.",
    "Missing: specific gravity, I17; in-situ stress (for OCR, field curve and quality), N40; stresses of the loads, from B85; stress of load 6, B97; readings of load 6, in row 200 and below.",
    "The loads so far give no virgin line yet: read further loads.",
  ];
  const read = headSentences(`${sentences.join(" ")} `);
  expect(read.map(({ sentence }) => english(sentence))).toEqual(sentences);
  expect(read.filter(({ sentence }) => templateOf(sentence) === "{0}")).toEqual([]);
  const german = read.map(({ sentence }) => translated(sentence, "de"));
  expect(german[3]).toBe("Salt, N31: eine Zahl nicht kleiner als 0,5 eingeben.");
  expect(german[11]).toMatch(/^Laststufen, ab B92: row 4: /);
  expect(german[12]).toBe(
    "Es fehlt: Korndichte (Gs), I17; In-situ-Spannung (für OCR, Feldkurve und Güte), N40; Spannungen der Laststufen, ab B85; Spannung der Laststufe 6, B97; Ablesungen der Laststufe 6, ab Zeile 200.",
  );
  // The answer of a worksheet function stays English.
  german.splice(11, 1);
  expect(german.filter((one) => /\b(the|of|enter|must|correct)\b/.test(one.replace("C alpha of load", "")))).toEqual(
    [],
  );
});

test("the list of what is missing is read alike from sheets that end it with a semicolon", () => {
  const list = "Missing: diameter, D19; readings of load 6, in row 200 and below";
  const running = "The loads so far give no virgin line yet: read further loads. ";
  const [now, before] = [". ", "; "].map((end) => headSentences(`${list}${end}${running}`));
  expect(now.map(({ sentence }) => english(sentence))).toEqual([`${list}.`, running.trim()]);
  expect(before).toEqual(now);
  const inGerman = [". ", "; "].map((end) =>
    headSentences(
      `Es fehlt: Durchmesser, D19; Ablesungen der Laststufe 6, ab Zeile 200${end}` +
        "Die bisherigen Laststufen geben noch keine Erstbelastungsgerade: weitere Laststufen ablesen. ",
      "de",
    ).map(({ sentence }) => english(sentence)),
  );
  expect(inGerman).toEqual([now, now].map((said) => said.map(({ sentence }) => english(sentence))));
});

test("a sentence that no shape has stays as the sheet shows it; a blank text has none", () => {
  expect(headSentences("Something new, A1: look. ").map(({ sentence }) => english(sentence))).toEqual([
    "Something new, A1: look.",
  ]);
  expect(headSentences(" ")).toEqual([]);
  expect(headOf({ remarks: {} })).toEqual([]);
});
