/** Offers what is new in a file that was read before; shows nothing for another file. */
import { Button, Checkbox, Field, Radio, RadioGroup, Text } from "@fluentui/react-components";
import { useEffect, useMemo, useReducer, useState } from "react";
import { columnsAgain, type Continued } from "../../../exchange/logger/again";
import { readRows, type Fault, type LoggerRows } from "../../../exchange/logger/rows";
import { readingsName, timesName } from "../../../specification/readings";
import { isoMoment, localDayNumber } from "../../../workbook/day-number";
import { inSlices, Stopped } from "../../../workbook/in-slices";
import type { CellValue, WorkbookPort } from "../../../workbook/port";
import { choosing } from "../../ui/choosing";
import { Going } from "../../ui/going";
import { Notice } from "../../ui/notice";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { useCourse } from "../../live/use-course";
import { contentText } from "../../text/number";
import { sentenceOf } from "../../text/sentence";
import { contentOnSheet, languageOfLabels } from "../../live/sheet-language";
import { CATALOGUES, text } from "../../text";
import {
  againAnswered,
  againFound,
  keptFor,
  readable,
  type AgainAction,
  type AgainAnswers,
  type AgainFound,
  type KeptFile,
} from "./again-state";
import { NotKept, SheetChanged } from "./into-workbook";
import { faultWords } from "./faults";
import type { Source } from "./source-step";
import type { DataSheet, Targets } from "./use-target";
import { keptLinesOf, writeAgain } from "./write-again";

const words = text.readAgain;
const MOST_SHOWN = 20;

interface Compared {
  readonly keptLines: readonly string[];
  readonly rows: LoggerRows;
}

interface Props {
  readonly port: WorkbookPort;
  readonly source: Source;
  readonly targets: Targets;
  readonly onBusy: (busy: boolean) => void;
}

export function ReadAgain({ targets, ...props }: Props) {
  const { dataSheet } = targets;
  const kept = dataSheet && keptFor(targets.kept, props.source.name, dataSheet.sheet);
  if (!dataSheet || !kept) return null;
  return <KnownFile key={kept.sheet} {...props} again={targets.again} dataSheet={dataSheet} kept={kept} />;
}

type KnownProps = Omit<Props, "targets"> & {
  readonly again: () => Promise<void>;
  readonly dataSheet: DataSheet;
  readonly kept: KeptFile;
};

/** Reads the kept lines, and the rows of the file by the layout of the earlier reading. */
function useCompared({ port, source, kept }: KnownProps, isFinished: boolean): Compared | string | undefined {
  const [compared, setCompared] = useState<Compared | string>();
  const { sheet, lines, layout } = kept;
  const key = JSON.stringify([sheet, lines, layout]);
  useEffect(() => {
    const controller = new AbortController();
    const compare = async (): Promise<void> => {
      setCompared(undefined);
      try {
        const keptLines = await keptLinesOf(port, sheet, lines);
        const rows = await inSlices(
          readRows(readable(source.file, isFinished, keptLines), layout),
          () => {},
          controller.signal,
        );
        if (!controller.signal.aborted) setCompared({ keptLines, rows });
      } catch (error) {
        if (!controller.signal.aborted) setCompared(sentenceOf(error));
      }
    };
    void compare();
    return () => controller.abort();
    // eslint-disable-next-line react-hooks/exhaustive-deps -- key stands for the sheet, its lines and its layout
  }, [port, source, isFinished, key]);
  return compared;
}

type Ended = { readonly intent: "success" | "error"; readonly sentence: string };

const failed = (error: unknown): string => {
  if (error instanceof NotKept) return text.readings.notKept(error.sheet, error.line);
  if (error instanceof SheetChanged)
    return error.now === undefined
      ? text.readings.sheetGone(error.sheet)
      : text.readings.sheetRenamed(error.sheet, error.now);
  if (error instanceof Stopped) return words.stopped;
  return sentenceOf(error);
};

/** The cells in which a cut reading may be written over. */
const replacedIn = ({ additions }: Continued): ReadonlySet<string> =>
  new Set(additions.flatMap(({ load, isNew }) => (isNew ? [] : [timesName(load), readingsName(load)])));

/** What came in, in the language of the data sheet. */
const saidOf = ({ additions }: Continued): string => {
  const cellWords = CATALOGUES[languageOfLabels()].readAgain;
  return additions
    .map(({ load, isNew, rows, times, fromLine, toLine }) =>
      (isNew ? cellWords.newLoad : cellWords.load)(load, rows, times.length, fromLine, toLine),
    )
    .join("; ");
};

function KnownFile(props: KnownProps) {
  const { port, source, dataSheet, kept, again, onBusy } = props;
  const styles = useStyles();
  const [answers, answer] = useReducer(againAnswered, { isFinished: false });
  const [busy, setBusy] = useState(false);
  const [ended, setEnded] = useState<Ended>();
  const work = useCourse();
  const compared = useCompared(props, answers.isFinished);
  const found = useMemo(
    () =>
      typeof compared === "object"
        ? againFound(
            {
              ...compared,
              file: readable(source.file, answers.isFinished, compared.keptLines),
              kept,
              target: dataSheet.target,
              values: dataSheet.values,
            },
            answers,
          )
        : undefined,
    [compared, source, kept, dataSheet, answers],
  );

  const write = async (grown: AgainFound & { readonly is: "grown" }): Promise<void> => {
    if (typeof compared !== "object") return;
    setBusy(true);
    onBusy(true);
    const { value } = grown;
    const job = {
      ...{ dataSheet: dataSheet.sheet, fileSheet: kept.sheet, sha256: source.sha256 },
      columns: columnsAgain(dataSheet.target, value.additions),
      day: isoMoment(localDayNumber(new Date())),
      said: saidOf(value),
      read: value.read,
      lines: grown.keep,
      standing: compared.keptLines.length,
    };
    const replaced = answers.recut === "write" ? replacedIn(value) : new Set<string>();
    try {
      await writeAgain(port, job, replaced, work.begin());
      const readings = value.additions.reduce((sum, { times }) => sum + times.length, 0);
      setEnded({ intent: "success", sentence: words.done(readings, dataSheet.sheet, kept.sheet) });
    } catch (error) {
      setEnded({ intent: "error", sentence: failed(error) });
    }
    work.end();
    await again();
    setBusy(false);
    onBusy(false);
  };

  const asked = { answers, kept, sharing: dataSheet.sharing, onAnswer: answer };
  return (
    <Step title={words.heading}>
      {ended && <Notice intent={ended.intent}>{ended.sentence}</Notice>}
      {busy ? (
        <Going what={words.writing} {...work} />
      ) : typeof compared === "string" ? (
        <Notice intent="error">{compared}</Notice>
      ) : !found ? (
        <Notice intent="info">{words.looking}</Notice>
      ) : (
        <Found found={found} {...asked} onWrite={(grown) => void write(grown)} />
      )}
      {!source.file.endsWhole || (found?.is === "grown" && !answers.isFinished) || answers.isFinished ? (
        <Checkbox
          label={words.finished}
          disabled={busy}
          checked={answers.isFinished}
          onChange={(_, { checked }) => answer({ do: "finished", is: checked === true })}
        />
      ) : null}
      <Text size={200} className={styles.quiet}>
        {words.orNew}
      </Text>
    </Step>
  );
}

interface FoundProps {
  readonly found: AgainFound;
  /** The loads whose times stand in cells that other loads share. */
  readonly sharing: readonly number[];
  readonly answers: AgainAnswers;
  readonly kept: KeptFile;
  readonly onAnswer: (action: AgainAction) => void;
  readonly onWrite: (grown: AgainFound & { readonly is: "grown" }) => void;
}

const factorShown = (content: CellValue): string => contentText(contentOnSheet(content));

function Found({ found, sharing, answers, kept, onAnswer, onWrite }: FoundProps) {
  if (found.is === "same") return <Notice intent="info">{words.same(kept.dataSheet)}</Notice>;
  if (found.is === "other loads") return <Notice intent="warning">{words.otherLoads(found.line)}</Notice>;
  if (found.is === "changed")
    return (
      <Notice intent="warning">
        {words.changed(found.lines.slice(0, MOST_SHOWN).join(", "), found.lines.length, found.missing)}
      </Notice>
    );
  const { recut, factor, value, newLines } = found;
  const readings = value.additions.reduce((sum, { times }) => sum + times.length, 0);
  const isCutOpen = recut !== undefined && answers.recut === undefined;
  const shared = value.additions.map(({ load }) => load).filter((load) => sharing.includes(load));
  const isOpen = isCutOpen || shared.length > 0 || (factor !== undefined && answers.takesFactor !== true);
  return (
    <>
      <Text block>{words.grown(newLines, kept.dataSheet)}</Text>
      <Additions value={value} faults={found.faults} />
      {!answers.isFinished && (
        <Text block size={200}>
          {words.waits}
        </Text>
      )}
      {recut !== undefined && (
        <Field
          label={words.recut(recut)}
          validationState={isCutOpen ? "warning" : "none"}
          validationMessage={isCutOpen ? words.recutOpen : undefined}
        >
          <RadioGroup
            value={answers.recut ?? ""}
            onChange={choosing<"write" | "leave">((chosen) => onAnswer({ do: "recut", answer: chosen }))}
          >
            <Radio value="write" label={words.recutChoices.write} />
            <Radio value="leave" label={words.recutChoices.leave} />
          </RadioGroup>
        </Field>
      )}
      {factor && (
        <Checkbox
          label={words.factor(factorShown(factor.now), factorShown(factor.wanted))}
          checked={answers.takesFactor === true}
          onChange={(_, { checked }) => onAnswer({ do: "factor", takes: checked === true })}
        />
      )}
      {shared.length > 0 && <Notice intent="error">{text.readings.timesShared(shared)}</Notice>}
      {readings === 0 && <Text block>{words.nothing}</Text>}
      <div>
        <Button
          appearance="primary"
          disabledFocusable={isOpen || readings === 0}
          onClick={() => !isOpen && readings > 0 && onWrite(found)}
        >
          {words.write(kept.dataSheet)}
        </Button>
      </div>
    </>
  );
}

/** What comes in by load, what does not, and the faults of the new lines. */
function Additions({ value, faults }: { readonly value: Continued; readonly faults: readonly Fault[] }) {
  const styles = useStyles();
  return (
    <>
      <ul className={styles.list}>
        {value.additions.map(({ load, isNew, rows, times, fromLine, toLine }) => (
          <li key={load}>
            <Text>{(isNew ? words.newLoad : words.load)(load, rows, times.length, fromLine, toLine)}</Text>
          </li>
        ))}
      </ul>
      {value.without.map(({ load, fromLine, toLine }) => (
        <Notice key={fromLine} intent="warning">
          {words.without(load, fromLine, toLine)}
        </Notice>
      ))}
      {faults.length > 0 && (
        <Text block size={200} className={styles.quiet}>
          {words.faults(faults.length)}{" "}
          {faults
            .slice(0, MOST_SHOWN)
            .map((fault) => text.readings.fault(fault.line, faultWords(fault)))
            .join("; ")}
        </Text>
      )}
    </>
  );
}
