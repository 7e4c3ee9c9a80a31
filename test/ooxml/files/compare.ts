/** Where a reader finds something else than the file has, in words; nothing where all is the same. */
import type { Cell, Contents, StoredContents, Value } from "./contents";
import type { OfficeContents } from "./libreoffice-reader";

type Same<T> = (found: T | undefined, wanted: T | undefined) => boolean;

/** Addresses with what one reader and the other find there, where they do not agree. */
function differences<T>(
  what: string,
  found: ReadonlyMap<string, T>,
  wanted: ReadonlyMap<string, T>,
  isSame: Same<T> = (a, b) => a === b,
): string[] {
  return [...new Set([...found.keys(), ...wanted.keys()])]
    .filter((at) => !isSame(found.get(at), wanted.get(at)))
    .map(
      (at) => `${what} ${at}: ${JSON.stringify(found.get(at))} where the file has ${JSON.stringify(wanted.get(at))}`,
    );
}

/** What only one of two lists has. */
const unlike = (what: string, found: Iterable<string>, wanted: Iterable<string>): string[] => {
  const [a, b] = [found, wanted].map((list) => new Set(list));
  return [
    ...[...a].filter((one) => !b.has(one)).map((one) => `${what} ${one} is not in the file`),
    ...[...b].filter((one) => !a.has(one)).map((one) => `${what} ${one} was not read`),
  ];
};

/** Days and numbers go through other units in some readers. */
const isSameValue: Same<Value> = (a, b) =>
  typeof a === "number" && typeof b === "number" ? Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(b)) : a === b;

/** Sheets, merged cells and rules of entry are the same, whoever reads; cells as `isSame` of their sheet says. */
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
  // exceljs leaves out the result of a formula that is 0, and makes a date that is none of a text in a cell of dates.
  const isSame: Same<Cell> = (a, b) => {
    if (a?.formula !== b?.formula) return false;
    if (b?.formula === undefined) return isSameValue(a?.value, b?.value);
    return (
      (Number.isNaN(a?.value) && typeof b.value === "string") ||
      isSameValue(a?.value || undefined, b.value || undefined)
    );
  };
  return [
    // exceljs knows no names of sheets: of two that are called alike it keeps one.
    ...unlike("name", called(found.names), called(wanted.names)),
    ...found.names.filter((one) => !wanted.names.includes(one)).map((one) => `name ${one} is not in the file`),
    ...inSheets(found, wanted, (sheet) =>
      differences("cell", found.sheets.get(sheet)!.cells, wanted.sheets.get(sheet)!.cells, isSame),
    ),
  ];
}

/** LibreOffice's own file has no place for control characters. */
const withoutControls = (value: Value | undefined): Value | undefined =>
  typeof value === "string" ? value.replace(/[\0-\x08\x0b-\x1f]/g, "") : value;

/**
 * LibreOffice calculates arrays, and all that follows from them, anew when it opens a file, and has no add-in: in a workbook with
 * functions of the add-in, only which cells hold formulas is compared, and the values of those that do not.
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
