/**
 * Ranges share what is fixed in them ("$A1"). The engine makes a list and two objects of it for each range, and only reads them: 2 MB for
 * a report.
 */
export interface Part {
  readonly colFixed: boolean;
  readonly rowFixed: boolean;
}

interface WithParts {
  parts: readonly Part[];
}

const known = new Map<string, readonly Part[]>();

/** The same range; its parts are those of the first range that has equal ones. */
export function shareParts<T>(range: T): T {
  // The engine's own type of a range leaves its parts out.
  const own = range as T & Partial<WithParts>;
  if (!own.parts) return range;
  const key = own.parts.map(({ colFixed, rowFixed }) => `${colFixed} ${rowFixed}`).join();
  const parts = known.get(key) ?? own.parts;
  known.set(key, parts);
  own.parts = parts;
  return range;
}
