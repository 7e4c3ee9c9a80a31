/** Shows the loads as masses: the mass on the hanger for this load, and the mass to add or remove for the next one. */
import { Text } from "@fluentui/react-components";
import { useState } from "react";
import { stressInWords } from "../load-stress";
import { loadsToRead } from "../../../record/standing-load";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { hangerMass } from "../../../reduction/loading";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { numberText } from "../../text/number";
import { sentence } from "../../text/sentence";
import { Step } from "../../ui/parts";
import type { WorkbookPort } from "../../../workbook/port";
import { FrameMasses } from "./frame-masses";
import { useStyles } from "../../ui/styles";
import { NumberField } from "../../ui/number-field";
import { typedNumber } from "../../ui/typed-number";

const words = text.bench;
/** Masses are shown to the gram. */
const FORMAT = "0.000";

export interface NextMassProps {
  readonly port: WorkbookPort;
  /** The id of the current test. */
  readonly test: string;
  readonly record: TestRecord;
  readonly load: LoadRecord;
}

export function NextMass({ port, test, record, load }: NextMassProps) {
  const styles = useStyles();
  const [typed, setTyped] = useState("");
  const { diameter, lever_ratio: lever } = record.numbers;
  if (diameter === undefined || lever === undefined)
    return (
      <Step title={words.mass}>
        <Text className={styles.quiet}>{words.noLever(lever === undefined, diameter === undefined)}</Text>
      </Step>
    );
  const cap = typedNumber(typed) || 0;
  const loads = loadsToRead(record);
  const next = loads[loads.findIndex(({ number }) => number === load.number) + 1];
  // A missing stress is passed as 0, which `hangerMass` refuses.
  const massOf = ({ stress = 0 }: LoadRecord) => hangerMass(stress, diameter, lever, cap);
  const now = massOf(load);
  const then = next && massOf(next);
  return (
    <Step title={words.mass}>
      <Text block>
        {now.ok
          ? words.massNow(stressInWords(record, load), numberText(now.value, FORMAT))
          : sentence(inWords(now.reason))}
      </Text>
      {next && then?.ok && now.ok && (
        <Text block weight="semibold">
          {words.massNext(
            next.number,
            stressInWords(record, next),
            numberText(then.value, FORMAT),
            then.value >= now.value
              ? words.add(numberText(then.value - now.value, FORMAT))
              : words.takeOff(numberText(now.value - then.value, FORMAT)),
          )}
        </Text>
      )}
      <NumberField
        label={words.cap}
        hint={words.capHint}
        value={typed}
        fault={Number.isNaN(typedNumber(typed)) ? words.notFigure : undefined}
        onType={setTyped}
      />
      {now.ok && (
        <FrameMasses
          {...{ port, test, record, load, cap }}
          now={now.value}
          next={next && then?.ok ? { load: next, mass: then.value } : undefined}
        />
      )}
    </Step>
  );
}
