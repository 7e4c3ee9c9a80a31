/** Ticks of the axes of a chart: every host gets the same step, so that the grid has round numbers. */
import type { ChartAxis } from "../port";

/** About how many steps a linear axis has; a small chart has no room for as many numbers. */
export const stepsOf = (isSmall: boolean | undefined): number => (isSmall ? 6 : 8);

/** A step of 1, 2 or 5 times a power of ten, of which about `count` fit into the domain. */
export function evenStep([low, high]: readonly [number, number], count = 8): number {
  const rough = (high - low) / count;
  const power = 10 ** Math.floor(Math.log10(rough) + 1e-9);
  return power * ([1, 2, 5].find((digit) => digit * power >= rough * (1 - 1e-9)) ?? 10);
}

/** A multiple of the step, without rounding errors of binary numbers. */
const multiple = (count: number, step: number): number => Number((count * step).toPrecision(12));

/** The domain extended to whole steps at both ends; the step is that of the extended domain. */
export function roundedDomain(domain: readonly [number, number], count?: number): [number, number] {
  const step = evenStep(domain, count);
  const rounded: [number, number] = [
    multiple(Math.floor(domain[0] / step + 1e-9), step),
    multiple(Math.ceil(domain[1] / step - 1e-9), step),
  ];
  return evenStep(rounded, count) > step * 1.5 ? roundedDomain(rounded, count) : rounded;
}

/** The decimals of a step of a linear axis: all its labels have them, so 1 is 1.0 beside 1.2. */
const decimalsOf = (step: number): number => Math.max(0, -Math.floor(Math.log10(step) + 1e-9));

/** The number format of the labels of an axis. */
export function labelFormat({ scale, domain }: Pick<ChartAxis, "scale" | "domain">, isSmall?: boolean): string {
  if (scale === "log") return "General";
  const decimals = decimalsOf(evenStep(domain, stepsOf(isSmall)));
  return decimals === 0 ? "0" : `0.${"0".repeat(decimals)}`;
}

/** The labels of an axis, from its low end. */
export function axisLabels(
  { scale, domain: [low, high] }: Pick<ChartAxis, "scale" | "domain">,
  isSmall?: boolean,
): string[] {
  if (scale === "log")
    return Array.from({ length: Math.round(Math.log10(high / low)) + 1 }, (_, power) =>
      String(Number((low * 10 ** power).toPrecision(6))),
    );
  const step = evenStep([low, high], stepsOf(isSmall));
  return Array.from({ length: Math.floor((high - low) / step + 1e-9) + 1 }, (_, index) =>
    (low + index * step).toFixed(decimalsOf(step)),
  );
}
