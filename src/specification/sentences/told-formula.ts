/** Sentences as formulas: a text with values of cells in it. */
import { english, verbatim, type Message, type Verbatim } from "../../reduction/message";

/** A text as a string in a formula: in quotation marks, with each quotation mark inside it doubled. */
export const inFormula = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** An expression within a message that becomes a formula; "\u0001" marks its ends. */
export const live = (expression: string): Verbatim => verbatim(`\u0001${expression}\u0001`);

/** The expression of a text that contains `live` expressions: "Load "&A1&" is out". */
export const toldExpression = (text: string): string =>
  text
    .split("\u0001")
    .map((part, index) => (index % 2 ? part : part && inFormula(part)))
    .filter(Boolean)
    .join("&");

/** The formula of a text that contains `live` expressions. */
export const toldFormula = (text: string): string => `=${toldExpression(text)}`;

/** The expression of a part of a remark in English, with the mark that ends it. */
export const toldPart = (part: Message): string => toldExpression(`${english(part)}; `);

/** The expression of a sentence in English, with the space before the next sentence. */
export const toldSentence = (sentence: Message): string => toldExpression(`${english(sentence)} `);
