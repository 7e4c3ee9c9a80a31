/**
 * The part of the AGS4 dictionary that a consolidation test needs: groups and headings in their order, with unit, type and
 * status. Source: AGS4 standard dictionary, edition 4.1.1 (AGS Data Format Working Group, open standard).
 */
export const EDITION = "4.1.1";

export interface Heading {
  readonly name: string;
  readonly unit: string;
  readonly type: string;
  readonly key?: boolean;
}

const h = (name: string, type: string, unit = "", key = false): Heading => ({
  name,
  type,
  unit,
  ...(key ? { key } : {}),
});

const SAMPLE_KEY: readonly Heading[] = [
  h("LOCA_ID", "ID", "", true),
  h("SAMP_TOP", "2DP", "m", true),
  h("SAMP_REF", "X", "", true),
  h("SAMP_TYPE", "PA", "", true),
  h("SAMP_ID", "ID", "", true),
];
const SPECIMEN_KEY: readonly Heading[] = [
  ...SAMPLE_KEY,
  h("SPEC_REF", "X", "", true),
  h("SPEC_DPTH", "2DP", "m", true),
];

/** The groups of the file in order, with only the headings that the file may use. */
export const GROUPS = {
  PROJ: [h("PROJ_ID", "ID", "", true), h("PROJ_NAME", "X")],
  ABBR: [h("ABBR_HDNG", "X", "", true), h("ABBR_CODE", "X", "", true), h("ABBR_DESC", "X"), h("ABBR_LIST", "X")],
  TRAN: [
    h("TRAN_ISNO", "X", "", true),
    h("TRAN_DATE", "DT", "yyyy-mm-dd"),
    h("TRAN_PROD", "X"),
    h("TRAN_STAT", "X"),
    h("TRAN_DESC", "X"),
    h("TRAN_AGS", "X"),
    h("TRAN_RECV", "X"),
    h("TRAN_DLIM", "X"),
    h("TRAN_RCON", "X"),
  ],
  TYPE: [h("TYPE_TYPE", "X", "", true), h("TYPE_DESC", "X")],
  UNIT: [h("UNIT_UNIT", "X", "", true), h("UNIT_DESC", "X")],
  LOCA: [h("LOCA_ID", "ID", "", true)],
  SAMP: [...SAMPLE_KEY, h("SAMP_DESC", "X")],
  CONG: [
    ...SPECIMEN_KEY,
    h("SPEC_DESC", "X"),
    h("SPEC_PREP", "X"),
    h("CONG_TYPE", "PA"),
    h("CONG_COND", "PA"),
    h("CONG_SDIA", "2DP", "mm"),
    h("CONG_HIGT", "2DP", "mm"),
    h("CONG_MCI", "X", "%"),
    h("CONG_MCF", "X", "%"),
    h("CONG_BDEN", "2DP", "Mg/m3"),
    h("CONG_DDEN", "2DP", "Mg/m3"),
    h("CONG_PDEN", "XN", "Mg/m3"),
    h("CONG_SATR", "0DP", "%"),
    h("CONG_SPRS", "2SF", "kPa"),
    h("CONG_SATH", "1DP", "%"),
    h("CONG_IVR", "3DP"),
    h("CONG_REM", "X"),
    h("CONG_METH", "X"),
    h("CONG_LAB", "X"),
    h("TEST_STAT", "X"),
    h("SPEC_BASE", "2DP", "m"),
    h("CONG_DEV", "X"),
    h("CONG_MCIS", "X"),
    h("CONG_CORR", "YN"),
  ],
  CONS: [
    ...SPECIMEN_KEY,
    h("CONS_INCN", "X", "", true),
    h("CONS_IVR", "3DP"),
    h("CONS_INCF", "0DP", "kPa"),
    h("CONS_INCE", "3DP"),
    h("CONS_INMV", "2SF", "m2/MN"),
    h("CONS_INSC", "2SF"),
    h("CONS_CVRT", "2SF", "m2/yr"),
    h("CONS_CVLG", "2SF", "m2/yr"),
    h("CONS_TEMP", "1DP", "DegC"),
    h("CONS_REM", "X"),
  ],
  GRAG: [...SPECIMEN_KEY, h("SPEC_DESC", "X"), h("GRAG_CLAY", "1DP", "%"), h("GRAG_FINE", "1DP", "%")],
  LLPL: [...SPECIMEN_KEY, h("SPEC_DESC", "X"), h("LLPL_LL", "0DP", "%"), h("LLPL_PL", "XN", "%"), h("LLPL_PI", "0DP")],
} as const satisfies Record<string, readonly Heading[]>;

export type GroupName = keyof typeof GROUPS;

export const TYPES: Readonly<Record<string, string>> = {
  "0DP": "Value; required number of decimal places, 0",
  "1DP": "Value; required number of decimal places, 1",
  "2DP": "Value; required number of decimal places, 2",
  "3DP": "Value; required number of decimal places, 3",
  "2SF": "Value; required number of significant figures, 2",
  DT: "Date time in international format",
  ID: "Unique Identifier",
  PA: "Text listed in ABBR Group",
  X: "Text",
  XN: "Text/numeric",
  YN: "Yes or No",
};

export const UNIT_NAMES: Readonly<Record<string, string>> = {
  "%": "percentage",
  DegC: "degree Celsius",
  "Mg/m3": "megagrams per cubic metre",
  kPa: "kiloPascal",
  m: "metre",
  "m2/MN": "square metres per megaNewton",
  "m2/yr": "square metres per year",
  mm: "millimetre",
  "yyyy-mm-dd": "year month day",
};

/** Kinds of sample that a specimen may be trimmed from, with the abbreviations of the dictionary. */
export const SAMPLE_TYPES = {
  B: "Bulk disturbed sample",
  BLK: "Block sample",
  C: "Core sample",
  D: "Small disturbed sample",
  L: "Liner sample (dynamic)",
  M: "Mazier type sample",
  P: "Piston sample",
  TW: "Thin walled push in sample",
  U: "Undisturbed sample - open drive",
  UT: "Thin wall open drive tube sampler",
} as const satisfies Readonly<Record<string, string>>;

export type SampleType = keyof typeof SAMPLE_TYPES;

export const isSampleType = (code: string): code is SampleType => Object.hasOwn(SAMPLE_TYPES, code);
