/** Keeps a copy of the workbook while it has changes that are in no file, and removes the copy when they are saved. */

/** ms after the last change: the person has stopped to think, or to read the next dial. */
const QUIET = 5_000;
/** ms from one copy to the next. */
const BETWEEN = 30_000;
/** Making copies takes at most this share of the time. */
const SHARE = 0.05;

export interface Keeping {
  /** The last step of the workbook; it is equal at two times if nothing changed between them. */
  readonly step: () => unknown;
  readonly isSaved: () => boolean;
  /** Makes the copy and puts it away; gives false if the workbook was changed meanwhile, so that none was put away. */
  readonly keep: () => Promise<boolean>;
  readonly forget: () => Promise<void>;
  /** Called once if no copy can be kept. */
  readonly failed: (error: unknown) => void;
  /** The time in ms. */
  readonly now: () => number;
}

/** A function that is called every second, and when the page is hidden (`isUrgent`). */
export function copyKeeper({
  step,
  isSaved,
  keep,
  forget,
  failed,
  now,
}: Keeping): (isUrgent?: boolean) => Promise<void> {
  let seen = step();
  let changed = now();
  let kept: { readonly step: unknown } | undefined;
  let wasSaved = true;
  let nextAt = -Infinity;
  let isAtWork = false;
  let hasFailed = false;

  const work = async (isUrgent: boolean): Promise<void> => {
    const at = now();
    const current = step();
    if (current !== seen) [seen, changed] = [current, at];
    if (isSaved()) {
      if (!wasSaved) await forget();
      [wasSaved, kept] = [true, undefined];
      return;
    }
    wasSaved = false;
    if (kept?.step !== current && (isUrgent || (at - changed >= QUIET && at >= nextAt))) {
      let pause = BETWEEN;
      try {
        if (await keep()) kept = { step: current };
        else pause = QUIET;
      } finally {
        nextAt = now() + Math.max(pause, (now() - at) / SHARE);
      }
    }
  };

  return async (isUrgent = false) => {
    if (isAtWork) return;
    isAtWork = true;
    try {
      await work(isUrgent);
    } catch (error) {
      if (!hasFailed) failed(error);
      hasFailed = true;
    } finally {
      isAtWork = false;
    }
  };
}
