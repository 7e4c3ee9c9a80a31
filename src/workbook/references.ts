/**
 * References by name in a formula: `{name}` is a name of the formula's own sheet, `{'Other sheet'!name}` is a name of
 * another sheet.
 */
import { quoted, unquoted } from "./address";

/**
 * Matches a text, a reference to a name of another sheet, the name of a sheet in quotes, or a reference to a name of
 * the own sheet.
 */
const REFERENCES = /"(?:[^"]|"")*"|\{'((?:[^']|'')*)'!([A-Za-z_][\w.]*)\}|'(?:[^']|'')*'|\{([A-Za-z_][\w.]*)\}/g;

export interface Reference {
  readonly name: string;
  /** The other sheet; if it is left out, the formula's own sheet. */
  readonly sheet?: string;
}

const referenceOf = (sheet: string | undefined, there: string | undefined, here: string | undefined) =>
  there !== undefined
    ? { name: there, sheet: unquoted(sheet, undefined) }
    : here !== undefined
      ? { name: here }
      : undefined;

/** The names that a formula refers to, in their order. */
export const referencesOf = (formula: string): Reference[] =>
  [...formula.matchAll(REFERENCES)].flatMap(([, sheet, there, here]) => referenceOf(sheet, there, here) ?? []);

/** Replaces every reference in the formula by the result of `called`; texts and names of sheets in quotes stay. */
export const withReferences = (formula: string, called: (reference: Reference) => string): string =>
  formula.replace(
    REFERENCES,
    (whole, sheet: string | undefined, there: string | undefined, here: string | undefined) => {
      const reference = referenceOf(sheet, there, here);
      return reference ? called(reference) : whole;
    },
  );

/** A reference in the form of a formula, such as "{'Ring 2'!mass}". */
export const referenceTo = (name: string, sheet?: string): string =>
  sheet === undefined ? `{${name}}` : `{${quoted(sheet)}!${name}}`;
