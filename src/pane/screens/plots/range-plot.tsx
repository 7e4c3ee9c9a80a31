/** Shows the plot of the selected range with its construction, and the reduced numbers. */
import { Button, Spinner, Text } from "@fluentui/react-components";
import { useMemo } from "react";
import type { WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { sentence } from "../../text/sentence";
import { Figure } from "../../ui/figure";
import { Notice } from "../../ui/notice";
import { InsertChart } from "./insert-chart";
import { chartOfRange } from "./native-chart";
import { useStyles } from "./plot-styles";
import { useRangeChoices } from "./range-choices";
import { drawRange, isTimeCurve } from "./range-drawing";
import { CompressionCurveFields, LinesOfRange, PlotKinds, TimeCurveFields } from "./range-fields";
import { Numbers } from "./reduced-numbers";
import { PlotFiles } from "./save-plot";
import type { Range } from "./selected-range";
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
  const chosen = useRangeChoices(range);
  const {
    choices,
    lines: [first, second],
    height,
  } = chosen;
  const drawn = useMemo(
    () => drawRange(range, first, second, { ...choices, height: height.isWrong ? undefined : height.number }),
    [range, first, second, choices, height.number, height.isWrong],
  );
  return (
    <>
      <Text size={200} className={styles.quiet}>
        {text.plot.from(range.sheet, range.address, range.begins)}
      </Text>
      <PlotKinds {...chosen} />
      <LinesOfRange range={range} {...chosen} />
      <DrawnRange drawn={drawn} />
      {isTimeCurve(choices.plot) ? <TimeCurveFields {...chosen} /> : <CompressionCurveFields {...chosen} />}
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

function DrawnRange({ drawn }: { drawn: ReturnType<typeof drawRange> }) {
  if (!drawn.ok)
    return (
      <Notice intent="error" title={text.plot.errorTitle}>
        {sentence(inWords(drawn.reason))}
      </Notice>
    );
  const { spec, numbers, remarks } = drawn.value;
  return (
    <>
      {spec.refusal !== undefined && (
        <Notice intent="warning" title={text.plot.refusedTitle}>
          {sentence(inWords(spec.refusal))}
        </Notice>
      )}
      <Figure spec={spec} />
      {numbers.length > 0 && <Numbers rows={numbers} remarks={remarks} />}
    </>
  );
}
