/**
 * Every operation of the program that writes into a workbook, as a person begins it: what the screens call, on small sheets. Each is
 * the whole of its work, from the reading that a screen shows to the last writing.
 */
import { limitsSheet } from "../../../src/checks/limits";
import { bookSheet } from "../../../src/book/book-sheet";
import { COMPARISON_NAMES, comparisonSheet } from "../../../src/book/comparison";
import { blankSheet } from "../../../src/datasheet";
import { readingSheet } from "../../../src/datasheet/reading-sheet";
import { newSheet } from "../../../src/pane/live/new-sheet";
import { cutOff } from "../../../src/pane/live/unfinished";
import { RECORD } from "../../../src/pane/live/want";
import { readTest } from "../../../src/pane/live/workbook-store";
import { takeBack, writeReading, writeStart, type Written } from "../../../src/pane/screens/bench/enter-reading";
import { acknowledge, appendRows } from "../../../src/pane/screens/checks/workbook-answers";
import {
  attachName,
  attachReadings,
  layOutWorkings,
  mendCells,
  writeMissing,
} from "../../../src/pane/screens/data-sheet/firm-cells";
import {
  enterFormulasAgain,
  insertOwnFile,
  lookAtSheet,
  protectSheet,
  type Done,
} from "../../../src/pane/screens/data-sheet/sheet-upkeep";
import { reportsOf } from "../../../src/pane/screens/many/many";
import { writeReadings } from "../../../src/pane/screens/readings/into-workbook";
import { writeAgain } from "../../../src/pane/screens/readings/write-again";
import type { Mode } from "../../../src/pane/screens/register/cells-to-take";
import { insertRegister, takeLines, writeSet } from "../../../src/pane/screens/register/register-work";
import { READ_NAMES } from "../../../src/pane/screens/register/source";
import { makeReport } from "../../../src/pane/screens/report/make-report";
import {
  blankAmong,
  cellNames,
  cellsToTakeBack,
  sameStanding,
  standingOf,
} from "../../../src/pane/screens/results/adopt-rows";
import { sameRows, tableOf } from "../../../src/pane/screens/review/picks/pick-changes";
import { addFiles, bringUpToDate, insertCharts, insertSummary } from "../../../src/pane/screens/summary/project";
import { writeAsSeen } from "../../../src/pane/screens/write-as-seen";
import { PICK_COLUMNS } from "../../../src/record/picks";
import type { NamedValues } from "../../../src/record/record";
import { say } from "../../../src/reduction/message";
import { chartsSheet, seriesOfRange } from "../../../src/report/charts/series";
import { summarySheet } from "../../../src/summary/summary-sheet";
import type { NamedColumns, SheetPlan, WorkbookPort } from "../../../src/workbook/port";
import {
  ADOPTED,
  adoptedBy,
  ADOPTED_ROW,
  ANSWERS,
  cellOf,
  COMPARED,
  DATA,
  FIRM,
  keptSheet,
  LINES,
  NOTES,
  RECORD_OF_FILE,
  REGISTER,
  UNBOUND,
  UNBOUND_CELL,
  UNNAMED,
  WITH_ADOPTED,
  WITH_CURVE,
} from "./sheets";
import { foreignFile } from "../contract-files";

/** An operation, and the workbook in which it works. */
export interface Operation {
  /** Where the program calls it: as `writingCalls` lists the places. */
  readonly calls: readonly string[];
  /** The sheets of the workbook before it, the last in front; a person's sheet and a data sheet if they are left out. */
  readonly plans?: () => readonly SheetPlan[];
  /** The sheet that somebody else changes; "Data" if it is left out. */
  readonly sheet?: string;
  /** A name of this sheet that the operation needs, which somebody deletes. */
  readonly name: string;
  /** A cell of this sheet that the operation writes or reads, into which somebody types. */
  readonly cell: string;
  /** The cells that are selected on the sheet, if the operation begins with a selection. */
  readonly selected?: string;
  /** True if the sheet is protected before. */
  readonly isProtected?: boolean;
  /** True if the operation is about one new sheet. */
  readonly isOneSheet?: boolean;
  /** True if the screen says besides what was kept, where the sentence of the workbook speaks of one sheet. */
  readonly tellsMore?: boolean;
  /** What is done before. */
  readonly prepare?: (port: WorkbookPort) => Promise<unknown>;
  readonly work: (port: WorkbookPort) => Promise<unknown>;
}

type Operations = Readonly<Record<string, Operation>>;

const NOW = new Date(2026, 2, 9, 14, 5);
const course = () => ({ tell: () => undefined, signal: new AbortController().signal, now: NOW });
const reading = (port: WorkbookPort) => readTest(port, "Data", RECORD);
const inserted = (port: WorkbookPort, plan: SheetPlan) => newSheet(port, plan, (sheet) => sheet);

/** What a screen tells as a warning, as an error: nothing was written. */
function written(came: Written): void {
  if (came !== "written") throw new Error(came);
}

let bytes: Promise<Uint8Array<ArrayBuffer>> | undefined;
/** A file of another program, without a data sheet. */
const file = {
  name: "notes.xlsx",
  arrayBuffer: async () => (await (bytes ??= foreignFile().then((made) => Uint8Array.from(made)))).buffer,
};

const ON_DATA = { name: "times_01", cell: "A3" } as const;

/** What a screen tells as a warning, as an error: formulas are left. */
function allDone({ telling }: Done): void {
  if (telling?.intent === "warning") throw new Error(telling.sentence);
}

const NEW_SHEET = { ...ON_DATA, isOneSheet: true };

/** New sheets, each whole or not there. */
const NEW_SHEETS: Operations = {
  "insert a German data sheet": {
    ...NEW_SHEET,
    calls: ["pane/screens/data-sheet/insert-sheet.tsx newSheet"],
    work: (port) => inserted(port, blankSheet("SI", { loads: 1, readingRows: 4, language: "de" })),
  },
  "insert the sheet of limits": {
    ...NEW_SHEET,
    calls: ["pane/screens/checks/checks-screen.tsx newSheet"],
    work: (port) => inserted(port, limitsSheet()),
  },
  "insert a calculation book": {
    ...NEW_SHEET,
    calls: ["pane/screens/by-hand/working.tsx newSheet"],
    work: async (port) => {
      const { names } = await reading(port);
      const entry = { name: "lever_ratio", row: 0, label: "Lever ratio", value: 10, unit: "" };
      const plan = bookSheet("Data", [{ ...entry, said: say`10` }], names);
      return inserted(port, { ...plan, reads: { sheet: "Data", names } });
    },
  },
  "insert charts": {
    ...NEW_SHEET,
    calls: ["pane/screens/plots/insert-chart.tsx newSheet"],
    work: (port) => {
      const [x, y] = [DATA.names.times_01!, DATA.names.readings_01!];
      const numbers = { xs: [0.1, 0.2, 1, 2, 3, 4], ys: [1, 2, 3, 3.5, 3.7, 3.8] };
      const block = seriesOfRange({ plot: "cv", sheet: "Data", x, y, ...numbers });
      if (!block.ok) throw new Error("no chart");
      return inserted(port, chartsSheet("Charts", [block.value]));
    },
  },
  "insert a sheet to print": {
    ...NEW_SHEET,
    calls: ["pane/screens/bench/printed-readings.tsx port.insertSheet"],
    work: async (port) => {
      const { record, values } = await reading(port);
      const plan = readingSheet(record, values, { loads: [1], paper: "A4", sheet: "Data" });
      // The small data sheet has no load with a stress: any plan without a name of its own.
      return port.insertSheet(plan ?? { ...limitsSheet(), names: {}, name: "Readings Data" });
    },
  },
  "insert a register": {
    ...NEW_SHEET,
    calls: ["pane/screens/register/register-part.tsx insertRegister"],
    work: async (port) => insertRegister(port, await reading(port)),
  },
  "insert a file": {
    ...NEW_SHEET,
    calls: ["pane/screens/data-sheet/sheet-check.tsx insertOwnFile"],
    work: (port) => insertOwnFile(port, file, course()),
  },
  "lock a report as an issue": {
    ...NEW_SHEET,
    calls: ["pane/screens/report/report-screen.tsx makeReport"],
    work: (port) => makeReport(port, "Data", { ...REPORT, lockedBy: "AB" }, course()),
  },
  "make the reports of all tests": {
    ...NEW_SHEET,
    calls: ["pane/screens/many/many-part.tsx reportsOf"],
    work: async (port) => {
      const { failed } = await reportsOf(port, ["Data"], REPORT, course());
      if (failed.length > 0) throw new Error(failed.map(({ reason }) => reason).join(" "));
    },
  },
};

const REPORT = { language: "en", curve: "e", preparedBy: "AB", paper: "A4", now: NOW } as const;

async function adopt(port: WorkbookPort, cells: NamedColumns): Promise<void> {
  const { values } = await reading(port);
  const seen = standingOf(values, ADOPTED);
  written(
    await writeAsSeen(port, "Data", cells, {
      names: cellNames(ADOPTED),
      isAsSeen: (now) => sameStanding(standingOf(now, ADOPTED), seen),
      free: blankAmong(cells, seen),
    }),
  );
}

async function take(port: WorkbookPort, mode: Mode): Promise<string> {
  const line = { cell: "lever_ratio", kind: "frame", registered: 11, held: 10, state: "differs" } as const;
  return takeLines(port, await reading(port), { source: { called: "Register", values: {} }, lines: [line], mode });
}

/** Entries of the bench, of the review, of the results and of the register. */
const ENTRIES: Operations = {
  "enter a reading": {
    calls: ["pane/screens/bench/use-bench-writing.ts writeReading"],
    name: "readings_01",
    cell: cellOf(DATA, "readings_01", 3),
    work: (port) => writeReading(port, "Data", { load: 1, row: 3, time: 1, reading: 8, timeBefore: "" }).then(written),
  },
  "undo a reading": {
    calls: ["pane/screens/bench/use-bench-writing.ts takeBack"],
    name: "readings_01",
    cell: cellOf(DATA, "readings_01", 2),
    work: (port) => takeBack(port, "Data", { load: 1, row: 2, time: 0.1, reading: 2, timeBefore: "" }).then(written),
  },
  "enter the time of a load": {
    calls: ["pane/screens/bench/use-bench-writing.ts writeStart"],
    name: "load_started",
    cell: cellOf(DATA, "load_started", 2),
    work: (port) => writeStart(port, "Data", 2, 46_000.5).then(written),
  },
  "save a pick": {
    calls: ["pane/screens/review/use-writing.ts writeAsSeen"],
    name: "pick_reason",
    cell: cellOf(DATA, "pick_reason", 2),
    work: async (port) => {
      const table = tableOf((await reading(port)).values);
      const row = [1, "t90", 4, 5, "ours", "CD", 46_000];
      const cells = Object.fromEntries(PICK_COLUMNS.map((name, col) => [name, [null, row[col] ?? ""]]));
      const isAsSeen = (values: NamedValues): boolean => sameRows(tableOf(values), table);
      written(await writeAsSeen(port, "Data", cells, { names: PICK_COLUMNS, isAsSeen, free: PICK_COLUMNS }));
    },
  },
  "adopt a value": {
    calls: ["pane/screens/results/adopt-part.tsx writeAsSeen"],
    name: "adopted_value",
    cell: cellOf(DATA, "adopted_value", ADOPTED_ROW),
    work: (port) => adopt(port, adoptedBy("AB")),
  },
  "adopt another value": {
    calls: ["pane/screens/results/adopt-part.tsx writeAsSeen"],
    plans: () => [NOTES, WITH_ADOPTED],
    name: "adopted_by",
    cell: cellOf(DATA, "adopted_value", ADOPTED_ROW),
    work: (port) => adopt(port, adoptedBy("CD")),
  },
  "take an adopted value back": {
    calls: ["pane/screens/results/adopt-part.tsx writeAsSeen"],
    plans: () => [NOTES, WITH_ADOPTED],
    name: "adopted_by",
    cell: cellOf(DATA, "adopted_value", ADOPTED_ROW),
    work: (port) => adopt(port, cellsToTakeBack(ADOPTED)),
  },
  "take a value of the register": {
    calls: ["pane/screens/register/register-part.tsx takeLines"],
    name: "lever_ratio",
    cell: cellOf(DATA, "lever_ratio"),
    work: (port) => take(port, "frozen"),
  },
  "follow a value of the register": {
    calls: ["pane/screens/register/register-part.tsx takeLines"],
    plans: () => [NOTES, REGISTER, DATA],
    name: "lever_ratio",
    cell: cellOf(DATA, "lever_ratio"),
    work: (port) => take(port, "live"),
  },
  "write a deflection set": {
    calls: ["pane/screens/register/register-part.tsx writeSet"],
    plans: () => [NOTES, REGISTER],
    sheet: "Register",
    name: "register_set_stress",
    cell: cellOf(REGISTER, "register_number", 2),
    work: async (port) => {
      const [register] = await port.lookAt([{ sheet: "Register", values: READ_NAMES, names: true }]);
      const about = { number: "D 2", frame: "F 1", disks: "", paper: "", by: "CD", day: 46_000 };
      return writeSet(port, register!, { ...about, rows: [{ stress: 100, loading: 0.01, unloading: undefined }] });
    },
  },
};

const ANSWER: Parameters<typeof acknowledge>[1] = {
  ...{ sheet: "Data", id: "b", status: "open", found: "found", reason: "ours", by: "CD", when: "2026-03-09" },
};
const compare = (port: WorkbookPort): Promise<string> => {
  const rows = [1, 2].map((row) => COMPARISON_NAMES.map((_, col) => row + col));
  return appendRows(port, COMPARISON_NAMES, comparisonSheet, rows);
};

/** The tables of answers and of comparisons. */
const TABLES: Operations = {
  "answer a question": {
    calls: ["pane/screens/checks/checks-screen.tsx acknowledge"],
    plans: () => [NOTES, ANSWERS],
    sheet: "Answers",
    name: "answer_check",
    cell: "A3",
    work: (port) => acknowledge(port, ANSWER),
  },
  "answer the first question": {
    ...ON_DATA,
    calls: ["pane/screens/checks/checks-screen.tsx acknowledge"],
    work: (port) => acknowledge(port, ANSWER),
  },
  "sign a comparison": {
    calls: ["pane/screens/by-hand/comparison-state.ts appendRows"],
    plans: () => [NOTES, COMPARED],
    sheet: "Compared",
    name: COMPARISON_NAMES[2]!,
    cell: "A3",
    work: compare,
  },
  "sign the first comparison": {
    ...ON_DATA,
    calls: ["pane/screens/by-hand/comparison-state.ts appendRows"],
    work: compare,
  },
};

const ON_FIRM = { plans: () => [NOTES, FIRM], name: "ring_mass", cell: cellOf(FIRM, "dry_mass") };

/** The work of the sheet check. */
const UPKEEP: Operations = {
  "attach a name": {
    tellsMore: true,
    calls: ["pane/screens/data-sheet/sheet-check.tsx attachName"],
    plans: () => [NOTES, UNNAMED],
    name: "ring_mass",
    cell: "C2",
    selected: "C2",
    work: (port) => attachName(port, "dry_mass", false),
  },
  "name columns of readings": {
    calls: ["pane/screens/data-sheet/sheet-check.tsx attachReadings"],
    plans: () => [NOTES, UNNAMED],
    name: "ring_mass",
    cell: "D3",
    selected: "D2:E4",
    work: (port) => attachReadings(port, 1, "columns"),
  },
  "write the missing formulas": {
    ...ON_FIRM,
    calls: ["pane/screens/data-sheet/sheet-check.tsx writeMissing"],
    work: (port) => writeMissing(port),
  },
  "mend formulas": {
    ...ON_FIRM,
    calls: ["pane/screens/data-sheet/sheet-check.tsx mendCells"],
    work: async (port) => {
      const looked = await lookAtSheet(port, "Data");
      return mendCells(port, { ...looked, cells: looked.layout.unwritten });
    },
  },
  "lay out results": {
    tellsMore: true,
    calls: ["pane/screens/data-sheet/sheet-check.tsx layOutWorkings"],
    plans: () => [NOTES, UNNAMED],
    name: "ring_mass",
    cell: "H2",
    selected: "G2",
    work: (port) => layOutWorkings(port),
  },
  "enter formulas again": {
    calls: ["pane/screens/data-sheet/sheet-check.tsx enterFormulasAgain"],
    plans: () => [NOTES, UNBOUND],
    name: "lever_ratio",
    cell: UNBOUND_CELL,
    work: (port) => enterFormulasAgain(port, course()).then(allDone),
  },
  protect: {
    ...ON_DATA,
    calls: ["pane/screens/data-sheet/sheet-check.tsx protectSheet"],
    work: (port) => protectSheet(port, true),
  },
  "lift the protection": {
    ...ON_DATA,
    calls: ["pane/screens/data-sheet/sheet-check.tsx protectSheet"],
    isProtected: true,
    work: (port) => protectSheet(port, false),
  },
};

const CHOICES = { system: "SI", language: "en" } as const;
const withSummary = (): SheetPlan[] => [NOTES, DATA, summarySheet("SI")];
const ON_SUMMARY = { plans: withSummary, sheet: "Summary", name: "summary_boring", cell: "B4" } as const;

/** The summary of all tests. */
const SUMMARY: Operations = {
  "insert a summary": {
    tellsMore: true,
    ...ON_DATA,
    calls: ["pane/screens/summary/summary-screen.tsx insertSummary"],
    work: (port) => insertSummary(port, CHOICES, course()),
  },
  "bring a summary up to date": {
    tellsMore: true,
    ...ON_SUMMARY,
    calls: ["pane/screens/summary/summary-screen.tsx bringUpToDate"],
    work: (port) => bringUpToDate(port, course()),
  },
  "add files to a summary": {
    tellsMore: true,
    ...ON_SUMMARY,
    calls: ["pane/screens/summary/summary-screen.tsx addFiles"],
    work: (port) => addFiles(port, [file], course()),
  },
  "insert the charts of a summary": {
    tellsMore: true,
    ...ON_SUMMARY,
    plans: () => [NOTES, WITH_CURVE, summarySheet("SI")],
    calls: ["pane/screens/summary/summary-screen.tsx insertCharts"],
    prepare: (port) => bringUpToDate(port, course()),
    work: (port) => insertCharts(port, course()),
  },
};

const AGAIN: Parameters<typeof writeAgain>[1] = {
  ...{ dataSheet: "Data", fileSheet: "Kept", day: "2031-03-03 08:00", sha256: "cd", said: "load 1" },
  columns: { times_01: [null, null, 2], readings_01: [null, null, 1.7] },
  read: RECORD_OF_FILE.read!,
  lines: LINES,
  standing: 2,
};
const JOB: Parameters<typeof writeReadings>[1] = {
  ...{ dataSheet: "Data", record: RECORD_OF_FILE, lines: LINES, keptAll: "all 3 lines" },
  columns: { times_01: [null, null, 2, 3], readings_01: [null, null, 1.7, 1.8] },
  blank: [],
};

/** Readings of a logger's file. */
const READINGS: Operations = {
  "import readings and keep the lines": {
    calls: ["pane/screens/readings/write-step.tsx writeReadings"],
    name: "readings_01",
    cell: cellOf(DATA, "readings_01", 3),
    tellsMore: true,
    work: (port) => writeReadings(port, JOB, undefined, () => undefined, course().signal),
  },
  "add new readings of a file": {
    calls: ["pane/screens/readings/read-again.tsx writeAgain"],
    plans: () => [NOTES, keptSheet(), DATA],
    name: "readings_01",
    cell: cellOf(DATA, "readings_01", 3),
    tellsMore: true,
    work: (port) => writeAgain(port, AGAIN, new Set(), course()),
  },
};

/** What the pane does by itself. */
const BY_ITSELF: Operations = {
  calculate: {
    ...ON_DATA,
    calls: ["pane/shell/on-request.tsx port.calculate"],
    work: (port) => port.calculate(),
  },
  "look for unfinished work": {
    ...ON_DATA,
    calls: ["pane/shell/unfinished-work.tsx cutOff", "pane/shell/unfinished-work.tsx port.strikeWork"],
    work: (port) => cutOff(port),
  },
};

export const OPERATIONS: Operations = {
  ...NEW_SHEETS,
  ...ENTRIES,
  ...TABLES,
  ...UPKEEP,
  ...SUMMARY,
  ...READINGS,
  ...BY_ITSELF,
};
