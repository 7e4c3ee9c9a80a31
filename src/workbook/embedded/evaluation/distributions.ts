/**
 * Distributions of statistics under Excel's names, which the engine lacks. The incomplete gamma and beta functions are calculated as series and
 * continued fractions (Abramowitz and Stegun, 6.5.29, 6.5.31 and 26.5.8; from memory); the inverses halve an interval. A percentage point
 * above one half is found from the upper tail, so that none of its digits is lost.
 */
import type { EvaluationError } from "@odoo/o-spreadsheet";
import { noNumber, ofNumbers } from "./more-functions";

/** Lanczos' approximation for g = 7 with nine terms, to 15 digits (from memory). */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** The logarithm of the gamma function of a positive number. */
function lnGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - lnGamma(1 - x);
  const t = x + 6.5;
  const series = LANCZOS.reduce((sum, term, i) => sum + (i === 0 ? term : term / (x - 1 + i)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(series);
}

const MOST_TERMS = 10_000;
const TINY = 1e-300;
const PRECISION = 1e-16;

/** The value of b0 + a1/(b1 + a2/(b2 + ...)) by Lentz' way; `term` gives a and b of a place from 1 on. */
function continued(b0: number, term: (n: number) => readonly [a: number, b: number]): number {
  let value = b0 || TINY;
  let [c, d] = [value, 0];
  for (let n = 1; n < MOST_TERMS; n++) {
    const [a, b] = term(n);
    d = 1 / (b + a * d || TINY);
    c = b + a / c || TINY;
    value *= c * d;
    if (Math.abs(c * d - 1) < PRECISION) break;
  }
  return value;
}

/** A share of a distribution below a value, and the share above it. */
interface Tails {
  readonly below: number;
  readonly above: number;
}

/** The incomplete gamma function of x to a. */
function gammaTails(a: number, x: number): Tails {
  if (x <= 0) return { below: 0, above: 1 };
  const factor = Math.exp(a * Math.log(x) - x - lnGamma(a));
  if (x < a + 1) {
    let [term, sum] = [1 / a, 1 / a];
    for (let n = 1; n < MOST_TERMS && term > sum * PRECISION; n++) sum += term *= x / (a + n);
    return { below: factor * sum, above: 1 - factor * sum };
  }
  const above = factor / continued(x + 1 - a, (n) => [-n * (n - a), x + 2 * n + 1 - a]);
  return { below: 1 - above, above };
}

/** The incomplete beta function of x, with y = 1 - x. */
function betaTails(a: number, b: number, x: number, y: number): Tails {
  if (x <= 0) return { below: 0, above: 1 };
  if (y <= 0) return { below: 1, above: 0 };
  if (x > (a + 1) / (a + b + 2)) {
    const { below, above } = betaTails(b, a, y, x);
    return { below: above, above: below };
  }
  const factor = Math.exp(lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(x) + b * Math.log(y)) / a;
  const below =
    factor /
    continued(1, (n) => {
      const m = Math.floor(n / 2);
      const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
      const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
      return [n % 2 === 0 ? even : odd, 1];
    });
  return { below, above: 1 - below };
}

const normal = (z: number): Tails => {
  const { above } = gammaTails(0.5, (z * z) / 2);
  const [small, large] = [above / 2, 1 - above / 2];
  return z < 0 ? { below: small, above: large } : { below: large, above: small };
};
const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

const student = (freedom: number, t: number): Tails => {
  const sum = freedom + t * t;
  const { below } = betaTails(freedom / 2, 0.5, freedom / sum, (t * t) / sum);
  return t < 0 ? { below: below / 2, above: 1 - below / 2 } : { below: 1 - below / 2, above: below / 2 };
};
const studentDensity = (freedom: number, t: number): number =>
  Math.exp(lnGamma((freedom + 1) / 2) - lnGamma(freedom / 2) - ((freedom + 1) / 2) * Math.log(1 + (t * t) / freedom)) /
  Math.sqrt(freedom * Math.PI);

const chiSquare = (freedom: number, x: number): Tails => gammaTails(freedom / 2, x / 2);
const chiSquareDensity = (freedom: number, x: number): number => {
  const half = freedom / 2;
  return x > 0 ? Math.exp((half - 1) * Math.log(x) - x / 2 - half * Math.LN2 - lnGamma(half)) : freedom === 2 ? 0.5 : 0;
};

const fisher = (over: number, under: number, f: number): Tails => {
  const sum = over * f + under;
  return betaTails(over / 2, under / 2, (over * f) / sum, under / sum);
};
const fisherDensity = (over: number, under: number, f: number): number => {
  if (f <= 0) return over === 2 ? 1 : 0;
  const [a, b] = [over / 2, under / 2];
  const scale = lnGamma(a + b) - lnGamma(a) - lnGamma(b) + a * Math.log(over / under);
  return Math.exp(scale + (a - 1) * Math.log(f) - (a + b) * Math.log(1 + (over * f) / under));
};

/** The value from 0 on below which a share of a distribution lies; `share` and `rest` are together 1. */
function pointFromZero(tails: (x: number) => Tails, share: number, rest: number): number {
  const isBelow = (x: number): boolean => (share < rest ? tails(x).below < share : tails(x).above > rest);
  if (!isBelow(0)) return 0;
  let [low, high] = [0, 1];
  while (isBelow(high) && high < 1e300) [low, high] = [high, high * 2];
  for (let halved = 0; halved < 1100; halved++) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (isBelow(middle)) low = middle;
    else high = middle;
  }
  return high;
}

/** The same for a distribution that is symmetrical about 0. */
const pointAboutZero = (tails: (x: number) => Tails, share: number): number =>
  share === 0.5 ? 0 : share < 0.5 ? -pointFromZero(tails, 1 - share, share) : pointFromZero(tails, share, 1 - share);

type Answer = number | EvaluationError;
const isShare = (p: number): boolean => p > 0 && p < 1;
/** The answer if the condition holds, otherwise #NUM!. */
const where = (holds: boolean, answer: () => number): Answer => (holds ? answer() : noNumber());

const CUMULATIVE = "cumulative (boolean)";
const FREEDOM = "degrees_of_freedom (number)";
const BOTH = ["numerator_freedom (number)", "denominator_freedom (number)"];
const NORMAL = ["mean (number)", "standard_deviation (number)"];

/** Adds one function under several names. */
function under(
  names: readonly string[],
  args: readonly string[],
  description: string,
  compute: (...numbers: number[]) => Answer,
): void {
  for (const name of names) ofNumbers(name, args, description, compute);
}

const X = "x (number)";
const P = "probability (number)";

/** The error function; its complement for a negative number is above 1. */
const errorFunction = (x: number): number => Math.sign(x) * gammaTails(0.5, x * x).below;
const complement = (x: number): number => (x < 0 ? 2 - gammaTails(0.5, x * x).above : gammaTails(0.5, x * x).above);

under(
  ["ERF"],
  ["lower (number)", "upper (number, optional)"],
  "The error function, from 0 or from one number to another.",
  (from, to) => (to === undefined ? errorFunction(from) : errorFunction(to) - errorFunction(from)),
);
under(["ERF.PRECISE"], [X], "The error function.", errorFunction);
under(["ERFC", "ERFC.PRECISE"], [X], "1 less the error function.", complement);
under(["GAMMALN", "GAMMALN.PRECISE"], [X], "The logarithm of the gamma function.", (x) =>
  where(x > 0, () => lnGamma(x)),
);

under(["NORM.S.DIST"], ["z (number)", CUMULATIVE], "The standard normal distribution.", (z, isSum) =>
  isSum ? normal(z).below : normalDensity(z),
);
under(["NORMSDIST"], ["z (number)"], "The standard normal distribution, cumulative.", (z) => normal(z).below);
under(["NORM.DIST", "NORMDIST"], [X, ...NORMAL, CUMULATIVE], "The normal distribution.", (x, mean, spread, isSum) =>
  where(spread > 0, () => (isSum ? normal((x - mean) / spread).below : normalDensity((x - mean) / spread) / spread)),
);
under(["NORM.S.INV", "NORMSINV"], [P], "The inverse of the standard normal distribution.", (p) =>
  where(isShare(p), () => pointAboutZero(normal, p)),
);
under(["NORM.INV", "NORMINV"], [P, ...NORMAL], "The inverse of the normal distribution.", (p, mean, spread) =>
  where(isShare(p) && spread > 0, () => mean + spread * pointAboutZero(normal, p)),
);
under(["LOGNORM.DIST"], [X, ...NORMAL, CUMULATIVE], "The lognormal distribution.", (x, mean, spread, isSum) =>
  where(x > 0 && spread > 0, () => {
    const z = (Math.log(x) - mean) / spread;
    return isSum ? normal(z).below : normalDensity(z) / (x * spread);
  }),
);
under(["LOGNORM.INV", "LOGINV"], [P, ...NORMAL], "The inverse of the lognormal distribution.", (p, mean, spread) =>
  where(isShare(p) && spread > 0, () => Math.exp(mean + spread * pointAboutZero(normal, p))),
);

const CONFIDENCE = ["alpha (number)", "standard_deviation (number)", "size (number)"];
under(["CONFIDENCE", "CONFIDENCE.NORM"], CONFIDENCE, "Half the confidence interval of a mean.", (alpha, spread, size) =>
  where(
    isShare(alpha) && spread > 0 && size >= 1,
    () => (pointFromZero(normal, 1 - alpha / 2, alpha / 2) * spread) / Math.sqrt(Math.trunc(size)),
  ),
);
under(["CONFIDENCE.T"], CONFIDENCE, "Half the confidence interval of a mean by Student's t.", (alpha, spread, size) => {
  const count = Math.trunc(size);
  return where(
    isShare(alpha) && spread > 0 && count >= 2,
    () => (pointFromZero((t) => student(count - 1, t), 1 - alpha / 2, alpha / 2) * spread) / Math.sqrt(count),
  );
});

under(["T.DIST"], [X, FREEDOM, CUMULATIVE], "Student's t distribution.", (x, freedom, isSum) => {
  const n = Math.trunc(freedom);
  return where(n >= 1, () => (isSum ? student(n, x).below : studentDensity(n, x)));
});
under(["T.DIST.RT"], [X, FREEDOM], "The upper tail of Student's t distribution.", (x, freedom) =>
  where(freedom >= 1, () => student(Math.trunc(freedom), x).above),
);
under(["T.DIST.2T"], [X, FREEDOM], "Both tails of Student's t distribution.", (x, freedom) =>
  where(freedom >= 1 && x >= 0, () => 2 * student(Math.trunc(freedom), x).above),
);
under(
  ["TDIST"],
  [X, FREEDOM, "tails (number)"],
  "One or both tails of Student's t distribution.",
  (x, freedom, tails) => {
    const count = Math.trunc(tails);
    const isRight = freedom >= 1 && x >= 0 && (count === 1 || count === 2);
    return where(isRight, () => count * student(Math.trunc(freedom), x).above);
  },
);
under(["T.INV"], [P, FREEDOM], "The inverse of Student's t distribution.", (p, freedom) =>
  where(isShare(p) && freedom >= 1, () => pointAboutZero((t) => student(Math.trunc(freedom), t), p)),
);
under(["T.INV.2T", "TINV"], [P, FREEDOM], "The inverse of both tails of Student's t distribution.", (p, freedom) =>
  where(p > 0 && p <= 1 && freedom >= 1, () => pointFromZero((t) => student(Math.trunc(freedom), t), 1 - p / 2, p / 2)),
);

under(["CHISQ.DIST"], [X, FREEDOM, CUMULATIVE], "The chi-squared distribution.", (x, freedom, isSum) => {
  const n = Math.trunc(freedom);
  return where(x >= 0 && n >= 1, () => (isSum ? chiSquare(n, x).below : chiSquareDensity(n, x)));
});
under(["CHISQ.DIST.RT", "CHIDIST"], [X, FREEDOM], "The upper tail of the chi-squared distribution.", (x, freedom) =>
  where(x >= 0 && freedom >= 1, () => chiSquare(Math.trunc(freedom), x).above),
);
under(["CHISQ.INV"], [P, FREEDOM], "The inverse of the chi-squared distribution.", (p, freedom) =>
  where(p >= 0 && p < 1 && freedom >= 1, () => pointFromZero((x) => chiSquare(Math.trunc(freedom), x), p, 1 - p)),
);
under(
  ["CHISQ.INV.RT", "CHIINV"],
  [P, FREEDOM],
  "The inverse of the upper tail of the chi-squared distribution.",
  (p, freedom) =>
    where(p > 0 && p <= 1 && freedom >= 1, () => pointFromZero((x) => chiSquare(Math.trunc(freedom), x), 1 - p, p)),
);

under(["F.DIST"], [X, ...BOTH, CUMULATIVE], "The F distribution.", (x, over, below, isSum) => {
  const [m, n] = [Math.trunc(over), Math.trunc(below)];
  return where(x >= 0 && m >= 1 && n >= 1, () => (isSum ? fisher(m, n, x).below : fisherDensity(m, n, x)));
});
under(["F.DIST.RT", "FDIST"], [X, ...BOTH], "The upper tail of the F distribution.", (x, over, below) =>
  where(x >= 0 && over >= 1 && below >= 1, () => fisher(Math.trunc(over), Math.trunc(below), x).above),
);
under(["F.INV"], [P, ...BOTH], "The inverse of the F distribution.", (p, over, below) =>
  where(isShare(p) && over >= 1 && below >= 1, () =>
    pointFromZero((x) => fisher(Math.trunc(over), Math.trunc(below), x), p, 1 - p),
  ),
);
under(["F.INV.RT", "FINV"], [P, ...BOTH], "The inverse of the upper tail of the F distribution.", (p, over, below) =>
  where(isShare(p) && over >= 1 && below >= 1, () =>
    pointFromZero((x) => fisher(Math.trunc(over), Math.trunc(below), x), 1 - p, p),
  ),
);
