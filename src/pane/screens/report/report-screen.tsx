/**
 * Makes the report sheet of a data sheet. It first says what the report would lack, and afterwards where the report is.
 */
import { Button, Field, Input, Radio, RadioGroup, Text } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import type { WorkbookPort } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { HeadNotice } from "../head-notice";
import {
  makeReport,
  paperOf,
  prospectOf,
  REPORT,
  type MadeReport,
  type Prospect,
  type ReportChoices,
} from "./make-report";
import { IssuePart } from "./issue-part";
import { ReadingsChanged } from "./readings-changed";
import { choosing } from "../../ui/choosing";
import { Choice, FaultList, optionsOf, Step, ScreenTitle } from "../../ui/parts";
import { Going } from "../../ui/going";
import { useStyles } from "../../ui/styles";
import { useCourse } from "../../live/use-course";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { english } from "../../../reduction/message";
import { useDraft, useHold, useTest } from "../../live/use-test";
import type { Reading } from "../../live/workbook-store";

const words = text.report;

type Paper = "A4" | "Letter";
type State =
  | { readonly at: "rest" }
  | { readonly at: "busy" }
  | { readonly at: "done"; readonly made: MadeReport }
  | { readonly at: "error"; readonly sentence: string };

export function ReportScreen({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const { tests, reading, error, again } = useTest(REPORT);
  const [preparedBy, setPreparedBy] = useState("");
  const body = () => {
    if (error !== undefined)
      return (
        <>
          <Notice intent="error">{error}</Notice>
          <div>
            <Button onClick={() => void again()}>{words.again}</Button>
          </div>
        </>
      );
    if (tests?.length === 0) return <Notice intent="info">{words.none}</Notice>;
    if (!reading) return <Notice intent="info">{words.looking}</Notice>;
    return <ReportOf key={reading.id} {...{ port, reading, preparedBy, setPreparedBy }} />;
  };
  return (
    <div className={styles.column}>
      <ScreenTitle>{words.heading}</ScreenTitle>
      <Text block>{words.purpose}</Text>
      {body()}
    </div>
  );
}

interface ReportOfProps {
  readonly port: WorkbookPort;
  readonly reading: Reading;
  readonly preparedBy: string;
  readonly setPreparedBy: (name: string) => void;
}

function ReportOf({ port, reading, preparedBy, setPreparedBy }: ReportOfProps) {
  const styles = useStyles();
  const { id, sheet, record } = reading;
  const [state, setState] = useState<State>({ at: "rest" });
  const [chosen, setPaper] = useDraft<Paper | undefined>(id, "paper", undefined);
  const paper = chosen ?? paperOf(record);
  const prospect = useMemo(() => prospectOf(reading), [reading]);
  const [changed, setChoices] = useDraft<Partial<ReportChoices>>(id, "report choices", {});
  const choices = { ...prospect.choices, ...changed };
  const busy = state.at === "busy";
  const work = useCourse();
  useHold(busy);

  const make = async (lockedBy?: string): Promise<void> => {
    if (busy) return;
    setState({ at: "busy" });
    try {
      const wanted = { ...choices, paper, preparedBy, now: new Date(), lockedBy };
      setState({ at: "done", made: await makeReport(port, sheet, wanted, work.begin()) });
    } catch (problem) {
      setState({ at: "error", sentence: sentenceOf(problem) });
    }
    work.end();
  };

  const show = async (report: string): Promise<void> => {
    try {
      await port.show(report, "A1");
    } catch (problem) {
      setState({ at: "error", sentence: sentenceOf(problem) });
    }
  };

  return (
    <>
      <ReadingsChanged reading={reading} />
      <HeadNotice reading={reading} />
      <Lacking prospect={prospect} />
      <Field label={words.preparedBy} hint={words.preparedByHint}>
        <Input value={preparedBy} onChange={(_, { value }) => setPreparedBy(value)} />
      </Field>
      <Field label={words.paper}>
        <RadioGroup layout="horizontal" value={paper} onChange={choosing<Paper>(setPaper)}>
          <Radio value="A4" label="A4" />
          <Radio value="Letter" label="Letter" />
        </RadioGroup>
      </Field>
      <ReportChoicesFields choices={choices} onChange={(change) => setChoices({ ...changed, ...change })} />
      <div>
        <Button appearance="primary" disabledFocusable={busy} onClick={() => void make()}>
          {words.make(sheet)}
        </Button>
      </div>
      {busy && <Going what={words.making} {...work} />}
      {state.at === "done" && (
        <Notice intent="success">
          {words.made(sheet, state.made.report)}
          {state.made.carriedFrom !== undefined && ` ${words.carried(state.made.carriedFrom)}`}
          {state.made.remarks.map((remark) => ` ${remark}`)}
        </Notice>
      )}
      {state.at === "error" && <Notice intent="error">{state.sentence}</Notice>}
      <IssuePart
        {...{ port, sheet, issues: prospect.issues, isBusy: busy }}
        onLock={(lockedBy) => void make(lockedBy)}
      />
      {prospect.reports.length > 0 && (
        <Step title={words.reports}>
          <ul className={styles.list}>
            {prospect.reports.map((report) => (
              <li key={report}>
                <Button onClick={() => show(report)}>{words.show(report)}</Button>
              </li>
            ))}
          </ul>
        </Step>
      )}
    </>
  );
}

interface ReportChoicesProps {
  readonly choices: ReportChoices;
  readonly onChange: (change: Partial<ReportChoices>) => void;
}

/** Asks for the language of the report and for the ordinate of its first curve. */
export function ReportChoicesFields({ choices: { language, curve }, onChange }: ReportChoicesProps) {
  return (
    <>
      <Choice
        label={words.language}
        hint={words.languageHint}
        options={optionsOf(text.sheet.languages)}
        value={language}
        onChoose={(chosen) => onChange({ language: chosen })}
      />
      <Choice
        label={words.curve}
        hint={words.curveHint}
        options={optionsOf(words.curves)}
        value={curve}
        onChoose={(chosen) => onChange({ curve: chosen })}
      />
    </>
  );
}

/** What the report would lack; required items come first. */
function Lacking({ prospect: { missing, answered } }: { prospect: Prospect }) {
  const styles = useStyles();
  const required = missing.filter(({ isRequired }) => isRequired);
  const others = missing.filter(({ isRequired }) => !isRequired);
  const open = answered.filter(({ answer }) => !["pass", "cannot be asked"].includes(answer.status)).length;
  const list = (heading: string, items: typeof missing) =>
    items.length > 0 && (
      <FaultList heading={heading} level="h2">
        {items.map(({ item, sentence }) => (
          <li key={`${item} ${english(sentence)}`}>{words.item(item, inWords(sentence))}</li>
        ))}
      </FaultList>
    );
  return (
    <>
      {required.length === 0 && <Notice intent="success">{words.whole}</Notice>}
      {list(words.lacks(required.length), required)}
      {required.length > 0 && (
        <Text block className={styles.quiet}>
          {words.lacksHint}
        </Text>
      )}
      {list(words.others(others.length), others)}
      <Text block className={styles.quiet}>
        {words.open(open)}
      </Text>
    </>
  );
}
