/**
 * Uncertainty in the report: intervals that the worksheet functions calculate from the limits of error; and, apart from
 * these, the spread of the constructions.
 */
import { say } from "../../reduction/message";
import { isWord, wordIn } from "../../specification/list-words";
import { readingsName, timesName } from "../../specification/readings";
import type { CellPlan } from "../../workbook/port";
import { inFormula } from "../../specification/sentences/told-formula";
import { FORMATS, NOTHING, shownCell, twoFigures, worked } from "../page/cells";
import { band, gap, paragraph, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";
import { K, u } from "./limits";
import { always, bothWays, loadColumn, loadTable, type LoadColumn } from "./loads";

/** An item of an uncertainty function; "-" if the function refuses. */
const item = (
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

/** Standard uncertainty of a deformation, and of the height at a load. */
const U_DEFORMATION = `(${u("limit_reading")}*SQRT(2))`;
const U_HEIGHT_AT = `SQRT(${u("limit_height")}^2+2*${u("limit_reading")}^2+${u("limit_apparatus")}^2)`;

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

export function intervals(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const t = cells.words;
  const [e0, ef] = [t(say`Initial void ratio e0`), t(say`Final void ratio ef`)];
  const blocks: Block[] = [
    band(t(say`Intervals of e, stress, strain and cv`)),
    {
      rows: 5,
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
        { row: 4, col: 0, kind: "remark", ...remarkOnGravity(cells) },
      ],
      names: {
        report_void_ratio_low: { row: 1, col: 5, rows: 1, cols: 1 },
        report_void_ratio_high: { row: 1, col: 6, rows: 1, cols: 1 },
        report_stress_uncertainty: { row: 3, col: 4, rows: 1, cols: 1 },
        report_gravity_remark: { row: 4, col: 0, rows: 1, cols: 1 },
      },
    },
  ];
  return loads.length === 0 ? [...blocks, gap] : [...blocks, ...intervalsOfLoads(cells, loads)];
}

function intervalsOfLoads(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const H0 = cells.at("initial_height");
  const of = (name: string, { row }: ReportedLoad) => cells.at(name, row);
  const strain = (load: ReportedLoad, which: string) => {
    const [measured, deflection] = [of("deformation", load), of("apparatus_deflection", load)];
    const corrected = cells.column("apparatus_stress");
    const uApparatus = corrected ? `IF(COUNT(${corrected})=0,0,${u("limit_apparatus")})` : "0";
    return item(
      (one) =>
        `CLAY.STRAIN_UNCERTAINTY(${measured},${H0},${U_DEFORMATION},${u("limit_height")},${deflection},${uApparatus},${K},"${one}")`,
      [measured, H0, deflection],
      which,
    );
  };
  const expanded = (formula: string | undefined) => formula?.replace(/CLAY\./, `${K}*CLAY.`);
  const cv = (load: ReportedLoad, which: string) => {
    const value = of("cv_chosen", load);
    // A sheet of version 3 or older has one height for both constructions.
    const root = of("height_middle_root", load);
    const log = of("height_middle", load);
    const method = of("load_method", load) ?? cells.at("time_method");
    const height = root && log && method ? `IF(${isWord(method, "root time")},${root},${log})` : log;
    const [times, readings] = [cells.column(timesName(load.number)), cells.column(readingsName(load.number))];
    const units = ["drainage", "cv_unit", "length_unit"].map((name) => cells.at(name) ?? "");
    if (!times || !readings || !method) return undefined;
    const fit = (end: string) => `CLAY.FIT_TIME(${times},${readings},${height},"${end}",${units.join(",")})`;
    return item(
      (one) =>
        `CLAY.CV_UNCERTAINTY(${value},${method},${fit("cv_low")},${fit("cv_high")},${height},${U_HEIGHT_AT},${K},"${one}")`,
      [value, height],
      which,
    );
  };
  const cvFormat = (row: number) => twoFigures(cells.number("cv_chosen", row), 3);
  const columns: LoadColumn[] = [
    loadColumn,
    {
      heading: [say`Strain`, say`-+ U`],
      formula: (load) => expanded(strain(load, "u")),
      format: always("0.000%"),
    },
    { heading: [say`cv`, say`low`], unit: "cv_unit", formula: (load) => cv(load, "low"), format: cvFormat },
    { heading: [say`cv`, say`high`], unit: "cv_unit", formula: (load) => cv(load, "high"), format: cvFormat },
    ...bothWays(cells, loads),
  ];
  return [
    ...loadTable(cells, say`Intervals of the loads; constructions aided and drawn`, columns, loads, {
      report_strain_uncertainty: 1,
      report_cv_low: 2,
      report_cv_high: 3,
    }),
    ...paragraph(
      cells.words(
        say`U is k times the standard uncertainty. The interval of cv is a factor, since cv is known by its ratio to the truth: it comes from the 95 % interval that the fit to theory leaves on the same readings, made 1.5 times (log time) or 3 times (root time) as wide, and the height; with k = 2 it held the truth in 94 and 91 of 100 simulated curves. It says nothing of a time zero that is off, of swings of temperature, or of which construction is the right one. The constructions are a snapshot: each made by both ways on the same readings; cv is inverse to t50 and t90.`,
      ),
      { kind: "note" },
    ),
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
