/** The lines of the compression curve: preconsolidation stress, indices, field curve, quality of the sample. */
import { rowOfLoad } from "../../checks/integrity";
import { picksOfCurve } from "../../record/picks";
import { yieldMethodOf } from "../../record/reduced-test";
import { inSheetStress } from "../../record/reduced/inputs";
import { FIELD_FACTOR } from "../../reduction/curve/field-curve";
import type { Index } from "../../reduction/curve/indices";
import type { MethodName } from "../../reduction/curve/method-words";
import { virginLineOf } from "../../reduction/curve/methods/reading";
import { CURVE_PICK_NAMES, CURVE_PICK_WORDS } from "../../reduction/curve/picks";
import type { LoadPoint } from "../../reduction/curve/shape/points";
import { listed, listWord, say, type Message } from "../../reduction/message";
import { firstOf, lastOf, nth } from "../../reduction/numeric/lists";
import { at as onLine, straightLine } from "../../reduction/numeric/straight-line";
import type { Outcome } from "../../reduction/outcome";
import { adoptedLine } from "./adopted";
import { construction, few, type Line, type Lines, type Sheet } from "./sheet";

/** The slope of the least-squares line through points, shown between two points on that line. */
function slopeLine({ line }: Sheet, id: string, points: readonly LoadPoint[], basis: Message): Line {
  if (points.length < 2) return undefined;
  const x = points.map(({ stress }) => Math.log10(stress));
  const best = straightLine(
    x,
    points.map(({ value }) => value),
  );
  const [from, to] = [firstOf(x), lastOf(x)];
  return line(
    id,
    [10 ** from, 10 ** to, onLine(best, from), onLine(best, to)],
    points.length === 2
      ? say`between the ends of ${basis}`
      : say`between two points on the best line through the points of ${basis}`,
  );
}

/** An index, shown on the first of the branches that it was read from. */
function meanSlope(sheet: Sheet, id: string, index: Outcome<Index>): Line {
  if (!index.ok) return undefined;
  const { basis, readings } = index.value;
  const [first] = readings;
  if (first === undefined) return undefined;
  const found = slopeLine(sheet, id, first, say`the ${basis}`);
  return readings.length === 1 || !found
    ? found
    : { said: say`${found.said}; the mean of ${readings.length} loops, of which this is the first` };
}

/** What each method of the preconsolidation stress draws. */
const YIELD_LINES: Readonly<Record<MethodName, Message>> = {
  casagrande: say`Casagrande: where the bisector between horizontal and tangent at the greatest curvature meets the virgin line`,
  work: say`work per unit volume: where the line before yield meets the line after it, on work against stress`,
  bilog: say`bilogarithmic: where the two straight lines meet, on ln(1 + e) against log of stress`,
  intersection: say`intersection: where the recompression line meets the virgin line`,
  pacheco_silva: say`Pacheco Silva: from the virgin line at the initial void ratio down to the curve, and across to the virgin line`,
  janbu: say`Janbu: half-way through the fall of the modulus, on modulus against stress`,
};

/** The virgin line, in void ratio against log of stress. */
function virgin({ record, reduced: { curve } }: Sheet): { points: readonly LoadPoint[]; basis: Message } | undefined {
  if (!curve.ok || curve.value.kind !== "e") return undefined;
  const picks = picksOfCurve(record.picks);
  const found = virginLineOf(curve.value, picks);
  if (!found.ok) return undefined;
  const { curve: first, virgin: run } = found.value;
  const points = first.points.slice(run.from, run.to + 1);
  const isPicked = picks.virgin_from !== undefined || picks.virgin_to !== undefined;
  const [from, to] = [few(firstOf(points).stress), few(lastOf(points).stress)];
  return {
    points,
    basis: isPicked ? say`the virgin line, ${from} to ${to}, picked by hand` : say`the virgin line, ${from} to ${to}`,
  };
}

/** The void ratio at the in-situ stress, interpolated linearly on log of stress between points of first loading. */
function atInSitu(sheet: Sheet): { e: number; said: Message } | undefined {
  const { record, reduced: all, cell, line } = sheet;
  const sigma = cell("in_situ_stress");
  if (sigma === undefined || !all.branches.ok || all.curve.ok === false || all.curve.value.kind !== "e")
    return undefined;
  const points = [...all.branches.value.seating, ...all.branches.value.firstLoading];
  const above = points.findIndex(({ stress }) => stress >= sigma * (1 - 1e-9));
  if (above < 1) return undefined;
  const [a, b] = [nth(points, above - 1), nth(points, above)];
  const found = line("void_ratio_at_stress", [sigma, a.stress, b.stress, a.value, b.value]);
  return (
    found && {
      e: found.result!,
      said: say`${found.said} at ${few(inSheetStress(record, record.numbers.in_situ_stress!))}`,
    }
  );
}

const ofInSitu =
  (id: string) =>
  (sheet: Sheet): Line => {
    const e = atInSitu(sheet);
    const found = e && sheet.line(id, [sheet.cell("void_ratio_initial"), e.e]);
    return found && { ...found, said: listed([e.said, found.said], "; ") };
  };

export const CURVE: Lines = {
  preconsolidation_stress: (sheet) => {
    const picked = picksOfCurve(sheet.record.picks);
    const hand = CURVE_PICK_NAMES.flatMap((name) =>
      picked[name] === undefined ? [] : [say`${listWord(CURVE_PICK_WORDS[name])} ${picked[name]}`],
    );
    const drawn = say`${YIELD_LINES[yieldMethodOf(sheet.record)]}; the plot shows the lines`;
    const said = hand.length === 0 ? drawn : say`${drawn}; picked by hand: ${listed(hand)}`;
    return adoptedLine(sheet, "preconsolidation_stress") ?? { said, result: undefined };
  },
  preconsolidation_low: construction(say`the lower end of the range that these points allow for the knee of the curve`),
  preconsolidation_high: construction(
    say`the upper end of the range that these points allow for the knee of the curve`,
  ),
  overconsolidation_ratio: ({ cell, line }) => line("ocr", [cell("preconsolidation_stress"), cell("in_situ_stress")]),
  compression_index: (sheet) => {
    const found = virgin(sheet);
    return (
      adoptedLine(sheet, "compression_index") ??
      (found && slopeLine(sheet, "compression_index", found.points, found.basis))
    );
  },
  recompression_index: (sheet) =>
    adoptedLine(sheet, "recompression_index") ??
    meanSlope(sheet, "recompression_index", sheet.reduced.recompressionIndex),
  swelling_index: (sheet) =>
    adoptedLine(sheet, "swelling_index") ?? meanSlope(sheet, "swelling_index", sheet.reduced.swellingIndex),
  c_alpha_chosen: (sheet) => {
    const { cell, values } = sheet;
    const load = cell("c_alpha_load");
    const adopted = adoptedLine(sheet, "c_alpha_chosen");
    if (adopted) return adopted;
    return load === undefined
      ? undefined
      : { said: say`C alpha of load ${load}`, result: cell("c_alpha", rowOfLoad(values, load)) };
  },
  c_alpha_ratio: ({ cell, line }) =>
    line("c_alpha_ratio", [cell("c_alpha_chosen"), cell("void_ratio_initial"), cell("compression_index")]),
  field_compression_index: (sheet) => {
    const { cell, line } = sheet;
    const [e0, sigma, sigmaV0] = [cell("void_ratio_initial"), cell("preconsolidation_stress"), cell("in_situ_stress")];
    const Cr = cell("field_recompression_index");
    if (e0 === undefined || sigma === undefined || sigmaV0 === undefined || Cr === undefined) return undefined;
    const bent = Cr > 0 && sigma > sigmaV0;
    const [from, e] = bent ? [sigma, e0 - Cr * Math.log10(sigma / sigmaV0)] : [sigmaV0, e0];
    return line(
      "compression_index",
      [from, cell("field_meeting_stress"), e, cell("field_meeting_void_ratio")],
      say`from the end of the field recompression line to where both curves meet`,
    );
  },
  field_recompression_index: ({ cell }) => ({
    said: say`C_r: the field curve runs parallel to the recompression up to the preconsolidation stress`,
    result: cell("recompression_index"),
  }),
  field_meeting_void_ratio: ({ cell, line }) =>
    line("share_of_void_ratio", [cell("field_factor") ?? FIELD_FACTOR, cell("void_ratio_initial")]),
  field_meeting_stress: (sheet) => {
    const found = virgin(sheet);
    if (!found) return undefined;
    const x = found.points.map(({ stress }) => Math.log10(stress));
    const best = straightLine(
      x,
      found.points.map(({ value }) => value),
    );
    const start = firstOf(x);
    return sheet.line(
      "stress_on_line",
      [10 ** start, onLine(best, start), sheet.cell("field_meeting_void_ratio"), -best.slope],
      say`on the virgin line`,
    );
  },
  quality_change: ofInSitu("change_of_void_ratio"),
  quality_strain: ofInSitu("strain_by_void_ratio"),
};
