/** The sentences of the help page. */
import { bold, code } from "../parts";
import type { PageWords } from "../words";

export const page: PageWords = {
  title: "Clayledger: worksheet functions",
  version: (version) => `Version ${version}`,
  firstMinutes: (link) => (
    <>
      <a href={link}>The first ten minutes in Excel</a>: twelve steps that show whether everything works.
    </>
  ),
  functions: "Functions",
  cautions: "Cautions",
  rules: {
    heading: "Rules for all functions",
    list: [
      "A series is a column or a row of cells. Two series pair by position and have the same length.",
      "Times are minutes. Water contents, strains and saturations are ratios: 0.352 for 35.2 %. Readings and heights share one length unit.",
      "A blank cell in a series is left out. Rows may stand in any order: they are sorted by time, equal times are averaged, and the remark says so.",
      <>
        Where a function has items, {code("item")} asks for one of them in one cell. Left out, the whole table spills:
        label, value, unit, and in the last row the remark.
      </>,
      "The remark is “ok”, or says what to look at. Warnings can be wrong both ways: “ok” is no proof of quality.",
      "A text in a cell is in the language of the word that asks for it: “remark” gives the remark in English, “Bemerkung” in German; likewise “Klasse” for “class”, “Urteil” for “verdict”, “Boden” for “soil”, “Herkunft” for “from”, “Hauptbeitrag” for “largest”, “Worte” for “words”, “Fehler” for “error”, “alle” for “all” and “offen” for “open”. A whole table is in English; “Deutsch” in the place of the item gives it in German, and each of its labels then asks for its item. The message of an error is in the language of the pane.",
    ],
  },
  errors: {
    heading: "What every function refuses",
    list: [
      <>
        {bold("#VALUE!")}: an input that cannot be used, such as a text, a date, an error of another cell, a mass of
        zero, or two series of unequal length.
      </>,
      <>{bold("#N/A")}: the input is fine, but the method does not apply to this curve.</>,
    ],
    end: "Both carry a message with the row and the remedy: point at the mark beside the cell to read it.",
  },
  sheet: {
    heading: "The example sheet",
    about:
      "All examples on this page calculate from these cells, and the results were calculated by the functions themselves when this page was made. To try an example, copy the table, paste it into A1 of an empty sheet, and copy the formula. The test is invented. If your Excel separates arguments by semicolons, write semicolons.",
    columns: {},
  },
  range: "a range",
  optional: "may be left out",
  gives: (what) => `Gives: ${what}`,
  examples: (count) => (count === 1 ? "Example" : "Examples"),
  refuses: "Refuses, for example",
  source: "Source",
  moreRows: (count) => `and ${count} more rows`,
  given: (formula) => `What ${formula} gives`,
  drawnUnder: (link) => <>The construction is drawn under {link}.</>,
  picture: (name) => `The construction on the example sheet: ${name.replace("_", " ")}`,
};
