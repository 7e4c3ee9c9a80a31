/**
 * The calculation book of a test. Each number of the results and each number of a load has a line: the formula with the
 * numbers put in, and the result, from the values of the sheet in its units. A line for a value read off a construction
 * names the construction.
 */
import { FIELDS, type NamedField } from "../specification/fields";
import { LOAD_TABLE } from "../specification/load-table";
import { dialSense } from "../record/load-curve";
import { methodOfLoad, picksOfCurve } from "../record/picks";
import type { NamedValues, TestRecord } from "../record/record";
import { cvInUse, cvOfRange } from "../reduction/curve/cv-at";
import { DESIGN_INCREASE } from "../reduction/curve/design";
import { FIELD_FACTOR } from "../reduction/curve/field-curve";
import type { Index } from "../reduction/curve/indices";
import { CURVE_PICK_NAMES, CURVE_PICK_WORDS } from "../reduction/curve/picks";
import type { MethodName } from "../reduction/curve/method-words";
import type { Adopted } from "../record/adopted";
import { CV_RANGES, type CvRangeName } from "../specification/results/adoptable";
import { virginLineOf } from "../reduction/curve/methods/reading";
import type { LoadPoint } from "../reduction/curve/shape/points";
import { temperatureFactor } from "../reduction/curve/viscosity";
import { decimalsOfLevels } from "../reduction/increment/level-decimals";
import { firstOf, lastOf, nth } from "../reduction/numeric/lists";
import { at as onLine, straightLine } from "../reduction/numeric/straight-line";
import {
  asTyped,
  digits,
  english,
  listed,
  listWord,
  say,
  verbatim,
  type Digits,
  type Message,
  type Value,
} from "../reduction/message";
import type { Outcome } from "../reduction/outcome";
import { unitNamed } from "../reduction/units";
import { FORMULAS, FORMULA_UNITS, type Measured } from "./formulas";
import { inNumbers, working, type Units, type Worked } from "./line";
import { boxesByName, rowOfLoad } from "../checks/integrity";
import { inSheetStress, reduced, yieldMethodOf, type Reduced } from "../record/reduced-test";
import { NO_CV_THERE } from "../specification/sentences/of-remarks";
import { wettingAt } from "../record/wetting";
import { OWN, tableSheet } from "../workbook/table-sheet";
import { labelOn } from "../record/labels/sheet-labels";
import { unitOn } from "./comparison";
import { formatOf, unitCellOf, type Measure } from "../specification/measures";
import type { SheetLanguage } from "../specification/text/language";
import { planIn } from "../specification/text/plan-in-language";
import { besideIn, wordsOf } from "../specification/text/words";
import { boxAddress, quoted } from "../workbook/address";
import { partOfList } from "../workbook/lists";
import { rulesOf } from "../specification/versions";
import type { SheetName, SheetPlan } from "../workbook/port";

export interface Entry {
  readonly name: string;
  /** Number of a load. */
  readonly load?: number;
  /** Row of the number in its column, from 0. */
  readonly row: number;
  /** The formula with its numbers, or the construction that the value was read off. */
  readonly said: Value;
  /** The result of the line, in the unit of the sheet; absent if the value is read off a construction. */
  readonly result?: number;
  /** The formula and the numbers of the line, if a formula gives it. */
  readonly worked?: Worked;
  /** The value that the sheet shows. */
  readonly value: number;
  readonly unit: string;
  /** Number format of the sheet. */
  readonly format?: string;
}

type Named = Pick<NamedField, "name" | "measure">;
type Cell = number | undefined;
type Line = { readonly said: Value; readonly result?: number; readonly worked?: Worked } | undefined;

/** The units of the sheet for the measures of a formula. */
function unitsOn(values: NamedValues, id: string): Units {
  const formula = FORMULAS.find((one) => one.id === id)!;
  const onSheet: Partial<Record<Measured, Measure>> = {
    length: "length",
    stress: "stress",
    cv: "cv",
    mv: "compressibility",
    conductivity: "conductivity",
    "mass density": "density",
    "unit weight": "density",
  };
  const units: Partial<Record<Measured, string>> = {};
  for (const measures of [...formula.arguments.map((one) => one.measures), formula.result]) {
    const measure = measures && onSheet[measures];
    const cell = measure && unitCellOf(measure);
    const typed = cell && String(values[cell]?.[0]?.[0] ?? "");
    // A unit that the formula does not know is ignored: the formula keeps its own unit.
    const known = measures && typed ? unitNamed(typed, FORMULA_UNITS[measures]) : undefined;
    if (measures && known) units[measures] = known;
  }
  return units;
}

export function calculationBook(record: TestRecord, values: NamedValues): Entry[] {
  const cell = (name: string, row = 0): Cell => {
    const value = values[name]?.[row]?.[0];
    return typeof value === "number" ? value : undefined;
  };
  /** A line of a formula; undefined if a number is missing or the reduction refuses. */
  const lineWith =
    (decimalsOfReadings?: number) =>
    (id: string, cells: readonly Cell[], after?: Message): Line => {
      const numbers = cells.filter((number) => number !== undefined);
      if (numbers.length < cells.length) return undefined;
      const formula = FORMULAS.find((one) => one.id === id)!;
      const least = formula.arguments.filter(({ fallback }) => fallback === undefined).length;
      if (numbers.length < least || numbers.length > formula.arguments.length) return undefined;
      const units = unitsOn(values, id);
      const found = working(formula, numbers, units, decimalsOfReadings);
      if (!found.ok) return undefined;
      const { text, result } = found.value;
      const formulaSaid = inNumbers(text);
      const said = after ? listed([formulaSaid, after]) : formulaSaid;
      return { said, result, worked: { formula: id, values: numbers, units, result } };
    };
  const book: Sheet = { record, values, reduced: reduced(record), cell, line: lineWith() };
  /** The lines of a load show its readings, and what was read off them, to the decimals of the readings and one more. */
  const lineOfLoad = (index: number): Sheet["line"] => {
    const cleaned = book.reduced.loads[index]?.increment.cleaned;
    return lineWith(cleaned && decimalsOfLevels(cleaned));
  };
  const system = values.length_unit?.[0]?.[0] === "in" ? "US" : "SI";
  const entry = ({ name, measure }: Named, row: number, found: Line, load?: number): Entry[] => {
    const value = cell(name, row);
    if (value === undefined) return [];
    const shown = found ?? { said: say`no working: one of its numbers is not on the sheet, or the method refused` };
    return [
      {
        name,
        ...(load === undefined ? {} : { load }),
        row,
        ...shown,
        value,
        unit: unitOn(values, measure),
        format: formatOf(measure, system),
      },
    ];
  };
  const ofTest = FIELDS.flatMap((field) => {
    const workedOut = TEST[field.name];
    return field.kind === "result" && !field.column && workedOut ? entry(field, 0, workedOut(book)) : [];
  });
  const rows = record.loads.map(({ number }) => rowOfLoad(values, number));
  const ofLoads = record.loads.flatMap(({ number }, index) => {
    const [before, row] = [rows[index - 1], nth(rows, index)];
    const sheet: LoadSheet = { ...book, line: lineOfLoad(index), row, before, index };
    return LOAD_TABLE.columns.flatMap((column) => {
      const workedOut = LOAD[column.name];
      return workedOut ? entry(column, row, workedOut(sheet), number) : [];
    });
  });
  return [...ofTest, ...ofLoads];
}

interface Sheet {
  readonly record: TestRecord;
  readonly values: NamedValues;
  readonly reduced: Reduced;
  readonly cell: (name: string, row?: number) => Cell;
  readonly line: (id: string, numbers: readonly Cell[], after?: Message) => Line;
}

const less = (a: Cell, b: Cell): Cell => (a === undefined || b === undefined ? undefined : a - b);
const wet = ({ cell }: Sheet, which: "before" | "after"): Cell =>
  less(cell(`ring_and_wet_${which}`), cell("ring_mass"));
const density =
  (mass: (sheet: Sheet) => Cell) =>
  (sheet: Sheet): Line => {
    const { cell, line, values } = sheet;
    const weight = /kN|pcf/.test(String(values.density_unit?.[0]?.[0] ?? ""));
    return line(weight ? "unit_weight" : "density", [mass(sheet), cell("diameter"), cell("initial_height")]);
  };

/** The slope of the least-squares line through points, shown between two points on that line. */
function slopeLine({ line }: Sheet, id: string, points: readonly LoadPoint[], basis: Message): Line {
  if (points.length < 2) return undefined;
  const x = points.map(({ stress }) => Math.log10(stress));
  const best = straightLine(
    x,
    points.map(({ value }) => value),
  );
  const [from, to] = [firstOf(x), lastOf(x)];
  return line(
    id,
    [10 ** from, 10 ** to, onLine(best, from), onLine(best, to)],
    points.length === 2
      ? say`between the ends of ${basis}`
      : say`between two points on the best line through the points of ${basis}`,
  );
}

/** An index, shown on the first of the branches that it was read from. */
function meanSlope(sheet: Sheet, id: string, index: Outcome<Index>): Line {
  if (!index.ok) return undefined;
  const { basis, readings } = index.value;
  const [first] = readings;
  if (first === undefined) return undefined;
  const found = slopeLine(sheet, id, first, say`the ${basis}`);
  return readings.length === 1 || !found
    ? found
    : { said: say`${found.said}; the mean of ${readings.length} loops, of which this is the first` };
}

/** The line of an adopted value: nothing is worked out. Undefined if none is adopted. */
function adoptedLine({ record, cell }: Sheet, name: keyof Adopted): Line {
  const adopted = record.adopted?.[name];
  if (!adopted) return undefined;
  const typed = (text: string | undefined, otherwise: Message): Value => (text ? verbatim(text) : otherwise);
  const by = typed(adopted.by, say`no initials`);
  const who = adopted.day ? listed([by, verbatim(adopted.day)]) : by;
  return { said: say`adopted by ${who}: ${typed(adopted.reason, say`no reason given`)}`, result: cell(name) };
}

/** What each method of the preconsolidation stress draws. */
const YIELD_LINES: Readonly<Record<MethodName, Message>> = {
  casagrande: say`Casagrande: where the bisector between horizontal and tangent at the greatest curvature meets the virgin line`,
  work: say`work per unit volume: where the line before yield meets the line after it, on work against stress`,
  bilog: say`bilogarithmic: where the two straight lines meet, on ln(1 + e) against log of stress`,
  intersection: say`intersection: where the recompression line meets the virgin line`,
  pacheco_silva: say`Pacheco Silva: from the virgin line at the initial void ratio down to the curve, and across to the virgin line`,
  janbu: say`Janbu: half-way through the fall of the modulus, on modulus against stress`,
};

/** The virgin line, in void ratio against log of stress. */
function virgin({ record, reduced: { curve } }: Sheet): { points: readonly LoadPoint[]; basis: Message } | undefined {
  if (!curve.ok || curve.value.kind !== "e") return undefined;
  const picks = picksOfCurve(record.picks);
  const found = virginLineOf(curve.value, picks);
  if (!found.ok) return undefined;
  const { curve: first, virgin: run } = found.value;
  const points = first.points.slice(run.from, run.to + 1);
  const isPicked = picks.virgin_from !== undefined || picks.virgin_to !== undefined;
  const [from, to] = [few(firstOf(points).stress), few(lastOf(points).stress)];
  return {
    points,
    basis: isPicked ? say`the virgin line, ${from} to ${to}, picked by hand` : say`the virgin line, ${from} to ${to}`,
  };
}

const few = (value: number): Digits => digits(value, 4);

/** The void ratio at the in-situ stress, interpolated linearly on log of stress between points of first loading. */
function atInSitu(sheet: Sheet): { e: number; said: Message } | undefined {
  const { record, reduced: all, cell, line } = sheet;
  const sigma = cell("in_situ_stress");
  if (sigma === undefined || !all.branches.ok || all.curve.ok === false || all.curve.value.kind !== "e")
    return undefined;
  const points = [...all.branches.value.seating, ...all.branches.value.firstLoading];
  const above = points.findIndex(({ stress }) => stress >= sigma * (1 - 1e-9));
  if (above < 1) return undefined;
  const [a, b] = [nth(points, above - 1), nth(points, above)];
  const found = line("void_ratio_at_stress", [sigma, a.stress, b.stress, a.value, b.value]);
  return (
    found && {
      e: found.result!,
      said: say`${found.said} at ${few(inSheetStress(record, record.numbers.in_situ_stress!))}`,
    }
  );
}

const ofInSitu =
  (id: string) =>
  (sheet: Sheet): Line => {
    const e = atInSitu(sheet);
    const found = e && sheet.line(id, [sheet.cell("void_ratio_initial"), e.e]);
    return found && { ...found, said: listed([e.said, found.said], "; ") };
  };

const construction = (said: Message) => (): Line => ({ said });

/** A formula over the increase of the design values, from the in-situ stress. */
const overIncrease =
  (id: string) =>
  ({ record, cell, line }: Sheet): Line => {
    const from = cell("in_situ_stress");
    const increase = cell("design_increase") ?? inSheetStress(record, DESIGN_INCREASE);
    const to = from === undefined ? undefined : from + increase;
    return line(id, [from, to, cell("design_e_in_situ"), cell("design_e_final")]);
  };

/** An index as strain: over 1 + e0. */
const strainRatio =
  (symbol: string, index: string) =>
  ({ cell }: Sheet): Line => {
    const [slope, e0] = [cell(index), cell("void_ratio_initial")];
    return slope === undefined || e0 === undefined
      ? undefined
      : {
          said: inNumbers(`${symbol} / (1 + e_0) = ${english(few(slope))} / (1 + ${english(few(e0))})`),
          result: slope / (1 + e0),
        };
  };

/** A column of the load table, a blank as null. */
const columnOf = ({ cell, values }: Sheet, name: string): (number | null)[] =>
  Array.from({ length: values[name]?.length ?? 0 }, (_, row) => cell(name, row) ?? null);

/** Where cv at the in-situ stress and half the increase comes from; the sheet says it in its own language. */
function designCvFrom(sheet: Sheet): Message {
  const { record, cell } = sheet;
  const increase = cell("design_increase") ?? inSheetStress(record, DESIGN_INCREASE);
  const adopted = CV_RANGES.flatMap((_, row) => {
    const [from, to, cv] = [cell("adopted_cv_low", row), cell("adopted_cv_high", row), cell("adopted_cv", row)];
    return from === undefined || to === undefined || cv === undefined ? [] : [{ from, to, cv }];
  });
  const [stresses, cvs] = [columnOf(sheet, "load_stress"), columnOf(sheet, "cv_chosen")];
  const found = cvInUse(stresses, cvs, (cell("in_situ_stress") ?? 0) + increase / 2, adopted);
  return found.ok ? found.value.basis : NO_CV_THERE;
}

/** cv in use over a range of stress: the one adopted, otherwise that of the loads. */
const cvOver =
  (name: CvRangeName) =>
  (sheet: Sheet): Line => {
    const { cell } = sheet;
    const row = CV_RANGES.findIndex((one) => one.name === name);
    const [from = 0, to = 0] = [cell("adopted_cv_low", row), cell("adopted_cv_high", row)];
    const found = cvOfRange(columnOf(sheet, "load_stress"), columnOf(sheet, "cv_chosen"), from, to);
    const ofLoads: Line = found.ok
      ? {
          said: say`the geometric mean of the cv of ${found.value.loads === 1 ? say`1 load` : say`${found.value.loads} loads`} from ${few(from)} to ${few(to)}, ${few(found.value.least)} to ${few(found.value.greatest)}`,
          result: found.value.mean,
        }
      : undefined;
    return adoptedLine(sheet, name) ?? ofLoads;
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

/** The lines of the results. A test checks that every result of the sheet has one. */
const TEST: Readonly<Record<string, (sheet: Sheet) => Line>> = {
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
  apparatus_deflection_seating: (sheet) => {
    const stress = sheet.cell("seating_stress");
    return stress
      ? ofTable(sheet, stress, "apparatus_loading")
      : { said: say`the zero reading was taken without load`, result: 0 };
  },
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
  preconsolidation_stress: (sheet) => {
    const picked = picksOfCurve(sheet.record.picks);
    const hand = CURVE_PICK_NAMES.flatMap((name) =>
      picked[name] === undefined ? [] : [say`${listWord(CURVE_PICK_WORDS[name])} ${picked[name]}`],
    );
    const drawn = say`${YIELD_LINES[yieldMethodOf(sheet.record)]}; the plot shows the lines`;
    const said = hand.length === 0 ? drawn : say`${drawn}; picked by hand: ${listed(hand)}`;
    return adoptedLine(sheet, "preconsolidation_stress") ?? { said, result: undefined };
  },
  preconsolidation_low: construction(say`the lower end of the range that these points allow for the knee of the curve`),
  preconsolidation_high: construction(
    say`the upper end of the range that these points allow for the knee of the curve`,
  ),
  overconsolidation_ratio: ({ cell, line }) => line("ocr", [cell("preconsolidation_stress"), cell("in_situ_stress")]),
  compression_index: (sheet) => {
    const found = virgin(sheet);
    return (
      adoptedLine(sheet, "compression_index") ??
      (found && slopeLine(sheet, "compression_index", found.points, found.basis))
    );
  },
  recompression_index: (sheet) =>
    adoptedLine(sheet, "recompression_index") ??
    meanSlope(sheet, "recompression_index", sheet.reduced.recompressionIndex),
  swelling_index: (sheet) =>
    adoptedLine(sheet, "swelling_index") ?? meanSlope(sheet, "swelling_index", sheet.reduced.swellingIndex),
  c_alpha_chosen: (sheet) => {
    const { cell, values } = sheet;
    const load = cell("c_alpha_load");
    const adopted = adoptedLine(sheet, "c_alpha_chosen");
    if (adopted) return adopted;
    return load === undefined
      ? undefined
      : { said: say`C alpha of load ${load}`, result: cell("c_alpha", rowOfLoad(values, load)) };
  },
  c_alpha_ratio: ({ cell, line }) =>
    line("c_alpha_ratio", [cell("c_alpha_chosen"), cell("void_ratio_initial"), cell("compression_index")]),
  field_compression_index: (sheet) => {
    const { cell, line } = sheet;
    const [e0, sigma, sigmaV0] = [cell("void_ratio_initial"), cell("preconsolidation_stress"), cell("in_situ_stress")];
    const Cr = cell("field_recompression_index");
    if (e0 === undefined || sigma === undefined || sigmaV0 === undefined || Cr === undefined) return undefined;
    const bent = Cr > 0 && sigma > sigmaV0;
    const [from, e] = bent ? [sigma, e0 - Cr * Math.log10(sigma / sigmaV0)] : [sigmaV0, e0];
    return line(
      "compression_index",
      [from, cell("field_meeting_stress"), e, cell("field_meeting_void_ratio")],
      say`from the end of the field recompression line to where both curves meet`,
    );
  },
  field_recompression_index: ({ cell }) => ({
    said: say`C_r: the field curve runs parallel to the recompression up to the preconsolidation stress`,
    result: cell("recompression_index"),
  }),
  field_meeting_void_ratio: ({ cell, line }) =>
    line("share_of_void_ratio", [cell("field_factor") ?? FIELD_FACTOR, cell("void_ratio_initial")]),
  field_meeting_stress: (sheet) => {
    const found = virgin(sheet);
    if (!found) return undefined;
    const x = found.points.map(({ stress }) => Math.log10(stress));
    const best = straightLine(
      x,
      found.points.map(({ value }) => value),
    );
    const start = firstOf(x);
    return sheet.line(
      "stress_on_line",
      [10 ** start, onLine(best, start), sheet.cell("field_meeting_void_ratio"), -best.slope],
      say`on the virgin line`,
    );
  },
  quality_change: ofInSitu("change_of_void_ratio"),
  quality_strain: ofInSitu("strain_by_void_ratio"),
  design_e_in_situ: construction(
    say`the curve chosen at the in-situ stress, straight between two points on log of stress`,
  ),
  design_e_final: construction(
    say`the curve chosen at the in-situ stress and the increase, straight between two loads on log of stress`,
  ),
  design_mv: overIncrease("mv"),
  design_modulus: overIncrease("constrained_modulus"),
  design_cr: (sheet) =>
    strainRatio(
      "C_c",
      sheet.record.words.design_curve === "field" && !sheet.record.adopted?.compression_index
        ? "field_compression_index"
        : "compression_index",
    )(sheet),
  design_rr: strainRatio("C_r", "recompression_index"),
  design_sr: strainRatio("C_s", "swelling_index"),
  design_modulus_number: ({ cell }) => {
    const ratio = cell("design_cr");
    return ratio === undefined
      ? undefined
      : { said: inNumbers(`m = ln 10 / CR = 2.302585 / ${english(few(ratio))}`), result: 2.302585 / ratio };
  },
  cv_recompression: cvOver("cv_recompression"),
  cv_virgin: cvOver("cv_virgin"),
  cv_another: cvOver("cv_another"),
  design_cv: (sheet) => ({ said: say`cv at the in-situ stress and half the increase: ${designCvFrom(sheet)}` }),
  design_k: ({ cell, line }) => line("conductivity", [cell("design_cv"), cell("design_mv")]),
  design_c_alpha: ({ cell }) => ({ said: say`C alpha in use`, result: cell("c_alpha_chosen") }),
};

interface LoadSheet extends Sheet {
  readonly row: number;
  /** Row of the load before; undefined for the first load. */
  readonly before: number | undefined;
  readonly index: number;
}

const before = ({ cell, before: row }: LoadSheet, name: string, start: string): Cell =>
  row === undefined ? cell(start) : cell(name, row);

/** The dial factor, with the sign of compression. */
const factor = ({ record, cell }: Sheet): Cell => {
  const size = cell("dial_factor");
  return size === undefined ? undefined : dialSense(record) === "fall" ? -size : size;
};
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

/** The value of the calibration table at a stress, from one of its columns; undefined beyond the table. */
function ofTable(
  { record, cell, values, line }: Sheet,
  stress: Cell,
  column: "apparatus_loading" | "apparatus_unloading",
): Line {
  const rows = record.deflections.flatMap((_, at) => {
    const [s, d] = [cell("apparatus_stress", at), cell(column, at)];
    return s === undefined || d === undefined ? [] : [{ s, d }];
  });
  rows.sort((a, b) => a.s - b.s);
  const exact = rows.find(({ s }) => stress !== undefined && Math.abs(s - stress) <= 1e-9 * s);
  if (exact)
    return {
      said: say`as the table gives it at ${few(exact.s)} ${verbatim(unitOn(values, "stress"))}`,
      result: exact.d,
    };
  const above = rows.findIndex(({ s }) => stress !== undefined && s > stress);
  if (above < 1) return undefined;
  const [a, b] = [nth(rows, above - 1), nth(rows, above)];
  return line("apparatus_deflection", [stress, a.s, b.s, a.d, b.d], say`between two rows of the table`);
}

/** The lines of a load. */
const LOAD: Readonly<Record<string, (sheet: LoadSheet) => Line>> = {
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

// --- As a sheet ----------------------------------------------------------------------------------------------------

/** The name that tells the sheet of a book. */
export const BOOK_MARK = "book_quantity";
/** Width of the column of formulas, in characters. */
const BOOK_WIDTH = 96;

/**
 * The book on a sheet of its own in the language of the data sheet: the lines are text, which `inWords` words, beside
 * them a reference to the number that the data sheet has now.
 */
export function bookSheet(
  sheet: string,
  entries: readonly Entry[],
  names: readonly SheetName[],
  language: SheetLanguage = "en",
  inWords: (said: Value) => string = english,
): SheetPlan {
  const boxes = boxesByName(names);
  const words = wordsOf(language);
  const texts = entries.map(({ said }) => inWords(said));
  const plan = tableSheet({
    name: "Calculation book",
    title: besideIn(words, "Calculation book of {0}", sheet),
    notes: [
      "The working is text, as the sheet stood when this was made; the last number follows the data sheet.",
      "Lines that come to more digits are rounded where they are shown, and nowhere else.",
    ],
    columns: [
      { name: BOOK_MARK, heading: "Quantity", width: 36, kind: "label" },
      { name: "book_load", heading: "Load", width: 6, kind: "label" },
      { name: "book_working", heading: "Working", width: BOOK_WIDTH, kind: "label", wrap: true },
      { name: "book_then", heading: "Then", width: 12, kind: "label", format: OWN },
      { name: "book_now", heading: "Now", width: 12, kind: "result", format: OWN },
      { name: "book_unit", heading: "Unit", width: 9, kind: "unit" },
    ],
    rows: entries.map(({ name, load, row, value, unit }, index) => {
      const box = boxes.get(name);
      const at = box && boxAddress(partOfList(box, row, 1));
      return [labelOn(language, name), load, texts[index], value, at && `=${quoted(sheet)}!${at}`, unit];
    }),
    formats: entries.map(({ format }) => format),
    lines: texts.map((text) => Math.ceil((1.05 * text.length) / BOOK_WIDTH)),
  });
  return planIn(language, plan);
}
