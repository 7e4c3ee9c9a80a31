/** Two x between which a function changes sign, and its values there. */
export interface Bracket {
  readonly low: number;
  readonly atLow: number;
  readonly high: number;
  readonly atHigh: number;
}

/**
 * The zero of a function between two x at which it has opposite signs, to within `tolerance`. Each step takes the
 * secant through the ends of the bracket; an end that stays twice has its value halved. A smooth function takes six to
 * nine evaluations, a function with a step more.
 *
 * Source: the Illinois rule: Dowell & Jarratt (1971), BIT 11, 168-174 (from memory).
 */
export function rootBetween(f: (x: number) => number, bracket: Bracket, tolerance: number): number {
  let { low: a, atLow: fa, high: b, atHigh: fb } = bracket;
  for (let k = 0; k < 100 && fb !== 0 && Math.abs(b - a) > tolerance; k++) {
    const x = b - (fb * (b - a)) / (fb - fa);
    const fx = f(x);
    if (Math.sign(fx) !== Math.sign(fb)) {
      a = b;
      fa = fb;
    } else fa /= 2;
    b = x;
    fb = fx;
  }
  return b;
}
