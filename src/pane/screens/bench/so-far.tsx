/**
 * Shows what the readings tell so far: the verdict, the degree of consolidation, the expected end of primary, and the
 * curve.
 */
import { Text } from "@fluentui/react-components";
import { useMemo } from "react";
import { incrementOfLoad } from "../../../record/load-curve";
import { DAY_MINUTES } from "../../../workbook/day-number";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { progress, PROGRESS_RULES, type Progress, type ProgressRule } from "../../../reduction/increment/progress";
import { hasTimeOfDay, type StandingLoad } from "../../../record/standing-load";
import { contentText } from "../../text/number";
import { NumberField } from "../../ui/number-field";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { sentence } from "../../text/sentence";
import { Figure } from "../../ui/figure";
import { Notice } from "../../ui/notice";
import { Choice, Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { timeCurve } from "../plots/sheet-drawing";
import type { BenchState } from "./bench-state";
import { lastingText, momentText, timeText } from "./clock-words";
import { needsMultiple, ruleNow } from "./rules";

const words = text.bench;

const INTENT = { over: "success", "not yet": "info", "cannot be told": "warning" } as const;

export interface SoFarProps {
  readonly record: TestRecord;
  readonly load: LoadRecord;
  readonly standing: StandingLoad;
  readonly state: BenchState;
  readonly now: number;
  readonly onRule: (rule: ProgressRule, multiple: string) => void;
}

/** The rows of numbers below the verdict, each with a name and a value. */
function figuresOf(
  { expected, remaining }: Progress,
  standing: StandingLoad,
  now: number,
): readonly (readonly [string, string])[] {
  const lines: (readonly [string, string])[] = [];
  if (expected.ok) {
    const { U, t100, low, high } = expected.value;
    lines.push([words.consolidated, `${Math.round(100 * U)} %`], [words.t100, timeText(t100)]);
    if (low !== undefined)
      lines.push([
        words.t100Range,
        high === undefined ? words.orLater(timeText(low)) : words.range(timeText(low), timeText(high)),
      ]);
  }
  const lastRead = standing.rows[standing.lastRead];
  if (remaining > 0 && lastRead && hasTimeOfDay(standing.started)) {
    const until = standing.started + (lastRead.time + remaining) / DAY_MINUTES;
    const moment = momentText(until, now);
    lines.push([words.until, until > now ? words.remaining(lastingText((until - now) * DAY_MINUTES), moment) : moment]);
  }
  return lines;
}

export function SoFar({ record, load, standing, state, now, onRule }: SoFarProps) {
  const styles = useStyles();
  const { rule, multiple } = ruleNow(record, state);
  const outcome = useMemo(
    () => (multiple === undefined ? undefined : progress(incrementOfLoad(record, load), rule, multiple)),
    [record, load, rule, multiple],
  );
  const axis = rule === "root time" ? "root" : "log";
  const curve = useMemo(() => timeCurve(record, load, axis), [record, load, axis]);
  return (
    <Step title={words.progress}>
      <Choice
        label={words.rule}
        options={PROGRESS_RULES.map((one) => [one, words.rules[one]] as const)}
        value={rule}
        onChoose={(chosen) => onRule(chosen, state.multiple)}
      />
      {needsMultiple(rule) && (
        <NumberField
          label={rule === "fixed" ? words.minutes : words.times}
          value={state.rule === undefined ? contentText(multiple ?? "") : state.multiple}
          onType={(value) => onRule(rule, value)}
        />
      )}
      {outcome === undefined ? (
        <Text>{words.needsMultiple}</Text>
      ) : outcome.ok ? (
        <>
          <Notice intent={INTENT[outcome.value.verdict]} title={words.verdicts[outcome.value.verdict]}>
            {outcome.remarks.map((remark) => sentence(inWords(remark))).join(". ")}
          </Notice>
          <dl className={styles.fields}>
            {figuresOf(outcome.value, standing, now).map(([what, value], i) => (
              <div key={i}>
                <dt className={styles.quiet}>{what}</dt>
                <dd style={{ margin: 0 }}>
                  <Text weight="semibold">{value}</Text>
                </dd>
              </div>
            ))}
          </dl>
        </>
      ) : (
        <Notice intent="info" title={load.readings.length ? words.verdicts["cannot be told"] : words.noReading}>
          {sentence(inWords(outcome.reason))}
        </Notice>
      )}
      {curve.ok && <Figure spec={curve.value} />}
      <Text size={200} className={styles.quiet}>
        {words.caution}
      </Text>
    </Step>
  );
}
