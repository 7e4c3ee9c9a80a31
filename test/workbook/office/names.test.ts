import { localName, withLocalNames, withPlanNames } from "../../../src/workbook/office/names";
import { freeSheetName } from "../../../src/workbook/rules/sheet-names";

describe("freeSheetName", () => {
  test.each([
    ["Test", [], "Test"],
    ["Test", ["TEST", "test 2"], "Test 3"],
    ["BH-1 S/4 [a]", [], "BH-1 S-4 -a-"],
    ["'quoted'", [], "quoted"],
    ["History", [], "History 2"],
    ["", [], "Sheet"],
    ["a".repeat(40), [], "a".repeat(31)],
    ["a".repeat(40), ["a".repeat(31)], `${"a".repeat(29)} 2`],
  ])("%j among %j is %j", (wanted, taken, name) => expect(freeSheetName(wanted, taken)).toBe(name));

  test("the tenth sheet with a long name still fits", () => {
    const taken: string[] = [];
    for (let count = 0; count < 12; count++) taken.push(freeSheetName("Consolidation test of boring 12", taken));
    expect(new Set(taken).size).toBe(12);
    expect(Math.max(...taken.map(({ length }) => length))).toBe(31);
  });
});

// A name may not look like a cell in either reference style of Excel; the grid ends at XFD1048576.
test.each([
  ["initial_height", "initial_height"],
  ["e0", "e0"],
  ["Hs", "Hs"],
  ["cv", "cv"],
  ["t50", "t50_"],
  ["XFD1048576", "XFD1048576_"],
  ["XFE1", "XFE1"],
  ["A1048577", "A1048577"],
  ["r", "r_"],
  ["C", "C_"],
  ["r1c1", "r1c1_"],
  ["rc_01", "rc_01"],
  ["load1", "load1"],
])("localName(%j) is %j", (name, expected) => expect(localName(name)).toBe(expected));

test("withLocalNames leaves sheet names unchanged, and withPlanNames reverses it", () => {
  const made = withLocalNames(`='Test {t50}''s 5" ring'!$B$4+{t50}&"{t50}"`, { t50: 1 });
  expect(made).toBe(`='Test {t50}''s 5" ring'!$B$4+t50_&"{t50}"`);
  expect(withPlanNames(made)).toBe(`='Test {t50}''s 5" ring'!$B$4+t50&"{t50}"`);
});

test("withLocalNames leaves texts and array constants unchanged", () =>
  expect(withLocalNames('=IF({t50}="{t50}",{1,2},{e0})', { t50: 1, e0: 1 })).toBe('=IF(t50_="{t50}",{1,2},e0)'));
