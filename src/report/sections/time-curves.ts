/**
 * The table of time curves: times and cv of both constructions, the intervals of strain and cv, and what the constructions give
 * if they are made the other way.
 */
import { otherWays, type OtherWay } from "./other-way";
import { say, type Message } from "../../reduction/message";
import { isWord } from "../../specification/list-words";
import { readingsName, timesName } from "../../specification/readings";
import { decimalsFor, NOTHING, twoFigures, unitOfReadings } from "../page/cells";
import { gap, paragraph, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";
import { K, u } from "./limits";
import { always, cellOfLoad, inThreeFigures, loadColumn, loadTable, type LoadColumn } from "./loads";
import { item, U_HEIGHT_AT } from "./uncertainty";

/** The times that the constructions read, and the cv that follow from them. */
function ofConstructions(cells: DataCells): LoadColumn[] {
  const ofTime = (heading: LoadColumn["heading"], name: string): LoadColumn => ({
    heading,
    unit: "min",
    formula: cellOfLoad(cells, name),
    // One figure more than the cv that follows from the time.
    format: (row) => twoFigures(cells.number(name, row), 4),
  });
  const ofCv = (heading: LoadColumn["heading"], name: string): LoadColumn => ({
    heading,
    unit: "cv_unit",
    formula: cellOfLoad(cells, name),
    format: inThreeFigures(cells, name),
  });
  return [
    ofTime([say`t50`, say`log time`], "log_t50"),
    ofTime([say`t90`, say`root time`], "root_t90"),
    ofCv([say`cv by`, say`log time`], "cv_log_time"),
    ofCv([say`cv by`, say`root time`], "cv_root_time"),
  ];
}

/** Standard uncertainty of a deformation. */
const U_DEFORMATION = `(${u("limit_reading")}*SQRT(2))`;

/** U of the strain of a load. */
function strainOf(cells: DataCells, { row }: ReportedLoad): string | undefined {
  const H0 = cells.at("initial_height");
  const [measured, deflection] = [cells.at("deformation", row), cells.at("apparatus_deflection", row)];
  const corrected = cells.column("apparatus_stress");
  const uApparatus = corrected ? `IF(COUNT(${corrected})=0,0,${u("limit_apparatus")})` : "0";
  return item(
    (one) =>
      `${K}*CLAY.STRAIN_UNCERTAINTY(${measured},${H0},${U_DEFORMATION},${u("limit_height")},${deflection},${uApparatus},${K},"${one}")`,
    [measured, H0, deflection],
    "u",
  );
}

/** An end of the interval of cv of a load. */
function cvOf(cells: DataCells, { row, number }: ReportedLoad, which: "low" | "high"): string | undefined {
  const value = cells.at("cv_chosen", row);
  // A sheet of version 3 or older has one height for both constructions.
  const root = cells.at("height_middle_root", row);
  const log = cells.at("height_middle", row);
  const method = cells.at("load_method", row) ?? cells.at("time_method");
  const height = root && log && method ? `IF(${isWord(method, "root time")},${root},${log})` : log;
  const [times, readings] = [cells.column(timesName(number)), cells.column(readingsName(number))];
  const units = ["drainage", "cv_unit", "length_unit"].map((name) => cells.at(name) ?? "");
  if (!times || !readings || !method) return undefined;
  const fit = (end: string) => `CLAY.FIT_TIME(${times},${readings},${height},"${end}",${units.join(",")})`;
  return item(
    (one) =>
      `CLAY.CV_UNCERTAINTY(${value},${method},${fit("cv_low")},${fit("cv_high")},${height},${U_HEIGHT_AT},${K},"${one}")`,
    [value, height],
    which,
  );
}

function ofIntervals(cells: DataCells): LoadColumn[] {
  const format = (row: number) => twoFigures(cells.number("cv_chosen", row), 3);
  return [
    { heading: [say`cv`, say`low`], unit: "cv_unit", formula: (load) => cvOf(cells, load, "low"), format },
    { heading: [say`cv`, say`high`], unit: "cv_unit", formula: (load) => cvOf(cells, load, "high"), format },
    { heading: [say`Strain`, say`-+ U`], formula: (load) => strainOf(cells, load), format: always("0.000%") },
  ];
}

const withDecimals = (decimals: number): string => (decimals > 0 ? `0.${"0".repeat(Math.min(decimals, 6))}` : "0");

/** What the constructions give if they are made the other way: how much the numbers depend on the procedure. */
function ofOtherWay(cells: DataCells, loads: readonly ReportedLoad[]): LoadColumn[] {
  const found = otherWays(cells.source.record);
  const byRow = new Map(loads.map(({ row, number }) => [row, found.get(number)] as const));
  const column = (what: Message, unit: string, read: (way: OtherWay) => number | undefined): LoadColumn => {
    const valueIn = (row: number): number | undefined => {
      const way = byRow.get(row);
      return way && read(way);
    };
    return {
      heading: [what, say`other way`],
      unit,
      formula: ({ row }) => valueIn(row) ?? `="${NOTHING}"`,
      // A level has the decimals of the readings and one more, a time four figures.
      format: (row) => {
        const decimals = unit === "min" ? undefined : byRow.get(row)?.decimals;
        return withDecimals(decimals ?? decimalsFor(valueIn(row) ?? 0, 4));
      },
    };
  };
  const div = unitOfReadings(cells);
  return [
    column(say`d100 log`, div, ({ log }) => log?.d100),
    column(say`t50 log`, "min", ({ log }) => log?.t50),
    column(say`d100 root`, div, ({ root }) => root?.d100),
    column(say`t90 root`, "min", ({ root }) => root?.t90),
  ];
}

export function timeCurves(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const columns = [loadColumn, ...ofConstructions(cells), ...ofIntervals(cells), ...ofOtherWay(cells, loads)];
  return [
    ...loadTable(cells, say`Time curves and intervals of the loads`, columns, loads, {
      report_cv_low: 5,
      report_cv_high: 6,
      report_strain_uncertainty: 7,
    }),
    ...paragraph(
      cells.words(
        say`cv follows from t50 or t90 and the height at 50 % of consolidation, half way between d0 and d100 (table of levels and heights); the two columns of cv show the spread of interpretation. U is k times the standard uncertainty. The interval of cv is a factor, from the 95 % interval that the fit to theory leaves on the same readings, made 1.5 times (log time) or 3 times (root time) as wide, and the height; with k = 2 it held the truth in 94 and 91 of 100 simulated curves. It says nothing of a time zero that is off, of swings of temperature, or of which construction is right. Other way: drawn where the construction in use is aided, and aided where it is drawn; a snapshot.`,
      ),
      { kind: "note" },
    ),
    gap,
  ];
}
