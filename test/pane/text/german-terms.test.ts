/**
 * One German term for one thing: the data sheet, the pane, the report, the help and the worksheet functions say the same.
 * "log t", "Wurzel t" and "Dekade" are the words of German laboratory sheets, from memory; the wording of DIN EN ISO 17892-5
 * was not at hand.
 */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { CATALOGUES } from "../../../src/pane/text";
import { MESSAGES } from "../../../src/pane/text/messages";
import { CURVE_PICK_NAMES } from "../../../src/reduction/curve/picks";
import { english } from "../../../src/reduction/message";
import { PICK_NAMES, pickSaid } from "../../../src/reduction/increment/constructions/picks";
import { wordIn } from "../../../src/specification/list-words";

/** A term, and the words for the same thing that no German text has. */
const TERMS: readonly (readonly [term: string, others: RegExp])[] = [
  ["log t", /log(arithmus)?\.? der Zeit|\blog\.?[ -]Zeit/i],
  ["Wurzel t", /Wurzel(n der| der|-) ?Zeit/i],
  ["je Dekade", /Zehnerpotenz|logarithmische[nr]? Dekade|log-?zyklus/i],
  ["Gerade ab", /gerades Stück (ab|von|bis)\b|\bGerade (der Schleife )?von\b/i],
  ["Kriechast ab", /Kriechast von\b/],
  ["4:1-Paar", /Paare?s? 4:1/],
  ["Wässern", /Bewässer/i],
  ["Schale", /Schälchen/],
  // The title of DIN EN ISO 17892-5, from memory; "Kompressionsversuch" is the name of the sheet and stands alone.
  ["Ödometerversuch mit stufenweiser Belastung", /Kompressionsversuch[^“"<,)]/],
  ["Höhe der Festmasse", /Feststoffhöhe/],
  ["Hebelverhältnis", /Hebelübersetzung/],
  ["Überkonsolidierungsgrad", /Überkonsolidierungsverhältnis/],
  ["In-situ-Spannung", /\bSpannung in situ/],
  ["Sekundärkonsolidationsbeiwert", /Beiwert der Sekundärsetzung|Kriechbeiwert/],
  ["in der Ansicht „", /auf der Seite „/i],
  ["Semikolon", /Strichpunkt/],
  ["Blattprüfung", /Blatt prüfen\)|Prüfung des Blatts/],
  ["Add-In", /\bAdd-in\b/],
  ["aus dem Gedächtnis", /aus der Erinnerung/],
  // A number before a noun is an adjective: das 1,8-fache cv; without a noun it is one itself: das 1,8-Fache der Stufe.
  ["-Fache", /-fachen?\b(?! (?:\p{Lu}|cv\b))/u],
];

const SOURCES = path.join(__dirname, "../../../src");

/** The lines of every German text, each with its place. */
const LINES = readdirSync(SOURCES, { recursive: true })
  .map(String)
  .filter((file) => file.split(path.sep).join("/").includes("text/de/") && /\.(tsx?|json)$/.test(file))
  .flatMap((file) =>
    readFileSync(path.join(SOURCES, file), "utf8")
      .split("\n")
      .map((line, index) => `${file}:${index + 1}: ${line.trim()}`),
  );

test.each(TERMS)("the texts say “%s”, and no other words for it", (term, others) => {
  expect(LINES.filter((line) => others.test(line))).toEqual([]);
  expect(LINES.some((line) => line.includes(term))).toBe(true);
});

test("a pick by hand has the same German name on the sheet, in a remark and in the review", () => {
  const called = (name: string): string => english(pickSaid(name));
  const small = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
  const { picks } = CATALOGUES.de.review;
  const names = [...PICK_NAMES, ...CURVE_PICK_NAMES].filter((name) => name !== "greatest_curvature");
  const onSheet = names.map((name) => wordIn("de", called(name)));
  expect(names.map((name) => MESSAGES.de![called(name)])).toEqual(onSheet);
  expect(names.map((name) => small(picks[name]))).toEqual(onSheet.map(small));
});
