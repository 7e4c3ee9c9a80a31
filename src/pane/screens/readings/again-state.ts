/** What a file that was read before has to add, as data: this module uses neither page nor workbook. */
import { compareLines, continued, type Continued, type ReadBefore } from "../../../exchange/logger/again";
import type { Layout } from "../../../exchange/logger/layout";
import type { Fault, LoggerRows } from "../../../exchange/logger/rows";
import type { TextFile } from "../../../exchange/logger/decode";
import { inputChanges, type InputChange, type Target } from "../../../exchange/logger/target";
import { timesName } from "../../../specification/readings";
import type { NamedValues } from "../../../record/record";

/** A sheet that keeps the lines of a file, with the record of how it was read. */
export interface KeptFile {
  readonly sheet: string;
  readonly file: string;
  /** The data sheet to which its readings went. */
  readonly dataSheet: string;
  readonly lines: number;
  readonly layout: Layout;
  readonly read: ReadBefore;
}

/** The sheet that keeps an earlier reading of a file of this name for a data sheet; the latest one of several. */
export const keptFor = (kept: readonly KeptFile[], file: string, dataSheet: string): KeptFile | undefined =>
  file === "" ? undefined : kept.filter((one) => one.file === file && one.dataSheet === dataSheet).at(-1);

/**
 * What the person has said: whether the file is finished, whether a cut line is written again, and whether readings are
 * written although the dial factor of the sheet is not that of the file.
 */
export interface AgainAnswers {
  readonly isFinished: boolean;
  readonly takesFactor?: boolean;
  readonly recut?: "write" | "leave";
}

export type AgainAction =
  | { readonly do: "finished"; readonly is: boolean }
  | { readonly do: "factor"; readonly takes: boolean }
  | { readonly do: "recut"; readonly answer: "write" | "leave" };

export function againAnswered(answers: AgainAnswers, action: AgainAction): AgainAnswers {
  if (action.do === "factor") return { ...answers, takesFactor: action.takes };
  return action.do === "finished" ? { ...answers, isFinished: action.is } : { ...answers, recut: action.answer };
}

/**
 * The lines of a file that can be read now: a last line without an end waits, unless the file is finished. If that line was kept, it stays
 * as it was kept: a file whose last line never had an end is no shorter than what was kept of it.
 */
export function readable(file: TextFile, isFinished: boolean, keptLines: readonly string[]): TextFile {
  if (isFinished || file.endsWhole) return file;
  const last = file.lines.length - 1;
  const ofLast = keptLines.slice(last, last + 1).filter((kept) => file.lines[last]?.startsWith(kept));
  return { ...file, lines: [...file.lines.slice(0, last), ...ofLast], endsWhole: true };
}

export type AgainFound =
  | { readonly is: "same" }
  | { readonly is: "changed"; readonly lines: readonly number[]; readonly missing: number }
  | { readonly is: "other loads"; readonly line: number }
  | {
      readonly is: "grown";
      /** The line whose reading on the sheet came from a line that was cut short. */
      readonly recut?: number;
      /** The dial factor of the sheet, if it is not that of the file. */
      readonly factor?: InputChange;
      readonly value: Continued;
      /** The lines that are then kept. */
      readonly keep: readonly string[];
      readonly newLines: number;
      readonly faults: readonly Fault[];
    };

export interface AgainSources {
  readonly keptLines: readonly string[];
  readonly file: TextFile;
  readonly rows: LoggerRows;
  readonly kept: KeptFile;
  readonly target: Target;
  readonly values: NamedValues;
}

const timesOf =
  (values: NamedValues) =>
  (load: number): number[] =>
    (values[timesName(load)] ?? []).flatMap(([cell]) => (typeof cell === "number" ? [cell] : []));

/** What the file has to add; `rows` are those of the lines that can be read. */
export function againFound(sources: AgainSources, answers: AgainAnswers): AgainFound {
  const { keptLines, file, rows, kept, target, values } = sources;
  const compared = compareLines(keptLines, file.lines);
  if (compared.is === "changed") return compared;
  const isRead = compared.is === "grown" && compared.recut !== undefined && compared.recut <= kept.read.to;
  const recut = isRead ? compared.recut : undefined;
  const found = continued({
    ...{ rows, layout: kept.layout, before: kept.read, target, timesOnSheet: timesOf(values) },
    ...(recut !== undefined && answers.recut === "write" ? { recut } : {}),
    isFinished: answers.isFinished,
  });
  if (!found.ok) return { is: "other loads", line: found.line };
  if (compared.is === "same" && found.value.additions.length === 0) return compared;
  const { to } = found.value.read;
  const factor = inputChanges(target, kept.layout).find(({ name, now }) => name === "dial_factor" && now !== "");
  return {
    is: "grown",
    ...(recut === undefined ? {} : { recut }),
    ...(factor && { factor }),
    value: found.value,
    keep: file.lines.slice(0, answers.isFinished ? undefined : Math.max(to, keptLines.length)),
    newLines: file.lines.length - keptLines.length,
    faults: rows.faults.filter(({ line }) => line > kept.read.to),
  };
}
