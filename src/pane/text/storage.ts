/**
 * What the pane keeps on this machine between two openings. In a frame of another's page a browser may forbid it and throw, and
 * in the runtime that Excel shares between the pane and the functions there may be none (office-js issue 1568): nothing is kept
 * then.
 */

function storage(): Storage | null {
  try {
    return window.localStorage ?? null;
  } catch {
    return null;
  }
}

/** What was kept under a key; null where nothing was, or nothing can be. */
export function kept(key: string): string | null {
  try {
    return storage()?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

/** Keeps a text, or forgets what was kept; says whether that could be done. */
export function keep(key: string, value: string | undefined): boolean {
  const place = storage();
  if (!place) return false;
  try {
    if (value === undefined) place.removeItem(key);
    else place.setItem(key, value);
    return true;
  } catch {
    return false;
  }
}
