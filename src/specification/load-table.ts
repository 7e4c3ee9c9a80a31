/**
 * The load table has one row per load, also for unloading. It has three parts, which stand side by side and are printed
 * one below the other: the compression at the end of each load and at d100; the coefficients; the constructions on the
 * time curves.
 */
import { MOST_ON_UNLOADING, SAME_LOAD } from "../reduction/curve/loads";
import { english } from "../reduction/message";
import { when, type Column, type Table } from "./field";
import { asked, atLoad, SENSE, shown, TIME_METHOD } from "./formulas";
import { isWord, shownWord } from "./list-words";
import { MOST, positive, type Measure } from "./measures";
import { LATE_BEGIN, LEAP, LEAST_STEP, LOADS, READ_BEYOND } from "./readings";
import { LONGEST_LOAD, timesLong } from "../reduction/increment/cv";
import {
  COMPRESSED,
  CURVE_REFUSED,
  halfDay,
  HEIGHT_TOO_LOW,
  MOMENT_BACK,
  MOMENT_SAME,
  NO_D100,
  NO_MOMENT,
  NO_STRESS,
  NOT_CORRECTED,
  NOT_MARKED,
  NOT_WETTING,
  readingOutside,
  READINGS_WITHOUT_STRESS,
  ROSE,
  SEATING_AS_LOAD,
  SEATING_BEYOND_TABLE,
  STRESS_BEYOND_TABLE,
  STRESS_LEAPS,
  STRESS_NOT_POSITIVE,
  STRESS_TURNS,
  SWELLED,
  SWELLED_FIRST,
  timeBeforeLoad,
  timeOutside,
  timesOfDay,
  timesShort,
  WETTING,
} from "./sentences/of-remarks";
import { live, toldExpression, toldPart } from "./sentences/told-formula";

type Heading = readonly [string, string];

const result = (
  name: string,
  label: string,
  heading: Heading,
  measure: Measure,
  formula: string,
  note: string,
): Column => ({ name, label, heading, measure, kind: "result", formula, note });

/** A column with the value that stands above its first load. */
const startingAt = (start: string, column: Column): Column => ({ ...column, start });

const spilled = (name: string, label: string, heading: Heading, measure: Measure, note: string): Column => ({
  name,
  label,
  heading,
  measure,
  kind: "result",
  spilled: true,
  note,
});

/** True if a height is above that of the solids, and one that a specimen can have. */
const hasVoids = (height: string): string => `AND(${height}>{solids_height},${height}<=${MOST.length})`;

/** A condition on the branch of the load: loading, unloading or wetting. */
const isOnBranch = (branch: "loading" | "unloading" | "wetting"): string => isWord("[load_branch]", branch);

/** True if the curve is drawn through d100, and the load has one. */
const AT_D100 = `AND(${isWord("{curve_from}", "d100")},[void_ratio_d100]<>"")`;

/**
 * Converts a reading to the corrected cumulative deformation. Compression is positive for either direction of the dial.
 */
const deformation = (reading: string) => `(${reading}-{zero_reading})*${SENSE}*{dial_factor}`;

const deflection = (branch: string) =>
  `CLAY.APPARATUS_DEFLECTION([load_stress],{apparatus_stress},{apparatus_${branch}})`;

const COMPRESSION: readonly Column[] = [
  { name: "load_number", label: "Load number", heading: ["Load", ""], measure: "count", kind: "label", start: "0" },
  {
    name: "load_stress",
    label: "Stress of the load",
    heading: ["Stress", ""],
    measure: "stress",
    kind: "input",
    note: "Total axial stress of the load, in test order: loading, unloading and reloading. Where the load was taken off, the stress of cap and disk is left.",
    limits: positive(MOST.stress),
    isOfLoad: true,
    start: '=IF({seating_stress}="",0,{seating_stress})',
  },
  {
    name: "load_mark",
    label: "Water added under the load",
    heading: ["Water", "added"],
    measure: "text",
    kind: "input",
    choices: ["inundated", "wetting"],
    note: "inundated: water was added under this load. wetting: a stage of its own, in which the specimen was wetted under the stress of the load before.",
    startInput: {
      name: "seating_mark",
      label: "Water added under the seating stress",
      note: "Mark this cell where the specimen was inundated under the seating stress, before the first load. Where the readings of that wetting stand in the first load, mark the first load instead.",
    },
  },
  {
    name: "load_started",
    label: "Date the load was applied",
    heading: ["Applied", "on"],
    measure: "applied",
    kind: "input",
    note: "Date and time of day, typed as 2031-03-07 09:15 or in this computer's own form. A date alone shows 00:00 and counts as a day whose time is not known.",
  },
  result(
    "load_branch",
    "Branch",
    ["Branch", ""],
    "text",
    when(
      ["[load_stress]"],
      `IF(AND([^load_stress]>0,[load_stress]<=[^load_stress]*${1 + SAME_LOAD},[^load_stress]<=[load_stress]*${1 + SAME_LOAD}),${shownWord("wetting")},IF([load_stress]<[^load_stress],${shownWord("unloading")},${shownWord("loading")}))`,
      "ISNUMBER([^load_stress]+0)",
    ),
    `Unloading where the stress is less than that of the load before; wetting where it is the same within ${100 * SAME_LOAD} %: water was added, or the load was left standing.`,
  ),
  startingAt(
    '=IF({zero_reading}="","",{zero_reading})',
    result(
      "end_reading",
      "Reading at the end of the load",
      ["End", "reading"],
      "reading",
      '=IF(OR(COUNT([load_stress])=0,COUNT({readings_#})=0),"",IF([load_stress]>0,INDEX({readings_#},MATCH(MAX(IF(ISNUMBER({readings_#}),{times_#})),{times_#},0)),""))',
      "The reading at the latest time that has one.",
    ),
  ),
  startingAt(
    "0",
    result(
      "deformation",
      "Cumulative deformation, measured",
      ["Deform.", "meas."],
      "length",
      when(["[end_reading]", "{zero_reading}", "{dial_factor}"], deformation("[end_reading]"), "{dial_factor}>0"),
      "(end reading - zero reading) x dial factor, compression positive.",
    ),
  ),
  startingAt(
    "0",
    result(
      "apparatus_deflection",
      "Apparatus deflection",
      ["Frame", "deflect."],
      "length",
      when(
        ["[deformation]"],
        `IF(COUNT({apparatus_stress})=0,0,IF(COUNT({apparatus_deflection_seating})=0,"",IF(AND(${isOnBranch("wetting")},[^apparatus_deflection]<>""),[^apparatus_deflection],IFERROR(IF(AND(${isOnBranch("unloading")},COUNT({apparatus_unloading})>0),${deflection("unloading")},${deflection("loading")})-{apparatus_deflection_seating},""))))`,
      ),
      "Deflection since the seating stress: interpolated on log stress in the apparatus deflection table, on the branch of the load, less the deflection at the seating stress; on wetting that of the load before; 0 where the table is empty, blank where it does not reach the stress.",
    ),
  ),
  startingAt(
    "0",
    result(
      "corrected_deformation",
      "Cumulative deformation of the specimen",
      ["Deform.", "corr."],
      "length",
      when(["[deformation]", "[apparatus_deflection]"], "[deformation]-[apparatus_deflection]"),
      "Measured deformation less apparatus deflection, since the zero reading.",
    ),
  ),
  startingAt(
    "0",
    result(
      "strain_end",
      "Strain at the end of the load",
      ["Strain", "at end"],
      "strain",
      when(
        ["[corrected_deformation]", "{initial_height}"],
        "CLAY.STRAIN([deformation],{initial_height},[apparatus_deflection])",
        "{initial_height}>ABS([corrected_deformation])",
      ),
      "Corrected deformation / initial height.",
    ),
  ),
  startingAt(
    '=IF({initial_height}="","",{initial_height})',
    result(
      "height_end",
      "Height at the end of the load",
      ["Height", "at end"],
      "length",
      when(["[corrected_deformation]", "{initial_height}"], "{initial_height}-[corrected_deformation]"),
      "Initial height less corrected deformation.",
    ),
  ),
  startingAt(
    "={void_ratio_initial}",
    result(
      "void_ratio_end",
      "Void ratio at the end of the load",
      ["Void ratio", "at end"],
      "ratio",
      when(
        ["[height_end]", "{solids_height}"],
        "CLAY.VOID_RATIO([height_end],{solids_height})",
        hasVoids("[height_end]"),
      ),
      "e = (H - Hs) / Hs.",
    ),
  ),
  result(
    "deformation_d100",
    "Corrected deformation at d100",
    ["Deform.", "at d100"],
    "length",
    `=IF(${isWord("[load_method]", "root time")},` +
      `IF(OR([root_d100]="",[corrected_deformation]=""),"",${deformation("[root_d100]")}-[apparatus_deflection]),` +
      `IF(OR([load_method]="",[log_d100]="",[corrected_deformation]=""),"",${deformation("[log_d100]")}-[apparatus_deflection]))`,
    "d100 of the load's own construction, as corrected cumulative deformation; blank where it gave none.",
  ),
  result(
    "strain_d100",
    "Strain at d100",
    ["Strain", "at d100"],
    "strain",
    when(
      ["[deformation_d100]", "{initial_height}"],
      "CLAY.STRAIN([deformation_d100],{initial_height})",
      "{initial_height}>ABS([deformation_d100])",
    ),
    "Corrected deformation at d100 / initial height.",
  ),
  result(
    "void_ratio_d100",
    "Void ratio at d100",
    ["Void ratio", "at d100"],
    "ratio",
    when(
      ["[deformation_d100]", "{initial_height}", "{solids_height}"],
      "CLAY.VOID_RATIO({initial_height}-[deformation_d100],{solids_height})",
      hasVoids("{initial_height}-[deformation_d100]"),
    ),
    "Void ratio at the end of primary consolidation.",
  ),
  startingAt(
    "={void_ratio_initial}",
    result(
      "void_ratio_curve",
      "Void ratio of the curve",
      ["Void ratio", "of curve"],
      "ratio",
      `=IF(${AT_D100},[void_ratio_d100],[void_ratio_end])`,
      "The values that the compression curve is drawn through, as chosen among the choices. Where d100 was chosen and a load has none, the end of that load is used, and the next part says so.",
    ),
  ),
];

/** Each part begins with the load again, so that each printed page can be read alone. */
const repeated = (part: string): readonly Column[] => [
  {
    name: `load_number_${part}`,
    label: "Load number",
    heading: ["Load", ""],
    measure: "count",
    kind: "label",
    formula: "=[load_number]",
  },
  {
    name: `load_stress_${part}`,
    label: "Stress of the load",
    heading: ["Stress", ""],
    measure: "stress",
    kind: "label",
    formula: when(["[load_stress]"], "[load_stress]"),
  },
];

/**
 * Leaves the cell blank if nothing consolidates: for unloading, for wetting, and for a load under which the specimen
 * swelled.
 */
const ofConsolidation = (formula: string): string =>
  `IF(OR(NOT(${isOnBranch("loading")}),[height_end]>[^height_end]),"",${formula})`;

const coefficientOfConsolidation = (time: string, height: string, call: string) =>
  when(
    [`[${time}]`, `[${height}]`],
    ofConsolidation(shown(`CLAY.${call}([${time}],[${height}],{drainage},{cv_unit},{length_unit})`)),
    `[${height}]>0`,
  );

/** The height of the specimen at a reading of the load. */
const heightAt = (reading: string) => `{initial_height}-(${deformation(reading)}-[apparatus_deflection])`;

/** The procedure that the person chose for all loads. */
const PROCEDURE = `IF(${isWord("{time_procedure}", "drawn")},${shownWord("drawn")},${shownWord("aided")})`;

/**
 * The stress of the load that is `rows` after this load (-2: two loads before), found by its number. It is an error if
 * no such load exists.
 */
const stressAt = (rows: number): string =>
  atLoad("load_stress", `[load_number]${rows < 0 ? "-" : "+"}${Math.abs(rows)}`);

/**
 * The remark on the stress of a row, shown as soon as the stress is typed. It says that the stress is missing although
 * the next load has one or the load has readings, or that the stress turns back for this load alone, which is probably a typing error (25, 50,
 * 20, 200), or leaps (50, 100, 2000). A real loop of a single load, or a large step, looks the same; therefore the remark only asks.
 */
const DIRECTION_BEFORE = `([^load_stress]-IFERROR(${stressAt(-2)}+0,0))`;
const TURNS =
  `([load_stress]-[^load_stress])*${DIRECTION_BEFORE}<0,` +
  `${stressAt(1)}>0,(${stressAt(1)}-[^load_stress])*([load_stress]-[^load_stress])<0`;
/**
 * Under load 2 no rise came before: its stress leaps if the next one is not above it (0.8, 16, 3.2), or is not typed yet. MAX
 * counts a text as 0: a comparison would take it for more than any number.
 */
const LEAPS =
  `COUNT([load_stress])=1,[load_stress]>${LEAP}*[^load_stress],` +
  `[^load_stress]>IF([load_number]=2,IFERROR((MAX(${stressAt(1)})>[load_stress])*[load_stress],0),MAX(${stressAt(-2)}))`;
const OUT_OF_ORDER =
  `IF([load_stress]="",IF(IFERROR(${stressAt(1)}>0,FALSE),${toldPart(NO_STRESS)},IF([load_readings]>0,${toldPart(READINGS_WITHOUT_STRESS)},"")),` +
  `IF(COUNTIF([load_stress],">0")=0,${toldPart(STRESS_NOT_POSITIVE)},"")&` +
  `CHOOSE(1+[load_stress_odd],"",${toldPart(STRESS_TURNS)},${toldPart(STRESS_LEAPS)}))`;

/**
 * The remark on a load that was taken off, and under which the specimen compressed, or rose above its initial height.
 */
const UNLOADED =
  `IF(OR(NOT(${isOnBranch("unloading")}),COUNT([height_end],[^height_end],{initial_height})<3),"",` +
  `IF([^height_end]-[height_end]>${MOST_ON_UNLOADING}*{initial_height},${toldPart(COMPRESSED)},` +
  `IF([height_end]>{initial_height},${toldPart(ROSE)},"")))`;

/** The last row of a column of readings with a number for which this holds; 0 without one. `isAny` asks the whole column first, for speed. */
const lastRowWith = (cells: string, isAny: string, isWrong: string): string =>
  `=IFERROR(IF(${isAny},SUMPRODUCT(MAX(ISNUMBER(${cells})*(${isWrong})*(ROW(${cells})-ROW(INDEX(${cells},1))+1))),0),0)`;

const working = (name: string, label: string, heading: Heading, measure: Measure, formula: string): Column => ({
  name,
  label,
  heading,
  measure,
  kind: "label",
  isWorking: true,
  formula,
});

const NEXT_STARTED = atLoad("load_started", "[load_number]+1");

/** The remark on a number that no time, or no reading, can be. */
const OUTSIDE =
  `IF([load_time_outside]>0,${toldPart(timeOutside(live("[load_time_outside]")))},"")&` +
  `IF([load_reading_outside]>0,${toldPart(readingOutside(live("[load_reading_outside]")))},"")`;

/**
 * The remark on the clock of a row: a time before the load, a moment of loading before that of the load before or the same
 * (two dates without a time of day may be the same), and no moment of loading where other loads have one.
 */
const CLOCK =
  `IF([load_early_row]>0,${toldPart(timeBeforeLoad(live("[load_early_row]"), live("[load_early_time]")))},"")&` +
  `IF([load_started]="",IF(AND([end_reading]<>"",COUNT({load_started})>0),${toldPart(NO_MOMENT)},""),` +
  `IF(COUNT([load_started],[^load_started])<2,"",CHOOSE(2+SIGN([load_started]-[^load_started]),${toldPart(MOMENT_BACK)},IF(MOD([load_started],1),${toldPart(MOMENT_SAME)},""),"")))`;

/** The minutes from the moment of loading to that of the next load; 0 if one of them is not known. */
const TO_NEXT = "[load_minutes_to_next]";
const LAST_TIME = "[load_last_time]";
const FIRST_TIME = "[load_first_time]";
const FIRST_STEP = "[load_first_step]";

/** True if the stress is that of load 1, and neither load is marked. Later equal stresses come from wetting, or from a load left standing. */
const IS_UNMARKED = `AND([load_number]=2,${isOnBranch("wetting")},[load_mark]="",IFERROR(${atLoad("load_mark", "1")}&"","")="")`;

/** True if the stress of load 1 is the seating stress, and neither is marked. */
const IS_SEATING = `AND([load_number]=1,${isOnBranch("wetting")},[load_mark]="",IFERROR({seating_mark}&"","")="")`;

/** True if the specimen is below its initial height, and rose under the greatest stress so far without a mark of water. */
const ROSE_UNDER_GREATEST =
  `IFERROR(AND(${isOnBranch("loading")},[load_mark]="",COUNT([height_end],[^height_end],{initial_height})=3,[height_end]>[^height_end],` +
  `[^height_end]<{initial_height},COUNTIFS({load_number},"<"&[load_number],{load_stress},">="&[load_stress])=0),FALSE)`;

/** The remarks on what looks like a slip: the unit of the times, or where they begin; an increment for a stress; readings that turn. */
const SLIPS =
  `IFERROR(IF(AND(${LAST_TIME}<=${MOST.time},OR(${LAST_TIME}>${LONGEST_LOAD},AND(${TO_NEXT}>0,${LAST_TIME}>2*(${TO_NEXT}+1440)))),${toldPart(timesLong(live(LAST_TIME), live(`ROUND(${LAST_TIME}/1440,0)`)))},""),"")&` +
  `IFERROR(IF(ABS(${TO_NEXT}/${LAST_TIME}-60)<1,${toldPart(timesShort(live(LAST_TIME)))},""),"")&` +
  `IFERROR(IF(AND(${FIRST_TIME}>${LATE_BEGIN},${FIRST_STEP}>0,${FIRST_STEP}<${FIRST_TIME}*${LEAST_STEP}),${toldPart(timesOfDay(live(`ROUND(${FIRST_TIME},4)`)))},""),"")&` +
  `IFERROR(IF(AND(${TO_NEXT}>0,${LAST_TIME}<=${LONGEST_LOAD},ABS(${LAST_TIME}-${TO_NEXT}-${(READ_BEYOND.least + READ_BEYOND.most) / 2})<${(READ_BEYOND.most - READ_BEYOND.least) / 2}),${toldPart(halfDay(live(LAST_TIME), live(`ROUND(${TO_NEXT},0)`)))},""),"")&` +
  `IF(${IS_UNMARKED},${toldPart(NOT_MARKED)},"")&IF(${IS_SEATING},${toldPart(SEATING_AS_LOAD)},"")&IF(${ROSE_UNDER_GREATEST},${toldPart(SWELLED_FIRST)},"")`;

/**
 * What the remark on a load asks of its times and readings several times. Each has a cell of its own, so that it is worked out
 * once, and so that the formulas of all remarks are the same but for their cells: the embedded sheet then compiles one of them.
 */
const WORKINGS: readonly Column[] = [
  working(
    "load_stress_odd",
    "Stress out of order: 1 turns, 2 leaps",
    ["Stress", "odd"],
    "count",
    `=IF(IFERROR(AND(${TURNS}),FALSE),1,IFERROR(AND(${LEAPS})*2,0))`,
  ),
  working("load_readings", "Readings of the load", ["Reading", "count"], "count", "=COUNT({readings_#})"),
  working("load_first_time", "First time of the load", ["Time", "first"], "time", '=IFERROR(SMALL({times_#},1),"")'),
  working(
    "load_first_step",
    "First step of the times",
    ["Time", "step"],
    "time",
    '=IFERROR(SMALL({times_#},2)-SMALL({times_#},1),"")',
  ),
  working("load_last_time", "Last time of the load", ["Time", "last"], "time", '=IFERROR(LARGE({times_#},1),"")'),
  working(
    "load_minutes_to_next",
    "Minutes to the next load",
    ["Time to", "next load"],
    "minutes",
    `=IF(COUNT([load_started],${NEXT_STARTED})=2,1440*(${NEXT_STARTED}-[load_started]),0)`,
  ),
  working(
    "load_early_row",
    "Last row with a time before the load",
    ["Row of", "early time"],
    "count",
    lastRowWith("{times_#}", 'COUNTIF({times_#},"<0")>0', "{times_#}<0"),
  ),
  working(
    "load_early_time",
    "Last time before the load",
    ["Time", "too early"],
    "time",
    '=IF(COUNTIF({times_#},"<0")=0,"",INDEX({times_#},[load_early_row]))',
  ),
  working(
    "load_time_outside",
    "Last row with a time that cannot be",
    ["Row of", "bad time"],
    "count",
    lastRowWith("{times_#}", `MAX({times_#})>${MOST.time}`, `{times_#}>${MOST.time}`),
  ),
  working(
    "load_reading_outside",
    "Last row with a reading that cannot be",
    ["Row of", "bad rdg."],
    "count",
    lastRowWith(
      "{readings_#}",
      `OR(MAX({readings_#})>${MOST.reading},COUNTIF({readings_#},"<-${MOST.reading}")>0)`,
      `({readings_#}>${MOST.reading})+({readings_#}<-${MOST.reading})`,
    ),
  ),
  // Its sentences stand apart from the others so that the remark has room for the words of further languages.
  working("load_slips", "What looks like a slip", ["Slips", ""], "text", `=${SLIPS}`),
];

const COEFFICIENTS: readonly Column[] = [
  ...repeated("coefficients"),
  result(
    "curve_point",
    "Point of the curve taken at",
    ["Curve", "point at"],
    "text",
    when(["[void_ratio_curve]"], `IF(${AT_D100},${shownWord("d100")},${shownWord("end")})`),
    "Whether the compression curve shows this load at d100 or at its end.",
  ),
  result(
    "height_middle",
    "Height at 50 % of consolidation, log time",
    ["H at 50 %", "log time"],
    "length",
    when(["[log_d50]", "[corrected_deformation]", "[height_end]"], heightAt("[log_d50]")),
    "Initial height less the corrected deformation at d50 of the log-time construction: the drainage path of its cv follows from it.",
  ),
  result(
    "cv_log_time",
    "cv by log time",
    ["cv by", "log time"],
    "cv",
    coefficientOfConsolidation("log_t50", "height_middle", "CV_FROM_T50"),
    "cv = 0.197 Hdr^2 / t50; Hdr is half the height at 50 % of consolidation in double drainage.",
  ),
  result(
    "height_middle_root",
    "Height at 50 % of consolidation, root time",
    ["H at 50 %", "root time"],
    "length",
    when(["[root_d100]", "[corrected_deformation]", "[height_end]"], heightAt("([root_d0]+[root_d100])/2")),
    "Initial height less the corrected deformation half way between d0 and d100 of the root-time construction: the drainage path of its cv follows from it.",
  ),
  result(
    "cv_root_time",
    "cv by root time",
    ["cv by", "root time"],
    "cv",
    coefficientOfConsolidation("root_t90", "height_middle_root", "CV_FROM_T90"),
    "cv = 0.848 Hdr^2 / t90; Hdr is half the height at 50 % of consolidation in double drainage.",
  ),
  result(
    "load_method",
    "Construction of the load",
    ["d100 and", "cv by"],
    "text",
    when(
      ["[load_stress]"],
      shown(
        `IF(IFERROR(COUNT({pick_load}),0)=0,${TIME_METHOD},CLAY.LAST_PICK([load_number],"cv by",{pick_load},{pick_of},{pick_after},${TIME_METHOD}))`,
      ),
    ),
    'The construction whose d100 and cv are reported and used further: the last "cv by" of the load in the table of picks, otherwise the one chosen among the choices.',
  ),
  result(
    "cv_chosen",
    "cv reported",
    ["cv", "chosen"],
    "cv",
    `=IF(${isWord("[load_method]", "root time")},[cv_root_time],IF(${isWord("[load_method]", "log time")},[cv_log_time],""))`,
    "cv of the load's own construction.",
  ),
  {
    name: "load_temperature",
    label: "Temperature of the load",
    heading: ["Tempera-", "ture"],
    measure: "temperature",
    kind: "input",
    note: "Mean temperature while the load stood.",
  },
  result(
    "cv_20",
    "cv at 20 degrees Celsius",
    ["cv at", "20 deg C"],
    "cv",
    when(
      ["[cv_chosen]", "[load_temperature]"],
      "[cv_chosen]*CLAY.TEMPERATURE_FACTOR([load_temperature])",
      "AND([load_temperature]>0,[load_temperature]<=60)",
    ),
    "Chosen cv times the viscosity of water at the temperature over that at 20 degrees Celsius; k is that of the test.",
  ),
  result(
    "volume_compressibility",
    "Coefficient of volume compressibility",
    ["mv", ""],
    "compressibility",
    when(
      ["[void_ratio_curve]", "[^void_ratio_curve]"],
      // No stiffness for a row without a change of load, or if the specimen moved against the change.
      `IF(OR(${isOnBranch("wetting")},([^void_ratio_curve]-[void_ratio_curve])*([load_stress]-[^load_stress])<=0),"",` +
        shown(
          'CLAY.VOLUME_COMPRESSIBILITY([^load_stress],[load_stress],[^void_ratio_curve],[void_ratio_curve],"e","start",{void_ratio_initial},{stress_unit},{mv_unit})',
        ) +
        ")",
      "ISNUMBER([^load_stress]+0)",
    ),
    "mv = strain of the load on its starting height / increase of stress; blank on wetting, and where the specimen moved against the load.",
  ),
  result(
    "conductivity",
    "Hydraulic conductivity",
    ["k", ""],
    "conductivity",
    when(
      ["[cv_chosen]", "[volume_compressibility]"],
      shown("CLAY.CONDUCTIVITY([cv_chosen],[volume_compressibility],{cv_unit},{mv_unit},{conductivity_unit})"),
    ),
    "k = cv mv x unit weight of water; loading only. No substitute for a direct test.",
  ),
  result(
    "c_alpha",
    "Coefficient of secondary compression",
    ["C alpha", "strain"],
    "small",
    when(
      ["[tail_slope]", "[height_end]"],
      ofConsolidation(`CLAY.STRAIN(${SENSE}*[tail_slope]*{dial_factor},{initial_height})`),
      "ABS([tail_slope]*{dial_factor})<{initial_height}",
    ),
    "Strain per log cycle of time on the straight tail, on the initial height; loading only. Blank where the tail was not measured far enough past the end of primary: the remark says so.",
  ),
  result(
    "load_wetting_strain",
    "Strain on wetting under the load",
    ["Strain on", "wetting"],
    "strain",
    when(
      ["[height_end]", "[^height_end]"],
      `IF(OR(${isWord("[load_mark]", "wetting")},AND(${isWord("[load_mark]", "inundated")},${isOnBranch("wetting")})),CLAY.WETTING_STRAIN([^height_end],[height_end],IF(IFERROR(${isWord("{wetting_reference}", "initial height")},FALSE),{initial_height},[^height_end])),"")`,
      "AND([height_end]>0,[^height_end]>0)",
    ),
    "(height before - height after) / the height chosen among the choices, of each stage of wetting: positive for collapse, negative for swell.",
  ),
  {
    name: "load_remark",
    label: "Remark on the load",
    heading: ["Remark", "(in full: Remarks)"],
    measure: "text",
    kind: "remark",
    formula:
      // "ok" of the time curve stands alone only, and no remark ends with the mark before the next one: "~" marks the end of the text.
      `=SUBSTITUTE(SUBSTITUTE(SUBSTITUTE(${OUT_OF_ORDER}&${CLOCK}&${OUTSIDE}&IF([end_reading]="","",[load_slips]&` +
      `IF(COUNT({apparatus_stress})=0,${toldPart(NOT_CORRECTED)},"")` +
      `&IF(AND(COUNT({apparatus_stress})>0,COUNT({apparatus_deflection_seating})=0),${toldPart(SEATING_BEYOND_TABLE)},IF(AND(COUNT([deformation])=1,[apparatus_deflection]=""),${toldPart(STRESS_BEYOND_TABLE)},""))` +
      `&IF(COUNT([height_end],{solids_height},{initial_height})<3,"",IF(OR([height_end]>{solids_height},{solids_height}>={initial_height}),"",${toldPart(HEIGHT_TOO_LOW)}))` +
      `&IF(AND(${isWord("[load_mark]", "wetting")},NOT(${isOnBranch("wetting")})),${toldPart(NOT_WETTING)},"")` +
      `&IF(${isOnBranch("wetting")},${toldPart(WETTING)},IF(AND(${isOnBranch("loading")},COUNT([height_end],[^height_end])=2,IFERROR([height_end]>[^height_end],FALSE)),${toldPart(SWELLED)},""))` +
      `&${UNLOADED}` +
      `&IF(AND(${isWord("{curve_from}", "d100")},[void_ratio_d100]=""),${toldPart(NO_D100)},"")` +
      `&IF(ISERROR([log_d0]),${toldExpression(english(CURVE_REFUSED))},[time_remark]))&"~","; ok~","~"),"; ~",""),"~","")`,
    note: "Remarks on the load; in full on the page of remarks.",
  },
];

/**
 * Desktop Excel passes blank cells to a function as 0. Therefore, if one of the readings is 0, the formula passes ""
 * for blank cells.
 */
const timeCurve = (readings: string, zeros: "blank" | "readings"): string =>
  `CLAY.TIME_CURVE({times_#},${readings},IF(IFERROR(COUNT({pick_load}),0)=0,"",CLAY.LOAD_PICKS([load_number],{pick_load},{pick_of},{pick_after})),[load_procedure],"${zeros}",${asked("remark")})`;

const TIME_CURVES: readonly Column[] = [
  ...repeated("times"),
  result(
    "load_procedure",
    "Procedure of the load's constructions",
    ["Made", ""],
    "text",
    when(
      ["[load_stress]"],
      shown(
        `IF(IFERROR(COUNT({pick_load}),0)=0,${PROCEDURE},CLAY.LAST_PICK([load_number],"procedure",{pick_load},{pick_of},{pick_after},${PROCEDURE}))`,
      ),
    ),
    'aided or drawn: the last "procedure" of the load in the table of picks, otherwise the one chosen among the choices.',
  ),
  result(
    "log_d0",
    "Log time: d0",
    ["log time", "d0"],
    "drawn",
    // If the table of picks is blank or was deleted, the formula uses the readings alone.
    `=IF(COUNT({readings_#})=0,"",IF(COUNTIF({readings_#},0)=0,${timeCurve("{readings_#}", "blank")},${timeCurve('IF({readings_#}="","",{readings_#})', "readings")}))`,
    "One formula spills the whole row: the log-of-time and root-time constructions on the load's readings, with the picks by hand of the load. Blank where a method does not apply.",
  ),
  spilled("log_d50", "Log time: d50", ["log time", "d50"], "drawn", "Half way between d0 and d100."),
  spilled("log_d100", "Log time: d100", ["log time", "d100"], "drawn", "Tangent at the inflection meets the tail."),
  spilled("log_t50", "Log time: t50", ["log time", "t50"], "minutes", "Time of d50."),
  spilled("log_t100", "Log time: t100", ["log time", "t100"], "minutes", "Time of d100."),
  spilled("root_d0", "Root time: d0", ["root time", "d0"], "drawn", "The straight part at time zero."),
  spilled(
    "root_d90",
    "Root time: d90",
    ["root time", "d90"],
    "drawn",
    "Where the line 1.15 times as far out meets the curve.",
  ),
  spilled("root_d100", "Root time: d100", ["root time", "d100"], "drawn", "d0 + (d90 - d0) / 0.9."),
  spilled("root_t90", "Root time: t90", ["root time", "t90"], "minutes", "Time of d90."),
  spilled("tail_slope", "Slope of the tail", ["tail, per", "log cycle"], "drawn", "Readings per log cycle of time."),
  {
    name: "time_remark",
    label: "Remark on the time curve",
    heading: ["Remark", "(in full: Remarks)"],
    measure: "text",
    kind: "remark",
    spilled: true,
    note: "Remarks on the time curve; in full on the page of remarks.",
  },
];

/** The parts of the table, each with its title and its columns. On paper, the title spans these columns. */
export const LOAD_PARTS: readonly {
  readonly title: string;
  readonly columns: readonly Column[];
  /** The note below the rows. */
  readonly note?: string;
}[] = [
  { title: "Loads and compression", columns: COMPRESSION },
  {
    title: "Coefficients",
    columns: COEFFICIENTS,
    note: "No cv, k or C alpha is given for unloading, for wetting, or for a load under which the specimen swelled: the specimen does not consolidate there. The constructions of these loads stand among the time curves.",
  },
  { title: "Time curves", columns: TIME_CURVES },
];

/** The columns that only formulas of the table read. They stand right of all pages and of the picks, and are not printed. */
export const LOAD_WORKINGS: { readonly title: string; readonly columns: readonly Column[] } = {
  title: "Workings of the remarks",
  columns: WORKINGS,
};

export const LOAD_TABLE: Table = {
  rows: LOADS,
  columns: [...LOAD_PARTS.flatMap(({ columns }) => columns), ...WORKINGS],
};
