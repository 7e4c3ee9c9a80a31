/** The last step: which sheet, what may be replaced, and the writing itself. */
import { Button, Checkbox, Text } from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import { columnLetters } from "../../../workbook/address";
import { keptAll, MOST_LINES, type FileRecord } from "../../../exchange/logger/file-sheet";
import type { Layout } from "../../../exchange/logger/layout";
import { givenTwice } from "../../../exchange/logger/loads";
import type { Fault } from "../../../exchange/logger/rows";
import { readingsName } from "../../../specification/load-table";
import { columnsFor, inputChanges, type InputChange, type Target } from "../../../exchange/logger/target";
import type { CellValue, WorkbookPort } from "../../../workbook/port";
import { Stopped } from "../../live/in-slices";
import { Notice } from "../../ui/notice";
import { faultWords, type LoadChoices, type Stretch } from "./loads-step";
import { Choice, Progress } from "../../ui/parts";
import type { Source } from "./source-step";
import { useStyles } from "../../ui/styles";
import { sentenceOf } from "../../text/sentence";
import { CATALOGUES, text } from "../../text";
import { writeReadings, type Kept } from "./into-workbook";

const words = text.readings;
/** What is written into cells is English, whatever the pane speaks. */
const cellWords = CATALOGUES.en.readings;

/** Characters that a cell of Excel holds at most. */
const LONGEST_LINE = 32_767;

export interface ReadingsWriteProps {
  readonly port: WorkbookPort;
  readonly source: Source;
  readonly layout: Layout;
  readonly apparatus: string;
  readonly faults: readonly Fault[];
  readonly stretches: readonly Stretch[];
  readonly choices: LoadChoices;
  readonly sheets: readonly string[];
  readonly dataSheet: string;
  readonly target: Target;
  readonly onSheet: (sheet: string) => void;
  /** While the workbook is being written. */
  readonly onBusy: (busy: boolean) => void;
}

type State =
  | { readonly at: "rest" }
  | { readonly at: "busy"; readonly kept?: Kept; readonly of: number }
  | { readonly at: "done" | "stopped" | "error"; readonly sentence: string };

/** The layout as the file sheet tells it. */
function layoutWords(layout: Layout, choices: LoadChoices): [string, string][] {
  const column = (col: number, what: string): string => cellWords.inColumn(columnLetters(col), what);
  const unit = layout.readingUnit === "div" ? cellWords.division : layout.readingUnit;
  return [
    [cellWords.delimiter, cellWords.delimiters[layout.delimiter]],
    [cellWords.decimal, cellWords.decimals[layout.decimal]],
    [cellWords.firstLine, String(layout.firstLine)],
    [cellWords.time, column(layout.time, cellWords.timeForms[layout.timeForm])],
    ...(layout.date === null
      ? []
      : ([[cellWords.date, column(layout.date, cellWords.dateOrders[layout.dateOrder])]] as [string, string][])),
    [cellWords.timesRun, cellWords.timesRuns[layout.timesRun]],
    [cellWords.reading, column(layout.reading, unit)],
    [cellWords.sense, cellWords.senses[layout.sense]],
    [
      cellWords.load,
      layout.load === null
        ? cellWords.noLoad
        : column(layout.load, `${cellWords.loadKinds[layout.loadKind]} ${layout.loadUnit}`.trim()),
    ],
    [cellWords.lever, String(layout.lever)],
    [cellWords.noReading, layout.noReading.map(String).join("; ")],
    [cellWords.way, cellWords.ways[choices.way]],
    [cellWords.rule, cellWords.rules[choices.rule]],
    [cellWords.thinning, cellWords.thinnings[choices.thinning]],
  ];
}

export function ReadingsWrite(props: ReadingsWriteProps) {
  const { port, source, layout, apparatus, faults, stretches, choices, sheets, dataSheet, target, onSheet, onBusy } =
    props;
  const styles = useStyles();
  const [state, setState] = useState<State>({ at: "rest" });
  const [replaced, setReplaced] = useState<Readonly<Record<string, boolean>>>({});
  const [changed, setChanged] = useState<Readonly<Record<string, boolean>>>({});
  const [keep, setKeep] = useState(true);
  const kept = useRef<Kept>();
  const stop = useRef<AbortController>();
  const busy = state.at === "busy";

  // What was said of an earlier writing does not hold for other choices.
  useEffect(() => setState((before) => (before.at === "busy" ? before : { at: "rest" })), [choices, dataSheet]);

  const { lines } = source.file;
  const canKeep = lines.length <= MOST_LINES && lines.every((line) => line.length <= LONGEST_LINE);
  const given = stretches.filter((stretch) => stretch.load !== null);
  const twice = givenTwice(stretches);
  const key = (load: number): string => `${dataSheet}!${load}`;
  const holding = [...new Set(given.map(({ load }) => load!))].filter((load) => target.loads[load - 1]?.held > 0);
  const taken = given.filter(({ load }) => !holding.includes(load!) || replaced[key(load!)]);

  const first = taken.find(({ load }) => load === 1)?.series;
  const seating = first && first.times[0] === 0 && choices.rule !== "first" ? first.readings[0] : undefined;
  const changes = inputChanges(target, layout, seating);
  // What is blank is filled in unless that is declined; what stands there changes only where that is agreed.
  const agreed = ({ name, now }: InputChange): boolean => changed[`${dataSheet}!${name}`] ?? now === "";

  const write = async (): Promise<void> => {
    const controller = (stop.current = new AbortController());
    const record: FileRecord = {
      dataSheet,
      file: source.name,
      sha256: source.sha256,
      hashOf: source.hashOf,
      encoding: source.file.encoding,
      apparatus,
      layout,
      layoutWords: layoutWords(layout, choices),
      loads: taken.map(({ load, fromLine, toLine, series, kept: rows }) => ({
        load: load!,
        fromLine,
        toLine,
        rows: series.times.length,
        kept: rows.length,
      })),
      remarks: faults.map((fault) => [fault.line, faultWords(fault, cellWords)] as const),
      lines: keep && canKeep ? lines.length : 0,
    };
    const columns = columnsFor(
      target,
      taken.map(({ load, series, kept: rows, stress }) => ({
        load: load!,
        times: rows.map((row) => series.times[row]),
        readings: rows.map((row) => series.readings[row]),
        stress,
      })),
      changes.filter(agreed),
    );
    const blank = taken.filter(({ load }) => !replaced[key(load!)]).map(({ load }) => readingsName(load!));
    const job = { dataSheet, columns, blank, record, lines, keptAll: keptAll(lines.length) };
    setState({ at: "busy", of: record.lines });
    onBusy(true);
    try {
      const tell = (now: Kept): void => {
        kept.current = now;
        setState({ at: "busy", kept: now, of: record.lines });
      };
      const { sheet } = await writeReadings(port, job, kept.current, tell, controller.signal);
      kept.current = undefined;
      setReplaced({});
      setState({ at: "done", sentence: words.done(words.doneLoads(taken.length), dataSheet, sheet) });
    } catch (error) {
      const { current } = kept;
      if (error instanceof Stopped)
        setState({ at: "stopped", sentence: words.stoppedKeeping(current?.sheet ?? "", current?.lines ?? 0) });
      else
        setState({
          at: "error",
          sentence: `${sentenceOf(error)}${current ? ` ${words.failedAfter(current.sheet)}` : ""}`,
        });
    } finally {
      onBusy(false);
    }
  };

  const shown = (value: CellValue): string => String(value);
  return (
    <>
      <Choice
        label={words.dataSheet}
        options={sheets.map((sheet) => [sheet, sheet] as const)}
        value={dataSheet}
        onChoose={(sheet) => {
          onSheet(sheet);
        }}
      />
      {!busy && state.at !== "done" && (
        <div>
          {holding.map((load) => (
            <div key={load}>
              <Checkbox
                label={words.holds(load, target.loads[load - 1].held)}
                checked={replaced[key(load)] ?? false}
                onChange={(_, { checked }) => setReplaced((before) => ({ ...before, [key(load)]: checked === true }))}
              />
            </div>
          ))}
          {changes.map((change) => {
            const name = words.inputs[change.name];
            const at = `${dataSheet}!${change.name}`;
            return (
              <div key={change.name}>
                <Checkbox
                  label={
                    change.now === ""
                      ? words.fillIn(name, shown(change.wanted))
                      : words.change(name, shown(change.now), shown(change.wanted))
                  }
                  checked={agreed(change)}
                  onChange={(_, { checked }) => setChanged((before) => ({ ...before, [at]: checked === true }))}
                />
                {!agreed(change) && change.name !== "zero_reading" && (
                  <Notice intent="warning">{words.leftAsIs(name)}</Notice>
                )}
              </div>
            );
          })}
          <Checkbox
            label={words.keep(lines.length)}
            disabled={!canKeep}
            checked={keep && canKeep}
            onChange={(_, { checked }) => setKeep(checked === true)}
          />
        </div>
      )}
      <Text size={200} className={styles.quiet}>
        {canKeep ? words.keepHint(dataSheet) : words.cannotKeep} {words.stressesToo}
      </Text>
      {twice.length > 0 && <Notice intent="error">{words.twice(twice.join(", "))}</Notice>}
      {twice.length === 0 && taken.length === 0 && state.at !== "done" && (
        <Notice intent="info">{words.nothingToWrite}</Notice>
      )}
      {state.at === "busy" ? (
        <Progress
          what={state.kept && state.kept.lines < state.of ? words.keeping : words.writing}
          share={state.of > 0 ? (state.kept?.lines ?? 0) / state.of : 0}
          onStop={() => stop.current?.abort()}
        />
      ) : (
        state.at !== "done" && (
          <div>
            <Button
              appearance="primary"
              disabledFocusable={twice.length > 0 || taken.length === 0}
              onClick={() => void write()}
            >
              {words.write(taken.length)}
            </Button>
          </div>
        )
      )}
      {state.at === "done" && <Notice intent="success">{state.sentence}</Notice>}
      {state.at === "stopped" && <Notice intent="warning">{state.sentence}</Notice>}
      {state.at === "error" && <Notice intent="error">{state.sentence}</Notice>}
    </>
  );
}
