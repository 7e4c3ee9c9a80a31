/** Summarizes the project: inserts a summary, updates it, adds specimens from files, inserts the charts. */
import { Button, Field, Radio, RadioGroup, Text } from "@fluentui/react-components";
import { useEffect, useReducer, useRef, type ReactNode } from "react";
import type { WorkbookPort } from "../../../workbook/port";
import { Stopped } from "../../../workbook/in-slices";
import { useHold, useIsShown } from "../../live/use-test";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import { FileButton } from "../../ui/file-button";
import { Notice } from "../../ui/notice";
import { Progress, Step, ScreenTitle } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { SheetLanguageField, useSheetLanguage } from "../sheet-language-field";
import { ManyPart } from "../many/many-part";
import { addFiles, bringUpToDate, insertCharts, insertSummary, sheetsOf, type Course, type Done } from "./project";
import { AT_REST, summarised } from "./summary-state";

const words = text.summary;

/** The state of the screen, and how a piece of work is carried out with progress and stop. */
function useSummary(port: WorkbookPort) {
  const [state, act] = useReducer(summarised, AT_REST);
  const stop = useRef<AbortController>();
  const isShown = useIsShown();
  const isBusy = state.course !== undefined;
  useHold(isBusy);

  useEffect(() => {
    if (!isShown) return;
    let isCurrent = true;
    sheetsOf(port).then(
      (sheets) => isCurrent && act({ do: "know", sheets }),
      () => undefined,
    );
    return () => void (isCurrent = false);
  }, [port, isShown]);

  const carryOut = async (what: string, work: (course: Course) => Promise<Done>): Promise<void> => {
    if (isBusy) return;
    stop.current = new AbortController();
    act({ do: "begin", what });
    try {
      const tell = (share: number): void => act({ do: "go on", share });
      const done = await work({ tell, signal: stop.current.signal, now: new Date() });
      act({ do: "end", done, sheets: await sheetsOf(port) });
    } catch (error) {
      act({ do: "fail", sentence: error instanceof Stopped ? words.stopped : sentenceOf(error) });
    }
  };
  const lookAgain = (): void =>
    void sheetsOf(port).then(
      (sheets) => act({ do: "know", sheets }),
      () => undefined,
    );
  return { state, act, isBusy, carryOut, lookAgain, stop: () => stop.current?.abort() };
}

export function SummaryScreen({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const language = useSheetLanguage();
  const { state, act, isBusy, carryOut, lookAgain, stop } = useSummary(port);
  return (
    <div className={styles.column}>
      <ScreenTitle>{words.heading}</ScreenTitle>
      <Text block>{words.purpose}</Text>
      <Field label={words.units}>
        <RadioGroup
          value={state.system}
          onChange={(_, { value }) => act({ do: "choose", system: value === "US" ? "US" : "SI" })}
        >
          <Radio value="SI" label={words.SI} />
          <Radio value="US" label={words.US} />
        </RadioGroup>
      </Field>
      <SheetLanguageField />
      <Action
        id="summary-insert"
        hint={words.insertHint}
        button={(describedBy) => (
          <Button
            appearance="primary"
            disabledFocusable={isBusy}
            aria-describedby={describedBy}
            onClick={() =>
              void carryOut(words.reading, (course) => insertSummary(port, { system: state.system, language }, course))
            }
          >
            {words.insert}
          </Button>
        )}
      />
      {state.summary !== undefined && (
        <OfSummary port={port} summary={state.summary} isBusy={isBusy} carryOut={carryOut} />
      )}
      {state.course && <Progress what={state.course.what} share={state.course.share} onStop={stop} />}
      {state.done && <Told done={state.done} />}
      {state.failure !== undefined && <Notice intent="error">{state.failure}</Notice>}
      <ManyPart port={port} sheets={state.data} onDone={lookAgain} />
    </div>
  );
}

interface OfSummaryProps extends Pick<ReturnType<typeof useSummary>, "isBusy" | "carryOut"> {
  readonly port: WorkbookPort;
  /** The name of the sheet of the summary. */
  readonly summary: string;
}

/** What can be done with a summary that stands: bring it up to date, add specimens of files, insert its charts. */
function OfSummary({ port, summary, isBusy, carryOut }: OfSummaryProps) {
  return (
    <Step title={summary}>
      <Action
        id="summary-update"
        hint={words.updateHint}
        button={(describedBy) => (
          <Button
            disabledFocusable={isBusy}
            aria-describedby={describedBy}
            onClick={() => void carryOut(words.reading, (course) => bringUpToDate(port, course))}
          >
            {words.update(summary)}
          </Button>
        )}
      />
      <Action
        id="summary-files"
        hint={words.filesHint}
        button={(describedBy) => (
          <FileButton
            label={words.files}
            accept=".xlsx"
            isBusy={isBusy}
            describedBy={describedBy}
            onFiles={(files) => void carryOut(words.readingFiles, (course) => addFiles(port, files, course))}
          />
        )}
      />
      <Action
        id="summary-charts"
        hint={words.chartsHint}
        button={(describedBy) => (
          <Button
            disabledFocusable={isBusy}
            aria-describedby={describedBy}
            onClick={() => void carryOut(words.reading, (course) => insertCharts(port, course))}
          >
            {words.charts}
          </Button>
        )}
      />
    </Step>
  );
}

/** A button with a text below it that says what the button does. */
function Action({ id, hint, button }: { id: string; hint: string; button: (describedBy: string) => ReactNode }) {
  const styles = useStyles();
  return (
    <div>
      {button(id)}
      <Text id={id} block size={200} className={styles.quiet}>
        {hint}
      </Text>
    </div>
  );
}

function Told({ done: { isWhole, sentences } }: { done: Done }) {
  const [first, ...others] = sentences;
  return (
    <Notice intent={isWhole ? "success" : "warning"} title={first}>
      {others.map((sentence) => (
        <Text key={sentence} block>
          {sentence}
        </Text>
      ))}
    </Notice>
  );
}
