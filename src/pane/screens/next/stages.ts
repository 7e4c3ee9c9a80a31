/**
 * Finds out from the record how far a test has come. There are seven stages from the arrival of the sample to the
 * report; each lists what is missing. Every cell that a report requires belongs to one stage, so that the stages and
 * question Q63 name the same cells.
 */
import type { Answered } from "../../../checks";
import type { CellFinding } from "../../../checks/integrity";
import { holds, requiredOf, type Lacking } from "../../../checks/lacking";
import type { HeadSentence } from "../../../record/head-of-sheet";
import { hasReadings, outcomeOf } from "../../../record/load-curve";
import type { TestRecord } from "../../../record/record";
import { reduced } from "../../../record/reduced-test";
import type { LoadReduced } from "../../../record/reduced/load";
import type { PickedThing, TimeMethod } from "../../../reduction/increment/constructions/picks";
import type { Message } from "../../../reduction/message";
import { methodOfLoad } from "../../../record/picks";
import { APPARATUS, DEFLECTION, DEFLECTION_SET, SEATING_DEFLECTION } from "../../../specification/form/apparatus";
import { CLASSIFICATION } from "../../../specification/form/classification";
import { IDENTIFICATION } from "../../../specification/form/identification";
import { MASSES, TINS } from "../../../specification/form/masses";
import { LOAD_TABLE } from "../../../specification/load-table";
import { namesOf } from "../../../specification/parts";
import { loadOfReadings } from "../../../specification/readings";

const STAGES = ["received", "sized", "loaded", "reduced", "reviewed", "checked", "reported"] as const;
export type StageName = (typeof STAGES)[number];

/** Something that keeps a stage open, or that a person should look at. */
export type Lack =
  /** Blank cells. One filled cell of `names` is enough; in a column, the cells of `loads` count. */
  | ({ readonly what: "cell" } & Lacking)
  | { readonly what: "no loads" }
  | { readonly what: "no readings"; readonly load: number }
  | { readonly what: "cell at fault"; readonly name: string; readonly row?: number; readonly sentence: Message }
  /** A sentence of the head of the sheet: inputs that cannot be, or further loads that the curve needs. */
  | { readonly what: "head of sheet"; readonly sentence: Message; readonly address?: string }
  /** The number of results that the sheet calculates once the stages before are done. */
  | { readonly what: "results follow"; readonly count: number }
  | {
      readonly what: "no construction";
      readonly load: number;
      readonly method: TimeMethod;
      readonly reason: Message;
    }
  /** A row of the table of picks, counted from 1, that has no reason or no initials. */
  | { readonly what: "pick unsigned"; readonly row: number; readonly load?: PickedThing }
  | { readonly what: "question"; readonly id: string; readonly question: Message }
  | { readonly what: "no report" }
  /** Formulas that were overwritten, lost or changed: how many, and what is wrong with the first. */
  | { readonly what: "formulas changed"; readonly count: number; readonly sentence: Message; readonly address: string }
  /** Readings are not those of the last issue of a report. */
  | ({ readonly what: "readings changed" } & ChangedSince);

/** The issue of a report after which readings were changed. */
export interface ChangedSince {
  readonly number: number;
  readonly report: string;
  readonly day: string;
}

export interface Stage {
  readonly name: StageName;
  readonly state: "not begun" | "begun" | "done";
  /** What keeps the stage from being done. */
  readonly lacks: readonly Lack[];
  /** What does not keep the stage from being done, but should be looked at. */
  readonly looks: readonly Lack[];
}

export interface Known {
  readonly record: TestRecord;
  /** What the head of the sheet says of its inputs. */
  readonly head: readonly HeadSentence[];
  /** Questions with the answer "stop" or "explain" that no person has answered for the present finding. */
  readonly open: readonly Answered[];
  /** The names of the sheets that are reports of the test. */
  readonly reports: readonly string[];
  /** What happened to the cells of the sheet. */
  readonly findings?: readonly CellFinding[];
  /** The last issue of a report, if readings were changed since. */
  readonly changedSince?: ChangedSince;
}

/** The cells that a person types in each stage. Any other required cell is a result and belongs to the reduction. */
const TYPED: Readonly<Record<StageName, readonly string[]>> = {
  received: [
    ...["laboratory", "project", "boring", "sample", "depth", "specimen_orientation", "preparation"],
    ...["sample_type", "soil_description", "condition", "standard"],
  ],
  sized: [
    ...["diameter", "initial_height", "ring_number", "ring_mass", "ring_and_wet_before"],
    ...["specific_gravity", "specific_gravity_basis"],
  ],
  loaded: ["dial_factor", "zero_reading", "drainage", "test_method", "date_started", "date_ended", "load_stress"],
  reduced: ["ring_and_wet_after", "ring_and_dry", "inundation_stress"],
  reviewed: ["time_method", "tested_by", "date_tested"],
  checked: ["checked_by", "date_checked"],
  reported: ["report_number", "deviations", "test_remarks"],
};

/** Cells that the reduction needs but no report shows as they are. */
const NEEDED = [
  "ring_mass",
  "ring_and_wet_before",
  "ring_and_wet_after",
  "ring_and_dry",
  "dial_factor",
  "zero_reading",
];

/** Cells that are blank on a new sheet: the stage has begun once one of them is filled. */
const BEGINS: Readonly<Partial<Record<StageName, readonly string[]>>> = {
  received: ["project", "boring", "sample", "depth", "sample_type", "soil_description"],
  sized: ["diameter", "initial_height", "ring_mass", "ring_and_wet_before"],
};

/** The first cell to fill in a stage that has not begun. */
export const beginsAt = (stage: StageName): string | undefined =>
  stage === "loaded" ? "load_stress" : BEGINS[stage]?.[0];

const stageOf = (name: string): StageName => STAGES.find((stage) => TYPED[stage].includes(name)) ?? "reduced";

/** The other cells of the form that a person types before the reduction. */
const PARTS: Readonly<Partial<Record<StageName, readonly string[]>>> = {
  received: namesOf([...IDENTIFICATION.flat(), ...CLASSIFICATION.flat()]),
  sized: namesOf([...MASSES.flat(), TINS]),
  loaded: namesOf([...APPARATUS.flat(), DEFLECTION, ...DEFLECTION_SET, ...SEATING_DEFLECTION, LOAD_TABLE]),
};
/** Of these parts, what is measured at the end of the test. */
const AT_THE_END = ["final_height_measured", "largest_particle", "swelling_pressure", "test_temperature", "pore_salt"];

/** The stage in which a person types this cell. */
function stageOfEntry(name: string): StageName {
  if (loadOfReadings(name) !== undefined) return "loaded";
  if (isTyped(name) || AT_THE_END.includes(name)) return stageOf(name);
  return STAGES.find((stage) => PARTS[stage]?.includes(name)) ?? "reduced";
}

const isTyped = (name: string): boolean => STAGES.some((stage) => TYPED[stage].includes(name));

/** The missing cells of each stage, in the order in which they are typed, and separately the missing results. */
function lackingBy(record: TestRecord): { readonly typed: ReadonlyMap<StageName, Lack[]>; readonly results: Lack[] } {
  const needed = NEEDED.filter((name) => !holds(record, name)).map((name): Lacking => ({ names: [name] }));
  const typed = new Map<StageName, Lack[]>(STAGES.map((stage) => [stage, []]));
  const results: Lack[] = [];
  for (const lacking of [...needed, ...requiredOf(record).lacking]) {
    const [name] = lacking.names;
    // If there is no load at all, this is reported once, not for each column.
    if (lacking.loads?.length === 0 && name === "load_stress") continue;
    (isTyped(name) ? typed.get(stageOf(name)) : results)?.push({ what: "cell", ...lacking });
  }
  const order = (lack: Lack) => (lack.what === "cell" ? TYPED[stageOf(lack.names[0])].indexOf(lack.names[0]) : 0);
  for (const lacks of typed.values()) lacks.sort((a, b) => order(a) - order(b));
  return { typed, results };
}

/**
 * The sentences about entries that cannot be, by stage, each with its first cell there. A list of entries stands in the stage
 * of each of them; where one of several cells is wrong, in the earliest stage.
 */
function wrongBy(head: readonly HeadSentence[]): ReadonlyMap<StageName, Lack[]> {
  const wrong = new Map<StageName, Lack[]>(STAGES.map((stage) => [stage, []]));
  for (const { kind, sentence, cells = [] } of head) {
    if (kind === "unusual") continue;
    const owning = [...wrong].flatMap(([stage, lacks]) => {
      const own = cells.find(({ name }) => stageOfEntry(name) === stage);
      return own ? [{ lacks, address: own.address }] : [];
    });
    for (const { lacks, address } of kind === "entry" ? owning : owning.slice(0, 1))
      lacks.push({ what: "head of sheet", sentence, address });
  }
  return wrong;
}

function loadLacks({ loads }: TestRecord): Lack[] {
  if (loads.length === 0) return [{ what: "no loads" }];
  return loads.filter((load) => !hasReadings(load)).map(({ number }) => ({ what: "no readings", load: number }));
}

/** Loads that consolidate but whose construction cannot be made: the construction whose cv the load reports. */
function withoutConstruction(record: TestRecord, loads: readonly LoadReduced[]): Lack[] {
  return loads.flatMap(({ record: load, unloading, increment }): Lack[] => {
    if (unloading || load.words.load_branch === "wetting" || !hasReadings(load)) return [];
    const method = methodOfLoad(record, load.number);
    const outcome = outcomeOf(increment, method);
    return outcome.ok ? [] : [{ what: "no construction", load: load.number, method, reason: outcome.reason }];
  });
}

const unsignedPicks = ({ picks }: TestRecord): Lack[] =>
  picks
    .filter(({ reason, by, after }) => after !== undefined && (!reason || !by))
    .map(({ row, load }) => ({ what: "pick unsigned", row, load }));

/** The range of a preconsolidation stress that the constructions refuse: nothing is left to do where another is adopted. */
const RANGE_OF_REFUSED = ["preconsolidation_low", "preconsolidation_high"];

const faultsToMend = ({ faults, adopted }: TestRecord): Lack[] =>
  faults
    .filter(({ name }) => !(adopted?.preconsolidation_stress && RANGE_OF_REFUSED.includes(name)))
    .map(({ name, row, sentence }) => ({ what: "cell at fault", name, row, sentence }));

/** Faults of formulas. Faults of other cells are in the record, and hidden rows keep no stage from being done. */
const OF_FORMULAS: readonly CellFinding["kind"][] = [
  "overwritten",
  "lost formula",
  "in the way",
  "unlike formula",
  "differs",
];

function formulasChanged(findings: readonly CellFinding[]): Lack[] {
  const changed = findings.filter(({ kind }) => OF_FORMULAS.includes(kind));
  const [first] = changed;
  if (!first) return [];
  return [{ what: "formulas changed", count: changed.length, sentence: first.sentence, address: first.address }];
}

const isDone = (...before: readonly Stage[]): boolean => before.every(({ state }) => state === "done");

/** A stage of which nothing is said before it has begun. */
function stage(name: StageName, hasBegun: boolean, lacks: readonly Lack[], looks: readonly Lack[] = []): Stage {
  if (!hasBegun) return { name, state: "not begun", lacks: [], looks: [] };
  return { name, state: lacks.length === 0 ? "done" : "begun", lacks, looks };
}

/** Signed early, the review and the check are not done before the loads that they look at. */
const afterLoads = (own: Stage, loaded: Stage): Stage =>
  isDone(own) && !isDone(loaded) ? { ...own, state: "not begun" } : own;

/** The sentences at the head of the sheet that name no cell to correct, and those on unusual numbers. */
const saidAtHead = (head: readonly HeadSentence[], ...kinds: readonly HeadSentence["kind"][]): Lack[] =>
  head
    .filter(({ kind, cells = [] }) => kinds.includes(kind) && (kind === "unusual" || cells.length === 0))
    .map(({ sentence, address }): Lack => ({ what: "head of sheet", sentence, address }));

const hasResults = ({ results, loads }: TestRecord): boolean =>
  Object.keys(results).length > 0 || loads.some(({ results: own }) => own.strain_end !== undefined);

/** The day of a change is not known: a check of a later day than the issue counts as one of the changed readings. */
const isCheckedSince = ({ words }: TestRecord, { day }: ChangedSince): boolean =>
  (words.date_checked ?? "") > day.slice(0, 10);

export function stagesOf({ record, head, open, reports, findings = [], changedSince }: Known): Stage[] {
  const { typed, results } = lackingBy(record);
  const typedIn = (stage: StageName): Lack[] => typed.get(stage) ?? [];
  const wrong = wrongBy(head);
  const wrongIn = (stage: StageName): Lack[] => wrong.get(stage) ?? [];
  const someHold = (name: StageName): boolean =>
    wrongIn(name).length > 0 || (BEGINS[name] ?? []).some((one) => holds(record, one));

  const received = stage("received", someHold("received"), [...wrongIn("received"), ...typedIn("received")]);
  const ofSizes = [...wrongIn("sized"), ...typedIn("sized")];
  const sized = stage("sized", someHold("sized"), ofSizes);
  const hasLoads = record.loads.some((load) => load.stress !== undefined || hasReadings(load));
  const ofLoads = [...wrongIn("loaded"), ...loadLacks(record), ...typedIn("loaded")];
  const loaded = stage("loaded", hasLoads || wrongIn("loaded").length > 0, ofLoads);

  const ofHead = [...wrongIn("reduced"), ...saidAtHead(head, "impossible", "running")];
  const inputsLack = [...ofHead, ...ofSizes, ...ofLoads, ...typedIn("reduced")].length > 0;
  // Results that are missing only because inputs are missing form one line instead of a dozen.
  const ofResults: Lack[] =
    inputsLack && results.length > 0 ? [{ what: "results follow", count: results.length }] : results;
  const reducing = stage(
    "reduced",
    hasResults(record) || ofHead.length > 0,
    [...ofHead, ...faultsToMend(record), ...formulasChanged(findings), ...typedIn("reduced"), ...ofResults],
    // The readings are kept as they are, and an unusual number counts: neither keeps a stage from being done.
    saidAtHead(head, "unusual", "jump"),
  );

  const signedTest = holds(record, "tested_by") || holds(record, "date_tested");
  const reviewed = afterLoads(
    stage(
      "reviewed",
      hasLoads && (isDone(loaded) || record.picks.length > 0 || signedTest),
      [...wrongIn("reviewed"), ...unsignedPicks(record), ...typedIn("reviewed")],
      withoutConstruction(record, reduced(record).loads),
    ),
    loaded,
  );
  const afterIssue: Lack[] = changedSince ? [{ what: "readings changed", ...changedSince }] : [];
  const signedCheck = holds(record, "checked_by") || holds(record, "date_checked");
  const checked = afterLoads(
    stage("checked", hasResults(record) && (isDone(loaded, reducing) || signedCheck), [
      ...wrongIn("checked"),
      ...(changedSince && isCheckedSince(record, changedSince) ? [] : afterIssue),
      ...open.map(({ check }): Lack => ({ what: "question", id: check.id, question: check.question })),
      ...typedIn("checked"),
    ]),
    loaded,
  );
  const reported = stage("reported", reports.length > 0 || isDone(checked), [
    ...wrongIn("reported"),
    ...afterIssue,
    ...typedIn("reported"),
    ...(reports.length === 0 ? [{ what: "no report" } as const] : []),
  ]);
  return [received, sized, loaded, reducing, reviewed, checked, reported];
}

/** The first stage that is not done; undefined if all are done. */
export const nextOf = (stages: readonly Stage[]): Stage | undefined => stages.find(({ state }) => state !== "done");
