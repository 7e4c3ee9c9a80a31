/** The text of a file, to copy by hand if the host saves no files. */
import { Field, Textarea } from "@fluentui/react-components";

export const TextToCopy = ({ label, content }: { readonly label: string; readonly content: string }) => (
  <Field label={label}>
    <Textarea value={content} readOnly rows={4} onFocus={(event) => event.target.select()} />
  </Field>
);
