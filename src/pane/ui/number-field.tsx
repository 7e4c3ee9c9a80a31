/** A field for a number. If the number that was typed can be two, the field asks which. */
import { Field, Input, type FieldProps, type InputProps } from "@fluentui/react-components";
import { text } from "../text";
import { shown } from "../text/digits";
import { eitherOf, isDoubtful } from "./typed-number";

/** The question about a text that may be two numbers; undefined for other texts. */
export function doubtAbout(typed: string): string | undefined {
  if (!isDoubtful(typed)) return undefined;
  const [decimal, thousands] = eitherOf(typed);
  return text.whichNumber(typed.trim(), shown(decimal), shown(thousands));
}

export interface NumberFieldProps extends Omit<InputProps, "value" | "onChange" | "size"> {
  readonly label?: FieldProps["label"];
  readonly hint?: FieldProps["hint"];
  readonly size?: "medium" | "large";
  readonly value: string;
  /** What is wrong with the text, other than that it may be two numbers. */
  readonly fault?: string | undefined;
  readonly onType: (typed: string) => void;
}

export function NumberField({ label, hint, size = "medium", value, fault, onType, ...input }: NumberFieldProps) {
  const wrong = doubtAbout(value) ?? fault;
  return (
    <Field
      label={label}
      hint={hint}
      size={size}
      validationState={wrong === undefined ? "none" : "error"}
      validationMessage={wrong}
    >
      <Input
        {...input}
        size={size}
        inputMode="decimal"
        value={value}
        onChange={(_, { value: typed }) => onType(typed)}
      />
    </Field>
  );
}
