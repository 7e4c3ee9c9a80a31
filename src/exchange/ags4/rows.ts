/** The rows of one test for the groups of an AGS4 file, in the units of the dictionary, and what has no place there. */
import { english, joined, listed, say, verbatim, type Message } from "../../reduction/message";
import { badInput, given, type Outcome } from "../../reduction/outcome";
import { cellNamed, type LoadRecord, type TestRecord } from "../../record/record";
import { remarkOfLoad, saidInCell } from "../../record/sheet-remarks";
import { wettingAt } from "../../record/wetting";
import { EDITION, isSampleType, SAMPLE_TYPES, type GroupName, type SampleType } from "./dictionary";
import { formatNumber } from "./format";

/** Particulars of the file that the sheet does not hold. */
export interface Transmission {
  /** Number of this issue of the data, "1". */
  readonly issue: string;
  /** yyyy-mm-dd */
  readonly date: string;
  readonly producer: string;
  readonly recipient: string;
  /** "Draft", "Final", ... */
  readonly status: string;
  readonly description?: string;
  /** AGS4 abbreviation of the kind of sample, needed where the word on the sheet is not one. */
  readonly sampleType?: string;
}

type FieldValue = number | string | undefined;
export type Row = Readonly<Record<string, FieldValue>>;
export type Data = Readonly<Record<Exclude<GroupName, "TYPE" | "UNIT">, readonly Row[]>>;

const PARTICULARS = {
  issue: say`the issue of the file`,
  producer: say`the producer of the file`,
  recipient: say`the recipient of the file`,
  status: say`the status of the file`,
};

/**
 * CONG_COND for the words of the sheet; "compacted" has no abbreviation in the dictionary, so the file declares one.
 */
const CONDITIONS: Readonly<Record<string, readonly [code: string, description: string]>> = {
  intact: ["UNDISTURBED", "Undisturbed"],
  remoulded: ["REMOULDED", "Remoulded"],
  compacted: ["COMPACTED", "Compacted (not in the standard list)"],
};

/** The abbreviations that the file uses; "compacted" has none in the dictionary. */
const abbreviations = (condition: readonly [string, string] | undefined, sampleType: SampleType): Row[] =>
  [
    ...(condition
      ? [{ ABBR_HDNG: "CONG_COND", ABBR_CODE: condition[0], ABBR_DESC: condition[1], ABBR_LIST: "AGS4" }]
      : []),
    { ABBR_HDNG: "CONG_TYPE", ABBR_CODE: "OEDOMETER", ABBR_DESC: "Oedometer", ABBR_LIST: "AGS4" },
    { ABBR_HDNG: "SAMP_TYPE", ABBR_CODE: sampleType, ABBR_DESC: SAMPLE_TYPES[sampleType], ABBR_LIST: "AGS4" },
  ].map((row) => (row.ABBR_CODE === "COMPACTED" ? { ...row, ABBR_LIST: "" } : row));

/** The rows of one test, or a refusal that names the cells to fill in first. */
export function rowsOf(record: TestRecord, transmission: Transmission): Outcome<Data> {
  const lacking = missing(record, transmission);
  if (lacking.length) return badInput(joined(lacking));
  const { words } = record;
  const sampleType = (transmission.sampleType ?? words.sample_type!).toUpperCase();
  if (!isSampleType(sampleType))
    return badInput(
      say`${cellNamed("sample_type")} is "${verbatim(transmission.sampleType ?? words.sample_type ?? "")}": use an AGS4 abbreviation, one of ${listed(Object.keys(SAMPLE_TYPES).map(verbatim))}`,
    );

  const condition = words.condition === undefined ? undefined : CONDITIONS[words.condition];
  const sample: Row = {
    LOCA_ID: words.boring,
    SAMP_TOP: record.numbers.sample_top,
    SAMP_REF: words.sample,
    SAMP_TYPE: sampleType,
    SAMP_ID: words.sample_id,
  };
  // The sheet gives the depth of the middle, AGS4 the depth of the top.
  const half = record.numbers.initial_height! / 2000;
  const specimen: Row = { ...sample, SPEC_REF: words.specimen, SPEC_DPTH: record.numbers.depth! - half };
  return given({
    PROJ: [{ PROJ_ID: words.job_number, PROJ_NAME: words.project }],
    ABBR: abbreviations(condition, sampleType),
    TRAN: [transmitted(transmission)],
    LOCA: [{ LOCA_ID: words.boring }],
    SAMP: [{ ...sample, SAMP_DESC: words.soil_description }],
    CONG: [{ ...specimen, ...general(record, condition?.[0], half) }],
    CONS: record.loads
      .filter(({ stress }) => stress !== undefined)
      .map((load, index, loads) => ({ ...specimen, ...increment(record, load, loads[index - 1]) })),
    ...classification(record, specimen),
  });
}

const transmitted = ({ issue, date, producer, status, description, recipient }: Transmission): Row => ({
  TRAN_ISNO: issue,
  TRAN_DATE: date,
  TRAN_PROD: producer,
  TRAN_STAT: status,
  TRAN_DESC: description ?? "One-dimensional consolidation test",
  TRAN_AGS: EDITION,
  TRAN_RECV: recipient,
  TRAN_DLIM: "|",
  TRAN_RCON: "+",
});

/** GRAG_FINE is finer than 0.063 mm; fines of a sheet in inches are taken as finer than 0.075 mm, and have no heading. */
const finesFit = ({ words }: TestRecord): boolean => words.length_unit !== "in";

/** The rows of the grading and of the limits; none where nothing was typed. */
function classification(record: TestRecord, specimen: Row): Pick<Data, "GRAG" | "LLPL"> {
  const { numbers, results, words } = record;
  const { liquid_limit: LL, plastic_limit: PL, clay_content: clay } = numbers;
  const fines = finesFit(record) ? numbers.fines_content : undefined;
  const of: Row = { ...specimen, SPEC_DESC: words.soil_description };
  return {
    GRAG:
      clay === undefined && fines === undefined
        ? []
        : [{ ...of, GRAG_CLAY: times100(clay), GRAG_FINE: times100(fines) }],
    LLPL:
      LL === undefined && PL === undefined
        ? []
        : [
            {
              ...of,
              LLPL_LL: times100(LL),
              LLPL_PL: PL === undefined ? undefined : formatNumber(100 * PL, "0DP"),
              LLPL_PI: times100(results.plasticity_index),
            },
          ],
  };
}

/** Cells and particulars without which a required field or a key would be blank (rules 10a and 10b). */
function missing(record: TestRecord, transmission: Transmission): Message[] {
  const { words, numbers, loads } = record;
  const cells = [
    ...(["job_number", "boring", "sample", "sample_type", "specimen"] as const).filter(
      (name) => !words[name] && !(name === "sample_type" && transmission.sampleType),
    ),
    ...(["sample_top", "depth", "initial_height"] as const).filter((name) => numbers[name] === undefined),
    ...(loads.some(({ stress }) => stress !== undefined) ? [] : ["load_stress"]),
  ];
  // A firm's own form need not have a cell for each of them.
  const blank = cells.filter((name) => !record.missing.includes(name));
  const without = cells.filter((name) => record.missing.includes(name));
  const said = (["issue", "producer", "recipient", "status"] as const).filter((name) => !transmission[name].trim());
  const date = /^\d{4}-\d{2}-\d{2}$/.test(transmission.date) ? [] : [say`the date of the file as yyyy-mm-dd`];
  const fields = [...said.map((name) => PARTICULARS[name]), ...date];
  return [
    ...(blank.length ? [say`the AGS4 file needs ${listed(blank.map(cellNamed))}: fill in these cells`] : []),
    ...(without.length
      ? [
          say`the AGS4 file needs ${listed(without.map(cellNamed))}, and the sheet has no cells named ${listed(without.map(verbatim))}: attach these names to cells (Data sheet, Sheet check), and fill them in`,
        ]
      : []),
    ...(fields.length ? [say`the AGS4 file needs ${listed(fields)}: fill in these fields of the pane`] : []),
  ];
}

const percent = (ratio: number | undefined): string | undefined =>
  ratio === undefined ? undefined : formatNumber(100 * ratio, "1DP");

const times100 = (ratio: number | undefined): number | undefined => (ratio === undefined ? undefined : 100 * ratio);

/** Whether the water was added under a load of its own, so that the strain of that load is only swell or collapse. */
const wettedAlone = (record: TestRecord): boolean => wettingAt(record) >= 0;

function general(record: TestRecord, condition: string | undefined, half: number): Row {
  const { words, numbers, results, deflections } = record;
  const Gs = numbers.specific_gravity;
  const corrected = deflections.some(({ stress }) => stress !== undefined);
  return {
    SPEC_DESC: words.soil_description,
    SPEC_PREP: [
      words.preparation,
      words.specimen_orientation ? `Axis of the specimen in the ground: ${words.specimen_orientation}` : "",
    ]
      .filter(Boolean)
      .join("; "),
    CONG_TYPE: "OEDOMETER",
    CONG_COND: condition,
    CONG_SDIA: numbers.diameter,
    CONG_HIGT: numbers.initial_height,
    CONG_MCI: percent(results.water_content_initial),
    CONG_MCF: percent(results.water_content_final),
    CONG_BDEN: results.density_initial,
    CONG_DDEN: results.dry_density_initial,
    // The mark # says that the value is assumed; a value that nobody calls measured counts as assumed.
    CONG_PDEN:
      Gs === undefined
        ? undefined
        : `${words.specific_gravity_basis === "measured" ? "" : "#"}${formatNumber(Gs, "2DP")}`,
    CONG_SATR: times100(results.saturation_initial),
    CONG_SPRS: results.swelling_pressure_used ?? numbers.swelling_pressure,
    // The dictionary: "as percentage of original height (BS1377 Settlement on saturation test)": settlement is positive.
    CONG_SATH: wettedAlone(record) ? times100(results.inundation_strain) : undefined,
    CONG_IVR: results.void_ratio_initial,
    CONG_REM: words.test_remarks,
    CONG_METH: words.standard,
    CONG_LAB: words.laboratory,
    TEST_STAT: words.checked_by && words.date_checked ? "Checked" : "Preliminary",
    SPEC_BASE: numbers.depth! + half,
    CONG_DEV: words.deviations,
    CONG_MCIS: results.water_content_initial === undefined ? undefined : "Test specimen",
    CONG_CORR: corrected ? "Y" : "N",
  };
}

function increment(record: TestRecord, load: LoadRecord, before: LoadRecord | undefined): Row {
  const { results } = record;
  const { stress, results: shown, words } = load;
  const exact = Number(stress!.toPrecision(6));
  const remarks = [
    String(exact) === formatNumber(stress!, "0DP") ? "" : `Stress ${exact} kPa`,
    load.wetting ? "Wetting under the stress of the load before" : load.inundated ? "Inundated" : "",
    shown.load_wetting_strain === undefined
      ? ""
      : `Strain on wetting ${formatNumber(100 * shown.load_wetting_strain, "2DP")} % (swell negative)`,
    shown.c_alpha === undefined ? "" : "CONS_INSC is strain on the initial height per log cycle of time",
    words.load_remark && words.load_remark !== "ok"
      ? english(saidInCell(record, words.load_remark, remarkOfLoad(record, load.number)))
      : "",
  ];
  return {
    CONS_INCN: String(load.number),
    CONS_IVR: before ? before.results.void_ratio_end : results.void_ratio_initial,
    CONS_INCF: stress,
    CONS_INCE: shown.void_ratio_end,
    CONS_INMV: shown.volume_compressibility,
    CONS_INSC: shown.c_alpha,
    CONS_CVRT: shown.cv_root_time,
    CONS_CVLG: shown.cv_log_time,
    CONS_TEMP: load.temperature,
    CONS_REM: remarks.filter(Boolean).join("; "),
  };
}

/** Values of the record for which the groups have no place. Source: the headings of CONG and CONS in the dictionary. */
export function leftOut(record: TestRecord): Message[] {
  const { loads, results, deflections, tins, words, numbers, overrides } = record;
  const shows = (...names: readonly (keyof typeof results)[]) => names.some((name) => results[name] !== undefined);
  const ofLoads = (...names: readonly (keyof LoadRecord["results"])[]) =>
    loads.some((load) => names.some((name) => load.results[name] !== undefined));
  const readings = loads.reduce(
    (sum, load) => sum + load.readings.filter(({ reading }) => reading !== undefined).length,
    0,
  );
  const items: readonly (readonly [boolean, Message])[] = [
    [readings > 0, say`the ${readings} readings of deformation against time`],
    [shows("preconsolidation_stress"), say`the preconsolidation stress, its interval and its method`],
    [shows("compression_index", "recompression_index", "swelling_index"), say`Cc, Cr and Cs`],
    [shows("overconsolidation_ratio") || numbers.in_situ_stress !== undefined, say`the in-situ stress and the OCR`],
    [shows("void_ratio_final", "saturation_final"), say`final void ratio and saturation`],
    [
      shows("inundation_strain") && !wettedAlone(record),
      say`the strain of the load under which the water came (CONG_SATH is that of wetting alone)`,
    ],
    [ofLoads("strain_end"), say`strains and heights of the loads`],
    [ofLoads("log_d100", "root_d100", "log_t50", "root_t90"), say`d0, d50, d90, d100, t50, t90 and t100 of the loads`],
    [ofLoads("void_ratio_d100"), say`void ratios at d100: CONS_INCE is that at the end of the load`],
    [words.curve_from === "d100", say`that mv rests on void ratios at d100`],
    [ofLoads("conductivity"), say`k of the loads`],
    [ofLoads("cv_chosen"), say`which of the two cv is reported`],
    [deflections.length > 0, say`the deflections of the apparatus (CONG_CORR says only that they were used)`],
    [tins.length > 0, say`the tins of trimmings and the weighings`],
    [words.drainage !== undefined, say`the drainage`],
    [words.tested_by !== undefined || words.checked_by !== undefined, say`who tested and who checked`],
    [words.date_started !== undefined, say`the dates of the test and of its loads`],
    [
      [words.frame_number, words.ring_number, words.dial_number, words.balance_number].some(Boolean),
      say`the apparatus used`,
    ],
    [shows("collapse_potential"), say`the collapse potential, the collapse index and its class`],
    [
      words.swelling_method !== undefined && words.swelling_method !== "measured",
      say`the method of the swelling pressure`,
    ],
    [overrides.length > 0, say`what was replaced by hand, and why`],
    [
      words.group_symbol !== undefined || numbers.organic_content !== undefined || numbers.sensitivity !== undefined,
      say`group symbol, organic content and sensitivity`,
    ],
    [words.atterberg_limits !== undefined, say`the limits that stand as text (LLPL has numbers only)`],
    [numbers.fines_content !== undefined && !finesFit(record), say`the fines (GRAG_FINE is finer than 0.063 mm)`],
    [shows("liquidity_index", "activity", "void_index"), say`liquidity index, activity and void index`],
  ];
  return items.flatMap(([has, what]) => (has ? [what] : []));
}
