/** Plots the selected range with its construction, and says what was reduced from it. */
import {
  Button,
  Field,
  Input,
  makeStyles,
  Radio,
  RadioGroup,
  Select,
  Spinner,
  Text,
  tokens,
} from "@fluentui/react-components";
import { useEffect, useMemo, useState } from "react";
import { METHOD_NAMES } from "../reduction/curve/preconsolidation";
import { UNITS } from "../reduction/units";
import type { WorkbookPort } from "../workbook/port";
import {
  DEFAULT_CHOICES,
  drawRange,
  guessPlot,
  guessLines,
  guessUnits,
  LENGTH_UNITS,
  isTimeCurve,
  type Choices,
  type NumberRow,
  type PlotKind,
} from "./drawing";
import { Figure } from "./figure";
import { Notice } from "./notice";
import type { Range } from "./selected-range";
import { sentence } from "./sentence";
import { text } from "./text";
import { useRange } from "./use-range";

const useStyles = makeStyles({
  column: { display: "flex", flexDirection: "column", gap: "12px" },
  quiet: { color: tokens.colorNeutralForeground2, overflowWrap: "anywhere" },
  title: { margin: 0 },
  switches: { display: "grid", gridTemplateColumns: "repeat(auto-fit, minmax(130px, 1fr))", marginLeft: "-8px" },
  fields: {
    display: "grid",
    gridTemplateColumns: "repeat(auto-fit, minmax(132px, 1fr))",
    gap: "8px 12px",
    alignItems: "start",
    "& input, & select": { minWidth: 0, width: "100%" },
    "& > *": { minWidth: 0 },
  },
  list: { margin: 0, paddingLeft: "18px", display: "flex", flexDirection: "column", gap: "6px" },
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontVariantNumeric: "tabular-nums",
    "& caption": { textAlign: "left", paddingBottom: "4px", fontWeight: tokens.fontWeightSemibold },
    "& th, & td": {
      padding: "3px 8px 3px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
      textAlign: "left",
      verticalAlign: "top",
      fontWeight: tokens.fontWeightRegular,
      fontSize: tokens.fontSizeBase300,
    },
    "& thead th": { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
    "& tbody th": { whiteSpace: "nowrap" },
    "& .number": { textAlign: "right" },
  },
});

export function PlotScreen({ port }: { port: WorkbookPort }) {
  const { range, error, again } = useRange(port);
  const styles = useStyles();
  return (
    <div className={styles.column}>
      <Text as="h1" size={400} weight="semibold" block className={styles.title}>
        {text.plot.heading}
      </Text>
      {error !== undefined ? (
        <>
          <Notice intent="error">{error}</Notice>
          <div>
            <Button onClick={again}>{text.plot.again}</Button>
          </div>
        </>
      ) : range === undefined ? (
        <Spinner label={text.plot.reading} labelPosition="after" size="tiny" />
      ) : range ? (
        <RangePlot range={range} />
      ) : (
        <Empty />
      )}
    </div>
  );
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

function RangePlot({ range }: { range: Range }) {
  const styles = useStyles();
  const [choices, setChoices] = useState<Choices>(DEFAULT_CHOICES);
  const [height, setHeight] = useState("");
  const [columns, setColumns] = useState<readonly [number, number]>([0, 1]);
  const choose = (change: Partial<Choices>): void => setChoices((before) => ({ ...before, ...change }));

  // Headings that say what they head decide; what the user chose before stands where they do not.
  const headings = range.lines.map(({ heading }) => heading).join("\n");
  useEffect(() => {
    const plot = guessPlot(range, choices.plot);
    const lines = guessLines(range, plot);
    const [first, second] = lines.map((index) => range.lines[index].heading);
    setColumns(lines);
    choose({ plot, ...guessUnits(first, second) });
  }, [range.sheet, range.address, headings]);
  const choosePlot = (plot: PlotKind): void => {
    choose({ plot });
    if (isTimeCurve(plot) !== isTimeCurve(choices.plot) || !isTimeCurve(plot)) setColumns(guessLines(range, plot));
  };

  const [first, second] = columns.map((index) => Math.min(index, range.lines.length - 1));
  const heightNumber = height.trim() === "" ? undefined : Number(height.trim().replace(",", "."));
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
  const unit = (label: string, names: readonly string[], value: string, set: (name: string) => void) => (
    <Field label={label}>
      <Select value={value} onChange={(_, { value: chosen }) => set(chosen)}>
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
        onChange={(_, { value }) => choosePlot(value as PlotKind)}
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
              {sentence(drawn.value.spec.refusal)}
            </Notice>
          )}
          <Figure spec={drawn.value.spec} />
          {drawn.value.numbers.length > 0 && <Numbers rows={drawn.value.numbers} remark={drawn.value.remark} />}
        </>
      ) : (
        <Notice intent="error" title={text.plot.errorTitle}>
          {sentence(drawn.reason)}
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
            {unit(text.plot.lengthUnit, LENGTH_UNITS, choices.lengthUnit, (lengthUnit) =>
              choose({ lengthUnit: lengthUnit as Choices["lengthUnit"] }),
            )}
            <Field label={text.plot.drainage}>
              <Select
                value={choices.drainage}
                onChange={(_, { value }) => choose({ drainage: value as Choices["drainage"] })}
              >
                <option value="double">{text.plot.double}</option>
                <option value="single">{text.plot.single}</option>
              </Select>
            </Field>
            {unit(text.plot.cvUnit, Object.keys(UNITS.cv), choices.cvUnit, (cvUnit) =>
              choose({ cvUnit: cvUnit as Choices["cvUnit"] }),
            )}
          </>
        ) : (
          <>
            <Field label={text.plot.method}>
              <Select
                value={choices.method}
                onChange={(_, { value }) => choose({ method: value as Choices["method"] })}
              >
                {METHOD_NAMES.map((method) => (
                  <option key={method} value={method}>
                    {text.plot.methods[method]}
                  </option>
                ))}
              </Select>
            </Field>
            {unit(text.plot.stressUnit, Object.keys(UNITS.stress), choices.stressUnit, (stressUnit) =>
              choose({ stressUnit: stressUnit as Choices["stressUnit"] }),
            )}
          </>
        )}
      </div>
    </>
  );
}

function Numbers({ rows, remark }: { rows: readonly NumberRow[]; remark: string }) {
  const styles = useStyles();
  return (
    <table className={styles.table}>
      <caption>{text.plot.numbers}</caption>
      <thead>
        <tr>
          <th scope="col">{text.plot.quantity}</th>
          <th scope="col" className="number">
            {text.plot.amount}
          </th>
          <th scope="col">{text.plot.unit}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, value, unit }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td className="number">{value}</td>
            <td>{unit}</td>
          </tr>
        ))}
        {remark && (
          <tr>
            <th scope="row">{text.plot.remark}</th>
            <td colSpan={2}>{remark}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}
