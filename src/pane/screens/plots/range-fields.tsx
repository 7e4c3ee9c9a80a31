/** The fields in which a person chooses what the plot of a selected range shows. */
import { Field, Radio, RadioGroup, Select } from "@fluentui/react-components";
import { METHOD_NAMES } from "../../../reduction/curve/method-words";
import { unitsOf } from "../../../reduction/units";
import { NumberField } from "../../ui/number-field";
import { text } from "../../text";
import { choosing } from "../../ui/choosing";
import type { RangeChoices } from "./range-choices";
import { isTimeCurve, LENGTH_UNITS, type Choices, type PlotKind } from "./range-drawing";
import { useStyles } from "./plot-styles";
import type { Range } from "./selected-range";

interface ChosenOfProps<T extends string> {
  readonly label: string;
  readonly options: readonly (readonly [value: T, name: string])[];
  readonly value: T;
  readonly choose: (value: T) => void;
}

const ChosenOf = <T extends string>({ label, options, value, choose }: ChosenOfProps<T>) => (
  <Field label={label}>
    <Select value={value} onChange={choosing(choose)}>
      {options.map(([option, name]) => (
        <option key={option} value={option}>
          {name}
        </option>
      ))}
    </Select>
  </Field>
);

const namesOf = <T extends string>(names: readonly T[]) => names.map((name) => [name, name] as const);

export function PlotKinds({ choices, choosePlot }: Pick<RangeChoices, "choices" | "choosePlot">) {
  const styles = useStyles();
  return (
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
  );
}

interface LinesOfRangeProps extends Pick<RangeChoices, "choices" | "lines" | "chooseLines"> {
  readonly range: Range;
}

/** Which columns of the range are plotted; a range of two columns leaves no choice. */
export function LinesOfRange({ range, choices, lines: [first, second], chooseLines }: LinesOfRangeProps) {
  const styles = useStyles();
  if (range.lines.length <= 2) return null;
  const isTime = isTimeCurve(choices.plot);
  const options = range.lines.map(({ name }, index) => [String(index), name] as const);
  return (
    <div className={styles.fields}>
      <ChosenOf
        label={isTime ? text.plot.times : text.plot.stresses}
        options={options}
        value={String(first)}
        choose={(index) => chooseLines([Number(index), second])}
      />
      <ChosenOf
        label={isTime ? text.plot.readings : text.plot.values}
        options={options}
        value={String(second)}
        choose={(index) => chooseLines([first, Number(index)])}
      />
    </div>
  );
}

/** What a time curve needs for cv. */
export function TimeCurveFields({
  choices,
  choose,
  height,
  typeHeight,
}: Pick<RangeChoices, "choices" | "choose" | "height" | "typeHeight">) {
  const styles = useStyles();
  return (
    <div className={styles.fields}>
      <NumberField
        label={text.plot.height}
        hint={text.plot.heightHint}
        value={height.typed}
        fault={height.isWrong ? text.plot.heightWrong : undefined}
        onType={typeHeight}
      />
      <ChosenOf
        label={text.plot.lengthUnit}
        options={namesOf(LENGTH_UNITS)}
        value={choices.lengthUnit}
        choose={(lengthUnit) => choose({ lengthUnit })}
      />
      <ChosenOf<Choices["drainage"]>
        label={text.plot.drainage}
        options={[
          ["double", text.plot.double],
          ["single", text.plot.single],
        ]}
        value={choices.drainage}
        choose={(drainage) => choose({ drainage })}
      />
      <ChosenOf
        label={text.plot.cvUnit}
        options={namesOf(unitsOf("cv"))}
        value={choices.cvUnit}
        choose={(cvUnit) => choose({ cvUnit })}
      />
    </div>
  );
}

/** What a compression curve needs for the preconsolidation stress. */
export function CompressionCurveFields({ choices, choose }: Pick<RangeChoices, "choices" | "choose">) {
  const styles = useStyles();
  return (
    <div className={styles.fields}>
      <ChosenOf
        label={text.plot.method}
        options={METHOD_NAMES.map((method) => [method, text.plot.methods[method]] as const)}
        value={choices.method}
        choose={(method) => choose({ method })}
      />
      <ChosenOf
        label={text.plot.stressUnit}
        options={namesOf(unitsOf("stress"))}
        value={choices.stressUnit}
        choose={(stressUnit) => choose({ stressUnit })}
      />
    </div>
  );
}
