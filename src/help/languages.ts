/**
 * The texts of the worksheet functions in other languages than English. `src/functions/text` has a folder for each
 * language, named by its tag ("de"). In it `names.json` gives the names of the parameters, each other file the texts of
 * the group of functions with its name, and `shared.json` texts of several groups: all by the English of the JSDoc.
 */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { titleOf, type FunctionHelp } from "./jsdoc";

export const FUNCTIONS = path.join(__dirname, "../functions");

/** The folder with a folder for each language. */
export const LANGUAGE_FOLDERS = path.join(FUNCTIONS, "text");

type Table = Readonly<Record<string, string>>;

/** The files of a language, by their names without the ending. */
export type FunctionTexts = Readonly<Record<string, Table>>;

const NAMES = "names";
const SHARED = "shared";

/** The languages that have a folder: ["de"]. English has none. */
export const languagesIn = (folders: string): string[] =>
  readdirSync(folders, { withFileTypes: true })
    .flatMap((one) => (one.isDirectory() ? [one.name] : []))
    .sort();

/** The texts in the folder of a language; none if there is no folder. */
export function textsIn(folders: string, language: string): FunctionTexts {
  const folder = path.join(folders, language);
  const files = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith(".json")) : [];
  return Object.fromEntries(
    files.map((file) => [path.basename(file, ".json"), JSON.parse(readFileSync(path.join(folder, file), "utf8"))]),
  );
}

/** A text of a group of functions in the language; undefined if the language lacks it. */
const textFrom = (texts: FunctionTexts, group: string, english: string): string | undefined =>
  texts[group]?.[english] ?? texts[SHARED]?.[english];

/** The title of a group of functions; English if the language lacks it. */
export function titleIn(texts: FunctionTexts, group: string): string {
  const title = titleOf(FUNCTIONS, group);
  return textFrom(texts, group, title) ?? title;
}

/** A function with its texts in the language; what the language lacks stays English. */
export function inLanguage<T extends FunctionHelp>(texts: FunctionTexts, help: T): T {
  const told = (english: string): string => textFrom(texts, help.group, english) ?? english;
  return {
    ...help,
    description: told(help.description),
    parameters: help.parameters.map((one) => ({
      ...one,
      name: texts[NAMES]?.[one.name] ?? one.name,
      text: told(one.text),
    })),
    returns: told(help.returns),
    sources: help.sources.map(told),
  };
}

/** What a language changes of an entry of functions.json. */
interface Described {
  readonly id: string;
  readonly description?: string;
  readonly parameters: readonly { readonly name: string; readonly description?: string }[];
}

/**
 * The functions of functions.json in a language: ids, names, the order of the parameters and their types stay; the
 * descriptions and the names of the parameters are those of the language.
 */
export const describedIn = <T extends Described>(
  texts: FunctionTexts,
  help: readonly FunctionHelp[],
  functions: readonly T[],
): T[] =>
  functions.map((one) => {
    const found = help.find(({ id }) => id === one.id);
    if (!found) return one;
    const { description, parameters } = inLanguage(texts, found);
    return {
      ...one,
      description,
      parameters: one.parameters.map((parameter, index) => ({
        ...parameter,
        name: parameters[index]?.name ?? parameter.name,
        description: parameters[index]?.text ?? parameter.description,
      })),
    };
  });

interface EnglishText {
  readonly group: string;
  /** Where it stands, for a person who looks for it. */
  readonly place: string;
  readonly english: string;
}

/** Every English text of the functions. */
const textsOf = (help: readonly FunctionHelp[]): EnglishText[] => [
  ...[...new Set(help.map(({ group }) => group))].map((group) => ({
    group,
    place: `src/functions/${group}.ts, title`,
    english: titleOf(FUNCTIONS, group),
  })),
  ...help.flatMap(({ id, group, description, parameters, returns, sources }) => [
    { group, place: id, english: description },
    ...parameters.map(({ name, text }) => ({ group, place: `${id}, ${name}`, english: text })),
    { group, place: `${id}, @returns`, english: returns },
    ...sources.map((english) => ({ group, place: `${id}, @source`, english })),
  ]),
];

/** What a language lacks, and what it has for no function; each says where it stands. */
export interface Gaps {
  readonly missing: readonly string[];
  readonly unused: readonly string[];
}

/** Compares the texts of a language with the functions. */
export function gapsOf(texts: FunctionTexts, help: readonly FunctionHelp[]): Gaps {
  const english = textsOf(help);
  const names = [...new Set(help.flatMap(({ parameters }) => parameters.map(({ name }) => name)))];
  const groupsWith = (text: string): string[] => [
    ...new Set(english.flatMap((one) => (one.english === text ? [one.group] : []))),
  ];
  function isUsed(file: string, text: string): boolean {
    if (file === NAMES) return names.includes(text);
    return file === SHARED ? groupsWith(text).length > 1 : groupsWith(text).includes(file);
  }
  return {
    missing: [
      ...english
        .filter((one) => !textFrom(texts, one.group, one.english))
        .map((one) => `${one.place}: "${one.english}"`),
      ...names.filter((name) => !texts[NAMES]?.[name]).map((name) => `name of the parameter ${name}`),
    ],
    unused: Object.entries(texts).flatMap(([file, table]) =>
      Object.keys(table)
        .filter((text) => !isUsed(file, text))
        .map((text) => `${file}.json: "${text}"`),
    ),
  };
}
