/** The lines of the specimen: its masses, sizes, water contents, densities and index properties. */
import { rowOfLoad } from "../../checks/integrity";
import { asTyped, say, type Message } from "../../reduction/message";
import { construction, few, less, type Cell, type Line, type Lines, type Sheet } from "./sheet";

const wet = ({ cell }: Sheet, which: "before" | "after"): Cell =>
  less(cell(`ring_and_wet_${which}`), cell("ring_mass"));
const density =
  (mass: (sheet: Sheet) => Cell) =>
  (sheet: Sheet): Line => {
    const { cell, line, values } = sheet;
    const weight = /kN|pcf/.test(String(values.density_unit?.[0]?.[0] ?? ""));
    return line(weight ? "unit_weight" : "density", [mass(sheet), cell("diameter"), cell("initial_height")]);
  };

/** One number over another, with both in words. */
const over =
  (formula: Message, above: (sheet: Sheet) => Cell, below: string) =>
  (sheet: Sheet): Line => {
    const [a, b] = [above(sheet), sheet.cell(below)];
    return a === undefined || b === undefined || b === 0
      ? undefined
      : { said: say`${formula} = ${few(a)} / ${few(b)}`, result: a / b };
  };

/** The properties of the reconstituted soil, by correlation with the liquid limit. */
const byLiquidLimit =
  (id: string) =>
  ({ cell, line }: Sheet): Line =>
    line(id, [cell("liquid_limit"), cell("specific_gravity")]);

/** Mass of ring and dry soil, less the salt. */
const dryWithRing = (cell: Sheet["cell"]): Cell => less(cell("ring_and_dry"), cell("salt_mass") ?? 0);
const withoutSalt = (cell: Sheet["cell"]): Message | undefined =>
  cell("salt_mass") === undefined ? undefined : say`the salt of the pore water taken out`;

export const SPECIMEN: Lines = {
  dry_mass: ({ cell, line }) => line("dry_mass", [dryWithRing(cell), cell("ring_mass")], withoutSalt(cell)),
  solids_height: ({ cell, line }) =>
    line("solids_height", [cell("dry_mass"), cell("specific_gravity"), cell("diameter"), cell("water_density") ?? 1]),
  water_density: construction(say`the density of water at the temperature, by Kell (1975)`),
  salt_mass: construction(say`pore water = (wet after - dry) / (1 - s); salt = pore water less (wet after - dry)`),
  water_content_initial_weighed: ({ cell, line }) =>
    line("water_content", [cell("ring_and_wet_before"), cell("ring_and_dry"), cell("ring_mass")]),
  water_content_final_weighed: ({ cell, line }) =>
    line("water_content", [cell("ring_and_wet_after"), cell("ring_and_dry"), cell("ring_mass")]),
  water_content_trimmings: ({ values, line }) => {
    const tins = (values.tin_water_content ?? []).flatMap(([w]) => (typeof w === "number" ? [w] : []));
    if (tins.length === 1) return { said: say`w of the one tin`, result: tins[0] };
    return tins.length > 3
      ? { said: say`the mean of ${tins.length} tins`, result: tins.reduce((sum, w) => sum + w, 0) / tins.length }
      : line(tins.length === 2 ? "mean_of_two" : "mean_of_three", tins);
  },
  dry_mass_trimmings: (sheet) =>
    sheet.line("dry_mass_by_trimmings", [wet(sheet, "before"), sheet.cell("water_content_trimmings")]),
  dry_mass_difference: ({ cell, line }) =>
    line("difference_of_masses", [cell("dry_mass_trimmings"), cell("dry_mass")], say`shown to 0.1 %`),
  plasticity_index: ({ cell, line }) => line("difference", [cell("liquid_limit"), cell("plastic_limit")]),
  liquidity_index: over(
    asTyped("(w_0 - w_P) / I_P"),
    ({ cell }) => less(cell("water_content_initial"), cell("plastic_limit")),
    "plasticity_index",
  ),
  activity: over(say`I_P / clay`, ({ cell }) => cell("plasticity_index"), "clay_content"),
  void_index: ({ cell, line }) =>
    line("void_index", [cell("void_ratio_initial"), cell("intrinsic_void_ratio"), cell("intrinsic_index")]),
  intrinsic_void_ratio: byLiquidLimit("intrinsic_void_ratio"),
  intrinsic_index: byLiquidLimit("intrinsic_compression_index"),
  water_content_initial: ({ cell, line }) =>
    line("water_content", [cell("ring_and_wet_before"), dryWithRing(cell), cell("ring_mass")], withoutSalt(cell)),
  water_content_final: ({ cell, line }) =>
    line("water_content", [cell("ring_and_wet_after"), dryWithRing(cell), cell("ring_mass")], withoutSalt(cell)),
  density_initial: density((sheet) => wet(sheet, "before")),
  dry_density_initial: density(({ cell }) => cell("dry_mass")),
  void_ratio_initial: ({ cell, line }) => line("void_ratio", [cell("initial_height"), cell("solids_height")]),
  saturation_initial: ({ cell, line }) =>
    line("saturation", [cell("water_content_initial"), cell("specific_gravity"), cell("void_ratio_initial")]),
  final_height: ({ record, values, cell, line }) => {
    const last = [...record.loads].reverse().find(({ readings }) => readings.length > 0);
    if (!last) return { said: say`the measured final height`, result: cell("final_height_measured") };
    return line(
      "height_at_end",
      [cell("initial_height"), cell("corrected_deformation", rowOfLoad(values, last.number))],
      say`at the end of load ${last.number}`,
    );
  },
  void_ratio_final: ({ cell, line }) => line("void_ratio", [cell("final_height"), cell("solids_height")]),
  void_ratio_final_by_water: ({ cell, line }) =>
    line("void_ratio_by_water", [cell("water_content_final"), cell("specific_gravity")]),
  saturation_final: ({ cell, line }) =>
    line("saturation", [cell("water_content_final"), cell("specific_gravity"), cell("void_ratio_final")]),
  final_height_difference: ({ cell, line }) =>
    line("difference_of_heights", [cell("final_height_measured"), cell("final_height")], say`shown to four decimals`),
  void_ratio_final_difference: ({ cell, line }) =>
    line("difference", [cell("void_ratio_final_by_water"), cell("void_ratio_final")], say`shown to three decimals`),
  water_content_difference: ({ cell, line }) =>
    line("difference", [cell("water_content_trimmings"), cell("water_content_initial")], say`shown to 0.1 %`),
};
