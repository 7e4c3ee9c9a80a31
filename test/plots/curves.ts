/** Invented curves for drawings, made from theory: the tests that use them test the drawing, not the reduction. */
import { degreeOfConsolidation } from "../../src/reduction/increment/fit/terzaghi";

const TIMES = [0, 0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440];
const T50_MINUTES = 6;

/** Minutes and mm: 0.05 mm at once, 0.6 mm of primary with t50 of 6 min, then 0.03 mm a cycle. */
export const timeCurve = {
  times: TIMES,
  readings: TIMES.map((time) => {
    const creep = time > 30 ? 0.03 * Math.log10(time / 30) : 0;
    const reading = (time > 0 ? 0.05 : 0) + 0.6 * degreeOfConsolidation((0.197 * time) / T50_MINUTES) + creep;
    return Number((1 + reading).toFixed(4));
  }),
};

/** kPa and void ratio: a bend near 120 kPa, an unload-reload loop at 400 kPa, unloading at the end. */
export const compressionCurve = {
  stresses: [12.5, 25, 50, 100, 200, 400, 100, 25, 100, 400, 800, 1600, 400, 100, 25],
  voidRatios: [0.912, 0.905, 0.895, 0.878, 0.818, 0.724, 0.742, 0.764, 0.748, 0.722, 0.628, 0.534, 0.552, 0.572, 0.594],
};
