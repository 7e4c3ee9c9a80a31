/** The lines of inundation, wetting, collapse and the swelling pressure. */
import { rowOfLoad } from "../../checks/integrity";
import { wettingAt } from "../../record/wetting";
import { listWord, say, type Message } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import { factor } from "./apparatus";
import { construction, type Cell, type Lines } from "./sheet";

export const WETTING: Lines = {
  inundation_stress: ({ record }) => {
    if (record.words.seating_mark) return { said: say`the seating stress, which is marked`, result: undefined };
    const load = record.loads.find(({ inundated }) => inundated);
    return load && { said: say`the stress of load ${load.number}, which is marked`, result: undefined };
  },
  inundation_strain: ({ record, values, cell, line }) => {
    const index = record.loads.findIndex(({ inundated }) => inundated);
    if (index < 0) return undefined;
    const strain = (at: number): Cell => cell("strain_end", rowOfLoad(values, nth(record.loads, at).number));
    return line(
      "difference",
      [strain(index), index === 0 ? 0 : strain(index - 1)],
      say`strains at the ends of the loads`,
    );
  },
  wetting_load: ({ record }) => {
    const load = record.loads[wettingAt(record)];
    return load && { said: say`load ${load.number}, which is marked`, result: load.number };
  },
  wetting_stress: ({ record }) => {
    const load = record.loads[wettingAt(record)];
    return load && { said: say`the stress of load ${load.number}`, result: undefined };
  },
  wetting_height_before: ({ record, values, cell }) => {
    const at = wettingAt(record);
    if (at === 0) return { said: say`the initial height: the stage is the first load`, result: cell("initial_height") };
    const before = record.loads[at - 1];
    return (
      before && {
        said: say`the height at the end of load ${before.number}`,
        result: cell("height_end", rowOfLoad(values, before.number)),
      }
    );
  },
  wetting_height_after: ({ record, values, cell }) => {
    const load = record.loads[wettingAt(record)];
    return (
      load && {
        said: say`the height at the end of load ${load.number}`,
        result: cell("height_end", rowOfLoad(values, load.number)),
      }
    );
  },
  wetting_strain: ({ record, cell, line }) =>
    record.words.wetting_reference === "initial height"
      ? line("collapse", [cell("wetting_height_before"), cell("wetting_height_after"), cell("initial_height")])
      : line("wetting_strain", [cell("wetting_height_before"), cell("wetting_height_after")]),
  wetting_swell: ({ cell }) => {
    const strain = cell("wetting_strain");
    return strain === undefined ? undefined : { said: say`the strain on wetting, its sign changed`, result: -strain };
  },
  wetting_rate: (sheet) => {
    const { record, values, cell, line } = sheet;
    const load = record.loads[wettingAt(record)];
    if (!load) return undefined;
    const isOnInitial = record.words.wetting_reference === "initial height";
    return line("c_alpha_from_tail", [
      cell("tail_slope", rowOfLoad(values, load.number)),
      factor(sheet),
      cell(isOnInitial ? "initial_height" : "wetting_height_before"),
    ]);
  },
  collapse_potential: ({ cell, line }) =>
    line("collapse", [cell("wetting_height_before"), cell("wetting_height_after"), cell("initial_height")]),
  collapse_index: ({ cell }) => ({
    said: say`the collapse potential: the specimen was wetted under 200 kPa (2 tsf), within 5 %`,
    result: cell("collapse_potential"),
  }),
  swelling_pressure_used: ({ record, cell }) => {
    const { swelling_method: method = "measured" } = record.words;
    const by: Readonly<Record<string, Message>> = {
      "load back": say`load back: the stress at which the specimen is back at its height before wetting, on log of stress`,
      "constant volume": say`constant volume: the stress that held the height before wetting`,
    };
    const said = by[method];
    return said === undefined
      ? { said: say`as typed (${listWord(method)})`, result: cell("swelling_pressure") }
      : { said, result: undefined };
  },
  swelling_pressure_low: construction(say`the stress below it that was read`),
  swelling_pressure_high: construction(say`the stress above it that was read`),
};
