/**
 * One load under review, reduced with the saved picks and with the unsaved picks. It is calculated again only if
 * something changed.
 */
import { useMemo, useState } from "react";
import { dialSense, incrementOfLoad, loadCurve, outcomeOf } from "../../../record/load-curve";
import type { LoadRecord, TestRecord } from "../../../record/record";
import { lengthOfReadings } from "../../../record/reading-unit";
import {
  PICK_NAMES,
  TIME_METHODS,
  type Picks,
  type TimeMethod,
} from "../../../reduction/increment/constructions/picks";
import type { Procedure } from "../../../reduction/increment/constructions/procedure";
import type { Increment } from "../../../reduction/increment/reduce";
import { procedureOfLoad } from "../../../record/picks";
import { text } from "../../text";
import { handlesOf } from "./handles";
import { cvBy, cvUnitsOf, methodOfTest, plotOf, valueNow } from "./increment";
import { changesOf, methodWith, picksWith, savedOf, type Draft, type PicksTable } from "./picks/pick-changes";

/** One load, reduced by both procedures. */
export type Both = Readonly<Record<Procedure, Increment>>;

export interface Tried {
  readonly record: TestRecord;
  readonly load: LoadRecord;
  readonly table: PicksTable;
  readonly draft: Draft;
  /** The plot that the person chose; if undefined, the plot of the construction whose cv counts. */
  readonly plotChosen: TimeMethod | undefined;
}

export function useLoad({ record, load, table, draft, plotChosen }: Tried) {
  const saved = useMemo(() => savedOf(table.rows, load.number), [table, load]);
  const ofTest = methodOfTest(record);
  const sense = dialSense(record);
  const plot = plotChosen ?? methodWith(saved, {}, ofTest);

  const curve = useMemo(() => loadCurve(load), [load]);
  /** The procedure whose numbers the sheet reports. */
  const counted = procedureOfLoad(record, load.number);
  const [procedureChosen, setProcedure] = useState<Procedure>();
  const procedure = procedureChosen ?? counted;
  const reduce = useMemo(
    () => (picks: Picks, procedure: Procedure) => incrementOfLoad(record, load, { picks, procedure }),
    [record, load],
  );
  const automatic = useMemo(() => reduce({}, procedure), [reduce, procedure]);
  const before = useMemo(() => reduce(saved.picks, counted), [reduce, saved, counted]);
  const picks = useMemo(() => picksWith(saved, draft), [saved, draft]);
  const both = useMemo((): Both => ({ aided: reduce(picks, "aided"), drawn: reduce(picks, "drawn") }), [reduce, picks]);
  const increment = both[procedure];
  const length = lengthOfReadings(record);
  const drawn = useMemo(
    () => plotOf(curve, increment, plot, { readingLabel: text.review.readingLabel(length), sense }),
    [curve, increment, plot, sense, length],
  );
  const set = useMemo(() => handlesOf(increment, automatic, picks, plot), [increment, automatic, picks, plot]);
  /** Picks that are not automatic, saved or not. */
  const byHand = useMemo(() => new Set(PICK_NAMES.filter((name) => picks[name] !== undefined)), [picks]);

  const units = cvUnitsOf(record, load);
  return {
    saved,
    ofTest,
    plot,
    counted,
    procedure,
    setProcedure,
    before,
    both,
    drawn,
    set,
    byHand,
    units,
    readingUnit: length ?? text.review.readingUnit,
    /**
     * cv by the construction on the plot, as the sheet would report it: with the unsaved picks, and with the saved
     * picks.
     */
    cvNow: cvBy(both[counted], plot, units),
    cvBefore: cvBy(before, plot, units),
    /** The construction whose cv counts once the draft is saved. */
    method: methodWith(saved, draft, ofTest),
    outcome: outcomeOf(increment, plot),
    changes: changesOf(draft, valueNow(before, methodWith(saved, {}, ofTest))),
    /** True if a pick contradicts the readings. */
    isUnusable: TIME_METHODS.map((one) => outcomeOf(both[counted], one)).some(
      (one) => !one.ok && one.fault === "input",
    ),
  };
}
