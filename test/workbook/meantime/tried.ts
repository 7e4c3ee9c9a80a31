/** Before which requests of an operation somebody else acts. */

/**
 * `npm run meantime` tries every request. `npm test` tries the first, the last and one between them, because all of them take
 * four minutes of processor time; of a change that hardly matters it tries the one between.
 */
const IS_EVERY = process.env.CLAYLEDGER_EVERY_REQUEST === "1";

/** The requests of a piece of work that makes so many. */
export const upTo = (count: number): number[] => Array.from({ length: count }, (_, index) => index + 1);

/** Of a list of requests, those that are tried. */
export const tried = (requests: readonly number[], matters = true): number[] =>
  IS_EVERY
    ? [...requests]
    : [
        ...new Set(
          (matters ? [0, 1 / 2, 1] : [1 / 2]).map((share) => requests[Math.round(share * (requests.length - 1))] ?? 1),
        ),
      ];

/** The ends as the table has them, in their order; if not every request was tried, some of them may not have been seen. */
export function expectEnds(seen: readonly string[], table: string, between = ", "): void {
  const ends = seen.filter((end, index) => end !== seen[index - 1]);
  const list = `${between}${table}${between}`;
  const last = ends.reduce((from, end) => (from < 0 ? from : list.indexOf(`${between}${end}${between}`, from)), 0);
  expect(last >= 0 && !IS_EVERY ? table : ends.join(between)).toBe(table);
}
