/** Compares results with values calculated by hand, and signs the comparison. */
import { Button, Field, Input, Select, Text } from "@fluentui/react-components";
import { useState } from "react";
import { labelOnSheet, languageOfLabels } from "../../live/sheet-language";
import { text } from "../../text";
import { Notice } from "../../ui/notice";
import { inFull, Step } from "../../ui/parts";
import { useStyles as useSharedStyles } from "../../ui/styles";
import { CompareLine } from "./compare-line";
import { useComparison } from "./comparison-state";
import { isOf, loadsOf, ResultsOf, type ScreenProps } from "./results-chosen";

const words = text.byHand;

type Comparison = ReturnType<typeof useComparison>;

export function Compare(props: ScreenProps) {
  const comparison = useComparison(props);
  const { all, lines, telling } = comparison;
  return (
    <Step title={words.compare}>
      <AddLine comparison={comparison} />
      {all.length === 0 && <Text block>{words.nothing}</Text>}
      {all.length > 0 && lines.length === 0 && <Text block>{words.choose}</Text>}
      {lines.length > 0 && <Lines comparison={comparison} />}
      {telling && <Notice intent={telling.intent}>{telling.sentence}</Notice>}
    </Step>
  );
}

/** Chooses the result that is compared next. */
function AddLine({ comparison: { all, left, add } }: { comparison: Comparison }) {
  const shared = useSharedStyles();
  const [load, setLoad] = useState("");
  const [chosen, setChosen] = useState<string>();
  const offered = left.filter(isOf(load));
  const pick = offered.find(({ key }) => key === chosen) ?? offered[0];
  return (
    <>
      <div className={shared.fields}>
        <ResultsOf load={load} loads={loadsOf(all)} onChoose={setLoad} />
        <Field label={words.quantity} hint={pick && inFull(labelOnSheet(pick.name))}>
          <Select value={pick?.key ?? ""} onChange={(_, { value }) => setChosen(value)} lang={languageOfLabels()}>
            {offered.map((one) => (
              <option key={one.key} value={one.key}>
                {labelOnSheet(one.name)}
              </option>
            ))}
          </Select>
        </Field>
      </div>
      <div>
        <Button disabledFocusable={!pick} onClick={() => pick && add(pick.key)}>
          {words.add}
        </Button>
      </div>
    </>
  );
}

/** The lines that were added, the values from the selection, and the signature. */
function Lines({ comparison }: { comparison: Comparison }) {
  const { lines, change, remove, take, sign, by, setBy, busy } = comparison;
  const shared = useSharedStyles();
  return (
    <>
      <ul className={shared.list}>
        {lines.map((line) => (
          <CompareLine
            key={line.quantity.key}
            {...line}
            change={(part) => change(line.quantity.key, part)}
            remove={() => remove(line.quantity.key)}
          />
        ))}
      </ul>
      <div>
        <Button disabledFocusable={busy} aria-describedby="take-hint" onClick={take}>
          {words.take}
        </Button>
      </div>
      <Text block size={200} id="take-hint" className={shared.quiet}>
        {words.takeHint}
      </Text>
      <div className={shared.fields}>
        <Field label={words.by}>
          <Input value={by} onChange={(_, { value }) => setBy(value)} />
        </Field>
      </div>
      <div>
        <Button appearance="primary" disabledFocusable={busy} onClick={sign}>
          {words.sign}
        </Button>
      </div>
    </>
  );
}
