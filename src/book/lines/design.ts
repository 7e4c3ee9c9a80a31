/** The lines of the design values. */
import { inSheetStress } from "../../record/reduced/inputs";
import { cvInUse, cvOfRange } from "../../reduction/curve/cv-at";
import { DESIGN_INCREASE } from "../../reduction/curve/design";
import { english, say, type Message } from "../../reduction/message";
import { CV_RANGES, type CvRangeName } from "../../specification/results/adoptable";
import { NO_CV_THERE } from "../../specification/sentences/of-remarks";
import { inNumbers } from "../line";
import { adoptedLine } from "./adopted";
import { construction, few, type Line, type Lines, type Sheet } from "./sheet";

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

export const DESIGN: Lines = {
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
