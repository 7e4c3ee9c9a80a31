/** The fields of the ring, of the specimen in it, and of the weighings. */
import { when, type Field, type Table } from "../field";
import { input, panels, result, text } from "../form-fields";
import { GS } from "../../reduction/specimen";
import { DRY, DRY_MASS, HAS_SOIL, rounded, shown, SIZE_REMARK, SOLIDS } from "../formulas";
import { MOST } from "../measures";

/** Salt over pore water, in a saturated solution. */
const MOST_SALT = 0.26;
const SALT_FITS = `OR({pore_salt}="",AND(COUNT({pore_salt})=1,{pore_salt}>=0,{pore_salt}<=${MOST_SALT}))`;
const TEMPERATURE_FITS = 'OR({test_temperature}="",COUNT({water_density})=1)';
const GRAVITY_FITS = `{specific_gravity}>=${GS.least},{specific_gravity}<=${GS.most}`;

export const MASSES = panels(
  [
    text("ring_number", "Ring number"),
    input(
      "specific_gravity",
      "Specific gravity of solids",
      "ratio",
      "Particle density over that of water, 1.000 Mg/m3.",
      {
        limits: { least: GS.least, most: GS.most },
      },
    ),
    input("specific_gravity_basis", "  measured or assumed", "text", "An assumed value must be reported as such.", {
      choices: ["measured", "assumed"],
    }),
  ],
  [
    input(
      "registered_diameter",
      "Ring register: diameter",
      "length",
      "Diameter of the ring in the register; the measured diameter is typed below.",
    ),
    input("registered_height", "Ring register: height", "length", "Height of the ring in the register."),
    input("registered_ring_mass", "Ring register: mass", "mass", "Mass of the ring in the register, clean and dry."),
  ],
  [
    input("diameter", "Diameter", "length", "Mean inside diameter of the ring as measured, not the nominal one."),
    input("initial_height", "Initial height", "length", "Height of the specimen in the ring before seating."),
    input("ring_mass", "Ring", "mass", "Ring alone, clean and dry."),
  ],
  [
    input("ring_and_wet_before", "Ring + wet soil, before", "mass", "Trimmed specimen in its ring before the test."),
    input("ring_and_wet_after", "Ring + wet soil, after", "mass", "Dismantled quickly, free water blotted off."),
    input("ring_and_dry", "Ring + dry soil", "mass", "After oven drying to constant mass, with all soil kept."),
  ],
  [
    input(
      "final_height_measured",
      "Final height, measured",
      "length",
      "Optional: a check on the height from the readings, and used in its place where there are none.",
    ),
    input(
      "largest_particle",
      "Largest particle",
      "length",
      "Largest grain or inclusion found in the specimen after the test.",
    ),
    input(
      "swelling_pressure",
      "Swelling pressure",
      "stress",
      "Stress that held the height on inundation, where it was measured.",
    ),
  ],
  [
    input(
      "test_temperature",
      "Temperature of the water",
      "temperature",
      "Optional: temperature of the water that the specific gravity is relative to, usually 20. Where it is blank, water has 1.000 g/cm3.",
    ),
    result(
      "water_density",
      "  its density, g/cm3",
      "small",
      when(
        ["{test_temperature}"],
        "CLAY.WATER_DENSITY({test_temperature})",
        "AND({test_temperature}>0,{test_temperature}<=60)",
      ),
      "By Kell (1975), from the temperature.",
    ),
    input(
      "pore_salt",
      "Salt of the pore water",
      "percent",
      "Optional: mass of salt over mass of pore water at the end of the test, 3.5 % in sea water. Drying leaves the salt with the soil: it is taken out of the dry mass.",
      { limits: { least: 0, most: MOST_SALT } },
    ),
  ],
  [
    result(
      "dry_mass",
      "Dry mass of soil",
      "mass",
      when(DRY_MASS, `${DRY}-{ring_mass}`, `AND(${HAS_SOIL},${SALT_FITS})`),
      "Md = (ring + dry soil) - ring, less the salt of the pore water where its content is given.",
    ),
    result(
      "solids_height",
      "Height of solids",
      "length",
      when(
        SOLIDS,
        shown(
          'CLAY.SOLIDS_HEIGHT({dry_mass},{specific_gravity},{diameter},{length_unit},IF({water_density}="",1,{water_density}))',
        ),
        `AND(${GRAVITY_FITS},{diameter}>0,{diameter}<=${MOST.length},${TEMPERATURE_FITS},IFERROR({${SIZE_REMARK}},"")="")`,
      ),
      "Hs = Md / (Gs rho_w A), A = pi D^2 / 4, rho_w = 1.000 g/cm3, or that of the temperature given.",
    ),
    result(
      "salt_mass",
      "Salt in the dry soil",
      "mass",
      when(
        ["{pore_salt}", ...DRY_MASS, "{ring_and_wet_after}"],
        `IF(OR({pore_salt}=0,NOT(${SALT_FITS}),NOT(AND(${HAS_SOIL})),{ring_and_wet_after}<{ring_and_dry}),"",CLAY.SALT_CORRECTION({ring_and_wet_after},{ring_and_dry},{pore_salt},{ring_mass},"salt"))`,
      ),
      "Pore water = (wet after - dry) / (1 - s), salt = pore water less (wet after - dry); IODP Proceedings 330, Table T9.",
    ),
  ],
  [
    result(
      "water_content_initial_weighed",
      "w0 without correction for salt",
      "percent",
      when(
        ["{salt_mass}", "{ring_and_wet_before}"],
        "CLAY.WATER_CONTENT({ring_and_wet_before},{ring_and_dry},{ring_mass})",
        "{ring_and_wet_before}>={ring_and_dry}",
      ),
      "As weighed: (wet mass before - dry mass) / dry mass, the salt in the dry mass.",
    ),
    result(
      "water_content_final_weighed",
      "wf without correction for salt",
      "percent",
      when(["{salt_mass}"], "CLAY.WATER_CONTENT({ring_and_wet_after},{ring_and_dry},{ring_mass})"),
      "As weighed: (wet mass after - dry mass) / dry mass, the salt in the dry mass.",
    ),
  ],
);

/** The table of two or three tins of trimmings. Their mean gives a second value of the water content. */
export const TINS: Table = {
  rows: 3,
  columns: [
    { name: "tin_number", label: "Tin number", heading: ["Tin", "number"], measure: "text", kind: "input" },
    {
      name: "tin_mass",
      label: "Tin",
      heading: ["Tin", ""],
      measure: "mass",
      kind: "input",
      note: "Empty tin, clean and dry.",
    },
    { name: "tin_and_wet", label: "Tin + wet trimmings", heading: ["Tin", "+ wet"], measure: "mass", kind: "input" },
    { name: "tin_and_dry", label: "Tin + dry trimmings", heading: ["Tin", "+ dry"], measure: "mass", kind: "input" },
    {
      name: "tin_water_content",
      label: "Water content of the tin",
      heading: ["Water", "content"],
      measure: "percent",
      kind: "result",
      formula: when(
        ["[tin_mass]", "[tin_and_wet]", "[tin_and_dry]"],
        "CLAY.WATER_CONTENT([tin_and_wet],[tin_and_dry],[tin_mass])",
        "AND([tin_mass]>=0,[tin_and_dry]>[tin_mass],[tin_and_wet]>=[tin_and_dry])",
      ),
      note: "w = (wet - dry) / (dry - tin).",
    },
  ],
};

export const TRIMMINGS: readonly Field[] = [
  result(
    "water_content_trimmings",
    "Water content, trimmings",
    "percent",
    '=IF(COUNT({tin_water_content})=0,"",AVERAGE({tin_water_content}))',
    "Mean of the tins.",
  ),
  result(
    "dry_mass_trimmings",
    "Dry mass by the trimmings",
    "mass",
    when(
      ["{ring_mass}", "{ring_and_wet_before}", "{water_content_trimmings}"],
      "({ring_and_wet_before}-{ring_mass})/(1+{water_content_trimmings})",
      "{ring_and_wet_before}>{ring_mass}",
    ),
    "Md = wet mass before / (1 + w of trimmings): a check on the oven-dry mass, not used in the reduction.",
  ),
  result(
    "dry_mass_difference",
    "  over the oven-dry mass",
    "percent",
    when(["{dry_mass}", "{dry_mass_trimmings}"], rounded("{dry_mass_trimmings}/{dry_mass}-1", 3)),
    "More than 2 % either way: look at the weighings (common practice, no source).",
  ),
];
