/** Makes reports, one AGS4 file, or pictures of several data sheets, with progress, a stop, and a list of what failed. */
import { Button, Checkbox, Field, Input, makeStyles, Text, tokens } from "@fluentui/react-components";
import { useReducer, useRef, useState } from "react";
import { Stopped } from "../../../workbook/in-slices";
import type { WorkbookPort } from "../../../workbook/port";
import { useHold } from "../../live/use-test";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { Choice, FaultList, optionsOf, Progress, Step } from "../../ui/parts";
import { download } from "../../ui/save-file";
import { useStyles } from "../../ui/styles";
import { TextToCopy } from "../../ui/text-to-copy";
import { firstTransmission, TransmissionFields } from "../checks/transmission-fields";
import { ReportChoicesFields } from "../report/report-screen";
import type { ReportChoices } from "../report/make-report";
import { ags4Of, PICTURES, picturesOf, reportsOf, type Course, type MadeFile, type ManyDone } from "./many";
import { AT_REST, manyChanged, taken, type ManyAction, type ManyState } from "./many-state";

const words = text.many;

const useOwnStyles = makeStyles({
  group: {
    display: "flex",
    flexDirection: "column",
    gap: "4px",
    margin: 0,
    padding: 0,
    border: "none",
    minWidth: 0,
    "& legend": { padding: 0 },
  },
  sheets: {
    display: "flex",
    flexDirection: "column",
    maxHeight: "240px",
    overflowY: "auto",
    overflowWrap: "anywhere",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
});

export interface ManyPartProps {
  readonly port: WorkbookPort;
  /** The data sheets of the workbook. */
  readonly sheets: readonly string[];
  /** Called after the work, which may have added sheets. */
  readonly onDone: () => void;
}

type Paper = keyof typeof words.papers;

function save({ name, content }: MadeFile): void {
  const type = typeof content === "string" ? "text/plain;charset=us-ascii" : "application/zip";
  download(new Blob([content], { type }), name);
}

export function ManyPart({ port, sheets, onDone }: ManyPartProps) {
  const [state, act] = useReducer(manyChanged, AT_REST);
  const [report, setReport] = useState<ReportChoices & { preparedBy: string; paper: Paper }>({
    ...{ language: "en", curve: "e", preparedBy: "", paper: "sheet" },
  });
  const [said, setSaid] = useState(() => firstTransmission());
  const stop = useRef<AbortController>();
  const isBusy = state.share !== undefined;
  useHold(isBusy);
  const wanted = taken(state, sheets);

  const work = (course: Course): Promise<ManyDone> => {
    if (state.kind === "ags4") return ags4Of(port, wanted, said, course);
    if (state.kind === "pictures") return picturesOf(port, wanted, state, course);
    const { paper } = report;
    return reportsOf(port, wanted, { ...report, paper: paper === "sheet" ? undefined : paper }, course);
  };
  const start = async (): Promise<void> => {
    if (isBusy) return;
    stop.current = new AbortController();
    act({ do: "begin" });
    try {
      const tell = (share: number): void => act({ do: "go on", share });
      const done = await work({ tell, signal: stop.current.signal, now: new Date() });
      if (done.file && port.savesFiles) save(done.file);
      act({ do: "end", done });
    } catch (error) {
      act({ do: "fail", sentence: error instanceof Stopped ? words.stopped : sentenceOf(error) });
    }
    onDone();
  };

  return (
    <Step title={words.heading}>
      <Text block>{words.purpose}</Text>
      {sheets.length === 0 ? (
        <Notice intent="info">{words.noSheets}</Notice>
      ) : (
        <>
          <Sheets sheets={sheets} state={state} act={act} />
          <Choice
            label={words.what}
            options={optionsOf(words.kinds)}
            value={state.kind}
            onChoose={(kind) => act({ do: "choose", change: { kind } })}
          />
          {state.kind === "reports" && (
            <>
              <Field label={text.report.preparedBy} hint={text.report.preparedByHint}>
                <Input
                  value={report.preparedBy}
                  onChange={(_, { value }) => setReport({ ...report, preparedBy: value })}
                />
              </Field>
              <Choice
                label={words.paper}
                options={optionsOf(words.papers)}
                value={report.paper}
                onChoose={(paper) => setReport({ ...report, paper })}
              />
              <ReportChoicesFields choices={report} onChange={(change) => setReport({ ...report, ...change })} />
            </>
          )}
          {state.kind === "ags4" && (
            <TransmissionFields
              said={said}
              say={(part) => setSaid((before) => ({ ...before, ...part }))}
              unchosen={words.asOnSheets}
            />
          )}
          {state.kind === "pictures" && <Pictures state={state} act={act} saves={port.savesFiles} />}
          <Start state={state} count={wanted.length} saves={port.savesFiles} onStart={() => void start()} />
          {isBusy && <Progress what={words.working} share={state.share ?? 0} onStop={() => stop.current?.abort()} />}
          {state.done && <Told done={state.done} />}
          {state.failure !== undefined && <Notice intent="error">{state.failure}</Notice>}
        </>
      )}
    </Step>
  );
}

interface PartProps {
  readonly state: ManyState;
  readonly act: (action: ManyAction) => void;
}

/** The list of data sheets to choose from. */
function Sheets({ sheets, state, act }: PartProps & Pick<ManyPartProps, "sheets">) {
  const styles = useStyles();
  const own = useOwnStyles();
  return (
    <fieldset className={own.group}>
      <legend>{words.sheets}</legend>
      <div className={styles.row}>
        <Button size="small" onClick={() => act({ do: "take", sheets, isIn: true })}>
          {words.all}
        </Button>
        <Button size="small" onClick={() => act({ do: "take", sheets, isIn: false })}>
          {words.none}
        </Button>
      </div>
      <div className={own.sheets}>
        {sheets.map((sheet) => (
          <Checkbox
            key={sheet}
            label={sheet}
            checked={!state.left.includes(sheet)}
            onChange={(_, { checked }) => act({ do: "take", sheets: [sheet], isIn: checked === true })}
          />
        ))}
      </div>
    </fieldset>
  );
}

/** The choices for pictures: the plots, the format, the width. */
function Pictures({ state, act, saves }: PartProps & { readonly saves: boolean }) {
  const own = useOwnStyles();
  if (!saves) return <Notice intent="warning">{words.noSaving}</Notice>;
  const { plots, format, widthMm } = state;
  return (
    <>
      <fieldset className={own.group}>
        <legend>{words.plots}</legend>
        {PICTURES.map((plot) => (
          <Checkbox
            key={plot}
            label={words.picturesOf[plot]}
            checked={plots.includes(plot)}
            onChange={(_, { checked }) =>
              act({
                do: "choose",
                change: { plots: PICTURES.filter((one) => (one === plot ? checked : plots.includes(one))) },
              })
            }
          />
        ))}
      </fieldset>
      <Choice
        label={words.format}
        options={optionsOf(words.formats)}
        value={format}
        onChoose={(chosen) => act({ do: "choose", change: { format: chosen } })}
      />
      <Choice
        label={text.plot.width}
        options={optionsOf(text.plot.widths).map(([width, name]) => [String(width), name] as const)}
        value={String(widthMm)}
        onChoose={(width) => act({ do: "choose", change: { widthMm: Number(width) } })}
      />
    </>
  );
}

interface StartProps {
  readonly state: ManyState;
  readonly count: number;
  readonly saves: boolean;
  readonly onStart: () => void;
}

/** The button, or what is to be chosen before it can be pressed. */
function Start({ state, count, saves, onStart }: StartProps) {
  const { kind, plots, share } = state;
  if (count === 0) return <Notice intent="info">{words.noneChosen}</Notice>;
  if (kind === "pictures" && !saves) return null;
  if (kind === "pictures" && plots.length === 0) return <Notice intent="info">{words.noPlot}</Notice>;
  const labels = { reports: words.makeReports, ags4: words.makeAgs4, pictures: words.makePictures };
  return (
    <div>
      <Button appearance="primary" disabledFocusable={share !== undefined} onClick={onStart}>
        {labels[kind](count)}
      </Button>
    </div>
  );
}

function Told({ done: { sentence, others, failed, file } }: { readonly done: ManyDone }) {
  return (
    <>
      <Notice intent={failed.length > 0 ? "warning" : "success"} title={sentence}>
        {others.map((one) => (
          <Text key={one} block>
            {one}
          </Text>
        ))}
      </Notice>
      {typeof file?.content === "string" && <TextToCopy label={text.checks.ags.fileText} content={file.content} />}
      {failed.length > 0 && (
        <FaultList heading={words.failed(failed.length)} level="h3">
          {failed.map(({ called, reason }) => (
            <li key={`${called} ${reason}`}>{words.failure(called, reason)}</li>
          ))}
        </FaultList>
      )}
    </>
  );
}
