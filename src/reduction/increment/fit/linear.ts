/**
 * The linear part of the fit to theory: where the rate cv/Hdr^2 and the onset of creep are given, d0, primary and
 * tail follow by linear least squares of the readings y on u, the degree of consolidation, and c, the creep of unit
 * slope:
 *
 *   sum of w (y - d0 - primary u - tail c)^2  +  lean (tail - ORDINARY_CREEP primary)^2   is least.
 *
 * It is solved some five hundred times in one fit, so one object keeps the sums and is overwritten.
 */
import type { Column } from "./model";

/**
 * Creep of an ordinary clay, tail per log cycle over primary, and its spread. With C-alpha/Cc = 0.04 +/- 0.01
 * (Terzaghi, Peck & Mesri, 1996, from memory) a doubled load gives 0.04/log10(2) = 0.13; less before yield. A record
 * that shows its own creep overrules this value; a record too short to show creep leans on it, and does not trade creep
 * for primary.
 */
export const ORDINARY_CREEP = 0.1;
export const CREEP_SPREAD = 0.07;

/**
 * Primary and tail, and the products of u and c that they are solved from. NaN at first and not 0, here and below, so
 * that the engine stores floating-point numbers in every field from the start.
 */
export const unsolved = () => ({ uu: NaN, uc: NaN, cc: NaN, det: NaN, d0: NaN, primary: NaN, tail: NaN });

/**
 * Solves for primary and tail. `uy` and `cy` are the products of u and c with the readings; all products are about the
 * means. Creep never runs against primary: where it would, it is set to zero.
 */
export function solveProducts(fit: ReturnType<typeof unsolved>, uy: number, cy: number): void {
  const { uu, uc, cc } = fit;
  const det = uu * cc - uc * uc;
  fit.det = det;
  fit.primary = uu > 1e-14 ? uy / uu : 0;
  fit.tail = 0;
  if (!(det > 1e-10 * uu * cc)) return;
  const withCreep = (uy * cc - cy * uc) / det;
  const creep = (cy * uu - uy * uc) / det;
  if (!(withCreep * creep > 0)) return;
  fit.primary = withCreep;
  fit.tail = creep;
}

/** Weighted sums of 1, y, u, c and their products, and the solution. */
export const linearFit = () => ({
  w: NaN,
  y: NaN,
  u: NaN,
  c: NaN,
  yy: NaN,
  uu: NaN,
  cc: NaN,
  uy: NaN,
  cy: NaN,
  uc: NaN,
  /** The weighted sum of squared residuals plus the term of the lean on ordinary creep. */
  cost: NaN,
  solved: unsolved(),
});
export type LinearFit = ReturnType<typeof linearFit>;

/**
 * Sums over all readings. In a table the columns u and c of all rates stand one after another; `from` is where one
 * begins. The columns are as long as the weights (u and c from `from` on), so that no index runs out: hence each `!`.
 */
export function sumUp(fit: LinearFit, y: Column, u: Column, c: Column, weights: Column, from = 0): void {
  let sw = 0;
  let sy = 0;
  let su = 0;
  let sc = 0;
  let yy = 0;
  let uu = 0;
  let cc = 0;
  let uy = 0;
  let cy = 0;
  let uc = 0;
  const { length } = weights;
  for (let i = 0; i < length; i++) {
    const w = weights[i]!;
    const yi = y[i]!;
    const ui = u[from + i]!;
    const ci = c[from + i]!;
    const wy = w * yi;
    const wu = w * ui;
    const wc = w * ci;
    sw += w;
    sy += wy;
    su += wu;
    sc += wc;
    yy += wy * yi;
    uu += wu * ui;
    cc += wc * ci;
    uy += wu * yi;
    cy += wc * yi;
    uc += wu * ci;
  }
  fit.w = sw;
  fit.y = sy;
  fit.u = su;
  fit.c = sc;
  fit.yy = yy;
  fit.uu = uu;
  fit.cc = cc;
  fit.uy = uy;
  fit.cy = cy;
  fit.uc = uc;
}

/** Adds one reading to the sums; a negative weight takes it away. */
export function add(fit: LinearFit, w: number, y: number, u: number, c: number): void {
  fit.w += w;
  fit.y += w * y;
  fit.u += w * u;
  fit.c += w * c;
  fit.yy += w * y * y;
  fit.uu += w * u * u;
  fit.cc += w * c * c;
  fit.uy += w * u * y;
  fit.cy += w * c * y;
  fit.uc += w * u * c;
}

/** Solves for d0, primary and tail from the sums. */
export function solve(fit: LinearFit, lean: number): void {
  const { w, y, u, c, solved } = fit;
  const uy = fit.uy - (u * y) / w;
  const cy = fit.cy - (c * y) / w;
  solved.uu = fit.uu - (u * u) / w + lean * ORDINARY_CREEP * ORDINARY_CREEP;
  solved.cc = fit.cc - (c * c) / w + lean;
  solved.uc = fit.uc - (u * c) / w - lean * ORDINARY_CREEP;
  solveProducts(solved, uy, cy);
  const { primary, tail } = solved;
  solved.d0 = (y - primary * u - tail * c) / w;
  fit.cost = Math.max(fit.yy - (y * y) / w - primary * uy - tail * cy, 0);
}
