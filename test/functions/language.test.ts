/** Worksheet functions answer in the language of the word that asks; without the translator of a page, in English. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { CellError, languageAsked, toPositive, toSeries } from "../../src/functions/cells";
import { CHECKS, COMPARE, WORKING } from "../../src/functions/checking";
import {
  C_ALPHA_RATIO,
  CASAGRANDE_LINES,
  COMPRESSION_INDICES,
  FIELD_CURVE,
  PRECONSOLIDATION,
  PRECONSOLIDATION_LINES,
  PRECONSOLIDATION_SPREAD,
  SAMPLE_QUALITY,
  WORK_LINES,
} from "../../src/functions/curve";
import { CV_AT, CV_RANGE, DESIGN_PARAMETERS, INTRINSIC, SETTLEMENT } from "../../src/functions/design";
import {
  FIT_TIME,
  LOG_TIME,
  LOG_TIME_LINES,
  ROOT_TIME,
  ROOT_TIME_LINES,
  TIME_CURVE,
} from "../../src/functions/increment";
import { APPARATUS_DEFLECTION } from "../../src/functions/loading";
import { PROGRESS } from "../../src/functions/progress";
import { REMARKS_BY_LOAD } from "../../src/functions/remarks";
import { SALT_CORRECTION, SPECIMEN } from "../../src/functions/specimen";
import {
  CV_UNCERTAINTY,
  STRAIN_UNCERTAINTY,
  STRESS_UNCERTAINTY,
  VOID_RATIO_UNCERTAINTY,
} from "../../src/functions/uncertainty";
import { COLLAPSE, SWELLING_PRESSURE } from "../../src/functions/wetting";
import { EXAMPLE_SHEET } from "../../src/help/example-sheet";
import { translateAnswers } from "../../src/pane/live/sheet-language";
import { answers as germanAnswers } from "../../src/pane/text/de/messages/answers";
import { setLanguage } from "../../src/pane/text/language";
import { told, translateBy } from "../../src/record/told";
import { say } from "../../src/reduction/message";
import { ASKING_WORDS, wordIn } from "../../src/specification/list-words";
import type { SheetLanguage } from "../../src/specification/text/language";
import { englishLeft } from "../datasheet/german/english-words";
import { isTranslation } from "../datasheet/german/meaning";
import fc from "../properties";
import { refusal } from "./refusal";

const column = (cells: readonly unknown[]): any[][] => cells.map((cell) => [cell]);
const example = (at: number): any[][] => column(EXAMPLE_SHEET[at].cells.slice(0, 15));
const [T, R] = [example(0), example(1)];
const S = column([10, 20, 40, 80, 160, 320, 640, 1280, 320, 80]);
const E = column([1.2, 1.19, 1.175, 1.155, 1.12, 0.99, 0.84, 0.69, 0.72, 0.75]);
const CV = column([4, 3, 2, 1.5, 1, 0.8, 0.7, 0.6, "", ""]);
const FEW: any[][] = T.slice(0, 3);

afterEach(() => {
  translateBy(undefined);
  setLanguage("en");
});

/** The texts that formulas of a sheet get, each asked with the word of a language. */
function answers(language: SheetLanguage): Record<string, unknown> {
  const word = (english: string): string => wordIn(language, english);
  const remark = word("remark");
  const [words, plain] = [word("words"), word("error")];
  const [spread] = [PRECONSOLIDATION_SPREAD(S, E, "e", null, words)];
  const field = (...more: readonly [any?]) => FIELD_CURVE(S, E, 60, 150, 0.42, 1.22, "e", undefined, null, ...more);
  return {
    LOG_TIME: LOG_TIME(T, R, 500, remark)[0][0],
    ROOT_TIME: ROOT_TIME(T, R, 500, remark)[0][0],
    FIT_TIME: FIT_TIME(T, R, 500, remark)[0][0],
    TIME_CURVE: TIME_CURVE(T, R, undefined, null, null, remark)[0][10],
    "TIME_CURVE, refused": TIME_CURVE(FEW, [...FEW, [1]], undefined, null, null, remark)[0][10],
    "TIME_CURVE, text": TIME_CURVE([["x"], ...T.slice(1)], R, undefined, null, null, remark)[0][10],
    PROGRESS: PROGRESS(T, R, remark)[0][0],
    "PROGRESS, verdict": PROGRESS(T, R, word("verdict"))[0][0],
    PRECONSOLIDATION: PRECONSOLIDATION(S, E, null, remark)[0][0],
    "PRECONSOLIDATION, refused": PRECONSOLIDATION(
      [[10], [20]],
      [[1.2], [1.1]],
      null,
      remark,
      "e",
      undefined,
      null,
      null,
      words,
    )[0][0],
    "PRECONSOLIDATION_SPREAD, labels": spread.map(([label]) => label).join("; "),
    "PRECONSOLIDATION_SPREAD, note of a method": spread[0][2],
    "PRECONSOLIDATION_SPREAD, verdict": spread[10][2],
    "FIELD_CURVE, branch of Cr": String(field(words).find(([label]) => label === "Cr")?.[2]).replace(/ \d.*/, ""),
    "FIELD_CURVE, remark": field(plain).find(([label]) => label === "remark")?.[1],
    "FIELD_CURVE, refused": FIELD_CURVE(S, E, "x", 150, 0.42, 1.22, "e", undefined, null, words)[3][1],
    "SAMPLE_QUALITY, class": SAMPLE_QUALITY(S, E, 60, 150, 1.22, "e", word("class"))[0][0],
    "SAMPLE_QUALITY, remark": SAMPLE_QUALITY(S, E, 60, 900, 1.22, "e", remark)[0][0],
    "C_ALPHA_RATIO, soil": C_ALPHA_RATIO(0.02, 0.5, word("soil"))[0][0],
    C_ALPHA_RATIO: C_ALPHA_RATIO(0.1, 0.5, remark)[0][0],
    "CV_AT, from": CV_AT(S, CV, 60, undefined, undefined, undefined, word("from")),
    "CV_AT, refused": CV_AT(S, CV, 6e4, undefined, undefined, undefined, word("from"), words),
    DESIGN_PARAMETERS: DESIGN_PARAMETERS(S, E, 60, 100, 150, 1.22, "e", remark)[0][0],
    SPECIMEN: SPECIMEN(63.5, 25.4, 74, 240, 250, 163.66, 2.72, null, "mm", remark)[0][0],
    "COLLAPSE, class": COLLAPSE(19.5, 18.5, 20, 200, word("class"))[0][0],
    COLLAPSE: COLLAPSE(19.5, 20.5, 20, 200, remark)[0][0],
    SWELLING_PRESSURE: SWELLING_PRESSURE(column([25, 50, 100]), column([-0.02, 0, 0.01]), "zero strain", remark)[0][0],
    "VOID_RATIO_UNCERTAINTY, largest": VOID_RATIO_UNCERTAINTY(
      25.4,
      63.5,
      74.36,
      163.66,
      2.72,
      0.01,
      null,
      0,
      "",
      null,
      word("largest"),
    )[0][0],
    COMPARE: COMPARE([[1]], [[2]], null, word("English"))[0][2],
    REMARKS_BY_LOAD: REMARKS_BY_LOAD(column([1, 2, 3]), column(["ok", "ok", { code: "#VALUE!" }]), word("English")),
    CHECKS: CHECKS([["ring_mass", 74]], undefined, word("all"))
      .map(([, status]) => status)
      .join("; "),
  };
}

test("each text is the German of the English one, and English without a translator", () => {
  const alone = answers("de");
  translateAnswers();
  const [inEnglish, german] = [answers("en"), answers("de")];
  expect(alone).toEqual({
    ...inEnglish,
    // The labels of this table are words of lists, which functions.js knows.
    "PRECONSOLIDATION_SPREAD, labels": german["PRECONSOLIDATION_SPREAD, labels"],
  });
  const wrong = Object.keys(inEnglish).filter((name) => {
    const [own, other] = [String(inEnglish[name]), String(german[name])];
    return own === "" || (own !== "ok" && own === other) || !isTranslation(own, other);
  });
  expect(wrong.map((name) => `${name}: ${String(inEnglish[name])} / ${String(german[name])}`)).toEqual([]);
});

test("the line of a calculation book has decimal commas by a German word, of the language or of the drainage", () => {
  translateAnswers();
  const line = "e = (H - H_s) / H_s = (25,400 - 10,367) / 10,367 = 1,450";
  expect(WORKING("void_ratio", 25.4, 10.367, "Deutsch")).toBe(line);
  expect(WORKING("void_ratio", 25.4, 10.367, "English")).toBe(line.replaceAll(",", "."));
  expect(WORKING("cv_from_t50", 0.95, 24.1, "mm", "einseitig")).toMatch(/= 0,197 \* \(24,100 mm \/ 1\)\^2/);
  expect(refusal(() => WORKING("void_ratio", 25.4, 10.367, "Deutsche"))).toMatch(/"Deutsche" is no unit/);
});

test("a German remark on loads keeps its remedy, and two remarks stand apart", () => {
  translateAnswers();
  const said = (text: string): string => REMARKS_BY_LOAD(column([3]), column([text]), "Deutsch");
  const noSlope = "die Neigung des Kriechasts wird nicht angegeben";
  for (const remedy of [
    noSlope,
    "früher ablesen",
    "weiter ablesen",
    "das Verfahren nach Wurzel t versuchen",
    "es gibt 12",
  ])
    expect(said(`kein Wendepunkt; ${remedy}`)).toBe(`Laststufe 3: kein Wendepunkt; ${remedy}`);
  expect(said("kein Wendepunkt; cv ist unsicher")).toBe("Laststufe 3: kein Wendepunkt\nLaststufe 3: cv ist unsicher");
  expect(said("no inflection; try ROOT_TIME")).toBe("Laststufe 3: no inflection; try ROOT_TIME");
});

test("the pane's language changes no answer in a cell", () => {
  translateAnswers();
  const before = [answers("en"), answers("de")];
  setLanguage("de");
  expect([answers("en"), answers("de")]).toEqual(before);
});

/** Every function that answers a table, asked with this item. */
const tables = (item?: string): Record<string, any[][]> => ({
  LOG_TIME: LOG_TIME(T, R, 500, item),
  ROOT_TIME: ROOT_TIME(T, R, 500, item),
  FIT_TIME: FIT_TIME(T, R, 500, item),
  PROGRESS: PROGRESS(T, R, item),
  PRECONSOLIDATION_SPREAD: PRECONSOLIDATION_SPREAD(S, E, "e", null, item),
  FIELD_CURVE: FIELD_CURVE(S, E, 60, 150, 0.42, 1.22, "e", undefined, null, null, item),
  PRECONSOLIDATION: PRECONSOLIDATION(S, E, null, item),
  COMPRESSION_INDICES: COMPRESSION_INDICES(S, E, item),
  SAMPLE_QUALITY: SAMPLE_QUALITY(S, E, 60, 150, 1.22, "e", item),
  C_ALPHA_RATIO: C_ALPHA_RATIO(0.02, 0.5, item),
  CV_RANGE: CV_RANGE(S, CV, 10, 320, item),
  DESIGN_PARAMETERS: DESIGN_PARAMETERS(S, E, 60, 100, 150, 1.22, "e", item),
  SETTLEMENT: SETTLEMENT(5, 100, 50, 120, 0.2, 0.03, item),
  INTRINSIC: INTRINSIC(0.6, 2.7, 1.1, 100, item),
  SPECIMEN: SPECIMEN(63.5, 25.4, 74, 240, 250, 163.66, 2.72, 24, "mm", item, 20, 0.035),
  SALT_CORRECTION: SALT_CORRECTION(152.4, 121.9, 0.035, 31.2, item),
  COLLAPSE: COLLAPSE(19.5, 18.5, 20, 200, item),
  SWELLING_PRESSURE: SWELLING_PRESSURE(column([25, 50, 100]), column([-0.02, 0, 0.01]), "zero strain", item),
  VOID_RATIO_UNCERTAINTY: VOID_RATIO_UNCERTAINTY(25.4, 63.5, 74.36, 163.66, 2.72, 0.01, null, 0, "", null, item),
  STRAIN_UNCERTAINTY: STRAIN_UNCERTAINTY(2, 20, 0.1, 0.01, 0.01, 0.01, null, item),
  STRESS_UNCERTAINTY: STRESS_UNCERTAINTY(100, 63.5, 0.01, 0.1, null, item),
  CV_UNCERTAINTY: CV_UNCERTAINTY(1.4, "log time", 1.35, 1.45, 22.3, 0.02, null, item),
});

describe("a whole table", () => {
  beforeEach(() => translateAnswers());

  test('is English without an item and for "English", and German in every column for "Deutsch", in any case', () => {
    const [plain, english, german] = [tables(), tables("english"), tables("Deutsch")];
    expect(english).toEqual(plain);
    expect(tables("DEUTSCH")).toEqual(german);
    for (const [name, rows] of Object.entries(german)) {
      expect([name, rows.map(([, value]) => typeof value)]).toEqual([
        name,
        plain[name].map(([, value]) => typeof value),
      ]);
      const texts = rows.flat().filter((cell) => typeof cell === "string");
      expect([name, englishLeft(texts), texts.filter((text) => /_/.test(text) && !/^[eC]_/.test(text))]).toEqual([
        name,
        [],
        [],
      ]);
    }
    expect(german.LOG_TIME.map(([label]) => label)).toEqual([
      "d0",
      "d50",
      "d100",
      "t50",
      "t100",
      "cv",
      "Neigung Kriechast",
      "Bemerkung",
    ]);
    expect(german.LOG_TIME[5][2]).toBe("m2/a");
  });

  test("is tried of every function whose help promises rows with labels", () => {
    const folder = path.join(__dirname, "../../src/functions");
    const sources = readdirSync(folder).filter((file) => file.endsWith(".ts"));
    const promised = sources
      .flatMap((file) => readFileSync(path.join(folder, file), "utf8").split("@customfunction"))
      .filter((text) => /@returns (A table|Rows) of label/.test(text))
      .flatMap((text) => /export function (\w+)/.exec(text)?.[1] ?? [])
      .filter((name) => !name.endsWith("_LINES"));
    expect(promised.length).toBeGreaterThan(15);
    expect(Object.keys(tables()).sort()).toEqual(promised.sort());
  });

  test("has German labels that ask for their items, each for one", () => {
    const german = tables("Deutsch");
    const plain = tables();
    for (const [name, rows] of Object.entries(german)) {
      const labels = rows.map(([label]) => String(label));
      expect([name, new Set(labels.map((label) => label.toLowerCase())).size]).toEqual([name, labels.length]);
    }
    for (const item of ["Neigung Kriechast", "neigung kriechast", "tail_slope"])
      expect(LOG_TIME(T, R, 500, item)).toEqual([[plain.LOG_TIME[6][1]]]);
    expect(SPECIMEN(63.5, 25.4, 74, 240, 250, 163.66, 2.72, 24, "mm", "Trockenmasse")).toEqual([[expect.any(Number)]]);
  });

  test("has no German word that no function answers", () => {
    const shown = new Set(Object.values(tables("Deutsch")).flat(2));
    const others = ["cm/Dekade", "in/Dekade", "Vorbelastungsspannung {0}"];
    expect(Object.values(germanAnswers).filter((one) => !shown.has(one) && !others.includes(one))).toEqual([]);
  });

  test("says in German why it is refused, if words are asked for", () => {
    const refused = (item?: any) =>
      PRECONSOLIDATION([[10], [20]], [[1.2], [1.1]], null, item, "e", undefined, null, null, "Worte");
    expect(refused().map(([label]) => label)).toEqual(["stress", "low", "high", "remark"]);
    expect(refused("Deutsch").map(([label]) => label)).toEqual(["Spannung", "unten", "oben", "Bemerkung"]);
    expect(refused("Deutsch")[3][1]).toBe(refused()[3][1]);
    const field = (language?: any) =>
      FIELD_CURVE(S, E, "x", 150, 0.42, 1.22, "e", undefined, null, "Worte", language).map(([label]) => label);
    expect(field("Deutsch")).toEqual(["Cc", "Cr", "trifft die Laborkurve", "Bemerkung"]);
  });
});

test("the lines of a construction have German labels by the word Deutsch, and the same points", () => {
  translateAnswers();
  const calls = (language?: string): any[][][] => [
    LOG_TIME_LINES(T, R, null as any, null, language),
    ROOT_TIME_LINES(T, R, null as any, null, language),
    CASAGRANDE_LINES(S, E, null, null as any, null, language),
    WORK_LINES(S, E, null, null as any, language),
    ...["bilog", "intersection", "pacheco_silva"].map((method) =>
      PRECONSOLIDATION_LINES(S, E, method, "e", null as any, null, language),
    ),
  ];
  const [plain, german] = [calls(), calls("Deutsch")];
  expect(calls("English")).toEqual(plain);
  expect(german.map((rows) => rows.map(([, ...point]) => point))).toEqual(
    plain.map((rows) => rows.map(([, ...point]) => point)),
  );
  const labels = (all: any[][][]) => [...new Set(all.flatMap((rows) => rows.map(([label]) => label)))];
  expect(englishLeft(labels(german))).toEqual([]);
  expect(labels(german)).toHaveLength(labels(plain).length);
});

test("a whole table is English, with a German word for the refusal as well as without", () => {
  translateAnswers();
  expect(LOG_TIME(T, R).at(-1)?.[0]).toBe("remark");
  expect(FIELD_CURVE(S, E, 60, 150, 0.42, 1.22, "e").find(([label]) => label === "Cr")?.[2]).toMatch(/^[a-z ]+ \d/);
});

test("the language of a word, in any case and as a cell; other words are English", () => {
  fc.assert(
    fc.property(fc.constantFrom(...ASKING_WORDS), fc.boolean(), (asked, isLarge) => {
      const own = wordIn("de", asked);
      const typed = isLarge ? own.toUpperCase() : own;
      return (
        languageAsked(typed) === "de" && languageAsked(null, [[` ${typed} `]]) === "de" && languageAsked(asked) === "en"
      );
    }),
  );
  fc.assert(fc.property(fc.anything(), (any) => typeof languageAsked(any) === "string"));
});

test("a message has the same numbers in German, with a comma", () => {
  translateAnswers();
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 999 }), (row, tenths) => {
      const stress = tenths / 10;
      const message = say`row ${row}: the stress is ${stress}, below zero: correct or clear it`;
      const german = told(message, "de");
      return (
        german !== told(message, "en") &&
        german.includes(String(row)) &&
        german.includes(String(stress).replace(".", ","))
      );
    }),
  );
});

describe("the error of a cell", () => {
  const refusal = (act: () => unknown): string => {
    try {
      act();
    } catch (error) {
      if (error instanceof CellError) return told(error.reason);
    }
    return "no refusal";
  };
  const text = () => toSeries([["x"]], say`the times`);
  const negative = () => toPositive(-2.5, say`the ring mass`);

  test("is in the language of the pane", () => {
    translateAnswers();
    expect(refusal(text)).toBe(
      'cell 1 of the times holds the text "x" where a number is needed: correct or clear that cell',
    );
    setLanguage("de");
    expect(refusal(text)).toMatch(/^Zelle 1 \(die Zeiten\): dort steht der Text "x", wo eine Zahl nötig ist/);
    expect(refusal(negative)).toBe("die Masse des Rings ist -2,5: negativ geht nicht");
    const deflection = (stress: number) => () => APPARATUS_DEFLECTION(stress, column([10, 100]), column([0.01, 0.02]));
    expect(refusal(deflection(2000))).toMatch(
      /^die Spannung 2000 liegt oberhalb des kalibrierten Bereichs \(10 bis 100\)/,
    );
    expect(refusal(deflection(2))).toMatch(/^die Spannung 2 liegt unterhalb des kalibrierten Bereichs/);
    expect(refusal(() => PRECONSOLIDATION([[1]], [["a"]], "none such"))).toMatch(
      /^das Verfahren: "none such" geht nicht/,
    );
  });

  test("is English without a translator, in whatever language the pane is", () => {
    setLanguage("de");
    expect(refusal(negative)).toBe("the ring mass is -2.5: it cannot be negative");
  });
});
