/** The stress from the output of a load cell, beside that of the load. */
import { Text } from "@fluentui/react-components";
import { useState } from "react";
import { inSheetStress, stressText } from "../../../record/reduced/inputs";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { cellStress } from "../../../reduction/frame-masses";
import { digits, fixed, say, verbatim } from "../../../reduction/message";
import { useDraft } from "../../live/use-test";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { sentence } from "../../text/sentence";
import { Step } from "../../ui/parts";
import { NumberField } from "../../ui/number-field";
import { typedNumber } from "../../ui/typed-number";

const words = text.bench;

/** The calibration of the cell as it was typed. */
interface Calibration {
  readonly factor: string;
  readonly zero: string;
}

export interface LoadCellProps {
  /** The id of the current test, to which the calibration belongs. */
  readonly test: string;
  readonly record: TestRecord;
  readonly load: LoadRecord;
}

export function LoadCell({ test, record, load }: LoadCellProps) {
  const [{ factor, zero }, setCalibration] = useDraft<Calibration>(test, "load cell", { factor: "", zero: "0" });
  const [output, setOutput] = useState("");
  const [f, z, o] = [factor, zero, output].map(typedNumber);
  const stress =
    f === undefined || o === undefined ? undefined : cellStress(o, z ?? 0, f, record.numbers.diameter ?? 0);
  const field = (label: string, value: string, hint: string, change: (value: string) => void) => (
    <NumberField
      {...{ label, hint, value }}
      fault={Number.isNaN(typedNumber(value)) ? words.notFigure : undefined}
      onType={change}
    />
  );
  const against = stress?.ok && load.stress ? (100 * stress.value) / load.stress - 100 : undefined;
  return (
    <Step title={words.loadCell}>
      {field(words.cellFactor, factor, words.cellFactorHint, (value) => setCalibration({ factor: value, zero }))}
      {field(words.cellZero, zero, words.cellZeroHint, (value) => setCalibration({ factor, zero: value }))}
      {field(words.cellOutput, output, words.cellOutputHint, setOutput)}
      {stress && (
        <Text block weight={stress.ok ? "semibold" : "regular"}>
          {stress.ok
            ? words.cellGives(
                inWords(
                  say`${digits(inSheetStress(record, stress.value), 4)} ${verbatim(record.words.stress_unit ?? "kPa")}`,
                ),
                stressText(record, load),
                against === undefined ? "" : inWords(say`${fixed(against, 1)} %`),
              )
            : sentence(inWords(stress.reason))}
        </Text>
      )}
    </Step>
  );
}
