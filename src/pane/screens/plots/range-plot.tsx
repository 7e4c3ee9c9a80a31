/** Shows the plot of the selected range with its construction, and the reduced numbers. */
import { Button, Field, Input, Radio, RadioGroup, Select, Spinner, Text } from "@fluentui/react-components";
import { useEffect, useMemo, useState } from "react";
import { METHOD_NAMES } from "../../../reduction/curve/method-words";
import { nth } from "../../../reduction/numeric/lists";
import { UNITS } from "../../../reduction/units";
import type { WorkbookPort } from "../../../workbook/port";
import {
  DEFAULT_CHOICES,
  drawRange,
  guessPlot,
  guessLines,
  guessUnits,
  LENGTH_UNITS,
  isTimeCurve,
  type Choices,
  type PlotKind,
} from "./range-drawing";
import { Figure } from "../../ui/figure";
import { Notice } from "../../ui/notice";
import { InsertChart } from "./insert-chart";
import { chartOfRange } from "./native-chart";
import { Numbers } from "./reduced-numbers";
import { PlotFiles } from "./save-plot";
import { useStyles } from "./plot-styles";
import type { Range } from "./selected-range";
import { sentence } from "../../text/sentence";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { choosing } from "../../ui/choosing";
import { typedNumber } from "../../ui/typed-number";
import { useRange } from "./use-range";

export function RangeSource({ port }: { port: WorkbookPort }) {
  const { range, error, again } = useRange(port);
  const styles = useStyles();
  if (error !== undefined)
    return (
      <>
        <Notice intent="error">{error}</Notice>
        <div>
          <Button onClick={again}>{text.plot.again}</Button>
        </div>
      </>
    );
  if (range === undefined) return <Spinner label={text.plot.reading} labelPosition="after" size="tiny" />;
  return <div className={styles.column}>{range ? <RangePlot port={port} range={range} /> : <Empty />}</div>;
}

function Empty() {
  const styles = useStyles();
  return (
    <section aria-labelledby="empty" className={styles.column}>
      <Text as="h2" id="empty" size={300} weight="semibold" block className={styles.title}>
        {text.plot.emptyTitle}
      </Text>
      <ul className={styles.list}>
        {text.plot.empty.map((line) => (
          <li key={line}>
            <Text>{line}</Text>
          </li>
        ))}
      </ul>
      <Text className={styles.quiet}>{text.plot.emptyHint}</Text>
    </section>
  );
}

function RangePlot({ port, range }: { port: WorkbookPort; range: Range }) {
  const styles = useStyles();
  const [choices, setChoices] = useState<Choices>(DEFAULT_CHOICES);
  const [height, setHeight] = useState("");
  const [columns, setColumns] = useState<readonly [number, number]>([0, 1]);
  const choose = (change: Partial<Choices>): void => setChoices((before) => ({ ...before, ...change }));

  // Headings that name their data decide; otherwise the earlier choice of the person stays.
  const headings = range.lines.map(({ heading }) => heading).join("\n");
  useEffect(() => {
    const plot = guessPlot(range, choices.plot);
    const lines = guessLines(range, plot);
    const [first, second] = [nth(range.lines, lines[0]), nth(range.lines, lines[1])];
    setColumns(lines);
    choose({ plot, ...guessUnits(first.heading, second.heading) });
    // A new guess is made only for another range or other headings, not when the person chooses a plot.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [range.sheet, range.address, headings]);
  const choosePlot = (plot: PlotKind): void => {
    choose({ plot });
    if (isTimeCurve(plot) !== isTimeCurve(choices.plot) || !isTimeCurve(plot)) setColumns(guessLines(range, plot));
  };

  const lastLine = range.lines.length - 1;
  const [first, second] = [Math.min(columns[0], lastLine), Math.min(columns[1], lastLine)];
  const heightNumber = typedNumber(height);
  const heightWrong = heightNumber !== undefined && !(heightNumber > 0);
  const drawn = useMemo(
    () => drawRange(range, first, second, { ...choices, height: heightWrong ? undefined : heightNumber }),
    [range, first, second, choices, heightNumber, heightWrong],
  );
  const time = isTimeCurve(choices.plot);

  const pick = (label: string, value: number, set: (index: number) => void) => (
    <Field label={label}>
      <Select value={String(value)} onChange={(_, { value: chosen }) => set(Number(chosen))}>
        {range.lines.map(({ name }, index) => (
          <option key={name} value={String(index)}>
            {name}
          </option>
        ))}
      </Select>
    </Field>
  );
  const unit = <T extends string>(label: string, names: readonly string[], value: T, set: (name: T) => void) => (
    <Field label={label}>
      <Select value={value} onChange={choosing(set)}>
        {names.map((name) => (
          <option key={name}>{name}</option>
        ))}
      </Select>
    </Field>
  );

  return (
    <>
      <Text size={200} className={styles.quiet}>
        {text.plot.from(range.sheet, range.address, range.begins)}
      </Text>
      <RadioGroup
        aria-label={text.plot.against}
        className={styles.switches}
        value={choices.plot}
        onChange={choosing<PlotKind>(choosePlot)}
      >
        {(["log", "root", "e", "strain"] as const).map((plot) => (
          <Radio key={plot} value={plot} label={text.plot.plots[plot]} />
        ))}
      </RadioGroup>
      {range.lines.length > 2 && (
        <div className={styles.fields}>
          {pick(time ? text.plot.times : text.plot.stresses, first, (index) => setColumns([index, second]))}
          {pick(time ? text.plot.readings : text.plot.values, second, (index) => setColumns([first, index]))}
        </div>
      )}

      {drawn.ok ? (
        <>
          {drawn.value.spec.refusal !== undefined && (
            <Notice intent="warning" title={text.plot.refusedTitle}>
              {sentence(inWords(drawn.value.spec.refusal))}
            </Notice>
          )}
          <Figure spec={drawn.value.spec} />
          {drawn.value.numbers.length > 0 && <Numbers rows={drawn.value.numbers} remarks={drawn.value.remarks} />}
        </>
      ) : (
        <Notice intent="error" title={text.plot.errorTitle}>
          {sentence(inWords(drawn.reason))}
        </Notice>
      )}

      <div className={styles.fields}>
        {time ? (
          <>
            <Field
              label={text.plot.height}
              hint={text.plot.heightHint}
              validationState={heightWrong ? "error" : "none"}
              validationMessage={heightWrong ? text.plot.heightWrong : undefined}
            >
              <Input value={height} inputMode="decimal" onChange={(_, { value }) => setHeight(value)} />
            </Field>
            {unit(text.plot.lengthUnit, LENGTH_UNITS, choices.lengthUnit, (lengthUnit) => choose({ lengthUnit }))}
            <Field label={text.plot.drainage}>
              <Select
                value={choices.drainage}
                onChange={choosing<Choices["drainage"]>((drainage) => choose({ drainage }))}
              >
                <option value="double">{text.plot.double}</option>
                <option value="single">{text.plot.single}</option>
              </Select>
            </Field>
            {unit(text.plot.cvUnit, Object.keys(UNITS.cv), choices.cvUnit, (cvUnit) => choose({ cvUnit }))}
          </>
        ) : (
          <>
            <Field label={text.plot.method}>
              <Select value={choices.method} onChange={choosing<Choices["method"]>((method) => choose({ method }))}>
                {METHOD_NAMES.map((method) => (
                  <option key={method} value={method}>
                    {text.plot.methods[method]}
                  </option>
                ))}
              </Select>
            </Field>
            {unit(text.plot.stressUnit, Object.keys(UNITS.stress), choices.stressUnit, (stressUnit) =>
              choose({ stressUnit }),
            )}
          </>
        )}
      </div>
      {drawn.ok && (
        <>
          <InsertChart
            key={range.address}
            port={port}
            chart={async () => chartOfRange(range, first, second, choices, drawn.value.spec)}
          />
          <PlotFiles spec={drawn.value.spec} words={[range.sheet, drawn.value.spec.title]} saves={port.savesFiles} />
        </>
      )}
    </>
  );
}
