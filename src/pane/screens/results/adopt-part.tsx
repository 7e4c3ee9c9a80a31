/** The form that adopts a value on the sheet, and takes an adopted value back. */
import { Button, Field, Input, Text, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import type { NamedColumns, WorkbookPort } from "../../../workbook/port";
import { localDayNumber } from "../../../workbook/day-number";
import { useDraft } from "../../live/use-test";
import type { Reading } from "../../live/workbook-store";
import { text } from "../../text";
import { shown } from "../../text/digits";
import { contentText } from "../../text/number";
import { sentenceOf } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { NumberField } from "../../ui/number-field";
import { Choice, Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { writeAsSeen } from "../write-as-seen";
import {
  ADOPTED_NAMES,
  adoptionIn,
  adoptRow,
  blankAmong,
  cellNames,
  cellsToAdopt,
  cellsToTakeBack,
  isCv,
  rangeGiven,
  replaces,
  sameStanding,
  standingOf,
  stressesIn,
  type AdoptRow,
  type Range,
} from "./adopt-rows";
import {
  adoptingOf,
  adoptState,
  START,
  typedStresses,
  type AdoptAct,
  type AdoptState,
  type Entry,
} from "./adopt-state";
import type { Results } from "./results";

const words = text.adopt;

interface AdoptPartProps {
  readonly port: WorkbookPort;
  readonly reading: Reading;
  readonly methods: Results["methods"];
  /** Reads the sheet again. */
  readonly again: () => Promise<void>;
}

/** What stands in the row, in a sentence or two; "" if nothing does. */
function standingSaid({ name, standing, unit, stressUnit }: AdoptRow): string {
  const adoption = adoptionIn(standing, name);
  const stresses = stressesIn(standing).map((value) => `${contentText(value)} ${stressUnit}`.trim());
  const value = adoption && contentText(adoption.value);
  return [
    adoption &&
      words.stands(
        value ? `${value} ${unit}`.trim() : words.noValue,
        adoption.by || words.noInitials,
        adoption.day,
        adoption.reason || words.noReason,
      ),
    stresses.length > 0 && words.stresses(stresses.join(", ")),
  ]
    .filter(Boolean)
    .join(" ");
}

/** The writing of cells into the row as the form shows it, and the sentence that follows. */
function useAdopting({ port, reading, again }: AdoptPartProps, row: AdoptRow, dispatch: (act: AdoptAct) => void) {
  const [busy, setBusy] = useState(false);
  const write = async (cells: NamedColumns, done: AdoptAct): Promise<void> => {
    if (busy) return;
    setBusy(true);
    dispatch({ does: "write" });
    try {
      const wrote = await writeAsSeen(port, reading.sheet, cells, {
        names: cellNames(row.name),
        isAsSeen: (values) => sameStanding(standingOf(values, row.name), row.standing),
        free: blankAmong(cells, row.standing),
      });
      await again();
      dispatch(
        wrote === "written" ? done : { does: "tell", telling: { intent: "warning", sentence: words.changedMeanwhile } },
      );
    } catch (failure) {
      dispatch({ does: "tell", telling: { intent: "error", sentence: sentenceOf(failure) } });
    }
    setBusy(false);
  };
  return { busy, write };
}

export function AdoptPart(props: AdoptPartProps) {
  const { reading, methods } = props;
  const { id, sheet, values, record } = reading;
  const shared = useSharedStyles();
  const [state, setState] = useDraft<AdoptState>(id, "adopt", START);
  const dispatch = (act: AdoptAct): void => setState((before) => adoptState(before, act));
  const row = adoptRow(values, state.quantity);
  const { busy, write } = useAdopting(props, row, dispatch);
  const range = rangeGiven(row, values, record, methods, typedStresses(state));
  const quantity = words.quantities[state.quantity];

  const adopt = (isAgreed: boolean): void => {
    const made = adoptingOf(state, row, range, Math.floor(localDayNumber(new Date())));
    if ("fault" in made) return dispatch({ does: "refuse", fault: made.fault });
    const cells = cellsToAdopt(state.quantity, made.adopting);
    if (!isAgreed && replaces(cells, row.standing)) return dispatch({ does: "ask", about: "replace" });
    void write(cells, { does: "adopted", sentence: words.done(quantity, sheet) });
  };
  const takeBack = (): void =>
    void write(cellsToTakeBack(state.quantity), {
      does: "tell",
      telling: { intent: "success", sentence: words.takenBack(quantity, sheet) },
    });
  return (
    <Step title={words.title}>
      <Text className={shared.quiet}>{words.what}</Text>
      <Choice
        label={words.quantity}
        options={ADOPTED_NAMES.map((name) => [name, words.quantities[name]] as const)}
        value={state.quantity}
        onChoose={(chosen) => dispatch({ does: "choose", quantity: chosen })}
      />
      <Given row={row} range={range} />
      {row.missing.length > 0 ? (
        <Notice intent="info">{words.noCells(row.missing.join(", "))}</Notice>
      ) : (
        <>
          <Entries state={state} row={row} onType={(entry, typed) => dispatch({ does: "type", entry, typed })} />
          {state.asking ? (
            <Asking
              {...{ about: state.asking, row }}
              onYes={state.asking === "replace" ? () => adopt(true) : takeBack}
              onNo={() => dispatch({ does: "keep" })}
            />
          ) : (
            <div className={shared.row}>
              <Button appearance="primary" disabledFocusable={busy} onClick={() => adopt(false)}>
                {words.adopt(sheet)}
              </Button>
              {adoptionIn(row.standing, row.name) && (
                <Button disabledFocusable={busy} onClick={() => dispatch({ does: "ask", about: "take back" })}>
                  {words.takeBack}
                </Button>
              )}
            </div>
          )}
        </>
      )}
      {busy && <Text block>{words.writing}</Text>}
      {state.telling && <Notice intent={state.telling.intent}>{state.telling.sentence}</Notice>}
    </Step>
  );
}

/** What the constructions give, their range, and what stands in the row. */
function Given({ row, range }: { readonly row: AdoptRow; readonly range: Range | undefined }) {
  const { constructed, unit } = row;
  const figure = (value: number): string => `${shown(value, 4)} ${unit}`.trim();
  const standing = standingSaid(row);
  return (
    <>
      <Text block>
        {constructed === undefined ? words.gaveNone : words.gave(figure(constructed))}
        {range && range[0] !== range[1] && ` ${words.range(shown(range[0], 4), figure(range[1]))}`}
      </Text>
      {standing !== "" && <Text block>{standing}</Text>}
    </>
  );
}

interface EntriesProps {
  readonly state: AdoptState;
  readonly row: AdoptRow;
  readonly onType: (entry: Entry, typed: string) => void;
}

function Entries({ state: { typed, fault, quantity }, row, onType }: EntriesProps) {
  const shared = useSharedStyles();
  const faultOf = (entry: Entry): string | undefined =>
    fault?.entry === entry ? words.faults[fault.why](words.entries[entry]) : undefined;
  const number = (entry: "value" | "from" | "to", unit: string, used?: number) => (
    <NumberField
      label={words.entryIn(words.entries[entry], unit)}
      hint={used === undefined ? undefined : words.nowUsed(`${shown(used, 4)} ${unit}`.trim())}
      value={typed[entry]}
      fault={faultOf(entry)}
      onType={(value) => onType(entry, value)}
    />
  );
  const said = (entry: "reason" | "by") => ({
    label: words.entries[entry],
    validationState: faultOf(entry) === undefined ? ("none" as const) : ("error" as const),
    validationMessage: faultOf(entry),
  });
  return (
    <>
      <div className={shared.fields}>
        {number("value", row.unit)}
        {isCv(quantity) && number("from", row.stressUnit, row.low)}
        {isCv(quantity) && number("to", row.stressUnit, row.high)}
      </div>
      <Field {...said("reason")} hint={words.reasonHint}>
        <Textarea value={typed.reason} onChange={(_, { value }) => onType("reason", value)} />
      </Field>
      <div className={shared.fields}>
        <Field {...said("by")} required>
          <Input value={typed.by} onChange={(_, { value }) => onType("by", value)} />
        </Field>
      </div>
    </>
  );
}

interface AskingProps {
  readonly about: "replace" | "take back";
  readonly row: AdoptRow;
  readonly onYes: () => void;
  readonly onNo: () => void;
}

function Asking({ about, row, onYes, onNo }: AskingProps) {
  const shared = useSharedStyles();
  const standing = standingSaid(row);
  return (
    <>
      <Notice intent="warning">{about === "replace" ? words.askReplace(standing) : words.askTakeBack(standing)}</Notice>
      <div className={shared.row}>
        <Button appearance="primary" onClick={onYes}>
          {about === "replace" ? words.replaceYes : words.takeBackYes}
        </Button>
        <Button onClick={onNo}>{words.no}</Button>
      </div>
    </>
  );
}
