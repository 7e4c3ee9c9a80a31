/** What one undo takes back after each writing, and what one redo brings again. */
import "../engine-in-node";
import { LINES_AT_ONCE, linesKept, linesName, keptAll } from "../../../../src/exchange/logger/file-sheet";
import { writeReadings, type Job } from "../../../../src/pane/screens/readings/into-workbook";
import { writeAgain, type AgainJob } from "../../../../src/pane/screens/readings/write-again";
import { english } from "../../../../src/reduction/message";
import { EmbeddedPort, newWorkbook } from "../../../../src/workbook/embedded";
import { tellRefusals } from "../../../../src/workbook/embedded/protection";
import { plainData } from "../../../../src/workbook/embedded/engine";
import type { SheetPlan } from "../../../../src/workbook/port";
import { RING } from "../../contract-bench";
import { foreignFile } from "../../contract-files";

const dispatch = (port: EmbeddedPort, type: string): unknown =>
  // The engine types list commands with their payloads; undo and redo have none.
  (port.workbook.model.dispatch as unknown as (type: string) => unknown)(type);

/** Everything that a saved workbook would hold. */
const state = (port: EmbeddedPort): unknown => ({ ...plainData(port.workbook.model), revisionId: "" });

const WRITINGS: Readonly<Record<string, (port: EmbeddedPort) => Promise<unknown>>> = {
  "a sheet inserted": (port) => port.insertSheet({ ...RING, isProtected: true, paper: "A4", footer: "3" }),
  "the sheets of a file inserted": async (port) => port.insertFile(await foreignFile()),
  "named cells filled": (port) => port.fillNames("Ring", { ring: [1], readings: [2, "1/2"] }),
  "cells written": (port) =>
    port.writeCells("Ring", [
      { row: 10, col: 1, formula: "={wet}*2", format: "0.00" },
      { row: 30, col: 1, value: "below the last row" },
    ]),
  "a cell named": (port) => port.nameAll("Ring", [{ name: "lid", address: "B8" }]),
  "a name moved": (port) => port.nameAll("Ring", [{ name: "ring", address: "B8", replace: true }]),
  "several cells named": (port) =>
    port.nameAll("Ring", [
      { name: "lid", address: "B8" },
      { name: "base", address: "B40" },
    ]),
  "a sheet protected": (port) => port.protect("Ring", true),
  "formulas entered again": (port) => port.reenterFormulas("Ring"),
};

test.each(Object.entries(WRITINGS))(
  "%s: one undo takes back the whole of it, and one redo brings it again",
  async (_, write) => {
    const port = new EmbeddedPort(newWorkbook());
    await port.insertSheet(RING);
    await port.writeCells("Ring", [{ row: 7, col: 3, formula: "=_xldudf_CLAY_STRAIN(B2)" }]);
    const before = state(port);
    await write(port);
    const after = state(port);
    expect(after).not.toEqual(before);
    dispatch(port, "REQUEST_UNDO");
    expect(state(port)).toEqual(before);
    dispatch(port, "REQUEST_REDO");
    expect(state(port)).toEqual(after);
    // The names that the port keeps beside the workbook lead where they did.
    dispatch(port, "REQUEST_UNDO");
    expect(await port.readNames("Ring", ["ring", "lid"])).toEqual({ ring: [[74.36]] });
  },
);

describe("the sheet that keeps a file never says of lines that they stand there if they do not", () => {
  const DATA: SheetPlan = {
    ...{ name: "Test 7", rows: 9, cols: 2, cells: [], columnWidths: {}, merges: [], freezeRows: 0 },
    names: { times_01: { row: 0, col: 0, rows: 9, cols: 1 }, readings_01: { row: 0, col: 1, rows: 9, cols: 1 } },
  };
  const FILE = Array.from({ length: 2 * LINES_AT_ONCE + 5 }, (_, index) => `${index};1,5`);
  const FIRST = FILE.slice(0, LINES_AT_ONCE + 3);
  const signal = new AbortController().signal;
  const job = (): Job => ({
    dataSheet: "Test 7",
    columns: { times_01: [0, 1], readings_01: [1.5, 1.6] },
    blank: ["readings_01"],
    record: {
      ...{ dataSheet: "Test 7", file: "a.csv", sha256: "0f", hashOf: "the 9 bytes of the file", encoding: "UTF-8" },
      ...{ apparatus: "", remarks: [], loads: [], layoutWords: [], lines: FIRST.length },
      // The layout and what was read only travel through this test.
      ...{ layout: {} as never, read: {} as never },
    },
    lines: FIRST,
    keptAll: keptAll(FIRST.length),
  });
  const again: AgainJob = {
    ...{ dataSheet: "Test 7", fileSheet: "Readings Test 7", day: "2031-03-03 08:00", sha256: "cd", said: "load 1" },
    columns: { times_01: [null, null, 2], readings_01: [null, null, 1.7] },
    // What was read only travels through this test.
    read: {} as never,
    lines: FILE,
    standing: FIRST.length,
  };

  async function check(port: EmbeddedPort): Promise<string> {
    if (!(await port.sheetNames()).includes("Readings Test 7")) return "no sheet";
    const names = ["logger_kept", ...Array.from({ length: 3 }, (_, chunk) => linesName(chunk))];
    const { logger_kept: [[words = ""] = []] = [], ...pieces } = await port.readNames("Readings Test 7", names);
    const lines = Object.values(pieces).flatMap((cells) => cells.map(([line]) => line));
    const kept = linesKept(String(words));
    if (kept !== undefined) expect(lines.slice(0, kept)).toEqual(FILE.slice(0, kept));
    return String(words);
  }

  test("after each undo, to the beginning, and after each redo", async () => {
    const port = new EmbeddedPort(newWorkbook());
    await port.insertSheet(DATA);
    await writeReadings(port, job(), undefined, () => undefined, signal);
    await writeAgain(port, again, new Set(), { tell: () => undefined, signal });
    const last = keptAll(FILE.length);
    expect(await check(port)).toBe(last);
    const back: string[] = [];
    while (back.at(-1) !== "no sheet") {
      dispatch(port, "REQUEST_UNDO");
      back.push(await check(port));
    }
    const forth: string[] = [];
    while (forth.at(-1) !== last) {
      dispatch(port, "REQUEST_REDO");
      forth.push(await check(port));
    }
    expect(forth).toHaveLength(back.length);
    expect(new Set(back)).toEqual(
      new Set(["not finished: the lines below are not all of them", keptAll(FIRST.length), "no sheet"]),
    );
  });
});

describe("while the pane writes in several steps", () => {
  afterEach(() => tellRefusals(() => undefined));
  const begin = async (): Promise<{ port: EmbeddedPort; said: string[] }> => {
    const port = new EmbeddedPort(newWorkbook());
    await port.insertSheet(RING);
    await port.fillNames("Ring", { ring: [1] });
    const said: string[] = [];
    tellRefusals((sentence) => void said.push(english(sentence)));
    return { port, said };
  };
  const WAIT =
    "Not done: the pane is writing to “Ring”. Wait until it has ended, or stop it in the pane; then try again.";

  test.each(["REQUEST_UNDO", "REQUEST_REDO"])(
    "%s is refused with a sentence until the work has ended",
    async (type) => {
      const { port, said } = await begin();
      if (type === "REQUEST_REDO") dispatch(port, "REQUEST_UNDO");
      const before = state(port);
      const note = await port.noteWork("layout", "Ring");
      dispatch(port, type);
      expect(state(port)).toEqual(before);
      expect(said).toEqual([WAIT]);
      await port.strikeWork(note);
      dispatch(port, type);
      expect(state(port)).not.toEqual(before);
      expect(said).toEqual([WAIT]);
    },
  );

  test("undo takes back what a pane that was closed has left", async () => {
    const { port, said } = await begin();
    const before = state(port);
    await port.noteWork("layout", "Ring");
    port.paneLeft();
    dispatch(port, "REQUEST_UNDO");
    expect(state(port)).not.toEqual(before);
    expect(said).toEqual([]);
    expect(await port.unfinishedWork()).toHaveLength(1);
  });

  test("a refused writing of the pane itself is taken back", async () => {
    const { port, said } = await begin();
    await port.noteWork("layout", "Ring");
    const before = state(port);
    await expect(port.writeCells("Ring", [{ row: 10, col: 1, formula: "={ring}" }, { row: -1, col: 1, value: 1 }])).rejects.toThrow(); // prettier-ignore
    expect(state(port)).toEqual(before);
    expect(said).toEqual([]);
  });
});
