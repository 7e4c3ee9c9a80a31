/** In which language the formulas of a sheet that names none show their texts: a firm's own layout, to which names are attached one by one. */
import { isFormula } from "../workbook/contents";
import { NAMES_WITH_FORMULAS, placedFormulas, type Layout } from "./placed-formulas";
import { SHEET_LANGUAGES, type SheetLanguage } from "./text/language";
import type { CellValue } from "../workbook/port";

const textsOf = (formula: string): string[] => [...formula.matchAll(/"((?:[^"]|"")*)"/g)].map(([, text = ""]) => text);

/** The texts of the formulas of a name in each language, without those that are the same in another language. */
function ownTexts(name: string, layout: Layout): (readonly [SheetLanguage, readonly string[]])[] {
  const all = SHEET_LANGUAGES.map((language) => {
    const cells = placedFormulas(name, { ...layout, language })?.cells ?? [];
    return [language, [...new Set(cells.flatMap(({ formula }) => textsOf(formula)))]] as const;
  });
  return all.map(([language, texts]) => {
    const others = new Set(all.flatMap(([other, its]) => (other === language ? [] : its)));
    return [language, texts.filter((text) => !others.has(text))];
  });
}

/** The language of the first formula whose texts are of one language; undefined if no formula shows such a text. */
export function languageOfFormulas(
  layout: Layout,
  contents: Readonly<Record<string, readonly (readonly CellValue[])[]>>,
): SheetLanguage | undefined {
  for (const name of NAMES_WITH_FORMULAS) {
    const written = contents[name]?.flat().find(isFormula);
    if (written === undefined || !layout.places.has(name)) continue;
    const shown = new Set(textsOf(String(written)));
    const [found, another] = ownTexts(name, layout).filter(([, texts]) => texts.some((text) => shown.has(text)));
    if (found && !another) return found[0];
  }
  return undefined;
}
