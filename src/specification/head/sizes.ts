/**
 * The sizes and stresses of an oedometer test in the unit of their cell: numbers that no test has, whose results stay blank,
 * and numbers that few tests have, which are remarked and count. The limits of `measures` hold in every unit; these follow the
 * unit cell of the sheet.
 */
import { live, toldSentence } from "../sentences/told-formula";
import { remarkPart, type Field, type RemarkPart } from "../field";
import { CURVE_GAP, SIZE_REMARK, UNUSUAL_REMARK } from "../formulas";
import {
  farFromZero,
  fewTests,
  lightOrHeavy,
  maybeSwapped,
  noTest,
  SLIP_BEGINS,
  steepCurve,
} from "../sentences/of-head";
import { STEEPEST_SOIL } from "../../reduction/curve/indices";
import { USUAL_MOST_HEIGHT } from "../../reduction/increment/cv";
import { addressOf, listing, lowest } from "./entries";
import { joined, liveAt, topOf } from "./impossible";
import { firstLoadWith } from "./missing";

/** What a cell may have, in mm or in kPa. */
export interface SizeLimits {
  readonly name: string;
  readonly quantity: "length" | "stress";
  /** True for a column of a table. */
  readonly isColumn?: boolean;
  /** No test has more. A number above it is refused. */
  readonly most?: number;
  /** Few tests have less, or more. Such a number is remarked, and counts. */
  readonly usual?: { readonly least?: number; readonly most?: number };
}

/**
 * Rings have 38 to 112 mm, Rowe cells 75 to 254 mm (BS 1377-6, from memory); the largest cells for rockfill have about 1 m
 * (from memory).
 */
const DIAMETER = { quantity: "length", most: 1000, usual: { least: 35, most: 260 } } as const;
/** Specimens for rockfill stay below half a metre (from memory). */
const HEIGHT = { quantity: "length", most: 500, usual: { least: 10, most: USUAL_MOST_HEIGHT } } as const;
/** Frame, disks and papers give 0.05 to 0.5 mm up to the greatest load. Common practice, no source. */
const DEFLECTION = { quantity: "length", isColumn: true, most: 10, usual: { most: 1.5 } } as const;
/** Frames of laboratories reach 3 to 20 MPa, those for rock some tens of MPa. Common practice, no source. */
const MOST_STRESS = 100_000;

export const SIZE_LIMITS: readonly SizeLimits[] = [
  { name: "diameter", ...DIAMETER },
  { name: "initial_height", ...HEIGHT },
  { name: "final_height_measured", ...HEIGHT },
  // No result follows from these three: nothing is refused.
  { name: "registered_diameter", quantity: "length", usual: DIAMETER.usual },
  { name: "registered_height", quantity: "length", usual: HEIGHT.usual },
  // The usual rule is a tenth to a fifth of the height (ASTM D2435 and BS 1377-5, from memory).
  { name: "largest_particle", quantity: "length", usual: { most: 50 } },
  // A division is 0.0005 to 0.01 mm, a reading in inches 25.4 mm; a transducer read in volts has up to about 50 mm per volt.
  // Common practice, no source.
  { name: "dial_factor", quantity: "length", most: 100 },
  { name: "apparatus_loading", ...DEFLECTION },
  { name: "apparatus_unloading", ...DEFLECTION },
  { name: "apparatus_stress", quantity: "stress", isColumn: true, most: MOST_STRESS },
  // Cap and disk alone press with 1 to 3 kPa. Common practice, no source.
  { name: "load_stress", quantity: "stress", isColumn: true, most: MOST_STRESS, usual: { least: 0.5, most: 20_000 } },
  // A seating stress is 2 to 12 kPa, in stiff clays up to some tens. Common practice, no source.
  { name: "seating_stress", quantity: "stress", most: MOST_STRESS, usual: { most: 200 } },
  // 10 MPa is the effective stress at a depth of about 1 km. Common practice, no source.
  { name: "in_situ_stress", quantity: "stress", most: MOST_STRESS, usual: { least: 0.5, most: 10_000 } },
  { name: "design_increase", quantity: "stress", most: MOST_STRESS, usual: { most: 10_000 } },
  { name: "swelling_pressure", quantity: "stress", most: MOST_STRESS, usual: { most: 10_000 } },
];

/** mm in one unit of length of the sheet. */
export const MM_IN: Readonly<Record<string, number>> = { in: 25.4, cm: 10 };

/** The unit of the limits in the unit of the sheet's cell, as an expression. */
const UNIT = {
  length: `IF({length_unit}="in",${MM_IN.in},IF({length_unit}="cm",${MM_IN.cm},1))`,
  stress: 'IFERROR(CLAY.CONVERT_UNIT(1,{stress_unit},"kPa"),1)',
} as const;

/** The address of a cell, or of the lowest cell of a column, with a number for which one of these products is 1. */
function addressWhere({ name, isColumn }: SizeLimits, isWrong: readonly string[]): string {
  const either = isWrong.join("+");
  // A product needs no parentheses among its factors, and the embedded sheet leaves them out of a file.
  if (isColumn) return lowest(name, `ISNUMBER({${name}})*${isWrong.length > 1 ? `(${either})` : either}`);
  return `IF(COUNT({${name}})=0,"",IF(${either}>0,${addressOf(`ROW({${name}})`, `{${name}}`)},""))`;
}

const isAbove = ({ name, quantity }: SizeLimits, most: number): string => `({${name}}>${most}/${UNIT[quantity]})`;
const isBelow = ({ name, quantity }: SizeLimits, least: number): string => `({${name}}<${least}/${UNIT[quantity]})`;

/** Of a number that is refused it is not said that few tests have it. */
function isUnusual(one: SizeLimits): string[] {
  const { name, most, usual: { least, most: usualMost } = {} } = one;
  const isLess = most === undefined ? "1" : `(1-${isAbove(one, most)})`;
  return [
    ...(usualMost === undefined ? [] : [`${isAbove(one, usualMost)}*${isLess}`]),
    ...(least === undefined ? [] : [`({${name}}>0)*${isBelow(one, least)}`]),
  ];
}

/** The bulk densities in Mg/m3 of soils, from peat to glacial till, with some room at both ends. Common practice, no source. */
export const BULK = { least: 0.85, most: 2.7 } as const;

/** The bulk density in Mg/m3, as weighed; an error if a number is missing. */
const BULK_DENSITY =
  'CLAY.DENSITY({ring_and_wet_before}-{ring_mass},{diameter},{initial_height},{length_unit},"Mg/m3")';

/** The sentence on a bulk density that no soil has; "" for others, and where the solids alone would fill the ring: the head says that. */
const LIGHT_OR_HEAVY =
  `IFERROR(IF(OR(COUNT({solids_height},{ring_and_wet_before},{initial_height})<3,{solids_height}>={initial_height},{ring_and_wet_before}<={ring_mass}),"",` +
  `IF(AND(${BULK_DENSITY}>=${BULK.least},${BULK_DENSITY}<=${BULK.most}),"",` +
  `${toldSentence(lightOrHeavy(live(`ROUND(${BULK_DENSITY},2)`), liveAt("ring_and_wet_before"), liveAt("ring_mass"), liveAt("diameter"), liveAt("initial_height")))})),"")`;

/** The sentence on a specimen that is not wider than high; "" for others. */
const SWAPPED = `IF(COUNT({diameter},{initial_height})<2,"",IF({initial_height}<{diameter},"",${toldSentence(maybeSwapped(liveAt("initial_height"), liveAt("diameter")))}))`;

/** The first reading of load 1 lies within this share of the initial height from the zero reading. Common practice, no source. */
export const ZERO_WITHIN = 0.1;

/** The sentence on a zero reading far from the first reading of load 1, at the time 0; "" for others. */
const FAR_FROM_ZERO =
  `IF(COUNT(INDEX({times_01},1),INDEX({readings_01},1),{zero_reading},{dial_factor},{initial_height})<5,"",` +
  `IF(OR(INDEX({times_01},1)<>0,ABS(INDEX({readings_01},1)-{zero_reading})*{dial_factor}<=${ZERO_WITHIN}*{initial_height}),"",` +
  `${toldSentence(farFromZero(liveAt("zero_reading"), live(topOf("readings_01"))))}))`;

const CC_RATIO = "{compression_index}/(1+{void_ratio_initial})";

/** The sentence on a compression index that few soils have; "" for others. */
const STEEP_CURVE =
  `IF(COUNT({compression_index},{void_ratio_initial})<2,"",IF(${CC_RATIO}<=${STEEPEST_SOIL},"",` +
  `${toldSentence(steepCurve(liveAt("compression_index"), live(`ROUND(${CC_RATIO},2)`)))}))`;

const remark = (name: string, label: string, formula: string, note: string): Field => ({
  ...{ name, label, measure: "text", kind: "remark", formula, note },
});

const withMost = SIZE_LIMITS.flatMap((one) => (one.most === undefined ? [] : [{ one, most: one.most }]));

export const UNUSUAL_PARTS: readonly RemarkPart[] = [
  remarkPart(
    UNUSUAL_REMARK,
    "sizes",
    "On unusual numbers: sizes and stresses",
    listing(
      fewTests,
      SIZE_LIMITS.filter(({ usual }) => usual).map((one) => addressWhere(one, isUnusual(one))),
    ),
  ),
  remarkPart(
    UNUSUAL_REMARK,
    "others",
    "On unusual numbers: others",
    `IF(IFERROR({${SIZE_REMARK}},"")="",${SWAPPED}&${LIGHT_OR_HEAVY}&${FAR_FROM_ZERO},"")&${STEEP_CURVE}&IF(IFERROR({${CURVE_GAP}},"")="",${firstLoadWith(SLIP_BEGINS)},"")`,
  ),
];

export const SIZES: readonly Field[] = [
  remark(
    SIZE_REMARK,
    "On sizes and stresses",
    `=${listing(
      noTest,
      withMost.map(({ one, most }) => addressWhere(one, [`${isAbove(one, most)}*1`])),
    )}`,
    "Numbers that no oedometer test has in the unit beside them, by their cells. Void ratios, and what follows from them, stay blank.",
  ),
  remark(
    UNUSUAL_REMARK,
    "On unusual numbers",
    `=${joined(UNUSUAL_PARTS)}`,
    "Numbers that few oedometer tests have in the unit beside them, by their cells, and the first load whose times, stress or readings look like a slip. They count; no result stays blank for them.",
  ),
];
