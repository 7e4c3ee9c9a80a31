/** Makes files as loggers write them, from a known test, in any dialect. */
import fc from "../../properties";
import type { Layout, TimeForm } from "../../../src/exchange/logger/layout";

export interface Dialect {
  readonly delimiter: "," | ";" | "\t";
  readonly decimal: "." | ",";
  readonly newline: "\n" | "\r\n" | "\r";
  readonly encoding: "utf-8" | "utf-8-bom" | "utf-16le" | "utf-16be";
  readonly time: "s" | "min" | "h" | "h:mm:ss" | "clock dated" | "clock";
  readonly timesRun: "test" | "load";
  /** Lines with information above the row of names, and a row of units below it. */
  readonly info: number;
  readonly unitsRow: boolean;
  readonly loadUnit: "kPa" | "N";
  readonly falling: boolean;
  readonly quoted: boolean;
  readonly lastNewline: boolean;
}

export const dialects: fc.Arbitrary<Dialect> = fc
  .record({
    delimiter: fc.constantFrom(",", ";", "\t") as fc.Arbitrary<Dialect["delimiter"]>,
    decimal: fc.constantFrom(".", ",") as fc.Arbitrary<Dialect["decimal"]>,
    newline: fc.constantFrom("\n", "\r\n", "\r") as fc.Arbitrary<Dialect["newline"]>,
    encoding: fc.constantFrom("utf-8", "utf-8-bom", "utf-16le", "utf-16be") as fc.Arbitrary<Dialect["encoding"]>,
    time: fc.constantFrom("s", "min", "h", "h:mm:ss", "clock dated", "clock") as fc.Arbitrary<Dialect["time"]>,
    timesRun: fc.constantFrom("test", "load") as fc.Arbitrary<Dialect["timesRun"]>,
    info: fc.nat(4),
    unitsRow: fc.boolean(),
    loadUnit: fc.constantFrom("kPa", "N") as fc.Arbitrary<Dialect["loadUnit"]>,
    falling: fc.boolean(),
    quoted: fc.boolean(),
    lastNewline: fc.boolean(),
  })
  .map((dialect) => ({
    ...dialect,
    // The time of a clock runs on through the test; a figure that contains the delimiter is quoted.
    timesRun: dialect.time.startsWith("clock") ? "test" : dialect.timesRun,
    quoted: dialect.quoted || dialect.delimiter === dialect.decimal,
  }));

export interface KnownLoad {
  readonly stress: number;
  /** Seconds since the load was applied, from 0. */
  readonly seconds: readonly number[];
  readonly readings: readonly number[];
}

/** The longest pause, in seconds: a clock without dates cannot distinguish a longer pause from one a day shorter. */
const LONGEST = 6 * 3600;

/** Loads with readings at growing intervals; readings have four decimals. */
export const tests: fc.Arbitrary<readonly KnownLoad[]> = fc
  .array(
    fc.record({
      rise: fc.constantFrom(2, 1.5, 0.25, 0.5, 1.25),
      growth: fc.double({ min: 1.05, max: 1.9, noNaN: true }),
      count: fc.integer({ min: 4, max: 40 }),
      travel: fc.integer({ min: 100, max: 9000 }),
    }),
    { minLength: 1, maxLength: 9 },
  )
  .map((steps) => {
    let stress = 25;
    let reading = 10_000;
    return steps.map(({ rise, growth, count, travel }) => {
      stress *= rise;
      const seconds = [0];
      for (let interval = 1; seconds.length < count; interval = Math.min(LONGEST, interval * growth))
        seconds.push(seconds[seconds.length - 1] + Math.round(interval));
      const readings = seconds.map((second) => Math.round(reading + travel * Math.log10(1 + second)) / 10_000);
      reading = Math.round(readings[readings.length - 1] * 10_000);
      return { stress, seconds, readings };
    });
  });

/** Seconds between the last reading of a load and the first of the next, if times run on. */
const BETWEEN = 60;
/** 3 April 2024 22:15:30, on a clock without daylight saving time. */
const START = Date.UTC(2024, 3, 3, 22, 15, 30) / 1000;

/** Diameter of a ring, and the force under a lever of 10 that gives one kPa. */
export const DIAMETER = 50;
const LEVER = 10;
const NEWTONS = (Math.PI * DIAMETER ** 2) / 4 / 1000 / LEVER;

const two = (value: number): string => String(value).padStart(2, "0");

function timeText(dialect: Dialect, seconds: number): string {
  const figure = (value: number): string => String(value).replace(".", dialect.decimal);
  if (dialect.time === "s") return figure(seconds);
  if (dialect.time === "min") return figure(seconds / 60);
  if (dialect.time === "h") return figure(seconds / 3600);
  if (dialect.time === "h:mm:ss")
    return `${Math.floor(seconds / 3600)}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}`;
  const at = new Date(1000 * (START + seconds));
  const clock = at.toISOString().slice(11, 19);
  const [y, m, d] = at.toISOString().slice(0, 10).split("-");
  return dialect.time === "clock" ? clock : `${d}/${m}/${y} ${clock}`;
}

export interface GeneratedFile {
  readonly bytes: Uint8Array;
  readonly layout: Layout;
}

/** The bytes of the file, and the layout that reads it. */
export function write(test: readonly KnownLoad[], dialect: Dialect): GeneratedFile {
  const { delimiter, decimal, quoted, falling } = dialect;
  const cell = (text: string): string => (quoted ? `"${text}"` : text);
  const figure = (value: number): string => String(value).replace(".", decimal);
  const lines = Array.from({ length: dialect.info }, (_, index) => `Invented file, remark ${index + 1}`);
  lines.push(["Time", "Load", "Displacement"].map(cell).join(delimiter));
  const timeUnit = dialect.time === "h:mm:ss" || dialect.time.startsWith("clock") ? "" : dialect.time;
  if (dialect.unitsRow) lines.push([timeUnit, dialect.loadUnit, "mm"].map(cell).join(delimiter));
  const firstLine = lines.length + 1;
  let begun = 0;
  for (const { stress, seconds, readings } of test) {
    const load = dialect.loadUnit === "kPa" ? stress : stress * NEWTONS;
    seconds.forEach((second, index) =>
      lines.push(
        [
          timeText(dialect, second + (dialect.timesRun === "test" ? begun : 0)),
          figure(load),
          figure(falling ? 20 - readings[index] : readings[index]),
        ]
          .map(cell)
          .join(delimiter),
      ),
    );
    begun += seconds[seconds.length - 1] + BETWEEN;
  }
  const text = lines.join(dialect.newline) + (dialect.lastNewline ? dialect.newline : "");
  const timeForm: TimeForm = dialect.time.startsWith("clock") ? "clock" : (dialect.time as TimeForm);
  return {
    bytes: encode(text, dialect.encoding),
    layout: {
      delimiter,
      decimal,
      firstLine,
      time: 0,
      timeForm,
      date: null,
      dateOrder: "dmy",
      timesRun: dialect.timesRun,
      reading: 2,
      readingUnit: "mm",
      sense: falling ? "fall" : "rise",
      load: 1,
      loadKind: dialect.loadUnit === "kPa" ? "stress" : "force",
      loadUnit: dialect.loadUnit,
      lever: LEVER,
      noReading: [-9999],
    },
  };
}

export function encode(text: string, encoding: Dialect["encoding"]): Uint8Array {
  if (encoding === "utf-8") return new TextEncoder().encode(text);
  if (encoding === "utf-8-bom") return new TextEncoder().encode(`\ufeff${text}`);
  const bytes = new Uint8Array(2 * text.length + 2);
  const view = new DataView(bytes.buffer);
  [0xfeff, ...Array.from(text, (letter) => letter.charCodeAt(0))].forEach((code, index) =>
    view.setUint16(2 * index, code, encoding === "utf-16le"),
  );
  return bytes;
}

/** Runs a generator to its end; returns the result and the shares reported on the way. */
export function finish<T>(steps: Generator<number, T>): { readonly value: T; readonly shares: readonly number[] } {
  const shares: number[] = [];
  for (;;) {
    const { done, value } = steps.next();
    if (done) return { value, shares };
    shares.push(value);
  }
}
