/** The texts of the worksheet functions in other languages than English, and functions-de.json as it is built. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { readFunctions } from "../../src/help/jsdoc";
import { describedIn, FUNCTIONS, gapsOf, LANGUAGE_FOLDERS, languagesIn, textsIn } from "../../src/help/languages";
import { CATALOGUES } from "../../src/pane/text";
import { MESSAGES } from "../../src/pane/text/messages";
import { englishWord } from "../../src/record/cells";
import { methodNamed } from "../../src/reduction/curve/method-words";
import { wordsOf } from "../../src/specification/text/words";
import { GLOSSARY } from "./glossary";

const help = readFunctions(FUNCTIONS);
const languages = languagesIn(LANGUAGE_FOLDERS);
const built = (file: string) =>
  JSON.parse(readFileSync(path.join(__dirname, "../../dist", file), "utf8")) as {
    functions: {
      id: string;
      description: string;
      helpUrl: string;
      parameters: { name: string; description: string }[];
    }[];
  };

/** The texts of a language by their English, without the names of parameters. */
const texts = (language: string): [string, string][] =>
  Object.entries(textsIn(LANGUAGE_FOLDERS, language)).flatMap(([file, table]) =>
    file === "names" ? [] : Object.entries(table),
  );

/** What a text has and the other one lacks, in the order of the first; a value counts as often as it stands there. */
function lacking(there: readonly string[], here: readonly string[]): string[] {
  const left = [...here];
  return there.filter((one) => {
    const place = left.indexOf(one);
    if (place >= 0) left.splice(place, 1);
    return place < 0;
  });
}

const numbersIn = (text: string): string[] => text.match(/\d+(?:[.,]\d+)*/g) ?? [];
/** Values of arguments, as they are typed; errors of cells; units with a figure or a stroke in them; symbols. */
const CODES = /"[^"]*"|#N\/A|#VALUE!|\b(?:[A-Z]{3,}_?[A-Z0-9_]*)\b|\b[a-z]\w*_\w+\b|\b[a-zA-Z0-9]+\/[a-zA-Z0-9]+\b/g;
const codesIn = (text: string): string[] => text.match(CODES) ?? [];
/** Units without a stroke; "in" is a word too, and stands among the codes where it is quoted. */
const unitsIn = (text: string): string[] =>
  text.match(/\b(?:mm|cm|kPa|MPa|psf|ksf|tsf|psi|bar|lbf|pcf|min)\b|%/g) ?? [];

test("German has a folder", () => expect(languages).toContain("de"));

describe.each(languages)("%s", (language) => {
  test("has every text and every name of a parameter, and nothing that no function has", () => {
    expect(gapsOf(textsIn(LANGUAGE_FOLDERS, language), help)).toEqual({ missing: [], unused: [] });
  });

  test("keeps the numbers, the units, the words that are typed and the errors of the English text", () => {
    const lost = texts(language).flatMap(([english, own]) => {
      const missing = [
        ...lacking(codesIn(english), codesIn(own)),
        ...lacking(unitsIn(english), unitsIn(own)),
        ...lacking(
          numbersIn(english).map((number) => number.replace(",", ".")),
          numbersIn(own).map((number) => number.replace(",", ".")),
        ),
      ];
      return missing.length > 0 ? [`"${own}" lacks ${missing.join(" ")} of "${english}"`] : [];
    });
    expect(lost).toEqual([]);
  });

  test("says each text of the wizard in the 255 characters that Excel shows", () => {
    const functions = describedIn(textsIn(LANGUAGE_FOLDERS, language), help, built("functions.json").functions);
    const described = functions.flatMap(({ description, parameters }) => [
      description,
      ...parameters.map((one) => one.description),
    ]);
    expect(described.filter((text) => text.length > 255)).toEqual([]);
  });

  test("gives the parameters of a function different names without spaces", () => {
    const functions = describedIn(textsIn(LANGUAGE_FOLDERS, language), help, built("functions.json").functions);
    const wrong = functions.flatMap(({ id, parameters }) => {
      const names = parameters.map(({ name }) => name);
      return names.some((name) => !/^[\p{L}\d_]+$/u.test(name)) || new Set(names).size < names.length
        ? [`${id}: ${names.join(", ")}`]
        : [];
    });
    expect(wrong).toEqual([]);
  });

  test(`functions-${language}.json has the functions of functions.json: other are only what a person reads and the help`, () => {
    const [english, own] = [built("functions.json"), built(`functions-${language}.json`)];
    const withoutWords = ({ functions, ...rest }: typeof english) => ({
      ...rest,
      functions: functions.map((one) => ({
        ...one,
        description: "",
        helpUrl: "",
        parameters: one.parameters.map((parameter) => ({ ...parameter, name: "", description: "" })),
      })),
    });
    expect(withoutWords(own)).toEqual(withoutWords(english));
    expect(own.functions).toEqual(
      describedIn(textsIn(LANGUAGE_FOLDERS, language), help, english.functions).map((one) => ({
        ...one,
        helpUrl: own.functions.find(({ id }) => id === one.id)!.helpUrl,
      })),
    );
  });
});

describe("German", () => {
  test("has the words of the trade that the pane and the data sheet have", () => {
    const { titles, labels, notes } = wordsOf("de");
    const elsewhere = JSON.stringify([titles, labels, notes, MESSAGES.de, CATALOGUES.de]);
    expect(GLOSSARY.filter(([, german]) => !german.test(elsewhere))).toEqual([]);
    const wrong = GLOSSARY.flatMap(([english, german]) =>
      texts("de").flatMap(([text, own]) =>
        text !== own && english.test(text) && !german.test(own) ? [`${english}: "${own}"`] : [],
      ),
    );
    expect(wrong).toEqual([]);
  });

  test("names beside a word that is typed only the word of a German sheet, which the functions take for it", () => {
    const wrong = texts("de").flatMap(([text, own]) =>
      lacking(codesIn(own), codesIn(text)).flatMap((code) => {
        const german = /^"(.*)"$/.exec(code)?.[1];
        if (german === undefined) return [];
        const word = englishWord(german);
        return word !== german && text.includes(methodNamed(word) ?? word) ? [] : [`${code} in "${own}"`];
      }),
    );
    expect(wrong).toEqual([]);
  });

  test("writes decimal commas; only names of documents and their parts have points", () => {
    const wrong = texts("de").filter(([, own]) => /\d\.\d/.test(own.replace(/\b5\.1\.2 und 6\.3\.3\b/, "")));
    expect(wrong).toEqual([]);
  });
});

describe("the folder of a third language", () => {
  const folders = mkdtempSync(path.join(tmpdir(), "languages-"));
  afterAll(() => rmSync(folders, { recursive: true }));
  const write = (file: string, content: Record<string, string>): void => {
    mkdirSync(path.join(folders, "nl"), { recursive: true });
    writeFileSync(path.join(folders, "nl", file), JSON.stringify(content));
  };
  const waterContent = help.filter(({ id }) => id === "WATER_CONTENT");
  const { description } = waterContent[0];

  test("is found, its texts are used, and what it lacks or has for nothing is listed", () => {
    write("specimen.json", { [description]: "Watergehalte van grond.", "No function says this.": "Niets." });
    write("names.json", { wet_mass: "natte_massa", dry_mass: "droge_massa", nothing: "niets" });
    expect(languagesIn(folders)).toEqual(["nl"]);
    const dutch = textsIn(folders, "nl");
    const [described] = describedIn(dutch, help, [
      {
        id: "WATER_CONTENT",
        description,
        parameters: ["wet_mass", "dry_mass", "tare"].map((name) => ({ name, description: "in English" })),
      },
    ]);
    expect(described.description).toBe("Watergehalte van grond.");
    expect(described.parameters.map(({ name }) => name)).toEqual(["natte_massa", "droge_massa", "tare"]);
    const { missing, unused } = gapsOf(dutch, waterContent);
    expect(unused).toEqual(['names.json: "nothing"', 'specimen.json: "No function says this."']);
    expect(missing).toEqual([
      'src/functions/specimen.ts, title: "The specimen"',
      ...waterContent[0].parameters.map(({ name, text }) => `WATER_CONTENT, ${name}: "${text}"`),
      `WATER_CONTENT, @returns: "${waterContent[0].returns}"`,
      ...waterContent[0].sources.map((source) => `WATER_CONTENT, @source: "${source}"`),
      "name of the parameter tare",
    ]);
  });

  test("a language without a folder has nothing yet", () => expect(textsIn(folders, "fr")).toEqual({}));
});
