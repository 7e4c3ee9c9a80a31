/**
 * Load increments with known truth: Terzaghi's theory (by its Fourier series, written here a second time on purpose),
 * immediate compression, creep, noise, the steps of instruments, reading schedules, and the faults that readings have
 * in practice. Invented data; every curve follows from its scenario and seed.
 */

export interface Truth {
  readonly t50: number;
  readonly d0: number;
  readonly d100: number;
  /** Primary compression, positive. */
  readonly primary: number;
  /** cv in mm2/min for `height`, double drainage. */
  readonly cv: number;
}

export interface TimeCurve {
  readonly times: number[];
  readonly readings: number[];
  /** mm, at mid-increment. */
  readonly height: number;
  readonly truth: Truth;
  /** The reading of a perfect instrument at a time since loading: without noise, steps and wave. */
  readonly exact: (t: number) => number;
  /** One more reading by the same instrument. */
  readonly readAt: (clock: number) => number;
}

export type Method = "LOG_TIME" | "ROOT_TIME" | "FIT_TIME";

/** An outcome that is right besides a value inside the band. */
export type Otherwise = "no" | "refuse or remark" | "refuse";

export interface Expected {
  readonly otherwise: Otherwise;
  /** Largest error of cv in percent of the truth, and of d100 in percent of primary; absent if no value is right. */
  readonly band?: readonly [cv: number, d100: number];
}

export interface Scenario {
  readonly name: string;
  readonly expect: Readonly<Record<Method, Expected>>;
  readonly make: (seed: number) => TimeCurve;
}

export interface Random {
  uniform(from: number, to: number): number;
  logUniform(from: number, to: number): number;
  normal(): number;
  pick<T>(of: readonly T[]): T;
}

/** Mulberry32: small, uniform, and equal on every machine. */
export function random(seed: number): Random {
  let state = seed >>> 0;
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let z = state;
    z = Math.imul(z ^ (z >>> 15), z | 1);
    z ^= z + Math.imul(z ^ (z >>> 7), z | 61);
    return ((z ^ (z >>> 14)) >>> 0) / 4294967296;
  };
  for (let i = 0; i < 5; i++) next();
  const uniform = (from: number, to: number) => from + (to - from) * next();
  return {
    uniform,
    logUniform: (from, to) => from * (to / from) ** next(),
    normal: () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next()),
    pick: (of) => of[Math.floor(next() * of.length)],
  };
}

const T50_EXACT = 0.19673075;

/** Degree of consolidation by the Fourier series alone. */
export function degree(T: number): number {
  if (T <= 0) return 0;
  let sum = 0;
  for (let k = 0; k < 400; k++) {
    const M2 = ((2 * k + 1) * Math.PI * 0.5) ** 2;
    const term = (2 / M2) * Math.exp(-M2 * T);
    sum += term;
    if (term < 1e-16) break;
  }
  return 1 - sum;
}

/** A clock of hand readings: the doubling schedule to 24 h. */
export const BY_HAND = [0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440];
const BY_HAND_LATE = BY_HAND.slice(1);

/** A logger that reads at times in geometric progression, to a tenth of a second. */
function logger(first: number, last: number, count: number): number[] {
  const times = Array.from({ length: count }, (_, i) => first * (last / first) ** (i / (count - 1)));
  return [...new Set(times.map((t) => Math.round(t * 600) / 600))].filter((t) => t > 0);
}

interface Soil {
  t50: number;
  primary: number;
  d0: number;
  /** Creep per log cycle over primary. */
  creep: number;
  sharpness: number;
  /** Creep that begins early: per log cycle, from this time (in t50) on. */
  early?: number;
}

interface Reading {
  times: readonly number[];
  noise: number;
  step: number;
  /** Minutes from the load to the start of the clock. */
  shift?: number;
  /** Amplitude of a daily wave of temperature, mm. */
  wave?: number;
  backward?: number;
}

const ordinary = (r: Random): Soil => ({
  t50: r.logUniform(1, 30),
  primary: r.logUniform(0.15, 1),
  d0: r.uniform(0.001, 0.09),
  creep: r.uniform(0.03, 0.16),
  sharpness: r.uniform(2, 7.5),
});

function measure(r: Random, soil: Soil, reading: Reading): TimeCurve {
  const { t50, primary, d0, creep, sharpness: m, early } = soil;
  const tp = (1.10135 / T50_EXACT) * t50;
  const phase = r.uniform(0, 2 * Math.PI);
  const still = (t: number): number => {
    if (t <= 0) return d0;
    const tail = early ? creep * Math.log10(1 + t / (early * t50)) : (creep / m) * Math.log10(1 + (t / tp) ** m);
    return d0 + primary * (degree((T50_EXACT * t) / t50) + tail);
  };
  const wave = (clock: number): number =>
    (reading.wave ?? 0) * (Math.sin((2 * Math.PI * clock) / 1440 + phase) - Math.sin(phase));
  const at = (clock: number): number => {
    const t = clock + (reading.shift ?? 0);
    return t > 0 ? still(t) + wave(clock) : d0;
  };
  const height = r.pick([19, 20, 25.4]) * r.uniform(0.975, 0.998);
  const sense = reading.backward === undefined ? 1 : -1;
  const origin = reading.backward ?? 0;
  const seen = (value: number) => {
    const noisy = origin + sense * value + reading.noise * r.normal();
    const stepped = reading.step ? Math.round(noisy / reading.step) * reading.step : noisy;
    return Number(stepped.toPrecision(8));
  };
  return {
    times: [...reading.times],
    readings: reading.times.map((t) => seen(at(t))),
    height,
    truth: {
      t50,
      d0: origin + sense * d0,
      d100: origin + sense * (d0 + primary),
      primary,
      cv: (T50_EXACT * (height / 2) ** 2) / t50,
    },
    exact: (t) => origin + sense * still(t),
    readAt: (clock) => seen(at(clock)),
  };
}

type Bands = readonly [log: Expected, root: Expected, fit: Expected];
const must = (cv: number, d100: number): Expected => ({ otherwise: "no", band: [cv, d100] });
const may = (cv: number, d100: number): Expected => ({ otherwise: "refuse or remark", band: [cv, d100] });
const doubt: Expected = { otherwise: "refuse or remark" };
const never: Expected = { otherwise: "refuse" };
const CLEAN: Bands = [must(3, 1.2), must(5, 2.5), must(2, 1.2)];
const DIAL: Bands = [must(7, 3), must(12, 5), must(6, 2.5)];
const FAULT: Bands = [may(10, 4), may(18, 8), must(10, 4)];

const scenario = (name: string, [log, root, fit]: Bands, make: (r: Random) => TimeCurve): Scenario => ({
  name,
  expect: { LOG_TIME: log, ROOT_TIME: root, FIT_TIME: fit },
  make: (seed) => make(random(seed * 7919 + hash(name))),
});

const hash = (text: string): number => [...text].reduce((h, c) => (Math.imul(h, 31) + c.charCodeAt(0)) | 0, 17);

const HAND = { times: BY_HAND, noise: 0.0008, step: 0.001 };
const INCH = { times: BY_HAND, noise: 0.001, step: 0.00254 };

export const SCENARIOS: readonly Scenario[] = [
  scenario("exact theory, dense logger", CLEAN, (r) =>
    measure(r, { ...ordinary(r), creep: 0 }, { times: logger(0.05, 14400, 250), noise: 0, step: 0 }),
  ),
  scenario("exact theory, hand schedule", CLEAN, (r) =>
    measure(r, { ...ordinary(r), creep: 0, t50: r.logUniform(1, 20) }, { times: BY_HAND, noise: 0, step: 0 }),
  ),
  scenario("exact theory with creep, hand schedule", CLEAN, (r) =>
    measure(r, { ...ordinary(r), t50: r.logUniform(1, 20) }, { times: BY_HAND, noise: 0, step: 0 }),
  ),
  scenario("logger of 0.001 mm", DIAL, (r) =>
    measure(r, ordinary(r), { times: logger(0.05, 1440, 80), noise: 0.001, step: 0.001 }),
  ),
  scenario("dial of 0.0001 in", DIAL, (r) => measure(r, { ...ordinary(r), primary: r.logUniform(0.3, 1) }, INCH)),
  scenario("dial of 0.01 mm", FAULT, (r) =>
    measure(r, { ...ordinary(r), primary: r.logUniform(0.4, 1) }, { times: BY_HAND, noise: 0.002, step: 0.01 }),
  ),
  scenario("much secondary compression", FAULT, (r) =>
    measure(r, { ...ordinary(r), creep: r.uniform(0.2, 0.35) }, HAND),
  ),
  scenario("large load ratio", CLEAN, (r) =>
    measure(
      r,
      { ...ordinary(r), primary: r.uniform(0.9, 1.5), t50: r.logUniform(1.5, 15) },
      { ...INCH, noise: 0.0005 },
    ),
  ),
  scenario("large initial compression", DIAL, (r) =>
    measure(r, { ...ordinary(r), primary: r.logUniform(0.3, 1), d0: r.uniform(0.2, 0.6) }, HAND),
  ),
  scenario("fast, few early readings", [may(8, 3), may(15, 8), may(5, 2)], (r) =>
    measure(r, { ...ordinary(r), primary: r.logUniform(0.3, 1), t50: r.logUniform(0.12, 0.5) }, HAND),
  ),
  scenario("slow for 24 h", [may(15, 8), must(10, 4), must(12, 4)], (r) =>
    measure(r, { ...ordinary(r), primary: r.logUniform(0.3, 1), t50: r.logUniform(80, 175) }, HAND),
  ),
  scenario("swelling", FAULT, (r) =>
    measure(
      r,
      { ...ordinary(r), primary: r.logUniform(0.1, 0.4), creep: r.uniform(0, 0.06) },
      { ...HAND, backward: r.uniform(1, 5) },
    ),
  ),
  scenario("dial that runs backwards", DIAL, (r) =>
    measure(r, { ...ordinary(r), primary: r.logUniform(0.3, 1) }, { ...INCH, backward: r.uniform(4, 10) }),
  ),
  scenario("repeated and out of order", DIAL, (r) => {
    const curve = measure(r, { ...ordinary(r), primary: r.logUniform(0.25, 1) }, HAND);
    const rows = curve.times.map((t, i) => [t, curve.readings[i]]);
    for (const i of [1, 6]) rows.push([rows[i][0], Number((rows[i][1] + r.pick([0, 0.001])).toFixed(3))]);
    for (const i of [0, 3, 7, 12]) rows.splice(i + 1, 0, ...rows.splice(i, 1));
    return { ...curve, times: rows.map(([t]) => t), readings: rows.map(([, d]) => d) };
  }),
  scenario("time zero off by 2 to 6 s", [may(25, 4), may(25, 8), must(12, 3)], (r) =>
    measure(
      r,
      { ...ordinary(r), t50: r.logUniform(1, 4), primary: r.logUniform(0.25, 1) },
      { times: logger(0.05, 1440, 60), noise: 0.001, step: 0.001, shift: r.pick([-1, 1]) * r.uniform(2 / 60, 6 / 60) },
    ),
  ),
  scenario("logger at a steady rate", [must(6, 2), must(6, 3), must(2, 1)], (r) => {
    const count = Math.round(r.uniform(12000, 50000));
    return measure(r, ordinary(r), {
      times: Array.from({ length: count }, (_, i) => Number(((1440 * (i + 1)) / count).toPrecision(7))),
      noise: 0.001,
      step: 0.001,
    });
  }),
  scenario("wave of temperature", FAULT, (r) =>
    measure(r, ordinary(r), {
      times: logger(0.05, 1440, 100),
      noise: 0.001,
      step: 0.001,
      wave: r.uniform(0.001, 0.0025),
    }),
  ),
  scenario("one wrong reading", [may(12, 5), may(18, 8), must(8, 4)], (r) => {
    const curve = measure(r, { ...ordinary(r), primary: r.logUniform(0.3, 1) }, HAND);
    const wrong = Math.floor(r.uniform(3, 13));
    curve.readings[wrong] += r.pick([-1, 1]) * r.uniform(0.1, 0.35) * curve.truth.primary;
    curve.readings[wrong] = Number(curve.readings[wrong].toFixed(3));
    return curve;
  }),
  scenario("first reading at half of primary", [doubt, doubt, may(12, 4)], (r) => {
    const t50 = r.logUniform(0.7, 2.6);
    const from = t50 * r.uniform(0.65, 1.4);
    return measure(
      r,
      { ...ordinary(r), t50, primary: r.logUniform(0.3, 1) },
      { ...HAND, times: BY_HAND.filter((t) => t >= from) },
    );
  }),
  scenario("stopped at T of 0.35 to 0.8", [never, doubt, doubt], (r) => {
    const t50 = r.logUniform(3, 60);
    const end = (t50 * r.uniform(0.35, 0.8)) / T50_EXACT;
    const times = [...BY_HAND.filter((t) => t < 0.8 * end), Number(end.toPrecision(7))];
    return measure(r, { ...ordinary(r), t50, primary: r.logUniform(0.3, 1) }, { ...HAND, times });
  }),
  scenario("stopped at T of 0.9 to 1.6", [doubt, may(12, 5), may(25, 8)], (r) => {
    const t50 = r.logUniform(3, 60);
    const end = (t50 * r.uniform(0.9, 1.6)) / T50_EXACT;
    const times = [...BY_HAND.filter((t) => t < 0.8 * end), Number(end.toPrecision(7))];
    return measure(r, { ...ordinary(r), t50, primary: r.logUniform(0.25, 1) }, { ...HAND, times });
  }),
  scenario("creep throughout, no inflection", [doubt, doubt, doubt], (r) =>
    measure(
      r,
      {
        ...ordinary(r),
        primary: r.logUniform(0.06, 0.25),
        creep: r.uniform(1, 1.8),
        early: r.uniform(1, 2.5),
        t50: r.logUniform(3, 30),
      },
      HAND,
    ),
  ),
  scenario("primary over before the first reading", [never, doubt, doubt], (r) =>
    measure(r, { ...ordinary(r), t50: r.logUniform(0.0015, 0.012) }, HAND),
  ),
  scenario("no movement", [never, never, never], (r) =>
    measure(
      r,
      { ...ordinary(r), primary: 0, d0: 0 },
      { times: BY_HAND, noise: 0.0005, step: 0.001, ...(r.uniform(0, 1) < 0.5 ? { backward: 2 } : {}) },
    ),
  ),
  scenario("lost in the noise", [doubt, doubt, doubt], (r) =>
    measure(
      r,
      { ...ordinary(r), d0: 0, primary: r.uniform(0.003, 0.009) },
      { times: BY_HAND, noise: 0.002, step: 0.0025 },
    ),
  ),
  scenario("13 hand readings, inch dial", DIAL, (r) =>
    measure(
      r,
      { ...ordinary(r), t50: r.logUniform(1, 20), primary: r.logUniform(0.3, 1), creep: r.uniform(0.03, 0.1) },
      { ...INCH, times: BY_HAND_LATE },
    ),
  ),
];
