/** How a logger's file is read: its columns with their units and forms, as data, so that it can be kept and shown. */

export const DELIMITERS = [",", ";", "\t"] as const;
export type Delimiter = (typeof DELIMITERS)[number];
export type DecimalMark = "." | ",";

/** A number of seconds, minutes, hours or days; an elapsed time h:mm:ss or m:ss; a time of day, with or without a date. */
export const TIME_FORMS = ["s", "min", "h", "d", "h:mm:ss", "m:ss", "clock"] as const;
export type TimeForm = (typeof TIME_FORMS)[number];

export const DATE_ORDERS = ["ymd", "dmy", "mdy"] as const;
export type DateOrder = (typeof DATE_ORDERS)[number];

/** What the load column holds: the stress itself, a force, or only the number of the load. */
export const LOAD_KINDS = ["stress", "force", "number"] as const;
export type LoadKind = (typeof LOAD_KINDS)[number];

/** Columns are counted from 0, lines from 1 as an editor counts them. */
export interface Layout {
  readonly delimiter: Delimiter;
  readonly decimal: DecimalMark;
  /** The line at which the readings begin. */
  readonly firstLine: number;
  readonly time: number;
  readonly timeForm: TimeForm;
  /** The column of the date, if the time of day has its own column; otherwise null. */
  readonly date: number | null;
  readonly dateOrder: DateOrder;
  /** Whether times run on through the test or begin again with each load. */
  readonly timesRun: "test" | "load";
  readonly reading: number;
  /** "div": divisions of the dial or transducer, whose factor stands on the data sheet. */
  readonly readingUnit: string;
  /** Whether readings rise or fall when the specimen compresses. */
  readonly sense: "rise" | "fall";
  /** null if the file has no column of the load. */
  readonly load: number | null;
  readonly loadKind: LoadKind;
  readonly loadUnit: string;
  /** The factor by which the lever multiplies a force; 1 if the load is measured at the specimen. */
  readonly lever: number;
  /** The column of the temperature in degrees Celsius; null or left out if the file has none. */
  readonly temperature?: number | null;
  /** Numbers that mean "no reading", such as -9999. */
  readonly noReading: readonly number[];
}

/**
 * Codes that loggers write as numbers for "no reading": common practice, no source; 9.9E37 and 9.91E37 are SCPI's
 * overload and not-a-number.
 */
export const NO_READING: readonly number[] = [-9999, -99999, 9.9e37, 9.91e37];
