/** Ticks of the linear axes of a chart: every host gets the same step, so that the grid has round numbers. */

/** A step of 1, 2 or 5 times a power of ten, of which about `count` fit into the domain. */
export function evenStep([low, high]: readonly [number, number], count = 8): number {
  const rough = (high - low) / count;
  const power = 10 ** Math.floor(Math.log10(rough) + 1e-9);
  return power * ([1, 2, 5].find((digit) => digit * power >= rough * (1 - 1e-9)) ?? 10);
}

/** A multiple of the step, without rounding errors of binary numbers. */
const multiple = (count: number, step: number): number => Number((count * step).toPrecision(12));

/** The domain extended to whole steps at both ends; the step is that of the extended domain. */
export function roundedDomain(domain: readonly [number, number]): [number, number] {
  const step = evenStep(domain);
  const rounded: [number, number] = [
    multiple(Math.floor(domain[0] / step + 1e-9), step),
    multiple(Math.ceil(domain[1] / step - 1e-9), step),
  ];
  return evenStep(rounded) > step * 1.5 ? roundedDomain(rounded) : rounded;
}
