/** Asks what the columns of the file mean, and their units. It offers what the file shows; the person confirms. */
import { Button, Field, Input, Text } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import type { Layout, LoadKind } from "../../../exchange/logger/layout";
import type { LayoutDraft } from "../../../exchange/logger/offer";
import { UNITS } from "../../../reduction/units";
import { columnLetters } from "../../../workbook/address";
import { NumberField } from "../../ui/number-field";
import { text } from "../../text";
import { contentText } from "../../text/number";
import { Notice } from "../../ui/notice";
import { Choice, optionsOf, Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { Preview, Tried, tryOut } from "./first-lines";
import { chosen, NO_CHOICES, offerOf, type LayoutAction, type LayoutChoices, type Remembered } from "./layout-choices";
import type { Source } from "./source-step";

const words = text.readings;

const UNIT_OF_KIND: Readonly<Record<LoadKind, readonly string[]>> = {
  stress: Object.keys(UNITS.stress),
  force: Object.keys(UNITS.force),
  number: [],
};

const NAMES_OF_CHOICES: Required<Record<keyof Layout, string>> = {
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
  temperature: words.temperature,
  noReading: words.noReading,
};

export interface ReadingsColumnsProps {
  readonly source: Source;
  readonly remembered: readonly Remembered[];
  /** The number of the frame on the data sheet, if it has one. */
  readonly frame: string;
  readonly onUse: (layout: Layout, apparatus: string) => void;
  /** Called when the choices differ from the confirmed ones. */
  readonly onChange: () => void;
}

export function ReadingsColumns({ source, remembered, frame, onUse, onChange }: ReadingsColumnsProps) {
  const { lines } = source.file;
  const [choices, setChoices] = useState(NO_CHOICES);
  const [asked, setAsked] = useState(false);

  const offer = useMemo(() => offerOf(lines, choices), [lines, choices]);
  const { draft, result } = offer;
  const tried = useMemo(() => ("layout" in result ? tryOut(source, result.layout) : undefined), [source, result]);
  const choose = (action: LayoutAction): void => {
    setChoices((before) => chosen(before, action, draft));
    if (action.do !== "apparatus") onChange();
  };
  const form: FormProps = {
    draft,
    typed: choices.typed,
    columns: offer.columns.map((name, col) => [
      String(col),
      name ? `${columnLetters(col)}: ${name}` : columnLetters(col),
    ]),
    lines: lines.length,
    choose,
  };
  const apparatus = choices.apparatus ?? frame;
  const confirm = (): void => {
    setAsked(true);
    if ("layout" in result) onUse(result.layout, apparatus.trim());
  };

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
          value={String(remembered.findIndex((one) => one.apparatus === choices.apparatus))}
          onChoose={(index) => choose({ do: "recall", remembered: remembered[Number(index)], lines })}
        />
      )}
      <Preview lines={lines} draft={draft} columns={offer.columns} />
      <FormOfFile {...form} />
      <TimeFields {...form} />
      <ReadingFields {...form} />
      <LoadFields {...form} />
      <OtherFields {...form} apparatus={apparatus} />
      {"layout" in result && tried && <Tried rows={tried} layout={result.layout} />}
      {asked && "missing" in result && (
        <Notice intent="error">{words.missing(result.missing.map((key) => NAMES_OF_CHOICES[key]))}</Notice>
      )}
      <div>
        <Button appearance="primary" onClick={confirm}>
          {words.confirm}
        </Button>
      </div>
    </Step>
  );
}

interface FormProps {
  readonly draft: LayoutDraft;
  readonly typed: LayoutChoices["typed"];
  /** The number and name of each column of the file. */
  readonly columns: readonly (readonly [string, string])[];
  /** The number of lines of the file. */
  readonly lines: number;
  readonly choose: (action: LayoutAction) => void;
}

interface ColumnFieldProps extends FormProps {
  readonly of: "time" | "reading" | "date" | "load" | "temperature";
  /** The text of the option for "no column", if the choice may be left out. */
  readonly none?: string;
}

function ColumnField({ of, none, draft, columns, choose }: ColumnFieldProps) {
  // A layout saved by an older version has no entry for the temperature column.
  const col = of === "temperature" ? (draft[of] ?? null) : draft[of];
  return (
    <Choice
      label={words[of]}
      options={none === undefined ? columns : [["none", none] as const, ...columns]}
      value={col === undefined ? undefined : col === null ? "none" : String(col)}
      onChoose={(to) => choose({ do: "column", key: of, col: to === "none" ? null : Number(to) })}
    />
  );
}

function LayoutNumber({
  of,
  hint,
  draft,
  typed,
  lines,
  choose,
}: FormProps & { of: "firstLine" | "lever"; hint?: string }) {
  return (
    <NumberField
      label={words[of]}
      hint={hint}
      value={typed[of] ?? contentText(draft[of] ?? "")}
      fault={draft[of] === undefined ? words.notSaid : undefined}
      onType={(value) => choose({ do: "type", key: of, text: value, lines })}
    />
  );
}

function FormOfFile(form: FormProps) {
  const { draft, choose } = form;
  const styles = useStyles();
  return (
    <div className={styles.fields}>
      <Choice
        label={words.delimiter}
        options={optionsOf(words.delimiters)}
        value={draft.delimiter}
        onChoose={(delimiter) => choose({ do: "delimiter", delimiter })}
      />
      <Choice
        label={words.decimal}
        options={optionsOf(words.decimals)}
        value={draft.decimal}
        onChoose={(decimal) => choose({ do: "set", change: { decimal } })}
      />
      <LayoutNumber of="firstLine" {...form} />
    </div>
  );
}

function TimeFields(form: FormProps) {
  const { draft, choose } = form;
  const styles = useStyles();
  return (
    <div className={styles.fields}>
      <ColumnField of="time" {...form} />
      <Choice
        label={words.timeForm}
        options={optionsOf(words.timeForms)}
        value={draft.timeForm}
        onChoose={(timeForm) =>
          choose({ do: "set", change: { timeForm, ...(timeForm === "clock" ? { timesRun: "test" } : { date: null }) } })
        }
      />
      {draft.timeForm === "clock" ? (
        <>
          <ColumnField of="date" none={words.noDate} {...form} />
          <Choice
            label={words.dateOrder}
            options={optionsOf(words.dateOrders)}
            value={draft.dateOrder}
            onChoose={(dateOrder) => choose({ do: "set", change: { dateOrder } })}
          />
        </>
      ) : (
        <Choice
          label={words.timesRun}
          options={optionsOf(words.timesRuns)}
          value={draft.timesRun}
          onChoose={(timesRun) => choose({ do: "set", change: { timesRun } })}
        />
      )}
    </div>
  );
}

function ReadingFields(form: FormProps) {
  const { draft, choose } = form;
  const styles = useStyles();
  return (
    <div className={styles.fields}>
      <ColumnField of="reading" {...form} />
      <Choice
        label={words.readingUnit}
        options={[["div", words.division], ...Object.keys(UNITS.length).map((unit) => [unit, unit] as const)]}
        value={draft.readingUnit}
        onChoose={(readingUnit) => choose({ do: "set", change: { readingUnit } })}
      />
      <Choice
        label={words.sense}
        options={optionsOf(words.senses)}
        value={draft.sense}
        onChoose={(sense) => choose({ do: "set", change: { sense } })}
      />
    </div>
  );
}

function LoadFields(form: FormProps) {
  const { draft, choose } = form;
  const styles = useStyles();
  const units = UNIT_OF_KIND[draft.loadKind ?? "stress"];
  return (
    <div className={styles.fields}>
      <ColumnField of="load" none={words.noLoad} {...form} />
      {draft.load !== null && draft.load !== undefined && (
        <>
          <Choice
            label={words.loadKind}
            options={optionsOf(words.loadKinds)}
            value={draft.loadKind}
            onChoose={(loadKind) =>
              choose({ do: "set", change: { loadKind, loadUnit: loadKind === "number" ? "" : undefined } })
            }
          />
          {draft.loadKind !== "number" && (
            <Choice
              label={words.loadUnit}
              options={units.map((unit) => [unit, unit] as const)}
              value={units.includes(draft.loadUnit ?? "") ? draft.loadUnit : undefined}
              onChoose={(loadUnit) => choose({ do: "set", change: { loadUnit } })}
            />
          )}
          {draft.loadKind === "force" && <LayoutNumber of="lever" hint={words.leverHint} {...form} />}
        </>
      )}
      <ColumnField of="temperature" none={words.noLoad} {...form} />
    </div>
  );
}

/** The texts that stand for no reading, and the name under which the layout is remembered. */
function OtherFields({ draft, typed, lines, choose, apparatus }: FormProps & { apparatus: string }) {
  const styles = useStyles();
  return (
    <div className={styles.fields}>
      <Field
        label={words.noReading}
        hint={words.noReadingHint}
        validationState={draft.noReading === undefined ? "error" : "none"}
      >
        <Input
          value={typed.noReading ?? (draft.noReading ?? []).map(String).join("  ")}
          onChange={(_, { value }) => choose({ do: "type", key: "noReading", text: value, lines })}
        />
      </Field>
      <Field label={words.apparatus} hint={words.apparatusHint}>
        <Input value={apparatus} onChange={(_, { value }) => choose({ do: "apparatus", name: value })} />
      </Field>
    </div>
  );
}
