/** The fields in which a person chooses what the plot of a selected range shows. */
import { Radio, RadioGroup } from "@fluentui/react-components";
import { METHOD_NAMES } from "../../../reduction/curve/method-words";
import { unitsOf } from "../../../reduction/units";
import { NumberField } from "../../ui/number-field";
import { text } from "../../text";
import { choosing } from "../../ui/choosing";
import { Choice } from "../../ui/parts";
import type { RangeChoices } from "./range-choices";
import { isTimeCurve, LENGTH_UNITS, type Choices, type PlotKind } from "./range-drawing";
import { useStyles } from "./plot-styles";
import type { Range } from "./selected-range";

/** The names of units are the options themselves. */
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
      <Choice
        label={isTime ? text.plot.times : text.plot.stresses}
        options={options}
        value={String(first)}
        onChoose={(index) => chooseLines([Number(index), second])}
      />
      <Choice
        label={isTime ? text.plot.readings : text.plot.values}
        options={options}
        value={String(second)}
        onChoose={(index) => chooseLines([first, Number(index)])}
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
      <Choice
        label={text.plot.lengthUnit}
        options={namesOf(LENGTH_UNITS)}
        value={choices.lengthUnit}
        onChoose={(lengthUnit) => choose({ lengthUnit })}
      />
      <Choice<Choices["drainage"]>
        label={text.plot.drainage}
        options={[
          ["double", text.plot.double],
          ["single", text.plot.single],
        ]}
        value={choices.drainage}
        onChoose={(drainage) => choose({ drainage })}
      />
      <Choice
        label={text.plot.cvUnit}
        options={namesOf(unitsOf("cv"))}
        value={choices.cvUnit}
        onChoose={(cvUnit) => choose({ cvUnit })}
      />
    </div>
  );
}

/** What a compression curve needs for the preconsolidation stress. */
export function CompressionCurveFields({ choices, choose }: Pick<RangeChoices, "choices" | "choose">) {
  const styles = useStyles();
  return (
    <div className={styles.fields}>
      <Choice
        label={text.plot.method}
        options={METHOD_NAMES.map((method) => [method, text.plot.methods[method]] as const)}
        value={choices.method}
        onChoose={(method) => choose({ method })}
      />
      <Choice
        label={text.plot.stressUnit}
        options={namesOf(unitsOf("stress"))}
        value={choices.stressUnit}
        onChoose={(stressUnit) => choose({ stressUnit })}
      />
    </div>
  );
}
