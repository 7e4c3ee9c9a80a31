/**
 * Sample quality from the volume change on reloading to the in-situ vertical effective stress.
 *
 * By change of void ratio over initial void ratio: Lunne, T., Berre, T., Strandvik, S. (1997), "Sample disturbance effects
 * in soft low plastic Norwegian clay", Table 1. By volumetric strain, specimen quality designation: Andresen and Kolstad
 * (1979), as in Terzaghi, Peck and Mesri (1996), from memory; some texts print D as 4 to 10 percent.
 */
import { badInput, given, notApplicable, type Outcome } from "../outcome";
import { branches } from "./shape/branches";
import { valueOn } from "./indices";
import type { TestCurve } from "./shape/points";
import { remarksOnRatio } from "./stress-history";

/** Upper limits of the change of void ratio, best class first, by overconsolidation ratio. */
export const LUNNE = {
  classes: ["very good to excellent", "good to fair", "poor", "very poor"],
  "OCR 1 to 2": [0.04, 0.07, 0.14],
  "OCR 2 to 4": [0.03, 0.05, 0.1],
} as const;

/** Upper limits of the volumetric strain. */
export const STRAIN_CLASSES = { classes: ["A", "B", "C", "D", "E"], limits: [0.01, 0.02, 0.04, 0.08] } as const;

export interface SampleQuality {
  readonly strain: number;
  readonly strainClass: string;
  /** Change of void ratio over initial void ratio; needs the initial void ratio. */
  readonly change?: number;
  /** Needs the change and the overconsolidation ratio. */
  readonly lunneClass?: string;
}

/** A value at a limit takes the poorer class. */
const classOf = (value: number, limits: readonly number[], classes: readonly string[]): string =>
  classes[limits.filter((limit) => value >= limit - 1e-12).length];

/**
 * Class of a sample. The change is read on first loading, straight between points on log of stress.
 * Refuses an in-situ stress outside the loads. Without the OCR there is no class of Lunne's.
 */
export function sampleQuality(
  test: TestCurve,
  inSituStress: number,
  initialVoidRatio: number | undefined,
  ocr: number | undefined,
): Outcome<SampleQuality> {
  const found = branches(test);
  if (!found.ok) return found;
  const remarks = [...found.remarks];
  const { firstLoading, seating } = found.value;
  const value = valueOn([...seating, ...firstLoading], inSituStress);
  if (value === undefined)
    return notApplicable(
      `the in-situ stress ${inSituStress} lies outside the loads (${firstLoading[0].stress} to ${firstLoading[firstLoading.length - 1].stress}): the change of volume there is not known`,
    );
  const e0 = initialVoidRatio;
  if (test.kind === "e" && e0 === undefined) return badInput("the initial void ratio is needed: give it");
  const strain = test.kind === "strain" ? value : (e0! - value) / (1 + e0!);
  const change = e0 === undefined ? undefined : test.kind === "strain" ? (value * (1 + e0)) / e0 : (e0 - value) / e0;
  if (strain < 0) remarks.push("the specimen is more open at the in-situ stress than at the start: it swelled");
  let lunneClass: string | undefined;
  if (change === undefined) remarks.push("change of void ratio needs the initial void ratio");
  else if (ocr === undefined) remarks.push("Lunne's class needs the preconsolidation stress");
  else {
    remarks.push(...remarksOnRatio(ocr));
    if (ocr < 1) remarks.push("Lunne's table begins at OCR 1: its first column is used");
    if (ocr > 4) remarks.push("Lunne's table ends at OCR 4: its second column is used");
    lunneClass = classOf(change, LUNNE[ocr < 2 ? "OCR 1 to 2" : "OCR 2 to 4"], LUNNE.classes);
    if (lunneClass.endsWith("poor")) remarks.push("disturbed: yield and Cc read low");
  }
  return given(
    { strain, strainClass: classOf(strain, STRAIN_CLASSES.limits, STRAIN_CLASSES.classes), change, lunneClass },
    remarks,
  );
}
