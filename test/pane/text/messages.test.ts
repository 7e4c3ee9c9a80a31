/** Every message of the program is in every catalogue, with the same values in it. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { LANGUAGES } from "../../../src/pane/text/language";
import { contentOnSheet, inOneLanguage, speakOfSheet, unitOnSheet } from "../../../src/pane/live/sheet-language";
import { answers } from "../../../src/pane/text/de/messages/answers";
import { inWords, MESSAGES, translated } from "../../../src/pane/text/messages";
import { LIMITS, limitUnit } from "../../../src/checks/limits";
import { shown } from "../../../src/checks/check";
import { limitCalled } from "../../../src/checks/limit-words";
import { FORMULAS } from "../../../src/book/formulas";
import { NEWS } from "../../../src/specification/versions";
import { ALL_ADOPTABLE } from "../../../src/specification/results/adoptable";
import { adoptedCalled } from "../../../src/record/adopted";
import { cellNamed } from "../../../src/record/record";
import { UNITS } from "../../../src/reduction/units";
import { digits, english, listed, listWord, say, templateOf, verbatim } from "../../../src/reduction/message";

const SOURCES = join(__dirname, "../../../src");

const filesOf = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.isDirectory()
      ? filesOf(join(folder, entry.name))
      : /\.tsx?$/.test(entry.name)
        ? [join(folder, entry.name)]
        : [],
  );

/** The templates that a file gives to `say`. */
function templatesOf(file: string): string[] {
  const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isTaggedTemplateExpression(node) && ts.isIdentifier(node.tag) && node.tag.text === "say") {
      const { template } = node;
      const said = ts.isNoSubstitutionTemplateLiteral(template)
        ? [template.text]
        : [template.head.text, ...template.templateSpans.map(({ literal }) => literal.text)];
      found.push(templateOf({ said }));
    }
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
}

/** The news of the versions of the data sheet are messages too, each a template without values. */
const NEWS_TEMPLATES = NEWS.flatMap(({ sentences }) => sentences);

/** So are the names of the numbers of a formula. */
const NUMBERS_OF_FORMULAS = FORMULAS.flatMap(({ arguments: numbers }) => numbers.map(({ name }) => name));

/** Symbols whose index is a word; alpha is the same in every language. */
const SYMBOLS = FORMULAS.flatMap(({ symbol, arguments: numbers }) => [
  symbol,
  ...numbers.map((one) => one.symbol),
]).filter((symbol) => /_(?!alpha)[a-z]{3,}/.test(symbol));

/** Words that worksheet functions answer, and names of units that they refuse. */
const ANSWERED = [
  ...["pass", "stop", "cannot be asked", "over", "not yet", "cannot be told"],
  ...Object.keys(UNITS).map((quantity) => `the ${quantity} unit`),
  // Labels and units of whole tables: `test/functions/language.test.ts` calls every function and finds each of them.
  ...Object.keys(answers),
];

/** What the list of values replaced by hand calls adopted values. */
const ADOPTED = ALL_ADOPTABLE.map(({ name }) => adoptedCalled(name));

/** The names of limits, and those of their units that are words. */
const OF_LIMITS = LIMITS.flatMap(({ name, unit }) => [limitCalled(name), limitUnit(unit)]).flatMap((said) =>
  typeof said === "object" && "said" in said ? [templateOf(said)] : [],
);

const TEMPLATES = [
  ...new Set([
    ...filesOf(SOURCES).flatMap(templatesOf),
    ...NEWS_TEMPLATES,
    ...NUMBERS_OF_FORMULAS,
    ...SYMBOLS,
    ...ANSWERED,
    ...OF_LIMITS,
    ...ADOPTED,
  ]),
];

const placesIn = (template: string): string[] => (template.match(/\{\d+\}/g) ?? []).sort();

test("the sources hold hundreds of messages", () => expect(TEMPLATES.length).toBeGreaterThan(500));

describe.each(LANGUAGES.filter((language) => language !== "en"))("%s", (language) => {
  const catalogue = MESSAGES[language] ?? {};

  test("translates every template of the sources", () =>
    expect(TEMPLATES.filter((template) => !catalogue[template])).toEqual([]));

  test("holds no template that the sources do not have", () =>
    expect(Object.keys(catalogue).filter((template) => !TEMPLATES.includes(template))).toEqual([]));

  test("has the same values in each template", () =>
    expect(
      Object.entries(catalogue)
        .filter(([template, said]) => placesIn(said).join() !== placesIn(template).join())
        .map(([template]) => template),
    ).toEqual([]));
});

test("German messages ask in the infinitive, as the rest of the pane does", () =>
  expect(Object.values(MESSAGES.de ?? {}).filter((said) => /[a-zäöüß]en Sie\b/.test(said))).toEqual([]));

test("a template is translated once: no part of the catalogue overwrites another", () => {
  const folder = join(SOURCES, "pane/text/de/messages");
  const keys = filesOf(folder).flatMap((file) => {
    const source = ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true);
    const found: string[] = [];
    const look = (node: ts.Node): void => {
      if (ts.isPropertyAssignment(node) && (ts.isStringLiteral(node.name) || ts.isIdentifier(node.name)))
        found.push(node.name.text);
      ts.forEachChild(node, look);
    };
    look(source);
    return found;
  });
  expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([]);
});

test("a message in German has a decimal comma, translated parts, and cells and units unchanged", () => {
  const load = { ...say`load ${3} (${say`${digits(12.5, 4)} ${verbatim("kPa")}`})`, load: 3 };
  const message = say`${say`${load}: ${say`${say`it needs ${verbatim("Dial factor (dial_factor)")}`}`}`}`;
  expect(english(message)).toBe("load 3 (12.5 kPa): it needs Dial factor (dial_factor)");
  expect(translated(message, "de")).toBe("Laststufe 3 (12,5 kPa): es braucht Dial factor (dial_factor)");
  expect(translated(0.25, "de")).toBe("0,25");
  expect(translated(digits(1.25e-7, 3), "de")).toBe("1,25·10⁻⁷");
  expect(translated(digits(1.25e-7, 3), "en")).toBe("1.25×10⁻⁷");
  expect(translated(listed([1.5, say`peat`]), "de")).toBe("1,5, Torf");
  expect(inWords(message)).toBe(english(message));
});

test("a message that no catalogue has stays English", () =>
  expect(translated(say`never said ${0.5}`, "de")).toBe("never said 0,5"));

test("a cell is told by its label, and its name for formulas stays out of the pane", () => {
  expect(inWords(say`it needs ${cellNamed("ring_and_dry")}`)).toBe("it needs Ring + dry soil");
  expect(inWords(cellNamed("preconsolidation_low"))).toBe("Preconsolidation stress, not less than");
  expect(english(cellNamed("ring_and_dry"))).toBe("Ring + dry soil (ring_and_dry)");
});

test("a word of a list is told as the sheet has it, whatever the language of the pane", () => {
  const message = say`take the mark "${listWord("wetting")}" off ${cellNamed("load_mark")}`;
  expect(inWords(message)).toBe('take the mark "wetting" off Water added under the load');
  speakOfSheet("de");
  expect(inWords(message)).toBe('take the mark "Wässern" off Wasserzugabe unter der Laststufe');
  expect(["fall", "0.002", 0.002].map(contentOnSheet)).toEqual(["fällt", "0.002", 0.002]);
  expect(["m2/yr", "kPa"].map(unitOnSheet)).toEqual(["m2/a", "kPa"]);
  speakOfSheet("en");
  expect(english(message)).toMatch(/^take the mark "wetting" off /);
  expect(inOneLanguage("de")(listWord("fall"))).toBe("fällt");
});

test("the figure of a check has its unit as the sheet writes it", () => {
  const figure = { what: say`cv`, value: 1318, unit: "m2/yr" };
  expect(inOneLanguage("de")(shown(figure))).toBe("1318 m2/a");
  expect(inOneLanguage("en")(shown(figure))).toBe("1318 m2/yr");
});
