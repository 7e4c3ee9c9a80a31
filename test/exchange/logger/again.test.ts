/** A file that is read again while it grows: what is new comes in by load, nothing twice. */
import fc from "../../properties";
import {
  columnsAgain,
  compareLines,
  continued,
  readBeforeFrom,
  type ReadBefore,
} from "../../../src/exchange/logger/again";
import { decode, type TextFile } from "../../../src/exchange/logger/decode";
import type { Layout } from "../../../src/exchange/logger/layout";
import { readRows } from "../../../src/exchange/logger/rows";
import { targetOf, type Target } from "../../../src/exchange/logger/target";
import type { CellValue } from "../../../src/workbook/port";
import { DIAMETER, dialects, finish, tests, write } from "./generated-file";

const ROOM = 400;
type Sheet = Record<string, CellValue[]>;
const blankSheet = (): Sheet => ({
  stress_unit: ["kPa"],
  diameter: [DIAMETER],
  load_stress: Array<CellValue>(24).fill(""),
  ...Object.fromEntries(
    Array.from({ length: 24 }, (_, i) => String(i + 1).padStart(2, "0")).flatMap((load) => [
      [`times_${load}`, Array<CellValue>(ROOM).fill("")],
      [`readings_${load}`, Array<CellValue>(ROOM).fill("")],
    ]),
  ),
});
const targetFrom = (sheet: Sheet): Target =>
  targetOf(Object.fromEntries(Object.entries(sheet).map(([name, cells]) => [name, cells.map((cell) => [cell])])));
const numbersIn = (sheet: Sheet, name: string): number[] =>
  (sheet[name] ?? []).filter((cell): cell is number => typeof cell === "number");
const timesIn = (sheet: Sheet) => (load: number) => numbersIn(sheet, `times_${String(load).padStart(2, "0")}`);

const must = (bytes: Uint8Array): TextFile | undefined => {
  const decoded = decode(bytes);
  return decoded.ok ? decoded.value : undefined;
};

/** The lines of a file that is still being written: a last line without an end waits. */
const whole = ({ lines, endsWhole, ...file }: TextFile, isFinished: boolean): TextFile => ({
  ...file,
  endsWhole,
  lines: isFinished || endsWhole ? lines : lines.slice(0, -1),
});

const CHOICES = { rule: "first", thinning: "all" } as const;

test("cut at any bytes and read again and again, the sheet holds what one reading of the whole file gives", () => {
  fc.assert(
    fc.property(
      tests,
      dialects,
      fc.array(fc.double({ min: 0.02, max: 1, noNaN: true }), { maxLength: 5 }),
      (known, dialect, shares) => {
        const { bytes, layout } = write(known, dialect);
        const way = dialect.timesRun === "load" ? ("restart" as const) : ("load" as const);
        const importAt = (cuts: readonly number[]): { sheet: Sheet; kept: readonly string[] } => {
          const sheet = blankSheet();
          let before: ReadBefore = { loads: [], starts: [], to: 0, choices: { way, ...CHOICES } };
          let kept: readonly string[] = [];
          for (const [index, cut] of cuts.entries()) {
            const isFinished = index === cuts.length - 1;
            const decoded = must(bytes.slice(0, cut));
            if (!decoded) continue;
            const file = whole(decoded, isFinished);
            const compared = compareLines(kept, file.lines);
            // The encoding of a very short file may not show yet.
            if (compared.is === "changed" && cut < 80) continue;
            expect(compared.is).not.toBe("changed");
            const rows = finish(readRows(file, layout)).value;
            const target = targetFrom(sheet);
            const found = continued({ rows, layout, before, target, timesOnSheet: timesIn(sheet), isFinished });
            if (!found.ok) throw new Error(`line ${found.line}`);
            const replaced: string[] = [];
            for (const [name, cells] of Object.entries(columnsAgain(target, found.value.additions)))
              cells.forEach((cell, row) => {
                if (cell === null) return;
                const column = (sheet[name] ??= []);
                if ((column[row] ?? "") !== "") replaced.push(`${name}, row ${row}`);
                column[row] = cell;
              });
            // Nothing that stands on the sheet is replaced.
            expect(replaced).toEqual([]);
            expect(readBeforeFrom(JSON.stringify(found.value.read))).toEqual(found.value.read);
            before = found.value.read;
            kept = file.lines.slice(0, isFinished ? undefined : before.to);
          }
          return { sheet, kept };
        };
        const cuts = [...shares.map((share) => Math.round(share * bytes.length)).sort((a, b) => a - b), bytes.length];
        const [grown, once] = [importAt(cuts), importAt([bytes.length])];
        expect(grown.kept).toEqual(once.kept);
        for (const name of Object.keys(once.sheet))
          expect([name, numbersIn(grown.sheet, name)]).toEqual([name, numbersIn(once.sheet, name)]);
        known.forEach(({ readings }, index) =>
          expect(numbersIn(grown.sheet, `readings_${String(index + 1).padStart(2, "0")}`)).toHaveLength(
            readings.length,
          ),
        );
      },
    ),
    { numRuns: 150 },
  );
});

describe("compared with the lines that were kept", () => {
  const kept = ["time,reading", "0,1.00", "1,1.10", "2,1.15"];
  test("a file without a change is the same", () => expect(compareLines(kept, kept)).toEqual({ is: "same" }));
  test("a file with more lines has grown", () =>
    expect(compareLines(kept, [...kept, "4,1.2"])).toEqual({ is: "grown" }));
  test("a last line that was cut short is told by its line", () =>
    expect(compareLines([...kept, "4,1"], [...kept, "4,1.20", "8,1.3"])).toEqual({ is: "grown", recut: 5 }));
  test("a changed line is told by its line, and missing lines are counted", () => {
    expect(compareLines(kept, ["time,reading", "0,1.01", "1,1.10", "2,1.15", "4,1.2"])).toEqual({
      is: "changed",
      lines: [2],
      missing: 0,
    });
    expect(compareLines(kept, kept.slice(0, 2))).toEqual({ is: "changed", lines: [], missing: 2 });
  });
});

const LAYOUT: Layout = {
  ...write([], fc.sample(dialects, { numRuns: 1, seed: 3 })[0]).layout,
  ...{ delimiter: ",", decimal: ".", firstLine: 1, time: 0, timeForm: "min", timesRun: "test", date: null },
  ...{ reading: 1, load: 2, loadKind: "stress", loadUnit: "kPa", lever: 1, noReading: [] },
};
const rowsOf = (lines: readonly string[]) =>
  finish(readRows({ lines, encoding: "UTF-8", endsWhole: true }, LAYOUT)).value;
const LINES = [...Array(12).keys()].map((t) => `${t},${10 + t},${t < 6 ? 25 : 50}`);
const first = (thinning: ReadBefore["choices"]["thinning"] = "all"): ReadBefore => ({
  choices: { way: "load", rule: "first", thinning },
  loads: [{ load: 1, fromLine: 1, toLine: 4 }],
  starts: [1],
  to: 4,
});
const onSheet = (): Sheet => {
  const sheet = blankSheet();
  sheet.times_01!.splice(0, 4, 0, 1, 2, 3);
  sheet.readings_01!.splice(0, 4, 10, 11, 12, 13);
  return sheet;
};
const read = (lines: readonly string[], sheet: Sheet, before = first(), more = {}) =>
  continued({
    ...{ rows: rowsOf(lines), layout: LAYOUT, before, target: targetFrom(sheet), timesOnSheet: timesIn(sheet) },
    isFinished: true,
    ...more,
  });

test("a load goes on below its readings, and the next load begins on its own rows, with its stress", () => {
  const sheet = onSheet();
  const found = read(LINES, sheet);
  if (!found.ok) throw new Error("changed");
  expect(found.value.additions).toEqual([
    { load: 1, isNew: false, fromLine: 5, toLine: 6, rows: 2, times: [4, 5], readings: [14, 15], at: 4 },
    expect.objectContaining({ load: 2, isNew: true, fromLine: 7, toLine: 12, times: [0, 1, 2, 3, 4, 5], stress: 50 }),
  ]);
  const columns = columnsAgain(targetFrom(sheet), found.value.additions);
  expect(columns.readings_01).toEqual([null, null, null, null, 14, 15]);
  expect(columns.load_stress).toEqual([null, 50]);
});

test("the last three rows wait while the file is being written", () => {
  const found = read(LINES, onSheet(), first(), { isFinished: false });
  if (!found.ok) throw new Error("changed");
  expect(found.value.read.to).toBe(9);
});

test("a reading whose time stands on the sheet already does not come twice", () => {
  const sheet = onSheet();
  sheet.times_01!.splice(4, 1, 4);
  sheet.readings_01!.splice(4, 1, 14.1);
  const found = read(LINES, sheet);
  if (!found.ok) throw new Error("changed");
  expect(found.value.additions[0]).toMatchObject({ times: [5], readings: [15], at: 5 });
});

test("a line that had been cut is written again in place of the last reading of its load", () => {
  const found = read(LINES, onSheet(), first(), { recut: 4 });
  if (!found.ok) throw new Error("changed");
  expect(found.value.additions[0]).toMatchObject({ at: 3, times: [3, 4, 5], readings: [13, 14, 15] });
});

test("a load that begins in the new lines and holds readings already is told, and not written", () => {
  const sheet = onSheet();
  sheet.readings_02!.splice(0, 1, 99);
  const found = read(LINES, sheet);
  if (!found.ok) throw new Error("changed");
  expect(found.value.without).toEqual([{ load: 2, fromLine: 7, toLine: 12 }]);
});

test("lines that were read and now show another load are refused with the line", () => {
  expect(read(LINES, onSheet(), { ...first(), to: 8, loads: [{ load: 1, fromLine: 1, toLine: 8 }] })).toEqual({
    ok: false,
    line: 7,
  });
});

test.each(["", "null", "[]", '{"to":1}', '{"to":1,"starts":[],"loads":[],"choices":{"way":"no"}}'])(
  "a cell changed to %p is no record",
  (text) => expect(readBeforeFrom(text)).toBeUndefined(),
);
