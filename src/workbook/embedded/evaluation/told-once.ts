/**
 * The engine learns that a formula reads the cells of a name each time the formula is evaluated, and sorts all that it knows of these columns
 * anew before it next looks there: of the time of a changed cell this took a twentieth. Here what the engine knows already is left out.
 * Casts: the engine's types do not include the inner parts of its evaluator.
 */
import type { Evaluator, SheetRange } from "./engine-parts";

/** The rows of a column that are read, and the formulas that read them. */
interface Interval {
  readonly top: number;
  readonly bottom: number;
  readonly dependents: SheetRange;
}

interface Node {
  readonly interval: Interval;
  readonly left: Node | null;
  readonly right: Node | null;
}

/** What the engine knows of a column: a tree in the order of `compare`. */
interface Tree {
  readonly root: Node | null;
  insert(interval: Interval): void;
}

interface Graph {
  getOrCreateIntervalTree(sheetId: string, col: number): Tree;
}

/** The order by all but the row of the formulas. */
function compareColumns(one: Interval, other: Interval): number {
  const [{ zone: a, sheetId }, { zone: b, sheetId: otherId }] = [one.dependents, other.dependents];
  if (one.top !== other.top) return one.top - other.top;
  if (one.bottom !== other.bottom) return one.bottom - other.bottom;
  if (sheetId !== otherId) return sheetId > otherId ? 1 : -1;
  return a.left - b.left || a.right - b.right;
}

/** The order in which the engine keeps intervals. */
const compare = (one: Interval, other: Interval): number =>
  compareColumns(one, other) || one.dependents.zone.top - other.dependents.zone.top;

/** Whether a tree has an interval: the engine joins those of formulas below one another. */
function has({ root }: Tree, wanted: Interval): boolean {
  let last: Interval | undefined;
  for (let node = root; node;) {
    const isBefore = compare(node.interval, wanted) <= 0;
    if (isBefore) last = node.interval;
    node = isBefore ? node.right : node.left;
  }
  return (
    last !== undefined &&
    compareColumns(last, wanted) === 0 &&
    last.dependents.zone.bottom >= wanted.dependents.zone.bottom
  );
}

const corrected = new WeakSet<Tree>();

/** Lets the trees of the engine leave out what they have. */
export function tellOnce(evaluator: Evaluator): void {
  const Graph = evaluator.formulaDependencies().constructor as new () => Graph;
  const trees = Object.getPrototypeOf(new Graph().getOrCreateIntervalTree("", 0)) as Tree;
  if (corrected.has(trees)) return;
  corrected.add(trees);
  const { insert } = trees;
  trees.insert = function (this: Tree, interval) {
    if (!has(this, interval)) insert.call(this, interval);
  };
}
