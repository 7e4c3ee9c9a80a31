/** Chooses the language of a sheet that is to be inserted. */
import { Field, Radio, RadioGroup } from "@fluentui/react-components";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../specification/text/language";
import { text } from "../text";
import { choosing } from "../ui/choosing";

interface SheetLanguageFieldProps {
  readonly value: SheetLanguage;
  readonly onChoose: (language: SheetLanguage) => void;
}

export const SheetLanguageField = ({ value, onChoose }: SheetLanguageFieldProps) => (
  <Field label={text.sheet.language} hint={text.sheet.languageHint}>
    <RadioGroup value={value} onChange={choosing<SheetLanguage>(onChoose)}>
      {SHEET_LANGUAGES.map((one) => (
        <Radio key={one} value={one} label={text.sheet.languages[one]} />
      ))}
    </RadioGroup>
  </Field>
);
