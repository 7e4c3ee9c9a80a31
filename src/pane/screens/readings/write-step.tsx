/** The last step: it names the sheet, asks what may be replaced, and writes. */
import { Button, Checkbox, Field, Radio, RadioGroup, Text } from "@fluentui/react-components";
import { useEffect, useReducer, useRef, useState } from "react";
import { fileSheetName, hashOf, keptAll, MOST_LINES, type FileRecord } from "../../../exchange/logger/file-sheet";
import type { Layout } from "../../../exchange/logger/layout";
import { startLines } from "../../../exchange/logger/again";
import type { LoggerRows } from "../../../exchange/logger/rows";
import { misreading, type Target } from "../../../exchange/logger/target";
import { inRuns } from "../../../reduction/message";
import { nth } from "../../../reduction/numeric/lists";
import type { CellValue, WorkbookPort } from "../../../workbook/port";
import { Stopped } from "../../../workbook/in-slices";
import { contentOnSheet, languageOfLabels } from "../../live/sheet-language";
import { CATALOGUES, text } from "../../text";
import { inWords } from "../../text/messages";
import { contentText, readingText } from "../../text/number";
import { sentenceOf } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { Progress } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { NotKept, SheetChanged, writeReadings, type Job, type Kept } from "./into-workbook";
import { layoutWords } from "./layout-words";
import { faultWords } from "./faults";
import type { LoadChoices, Stretch } from "./stretches";
import type { Source } from "./source-step";
import {
  answered,
  columnsOf,
  loadsOfFile,
  NO_ANSWERS,
  writingOf,
  type AnswerAction,
  type Answers,
  type Input,
  type Writing,
} from "./writing";

const words = text.readings;

/** The largest number of characters in a cell of Excel. */
const LONGEST_LINE = 32_767;

export interface ReadingsWriteProps {
  readonly port: WorkbookPort;
  readonly source: Source;
  readonly layout: Layout;
  readonly apparatus: string;
  readonly rows: LoggerRows;
  readonly stretches: readonly Stretch[];
  readonly choices: LoadChoices;
  readonly dataSheet: string;
  readonly target: Target;
  /** The loads whose times stand in cells that other loads share: a file cannot be written to them. */
  readonly sharing: readonly number[];
  /** Called with true when the writing begins and with false when it ends. */
  readonly onBusy: (busy: boolean) => void;
  /** Called with the reason if the writing ended early. The reason must be shown even if the data sheet is gone. */
  readonly onEnded: (ended: Ended | undefined) => void;
}

/** The sentence about a writing that ended early. */
export interface Ended {
  readonly intent: "warning" | "error";
  readonly sentence: string;
}

/** The reason why the writing ended, in the language of the pane. */
function endedBy(error: unknown, kept: Kept | undefined): Ended {
  if (error instanceof Stopped)
    return { intent: "warning", sentence: words.stoppedKeeping(kept?.sheet ?? "", kept?.lines ?? 0) };
  const failed = (sentence: string): Ended => ({ intent: "error", sentence });
  if (error instanceof NotKept) return failed(words.notKept(error.sheet, error.line));
  if (error instanceof SheetChanged) {
    const said = error.now === undefined ? words.sheetGone(error.sheet) : words.sheetRenamed(error.sheet, error.now);
    const isOfFile = kept === undefined || kept.sheet === error.sheet;
    return failed(isOfFile ? said : `${said} ${words.linesStand(kept.sheet, kept.lines)}`);
  }
  return failed(`${sentenceOf(error)}${kept ? ` ${words.failedAfter(kept.sheet)}` : ""}`);
}

type State =
  | { readonly at: "rest" }
  | { readonly at: "busy"; readonly kept?: Kept; readonly of: number }
  | { readonly at: "done"; readonly sentence: string };

/**
 * The sentence in the test remarks about a cell that did not fit the file, and what the person decided, in the language of the
 * sheet.
 */
function remarkOn(file: string): (input: Input) => string {
  const language = languageOfLabels();
  const ofSheet = CATALOGUES[language].readings;
  const inCell = (content: CellValue): string =>
    typeof content === "number" ? readingText(content, language) : String(contentOnSheet(content));
  return ({ name, now, wanted, answer }) => {
    const [called, was, from] = [ofSheet.inputs[name], inCell(now), file || ofSheet.pasted];
    if (wanted === "") return (answer === "change" ? ofSheet.inputCleared : ofSheet.inputLeft)(called, was, from);
    return (answer === "change" ? ofSheet.inputChanged : ofSheet.inputKept)(called, was, inCell(wanted), from);
  };
}

/** Collects what is written to the data sheet and to the sheet that keeps the file. */
function jobOf(props: ReadingsWriteProps, writing: Writing, answers: Answers, keeps: boolean): Job {
  const { source, layout, apparatus, rows, choices, dataSheet, target } = props;
  const { way, rule, thinning } = choices;
  const loads = loadsOfFile(writing);
  const to = rows.lines.at(-1) ?? 0;
  const { lines, encoding } = source.file;
  const language = languageOfLabels();
  const record: FileRecord = {
    dataSheet,
    file: source.name,
    sha256: source.sha256,
    language,
    hashOf: hashOf(source.bytes, source.name !== "", language),
    encoding,
    apparatus,
    layout,
    layoutWords: layoutWords(layout, choices, language),
    loads,
    remarks: rows.faults.map((fault) => [fault.line, faultWords(fault, CATALOGUES[language].readings)] as const),
    lines: keeps ? lines.length : 0,
    read: {
      choices: { way, rule, thinning },
      loads: loads.map(({ load, fromLine, toLine }) => ({ load, fromLine, toLine })),
      starts: startLines(rows, layout, way, to),
      to,
    },
  };
  return {
    dataSheet,
    ...columnsOf(writing, target, answers, remarkOn(source.name)),
    record,
    lines,
    keptAll: keptAll(lines.length, language),
  };
}

/** The writing itself: its state, what is kept so far, and how it is stopped. */
function useWriting(props: ReadingsWriteProps, taken: number, forget: () => void) {
  const { port, choices, dataSheet, onBusy, onEnded } = props;
  const [state, setState] = useState<State>({ at: "rest" });
  const kept = useRef<Kept>();
  const stop = useRef<AbortController>();

  // The message about an earlier writing is removed when the choices change.
  useEffect(() => setState((before) => (before.at === "busy" ? before : { at: "rest" })), [choices, dataSheet]);

  const write = async (job: Job): Promise<void> => {
    const controller = (stop.current = new AbortController());
    const of = job.record.lines;
    setState({ at: "busy", of });
    onEnded(undefined);
    onBusy(true);
    try {
      const tell = (now: Kept): void => {
        kept.current = now;
        setState({ at: "busy", kept: now, of });
      };
      const { sheet } = await writeReadings(port, job, kept.current, tell, controller.signal);
      kept.current = undefined;
      forget();
      const told = of > 0 ? words.done : words.doneWithoutLines;
      setState({ at: "done", sentence: told(words.doneLoads(taken), dataSheet, sheet) });
    } catch (error) {
      onEnded(endedBy(error, kept.current));
      setState({ at: "rest" });
    } finally {
      onBusy(false);
    }
  };
  return { state, write, stop: () => stop.current?.abort() };
}

export function ReadingsWrite(props: ReadingsWriteProps) {
  const { source, dataSheet, target, sharing } = props;
  const styles = useStyles();
  const [answers, answer] = useReducer(answered, NO_ANSWERS);
  const [keep, setKeep] = useState(true);
  // The answers belong to one sheet.
  useEffect(() => answer({ do: "forget" }), [dataSheet]);

  const { lines } = source.file;
  const canKeep = lines.length <= MOST_LINES && lines.every((line) => line.length <= LONGEST_LINE);
  const writing = writingOf(props, answers);
  const { taken, inputs } = writing;
  const shared = taken.flatMap(({ load }) => (load !== null && sharing.includes(load) ? [load] : []));
  const isHindered = writing.twice.length + shared.length > 0 || taken.length === 0 || undecided(writing).length > 0;
  const { state, write, stop } = useWriting(props, taken.length, () => answer({ do: "forget" }));

  return (
    <>
      {state.at === "rest" && (
        <div>
          <Replacing target={target} writing={writing} answers={answers} onAnswer={answer} />
          {inputs.map((input) => (
            <InputQuestion
              key={input.name}
              input={input}
              lengthUnit={target.lengthUnit}
              staying={writing.staying}
              onAnswer={answer}
            />
          ))}
          <BlankCellsQuestion writing={writing} answers={answers} onAnswer={answer} />
          <Checkbox
            label={words.keep(lines.length)}
            disabled={!canKeep}
            checked={keep && canKeep}
            onChange={(_, { checked }) => setKeep(checked === true)}
          />
        </div>
      )}
      <Text size={200} className={styles.quiet}>
        {!canKeep
          ? words.cannotKeep(MOST_LINES)
          : (keep ? words.keepHint : words.doesNotKeep)(fileSheetName(dataSheet, languageOfLabels()))}{" "}
        {words.stressesToo}
      </Text>
      <Hindrances writing={writing} shared={shared} isDone={state.at === "done"} />
      {state.at === "busy" && (
        <Progress
          what={state.kept && state.kept.lines < state.of ? words.keeping : words.writing}
          share={state.of > 0 ? (state.kept?.lines ?? 0) / state.of : 0}
          onStop={stop}
        />
      )}
      {state.at === "rest" && (
        <div>
          <Button
            appearance="primary"
            disabledFocusable={isHindered}
            onClick={() => void write(jobOf(props, writing, answers, keep && canKeep))}
          >
            {words.write(taken.length, dataSheet)}
          </Button>
        </div>
      )}
      {state.at === "done" && <Notice intent="success">{state.sentence}</Notice>}
    </>
  );
}

/** The cells of the sheet that do not suit the file and are not decided. */
const undecided = ({ inputs }: Writing): Input[] => inputs.filter(({ answer }) => answer === undefined);

interface HindrancesProps {
  readonly writing: Writing;
  readonly shared: readonly number[];
  readonly isDone: boolean;
}

/** What stands against writing: a load given twice, times shared with other loads, nothing to write, cells that are not decided. */
function Hindrances({ writing, shared, isDone }: HindrancesProps) {
  const { taken, twice } = writing;
  const open = undecided(writing);
  return (
    <>
      {twice.length > 0 && <Notice intent="error">{words.twice(twice.join(", "))}</Notice>}
      {shared.length > 0 && <Notice intent="error">{words.timesShared(shared)}</Notice>}
      {twice.length === 0 && taken.length === 0 && !isDone && <Notice intent="info">{words.nothingToWrite}</Notice>}
      {open.length > 0 && taken.length > 0 && !isDone && (
        <Notice intent="warning">{words.undecided(open.map(({ name }) => words.inputs[name]).join(", "))}</Notice>
      )}
    </>
  );
}

interface ReplacingProps {
  readonly target: Target;
  readonly writing: Writing;
  readonly answers: Answers;
  readonly onAnswer: (action: AnswerAction) => void;
}

/** Asks which loads may lose the readings that they have. */
function Replacing({ target, writing: { holding }, answers, onAnswer }: ReplacingProps) {
  return holding.map((load) => (
    <div key={load}>
      <Checkbox
        label={words.holds(load, nth(target.loads, load - 1).held)}
        checked={answers.replace.includes(load)}
        onChange={(_, { checked }) => onAnswer({ do: "replace", load, agreed: checked === true })}
      />
    </div>
  ));
}

/** Asks whether the dates and temperatures of the file are written into blank cells; filled cells stay as they are. */
function BlankCellsQuestion({ writing: { blankCells }, answers, onAnswer }: Omit<ReplacingProps, "target">) {
  const { dates, temperatures } = blankCells;
  if (dates + temperatures === 0) return null;
  return (
    <div>
      <Checkbox
        label={words.fillBlank(dates, temperatures)}
        checked={answers.fillsBlank !== false}
        onChange={(_, { checked }) => onAnswer({ do: "fill blank", agreed: checked === true })}
      />
    </div>
  );
}

const shown = (content: CellValue): string => contentText(contentOnSheet(content));

/** What goes wrong if the cell is kept, behind a colon; blank where that is not known. */
function misread(input: Input): string {
  const wrong = misreading(input);
  if (!wrong) return "";
  if (wrong.what === "turned round") return `: ${words.turnedRound}`;
  if (wrong.what === "shifted") return `: ${words.shifted(shown(Number(wrong.by.toPrecision(6))))}`;
  const times = shown(Number(wrong.times.toPrecision(3)));
  return `: ${wrong.what === "too large" ? words.tooLarge(times) : words.tooSmall(times)}`;
}

interface InputQuestionProps {
  readonly input: Input;
  /** The length unit of the sheet. */
  readonly lengthUnit: string;
  readonly staying: readonly number[];
  readonly onAnswer: (action: AnswerAction) => void;
}

/**
 * A cell that the file needs. A blank cell is filled; if the cell contains another value, the person decides which
 * value counts.
 */
function InputQuestion({ input, lengthUnit, staying, onAnswer }: InputQuestionProps) {
  const { name, now, wanted, answer } = input;
  const called = words.inputs[name];
  if (now === "")
    return (
      <div>
        <Checkbox
          label={words.fillIn(called, shown(wanted))}
          checked={answer === "change"}
          onChange={(_, { checked }) => onAnswer({ do: "input", name, answer: checked === true ? "change" : "keep" })}
        />
      </div>
    );
  return (
    <Field
      label={
        wanted === ""
          ? words.longDivision(called, shown(now), lengthUnit)
          : words.doesNotSuit(called, shown(now), shown(wanted))
      }
      hint={staying.length > 0 ? words.staying(staying.length, inWords(inRuns(staying))) : undefined}
      validationState={answer === undefined ? "warning" : "none"}
      validationMessage={answer === undefined ? words.chooseOne : undefined}
    >
      <RadioGroup
        value={answer ?? ""}
        onChange={(_, { value }) => onAnswer({ do: "input", name, answer: value === "change" ? "change" : "keep" })}
      >
        <Radio value="change" label={wanted === "" ? words.clear(called) : words.changeTo(called, shown(wanted))} />
        <Radio value="keep" label={`${words.keepAs(called, shown(now))}${misread(input)}`} />
      </RadioGroup>
    </Field>
  );
}
