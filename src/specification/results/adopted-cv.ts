/**
 * cv that the engineer adopts for ranges of stress: recompression (from the in-situ stress to the preconsolidation stress),
 * virgin (beyond it), and another range of the engineer's own. Where ranges overlap the lower row counts.
 */
import { english, verbatim, type Message } from "../../reduction/message";
import { METHOD_PICK } from "../../reduction/increment/constructions/picks";
import { lacking, signature } from "./adopted";
import { CV_RANGES, type CvRangeName } from "./adoptable";
import type { Column, Table } from "../field";
import { shown, TIME_METHOD } from "../formulas";
import { hasWord } from "../list-words";
import { MOST, positive } from "../measures";
import { adoptedCvSaid, NO_INITIALS, NO_REASON } from "../sentences/of-remarks";
import { inFormula, live, toldPart } from "../sentences/told-formula";

/** The stresses that bound a range unless others are typed. */
const BOUNDS: Readonly<Record<CvRangeName, readonly [from: string, to: string]>> = {
  cv_recompression: ["{in_situ_stress}", "{preconsolidation_stress}"],
  cv_virgin: ["{preconsolidation_stress}", "MAX({load_stress})"],
  cv_another: ['""', '""'],
};

const inUse = (typed: string, usual: string): string =>
  `IF(ISNUMBER([${typed}]),[${typed}],IF(ISNUMBER(${usual}),${usual},""))`;

/** The upper stress is blank where it is not above the lower one: then the row has no range. */
const BOUND = {
  low: (name: CvRangeName): string => `=${inUse("adopted_cv_from", BOUNDS[name][0])}`,
  high: (name: CvRangeName): string => {
    const upper = inUse("adopted_cv_to", BOUNDS[name][1]);
    return `=IF(COUNT([adopted_cv_low])=0,"",IF(ISNUMBER(${upper}),IF(${upper}>[adopted_cv_low],${upper},""),""))`;
  },
};

const HAS_RANGE = "COUNT([adopted_cv_low],[adopted_cv_high])=2";

const ofLoads = (item: string): string =>
  `CLAY.CV_RANGE({load_stress},{cv_chosen},[adopted_cv_low],[adopted_cv_high],"${item}")`;

const NO_RANGE = '"give both stresses, the lower first"';

/** The construction that gave the cv of the loads. */
const BY = `IF(${hasWord("{pick_of}", METHOD_PICK)},"each load's choice",${TIME_METHOD})`;

/** The number of loads of a range, as "1 load" or "3 loads". */
const LOADS = `IF(${ofLoads("loads")}=1,"1 load",${ofLoads("loads")}&" loads")`;

/** The word for where the cv in use comes from; a row without stresses is blank unless something was typed in it. */
const SOURCE =
  `=IF(ISNUMBER([adopted_cv]),IF(${HAS_RANGE},"adopted"&${lacking("adopted_cv")},${NO_RANGE}),` +
  `IF(NOT(${HAS_RANGE}),IF(COUNT([adopted_cv_from],[adopted_cv_to])>0,${NO_RANGE},""),` +
  `IF(ISNUMBER([adopted_cv_constructed]),"as by "&${BY}&", "&${LOADS},"no load with a cv in it")))`;

const rowOf = (name: CvRangeName): number => CV_RANGES.findIndex((one) => one.name === name) + 1;

/** The cv in use for a range: the adopted one, otherwise that of the loads. */
export function cvInUse(name: CvRangeName): string {
  const at = (column: string): string => `INDEX({${column}},${rowOf(name)})`;
  const isAdopted = `AND(COUNT(${at("adopted_cv")})>0,COUNT(${at("adopted_cv_low")},${at("adopted_cv_high")})=2)`;
  return `=IFERROR(IF(${isAdopted},${at("adopted_cv")},IF(COUNT(${at("adopted_cv_constructed")})>0,${at("adopted_cv_constructed")},"")),"")`;
}

/** The arguments of CV_AT with the ranges for which a cv is adopted. */
export const ADOPTED_CV_ARGUMENTS = "{adopted_cv_low},{adopted_cv_high},{adopted_cv}";

/** A sentence for each adopted cv; blank if none was adopted. */
export const ADOPTED_CV_SENTENCES = CV_RANGES.map(({ label }, index) => {
  const at = (column: string): string => `INDEX({${column}},${index + 1})`;
  const text = (column: string, none: Message) =>
    live(`IF(${at(column)}="",${inFormula(english(none))},${at(column)})`);
  const said = adoptedCvSaid(
    verbatim(label),
    live(at("adopted_cv")),
    live(at("adopted_cv_low")),
    live(at("adopted_cv_high")),
    text("adopted_cv_by", NO_INITIALS),
    text("adopted_cv_reason", NO_REASON),
  );
  return `IF(IFERROR(COUNT(${at("adopted_cv")}),0)>0,${toldPart(said)},"")`;
}).join("&");

const typedStress = (name: string, label: string, heading: readonly [string, string], at: number): Column => ({
  ...{ name, label, heading, measure: "stress", kind: "input", at },
  limits: positive(MOST.stress),
  note: "Blank: the in-situ stress to the preconsolidation stress for recompression, and from there to the greatest load for virgin.",
});

const boundInUse = (end: "low" | "high", label: string, heading: readonly [string, string], at: number): Column => ({
  ...{ name: `adopted_cv_${end}`, label, heading, measure: "stress", kind: "result", at },
  byRow: CV_RANGES.map(({ name }) => ({ formula: BOUND[end](name) })),
  note: "The stress in use: the one typed, otherwise that of the test; an upper stress that is not above the lower one is left out.",
});

export const ADOPTED_CV_TABLE: Table = {
  rows: CV_RANGES.length,
  columns: [
    {
      name: "adopted_cv_range",
      label: "Range of stress for cv",
      heading: ["cv over", ""],
      measure: "text",
      kind: "label",
      byRow: CV_RANGES.map(({ range }) => ({ value: range })),
    },
    typedStress("adopted_cv_from", "cv adopted from", ["From, if", "other"], 2),
    typedStress("adopted_cv_to", "cv adopted to", ["To, if", "other"], 3),
    boundInUse("low", "cv, lower stress in use", ["From", ""], 4),
    boundInUse("high", "cv, upper stress in use", ["To", ""], 5),
    {
      name: "adopted_cv_constructed",
      label: "cv that the loads give",
      heading: ["Loads", "give"],
      measure: "cv",
      kind: "result",
      at: 6,
      formula: `=IF(COUNT({cv_chosen})=0,"",IF(${HAS_RANGE},IFERROR(${shown(ofLoads("mean"))},""),""))`,
      note: "Geometric mean of the cv of the loads of first loading that begin and end within the range (where none does, of those that end within it), whatever is adopted beside it.",
    },
    {
      name: "adopted_cv",
      label: "Adopted cv",
      heading: ["Adopt-", "ed cv"],
      measure: "cv",
      kind: "input",
      at: 7,
      limits: positive(MOST.cv),
      note: "Typed by the engineer; blank keeps what the loads give. Design values, checks, report and summary go on with the adopted cv. Where ranges overlap the lower row counts.",
    },
    {
      name: "adopted_cv_source",
      label: "Where the cv in use comes from",
      heading: ["In use", ""],
      measure: "text",
      kind: "remark",
      at: 8,
      formula: SOURCE,
      note: "Whether the cv in use was adopted or is that of the loads, and what an adopted one lacks.",
    },
    ...signature("adopted_cv", ["cv adopted by", "Day of adoption of cv", "Reason of adoption of cv"], [11, 12, 14]),
  ],
};
