/** The compression curve of a record, and the quality of its sample. */
import { sampleQuality, type SampleQuality } from "../../reduction/curve/sample-quality";
import { testCurve, type TestCurve } from "../../reduction/curve/shape/points";
import { overconsolidationRatio } from "../../reduction/curve/stress-history";
import type { Preconsolidation } from "../../reduction/curve/preconsolidation";
import { say } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import { badInput, then, type Outcome } from "../../reduction/outcome";
import type { Specimen } from "../../reduction/specimen";
import { rulesOf } from "../../specification/versions";
import { loadColumn } from "../load-curve";
import { nameOf, type TestRecord } from "../record";
import { inputs, inSheetStress } from "./inputs";
import type { LoadReduced } from "./load";

/** The value before the first load, if the methods of preconsolidation on the sheet get it. */
export const initialOf = (record: TestRecord, kind: TestCurve["kind"]): number | undefined =>
  kind === "e" && rulesOf(record).startsAtInitialVoidRatio ? record.results.void_ratio_initial : undefined;

/** Void ratio against stress; strain against stress if there is no void ratio. */
export function curveOf(record: TestRecord, loads: readonly LoadReduced[]): Outcome<TestCurve> {
  if (!loads.some(({ record: { stress } }) => stress !== undefined))
    return badInput(say`it needs the loads (${nameOf("load_stress")})`);
  const kind = loads.some(({ curvePoint }) => curvePoint.ok) ? "e" : "strain";
  const values = loads.map(({ curvePoint, strain: eps }) => (kind === "e" ? curvePoint : eps));
  const lacking = values.find((value) => !value.ok);
  if (lacking && !lacking.ok && values.every((value) => !value.ok)) return lacking;
  const rows = loads.map((load) => load.record);
  return testCurve(
    loadColumn(rows, (i) => {
      const { stress } = nth(rows, i);
      return stress === undefined ? null : inSheetStress(record, stress);
    }),
    loadColumn(rows, (i) => {
      const value = nth(values, i);
      return value.ok ? value.value : null;
    }),
    kind,
    initialOf(record, kind),
  );
}

export const qualityOf = (
  record: TestRecord,
  test: TestCurve,
  yieldStress: Outcome<Preconsolidation>,
  specimen: Outcome<Specimen>,
): Outcome<SampleQuality> =>
  then(inputs(record, "in_situ_stress"), ({ in_situ_stress }) => {
    const inSitu = inSheetStress(record, in_situ_stress);
    const ocr = then(yieldStress, ({ stress }) => overconsolidationRatio(stress, inSitu));
    return sampleQuality(test, inSitu, specimen.ok ? specimen.value.e0 : undefined, ocr.ok ? ocr.value : undefined);
  });
