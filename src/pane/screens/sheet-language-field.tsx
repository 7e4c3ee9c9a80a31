/** Chooses the language of a sheet that is to be inserted. The pane keeps the last choice, and every screen follows it. */
import { Field, Radio, RadioGroup } from "@fluentui/react-components";
import { useSyncExternalStore } from "react";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../specification/text/language";
import { text } from "../text";
import { keep, kept } from "../text/storage";
import { choosing } from "../ui/choosing";

const KEY = "clayledger.sheet-language";

/** The choice, if the browser stores nothing. */
let unkept: SheetLanguage | undefined;
const listeners = new Set<() => void>();

/** The language that the person chose last for a sheet; English without a choice. */
const lastSheetLanguage = (): SheetLanguage => unkept ?? SHEET_LANGUAGES.find((one) => one === kept(KEY)) ?? "en";

function choose(language: SheetLanguage): void {
  unkept = keep(KEY, language) ? undefined : language;
  for (const listener of listeners) listener();
}

function listen(listener: () => void): () => void {
  listeners.add(listener);
  return () => void listeners.delete(listener);
}

/** The language of the next sheet: what was chosen last, on whichever screen. */
export const useSheetLanguage = (): SheetLanguage => useSyncExternalStore(listen, lastSheetLanguage);

export function SheetLanguageField() {
  return (
    <Field label={text.sheet.language} hint={text.sheet.languageHint}>
      <RadioGroup value={useSheetLanguage()} onChange={choosing<SheetLanguage>(choose)}>
        {SHEET_LANGUAGES.map((one) => (
          <Radio key={one} value={one} label={text.sheet.languages[one]} />
        ))}
      </RadioGroup>
    </Field>
  );
}
