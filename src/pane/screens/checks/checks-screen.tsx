/** Answers the reviewer's questions for a data sheet: first the changes of its cells, then each question. */
import { say } from "../../../reduction/message";
import { Button, Field, Input, Link, makeStyles, Select, Text, tokens } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { runChecks, shown, type Answered, type Status } from "../../../checks";
import { answerTo, asKept } from "../../../checks/answers";
import type { CellFinding } from "../../../checks/integrity";
import { limitCalled } from "../../../checks/limit-words";
import { limitsSheet } from "../../../checks/limits";
import { languageNamed } from "../../../specification/text/language";
import { inOneLanguage } from "../../live/sheet-language";
import { cellsOf } from "../../../checks/whereabouts";
import { timeStamp } from "../../../workbook/time-stamp";
import type { WorkbookPort } from "../../../workbook/port";
import { ReadingsChanged } from "../report/readings-changed";
import { Ags4Part } from "./ags4-part";
import { acknowledge, REVIEW, reviewOf, type ReviewState } from "./workbook-answers";
import { newSheet } from "../../live/new-sheet";
import { Notice } from "../../ui/notice";
import { HeadNotice } from "../head-notice";
import { RecordFrame } from "../record-frame";
import { choosing } from "../../ui/choosing";
import { optionsOf, Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { sentence, sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { useDraft, useTest } from "../../live/use-test";
import type { Reading } from "../../live/workbook-store";

const words = text.checks;

const useStyles = makeStyles({
  card: {
    display: "flex",
    flexDirection: "column",
    gap: "6px",
    padding: "8px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    overflowWrap: "anywhere",
  },
  pair: {
    margin: 0,
    display: "grid",
    gridTemplateColumns: "auto minmax(0, 1fr)",
    gap: "2px 12px",
    fontVariantNumeric: "tabular-nums",
    "& dt": { color: tokens.colorNeutralForeground2 },
    "& dd": { margin: 0 },
  },
  answer: {
    display: "grid",
    gridTemplateColumns: "minmax(0, 1fr) 88px",
    gap: "8px",
    alignItems: "start",
    marginBottom: "8px",
    "& > *": { minWidth: 0 },
    "& .fui-Input": { minWidth: 0, width: "100%" },
    "& input": { minWidth: 0, width: "100%" },
  },
  links: { display: "flex", flexWrap: "wrap", gap: "4px 12px" },
});

const STATUSES: readonly Status[] = ["stop", "explain", "note", "pass", "cannot be asked"];
const OPEN: readonly Status[] = ["stop", "explain", "note"];
type Filter = keyof typeof words.filters;

/** Selects a cell of the data sheet. */
type GoTo = (address: string) => void;

export function ChecksScreen({ port }: { port: WorkbookPort }) {
  const followed = useTest(REVIEW);
  const { reading, again } = followed;
  return (
    <RecordFrame words={words} followed={followed}>
      {reading && <HeadNotice reading={reading} />}
      {reading && <Review key={reading.id} port={port} reading={reading} again={again} />}
    </RecordFrame>
  );
}

interface ReviewProps {
  readonly port: WorkbookPort;
  readonly reading: Reading;
  readonly again: () => Promise<void>;
}

type Telling = { readonly intent: "success" | "warning" | "error"; readonly sentence: string };

function Review({ port, reading, again }: ReviewProps) {
  const { sheet, record } = reading;
  const language = languageNamed(record.sheetLanguage);
  const [telling, setTelling] = useState<Telling>();
  const state = useMemo(() => reviewOf(reading), [reading]);
  const answered = useMemo(() => runChecks(record, state.limits.thresholds, state.others), [state, record]);

  const carryOut = async (work: () => Promise<Telling | undefined>): Promise<boolean> => {
    try {
      setTelling(await work());
      await again();
      return true;
    } catch (reason) {
      setTelling({ intent: "error", sentence: sentenceOf(reason) });
      return false;
    }
  };
  const goTo: GoTo = (address) => {
    port.show(sheet, address).catch((reason: unknown) => setTelling({ intent: "error", sentence: sentenceOf(reason) }));
  };
  const keep = (one: Answered, reason: string, by: string): Promise<boolean> =>
    carryOut(async () => {
      const { check, answer } = one;
      const row = {
        sheet,
        id: check.id,
        status: asKept(language, say([answer.status])),
        found: asKept(language, answer.sentence),
        reason,
        by,
        when: timeStamp(new Date()),
      };
      return { intent: "success", sentence: words.kept(check.id, sheet, await acknowledge(port, row, language)) };
    });

  return (
    <>
      {telling && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
      <ReadingsChanged reading={reading} />
      <Cells findings={state.findings} goTo={goTo} />
      <Questions {...{ reading, state, answered, goTo, keep }} />
      <Limits
        state={state}
        insert={() =>
          carryOut(() => newSheet(port, limitsSheet(language, inOneLanguage(language)), words.limitsInserted))
        }
        showSheet={(name) => void carryOut(async () => (await port.show(name, "A1"), undefined))}
      />
      <Ags4Part record={record} saves={port.savesFiles} />
    </>
  );
}

function Cells({ findings, goTo }: { findings: readonly CellFinding[]; goTo: GoTo }) {
  const styles = useStyles();
  const shared = useSharedStyles();
  return (
    <Step title={words.cells}>
      {findings.length === 0 ? (
        <Notice intent="success">{words.cellsWhole}</Notice>
      ) : (
        <>
          <Notice intent="error">{words.cellsFound(findings.length)}</Notice>
          <ul className={shared.list}>
            {findings
              .map(({ address, sentence: finding }) => [address, inWords(finding)] as const)
              .map(([address, said]) => (
                <li key={`${address} ${said}`} className={styles.card}>
                  <Text>{sentence(said)}</Text>
                  <div>
                    <Link as="button" aria-label={words.showCell(address)} onClick={() => goTo(address)}>
                      {words.show}
                    </Link>
                  </div>
                </li>
              ))}
          </ul>
        </>
      )}
    </Step>
  );
}

interface QuestionsProps {
  readonly reading: Reading;
  readonly state: ReviewState;
  readonly answered: readonly Answered[];
  readonly goTo: GoTo;
  readonly keep: (one: Answered, reason: string, by: string) => Promise<boolean>;
}

function Questions(props: QuestionsProps) {
  const { reading, state, answered } = props;
  const shared = useSharedStyles();
  const [filter, setFilter] = useState<Filter>("open");
  const [find, setFind] = useState("");
  const asked = answered.filter(({ answer }) => answer.status !== "cannot be asked");
  const passed = asked.filter(({ answer }) => answer.status === "pass");
  const matches = (one: Answered): boolean => {
    const { check, answer } = one;
    const said = `${check.id} ${inWords(check.question)} ${inWords(answer.sentence)}`.toLowerCase();
    if (!said.includes(find.trim().toLowerCase())) return false;
    if (filter === "open") return OPEN.includes(answer.status);
    if (filter === "cannot") return answer.status === "cannot be asked";
    return filter === "all" || answerTo(state.answers, reading.sheet, one) !== undefined;
  };
  const found = answered.filter(matches);
  return (
    <>
      <Text block>{words.passed(passed.length, asked.length, answered.length)}</Text>
      <div className={shared.fields}>
        <Field label={words.filter}>
          <Select value={filter} onChange={choosing<Filter>(setFilter)}>
            {optionsOf<Filter>(words.filters).map(([one, word]) => (
              <option key={one} value={one}>
                {word}
              </option>
            ))}
          </Select>
        </Field>
        <Field label={words.find}>
          <Input value={find} onChange={(_, { value }) => setFind(value)} />
        </Field>
      </div>
      {found.length === 0 && <Text block>{words.none}</Text>}
      {STATUSES.map((status) => {
        const group = found.filter(({ answer }) => answer.status === status);
        return (
          group.length > 0 && (
            <Step key={status} title={`${words.groups[status]} (${group.length})`}>
              <ul className={shared.list}>
                {group.map((one) => (
                  <Question key={one.check.id} {...props} one={one} />
                ))}
              </ul>
            </Step>
          )
        );
      })}
    </>
  );
}

function Question({ reading, state, goTo, keep, one }: QuestionsProps & { readonly one: Answered }) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const { check, answer } = one;
  const { id, sheet, names, values } = reading;
  const [found, against] = answer.compared ?? [];
  const cells = cellsOf(one, names, values);
  const given = answerTo(state.answers, sheet, one);
  return (
    <li className={styles.card}>
      <Text weight="semibold">{`${check.id} ${inWords(check.question)}`}</Text>
      <Text>{sentence(inWords(answer.sentence))}</Text>
      {found && against && (
        <dl className={styles.pair}>
          <dt>{words.found}</dt>
          <dd>{`${inWords(shown(found))} (${inWords(found.what)})`}</dd>
          <dt>{words.against}</dt>
          <dd>{`${inWords(shown(against))} (${inWords(against.what)})`}</dd>
        </dl>
      )}
      <Text size={200} className={shared.quiet}>
        {`${words.basis}: ${inWords(check.basis)}`}
      </Text>
      {cells.length > 0 && (
        <div className={styles.links}>
          <Text size={200} className={shared.quiet}>
            {words.about}
          </Text>
          {cells.map(({ called, address }) => (
            <Link
              as="button"
              key={called}
              title={called}
              aria-label={`${words.showCell(address)}: ${called}`}
              onClick={() => goTo(address)}
            >
              {address}
            </Link>
          ))}
        </div>
      )}
      {given && (
        <>
          <Text>{`${words.answered(given.given.by, given.given.when)} ${given.given.reason}`}</Text>
          {given.stale && <Notice intent="warning">{words.stale}</Notice>}
        </>
      )}
      {(answer.status === "stop" || answer.status === "explain") && (!given || given.stale) && (
        <AnswerForm test={id} id={check.id} keep={(reason, by) => keep(one, reason, by)} />
      )}
    </li>
  );
}

interface AnswerFormProps {
  readonly test: string;
  readonly id: string;
  readonly keep: (reason: string, by: string) => Promise<boolean>;
}

function AnswerForm({ test, id, keep }: AnswerFormProps) {
  const styles = useStyles();
  const [reason, setReason] = useDraft(test, `answer ${id}`, "");
  const [by, setBy] = useDraft(test, `answer ${id} by`, "");
  const [lacking, setLacking] = useState(false);
  const [busy, setBusy] = useState(false);
  const save = async (): Promise<void> => {
    if (busy) return;
    if (!reason.trim() || !by.trim()) return setLacking(true);
    setLacking(false);
    setBusy(true);
    if (await keep(reason.trim(), by.trim())) setReason("");
    setBusy(false);
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <div className={styles.answer}>
        <Field label={words.answer} validationMessage={lacking ? words.needBoth : undefined}>
          <Input aria-label={`${words.answer} (${id})`} value={reason} onChange={(_, { value }) => setReason(value)} />
        </Field>
        <Field label={words.by}>
          <Input aria-label={`${words.by} (${id})`} value={by} onChange={(_, { value }) => setBy(value)} />
        </Field>
      </div>
      <Button type="submit" size="small" disabledFocusable={busy} aria-label={`${words.save} (${id})`}>
        {words.save}
      </Button>
    </form>
  );
}

interface LimitsProps {
  readonly state: ReviewState;
  readonly insert: () => void;
  readonly showSheet: (sheet: string) => void;
}

function Limits({ state: { limits }, insert, showSheet }: LimitsProps) {
  const shared = useSharedStyles();
  const { sheet } = limits;
  return (
    <Step title={words.limits}>
      <Text block>{sheet === undefined ? words.limitsDefault : words.limitsFrom(sheet)}</Text>
      {limits.changed.length > 0 && (
        <ul className={shared.faults} role="list" tabIndex={0} aria-label={words.limits}>
          {limits.changed.map((one) => (
            <li key={one.name}>
              {words.changed(inWords(limitCalled(one.name)), inWords(one.default), inWords(one.value), one.by, one.why)}
            </li>
          ))}
        </ul>
      )}
      {limits.remarks.map(inWords).map((remark) => (
        <Notice key={remark} intent="warning">
          {sentence(remark)}
        </Notice>
      ))}
      <div>
        {sheet === undefined ? (
          <Button onClick={insert}>{words.insertLimits}</Button>
        ) : (
          <Button onClick={() => showSheet(sheet)}>{words.showLimits}</Button>
        )}
      </div>
    </Step>
  );
}
