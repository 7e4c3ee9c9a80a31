/** How an operation and what somebody else did meanwhile have met: one word for the workbook at the end. */
import { SECOND_PANE, UNDO } from "./faults";

export interface End {
  /** The workbook as text. */
  readonly book: string;
  /** The contents of all cells. */
  readonly cells: readonly string[];
  /** The sentence of a failure. */
  readonly message: string;
}

/** Takes one list out of another; what it lacks comes second. */
function without(list: readonly string[], taken: readonly string[]): [left: string[], lacking: string[]] {
  const left = [...list];
  const lacking = taken.filter((one) => {
    const at = left.indexOf(one);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
  return [left, lacking];
}

/** The ends with which an end is compared; the functions carry their work out when they are asked: most comparisons need only one of them. */
export interface Compared {
  readonly what: string;
  /** Before both. */
  readonly begun: End;
  /** The operation alone. */
  readonly ours: End;
  /** What somebody else did, alone. */
  readonly theirs: () => Promise<End>;
  readonly oursFirst: () => Promise<End>;
  readonly theirsFirst: () => Promise<End>;
}

/** Carries work out when it is asked for the first time, and gives the same end to all who ask. */
export function once(work: () => Promise<End>): () => Promise<End> {
  let end: Promise<End> | undefined;
  return () => (end ??= work());
}

/**
 * "done": as if the operation had come first, or as if it alone had been carried out and the second pane, or undo, had been refused. "after": as if it had come last. "both": each has
 * made a sheet of its own, and nothing is lost. "refused": the operation changed nothing, and says so. "wrong" may not be.
 */
export async function called(
  end: End,
  { what, begun, theirs, ours, oursFirst, theirsFirst }: Compared,
): Promise<string> {
  if (end.message) return end.book === (await theirs()).book ? "refused" : `half done: ${end.message}`;
  if (what === SECOND_PANE && end.book === ours.book) return "done";
  if (end.book === (await oursFirst()).book) return "done";
  const after = await theirsFirst();
  if (end.book === after.book && after.message === "") return "after";
  if (what === UNDO && end.book === ours.book) return "done";
  const [added] = without((await theirs()).cells, begun.cells);
  const [, lacking] = without(end.cells, [...ours.cells, ...added]);
  return lacking.length === 0 ? "both" : "wrong";
}
