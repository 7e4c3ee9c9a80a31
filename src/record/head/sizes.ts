/** Sizes, stresses and densities that no oedometer test has, or few. */
import type { Message, Value } from "../../reduction/message";
import { density } from "../../reduction/specimen";
import * as sentences from "../../specification/sentences/of-head";
import { BULK, MM_IN, SIZE_LIMITS, type SizeLimits } from "../../specification/head/sizes";
import { convert, unitNamed, UNITS } from "../../reduction/units";
import { type HeadSentence, isNumber, Cells, lastRow, listing } from "./cells";

/** mm in the unit of length of the sheet, or kPa in its unit of stress; 1 where the cell has no such unit. */
function unitOfLimits(cells: Cells, quantity: SizeLimits["quantity"]): number {
  if (quantity === "length") return MM_IN[String(cells.cell("length_unit")).toLowerCase()] ?? 1;
  const unit = unitNamed(String(cells.cell("stress_unit")), Object.keys(UNITS.stress));
  return unit === undefined ? 1 : convert(1, "stress", unit, "kPa");
}

/** A sentence that lists the sizes and stresses for which this holds. */
function sizesWhere(
  cells: Cells,
  kind: "impossible" | "unusual",
  sentence: (cells: Value) => Message,
  isWrong: (value: number, limits: SizeLimits, unit: number) => boolean,
): HeadSentence[] {
  const named = SIZE_LIMITS.flatMap((limits) => {
    const unit = unitOfLimits(cells, limits.quantity);
    const row = lastRow(cells.column(limits.name), (value) => isNumber(value) && isWrong(value, limits, unit));
    return row === undefined ? [] : [cells.named(limits.name, row)];
  });
  return listing(kind, sentence, named);
}

/** Sizes and stresses that no oedometer test has. */
export const noTest = (cells: Cells): HeadSentence[] =>
  sizesWhere(cells, "impossible", sentences.noTest, (value, { most = Infinity }, unit) => value > most / unit);

/** Sizes and stresses that few oedometer tests have. */
export const fewTests = (cells: Cells): HeadSentence[] =>
  sizesWhere(cells, "unusual", sentences.fewTests, (value, { most = Infinity, usual = {} }, unit) => {
    const isHigh = value > (usual.most ?? Infinity) / unit && !(value > most / unit);
    return isHigh || (value > 0 && value < (usual.least ?? 0) / unit);
  });

/** A specimen that is not wider than high. */
export function notWide(cells: Cells): HeadSentence[] {
  const sizes = cells.numbers({ diameter: "diameter", height: "initial_height" });
  if (!sizes || sizes.height < sizes.diameter) return [];
  const sentence = sentences.maybeSwapped(cells.at("initial_height"), cells.at("diameter"));
  return [cells.oneOf("unusual", sentence, ["initial_height", "diameter"])];
}

/** A bulk density that no soil has. Where the solids alone would fill the ring, `ofSolids` says that. */
export function oddDensity(cells: Cells): HeadSentence[] {
  const found = cells.numbers({
    diameter: "diameter",
    height: "initial_height",
    wet: "ring_and_wet_before",
    ring: "ring_mass",
    solids: "solids_height",
  });
  if (!found) return [];
  const { diameter, height, wet, ring, solids } = found;
  const unit = unitOfLimits(cells, "length");
  const bulk = density(wet - ring, diameter * unit, height * unit);
  if (solids >= height || !bulk.ok || (bulk.value >= BULK.least && bulk.value <= BULK.most)) return [];
  const sentence = sentences.lightOrHeavy(
    Math.round(bulk.value * 100) / 100,
    cells.at("ring_and_wet_before"),
    cells.at("ring_mass"),
    cells.at("diameter"),
    cells.at("initial_height"),
  );
  return [cells.oneOf("unusual", sentence, ["ring_and_wet_before", "ring_mass"])];
}
