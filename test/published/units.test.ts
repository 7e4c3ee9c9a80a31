import { CONVERT_UNIT } from "../../src/functions/loading";
import data from "./data/units.json";

type Conversion = [value: number, from: string, expected: number, to: string, tolerance?: number];

/**
 * `definitions` are printed to six or more digits (checked to one unit of the last digit); `trade` as rounded in print.
 */
test.each(data.definitions.conversions as Conversion[])("%p %s = %p %s", (value, from, expected, to) => {
  const converted = CONVERT_UNIT(value, from, to);
  expect(Math.abs(converted / expected - 1)).toBeLessThan(1e-6);
});

test.each(data.trade.conversions as Conversion[])(
  "%p %s = %p %s as the trade prints it",
  (value, from, expected, to, t) => expect(Math.abs(CONVERT_UNIT(value, from, to) - expected)).toBeLessThanOrEqual(t!),
);
