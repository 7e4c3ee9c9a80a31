/** Uncertainty in the report: intervals that the worksheet functions calculate from the limits of error. */
import { say } from "../../reduction/message";
import { isWord, wordIn } from "../../specification/list-words";
import type { CellPlan } from "../../workbook/port";
import { inFormula } from "../../specification/sentences/told-formula";
import { FORMATS, NOTHING, shownCell, worked } from "../page/cells";
import { band, gap, type Block } from "../page/page";
import type { DataCells } from "../page/source";
import { K, u } from "./limits";

/** An item of an uncertainty function; "-" if the function refuses. */
export const item = (
  call: (item: string) => string,
  needs: readonly (string | undefined)[],
  which: string,
): string | undefined => worked(needs, call(which));

/** The cells that every interval of e needs. */
function voidRatioCall(cells: DataCells, height: string | undefined, uHeight: string) {
  const needs = [
    height,
    ...["diameter", "ring_mass", "ring_and_dry", "specific_gravity"].map((name) => cells.at(name)),
  ];
  const unit = cells.at("length_unit") ?? '"mm"';
  const call = (which: string) =>
    `CLAY.VOID_RATIO_UNCERTAINTY(${needs.join(",")},${uHeight},${u("limit_diameter")},${u("limit_mass")},${u("limit_gravity")},${K},"${which}",${unit})`;
  return { needs, call };
}

/** Standard uncertainty of the height at a load. */
export const U_HEIGHT_AT = `SQRT(${u("limit_height")}^2+2*${u("limit_reading")}^2+${u("limit_apparatus")}^2)`;

const HEADINGS = [
  [3, say`value`],
  [4, say`U = k u`],
  [5, say`low`],
  [6, say`high`],
  [8, say`greatest share of the variance`],
] as const;

/** The row of a void ratio with its interval, and the input that has the greatest share of it. */
function rowOfVoidRatio(
  cells: DataCells,
  label: string,
  name: string,
  height: readonly [name: string, u: string],
  row: number,
): CellPlan[] {
  const { needs, call } = voidRatioCall(cells, cells.at(height[0]), height[1]);
  const one = (which: string, col: number, format: string) =>
    shownCell(cells, { label, formula: item(call, needs, which), format }, row, col);
  return [
    { row, col: 0, kind: "label", value: label },
    shownCell(cells, { label, name, format: FORMATS.ratio }, row, 3),
    { ...one("u", 4, "0.0000"), formula: item((which) => `${K}*${call(which)}`, needs, "u") ?? NOTHING },
    one("low", 5, FORMATS.ratio),
    one("high", 6, FORMATS.ratio),
    shownCell(
      cells,
      // The function answers in the language of the word that asks.
      { label, formula: item(call, needs, wordIn(cells.language, "largest")), isText: true },
      row,
      8,
    ),
  ];
}

/** Whether Gs was measured, as the sheet says it. */
function remarkOnGravity(cells: DataCells): Pick<CellPlan, "formula" | "value"> {
  const t = cells.words;
  const basis = cells.at("specific_gravity_basis");
  const unsaid = t(say`It is not said whether Gs was measured: it counts as assumed.`);
  if (!basis) return { value: unsaid };
  const [measured, estimate] = [
    inFormula(t(say`Gs is stated as measured.`)),
    inFormula(t(say`Gs IS ASSUMED: its limit of error is an estimate, and governs e.`)),
  ];
  return {
    formula: `=IF(${isWord(basis, "measured")},${measured},IF(${isWord(basis, "assumed")},${estimate},${inFormula(unsaid)}))`,
  };
}

export function intervals(cells: DataCells): Block[] {
  const t = cells.words;
  const [e0, ef] = [t(say`Initial void ratio e0`), t(say`Final void ratio ef`)];
  return [
    band(t(say`Intervals of e, stress, strain and cv`)),
    {
      rows: 4,
      cells: [
        ...HEADINGS.map(([col, value]): CellPlan => ({
          row: 0,
          col,
          kind: "unit",
          value: t(value),
          align: col === 8 ? "left" : "right",
        })),
        ...rowOfVoidRatio(cells, e0, "void_ratio_initial", ["initial_height", u("limit_height")], 1),
        ...rowOfVoidRatio(cells, ef, "void_ratio_final", ["final_height", U_HEIGHT_AT], 2),
        { row: 3, col: 0, kind: "label", value: t(say`Stress of any load, relative`) },
        shownCell(cells, { label: "", formula: relativeStress(cells), format: "0.00%" }, 3, 4),
        { row: 3, col: 5, kind: "remark", ...remarkOnGravity(cells) },
      ],
      names: {
        report_void_ratio_low: { row: 1, col: 5, rows: 1, cols: 1 },
        report_void_ratio_high: { row: 1, col: 6, rows: 1, cols: 1 },
        report_stress_uncertainty: { row: 3, col: 4, rows: 1, cols: 1 },
        report_gravity_remark: { row: 3, col: 5, rows: 1, cols: 1 },
      },
    },
    gap,
  ];
}

/** U of a stress divided by the stress. It is the same for every load, because the limits of force and diameter are relative. */
function relativeStress(cells: DataCells): string | undefined {
  const diameter = cells.at("diameter");
  return worked(
    [diameter],
    `${K}*CLAY.STRESS_UNCERTAINTY(1,${diameter},${u("limit_force")},${u("limit_diameter")},${K},"u")`,
  );
}
