/** The texts of a chart, alike in every host: their sizes, and the places of the names of lines. */
import type { ChartSeries, NamePlace } from "../port";

/** Sizes in points. */
interface TextSizes {
  readonly title: number;
  /** Titles and numbers of the axes. */
  readonly axis: number;
  /** Names of lines. */
  readonly letters: number;
}

const USUAL: TextSizes = { title: 11, axis: 9, letters: 8 };
/** In a small chart larger numbers would not fit beside one another; they would be turned, and leave no height for the curve. */
const SMALL: TextSizes = { title: 9, axis: 7, letters: 7 };

export const textSizes = (isSmall: boolean | undefined): TextSizes => (isSmall ? SMALL : USUAL);

/** Where the name of a series stands beside its last point. */
export const nameAt = ({ style, nameAt: place }: Pick<ChartSeries, "style" | "nameAt">): NamePlace =>
  place ?? (style === "line" || style === "dashed" ? "above" : "below");
