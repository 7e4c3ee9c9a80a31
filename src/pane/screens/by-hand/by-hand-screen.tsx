/**
 * Compares results with values calculated by hand and saves the signed comparison on a sheet of its own; it also shows
 * how each number is calculated.
 */
import { Button, Field, Input, makeStyles, Select, Text, tokens } from "@fluentui/react-components";
import { useEffect, useMemo, useState } from "react";
import { bookSheet, calculationBook, type Entry } from "../../../book/calculation-book";
import {
  COMPARISON_NAMES,
  comparisonRow,
  comparisonSheet,
  quantities,
  type Pair,
  type Quantity,
} from "../../../book/comparison";
import { compare, type Compared } from "../../../book/agreement";
import type { evaluateAgain } from "../../../book/second-evaluation";
import { timeStamp } from "../../../workbook/time-stamp";
import { refuseNotYet } from "../../../workbook/busy";
import type { WorkbookPort } from "../../../workbook/port";
import { appendRows } from "../checks/workbook-answers";
import { newSheet } from "../../live/new-sheet";
import { Notice } from "../../ui/notice";
import { HeadNotice } from "../head-notice";
import { RecordFrame } from "../record-frame";
import { Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { sentenceOf } from "../../text/sentence";
import { text } from "../../text";
import { typedNonZero } from "../../ui/typed-number";
import { numberText } from "../../text/number";
import { useDraft, useTest } from "../../live/use-test";
import { RECORD } from "../../live/want";
import type { Reading } from "../../live/workbook-store";

const words = text.byHand;

const useStyles = makeStyles({
  pair: {
    display: "grid",
    gridTemplateColumns: "minmax(0, 1fr) 104px",
    gap: "8px",
    alignItems: "start",
    "& > *": { minWidth: 0 },
    "& .fui-Input": { minWidth: 0, width: "100%" },
    "& input": { minWidth: 0, width: "100%" },
  },
  line: {
    padding: "6px 0",
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
    overflowWrap: "anywhere",
    display: "flex",
    flexDirection: "column",
    gap: "2px",
  },
  book: { fontVariantNumeric: "tabular-nums" },
  result: { fontWeight: tokens.fontWeightSemibold },
});

interface ScreenProps {
  readonly port: WorkbookPort;
  readonly reading: Reading;
}

type Telling = { readonly intent: "success" | "error" | "warning"; readonly sentence: string };

export function ByHandScreen({ port }: { port: WorkbookPort }) {
  const followed = useTest(RECORD);
  const { reading } = followed;
  return (
    <RecordFrame words={words} followed={followed}>
      {reading && (
        <>
          <HeadNotice record={reading.record} />
          <Compare key={`compare ${reading.id}`} port={port} reading={reading} />
          <Working key={`working ${reading.id}`} port={port} reading={reading} />
        </>
      )}
    </RecordFrame>
  );
}

interface ResultsOfProps {
  /** The number of a load; "" for the test as a whole. */
  readonly load: string;
  readonly loads: readonly number[];
  readonly onChoose: (load: string) => void;
}

const ResultsOf = ({ load, loads, onChoose }: ResultsOfProps) => (
  <Field label={words.of}>
    <Select value={load} onChange={(_, { value }) => onChoose(value)}>
      <option value="">{words.test}</option>
      {loads.map((number) => (
        <option key={number} value={String(number)}>
          {words.load(number)}
        </option>
      ))}
    </Select>
  </Field>
);

/** What a person typed for a quantity; the tolerance in percent is missing if it is the usual one. */
interface Typed {
  readonly key: string;
  readonly byHand: string;
  readonly percent?: string;
}

const percentOf = (ratio: number): string => String(Number((100 * ratio).toPrecision(2)));

const named = ({ label, load }: Quantity): string => (load === undefined ? label : `${label}, ${words.load(load)}`);
const said = (value: number, { format, unit }: Quantity): string => `${numberText(value, format)} ${unit}`.trim();

/** The pair of values in a line; undefined if the line has no value by hand yet. */
function pairOf(quantity: Quantity, typed: Typed): Pair | undefined {
  const byHand = typedNonZero(typed.byHand);
  if (byHand === undefined) return undefined;
  const percent = typed.percent === undefined ? undefined : typedNonZero(typed.percent);
  const tolerance = percent !== undefined && percent > 0 && percent < 100 ? percent / 100 : quantity.tolerance;
  return { quantity, byHand, tolerance };
}

function Compare({ port, reading: { id, sheet, values, record } }: ScreenProps) {
  const shared = useSharedStyles();
  const all = useMemo(() => quantities(record, values), [record, values]);
  const [load, setLoad] = useState<string>("");
  const [chosen, setChosen] = useState<string>();
  const [lines, setLines] = useDraft<readonly Typed[]>(id, "by hand", []);
  const [by, setBy] = useDraft(id, "by hand, by", "");
  const [telling, setTelling] = useState<Telling>();
  const [busy, setBusy] = useState(false);

  const loads = [...new Set(all.flatMap(({ load: number }) => (number === undefined ? [] : [number])))];
  const offered = all.filter((one) => String(one.load ?? "") === load && !lines.some(({ key }) => key === one.key));
  const pick = offered.find(({ key }) => key === chosen) ?? offered[0];
  const rows = lines.flatMap((typed) => {
    const quantity = all.find(({ key }) => key === typed.key);
    return quantity ? [{ quantity, typed, pair: pairOf(quantity, typed) }] : [];
  });
  const change = (key: string, part: Partial<Typed>): void => {
    setLines((before) => before.map((one) => (one.key === key ? { ...one, ...part } : one)));
    setTelling(undefined);
  };

  const carryOut = async (work: () => Promise<Telling>): Promise<void> => {
    if (busy) return;
    setBusy(true);
    try {
      setTelling(await work());
    } catch (error) {
      setTelling({ intent: "error", sentence: sentenceOf(error) });
    }
    setBusy(false);
  };
  const take = () =>
    carryOut(async () => {
      const { values: cells, address } = await port.selection();
      const numbers = cells.flat().filter((cell): cell is number => typeof cell === "number");
      if (numbers.length === 0) return { intent: "warning", sentence: words.tookNone };
      const count = Math.min(numbers.length, rows.length);
      const taken = new Map(rows.slice(0, count).map(({ quantity }, index) => [quantity.key, String(numbers[index])]));
      setLines((before) => before.map((one) => ({ ...one, byHand: taken.get(one.key) ?? one.byHand })));
      return { intent: "success", sentence: words.took(count, address) };
    });
  const sign = () =>
    carryOut(async () => {
      const pairs = rows.flatMap(({ pair }) => pair ?? []);
      if (pairs.length === 0) return { intent: "warning", sentence: words.needValues };
      if (!by.trim()) return { intent: "warning", sentence: words.needBy };
      const when = timeStamp(new Date());
      const written = pairs.map((pair) => comparisonRow(sheet, pair, by.trim(), when));
      const place = await appendRows(port, COMPARISON_NAMES, comparisonSheet, written);
      return { intent: "success", sentence: words.signed(pairs.length, sheet, place) };
    });

  return (
    <Step title={words.compare}>
      <div className={shared.fields}>
        <ResultsOf load={load} loads={loads} onChoose={setLoad} />
        <Field label={words.quantity}>
          <Select value={pick?.key ?? ""} onChange={(_, { value }) => setChosen(value)} lang="en">
            {offered.map((one) => (
              <option key={one.key} value={one.key}>
                {one.label}
              </option>
            ))}
          </Select>
        </Field>
      </div>
      <div>
        <Button
          disabledFocusable={!pick}
          onClick={() => pick && setLines((before) => [...before, { key: pick.key, byHand: "" }])}
        >
          {words.add}
        </Button>
      </div>
      {all.length === 0 && <Text block>{words.nothing}</Text>}
      {all.length > 0 && rows.length === 0 && <Text block>{words.choose}</Text>}
      {rows.length > 0 && (
        <>
          <ul className={shared.list}>
            {rows.map(({ quantity, typed, pair }) => (
              <CompareLine
                key={quantity.key}
                {...{ quantity, typed, pair }}
                change={(part) => change(quantity.key, part)}
                remove={() => setLines((before) => before.filter(({ key }) => key !== quantity.key))}
              />
            ))}
          </ul>
          <div>
            <Button disabledFocusable={busy} aria-describedby="take-hint" onClick={take}>
              {words.take}
            </Button>
          </div>
          <Text block size={200} id="take-hint" className={shared.quiet}>
            {words.takeHint}
          </Text>
          <div className={shared.fields}>
            <Field label={words.by}>
              <Input value={by} onChange={(_, { value }) => setBy(value)} />
            </Field>
          </div>
          <div>
            <Button appearance="primary" disabledFocusable={busy} onClick={sign}>
              {words.sign}
            </Button>
          </div>
        </>
      )}
      {telling && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
    </Step>
  );
}

interface CompareLineProps {
  readonly quantity: Quantity;
  readonly typed: Typed;
  readonly pair: Pair | undefined;
  readonly change: (part: Partial<Typed>) => void;
  readonly remove: () => void;
}

function CompareLine({ quantity, typed, pair, change, remove }: CompareLineProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const { drawn } = quantity;
  const found = pair && compare(quantity.value, pair.byHand, pair.tolerance);
  const byDrawing = pair && drawn !== undefined ? compare(drawn, pair.byHand, pair.tolerance) : undefined;
  const refused = typed.byHand.trim() !== "" && !pair;
  return (
    <li className={styles.line}>
      <Text weight="semibold">
        <span lang="en">{quantity.label}</span>
        {quantity.load !== undefined && `, ${words.load(quantity.load)}`}
      </Text>
      <Text className={shared.quiet}>
        {drawn !== undefined && `${words.drawn(said(drawn, quantity))}; `}
        {words.onSheet(said(quantity.value, quantity))}
      </Text>
      <div className={styles.pair}>
        <Field
          label={words.value(named(quantity))}
          hint={words.readings[quantity.reading]}
          validationMessage={refused ? words.notNumber : undefined}
        >
          <Input
            inputMode="decimal"
            value={typed.byHand}
            contentAfter={quantity.unit || undefined}
            onChange={(_, { value }) => change({ byHand: value })}
          />
        </Field>
        <Field label={words.tolerance}>
          <Input
            inputMode="decimal"
            aria-label={`${words.tolerance} (${named(quantity)})`}
            value={typed.percent ?? percentOf(quantity.tolerance)}
            onChange={(_, { value }) => change({ percent: value })}
          />
        </Field>
      </div>
      {byDrawing && <Found of={words.withDrawn} found={byDrawing} quantity={quantity} />}
      {found && <Found of={byDrawing && words.withSheet} found={found} quantity={quantity} />}
      <div>
        <Button size="small" appearance="subtle" aria-label={words.removeOf(named(quantity))} onClick={remove}>
          {words.remove}
        </Button>
      </div>
    </li>
  );
}

interface FoundProps {
  /** The value that the value by hand was compared with, if there is more than one. */
  readonly of: string | undefined;
  readonly found: Compared;
  readonly quantity: Quantity;
}

function Found({ of, found, quantity }: FoundProps) {
  const styles = useStyles();
  return (
    <Text>
      {of !== undefined && `${of} `}
      <span className={styles.result}>{found.agrees ? words.agrees : words.differs}</span>
      {`: ${words.difference(said(found.difference, quantity), numberText(found.relative, "0.0%"))}`}
    </Text>
  );
}

function Working({ port, reading: { sheet, names, values, record } }: ScreenProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  const entries = useMemo(() => calculationBook(record, values), [record, values]);
  const [load, setLoad] = useState("");
  const [telling, setTelling] = useState<Telling>();
  const loads = [...new Set(entries.flatMap(({ load: number }) => (number === undefined ? [] : [number])))];
  const shown = entries.filter((one) => String(one.load ?? "") === load);
  const again = useSecondEvaluation();

  const insert = async (): Promise<void> => {
    try {
      refuseNotYet(values);
      const plan = bookSheet(sheet, entries, names);
      setTelling(await newSheet(port, plan, (book) => words.booked(sheet, book)));
    } catch (error) {
      setTelling({ intent: "error", sentence: sentenceOf(error) });
    }
  };

  return (
    <Step title={words.working}>
      <Text block>{words.workingPurpose}</Text>
      {entries.length === 0 ? (
        <Text block>{words.noWorking}</Text>
      ) : (
        <>
          <div className={shared.fields}>
            <ResultsOf load={load} loads={loads} onChoose={setLoad} />
          </div>
          <dl className={shared.list}>
            {shown.map((entry) => (
              <WorkingLine
                key={`${entry.name} ${entry.load ?? ""}`}
                entry={entry}
                again={again && entry.worked && again(entry.worked)}
                className={styles.line}
              />
            ))}
          </dl>
          <div>
            <Button onClick={insert}>{words.book}</Button>
          </div>
        </>
      )}
      {telling && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
    </Step>
  );
}

type SecondEvaluation = typeof evaluateAgain;

/** Loads the code of the second evaluation when this screen opens, because its parser is larger than the pane. */
function useSecondEvaluation(): SecondEvaluation | undefined {
  const [again, setAgain] = useState<SecondEvaluation>();
  useEffect(() => {
    let gone = false;
    import(/* webpackChunkName: "second-evaluation" */ "../../../book/second-evaluation").then(
      ({ evaluateAgain: loaded }) => gone || setAgain(() => loaded),
      // If the code cannot be loaded, the lines stay without a second evaluation.
      () => undefined,
    );
    return () => void (gone = true);
  }, []);
  return again;
}

interface WorkingLineProps {
  readonly entry: Entry;
  readonly again: ReturnType<SecondEvaluation> | undefined;
  readonly className: string;
}

function WorkingLine({ entry, again, className }: WorkingLineProps) {
  const styles = useStyles();
  const shared = useSharedStyles();
  return (
    <div className={className}>
      <dt lang="en">{entry.label}</dt>
      <dd className={styles.book} style={{ margin: 0 }}>
        <span lang="en">{entry.text}</span>
        {again && (
          <Text block size={200} className={again.agrees ? shared.quiet : styles.result}>
            {again.agrees ? words.twiceAgrees : words.twiceDiffers(numberText(again.value))}
          </Text>
        )}
      </dd>
    </div>
  );
}
