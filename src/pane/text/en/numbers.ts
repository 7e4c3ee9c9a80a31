/** A whole number as it is read: 200,000. */
export const whole = (count: number): string => count.toLocaleString("en-US");
