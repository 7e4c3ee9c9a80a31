/**
 * One large field for the reading that is due. Enter writes the reading; if it is off the curve, the screen asks first.
 */
import { Button, Field, Radio, RadioGroup, Text } from "@fluentui/react-components";
import type { FormEvent } from "react";
import { readingText } from "../../text/number";
import { NumberField } from "../../ui/number-field";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { sentence } from "../../text/sentence";
import { Notice } from "../../ui/notice";
import { useStyles } from "../../ui/styles";
import type { BenchState } from "./bench-state";
import { timeText } from "./clock-words";

const words = text.bench;

export interface Offered {
  /** The row of the two columns, counted from 1, for the reading. */
  readonly row: number;
  /** The time of the schedule in minutes; missing for a row after the end of the schedule. */
  readonly scheduled?: number;
  /** The minutes since the load was applied; missing if the moment of loading is unknown. */
  readonly clock?: number;
  /** True if the time of the clock is written. */
  readonly byClock: boolean;
}

export interface ReadingEntryProps {
  readonly state: BenchState;
  readonly offered: Offered;
  /** The unit of readings that are lengths; undefined for divisions of a dial. */
  readonly length: string | undefined;
  readonly onType: (typed: string) => void;
  readonly onByClock: (byClock: boolean) => void;
  readonly onWrite: () => void;
  readonly onTakeBack: () => void;
}

/** The time of a reading; undefined without a schedule and without a clock. */
export const timeOf = ({ scheduled, clock, byClock }: Offered): number | undefined =>
  byClock ? clock : (scheduled ?? clock);

export function ReadingEntry(props: ReadingEntryProps) {
  const { state, offered, length, onType, onByClock, onWrite, onTakeBack } = props;
  const styles = useStyles();
  const { typed, doubt, entries, busy } = state;
  const { scheduled, clock, byClock } = offered;
  const time = timeOf(offered);
  const last = entries[0];
  const submit = (event: FormEvent): void => {
    event.preventDefault();
    onWrite();
  };
  return (
    <form onSubmit={submit} className={styles.column}>
      <NumberField
        label={words.field(time === undefined ? "" : timeText(time))}
        hint={words.fieldHint(length)}
        size="large"
        autoComplete="off"
        value={typed}
        onType={onType}
      />
      {scheduled !== undefined && clock !== undefined && clock > 0 && (
        <Field label={words.whichTime}>
          <RadioGroup value={byClock ? "clock" : "schedule"} onChange={(_, { value }) => onByClock(value === "clock")}>
            <Radio value="schedule" label={words.atSchedule(timeText(scheduled))} />
            <Radio value="clock" label={words.atClock(timeText(clock))} />
          </RadioGroup>
        </Field>
      )}
      {doubt && (
        <Notice intent="warning" title={words.doubtTitle}>
          {sentence(inWords(doubt))}
        </Notice>
      )}
      <div className={styles.row}>
        <Button type="submit" appearance="primary" size="large" disabled={busy || time === undefined}>
          {doubt ? words.writeAnyway : words.write}
        </Button>
        {last && (
          <Button type="button" disabled={busy} onClick={onTakeBack}>
            {words.takeBack(timeText(last.time), readingText(last.reading))}
          </Button>
        )}
      </div>
      {state.telling && (
        <Notice intent={state.telling.intent}>
          <Text>{state.telling.sentence}</Text>
        </Notice>
      )}
    </form>
  );
}
