/** A load without a point of the curve, and a curve that cannot be used. */
import * as sentences from "../../specification/sentences/of-head";
import { readingsName } from "../../specification/readings";
import type { TestRecord } from "../record";
import { reduced } from "../reduced-test";
import { firstSwelled } from "../sheet-remarks";
import { type HeadSentence, isNumber, Cells, lastRow, tellsUnusual } from "./cells";

/** The last load that was read and gives no point of the curve. */
export function ofCurve(cells: Cells): HeadSentence[] {
  const sizes = cells.numbers({
    ...{ solids: "solids_height", initial: "initial_height" },
    ...{ factor: "dial_factor", zero: "zero_reading" },
  });
  if (!sizes || sizes.initial <= sizes.solids || sizes.factor <= 0) return [];
  const points = cells.column("void_ratio_curve");
  const row = lastRow(cells.column("end_reading"), (value, index) => isNumber(value) && !isNumber(points[index]));
  const load = row === undefined ? undefined : cells.column("load_number")[row - 1];
  if (row === undefined || !isNumber(load)) return [];
  if (isNumber(cells.column("corrected_deformation")[row - 1])) {
    const [height, zero] = [cells.at("initial_height"), cells.at("zero_reading")];
    const reason = sentences.notAboveSolids(height, zero, cells.at("dial_factor"), cells.at("dial_sense"));
    return [cells.contradiction(sentences.noPoint(load, reason), "initial_height")];
  }
  const [table, stress] = [cells.at("apparatus_stress"), cells.at("load_stress", row)];
  const reason = sentences.beyondTable(table, stress, cells.at("seating_stress"));
  return [cells.contradiction(sentences.noPoint(load, reason), "apparatus_stress")];
}

/** A curve that cannot be used, because its greatest void ratio is that under the greatest stress. */
export function ofHighest(cells: Cells, record: TestRecord): HeadSentence[] {
  if (!tellsUnusual(cells)) return [];
  const [points, stresses] = [cells.column("void_ratio_curve"), cells.column("load_stress")];
  const numbers = points.filter(isNumber);
  const load = firstSwelled(record);
  const ofGreatest = points[stresses.indexOf(Math.max(...stresses.filter(isNumber)))];
  if (numbers.length < 3 || load === undefined) return [];
  const { constructedStress: found } = reduced(record);
  if (ofGreatest !== Math.max(...numbers) || found.ok || found.fault !== "input") return [];
  const sentence = sentences.highestUnderGreatest(load, cells.at("dial_sense"));
  return [cells.contradiction(sentence, readingsName(load))];
}
