/** The middle of the values, the upper of the two middle ones if their number is even; NaN of none. */
export const median = (values: Iterable<number>): number => {
  const sorted = Float64Array.from(values).sort();
  return sorted[sorted.length >> 1] ?? NaN;
};
