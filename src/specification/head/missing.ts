/**
 * The inputs that are missing or impossible, with their cells: in full on the page of remarks, and in one row at the
 * head of the sheet.
 */
import { english, say, type Message } from "../../reduction/message";
import { WETTEST } from "../../reduction/specimen";
import { remarkPart, type Field, type RemarkPart } from "../field";
import {
  atLoad,
  CHOICE_REMARK,
  CURVE_GAP,
  CURVE_IS_WRONG,
  ENTRY_REMARK,
  HAS_CURVE,
  INPUT_REMARK,
  IS_POSSIBLE,
  UNUSUAL_REMARK,
} from "../formulas";
import {
  AT_START,
  inputMissing,
  JUMP_BEGINS,
  missing,
  mustBeAsHeavy,
  mustBeHeavier,
  NOT_FAR_ENOUGH,
  ofLoad,
  OUTSIDE_BEGINS,
  readingsMissing,
  solidsFill,
  stressesMissing,
  stressMissing,
  tooWet,
  WITHIN,
  wrongCurve,
} from "../sentences/of-head";
import { isWord } from "../list-words";
import { liveAt as at, loadWith, NO_LOAD, stressAtLoad, topOf as atTop } from "./impossible";
import { STRESS_OF_ROW } from "../readings";
import { STRESS_LEAPS } from "../sentences/of-remarks";
import { inFormula, live, toldExpression, toldSentence } from "../sentences/told-formula";

/** The inputs that every result needs, in the order of the form, and the in-situ stress. */
export const NEEDED_INPUTS: readonly (readonly [name: string, words: Message])[] = [
  ["specific_gravity", say`specific gravity`],
  ["diameter", say`diameter`],
  ["initial_height", say`initial height`],
  ["ring_mass", say`ring mass`],
  ["ring_and_wet_before", WITHIN.ring_and_wet_before],
  ["ring_and_wet_after", WITHIN.ring_and_wet_after],
  ["ring_and_dry", WITHIN.ring_and_dry],
  ["dial_factor", say`dial factor`],
  ["zero_reading", say`zero reading`],
  ["in_situ_stress", say`in-situ stress (for OCR, field curve and quality)`],
];

/** An item of the list. The mark before it stands alone, because each text of a formula is translated whole. */
const item = (said: Message): string => `"; "&${toldExpression(english(said))}`;

/** Of each load: whether it has readings. Its time curve then shows a remark, or an error if the curve is refused. */
const HAVE_READINGS = 'ISERROR({log_d0})+({time_remark}<>"")>0';

/** The last load that has readings and no stress, if the load after it has no stress either; 0 if there is none. */
const LOAD_WITHOUT_STRESS = `IFERROR(SUMPRODUCT(MAX(({load_stress}="")*(${HAVE_READINGS})*(COUNTIFS({load_number},{load_number}+1,{load_stress},">0")=0)*{load_number})),0)`;

const MISSING_ITEMS = [
  ...NEEDED_INPUTS.map(([name, words]) => `IF({${name}}="",${item(inputMissing(words, at(name)))},"")`),
  `IF(COUNT({load_stress})=0,${item(stressesMissing(live(atTop("load_stress"))))},"")`,
  `IF(OR(COUNT({load_stress})=0,${LOAD_WITHOUT_STRESS}=0),"",${item(stressMissing(live(LOAD_WITHOUT_STRESS), live(stressAtLoad(LOAD_WITHOUT_STRESS))))})`,
  `IF({next_load}="","",${item(readingsMissing(live("{next_load}"), live("ROW(INDEX({times_01},1))")))})`,
].join("&");

/** The list without the mark before its first item; it is shorter than 999 signs. */
const MISSING_LIST = toldSentence(missing(live(`MID(${MISSING_ITEMS},3,999)`)));

const NONE_MISSING = `AND(${[...NEEDED_INPUTS.map(([name]) => `{${name}}<>""`), "COUNT({load_stress})>0", `${LOAD_WITHOUT_STRESS}=0`, '{next_load}=""'].join(",")})`;

/** A mass that must be heavier than another one, or at least as heavy. */
export interface Heavier {
  readonly more: keyof typeof AT_START;
  readonly less: string;
  /** What the sentence calls the lighter one. */
  readonly called: Message;
  readonly orAsHeavy: boolean;
}

export const HEAVIER: readonly Heavier[] = [
  { more: "ring_and_dry", less: "ring_mass", called: WITHIN.the_ring, orAsHeavy: false },
  { more: "ring_and_wet_before", less: "ring_and_dry", called: WITHIN.ring_and_dry, orAsHeavy: true },
  { more: "ring_and_wet_after", less: "ring_and_dry", called: WITHIN.ring_and_dry, orAsHeavy: true },
];

function isLight({ more, less, called, orAsHeavy }: Heavier): string {
  const sentence = orAsHeavy ? mustBeAsHeavy : mustBeHeavier;
  return `IF(COUNT({${more}},{${less}})<2,"",IF({${more}}${orAsHeavy ? "<" : "<="}{${less}},${toldSentence(sentence(AT_START[more], at(more), called, at(less)))},""))`;
}

/** The wet masses, each with the water content that it gives. */
export const WET_MASSES = [
  { content: "water_content_initial", mass: "ring_and_wet_before" },
  { content: "water_content_final", mass: "ring_and_wet_after" },
] as const;

const isTooWet = ({ content, mass }: (typeof WET_MASSES)[number]): string =>
  `IF(COUNT({${content}})=0,"",IF({${content}}<=${WETTEST},"",${toldSentence(tooWet(WITHIN[mass], at(mass)))}))`;

const SOLIDS_FILL = toldSentence(
  solidsFill(at("initial_height"), at("diameter"), at("ring_mass"), at("ring_and_dry"), at("specific_gravity")),
);

const isCurveWrong = `IF(OR(COUNT({preconsolidation_stress})>0,NOT(${HAS_CURVE}),NOT(${IS_POSSIBLE})),"",IF(AND(${CURVE_IS_WRONG},IFERROR({preconsolidation_remark},"")<>""),${toldSentence(wrongCurve(live(atTop("load_stress")), live("{preconsolidation_remark}")))},""))`;

/** The sentence on the first load whose remark has these words: the remark from them on, and up to the next remark. */
export function firstLoadWith(words: string): string {
  const said = inFormula(words);
  const load = loadWith(said);
  const remark = atLoad("load_remark", load);
  const from = `MID(${remark},FIND(${said},${remark}),999)`;
  return `IF(IFERROR(${load},${NO_LOAD})=${NO_LOAD},"",${toldSentence(ofLoad(live(load), live(`LEFT(${from},FIND(";",${from}&";")-1)`)))})`;
}

/** The first load whose stress leaps; the sentence on the curve may name it too, as a row of the curve, and then its own sentence is left out. */
const LEAPED = loadWith(toldExpression(english(STRESS_LEAPS)));
const [BEFORE_ROW, BEHIND_ROW] = STRESS_OF_ROW;
const IS_SAID_OF_CURVE = `AND(${IS_POSSIBLE},ISNUMBER(FIND("${BEFORE_ROW}"&MATCH(${LEAPED},{load_number},0)&"${BEHIND_ROW}",{preconsolidation_remark})))`;
const UNUSUAL = `IFERROR(IF(${IS_SAID_OF_CURVE},SUBSTITUTE({${UNUSUAL_REMARK}},${toldSentence(ofLoad(live(LEAPED), STRESS_LEAPS))},""),{${UNUSUAL_REMARK}}),"")`;

/** While the test is running, the results of the curve may need further loads. */
const notFarEnough = `IF(AND(IFERROR(${isWord("{test_state}", "running")},FALSE),IFERROR({preconsolidation_stress}="",FALSE),COUNT({void_ratio_curve})>0,${IS_POSSIBLE}),IF(${CURVE_IS_WRONG},"",${toldSentence(NOT_FAR_ENOUGH)}),"")`;

const IN_FULL = "missing_in_full";

export const MISSING_PARTS: readonly RemarkPart[] = [
  remarkPart(
    IN_FULL,
    "masses",
    "On all inputs: masses",
    [
      ...HEAVIER.map(isLight),
      `IF(IFERROR(OR({solids_height}="",{initial_height}=""),TRUE),"",IF({solids_height}<{initial_height},"",${SOLIDS_FILL}))`,
      ...WET_MASSES.map(isTooWet),
    ].join("&"),
  ),
  remarkPart(
    IN_FULL,
    "loads",
    "On all inputs: loads",
    `${firstLoadWith(OUTSIDE_BEGINS)}&${firstLoadWith(JUMP_BEGINS)}`,
  ),
  remarkPart(IN_FULL, "list", "On all inputs: what is missing", `IF(${NONE_MISSING},"",${MISSING_LIST})`),
];

const [masses, loads, list] = MISSING_PARTS.map(({ name }) => `{${name}}`);

export const MISSING_IN_FULL: Field = {
  name: IN_FULL,
  label: "On all inputs",
  measure: "text",
  kind: "remark",
  formula: `=IFERROR({${INPUT_REMARK}},"")&IFERROR({${CHOICE_REMARK}},"")&${masses}&IFERROR({${CURVE_GAP}},"")&${isCurveWrong}&IFERROR({${ENTRY_REMARK}},"")&${UNUSUAL}&${loads}&${list}&${notFarEnough}`,
  note: "Inputs that are still to be typed, and impossible inputs, each with its cell. The head of the sheet shows as much of it as fits.",
  lines: 4,
};

/** The number of signs that surely fit into the row at the head of the sheet; a list of what is missing is shorter. */
const MOST_AT_HEAD = 390;

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
