import { doubtAbout } from "../../../src/pane/ui/number-field";
import { eitherOf, isDoubtful, typedNonZero, typedNumber } from "../../../src/pane/ui/typed-number";
import { shown } from "../../../src/pane/text/digits";
import { setLanguage } from "../../../src/pane/text/language";

test.each([
  ["12.5", 12.5],
  [" 12,5 ", 12.5],
  ["-3", -3],
  ["1e-3", 0.001],
  ["0", 0],
  ["", undefined],
  ["  ", undefined],
  ["12,5,3", NaN],
  ["12.5 kPa", NaN],
  ["Infinity", NaN],
])("%p is the number %p", (typed, expected) => expect(typedNumber(typed)).toBe(expected));

test.each([
  ["12,5", 12.5],
  ["-2.5", -2.5],
  ["0", undefined],
  ["", undefined],
  ["x", undefined],
])("where 0 is a blank, %p is %p", (typed, expected) => expect(typedNonZero(typed)).toBe(expected));

describe("a mark that may part decimals or thousands", () => {
  afterEach(() => setLanguage("en"));

  test.each([
    ["en", "1,500", NaN],
    ["en", "1.500", 1.5],
    ["en", "63,5", 63.5],
    ["en", "0,015", 0.015],
    ["en", "63,5000", 63.5],
    ["en", "-12,345", NaN],
    ["de", "1.500", NaN],
    ["de", "1,500", 1.5],
    ["de", "12.5", 12.5],
    ["de", "0.015", 0.015],
    ["de", "1.500,5", NaN],
  ] as const)("in %s, %p is %p", (language, typed, expected) => {
    setLanguage(language);
    expect(typedNumber(typed)).toBe(expected);
  });

  test("is asked about with both numbers in the language of the pane", () => {
    expect(doubtAbout(" 1,500 ")).toBe("Is “1,500” 1.5 or 1500? Type it as one of these.");
    expect(doubtAbout("63,5")).toBeUndefined();
    expect(doubtAbout("x")).toBeUndefined();
    setLanguage("de");
    expect(isDoubtful("12.345")).toBe(true);
    expect(eitherOf("12.345").map((value) => shown(value))).toEqual(["12,345", "12345"]);
  });
});
