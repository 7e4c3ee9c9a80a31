/** Checks the specification for consistency, and against the functions that it calls. */
import { LOAD_WORKINGS } from "../../src/specification/load-table";
import { REMARK_PARTS } from "../../src/specification/remarks";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { blankSheet, demoSheet, FIELDS, fillSheet, type System } from "../../src/datasheet";
import { cellAddress } from "../../src/workbook/address";
import type { CellPlan, SheetPlan } from "../../src/workbook/port";

const SYSTEMS: readonly System[] = ["SI", "US"];
const plans = SYSTEMS.flatMap((system): [string, SheetPlan][] => [
  [`blank ${system}`, blankSheet(system)],
  [`demonstration ${system}`, demoSheet(system)],
]);

const folder = path.join(__dirname, "../../src/functions");
const worksheetFunctions = readdirSync(folder)
  .filter((file) => file.endsWith(".ts"))
  .flatMap((file) => [
    ...readFileSync(path.join(folder, file), "utf8").matchAll(/^export function ([A-Z][A-Z0-9_]*)\(/gm),
  ])
  .map(([, name]) => name);

/** Built-in functions that Excel and the embedded sheet both have, and that need no prefix in a file. */
const BUILT_IN =
  "ABS ADDRESS AND AVERAGE CHOOSE COLUMN COUNT COUNTIF COUNTIFS FIND IF IFERROR INDEX INT ISERR ISERROR ISNUMBER ISTEXT LARGE LEFT LEN LOG LOOKUP MATCH MAX MID MOD NOT OR ROUND ROW SIGN SMALL SUBSTITUTE SUMPRODUCT VLOOKUP".split(
    " ",
  );

const at = (plan: SheetPlan) => new Map(plan.cells.map((cell) => [cellAddress(cell.row, cell.col), cell]));
const formulas = (plan: SheetPlan) => plan.cells.flatMap(({ formula }) => (formula ? [formula] : []));
const withoutTexts = (formula: string) => formula.replace(/"[^"]*"/g, '""');

describe.each(plans)("%s", (_, plan) => {
  test("no two cells share a place, and all are on the sheet", () => {
    const places = plan.cells.map(({ row, col }) => cellAddress(row, col));
    expect(places.filter((place, index) => places.indexOf(place) !== index)).toEqual([]);
    expect(plan.cells.filter(({ row, col }) => row >= plan.rows || col >= plan.cols)).toEqual([]);
  });

  test("every name is on the sheet, and only readings reach beyond the cells that are laid out", () => {
    const cells = at(plan);
    for (const [name, box] of Object.entries(plan.names)) {
      expect([name, box.row + box.rows <= plan.rows, box.col + box.cols <= plan.cols]).toEqual([name, true, true]);
      if (!/^(times|readings)_\d\d$/.test(name)) {
        for (let row = 0; row < box.rows; row++)
          expect([name, cells.has(cellAddress(box.row + row, box.col))]).toEqual([name, true]);
      }
    }
  });

  test("no two names share a cell, or differ only by upper and lower case", () => {
    const taken = new Map<string, string>();
    const shared: string[] = [];
    for (const [name, box] of Object.entries(plan.names))
      for (let row = box.row; row < box.row + box.rows; row++)
        for (let col = box.col; col < box.col + box.cols; col++) {
          const place = cellAddress(row, col);
          if (taken.has(place)) shared.push(`${place}: ${taken.get(place)}, ${name}`);
          taken.set(place, name);
        }
    expect(shared).toEqual([]);
    expect(taken.size).toBeGreaterThan(90_000);
    const lower = Object.keys(plan.names).map((name) => name.toLowerCase());
    expect(new Set(lower).size).toBe(lower.length);
  });

  test("no name looks like a cell, a row or a column", () => {
    for (const name of Object.keys(plan.names)) {
      expect(name).toMatch(/^[a-z][a-z0-9_]*$/);
      expect(name).not.toMatch(/^[a-z]{1,3}\d*$|^r\d*c\d*$/);
    }
  });

  test("every {name} in a formula exists, and none is left unresolved", () => {
    for (const formula of formulas(plan)) {
      for (const [, name] of formula.matchAll(/\{(\w+)\}/g)) expect(Object.keys(plan.names)).toContain(name);
      expect(withoutTexts(formula)).not.toMatch(/[[\]#^@]/);
    }
  });

  test("formulas call only functions of the project and built-in functions that every host has", () => {
    const calls = formulas(plan).flatMap((formula) => [...withoutTexts(formula).matchAll(/([A-Z][\w.]*)\(/g)]);
    for (const name of new Set(calls.map(([, called]) => called)))
      if (name.startsWith("CLAY.")) expect(worksheetFunctions).toContain(name.slice(5));
      else expect(BUILT_IN).toContain(name);
  });

  test("a cell address in a formula stays in its row, except the look-up of the numbered row above", () => {
    const cells = at(plan);
    const heads = plan.names.load_stress.row - 2;
    // An assertion costs far more than the comparison: one follows for all.
    const wrong: unknown[] = [];
    for (const { row, formula } of plan.cells) {
      const code = withoutTexts(formula ?? "");
      const lookups = [...code.matchAll(/LOOKUP\(100000,\$A\$(\d+):A(\d+),\$([A-Z]+)\$(\d+):\3(\d+)\)/g)];
      for (const [text, top, bottom, , again, below] of lookups)
        if (Number(top) - 1 !== heads || Number(bottom) !== row || again !== top || below !== bottom) wrong.push(text);
      const rest = lookups.reduce((left, [text]) => left.replace(text, ""), code);
      for (const [address, , digits] of rest.matchAll(/(?<![\w{])\$?([A-Z]{1,2})\$?(\d+)(?![\w(}])/g))
        if (!cells.has(address) || Number(digits) - 1 !== row) wrong.push([address, formula]);
    }
    expect(wrong).toEqual([]);
  });

  test("results hold formulas or the spill of a formula, never a typed number", () => {
    const typed = plan.cells.filter(({ kind, value, formula }) => kind === "result" && value !== undefined && !formula);
    // The line before the first load has no line above it.
    const start = plan.names.load_stress.row - 1;
    expect(typed.filter(({ row, value }) => row !== start || value !== 0)).toEqual([]);
  });

  test("a cell has a value or a formula, not both; only inputs have choices, and these include the value", () => {
    expect(plan.cells.filter(({ value, formula }) => value !== undefined && formula !== undefined)).toEqual([]);
    for (const cell of plan.cells) {
      if (cell.choices) expect(cell.kind).toBe("input");
      if (cell.choices && cell.value !== undefined) expect(cell.choices).toContain(cell.value);
    }
  });

  test("spilled rows have free cells to the right", () => {
    const cells = at(plan);
    const { log_d0, time_remark } = plan.names;
    expect(time_remark.col - log_d0.col).toBe(10);
    const filled: CellPlan[] = [];
    for (let row = log_d0.row; row < log_d0.row + log_d0.rows; row++)
      for (let col = log_d0.col + 1; col <= time_remark.col; col++) {
        const cell = cells.get(cellAddress(row, col)) as CellPlan;
        if (cell.value !== undefined || cell.formula !== undefined) filled.push(cell);
      }
    expect(filled).toEqual([]);
  });

  test("no cell has two rules for what may be typed", () => {
    const ruled = new Set<string>();
    const rule = (row: number, col: number): void => {
      const place = cellAddress(row, col);
      if (ruled.has(place)) throw new Error(`${place} has two rules`);
      ruled.add(place);
    };
    for (const { row, col, choices } of plan.cells) if (choices) rule(row, col);
    for (const { box } of plan.entries ?? [])
      for (let row = box.row; row < box.row + box.rows; row++)
        for (let col = box.col; col < box.col + box.cols; col++) rule(row, col);
    expect(ruled.size).toBeGreaterThan(200);
  });

  test("merged cells do not overlap, and hold one cell each", () => {
    const cells = at(plan);
    const taken = new Set<string>();
    const wrong: string[] = [];
    for (const { row, col, rows, cols } of plan.merges)
      for (let r = row; r < row + rows; r++)
        for (let c = col; c < col + cols; c++) {
          const place = cellAddress(r, c);
          if (taken.has(place)) wrong.push(`${place} is merged twice`);
          taken.add(place);
          if (cells.has(place) !== (r === row && c === col)) wrong.push(`${place} holds a cell, or lacks one`);
        }
    expect(wrong).toEqual([]);
  });
});

test("no two tables of inputs share rows: the Tab key goes through one, then the other", () => {
  const { names } = blankSheet("SI");
  const [tins, deflection] = [names.tin_mass, names.apparatus_stress];
  expect(tins.row >= deflection.row + deflection.rows || deflection.row >= tins.row + tins.rows).toBe(true);
});

test("texts that may be long are broken into lines within the page, and their rows are high enough", () => {
  const { names, cells, merges, rowHeights } = blankSheet("SI");
  for (const name of ["deviations", "test_remarks", "specimen_remark", "remarks_on_loads"]) {
    const { row, col } = names[name];
    expect([name, cells.find((cell) => cell.row === row && cell.col === col)?.wrap]).toEqual([name, true]);
    const merge = merges.find((box) => box.row === row && box.col === col)!;
    expect([name, merge.cols >= 6, (merge.col % 16) + merge.cols <= 16]).toEqual([name, true, true]);
    const height = merge.rows > 1 ? 12.75 * merge.rows : (rowHeights?.[row] ?? 0);
    expect([name, height >= 20, height < 409]).toEqual([name, true, true]);
  }
});

test("the cells to the right of a pick's reason are blank, so that a long reason overflows", () => {
  const { names, cells } = blankSheet("SI");
  const { row, rows, col } = names.pick_reason;
  expect(cells.filter((cell) => cell.row >= row && cell.row < row + rows && cell.col > col)).toEqual([]);
});

describe("the form", () => {
  const { names } = blankSheet("SI");
  const row = (name: string) => names[name].row;

  test("follows the order of the work", () => {
    const order = ["project", "ring_number", "diameter", "ring_and_wet_before", "tin_mass", "frame_number"];
    order.push("dial_factor", "zero_reading", "apparatus_stress", "in_situ_stress", "deviations", "load_stress");
    order.push("times_01");
    const rows = order.map(row);
    expect([...rows].sort((a, b) => a - b)).toEqual(rows);
  });

  test("has the picks beside the readings, and the results and remarks beside the form", () => {
    expect(row("pick_load")).toBe(row("times_01"));
    expect(names.pick_load.col).toBeGreaterThan(names.readings_24.col);
    expect(row("preconsolidation_stress")).toBeLessThan(row("diameter"));
    expect(row("remarks_on_loads")).toBeLessThan(row("load_stress"));
    // In version 4 the first reading was in row 184.
    expect(row("times_01")).toBeLessThan(125);
  });

  test("has no results in the rows of its own tables, so that a person can delete these rows", () => {
    const { cells } = blankSheet("SI");
    for (const table of ["tin_mass", "apparatus_stress"])
      for (let r = row(table); r < row(table) + names[table].rows; r++)
        expect(cells.filter((cell) => cell.row === r && cell.col >= 16)).toEqual([]);
  });
});

describe("the fields", () => {
  const { names, cells } = blankSheet("SI");

  test("are the names of the sheet, each once", () => {
    const own = FIELDS.map(({ name }) => name);
    expect(new Set(own).size).toBe(own.length);
    const others = Object.keys(names).filter((name) => !own.includes(name));
    expect(own.filter((name) => !(name in names))).toEqual([]);
    const workings = [...LOAD_WORKINGS.columns, ...REMARK_PARTS].map(({ name }) => name);
    expect(workings.filter((name) => !others.includes(name))).toEqual([]);
    expect(others.filter((name) => !workings.includes(name)).sort()).toEqual([
      "addin_version",
      "adopted_cv_range",
      "adopted_quantity",
      "adopted_unit",
      "load_number",
      "load_number_coefficients",
      "load_number_times",
      "load_stress_coefficients",
      "load_stress_times",
      "notice",
      "sheet_language",
      "template_version",
      "test_summary",
    ]);
  });

  test.each(FIELDS)("$name has a label, and a number has a unit beside or above it", (field) => {
    expect(field.label.trim()).not.toBe("");
    const box = names[field.name];
    const cell = cells.find(({ row, col }) => row === box.row && col === box.col)!;
    if (field.kind === "input") expect(cell.kind).toBe("input");
    if (["text", "date", "moment", "pick"].includes(field.measure)) return;
    const beside = (row: number, col: number) => cells.find((other) => other.row === row && other.col === col);
    const place = field.column
      ? [1, 2].map((up) => beside(box.row - up, box.col)).find((found) => found?.kind === "unit")
      : beside(box.row, box.col + 1);
    expect(place?.kind).toBe("unit");
  });

  test.each(FIELDS.filter(({ kind }) => kind !== "input"))(
    "$name says what it is and where it comes from",
    ({ note }) => {
      expect(note?.length ?? 0).toBeGreaterThan(8);
    },
  );
});

describe("filling a sheet", () => {
  test("writes values by name, a list from the top of its range, and skips names without a value", () => {
    const filled = fillSheet(blankSheet("SI"), { ring_mass: 74.36, load_stress: [12.5, undefined, 50] });
    const value = (name: string, index = 0) => {
      const { row, col } = filled.names[name];
      return filled.cells.find((cell) => cell.row === row + index && cell.col === col)?.value;
    };
    expect([value("ring_mass"), value("load_stress"), value("load_stress", 1), value("load_stress", 2)]).toEqual([
      74.36,
      12.5,
      undefined,
      50,
    ]);
  });

  test("reaches readings below the framed rows", () => {
    const series = Array.from({ length: 300 }, (_, index) => index);
    const filled = fillSheet(blankSheet("SI"), { readings_03: series });
    const { row, col } = filled.names.readings_03;
    expect(filled.cells.find((cell) => cell.row === row + 299 && cell.col === col)?.value).toBe(299);
  });

  test("refuses an unknown name, a result, and more than there is room for", () => {
    const plan = blankSheet("SI", { readingRows: 50 });
    expect(() => fillSheet(plan, { ring_weight: 1 })).toThrow("ring_weight");
    expect(() => fillSheet(plan, { void_ratio_initial: 1.2 })).toThrow("formula");
    expect(() => fillSheet(plan, { readings_01: Array(51).fill(1) })).toThrow("50 rows");
  });
});
