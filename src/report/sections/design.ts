/** The design values: over the increase from the in-situ stress, the ratios, and cv in use, each live. */
import { CV_SAID, isCvAdoptedAt } from "../../record/adopted";
import { inSheetStress } from "../../record/reduced/inputs";
import { DESIGN_INCREASE } from "../../reduction/curve/design";
import { digits, say, verbatim } from "../../reduction/message";
import { CV_RANGES } from "../../specification/results/adoptable";
import { FORMATS, inPower, threeFigures, type Shown } from "../page/cells";
import { paragraph, type Block } from "../page/page";
import type { DataCells } from "../page/source";
import { ifThere, panels, section } from "./fields";

/** Which curve the values were read from, over which increase, and whose cv it is: a snapshot. */
function from(cells: DataCells): Block[] {
  const { record } = cells.source;
  const inSitu = record.numbers.in_situ_stress;
  const isField = record.words.design_curve === "field";
  const increase = record.numbers.design_increase ?? DESIGN_INCREASE;
  const over = say`${digits(inSheetStress(record, increase), 4)} ${verbatim(cells.text("stress_unit"))}`;
  const isBeyond = ["design_e_in_situ", "design_e_final"].some((name) => cells.isBlank(name));
  const ofCurve = isField
    ? say`e, mv, M and CR are read from Schmertmann's field curve over ${over}, CR from Cc if that is adopted; RR and SR are those of the test.`
    : say`e, mv and M are read from the laboratory loading curve over ${over}.`;
  const isAdopted = inSitu !== undefined && isCvAdoptedAt(record.adopted ?? {}, inSitu + increase / 2);
  const ofCv = isAdopted
    ? say`cv is the one adopted for the range of stress.`
    : say`cv is interpolated between the loads on log stress.`;
  const missing =
    inSitu === undefined
      ? say`No in-situ stress is given: only the ratios are shown.`
      : say`A stress lies beyond the curve: e, mv and M are not given; the remark of the data sheet names the stress.`;
  const ofDigits = say`mv and M are calculated before rounding: from e in print they follow only within 0.001 of its change.`;
  const hasRanges = CV_RANGES.some(({ name }) => cells.has(name) && !cells.isBlank(name));
  const ofRanges = hasRanges
    ? [say`cv of a range of stress is the geometric mean of its loads of first loading, unless it is adopted.`]
    : [];
  const told = [...(inSitu === undefined || isBeyond ? [missing] : [ofCurve, ofDigits, ofCv]), ...ofRanges];
  return paragraph(told.map(cells.words).join(" "), { kind: "note" });
}

/** A sheet that has no design values gets no such part. */
export function design(cells: DataCells): Block[] {
  if (!cells.has("design_cr") || cells.isBlank("design_cr")) return [];
  const t = cells.words;
  const { ratio, index } = FORMATS;
  const inCv = cells.has("cv_unit") ? { unit: "cv_unit" } : {};
  const inSitu = cells.number("design_k");
  const k = inPower(cells, "conductivity_unit", inSitu === undefined ? [] : [inSitu]);
  const left: Shown[] = [
    { label: t(say`e at the in-situ stress`), name: "design_e_in_situ", format: ratio },
    { label: t(say`e after the increase`), name: "design_e_final", format: ratio },
    {
      label: t(say`mv over the increase`),
      name: "design_mv",
      format: threeFigures(cells.number("design_mv")),
      unit: "mv_unit",
    },
    {
      label: t(say`Constrained modulus M`),
      name: "design_modulus",
      format: threeFigures(cells.number("design_modulus")),
      unit: "stress_unit",
    },
    {
      label: t(say`cv in the middle of it`),
      name: "design_cv",
      format: threeFigures(cells.number("design_cv")),
      ...inCv,
    },
    {
      label: t(say`k from cv and mv`),
      name: "design_k",
      formula: k.formula("design_k"),
      format: k.format(inSitu),
      unit: k.unit,
    },
  ];
  const right: Shown[] = [
    { label: t(say`Compression ratio CR`), name: "design_cr", format: index },
    { label: t(say`Recompression ratio RR`), name: "design_rr", format: index },
    { label: t(say`Swelling ratio SR`), name: "design_sr", format: index },
    { label: t(say`Modulus number (Janbu)`), name: "design_modulus_number", format: "0.0" },
    ...CV_RANGES.filter(({ name }) => cells.has(name) && !cells.isBlank(name)).map(({ name }): Shown => ({
      label: t(CV_SAID[name]),
      name,
      format: threeFigures(cells.number(name)),
      ...inCv,
    })),
  ];
  return section(t(say`Design values: from the in-situ stress over the increase`), [
    ...panels(cells, ifThere(cells, ...left), ifThere(cells, ...right)),
    ...from(cells),
  ]);
}
