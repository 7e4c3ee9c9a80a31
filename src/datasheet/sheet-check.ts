/**
 * Checks whether a sheet is a complete data sheet. It looks at the names, the rows of the tables, and the contents of
 * the cells, as a workbook port returns them. Each finding names the fault, its consequence and the remedy.
 */
import { listed, listWord, say, verbatim, type Message, type Value } from "../reduction/message";
import { firstOf } from "../reduction/numeric/lists";
import { isUnknown } from "../workbook/cell-error";
import type { Box, SheetName } from "../workbook/port";
import { boxAddress, columnLetters } from "../workbook/address";
import { asColumn, cellOfList, liesAcross } from "../workbook/lists";
import { OF_CURVE } from "../reduction/curve/picks";
import {
  AUTOMATIC,
  METHOD_PICK,
  PROCEDURE_PICK,
  TIME_METHODS,
  pickSaid,
} from "../reduction/increment/constructions/picks";
import { PROCEDURES } from "../reduction/increment/constructions/procedure";
import { FIELDS, fieldsFor, MORE_FIELDS, type NamedField } from "../specification/fields";
import { LOAD_TABLE } from "../specification/load-table";
import { PICK_COLUMNS, type RecordedPick } from "../record/picks";
import { cellCalled, readRecord, RECORD_NAMES, type NamedValues } from "../record/record";
import { spillOf } from "../specification/placed-formulas";
import { resultsFrom } from "../specification/uses";
import { newsAsMessage, newsSince, TEMPLATE_VERSION } from "../specification/versions";

/**
 * "stop": something does not work; "look": it works, but a person should look at it; "news": an older sheet lacks it.
 */
export interface Finding {
  readonly weight: "stop" | "look" | "news";
  readonly sentence: Message;
  /** The names that a person should attach to cells. */
  readonly attach?: readonly string[];
}

export interface SheetCheck {
  /** True if the sheet has at least one of the names. */
  readonly isDataSheet: boolean;
  readonly version?: number;
  readonly findings: readonly Finding[];
  /** The number of formulas among the named results that show #NAME?. */
  readonly unbound: number;
}

/** All names to pass to `readNames` of a port. */
export const CHECKED_NAMES: readonly string[] = [...new Set([...RECORD_NAMES, "load_number", "template_version"])];

const lower = (name: string): string => name.toLowerCase();
const KNOWN = new Map([...FIELDS, ...MORE_FIELDS].map((field) => [lower(field.name), field]));
const INTERNAL = new Set(["load_number"]);

const at = (box: Box): string => boxAddress(box).replaceAll("$", "");
/** A cell with its name as well as its label: the name is what a person attaches, or deletes in the name manager. */
const called = (name: string): Value => ({ verbatim: cellCalled(name), cell: name });
const place = (box: Box): Value => verbatim(at(box));
/** A sentence names so many cells at most, and says how many more there are. */
const MOST_NAMED = 4;
const list = (words: readonly Value[]): Value =>
  words.length <= MOST_NAMED
    ? listed(words)
    : say`${listed(words.slice(0, MOST_NAMED))} and ${words.length - MOST_NAMED} more`;

function consequence(name: string): Message {
  const uses = resultsFrom(name);
  return uses.length === 0
    ? say`Without it this is not read for records, checks and export.`
    : say`Without it there is no answer for: ${list(uses.map(({ name: cell, label }) => ({ verbatim: label, cell, label })))}.`;
}

/**
 * Groups the places of the names of the data sheet by name, in the order of the port: names that belong to the sheet
 * come first.
 */
function placesByName(names: readonly SheetName[]): Map<string, SheetName[]> {
  const places = new Map<string, SheetName[]>();
  for (const one of names) {
    const key = lower(one.name);
    if (KNOWN.has(key) || INTERNAL.has(key)) places.set(key, [...(places.get(key) ?? []), one]);
  }
  return places;
}

const overlap = (a: Box, b: Box): boolean =>
  a.row < b.row + b.rows && b.row < a.row + a.rows && a.col < b.col + b.cols && b.col < a.col + a.cols;

interface Standing {
  readonly field: Pick<NamedField, "name" | "column">;
  readonly box: Box;
}

function namesFindings(
  places: Map<string, SheetName[]>,
  lacking: ReadonlySet<string>,
  { load_number = [] }: NamedValues,
): Finding[] {
  const findings: Finding[] = [];
  const loads = Math.max(0, ...load_number.map(([number]) => Number(number) || 0));
  // The readings of a load beyond the usual number are required only if the sheet numbers that load; faults in them
  // are always reported.
  const needed = new Set(fieldsFor(loads).map(({ name }) => name));
  for (const { name } of [...FIELDS, ...MORE_FIELDS, { name: "load_number" }]) {
    const found = places.get(lower(name)) ?? [];
    const standing = found.flatMap(({ scope, place }) => (place === "lost" ? [] : [{ scope, place }]));
    if (standing.length === 0 && found.length > 0)
      findings.push({
        weight: "stop",
        sentence: say`${called(name)} leads to no cell: what it named was deleted (#REF!). ${consequence(name)}`,
        attach: [name],
      });
    else if (standing.length === 0 && needed.has(name) && !lacking.has(name))
      findings.push({
        weight: "stop",
        sentence: say`${called(name)} is missing. ${consequence(name)}`,
        attach: [name],
      });
    const cells = [...new Set(standing.map(({ place }) => at(place)))];
    if (cells.length > 1)
      findings.push({
        weight: "stop",
        sentence:
          firstOf(standing).scope === "sheet"
            ? say`${called(name)} is there ${cells.length} times, at ${listed(cells.map(verbatim))}. The sheet's own, at ${verbatim(firstOf(cells))}, is read: delete the other in the name manager.`
            : say`${called(name)} is there ${cells.length} times, at ${listed(cells.map(verbatim))}. It is not certain which is read: delete the other in the name manager.`,
      });
  }
  return findings;
}

/** The rows of a table, or its columns if the table lies on its side. */
const linesOf = (list: Box): Message => (liesAcross(list) ? say`columns` : say`rows`);

/** Whether two lists have the same rows, or the same columns if both lie across. */
const areLevel = (a: Box, b: Box): boolean =>
  liesAcross(a) || liesAcross(b)
    ? a.rows === b.rows && a.col === b.col && a.cols === b.cols
    : a.row === b.row && a.rows === b.rows;

function shapeFindings(standing: readonly Standing[]): Finding[] {
  const findings: Finding[] = [];
  const by = new Map(standing.map(({ field, box }) => [field.name, box]));
  for (const [index, one] of standing.entries())
    for (const other of standing.slice(index + 1))
      if (overlap(one.box, other.box))
        findings.push({
          weight: "stop",
          sentence: say`${called(one.field.name)} and ${called(other.field.name)} stand at the same cells (${place(one.box)}): give one of them its own.`,
          attach: [other.field.name],
        });
  const uneven = (names: readonly string[], like: string): void => {
    const model = by.get(like);
    if (!model) return;
    const wrong = names.filter((name) => {
      const box = by.get(name);
      return box && !areLevel(box, model);
    });
    if (wrong.length > 0)
      findings.push({
        weight: "stop",
        sentence:
          wrong.length === 1
            ? say`${list(wrong.map(called))} does not cover the same ${linesOf(model)} as ${called(like)} (${place(model)}): name the same of each.`
            : say`${list(wrong.map(called))} do not cover the same ${linesOf(model)} as ${called(like)} (${place(model)}): name the same of each.`,
        attach: wrong,
      });
  };
  uneven(
    LOAD_TABLE.columns.map(({ name }) => name),
    "load_stress",
  );
  uneven([...PICK_COLUMNS, "pick_remark"], "pick_load");
  for (const name of by.keys()) if (name.startsWith("times_")) uneven([name.replace("times", "readings")], name);
  uneven(["tin_mass", "tin_and_wet", "tin_and_dry"], "tin_mass");
  uneven(["apparatus_loading", "apparatus_unloading"], "apparatus_stress");
  for (const { field, box } of standing)
    if (!field.column && box.rows > 1)
      findings.push({
        weight: "look",
        sentence: say`${called(field.name)} covers ${box.rows} rows (${place(box)}), and only the first is read: name one cell.`,
        attach: [field.name],
      });
  return findings;
}

/** "Row 12" or, if the table lies on its side, "Column F". */
const lineOf = (list: Box, index: number): Message => {
  const { row, col } = cellOfList(list, index);
  return liesAcross(list) ? say`Column ${verbatim(columnLetters(col))}` : say`Row ${row + 1}`;
};

/** Finds rows that a person inserted into the load table: they belong to no load. */
function rowFindings(values: NamedValues, numbers: Box | undefined): Finding[] {
  const cells = values.load_number;
  if (!cells || !numbers) return [];
  const seen = new Map<unknown, Message>();
  return asColumn(cells).flatMap(([number], index): Finding[] => {
    const line = lineOf(numbers, index);
    const filled = asColumn(values.load_stress ?? [])[index]?.[0];
    if (number === "" || number === undefined)
      return [
        {
          weight: filled === "" || filled === undefined ? "look" : "stop",
          sentence: say`${line} was put into the load table and has no load number: it is no load, and nothing typed there is used. Take it out, or use a free load at the end of the table.`,
        },
      ];
    const before = seen.get(number);
    seen.set(number, line);
    return before === undefined
      ? []
      : [
          {
            weight: "stop",
            sentence: say`${before} and ${line} of the load table both have the number ${verbatim(String(number))}: they would share one load's readings. Take one out, or use a free load at the end of the table.`,
          },
        ];
  });
}

/**
 * Lists what a reviewer would ask about the rows of the table of picks. Row numbers are those of the sheet if the
 * position of the table is known.
 */
function pickFindings(
  picks: readonly RecordedPick[],
  loads: readonly unknown[] | undefined,
  table: Box | undefined,
): Finding[] {
  return picks.flatMap(({ row, load, of, after, reason, by }): Finding[] => {
    const where = table ? lineOf(table, row - 1) : say`Row ${row} of the table of picks`;
    const found = (weight: Finding["weight"], sentence: Message): Finding => ({ weight, sentence });
    if (load === undefined || of === undefined || after === undefined || after === 0)
      return [
        found(
          "look",
          say`${where} of the picks by hand is unfinished and not used: it needs a load, a pick and a new value.`,
        ),
      ];
    const picked =
      load === OF_CURVE ? say`${pickSaid(of)} of the curve` : say`${pickSaid(of)} of load ${verbatim(String(load))}`;
    if (loads && load !== OF_CURVE && !loads.includes(load))
      return [
        found("stop", say`${where} picks ${picked}, and there is no such load: correct the load, or clear the row.`),
      ];
    const word = String(after).trim().toLowerCase();
    const known: readonly string[] | undefined =
      of === METHOD_PICK ? TIME_METHODS : of === PROCEDURE_PICK ? PROCEDURES : undefined;
    if (word !== AUTOMATIC && (known ? !known.includes(word) : typeof after !== "number"))
      return [
        found(
          "stop",
          known
            ? say`${where} picks "${listWord(String(after))}" as ${picked}, which cannot be used: enter ${listed(known.map(listWord))} or ${listWord(AUTOMATIC)}.`
            : say`${where} picks "${listWord(String(after))}" as ${picked}, which cannot be used: enter a number, or ${listWord(AUTOMATIC)}.`,
        ),
      ];
    const lacks = reason !== undefined ? say`initials` : by === undefined ? say`reason and initials` : say`reason`;
    return reason !== undefined && by !== undefined
      ? []
      : [found("look", say`${where} picks ${picked} without ${lacks}: it is used, and a reviewer will ask.`)];
  });
}

export function checkSheet(names: readonly SheetName[], values: NamedValues): SheetCheck {
  const places = placesByName(names);
  const version = Number(values.template_version?.[0]?.[0]) || undefined;
  if (places.size === 0)
    return {
      isDataSheet: false,
      unbound: 0,
      findings: [
        {
          weight: "stop",
          sentence: say`This is a sheet of another kind: it has none of the data sheet's names. Nothing was read from it. To use it for a test, attach the names to its cells.`,
        },
      ],
    };
  const news = version === undefined ? [] : newsSince(version);
  const lacking = new Set(news.flatMap((one) => one.names).filter((name) => !places.has(lower(name))));
  const standing = [...places].flatMap(([key, called]): Standing[] => {
    const place = called.find((one) => one.place !== "lost")?.place;
    const field = KNOWN.get(key) ?? { name: firstOf(called).name, column: true };
    return place === undefined || place === "lost" ? [] : [{ field, box: place }];
  });
  const unbound = Object.values(values).flat(2).filter(isUnknown).length;
  const record = readRecord(values);
  const boxOfName = (name: string) => standing.find(({ field }) => field.name === name)?.box;
  const faults = record.faults.filter(({ name, row, kind }) => {
    const value = asColumn(values[name] ?? [])[(row ?? 1) - 1]?.[0];
    return !(kind === "error" && isUnknown(value));
  });
  const findings: Finding[] = [
    ...namesFindings(places, lacking, values),
    ...shapeFindings(standing),
    ...rowFindings(values, boxOfName("load_number")),
    ...pickFindings(record.picks, values.load_number?.flat(), boxOfName("pick_load")),
    ...(unbound > 0
      ? [
          {
            weight: "stop" as const,
            sentence:
              unbound === 1
                ? say`1 result shows #NAME?: the add-in's functions were not there when the sheet was opened, or a name is missing. Attach missing names, then enter the formulas again.`
                : say`${unbound} results show #NAME?: the add-in's functions were not there when the sheet was opened, or a name is missing. Attach missing names, then enter the formulas again.`,
          },
        ]
      : []),
    ...faults.map(({ kind, sentence }): Finding => ({
      weight: kind === "error" ? "look" : "stop",
      sentence: say`${sentence}.`,
    })),
    ...news.flatMap((one) =>
      one.sentences.map((sentence): Finding => ({
        weight: "news",
        sentence: say`Since data sheet ${one.version}: ${newsAsMessage(sentence)}`,
      })),
    ),
  ];
  if (version !== undefined && version > TEMPLATE_VERSION)
    findings.push({
      weight: "look",
      sentence: say`The sheet is of version ${version}, and this add-in knows ${TEMPLATE_VERSION}: what is newer is not read. Update the add-in.`,
    });
  return { isDataSheet: true, version, findings, unbound };
}

/**
 * Returns the cells of a selection ("B4:B20") that a name would get, or a sentence that says why the selection is
 * unsuitable.
 */
export function cellsToName(name: string, box: Box, filled: number): { box: Box } | { sentence: Message } {
  const spill = spillOf(name);
  if (spill) return { box: { row: box.row, col: box.col, ...spill } };
  const field = KNOWN.get(lower(name));
  const column = field?.column ?? INTERNAL.has(name);
  if (column && box.cols > 1 && box.rows > 1)
    return {
      sentence: say`${called(name)} is a list: select its cells in one column, or in one row if the table lies on its side.`,
    };
  if (column) return { box };
  // Excel selects a merged cell as a whole; its first cell contains the value.
  if (box.rows * box.cols > 1 && filled > 1)
    return { sentence: say`${called(name)} is one cell, and ${place(box)} holds ${filled} values: select one cell.` };
  return { box: { ...box, rows: 1, cols: 1 } };
}
