/** A movement as a reviewer weighs it: in divisions of the dial (or digits of the logger) where they show, and in share of primary. */
export type Share = (movement: number) => string;

/** `step` is the division, 0 where the readings show none; `primary` may have either sign. */
export const shareOf =
  (step: number, primary: number): Share =>
  (movement) => {
    const share = `${Number(((100 * movement) / Math.abs(primary)).toPrecision(2))} % of primary`;
    return step ? `${Number((movement / step).toPrecision(2))} divisions, ${share}` : share;
  };
