/**
 * Sample quality from the volume change on reloading to the in-situ vertical effective stress.
 *
 * By change of void ratio over initial void ratio: Lunne, T., Berre, T., Strandvik, S. (1997), "Sample disturbance effects
 * in soft low plastic Norwegian clay", Table 1. By volumetric strain, specimen quality designation: Andresen and Kolstad
 * (1979), as in Terzaghi, Peck and Mesri (1996), from memory; some texts print D as 4 to 10 percent.
 */
import { say, type Message } from "../message";
import { given, notApplicable, type Outcome } from "../outcome";
import { branches } from "./shape/branches";
import { E0_NEEDED, valueOn } from "./indices";
import type { TestCurve } from "./shape/points";
import { remarksOnRatio } from "./stress-history";
import { firstOf, lastOf, nth } from "../numeric/lists";

/** Upper limits of the change of void ratio, best class first, by overconsolidation ratio. */
export const LUNNE = {
  classes: ["very good to excellent", "good to fair", "poor", "very poor"],
  /** The classes of a sample that is disturbed. */
  disturbed: ["poor", "very poor"],
  "OCR 1 to 2": [0.04, 0.07, 0.14],
  "OCR 2 to 4": [0.03, 0.05, 0.1],
} as const;

/** Upper limits of the volumetric strain. */
export const STRAIN_CLASSES = { classes: ["A", "B", "C", "D", "E"], limits: [0.01, 0.02, 0.04, 0.08] } as const;

export const DISTURBED = say`disturbed: yield and Cc read low`;

/**
 * The swelling strain up to which a specimen has a class. Natural clay swells by 1 to 3 percent when it is watered under a
 * small load. More comes from an expansive soil, which these tables are not for, or from a wrong zero reading. Common
 * practice, no source.
 */
export const MOST_SWELLING = 0.03;
export const SWELLED = say`the specimen swelled up to the in-situ stress; above ${100 * MOST_SWELLING} % it has no class: check the zero reading`;

export type LunneClass = (typeof LUNNE.classes)[number];
export type StrainClass = (typeof STRAIN_CLASSES.classes)[number];

export const LUNNE_NAMES: Readonly<Record<LunneClass, Message>> = {
  "very good to excellent": say`very good to excellent`,
  "good to fair": say`good to fair`,
  poor: say`poor`,
  "very poor": say`very poor`,
};

/**
 * Whether a class by Lunne et al. says that sampling disturbed the specimen.
 * @example isDisturbed("very poor") // true
 */
export const isDisturbed = (lunneClass: LunneClass): boolean => LUNNE.disturbed.some((one) => one === lunneClass);

export interface SampleQuality {
  readonly strain: number;
  /** Absent if the specimen swelled by more than MOST_SWELLING; then there is no class by Lunne et al. either. */
  readonly strainClass?: StrainClass;
  /** Change of void ratio over initial void ratio; needs the initial void ratio. */
  readonly change?: number;
  /** Absent without the change or the overconsolidation ratio. */
  readonly lunneClass?: LunneClass;
}

/** The class of a value; a value at a limit gets the poorer class. */
const classOf = <C extends string>(value: number, limits: readonly number[], classes: readonly C[]): C =>
  nth(classes, limits.filter((limit) => value >= limit - 1e-12).length);

/**
 * Class of a sample. The change is read on first loading, interpolated linearly on log of stress. Refuses an in-situ
 * stress outside the loads. Without the OCR there is no class by Lunne et al., and after much swelling there is no class.
 * @example sampleQuality(clay, 30, 1.5, 2.7).value // { strain: 0.026, strainClass: "C", change: 0.04333, lunneClass: "good to fair" }
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
      say`the in-situ stress ${inSituStress} lies outside the loads (${firstOf(firstLoading).stress} to ${lastOf(firstLoading).stress}): the change of volume there is not known`,
    );
  const e0 = initialVoidRatio;
  if (test.kind === "e" && e0 === undefined) return E0_NEEDED;
  const strain = test.kind === "strain" ? value : (e0! - value) / (1 + e0!);
  const change = e0 === undefined ? undefined : (strain * (1 + e0)) / e0;
  if (strain < 0) remarks.push(SWELLED);
  if (strain < -MOST_SWELLING) return given({ strain, change }, remarks);
  let lunneClass: LunneClass | undefined;
  if (change === undefined) remarks.push(say`change of void ratio needs the initial void ratio`);
  else if (ocr === undefined) remarks.push(say`Lunne's class needs the preconsolidation stress`);
  else {
    remarks.push(...remarksOnRatio(ocr));
    if (ocr < 1) remarks.push(say`Lunne's table begins at OCR 1: its first column is used`);
    if (ocr > 4) remarks.push(say`Lunne's table ends at OCR 4: its second column is used`);
    lunneClass = classOf(change, LUNNE[ocr < 2 ? "OCR 1 to 2" : "OCR 2 to 4"], LUNNE.classes);
    if (isDisturbed(lunneClass)) remarks.push(DISTURBED);
  }
  return given(
    { strain, strainClass: classOf(strain, STRAIN_CLASSES.limits, STRAIN_CLASSES.classes), change, lunneClass },
    remarks,
  );
}
