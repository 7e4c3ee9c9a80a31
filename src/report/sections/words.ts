/** The parts of the report that are text: changes by hand, checks, methods, remarks, cautions, missing items. */
import { DRAWING_SLOPE } from "../../reduction/curve/methods/casagrande";
import { LINE_FACTOR, T50, T90 } from "../../reduction/increment/cv";
import { PROCEDURES } from "../../reduction/increment/constructions/procedure";
import { english } from "../../reduction/message";
import type { Outcome } from "../../reduction/outcome";
import { incrementOfLoad } from "../../record/load-curve";
import { ADD_IN_VERSION, rulesOf } from "../../specification/versions";
import { procedureOfLoad, type RecordedPick } from "../../specification/pick-table";
import { shown, type Answered } from "../../checks";
import { band, gap, list, paragraph, type Block } from "../page/page";
import type { Missing } from "./required";
import type { DataCells, ReportedLoad } from "../page/source";
import { CAUTIONS } from "../page/text";

const part = (title: string, body: readonly Block[]): Block[] => [band(title), ...body, gap];

const REMARKS = [
  ["Deviations from the standard", "deviations"],
  ["Test remarks", "test_remarks"],
  ["On the specimen", "specimen_remark"],
  ["On the curve", "preconsolidation_remark"],
  ["On every method", "preconsolidation_verdict"],
  ["On the field curve", "field_remark"],
  ["On the sample", "quality_remark"],
] as const;

/** Remarks of persons and of the reductions, in full. */
export function remarks(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const ofTest = REMARKS.map(([label, name]) => {
    const text = cells.text(name);
    return `${label}: ${text === "" ? (cells.has(name) ? "nothing is said." : "the data sheet has no cell for it.") : text}`;
  });
  const ofLoads = loads.map(({ number, row }) => {
    const said = cells.text("load_remark", row) || cells.text("time_remark", row);
    return `Load ${number}: ${said || "nothing is said (no readings, or no remark column)."}`;
  });
  return part("Deviations and remarks", list([...ofTest, ...ofLoads]));
}

const said = (value: number | string | undefined): string =>
  value === undefined || value === "" ? "(not said)" : String(value);

/**
 * Picks by hand with the values before and after, in the order in which they were made; the last one of a pick counts.
 */
export function byHand(cells: DataCells): Block[] {
  const { picks, overrides } = cells.source.record;
  const key = ({ load, of }: RecordedPick) => `${load} ${of}`;
  const lines = picks.map((pick, index) => {
    const ruled = picks.slice(index + 1).some((later) => key(later) === key(pick));
    return (
      `Load ${said(pick.load)}, ${said(pick.of)}: ${said(pick.before)} was replaced by ${said(pick.after)}. ` +
      `Reason: ${said(pick.reason)}. By ${said(pick.by)}, ${said(pick.when)}.` +
      (ruled ? " Replaced again below." : "")
    );
  });
  // Overrides in columns of the firm. The overrides also list the picks, which are shown above in more detail.
  const others = picks.length
    ? []
    : overrides.map(({ of, reason, by }) => `${of}. Reason: ${said(reason)}. By ${said(by)}.`);
  const onCells = (cells.source.cellFindings ?? []).map((finding) => `Cells: ${english(finding)}.`);
  const all = [...lines, ...others, ...onCells];
  return part(
    "Replaced by hand",
    all.length
      ? list(all)
      : paragraph("No pick is recorded as replaced by hand, and no formula is known to be typed over."),
  );
}

const GRAVITY = ["stop", "explain", "note"] as const;
const MEANING = { stop: "STOP", explain: "explain", note: "note" } as const;

function checkLine({ check, answer }: Answered, acknowledged: string | undefined): string {
  const numbers = answer.compared
    ?.map((figure) => `${english(figure.what)} ${english(shown(figure))}`)
    .join(" against ");
  return (
    `${check.id} (${MEANING[answer.status as keyof typeof MEANING]}) ${english(check.question)} ${english(answer.sentence)}` +
    `${numbers ? ` [${numbers}]` : ""} Basis: ${english(check.basis)}. ${acknowledged ? `Acknowledged: ${acknowledged}.` : "Not acknowledged."}`
  );
}

/** Checks that did not pass, the gravest first, and the number of those that passed. */
export function checks(cells: DataCells): Block[] {
  const { answered, acknowledged = {}, changedLimits = [] } = cells.source;
  const open = GRAVITY.flatMap((level) => answered.filter(({ answer }) => answer.status === level));
  const unasked = answered.filter(({ answer }) => answer.status === "cannot be asked");
  const passed = answered.length - open.length - unasked.length;
  const summary =
    `${answered.length} questions were asked of the data sheet: ${passed} passed, ${open.length} did not, ` +
    `${unasked.length} could not be asked for want of numbers` +
    `${unasked.length ? ` (${unasked.map(({ check }) => check.id).join(", ")})` : ""}.`;
  return part("Checks", [
    ...paragraph(summary),
    ...list(open.map((one) => checkLine(one, acknowledged[one.check.id]))),
    ...list(changedLimits.map((limit) => `Limit of the firm: ${limit}.`)),
  ]);
}

/** The methods and assumptions, so that another person can repeat the reduction. */
export function methods(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const { record } = cells.source;
  const byRoot = loads.filter(
    ({ row }) => (cells.text("load_method", row) || cells.text("time_method")) === "root time",
  );
  const drawn = loads.filter(({ number }) => procedureOfLoad(record, number) === "drawn");
  const rules = rulesOf(record);
  const corrected = record.deflections.length > 0;
  const without = (...names: string[]) => names.every((name) => cells.isBlank(name));
  const texts = [
    "Height of solids Hs = dry mass / (Gs x density of water x area), void ratio e = (H - Hs) / Hs, saturation S = w Gs / e. " +
      (without("test_temperature")
        ? "The density of water is taken as 1.000 g/cm3."
        : "The density of water is that at the temperature of the test."),
    ...(without("pore_salt")
      ? []
      : ["The salt of the pore water is taken out of the dry mass, and its brine counts as water."]),
    "Strain is the corrected deformation over the initial height. Water contents are of the specimen itself, by its ring masses; that of the trimmings stands beside.",
    corrected
      ? `The deflection of the apparatus is interpolated on the logarithm of stress in the table of the data sheet${rules.deflectionSinceSeating ? ", less that at the seating stress" : ""}.`
      : "ASSUMED: the apparatus does not deflect; no deflection table was entered.",
    `Log of time (Casagrande and Fadum): d0 by the parabola rule, d100 where the tangent at the inflection meets the tail, cv = ${T50} Hdr^2 / t50. Root of time (Taylor): line factor ${LINE_FACTOR}, cv = ${T90} Hdr^2 / t90. Hdr is of the height ${rules.heightAtHalf ? "at 50 % of consolidation, by each construction's own d0 and d100" : "at the middle of the load"}.`,
    drawn.length === 0
      ? "The constructions are made aided: theory chooses the readings and straightens a short tail; the remarks say by how much a reading was altered."
      : `The constructions of ${drawn.length === loads.length ? "every load" : `load ${drawn.map(({ number }) => number).join(", ")}`} are drawn: lines through raw readings, nothing subtracted${drawn.length === loads.length ? "" : "; those of the others are made aided, by theory"}.`,
    rules.cvOfConsolidation
      ? "cv, k and C alpha are given for loads that consolidate the specimen: they are blank on unloading and on wetting, and C alpha is blank where the readings past the end of primary span less than 0.25 of a log cycle."
      : "The data sheet gives cv of unloading as well: it is none of consolidation.",
    byRoot.length
      ? `cv by root time is reported for ${byRoot.length === loads.length ? "every load" : `loads ${byRoot.map(({ number }) => number).join(", ")}`}.`
      : "cv by log time is reported for every load.",
    `Preconsolidation stress: Casagrande's construction on the curve of e against log stress, with the virgin line drawn at a declared slope (${DRAWING_SLOPE}, rise over run on the paper), since greatest curvature depends on the scale of the drawing. The range that these points allow is what they leave open for the knee of the curve; it leaves out the choice of method, whose spread stands apart under Interpretation.`,
    "Cc is the slope of the virgin line, Cr that of reload loops between their ends (of the final unloading where there is no loop, of initial loading where there is neither), Cs that of unloading; the stresses of each stand beside it. Per log cycle, by void ratio.",
    ...(cells.text("specific_gravity_basis") === "measured"
      ? []
      : ["ASSUMED: the specific gravity of solids, or it is not said that it was measured."]),
    ...(without("seating_stress") ? ["ASSUMED: a seating stress of zero; none was entered."] : []),
    ...(without("drainage") ? ["ASSUMED: drainage at both faces; none was entered."] : []),
    ...(corrected && record.deflections.every(({ unloading }) => unloading === undefined)
      ? ["ASSUMED: the apparatus deflects on unloading as on loading."]
      : []),
    ...(record.loads.some(({ temperature }) => temperature === undefined)
      ? ["Where a load has no temperature, nothing is corrected for it."]
      : []),
    `This report: Clayledger ${ADD_IN_VERSION}.`,
  ];
  return part("Methods, and what was assumed", list(texts));
}

const NUMBER_OF_DIGITS = 4;
const few = (value: number): string => String(Number(value.toPrecision(NUMBER_OF_DIGITS)));

/** A mark of a construction by both procedures: "t50 12.3 and 12.6 min"; "-" if a procedure gives none. */
function inBothWays<T>(label: string, unit: string, ways: readonly Outcome<T>[], read: (found: T) => number): string {
  const [aided, drawn] = ways.map((way) => (way.ok ? few(read(way.value)) : "-"));
  return `${label} ${aided} and ${drawn} ${unit}`;
}

/** The constructions of every load, aided and drawn, side by side: how much the numbers depend on the procedure. */
export function bothWays(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const { record } = cells.source;
  const lines = loads.flatMap(({ number }) => {
    const load = record.loads.find((one) => one.number === number);
    if (!load || load.readings.length === 0) return [];
    const ways = PROCEDURES.map((procedure) => incrementOfLoad(record, load, { procedure }));
    const log = ways.map(({ logTime }) => logTime);
    const root = ways.map(({ rootTime }) => rootTime);
    return [
      `Load ${number}: log time ${inBothWays("d100", "div", log, ({ d100 }) => d100)}, ${inBothWays("t50", "min", log, ({ t50 }) => t50)}; ` +
        `root time ${inBothWays("d100", "div", root, ({ d100 }) => d100)}, ${inBothWays("t90", "min", root, ({ t90 }) => t90)}.`,
    ];
  });
  return lines.length === 0
    ? []
    : part("Constructions, aided and drawn", [
        ...paragraph(
          "The first number is by the aided construction, the second by the drawn one; cv is inverse to t50 and t90.",
        ),
        ...list(lines),
      ]);
}

export const cautions = (): Block[] => part("Cautions", list(CAUTIONS));

/** All items that the report should show and does not, with their cells. */
export function missing(found: readonly Missing[]): Block[] {
  const required = found.filter(({ isRequired }) => isRequired);
  const others = found.filter(({ isRequired }) => !isRequired);
  const line = ({ item, sentence }: Missing) => `(${item}) ${sentence}.`;
  return part("Missing from this report", [
    ...paragraph(
      required.length
        ? "Required by the standards' report clauses, and not there. The number is that of the item of the usual checklist (from memory: check against the edition that the contract names)."
        : "Nothing that the standards' report clauses require is missing.",
    ),
    ...list(required.map(line)),
    ...(others.length ? paragraph("Wanted only where it was measured, known or obtained; not there:") : []),
    ...list(others.map(line)),
  ]);
}
