import {
  fileSheet,
  hashOf,
  keptAll,
  layoutFrom,
  linesKept,
  LINES_AT_ONCE,
  linesName,
  type FileRecord,
} from "../../../src/exchange/logger/file-sheet";
import { SHEET_LANGUAGES } from "../../../src/specification/text/language";
import fc from "../../properties";
import { dialects, tests, write } from "./generated-file";

const [dialect] = fc.sample(dialects, { numRuns: 1, seed: 1 });
const { layout } = write([], dialect);
const RECORD: FileRecord = {
  dataSheet: "Test 7",
  file: "frame-3.csv",
  sha256: "ab".repeat(32),
  hashOf: "the 120 bytes of the file",
  encoding: "UTF-8",
  apparatus: "Frame 3",
  layout: {
    ...layout,
    delimiter: ";",
    decimal: ",",
    timeForm: "s",
    timesRun: "load",
    loadUnit: "kPa",
    loadKind: "stress",
  },
  layoutWords: [["Time", "column A, seconds"]],
  loads: [{ load: 1, fromLine: 3, toLine: 900, rows: 898, kept: 61 }],
  remarks: [[12, "NAN: no number, left out"]],
  lines: 2 * LINES_AT_ONCE + 7,
};

test("every line has its own cell, below everything else, and the sheet does not come to the front", () => {
  const plan = fileSheet(RECORD);
  const boxes = [0, 1, 2].map((chunk) => plan.names[linesName(chunk)]);
  expect(boxes.map(({ rows }) => rows)).toEqual([LINES_AT_ONCE, LINES_AT_ONCE, 7]);
  boxes.slice(1).forEach((box, index) => expect(box.row).toBe(boxes[index].row + boxes[index].rows));
  expect(Math.max(...plan.cells.map(({ row }) => row))).toBeLessThan(boxes[0].row);
  expect(plan.rows).toBe(boxes[2].row + 7);
  expect(plan).toMatchObject({ name: "Readings Test 7", behind: true });
  expect(plan.cells.some(({ value }) => value === `Line 1 of the file stands in row ${boxes[0].row + 1}`)).toBe(true);
});

test("beside a German data sheet the sheet is German; what it keeps is read in both languages", () => {
  const german = fileSheet({ ...RECORD, language: "de" });
  const english = fileSheet(RECORD);
  expect([german.name, german.names]).toEqual(["Ablesungen Test 7", english.names]);
  const texts = ({ cells }: typeof german) => cells.flatMap(({ value }) => (typeof value === "string" ? [value] : []));
  const ofFile = [RECORD.file, RECORD.sha256, RECORD.hashOf, "UTF-8", "Frame 3", "Time", "column A, seconds", "Test 7"];
  const own = [...ofFile, "SHA-256", JSON.stringify(RECORD.layout), "NAN: no number, left out"];
  expect(texts(german).filter((text) => texts(english).includes(text) && !own.includes(text))).toEqual([]);
  expect(keptAll(4321, "de")).toBe("alle 4.321 Zeilen");
  expect(keptAll(4321)).toBe("all 4,321 lines");
  for (const language of SHEET_LANGUAGES)
    for (const lines of [7, 999, 4321, 200_000]) expect(linesKept(keptAll(lines, language))).toBe(lines);
  expect(["keine", "none", "12 lines", "nicht fertig"].map(linesKept)).toEqual([
    undefined,
    undefined,
    undefined,
    undefined,
  ]);
  expect(hashOf(120, true, "de")).toBe("den 120 Bytes der Datei");
});

test("the sheet holds name, hash and remarks", () => {
  const values = fileSheet(RECORD).cells.map(({ value }) => value);
  expect(values).toEqual(expect.arrayContaining([RECORD.file, RECORD.sha256, 12, "NAN: no number, left out"]));
});

const kept = (record: FileRecord): string => {
  const { cells, names } = fileSheet(record);
  const { row, col } = names.logger_layout;
  return String(cells.find((cell) => cell.row === row && cell.col === col)!.value);
};

test("any layout is read back from the sheet unchanged", () => {
  fc.assert(
    fc.property(tests, dialects, (known, dialect) => {
      const record = { ...RECORD, layout: write(known, dialect).layout };
      expect(layoutFrom(kept(record))).toEqual(record.layout);
    }),
    { numRuns: 50 },
  );
});

test.each(["", "null", "{}", "not JSON", '{"delimiter":"|"}'])(
  "a cell that was changed to %p is not a layout",
  (text) => expect(layoutFrom(text)).toBeUndefined(),
);

test("a layout with one part changed into nonsense is not a layout", () => {
  const sound = JSON.parse(kept(RECORD));
  for (const key of Object.keys(sound))
    expect([key, layoutFrom(JSON.stringify({ ...sound, [key]: { odd: true } }))]).toEqual([key, undefined]);
});
