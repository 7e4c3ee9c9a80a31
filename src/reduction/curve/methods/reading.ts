/**
 * A compression curve prepared for every method: the first-loading points, the straight parts, the smooth curve through
 * them, the scatter, and whether the curve shows yield at all.
 */
import { say, fixed, type Message } from "../../message";
import { badInput, given, notApplicable, then, type Outcome } from "../../outcome";
import { pickRemarks } from "../../increment/constructions/picks";
import { checkCurvePicks, YIELD_LINE_PICKS, type CurvePicks } from "../picks";
import { branches, compressedRows, type Branches } from "../shape/branches";
import { firstLoading, type FirstLoading } from "../shape/first-loading";
import { at, straightLine, type Line } from "../../numeric/straight-line";
import type { Knee } from "../shape/knee";
import { bentLaw, heldLaw, straightLaw, type KneeLaw } from "../shape/knee-laws";
import { bestKnee } from "../shape/knee-search";
import { shown, stresses } from "./method";
import type { TestCurve } from "../shape/points";
import { lineThrough, straightParts, type Run, type StraightParts } from "../shape/straight-parts";
import { firstOf, lastOf, nth } from "../../numeric/lists";

export interface CurveReading {
  readonly test: TestCurve;
  readonly branches: Branches;
  readonly curve: FirstLoading;
  readonly parts: StraightParts;
  /** The law that the smooth curve follows, and the points it is fitted to. */
  readonly law: SmoothLaw;
  readonly knee: Knee;
  /** Standard deviation of a value about the smooth curve, as a share of the whole compression. */
  readonly scatter: number;
  /** Whether the virgin part flattens towards its end, as in sensitive clay. */
  readonly flattens: boolean;
  /** Whether the bend is so widely rounded that the specimen may be disturbed. */
  readonly wide: boolean;
  readonly picks: CurvePicks;
  readonly remarks: readonly Message[];
}

/**
 * Limits of the scatter of a value, as a share of the whole compression: not less than a dial gives, and not more than
 * noise gives.
 */
const SCATTER = { least: 0.002, most: 0.005 };
/**
 * Steepest stretch over recompression slope: below `refuse` the curve is refused, below `remark` it is remarked
 * (numerical study, methods of the trade).
 */
const RISE = { refuse: 2, remark: 2.5 };
/** First segment over steepest stretch: above these, yield lies below the first loads. */
const EARLY = { refuse: 0.6, remark: 0.45 };
/**
 * A curve has no bend if the standard deviation about one straight line is below `line`, and a bend explains less than
 * `explained` of it.
 */
const STRAIGHT = { line: 0.06, explained: 0.95 };
/** Strain per log cycle that no recompression reaches (common practice, no source). */
const STEEPEST_RECOMPRESSION = 0.1;
/** Fewer first-loading points are refused, or remarked. */
const POINTS = { refuse: 5, remark: 7 };
/** Points that a law with a flattening virgin part needs: two more than its six constants. */
const POINTS_FOR_BEND = 8;
/** Width of the rounding in log cycles above which the specimen may be disturbed. */
const WIDE = 0.11;
/** Below this ratio of the last segment to the virgin line the virgin part bends. */
const BENDS = 0.8;
/**
 * Above this ratio of the last segment to the segment before it, the virgin line is not established (numerical study,
 * methods of the trade).
 */
const GROWS = 1.2;

/** Points of the curve between two picked stresses, or `automatic` if none is picked. Refuses fewer than two points. */
function runBetween(
  { points }: FirstLoading,
  line: "recompression" | "virgin",
  picks: CurvePicks,
  automatic: Run,
): Outcome<Run> {
  const [from, to] = [picks[`${line}_from`], picks[`${line}_to`]];
  if (from === undefined && to === undefined) return given(automatic);
  const low = from ?? nth(points, automatic.from).stress;
  const high = to ?? nth(points, automatic.to).stress;
  const chosen = points.flatMap(({ stress }, i) => (stress >= low * 0.999 && stress <= high * 1.001 ? [i] : []));
  if (chosen.length < 2)
    return badInput(
      line === "virgin"
        ? say`the virgin line picked from ${shown(low)} to ${shown(high)} has fewer than two points of first loading: move an end`
        : say`the recompression line picked from ${shown(low)} to ${shown(high)} has fewer than two points of first loading: move an end`,
    );
  return given({ from: firstOf(chosen), to: lastOf(chosen) });
}

/** The straight parts, with the picked ends in the place of the automatic ones. */
function partsWith(curve: FirstLoading, automatic: StraightParts, picks: CurvePicks): Outcome<StraightParts> {
  const { x, u } = curve;
  return then(checkCurvePicks(picks), () =>
    then(runBetween(curve, "recompression", picks, automatic.recompression), (recompression) =>
      then(runBetween(curve, "virgin", picks, automatic.virgin), (virgin) =>
        given({
          recompression,
          virgin,
          recompressionLine: lineThrough(x, u, recompression),
          virginLine: lineThrough(x, u, virgin),
        }),
      ),
    ),
  );
}

/**
 * The law that the smooth curve follows. "free": two straight parts, from the recompression part to the end of the
 * virgin part. "held": two straight parts with the virgin side held to the virgin line, if that line has two points
 * only, or if the curve flattens beyond it and has too few points to show how. "bent": a virgin part that flattens, on
 * all points.
 */
export interface SmoothLaw {
  readonly form: "free" | "held" | "bent";
  readonly run: Run;
}

export function kneeLaw(form: SmoothLaw["form"], x: readonly number[], u: readonly number[], virgin: Line): KneeLaw {
  if (form === "held") return heldLaw(x, u, virgin);
  return form === "bent" ? bentLaw(x, u) : straightLaw(x, u);
}

/** The form of the law, by the virgin stretch and the index of the last point. */
function formOf(virgin: Run, last: number): SmoothLaw["form"] {
  const flattens = virgin.to < last;
  if (flattens && last >= POINTS_FOR_BEND - 1) return "bent";
  return flattens || virgin.to - virgin.from < 2 ? "held" : "free";
}

function smoothLaw(
  { x, u }: FirstLoading,
  { recompression, virgin, virginLine }: StraightParts,
  { ofAllPoints }: Scatter,
): { law: SmoothLaw; knee: Knee } {
  const last = x.length - 1;
  const form = formOf(virgin, last);
  const run = { from: recompression.from, to: form === "bent" ? last : virgin.to };
  // A free law ends at the last point: from the first point on it is the law of all points, which the scatter has fitted.
  if (ofAllPoints && form === "free" && run.from === 0) return { law: { form, run }, knee: ofAllPoints };
  const [low, high] = [nth(x, run.from), nth(x, virgin.to)];
  const law = kneeLaw(form, x.slice(run.from, run.to + 1), u.slice(run.from, run.to + 1), virginLine);
  return { law: { form, run }, knee: bestKnee(law, low, high) };
}

/** The scatter of the values, as shares of the whole compression. */
interface Scatter {
  /** Standard deviation of a value, within the limits of SCATTER. */
  readonly value: number;
  /** Standard deviation about one straight line. */
  readonly aboutLine: number;
  /** Share of the misfit to a straight line that a bend explains. */
  readonly explained: number;
  /** Two straight lines with a rounding, fitted to all first-loading points; absent if there are too few. */
  readonly ofAllPoints?: Knee;
}

function scatterOf({ x, u }: FirstLoading): Scatter {
  const n = x.length;
  const line = straightLine(x, u);
  const misfit = x.reduce((sum, value, i) => sum + (nth(u, i) - at(line, value)) ** 2, 0);
  const aboutLine = Math.sqrt(misfit / Math.max(1, n - 2));
  if (n < POINTS.remark) return { value: SCATTER.least, aboutLine, explained: 1 };
  const knee = bestKnee(straightLaw(x, u), firstOf(x), lastOf(x));
  const value = Math.min(SCATTER.most, Math.max(SCATTER.least, Math.sqrt(knee.misfit / (n - 5))));
  let explained = misfit > 0 ? 1 - knee.misfit / misfit : 0;
  if (aboutLine < STRAIGHT.line && explained < STRAIGHT.explained && n >= POINTS_FOR_BEND) {
    const bent = bestKnee(bentLaw(x, u), firstOf(x), lastOf(x));
    explained = 1 - bent.misfit / misfit;
  }
  return { value, aboutLine, explained, ofAllPoints: knee };
}

/**
 * The compression curve of a test, prepared for the methods. Refuses (method) fewer than five first-loading points, a
 * curve with no bend, a curve whose yield lies within the last increment (no virgin line) or before the first load.
 * Refuses (input) a recompression line picked above the virgin line.
 */
export function readCurve(test: TestCurve, picks: CurvePicks = {}): Outcome<CurveReading> {
  const found = branches(test);
  if (!found.ok) return found;
  const curve = firstLoading(test, found.value);
  const { x, u, points } = curve;
  if (points.length < POINTS.refuse)
    return notApplicable(
      say`only ${points.length} first-loading points: a preconsolidation stress needs ${POINTS.refuse} at the least`,
    );
  const scatter = scatterOf(curve);
  const automatic = straightParts(x, u, x, scatter.value);
  const withPicks = partsWith(curve, automatic, picks);
  if (!withPicks.ok) return withPicks;
  const parts = withPicks.value;
  const { recompression, virgin } = parts;
  if (recompression.from > virgin.from)
    return badInput(
      say`the recompression line (${stresses(curve, recompression)}) begins above the virgin line (${stresses(curve, virgin)}): move one of them`,
    );
  const remarks = [...found.remarks, ...pickRemarks(picks, YIELD_LINE_PICKS)];
  if (recompression.to > virgin.from)
    remarks.push(
      say`the recompression line (${stresses(curve, recompression)}) and the virgin line (${stresses(curve, virgin)}) overlap: move an end of one of them`,
    );

  const flat = noBend(curve, parts, scatter, found.value);
  if (flat) return notApplicable(flat.reason);
  if (turnsLast(curve, parts)) return notApplicable(TURNS_LAST);

  const steepest = parts.virginLine.slope;
  const first = Math.max(0, parts.recompressionLine.slope);
  const { law, knee } = smoothLaw(curve, parts, scatter);
  if (points.length < POINTS.remark) remarks.push(say`only ${points.length} first-loading points`);
  const onVirgin = onVirginLine(curve, parts);
  remarks.push(...onVirgin.few);
  if (recompression.to - recompression.from < 2)
    remarks.push(say`only one load step before yield: the line of recompression is uncertain`);
  if (steepest / first < RISE.remark)
    remarks.push(say`a weak bend: the virgin line is only ${fixed(steepest / first, 1)} times as steep as the start`);
  if (slope(curve, 0) / steepest > EARLY.remark)
    remarks.push(say`steep from the first load: yield may lie among the first loads, or the specimen be disturbed`);
  remarks.push(...onVirgin.flat, ...onVirgin.grows);
  const flattens = onVirgin.flat.length > 0;
  const wide = knee.width > WIDE;
  if (wide) remarks.push(say`the bend is widely rounded: the specimen may be disturbed, and yield may read high`);
  for (let i = 1; i < points.length; i++)
    if (nth(u, i) < nth(u, i - 1) - 3 * scatter.value)
      remarks.push(say`row ${nth(points, i).row}: the specimen swelled as the stress rose: check the reading`);
  return given(
    { test, branches: found.value, curve, parts, law, knee, scatter: scatter.value, flattens, wide, picks, remarks },
    remarks,
  );
}

/** The remarks on the virgin line: too few points, a flatter or a steeper end of the curve. */
function onVirginLine(
  curve: FirstLoading,
  { virgin, virginLine }: StraightParts,
): Readonly<Record<"few" | "flat" | "grows", readonly Message[]>> {
  const { points } = curve;
  const last = points.length - 1;
  const count = virgin.to - virgin.from + 1;
  const atEnd = slope(curve, last - 1);
  const flattens = virgin.to < last || atEnd < BENDS * virginLine.slope;
  const bendsAt = shown(nth(points, Math.min(virgin.to, last - 1)).stress);
  const before = last > 1 ? slope(curve, last - 2) : Infinity;
  return {
    few: count < 3 ? [say`the virgin line rests on ${count} points only`] : [],
    flat: !flattens
      ? []
      : formOf(virgin, last) === "held"
        ? [say`the virgin part flattens beyond stress ${bendsAt}: its steepest stretch is used, and yield may read low`]
        : [say`the virgin part flattens beyond stress ${bendsAt}: its steepest stretch is used`],
    grows:
      virgin.to !== last || atEnd <= GROWS * before
        ? []
        : before > 0
          ? [
              say`the slope still grows at the last load (${fixed(atEnd / before, 1)} times that of the step before): the virgin line may not be reached, and yield and Cc may read low`,
            ]
          : [
              say`the specimen did not compress in the step before the last: check that reading; the virgin line may not be reached, and yield and Cc may read low`,
            ],
  };
}

const slope = ({ x, u }: FirstLoading, i: number): number => (nth(u, i + 1) - nth(u, i)) / (nth(x, i + 1) - nth(x, i));

/**
 * The virgin line of a test, by its picks: for the compression index and the field curve. `doubts` says where the line is
 * uncertain. Refuses a curve that has none.
 * @example virginLineOf(clay).value.virgin // { from: 4, to: 7 }
 * @example virginLineOf(clay, { virgin_from: 80 }).value.virgin // { from: 5, to: 7 }
 */
export function virginLineOf(
  test: TestCurve,
  picks: CurvePicks = {},
): Outcome<{
  readonly curve: FirstLoading;
  readonly virgin: Run;
  readonly line: Line;
  readonly doubts: readonly Message[];
}> {
  const found = branches(test);
  if (!found.ok) return found;
  const curve = firstLoading(test, found.value);
  const scatter = scatterOf(curve);
  const withPicks = partsWith(curve, straightParts(curve.x, curve.u, curve.x, scatter.value), picks);
  if (!withPicks.ok) return withPicks;
  const parts = withPicks.value;
  const flat = noBend(curve, parts, scatter, found.value);
  const bends = !flat || flat.virgin || alreadyVirgin(curve, parts, found.value);
  const refusal = !bends ? flat.reason : turnsLast(curve, parts) ? TURNS_LAST : undefined;
  if (refusal) return notApplicable(say`${refusal}; or give the two stresses between which the slope is wanted`);
  const on = onVirginLine(curve, parts);
  return given({ curve, virgin: parts.virgin, line: parts.virginLine, doubts: [...on.few, ...on.flat, ...on.grows] }, [
    ...found.remarks,
    ...pickRemarks(picks, ["virgin_from", "virgin_to"]),
  ]);
}

/** Why a curve has no bend from which yield can be read, and whether it nevertheless has a virgin stretch. */
interface NoBend {
  readonly reason: Message;
  readonly virgin: boolean;
}

/**
 * A curve has no bend if it is straight within its scatter, if the steepest stretch is not twice as steep as the start or
 * as unloading, or if it is steep from the first load on.
 */
function noBend(curve: FirstLoading, parts: StraightParts, scatter: Scatter, known: Branches): NoBend | undefined {
  const { x } = curve;
  const steepest = parts.virginLine.slope;
  const first = Math.max(parts.recompressionLine.slope, 0);
  const doubt = (Math.SQRT2 * scatter.value) / (nth(x, 1) - firstOf(x));
  const fromFirst = parts.virgin.from === 0;
  const early = fromFirst || slope(curve, 0) - doubt > EARLY.refuse * steepest;
  const straight = scatter.aboutLine < STRAIGHT.line && scatter.explained < STRAIGHT.explained;
  const rebound = reboundSlope(curve, known);
  const shallow = rebound !== undefined && steepest < RISE.refuse * rebound;
  if (shallow)
    return {
      reason: say`no bend in the curve: loading is no steeper than unloading, so yield was not reached; load further`,
      virgin: false,
    };
  if (!early && !straight && steepest > 0 && steepest >= RISE.refuse * first) return undefined;
  return {
    reason: alreadyVirgin(curve, parts, known)
      ? say`no bend in the curve: it is steep from the first loads on, so yield lies below them; begin at lower loads`
      : say`no bend in the curve to read: yield was not reached, lies below the first loads, or the specimen is disturbed`,
    virgin: !straight && !fromFirst,
  };
}

/**
 * Whether a curve without a bend is virgin throughout: at least twice as steep as unloading or, without an unloading,
 * steeper than recompression can be.
 */
function alreadyVirgin(curve: FirstLoading, { virginLine }: StraightParts, known: Branches): boolean {
  const rebound = reboundSlope(curve, known);
  if (rebound !== undefined) return virginLine.slope >= RISE.refuse * rebound;
  return (virginLine.slope * curve.range) / firstOf(curve.height) > STEEPEST_RECOMPRESSION;
}

/** Whether the curve turns down only within its last load step, so that the slope of the virgin line is not known. */
const turnsLast = ({ x }: FirstLoading, { recompression, virgin }: StraightParts): boolean =>
  virgin.to === x.length - 1 && virgin.from === virgin.to - 1 && recompression.to === virgin.from;

const TURNS_LAST = say`the curve turns down only in the last load step: there is no virgin line yet; load further`;

/**
 * Slope of an unloading branch, in shares of the compression per log cycle like the slopes of the curve; an unloading in
 * which the specimen compressed is passed over.
 */
function reboundSlope({ range, kind }: FirstLoading, { finalUnloading, loops }: Branches): number | undefined {
  const unload = [finalUnloading, ...loops.map((loop) => loop.unload)].find(
    (points) => points.length > 1 && !compressedRows({ kind, points }).length,
  );
  if (!unload) return undefined;
  const a = firstOf(unload);
  const b = lastOf(unload);
  return Math.abs(b.value - a.value) / range / Math.log10(a.stress / b.stress);
}
