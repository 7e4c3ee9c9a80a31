/** Chooses the language of a sheet that is to be inserted. The pane keeps the last choice. */
import { Field, Radio, RadioGroup } from "@fluentui/react-components";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../specification/text/language";
import { text } from "../text";
import { keep, kept } from "../text/storage";
import { choosing } from "../ui/choosing";

const KEY = "clayledger.sheet-language";

/** The language that the person chose last for a sheet; English without a choice. */
export const lastSheetLanguage = (): SheetLanguage => SHEET_LANGUAGES.find((one) => one === kept(KEY)) ?? "en";

interface SheetLanguageFieldProps {
  readonly value: SheetLanguage;
  readonly onChoose: (language: SheetLanguage) => void;
}

export function SheetLanguageField({ value, onChoose }: SheetLanguageFieldProps) {
  const choose = (language: SheetLanguage): void => {
    keep(KEY, language);
    onChoose(language);
  };
  return (
    <Field label={text.sheet.language} hint={text.sheet.languageHint}>
      <RadioGroup value={value} onChange={choosing<SheetLanguage>(choose)}>
        {SHEET_LANGUAGES.map((one) => (
          <Radio key={one} value={one} label={text.sheet.languages[one]} />
        ))}
      </RadioGroup>
    </Field>
  );
}
