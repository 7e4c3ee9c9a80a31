/** Two-sided 95 % points of Student's t for 1 to 10 degrees of freedom. Source: any statistical table. */
const TABLE = [12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228];
const NORMAL = 1.959964;

/** The value that |t| exceeds with probability 5 %; above 10 degrees of freedom by the Cornish-Fisher expansion (to 1e-4). */
export function studentsT95(freedom: number): number {
  if (freedom < 1) return Infinity;
  const inTable = freedom <= TABLE.length ? TABLE[Math.floor(freedom) - 1] : undefined;
  if (inTable !== undefined) return inTable;
  const z = NORMAL;
  const v = freedom;
  return (
    z +
    (z ** 3 + z) / (4 * v) +
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * v * v) +
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * v ** 3)
  );
}
