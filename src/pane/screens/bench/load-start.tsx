/**
 * Shows when the load was applied. The moment is read from the load table, or a button writes it there when the load is
 * put on.
 */
import { Button, Field, Input, Text } from "@fluentui/react-components";
import { useState } from "react";
import { localDayNumber } from "../../../workbook/day-number";
import { hasTimeOfDay, type StandingLoad } from "../../../record/standing-load";
import { text } from "../../text";
import { useStyles } from "../../ui/styles";
import { fieldMoment, fieldText, lastingText, momentText } from "./clock-words";
import { elapsed } from "./schedule";

const words = text.bench;

/** The minutes by which the moment may be later than the clock, which advances once a second. */
const CLOCK_SLACK = 0.1;

/** Rounds a moment to the second. */
const toSecond = (day: number): number => Math.round(day * 86_400) / 86_400;

export interface LoadStartProps {
  readonly load: StandingLoad;
  /** The address of the cell with the moment of loading; undefined if the sheet has none. */
  readonly cell: string | undefined;
  readonly now: number;
  readonly busy: boolean;
  readonly onStart: (started: number) => void;
}

export function LoadStart({ load, cell, now, busy, onStart }: LoadStartProps) {
  const styles = useStyles();
  const [typed, setTyped] = useState<string>();
  const gone = elapsed(load, now);
  if (hasTimeOfDay(load.started) && gone !== undefined)
    return (
      <div>
        <Text block>{words.started(momentText(load.started, now))}</Text>
        {gone < -CLOCK_SLACK ? (
          <Text block role="status">
            {words.future(cell)}
          </Text>
        ) : (
          <Text block size={500} weight="semibold" style={{ fontVariantNumeric: "tabular-nums" }}>
            {words.standing} {lastingText(gone)}
          </Text>
        )}
      </div>
    );
  const moment = fieldMoment(typed ?? fieldText(now));
  return (
    <>
      <Text block>{words.noStart(cell)}</Text>
      <div className={styles.row}>
        <Button appearance="primary" disabled={busy} onClick={() => onStart(toSecond(localDayNumber(new Date())))}>
          {words.appliedNow}
        </Button>
      </div>
      <Field label={words.applied} hint={words.startHint}>
        <Input
          type="datetime-local"
          step={1}
          value={typed ?? fieldText(now).slice(0, 16)}
          onChange={(_, { value }) => setTyped(value)}
        />
      </Field>
      <div>
        <Button
          disabled={busy || typed === undefined || moment === undefined}
          onClick={() => moment !== undefined && onStart(moment)}
        >
          {words.setStart}
        </Button>
      </div>
    </>
  );
}
