/** The lines of the load table. */
import { methodOfLoad } from "../../record/picks";
import { temperatureFactor } from "../../reduction/curve/viscosity";
import { listed, listWord, say, type Message } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import { rulesOf } from "../../specification/versions";
import { factor, ofTable } from "./apparatus";
import { construction, less, type Cell, type Line, type Sheet } from "./sheet";

export interface LoadSheet extends Sheet {
  readonly row: number;
  /** Row of the load before; undefined for the first load. */
  readonly before: number | undefined;
  readonly index: number;
}

const before = ({ cell, before: row }: LoadSheet, name: string, start: string): Cell =>
  row === undefined ? cell(start) : cell(name, row);

const faces = ({ record }: Sheet): number => (record.words.drainage === "single" ? 1 : 2);
const methodOf = ({ record, index }: LoadSheet): string => methodOfLoad(record, nth(record.loads, index).number);
const chosenD100 = (sheet: LoadSheet): Cell =>
  sheet.cell(methodOf(sheet) === "root time" ? "root_d100" : "log_d100", sheet.row);

const coefficient =
  (id: string, time: string, height: string) =>
  (sheet: LoadSheet): Line =>
    sheet.line(id, [sheet.cell(time, sheet.row), sheet.cell(height, sheet.row), faces(sheet)]);

/** The height at a reading of the load; compression and deflection count from the zero reading. */
const heightAt = (sheet: LoadSheet, reading: Cell, after: Message): Line => {
  const { cell, row, line } = sheet;
  const seen = [
    cell("initial_height"),
    reading,
    cell("zero_reading"),
    factor(sheet),
    cell("apparatus_deflection", row),
  ];
  return line("height_at_reading", seen, after);
};

/** The lines of a load. */
export const LOAD: Readonly<Record<string, (sheet: LoadSheet) => Line>> = {
  end_reading: construction(say`the reading at the latest time of the load`),
  deformation: (sheet) =>
    sheet.line("deformation", [sheet.cell("end_reading", sheet.row), sheet.cell("zero_reading"), factor(sheet)]),
  apparatus_deflection: (sheet) => {
    const { record, index, reduced: all, cell, row, line } = sheet;
    const { deflections } = record;
    if (!deflections.some(({ stress }) => stress !== undefined))
      return { said: say`no deflection table: nothing is corrected`, result: 0 };
    const { load_branch: branch } = nth(record.loads, index).words;
    const before = sheet.before === undefined ? 0 : cell("apparatus_deflection", sheet.before);
    if (branch === "wetting" && before !== undefined)
      return { said: say`that of the load before: the load stands`, result: before };
    const unload = all.loads[index]?.unloading && deflections.some(({ unloading }) => unloading !== undefined);
    const whole = ofTable(sheet, cell("load_stress", row), unload ? "apparatus_unloading" : "apparatus_loading");
    if (!whole || !rulesOf(record).deflectionSinceSeating) return whole;
    const since = line("deflection_since_seating", [whole.result, cell("apparatus_deflection_seating")]);
    return since && { ...since, said: say`${whole.said}; less that at the seating stress: ${since.said}` };
  },
  corrected_deformation: ({ cell, row, line }) =>
    line("corrected_deformation", [cell("deformation", row), cell("apparatus_deflection", row)]),
  strain_end: ({ cell, row, line }) =>
    line("strain", [cell("deformation", row), cell("initial_height"), cell("apparatus_deflection", row)]),
  height_end: ({ cell, row, line }) =>
    line("height_at_end", [cell("initial_height"), cell("corrected_deformation", row)]),
  void_ratio_end: ({ cell, row, line }) => line("void_ratio", [cell("height_end", row), cell("solids_height")]),
  deformation_d100: (sheet) => {
    const found = sheet.line("deformation", [chosenD100(sheet), sheet.cell("zero_reading"), factor(sheet)]);
    const corrected =
      found && sheet.line("corrected_deformation", [found.result, sheet.cell("apparatus_deflection", sheet.row)]);
    return found && corrected && { ...corrected, said: say`${found.said} at d100; ${corrected.said}` };
  },
  strain_d100: ({ cell, row, line }) => line("strain", [cell("deformation_d100", row), cell("initial_height"), 0]),
  void_ratio_d100: ({ cell, row, line }) =>
    line("void_ratio", [less(cell("initial_height"), cell("deformation_d100", row)), cell("solids_height")]),
  void_ratio_curve: ({ record, index, row, cell }) => {
    const atD100 = nth(record.loads, index).words.curve_point === "d100";
    return {
      said: atD100 ? say`the void ratio at d100` : say`the void ratio at the end of the load`,
      result: cell(atD100 ? "void_ratio_d100" : "void_ratio_end", row),
    };
  },
  height_middle: (sheet) =>
    rulesOf(sheet.record).heightAtHalf
      ? heightAt(sheet, sheet.cell("log_d50", sheet.row), say`at d50 by log time`)
      : sheet.line("height_middle", [
          before(sheet, "height_end", "initial_height"),
          sheet.cell("height_end", sheet.row),
        ]),
  height_middle_root: (sheet) => {
    const half = sheet.line("d50", [sheet.cell("root_d0", sheet.row), sheet.cell("root_d100", sheet.row)]);
    const found = half && heightAt(sheet, half.result, say`at d50 by root time`);
    return found && { ...found, said: listed([half.said, found.said], "; ") };
  },
  cv_log_time: coefficient("cv_from_t50", "log_t50", "height_middle"),
  cv_root_time: (sheet) =>
    coefficient(
      "cv_from_t90",
      "root_t90",
      rulesOf(sheet.record).heightAtHalf ? "height_middle_root" : "height_middle",
    )(sheet),
  cv_chosen: (sheet) => {
    const method = methodOf(sheet);
    return {
      said: say`cv by ${listWord(method)}`,
      result: sheet.cell(method === "root time" ? "cv_root_time" : "cv_log_time", sheet.row),
    };
  },
  cv_20: ({ cell, row, line }) => {
    const temperature = cell("load_temperature", row);
    if (temperature === undefined) return undefined;
    const found = temperatureFactor(temperature);
    const said = say`f_T the viscosity of water at ${temperature} deg C over that at 20`;
    return found.ok ? line("cv_at_20", [cell("cv_chosen", row), found.value], said) : undefined;
  },
  volume_compressibility: (sheet) => {
    const { cell, row, line } = sheet;
    return line("mv", [
      sheet.before === undefined ? (cell("seating_stress") ?? 0) : cell("load_stress", sheet.before),
      cell("load_stress", row),
      before(sheet, "void_ratio_curve", "void_ratio_initial"),
      cell("void_ratio_curve", row),
    ]);
  },
  conductivity: ({ cell, row, line }) =>
    line("conductivity", [cell("cv_chosen", row), cell("volume_compressibility", row)]),
  load_wetting_strain: ({ record, before, cell, row, line }) => {
    const start = before === undefined ? cell("initial_height") : cell("height_end", before);
    return record.words.wetting_reference === "initial height"
      ? line("collapse", [start, cell("height_end", row), cell("initial_height")])
      : line("wetting_strain", [start, cell("height_end", row)]);
  },
  c_alpha: (sheet) => {
    const { cell, row, line } = sheet;
    return line("c_alpha_from_tail", [cell("tail_slope", row), factor(sheet), cell("initial_height")]);
  },
  log_d0: construction(
    say`log time: the early parabola, on which movement goes with the root of time, carried back to time zero`,
  ),
  log_d50: ({ cell, row, line }) => line("d50", [cell("log_d0", row), cell("log_d100", row)]),
  log_d100: construction(say`log time: where the tangent at the inflection meets the line of the tail`),
  log_t50: construction(say`log time: the time at which the curve reaches d50`),
  log_t100: construction(say`log time: the time at which tangent and tail meet`),
  root_d0: construction(say`root time: the straight part carried back to time zero`),
  root_d90: construction(say`root time: where the line 1.15 times as far out meets the curve`),
  root_d100: ({ cell, row, line }) => line("d100_from_d90", [cell("root_d0", row), cell("root_d90", row)]),
  root_t90: construction(say`root time: the time of d90`),
  tail_slope: construction(say`log time: readings per log cycle of time on the line of the tail`),
};
