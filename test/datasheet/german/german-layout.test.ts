/** Formulas and labels that are written into a German sheet afterwards are those that a German sheet is made with. */
import { blankSheet, labelOf, workings } from "../../../src/datasheet";
import { layoutOf } from "../../../src/record/places";
import { NAMES_WITH_FORMULAS, placedFormulas, WORKING_NAMES } from "../../../src/specification/placed-formulas";
import { labelOn } from "../../../src/record/labels/sheet-labels";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../../src/specification/text/language";
import type { SheetName } from "../../../src/workbook/port";

const plan = blankSheet("SI", { language: "de" });
const names = Object.entries(plan.names).map(([name, place]): SheetName => ({ name, scope: "sheet", place }));
const GERMAN = { sheet_language: [["Deutsch"]] };

/** The formulas of every name, on a sheet in this language. */
const contentsIn = (language: SheetLanguage) =>
  Object.fromEntries(
    NAMES_WITH_FORMULAS.map((name) => [
      name,
      (placedFormulas(name, { ...layoutOf(names, {}), language })?.cells ?? []).map(({ formula }) => [formula]),
    ]),
  );

const formulaAt = (row: number, col: number): string | undefined =>
  plan.cells.find((cell) => cell.row === row && cell.col === col)?.formula;

test("every formula of a single cell is written again as it stands on the sheet", () => {
  const single = [...NAMES_WITH_FORMULAS, ...WORKING_NAMES].filter((name) => plan.names[name]?.rows === 1);
  expect(single.length).toBeGreaterThan(80);
  const differing = single.filter((name) => {
    const [cell] = placedFormulas(name, layoutOf(names, GERMAN))?.cells ?? [];
    return cell === undefined || cell.formula !== formulaAt(cell.row, cell.col);
  });
  expect(differing).toEqual([]);
  const english = placedFormulas("missing_in_full_list", layoutOf(names, {}))?.cells[0]?.formula;
  expect(english).toContain('"Missing: "');
});

test("results that get free cells get German labels beside them", () => {
  const without = names.filter(({ name }) => name !== "compression_index" && name !== "strain_end");
  const { labels } = workings(without, GERMAN, { row: 300, col: 60, rows: 1, cols: 1 });
  expect(labels.map(({ value }) => value).sort()).toEqual([
    "Kompressionsbeiwert Cc",
    "Stauchung am Ende der Laststufe",
  ]);
});

test("results on a sheet that names no language are laid out in the language that is asked for, with a cell that names it", () => {
  const worded = (name: string) =>
    new Set(
      SHEET_LANGUAGES.map((language) => JSON.stringify(placedFormulas(name, { ...layoutOf(names, {}), language }))),
    ).size > 1;
  const firm = names.filter(({ name }) => name !== "sheet_language" && name !== "compression_index" && !worded(name));
  const at = { row: 300, col: 60, rows: 1, cols: 1 };
  const { namings, labels } = workings(firm, {}, at, "de");
  const box = namings.find(({ name }) => name === "sheet_language")!.box;
  const others = namings.filter(({ name }) => name !== "sheet_language");
  expect(others.some((one) => one.box.row === box.row && one.box.col === box.col)).toBe(false);
  const value = (row: number, col: number) => labels.find((one) => one.row === row && one.col === col)?.value;
  expect([value(box.row, box.col - 1), value(box.row, box.col)]).toEqual(["Sprache dieses Blatts", "Deutsch"]);
  expect(labels.map((one) => one.value)).toContain("Kompressionsbeiwert Cc");
  // English stays English, and a sheet with formulas in English words keeps them alike.
  expect(workings(firm, {}, at).namings.some(({ name }) => name === "sheet_language")).toBe(false);
  const without = names.filter(({ name }) => name !== "sheet_language" && name !== "compression_index");
  expect(workings(without, {}, at, "de", contentsIn("en")).labels).toEqual([
    expect.objectContaining({ value: "Compression index Cc" }),
  ]);
});

test("a layout that names no language has that of the texts in its formulas, and without such a text the one given", () => {
  const firm = names.filter(({ name }) => name !== "sheet_language");
  for (const language of SHEET_LANGUAGES) {
    const contents = contentsIn(language);
    for (const other of SHEET_LANGUAGES) expect(layoutOf(firm, {}, contents, other).language).toBe(language);
    // The formula of strain has no text.
    const plain = { strain_end: contents.strain_end! };
    for (const other of SHEET_LANGUAGES) expect(layoutOf(firm, {}, plain, other).language).toBe(other);
    expect(layoutOf(names, GERMAN, contentsIn("en")).language).toBe("de");
  }
  expect(layoutOf(firm, {}).language).toBe("en");
});

test("a label away from its place says what it continues, in either language", () => {
  expect([labelOn("en", "preconsolidation_low"), labelOn("de", "preconsolidation_low")]).toEqual([
    "Preconsolidation stress, not less than",
    "Vorbelastungsspannung, nicht kleiner als",
  ]);
  expect([labelOn("de", "ring_mass"), labelOn("de", "times_07"), labelOf("load_number", "de")]).toEqual([
    "Masse des Rings",
    "Zeiten der Laststufe 7",
    "Nummer der Laststufe",
  ]);
});
