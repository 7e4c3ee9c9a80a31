/** Shows the first lines of the file: the text of the lines, and how they are read. */
import { Text } from "@fluentui/react-components";
import type { Layout } from "../../../exchange/logger/layout";
import type { LayoutDraft } from "../../../exchange/logger/offer";
import { readRows, type LoggerRows } from "../../../exchange/logger/rows";
import { cellsOf } from "../../../exchange/logger/table";
import { nth } from "../../../reduction/numeric/lists";
import { figure } from "../../../reduction/outcome";
import { columnLetters } from "../../../workbook/address";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { readingText } from "../../text/number";
import { Notice } from "../../ui/notice";
import { useStyles } from "../../ui/styles";
import type { Source } from "./source-step";

const words = text.readings;

/** The number of lines shown above the first line of readings, and from there on. */
const ABOVE = 3;
const BELOW = 5;
/** The number of lines that are read as a trial while the person chooses. */
const TRIED = 50;

/** Reads the first lines in the same way as all lines later. */
export function tryOut(source: Source, layout: Layout): LoggerRows {
  const lines = source.file.lines.slice(0, layout.firstLine - 1 + TRIED);
  const steps = readRows({ ...source.file, lines, endsWhole: true }, layout);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** More minutes than a logger counts: such a number is a date, counted from 1970. */
const DATED = 10_000_000;

/** Shows how the first and the last of the trial lines are read. */
export function Tried({ rows, layout }: { rows: LoggerRows; layout: Layout }) {
  const styles = useStyles();
  const [fault] = rows.faults;
  if (rows.lines.length === 0)
    return (
      <Notice intent="warning">
        {words.noneRead} {fault && words.fault(fault.line, words.faults[fault.kind])}
      </Notice>
    );
  const said = (index: number): string => {
    const minutes = nth(rows.times, index);
    const time =
      minutes > DATED
        ? new Date(Math.round(minutes * 60_000))
            .toISOString()
            .replace("T", " ")
            .slice(0, 23)
            .replace(/\.000$/, "")
        : words.readAsTime(inWords(figure(minutes)));
    const unit = layout.readingUnit === "div" ? words.division : layout.readingUnit;
    const load = nth(rows.loads, index);
    return words.readAs(
      nth(rows.lines, index),
      [
        time,
        words.readAsReading(readingText(nth(rows.readings, index)), unit),
        ...(Number.isNaN(load) ? [] : [words.readAsLoad(readingText(load), layout.loadUnit)]),
      ].join("; "),
    );
  };
  const last = rows.lines.length - 1;
  return (
    <Text size={200} className={styles.quiet}>
      {said(0)}
      {last > 0 && (
        <>
          <br />
          {said(last)}
        </>
      )}
    </Text>
  );
}

interface PreviewProps {
  readonly lines: readonly string[];
  readonly draft: LayoutDraft;
  readonly columns: readonly string[];
}

export function Preview({ lines, draft, columns }: PreviewProps) {
  const styles = useStyles();
  const first = draft.firstLine ?? 1;
  const from = Math.max(0, first - 1 - ABOVE);
  const rows = cellsOf(lines.slice(from, first - 1 + BELOW), draft.delimiter ?? ",");
  const width = Math.max(columns.length, 1, ...rows.map((row) => row.length));
  const roleOf = (col: number): string =>
    (["time", "date", "reading", "load"] as const)
      .filter((key) => draft[key] === col)
      .map((key) => words.roles[key])
      .join(", ");
  const all = Array.from({ length: width }, (_, col) => col);
  return (
    <div className={styles.scroll} role="region" aria-label={words.preview} tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{words.line}</th>
            {all.map((col) => (
              <th key={col} scope="col" className={roleOf(col) && "chosen"}>
                {columnLetters(col)}
                {roleOf(col) && `: ${roleOf(col)}`}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index} className={from + index + 1 < first ? "above" : undefined}>
              <th scope="row">{from + index + 1}</th>
              {all.map((col) => (
                <td key={col} className={roleOf(col) && "chosen"}>
                  {(row[col] ?? "").slice(0, 40)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
