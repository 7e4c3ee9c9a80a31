/** Differences between a reader's result and the file, in words; empty if there are none. */
import type { Cell, Contents, StoredContents, Value } from "./contents";
import type { OfficeContents } from "./libreoffice-reader";

type Same<T> = (found: T | undefined, wanted: T | undefined) => boolean;

/** Addresses at which two readers differ, with both values. */
function differences<T>(
  what: string,
  found: ReadonlyMap<string, T>,
  wanted: ReadonlyMap<string, T>,
  isSame: Same<T> = (a, b) => a === b,
): string[] {
  const unread = [...wanted.keys()].filter((at) => !found.has(at) && !isSame(undefined, wanted.get(at)));
  return [...found.keys()]
    .filter((at) => !isSame(found.get(at), wanted.get(at)))
    .concat(unread)
    .map(
      (at) => `${what} ${at}: ${JSON.stringify(found.get(at))} where the file has ${JSON.stringify(wanted.get(at))}`,
    );
}

/** Items that only one of two lists has. */
const unlike = (what: string, found: Iterable<string>, wanted: Iterable<string>): string[] => {
  const [a, b] = [found, wanted].map((list) => new Set(list));
  return [
    ...[...a].filter((one) => !b.has(one)).map((one) => `${what} ${one} is not in the file`),
    ...[...b].filter((one) => !a.has(one)).map((one) => `${what} ${one} was not read`),
  ];
};

/** Some readers convert days and numbers to other units. */
const isSameValue: Same<Value> = (a, b) =>
  typeof a === "number" && typeof b === "number" ? Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(b)) : a === b;

/** Compares sheets, merged cells and entry rules, which are equal for all readers; cells by `isSame` of their sheet. */
function inSheets(found: Contents, wanted: Contents, cellsOf: (sheet: string) => string[]): string[] {
  return [
    ...unlike("sheet", found.sheets.keys(), wanted.sheets.keys()),
    ...[...wanted.sheets].flatMap(([name, { merges, rules }]) => {
      const sheet = found.sheets.get(name);
      return sheet
        ? [
            ...unlike("merged", sheet.merges, merges),
            ...differences("rule of", sheet.rules, rules),
            ...cellsOf(name),
          ].map((said) => `${name}: ${said}`)
        : [];
    }),
  ];
}

export function exceljsDifferences(found: Contents, wanted: StoredContents): string[] {
  const called = (names: readonly string[]) => names.map((one) => one.split(" ")[0]);
  // exceljs omits the result of a formula if it is 0, and turns a text in a cell of dates into an invalid date.
  const isSame: Same<Cell> = (a, b) => {
    if (a?.formula !== b?.formula) return false;
    if (b?.formula === undefined) return isSameValue(a?.value, b?.value);
    return (
      (Number.isNaN(a?.value) && typeof b.value === "string") ||
      isSameValue(a?.value || undefined, b.value || undefined)
    );
  };
  return [
    // exceljs ignores the sheet of a name: it keeps one of two equal names.
    ...unlike("name", called(found.names), called(wanted.names)),
    ...found.names.filter((one) => !wanted.names.includes(one)).map((one) => `name ${one} is not in the file`),
    ...inSheets(found, wanted, (sheet) =>
      differences("cell", found.sheets.get(sheet)!.cells, wanted.sheets.get(sheet)!.cells, isSame),
    ),
  ];
}

/** LibreOffice's own file format has no place for control characters. */
const withoutControls = (value: Value | undefined): Value | undefined =>
  typeof value === "string" ? value.replace(/[\0-\x08\x0b-\x1f]/g, "") : value;

/**
 * LibreOffice calculates arrays, and all cells that depend on them, again when it opens a file, and has no add-in. In a
 * workbook with functions of the add-in, only the positions of formulas are compared, and the values of other cells.
 */
export function libreOfficeDifferences(found: OfficeContents, wanted: StoredContents): string[] {
  const formulas = [...wanted.sheets.values()].flatMap(({ cells }) =>
    [...cells.values()].flatMap(({ formula }) => formula ?? []),
  );
  const hasAddIn = formulas.some((formula) => formula.includes("_xldudf_"));
  const isSame: Same<Cell> = (a, b) =>
    (a?.formula !== undefined) === (b?.formula !== undefined) &&
    ((hasAddIn && b?.formula !== undefined) || isSameValue(a?.value, withoutControls(b?.value)));
  return [
    ...unlike("name", found.names, wanted.names),
    ...(found.charts === wanted.charts ? [] : [`${found.charts} charts where the file has ${wanted.charts}`]),
    ...inSheets(found, wanted, (sheet) => {
      const arrays = wanted.arrays.get(sheet)!;
      const kept = (cells: ReadonlyMap<string, Cell>): Map<string, Cell> =>
        new Map([...cells].filter(([at, { formula }]) => !hasAddIn || !arrays.has(at) || formula !== undefined));
      return differences("cell", kept(found.sheets.get(sheet)!.cells), kept(wanted.sheets.get(sheet)!.cells), isSame);
    }),
  ];
}
