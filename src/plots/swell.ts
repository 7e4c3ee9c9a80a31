/** The strain of the stage of wetting in percent against the logarithm of time, swell upward, with its rate at the end. */
import { english, fixed, say, verbatim, type Message } from "../reduction/message";
import { lastOf, nth } from "../reduction/numeric/lists";
import { badInput, given, type Outcome } from "../reduction/outcome";
import { padded, wholeDecades } from "./axes";
import type { PlotAxis, PlotSeries, PlotSpec } from "./spec";
import type { Cells } from "./time";
import { labelIn, type InWords } from "./words";

/** The label of the line of the rate. */
export const RATE_LABEL = "rate at the end";

export interface SwellPlotOptions {
  /** Strain per log cycle of time at the end of the stage, negative for swell; no line if omitted. */
  readonly rate?: number;
  /** The stress that was kept, with its unit. */
  readonly stress?: string;
  /** The number of the load, for the title, in a test with several stages. */
  readonly load?: number;
  /** The language of titles, axes, letters and notes; English if omitted. */
  readonly inWords?: InWords;
}

/** The line of the rate goes back over this share of the last time: a log cycle. */
const BACK = 0.1;

function titleOf({ stress, load }: SwellPlotOptions): Message {
  const title = stress ? say`Wetting under ${verbatim(stress)}` : say`Wetting`;
  return load === undefined ? title : say`${title}, load ${load}`;
}

/**
 * Strains on wetting (ratios, collapse positive) against log10 of time in minutes, row by row; a blank is null. Refuses
 * where no row has a time above zero and a strain.
 */
export function swellPlot(times: Cells, strains: Cells, options: SwellPlotOptions = {}): Outcome<PlotSpec> {
  const { rate, inWords = english } = options;
  const points = times.flatMap((time, row): (readonly [number, number])[] => {
    const strain = strains[row];
    return time === null || time <= 0 || strain == null ? [] : [[time, 100 * strain]];
  });
  if (points.length === 0)
    return badInput(say`the stage of wetting has no reading after time zero: enter its readings against time`);
  const byTime = [...points].sort(([a], [b]) => a - b);
  const [end, strain] = lastOf(byTime);
  const from = Math.max(nth(byTime, 0)[0], BACK * end);
  const ofRate: PlotSeries[] =
    rate === undefined || from >= end
      ? []
      : [
          {
            label: RATE_LABEL,
            style: "construction",
            points: [
              [from, strain - 100 * rate * Math.log10(end / from)],
              [end, strain],
            ],
            letters: labelIn(inWords, "rate at the end"),
          },
        ];
  const x: PlotAxis = {
    label: inWords(say`Time (min), log scale`),
    scale: "log",
    domain: wholeDecades(byTime.map(([time]) => time)),
    reversed: false,
  };
  const y: PlotAxis = {
    label: inWords(say`Strain on wetting (%), swell negative`),
    scale: "linear",
    domain: padded([...byTime, ...ofRate.flatMap((line) => line.points), [end, 0] as const].map(([, value]) => value)),
    // Swell is drawn upward, compression downward.
    reversed: true,
  };
  return given({
    title: inWords(titleOf(options)),
    x,
    y,
    series: [...ofRate, { label: "readings", style: "points", symbol: "filled", points: byTime }],
    remarks: [],
    notes:
      rate === undefined
        ? []
        : [
            inWords(
              rate < 0
                ? say`Rate at the end: swell of ${fixed(-100 * rate, 2)} % per log cycle of time.`
                : say`Rate at the end: compression of ${fixed(100 * rate, 2)} % per log cycle of time.`,
            ),
          ],
  });
}
