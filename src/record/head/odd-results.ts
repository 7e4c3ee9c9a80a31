/** Results that no soil has, with the entries to check. Each entry by itself can be. */
import { STEEPEST_SOIL } from "../../reduction/curve/indices";
import * as sentences from "../../specification/sentences/of-head";
import { ZERO_WITHIN } from "../../specification/head/sizes";
import { readingsName, timesName } from "../../specification/readings";
import { TEMPLATE_VERSION } from "../../specification/versions";
import type { TestRecord } from "../record";
import { type HeadSentence, isNumber, Cells } from "./cells";

/** Sheets up to version 13 have no such sentences. */
const isAsked = ({ version = TEMPLATE_VERSION }: TestRecord): boolean => version >= 14;

/** A zero reading far from the first reading of load 1. */
export function farFromZero(cells: Cells, record: TestRecord): HeadSentence[] {
  const sizes = cells.numbers({ zero: "zero_reading", factor: "dial_factor", height: "initial_height" });
  const first = cells.column(readingsName(1))[0];
  if (!isAsked(record) || !sizes || !isNumber(first) || cells.column(timesName(1))[0] !== 0) return [];
  if (Math.abs(first - sizes.zero) * sizes.factor <= ZERO_WITHIN * sizes.height) return [];
  const sentence = sentences.farFromZero(cells.at("zero_reading"), cells.at(readingsName(1)));
  return [cells.oneOf("unusual", sentence, ["zero_reading", readingsName(1)])];
}

/** A compression index that few soils have. */
export function steepCurve(cells: Cells, record: TestRecord): HeadSentence[] {
  const found = cells.numbers({ Cc: "compression_index", e0: "void_ratio_initial" });
  const ratio = found && found.Cc / (1 + found.e0);
  if (!isAsked(record) || ratio === undefined || ratio <= STEEPEST_SOIL) return [];
  const sentence = sentences.steepCurve(cells.at("compression_index"), Math.round(ratio * 100) / 100);
  return [{ kind: "unusual", sentence, address: cells.address("load_stress") }];
}
