/**
 * What the pane stores on this computer between two starts. In a frame of another site a browser may forbid this and
 * throw, and the runtime that Excel shares between the pane and the functions may have no storage (office-js issue
 * 1568). In these cases nothing is stored.
 */

function storage(): Storage | null {
  try {
    return window.localStorage ?? null;
  } catch {
    return null;
  }
}

/** The text stored under a key; null if there is none or the storage cannot be used. */
export function kept(key: string): string | null {
  try {
    return storage()?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

/** Stores a text, or removes the stored text. Returns true if this succeeded. */
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
