/** @jest-environment jsdom */
/**
 * The pane is closed or reloaded before a request of an operation: the requests from there on are never sent. The
 * workbook is as it was or as it should be, or the next pane says what is half done.
 */
import { blankSheet } from "../../../../src/datasheet";
import { toXlsx } from "../../../../src/datasheet/xlsx";
import { OfficePort } from "../../../../src/workbook/office";
import { cutOff } from "../../../../src/pane/live/unfinished";
import { writeReadings, type Job } from "../../../../src/pane/screens/readings/into-workbook";
import { LINES_AT_ONCE } from "../../../../src/exchange/logger/file-sheet";
import { StrictExcel } from "../../../excel/strict-excel";
import { turns } from "../../../turns";
import { withoutNotes } from "./book-as-text";
import { PLAN } from "../plan";

const port = new OfficePort();

const LONG = Array.from({ length: 300 }, (_, row) => `${row} ${"x".repeat(9_000)}`);

const open = (): StrictExcel => {
  const excel = new StrictExcel({ sheets: ["Data", "Notes"], platform: "desktop", evaluator: () => 7 });
  excel
    .sheet("Data")
    .put("A1", [["times", "readings"]])
    .put("A305", [["mass", 3, "=_xldudf_CLAY_STRAIN(B305)"]])
    .name("times_01", "A2:A301")
    .name("readings_01", "B2:B301")
    .name("mass", "B305");
  return excel;
};
const locked = (): StrictExcel => {
  const excel = open();
  excel.sheet("Data").unlock("D9").protect({ allowInsertRows: true });
  return excel;
};

let file: Uint8Array;
beforeAll(async () => void (file = await toXlsx(blankSheet("SI", { loads: 1 }))));

const lines = Array.from({ length: LINES_AT_ONCE + 3 }, (_, index) => `${index};1,5`);
const JOB: Job = {
  dataSheet: "Data",
  columns: { times_01: [0, 1], readings_01: [1.5, 1.6] },
  blank: ["readings_01"],
  record: {
    ...{ dataSheet: "Data", file: "a.csv", sha256: "0f", hashOf: "the 9 bytes of the file", encoding: "UTF-8" },
    ...{ apparatus: "", remarks: [], loads: [], layoutWords: [], lines: lines.length },
    // The layout only travels through this test.
    layout: {} as never,
  },
  lines,
  keptAll: `all ${lines.length} lines`,
};

interface Case {
  readonly begin?: () => StrictExcel;
  readonly work: () => Promise<unknown>;
  /** What is seen, in the order of the requests; "says" is what the next pane says of. */
  readonly seen: string;
}

const CASES: Readonly<Record<string, Case>> = {
  "insert a sheet": { work: () => port.insertSheet(PLAN), seen: "as it was; half done, says: sheet of Test" },
  "insert a file": { work: () => port.insertFile(file), seen: "as it was; done" },
  "fill named cells": {
    work: () => port.fillNames("Data", { times_01: [1, null, 3], readings_01: [7] }),
    seen: "as it was",
  },
  "fill named cells with more than a request takes": {
    work: () => port.fillNames("Data", { times_01: LONG, readings_01: LONG }),
    seen: "as it was; half done, says: cells of Data",
  },
  "write cells": { work: () => port.writeCells("Data", [{ row: 5, col: 3, formula: "={mass}*2" }]), seen: "as it was" },
  "write cells of a protected sheet": {
    begin: locked,
    work: () => port.writeCells("Data", [{ row: 5, col: 3, formula: "={mass}*2" }]),
    seen: "as it was; half done, says: protection of Data",
  },
  "write cells with more than a request takes": {
    work: () =>
      port.writeCells(
        "Data",
        LONG.map((value, row) => ({ row, col: 5 + (row % 9), value })),
      ),
    seen: "as it was; half done, says: cells of Data",
  },
  "name cells": {
    work: () =>
      port.nameAll("Data", [
        { name: "ring", address: "B6" },
        { name: "cap", address: "B7" },
      ]),
    seen: "as it was",
  },
  protect: { work: () => port.protect("Data", true), seen: "as it was" },
  "lift the protection": { begin: locked, work: () => port.protect("Data", false), seen: "as it was" },
  "enter formulas again": { work: () => port.reenterFormulas("Data"), seen: "as it was; done" },
  "enter formulas of a protected sheet again": {
    begin: locked,
    work: () => port.reenterFormulas("Data"),
    seen: "as it was; half done, says: protection of Data; done",
  },
  "import readings, and keep the lines of the file": {
    work: () => writeReadings(port, JOB, undefined, () => undefined, new AbortController().signal),
    seen: "as it was; as it was, says: readings of Data; half done, says: readings of Data, sheet of Readings Data; half done, says: readings of Data; done, says: readings of Data",
  },
};

async function endAt(n: number, begin: () => StrictExcel, work: () => Promise<unknown>, after: string) {
  const excel = begin();
  const before = withoutNotes(excel);
  const isClosed = excel.closesBefore(n);
  await Promise.race([isClosed, work()]);
  // A request that is on its way is carried out.
  await turns(5);
  excel.comesUp();
  const said = (await cutOff(new OfficePort())).map(({ kind, sheet }) => `${kind} of ${sheet}`);
  const book = withoutNotes(excel);
  const end = book === before ? "as it was" : book === after ? "done" : "half done";
  expect(excel.faults).toEqual([]);
  return said.length > 0 ? `${end}, says: ${said.join(", ")}` : end;
}

test.each(Object.entries(CASES))("%s", async (_, { begin = open, work, seen: wanted }) => {
  const whole = begin();
  const { trips } = await whole.cost(work);
  const after = withoutNotes(whole);
  expect(whole.book.settings.size).toBe(0);
  const ends: string[] = [];
  for (let n = 1; n <= trips; n++) {
    const end = await endAt(n, begin, work, after);
    if (end !== ends.at(-1)) ends.push(end);
  }
  expect(ends.join("; ")).toBe(wanted);
});
