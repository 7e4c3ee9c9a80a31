/**
 * Decides what the last step would write after the answers of the person so far. This module uses neither page nor
 * workbook.
 */
import type { FileRecord } from "../../../exchange/logger/file-sheet";
import { blankCells, type BlankCells } from "../../../exchange/logger/dates-temperatures";
import type { Layout } from "../../../exchange/logger/layout";
import { givenTwice } from "../../../exchange/logger/loads";
import { columnsFor, inputChanges, type InputChange, type Target } from "../../../exchange/logger/target";
import { nth } from "../../../reduction/numeric/lists";
import { readingsName } from "../../../specification/readings";
import type { NamedColumns } from "../../../workbook/port";
import type { LoadChoices, Stretch } from "./stretches";

/** The answer of the person about a cell that does not fit the file. */
export type InputAnswer = "change" | "keep";

/** The answers about one data sheet: loads whose readings may be replaced, and cells that do not fit the file. */
export interface Answers {
  readonly replace: readonly number[];
  readonly inputs: Readonly<Partial<Record<InputChange["name"], InputAnswer>>>;
  /** False if the person does not want the dates and temperatures of the file in blank cells. */
  readonly fillsBlank?: boolean;
}
export const NO_ANSWERS: Answers = { replace: [], inputs: {} };

export type AnswerAction =
  | { readonly do: "replace"; readonly load: number; readonly agreed: boolean }
  | { readonly do: "input"; readonly name: InputChange["name"]; readonly answer: InputAnswer }
  | { readonly do: "fill blank"; readonly agreed: boolean }
  | { readonly do: "forget" };

/**
 * The answers after an action. "forget" drops all of them, for example when another sheet is chosen or the writing is
 * done.
 */
export function answered(answers: Answers, action: AnswerAction): Answers {
  if (action.do === "forget") return NO_ANSWERS;
  if (action.do === "input") return { ...answers, inputs: { ...answers.inputs, [action.name]: action.answer } };
  if (action.do === "fill blank") return { ...answers, fillsBlank: action.agreed };
  const others = answers.replace.filter((load) => load !== action.load);
  return { ...answers, replace: action.agreed ? [...others, action.load] : others };
}

export interface Input extends InputChange {
  /** Undefined if the cell contains another value and the person has not decided which value counts. */
  readonly answer: InputAnswer | undefined;
}

export interface Writing {
  /** Loads of the file whose rows on the sheet already contain readings. */
  readonly holding: readonly number[];
  /** The stretches that would be written. */
  readonly taken: readonly Stretch[];
  /** Loads that were assigned to two stretches. */
  readonly twice: readonly number[];
  readonly inputs: readonly Input[];
  /** The dates and temperatures of the file for blank cells of the sheet. */
  readonly blankCells: BlankCells;
  /** Loads whose readings stay on the sheet; a change of the inputs would change their results too. */
  readonly staying: readonly number[];
}

/**
 * Calculates what would be written. A blank cell is filled unless the person refuses; a cell with another value needs
 * an answer.
 */
export function writingOf(
  {
    target,
    layout,
    stretches,
    choices,
  }: { target: Target; layout: Layout; stretches: readonly Stretch[]; choices: LoadChoices },
  answers: Answers,
): Writing {
  const given = stretches.flatMap((stretch) => (stretch.load === null ? [] : [{ ...stretch, load: stretch.load }]));
  const holds = (load: number): boolean => (target.loads[load - 1]?.held ?? 0) > 0;
  const holding = [...new Set(given.map(({ load }) => load))].filter(holds);
  const taken = given.filter(({ load }) => !holding.includes(load) || answers.replace.includes(load));
  const first = taken.find(({ load }) => load === 1)?.series;
  const seating = first && first.times[0] === 0 && choices.rule !== "first" ? first.readings[0] : undefined;
  const written = new Set(taken.map(({ load }) => load));
  return {
    holding,
    taken,
    twice: givenTwice(stretches),
    inputs: inputChanges(target, layout, seating).map((change) => ({
      ...change,
      answer: answers.inputs[change.name] ?? (change.now === "" ? "change" : undefined),
    })),
    blankCells: blankCells(
      target,
      taken.map(({ load, conditions }) => ({ ...conditions, load })),
    ),
    staying: target.loads.flatMap(({ held }, index) => (held > 0 && !written.has(index + 1) ? [index + 1] : [])),
  };
}

/**
 * The columns to write, and the names whose cells must be blank. `remark` makes a sentence about the decision on an
 * input.
 */
export function columnsOf(
  { taken, inputs, blankCells: found }: Writing,
  target: Target,
  answers: Answers,
  remark: (input: Input) => string,
): { readonly columns: NamedColumns; readonly blank: readonly string[] } {
  const decided = inputs.filter(({ now }) => now !== "").map(remark);
  const loads = taken.map(({ load, series, kept, stress }) => ({
    load: load!,
    times: kept.map((row) => nth(series.times, row)),
    readings: kept.map((row) => nth(series.readings, row)),
    stress,
  }));
  const changes = inputs.filter(({ answer }) => answer === "change");
  const columns = {
    ...columnsFor(target, loads, changes),
    ...(answers.fillsBlank === false ? {} : found.columns),
  };
  const { remarks } = target;
  const said = remarks !== undefined && decided.length > 0;
  return {
    columns: said ? { ...columns, test_remarks: [[remarks, ...decided].filter(Boolean).join(" ")] } : columns,
    blank: loads.filter(({ load }) => !answers.replace.includes(load)).map(({ load }) => readingsName(load)),
  };
}

/** The loads in the form in which the file sheet lists them. */
export const loadsOfFile = ({ taken }: Writing): FileRecord["loads"] =>
  taken.map(({ load, fromLine, toLine, series, kept }) => ({
    load: load!,
    fromLine,
    toLine,
    rows: series.times.length,
    kept: kept.length,
  }));
