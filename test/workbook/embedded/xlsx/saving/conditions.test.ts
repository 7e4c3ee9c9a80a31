/** Conditional formats and rules of entry that a person makes on the page: Excel reads each formula, and the page the same rule again. */
import "../../engine-in-node";
import { newWorkbook, openXlsx, saveXlsx } from "../../../../../src/workbook/embedded";
import { finishedFormula } from "../../../../../src/workbook/embedded/xlsx/formula";
import { complaintsOf } from "../../../../ooxml/complaints";
import { children, elements, Package } from "../../../../ooxml/package";
import { textOf } from "../../../../ooxml/package-rules";
import type { XmlElement } from "../../../../ooxml/xml";

/** What a rule asks for, its formulas in the file, and what it asks for when the file is opened; undefined if that is the same. */
interface Case {
  readonly type: string;
  readonly values?: readonly string[];
  readonly dateValue?: string;
  readonly formulas: readonly string[];
  readonly again?: readonly [type: string, ...values: string[]];
}

const FORMATS: readonly Case[] = [
  { type: "isEqual", values: ["sand"], formulas: ['"sand"'], again: ["isEqual", '="sand"'] },
  { type: "isEqual", values: ['5" pipe'], formulas: ['"5"" pipe"'], again: ["isEqual", '=("5"&CHAR(34)&" pipe")'] },
  { type: "isEqual", values: ["TRUE"], formulas: ["TRUE"] },
  { type: "isEqual", values: ["50%"], formulas: ["0.5"], again: ["isEqual", "0.5"] },
  { type: "isGreaterThan", values: ["1,234.5"], formulas: ["1234.5"], again: ["isGreaterThan", "1234.5"] },
  { type: "isGreaterThan", values: ["12/31/2026"], formulas: ["46387"], again: ["isGreaterThan", "46387"] },
  { type: "isBetween", values: ["1", "=A1"], formulas: ["1", "A1"] },
  { type: "customFormula", values: ["=STDEV.S(A1:A3)>2"], formulas: ["_xlfn.STDEV.S(A1:A3)>2"] },
  { type: "containsText", values: ['5" pipe'], formulas: ['NOT(ISERROR(SEARCH("5"" pipe",D1)))'] },
  { type: "notContainsText", values: ["clay"], formulas: ['ISERROR(SEARCH("clay",D1))'] },
  { type: "beginsWithText", values: ['a"'], formulas: ['LEFT(D1,LEN("a"""))="a"""'] },
  { type: "dateIsBefore", dateValue: "yesterday", formulas: ["TODAY()-1"], again: ["isLessThan", "=TODAY()-1"] },
];

const RULES: readonly Case[] = [
  { type: "isGreaterThan", values: ["1,234.5"], formulas: ["1234.5"], again: ["isGreaterThan", "1234.5"] },
  { type: "isLessThan", values: ["12/31/2026"], formulas: ["46387"], again: ["isLessThan", "46387"] },
  { type: "isBetween", values: ["1", "=A1"], formulas: ["1", "A1"] },
  { type: "customFormula", values: ["=STDEV.S(A1:A3)>2"], formulas: ["_xlfn.STDEV.S(A1:A3)>2"] },
  { type: "isValueInList", values: ["sand", 'a "clay"'], formulas: ['"sand,a ""clay"""'], again: ["isValueInList", "sand", "a clay"] }, // prettier-ignore
  { type: "dateIsAfter", values: ["=A1"], dateValue: "exactDate", formulas: ["A1"] },
  { type: "dateIsBetween", values: ["=A1", "12/31/2026"], formulas: ["A1", "46387"], again: ["dateIsBetween", "=A1", "12/31/2026"] }, // prettier-ignore
  { type: "dateIs", dateValue: "today", formulas: ["TODAY()"], again: ["dateIs", "=TODAY()"] },
  { type: "dateIs", dateValue: "lastWeek", formulas: ["TODAY()-6", "TODAY()"], again: ["dateIsBetween", "=TODAY()-6", "=TODAY()"] }, // prettier-ignore
  { type: "dateIsOnOrBefore", dateValue: "tomorrow", formulas: ["TODAY()+1"], again: ["dateIsOnOrBefore", "=TODAY()+1"] }, // prettier-ignore
  { type: "dateIsAfter", dateValue: "lastMonth", formulas: ["EDATE(TODAY()+1,-1)"], again: ["dateIsAfter", "=EDATE(TODAY()+1,-1)"] }, // prettier-ignore
];

/** The sheet of a workbook with rules that were saved and opened again, and the file. */
async function savedWith(
  command: (sheetId: string, ranges: object[], criterion: object) => { readonly type: string },
  cases: readonly Case[],
) {
  const workbook = newWorkbook();
  const sheetId = workbook.model.getters.getSheetIds()[0]!;
  cases.forEach(({ type, values = [], dateValue }, index) => {
    const ranges = [{ _zone: { left: 3, right: 3, top: 5 * index, bottom: 5 * index + 4 }, _sheetId: sheetId }];
    const { type: called, ...rest } = command(sheetId, ranges, { type, values, dateValue });
    const done = workbook.model.dispatch(called as never, rest as never);
    expect([type, done.isSuccessful]).toEqual([type, true]);
  });
  const bytes = await saveXlsx(workbook);
  expect(complaintsOf(bytes)).toEqual([]);
  const [sheet] = (openXlsx(bytes).workbook.model.exportData() as { sheets: any[] }).sheets;
  return { file: new Package(bytes), sheet };
}

const root = (file: Package): XmlElement => file.xml(file.sheets[0]!.path).documentElement;
const formulasOf = (one: XmlElement): string[] =>
  children(one).filter(({ localName }) => localName.startsWith("formula")).map((formula) => textOf(formula)); // prettier-ignore
const asked = ({ type, values = [], again }: Case): readonly string[] => again ?? [type, ...values];
const atRow = (formula: string, index: number): string => formula.replaceAll("D1", `D${5 * index + 1}`);

test("conditional formats", async () => {
  const format = (sheetId: string, ranges: object[], { type, ...more }: any) => {
    const rule = { type: "CellIsRule", operator: type, style: { bold: true }, ...more };
    return { type: "ADD_CONDITIONAL_FORMAT", sheetId, ranges, cf: { id: JSON.stringify(ranges), rule } };
  };
  const { file, sheet } = await savedWith(format, FORMATS);
  const written = elements(root(file), "cfRule");
  expect(written.map(formulasOf)).toEqual(
    FORMATS.map(({ formulas }, index) => formulas.map((formula) => atRow(formula, index))),
  );
  expect(sheet.conditionalFormats.map(({ rule }: any) => [rule.operator, ...rule.values])).toEqual(FORMATS.map(asked));
});

test("rules of entry, of days without a number too", async () => {
  const entry = (sheetId: string, ranges: object[], criterion: object) => {
    const rule = { id: JSON.stringify(ranges), criterion, isBlocking: true };
    return { type: "ADD_DATA_VALIDATION_RULE", sheetId, ranges, rule };
  };
  const { file, sheet } = await savedWith(entry, RULES);
  const written = elements(root(file), "dataValidation");
  expect(written.map(formulasOf)).toEqual(RULES.map(({ formulas }) => formulas));
  expect(written.map((one) => one.getAttribute("type") === "date")).toEqual(
    RULES.map(({ type }) => type.startsWith("date")),
  );
  const again = sheet.dataValidationRules.map(({ criterion }: any) => [criterion.type, ...criterion.values]);
  expect(again).toEqual(RULES.map(asked));
});

// The add-in's functions are not registered in these tests, and the engine takes no rule with a function that it does not know.
test("a function of the add-in has the name that Excel gives it in a file, also beside cells", () => {
  expect(finishedFormula('CLAY.STRAIN(A1,"CLAY.STRAIN(")>BH1!A1')).toBe(
    `_xldudf_CLAY_STRAIN(A1,"CLAY.STRAIN(")>'BH1'!A1`,
  );
});

test("a conditional format that is opened again leaves the size and the wrapping of its cell as they were", async () => {
  const workbook = newWorkbook();
  const { dispatch, getters } = workbook.model;
  const [sheetId] = getters.getSheetIds() as [string];
  const zone = { left: 0, right: 0, top: 0, bottom: 0 };
  const own = { fontSize: 14, wrapping: "wrap" } as const;
  dispatch("UPDATE_CELL", { sheetId, col: 0, row: 0, content: "5", style: own });
  const rule = { type: "CellIsRule", operator: "isGreaterThan", values: ["1"], style: { bold: true } } as const;
  dispatch("ADD_CONDITIONAL_FORMAT", {
    ...{ sheetId, ranges: [{ _zone: zone, _sheetId: sheetId }] },
    cf: { id: "high", rule },
  } as never);
  const again = openXlsx(await saveXlsx(workbook)).workbook.model.getters;
  const shown = again.getCellComputedStyle({ sheetId: again.getSheetIds()[0]!, col: 0, row: 0 });
  expect(shown).toMatchObject({ ...own, bold: true });
});

test("a conditional format whose cell was deleted has the lost reference as Excel writes it", async () => {
  const workbook = newWorkbook();
  const { dispatch, getters } = workbook.model;
  const [sheetId] = getters.getSheetIds() as [string];
  const formats: [string, string[]][] = [
    ["isBetween", ["1", "=A1"]],
    ["customFormula", ["=A1>SUM(A1,2)"]],
  ];
  formats.forEach(([operator, values], col) => {
    const ranges = [{ _zone: { left: col, right: col, top: 3, bottom: 4 }, _sheetId: sheetId }];
    const cf = { id: operator, rule: { type: "CellIsRule", operator, values, style: { bold: true } } };
    dispatch("ADD_CONDITIONAL_FORMAT", { sheetId, ranges, cf } as never);
  });
  const rows = { sheetId, sheetName: getters.getSheetName(sheetId), dimension: "ROW", elements: [0] } as const;
  expect(dispatch("REMOVE_COLUMNS_ROWS", rows as never).isSuccessful).toBe(true);
  const bytes = await saveXlsx(workbook);
  expect(elements(root(new Package(bytes)), "cfRule").map(formulasOf)).toEqual([
    ["1", "#REF!"],
    ["#REF!>SUM(#REF!,2)"],
  ]);
  expect(complaintsOf(bytes)).toEqual([]);
});
