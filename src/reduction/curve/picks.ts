/**
 * Picks by hand of the compression curve: stresses, in the unit of the curve, that replace the automatic ends of its
 * straight lines and the automatic point of greatest curvature.
 */
import { englishOf, say, type Message } from "../message";
import { badInput, given, type Outcome } from "../outcome";
import type { MethodName } from "./method-words";

export const CURVE_PICK_NAMES = [
  "greatest_curvature",
  "recompression_from",
  "recompression_to",
  "virgin_from",
  "virgin_to",
  "loop_from",
  "loop_to",
  "unloading_from",
  "unloading_to",
] as const;
export type CurvePickName = (typeof CURVE_PICK_NAMES)[number];

/** Stresses by the name of the pick; a pick that is absent is automatic. */
export type CurvePicks = Readonly<Partial<Record<CurvePickName, number>>>;

/** The ends of the two straight lines from which every method reads the preconsolidation stress. */
export const YIELD_LINE_PICKS = [
  "recompression_from",
  "recompression_to",
  "virgin_from",
  "virgin_to",
] as const satisfies readonly CurvePickName[];

/**
 * The picks on which the preconsolidation stress by a method depends.
 * @example picksOfYield("work") // ["recompression_from", "recompression_to", "virgin_from", "virgin_to"]
 */
export const picksOfYield = (method: MethodName): readonly CurvePickName[] =>
  method === "casagrande" ? ["greatest_curvature", ...YIELD_LINE_PICKS] : YIELD_LINE_PICKS;

/** What a table of picks has in the place of a load number if the pick is of the compression curve. */
export const OF_CURVE = "curve";

/** The names of the picks as messages. */
export const CURVE_PICK_SAID: Readonly<Record<CurvePickName, Message>> = {
  greatest_curvature: say`greatest curvature`,
  recompression_from: say`recompression from`,
  recompression_to: say`recompression to`,
  virgin_from: say`virgin from`,
  virgin_to: say`virgin to`,
  loop_from: say`loop from`,
  loop_to: say`loop to`,
  unloading_from: say`unloading from`,
  unloading_to: say`unloading to`,
};

/** The names of the picks in words for people. */
export const CURVE_PICK_WORDS = englishOf(CURVE_PICK_SAID);

/** The straight lines whose two ends can be picked. */
const LINES = ["recompression", "virgin", "loop", "unloading"] as const;

/**
 * Refuses a line whose lower end is not below its upper end.
 * @example checkCurvePicks({ virgin_from: 400, virgin_to: 200 }) // refused: the picked virgin from (400) must lie below virgin to (200): move one of them
 */
export function checkCurvePicks(picks: CurvePicks): Outcome<CurvePicks> {
  for (const line of LINES) {
    const [from, to] = [picks[`${line}_from`], picks[`${line}_to`]];
    if (from !== undefined && to !== undefined && from >= to)
      return badInput(
        say`the picked ${CURVE_PICK_SAID[`${line}_from`]} (${from}) must lie below ${CURVE_PICK_SAID[`${line}_to`]} (${to}): move one of them`,
      );
  }
  return given(picks);
}
