/** The remarks in full: the remarks of a person, and the remarks of the reduction. */
import { METHOD_WORDS, METHOD_NAMES, type MethodName } from "../reduction/curve/method-words";
import { when, type Field, type RemarkPart } from "./field";
import { text } from "./form-fields";
import { ADOPTED_SENTENCES } from "./results/adopted";
import { ADOPTED_CV_SENTENCES } from "./results/adopted-cv";
import { ENTRIES, ENTRY_PARTS } from "./head/entries";
import { asked, ON_CURVE, SOLIDS, SPECIMEN_CALL } from "./formulas";
import { IMPOSSIBLE, IMPOSSIBLE_PARTS } from "./head/impossible";
import { shownWord } from "./list-words";
import { MISSING_IN_FULL, MISSING_PARTS } from "./head/missing";
import { SIZES, UNUSUAL_PARTS } from "./head/sizes";
import { DESIGN_REMARK } from "./results/design";
import { ofField, ofQuality } from "./results/results";

/** The remarks that a person types. They are the last fields of the form and span it. */
export const TYPED_REMARKS: readonly Field[] = [
  {
    ...text(
      "deviations",
      "Deviations",
      "Each departure from the standard, with the reason; where there was none, say so.",
    ),
    lines: 3,
  },
  {
    ...text("test_remarks", "Test remarks", "Disturbance, shells, seams, anything else a reader must know."),
    lines: 3,
  },
];

/** A method in the words of the sheet's table of methods. */
const called = (method: MethodName): string => shownWord(METHOD_WORDS[method]);

/**
 * The remarks of the reduction, on a page beside the results. Each formula returns one value, because Excel allows no
 * array in merged cells.
 */
export const REMARKS: readonly Field[] = [
  {
    name: "specimen_remark",
    label: "On the specimen",
    measure: "text",
    kind: "remark",
    formula: when(
      [...SOLIDS, "{initial_height}", "{water_content_initial}", "{water_content_final}"],
      `IFERROR(${SPECIMEN_CALL},${asked("remark")},{test_temperature},{pore_salt}),"")`,
    ),
    note: "Remarks on the masses and sizes.",
    lines: 2,
  },
  {
    name: "preconsolidation_remark",
    label: "On the curve",
    measure: "text",
    kind: "remark",
    // "ok" of the curve stands alone only, and the remark does not end with "; ": "~|~" marks the end of the text.
    formula: `=SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(${ADOPTED_SENTENCES}&${ADOPTED_CV_SENTENCES}&IF(COUNT({void_ratio_curve})=0,"",IFERROR(${ON_CURVE},""))&"~|~","; ok~|~","~|~"),"; ~|~",""),"~|~","")`,
    note: "What was adopted, by whom and why, and the remarks on the construction that was chosen, or why there is none.",
    lines: 2,
  },
  {
    name: "preconsolidation_verdict",
    label: "On every method",
    measure: "text",
    kind: "remark",
    formula: `=IF(COUNT({void_ratio_curve})=0,"",IFERROR(VLOOKUP(${shownWord("Together")},{preconsolidation_spread},3,FALSE),""))`,
    note: "How far the methods agree.",
    lines: 2,
  },
  {
    name: "methods_remark",
    label: "On each method",
    measure: "text",
    kind: "remark",
    formula: `=IF(COUNT({void_ratio_curve})=0,"",IFERROR(${METHOD_NAMES.map(
      (method) => `${called(method)}&": "&VLOOKUP(${called(method)},{preconsolidation_spread},3,FALSE)`,
    ).join('&"; "&')},""))`,
    note: "The points that each method used, or why it has no answer.",
    lines: 4,
  },
  {
    name: "field_remark",
    label: "On the field curve",
    measure: "text",
    kind: "remark",
    formula: ofField("remark", 2),
    note: "Remarks on the field curve.",
    lines: 2,
  },
  {
    name: "quality_remark",
    label: "On the sample",
    measure: "text",
    kind: "remark",
    formula: ofQuality("remark"),
    note: "Remarks on the quality of the sample.",
    lines: 2,
  },
  {
    name: "design_remark",
    label: "On the design values",
    measure: "text",
    kind: "remark",
    formula: DESIGN_REMARK,
    note: "Which part of the increase is virgin; if a stress lies beyond the curve, which stress and which curve.",
    lines: 2,
  },
  {
    name: "remarks_on_loads",
    label: "On the loads",
    measure: "text",
    kind: "remark",
    formula: `=IF(COUNT({end_reading})=0,"",CLAY.REMARKS_BY_LOAD({load_number},{load_remark},${shownWord("English")}))`,
    note: "Remarks on the loads: each stands once, with the loads that it applies to.",
    lines: 18,
  },
  ...IMPOSSIBLE,
  ...SIZES,
  ENTRIES,
  MISSING_IN_FULL,
];

/** The parts of the longest of these remarks, which stand among the workings. */
export const REMARK_PARTS: readonly RemarkPart[] = [
  ...IMPOSSIBLE_PARTS,
  ...UNUSUAL_PARTS,
  ...ENTRY_PARTS,
  ...MISSING_PARTS,
];
