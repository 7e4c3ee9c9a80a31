/** Makes the report sheet of a data sheet: says before what it would lack, and after where it is. */
import { Button, Field, Input, Radio, RadioGroup, Text } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import type { TestRecord } from "../../../record/record";
import type { WorkbookPort } from "../../../workbook/port";
import { Notice } from "../../ui/notice";
import { makeReport, prospectOf, type MadeReport, type Prospect } from "./make-report";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { sentenceOf } from "../../text/sentence";
import { SheetChooser } from "../../ui/sheet-chooser";
import { text } from "../../text";
import { useRecord } from "../../live/use-record";

const words = text.report;

type Paper = "A4" | "Letter";
type State =
  | { readonly at: "rest" }
  | { readonly at: "busy" }
  | { readonly at: "done"; readonly made: MadeReport }
  | { readonly at: "error"; readonly sentence: string };

/** Sheets in inches are for American paper, until someone says otherwise. */
const paperOf = (record: TestRecord | undefined): Paper => (record?.words.length_unit === "in" ? "Letter" : "A4");

export function ReportScreen({ port }: { port: WorkbookPort }) {
  const styles = useStyles();
  const [state, setState] = useState<State>({ at: "rest" });
  const busy = state.at === "busy";
  const { sheets, sheet, values, record, error, choose, again } = useRecord(port, busy);
  const [prospect, setProspect] = useState<Prospect>();
  const [failure, setFailure] = useState<string>();
  const [paper, setPaper] = useState<Paper>();
  const [preparedBy, setPreparedBy] = useState("");

  useEffect(() => {
    if (sheet === undefined || values === undefined || busy) return;
    let gone = false;
    prospectOf(port, sheet, values).then(
      (found) => gone || (setProspect(found), setFailure(undefined)),
      (problem) => gone || setFailure(sentenceOf(problem)),
    );
    return () => {
      gone = true;
    };
  }, [port, sheet, values, busy]);

  const make = async (): Promise<void> => {
    if (busy || sheet === undefined) return;
    setState({ at: "busy" });
    try {
      const made = await makeReport(port, sheet, { paper: paper ?? paperOf(record), preparedBy, now: new Date() });
      setState({ at: "done", made });
    } catch (problem) {
      setState({ at: "error", sentence: sentenceOf(problem) });
    }
  };

  const show = async (report: string): Promise<void> => {
    try {
      await port.show(report, "A1");
    } catch (problem) {
      setState({ at: "error", sentence: sentenceOf(problem) });
    }
  };

  const body = () => {
    if (error !== undefined || failure !== undefined)
      return (
        <>
          <Notice intent="error">{error ?? failure}</Notice>
          <div>
            <Button onClick={again}>{words.again}</Button>
          </div>
        </>
      );
    if (sheets?.length === 0) return <Notice intent="info">{words.none}</Notice>;
    if (sheets === undefined || prospect === undefined) return <Notice intent="info">{words.looking}</Notice>;
    return (
      <>
        <Lacking prospect={prospect} />
        <Field label={words.preparedBy} hint={words.preparedByHint}>
          <Input value={preparedBy} onChange={(_, { value }) => setPreparedBy(value)} />
        </Field>
        <Field label={words.paper}>
          <RadioGroup
            layout="horizontal"
            value={paper ?? paperOf(record)}
            onChange={(_, { value }) => setPaper(value as Paper)}
          >
            <Radio value="A4" label="A4" />
            <Radio value="Letter" label="Letter" />
          </RadioGroup>
        </Field>
        <div>
          <Button appearance="primary" disabledFocusable={busy} onClick={make}>
            {words.make}
          </Button>
        </div>
        {busy && <Notice intent="info">{words.making}</Notice>}
        {state.at === "done" && (
          <Notice intent="success">
            {words.made(state.made.report)}
            {state.made.carriedFrom !== undefined && ` ${words.carried(state.made.carriedFrom)}`}
            {state.made.remarks.map((remark) => ` ${remark}`)}
          </Notice>
        )}
        {state.at === "error" && <Notice intent="error">{state.sentence}</Notice>}
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
  };

  return (
    <div className={styles.column}>
      <Text as="h1" size={400} weight="semibold" block className={styles.title}>
        {words.heading}
      </Text>
      <Text block>{words.purpose}</Text>
      <SheetChooser
        sheets={sheets}
        chosen={sheet}
        onChoose={(chosen) => {
          setProspect(undefined);
          setState({ at: "rest" });
          choose(chosen);
        }}
      />
      {body()}
    </div>
  );
}

/** What the report would lack: what it must show first. */
function Lacking({ prospect: { missing, answered } }: { prospect: Prospect }) {
  const styles = useStyles();
  const required = missing.filter(({ isRequired }) => isRequired);
  const others = missing.filter(({ isRequired }) => !isRequired);
  const open = answered.filter(({ answer }) => !["pass", "cannot be asked"].includes(answer.status)).length;
  const list = (heading: string, items: typeof missing) =>
    items.length > 0 && (
      <section aria-label={heading}>
        <Text as="h2" weight="semibold" block className={styles.title}>
          {heading}
        </Text>
        <ul className={styles.faults} tabIndex={0} role="list" aria-label={heading}>
          {items.map(({ item, sentence }) => (
            <li key={`${item} ${sentence}`}>{words.item(item, sentence)}</li>
          ))}
        </ul>
      </section>
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
