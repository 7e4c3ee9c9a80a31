/**
 * The part of the fit to theory that is linear: at a rate cv/Hdr^2 and a sharpness of creep, d0, primary and tail follow
 * by linear least squares. A table of such solutions over the rate cannot miss the best of several minima, and leaving
 * one reading out of all of them costs little more than one.
 */
import { creepSince, type Curve } from "./model";
import type { Series } from "../readings";
import { degreeOfConsolidation, T_END_OF_PRIMARY } from "./terzaghi";

/** How sharply creep may begin: 2 over two log cycles, 7 over half of one. */
export const SHARPNESSES = [2, 3, 4.5, 7];
/** The one that the table is made with: it finds the valleys, whose floor takes every sharpness. */
const TABLE_SHARPNESS = 3;

const POINTS_PER_DECADE = 14;

/**
 * Creep of an ordinary clay, tail per log cycle over primary, and its spread. With C-alpha/Cc = 0.04 +/- 0.01 (Terzaghi,
 * Peck & Mesri, 1996, from memory) a doubled load gives 0.04/log10(2) = 0.13; less before yield. A record that shows its
 * own creep overrules it; one too short to show it leans on it instead of trading creep for primary.
 */
export const ORDINARY_CREEP = 0.1;
export const CREEP_SPREAD = 0.07;

export interface Trial extends Curve {
  /** Weighted sum of squared residuals, with what the lean on ordinary creep adds. */
  readonly cost: number;
}

/** Weighted sums of 1, y, u (degree of consolidation), c (unit creep) and their products. */
interface Sums {
  w: number;
  y: number;
  u: number;
  c: number;
  yy: number;
  uu: number;
  cc: number;
  uy: number;
  cy: number;
  uc: number;
}

type Column = Float64Array;

function sumsOf(y: Column, u: Column, c: Column, weights: readonly number[]): Sums {
  const s: Sums = { w: 0, y: 0, u: 0, c: 0, yy: 0, uu: 0, cc: 0, uy: 0, cy: 0, uc: 0 };
  for (let i = 0; i < y.length; i++) add(s, weights[i], y[i], u[i], c[i]);
  return s;
}

function add(s: Sums, w: number, y: number, u: number, c: number): void {
  s.w += w;
  s.y += w * y;
  s.u += w * u;
  s.c += w * c;
  s.yy += w * y * y;
  s.uu += w * u * u;
  s.cc += w * c * c;
  s.uy += w * u * y;
  s.cy += w * c * y;
  s.uc += w * u * c;
}

interface Solution {
  cost: number;
  primary: number;
  tail: number;
}

/** `lean` is the weight of (tail - ORDINARY_CREEP primary)^2 in the cost. Creep never runs against primary. */
function solve(s: Sums, lean: number): Solution {
  const yy = s.yy - (s.y * s.y) / s.w;
  const uu = s.uu - (s.u * s.u) / s.w + lean * ORDINARY_CREEP * ORDINARY_CREEP;
  const uy = s.uy - (s.u * s.y) / s.w;
  const cc = s.cc - (s.c * s.c) / s.w + lean;
  const cy = s.cy - (s.c * s.y) / s.w;
  const uc = s.uc - (s.u * s.c) / s.w - lean * ORDINARY_CREEP;
  const det = uu * cc - uc * uc;
  if (det > 1e-10 * uu * cc) {
    const primary = (uy * cc - cy * uc) / det;
    const tail = (cy * uu - uy * uc) / det;
    if (primary * tail > 0) return { primary, tail, cost: Math.max(yy - primary * uy - tail * cy, 0) };
  }
  const primary = uu > 1e-14 ? uy / uu : 0;
  return { primary, tail: 0, cost: Math.max(yy - primary * uy, 0) };
}

const centred = ({ readings }: Series): Column => Float64Array.from(readings, (reading) => reading - readings[0]);

const degrees = ({ times }: Series, rate: number, shift: number): Column =>
  Float64Array.from(times, (t) => degreeOfConsolidation(rate * (t + shift)));

/** ln(t/tp) of every reading; minus infinity before the load. */
const sinceEnd = ({ times }: Series, rate: number, shift: number): Column =>
  Float64Array.from(times, (t) => Math.log(Math.max(rate * (t + shift), 0) / T_END_OF_PRIMARY));

const creeps = (since: Column, sharpness: number): Column => since.map((lnTime) => creepSince(lnTime, sharpness));

function trialOf(series: Series, rate: number, sharpness: number, s: Sums, lean: number): Trial {
  const { primary, tail, cost } = solve(s, lean);
  const d0 = series.readings[0] + (s.y - primary * s.u - tail * s.c) / s.w;
  return { rate, sharpness, primary, tail, d0, cost };
}

/** The best trial at a rate, over the sharpnesses of creep. `shift` moves the time zero, minutes. */
export function trialAt(series: Series, weights: readonly number[], rate: number, lean: number, shift = 0): Trial {
  const y = centred(series);
  const u = degrees(series, rate, shift);
  const since = sinceEnd(series, rate, shift);
  let best: Trial | undefined;
  for (const sharpness of SHARPNESSES) {
    const sums = sumsOf(y, u, creeps(since, sharpness), weights);
    const trial = trialOf(series, rate, sharpness, sums, lean);
    if (!best || trial.cost < best.cost) best = trial;
  }
  return best as Trial;
}

/** Everything at equal steps of log rate: half of primary anywhere from a decade before the record to three times its end. */
export interface Table {
  readonly series: Series;
  readonly y: Column;
  readonly rows: readonly { readonly rate: number; readonly u: Column; readonly c: Column }[];
}

export function tableOf(series: Series): Table {
  const { times } = series;
  const from = 0.2 / (3 * times[times.length - 1]);
  const decades = Math.log10((30 * times[times.length - 1]) / times[0]);
  const points = Math.ceil(decades * POINTS_PER_DECADE);
  const rows = Array.from({ length: points + 1 }, (_, i) => {
    const rate = from * 10 ** ((decades * i) / points);
    return { rate, u: degrees(series, rate, 0), c: creeps(sinceEnd(series, rate, 0), TABLE_SHARPNESS) };
  });
  return { series, y: centred(series), rows };
}

/** The minima of the cost over the rate, best first; the ends of the table count. */
export function minima({ series, y, rows }: Table, weights: readonly number[], lean: number): Trial[] {
  const trials = rows.map(({ rate, u, c }) => trialOf(series, rate, TABLE_SHARPNESS, sumsOf(y, u, c, weights), lean));
  return trials
    .filter((trial, i) => !(trials[i - 1]?.cost < trial.cost) && !(trials[i + 1]?.cost <= trial.cost))
    .sort((a, b) => a.cost - b.cost);
}

/** The reading whose leaving out lowers the cost most. */
export function mostDoubtful({ y, rows }: Table, weights: readonly number[], lean: number): number {
  const best = weights.map((): number => Infinity);
  for (const { u, c } of rows) {
    const sums = sumsOf(y, u, c, weights);
    for (let i = 0; i < weights.length; i++) {
      if (!weights[i]) continue;
      const without = { ...sums };
      add(without, -weights[i], y[i], u[i], c[i]);
      const { cost } = solve(without, lean);
      if (cost < best[i]) best[i] = cost;
    }
  }
  return best.indexOf(Math.min(...best));
}
