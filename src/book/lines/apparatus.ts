/** The dial, and the deflection of the apparatus. */
import { dialSense } from "../../record/load-curve";
import { say, verbatim } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import { sameNumber } from "../../reduction/numeric/same-number";
import { unitOn } from "../comparison";
import { few, type Cell, type Line, type Lines, type Sheet } from "./sheet";

/** The dial factor, with the sign of compression. */
export const factor = ({ record, cell }: Sheet): Cell => {
  const size = cell("dial_factor");
  return size === undefined ? undefined : dialSense(record) === "fall" ? -size : size;
};

/** The value of the calibration table at a stress, from one of its columns; undefined beyond the table. */
export function ofTable(
  { record, cell, values, line }: Sheet,
  stress: Cell,
  column: "apparatus_loading" | "apparatus_unloading",
): Line {
  const rows = record.deflections.flatMap((_, at) => {
    const [s, d] = [cell("apparatus_stress", at), cell(column, at)];
    return s === undefined || d === undefined ? [] : [{ s, d }];
  });
  rows.sort((a, b) => a.s - b.s);
  const exact = rows.find(({ s }) => stress !== undefined && sameNumber(s, stress));
  if (exact)
    return {
      said: say`as the table gives it at ${few(exact.s)} ${verbatim(unitOn(values, "stress"))}`,
      result: exact.d,
    };
  const above = rows.findIndex(({ s }) => stress !== undefined && s > stress);
  if (above < 1) return undefined;
  const [a, b] = [nth(rows, above - 1), nth(rows, above)];
  return line("apparatus_deflection", [stress, a.s, b.s, a.d, b.d], say`between two rows of the table`);
}

export const APPARATUS: Lines = {
  apparatus_deflection_seating: (sheet) => {
    const stress = sheet.cell("seating_stress");
    return stress
      ? ofTable(sheet, stress, "apparatus_loading")
      : { said: say`the zero reading was taken without load`, result: 0 };
  },
};
