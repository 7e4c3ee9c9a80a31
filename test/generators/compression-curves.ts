/**
 * Makes whole tests with known truth, by a knee law, with the faults that curves have in practice. The data are
 * invented.
 */

/** A small seeded generator of uniform numbers (mulberry32, public domain). */
function random(seed: number): () => number {
  let a = seed >>> 0;
  return () => {
    a = (a + 0x6d2b79f5) >>> 0;
    let t = a;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * The form of the curve, by seed: two lines on e against log of stress, joined by a logistic rounding or by a
 * hyperbola; or two lines on ln(1 + e), whose virgin part flattens a little on e.
 */
const LAWS = ["logistic", "hyperbola", "natural"] as const;
export type Law = (typeof LAWS)[number];

export interface MadeCurve {
  readonly scenario: string;
  readonly law: Law;
  readonly kind: "e" | "strain";
  readonly stresses: number[];
  readonly values: number[];
  readonly truth: {
    readonly preconsolidation: number;
    /** Void ratio or strain per log cycle, by `kind`, on the virgin line; for the natural law, at the corner. */
    readonly Cc: number;
    readonly Cr: number;
    readonly width: number;
  };
}

interface Recipe {
  /** Least and greatest number of first-loading points. */
  readonly points: [number, number];
  /** Ratio of each load to the load before. */
  readonly ratio: number;
  /** Position of the knee among the loads: 1.5 is half-way (on log of stress) between the second and the third. */
  readonly knee: (n: number, uniform: () => number) => number;
  readonly width: [number, number];
  /** Standard deviation of a value, as a share of Cc. */
  readonly noise: number;
  /** How much the virgin slope just past the knee exceeds its last value. */
  readonly bend?: [number, number];
  readonly swelling?: boolean;
  readonly loop?: boolean;
  readonly unload?: boolean;
}

const inside = (n: number, u: () => number): number => 2.3 + u() * (n - 6.5);

export const RECIPES: Readonly<Record<string, Recipe>> = {
  "sharp, exact": { points: [8, 10], ratio: 2, knee: inside, width: [0, 0], noise: 0 },
  "slight rounding, exact": { points: [8, 10], ratio: 2, knee: inside, width: [0.03, 0.07], noise: 0 },
  "rounding, noise": { points: [8, 10], ratio: 2, knee: inside, width: [0.06, 0.09], noise: 0.004 },
  "disturbed, wide rounding": { points: [8, 10], ratio: 2, knee: inside, width: [0.12, 0.2], noise: 0.004 },
  "loop and unloading": {
    points: [8, 10],
    ratio: 2,
    knee: inside,
    width: [0.05, 0.08],
    noise: 0.004,
    loop: true,
    unload: true,
  },
  "swelling at seating": {
    points: [9, 11],
    ratio: 2,
    knee: (n, u) => inside(n, u) + 0.7,
    width: [0.05, 0.08],
    noise: 0.004,
    swelling: true,
    unload: true,
  },
  "sensitive, virgin line bends": {
    points: [8, 9],
    ratio: 2,
    knee: inside,
    width: [0.02, 0.04],
    noise: 0.002,
    bend: [0.7, 2],
  },
  "seven points": { points: [7, 7], ratio: 2, knee: (_, u) => 2.3 + 0.9 * u(), width: [0.03, 0.06], noise: 0.004 },
  "twelve points": { points: [12, 12], ratio: 2, knee: inside, width: [0.03, 0.08], noise: 0.004 },
  "load increment ratio 0.5": {
    points: [14, 14],
    ratio: 1.5,
    knee: (n, u) => 4 + u() * (n - 10),
    width: [0.03, 0.08],
    noise: 0.004,
  },
  "yield not reached": {
    points: [8, 10],
    ratio: 2,
    knee: (n, u) => n - 0.4 + 2 * u(),
    width: [0.03, 0.07],
    noise: 0.004,
    unload: true,
  },
  "yield before the first load": {
    points: [8, 10],
    ratio: 2,
    knee: (_, u) => -1 + 0.4 * u(),
    width: [0.02, 0.05],
    noise: 0.004,
  },
  "one virgin point": {
    points: [8, 10],
    ratio: 2,
    knee: (n) => n - 2.5 + 0.1,
    width: [0.02, 0.05],
    noise: 0.004,
  },
  "yield in the second increment": {
    points: [8, 10],
    ratio: 2,
    knee: (_, u) => 1 + 0.3 * u(),
    width: [0.02, 0.05],
    noise: 0.002,
  },
};

export type Scenario = keyof typeof RECIPES;

/** One curve of a scenario; odd seeds give strain, even seeds void ratio. */
export function makeCurve(scenario: string, seed: number): MadeCurve {
  const recipe = RECIPES[scenario];
  let hash = 2166136261;
  for (const char of scenario) hash = Math.imul(hash ^ char.charCodeAt(0), 16777619);
  const u = random(hash + 7919 * seed);
  const between = ([low, high]: readonly [number, number]): number => low + (high - low) * u();
  const normal = (): number => Math.sqrt(-2 * Math.log(1 - u())) * Math.cos(2 * Math.PI * u());

  const n = Math.round(between(recipe.points));
  const first = [5, 6.25, 10, 12.5, 25][Math.floor(5 * u())];
  const loads = Array.from({ length: n }, (_, i) => Number((first * recipe.ratio ** i).toPrecision(7)));
  const step = Math.log10(recipe.ratio);
  const knee = recipe.knee(n, u);
  const corner = Math.log10(first) + knee * step;
  const Cc = 0.15 + 0.85 * u() ** 1.5;
  const Cr = Cc * (0.05 + 0.17 * u());
  const width = between(recipe.width);
  const bend = recipe.bend ? between(recipe.bend) : 0;
  const fade = 0.35 + 0.25 * u();
  const e1 = 0.6 + 1.9 * Math.min(1, Cc) * (0.6 + 0.4 * u());

  const law = LAWS[seed % LAWS.length];
  const rise = (d: number): number =>
    width === 0
      ? Math.max(d, 0)
      : law === "hyperbola"
        ? (d + Math.sqrt(d * d + 4 * (Math.LN2 * width) ** 2)) / 2
        : width * Math.log1p(Math.exp(d / width));
  const bent = (d: number): number => bend * fade * (1 - Math.exp(-rise(d) / fade));
  const drop = (x: number): number => Cr * x + (Cc - Cr) * rise(x - corner) + Cc * bent(x - corner);
  const x0 = Math.log10(first);
  const e = (stress: number): number => {
    const down = drop(Math.log10(stress)) - drop(x0);
    return law === "natural" ? (1 + e1) * Math.exp(-down / (1 + e1)) - 1 : e1 - down;
  };
  const noisy = (value: number): number => value + recipe.noise * Cc * normal();

  const stresses: number[] = [];
  const es: number[] = [];
  const put = (stress: number, value: number): void => {
    stresses.push(stress);
    es.push(noisy(value));
  };
  const loopAfter = recipe.loop ? Math.min(n - 3, Math.ceil(knee) + 1) : -1;
  loads.forEach((stress, i) => {
    put(stress, e(stress) - (recipe.swelling && i === 0 ? Cc * (0.03 + 0.04 * u()) : 0));
    if (i === loopAfter) {
      for (const down of [4, 16]) put(stress / down, e(stress) + Cr * Math.log10(down));
      put(stress / 4, e(stress) + Cr * Math.log10(4) - 0.1 * Cr);
      put(stress, e(stress) - 0.1 * Cr);
    }
  });
  if (recipe.unload)
    for (const down of [4, 16]) put(loads[n - 1] / down, e(loads[n - 1]) + 1.1 * Cr * Math.log10(down));

  const atCorner = law === "natural" ? (1 + e(10 ** corner)) / (1 + e1) : 1;
  const kind = seed % 2 ? "strain" : "e";
  const start = es[0];
  const values =
    kind === "e"
      ? es.map((value) => Number(value.toPrecision(8)))
      : es.map((value) => Number(((start - value) / (1 + start)).toPrecision(8)));
  const scale = kind === "e" ? 1 : 1 + start;
  return {
    scenario,
    law,
    kind,
    stresses,
    values,
    truth: { preconsolidation: 10 ** corner, Cc: (Cc * atCorner) / scale, Cr: Cr / scale, width },
  };
}
