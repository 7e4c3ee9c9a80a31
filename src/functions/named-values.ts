/** Reads rows of a name and its values, as a worksheet function gets them, into values by name. */
import { say, verbatim } from "../reduction/message";
import { refuseCell } from "./cells";

type Plain = number | string | boolean;

/** The plain value of a cell: a blank is "", an error its code. */
function plain(cell: unknown): Plain {
  if (typeof cell === "number" || typeof cell === "string" || typeof cell === "boolean") return cell;
  if (typeof cell !== "object" || cell === null) return "";
  // Whatever object it is, these properties are looked at by name.
  const { basicValue, code } = cell as { basicValue?: unknown; code?: unknown };
  const value = basicValue ?? code;
  return value === undefined || typeof value === "object" ? "#VALUE!" : plain(value);
}

/**
 * Whether zero is a value of this name; for other names 0 counts as blank, since desktop Excel passes a blank cell as
 * 0.
 */
const zeroCounts = (name: string, index: number): boolean =>
  name === "zero_reading" || (index === 0 && /^(times|readings)_/.test(name));

/** Values by name, each a column, without the blanks at its end. Refuses a name that occurs twice. */
export function toNamedValues(argument: unknown): Record<string, Plain[][]> {
  const rows: unknown[][] = Array.isArray(argument) && Array.isArray(argument[0]) ? argument : [[argument]];
  if (rows.every((row) => row.length < 2))
    return refuseCell(say`the named values must be a range of names in the first column and values to their right`);
  const values: Record<string, Plain[][]> = {};
  rows.forEach(([first, ...rest], row) => {
    const name = String(plain(first)).trim().toLowerCase();
    if (name === "" || name === "0") return;
    if (name in values)
      return refuseCell(say`row ${row + 1} of the named values names ${verbatim(name)} a second time: leave one out`);
    const cells = rest.map(plain).map((value, index) => (value === 0 && !zeroCounts(name, index) ? "" : value));
    while (cells.length > 1 && cells[cells.length - 1] === "") cells.pop();
    values[name] = cells.map((value) => [value]);
  });
  return Object.keys(values).length
    ? values
    : refuseCell(
        say`the named values hold no name: write names of the data sheet, such as ring_mass, in the first column`,
      );
}
