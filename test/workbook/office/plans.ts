/** Every kind of sheet that the project makes, as a plan. */
import { answersSheet } from "../../../src/checks/answers";
import { bookSheet } from "../../../src/book/book-sheet";
import { calculationBook } from "../../../src/book/calculation-book";
import { comparisonSheet } from "../../../src/book/comparison";
import { runChecks } from "../../../src/checks";
import { limitsSheet } from "../../../src/checks/limits";
import { blankSheet, demoSheet, type System } from "../../../src/datasheet";
import { fileSheet } from "../../../src/exchange/logger/file-sheet";
import { readRecord, RECORD_NAMES } from "../../../src/record/record";
import type { Outcome } from "../../../src/reduction/outcome";
import { reportSheet } from "../../../src/report/report";
import { chartsSheet, everyLoad, seriesSheet } from "../../../src/report/charts/series";
import type { EmbeddedPort } from "../../../src/workbook/embedded";
import type { SheetPlan } from "../../../src/workbook/port";
import "./engine";
import { opened } from "../embedded/opened";
import { PLAN } from "./plan";
import { english } from "../../../src/reduction/message";

const SYSTEMS: readonly System[] = ["SI", "US"];
const LOADS = [1, 24, 48];

const FILE_RECORD: Parameters<typeof fileSheet>[0] = {
  dataSheet: "Consolidation test",
  file: "frame-3.csv",
  sha256: "ab".repeat(32),
  hashOf: "the 120 bytes of the file",
  encoding: "UTF-8",
  apparatus: "Frame 3",
  layout: {
    headings: [],
    delimiter: ";",
    decimal: ",",
    timeForm: "s",
    timesRun: "load",
    loadUnit: "kPa",
    loadKind: "stress",
  } as unknown as Parameters<typeof fileSheet>[0]["layout"],
  layoutWords: [["Time", "column A, seconds"]],
  loads: [{ load: 1, fromLine: 3, toLine: 900, rows: 898, kept: 61 }],
  remarks: [[12, "NAN: no number, left out"]],
  lines: 4007,
};

export type Named = readonly [title: string, plan: SheetPlan];

/** Sheets that do not depend on others. */
export const ALONE: readonly Named[] = [
  ["one of everything", PLAN],
  ...SYSTEMS.flatMap((system) =>
    LOADS.map((loads): Named => [`blank, ${system}, ${loads} loads`, blankSheet(system, { loads })]),
  ),
  ...SYSTEMS.map((system): Named => [`demonstration, ${system}`, demoSheet(system)]),
  ["limits", limitsSheet()],
  ["answers", answersSheet()],
  ["a file kept", fileSheet(FILE_RECORD)],
];

function must<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(english(outcome.reason));
  return outcome.value;
}

export interface Demonstration {
  readonly engine: EmbeddedPort;
  readonly sheet: string;
  /** Sheets made from the values of the demonstration. */
  readonly made: readonly Named[];
}

/** The demonstration in the engine, and the sheets made from it. */
export async function demonstration(system: System = "SI"): Promise<Demonstration> {
  const { port: engine, sheet } = await opened(demoSheet(system));
  const names = await engine.listNames(sheet);
  const values = await engine.readNames(sheet, RECORD_NAMES);
  const record = readRecord(values);
  const report = (paper: "A4" | "Letter"): SheetPlan =>
    reportSheet({
      sheet,
      names,
      values,
      record,
      answered: runChecks(record),
      paper,
      preparedBy: "A. Nobody",
      now: new Date(2026, 2, 9, 14, 5),
    }).plan;
  const data = { sheet, names, values };
  const curves = [...must(everyLoad(data, "log time")), ...must(everyLoad(data, "root time"))];
  return {
    engine,
    sheet,
    made: [
      ["report, A4", report("A4")],
      ["report, Letter", report("Letter")],
      ["calculation book", bookSheet(sheet, calculationBook(record, values), names)],
      ["comparison by hand", comparisonSheet()],
      ["series", seriesSheet("Series", curves).plan],
      ["charts of every load", chartsSheet("Charts", curves)],
    ],
  };
}
