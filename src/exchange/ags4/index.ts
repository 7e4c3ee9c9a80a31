/**
 * Writes test records as an AGS4 file: PROJ, ABBR, TRAN, TYPE, UNIT, LOCA, SAMP, CONG, CONS, GRAG and LLPL of edition
 * 4.1.1, with no headings of our own. The file holds the values that the sheets show; they are rounded here, once. A
 * message lists the values for which the groups have no place.
 */
import { english, listed, say, verbatim, type Message } from "../../reduction/message";
import { badInput, given, then, type Outcome } from "../../reduction/outcome";
import { cellNamed, type TestRecord } from "../../record/record";
import { GROUPS, TYPES, UNIT_NAMES, type GroupName, type Heading } from "./dictionary";
import { formatNumber, line, toAscii } from "./format";
import { leftOut, rowsOf, type Data, type Row, type Transmission } from "./rows";

export type { Transmission } from "./rows";

export interface Ags4File {
  readonly text: string;
  /** Values of the record for which the file has no place, in words. */
  readonly leftOut: readonly Message[];
}

/** The file, with remarks on text that was respelt; or a refusal that names the cells to fill in first. */
export const toAgs4 = (record: TestRecord, transmission: Transmission): Outcome<Ags4File> =>
  then(rowsOf(record, transmission), (data) => file(data, leftOut(record)));

/** A data sheet of a project, with the name by which it is listed if it cannot be in the file. */
export interface NamedRecord {
  readonly called: string;
  readonly record: TestRecord;
}

/** The file of a project. */
export interface ProjectFile extends Ags4File {
  /** The tests in the file. */
  readonly written: readonly string[];
  /** The tests that are not in the file, with the reason. */
  readonly failed: readonly { readonly called: string; readonly reason: Message }[];
}

/**
 * One file for several tests. A test is left out, with the reason, if it lacks a required field, is of another job than
 * the first test, or is of the same specimen as an earlier one. Refuses if no test is left.
 */
export function toAgs4OfAll(tests: readonly NamedRecord[], transmission: Transmission): Outcome<ProjectFile> {
  const failed: { called: string; reason: Message }[] = [];
  const taken: { readonly called: string; readonly data: Data; readonly record: TestRecord }[] = [];
  for (const { called, record } of tests) {
    const rows = rowsOf(record, transmission);
    const reason = rows.ok ? conflict(taken, rows.value) : rows.reason;
    if (reason) failed.push({ called, reason });
    else if (rows.ok) taken.push({ called, data: rows.value, record });
  }
  const [first] = taken;
  if (!first) return badInput(say`no test can be written: ${listed(failed.map(({ reason }) => reason))}`);
  const left = new Map(taken.flatMap(({ record }) => leftOut(record)).map((one) => [english(one), one]));
  return then(file(merged(taken.map(({ data }) => data)), [...left.values()]), (made) =>
    given({ ...made, written: taken.map(({ called }) => called), failed }),
  );
}

/** The keys of a row as the file has them: depths that are written alike are one key. */
const keysOf = (name: GroupName, row: Row): string => {
  const headings: readonly Heading[] = GROUPS[name];
  return JSON.stringify(headings.filter(({ key }) => key).map((heading) => inFile(row[heading.name], heading)));
};

const inFile = (value: Row[string], { type }: Heading): string =>
  typeof value === "number" ? formatNumber(value, type) : toAscii(value ?? "");

/** Why a test cannot stand in one file with the tests before it; undefined if it can. */
function conflict(
  taken: readonly { readonly called: string; readonly data: Data }[],
  { PROJ, CONG }: Data,
): Message | undefined {
  const [first] = taken;
  if (!first) return undefined;
  const job = (rows: readonly Row[]): string => String(rows[0]?.PROJ_ID ?? "");
  if (job(first.data.PROJ) !== job(PROJ))
    return say`${cellNamed("job_number")} is "${verbatim(job(PROJ))}", and that of ${verbatim(first.called)} is "${verbatim(job(first.data.PROJ))}": an AGS4 file has one project`;
  const [own] = CONG;
  const same = taken.find(({ data }) => own && data.CONG.some((row) => keysOf("CONG", row) === keysOf("CONG", own)));
  return (
    same &&
    say`it is of the same specimen as ${verbatim(same.called)}: correct ${cellNamed("specimen")}, or leave one of the two out`
  );
}

/** The rows of several tests; a row whose keys occurred before (location, sample, abbreviation) is written once. */
function merged(all: readonly Data[]): Data {
  const seen = new Set<string>();
  const rowsFor = (name: keyof Data): Row[] =>
    all.flatMap((data) =>
      data[name].filter((row) => {
        const key = `${name} ${keysOf(name, row)}`;
        if (seen.has(key)) return false;
        seen.add(key);
        return true;
      }),
    );
  return {
    PROJ: rowsFor("PROJ"),
    ABBR: rowsFor("ABBR"),
    TRAN: rowsFor("TRAN"),
    LOCA: rowsFor("LOCA"),
    SAMP: rowsFor("SAMP"),
    CONG: rowsFor("CONG"),
    CONS: rowsFor("CONS"),
    GRAG: rowsFor("GRAG"),
    LLPL: rowsFor("LLPL"),
  };
}

function file(data: Data, left: readonly Message[]): Outcome<Ags4File> {
  const { text, respelt } = write(data);
  const remarks = respelt.length
    ? [say`AGS4 is ASCII only, so ${listed(respelt.map(verbatim))} were spelt with other letters`]
    : [];
  return given({ text, leftOut: left }, remarks);
}

/**
 * Writes rules 2 to 7: the groups one below the other, each with its headings in order, without headings that have no
 * value and are not keys.
 */
function write(data: Data) {
  const respelt = new Set<string>();
  const types = new Set<string>(["X"]);
  const units = new Set<string>();
  const group = (name: GroupName, rows: readonly Row[]): string[] => {
    const all: readonly Heading[] = GROUPS[name];
    const headings = all.filter(
      (heading) => heading.key || rows.some((row) => row[heading.name] !== undefined && row[heading.name] !== ""),
    );
    for (const { type, unit } of headings) {
      types.add(type);
      if (unit) units.add(unit);
    }
    const field = (row: Row, { name: heading, type }: Heading): string => {
      const value = row[heading];
      const cell = inFile(value, { name: heading, type, unit: "" });
      if (typeof value === "string" && cell !== value.replace(/\s+/g, " ").trim()) respelt.add(heading);
      return cell;
    };
    return [
      line(["GROUP", name]),
      line(["HEADING", ...headings.map((heading) => heading.name)]),
      line(["UNIT", ...headings.map(({ unit }) => unit)]),
      line(["TYPE", ...headings.map(({ type }) => type)]),
      ...rows.map((row) => line(["DATA", ...headings.map((heading) => field(row, heading))])),
    ];
  };
  // The groups of types and units list what the other groups use, so they are written after them.
  // Object.entries and Object.keys return strings; here they are the names of the groups.
  const written = new Map(
    Object.entries(data).flatMap(([name, rows]) =>
      rows.length > 0 ? [[name, group(name as GroupName, rows)] as const] : [],
    ),
  );
  const listed = (used: ReadonlySet<string>, names: Readonly<Record<string, string>>, of: "TYPE" | "UNIT"): Row[] =>
    [...used].sort().map((code) => ({ [`${of}_${of}`]: code, [`${of}_DESC`]: names[code] }));
  written.set("TYPE", group("TYPE", listed(types, TYPES, "TYPE")));
  written.set("UNIT", group("UNIT", listed(units, UNIT_NAMES, "UNIT")));
  const groups = Object.keys(GROUPS).flatMap((name) => written.get(name)?.join("\r\n") ?? []);
  return { text: `${groups.join("\r\n\r\n")}\r\n`, respelt: [...respelt] };
}
