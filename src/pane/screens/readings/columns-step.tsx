/** What the columns of the file are, and in which units: offered from the file, and confirmed by the person. */
import { Button, Field, Input, Text } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { columnLetters } from "../../../workbook/address";
import type { Layout } from "../../../exchange/logger/layout";
import { finished, offerLayout, type LayoutDraft } from "../../../exchange/logger/offer";
import { readRows, type LoggerRows } from "../../../exchange/logger/rows";
import { cellsOf } from "../../../exchange/logger/table";
import { figure } from "../../../reduction/outcome";
import { UNITS } from "../../../reduction/units";
import { Notice } from "../../ui/notice";
import { Choice, optionsOf, Step } from "../../ui/parts";
import type { Source } from "./source-step";
import { useStyles } from "../../ui/styles";
import { text } from "../../text";
import { typedNumber } from "../../ui/typed-number";

const words = text.readings;

/** A layout that was used before, under the name of its apparatus. */
export interface Remembered {
  readonly apparatus: string;
  readonly layout: Layout;
}

/** Lines shown above and from the first line of readings. */
const ABOVE = 3;
const BELOW = 5;
/** So many lines are tried out while the choices are made. */
const TRIED = 50;

/** The values of "-9999; 9.9E+37"; undefined where one of them is no number. */
function numbersTyped(typed: string): number[] | undefined {
  const numbers = typed
    .split(/[;\s]+/)
    .filter(Boolean)
    .map((one) => typedNumber(one) ?? NaN);
  return numbers.every(Number.isFinite) ? numbers : undefined;
}

const NO_LOAD: Partial<LayoutDraft> = { loadKind: "stress", loadUnit: "" };
const LOAD_TO_ASK: Partial<LayoutDraft> = { loadKind: undefined, loadUnit: undefined };

const UNIT_OF_KIND = { stress: Object.keys(UNITS.stress), force: Object.keys(UNITS.force), number: [] as string[] };

const NAMES_OF_CHOICES: Record<keyof Layout, string> = {
  delimiter: words.delimiter,
  decimal: words.decimal,
  firstLine: words.firstLine,
  time: words.time,
  timeForm: words.timeForm,
  date: words.date,
  dateOrder: words.dateOrder,
  timesRun: words.timesRun,
  reading: words.reading,
  readingUnit: words.readingUnit,
  sense: words.sense,
  load: words.load,
  loadKind: words.loadKind,
  loadUnit: words.loadUnit,
  lever: words.lever,
  noReading: words.noReading,
};

export interface ReadingsColumnsProps {
  readonly source: Source;
  readonly remembered: readonly Remembered[];
  /** The number of the frame on the data sheet, if it says one. */
  readonly frame: string;
  readonly onUse: (layout: Layout, apparatus: string) => void;
  /** The choices are no longer those that were confirmed. */
  readonly onChange: () => void;
}

export function ReadingsColumns({ source, remembered, frame, onUse, onChange }: ReadingsColumnsProps) {
  const styles = useStyles();
  const { lines } = source.file;
  const [touched, setTouched] = useState<Partial<LayoutDraft>>({});
  const [typed, setTyped] = useState<{ firstLine?: string; lever?: string; noReading?: string }>({});
  const [apparatus, setApparatus] = useState<string>();
  const [asked, setAsked] = useState(false);

  const { delimiter, decimal, firstLine } = touched;
  const offer = useMemo(
    () => offerLayout(lines, { delimiter, decimal, firstLine }),
    [lines, delimiter, decimal, firstLine],
  );
  const draft: LayoutDraft = useMemo(() => ({ ...offer.draft, ...touched }), [offer, touched]);
  const result = useMemo(() => finished(draft), [draft]);
  const set = (change: Partial<LayoutDraft>): void => {
    setTouched((before) => ({ ...before, ...change }));
    onChange();
  };
  const tried = useMemo(() => ("layout" in result ? tryOut(source, result.layout) : undefined), [source, result]);

  const recall = (chosen: number): void => {
    setTyped({});
    onChange();
    const found = remembered[chosen];
    setApparatus(found?.apparatus);
    if (!found) return setTouched({});
    // Where readings begin is this file's own affair.
    const layout: Partial<LayoutDraft> & Layout = { ...found.layout };
    delete (layout as Partial<LayoutDraft> as { firstLine?: number }).firstLine;
    const columns = offerLayout(lines, layout).columns.length;
    const here = <T extends number | null>(col: T): T | undefined => (col === null || col < columns ? col : undefined);
    setTouched({
      ...layout,
      time: here(layout.time),
      reading: here(layout.reading),
      date: here(layout.date),
      load: here(layout.load),
    });
  };

  const columnOptions = offer.columns.map(
    (name, col) => [String(col), name ? `${columnLetters(col)}: ${name}` : columnLetters(col)] as const,
  );
  const column = (key: "time" | "reading" | "date" | "load", none?: string) => {
    const value = draft[key];
    return (
      <Choice
        label={words[key]}
        options={none === undefined ? columnOptions : [["none", none] as const, ...columnOptions]}
        value={value === undefined ? undefined : value === null ? "none" : String(value)}
        onChoose={(chosen) => {
          const col = chosen === "none" ? null : Number(chosen);
          const asks = col === null ? NO_LOAD : draft.load === null ? LOAD_TO_ASK : {};
          set({ [key]: col, ...(key === "load" ? asks : {}) });
        }}
      />
    );
  };
  const number = (key: "firstLine" | "lever", hint?: string) => (
    <Field
      label={words[key]}
      hint={hint}
      validationState={draft[key] === undefined ? "error" : "none"}
      validationMessage={draft[key] === undefined ? words.notSaid : undefined}
    >
      <Input
        inputMode="decimal"
        value={typed[key] ?? String(draft[key] ?? "")}
        onChange={(_, { value }) => {
          setTyped((before) => ({ ...before, [key]: value }));
          const entered = typedNumber(value) ?? NaN;
          const sound =
            key === "lever" ? entered > 0 : Number.isInteger(entered) && entered >= 1 && entered <= lines.length;
          set({ [key]: sound ? entered : undefined });
        }}
      />
    </Field>
  );
  const unitsOfLoad = UNIT_OF_KIND[draft.loadKind ?? "stress"];

  return (
    <Step title={words.columnsHeading}>
      <Text>{words.offered}</Text>
      {remembered.length > 0 && (
        <Choice
          label={words.remembered}
          options={[
            ["-1", words.notRemembered],
            ...remembered.map((one, index) => [String(index), one.apparatus] as const),
          ]}
          value={String(remembered.findIndex((one) => one.apparatus === apparatus))}
          onChoose={(index) => recall(Number(index))}
        />
      )}
      <Preview lines={lines} draft={draft} columns={offer.columns} />
      <div className={styles.fields}>
        <Choice
          label={words.delimiter}
          options={optionsOf(words.delimiters)}
          value={draft.delimiter}
          onChoose={(chosen) => {
            setTouched({ delimiter: chosen });
            onChange();
          }}
        />
        <Choice
          label={words.decimal}
          options={optionsOf(words.decimals)}
          value={draft.decimal}
          onChoose={(chosen) => set({ decimal: chosen })}
        />
        {number("firstLine")}
      </div>
      <div className={styles.fields}>
        {column("time")}
        <Choice
          label={words.timeForm}
          options={optionsOf(words.timeForms)}
          value={draft.timeForm}
          onChoose={(timeForm) =>
            set({ timeForm, ...(timeForm === "clock" ? { timesRun: "test" as const } : { date: null }) })
          }
        />
        {draft.timeForm === "clock" ? (
          <>
            {column("date", words.noDate)}
            <Choice
              label={words.dateOrder}
              options={optionsOf(words.dateOrders)}
              value={draft.dateOrder}
              onChoose={(dateOrder) => set({ dateOrder })}
            />
          </>
        ) : (
          <Choice
            label={words.timesRun}
            options={optionsOf(words.timesRuns)}
            value={draft.timesRun}
            onChoose={(timesRun) => set({ timesRun })}
          />
        )}
      </div>
      <div className={styles.fields}>
        {column("reading")}
        <Choice
          label={words.readingUnit}
          options={[["div", words.division], ...Object.keys(UNITS.length).map((unit) => [unit, unit] as const)]}
          value={draft.readingUnit}
          onChoose={(readingUnit) => set({ readingUnit })}
        />
        <Choice
          label={words.sense}
          options={optionsOf(words.senses)}
          value={draft.sense}
          onChoose={(sense) => set({ sense })}
        />
      </div>
      <div className={styles.fields}>
        {column("load", words.noLoad)}
        {draft.load !== null && draft.load !== undefined && (
          <>
            <Choice
              label={words.loadKind}
              options={optionsOf(words.loadKinds)}
              value={draft.loadKind}
              onChoose={(loadKind) => set({ loadKind, loadUnit: loadKind === "number" ? "" : undefined })}
            />
            {draft.loadKind !== "number" && (
              <Choice
                label={words.loadUnit}
                options={unitsOfLoad.map((unit) => [unit, unit] as const)}
                value={unitsOfLoad.includes(draft.loadUnit ?? "") ? draft.loadUnit : undefined}
                onChoose={(loadUnit) => set({ loadUnit })}
              />
            )}
            {draft.loadKind === "force" && number("lever", words.leverHint)}
          </>
        )}
      </div>
      <div className={styles.fields}>
        <Field
          label={words.noReading}
          hint={words.noReadingHint}
          validationState={draft.noReading === undefined ? "error" : "none"}
        >
          <Input
            value={typed.noReading ?? (draft.noReading ?? []).map(String).join("  ")}
            onChange={(_, { value }) => {
              setTyped((before) => ({ ...before, noReading: value }));
              set({ noReading: numbersTyped(value) });
            }}
          />
        </Field>
        <Field label={words.apparatus} hint={words.apparatusHint}>
          <Input value={apparatus ?? frame} onChange={(_, { value }) => setApparatus(value)} />
        </Field>
      </div>
      {"layout" in result && tried && <Tried rows={tried} layout={result.layout} />}
      {asked && "missing" in result && (
        <Notice intent="error">
          {words.missing(result.missing.map((key) => NAMES_OF_CHOICES[key].toLowerCase()).join("; "))}
        </Notice>
      )}
      <div>
        <Button
          appearance="primary"
          onClick={() => {
            setAsked(true);
            if ("layout" in result) onUse(result.layout, (apparatus ?? frame).trim());
          }}
        >
          {words.confirm}
        </Button>
      </div>
    </Step>
  );
}

/** Reads the first lines as all of them will be. */
function tryOut(source: Source, layout: Layout): LoggerRows {
  const lines = source.file.lines.slice(0, layout.firstLine - 1 + TRIED);
  const steps = readRows({ ...source.file, lines, endsWhole: true }, layout);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

/** So many minutes cannot have been counted by a logger: they are a date's, from 1970. */
const DATED = 10_000_000;

/** How the first and the last of the tried lines are understood. */
function Tried({ rows, layout }: { rows: LoggerRows; layout: Layout }) {
  const styles = useStyles();
  if (rows.lines.length === 0)
    return (
      <Notice intent="warning">
        {words.noneRead} {rows.faults[0] && words.fault(rows.faults[0].line, words.faults[rows.faults[0].kind])}
      </Notice>
    );
  const said = (index: number): string => {
    const minutes = rows.times[index];
    const time =
      minutes > DATED
        ? new Date(Math.round(minutes * 60_000))
            .toISOString()
            .replace("T", " ")
            .slice(0, 23)
            .replace(/\.000$/, "")
        : words.readAsTime(figure(minutes));
    const unit = layout.readingUnit === "div" ? words.division : layout.readingUnit;
    const load = rows.loads[index];
    return words.readAs(
      rows.lines[index],
      [
        time,
        words.readAsReading(rows.readings[index], unit),
        ...(Number.isNaN(load) ? [] : [words.readAsLoad(load, layout.loadUnit)]),
      ].join("; "),
    );
  };
  const last = rows.lines.length - 1;
  return (
    <Text size={200} className={styles.quiet}>
      {said(0)}
      {last > 0 && (
        <>
          <br />
          {said(last)}
        </>
      )}
    </Text>
  );
}

interface PreviewProps {
  readonly lines: readonly string[];
  readonly draft: LayoutDraft;
  readonly columns: readonly string[];
}

function Preview({ lines, draft, columns }: PreviewProps) {
  const styles = useStyles();
  const first = draft.firstLine ?? 1;
  const from = Math.max(0, first - 1 - ABOVE);
  const rows = cellsOf(lines.slice(from, first - 1 + BELOW), draft.delimiter ?? ",");
  const width = Math.max(columns.length, 1, ...rows.map((row) => row.length));
  const roleOf = (col: number): string =>
    (["time", "date", "reading", "load"] as const)
      .filter((key) => draft[key] === col)
      .map((key) => words.roles[key])
      .join(", ");
  const all = Array.from({ length: width }, (_, col) => col);
  return (
    <div className={styles.scroll} role="region" aria-label={words.preview} tabIndex={0}>
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">{words.line}</th>
            {all.map((col) => (
              <th key={col} scope="col" className={roleOf(col) && "chosen"}>
                {columnLetters(col)}
                {roleOf(col) && `: ${roleOf(col)}`}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index} className={from + index + 1 < first ? "above" : undefined}>
              <th scope="row">{from + index + 1}</th>
              {all.map((col) => (
                <td key={col} className={roleOf(col) && "chosen"}>
                  {(row[col] ?? "").slice(0, 40)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
