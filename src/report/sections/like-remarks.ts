/** Puts together what is alike: remarks that differ in one number only, and items of the same kind. */
import { nth } from "../../reduction/numeric/lists";

/** Keeps together what has the same key, in the order of the first of each. */
export function together<K, T>(of: readonly T[], keyOf: (one: T) => K): Map<K, T[]> {
  const kept = new Map<K, T[]>();
  for (const one of of) kept.set(keyOf(one), [...(kept.get(keyOf(one)) ?? []), one]);
  return kept;
}

/** A number; the digits of a level such as d90 are none. */
const NUMBER = /(?<![\p{L}\d])\d+(?:[.,]\d+)?/gu;

/** What texts that differ in their numbers only say; undefined if they differ in more than one of them. */
function saidOfAll(texts: readonly string[]): string | undefined {
  const numbers = texts.map((text) => text.match(NUMBER) ?? []);
  const first = nth(numbers, 0);
  const differing = first.flatMap((one, at) => (numbers.every((some) => some[at] === one) ? [] : [at]));
  if (differing.length > 1) return undefined;
  const values = numbers.map((some) => some[differing[0] ?? -1] ?? "");
  // A comma may be the decimal mark of a number.
  const between = values.some((value) => /\D/.test(value)) ? "; " : ", ";
  let at = 0;
  return nth(texts, 0).replaceAll(NUMBER, (number) => (at++ === differing[0] ? values.join(between) : number));
}

/**
 * What has the same remark stands together, in the order of the first of each. Where remarks differ in one number, the numbers stand
 * in the remark in the order of what they are of.
 *
 * @example likeRemarks([[7, "28 % at once"], [8, "ok"], [9, "23 % at once"]])
 * // [[[7, 9], "28, 23 % at once"], [[8], "ok"]]
 */
export function likeRemarks<T>(of: readonly (readonly [T, string])[]): [of: T[], said: string][] {
  const namesOf = (some: typeof of): T[] => some.map(([one]) => one);
  const alike = together(of, ([, said]) => said.replaceAll(NUMBER, "#"));
  return [...alike.values()].flatMap((some): [T[], string][] => {
    const said = saidOfAll(some.map(([, text]) => text));
    if (said !== undefined) return [[namesOf(some), said]];
    return [...together(some, ([, text]) => text)].map(([text, same]) => [namesOf(same), text]);
  });
}
