/**
 * Writes formulas and constants into cells in Excel; the formats stay. If Excel refuses in the middle of the work, the
 * earlier contents are restored.
 */
import { say, verbatim } from "../../reduction/message";
import { quoted } from "../address";
import { localName } from "../rules/names";
import type { CellContent, CellValue, SheetName } from "../port";
import { referencesOf, withReferences } from "../references";
import { refuseMoved } from "../rules/moved";
import { checkWrite, columnRuns, type Standing } from "../rules/write-check";
import { afterFailure, wantedOf, type Column } from "./fill";
import { constant } from "./grid";
import { sendNoted } from "./journal";
import { asWritten, refuseChanged, take, type Taken } from "./meantime";
import { rangeOf, readBoxes } from "./reading/read";
import { bytesOf, send, type Step } from "./requests";
import { told } from "./sentence";
import { namedBoxes } from "./reading/sheets";
import { askForNames, unprotected } from "./upkeep";

interface Writing {
  readonly sheet: string;
  readonly cells: readonly CellContent[];
  readonly replace: boolean;
  /** The names of the sheet by which the places were found, if they were. */
  readonly names?: readonly SheetName[] | undefined;
}

/** Cells below one another, with their present contents and formats. */
interface Run extends Column {
  readonly cells: readonly CellContent[];
  /** The contents in the form in which they are written back. */
  readonly typed: readonly CellValue[];
  readonly shown: readonly CellValue[];
  readonly formats: readonly string[];
}

interface Asked extends Column {
  readonly cells: readonly CellContent[];
}

/** The ranges of the cells, asked for with the next request: from then on they follow their cells. */
const askFor = (sheet: Excel.Worksheet, cells: readonly CellContent[]): Asked[] =>
  columnRuns(cells).flatMap((run) => {
    const [first] = run;
    if (!first) return [];
    const within = rangeOf(sheet, { row: first.row, col: first.col, rows: run.length, cols: 1 }).load("numberFormat");
    return [{ cells: run, within, before: run.map((): CellValue => "") }];
  });

async function withContents(context: Excel.RequestContext, runs: readonly Asked[]): Promise<Run[]> {
  const contents = await readBoxes(context, wantedOf(runs), "formulas");
  const values = await readBoxes(context, wantedOf(runs), "values");
  return runs.map((run, index) => {
    const before = (contents[index] ?? []).map(([content = ""]) => content);
    return {
      ...run,
      before,
      typed: before.map((content, row) => asWritten(content, values[index]?.[row]?.[0])),
      shown: before.map((_, row) => values[index]?.[row]?.[0] ?? ""),
      formats: run.within.numberFormat.map(([format]) => String(format)),
    };
  });
}

/** Returns a function that tells whether a name of a sheet refers to cells of it, for all names in the formulas. */
async function namesThere(
  context: Excel.RequestContext,
  own: Excel.Worksheet,
  cells: readonly CellContent[],
): Promise<(name: string, sheet?: string) => boolean> {
  const references = cells.flatMap((cell) => ("formula" in cell ? referencesOf(cell.formula) : []));
  const namesOf = (isOwn: boolean): string[] => [
    ...new Set(references.filter(({ sheet }) => (sheet === undefined) === isOwn).map(({ name }) => name)),
  ];
  const others = [...new Set(references.flatMap(({ sheet }) => sheet ?? []))].map((sheet) =>
    context.workbook.worksheets.getItemOrNullObject(sheet).load("name"),
  );
  own.load("name");
  await context.sync();
  const here = await namedBoxes(context, [own], namesOf(true));
  const present = others.filter(({ isNullObject }) => !isNullObject);
  const there = present.length > 0 ? await namedBoxes(context, present, namesOf(false)) : [];
  const known = new Set([
    ...here.flatMap(({ items }) => [...items.keys()].map((name) => `\n${name}`)),
    ...there.flatMap(({ sheet, items }) => [...items.keys()].map((name) => `${sheet.name.toLowerCase()}\n${name}`)),
  ]);
  return (name, sheet = "") => known.has(`${sheet.toLowerCase()}\n${name}`);
}

const contentOf = (cell: CellContent): CellValue =>
  "formula" in cell
    ? withReferences(cell.formula, ({ name, sheet }) =>
        sheet === undefined ? localName(name) : `${quoted(sheet)}!${localName(name)}`,
      )
    : constant(cell.value);

/**
 * Writes the contents of a run, and then its formats again: to a cell without a format, Excel gives the format of the
 * cells in its formula.
 */
const stepOf = (
  { within, before, formats: held }: Run,
  contents: readonly CellValue[],
  formats: readonly string[],
  keep?: (taken: Taken) => void,
): Step => ({
  bytes: 2 * bytesOf(contents),
  act: () => {
    keep?.(take(rangeOf(within, { row: 0, col: 0, rows: before.length, cols: 1 }), before, held));
    within.formulas = contents.map((content) => [content]);
    within.numberFormat = formats.map((format) => [format]);
  },
});

export async function writeCells(
  context: Excel.RequestContext,
  found: Excel.Worksheet,
  writing: Writing,
): Promise<void> {
  const { sheet, cells, replace, names } = writing;
  if (cells.length === 0) return;
  const blank = (): Standing => ({ content: "", shown: "", isText: false });
  // Faults that do not depend on the sheet are found before Excel is asked.
  const asSeen = (cell: CellContent): Standing => ({ ...blank(), shown: cell.shown ?? "" });
  checkWrite({ sheet, cells, replace, hasName: () => true, standing: asSeen });
  const asked = askFor(found, cells);
  const namesNow = names && askForNames(context, found);
  const hasName = await namesThere(context, found, cells);
  if (namesNow) refuseMoved(sheet, names, namesNow());
  const check = {
    sheet,
    cells,
    replace,
    hasName: (of: { name: string; sheet?: string }) => hasName(of.name, of.sheet),
  };
  checkWrite({ ...check, standing: asSeen });
  const runs = await withContents(context, asked);
  const standing = new Map(
    runs.flatMap(({ cells: own, typed, shown, formats }) =>
      own.map((cell, row): [CellContent, Standing] => [
        cell,
        { content: typed[row] ?? "", shown: shown[row] ?? "", isText: formats[row] === "@" },
      ]),
    ),
  );
  checkWrite({ ...check, standing: (cell) => standing.get(cell) ?? blank() });
  const write = async (): Promise<void> => {
    const taken: Taken[] = [];
    try {
      await sendNoted(
        context,
        sheet,
        runs.map((run) =>
          stepOf(
            run,
            run.cells.map(contentOf),
            run.cells.map(({ format }, row) => format ?? run.formats[row] ?? "General"),
            (own) => void taken.push(own),
          ),
        ),
      );
    } catch (error) {
      for (const run of runs) await send(context, [stepOf(run, run.typed, run.formats)]).catch(() => undefined);
      throw told(error, say`write into the sheet "${verbatim(sheet)}"`, await afterFailure(context, runs));
    }
    await refuseChanged(context, sheet, taken);
  };
  await unprotected(context, found, write);
}
