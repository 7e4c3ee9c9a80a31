/**
 * What the head of a data sheet says of its inputs, as messages made from the values of its cells: the screens repeat it in their
 * own language, whatever the language of the sheet. The rules are those of the formulas in `specification/head/impossible` and
 * `specification/head/missing`, and a test compares both. Numbers are in the units of the sheet.
 */
import type { Message } from "../reduction/message";
import * as sentences from "../specification/sentences/of-head";
import { HEAVIER, MISSING_IN_FULL, WET_MASSES } from "../specification/head/missing";
import type { TestRecord } from "./record";
import { reduced } from "./reduced-test";
import { type HeadSentence, type ReadSheet, isNumber, Cells, isSame, tellsUnusual } from "./head/cells";
import { impossibleEntries } from "./head/inputs";
import { ofHeavier, ofSolids, ofWetMass } from "./head/masses";
import { ofCurve, ofHighest } from "./head/curve";
import { ofSlip, ofJump, ofReadings } from "./head/loads";
import { missing } from "./head/missing";
import { otherEntries } from "./head/entries";
import { noTest, fewTests, notWide, oddDensity } from "./head/sizes";
import { farFromZero, steepCurve } from "./head/odd-results";

export type { HeadSentence } from "./head/cells";

/** Sheets that are older than the line at the head say nothing. */
const hasHead = ({ values }: ReadSheet): boolean => MISSING_IN_FULL.name in values;

/** What few tests have, and what looks like a slip; it counts. */
const unusual = (cells: Cells, record: TestRecord, { sizes, curve, refusal }: Impossible): HeadSentence[] =>
  tellsUnusual(cells)
    ? [
        ...fewTests(cells),
        ...(sizes.length > 0 ? [] : [...notWide(cells), ...oddDensity(cells), ...farFromZero(cells, record)]),
        ...steepCurve(cells, record),
        ...(curve.length > 0 ? [] : ofSlip(cells, record, refusal)),
      ]
    : [];

/** What is impossible on a sheet, by what follows from it. */
interface Impossible {
  /** The sizes and stresses that no test has. */
  readonly sizes: readonly HeadSentence[];
  /** The entries that cannot be, each by itself. */
  readonly entries: readonly HeadSentence[];
  /** The load that was read and gives no point of the curve. */
  readonly curve: readonly HeadSentence[];
  /** Why the curve gives no preconsolidation stress, if a value of it cannot be used. */
  readonly refusal?: Message;
}

/** A curve is refused only if it has the points of all loads, and every entry can be. */
function impossibleOn(cells: Cells, record: TestRecord): Impossible {
  const sizes = noTest(cells);
  const entries = impossibleEntries(cells, sizes);
  const curve = [...ofCurve(cells), ...ofHighest(cells, record)];
  const hasCurve = cells.column("void_ratio_curve").some(isNumber) && curve.length === 0;
  if (isNumber(cells.cell("preconsolidation_stress")) || !hasCurve || entries.length > 0)
    return { sizes, entries, curve };
  const { preconsolidation: found } = reduced(record);
  return { sizes, entries, curve, ...(!found.ok && found.fault === "input" && { refusal: found.reason }) };
}

function impossibleSentences(cells: Cells, { entries, curve, refusal }: Impossible): HeadSentence[] {
  return [
    ...entries,
    ...HEAVIER.flatMap((pair) => ofHeavier(cells, pair)),
    ...ofSolids(cells),
    ...WET_MASSES.flatMap((one) => ofWetMass(cells, one)),
    ...curve,
    ...(refusal
      ? [cells.contradiction(sentences.wrongCurve(cells.at("load_stress"), refusal), "load_stress", refusal.row)]
      : []),
  ];
}

const isNotFarEnough = (cells: Cells, { entries, refusal }: Impossible): boolean =>
  isSame(cells.cell("test_state") ?? "", "running") &&
  cells.cell("preconsolidation_stress") === "" &&
  cells.column("void_ratio_curve").some(isNumber) &&
  entries.length === 0 &&
  refusal === undefined;

/** The impossible inputs, each with its cell and the remedy. */
export function impossibleInputs(sheet: ReadSheet): HeadSentence[] {
  if (!hasHead(sheet)) return [];
  const cells = new Cells(sheet);
  return impossibleSentences(cells, impossibleOn(cells, sheet.record));
}

/**
 * What the head of a sheet says, in this order: impossible inputs, entries from which no result follows and that cannot be,
 * unusual numbers, readings that cannot be, a load whose readings jump, what is missing, and whether further loads are needed.
 */
export function headOf(sheet: ReadSheet): HeadSentence[] {
  if (!hasHead(sheet)) return [];
  const cells = new Cells(sheet);
  const impossible = impossibleOn(cells, sheet.record);
  const running = isNotFarEnough(cells, impossible)
    ? [{ kind: "running", sentence: sentences.NOT_FAR_ENOUGH } as const]
    : [];
  return [
    ...impossibleSentences(cells, impossible),
    ...otherEntries(cells),
    ...unusual(cells, sheet.record, impossible),
    ...ofReadings(cells, sheet.record),
    ...ofJump(cells, sheet.record),
    ...missing(cells, sheet.record),
    ...running,
  ];
}
