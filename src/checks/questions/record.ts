/**
 * Questions about the record itself: shown values against recalculated ones, missing cells, signatures, and reasons of
 * changes.
 */
import { OF_CURVE } from "../../reduction/curve/picks";
import { pickSaid } from "../../reduction/increment/constructions/picks";
import { cellNamed, type LoadResultName, type WordName, type ResultName, type TestRecord } from "../../record/record";
import type { LogTime } from "../../reduction/increment/constructions/log-time";
import type { RootTime } from "../../reduction/increment/constructions/root-time";
import { say, verbatim, digits, listed, listWord, joined, type Value, type Message } from "../../reduction/message";
import { neighbours } from "../../reduction/numeric/lists";
import { badInput, then, given, notApplicable, type Outcome } from "../../reduction/outcome";
import { asksForReport, lackingNamed, requiredOf } from "../lacking";
import { cannotAsk, check, figure, gravest, type Answer, type Figure, type Kind, type Question } from "../check";
import { reduced, type Reduced } from "../../record/reduced-test";
import { inKpa } from "../../record/reduced/inputs";
import type { LoadReduced } from "../../record/reduced/load";

const ISO_17025 = say`ISO/IEC 17025 (records, checking, changes), from memory`;

interface Recalculated {
  readonly load: Message;
  /** Load number, for a value of a load. */
  readonly number?: number;
  readonly name: string;
  readonly kind: Kind;
  readonly shown: number | undefined;
  readonly found: Outcome<number>;
}

/** The values that a load shows, beside the values recalculated from its readings. */
const ofLoad = (load: LoadReduced): Recalculated[] => {
  const { results } = load.record;
  const { deformation, deflection, corrected, strain, height, voidRatio, cvLogTime, cvRootTime } = load;
  const { logTime, rootTime } = load.increment;
  const log = (read: (found: LogTime) => number) => then(logTime, (found) => given(read(found)));
  const root = (read: (found: RootTime) => number) => then(rootTime, (found) => given(read(found)));
  const rows: readonly [LoadResultName, Kind, Outcome<number>][] = [
    ["deformation", "length", deformation],
    // The sheet uses the calibration table only if there is a deformation to correct.
    ["apparatus_deflection", "length", then(deformation, () => deflection)],
    ["corrected_deformation", "length", corrected],
    ["strain_end", "percent", strain],
    ["height_end", "length", height],
    ["void_ratio_end", "ratio", voidRatio],
    ["height_middle", "length", load.heightLogTime],
    ["cv_log_time", "cv", cvLogTime],
    ["height_middle_root", "length", load.heightRootTime],
    ["cv_root_time", "cv", cvRootTime],
    ["log_d0", "divisions", log(({ d0 }) => d0)],
    ["log_d50", "divisions", log(({ d50 }) => d50)],
    ["log_d100", "divisions", log(({ d100 }) => d100)],
    ["log_t50", "minutes", log(({ t50 }) => t50)],
    ["log_t100", "minutes", log(({ t100 }) => t100)],
    [
      "tail_slope",
      "divisions",
      then(logTime, ({ tailSlope = 0, noTailSlope }) => (noTailSlope ? notApplicable(noTailSlope) : given(tailSlope))),
    ],
    ["root_d0", "divisions", root(({ d0 }) => d0)],
    ["root_d90", "divisions", root(({ d90 }) => d90)],
    ["root_d100", "divisions", root(({ d100 }) => d100)],
    ["root_t90", "minutes", root(({ t90 }) => t90)],
  ];
  const number = load.record.number;
  return rows.map(([name, kind, found]) => ({ load: load.called, number, name, kind, shown: results[name], found }));
};

/** The values that the sheet shows for the specimen and the curve, beside recalculated values. */
function ofTest(record: TestRecord, reduced: Reduced): Recalculated[] {
  const of = (read: (s: Specimen) => number | undefined): Outcome<number> =>
    then(reduced.specimen, (specimen) => {
      const value = read(specimen);
      return value === undefined ? badInput(say`no final height`) : given(value);
    });
  const rows: readonly [ResultName, Kind, Outcome<number>][] = [
    ["dry_mass", "mass", of((s) => s.dryMass)],
    ["solids_height", "length", reduced.solidsHeight],
    ["water_content_trimmings", "percent", reduced.waterContentTrimmings],
    ["water_content_initial", "percent", of((s) => s.w0)],
    ["water_content_final", "percent", of((s) => s.wf)],
    ["density_initial", "density", of((s) => s.density)],
    ["dry_density_initial", "density", of((s) => s.dryDensity)],
    ["void_ratio_initial", "ratio", of((s) => s.e0)],
    ["saturation_initial", "percent", of((s) => s.S0)],
    ["final_height", "length", reduced.finalHeight],
    ["void_ratio_final", "ratio", of((s) => s.ef)],
    ["saturation_final", "percent", of((s) => s.Sf)],
    ["preconsolidation_stress", "stress", then(reduced.preconsolidation, (p) => given(inKpa(record, p.stress)))],
    ["compression_index", "ratio", then(reduced.compressionIndex, (index) => given(index.value))],
    ["recompression_index", "ratio", then(reduced.recompressionIndex, (index) => given(index.value))],
    ["swelling_index", "ratio", then(reduced.swellingIndex, (index) => given(index.value))],
  ];
  return rows.map(([name, kind, found]) => ({ load: say`test`, name, kind, shown: record.results[name], found }));
}
type Specimen = Reduced["specimen"] extends Outcome<infer S> ? S : never;

/** Above this relative difference a result does not follow from its inputs: arithmetic errors are smaller. */
const FOLLOWS = 1e-6;

const follows = (shown: number, found: number, tolerance: number): boolean =>
  Math.abs(shown - found) <= tolerance * Math.max(Math.abs(found), 1e-6);

const differs = (record: TestRecord, { name, kind, shown, found }: Recalculated): Message => {
  const written = (value: number): Message => precise(figure(record, say`${cellNamed(name)}`, value, kind));
  const [a, b] = [written(shown!), written(found.ok ? found.value : NaN)];
  return say`${cellNamed(name)} on the sheet is ${a}, recalculated ${b}: this cell, or a cell that it needs, was overwritten or refers to another cell`;
};

/** The results that differ from the recalculated values, with a sentence for each. */
export const differing = (record: TestRecord): { name: string; load?: number; sentence: Message }[] =>
  recalculated(record, reduced(record))
    .filter(({ shown, found }) => shown !== undefined && found.ok && !follows(shown, found.value, FOLLOWS))
    .map((one) => ({ name: one.name, load: one.number, sentence: differs(record, one) }));

const recalculated = (record: TestRecord, reduced: Reduced): Recalculated[] => [
  ...ofTest(record, reduced),
  ...reduced.loads.flatMap(ofLoad),
];

/** The questions in words; a function, so that the bundle of the worksheet functions leaves the words out. */
export const recordQuestions = (): Readonly<Record<string, Question>> => ({
  Q58: {
    question: say`Does every result on the sheet follow from its inputs?`,
    about: [],
    severity: "stop",
    basis: say`arithmetic`,
    units: { tolerance: "ratio" },
  },
  Q59: {
    question: say`Does every load have the results that the other loads have?`,
    about: [],
    severity: "stop",
    basis: say`lost and overwritten formulas are the commonest faults of sheets (Powell, Baker & Lawson 2007)`,
  },
  Q60: {
    question: say`Do all cells hold what belongs in them?`,
    about: [],
    severity: "explain",
    basis: say`a sheet gives no sign of numbers stored as text and of numbers turned into dates; common practice`,
  },
  Q63: {
    question: say`Does the record hold everything that a report must show?`,
    about: [],
    severity: "explain",
    basis: say`ASTM D2435 and BS 1377-5 / ISO 17892-5, from memory: check the edition that applies`,
  },
  Q64: {
    question: say`Was the record checked by a second person, with dates in order?`,
    about: ["tested_by", "checked_by"],
    severity: "explain",
    basis: ISO_17025,
  },
  Q65: {
    question: say`Has every value that was replaced by hand a reason and a name?`,
    about: ["pick_of", "override_of"],
    severity: "stop",
    basis: ISO_17025,
  },
});

/** How each question is answered. */
export const RECORD_CHECKS = [
  check("Q58", { tolerance: FOLLOWS }, (record, reduced, l) =>
    gravest(
      recalculated(record, reduced).flatMap((one): { load: Message; answer: Answer }[] => {
        const { load, name, kind, shown, found } = one;
        if (shown === undefined || !found.ok) return [];
        const same = follows(shown, found.value, l.tolerance);
        const compared = [
          figure(record, say`${cellNamed(name)} on the sheet`, shown, kind),
          figure(record, say`recalculated`, found.value, kind),
        ] as const;
        const sentence = same ? say`results follow from their inputs` : differs(record, one);
        return [{ load, answer: { status: same ? "pass" : "stop", compared, sentence } }];
      }),
      say`no result of the sheet can be recalculated`,
    ),
  ),
  check("Q59", {}, (record, reduced) => {
    // Without its stress a load has no results: the remark on the load asks for the stress.
    const all = reduced.loads.filter(({ record: { stress } }) => stress !== undefined).flatMap(ofLoad);
    const shownSomewhere = new Set(all.flatMap(({ name, shown }) => (shown === undefined ? [] : [name])));
    const due = all.filter(({ name, found }) => found.ok && shownSomewhere.has(name));
    if (due.length === 0) return cannotAsk(say`no load shows a result`);
    const lost = due.filter(({ shown }) => shown === undefined);
    const compared = [
      figure(record, say`results that are missing`, lost.length, "number"),
      figure(record, say`results that could be there`, due.length, "number"),
    ] as const;
    const [first] = lost;
    if (!first) return { status: "pass", compared, sentence: say`no load lacks a result that others have` };
    const one = say`${first.load}: ${cellNamed(first.name)} is blank, though its inputs are there: copy the formula from a neighbour`;
    return { status: "stop", compared, sentence: lost.length > 1 ? say`${one} (${lost.length} such cells)` : one };
  }),
  check("Q60", {}, (record) => {
    const typed = record.faults.filter(({ kind }) => kind !== "error");
    const compared = [
      figure(record, say`cells at fault`, typed.length, "number"),
      figure(record, say`allowed`, 0, "number"),
    ] as const;
    return typed.length
      ? { status: "explain", compared, sentence: joined(typed.map(({ sentence }) => sentence)) }
      : { status: "pass", compared, sentence: say`no text, date or logical value stands where a number belongs` };
  }),
  check("Q63", {}, (record) => {
    if (!asksForReport(record))
      return cannotAsk(say`the sheet has no cells for ${cellNamed("project")} and ${cellNamed("report_number")}`);
    const { lacking, asked } = requiredOf(record);
    const compared = [
      figure(record, say`cells missing`, lacking.length, "number"),
      figure(record, say`cells required`, asked, "number"),
    ] as const;
    return lacking.length
      ? { status: "explain", compared, sentence: say`missing: ${listed(lacking.map(lackingNamed))}` }
      : { status: "pass", compared, sentence: say`all ${asked} cells are filled in` };
  }),
  check("Q64", {}, ({ words, missing }) => {
    const { tested_by, checked_by } = words;
    if (missing.includes("tested_by") && missing.includes("checked_by"))
      return cannotAsk(say`the sheet has no cells for ${cellNamed("tested_by")} and ${cellNamed("checked_by")}`);
    const order = (["sample_date", "date_started", "date_ended", "date_checked"] as const).filter(
      (name) => words[name],
    );
    const wrong = neighbours(order).find(([before, name]) => words[name]! < words[before]!);
    const faults = [
      ...(tested_by === undefined ? [say`${cellNamed("tested_by")} is blank`] : []),
      ...(checked_by === undefined ? [say`${cellNamed("checked_by")} is blank`] : []),
      ...(tested_by !== undefined && tested_by.toLowerCase() === checked_by?.toLowerCase()
        ? [say`${verbatim(tested_by)} tested and checked: a second person must check`]
        : []),
      ...(wrong ? [say`${dated(wrong[1], words)} lies before ${dated(wrong[0], words)}`] : []),
    ];
    return faults.length
      ? { status: "explain", sentence: joined(faults) }
      : {
          status: "pass",
          sentence: say`tested by ${verbatim(tested_by ?? "")}, checked by ${verbatim(checked_by ?? "")}, dates in order`,
        };
  }),
  check("Q65", {}, (record) => {
    const { overrides } = record;
    const bare = overrides.filter(({ reason, by }) => !reason || !by);
    const compared = [
      figure(record, say`replaced without reason or name`, bare.length, "number"),
      figure(record, say`replaced by hand`, overrides.length, "number"),
    ] as const;
    return bare.length
      ? {
          status: "stop",
          compared,
          sentence: say`no reason or no name for: ${listed(bare.map(replaced), "; ")}`,
        }
      : {
          status: "pass",
          compared,
          sentence: overrides.length ? say`every one has a reason and a name` : say`nothing was replaced by hand`,
        };
  }),
];

/**
 * "d100 of load 3 (812 to 815, row 2 of the picks)": the value that was replaced by hand, and its row in the table of
 * picks.
 */
function replaced({ of, pick }: TestRecord["overrides"][number]): Message {
  if (!pick) return say([of]);
  const { row, load, before, after } = pick;
  const what =
    load === OF_CURVE ? say`${pickSaid(pick.of)} of the curve` : { ...say`${pickSaid(pick.of)} of load ${load}`, load };
  return before === undefined
    ? say`${what} (now ${typed(after)}, row ${row} of the picks)`
    : say`${what} (${typed(before)} to ${typed(after)}, row ${row} of the picks)`;
}

const typed = (value: number | string | undefined): Value =>
  typeof value === "number" ? value : listWord(value ?? "");

const dated = (name: WordName, words: TestRecord["words"]): Message =>
  say`${cellNamed(name)} ${verbatim(words[name] ?? "")}`;

/** Shows more digits than other figures: two results that differ must not look equal. */
const precise = ({ value, unit }: Figure): Message =>
  unit ? say`${digits(value, 8)} ${verbatim(unit)}` : say`${digits(value, 8)}`;
