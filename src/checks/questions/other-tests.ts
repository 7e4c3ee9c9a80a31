/** The question that compares a test with the other data sheets of the workbook. Only the pane has these; the worksheet function sees one sheet. */
import { cellNamed, type TestRecord } from "../../record/record";
import { listed, say, verbatim } from "../../reduction/message";
import { cannotAsk, gravest, within, type Answer } from "../check";

/** Another data sheet of the workbook, as far as a question compares tests. */
export interface OtherTest {
  readonly sheet: string;
  readonly record: Pick<TestRecord, "numbers" | "words">;
}

/**
 * The masses that are weighed anew for each specimen. Ring, height, zero of the dial and specific gravity are not
 * compared: specimens may share the ring and an assumed specific gravity (common practice, no source).
 */
export const OWN_MASSES = ["ring_and_wet_before", "ring_and_wet_after", "ring_and_dry"] as const;

/** What tells one specimen from another. The day parts two specimens of one sample that have no name of their own. */
const SPECIMEN = ["boring", "sample", "specimen", "date_started"] as const;

/** The names that are read of another data sheet. */
export const COMPARED_NAMES: readonly string[] = [...OWN_MASSES, ...SPECIMEN];

/** Whether two data sheets are of one specimen: their masses are the same. */
function areOfOneSpecimen({ words }: OtherTest["record"], other: OtherTest["record"]): boolean {
  const called = (of: OtherTest["record"]["words"]) =>
    SPECIMEN.map((name) => of[name]?.trim().toLowerCase()).join("\n");
  return (words.boring ?? words.sample) !== undefined && called(words) === called(other.words);
}

/** Counts the masses that another data sheet has as well. */
function equalMasses(record: TestRecord, other: OtherTest, most: number): Answer {
  const theirs = other.record.numbers;
  const both = OWN_MASSES.filter((name) => record.numbers[name] !== undefined && theirs[name] !== undefined);
  if (both.length === 0) return cannotAsk(say`it needs ${listed(OWN_MASSES.map(cellNamed))} in both tests`);
  const same = both.filter((name) => record.numbers[name] === theirs[name]);
  return within(
    record,
    say`number of equal masses`,
    same.length,
    "number",
    { explain_above: most },
    say`correct them on the sheet where they were left from the other test: ${listed(same.map(cellNamed))}`,
  );
}

/** Answers Q16 from the data sheets of other specimens; undefined if there are none. */
export function comparedMasses(record: TestRecord, others: readonly OtherTest[], most: number): Answer | undefined {
  const cases = others
    .filter((other) => !areOfOneSpecimen(record, other.record))
    .map((other) => ({ load: say`sheet “${verbatim(other.sheet)}”`, answer: equalMasses(record, other, most) }));
  return cases.length > 0 ? gravest(cases) : undefined;
}
