/** The fields for the particulars of an AGS4 file that no data sheet holds. */
import { Field, Input, Select } from "@fluentui/react-components";
import type { Transmission } from "../../../exchange/ags4";
import { SAMPLE_TYPES } from "../../../exchange/ags4/dictionary";
import { firstOf } from "../../../reduction/numeric/lists";
import { isoDay, localDayNumber } from "../../../workbook/day-number";
import { text } from "../../text";
import { useStyles } from "../../ui/styles";

const words = text.checks.ags;

/** Usual values of TRAN_STAT, which is free text. */
const STATUSES = ["Draft", "Checked", "Final"];

/** The particulars until a person changes them. */
export const firstTransmission = (producer = ""): Transmission => ({
  issue: "1",
  date: isoDay(localDayNumber(new Date())),
  producer,
  recipient: "",
  status: firstOf(STATUSES),
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
          {STATUSES.map((status) => (
            <option key={status}>{status}</option>
          ))}
        </Select>
      </Field>
      <Field label={words.sampleType}>
        <Select
          value={said.sampleType ?? ""}
          onChange={(_, { value }) => say({ sampleType: value === "" ? undefined : value })}
        >
          <option value="">{unchosen}</option>
          {Object.entries(SAMPLE_TYPES).map(([code, what]) => (
            <option key={code} value={code}>{`${code}: ${what}`}</option>
          ))}
        </Select>
      </Field>
    </div>
  );
}
