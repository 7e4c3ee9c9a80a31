/** Imports the readings of a logger in four steps: the file, its columns, its loads, the data sheet. */
import { Button, Spinner, Text } from "@fluentui/react-components";
import { useEffect, useMemo, useRef, useState } from "react";
import type { Layout } from "../../../exchange/logger/layout";
import { readRows, type LoggerRows } from "../../../exchange/logger/rows";
import type { WorkbookPort } from "../../../workbook/port";
import { inSlices, Stopped } from "../../../workbook/in-slices";
import { bringIntoSight } from "../../ui/bring-into-sight";
import { Notice } from "../../ui/notice";
import { ReadingsColumns } from "./columns-step";
import { Faults } from "./faults";
import { ReadingsLoads } from "./loads-step";
import { firstChoices, stretchesOf, type LoadChoices } from "./stretches";
import { Progress, Step, ScreenTitle } from "../../ui/parts";
import { ReadingsSource, SourceSummary, type Source } from "./source-step";
import { useStyles } from "../../ui/styles";
import { ReadingsWrite, type Ended } from "./write-step";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { useHold } from "../../live/use-test";
import { ReadAgain } from "./read-again";
import { useTarget, type DataSheet, type Targets } from "./use-target";

const words = text.readings;

/** The lines of the file, read with the confirmed columns. */
interface Read {
  readonly layout: Layout;
  readonly apparatus: string;
  readonly rows: LoggerRows;
}

type Reading =
  | { readonly at: "rest" }
  | { readonly at: "busy"; readonly share: number }
  | { readonly at: "stopped" | "changed" }
  | { readonly at: "error"; readonly sentence: string };

export function ReadingsScreen({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const [source, setSource] = useState<Source>();
  const [writing, setWriting] = useState(false);
  const targets = useTarget();
  useHold(writing);
  return (
    <div className={styles.column}>
      <ScreenTitle>{words.heading}</ScreenTitle>
      <Text block>{words.promise}</Text>
      {source ? (
        <>
          <SourceSummary source={source} onOther={() => !writing && setSource(undefined)} />
          <ReadAgain key={`again ${source.sha256}`} port={port} source={source} targets={targets} onBusy={setWriting} />
          <FileSteps
            key={source.sha256 + source.name}
            port={port}
            source={source}
            targets={targets}
            onBusy={setWriting}
          />
        </>
      ) : (
        <ReadingsSource onRead={setSource} />
      )}
    </div>
  );
}

interface FileStepsProps {
  readonly port: WorkbookPort;
  readonly source: Source;
  readonly targets: Targets;
  readonly onBusy: (busy: boolean) => void;
}

function FileSteps({ port, source, targets, onBusy }: FileStepsProps) {
  const [reading, setReading] = useState<Reading>({ at: "rest" });
  const [read, setRead] = useState<Read>();
  const stop = useRef<AbortController>();

  const use = async (layout: Layout, apparatus: string): Promise<void> => {
    stop.current?.abort();
    const controller = (stop.current = new AbortController());
    setRead(undefined);
    setReading({ at: "busy", share: 0 });
    const tell = (share: number): void => setReading({ at: "busy", share });
    try {
      const rows = await inSlices(readRows(source.file, layout), tell, controller.signal);
      setRead({ layout, apparatus, rows });
      setReading({ at: "rest" });
    } catch (error) {
      if (controller !== stop.current) return;
      setReading(error instanceof Stopped ? { at: "stopped" } : { at: "error", sentence: sentenceOf(error) });
    }
  };
  const changed = (): void => {
    if (!read && reading.at !== "busy") return;
    stop.current?.abort();
    stop.current = undefined;
    setRead(undefined);
    setReading({ at: "changed" });
  };

  return (
    <>
      <ReadingsColumns
        source={source}
        remembered={targets.remembered}
        frame={targets.dataSheet?.target.frame ?? ""}
        onUse={(layout, apparatus) => void use(layout, apparatus)}
        onChange={changed}
      />
      {reading.at === "busy" && (
        <Progress what={words.readingLines} share={reading.share} onStop={() => stop.current?.abort()} />
      )}
      {reading.at === "stopped" && <Notice intent="warning">{words.stopped}</Notice>}
      {reading.at === "changed" && <Notice intent="info">{words.changed}</Notice>}
      {reading.at === "error" && <Notice intent="error">{reading.sentence}</Notice>}
      {read && <LoadSteps port={port} source={source} targets={targets} read={read} onBusy={onBusy} />}
    </>
  );
}

/**
 * How the loads are found and taken. Stretches that a person edited belong to one test; they are dropped for another
 * test, which has other loads.
 */
function useChoices(
  rows: LoggerRows,
  layout: Layout,
  test: string | undefined,
): [LoadChoices, (next: LoadChoices) => void] {
  const [choices, setChoices] = useState(() => firstChoices(rows, layout));
  const [edited, setEdited] = useState<Readonly<Record<string, LoadChoices["edited"]>>>({});
  const key = test ?? "";
  const choose = (next: LoadChoices): void => {
    setChoices({ ...next, edited: undefined });
    setEdited((before) => ({ ...(next.way === choices.way && before), [key]: next.edited }));
  };
  const own = edited[key];
  return [useMemo(() => ({ ...choices, edited: own }), [choices, own]), choose];
}

/** How many readings each load of a test held when the file was first shown beside that test. */
function useHeldBefore(dataSheet: DataSheet | undefined): readonly number[] | undefined {
  const before = useRef(new Map<string, readonly number[]>());
  if (!dataSheet) return undefined;
  const held = before.current.get(dataSheet.id) ?? dataSheet.target.loads.map((load) => load.held);
  before.current.set(dataSheet.id, held);
  return held;
}

function LoadSteps({ port, source, targets, read, onBusy }: FileStepsProps & { readonly read: Read }) {
  const styles = useStyles();
  const { rows, layout, apparatus } = read;
  const { dataSheet, isThere, error } = targets;
  const target = dataSheet?.target;
  const [choices, choose] = useChoices(rows, layout, dataSheet?.id);
  const [ended, setEnded] = useState<Ended>();
  // A change in other cells of the sheet does not start a new search for loads.
  const sheetLoads = JSON.stringify(
    target && [target.loads, target.room, target.stressUnit, target.seating, target.diameter],
  );
  const held = useHeldBefore(dataSheet);
  const found = useMemo(
    () => stretchesOf(rows, layout, choices, target, held),
    // eslint-disable-next-line react-hooks/exhaustive-deps -- sheetLoads stands for the target
    [rows, layout, choices, sheetLoads, held],
  );

  // The button that led here stands at the foot of the window: what follows comes into sight.
  const heading = useRef<HTMLDivElement>(null);
  useEffect(() => bringIntoSight(heading.current), []);

  return (
    <>
      <div ref={heading} className={styles.underHeader} />
      <Step title={words.loadsHeading}>
        {rows.lines.length === 0 ? (
          <Notice intent="error">{words.noRows}</Notice>
        ) : (
          <ReadingsLoads
            rows={rows}
            layout={layout}
            found={found}
            choices={choices}
            target={target}
            onChoose={choose}
          />
        )}
        {rows.isBackwards && <Text>{words.backwards}</Text>}
        <Faults faults={rows.faults} />
      </Step>
      {rows.lines.length > 0 && (
        <Step title={words.writeHeading}>
          {error !== undefined && <Notice intent="error">{error}</Notice>}
          {dataSheet ? (
            <ReadingsWrite
              port={port}
              source={source}
              layout={layout}
              apparatus={apparatus}
              rows={rows}
              stretches={found.stretches}
              choices={choices}
              dataSheet={dataSheet.sheet}
              target={dataSheet.target}
              sharing={dataSheet.sharing}
              onBusy={onBusy}
              onEnded={setEnded}
            />
          ) : isThere === false ? (
            <>
              <Notice intent="info">{words.noSheet}</Notice>
              <div className={styles.row}>
                <Button onClick={() => void targets.again()}>{words.again}</Button>
              </div>
            </>
          ) : (
            error === undefined && <Spinner label={words.looking} labelPosition="after" size="tiny" />
          )}
          {ended && <Notice intent={ended.intent}>{ended.sentence}</Notice>}
        </Step>
      )}
    </>
  );
}
