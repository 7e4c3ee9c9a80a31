/** The catalogue is complete in every language, and the only place from which the screens take words. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import ts from "typescript";
import { CATALOGUES } from "../../../src/pane/text";
import { LANGUAGES } from "../../../src/pane/text/language";
import { numberText } from "../../../src/pane/text/number";

type Words = string | ((...put: any[]) => unknown) | readonly Words[] | { readonly [key: string]: Words };

/** Every text and function of a catalogue by its place: "readings.faults.blank". */
function leaves(words: Words, place = ""): [string, string | ((...put: any[]) => unknown)][] {
  if (typeof words === "string" || typeof words === "function") return [[place, words]];
  return Object.entries(words).flatMap(([key, value]) => leaves(value, place ? `${place}.${key}` : key));
}

const ALL = Object.fromEntries(LANGUAGES.map((language) => [language, leaves(CATALOGUES[language] as Words)]));

/** Arguments for functions of the catalogue: a count, a name, or a list of names or of pairs of them. */
const PUT = [(count: number) => count, (count: number) => String(count), (count: number) => Array(count).fill("AB")];

/** The text of a function of the catalogue for a count, whichever argument it takes. */
function said(say: (...put: any[]) => unknown, count: number): unknown {
  let failure: unknown;
  for (const put of PUT)
    try {
      return say(...Array.from({ length: say.length }, () => put(count)));
    } catch (error) {
      failure = error;
    }
  throw failure;
}

describe.each(LANGUAGES)("in %s", (language) => {
  test("every text says something", () => {
    for (const [place, words] of ALL[language])
      if (typeof words === "string") expect([place, words.trim()]).toEqual([place, expect.stringMatching(/\S/)]);
  });

  test('every function gives a text for 0, 1 and 2, without "undefined" in it', () => {
    for (const [place, say] of ALL[language])
      if (typeof say === "function")
        for (const count of [0, 1, 2]) {
          const words = said(say, count);
          expect([place, typeof words]).toEqual([place, "string"]);
          expect([place, words]).toEqual([place, expect.not.stringMatching(/undefined|NaN|\[object/)]);
        }
  });
});

test("every language has the same texts in the same places, with the same values", () => {
  const shape = (language: string) =>
    ALL[language].map(([place, words]) => [place, typeof words === "function" ? words.length : "text"]).sort();
  for (const language of LANGUAGES) expect([language, shape(language)]).toEqual([language, shape("en")]);
});

test("no sentence was left in English", () => {
  const others = LANGUAGES.filter((language) => language !== "en");
  const english = new Map(ALL.en);
  for (const language of others)
    for (const [place, words] of ALL[language]) {
      // Names of programs and licences are the same in every language.
      if (typeof words !== "string" || place.startsWith("about.parts")) continue;
      if ((words.match(/\p{L}{3,}/gu)?.length ?? 0) >= 3)
        expect([place, words]).not.toEqual([place, english.get(place)]);
    }
});

describe("numbers", () => {
  test("have the digits of their format, and at least two", () => {
    expect(numberText(125.26, "0.0")).toBe("125.3");
    expect(numberText(0.0042, "0.00")).toBe("0.0042");
    expect(numberText(0.5304, "0.0%")).toBe("53.0%");
    expect(numberText(0, "0.00")).toBe("0.00");
    expect(numberText(-0.5, "0.000")).toBe("−0.500");
    expect(numberText(1.234e-9, "0.0E+00")).toBe("1.2×10⁻⁹");
    expect(numberText(12)).toBe("12");
  });
});

/** Attributes that a person reads or hears. */
const HEARD =
  /^(label|title|hint|alt|placeholder|text|validationMessage|aria-label|aria-description|aria-roledescription)$/;
/** Paper sizes have the same name in every language. */
const NAMES = ["A4", "Letter"];
const hasLetter = (words: string): boolean => /\p{L}/u.test(words) && !NAMES.includes(words);

/** Texts that an expression may give: both branches of a choice, either side of an "or", the words of a template. */
function texts(node: ts.Node): string[] {
  if (ts.isStringLiteralLike(node)) return [node.text];
  if (ts.isTemplateExpression(node)) return [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)];
  if (ts.isConditionalExpression(node)) return [...texts(node.whenTrue), ...texts(node.whenFalse)];
  if (ts.isParenthesizedExpression(node)) return texts(node.expression);
  if (ts.isBinaryExpression(node)) {
    const { kind } = node.operatorToken;
    const isOr = kind === ts.SyntaxKind.BarBarToken || kind === ts.SyntaxKind.QuestionQuestionToken;
    if (isOr || kind === ts.SyntaxKind.PlusToken) return [...texts(node.left), ...texts(node.right)];
    if (kind === ts.SyntaxKind.AmpersandAmpersandToken) return texts(node.right);
  }
  return [];
}

/** The words in the source of a screen, with their lines. */
function ownWords(file: string, code: string): string[] {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const tell = (node: ts.Node, words: readonly string[]): void => {
    const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
    for (const one of words.filter(hasLetter)) found.push(`${file}:${line} ${one.trim()}`);
  };
  const look = (node: ts.Node): void => {
    if (ts.isJsxText(node)) tell(node, [node.text]);
    if (ts.isJsxExpression(node) && node.expression && !ts.isJsxAttribute(node.parent))
      tell(node, texts(node.expression));
    if (ts.isJsxAttribute(node) && HEARD.test(node.name.getText()) && node.initializer) {
      const { initializer } = node;
      if (ts.isStringLiteral(initializer)) tell(node, [initializer.text]);
      else if (ts.isJsxExpression(initializer) && initializer.expression) tell(node, texts(initializer.expression));
    }
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
}

describe("words of the screens", () => {
  test("are found where they stand in the source", () => {
    const code =
      'const a = <p title="Hm">Words {x ? "more" : y} {`${n} kPa`} <b label={z ?? "else"} className="left">{1}</b></p>;';
    expect(ownWords("a.tsx", code).map((found) => found.replace(/^\S+ /, ""))).toEqual([
      "Hm",
      "Words",
      "more",
      "kPa",
      "else",
    ]);
  });

  const folder = path.join(__dirname, "../../../src/pane");
  const screens = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".tsx"));
  test.each(screens)("%s takes all of its words from the catalogue", (file) => {
    expect(ownWords(file, readFileSync(path.join(folder, file), "utf8"))).toEqual([]);
  });
});
