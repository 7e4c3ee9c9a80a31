/** The remarks of a data sheet as messages, from its record: the cells of remarks show them in English. */
import { fieldCurve } from "../reduction/curve/field-curve";
import { LUNNE_NAMES } from "../reduction/curve/sample-quality";
import { MOST_ON_UNLOADING } from "../reduction/curve/loads";
import { joined, say, type Message } from "../reduction/message";
import { constructionRemarks } from "../reduction/increment/reduce";
import { then, type Outcome } from "../reduction/outcome";
import { picksOfCurve } from "./picks";
import { languageNamed, type SheetLanguage } from "../specification/text/language";
import { labelIn, remarkInEnglish, wordsOf, type SheetWords } from "../specification/text/words";
import { ADOPTABLE, CV_RANGES } from "../specification/results/adoptable";
import { nth } from "../reduction/numeric/lists";
import { literally } from "./head-of-sheet";
import { rulesOf } from "../specification/versions";
import type { RemarkName, TestRecord } from "./record";
import { inputs, inSheetStress, reduced, seatingDeflection, type LoadReduced } from "./reduced-test";

/** The remarks of the load table on the clock of a load. Sheets up to version 5 have none. */
function clockNotes({ version, loads }: TestRecord, { record: load }: LoadReduced): Message[] {
  if (!rulesOf({ version }).clockIsAsked) return [];
  const early = load.readings.filter(({ time }) => time !== undefined && time < 0).at(-1);
  const above = loads[loads.indexOf(load) - 1];
  const isBack = load.appliedAt !== undefined && above?.appliedAt !== undefined && load.appliedAt < above.appliedAt;
  const isBlank =
    load.started === undefined && load.readings.length > 0 && loads.some(({ appliedAt }) => appliedAt !== undefined);
  return [
    ...(early ? [say`the time in row ${early.row} is before the load: correct or clear it`] : []),
    ...(isBack ? [say`applied before the load above it: correct one of the two moments`] : []),
    ...(isBlank ? [say`the moment of loading is blank, and other loads have one: enter it`] : []),
  ];
}

/** The remark of the load table on a load that was taken off. Sheets up to version 6 have none. */
function unloadedNotes(record: TestRecord, load: LoadReduced, before: LoadReduced | undefined): Message[] {
  const [height, above] = [load.record.results.height_end, before?.record.results.height_end];
  const { initial_height: initial } = record.numbers;
  if (!rulesOf(record).unloadingIsAsked || load.record.words.load_branch !== "unloading") return [];
  if (height === undefined || above === undefined || initial === undefined) return [];
  if (above - height > MOST_ON_UNLOADING * initial)
    return [say`the specimen compressed while load was taken off: check the stress and the readings`];
  return height > initial
    ? [say`the specimen rose above its initial height: check the readings, unless the soil swells`]
    : [];
}

/** Remarks that the load table puts before the remarks of the constructions. */
function notes(record: TestRecord, load: LoadReduced, before: LoadReduced | undefined): Message[] {
  const { load_branch: branch } = load.record.words;
  const swelled =
    branch === "loading" &&
    load.record.results.height_end !== undefined &&
    before?.record.results.height_end !== undefined &&
    load.record.results.height_end > before.record.results.height_end;
  const { height_end: height, deformation, apparatus_deflection: deflection } = load.record.results;
  const { solids_height: solids } = record.results;
  const { initial_height: initial } = record.numbers;
  // If the solids alone fill the ring, the head of the sheet says so, and the loads do not.
  const hasNoVoids =
    height !== undefined && solids !== undefined && initial !== undefined && height <= solids && solids < initial;
  const noPoint = record.words.curve_from === "d100" && load.record.results.void_ratio_d100 === undefined;
  return [
    ...clockNotes(record, load),
    ...(record.deflections.every(({ stress }) => stress === undefined) ? [say`not corrected for the apparatus`] : []),
    ...(seatingDeflection(record).ok
      ? deformation !== undefined && deflection === undefined
        ? [say`the deflection table does not reach this stress: correct the stress or extend the table`]
        : []
      : [say`the deflection table does not reach the seating stress: enter a row for it`]),
    ...(hasNoVoids ? [say`the height at the end is not above the height of solids: correct the readings`] : []),
    ...(load.record.wetting && branch !== "wetting"
      ? [say`marked as wetting, but the stress is not that of the load before: enter the stress that was kept`]
      : []),
    ...(branch === "wetting" ? [say`wetting: no cv, mv, k or C alpha`] : []),
    ...(swelled ? [say`the specimen swelled under the load: no cv, mv, k or C alpha`] : []),
    ...unloadedNotes(record, load, before),
    ...(noPoint ? [say`no d100: the curve shows the end of the load`] : []),
  ];
}

/** The remark on a load as in the load table; undefined if the record has no such load. */
export function remarkOfLoad(record: TestRecord, number: number): Message | undefined {
  const { loads } = reduced(record);
  const index = loads.findIndex((one) => one.record.number === number);
  const load = loads[index];
  if (!load) return undefined;
  const { cleaned } = load.increment;
  const ofCurve = cleaned.ok
    ? constructionRemarks(load.increment)
    : [say`the time curve is refused: ${cleaned.reason}`];
  return joined([...notes(record, load, loads[index - 1]), ...(ofCurve.length ? ofCurve : [say`ok`])]);
}

/** The remarks, or the reason of a refusal, which the cell shows in their place. */
const remarksOf = (outcome: Outcome<unknown>): Message => (outcome.ok ? joined(outcome.remarks) : outcome.reason);

/**
 * The remark of a cell on the page of remarks; undefined for a cell that a person types, and if the record gives no
 * remark.
 */
export function remarkOfTest(record: TestRecord, name: RemarkName | "test_remarks"): Message | undefined {
  const { curve, specimen, preconsolidation, spread, quality } = reduced(record);
  if (name === "specimen_remark") return remarksOf(specimen);
  if (name === "preconsolidation_remark") return remarksOf(preconsolidation);
  if (name === "preconsolidation_verdict") return spread.ok ? spread.value.verdict : undefined;
  if (name === "quality_remark") return remarksOf(quality);
  if (name === "quality_class")
    return quality.ok && quality.value.lunneClass ? LUNNE_NAMES[quality.value.lunneClass] : undefined;
  if (name !== "field_remark") return undefined;
  return remarksOf(
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

/** The sentences on adopted values (`results/adopted`, `results/adopted-cv`): the label, and what follows each value. */
const ADOPTED_SENTENCES = [
  ...ADOPTABLE.map(({ label }) => ({ label, after: [" by ", ", ", " (the constructions gave ", "); "] })),
  ...CV_RANGES.map(({ label }) => ({ label, after: [" from ", " to ", " by ", ", ", "; "] })),
];
const NOT_SAID = ["no initials", "no reason", "no value"];

const ADOPTED = "{0} adopted: ";

/** The sentences on adopted values in another language than that of the sheet. */
function adoptedSentences(from: SheetWords, to: SheetWords, remark: string): string {
  const wordIn = ({ formulas }: SheetWords, text: string): string => formulas[text] ?? text.replace("{0}", "");
  const started = (words: SheetWords, label: string): string => labelIn(words, label).trim() + wordIn(words, ADOPTED);
  const valueIn = (value: string): string => {
    const found = NOT_SAID.find((one) => wordIn(from, one) === value);
    return found === undefined ? value : wordIn(to, found);
  };
  return ADOPTED_SENTENCES.reduce((left, { label, after }) => {
    const values = after.map((text) => `(.*?)${literally(wordIn(from, text))}`);
    return left.replace(new RegExp(literally(started(from, label)) + values.join("")), (_, ...found: string[]) =>
      [started(to, label), ...after.map((text, index) => valueIn(nth(found, index)) + wordIn(to, text))].join(""),
    );
  }, remark);
}

/**
 * The text of a remark of the sheet, with the sheet's own words in English; in another language than that of the sheet
 * only the sentences on adopted values are reworded.
 */
export function remarkWorded(
  { sheetLanguage }: Pick<TestRecord, "sheetLanguage">,
  text: string,
  language: SheetLanguage = "en",
): string {
  const [from, to] = [wordsOf(languageNamed(sheetLanguage)), wordsOf(language)];
  if (from === to) return text;
  const worded = adoptedSentences(from, to, text);
  return to.language === "en" ? remarkInEnglish(from, worded) : worded;
}

/** The text of a remark of the sheet in English, whatever the language of the sheet. */
export const englishRemark = (record: Pick<TestRecord, "sheetLanguage">, text: string): string =>
  remarkWorded(record, text);
