/** The text of a file, to be copied by hand where the host saves none. */
import { Field, Textarea } from "@fluentui/react-components";

export const TextToCopy = ({ label, content }: { readonly label: string; readonly content: string }) => (
  <Field label={label}>
    <Textarea value={content} readOnly rows={4} onFocus={(event) => event.target.select()} />
  </Field>
);
