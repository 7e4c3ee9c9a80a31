/**
 * A reviewer's answers to questions that do not pass, on a sheet of their own. Rows are added; no row is overwritten.
 */
import { told } from "../record/told";
import type { Message } from "../reduction/message";
import { firstOf, nth } from "../reduction/numeric/lists";
import type { NamedValues } from "../record/record";
import type { NamedColumns, SheetPlan } from "../workbook/port";
import { SHEET_LANGUAGES, type SheetLanguage } from "../specification/text/language";
import { planIn } from "../specification/text/plan-in-language";
import type { Answered } from ".";
import { tableSheet, type TableColumn } from "../workbook/table-sheet";

/** The answer to a question that says stop or explain: a sentence and initials. */
export interface Acknowledgement {
  /** Name of the data sheet. */
  readonly sheet: string;
  readonly id: string;
  readonly status: string;
  /** The finding of the question at the time of the answer. */
  readonly found: string;
  readonly reason: string;
  readonly by: string;
  /** "2026-03-01 14:05" */
  readonly when: string;
}

const ROWS = 200;

const COLUMNS: readonly TableColumn[] = [
  { name: "answer_sheet", heading: "Data sheet", width: 22, kind: "input", format: "@" },
  { name: "answer_check", heading: "Question", width: 9, kind: "input", format: "@" },
  { name: "answer_status", heading: "To do", width: 9, kind: "input", format: "@" },
  { name: "answer_found", heading: "What it said", width: 60, kind: "input", format: "@" },
  { name: "answer_reason", heading: "Answer", width: 60, kind: "input", format: "@" },
  { name: "answer_by", heading: "By", width: 8, kind: "input", format: "@" },
  { name: "answer_when", heading: "When", width: 17, kind: "input", format: "@" },
];

export const ANSWER_NAMES: readonly string[] = COLUMNS.map(({ name }) => name);

/** A sheet with this name is a sheet of answers. */
export const ANSWERS_SHEET_NAME = "answer_check";

/** The plan of a blank sheet of answers in the language of the data sheet that is answered first. */
export const answersSheet = (language: SheetLanguage = "en"): SheetPlan =>
  planIn(
    language,
    tableSheet({
      name: "Answers to checks",
      title: "Answers to the reviewer's questions",
      notes: ["Each row answers one question of one data sheet. Of two for the same question, the lower counts."],
      columns: COLUMNS,
      rows: [],
      length: ROWS,
      isProtected: true,
    }),
  );

/** A finding or a status as an answer keeps it: in the language of its data sheet. */
export const asKept = (language: SheetLanguage, message: Message): string => told(message, language);

const textAt = (values: NamedValues, name: string, row: number): string =>
  String(values[name]?.[row]?.[0] ?? "").trim();

export const readAnswers = (values: NamedValues): Acknowledgement[] =>
  (values.answer_check ?? []).flatMap((_, row) => {
    const of = (name: string) => textAt(values, `answer_${name}`, row);
    const [id, sheet] = [of("check"), of("sheet")];
    return id && sheet
      ? [
          {
            sheet,
            id,
            status: of("status"),
            found: of("found"),
            reason: of("reason"),
            by: of("by"),
            when: of("when"),
          },
        ]
      : [];
  });

/** The columns of a table with new rows added after its last filled row; undefined if they do not fit. */
export function appended(
  values: NamedValues,
  names: readonly string[],
  rows: readonly (readonly (string | number)[])[],
): NamedColumns | undefined {
  const length = values[firstOf(names)]?.length ?? 0;
  let last = length;
  while (last > 0 && names.every((name) => String(values[name]?.[last - 1]?.[0] ?? "") === "")) last--;
  if (last + rows.length > length) return undefined;
  return Object.fromEntries(
    names.map((name, col) => [name, [...new Array<null>(last).fill(null), ...rows.map((row) => nth(row, col))]]),
  );
}

export const answerRow = (one: Acknowledgement): string[] => [
  one.sheet,
  one.id,
  one.status,
  one.found,
  one.reason,
  one.by,
  one.when,
];

/** The latest answer to a question; `stale` if the finding, in whatever language it was kept, has changed since. */
export function answerTo(
  answers: readonly Acknowledgement[],
  sheet: string,
  { check, answer }: Answered,
): { readonly given: Acknowledgement; readonly stale: boolean } | undefined {
  const given = [...answers].reverse().find((one) => one.sheet === sheet && one.id === check.id);
  return given && { given, stale: !SHEET_LANGUAGES.some((one) => asKept(one, answer.sentence) === given.found) };
}

/** Whether a question asks for an answer, and nobody has answered what it finds now. */
export function isOpen(answers: readonly Acknowledgement[], sheet: string, one: Answered): boolean {
  const { status } = one.answer;
  return (status === "stop" || status === "explain") && answerTo(answers, sheet, one)?.stale !== false;
}
