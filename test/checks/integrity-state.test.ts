/**
 * What happened to the cells of a sheet, told from their contents alone: the demonstration as it is planned, calculated once,
 * with single cells changed. test/checks/integrity.test.ts does the same to a sheet in the embedded engine.
 */
import { CONTENT_NAMES, integrity, rowOfLoad, type SheetState } from "../../src/checks/integrity";
import { demoSheet } from "../../src/datasheet";
import { readRecord, type NamedValues } from "../../src/record/record";
import { cellAddress } from "../../src/workbook/address";
import type { CellValue, SheetName } from "../../src/workbook/port";
import { inEnglish } from "../in-english";
import { namedValues, withValues } from "../datasheet/read-sheet";

const plan = demoSheet("SI");
const names: SheetName[] = Object.entries(plan.names).map(([name, place]) => ({ name, scope: "sheet", place }));
const planned = new Map(plan.cells.map((cell) => [`${cell.row} ${cell.col}`, cell]));
/** The content of a cell: its formula, with the names as a sheet holds them, or its value. */
const contentAt = (row: number, col: number): CellValue => {
  const cell = planned.get(`${row} ${col}`);
  return cell?.formula?.replace(/[{}]/g, "") ?? cell?.value ?? "";
};
const contents: NamedValues = Object.fromEntries(
  CONTENT_NAMES.flatMap((name) => {
    const box = plan.names[name];
    if (!box) return [];
    const lines = Array.from({ length: box.rows }, (_, row) =>
      Array.from({ length: box.cols }, (_, col) => contentAt(box.row + row, box.col + col)),
    );
    return [[name, lines]];
  }),
);
const at = (name: string, row = 0, col = 0): string => {
  const box = plan.names[name];
  return cellAddress(box.row + row, box.col + col);
};
/** The contents of a name with one cell changed. */
const typed = (name: string, row: number, content: CellValue, col = 0): NamedValues => ({
  [name]: (contents[name] ?? []).map((line, r) => line.map((one, c) => (r === row && c === col ? content : one))),
});

let values: Record<string, CellValue[][]>;
beforeAll(async () => {
  values = await namedValues(plan);
});

const look = (changed: NamedValues = {}, more: Partial<SheetState> = {}) =>
  inEnglish(
    integrity({
      ...{ names, values, contents: { ...contents, ...changed }, hidden: { rows: [], cols: [] } },
      record: readRecord(more.values ?? values),
      ...more,
    }),
  );

test("the demonstration gives no finding", () => expect(look()).toEqual([]));

test("a constant in the place of a formula, with the formula that belongs there", () => {
  const [found, ...others] = look(typed("void_ratio_initial", 0, 1.234));
  expect(others).toEqual([]);
  expect(found).toMatchObject({
    kind: "overwritten",
    address: at("void_ratio_initial"),
    sentence: `${at("void_ratio_initial")}, Void ratio, initial e0 (void_ratio_initial), holds 1.234 where a formula belongs: it was overwritten and follows no input any more; undo, or take the formula from a newly inserted sheet`,
  });
  const box = plan.names.void_ratio_initial;
  expect(found.mend).toEqual([expect.objectContaining({ row: box.row, col: box.col })]);
  expect(found.mend?.[0]?.formula.replace(/[{}\s]/g, "")).toBe(String(contentAt(box.row, box.col)).replace(/\s/g, ""));
});

test("a constant in a column of formulas; a long one is cut", () => {
  const long = "a value that somebody copied here from a mail";
  expect(look(typed("strain_end", 3, long))).toMatchObject([
    {
      kind: "overwritten",
      address: at("strain_end", 3),
      sentence: `${at("strain_end", 3)}, Strain at the end of the load (strain_end), holds a value that somebody copied h... where a formula belongs: it was overwritten and follows no input any more; copy the formula from a neighbour in the column`,
    },
  ]);
  expect(look(typed("strain_end", 3, "a value of exactly thirty sign"))[0].sentence).toContain(
    "holds a value of exactly thirty sign where",
  );
});

test("a formula that is gone, alone and in a column", () => {
  expect(look(typed("void_ratio_initial", 0, " "))).toMatchObject([
    {
      kind: "lost formula",
      sentence: `${at("void_ratio_initial")}, Void ratio, initial e0 (void_ratio_initial), has lost its formula: take it from a newly inserted sheet`,
    },
  ]);
  expect(look(typed("strain_end", 2, ""))).toMatchObject([
    {
      kind: "lost formula",
      address: at("strain_end", 2),
      sentence: `${at("strain_end", 2)}, Strain at the end of the load (strain_end), has lost its formula: copy it from a neighbour in the column`,
    },
  ]);
});

test("a row whose formula needs a name that the sheet lacks has lost none", () => {
  const blank = typed("adopted_constructed", 4, "");
  const lost = [{ kind: "lost formula", address: at("adopted_constructed", 4) }];
  expect(look(blank)).toMatchObject(lost);
  const without = names.filter(({ name }) => name !== "c_alpha_load");
  expect(look(blank, { names: without })).toEqual([]);
  expect(look(typed("adopted_constructed", 3, ""), { names: without })).toMatchObject([
    { kind: "lost formula", address: at("adopted_constructed", 3) },
  ]);
});

test("a column of results without any formula is one finding, with every formula that it lacks", () => {
  const rows = plan.names.strain_end.rows;
  const empty = { strain_end: Array.from({ length: rows }, () => [""]) };
  const [found, ...others] = look(empty);
  expect(others).toEqual([]);
  expect(found).toMatchObject({
    kind: "lost formula",
    address: at("strain_end"),
    sentence: `${at("strain_end")} to ${at("strain_end", rows - 1)}, Strain at the end of the load (strain_end), hold no formulas: write them (Data sheet, Sheet check)`,
  });
  expect(found.mend?.length).toBe(rows);
});

test("a formula unlike the others of its column, unless it is the one that belongs in its cell", () => {
  expect(look(typed("void_ratio_end", 4, "=1.1+0.1"))).toMatchObject([
    {
      kind: "unlike formula",
      address: at("void_ratio_end", 4),
      sentence: `${at("void_ratio_end", 4)}, Void ratio at the end of the load (void_ratio_end), has a formula unlike the others of its column: copy it from a neighbour, or say why`,
    },
  ]);
  // The same formula with other spaces and letters is the same formula.
  const own = String(contents.void_ratio_end[4][0]);
  expect(look(typed("void_ratio_end", 4, own.toLowerCase().replaceAll(",", ", ")))).toEqual([]);
  // A reference to the cell of the neighbour is unlike, although it has the same form there.
  expect(look(typed("void_ratio_end", 4, contents.void_ratio_end[5][0]))).toMatchObject([{ kind: "unlike formula" }]);
});

test("half of a column with other formulas names none of them: nobody can say which half is right", () => {
  const rows = contents.strain_end;
  const half = { strain_end: rows.map(([own], row) => [row < rows.length / 2 ? `=${row}+1` : own]) };
  expect(look(half).filter(({ kind }) => kind === "unlike formula")).toEqual([]);
});

test("a row without a load number has no formula to lose", () => {
  const gap = { ...values, load_number: values.load_number.map((line, row) => (row === 2 ? [""] : line)) };
  const lost = look(typed("strain_end", 2, ""), { values: gap, record: readRecord(values) });
  expect(lost.filter(({ kind }) => kind === "lost formula")).toEqual([]);
});

test("a constant in the way of a formula that fills a row or a block, if the formula fails by it", () => {
  const failed = withValues(values, { log_d0: values.log_d0.map(([own], row) => (row === 2 ? "#SPILL!" : own)) });
  const blocked = look(typed("log_t50", 2, 3.3), { values: failed, record: readRecord(values) });
  expect(blocked.filter(({ kind }) => kind === "in the way")).toEqual([
    {
      kind: "in the way",
      address: at("log_t50", 2),
      sentence: expect.stringMatching(
        new RegExp(
          `^${at("log_t50", 2)}, .*\\(log_t50\\), holds 3.3 where the formula of [A-Z]+\\d+ puts its answer: clear it$`,
        ),
      ),
    },
  ]);
  expect(look(typed("log_t50", 2, 3.3)).filter(({ kind }) => kind === "in the way")).toEqual([]);

  const spread = plan.names.preconsolidation_spread;
  const spilt = withValues(values, { preconsolidation_spread: ["#SPILL!"] });
  const inBlock = (row: number, col: number, content: CellValue) =>
    look(typed("preconsolidation_spread", row, content, col), { values: spilt, record: readRecord(values) }).filter(
      ({ kind }) => kind === "in the way",
    );
  expect(inBlock(1, 1, "x")).toEqual([
    {
      kind: "in the way",
      address: at("preconsolidation_spread", 1, 1),
      sentence: `${at("preconsolidation_spread", 1, 1)} holds x where the formula of ${cellAddress(spread.row, spread.col)} puts its answer: clear it`,
    },
  ]);
  expect(inBlock(0, 1, "x")).toHaveLength(1);
  expect(inBlock(1, 0, "x")).toHaveLength(1);
  expect(inBlock(1, 1, " ")).toEqual([]);
  expect(inBlock(1, 1, "=1")).toEqual([]);
});

test("results of unknown functions or names are one finding, at the first of them", () => {
  const seen = (shown: NamedValues) => look({}, { values: shown }).filter(({ kind }) => kind === "unknown");
  const one = withValues(values, { strain_end: values.strain_end.map(([own], row) => (row === 3 ? "#NAME?" : own)) });
  expect(seen(one)).toEqual([
    {
      kind: "unknown",
      address: at("strain_end", 3),
      sentence: `${at("strain_end", 3)}, Strain at the end of the load (strain_end), has no result: a function or a name of a formula is not known; attach missing names, and enter the formulas again (Data sheet, Sheet check)`,
    },
  ]);
  const several = withValues(one, { void_ratio_initial: ["#BAD_EXPR"] });
  expect(seen(several)).toMatchObject([
    { address: at("void_ratio_initial"), sentence: expect.stringMatching(/^2 results are missing, the first in /) },
  ]);
  const refused = withValues(values, { void_ratio_initial: ["#N/A"] });
  expect(seen(refused)).toEqual([]);
});

test("hidden rows and columns with content are named together, from the first to the last", () => {
  const { row, col } = plan.names.load_stress;
  const hide = (rows: number[], cols: number[] = []) => look({}, { hidden: { rows, cols } });
  expect(hide([row + 3, row + 2])).toMatchObject([
    {
      kind: "hidden",
      address: `${row + 3}:${row + 4}`,
      sentence: expect.stringMatching(
        new RegExp(
          `^rows ${row + 3} to ${row + 4} are hidden and in use: [A-Z]+${row + 3} holds .*; show them before the sheet is signed$`,
        ),
      ),
    },
  ]);
  expect(hide([row + 2])[0].sentence).toMatch(
    new RegExp(`^row ${row + 3} is hidden and in use: .*; show it before the sheet is signed$`),
  );
  expect(hide([row + 2, row + 4]).map(({ address }) => address)).toEqual([
    `${row + 3}:${row + 3}`,
    `${row + 5}:${row + 5}`,
  ]);
  const letters = cellAddress(0, col).replace("1", "");
  expect(hide([], [col])[0]).toMatchObject({
    address: `${letters}:${letters}`,
    sentence: expect.stringMatching(/^column /),
  });
  expect(hide([], [col, col + 1])[0].sentence).toMatch(/^columns [A-Z]+ to [A-Z]+ are hidden and in use/);
  expect(hide([plan.rows + 50], [plan.cols + 50])).toEqual([]);
});

test("results that do not follow, and cells with unusable content, are named by their address", () => {
  const changed = withValues(values, { void_ratio_initial: 1.5, ring_mass: "74.36" });
  const found = look({}, { values: changed });
  expect(found.find(({ kind }) => kind === "cell")).toMatchObject({
    address: at("ring_mass"),
    sentence: expect.stringMatching(new RegExp(`^${at("ring_mass")}, .*stored as text`)),
  });
  const differs = look({}, { values: withValues(values, { void_ratio_initial: 1.5 }) });
  expect(differs).toMatchObject([
    {
      kind: "differs",
      address: at("void_ratio_initial"),
      sentence: expect.stringMatching(
        new RegExp(`^${at("void_ratio_initial")}, .* on the sheet is 1.5, recalculated 1.45`),
      ),
    },
  ]);
  const ofLoad = look(
    {},
    { values: withValues(values, { strain_end: values.strain_end.map(([own], row) => (row === 4 ? 0.5 : own)) }) },
  );
  expect(ofLoad.map(({ address }) => address)).toContain(at("strain_end", 4));
});

test("a cell is listed once, with its gravest finding", () => {
  const changed = withValues(values, { void_ratio_initial: 1.5 });
  const found = look(typed("void_ratio_initial", 0, 1.5), { values: changed });
  expect(found.map(({ kind, address }) => [kind, address])).toEqual([["overwritten", at("void_ratio_initial")]]);
});

test("the row of a load goes by its number, or by its place where no row has the number", () => {
  expect(rowOfLoad({ load_number: [[3], [1], [2]] }, 1)).toBe(1);
  expect(rowOfLoad({ load_number: [[3], [1], [2]] }, 5)).toBe(4);
  expect(rowOfLoad({}, 2)).toBe(1);
});

test("a column that mostly holds constants has no usual constant: its formulas are not unlike them", () => {
  const rows = contents.strain_end;
  const most = { strain_end: rows.map(([own], row) => [row < 0.7 * rows.length ? 0.05 : own]) };
  const found = look(most);
  expect(new Set(found.map(({ kind }) => kind))).toEqual(new Set(["overwritten"]));
});

test("without the names that a formula needs no formula is offered", () => {
  const rows = plan.names.strain_end.rows;
  const empty = { strain_end: Array.from({ length: rows }, () => [""]) };
  const alone = names.filter(({ name }) => name === "strain_end");
  const [found] = look(empty, { names: alone });
  expect(found.kind).toBe("lost formula");
  expect(found).not.toHaveProperty("mend");
});

test("a sheet of which nothing is known gives no finding, whatever is hidden", () => {
  expect(look({}, { contents: {}, record: readRecord({}), values: {} })).toEqual([]);
  expect(look({}, { names: [], hidden: { rows: [1, 2], cols: [3] }, record: readRecord({}) })).toEqual([]);
});

test("a hidden column is named with the first of its cells in the order of the sheet", () => {
  const { col } = plan.names.load_stress;
  const [{ sentence }] = look({}, { hidden: { rows: [], cols: [col] } });
  // Tins stand above the loads in that column.
  expect(plan.names.tin_mass.col).toBe(col);
  expect(sentence).toBe(
    `column B is hidden and in use: ${at("tin_mass")} holds Tin (tin_mass); show it before the sheet is signed`,
  );
});
