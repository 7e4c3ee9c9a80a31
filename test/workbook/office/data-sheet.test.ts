/** @jest-environment jsdom */
/** The real data sheet, as Excel is asked to make it. */
import { blankSheet, demoSheet } from "../../../src/datasheet";
import { OfficePort } from "../../../src/workbook/office";
import { localName } from "../../../src/workbook/office/names";
import type { SheetPlan } from "../../../src/workbook/port";
import { FakeExcel, supports } from "./fake-excel";

/** Excel's limits: 8192 characters a formula, 255 a list of choices, 31 a sheet's name. */
const LONGEST_FORMULA = 8192;
const LONGEST_LIST = 255;

const plans: [string, SheetPlan][] = [
  ["blank, SI", blankSheet("SI")],
  ["blank, US", blankSheet("US")],
  ["demonstration, SI", demoSheet("SI")],
  ["demonstration, US", demoSheet("US")],
];

describe.each(plans)("%s", (_, plan) => {
  test("its names, formulas and choices are such as Excel takes", () => {
    const names = Object.keys(plan.names);
    expect(names.filter((name) => localName(name) !== name || !/^[A-Za-z_][A-Za-z0-9_.]*$/.test(name))).toEqual([]);
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
    const lists = plan.cells.flatMap(({ choices }) => (choices ? [choices] : []));
    expect(lists.filter((list) => list.join(",").length > LONGEST_LIST || list.join().includes(", "))).toEqual([]);
    expect(lists.flat().filter((choice) => choice.includes(","))).toEqual([]);
    expect(plan.cells.filter(({ formula }) => formula && formula.length > LONGEST_FORMULA)).toEqual([]);
  });

  test("every cell and name arrives where it was planned, in a few small requests", async () => {
    supports(17);
    const excel = new FakeExcel(["Sheet1"]).when(/Protection$/, { Protected: false });
    await expect(new OfficePort().insertSheet(plan)).resolves.toBe(plan.name);
    expect(excel.sizes.length).toBeLessThan(20);
    expect(Math.max(...excel.sizes)).toBeLessThan(1e6);

    const arrived = new Map<string, unknown>();
    for (const { path, args } of excel.steps.filter(({ name }) => name === "Formulas")) {
      const [, top] = /GetRangeByIndexes\((\d+),0,/.exec(path)!.map(Number);
      (args[0] as unknown[][]).forEach((row, index) =>
        row.forEach((value, col) => value !== null && arrived.set(`${top + index},${col}`, value)),
      );
    }
    const planned = plan.cells
      .filter(({ value, formula }) => formula !== undefined || (value !== undefined && value !== ""))
      .map(({ row, col, value, formula }) => [`${row},${col}`, formula?.replace(/\{(\w+)\}/g, "$1") ?? value] as const);
    expect(planned.length).toBeGreaterThan(500);
    const plain = new Map(
      [...arrived].map(([at, value]) => [at, typeof value === "string" ? value.replace(/^'/, "") : value]),
    );
    expect(plain).toEqual(new Map(planned));

    const named = excel.lines.flatMap(
      (line) => /Names\.Add\("(\w+)",.*GetRangeByIndexes\(([\d,]+)\),\)$/.exec(line) ?? [],
    );
    const boxes = Object.entries(plan.names).map(([name, { row, col, rows, cols }]) => [
      name,
      `${row},${col},${rows},${cols}`,
    ]);
    expect(named.length).toBe(3 * boxes.length);
    expect(boxes.filter(([name, box]) => named[named.indexOf(name) + 1] !== box)).toEqual([]);
  });
});
