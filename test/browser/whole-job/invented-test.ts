/**
 * The invented test of the whole job: a specimen, and the file of its logger. Its curves are calculated from Terzaghi's
 * theory with a known cv, and its compression curve from a known Cr, Cc and preconsolidation stress, so that the results
 * are known before the program is asked.
 */
import type { DecimalMark } from "../../../src/workbook/embedded";

/** Units of a sheet and of the logger's file. Lengths are in `length`, stresses in `stress`. */
export interface Units {
  readonly length: { readonly unit: string; readonly mm: number; readonly decimals: number };
  readonly stress: { readonly unit: string; readonly first: number };
  /** What the sheet shows cv in, per mm2 in a minute. */
  readonly cv: number;
}

/** Minutes of a year of 365.25 days, and of a day. */
const YEAR = 525_960;
const DAY = 1440;

export const UNITS: Readonly<Record<"SI" | "US", Units>> = {
  SI: { length: { unit: "mm", mm: 1, decimals: 4 }, stress: { unit: "kPa", first: 12.5 }, cv: YEAR / 1e6 },
  // The US sheet shows cv in ft2/day.
  US: { length: { unit: "in", mm: 25.4, decimals: 6 }, stress: { unit: "tsf", first: 0.125 }, cv: DAY / 304.8 ** 2 },
};

export const H0 = 20;
export const DIAMETER = 63.5;
export const GS = 2.7;
export const DRY = 85;
export const WATER_BEFORE = 36;
/** The height of solids in mm: the dry mass over the density of the solids and the area. */
const SOLIDS = (1000 * DRY) / GS / ((Math.PI * DIAMETER ** 2) / 4);
export const E0 = H0 / SOLIDS - 1;
const CR = 0.04;
export const CC = 0.45;
/** mm2 a minute. */
export const CV = 1.5;
/** Eight loads, each twice the one before; the preconsolidation stress is that of the fourth. */
export const STEPS = 8;
export const KNEE = 3;

export const eAt = (step: number): number =>
  E0 - CR * Math.log10(2) * (Math.min(step, KNEE) + 1) - CC * Math.log10(2) * Math.max(0, step - KNEE);
const heightAt = (step: number): number => (step < 0 ? H0 : SOLIDS * (1 + eAt(step)));

/** Terzaghi's degree of consolidation for double drainage. */
function degree(T: number): number {
  if (T < 1e-9) return 0;
  let sum = 0;
  for (let m = 0; m < 200; m++) {
    const M = (Math.PI * (2 * m + 1)) / 2;
    sum += (2 / M ** 2) * Math.exp(-(M ** 2) * T);
  }
  return 1 - sum;
}

/** The file of the logger: seconds, stress, displacement; a reading at usual times of each load of a day. */
export function loggerText({ length, stress }: Units, decimal: DecimalMark): string {
  const minutes = [0, 0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1439];
  const number = (value: number, decimals: number) => value.toFixed(decimals).replace(".", decimal);
  const rows = Array.from({ length: STEPS }, (_, step) =>
    minutes.map((minute) => {
      const [before, after] = [heightAt(step - 1), heightAt(step)];
      const drained = (before + after) / 4;
      const moved = H0 - before + (before - after) * degree((CV * minute) / drained ** 2);
      const time = String(Math.round((step * 1440 + minute) * 60));
      return [time, number(stress.first * 2 ** step, 4), number(moved / length.mm, length.decimals)].join(";");
    }),
  );
  return [`Time;Stress;Displacement`, `s;${stress.unit};${length.unit}`, ...rows.flat()].join("\n");
}
