/**
 * Collects what the results screen shows of a data sheet: numbers in the sheet's own units and digits, their spread,
 * the assumptions, and the reason why a number is missing. The input is the values of the sheet by name and the record
 * read from them.
 */
import { englishWord } from "../../../record/cells";
import { english, type Message } from "../../../reduction/message";
import { FIELDS } from "../../../specification/fields";
import { labelOnSheet } from "../../live/sheet-language";
import { impossibleInputs } from "../../../record/head-of-sheet";
import { loadsRead } from "../../../record/load-curve";
import { formatOf, unitCellOf, type Measure, type System } from "../../../specification/measures";
import type { NamedValues, TestRecord } from "../../../record/record";
import type { ResultName } from "../../../record/names";
import { loadSteps } from "../../../reduction/curve/loads";
import { methodNamed, METHOD_NAMES, type MethodName } from "../../../reduction/curve/method-words";
import { firstOf, lastOf } from "../../../reduction/numeric/lists";
import { isError } from "../../../workbook/cell-error";
import { yieldMethodOf } from "../../../record/reduced-test";
import { ALL_ADOPTABLE, CV_RANGES } from "../../../specification/results/adoptable";
import { picksOfCurve } from "../../../record/picks";
import { picksOfYield, type CurvePickName } from "../../../reduction/curve/picks";
import { remarkOfLoad, remarkOfTest, saidInCell, type Remark } from "../../../record/sheet-remarks";
import { interpretationSpread } from "../../../reduction/uncertainty";

/** A number of one cell: the name, and in a column the row, counted from 0. */
export interface Shown {
  readonly name: string;
  readonly row: number;
  readonly col: number;
  readonly value: number;
  readonly format: string | undefined;
  /** The unit on the sheet; "" for a pure number. */
  readonly unit: string;
}

/** The reason why a number is missing. */
export type Absence =
  | { readonly why: "no cell" }
  /** The sheet has no cell for a result that this one is calculated from, so that its formula is not written. */
  | { readonly why: "needs a cell"; readonly cell: string }
  | { readonly why: "error"; readonly code: string }
  | { readonly why: "blank inputs"; readonly cells: readonly string[] }
  /** An input of the sheet cannot be, and its head says which. */
  | { readonly why: "impossible inputs" }
  | { readonly why: "no answer" };

/** Where the value in use comes from. */
export type Source =
  | { readonly from: "adopted"; readonly by?: string; readonly reason?: string }
  | { readonly from: "construction"; readonly method?: MethodName; readonly isPicked: boolean };

export interface Line {
  readonly name: ResultName;
  readonly shown?: Shown;
  readonly low?: Shown;
  readonly high?: Shown;
  /** The range of stress of a cv. */
  readonly over?: { readonly from: Shown; readonly to: Shown };
  /** Where a value comes from that an engineer may adopt or pick; undefined for other results. */
  readonly source?: Source;
  readonly absence?: Absence;
}

export interface MethodSpread {
  readonly methods: readonly { readonly method: MethodName; readonly shown?: Shown }[];
  readonly least: number;
  readonly greatest: number;
  readonly median: number;
  readonly count: number;
  readonly format: string | undefined;
  readonly unit: string;
}

export interface LoadLine {
  readonly number: number;
  readonly row: number;
  readonly cells: Readonly<Record<(typeof LOAD_COLUMNS)[number], Shown | undefined>>;
  readonly isVirgin: boolean;
  readonly remark?: Message;
}

export type Assumption = "gs assumed" | "gs unsaid" | "no deflections" | "no seating";

export interface Results {
  readonly groups: readonly { readonly group: Group; readonly lines: readonly Line[] }[];
  readonly methods?: MethodSpread;
  /** The method whose stress the sheet reports, unless another is adopted. */
  readonly chosen: MethodName;
  /**
   * The reported cv of the virgin loads: loads that begin at the greatest stress so far and not below the
   * preconsolidation stress.
   */
  readonly virginCv?: { readonly least: Shown; readonly greatest: Shown; readonly count: number };
  readonly loads: readonly LoadLine[];
  /** The remarks on loads, each once with the loads that have it. */
  readonly loadRemarks: readonly { readonly loads: readonly number[]; readonly remark: Message }[];
  /** Whether any load has readings. */
  readonly hasReadings: boolean;
  /** Whether an input of the sheet cannot be, so that results stay blank. */
  readonly hasImpossible: boolean;
  readonly remarks: readonly { readonly name: (typeof REMARKS)[number]; readonly remark: Message }[];
  readonly assumed: readonly { readonly what: Assumption; readonly shown?: Shown }[];
  /** The choices on the sheet; undefined if the sheet does not have them. */
  readonly basis: { readonly curve?: string; readonly method?: string; readonly drainage?: string };
  /** Whether the specimen drains at one face only, so that cv is 4 times that of drainage at both faces. */
  readonly isSingleDrained: boolean;
  /** The number of values replaced by hand. */
  readonly overridden: number;
  /** Sentences about cells that could not be used. */
  readonly faults: readonly Message[];
}

export const LOAD_COLUMNS = [
  "load_stress",
  "void_ratio_curve",
  "cv_chosen",
  "volume_compressibility",
  "conductivity",
  "c_alpha",
] as const;

const SIZES = ["diameter", "initial_height", "ring_mass", "ring_and_dry", "specific_gravity", "length_unit"];
const CURVE = [...SIZES, "zero_reading", "dial_factor"];
const WET = ["ring_mass", "ring_and_wet_before", "ring_and_dry"];

/** What results are calculated from: who needs the first cell to be filled is calculated from the second. */
const BETWEEN = [
  ["specific_gravity", "solids_height"],
  ["zero_reading", "void_ratio_curve"],
] as const;

/** The results to show, each with the cells that must be filled for it. */
const GROUPS = {
  yield: [
    ["preconsolidation_stress", CURVE],
    ["overconsolidation_ratio", [...CURVE, "in_situ_stress"]],
  ],
  indices: [
    ["compression_index", CURVE],
    ["recompression_index", CURVE],
    ["swelling_index", CURVE],
    ["c_alpha_chosen", [...CURVE, "c_alpha_load"]],
    ["c_alpha_ratio", [...CURVE, "c_alpha_load"]],
    ["cv_recompression", [...CURVE, "in_situ_stress"]],
    ["cv_virgin", CURVE],
  ],
  specimen: [
    ["void_ratio_initial", SIZES],
    ["water_content_initial", WET],
    ["saturation_initial", [...SIZES, ...WET]],
    ["density_initial", ["diameter", "initial_height", "ring_mass", "ring_and_wet_before", "length_unit"]],
    ["dry_density_initial", SIZES],
    ["void_ratio_final", SIZES],
    ["saturation_final", [...SIZES, "ring_and_wet_after"]],
    ["quality_change", [...CURVE, "in_situ_stress"]],
  ],
} as const satisfies Record<string, readonly (readonly [ResultName, readonly string[]])[]>;

export type Group = keyof typeof GROUPS;

const REMARKS = [
  "preconsolidation_verdict",
  "preconsolidation_remark",
  "specimen_remark",
  "field_remark",
  "quality_class",
  "quality_remark",
  "test_remarks",
] as const;

const MEASURES = new Map<string, Measure>([
  ...FIELDS.map(({ name, measure }) => [name, measure] as const),
  // The second column of this table contains stresses.
  ["preconsolidation_spread", "stress"],
]);

class Cells {
  readonly #system: System;

  constructor(
    readonly values: NamedValues,
    readonly hasImpossible: boolean,
  ) {
    this.#system = ["in", "ft"].includes(this.text("length_unit")) ? "US" : "SI";
  }

  has(name: string): boolean {
    return name in this.values;
  }

  text(name: string, row = 0): string {
    return String(this.values[name]?.[row]?.[0] ?? "").trim();
  }

  shown(name: string, row = 0, col = 0): Shown | undefined {
    const value = this.values[name]?.[row]?.[col];
    if (typeof value !== "number") return undefined;
    const measure = MEASURES.get(name);
    const unitCell = measure && unitCellOf(measure);
    return {
      name,
      row,
      col,
      value,
      format: measure && formatOf(measure, this.#system),
      unit: unitCell ? this.text(unitCell) : "",
    };
  }

  absence(name: string, needs: readonly string[]): Absence {
    if (!this.has(name)) return { why: "no cell" };
    const said = this.text(name);
    if (isError(said)) return { why: "error", code: said };
    const blank = [...new Set(needs)].filter((need) => this.text(need) === "");
    if (blank.length > 0) return { why: "blank inputs", cells: blank.map(labelOnSheet) };
    const [, lacking] = BETWEEN.find(([input, between]) => needs.includes(input) && !this.has(between)) ?? [];
    if (lacking !== undefined) return { why: "needs a cell", cell: labelOnSheet(lacking) };
    return { why: this.hasImpossible ? "impossible inputs" : "no answer" };
  }
}

/** The picks of the compression curve on which each value depends. */
const PICKS_OF: Readonly<Partial<Record<ResultName, (method: MethodName) => readonly CurvePickName[]>>> = {
  preconsolidation_stress: picksOfYield,
  compression_index: () => ["virgin_from", "virgin_to"],
  recompression_index: () => ["loop_from", "loop_to"],
  swelling_index: () => ["unloading_from", "unloading_to"],
};

function sourceOf(name: ResultName, record: TestRecord): Source | undefined {
  const row = ALL_ADOPTABLE.find((one) => one.name === name);
  const adopted = row && record.adopted?.[row.name];
  if (adopted) return { from: "adopted", by: adopted.by, reason: adopted.reason };
  const dependsOn = PICKS_OF[name];
  if (!dependsOn) return undefined;
  const method = yieldMethodOf(record);
  const picks = picksOfCurve(record.picks);
  return {
    from: "construction",
    method: name === "preconsolidation_stress" ? method : undefined,
    isPicked: dependsOn(method).some((pick) => picks[pick] !== undefined),
  };
}

/** The stresses of the row of a cv in its table; undefined for other results. */
function stressesOf(cells: Cells, name: ResultName): Line["over"] {
  const row = CV_RANGES.findIndex((one) => one.name === name);
  const [from, to] = [cells.shown("adopted_cv_low", row), cells.shown("adopted_cv_high", row)];
  return row >= 0 && from && to ? { from, to } : undefined;
}

const lineOf = (cells: Cells, record: TestRecord, name: ResultName, needs: readonly string[]): Line => {
  const shown = cells.shown(name);
  if (!shown) return { name, absence: cells.absence(name, needs) };
  const source = sourceOf(name, record);
  const over = stressesOf(cells, name);
  if (over) return { name, shown, over, ...(source && { source }) };
  return name === "preconsolidation_stress"
    ? { name, shown, source, low: cells.shown("preconsolidation_low"), high: cells.shown("preconsolidation_high") }
    : { name, shown, ...(source && { source }) };
};

/** The rows of the spread that have a stress from a method; undefined if there are fewer than two. */
function spreadOf(cells: Cells): MethodSpread | undefined {
  const rows = cells.values.preconsolidation_spread ?? [];
  const methods = METHOD_NAMES.map((method) => {
    const row = rows.findIndex(([label]) => methodNamed(englishWord(String(label))) === method);
    return { method, shown: row < 0 ? undefined : cells.shown("preconsolidation_spread", row, 1) };
  });
  const found = methods.flatMap(({ shown }) => shown ?? []);
  const spread = interpretationSpread(found.map(({ value }) => value));
  const [first] = found;
  return spread.ok && first ? { methods, ...spread.value, format: first.format, unit: first.unit } : undefined;
}

/** What a cell of remarks says; nothing if it is blank, shows an error or has nothing to remark. */
const remarkIn = (record: TestRecord, cell: string, remark: () => Remark | undefined): Message | undefined =>
  cell === "" || cell === "ok" || isError(cell) ? undefined : saidInCell(record, cell, remark());

function loadsOf(cells: Cells, record: TestRecord): LoadLine[] {
  const yieldStress = cells.shown("preconsolidation_stress")?.value;
  const stresses = Array.from(
    { length: cells.values.load_stress?.length ?? 0 },
    (_, row) => cells.shown("load_stress", row)?.value ?? null,
  );
  const steps = loadSteps(stresses, {
    before: cells.shown("seating_stress")?.value,
    preconsolidationStress: yieldStress,
  });
  return stresses.flatMap((stress, row): LoadLine[] => {
    const number = cells.has("load_number") ? cells.shown("load_number", row)?.value : row + 1;
    if (stress === null || number === undefined || !record.loads.some((load) => load.number === number)) return [];
    return [
      {
        number,
        row,
        // Object.fromEntries returns keys of type string; these keys are the names of the columns.
        cells: Object.fromEntries(LOAD_COLUMNS.map((name) => [name, cells.shown(name, row)])) as LoadLine["cells"],
        isVirgin: steps[row]?.kind === "virgin",
        remark: remarkIn(record, cells.text("load_remark", row), () => remarkOfLoad(record, number)),
      },
    ];
  });
}

function virginCvOf(loads: readonly LoadLine[]): Results["virginCv"] {
  const found = loads
    .filter(({ isVirgin }) => isVirgin)
    .flatMap(({ cells }) => cells.cv_chosen ?? [])
    .sort((a, b) => a.value - b.value);
  return found.length > 0 ? { least: firstOf(found), greatest: lastOf(found), count: found.length } : undefined;
}

/** Each remark once, with the loads that have it, in the order of the loads. */
function remarksOfLoads(loads: readonly LoadLine[]): Results["loadRemarks"] {
  const found = new Map<string, { loads: number[]; remark: Message }>();
  for (const { number, remark } of loads) {
    if (!remark) continue;
    const same = found.get(english(remark));
    if (same) same.loads.push(number);
    else found.set(english(remark), { loads: [number], remark });
  }
  return [...found.values()];
}

function assumedIn(cells: Cells, record: TestRecord): Results["assumed"] {
  const gs = cells.shown("specific_gravity");
  const basis = record.words.specific_gravity_basis;
  return [
    ...(gs && basis !== "measured"
      ? [{ what: basis === "assumed" ? ("gs assumed" as const) : ("gs unsaid" as const), shown: gs }]
      : []),
    ...(cells.has("apparatus_stress") && record.deflections.length === 0 ? [{ what: "no deflections" as const }] : []),
    ...(cells.has("seating_stress") && cells.text("seating_stress") === "" ? [{ what: "no seating" as const }] : []),
  ];
}

export function resultsOf(values: NamedValues, record: TestRecord): Results {
  const hasImpossible = impossibleInputs({ values, record }).length > 0;
  const cells = new Cells(values, hasImpossible);
  const loads = loadsOf(cells, record);
  const said = (name: string): string | undefined => cells.text(name) || undefined;
  return {
    // Object.keys returns strings; these are the keys of the table.
    groups: (Object.keys(GROUPS) as Group[]).map((group) => ({
      group,
      lines: GROUPS[group].map(([name, needs]) => lineOf(cells, record, name, needs)),
    })),
    methods: spreadOf(cells),
    chosen: yieldMethodOf(record),
    virginCv: virginCvOf(loads),
    loads,
    loadRemarks: remarksOfLoads(loads),
    hasReadings: loadsRead(record).length > 0,
    hasImpossible,
    remarks: REMARKS.flatMap((name) => {
      const remark = remarkIn(record, cells.text(name), () => remarkOfTest({ values, record }, name));
      return remark ? [{ name, remark }] : [];
    }),
    assumed: assumedIn(cells, record),
    basis: { curve: said("curve_from"), method: said("time_method"), drainage: said("drainage") },
    isSingleDrained: record.words.drainage === "single",
    overridden: record.overrides.length,
    faults: record.faults.map(({ sentence }) => sentence),
  };
}
