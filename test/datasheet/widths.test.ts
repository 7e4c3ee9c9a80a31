/** No column and no neighbouring cell cuts off a label, a heading, a unit or a word of a list. */
import { blankSheet, demoSheet } from "../../src/datasheet";
import { TIME_METHODS } from "../../src/reduction/increment/constructions/picks";
import { PROCEDURES } from "../../src/reduction/increment/constructions/procedure";
import { wordIn } from "../../src/specification/list-words";
import { SHEET_LANGUAGES } from "../../src/specification/text/language";
import { cellAddress } from "../../src/workbook/address";
import { charactersToPixels } from "../../src/workbook/embedded/look/styles";
import type { CellPlan, SheetPlan } from "../../src/workbook/port";
import { textWidth } from "./text-width";

/** The pixels between a text and both edges of its cell; then the width of the arrow of a list, about three characters. */
const MARGIN = 8;
const ARROW = 21;
/** The size of a title over that of other texts: 14 points and 9. */
const TITLE = 14 / 9;

const isBlank = ({ value, formula, kind }: CellPlan): boolean =>
  (value === undefined || value === "") && formula === undefined && kind !== "input" && kind !== "result";

/** The pixels that a text can use (`at` has the cells by their addresses): the columns of its cell and, on the side away from its alignment, blank columns. */
function roomOf(plan: SheetPlan, at: ReadonlyMap<string, CellPlan>, cell: CellPlan): number {
  const merge = plan.merges.find(({ row, col }) => row === cell.row && col === cell.col);
  const columns = Array.from({ length: merge?.cols ?? 1 }, (_, index) => cell.col + index);
  const isOpen = (col: number): boolean => {
    const beside = at.get(cellAddress(cell.row, col));
    const isMerged = plan.merges.some((box) => box.row === cell.row && col >= box.col && col < box.col + box.cols);
    return col >= 0 && col < plan.cols && !isMerged && (beside === undefined || isBlank(beside));
  };
  if (!merge && !cell.choices && cell.align !== "center") {
    const step = cell.align === "right" ? -1 : 1;
    // A heading stays in its own column if the headings beside it have texts.
    for (let col = cell.col + step; isOpen(col); col += step) columns.push(col);
  }
  return columns.reduce((sum, col) => sum + charactersToPixels(plan.columnWidths[col]), 0);
}

const textsOf = ({ value, choices = [] }: CellPlan): string[] => [
  ...(typeof value === "string" && value !== "" ? [value] : []),
  ...choices,
];

describe.each([
  ["blank", blankSheet("SI")],
  ["blank, few loads", blankSheet("US", { loads: 6 })],
  ["US demonstration", demoSheet("US")],
  ["German", blankSheet("SI", { language: "de" })],
  ["German, US units", blankSheet("US", { language: "de", loads: 6 })],
])("%s", (_, plan) => {
  test("every text fits", () => {
    const said = plan.cells.filter(({ kind, wrap }) => kind !== "note" && !wrap);
    const at = new Map(plan.cells.map((one) => [cellAddress(one.row, one.col), one]));
    const cut = said.flatMap((cell) => {
      const texts = textsOf(cell);
      if (texts.length === 0) return [];
      // A text in the middle of its cell has as much room at its left as at its right, where the arrow is.
      const arrow = cell.choices ? ARROW * (cell.align === "center" ? 2 : 1) : 0;
      const room = roomOf(plan, at, cell) - MARGIN - arrow;
      const weight = ["title", "heading", "result"].includes(cell.kind) ? "bold" : "regular";
      return texts
        .map((text) => ({ text, width: textWidth(text, weight) * (cell.kind === "title" ? TITLE : 1) }))
        .filter(({ width }) => width > room)
        .map(({ text, width }) => `${cellAddress(cell.row, cell.col)} "${text}": ${width} of ${room} pixels`);
    });
    expect(cut).toEqual([]);
  });
});

test.each(SHEET_LANGUAGES)(
  "the title fits where a font a quarter wider than Arial stands in for it, in %s",
  (language) => {
    const plan = blankSheet("SI", { language });
    const title = plan.cells.find(({ kind }) => kind === "title")!;
    const room = roomOf(plan, new Map(plan.cells.map((one) => [cellAddress(one.row, one.col), one])), title) - MARGIN;
    // DejaVu Sans, the usual one on Linux, is 1.2 times as wide as Arial in the bold letters of the title.
    expect(textWidth(String(title.value), "bold") * TITLE * 1.25).toBeLessThanOrEqual(room);
  },
);

/** What the formulas of a column show, in English. */
const STATES = {
  load_branch: ["loading", "unloading", "wetting"],
  load_method: TIME_METHODS,
  load_procedure: PROCEDURES,
  curve_point: ["d100", "end"],
  test_state: ["running", "over"],
};

test.each(SHEET_LANGUAGES)("the words that formulas show stand whole in their columns, in %s", (language) => {
  const { names, columnWidths } = blankSheet("SI", { language });
  const cut = Object.entries(STATES).flatMap(([name, words]) => {
    const room = charactersToPixels(columnWidths[names[name].col]) - MARGIN;
    return words.map((word) => wordIn(language, word)).filter((word) => textWidth(word, "bold") > room);
  });
  expect(cut).toEqual([]);
});

test("the whole form is visible beside the pane in a window of 1440 pixels", () => {
  const { columnWidths } = blankSheet("SI");
  const form = Array.from({ length: 16 }, (_, col) => charactersToPixels(columnWidths[col]));
  // 1440 pixels minus the pane with its divider (407), the row numbers (48) and the scroll bar (15).
  expect(form.reduce((sum, width) => sum + width, 0)).toBeLessThanOrEqual(970);
});
