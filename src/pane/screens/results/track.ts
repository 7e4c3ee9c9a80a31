/** The readings of the methods on one log scale of stress, so that their spread is seen beside the range that the points allow. */

/** Room at each end of the scale, as a share of what lies between the least and the greatest. */
const ROOM = 0.08;

export interface Scale {
  /** log10 of the stress at either end. */
  readonly low: number;
  readonly high: number;
}

/** The scale on which all these stresses find room; undefined where there are none above zero. */
export function scaleOf(stresses: readonly (number | undefined)[]): Scale | undefined {
  const logs = stresses.flatMap((stress) => (stress !== undefined && stress > 0 ? [Math.log10(stress)] : []));
  if (logs.length === 0) return undefined;
  const [least, greatest] = [Math.min(...logs), Math.max(...logs)];
  const room = Math.max(ROOM * (greatest - least), 0.01);
  return { low: least - room, high: greatest + room };
}

/** Where a stress lies on a scale, from 0 at its low end to 1 at its high end. */
export const placeOn = ({ low, high }: Scale, stress: number): number =>
  Math.min(1, Math.max(0, (Math.log10(stress) - low) / (high - low)));
