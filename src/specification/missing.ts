/**
 * The inputs that are missing or impossible, with their cells: in full on the page of remarks, and in one row at the
 * head of the sheet.
 */
import { WETTEST } from "../reduction/specimen";
import type { Field } from "./field";
import { CHOICE_REMARK, CURVE_GAP, CURVE_IS_WRONG, HAS_CURVE, INPUT_REMARK } from "./formulas";
import { WITHOUT_STRESS } from "./load-table";
import { addressAtLoad, addressOf as at, topOf as atTop } from "./impossible";
import { isWord } from "./list-words";

/** The inputs that every result needs, in the order of the form. */
const NEEDED: readonly (readonly [name: string, words: string])[] = [
  ["specific_gravity", "specific gravity"],
  ["diameter", "diameter"],
  ["initial_height", "initial height"],
  ["ring_mass", "ring mass"],
  ["ring_and_wet_before", "ring + wet soil before"],
  ["ring_and_wet_after", "ring + wet soil after"],
  ["ring_and_dry", "ring + dry soil"],
  ["dial_factor", "dial factor"],
  ["zero_reading", "zero reading"],
];

const IN_SITU = "in_situ_stress";

/** The last load that has readings and no stress; 0 if there is none. */
const LOAD_WITHOUT_STRESS = `IFERROR(SUMPRODUCT(MAX(ISNUMBER(SEARCH("${WITHOUT_STRESS}",{load_remark}))*{load_number})),0)`;

/** An item of the list. The mark before it stands alone, because each text of a formula is translated whole. */
const item = (formula: string): string => `"; "&${formula}`;

const missing = [
  ...NEEDED.map(([name, words]) => `IF({${name}}="",${item(`"${words}, "&${at(name)}`)},"")`),
  `IF({${IN_SITU}}="",${item(`"in-situ stress (for OCR, field curve and quality), "&${at(IN_SITU)}`)},"")`,
  `IF(COUNT({load_stress})=0,${item(`"stresses of the loads, from "&${atTop("load_stress")}`)},"")`,
  `IF(OR(COUNT({load_stress})=0,${LOAD_WITHOUT_STRESS}=0),"",${item(`"stress of load "&${LOAD_WITHOUT_STRESS}&", "&${addressAtLoad("load_stress", LOAD_WITHOUT_STRESS)}`)})`,
  `IF({next_load}="","",${item('"readings of load "&{next_load}&", in row "&ROW(INDEX({times_01},1))&" and below"')})`,
].join("&");

/** The list without the mark before its first item, and with a point at its end; it is shorter than 999 signs. */
const MISSING_LIST = `"Missing: "&MID(${missing},3,999)&". "`;

const NONE_MISSING = `AND(${[...NEEDED.map(([name]) => `{${name}}<>""`), `{${IN_SITU}}<>""`, "COUNT({load_stress})>0", `${LOAD_WITHOUT_STRESS}=0`, '{next_load}=""'].join(",")})`;

/** A test of two cells: the first must be heavier than the second, or at least as heavy. */
const heavier = (more: string, words: string, less: string, lessWords: string, or = ""): string =>
  `IF(COUNT({${more}},{${less}})<2,"",IF({${more}}${or ? "<" : "<="}{${less}},"${words}, "&${at(more)}&", must be heavier than ${lessWords}, "&${at(less)}&"${or}: correct one of them. ",""))`;

const OR_AS_HEAVY = ", or as heavy";

/** A wet mass that gives a water content which no soil has. */
const tooWet = (content: string, mass: string, words: string): string =>
  `IF(COUNT({${content}})=0,"",IF({${content}}<=${WETTEST},"","The water content by ${words}, "&${at(mass)}&", is above ${100 * WETTEST} %: correct it. "))`;

/** A value of the curve that cannot be used, in the words of the remark on the curve. */
const wrongCurve = `IF(OR(COUNT({preconsolidation_stress})>0,NOT(${HAS_CURVE})),"",IF(AND(${CURVE_IS_WRONG},IFERROR({preconsolidation_remark},"")<>""),"Loads, from "&${atTop("load_stress")}&" on: "&{preconsolidation_remark}&". ",""))`;

const impossible = [
  `IFERROR({${INPUT_REMARK}},"")`,
  `IFERROR({${CHOICE_REMARK}},"")`,
  heavier("ring_and_dry", "Ring + dry soil", "ring_mass", "the ring"),
  heavier("ring_and_wet_before", "Ring + wet soil before", "ring_and_dry", "ring + dry soil", OR_AS_HEAVY),
  heavier("ring_and_wet_after", "Ring + wet soil after", "ring_and_dry", "ring + dry soil", OR_AS_HEAVY),
  `IF(IFERROR(OR({solids_height}="",{initial_height}=""),TRUE),"",IF({solids_height}<{initial_height},"","The solids alone would fill the ring: correct the height, "&${at("initial_height")}&", the diameter, "&${at("diameter")}&", the masses, "&${at("ring_mass")}&" and "&${at("ring_and_dry")}&", or the specific gravity, "&${at("specific_gravity")}&". "))`,
  tooWet("water_content_initial", "ring_and_wet_before", "ring + wet soil before"),
  tooWet("water_content_final", "ring_and_wet_after", "ring + wet soil after"),
  `IFERROR({${CURVE_GAP}},"")`,
  wrongCurve,
].join("&");

/** While the test is running, the results of the curve may need further loads. */
const notFarEnough = `IF(AND(IFERROR(${isWord("{test_state}", "running")},FALSE),IFERROR({preconsolidation_stress}="",FALSE),COUNT({void_ratio_curve})>0),IF(${CURVE_IS_WRONG},"","The loads so far give no virgin line yet: read further loads. "),"")`;

const IN_FULL = "missing_in_full";

export const MISSING_IN_FULL: Field = {
  name: IN_FULL,
  label: "On all inputs",
  measure: "text",
  kind: "remark",
  formula: `=${impossible}&IF(${NONE_MISSING},"",${MISSING_LIST})&${notFarEnough}`,
  note: "Inputs that are still to be typed, and impossible inputs, each with its cell. The head of the sheet shows as much of it as fits.",
  lines: 4,
};

/** The number of signs that surely fit into the row at the head of the sheet; a list of what is missing is shorter. */
export const MOST_AT_HEAD = 390;

/** The number of times that a text of two signs stands in the full text. */
const countOf = (signs: string): string => `(LEN({${IN_FULL}})-LEN(SUBSTITUTE({${IN_FULL}},"${signs}","")))/2`;

export const MISSING: Field = {
  name: "missing_inputs",
  label: "What is missing or cannot be",
  measure: "text",
  kind: "remark",
  // No brackets around the sum before "&": the embedded sheet takes off those that change nothing.
  formula: `=IF(LEN({${IN_FULL}})<=${MOST_AT_HEAD},{${IN_FULL}},LEFT({${IN_FULL}},FIND(". ",{${IN_FULL}})+1)&"And "&${countOf(". ")}+${countOf("; ")}-1&" more: see What next.")`,
  note: "Inputs that are still to be typed, and impossible inputs, each with its cell. Results stay blank until they are there. If there are too many, the others stand on the screen What next and on the page of remarks.",
  lines: 3,
};
