/** A whole number with marks of thousands: 200,000. */
export const whole = (count: number): string => count.toLocaleString("en-US");
