/** Lets the person choose a name of the data sheet and attach it to the selected cells. */
import { Button, Field, Select, Text } from "@fluentui/react-components";
import { memo, useMemo } from "react";
import { ATTACHABLE, calledAll, type NamedField } from "../../../datasheet";
import { text } from "../../text";
import { language } from "../../text/language";
import { inFull, Step } from "../../ui/parts";
import { useStyles } from "../../ui/styles";

const words = text.check;

export interface NameStepProps {
  readonly name: string;
  /** The names that the active sheet lacks. */
  readonly missing: ReadonlySet<string>;
  /** The chosen name, if it refers to other cells already. */
  readonly taken: string | undefined;
  /** The cells that would get the formula of the name but contain something else. */
  readonly offered: string | undefined;
  readonly isBusy: boolean;
  readonly onChoose: (name: string) => void;
  readonly onAttach: (replace: boolean) => void;
  readonly onReplace: () => void;
}

export function NameStep({ name, missing, taken, offered, isBusy, onChoose, onAttach, onReplace }: NameStepProps) {
  const styles = useStyles();
  const lacking = useMemo(() => ATTACHABLE.filter((field) => missing.has(field.name)), [missing]);
  const present = useMemo(() => ATTACHABLE.filter((field) => !missing.has(field.name)), [missing]);
  return (
    <Step title={words.attach}>
      <Text block className={styles.quiet}>
        {words.attachHint}
      </Text>
      <div className={styles.wide}>
        <Field label={words.name} hint={inFull(calledAll([name], language()))}>
          <Select value={name} onChange={(_, { value }) => onChoose(value)}>
            <Options label={words.missingGroup} fields={lacking} />
            <Options label={words.presentGroup} fields={present} />
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

interface OptionsProps {
  readonly label: string;
  readonly fields: readonly NamedField[];
}

/** A group of names of the data sheet under a heading; nothing if the group is empty. */
const Options = memo(function Options({ label, fields }: OptionsProps) {
  if (fields.length === 0) return null;
  return (
    <optgroup label={label}>
      {fields.map((field) => (
        <option key={field.name} value={field.name}>
          {calledAll([field.name], language())}
        </option>
      ))}
    </optgroup>
  );
});
