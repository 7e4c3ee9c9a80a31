/**
 * Correlations of the compression index with classification. They say whether an index is plausible; they are no
 * results, and nothing is worked out from them.
 */
import { say, type Message } from "../message";

/** What is known of the soil: liquid limit, plasticity index and water content as ratios. */
export interface Classified {
  readonly liquidLimit?: number | undefined;
  readonly plasticityIndex?: number | undefined;
  readonly waterContent?: number | undefined;
  readonly voidRatio?: number | undefined;
  readonly specificGravity?: number | undefined;
}

export interface Correlated {
  readonly Cc: number;
  readonly source: Message;
}

/**
 * The spread about a correlation: 30 % either way, as Terzaghi and Peck state of their own (from memory). No spread of
 * the others was seen; 30 % is taken for them too (common practice, no source).
 */
export const CORRELATION_SPREAD = 0.3;

const given = (value: number | undefined, Cc: (value: number) => number, source: Message): Correlated[] => {
  const found = value === undefined ? undefined : Cc(value);
  return found === undefined || found <= 0 ? [] : [{ Cc: found, source }];
};

/**
 * The compression index, by void ratio, of each correlation for which the soil has the numbers; one that gives zero or
 * less is left out. Terzaghi and Peck, and Wood and Wroth, were read in copies; PI / 74 in a manual; those of the void
 * ratio (Azzouz) and of the water content are from memory.
 * @example correlatedCc({ liquidLimit: 0.55 }) // [{ Cc: 0.405 }]
 */
export const correlatedCc = ({
  liquidLimit,
  plasticityIndex,
  waterContent,
  voidRatio,
  specificGravity,
}: Classified): readonly Correlated[] => [
  ...given(liquidLimit, (LL) => 0.9 * (LL - 0.1), say`0.009 (LL - 10), Terzaghi & Peck 1967`),
  ...(specificGravity === undefined
    ? []
    : given(plasticityIndex, (PI) => (specificGravity * PI) / 2, say`Gs PI / 200, Wood & Wroth 1978`)),
  ...given(plasticityIndex, (PI) => (100 * PI) / 74, say`PI / 74, Kulhawy & Mayne 1990`),
  ...given(voidRatio, (e0) => 0.4 * (e0 - 0.25), say`0.40 (e0 - 0.25), Azzouz et al. 1976, from memory`),
  ...given(waterContent, (w) => w, say`0.01 w, from memory`),
];
