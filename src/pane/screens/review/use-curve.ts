/**
 * The compression curve under review, read with the saved picks and with the unsaved picks. It is calculated again only
 * if something changed.
 */
import { useMemo } from "react";
import { pickedCurvePlot } from "../../../plots/picked-curve";
import type { TestRecord } from "../../../record/record";
import { reduced, yieldMethodOf } from "../../../record/reduced-test";
import { inSheetStress } from "../../../record/reduced/inputs";
import { CURVE_PICK_NAMES, OF_CURVE } from "../../../reduction/curve/picks";
import { preconsolidation } from "../../../reduction/curve/preconsolidation";
import type { MethodName } from "../../../reduction/curve/method-words";
import type { TestCurve } from "../../../reduction/curve/shape/points";
import { standingPicks } from "../../../reduction/curve/standing-picks";
import { inWords } from "../../text/messages";
import { changesOf, picksWith, savedOf, type Draft, type NumberPick, type PicksTable } from "./picks/pick-changes";
import { curveValues, handlesOfCurve } from "./picked-curve";

export interface TriedCurve {
  readonly record: TestRecord;
  readonly test: TestCurve;
  readonly table: PicksTable;
  readonly draft: Draft;
  /** The method whose plane the person chose; if undefined, the method whose stress the sheet reports. */
  readonly methodChosen: MethodName | undefined;
}

export function useCurve({ record, test, table, draft, methodChosen }: TriedCurve) {
  const saved = useMemo(() => savedOf(table.rows, OF_CURVE), [table]);
  const counted = yieldMethodOf(record);
  const method = methodChosen ?? counted;
  const picks = useMemo(() => picksWith(saved, draft), [saved, draft]);
  const { spread } = reduced(record);
  const before = useMemo(() => curveValues(test, saved.picks, counted), [test, saved, counted]);
  const now = useMemo(() => curveValues(test, picks, counted), [test, picks, counted]);
  const reading = useMemo(
    () => (method === counted ? now.stress : preconsolidation(test, { method, picks })),
    [test, method, counted, picks, now],
  );
  const standing = useMemo(() => standingPicks(test, picks), [test, picks]);
  const stoodBefore = useMemo(() => standingPicks(test, saved.picks), [test, saved]);
  const { in_situ_stress: inSitu } = record.numbers;
  const inSituStress = inSitu === undefined ? undefined : inSheetStress(record, inSitu);
  const drawn = useMemo(() => {
    const marks =
      inSituStress === undefined ? [] : [{ label: "in-situ stress" as const, letters: "σ′v0", stress: inSituStress }];
    const stressUnit = record.words.stress_unit;
    return pickedCurvePlot(test, { method, picks, reading, spread, stressUnit, marks, inWords });
  }, [record, test, method, picks, reading, spread, inSituStress]);
  const valueBefore = (of: string): number | undefined => {
    const name = CURVE_PICK_NAMES.find((one) => one === of);
    const stress = name && stoodBefore[name];
    return stress === undefined ? undefined : Number(stress.toPrecision(6));
  };
  const byHand: ReadonlySet<NumberPick> = new Set(CURVE_PICK_NAMES.filter((name) => picks[name] !== undefined));
  return {
    saved,
    counted,
    method,
    spread,
    before,
    now,
    reading,
    drawn,
    inSituStress,
    byHand,
    set: useMemo(() => handlesOfCurve(test, standing, method), [test, standing, method]),
    changes: changesOf(draft, valueBefore),
    /** True if a pick contradicts the curve. */
    isUnusable: Object.values(now).some((outcome) => !outcome.ok && outcome.fault === "input"),
  };
}
