/** Shows the loads found in the file. The person corrects them, gives them numbers and thins them. */
import { Button, Field, Input, Select, Text } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import type { Layout } from "../../../exchange/logger/layout";
import { ZERO_RULES } from "../../../exchange/logger/load-series";
import {
  joinToBefore,
  MOST_STRETCHES,
  splitAt,
  waysFor,
  type LoadStep,
  type Passing,
} from "../../../exchange/logger/loads";
import type { LoggerRows } from "../../../exchange/logger/rows";
import type { Target } from "../../../exchange/logger/target";
import { timeZeroShown } from "../../../exchange/logger/time-zero";
import { figure } from "../../../reduction/outcome";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { Notice } from "../../ui/notice";
import { Choice, optionsOf } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { NO_SHEET, type Found, type LoadChoices, type Stretch } from "./stretches";

const words = text.readings;

const lasting = (minutes: number): string =>
  minutes >= 120
    ? `${inWords(figure(Math.round(minutes / 6) / 10))} h`
    : `${inWords(figure(Math.round(minutes * 100) / 100))} min`;

export interface ReadingsLoadsProps {
  readonly rows: LoggerRows;
  readonly layout: Layout;
  readonly found: Found;
  readonly choices: LoadChoices;
  readonly target: Target | undefined;
  readonly onChoose: (choices: LoadChoices) => void;
}

export function ReadingsLoads(props: ReadingsLoadsProps) {
  const {
    rows,
    found: { stretches, tooMany },
    choices,
    target,
    onChoose,
  } = props;
  const styles = useStyles();
  const { loads, stressUnit } = target ?? NO_SHEET;
  const edit = (edited: readonly LoadStep[]): void => onChoose({ ...choices, edited });
  const steps = stretches.map(({ from, to, load }): LoadStep => ({ from, to, load }));
  return (
    <>
      <WaysToFind {...props} />
      {tooMany !== undefined && <Notice intent="warning">{words.tooMany(tooMany, MOST_STRETCHES)}</Notice>}
      <ol className={styles.list}>
        {stretches.map((stretch, index) => (
          <StretchCard
            key={stretch.from}
            name={words.stretch(index + 1)}
            stretch={stretch}
            stresses={loads.map(({ stress }: { stress?: number }) => stressText(stress, stressUnit))}
            stress={stressText(stretch.stress, stressUnit)}
            onLoad={(load) => edit(steps.map((step, at) => (at === index ? { ...step, load } : step)))}
            onJoin={index > 0 ? () => edit(joinToBefore(steps, index)) : undefined}
          />
        ))}
      </ol>
      <Split rows={rows} steps={steps} onSplit={edit} />
    </>
  );
}

const stressText = (stress: number | undefined, unit: string): string =>
  stress === undefined ? "" : `${inWords(figure(stress))} ${unit}`;

/** Chooses how loads are found, which reading is at time 0, and which readings are taken. */
function WaysToFind({ rows, layout, found: { stretches }, choices, onChoose }: ReadingsLoadsProps) {
  const styles = useStyles();
  const zero = useMemo(() => timeZeroShown(rows, stretches), [rows, stretches]);
  return (
    <div className={styles.wide}>
      <Choice
        label={words.way}
        options={waysFor(rows, layout).map((way) => [way, words.ways[way]] as const)}
        value={choices.way}
        onChoose={(way) => onChoose({ ...choices, way, edited: undefined })}
      />
      <Choice
        label={words.rule}
        hint={words.zeroShown(words.rules[zero.rule], zero.loads, zero.of)}
        options={ZERO_RULES.map((rule) => [rule, words.rules[rule]] as const)}
        value={choices.rule}
        onChoose={(rule) => onChoose({ ...choices, rule })}
      />
      <Choice
        label={words.thinning}
        options={optionsOf(words.thinnings)}
        value={choices.thinning}
        onChoose={(thinning) => onChoose({ ...choices, thinning })}
      />
    </div>
  );
}

/** Why the load that is proposed for a stretch is not the next one. */
function passingWords(passing: Passing, load: number | null, stress: string, stresses: readonly string[]): string {
  if (passing.is === "none") return words.noLoadOfStress(stress, passing.after);
  if (passing.is === "readings") return words.passedReadings(load ?? 0, passing.passed.join(", "));
  const called = passing.passed.map((one) => words.loadName(one, stresses[one - 1] ?? "")).join("; ");
  return words.passedStress(load ?? 0, stress, called);
}

interface StretchCardProps {
  readonly name: string;
  readonly stretch: Stretch;
  /** The stress of each load of the sheet, and that of the stretch, with unit; "" where it is not known. */
  readonly stresses: readonly string[];
  readonly stress: string;
  readonly onLoad: (load: number | null) => void;
  /** Joins the stretch to the one before; undefined for the first. */
  readonly onJoin: (() => void) | undefined;
}

/** One stretch of the file: its lines, duration and stress, and the load that its readings are taken for. */
function StretchCard({ name, stretch, stresses, stress, onLoad, onJoin }: StretchCardProps) {
  const styles = useStyles();
  const { series, kept, load, passing } = stretch;
  return (
    <li className={styles.card}>
      <Text>
        <Text weight="semibold">{name}</Text>: {words.stretchLines(stretch.fromLine, stretch.toLine)};{" "}
        {lasting(stretch.lasts)}
        {stress && `; ${stress}`}
      </Text>
      <Text size={200} className={styles.quiet}>
        {load === null ? words.stretchNone(series.times.length) : words.stretchRows(kept.length, series.times.length)}
        {series.leftOut > 0 && `; ${words.runsBack(series.leftOut)}`}
      </Text>
      {passing && (
        <Notice intent={passing.is === "readings" ? "info" : "warning"}>
          {passingWords(passing, load, stress, stresses)}
        </Notice>
      )}
      <div className={styles.row}>
        <Select
          className={styles.select}
          aria-label={`${name}: ${words.whichLoad}`}
          value={String(load ?? "none")}
          onChange={(_, { value }) => onLoad(value === "none" ? null : Number(value))}
        >
          <option value="none">{words.noneOfThem}</option>
          {stresses.map((ofLoad, at) => (
            <option key={at} value={at + 1}>
              {words.loadName(at + 1, ofLoad)}
            </option>
          ))}
        </Select>
        {onJoin && (
          <Button size="small" aria-label={`${name}: ${words.join}`} onClick={onJoin}>
            {words.join}
          </Button>
        )}
      </div>
    </li>
  );
}

interface SplitProps {
  readonly rows: LoggerRows;
  readonly steps: readonly LoadStep[];
  readonly onSplit: (steps: LoadStep[]) => void;
}

function Split({ rows, steps, onSplit }: SplitProps) {
  const styles = useStyles();
  const [line, setLine] = useState("");
  const [wrong, setWrong] = useState(false);
  const split = (): void => {
    const next = splitAt(steps, rows.lines.indexOf(Number(line)));
    setWrong(next.length === steps.length);
    if (next.length === steps.length) return;
    onSplit(next);
    setLine("");
  };
  return (
    <Field
      label={words.split}
      validationState={wrong ? "error" : "none"}
      validationMessage={wrong ? words.splitWrong : undefined}
    >
      <div className={styles.row}>
        <Input
          aria-label={words.split}
          inputMode="numeric"
          value={line}
          onChange={(_, { value }) => setLine(value)}
          onKeyDown={({ key }) => key === "Enter" && split()}
        />
        <Button onClick={split}>{words.splitButton}</Button>
      </div>
    </Field>
  );
}
