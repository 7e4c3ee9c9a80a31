import {
  hyperbola,
  HYPERBOLA_END,
  HYPERBOLA_FROM,
  HYPERBOLA_RATE,
  HYPERBOLA_TO,
} from "../../../src/reduction/increment/hyperbola";
import { powrie4_4 } from "../../published/data/time-curves.json";
import { degree } from "../../generators/time-curves";

/** Times of exact theory at a rate of 1 per minute, even in T, with U from 60 to 90 %. */
const TIMES = Array.from({ length: 600 }, (_, i) => 0.2 + 0.0012 * i).filter((T) => {
  const U = degree(T);
  return U >= HYPERBOLA_FROM && U <= HYPERBOLA_TO;
});

test("the constants are those of the line of T/U on T through 60 and 90 % of theory", () => {
  // T by Terzaghi's series, as timeFactor gives it; the constants to the three digits of the reference figures.
  const [from, to] = [0.28637, 0.84809];
  expect([degree(from), degree(to)].map((U) => Number(U.toFixed(4)))).toEqual([HYPERBOLA_FROM, HYPERBOLA_TO]);
  const slope = (to / HYPERBOLA_TO - from / HYPERBOLA_FROM) / (to - from);
  expect(slope).toBeCloseTo(HYPERBOLA_END, 3);
  expect(from / HYPERBOLA_FROM / slope - from).toBeCloseTo(HYPERBOLA_RATE, 3);
});

test("on exact theory it gives cv 2.3 % low and primary compression 0.8 % high", () => {
  const found = hyperbola(
    TIMES.map((T) => T / 0.02),
    TIMES.map((T) => -3 * degree(T)),
  );
  expect((found?.rate ?? 0) / 0.02).toBeCloseTo(0.977, 2);
  expect((found?.primary ?? 0) / -3).toBeCloseTo(1.008, 2);
});

test(`by hand on ${powrie4_4.source}`, () => {
  const { minutes, settlement, height, hyperbola: expected } = powrie4_4;
  const used = minutes
    .map((t, i) => ({ t, d: settlement[i] ?? NaN }))
    .filter(({ t }) => t >= expected.from && t <= expected.to);
  const found = hyperbola(used.map(({ t }) => t), used.map(({ d }) => d - expected.d0)); // prettier-ignore
  expect(found?.slope).toBeCloseTo(expected.slopePerMm, 3);
  expect(found?.intercept).toBeCloseTo(expected.interceptMinPerMm, 2);
  expect(found?.primary).toBeCloseTo(expected.primaryMm, 4);
  expect((found?.rate ?? 0) * (height / 2) ** 2).toBeCloseTo(expected.cvMm2PerMin, 3);
});

test("it is undefined with fewer than three readings, and where t/d does not rise", () => {
  expect(hyperbola([10, 20], [1, 1.5])).toBeUndefined();
  expect(hyperbola([10, 20, 40], [1, 2.2, 5])).toBeUndefined();
  expect(hyperbola([], [])).toBeUndefined();
});
