/**
 * What a data sheet says of itself, at its head and in its remarks: in the words of the German sheet, where its formulas
 * have the sentence in the same parts.
 */
import { templateOf, verbatim, type Message, type Value } from "../../../../reduction/message";
import * as ofHead from "../../../../specification/sentences/of-head";
import { NEEDED_INPUTS } from "../../../../specification/head/missing";
import * as ofRemarks from "../../../../specification/sentences/of-remarks";
import { shownOnSheet, wordsOf } from "../../../../specification/text/words";

type Sentence = Message | ((...values: Value[]) => Message);

const PLACES = ["{0}", "{1}", "{2}", "{3}", "{4}", "{5}"].map(verbatim);

/** The templates of sentences, each with the template on a German sheet. */
function fromSheet(sentences: readonly Sentence[]): Readonly<Record<string, string>> {
  const messages = sentences.map((one) => (typeof one === "function" ? one(...PLACES) : one));
  return Object.fromEntries(messages.map((one) => [templateOf(one), shownOnSheet(wordsOf("de"), one)]));
}

/** Inputs that other messages name as well. */
const ELSEWHERE = ["specific_gravity", "diameter", "initial_height"];

const HEAD: readonly Sentence[] = [
  ...NEEDED_INPUTS.flatMap(([name, words]) => (ELSEWHERE.includes(name) ? [] : [words])),
  ...[ofHead.AT_START.ring_and_wet_before, ofHead.AT_START.ring_and_wet_after, ofHead.chooseWord],
  ...[ofHead.solidsFill, ofHead.noPoint, ofHead.notAboveSolids, ofHead.beyondTable],
  ...[ofHead.missing, ofHead.stressesMissing, ofHead.stressMissing, ofHead.readingsMissing],
  ...[ofHead.wrongCurve, ofHead.highestUnderGreatest, ofHead.NOT_FAR_ENOUGH],
];

export const dataSheet: Readonly<Record<string, string>> = {
  ...fromSheet([...HEAD, ...Object.values(ofRemarks)]),

  // Up to version 11.
  "the stress turns back under this load alone: correct it if it was mistyped":
    "die Spannung kehrt nur unter dieser Laststufe um: berichtigen, wenn vertippt",
  "check whether a moment of loading is half a day off, as 1:30 for 13:30: the last time is {0} min, and the next load was applied {1} min after this one":
    "prüfen, ob ein Zeitpunkt der Belastung einen halben Tag daneben liegt, wie 1:30 statt 13:30: die letzte Zeit ist {0} min, und die nächste Laststufe wurde {1} min nach dieser aufgebracht",
  "applied before the load above it: correct one of the two moments":
    "vor der Laststufe darüber aufgebracht: einen der beiden Zeitpunkte berichtigen",
  "the specimen compressed while load was taken off: check the stress and the readings":
    "der Probekörper setzte sich, während Last abgenommen wurde: Spannung und Ablesungen prüfen",

  "a number greater than {0} and not more than {1}": "eine Zahl größer als {0} und nicht größer als {1}",
  "a number not less than {0} and not more than {1}": "eine Zahl nicht kleiner als {0} und nicht größer als {1}",
  "a number greater than {0}": "eine Zahl größer als {0}",
  "a number not less than {0}": "eine Zahl nicht kleiner als {0}",
  "a number not more than {0}": "eine Zahl nicht größer als {0}",
  "a number": "eine Zahl",
  "the number of a load": "die Nummer einer Laststufe",

  "Ring + dry soil": "Ring + trockener Boden",

  "{0}, {1}: enter {2}.": "{0}, {1}: {2} eingeben.",
  "Enter a date: {0}.": "Datum eingeben: {0}.",
  "Enter a number that can be: {0}.": "Mögliche Zahl eingeben: {0}.",
  "Correct the number or its unit, too large for an oedometer test: {0}.":
    "Zahl oder Einheit berichtigen, zu groß für einen Ödometerversuch: {0}.",
  "Check the number and its unit, unusual for an oedometer test: {0}.":
    "Zahl und Einheit prüfen, ungewöhnlich für einen Ödometerversuch: {0}.",
  "The height, {0}, is not less than the diameter, {1}: check whether they were exchanged.":
    "Die Höhe, {0}, ist nicht kleiner als der Durchmesser, {1}: prüfen, ob sie vertauscht wurden.",
  "The bulk density is {0} Mg/m3: check the masses, {1} with its ring and {2}, the diameter, {3}, and the height, {4}.":
    "Die Feuchtdichte ist {0} Mg/m3: zu prüfen sind die Massen, {1} mit Ring und {2}, der Durchmesser, {3}, und die Höhe, {4}.",
  "The zero reading, {0}, lies more than a tenth of the height from the first reading of load 1, {1}: check both, and whether the dial was reset.":
    "Die Nullablesung, {0}, liegt mehr als ein Zehntel der Höhe von der ersten Ablesung der Laststufe 1, {1}, entfernt: beide prüfen, und ob die Messuhr neu gestellt wurde.",
  "Cc, {0}, over 1 + e0 is {1}, which is rare outside peat: check the stresses and the last readings of the loads.":
    "Cc, {0}, durch 1 + e0 ist {1}, was außer bei Torf selten ist: die Spannungen und die letzten Ablesungen der Laststufen prüfen.",
  "Choose a word of the list: {0}.": "Ein Wort der Liste wählen: {0}.",
  "Load {0}: {1}.": "Laststufe {0}: {1}.",
  "{0}, {1}, must be heavier than {2}, {3}, or as heavy: correct one of them.":
    "{0}, {1}, muss so schwer sein wie {2}, {3}, oder schwerer: eines von beiden berichtigen.",
  "{0}, {1}, must be heavier than {2}, {3}: correct one of them.":
    "{0}, {1}, muss schwerer sein als {2}, {3}: eines von beiden berichtigen.",
  "The water content by {0}, {1}, is above {2} %: correct it.":
    "Der Wassergehalt aus {0}, {1}, liegt über {2} %: berichtigen.",
  "Pick by hand of {0}, {1}: enter {2} or {3}, or {4}.": "Festlegung „{0}“, {1}: {2}, {3} oder {4} eingeben.",
};
