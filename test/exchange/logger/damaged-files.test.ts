/** Files that are cut, damaged, mixed up or no logger's at all: each ends in readings, listed lines, or a refusal. */
import fc, { anyCharacter } from "../../properties";
import { decode } from "../../../src/exchange/logger/decode";
import type { Layout } from "../../../src/exchange/logger/layout";
import { findLoads, MOST_STRETCHES, numbered, waysFor } from "../../../src/exchange/logger/loads";
import { finished, offerLayout } from "../../../src/exchange/logger/offer";
import { readRows, type LoggerRows } from "../../../src/exchange/logger/rows";
import { seriesOf, thinned } from "../../../src/exchange/logger/load-series";
import { timeZeroShown } from "../../../src/exchange/logger/time-zero";
import { dialects, finish, tests, write } from "./generated-file";

/** What stands for a part of the layout that the file does not show, and the person would give. */
const GIVEN: Layout = {
  delimiter: ",",
  decimal: ".",
  firstLine: 1,
  time: 0,
  timeForm: "s",
  date: null,
  dateOrder: "dmy",
  timesRun: "test",
  reading: 1,
  readingUnit: "mm",
  sense: "rise",
  load: null,
  loadKind: "stress",
  loadUnit: "kPa",
  lever: 10,
  noReading: [-9999],
};

/** Reads bytes as the pane does: by a layout, or by the layout that the file shows. undefined if they are no text. */
function read(bytes: Uint8Array, given?: Layout): { rows: LoggerRows; layout: Layout; lines: number } | undefined {
  const decoded = decode(bytes);
  if (!decoded.ok) {
    expect(["empty", "archive", "not text"]).toContain(decoded.refused);
    return undefined;
  }
  const { lines } = decoded.value;
  const { draft } = offerLayout(lines);
  const shown = Object.entries(draft).filter(([, part]) => part !== undefined);
  const layout = given ?? { ...GIVEN, ...Object.fromEntries(shown) };
  expect("layout" in finished(layout)).toBe(true);
  return { rows: finish(readRows(decoded.value, layout)).value, layout, lines: lines.length };
}

/** Every line is used at most once, numbers are finite, and the loads that are found lie within the rows. */
function expectSound(found: ReturnType<typeof read>): void {
  if (!found) return;
  const { rows, layout, lines } = found;
  expect(new Set(rows.lines).size).toBe(rows.lines.length);
  const named = [...rows.lines, ...rows.faults.map((fault) => fault.line)];
  expect(named.filter((line) => !(line >= 1 && line <= lines))).toEqual([]);
  expect([...rows.times, ...rows.readings].every(Number.isFinite)).toBe(true);
  for (const way of waysFor(rows, layout)) {
    const steps = numbered(findLoads(rows, layout, way), [], {
      stresses: Array(24).fill(undefined),
      seating: undefined,
    });
    expect(steps.length).toBeLessThanOrEqual(MOST_STRETCHES);
    let next = 0;
    const faults: string[] = [];
    for (const step of steps) {
      if (step.from !== next || !(step.to > step.from)) faults.push(`${step.from} to ${step.to}, after ${next}`);
      next = step.to;
      const { times } = seriesOf(rows, step, timeZeroShown(rows, steps).rule, layout.timesRun);
      if (!times.every(Number.isFinite)) faults.push(`the times from ${step.from} are no numbers`);
      if (!(thinned(times, "even", 12).length <= 12)) faults.push(`more than 12 rows from ${step.from}`);
    }
    expect(faults).toEqual([]);
    if (steps.length > 0) expect(next).toBe(rows.lines.length);
  }
}

const files = fc.tuple(tests, dialects).map(([known, dialect]) => write(known, dialect));

test("a file that is cut at any byte gives the readings before the cut, and at most one line more", () => {
  fc.assert(
    fc.property(files, fc.double({ min: 0, max: 1, noNaN: true }), ({ bytes, layout }, share) => {
      const whole = read(bytes, layout)!;
      const cut = read(bytes.slice(0, Math.floor(share * bytes.length)), layout);
      if (!cut) return;
      expectSound(cut);
      const count = cut.rows.lines.length;
      const before = count > 0 && cut.rows.lines[count - 1] === cut.lines ? count - 1 : count;
      expect(cut.rows.readings.slice(0, before)).toEqual(whole.rows.readings.slice(0, before));
      expect(cut.rows.times.slice(0, before)).toEqual(whole.rows.times.slice(0, before));
      expect(cut.lines - (layout.firstLine - 1) - before).toBeLessThanOrEqual(1);
    }),
    { numRuns: 300 },
  );
});

/** Damage to bytes: positions are shares of the length. */
const at = fc.double({ min: 0, max: 0.999, noNaN: true });
const damages: fc.Arbitrary<(bytes: Uint8Array) => Uint8Array> = fc.oneof(
  fc.tuple(at, fc.nat(7)).map(([share, bit]) => (bytes: Uint8Array) => {
    const index = Math.floor(share * bytes.length);
    return bytes.map((byte, i) => (i === index ? byte ^ (1 << bit) : byte));
  }),
  fc.tuple(at, fc.uint8Array({ maxLength: 40 })).map(([share, put]) => (bytes: Uint8Array) => {
    const index = Math.floor(share * bytes.length);
    return Uint8Array.from([...bytes.slice(0, index), ...put, ...bytes.slice(index)]);
  }),
  fc.tuple(at, at).map(([a, b]) => (bytes: Uint8Array) => {
    const [from, to] = [a, b].map((share) => Math.floor(share * bytes.length)).sort((x, y) => x - y);
    return Uint8Array.from([...bytes.slice(0, from), ...bytes.slice(to)]);
  }),
  fc.tuple(at, at).map(([a, b]) => (bytes: Uint8Array) => {
    const [from, to] = [a, b].map((share) => Math.floor(share * bytes.length)).sort((x, y) => x - y);
    return Uint8Array.from([...bytes, ...bytes.slice(from, to)]);
  }),
);

test("bits turned, bytes put in, parts missing and parts doubled end in readings, listed lines or a refusal", () => {
  fc.assert(
    fc.property(files, fc.array(damages, { minLength: 1, maxLength: 4 }), ({ bytes, layout }, all) => {
      const damaged = all.reduce((now, damage) => damage(now), bytes);
      expectSound(read(damaged));
      expectSound(read(damaged, layout));
    }),
    { numRuns: 200 },
  );
});

test("a bit turned in one line leaves the readings of the lines before it", () => {
  fc.assert(
    fc.property(
      files.filter(({ bytes }) => bytes[0] !== 0xff && bytes[0] !== 0xfe && bytes[1] !== 0),
      at,
      fc.nat(6),
      ({ bytes, layout }, share, bit) => {
        const index = Math.floor(share * bytes.length);
        const whole = read(bytes, layout)!;
        const damaged = read(
          bytes.map((byte, i) => (i === index ? byte ^ (1 << bit) : byte)),
          layout,
        );
        if (!damaged) return;
        const line = new TextDecoder().decode(bytes.slice(0, index)).split(/\r\n|\r|\n/).length;
        const until = (rows: LoggerRows): number[] => rows.readings.filter((_, i) => rows.lines[i] < line);
        if (line > layout.firstLine) expect(until(damaged.rows)).toEqual(until(whole.rows));
      },
    ),
    { numRuns: 300 },
  );
});

test("any bytes, and any text, end in readings, listed lines or a refusal", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 600 }), (bytes) => expectSound(read(bytes))),
    { numRuns: 500 },
  );
  const cells = fc.oneof(
    fc.double().map(String),
    fc.string({ unit: anyCharacter, maxLength: 12 }),
    fc.constantFrom(
      "",
      '"',
      "''",
      "1e999",
      "-1e-320",
      "0x1F",
      "1,5",
      "1.234,5",
      "NaN",
      "31/02/2024",
      "25:61:61",
      "=1+1",
      "\u202e12",
    ),
  );
  const text = fc
    .tuple(
      fc.array(fc.array(cells, { maxLength: 5 }), { maxLength: 30 }),
      fc.constantFrom(",", ";", "\t", " "),
      fc.array(fc.constantFrom("\n", "\r\n", "\r"), { minLength: 1, maxLength: 3 }),
    )
    .map(([rows, delimiter, ends]) => rows.map((row, i) => row.join(delimiter) + ends[i % ends.length]).join(""));
  fc.assert(
    fc.property(text, (content) => expectSound(read(new TextEncoder().encode(content)))),
    { numRuns: 500 },
  );
});

test("mixed ends of lines read as one kind does", () => {
  fc.assert(
    fc.property(
      tests,
      dialects.filter(({ encoding }) => encoding === "utf-8"),
      fc.infiniteStream(fc.constantFrom("\n", "\r\n", "\r")),
      (known, dialect, ends) => {
        const { bytes, layout } = write(known, { ...dialect, newline: "\n" });
        const mixed = new TextDecoder().decode(bytes).replace(/\n/g, () => ends.next().value as string);
        expect(read(new TextEncoder().encode(mixed), layout)!.rows).toEqual(read(bytes, layout)!.rows);
      },
    ),
    { numRuns: 100 },
  );
});

test("a line of ten million characters, and a million blank lines, are read", () => {
  const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
  const long = read(bytesOf(`0,1\n1,${"9".repeat(10_000_000)}\n2,3\n3,4\n`), { ...GIVEN, delimiter: "," })!;
  expect(long.rows.readings).toEqual([1, 3, 4]);
  expect(long.rows.faults.map(({ line, kind }) => [line, kind])).toEqual([[2, "text"]]);
  expect(long.rows.faults.every(({ cell }) => cell.length <= 40)).toBe(true);
  expect(read(bytesOf(`0,1\n${"\n".repeat(1_000_000)}2,3\n`), GIVEN)!.rows.readings).toEqual([1, 3]);
});
