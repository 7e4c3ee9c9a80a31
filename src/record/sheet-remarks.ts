/**
 * The remarks of a data sheet as messages, made from the values of its cells and not from the texts that its formulas
 * show. The text of a cell is compared with them only to notice what a person typed over a formula.
 */
import { fieldCurve } from "../reduction/curve/field-curve";
import { compressedOnUnloading } from "../reduction/curve/loads";
import { LUNNE_NAMES } from "../reduction/curve/sample-quality";
import { asTyped, digits, english, joined, say, verbatim, type Message, type Value } from "../reduction/message";
import { LONGEST_LOAD, timesLong } from "../reduction/increment/cv";
import { LAST_LEFT_OUT } from "../reduction/increment/fit/theory-fit";
import { constructionRemarks } from "../reduction/increment/reduce";
import { then, type Outcome } from "../reduction/outcome";
import {
  adoptedCvSaid,
  adoptedSaid,
  COMPRESSED,
  CURVE_REFUSED,
  halfDay,
  HEIGHT_TOO_LOW,
  MOMENT_BACK,
  MOMENT_SAME,
  NO_D100,
  NO_INITIALS,
  NO_MOMENT,
  NO_REASON,
  NO_STRESS,
  NO_VALUE,
  NOT_CORRECTED,
  NOT_MARKED,
  SEATING_AS_LOAD,
  NOT_WETTING,
  READINGS_WITHOUT_STRESS,
  ROSE,
  SEATING_BEYOND_TABLE,
  STRESS_BEYOND_TABLE,
  STRESS_LEAPS,
  STRESS_NOT_POSITIVE,
  STRESS_TURNS,
  SWELLED,
  SWELLED_FIRST,
  readingOutside,
  timeBeforeLoad,
  timeOutside,
  timesOfDay,
  timesShort,
  WETTING,
} from "../specification/sentences/of-remarks";
import {
  BEFORE_LOAD_ABOVE,
  COMPRESSED_BEFORE_12,
  halfDayAlone,
  STRESS_TURNS_ALONE,
} from "../specification/sentences/of-old-sheets";
import { MOST } from "../specification/measures";
import { LATE_BEGIN, LEAP, LEAST_STEP, READ_BEYOND } from "../specification/readings";
import { ADOPTABLE, CV_RANGES, type ALL_ADOPTABLE } from "../specification/results/adoptable";
import { languageNamed } from "../specification/text/language";
import { shownOnSheet, wordsOf } from "../specification/text/words";
import { rulesOf, TEMPLATE_VERSION } from "../specification/versions";
import { isError } from "../workbook/cell-error";
import { asColumn } from "../workbook/lists";
import type { CellValue } from "../workbook/port";
import { englishWord } from "./cells";
import { told } from "./told";
import { picksOfCurve } from "./picks";
import type { LoadRecord, NamedValues, RemarkName, TestRecord } from "./record";
import { reduced } from "./reduced-test";
import { seatingDeflection } from "./reduced/deflection";
import { inputs, inSheetStress } from "./reduced/inputs";
import type { LoadReduced } from "./reduced/load";

/** A formula shows a number with so many digits at most. */
const SHOWN_DIGITS = 15;
/** What the constructions gave is rounded to so many digits. */
const GIVEN_DIGITS = 4;

/** What a formula shows in a cell of remarks, part by part. */
export interface Remark {
  /** What the formula itself says, in the language of the sheet. */
  readonly ofSheet: readonly Message[];
  /** What worksheet functions answer there: in the language of the sheet, on a German sheet up to version 7 in English. */
  readonly ofFunctions: readonly Message[];
}

/** What looks like a slip of a load: of its times, its stress or its readings, and what the load table says of it. */
interface Slip {
  readonly of: "times" | "moment" | "stress" | "readings";
  readonly said: Message;
}

/** The stress of the load with this number; 0 if it has none. */
const stressOf = ({ loads }: TestRecord, load: number): number =>
  loads.find(({ number }) => number === load)?.stress ?? 0;

/** The stress of the load before this one, and its step from the load before that. */
function beforeLoad(record: TestRecord, number: number): { readonly before: number; readonly direction: number } {
  const before = number === 1 ? (record.numbers.seating_stress ?? 0) : stressOf(record, number - 1);
  return { before, direction: before - stressOf(record, number - 2) };
}

/**
 * Whether the stress of a load leaps, where that of the load before had risen; that of load 2, where the next one is not above
 * it. Sheets up to version 11 do not ask, and those up to version 13 do not ask of load 2.
 */
function leapOf(record: TestRecord, { number, stress = 0 }: LoadRecord): Slip[] {
  const { version = TEMPLATE_VERSION } = record;
  const { before, direction } = beforeLoad(record, number);
  const hasRisen =
    number === 2 ? version >= 14 && before > 0 && stressOf(record, 3) <= stress : number > 2 && direction > 0;
  return version >= 12 && hasRisen && stress > LEAP * before ? [{ of: "stress", said: STRESS_LEAPS }] : [];
}

/** The remarks of the load table on the stress of a load. */
function stressNotes(record: TestRecord, { record: load }: LoadReduced): Message[] {
  const { number, row, stress, readings } = load;
  const { version = TEMPLATE_VERSION } = record;
  const hasReadings = readings.some(({ reading }) => reading !== undefined);
  const isText = record.faults.some((fault) => fault.name === "load_stress" && fault.row === row);
  const next = stressOf(record, number + 1);
  if (stress === undefined && !isText) return next > 0 ? [NO_STRESS] : hasReadings ? [READINGS_WITHOUT_STRESS] : [];
  const { before, direction } = beforeLoad(record, number);
  const turns =
    stress !== undefined && next > 0 && (stress - before) * direction < 0 && (next - before) * direction > 0;
  return [
    ...(stress === undefined || stress <= 0 ? [STRESS_NOT_POSITIVE] : []),
    ...(turns ? [version < 12 ? STRESS_TURNS_ALONE : STRESS_TURNS] : []),
    ...leapOf(record, load).map(({ said }) => said),
  ];
}

/**
 * Whether a load was applied before the load above it, or at the same moment. Up to version 11, the head of the sheet does not
 * name it; up to version 13, the same moment counts as right.
 */
function momentBack({ version = TEMPLATE_VERSION, loads }: TestRecord, load: LoadRecord): Slip[] {
  const above = loads[loads.indexOf(load) - 1];
  if (load.appliedAt === undefined || above?.appliedAt === undefined) return [];
  if (load.appliedAt < above.appliedAt) return [{ of: "moment", said: version < 12 ? BEFORE_LOAD_ABOVE : MOMENT_BACK }];
  const isSame = load.appliedAt === above.appliedAt && !Number.isInteger(load.appliedAt);
  return version >= 14 && isSame ? [{ of: "moment", said: MOMENT_SAME }] : [];
}

/** The remarks of the load table on the clock of a load. Sheets up to version 5 have none. */
function clockNotes(record: TestRecord, { record: load }: LoadReduced): Message[] {
  if (!rulesOf(record).clockIsAsked) return [];
  const early = load.readings.filter(({ time }) => time !== undefined && time < 0).at(-1);
  const isBlank =
    load.started === undefined &&
    load.readings.length > 0 &&
    record.loads.some(({ appliedAt }) => appliedAt !== undefined);
  return [
    ...(early?.time === undefined ? [] : [timeBeforeLoad(early.row, early.time)]),
    ...momentBack(record, load).map(({ said }) => said),
    ...(isBlank ? [NO_MOMENT] : []),
  ];
}

/** A row of a load with a number beyond its limits: the time or the reading, and what the load table says of it. */
interface Outside {
  readonly isTime: boolean;
  readonly row: number;
  readonly said: Message;
}

/** The last time and the last reading of a load that are greater than any can be. */
export function numbersOutside({ readings }: LoadRecord): Outside[] {
  const time = readings.filter((one) => (one.time ?? 0) > MOST.time).at(-1);
  const reading = readings.filter((one) => Math.abs(one.reading ?? 0) > MOST.reading).at(-1);
  return [
    ...(time ? [{ isTime: true, row: time.row, said: timeOutside(time.row) }] : []),
    ...(reading ? [{ isTime: false, row: reading.row, said: readingOutside(reading.row) }] : []),
  ];
}

/** What the load table says of such numbers. Sheets up to version 8 say nothing. */
const outsideNotes = ({ version = TEMPLATE_VERSION }: TestRecord, { record: load }: LoadReduced): Message[] =>
  version < 9 ? [] : numbersOutside(load).map(({ said }) => said);

/** Whether the specimen swelled under the load. */
function hasSwelled(record: TestRecord, { record: load }: LoadReduced, before: LoadReduced | undefined): boolean {
  const { height_end: height } = load.results;
  const above = before ? before.record.results.height_end : record.numbers.initial_height;
  return load.words.load_branch === "loading" && height !== undefined && above !== undefined && height > above;
}

/** The number of the first load under which the specimen swelled; undefined if it swelled under none. */
export function firstSwelled(record: TestRecord): number | undefined {
  const { loads } = reduced(record);
  return loads.find((load, index) => hasEnd(load) && hasSwelled(record, load, loads[index - 1]))?.record.number;
}

/** What the load table says of the times of a load. Sheets of version 10 take times that begin within seconds for times of day too, and say nothing of half a day. */
function slipsOfTimes(
  { loads, version = TEMPLATE_VERSION }: TestRecord,
  { number, readings, appliedAt }: LoadRecord,
): Message[] {
  const times = readings.flatMap(({ time }) => (time === undefined ? [] : [time])).sort((a, b) => a - b);
  const [first = 0, second = 0] = times;
  const last = times.at(-1) ?? 0;
  const next = loads.find((one) => one.number === number + 1)?.appliedAt;
  const toNext = appliedAt === undefined || next === undefined ? 0 : 1440 * (next - appliedAt);
  const isLong = last > LONGEST_LOAD || (toNext > 0 && last > 2 * (toNext + 1440));
  const step = second - first;
  const beyond = last - toNext;
  const isOld = version < 12;
  const isWithin = isOld
    ? beyond > READ_BEYOND.least && beyond <= READ_BEYOND.mostUntil11
    : Math.abs(beyond - (READ_BEYOND.least + READ_BEYOND.most) / 2) < (READ_BEYOND.most - READ_BEYOND.least) / 2;
  const isRead = toNext > 0 && last <= LONGEST_LOAD && isWithin;
  return [
    ...(isLong && last <= MOST.time ? [timesLong(last, Math.round(last / 1440))] : []),
    ...(last !== 0 && Math.abs(toNext / last - 60) < 1 ? [timesShort(last)] : []),
    ...(first > (version < 11 ? 0 : LATE_BEGIN) && step > 0 && step < first * LEAST_STEP
      ? [timesOfDay(Math.round(first * 1e4) / 1e4)]
      : []),
    ...(version >= 11 && isRead ? [(isOld ? halfDayAlone : halfDay)(last, Math.round(toNext))] : []),
  ];
}

/** The remarks of the load table on what looks like a slip. Sheets up to version 9 have none. */
function slipsOf(record: TestRecord, load: LoadReduced, before: LoadReduced | undefined): Slip[] {
  const { version = TEMPLATE_VERSION } = record;
  if (version < 10 || !hasEnd(load)) return [];
  const { number, stress = 0, inundated, words } = load.record;
  const { loads } = record;
  const isUnmarked = words.load_branch === "wetting" && !inundated;
  const isEqual = number === 2 && isUnmarked;
  const isSeating = version >= 11 && number === 1 && isUnmarked && record.words.seating_mark === undefined;
  const above = before?.record.results.height_end;
  const { initial_height: initial } = record.numbers;
  const isHighest = loads.every((one) => one.number >= number || (one.stress ?? 0) < stress);
  const wasCompressed = above !== undefined && initial !== undefined && above < initial;
  const rose = !inundated && isHighest && wasCompressed && hasSwelled(record, load, before);
  return [
    ...slipsOfTimes(record, load.record).map((said) => ({ of: "times", said }) as const),
    ...(isEqual && !loads.some((one) => one.number === 1 && one.inundated)
      ? [{ of: "stress", said: NOT_MARKED } as const]
      : []),
    ...(isSeating ? [{ of: "stress", said: SEATING_AS_LOAD } as const] : []),
    ...(rose ? [{ of: "readings", said: SWELLED_FIRST } as const] : []),
  ];
}

/** What the constructions say of the last reading of a load. The head of a sheet up to version 9 repeats none of it. */
const slipOfLast = ({ version = TEMPLATE_VERSION }: TestRecord, load: LoadReduced): Slip[] =>
  version >= 10 && hasEnd(load) && constructionRemarks(load.increment).includes(LAST_LEFT_OUT)
    ? [{ of: "readings", said: LAST_LEFT_OUT }]
    : [];

/** The first load that has what looks like a slip, with the first slip of its remark. */
export function firstSlip(record: TestRecord): { readonly load: LoadRecord; readonly slip: Slip } | undefined {
  const { loads } = reduced(record);
  const isAsked = (record.version ?? TEMPLATE_VERSION) >= 12;
  const found = loads.map((load, index) => {
    const atOnce = isAsked ? [...leapOf(record, load.record), ...momentBack(record, load.record)] : [];
    const slips = [...atOnce, ...slipsOf(record, load, loads[index - 1]), ...slipOfLast(record, load)];
    return { load: load.record, slip: slips[0] };
  });
  for (const { load, slip } of found) if (slip) return { load, slip };
  return undefined;
}

/** The remark of the load table on a load that was taken off. Sheets up to version 6 have none. */
function unloadedNotes(record: TestRecord, load: LoadReduced, before: LoadReduced | undefined): Message[] {
  const [height, above] = [load.record.results.height_end, before?.record.results.height_end];
  const { initial_height: initial } = record.numbers;
  if (!rulesOf(record).unloadingIsAsked || load.record.words.load_branch !== "unloading") return [];
  if (height === undefined || above === undefined || initial === undefined) return [];
  if (compressedOnUnloading(above - height, initial))
    return [(record.version ?? TEMPLATE_VERSION) < 12 ? COMPRESSED_BEFORE_12 : COMPRESSED];
  return height > initial ? [ROSE] : [];
}

/** Whether the load table shows a last reading of the load. */
const hasEnd = ({ end, record: { stress = 0 } }: LoadReduced): boolean => end.ok && stress > 0;

/** Whether the call that calculates the time curve of the load shows an error. */
const hasFailed = ({ faults }: TestRecord, { record: { row } }: LoadReduced): boolean =>
  faults.some((fault) => fault.name === "log_d0" && fault.row === row && fault.kind === "error");

/** What the load table says before the remarks of the constructions. */
function notes(record: TestRecord, load: LoadReduced, before: LoadReduced | undefined): Message[] {
  const { load_branch: branch } = load.record.words;
  const { height_end: height, deformation, apparatus_deflection: deflection } = load.record.results;
  const { solids_height: solids } = record.results;
  const { initial_height: initial } = record.numbers;
  // If the solids alone fill the ring, the head of the sheet says so, and the loads do not.
  const hasNoVoids =
    height !== undefined && solids !== undefined && initial !== undefined && height <= solids && solids < initial;
  const noPoint = record.words.curve_from === "d100" && load.record.results.void_ratio_d100 === undefined;
  const isBeyond = deformation !== undefined && deflection === undefined;
  const atOnce = [...stressNotes(record, load), ...clockNotes(record, load), ...outsideNotes(record, load)];
  if (!hasEnd(load)) return atOnce;
  return [
    ...atOnce,
    ...slipsOf(record, load, before).map(({ said }) => said),
    ...(record.deflections.every(({ stress }) => stress === undefined) ? [NOT_CORRECTED] : []),
    ...(seatingDeflection(record).ok ? (isBeyond ? [STRESS_BEYOND_TABLE] : []) : [SEATING_BEYOND_TABLE]),
    ...(hasNoVoids ? [HEIGHT_TOO_LOW] : []),
    ...(load.record.wetting && branch !== "wetting" ? [NOT_WETTING] : []),
    ...(branch === "wetting" ? [WETTING] : []),
    ...(hasSwelled(record, load, before) ? [SWELLED] : []),
    ...unloadedNotes(record, load, before),
    ...(noPoint ? [NO_D100] : []),
    ...(hasFailed(record, load) ? [CURVE_REFUSED] : []),
  ];
}

/** Where functions have no remark, their cells say so. */
const orOk = (remarks: readonly Message[]): readonly Message[] => (remarks.length > 0 ? remarks : [say`ok`]);

/** The remark on a load in the load table; undefined if the record has no such load. */
export function remarkOfLoad(record: TestRecord, number: number): Remark | undefined {
  const { loads } = reduced(record);
  const index = loads.findIndex((one) => one.record.number === number);
  const load = loads[index];
  if (!load) return undefined;
  const { cleaned } = load.increment;
  const ofCurve = cleaned.ok
    ? orOk(constructionRemarks(load.increment))
    : [say`the time curve is refused: ${cleaned.reason}`];
  return {
    ofSheet: notes(record, load, loads[index - 1]),
    ofFunctions: hasEnd(load) && !hasFailed(record, load) ? ofCurve : [],
  };
}

/** The remarks of a function, or the reason of a refusal, which the cell shows in their place. */
const ofFunction = (outcome: Outcome<unknown>): Remark => ({
  ofSheet: [],
  ofFunctions: outcome.ok ? orOk(outcome.remarks) : [outcome.reason],
});

/** While the test is running, a method that does not apply yet says nothing. */
function ofStress(values: NamedValues, record: TestRecord): Remark {
  const { constructedStress: found } = reduced(record);
  const isRunning = englishWord(String(values.test_state?.[0]?.[0] ?? "")) === "running";
  const isQuiet = isRunning && !found.ok && found.fault === "method";
  return { ofSheet: adoptedNotes(values), ofFunctions: isQuiet ? [] : ofFunction(found).ofFunctions };
}

/** The remark of a cell with a single answer of a function. */
export const answered = (message: Message | undefined): Remark | undefined =>
  message && { ofSheet: [], ofFunctions: [message] };

/** The sentences on adopted values: numbers in the units of the sheet, as a formula shows them. */
function adoptedNotes(values: NamedValues): Message[] {
  const cell = (name: string, row: number): CellValue => asColumn(values[name] ?? [])[row]?.[0] ?? "";
  const shown = (value: CellValue, significant = SHOWN_DIGITS): Value =>
    typeof value === "number" ? digits(value, significant) : verbatim(String(value));
  const orNone = (value: CellValue, none: Message): Value =>
    value === "" || isError(value) ? none : shown(value, GIVEN_DIGITS);
  const called = ({ name, label }: (typeof ALL_ADOPTABLE)[number]): Value => ({ verbatim: label, cell: name, label });
  const isNumber = (name: string) => (_: unknown, row: number) => typeof cell(name, row) === "number";
  const by = (table: string, row: number) => orNone(cell(`${table}_by`, row), NO_INITIALS);
  const reason = (table: string, row: number) => orNone(cell(`${table}_reason`, row), NO_REASON);
  const whole = ADOPTABLE.map((one, row) =>
    adoptedSaid(
      called(one),
      shown(cell("adopted_value", row)),
      by("adopted", row),
      reason("adopted", row),
      orNone(cell("adopted_constructed", row), NO_VALUE),
    ),
  );
  const ofCv = CV_RANGES.map((one, row) =>
    adoptedCvSaid(
      called(one),
      shown(cell("adopted_cv", row)),
      shown(cell("adopted_cv_low", row)),
      shown(cell("adopted_cv_high", row)),
      by("adopted_cv", row),
      reason("adopted_cv", row),
    ),
  );
  return [...whole.filter(isNumber("adopted_value")), ...ofCv.filter(isNumber("adopted_cv"))];
}

function fieldRemark(record: TestRecord): Remark {
  const { curve, specimen, preconsolidation } = reduced(record);
  return ofFunction(
    then(curve, (test) =>
      then(inputs(record, "in_situ_stress"), ({ in_situ_stress: inSitu }) =>
        then(specimen, ({ e0 }) =>
          fieldCurve({
            test,
            inSituStress: inSheetStress(record, inSitu),
            initialVoidRatio: e0,
            preconsolidationStress: preconsolidation.ok ? preconsolidation.value.stress : undefined,
            factor: record.numbers.field_factor,
            picks: picksOfCurve(record.picks),
            recompressionIndex: record.adopted?.recompression_index?.value,
          }),
        ),
      ),
    ),
  );
}

/** A data sheet that was read: its values by name, and the record made from them. */
export interface ReadTest {
  readonly values: NamedValues;
  readonly record: TestRecord;
}

/**
 * The remark of a cell on the page of remarks; undefined for a cell that a person types, and if the record gives no
 * remark.
 */
export function remarkOfTest({ values, record }: ReadTest, name: RemarkName | "test_remarks"): Remark | undefined {
  const { specimen, spread, quality } = reduced(record);
  if (name === "specimen_remark") return ofFunction(specimen);
  if (name === "preconsolidation_remark") return ofStress(values, record);
  if (name === "preconsolidation_verdict") return answered(spread.ok ? spread.value.verdict : undefined);
  if (name === "quality_remark") return ofFunction(quality);
  if (name === "quality_class")
    return answered(quality.ok && quality.value.lunneClass ? LUNNE_NAMES[quality.value.lunneClass] : undefined);
  return name === "field_remark" ? fieldRemark(record) : undefined;
}

/** The message of a remark. */
export const messageOf = ({ ofSheet, ofFunctions }: Remark): Message => joined([...ofSheet, ...ofFunctions]);

/** A remark as a person reads it: beside a remark of the sheet, that the functions have none is not said. */
const readAs = ({ ofSheet, ofFunctions }: Remark): Remark =>
  ofSheet.length === 0
    ? { ofSheet, ofFunctions }
    : { ofSheet, ofFunctions: ofFunctions.filter((one) => english(one) !== "ok") };

/**
 * A text without its numbers, which a formula shows with the decimal sign of the computer, and without the "ok" that older
 * sheets have behind other remarks: up to version 9 on loads, up to version 10 on the curve.
 */
const wordsAlone = (text: string): string =>
  text.replace(/-?\d+(?:[.,]\d+)*(?:e[+-]?\d+)?/gi, "#").replace(/(?:(?<=.); ok)?[;\s]*$/, "");

/**
 * What a cell of remarks says, as a message: that of the remark if the cell shows it in the words of its sheet, otherwise
 * the text of the cell, which a person typed or an older formula shows.
 */
export function saidInCell(
  { sheetLanguage }: Pick<TestRecord, "sheetLanguage">,
  text: string,
  remark: Remark | undefined,
): Message {
  if (!remark) return asTyped(text);
  const words = wordsOf(languageNamed(sheetLanguage));
  const ofSheet = remark.ofSheet.map((part) => shownOnSheet(words, part));
  const isShown = [words.language, "en"].some((language) => {
    const onSheet = [...ofSheet, ...remark.ofFunctions.map((part) => told(part, language))];
    return wordsAlone(onSheet.join("; ")) === wordsAlone(text);
  });
  return isShown ? messageOf(readAs(remark)) : asTyped(text);
}
