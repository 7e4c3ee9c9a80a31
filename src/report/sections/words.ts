/** The parts of the report that are text: changes by hand, checks, methods, remarks, cautions, missing items. */
import { OF_CURVE } from "../../reduction/curve/picks";
import { pickSaid } from "../../reduction/increment/constructions/picks";
import { METHOD_SAID } from "../../reduction/curve/method-words";
import { METHOD_PLOTS } from "../../plots/methods";
import { yieldMethodOf } from "../../record/reduced-test";
import { adoptedCalled, CV_SAID, type Adopted } from "../../record/adopted";
import { ADOPTABLE, ALL_ADOPTABLE, CV_RANGES } from "../../specification/results/adoptable";
import { wordIn } from "../../specification/list-words";
import { unitCellOf } from "../../specification/measures";
import { DRAWING_SLOPE } from "../../reduction/curve/methods/casagrande";
import { LINE_FACTOR, T50, T90 } from "../../reduction/increment/cv";
import {
  inRuns,
  joined,
  listed,
  listWord,
  say,
  verbatim,
  type Message,
  type Value,
  type Verbatim,
} from "../../reduction/message";
import { remarkOfLoad, remarkOfTest, type Remark } from "../../record/sheet-remarks";
import { rulesOf } from "../../specification/versions";
import { picksOfCurve, procedureOfLoad, type RecordedPick } from "../../record/picks";
import { shown, type Answered } from "../../checks";
import { band, gap, list, listAbreast, paragraph, type Block } from "../page/page";
import { inLanguage } from "./interpretation";
import { likeRemarks, together } from "./like-remarks";
import type { Missing } from "./required";
import type { DataCells, ReportedLoad } from "../page/source";

const part = (cells: DataCells, title: Message, body: readonly Block[]): Block[] => [
  band(cells.words(title)),
  ...body,
  gap,
];

const REMARKS = [
  [say`Deviations from the standard`, "deviations"],
  [say`Test remarks`, "test_remarks"],
  [say`On the specimen`, "specimen_remark"],
  [say`On the curve`, "preconsolidation_remark"],
  [say`On every method`, "preconsolidation_verdict"],
  [say`On the field curve`, "field_remark"],
  [say`On the sample`, "quality_remark"],
] as const;

/** A remark of the data sheet; undefined for a remark that a person typed. */
const remarkNamed = (cells: DataCells, name: (typeof REMARKS)[number][1]): Remark | undefined =>
  name === "deviations" || name === "test_remarks" ? undefined : remarkOfTest(cells.source, name);

/** Whether the table of methods tells the same in its row "All in all". */
const isToldByTable = (cells: DataCells, name: string): boolean =>
  name === "preconsolidation_verdict" &&
  !cells.isBlank(name) &&
  (cells.source.values.preconsolidation_spread ?? []).flat().includes(cells.text(name));

/** Remarks of persons and of the reductions, in full; what has the same remark, or one that differs in a number only, stands together. */
export function remarks(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const t = cells.words;
  const saidOfTest = REMARKS.filter(([, name]) => !isToldByTable(cells, name)).map(([label, name]) => {
    const text = cells.text(name);
    const blank = t(cells.has(name) ? say`nothing is said.` : say`the data sheet has no cell for it.`);
    return [t(label), text === "" ? blank : inLanguage(cells, text, remarkNamed(cells, name))] as const;
  });
  const ofTest = likeRemarks(saidOfTest).map(([labels, said]) => `${labels.join("; ")}: ${said}`);
  const saidOfLoads = loads.map(({ number, row }) => {
    const text = cells.text("load_remark", row) || cells.text("time_remark", row);
    const said =
      inLanguage(cells, text, remarkOfLoad(cells.source.record, number)) ||
      t(say`nothing is said (no readings, or no remark column).`);
    return [number, said] as const;
  });
  const ofLoads = likeRemarks(saidOfLoads).map(([numbers, said]) => {
    const which = inRuns(numbers);
    return `${t(numbers.length === 1 ? say`Load ${which}` : say`Loads ${which}`)}: ${said}`;
  });
  return part(cells, say`Deviations and remarks`, list([...ofTest, ...ofLoads]));
}

const said = (value: number | string | undefined): Message | Verbatim =>
  value === undefined || value === "" ? say`(not said)` : verbatim(String(value));

/** A value of the table of picks: a number, or a word of a list. */
const picked = (value: number | string | undefined): Value =>
  typeof value === "number" ? value : value ? listWord(value) : said(value);

/** The quantities that may be adopted, in the words of the report. */
const ADOPTED_SAID: Readonly<Record<keyof Adopted, Message>> = {
  preconsolidation_stress: say`Preconsolidation stress`,
  compression_index: say`Compression index Cc`,
  recompression_index: say`Recompression index Cr`,
  swelling_index: say`Swelling index Cs`,
  c_alpha_chosen: say`C alpha, strain per log cycle`,
  ...CV_SAID,
};

/** The values that the engineer adopted, each as the sheet has it, with its unit, reason, initials and day. */
function adoptedByHand(cells: DataCells): string[] {
  const { adopted = {} } = cells.source.record;
  return ALL_ADOPTABLE.flatMap(({ name, measure }) => {
    const one = adopted[name];
    if (!one) return [];
    const row = ADOPTABLE.findIndex((of) => of.name === name);
    const value =
      row < 0
        ? cells.number(
            "adopted_cv",
            CV_RANGES.findIndex((of) => of.name === name),
          )
        : cells.number("adopted_value", row);
    const unitCell = unitCellOf(measure);
    const unit = unitCell && cells.source.record.words[unitCell];
    const what = say`${ADOPTED_SAID[name]}, adopted: ${unit ? say`${picked(value)} ${verbatim(wordIn(cells.language, unit))}` : picked(value)}`;
    return [cells.words(say`${what}. Reason: ${said(one.reason)}. By ${said(one.by)}, ${said(one.day)}.`)];
  });
}

/**
 * Picks by hand with the values before and after, in the order in which they were made; the last one of a pick counts.
 */
export function byHand(cells: DataCells): Block[] {
  const t = cells.words;
  const { picks, overrides } = cells.source.record;
  const key = ({ load, of }: RecordedPick) => `${load} ${of}`;
  const lines = picks.map((pick, index) => {
    const ruled = picks.slice(index + 1).some((later) => key(later) === key(pick));
    const of = pick.load === OF_CURVE ? say`The curve` : say`Load ${said(pick.load)}`;
    const what = say`${of}, ${pick.of ? pickSaid(pick.of) : said(pick.of)}: ${picked(pick.before)} was replaced by ${picked(pick.after)}. Reason: ${said(pick.reason)}. By ${said(pick.by)}, ${said(pick.when)}.`;
    return t(ruled ? say`${what} Replaced again below.` : what);
  });
  // Overrides in columns of the firm; picks and adopted values are shown in more detail.
  const others = overrides
    .filter(({ of, pick }) => pick === undefined && !ALL_ADOPTABLE.some(({ name }) => adoptedCalled(name) === of))
    .map(({ of, reason, by }) => t(say`${verbatim(of)}. Reason: ${said(reason)}. By ${said(by)}.`));
  const onCells = (cells.source.cellFindings ?? []).map((finding) => t(say`Cells: ${finding}.`));
  const all = [...lines, ...adoptedByHand(cells), ...others, ...onCells];
  const none = say`No pick is recorded as replaced by hand, and no formula is known to be typed over.`;
  return part(cells, say`Replaced by hand`, all.length ? list(all) : paragraph(t(none)));
}

const GRAVITY = ["stop", "explain", "note"] as const;
const MEANING = { stop: say`STOP`, explain: say`explain`, note: say`note` } as const;

/** Whether a text has this number, with its unit. */
const has = (text: string, number: string): boolean =>
  new RegExp(`(?<![\\d.,])${number.replaceAll(/[.*+?^${}()|[\]\\/]/g, "\\$&")}(?![\\d\\p{L}])`, "u").test(text);

/** A check with its answer, and the numbers compared, unless the sentence of the answer has them. */
function checkLine(
  { words: t }: DataCells,
  { check, answer }: Answered,
  level: (typeof GRAVITY)[number],
  acknowledged?: Message,
): Message {
  const compared = answer.compared ?? [];
  const isTold = compared.every((figure) => has(t(answer.sentence), t(shown(figure))));
  const figures = isTold ? [] : compared.map((figure) => say`${figure.what} ${shown(figure)}`);
  const [first, ...others] = figures;
  const numbers = first && others.reduce((before, figure) => say`${before} against ${figure}`, first);
  const head = say`${verbatim(check.id)} (${MEANING[level]}) ${check.question} ${answer.sentence}`;
  const given = acknowledged ? say`Acknowledged: ${acknowledged}.` : say`Not acknowledged.`;
  return numbers
    ? say`${head} [${numbers}] Basis: ${check.basis}. ${given}`
    : say`${head} Basis: ${check.basis}. ${given}`;
}

/** Checks that did not pass, the gravest first, and the number of those that passed. */
export function checks(cells: DataCells): Block[] {
  const t = cells.words;
  const { answered, acknowledged = {}, changedLimits = [] } = cells.source;
  const open = GRAVITY.flatMap((level) =>
    answered.filter(({ answer }) => answer.status === level).map((one) => ({ one, level })),
  );
  const unasked = answered.filter(({ answer }) => answer.status === "cannot be asked");
  const passed = answered.length - open.length - unasked.length;
  const summary = say`${answered.length} questions were asked of the data sheet: ${passed} passed, ${open.length} did not, ${unasked.length} could not be asked for want of numbers`;
  const ids = listed(unasked.map(({ check }) => verbatim(check.id)));
  return part(cells, say`Checks`, [
    ...paragraph(t(unasked.length ? say`${summary} (${ids}).` : say`${summary}.`)),
    ...list(open.map(({ one, level }) => t(checkLine(cells, one, level, acknowledged[one.check.id])))),
    ...list(changedLimits.map((limit) => t(say`Limit of the firm: ${limit}.`))),
  ]);
}

/** The methods and assumptions, so that another person can repeat the reduction. */
export function methods(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const texts = [
    ...ofSpecimen(cells),
    ...ofTimeCurves(cells, loads),
    ...ofYield(cells),
    say`Cc is the slope of the virgin line, Cr that of reload loops between their ends (of the final unloading where there is no loop, of initial loading where there is neither), Cs that of unloading; the stresses of each stand beside it. Per log cycle, by void ratio.`,
    ...assumed(cells),
  ];
  return part(cells, say`Methods, and what was assumed`, list(texts.map(cells.words)));
}

/** The method of the preconsolidation stress, its picks by hand, and the value adopted in its place. */
function ofYield({ source: { record } }: DataCells): Message[] {
  const method = yieldMethodOf(record);
  const range = say`The range that these points allow is what they leave open for the knee of the curve; it leaves out the choice of method, whose spread stands apart under Interpretation.`;
  const by =
    method === "casagrande"
      ? say`Preconsolidation stress: Casagrande's construction on the curve of e against log stress, with the virgin line drawn at a declared slope (${DRAWING_SLOPE}, rise over run on the paper), since greatest curvature depends on the scale of the drawing. ${range}`
      : say`Preconsolidation stress: ${METHOD_SAID[method]}, ${verbatim(METHOD_PLOTS[method].source)}. ${range}`;
  const isPicked = Object.keys(picksOfCurve(record.picks)).length > 0;
  const adopted = ALL_ADOPTABLE.flatMap(({ name }) => (record.adopted?.[name] ? [ADOPTED_SAID[name]] : []));
  return [
    by,
    ...(isPicked
      ? [
          say`Lines of the compression curve were picked by hand, as listed under "Replaced by hand"; the stress, the indices and the field curve follow the picks, and the table of all methods does not.`,
        ]
      : []),
    ...(adopted.length
      ? [
          say`Adopted by the engineer in the place of what the constructions give, and used in all that follows: ${listed(adopted)}; by whom and why stands under "Replaced by hand".`,
        ]
      : []),
  ];
}

const without = (cells: DataCells, name: string): boolean => cells.isBlank(name);

function ofSpecimen(cells: DataCells): Message[] {
  const { record } = cells.source;
  const corrected = record.deflections.length > 0;
  const solids = say`Height of solids Hs = dry mass / (Gs x density of water x area), void ratio e = (H - Hs) / Hs, saturation S = w Gs / e.`;
  return [
    without(cells, "test_temperature")
      ? say`${solids} The density of water is taken as 1.000 g/cm3.`
      : say`${solids} The density of water is that at the temperature of the test.`,
    ...(without(cells, "pore_salt")
      ? []
      : [say`The salt of the pore water is taken out of the dry mass, and its brine counts as water.`]),
    say`Strain is the corrected deformation over the initial height. Water contents are of the specimen itself, by its ring masses; that of the trimmings stands beside.`,
    !corrected
      ? say`ASSUMED: the apparatus does not deflect; no deflection table was entered.`
      : rulesOf(record).deflectionSinceSeating
        ? say`The deflection of the apparatus is interpolated on the logarithm of stress in the table of the data sheet, less that at the seating stress.`
        : say`The deflection of the apparatus is interpolated on the logarithm of stress in the table of the data sheet.`,
  ];
}

function ofTimeCurves(cells: DataCells, loads: readonly ReportedLoad[]): Message[] {
  const { record } = cells.source;
  const rules = rulesOf(record);
  const byRoot = loads.filter(
    ({ row }) => (cells.text("load_method", row) || cells.text("time_method")) === "root time",
  );
  const drawn = loads.filter(({ number }) => procedureOfLoad(record, number) === "drawn");
  const numbers = (some: readonly ReportedLoad[]) => inRuns(some.map(({ number }) => number));
  const constructions = say`Log of time (Casagrande and Fadum): d0 by the parabola rule, d100 where the tangent at the inflection meets the tail, cv = ${T50} Hdr^2 / t50. Root of time (Taylor): line factor ${LINE_FACTOR}, cv = ${T90} Hdr^2 / t90.`;
  return [
    rules.heightAtHalf
      ? say`${constructions} Hdr is of the height at 50 % of consolidation, by each construction's own d0 and d100.`
      : say`${constructions} Hdr is of the height at the middle of the load.`,
    ...(record.words.drainage === "single"
      ? [say`Single drainage was chosen: Hdr is that whole height, and cv is 4 times that of double drainage.`]
      : []),
    drawn.length === 0
      ? say`The constructions are made aided: theory chooses the readings and straightens a short tail; the remarks say by how much a reading was altered.`
      : drawn.length === loads.length
        ? say`The constructions of every load are drawn: lines through raw readings, nothing subtracted.`
        : say`The constructions of load ${numbers(drawn)} are drawn: lines through raw readings, nothing subtracted; those of the others are made aided, by theory.`,
    rules.cvOfConsolidation
      ? say`cv, k and C alpha are given for loads that consolidate the specimen: they are blank on unloading and on wetting, and C alpha is blank where the readings past the end of primary span less than 0.25 of a log cycle.`
      : say`The data sheet gives cv of unloading as well: it is none of consolidation.`,
    // The conduct of the test says which construction gives cv of the other loads.
    ...(byRoot.length === 0 || byRoot.length === loads.length
      ? []
      : [say`cv by root time is reported for loads ${numbers(byRoot)}.`]),
  ];
}

function assumed(cells: DataCells): Message[] {
  const { record } = cells.source;
  const { deflections } = record;
  return [
    ...(cells.text("specific_gravity_basis") === "measured"
      ? []
      : [say`ASSUMED: the specific gravity of solids, or it is not said that it was measured.`]),
    ...(without(cells, "seating_stress") ? [say`ASSUMED: a seating stress of zero; none was entered.`] : []),
    ...(without(cells, "drainage") ? [say`ASSUMED: drainage at both faces; none was entered.`] : []),
    ...(deflections.length > 0 && deflections.every(({ unloading }) => unloading === undefined)
      ? [say`ASSUMED: the apparatus deflects on unloading as on loading.`]
      : []),
    // The conduct of the test says so if no load has one.
    ...(new Set(record.loads.map(({ temperature }) => temperature === undefined)).size === 2
      ? [say`Where a load has no temperature, nothing is corrected for it.`]
      : []),
  ];
}

/** Source: README, Cautions. */
const CAUTIONS: readonly Message[] = [
  say`These results feed settlement design. They support, and do not replace, the judgement of a licensed engineer or authorised signatory. The contract's standard and edition, local codes and licensing law come first.`,
  say`Preconsolidation stress, d0, d100 and the indices are interpretations: several answers can be defended. Look at the construction, the interval and the remarks.`,
  say`Terzaghi's theory assumes a saturated soil, small strain, constant cv and drainage in one direction; a small specimen may not represent the field. cv is not valid for unsaturated soil.`,
  say`Disturbance of the sample lowers the preconsolidation stress and the compression index.`,
  say`Checks and remarks can be wrong both ways; no remark is no proof of quality.`,
  say`Not for constant-rate-of-strain, hydraulic-cell or radial-drainage tests. The text of standards is not reproduced here.`,
  say`The uncertainties stated do not cover the disturbance of the sample, the variability of the ground, or the choice of a construction.`,
  say`Protection of the sheets keeps formulas from slips and is no security: they have no password.`,
];

export const cautions = (cells: DataCells): Block[] => part(cells, say`Cautions`, list(CAUTIONS.map(cells.words)));

/** All items that the report should show and does not, with their cells. */
export function missing(cells: DataCells, found: readonly Missing[]): Block[] {
  const t = cells.words;
  const required = found.filter(({ isRequired }) => isRequired);
  const others = found.filter(({ isRequired }) => !isRequired);
  const line = (item: number, sentences: readonly Message[]) => t(say`(${item}) ${joined(sentences)}.`);
  const byItem = together(required, ({ item }) => item);
  return part(cells, say`Missing from this report`, [
    ...paragraph(
      t(
        required.length
          ? say`Required by the standards' report clauses, and not there. The number is that of the item of the usual checklist (from memory: check against the edition that the contract names).`
          : say`Nothing that the standards' report clauses require is missing.`,
      ),
    ),
    ...listAbreast(
      [...byItem].map(([item, of]) =>
        line(
          item,
          of.map(({ sentence }) => sentence),
        ),
      ),
    ),
    ...(others.length ? paragraph(t(say`Wanted only where it was measured, known or obtained; not there:`)) : []),
    ...listAbreast(others.map(({ item, sentence }) => line(item, [sentence]))),
  ]);
}
