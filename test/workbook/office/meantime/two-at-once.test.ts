/** @jest-environment jsdom */
/**
 * Somebody else changes the workbook between two requests of an operation: the pane of a second window, a person in a
 * co-authored workbook, or the person who waits. However the two meet, the workbook is as if one of them had come
 * first, or the operation did nothing and says so.
 */
import { OfficePort } from "../../../../src/workbook/office";
import { WorkbookError, type CellContent } from "../../../../src/workbook/port";
import { blankSheet } from "../../../../src/datasheet";
import { toXlsx } from "../../../../src/datasheet/xlsx";
import { Refusal } from "../../../excel/refusal";
import { StrictExcel } from "../../../excel/strict-excel";
import { seen } from "./book-as-text";
import { PLAN } from "../plan";

const port = new OfficePort();
let file: Uint8Array;
beforeAll(async () => void (file = await toXlsx(blankSheet("SI", { loads: 1 }))));

const open = (): StrictExcel => {
  const excel = new StrictExcel({ sheets: ["Data", "Notes"], platform: "desktop", evaluator: () => 7 });
  excel
    .sheet("Data")
    .put("A1", [
      ["times", "readings", ""],
      ["", "", ""],
      ["", "", ""],
      ["", "", ""],
      ["mass", 3, "=_xldudf_CLAY_STRAIN(B5)"],
    ])
    .name("times", "A2:A4")
    .name("readings", "B2:B4")
    .name("mass", "B5");
  excel.sheet("Notes").put("A1", [["a person's own"]]);
  return excel;
};

const CELLS: readonly CellContent[] = [
  { row: 5, col: 1, formula: "={mass}*2" },
  { row: 6, col: 1, value: "twice" },
];

/** The operations that change a workbook. */
const OPERATIONS: Readonly<Record<string, () => Promise<unknown>>> = {
  "insert a sheet": () => port.insertSheet(PLAN),
  "insert a file": () => port.insertFile(file),
  "fill named cells": () => port.fillNames("Data", { times: [1, null, 3], readings: [7, "1/2"] }, ["times"]),
  "write cells": () => port.writeCells("Data", CELLS),
  "name cells": () =>
    port.nameAll("Data", [
      { name: "ring", address: "B6" },
      { name: "cap", address: "B7" },
    ]),
  protect: () => port.protect("Data", true),
  "lift the protection": () => port.protect("Data", false),
  "enter formulas again": () => port.reenterFormulas("Data"),
};

/** What somebody else does in the meantime. */
const MEANTIME: Readonly<Record<string, (excel: StrictExcel) => void>> = {
  "the sheet is deleted": (excel) => excel.sheet("Data").remove(),
  "the sheet is renamed": (excel) => excel.sheet("Data").rename("Data of 3 May"),
  "the sheet is moved": (excel) => excel.sheet("Data").moveTo(1),
  "the sheet is protected": (excel) => excel.sheet("Data").protect(),
  "the sheet is protected with a password": (excel) => excel.sheet("Data").protect({}, "secret"),
  "the workbook's structure is protected": (excel) => excel.structure(true),
  "a row is inserted above": (excel) => excel.sheet("Data").insertRows(0),
  "a row is inserted in the middle": (excel) => excel.sheet("Data").insertRows(3),
  "rows are filtered": (excel) => excel.sheet("Data").hideRows(2),
  "a name is deleted": (excel) => {
    const { sheet } = excel.sheet("Data");
    sheet.names = sheet.names.filter(({ name }) => name !== "mass" && name !== "readings");
    excel.recalculate();
  },
  "another sheet takes the new sheet's name": (excel) => excel.sheet("Notes").rename("Test"),
  "a sheet is added": (excel) => void excel.copySheet("Notes", "Notes (2)"),
  "another cell is written": (excel) => excel.sheet("Data").put("D9", [[5]]),
  "a cell to be written is typed into": (excel) =>
    excel
      .sheet("Data")
      .put("A2", [["12:30"]])
      .put("B6", [["=B5"]]),
  "the same is done in a second pane": (excel) =>
    excel
      .sheet("Data")
      .put("A2", [[1], [null], [3]])
      .put("B2", [[7], ["'1/2"]]),
  "another sheet comes to the front": (excel) => excel.select("Notes", "A1"),
  "calculation is set to manual": (excel) => void (excel.evaluation.isManual = true),
  "the person types into a cell for a moment": (excel) => {
    excel.startEdit();
    setTimeout(() => excel.endEdit(), 5);
  },
};

interface End {
  readonly book: string;
  /** The sentence of a failure. */
  readonly message: string;
  readonly result: unknown;
}

async function run(excel: StrictExcel, work: () => Promise<unknown>): Promise<End> {
  const [result, message] = await work().then(
    (done): [unknown, string] => [done, ""],
    (error: unknown): [unknown, string] => {
      expect(error).toBeInstanceOf(WorkbookError);
      return [undefined, (error as Error).message];
    },
  );
  expect(excel.faults).toEqual([]);
  return { book: seen(excel), message, result };
}

/** Excel may refuse what the other person does. */
function carryOut(act: (excel: StrictExcel) => void, excel: StrictExcel): void {
  try {
    act(excel);
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
  }
}

const SAYS_UNCHANGED = /as (it was|they were)\.$|[Nn]othing was (changed|written|inserted)/;

/** What is seen if the two do not meet. */
interface Apart {
  /** What the other one did, alone. */
  readonly untouched: string;
  readonly otherFirst: End;
  readonly otherLast: string;
}

async function apart(
  begin: () => StrictExcel,
  work: () => Promise<unknown>,
  act: (excel: StrictExcel) => void,
): Promise<Apart> {
  const alone = begin();
  carryOut(act, alone);
  const untouched = seen(alone);
  const first = begin();
  carryOut(act, first);
  const otherFirst = await run(first, work);
  const second = begin();
  await run(second, work);
  carryOut(act, second);
  return { untouched, otherFirst, otherLast: seen(second) };
}

/** What a person sees at the end of the operation on a workbook that the other one changes meanwhile. */
async function endOf(
  excel: StrictExcel,
  work: () => Promise<unknown>,
  { untouched, otherFirst, otherLast }: Apart,
): Promise<string> {
  const { book, message, result } = await run(excel, work);
  if (SAYS_UNCHANGED.test(message)) expect(book).toBe(untouched);
  if (message) return book === untouched ? "refused" : `half done: ${message}`;
  const { left = 0 } = (result ?? {}) as { left?: number };
  if (book === untouched && left > 0) return "told";
  if (book === otherLast) return "done";
  return book === otherFirst.book && otherFirst.message === "" ? "after" : "wrong";
}

/**
 * What is seen at the end, in the order of the requests. "done": as if the operation had come first. "after": as if it had
 * come last. "refused": the operation changed nothing, and says so. "told": formulas are left, and their number is said.
 * An operation that is not named is done.
 */
const SEEN: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  "the workbook's structure is protected": {
    "insert a sheet": "refused, done",
    "insert a file": "refused, done",
  },
  "another sheet takes the new sheet's name": {
    "insert a sheet": "after, done",
  },
  "a sheet is added": {
    "insert a sheet": "after, done",
    "insert a file": "after, done",
  },
  "another sheet comes to the front": {
    "insert a sheet": "after",
  },
  "the sheet is deleted": {
    "fill named cells": "refused",
    "write cells": "refused",
    "name cells": "refused",
    protect: "refused",
    "lift the protection": "refused",
    "enter formulas again": "refused",
  },
  "the sheet is renamed": {
    "fill named cells": "refused, done",
    "write cells": "refused, done",
    "name cells": "refused, done",
    protect: "refused, done",
    "lift the protection": "refused, done",
    "enter formulas again": "refused, done",
  },
  "the sheet is protected": {
    "fill named cells": "refused",
    "write cells": "done, refused",
    "lift the protection": "after",
    "enter formulas again": "done, told, done",
  },
  "the sheet is protected with a password": {
    "fill named cells": "refused",
    "write cells": "refused",
    "lift the protection": "refused",
    "enter formulas again": "refused, told, done",
  },
  "a row is inserted in the middle": {
    "fill named cells": "after",
    "write cells": "refused, done",
    "name cells": "after, done",
    "enter formulas again": "done, told, done",
  },
  "a name is deleted": {
    "fill named cells": "refused, done",
    "write cells": "refused, done",
  },
  "another cell is written": {
    "fill named cells": "after",
    "write cells": "after",
    protect: "after",
  },
  "a cell to be written is typed into": {
    "fill named cells": "refused",
    "write cells": "refused",
    protect: "after",
    "lift the protection": "after",
  },
  "the same is done in a second pane": {
    "fill named cells": "refused",
    "write cells": "after",
    protect: "after",
    "lift the protection": "after",
  },
  "a row is inserted above": {
    "write cells": "refused, done",
    "name cells": "after, done",
  },
};

describe.each(Object.entries(OPERATIONS))("%s", (name, work) => {
  const begin = (): StrictExcel => {
    const excel = open();
    if (name === "lift the protection") excel.sheet("Data").unlock("D9").protect({ allowInsertRows: true });
    return excel;
  };

  test.each(Object.entries(MEANTIME))("%s", async (what, act) => {
    const { trips } = await begin().cost(work);
    const compared = await apart(begin, work, act);
    const ends: string[] = [];
    for (let n = 1; n <= trips; n++) {
      const excel = begin();
      excel.beforeRequest(n, () => carryOut(act, excel));
      const end = await endOf(excel, work, compared);
      if (end !== ends.at(-1)) ends.push(end);
    }
    expect(ends.join(", ")).toBe(SEEN[what]?.[name] ?? "done");
  });
});
