/** The fields for the particulars of an AGS4 file that no data sheet holds. */
import { Field, Input, Select } from "@fluentui/react-components";
import type { Transmission } from "../../../exchange/ags4";
import type { SampleType } from "../../../exchange/ags4/dictionary";
import { firstOf } from "../../../reduction/numeric/lists";
import { isoDay, localDayNumber } from "../../../workbook/day-number";
import { text } from "../../text";
import { optionsOf } from "../../ui/parts";
import { useStyles } from "../../ui/styles";

const words = text.checks.ags;

/** Usual values of TRAN_STAT, which is free text: English in the file, and in the language of the pane in the list. */
const STATUSES = optionsOf(words.statuses);

/** The particulars until a person changes them. */
export const firstTransmission = (producer = ""): Transmission => ({
  issue: "1",
  date: isoDay(localDayNumber(new Date())),
  producer,
  recipient: "",
  status: firstOf(firstOf(STATUSES)),
});

export interface TransmissionFieldsProps {
  readonly said: Transmission;
  readonly say: (part: Partial<Transmission>) => void;
  /** What the list says while no kind of sample is chosen. */
  readonly unchosen: string;
}

export function TransmissionFields({ said, say, unchosen }: TransmissionFieldsProps) {
  const styles = useStyles();
  const input = (name: "issue" | "date" | "producer" | "recipient", type?: "date") => (
    <Field label={words[name]}>
      <Input type={type} value={said[name]} onChange={(_, { value }) => say({ [name]: value })} />
    </Field>
  );
  return (
    <div className={styles.fields}>
      {input("issue")}
      {input("date", "date")}
      {input("producer")}
      {input("recipient")}
      <Field label={words.status}>
        <Select value={said.status} onChange={(_, { value }) => say({ status: value })}>
          {STATUSES.map(([status, what]) => (
            <option key={status} value={status}>
              {what}
            </option>
          ))}
        </Select>
      </Field>
      <Field label={words.sampleType}>
        <Select
          value={said.sampleType ?? ""}
          onChange={(_, { value }) => say({ sampleType: value === "" ? undefined : value })}
        >
          <option value="">{unchosen}</option>
          {optionsOf<SampleType>(words.sampleTypes).map(([code, what]) => (
            <option key={code} value={code}>{`${code}: ${what}`}</option>
          ))}
        </Select>
      </Field>
    </div>
  );
}
