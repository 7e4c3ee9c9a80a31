/** A name of the data sheet is chosen and given to the cells that are selected. */
import { Button, Field, Select, Text } from "@fluentui/react-components";
import { ATTACHABLE, type NamedField } from "../../../datasheet";
import { text } from "../../text";
import { Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";

const words = text.check;

export interface NameStepProps {
  readonly name: string;
  /** Names that the sheet in front lacks. */
  readonly missing: ReadonlySet<string>;
  /** The name that leads to other cells already. */
  readonly taken: string | undefined;
  /** Where the name's formula would stand over something else. */
  readonly offered: string | undefined;
  readonly isBusy: boolean;
  readonly onChoose: (name: string) => void;
  readonly onAttach: (replace: boolean) => void;
  readonly onReplace: () => void;
}

export function NameStep({ name, missing, taken, offered, isBusy, onChoose, onAttach, onReplace }: NameStepProps) {
  const styles = useStyles();
  return (
    <Step title={words.attach}>
      <Text block className={styles.quiet}>
        {words.attachHint}
      </Text>
      <div className={styles.wide}>
        <Field label={words.name}>
          <Select value={name} onChange={(_, { value }) => onChoose(value)}>
            <Options label={words.missingGroup} fields={ATTACHABLE.filter((field) => missing.has(field.name))} />
            <Options label={words.presentGroup} fields={ATTACHABLE.filter((field) => !missing.has(field.name))} />
          </Select>
        </Field>
      </div>
      <div className={styles.row}>
        <Button disabledFocusable={isBusy} onClick={() => onAttach(false)}>
          {words.give}
        </Button>
        {taken && (
          <Button disabledFocusable={isBusy} onClick={() => onAttach(true)}>
            {words.move(taken)}
          </Button>
        )}
        {offered && (
          <Button disabledFocusable={isBusy} onClick={onReplace}>
            {words.replace(offered)}
          </Button>
        )}
      </div>
    </Step>
  );
}

/** Names of the data sheet under a heading of their own, none where there is none. */
function Options({ label, fields }: { label: string; fields: readonly NamedField[] }) {
  if (fields.length === 0) return null;
  return (
    <optgroup label={label}>
      {fields.map((field) => (
        <option key={field.name} value={field.name}>
          {`${field.label.trim()} (${field.name})`}
        </option>
      ))}
    </optgroup>
  );
}
