/**
 * Values that the engineer adopts in the place of what the constructions give. A blank leaves what the constructions give;
 * either way the sheet goes on with one value, and both are seen side by side.
 */
import { english, verbatim, type Message } from "../../reduction/message";
import { METHOD_NAMES, METHOD_WORDS } from "../../reduction/curve/method-words";
import { when, type Column, type Table } from "../field";
import { atLoad, byMethod, INDEX_OF, linePicked, METHOD, ofCurve, shown, STRESS_PICKED } from "../formulas";
import { MOST, positive } from "../measures";
import { adoptedSaid, NO_INITIALS, NO_REASON, NO_VALUE } from "../sentences/of-remarks";
import { inFormula, live, toldPart } from "../sentences/told-formula";
import { ADOPTABLE, type AdoptableName } from "./adoptable";

interface Constructed {
  /** The result of the constructions. */
  readonly formula: string;
  /** The text of the formula that names the source of the value while nothing is adopted. */
  readonly source: string;
}

const CONSTRUCTED: Readonly<Record<AdoptableName, Constructed>> = {
  preconsolidation_stress: { formula: ofCurve(byMethod("stress")), source: `"as by "&${METHOD}&${STRESS_PICKED}` },
  compression_index: {
    formula: ofCurve(`COMPRESSION_INDEX(${INDEX_OF})`),
    source: `"as by the virgin line"&${linePicked("virgin")}`,
  },
  recompression_index: {
    formula: ofCurve(`RECOMPRESSION_INDEX(${INDEX_OF})`),
    source: `"as by loop or unloading"&${linePicked("loop")}`,
  },
  swelling_index: {
    formula: ofCurve(`SWELLING_INDEX(${INDEX_OF})`),
    source: `"as by the unloading"&${linePicked("unloading")}`,
  },
  c_alpha_chosen: {
    formula: when(["{c_alpha_load}"], shown(atLoad("c_alpha", "{c_alpha_load}"))),
    source: 'IF({c_alpha_load}="","no load chosen","as by load "&{c_alpha_load})',
  },
};

const rowOf = (name: AdoptableName): number => ADOPTABLE.findIndex((one) => one.name === name) + 1;
const isTyped = (row: number): string => `IFERROR(COUNT(INDEX({adopted_value},${row})),0)>0`;

/** The value in use: the adopted value, otherwise the result of the constructions. */
export function inUse(name: AdoptableName): string {
  const constructed = CONSTRUCTED[name].formula.replace(/^=/, "");
  return `=IF(${isTyped(rowOf(name))},INDEX({adopted_value},${rowOf(name)}),${constructed})`;
}

/** The adopted value; blank if there is none. */
export const adoptedOrBlank = (name: AdoptableName): string =>
  `IF(${isTyped(rowOf(name))},INDEX({adopted_value},${rowOf(name)}),"")`;

/** A sentence for each adopted value; blank if no value was adopted. */
export const ADOPTED_SENTENCES = ADOPTABLE.map(({ label }, index) => {
  const row = index + 1;
  const value = `INDEX({adopted_constructed},${row})`;
  // Four significant figures: what is not a number cannot be rounded, and stays as it is.
  const given = `IFERROR(ROUND(${value},3-INT(LOG(ABS(${value}),10)))&"",IFERROR(${value}&"",${inFormula(english(NO_VALUE))}))`;
  const text = (column: string, none: Message) =>
    live(`IF(INDEX({${column}},${row})="",${inFormula(english(none))},INDEX({${column}},${row}))`);
  const said = adoptedSaid(
    verbatim(label),
    live(`INDEX({adopted_value},${row})`),
    text("adopted_by", NO_INITIALS),
    text("adopted_reason", NO_REASON),
    live(`IF(${given}="",${inFormula(english(NO_VALUE))},${given})`),
  );
  return `IF(${isTyped(row)},${toldPart(said)},"")`;
}).join("&");

const input = (column: Omit<Column, "kind">): Column => ({ kind: "input", ...column });

/** What an adopted value of a row lacks, as ", no reason, no initials"; blank if it lacks nothing. */
export const lacking = (table: string): string =>
  `IF([${table}_reason]="",", no reason","")&IF([${table}_by]="",", no initials","")`;

type Three<T> = readonly [by: T, day: T, reason: T];

/** The columns for initials, day and reason, at these places of the table. */
export const signature = (table: string, labels: Three<string>, at: Three<number>): readonly Column[] => [
  input({ name: `${table}_by`, label: labels[0], heading: ["By", ""], measure: "text", at: at[0] }),
  input({ name: `${table}_day`, label: labels[1], heading: ["Day", ""], measure: "date", at: at[1], span: 2 }),
  // This is the last column: a long reason continues over the cells to its right.
  input({
    name: `${table}_reason`,
    label: labels[2],
    heading: ["Reason", ""],
    measure: "text",
    at: at[2],
    note: "Why the engineer departs from the constructions.",
  }),
];

export const ADOPTED_TABLE: Table = {
  rows: ADOPTABLE.length,
  columns: [
    {
      name: "adopted_quantity",
      label: "Quantity",
      heading: ["Quantity", ""],
      measure: "text",
      kind: "label",
      byRow: ADOPTABLE.map(({ label }) => ({ value: label })),
    },
    {
      name: "adopted_constructed",
      label: "Value that the constructions give",
      heading: ["Construc-", "tions give"],
      measure: "pick",
      kind: "result",
      at: 3,
      byRow: ADOPTABLE.map(({ name, measure }) => ({ formula: CONSTRUCTED[name].formula, measure })),
      note: "Value by the constructions; an adopted value does not change it.",
    },
    {
      name: "adopted_unit",
      label: "Unit",
      heading: ["", ""],
      measure: "text",
      kind: "label",
      at: 4,
      byRow: ADOPTABLE.map(({ measure }) => (measure === "stress" ? { formula: "={stress_unit}" } : {})),
    },
    input({
      name: "adopted_value",
      label: "Adopted value",
      heading: ["Adopted", ""],
      measure: "ratio",
      at: 5,
      // The stress among them may be the greatest.
      limits: positive(MOST.stress),
      byRow: ADOPTABLE.map(({ measure }) => ({ measure })),
      note: "Typed by the engineer; blank keeps what the constructions give. OCR, field curve, quality, checks, report and export use the adopted value.",
    }),
    {
      name: "adopted_source",
      label: "Where the value in use comes from",
      heading: ["In use", ""],
      measure: "text",
      kind: "remark",
      at: 6,
      byRow: ADOPTABLE.map(({ name }, index) => ({
        formula: `=IF(${isTyped(index + 1)},"adopted"&${lacking("adopted")},${CONSTRUCTED[name].source})`,
      })),
      note: "Whether the value in use was adopted or is that of the constructions, and what an adopted one lacks.",
    },
    ...signature("adopted", ["Adopted by", "Day of adoption", "Reason of adoption"], [10, 11, 13]),
  ],
};

/** The words for the methods of preconsolidation stress in the list of the sheet. */
export const METHOD_CHOICES = METHOD_NAMES.map((method) => METHOD_WORDS[method]);
