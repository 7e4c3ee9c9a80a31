/** How much room the formulas of a data sheet leave for a language whose words are longer than those of English. */
import { blankSheet } from "../../src/datasheet";
import { MOST_LOADS } from "../../src/specification/readings";
import { SHEET_LANGUAGES } from "../../src/specification/text/language";
import { LONGEST_FORMULA } from "../../src/workbook/limits";

/** Excel takes 255 characters of a list of choices, with its commas (`src/workbook/rules/plan-check.ts`). */
const LONGEST_LIST = 255;

/** The texts of a formula may all be twice as long, and the cells of each address may have two characters more. */
const withLongWords = (formula: string): number => {
  const texts = (formula.match(/"(?:[^"]|"")*"/g) ?? []).join("").length;
  const addresses = (formula.match(/\$?[A-Z]{1,3}\$?\d+/g) ?? []).length;
  return formula.replace(/[{}]/g, "").length + texts + 2 * addresses;
};

test.each(SHEET_LANGUAGES)("every text of every formula may be twice as long, %s", (language) => {
  const plan = blankSheet("SI", { language, loads: MOST_LOADS });
  const name = (row: number, col: number): string =>
    Object.entries(plan.names).find(([, box]) => box.col === col && row >= box.row && row < box.row + box.rows)?.[0] ??
    `${row}, ${col}`;
  const long = plan.cells.flatMap(({ row, col, formula = "" }) =>
    withLongWords(formula) > LONGEST_FORMULA
      ? [`${name(row, col)}: ${withLongWords(formula) - LONGEST_FORMULA} too many`]
      : [],
  );
  expect([...new Set(long)]).toEqual([]);
});

/** Characters that the longest list of choices leaves: the words of another language may have so many more than these. */
const ROOM = { en: ["pick_of", 15], de: ["pick_of", 4] } as const;

test.each(SHEET_LANGUAGES)("the longest list of choices leaves room, %s", (language) => {
  const plan = blankSheet("SI", { language });
  const lists = Object.entries(plan.names).flatMap(([name, { row, col }]) => {
    const choices = plan.cells.find((cell) => cell.row === row && cell.col === col)?.choices ?? [];
    return choices.length > 0 ? [[name, LONGEST_LIST - choices.join().length] as const] : [];
  });
  expect(lists.length).toBeGreaterThan(10);
  expect(lists.reduce((least, list) => (list[1] < least[1] ? list : least))).toEqual(ROOM[language]);
});
