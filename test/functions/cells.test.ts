import {
  isOmitted,
  toCell,
  toChoice,
  toMillimetres,
  toNumber,
  toOptionalMillimetres,
  toOptionalNonZero,
  toOptionalNumber,
  toOptionalPositive,
  toOptionalWord,
  toPair,
  toPositive,
  toSeries,
  toUnit,
} from "../../src/functions/cells";
import { say } from "../../src/reduction/message";
import { refusal } from "./refusal";

/** Cell values that Excel passes as objects, as @types/office-js declares them. */
const objects = {
  number: { type: "Double", basicType: "Double", basicValue: 12.5 },
  formatted: { type: "FormattedNumber", basicType: "Double", basicValue: 12.5, numberFormat: '0.00 "mm, sh"' },
  text: { type: "String", basicType: "String", basicValue: "12,5" },
  boolean: { type: "Boolean", basicType: "Boolean", basicValue: true },
  empty: { type: "Empty", basicType: "Empty", basicValue: "" },
  error: { type: "Error", basicType: "Error", basicValue: "#DIV/0!", errorType: "Div0" },
  date: { type: "FormattedNumber", basicType: "Double", basicValue: 45000, numberFormat: "yyyy-mm-dd" },
  clock: { type: "FormattedNumber", basicType: "Double", basicValue: 0.0625, numberFormat: "[h]:mm" },
  card: { type: "Entity", text: "clay", properties: {}, basicType: "Error", basicValue: "#VALUE!" },
  pricedCard: { type: "Entity", text: "clay", properties: {}, basicType: "Double", basicValue: 12.5 },
  hostError: Object.assign(new Error("bad"), { code: "#N/A" }),
};

describe("one cell", () => {
  test.each([12.5, objects.number, objects.formatted, objects.pricedCard])("%j is a number", (cell) =>
    expect(toCell(cell, say`row 1`)).toBe(12.5),
  );
  test.each([null, undefined, "", "  ", "\u00a0", objects.empty])("%j is blank", (cell) =>
    expect(toCell(cell, say`row 1`)).toBeNull(),
  );
  test.each<[unknown, string]>([
    ["12.5", "12.5 stored as text: re-enter as a number"],
    [" 1e3 ", "1e3 stored as text: re-enter as a number"],
    ["12,5", 'the text "12,5", which is not a number here: re-enter as a number, with this workbook\'s decimal sign'],
    ["1 200", 'the text "1 200", which is not a number here'],
    ["1.200,5", 'the text "1.200,5", which is not a number here'],
    ["12.5 mm", 'the text "12.5 mm": re-enter as a number alone, without the unit'],
    ["broken", 'the text "broken" where a number is needed: correct or clear that cell'],
    ["x".repeat(40), `the text "${"x".repeat(30)}…" where`],
    [true, "the logical value TRUE where a number is needed"],
    [objects.boolean, "the logical value TRUE where a number is needed"],
    [objects.text, 'the text "12,5", which is not a number here'],
    ["#N/A", "the error #N/A: correct that cell first"],
    [objects.error, "the error #DIV/0!: correct that cell first"],
    [objects.hostError, "the error #N/A: correct that cell first"],
    [new Error("bare"), "the error of another formula: correct that cell first"],
    [objects.card, "a data card where a number is needed"],
    [{ anything: 1 }, "a data card where a number is needed"],
    [
      objects.date,
      "a date or a clock time where a number is needed: reformat as a number and re-enter, times in minutes",
    ],
    [objects.clock, "a date or a clock time where a number is needed"],
    [new Date(0), "a date where a number is needed: enter a plain number"],
    [NaN, "no finite number"],
    [-Infinity, "no finite number"],
  ])("%p is refused", (cell, message) =>
    expect(refusal(() => toCell(cell, say`row 3 of the times`))).toContain(
      `#VALUE! row 3 of the times holds ${message}`,
    ),
  );
});

describe("one number", () => {
  test.each([7, [[7]], [7], [[{ type: "Double", basicType: "Double", basicValue: 7 }]]])("%j", (argument) =>
    expect(toNumber(argument, say`the height`)).toBe(7),
  );
  test("a blank cell is 0, as in desktop Excel; an omitted argument is missing", () => {
    for (const blank of [null, "", [[null]], 0]) expect(toNumber(blank, say`the strain`)).toBe(0);
    expect(refusal(() => toNumber(undefined, say`the strain`))).toBe("#VALUE! the strain is missing: enter a number");
  });
  test("a range of several cells is refused", () =>
    expect(refusal(() => toNumber([[1], [2]], say`the height`))).toBe(
      "#VALUE! the height is a range of cells where one number is needed: choose one cell",
    ));
  test("a measurement of zero is refused with the same words as a blank", () => {
    const messages = [null, "", 0, [[null]]].map((cell) => refusal(() => toPositive(cell, say`the ring mass`)));
    expect(new Set(messages)).toEqual(
      new Set(["#VALUE! the ring mass is blank or zero: enter a number greater than zero"]),
    );
    expect(refusal(() => toPositive(-2, say`the ring mass`))).toBe(
      "#VALUE! the ring mass is -2: it cannot be negative",
    );
  });
  test("optional numbers", () => {
    for (const blank of [undefined, null, "", 0, [[0]], [[null]]]) {
      expect(toOptionalPositive(blank, say`the height`)).toBeUndefined();
      expect(toOptionalNonZero(blank, say`the factor`)).toBeUndefined();
      expect(toOptionalMillimetres(blank, say`the height`, "in")).toBeUndefined();
      expect(toOptionalWord(blank, say`the unit`)).toBeUndefined();
    }
    expect(toOptionalNonZero(-0.01, say`the factor`)).toBe(-0.01);
    expect(toOptionalNumber(0, say`the tare`)).toBe(0);
    expect(toOptionalNumber(null, say`the tare`)).toBeUndefined();
    expect(refusal(() => toOptionalPositive(-1, say`the height`))).toMatch(/cannot be negative/);
    expect(refusal(() => toOptionalPositive(objects.error, say`the height`))).toMatch(/holds the error #DIV\/0!/);
    expect(isOmitted([[null]])).toBe(true);
    expect(isOmitted(objects.empty)).toBe(true);
    expect(isOmitted(0)).toBe(false);
  });
  test("a length in its unit", () => {
    expect(toMillimetres(2.5, say`the diameter`, "in")).toBeCloseTo(63.5, 12);
    expect(refusal(() => toMillimetres(0, say`the diameter`, "in"))).toMatch(/diameter is blank or zero/);
  });
});

describe("a word", () => {
  const item = (cell: unknown): string => toChoice(cell, say`the item`, ["cv", "t50"], "cv");
  test("a word is accepted in any case; blank and 0 give the default", () => {
    expect([" T50 ", [["t50"]], { type: "String", basicType: "String", basicValue: "t50" }].map(item)).toEqual([
      "t50",
      "t50",
      "t50",
    ]);
    expect([null, undefined, "", 0].map(item)).toEqual(["cv", "cv", "cv", "cv"]);
  });
  test("any other word is refused with the list of accepted words", () => {
    expect(refusal(() => item("t5"))).toBe('#VALUE! the item is "t5": use one of cv, t50');
    expect(refusal(() => item(3))).toBe('#VALUE! the item is "3": use one of cv, t50');
    expect(refusal(() => item([["cv"], ["t50"]]))).toMatch(/is a range of cells where one word is needed/);
    expect(refusal(() => item(objects.error))).toMatch(/the item holds the error #DIV\/0!/);
  });
  test("a unit is accepted as people type it", () => {
    expect(toUnit("KN/M³", "density", "Mg/m3")).toBe("kN/m3");
    expect(toUnit(0, "density", "Mg/m3")).toBe("Mg/m3");
    expect(refusal(() => toUnit("oz", "density", "Mg/m3"))).toMatch(/density unit is "oz": use one of Mg\/m3, g\/cm3/);
  });
});

describe("a series", () => {
  test("a column, a row and a single cell are read", () => {
    expect(toSeries([[1], [null], [3]], say`the times`)).toEqual([1, null, 3]);
    expect(toSeries([[1, "", 3]], say`the times`)).toEqual([1, null, 3]);
    expect(toSeries(5, say`the times`)).toEqual([5]);
    expect(toSeries([[objects.formatted]], say`the times`)).toEqual([12.5]);
  });
  test("a bad cell is named by its place", () => {
    expect(refusal(() => toSeries([[1], ["x"]], say`the times`))).toMatch(/row 2 of the times holds the text "x"/);
    expect(refusal(() => toSeries([[1, 2, objects.error]], say`the times`))).toMatch(
      /cell 3 of the times holds the error/,
    );
  });
  test("a block, and no cells, are refused", () => {
    expect(
      refusal(() =>
        toSeries(
          [
            [1, 2],
            [3, 4],
          ],
          say`the times`,
        ),
      ),
    ).toMatch(/must be one column or one row: .* 2 rows and 2/);
    expect(refusal(() => toSeries(undefined, say`the times`))).toMatch(/the times are missing/);
  });
  test("two series of different lengths are refused", () =>
    expect(refusal(() => toPair([[1], [2]], say`the times`, [[1]], say`the readings`))).toBe(
      "#VALUE! the times have 2 cells and the readings have 1: choose two ranges of the same length",
    ));
});
