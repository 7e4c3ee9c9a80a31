/** References by name in a formula: `{name}` is a name of the formula's own sheet, `{'Other sheet'!name}` one of another sheet. */
import { LONGEST_FORMULA } from "./limits";

/** A text, a reference to another sheet's name, a sheet's name in quotes, or a reference to a name of the own sheet. */
const REFERENCES = /"(?:[^"]|"")*"|\{'((?:[^']|'')*)'!([A-Za-z_][\w.]*)\}|'(?:[^']|'')*'|\{([A-Za-z_][\w.]*)\}/g;

export interface Reference {
  readonly name: string;
  /** Absent: the formula's own sheet. */
  readonly sheet?: string;
}

const referenceOf = (sheet: string | undefined, there: string | undefined, here: string | undefined) =>
  there !== undefined
    ? { name: there, sheet: sheet?.replaceAll("''", "'") }
    : here !== undefined
      ? { name: here }
      : undefined;

/** The names that a formula refers to, in their order. */
export const referencesOf = (formula: string): Reference[] =>
  [...formula.matchAll(REFERENCES)].flatMap(([, sheet, there, here]) => referenceOf(sheet, there, here) ?? []);

/** The formula with every reference put through `called`; texts and sheets' names in quotes stay. */
export const withReferences = (formula: string, called: (reference: Reference) => string): string =>
  formula.replace(
    REFERENCES,
    (whole, sheet: string | undefined, there: string | undefined, here: string | undefined) => {
      const reference = referenceOf(sheet, there, here);
      return reference ? called(reference) : whole;
    },
  );

/** A reference as it stands in a formula: "{'Ring 2'!mass}". */
export const referenceTo = (name: string, sheet?: string): string =>
  sheet === undefined ? `{${name}}` : `{'${sheet.replaceAll("'", "''")}'!${name}}`;

/** Why no cell takes the formula, or nothing. */
export function faultOfLength(formula: string): string | undefined {
  const { length } = withReferences(formula, ({ name, sheet }) => (sheet === undefined ? name : `'${sheet}'!${name}`));
  return length > LONGEST_FORMULA
    ? `a formula has ${length} characters, and ${LONGEST_FORMULA} at most are taken`
    : undefined;
}
