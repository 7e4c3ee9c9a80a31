/** Ticks of a chart's linear axes: every host is told the same step, so that a frame of round ends has round numbers. */

/** 1, 2 or 5 times a power of ten, of which about `count` fit into the stretch. */
export function evenStep([low, high]: readonly [number, number], count = 8): number {
  const rough = (high - low) / count;
  const power = 10 ** Math.floor(Math.log10(rough) + 1e-9);
  return power * ([1, 2, 5].find((digit) => digit * power >= rough * (1 - 1e-9)) ?? 10);
}

/** A multiple of the step without binary dust. */
const multiple = (count: number, step: number): number => Number((count * step).toPrecision(12));

/** The stretch carried out to whole steps at both ends; the steps are those of the longer stretch. */
export function roundedDomain(domain: readonly [number, number]): [number, number] {
  const step = evenStep(domain);
  const rounded: [number, number] = [
    multiple(Math.floor(domain[0] / step + 1e-9), step),
    multiple(Math.ceil(domain[1] / step - 1e-9), step),
  ];
  return evenStep(rounded) > step * 1.5 ? roundedDomain(rounded) : rounded;
}
