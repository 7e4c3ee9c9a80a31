/**
 * The place of the plotting area in a chart of a file. Left to itself, LibreOffice gives the curve of a small chart a third of its height.
 */
import { axisLabels } from "./chart-axis";
import { textSizes } from "./chart-text";
import type { ChartAxis, ChartPlan } from "../port";

/** A line of text is higher than its letters by this factor. */
const LINE = 1.25;
/** The width of a figure of Arial over the size of the letters. */
const FIGURE = 0.556;
/** The mean width of a letter over the size of the letters. */
const LETTER = 0.5;
/** The space beside a text, in points. */
const APART = 4;
/** LibreOffice moves the title down by this share of the height. */
const DOWN = 0.03;
/** The margins take at most this share of the width, and of the height, of the chart. */
const MOST = 0.6;

const rounded = (share: number): number => Number(share.toFixed(4));

/** Left edge, top, width and height of the area within the axes, in shares of a chart with a size in points. */
export function plotArea(
  { x, y, isSmall }: Pick<ChartPlan, "x" | "y" | "isSmall">,
  { width, height }: { readonly width: number; readonly height: number },
): { readonly x: number; readonly y: number; readonly w: number; readonly h: number } {
  const { title, axis, letters } = textSizes(isSmall);
  const widest = (labels: readonly string[]): number => Math.max(...labels.map(({ length }) => length)) * FIGURE * axis;
  /** The height of the title of an axis, which is broken if it is longer than the axis; those of small charts are short. */
  const titleOf = ({ label }: ChartAxis, length: number): number =>
    LINE * axis * (isSmall ? 1 : Math.ceil((label.length * LETTER * axis) / Math.max(1, length)));
  const numbers = widest(axisLabels(y, isSmall));
  const right = widest(axisLabels(x, isSmall).slice(-1)) / 2 + APART;
  // In a chart of the usual size a name may stand above the area.
  const top = LINE * (title + (isSmall ? 0 : letters)) + 2 * APART + DOWN * height;
  const below = LINE * axis + 3 * APART + titleOf(x, width - numbers - LINE * axis - 3 * APART - right);
  const left = numbers + 3 * APART + titleOf(y, height - top - below);
  const shrink = (margins: number, whole: number): number => Math.min(1, (MOST * whole) / margins);
  const [byWidth, byHeight] = [shrink(left + right, width), shrink(top + below, height)];
  return {
    x: rounded((byWidth * left) / width),
    y: rounded((byHeight * top) / height),
    w: rounded(1 - (byWidth * (left + right)) / width),
    h: rounded(1 - (byHeight * (top + below)) / height),
  };
}
