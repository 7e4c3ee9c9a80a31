/**
 * Curves of readings that rise and come to rest but are not consolidation, as a loose top cap, a sticking ram, a slow
 * valve or a second process can cause. Invented data; every curve follows from its kind and seed.
 */
import { BY_HAND, degree, random, type Random } from "./time-curves";

export interface Movement {
  readonly times: number[];
  readonly readings: number[];
}

type Rise = (r: Random) => (t: number) => number;

/** Each rises from 0 to 1, and reaches one half at a time between 1 and 30 min. */
const RISES: Readonly<Record<string, Rise>> = {
  "pure exponential": (r) => {
    const half = r.logUniform(1, 30);
    return (t) => 1 - 2 ** (-t / half);
  },
  hyperbola: (r) => {
    const half = r.logUniform(1, 30);
    return (t) => t / (t + half);
  },
  ramp: (r) => {
    const end = 2 * r.logUniform(1, 30);
    return (t) => Math.min(t / end, 1);
  },
  "two stages": (r) => {
    const [first, share] = [r.logUniform(0.5, 5), r.uniform(0.35, 0.65)];
    const second = first * r.logUniform(40, 150);
    const T = (t: number, t50: number) => (0.19673 * t) / t50;
    return (t) => share * degree(T(t, first)) + (1 - share) * degree(T(t, second));
  },
  "stick and slip": (r) => {
    const t50 = r.logUniform(1, 30);
    const slip = r.uniform(0.12, 0.25);
    const offset = r.uniform(0, slip);
    // The ram sticks until the soil is one slip ahead of it.
    return (t) => Math.max(0, Math.floor((degree((0.19673 * t) / t50) + offset) / slip) * slip);
  },
};

export const KINDS = Object.keys(RISES);

/** A dial of 0.001 mm, by hand or by a logger of 60 readings; movement 0.2 to 1 mm from a start of 1 to 5 mm. */
export function noConsolidation(kind: string, seed: number): Movement {
  const r = random(seed * 104729 + kind.length * 31 + kind.charCodeAt(0));
  const rise = RISES[kind](r);
  const [start, whole] = [r.uniform(1, 5), r.logUniform(0.2, 1)];
  const times =
    r.uniform(0, 1) < 0.5 ? [...BY_HAND] : Array.from({ length: 60 }, (_, i) => 0.1 * (1440 / 0.1) ** (i / 59));
  const readings = times.map((t) => Math.round(1000 * (start + whole * rise(t) + 0.0007 * r.normal())) / 1000);
  return { times, readings };
}
