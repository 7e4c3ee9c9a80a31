/** Excel's own rules for what a name of a sheet may be called. */

export const LAST_COLUMN = 16384;
export const LAST_ROW = 1048576;

const columnNumber = (letters: string): number =>
  [...letters.toUpperCase()].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);

function looksLikeCell(name: string): boolean {
  if (/^(r\d*)?(c\d*)?$/i.test(name)) return true;
  const [, letters, digits] = /^([a-z]{1,3})(\d{1,7})$/i.exec(name) ?? [];
  return Boolean(letters) && columnNumber(letters) <= LAST_COLUMN && Number(digits) >= 1 && Number(digits) <= LAST_ROW;
}

/** What a plan's name is called in Excel: itself, or with an underscore where Excel would read a cell ("t50", "r1c1"). */
export const localName = (name: string): string => (looksLikeCell(name) ? `${name}_` : name);

/** A plan's formula with every `{name}` outside texts and sheets' names put in; refuses a name that the plan does not have. */
export const withLocalNames = (formula: string, names: Readonly<Record<string, unknown>>): string =>
  formula.replace(/"(?:[^"]|"")*"|'(?:[^']|'')*'|\{([A-Za-z_]\w*)\}/g, (whole, name: string | undefined) => {
    if (name === undefined) return whole;
    if (!Object.hasOwn(names, name)) throw new Error(`the formula ${formula} refers to {${name}}, which has no cells`);
    return localName(name);
  });

/** A cell's formula with names as the plan calls them: "t50_" is t50 again; texts and sheets' names stay. */
export const withPlanNames = (formula: string): string =>
  formula.replace(
    /"(?:[^"]|"")*"|'(?:[^']|'')*'|(?<![\w.!])([A-Za-z]\w*)_(?![\w.(!])/g,
    (whole, name: string | undefined) => (name !== undefined && looksLikeCell(name) ? name : whole),
  );
