/**
 * Keeps requests and answers below the limits of Excel on the web: 5 MB each (Microsoft, "Resource limits and
 * performance optimization for Office Add-ins").
 */
import { Stopped, type Course } from "../in-slices";
import { codeOf } from "./sentence";

/** Bytes of data in one request. Well below 5 MB: the library encodes the request once more, with escapes. */
export const BYTES_PER_REQUEST = 1_500_000;

/** Bytes of an action beside its arguments: the action, and the objects that lead to it. */
const BYTES_PER_ACTION = 600;

/** An upper bound for the bytes of a value in a request. */
export const bytesOf = (value: unknown): number => JSON.stringify(value).replace(/[^\x20-\x7e]/g, "???").length;

/** One or a few actions, with the bytes of their arguments. */
export interface Step {
  readonly bytes?: number;
  readonly act: () => void;
}

/** Goes on with work between two of its requests, unless a person has stopped it. */
export function goOn(course: Course | undefined, share: number): void {
  if (course?.signal.aborted) throw new Stopped();
  course?.tell(share);
}

/** Carries out steps in their order, in as few requests as possible. Throws Stopped between two requests. */
export async function send(context: Excel.RequestContext, steps: readonly Step[], course?: Course): Promise<void> {
  let bytes = 0;
  for (const [index, { bytes: own = 0, act }] of steps.entries()) {
    if (bytes > 0 && bytes + own + BYTES_PER_ACTION > BYTES_PER_REQUEST) {
      await context.sync();
      goOn(course, index / steps.length);
      bytes = 0;
    }
    act();
    bytes += own + BYTES_PER_ACTION;
  }
  if (bytes > 0) await context.sync();
}

/** Whether steps take more than one request, so that a pane that is closed in between leaves them half done. */
export const isSeveral = (steps: readonly Step[]): boolean =>
  steps.reduce((sum, { bytes = 0 }) => sum + bytes + BYTES_PER_ACTION, 0) > BYTES_PER_REQUEST;

/** Cuts a list into runs whose items sum to at most `most`; a larger item is a run of its own. */
export function runsOf<T>(list: readonly T[], sizeOf: (item: T) => number, most: number): T[][] {
  const runs: T[][] = [];
  let run: T[] = [];
  let size = Infinity;
  for (const item of list) {
    const own = sizeOf(item);
    if (size + own > most) {
      runs.push((run = []));
      size = 0;
    }
    run.push(item);
    size += own;
  }
  return runs;
}

const TOO_LARGE: readonly string[] = [
  "RequestPayloadSizeLimitExceeded",
  "ResponsePayloadSizeLimitExceeded",
  "RangeExceedsLimit",
  "OperationCellsExceedLimit",
];

/** Whether Excel refused a request or an answer because of its size, so that half of it may work. */
export const isTooLarge = (error: unknown): boolean => TOO_LARGE.includes(codeOf(error));
