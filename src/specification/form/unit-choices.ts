/** The units in the drop-down lists of the sheet: all that the functions know. */
import { UNITS, type Quantity } from "../../reduction/units";

const names = (quantity: Quantity): readonly string[] => Object.keys(UNITS[quantity]);

export const LENGTH_UNITS = ["mm", "cm", "in"] as const;
export const DEPTH_UNITS = ["m", "ft"] as const;
export const STRESS_UNITS = names("stress");
export const CV_UNITS = names("cv");
export const DENSITY_UNITS = ["Mg/m3", "kN/m3", "pcf"] as const;
export const MV_UNITS = names("mv");
export const CONDUCTIVITY_UNITS = names("conductivity");
