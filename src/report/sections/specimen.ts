/** Identification of test and sample, the specimen, and the conduct of the test. */
import { LINE_FACTOR, T50, T90 } from "../../reduction/increment/cv";
import { say, type Message } from "../../reduction/message";
import { nth } from "../../reduction/numeric/lists";
import { wettingPlaces } from "../../record/wetting";
import { isWord } from "../../specification/list-words";
import { inFormula, live, toldFormula } from "../../specification/sentences/told-formula";
import { FORMATS, formatIn, formatOfDeformation, typedFormat, unitOfReadings, worked, type Shown } from "../page/cells";
import type { Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";
import { date, fields, ifThere, panels, section, statedFormula, text, told } from "./fields";

export function identification(cells: DataCells): Block[] {
  const depth = formatIn(cells, "depth_unit");
  const t = cells.words;
  return section(
    t(say`Identification`),
    fields(cells, [
      text(t(say`Report no.`), "report_number"),
      text(t(say`Laboratory`), "laboratory"),
      text(t(say`Project`), "project"),
      text(t(say`Job no.`), "job_number"),
      text(t(say`Boring`), "boring"),
      text(t(say`Sample`), "sample"),
      ...ifThere(cells, text(t(say`Sample id`), "sample_id")),
      text(t(say`Sample type`), "sample_type"),
      text(t(say`Specimen`), "specimen"),
      { label: t(say`Depth of specimen`), name: "depth", format: depth, unit: "depth_unit" },
      ...ifThere(cells, { label: t(say`Top of sample`), name: "sample_top", format: depth, unit: "depth_unit" }),
      ...ifThere(cells, text(t(say`Orientation`), "specimen_orientation")),
      text(t(say`Soil`), "soil_description"),
      ...ifThere(cells, text(t(say`Group symbol`), "group_symbol")),
      ...ifThere(cells, text(t(say`Liquid, plastic limit`), "atterberg_limits")),
      text(t(say`Condition`), "condition"),
      text(t(say`Preparation`), "preparation"),
      text(t(say`Standard, edition`), "standard"),
      text(t(say`Load duration`), "test_method"),
      date(t(say`Sampled`), "sample_date"),
      date(t(say`Received`), "date_received"),
      date(t(say`Test started`), "date_started"),
      date(t(say`Test ended`), "date_ended"),
    ]),
  );
}

/** The format of typed numbers with a usual count of decimals: rounded, they would not give what follows from them. */
const asTyped = (cells: DataCells, usual: string, ...names: readonly string[]): string =>
  typedFormat(
    names.flatMap((name) => cells.number(name) ?? []),
    usual.split(".")[1]?.length,
  );

/** A mass of the specimen with its ring, less the ring. */
function wetMass(cells: DataCells, name: string): string | undefined {
  const [both, ring] = [cells.at(name), cells.at("ring_mass")];
  return worked([both, ring], `${both}-${ring}`);
}

/** The formats and units of the specimen. */
function looksOf(cells: DataCells) {
  const masses = ["ring_mass", "ring_and_wet_before", "ring_and_wet_after", "ring_and_dry"];
  return {
    ofDensity: { format: formatIn(cells, "density_unit"), unit: "density_unit" },
    ofMass: { format: asTyped(cells, FORMATS.mass, ...masses), unit: "g" },
    // e has three decimals: it does not follow from heights of 0.01 mm.
    ofHeight: { format: formatOfDeformation(cells), unit: "length_unit" },
  };
}

function initialOf(cells: DataCells): Shown[] {
  const t = cells.words;
  const { ofDensity, ofMass } = looksOf(cells);
  const ofLength = (name: string) => ({
    name,
    format: asTyped(cells, formatIn(cells, "length_unit"), name),
    unit: "length_unit",
  });
  return [
    { label: t(say`Diameter`), ...ofLength("diameter") },
    { label: t(say`Initial height H0`), ...ofLength("initial_height") },
    { label: t(say`Initial water content w0`), name: "water_content_initial", format: FORMATS.water },
    { label: t(say`Initial wet mass`), formula: wetMass(cells, "ring_and_wet_before"), ...ofMass },
    { label: `  ${t(say`w of the trimmings`)}`, name: "water_content_trimmings", format: FORMATS.water },
    { label: t(say`Initial bulk density`), name: "density_initial", ...ofDensity },
    { label: t(say`Initial dry density`), name: "dry_density_initial", ...ofDensity },
    { label: t(say`Initial void ratio e0`), name: "void_ratio_initial", format: FORMATS.ratio },
    { label: t(say`Initial saturation S0`), name: "saturation_initial", format: FORMATS.saturation },
    {
      label: t(say`Gs of solids`),
      name: "specific_gravity",
      format: asTyped(cells, FORMATS.gravity, "specific_gravity"),
    },
    text(`  ${t(say`measured or assumed`)}`, "specific_gravity_basis"),
  ];
}

function finalOf(cells: DataCells): Shown[] {
  const t = cells.words;
  const { ofDensity, ofMass, ofHeight } = looksOf(cells);
  const [H0, Hf, dry, wf] = [
    cells.at("initial_height"),
    cells.at("final_height"),
    cells.at("dry_density_initial"),
    cells.at("water_content_final"),
  ];
  return [
    { label: t(say`Height of solids`), name: "solids_height", ...ofHeight },
    { label: t(say`Final height Hf`), name: "final_height", ...ofHeight },
    { label: t(say`Final water content wf`), name: "water_content_final", format: FORMATS.water },
    { label: t(say`Final wet mass`), formula: wetMass(cells, "ring_and_wet_after"), ...ofMass },
    { label: t(say`Dry mass`), name: "dry_mass", ...ofMass },
    {
      label: t(say`Final bulk density`),
      formula: worked([dry, H0, Hf, wf], `${dry}*${H0}/${Hf}*(1+${wf})`),
      ...ofDensity,
    },
    { label: t(say`Final dry density`), formula: worked([dry, H0, Hf], `${dry}*${H0}/${Hf}`), ...ofDensity },
    { label: t(say`Final void ratio ef`), name: "void_ratio_final", format: FORMATS.ratio },
    { label: t(say`Final saturation Sf`), name: "saturation_final", format: FORMATS.saturation },
    text(t(say`Ring number`), "ring_number"),
    text(t(say`Drainage`), "drainage"),
  ];
}

export const specimen = (cells: DataCells): Block[] =>
  section(cells.words(say`Specimen`), panels(cells, initialOf(cells), finalOf(cells)));

/** The format of stresses, as the loads were typed; of a stress typed in another cell, with its own decimals if it has more. */
export const stressFormat = (cells: DataCells, loads: readonly ReportedLoad[], name?: string): string =>
  typedFormat([
    ...loads.flatMap(({ row }) => cells.number("load_stress", row) ?? []),
    ...(name === undefined ? [] : [cells.number(name) ?? 0]),
  ]);

/** A formula that gives one text if a column of the sheet holds any number, and another if not. */
function anyOf(cells: DataCells, name: string, some: Message, none: Message): string {
  const column = cells.column(name);
  const count = column === undefined ? "0" : `COUNT(${column})`;
  return `=IF(${count}>0,${inFormula(cells.words(some))},${inFormula(cells.words(none))})`;
}

/** A formula for the construction that gives the reported cv. */
function cvReported(cells: DataCells): string {
  const t = cells.words;
  const method = cells.at("time_method");
  if (!method) return toldFormula(t(say`the data sheet does not say which construction was chosen`));
  const root = t(
    say`by root time (Taylor): T90 = ${T90}, line factor ${LINE_FACTOR}, unless a load's row says otherwise`,
  );
  const log = t(say`by log time (Casagrande): T50 = ${T50}, unless a load's row says otherwise`);
  return `=IF(${isWord(method, "root time")},${inFormula(root)},${inFormula(log)})`;
}

/** A formula for the point of each load that the compression curve uses. */
function curveFrom(cells: DataCells): string {
  const t = cells.words;
  const from = cells.at("curve_from");
  if (!from) return toldFormula(t(say`the data sheet does not say`));
  const primary = t(say`the end of primary (d100), or the end of the load where there is no d100`);
  return `=IF(${isWord(from, "d100")},${inFormula(primary)},${inFormula(t(say`the end of each load`))})`;
}

/** The stage of wetting, in a test that has one. */
function wetting(cells: DataCells, ofStress: Pick<Shown, "format" | "unit">): Block[] {
  const t = cells.words;
  if (cells.number("wetting_load") === undefined && ["", "measured"].includes(cells.text("swelling_method"))) return [];
  const strain = { format: FORMATS.strain };
  const stages = wettingPlaces(cells.source.record).map((at) => nth(cells.source.record.loads, at));
  // Where there are several stages, each has its strain; the results above are of the first.
  const ofStages: Shown[] =
    stages.length < 2
      ? []
      : stages.map(({ number, row }) => {
          const strainOfLoad = cells.at("load_wetting_strain", row - 1);
          return {
            label: t(say`Strain on wetting, load ${number}`),
            formula: strainOfLoad === undefined ? undefined : `=${strainOfLoad}`,
            ...strain,
          };
        });
  return panels(
    cells,
    [
      { label: t(say`Wetted under`), name: "wetting_stress", ...ofStress },
      { label: t(say`Strain on wetting`), name: "wetting_strain", ...strain, unit: t(say`(- swell, + collapse)`) },
      { label: t(say`  on the`), name: "wetting_reference", isText: true },
      { label: t(say`Free swell`), name: "wetting_swell", ...strain },
      { label: t(say`Rate per log cycle`), name: "wetting_rate", format: "0.0000" },
      ...ofStages,
    ],
    [
      { label: t(say`Collapse potential`), name: "collapse_potential", ...strain },
      { label: t(say`Collapse index, 200 kPa`), name: "collapse_index", ...strain },
      { label: t(say`  its class (D5333)`), name: "collapse_class", isText: true },
      { label: t(say`Swelling pressure by`), name: "swelling_method", isText: true },
      { label: t(say`  pressure`), name: "swelling_pressure_used", ...ofStress },
    ],
  );
}

export function conduct(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const t = cells.words;
  const stress = stressFormat(cells, loads);
  const ofStress = { format: stress, unit: "stress_unit" };
  const asTyped = (name: string) => ({ ...ofStress, format: stressFormat(cells, loads, name) });
  const length = cells.at("length_unit");
  const sense = cells.at("dial_sense");
  // Where the readings fall on compression, the factor takes them the other way.
  const falling = sense ? `&IF(${isWord(sense, "fall")},${inFormula(`, ${t(say`falling`)}`)},"")` : "";
  const factorUnit = length && `=${length}&${inFormula(`/${t(say`div`)}`)}${falling}`;
  const [template, addIn] = [
    live(statedFormula(cells, "template_version")),
    live(statedFormula(cells, "addin_version")),
  ];
  return section(t(say`Conduct of the test`), [
    ...panels(
      cells,
      [
        { label: t(say`Seating stress`), name: "seating_stress", ...asTyped("seating_stress") },
        { label: t(say`Inundated under`), name: "inundation_stress", ...asTyped("inundation_stress") },
        text(t(say`Load frame`), "frame_number"),
        text(t(say`Dial or transducer`), "dial_number"),
        { label: t(say`Zero reading`), name: "zero_reading", unit: unitOfReadings(cells) },
      ],
      [
        { label: t(say`Swelling pressure`), name: "swelling_pressure", ...ofStress },
        {
          label: t(say`Strain of that load`),
          name: "inundation_strain",
          format: FORMATS.strain,
          unit: t(say`(- swell, + collapse)`),
        },
        text(t(say`Balance`), "balance_number"),
        text(t(say`Apparatus calibration`), "calibration_date"),
        { label: t(say`Dial factor`), name: "dial_factor", ...(factorUnit && { unit: factorUnit }) },
      ],
    ),
    ...wetting(cells, ofStress),
    told(
      t(say`Apparatus correction`),
      anyOf(
        cells,
        "apparatus_stress",
        say`yes: the deflection table of the data sheet is subtracted`,
        say`no: deformations are as measured`,
      ),
    ),
    told(
      t(say`Temperature correction`),
      anyOf(
        cells,
        "cv_20",
        say`no: cv is that of the test's temperature; cv at 20 deg C stands in a column of its own`,
        say`no: cv is that of the test's temperature, and no temperature was entered`,
      ),
    ),
    told(t(say`cv reported`), cvReported(cells)),
    told(t(say`Data sheet, made with`), toldFormula(t(say`version ${template}, Clayledger ${addIn}`))),
    told(t(say`Compression curve from`), curveFrom(cells)),
  ]);
}
