/** Which data sheet a screen works on; nothing is shown where there is only one. */
import { Field, Select } from "@fluentui/react-components";
import { text } from "../text";

export interface SheetChooserProps {
  /** Names of the data sheets; undefined until the workbook has answered. */
  readonly sheets: readonly string[] | undefined;
  readonly chosen: string | undefined;
  readonly onChoose: (sheet: string) => void;
}

export function SheetChooser({ sheets = [], chosen, onChoose }: SheetChooserProps) {
  if (sheets.length < 2) return null;
  return (
    <Field label={text.dataSheet}>
      <Select value={chosen} onChange={(_, { value }) => onChoose(value)} style={{ minWidth: 0 }}>
        {sheets.map((sheet) => (
          <option key={sheet} value={sheet}>
            {sheet}
          </option>
        ))}
      </Select>
    </Field>
  );
}
