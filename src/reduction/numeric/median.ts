/** The middle of the values, the upper of the two middle ones if their number is even; NaN of none. */
export const median = (values: readonly number[]): number =>
  Float64Array.from(values).sort()[values.length >> 1] ?? NaN;
