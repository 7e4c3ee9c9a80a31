/**
 * Our units in the words of mathjs. Its definitions check every conversion factor, since this project did not make
 * them.
 */
import type { Quantity } from "../reduction/units";

export const MATHJS_UNITS: Record<Quantity, Record<string, string>> = {
  stress: {
    kPa: "1 kN/m^2",
    MPa: "1 MN/m^2",
    psf: "1 lbf/ft^2",
    ksf: "1000 lbf/ft^2",
    tsf: "2000 lbf/ft^2",
    psi: "1 lbf/in^2",
    "kgf/cm2": "1 kgf/cm^2",
    bar: "100 kN/m^2",
    "kN/m2": "1 kN/m^2",
    "MN/m2": "1 MN/m^2",
    "t/m2": "1000 kgf/m^2",
  },
  length: { mm: "1 mm", cm: "1 cm", m: "1 m", in: "1 inch", ft: "1 ft" },
  cv: {
    "m2/yr": "1 m^2/year",
    "mm2/min": "1 mm^2/minute",
    "cm2/s": "1 cm^2/s",
    "cm2/min": "1 cm^2/minute",
    "m2/s": "1 m^2/s",
    "in2/min": "1 inch^2/minute",
    "ft2/day": "1 ft^2/day",
    "ft2/yr": "1 ft^2/year",
  },
  density: {
    "Mg/m3": "9.80665 kN/m^3",
    "g/cm3": "9.80665 kN/m^3",
    "kg/m3": "9.80665 N/m^3",
    "kN/m3": "1 kN/m^3",
    pcf: "1 lbf/ft^3",
  },
  mv: {
    "m2/MN": "1 m^2/MN",
    "1/MPa": "1 m^2/MN",
    "m2/kN": "1 m^2/kN",
    "1/kPa": "1 m^2/kN",
    "ft2/ton": "0.0005 ft^2/lbf",
    "1/tsf": "0.0005 ft^2/lbf",
    "1/psf": "1 ft^2/lbf",
    "1/ksf": "0.001 ft^2/lbf",
    "cm2/kgf": "1 cm^2/kgf",
  },
  conductivity: {
    "m/s": "1 m/s",
    "cm/s": "1 cm/s",
    "m/yr": "1 m/year",
    "ft/day": "1 ft/day",
    "ft/yr": "1 ft/year",
  },
  force: { N: "1 N", kN: "1 kN", kg: "1 kgf", lbf: "1 lbf" },
};
