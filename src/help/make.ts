/**
 * `tsx src/help/make.ts [folder]`: writes help.html and first-minutes.html, and both in every other language, into dist,
 * or into the folder given.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { createElement } from "react";
import project from "../../package.json";
import { fileIn, LANGUAGES, type Language } from "../pane/text/language";
import { english } from "../reduction/message";
import { calledBy, evaluate, loadFunctions, type Calculate } from "./evaluate";
import { FirstMinutes } from "./first-minutes";
import { HelpPage, type HelpEntry, type HelpGroup } from "./help-page";
import { readFunctions, type FunctionHelp } from "./jsdoc";
import { FUNCTIONS, inLanguage, LANGUAGE_FOLDERS, textsIn, titleIn } from "./languages";
import { toHtml } from "./layout";
import { drawPicture } from "./pictures";
import { HELP_WORDS } from "./text";

interface Help {
  /** The functions with their examples calculated, the groups in the order in which the add-in registers them. */
  readonly groups: readonly { readonly name: string; readonly entries: readonly HelpEntry[] }[];
  readonly calculate: Calculate;
}

async function calculatedHelp(): Promise<Help> {
  const functions = await loadFunctions();
  const all = readFunctions(FUNCTIONS);
  const byId = new Map<string, FunctionHelp>(all.map((one) => [one.id, one]));
  const calculate: Calculate = (formula) => {
    const help = byId.get(calledBy(formula));
    if (!help) throw new Error(`${formula}: there is no such function`);
    return evaluate(formula, help, functions);
  };
  const worked = (formulas: readonly string[], isRefused: boolean) =>
    formulas.map((formula) => {
      const result = calculate(formula);
      if ("code" in result !== isRefused)
        throw new Error(
          `${formula} ${isRefused ? "is not refused" : `is refused: ${"code" in result && english(result.reason)}`}`,
        );
      return { formula, result };
    });
  const entries = all.map((one): HelpEntry => ({
    ...one,
    worked: worked(one.examples, false),
    refused: worked(one.refusals, true),
  }));
  const groupOf = new Map(entries.map(({ id, group }) => [id, group]));
  const names = [...new Set([...functions.keys()].map((id) => groupOf.get(id)!))];
  return {
    groups: names.map((name) => ({ name, entries: entries.filter(({ group }) => group === name) })),
    calculate,
  };
}

/** The pages in one language, by their files. */
function pagesIn(language: Language, { groups, calculate }: Help, style: string): Readonly<Record<string, string>> {
  const texts = textsIn(LANGUAGE_FOLDERS, language);
  const words = HELP_WORDS[language];
  const { version } = project;
  const told: HelpGroup[] = groups.map(({ name, entries }) => ({
    title: titleIn(texts, name),
    entries: entries.map((entry) => inLanguage(texts, entry)),
  }));
  const names = groups.flatMap(({ entries }) => entries.flatMap(({ pictures }) => pictures));
  const pictures = new Map([...new Set(names)].map((name) => [name, drawPicture(name, language)]));
  return {
    [fileIn("help.html", language)]: toHtml({
      language,
      title: words.page.title,
      style,
      body: createElement(HelpPage, { language, version, groups: told, pictures }),
    }),
    [fileIn("first-minutes.html", language)]: toHtml({
      language,
      title: words.firstMinutes.title,
      style,
      body: createElement(FirstMinutes, { language, version, calculate }),
    }),
  };
}

async function makePages(folder: string): Promise<void> {
  const style = readFileSync(path.join(__dirname, "page.css"), "utf8");
  const help = await calculatedHelp();
  mkdirSync(folder, { recursive: true });
  for (const language of LANGUAGES)
    for (const [file, html] of Object.entries(pagesIn(language, help, style)))
      writeFileSync(path.join(folder, file), html);
}

if (require.main === module) void makePages(process.argv[2] ?? path.join(__dirname, "../../dist"));
