/**
 * Shows the loads found in the file. The person corrects them, gives them numbers and thins them. It also lists every
 * line that was left out.
 */
import { Button, Field, Input, Select, Text } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import { LOADS } from "../../../specification/readings";
import type { Layout } from "../../../exchange/logger/layout";
import {
  findLoads,
  joinToBefore,
  levelOf,
  MOST_STRETCHES,
  numbered,
  splitAt,
  stressOf,
  waysFor,
  type LoadStep,
  type WayToFind,
} from "../../../exchange/logger/loads";
import {
  seriesOf,
  thinned,
  ZERO_RULES,
  type LoadSeries,
  type Thinning,
  type ZeroRule,
} from "../../../exchange/logger/load-series";
import { conditionsOf, type Conditions } from "../../../exchange/logger/dates-temperatures";
import { timeZeroShown } from "../../../exchange/logger/time-zero";
import { KEPT_KINDS, type Fault, type LoggerRows } from "../../../exchange/logger/rows";
import type { Target } from "../../../exchange/logger/target";
import { firstOf, nth } from "../../../reduction/numeric/lists";
import { figure } from "../../../reduction/outcome";
import { Notice } from "../../ui/notice";
import { Choice, optionsOf } from "../../ui/parts";
import { useStyles } from "../../ui/styles";
import { text } from "../../text";
import { inWords } from "../../text/messages";

const words = text.readings;

/** How loads are found and taken. If the person edited the stretches, they replace the ones that were found. */
export interface LoadChoices {
  readonly way: WayToFind;
  readonly rule: ZeroRule;
  readonly thinning: Thinning;
  readonly edited?: readonly LoadStep[];
}

/** The choices that fit the file best: the way to find its loads, and the rule for their time 0. */
export function firstChoices(rows: LoggerRows, layout: Layout): LoadChoices {
  const way = firstOf(waysFor(rows, layout));
  return { way, rule: timeZeroShown(rows, findLoads(rows, layout, way)).rule, thinning: "even" };
}

/** A stretch of rows with the numbers calculated from it. */
export interface Stretch extends LoadStep {
  readonly fromLine: number;
  readonly toLine: number;
  /** The duration in minutes. */
  readonly lasts: number;
  /** The stress in the unit of the sheet. */
  readonly stress?: number;
  /** The dates and the temperature of its rows. */
  readonly conditions?: Conditions;
  readonly series: LoadSeries;
  /** The indices of the values of the series that are written to the sheet. */
  readonly kept: readonly number[];
}

/** Used without a data sheet: stretches are numbered one after another. */
const NO_SHEET = { loads: Array.from({ length: LOADS }, () => ({ held: 0, used: 0 })), room: 400, stressUnit: "kPa" };

/**
 * The stretches of a file. If the file has more stretches than a test can have loads, they become one stretch without a
 * load, and `tooMany` is their number.
 */
export interface Found {
  readonly stretches: readonly Stretch[];
  readonly tooMany?: number;
}

export function stretchesOf(
  rows: LoggerRows,
  layout: Layout,
  { way, rule, thinning, edited }: LoadChoices,
  target: Target | undefined,
): Found {
  const sheet: Pick<Target, "loads" | "room" | "stressUnit" | "seating" | "diameter"> = target ?? NO_SHEET;
  const all = edited ?? findLoads(rows, layout, way);
  const tooMany = edited === undefined && all.length > MOST_STRETCHES ? all.length : undefined;
  const found = tooMany === undefined ? all : [{ from: 0, to: rows.lines.length, load: null }];
  const levels = found.map((step) => levelOf(rows, step));
  const stresses = levels.map((level) => stressOf(level, layout, sheet.stressUnit, sheet.diameter));
  const steps =
    edited || tooMany !== undefined
      ? found
      : numbered(
          found,
          stresses,
          { stresses: sheet.loads.map(({ stress }) => stress), seating: sheet.seating },
          layout.load !== null && layout.loadKind === "number" ? levels : undefined,
        );
  const stretches = steps.map((step, index) => {
    const series = seriesOf(rows, step, rule, layout.timesRun);
    return {
      ...step,
      fromLine: nth(rows.lines, step.from),
      toLine: nth(rows.lines, step.to - 1),
      lasts: series.times.at(-1) ?? 0,
      stress: stresses[index],
      conditions: conditionsOf(rows, step),
      series,
      kept: thinned(series.times, thinning, sheet.room),
    };
  });
  return { stretches, tooMany };
}

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

export function ReadingsLoads({
  rows,
  layout,
  found: { stretches, tooMany },
  choices,
  target,
  onChoose,
}: ReadingsLoadsProps) {
  const styles = useStyles();
  const unit = target?.stressUnit ?? NO_SHEET.stressUnit;
  const loads = target?.loads ?? NO_SHEET.loads;
  const zero = useMemo(() => timeZeroShown(rows, stretches), [rows, stretches]);
  const edit = (edited: readonly LoadStep[]): void => onChoose({ ...choices, edited });
  const plain = stretches.map(({ from, to, load }): LoadStep => ({ from, to, load }));
  const stressText = (stress: number | undefined): string =>
    stress === undefined ? "" : `${inWords(figure(stress))} ${unit}`;

  return (
    <>
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
      {tooMany !== undefined && <Notice intent="warning">{words.tooMany(tooMany, MOST_STRETCHES)}</Notice>}
      <ol className={styles.list}>
        {stretches.map((stretch, index) => {
          const name = words.stretch(index + 1);
          const { series, kept } = stretch;
          return (
            <li key={stretch.from} className={styles.card}>
              <Text>
                <Text weight="semibold">{name}</Text>: {words.stretchLines(stretch.fromLine, stretch.toLine)};{" "}
                {lasting(stretch.lasts)}
                {stretch.stress !== undefined && `; ${stressText(stretch.stress)}`}
              </Text>
              <Text size={200} className={styles.quiet}>
                {stretch.load === null
                  ? words.stretchNone(series.times.length)
                  : words.stretchRows(kept.length, series.times.length)}
                {series.leftOut > 0 && `; ${words.runsBack(series.leftOut)}`}
              </Text>
              <div className={styles.row}>
                <Select
                  className={styles.select}
                  aria-label={`${name}: ${words.whichLoad}`}
                  value={String(stretch.load ?? "none")}
                  onChange={(_, { value }) =>
                    edit(
                      plain.map((step, at) =>
                        at === index ? { ...step, load: value === "none" ? null : Number(value) } : step,
                      ),
                    )
                  }
                >
                  <option value="none">{words.noneOfThem}</option>
                  {loads.map(({ stress }: { stress?: number }, at) => (
                    <option key={at} value={at + 1}>
                      {words.loadName(at + 1, stressText(stress))}
                    </option>
                  ))}
                </Select>
                {index > 0 && (
                  <Button
                    size="small"
                    aria-label={`${name}: ${words.join}`}
                    onClick={() => edit(joinToBefore(plain, index))}
                  >
                    {words.join}
                  </Button>
                )}
              </div>
            </li>
          );
        })}
      </ol>
      <Split rows={rows} steps={plain} onSplit={edit} />
    </>
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

const MOST_SHOWN = 200;

/** The fault of a line, in the language of the pane or of the cells. */
export const faultWords = ({ kind, cell }: Fault, { faults } = words): string =>
  cell ? `“${cell}”: ${faults[kind]}` : faults[kind];

export function Faults({ faults }: { faults: readonly Fault[] }) {
  const styles = useStyles();
  if (faults.length === 0) return <Text className={styles.quiet}>{words.noFaults}</Text>;
  const used = faults.filter(({ kind }) => KEPT_KINDS.includes(kind)).length;
  return (
    <details>
      <summary>
        <Text>{words.faultsTitle(faults.length - used, used)}</Text>
      </summary>
      <ul className={styles.faults} tabIndex={0} aria-label={words.faultsTitle(faults.length - used, used)}>
        {faults.slice(0, MOST_SHOWN).map((fault) => (
          <li key={`${fault.line} ${fault.kind}`}>
            <Text size={200}>{words.fault(fault.line, faultWords(fault))}</Text>
          </li>
        ))}
        {faults.length > MOST_SHOWN && (
          <li>
            <Text size={200}>{words.moreFaults(faults.length - MOST_SHOWN)}</Text>
          </li>
        )}
      </ul>
    </details>
  );
}
