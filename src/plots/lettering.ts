/**
 * Finds places for the labels of lines so that they can be read: for every line it tries a set of places along the
 * visible part, and takes the one that covers the fewest symbols, lines and other labels and is furthest from other
 * lines.
 */
import { firstOf, lastOf, neighbours } from "../reduction/numeric/lists";

export type Pixel = readonly [x: number, y: number];

export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Lettered {
  readonly text: string;
  /** The line in pixels; the part outside the frame is not drawn. */
  readonly line: readonly Pixel[];
  /** The preferred end of the line for the label; either end if omitted. */
  readonly near?: "start" | "end";
}

/** The box of a label: `x` its left edge, `y` its middle. */
export interface Label {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** The point of the line where a leader ends, if the label stands off the line. */
  readonly anchor?: Pixel;
}

/** Width of an average character, as a share of the font size. */
export const CHARACTER = 0.58;

type Segment = readonly [Pixel, Pixel];

/** The part of a segment inside the frame (Liang and Barsky's clipping), or null. */
function clip([[x0, y0], [x1, y1]]: Segment, frame: Frame): Segment | null {
  if (Math.max(x0, x1) < frame.left || Math.min(x0, x1) > frame.right) return null;
  if (Math.max(y0, y1) < frame.top || Math.min(y0, y1) > frame.bottom) return null;
  const dx = x1 - x0;
  const dy = y1 - y0;
  let from = 0;
  let to = 1;
  const sides: readonly (readonly [p: number, q: number])[] = [
    [-dx, x0 - frame.left],
    [dx, frame.right - x0],
    [-dy, y0 - frame.top],
    [dy, frame.bottom - y0],
  ];
  for (const [p, q] of sides) {
    if (p === 0 && q < 0) return null;
    if (p < 0) from = Math.max(from, q / p);
    if (p > 0) to = Math.min(to, q / p);
  }
  if (from > to) return null;
  return [
    [x0 + from * dx, y0 + from * dy],
    [x0 + to * dx, y0 + to * dy],
  ];
}

const length = ([[x0, y0], [x1, y1]]: Segment): number => Math.hypot(x1 - x0, y1 - y0);

/** The visible segments of a line; a line of one point is a segment of no length. */
export function visible(line: readonly Pixel[], frame: Frame): Segment[] {
  return neighbours(line.length === 1 ? [...line, ...line] : line)
    .map((segment) => clip(segment, frame))
    .filter((segment) => segment !== null);
}

/** The point at a share of the length of the segments. */
function pointAt(segments: readonly Segment[], share: number): Pixel {
  let left = share * segments.reduce((sum, segment) => sum + length(segment), 0);
  for (const segment of segments) {
    const size = length(segment);
    if (left <= size && size > 0) {
      const [[x0, y0], [x1, y1]] = segment;
      return [x0 + ((x1 - x0) * left) / size, y0 + ((y1 - y0) * left) / size];
    }
    left -= size;
  }
  return lastOf(segments)[1];
}

/** Positions along a line at which a label is tried, as shares of the length. */
const SHARES = Array.from({ length: 11 }, (_, index) => index / 10);
/** Positions of the label beside the point: its left edge as a share of its width, and the row above or below. */
const SIDES = [
  [-0.5, -1],
  [-0.5, 1],
  [0, -1],
  [0, 1],
  [-1, -1],
  [-1, 1],
  [0, 0],
  [-1, 0],
] as const;
/** Distances from the point: clear of a symbol on the line, and further off, with a leader. */
const GAPS = [5, 16, 30, 44];
/** If another line ends nearer than this, the label seems to belong to that line. */
const END = 8;
/** Radius of a symbol, with a margin. */
const SYMBOL = 4.5;

const overlap = (a0: number, a1: number, b0: number, b1: number): number =>
  Math.max(0, Math.min(a1, b1) - Math.max(a0, b0));

const distance = ([x, y]: Pixel, { left, right, top, bottom }: Frame): number =>
  Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom));

const frameOf = ({ x, y, width, height }: Label): Frame => ({
  left: x,
  right: x + width,
  top: y - height / 2,
  bottom: y + height / 2,
});

/** Labels are placed one after another; then each is placed again with the others in place, in this many rounds. */
const ROUNDS = 3;

/** A label for every line that has a visible part. `symbols` are the readings, which a label should not cover. */
export function placeLabels(
  lines: readonly Lettered[],
  symbols: readonly Pixel[],
  obstacles: readonly (readonly Pixel[])[],
  frame: Frame,
  fontSize: number,
): Label[] {
  const lettered = lines
    .map(({ line, ...rest }) => ({ ...rest, own: visible(line, frame) }))
    .filter(({ own }) => own.length > 0)
    .map((rest) => ({ ...rest, ends: [firstOf(rest.own)[0], lastOf(rest.own)[1]] }))
    // Lines whose label belongs at their start choose a place first.
    .sort((a, b) => Number(b.near === "start") - Number(a.near === "start"));
  const plain = obstacles.flatMap((line) => visible(line, frame));
  const placed: (Label | undefined)[] = lettered.map(() => undefined);

  /**
   * The cost of a place: how much it covers, and how near it is to lines to which it does not belong. It only grows, and is not added up
   * further once `isTooMuch` says so.
   */
  const cost = (label: Label, index: number, isTooMuch: (cost: number) => boolean): number => {
    const box = frameOf(label);
    const near: Frame = { left: box.left - 5, right: box.right + 5, top: box.top - 2, bottom: box.bottom + 2 };
    const outside =
      Math.max(0, frame.left - box.left) +
      Math.max(0, box.right - frame.right) +
      Math.max(0, frame.top - box.top) +
      Math.max(0, box.bottom - frame.bottom);
    const reach = (segments: readonly Segment[], within: Frame): number =>
      segments.reduce((sum, segment) => {
        const inside = clip(segment, within);
        return sum + (inside ? length(inside) : 0);
      }, 0);
    if (isTooMuch(outside * 50)) return outside * 50;
    let total = outside * 50 + 1.2 * reach(plain, box);
    placed.forEach((other, at) => {
      if (!other || at === index) return;
      const { left, right, top, bottom } = frameOf(other);
      total += 20 * overlap(near.left, near.right, left, right) * overlap(near.top, near.bottom, top, bottom);
    });
    for (const [at, { own, ends }] of lettered.entries()) {
      if (isTooMuch(total)) return total;
      total += at === index ? 1.2 * reach(own, box) : 1.5 * reach(own, near);
      if (at !== index) total += 30 * ends.filter((end) => distance(end, box) < END).length;
    }
    for (const [x, y] of symbols)
      if (x > box.left - SYMBOL && x < box.right + SYMBOL && y > box.top - SYMBOL && y < box.bottom + SYMBOL)
        total += 40;
    return total;
  };

  for (let round = 0; round < ROUNDS; round++)
    lettered.forEach(({ text, own, near }, index) => {
      const size = { text, width: text.length * fontSize * CHARACTER, height: fontSize * 1.15 };
      let least = Infinity;
      for (const share of SHARES) {
        const anchor = pointAt(own, share);
        const far = near === "start" ? share : near === "end" ? 1 - share : Math.min(share, 1 - share);
        GAPS.forEach((gap, ring) =>
          SIDES.forEach(([sx, sy], side) => {
            const dislike = far * 14 + ring * 9 + side * 0.5;
            if (dislike >= least) return;
            const beside = sx === 0 ? 1 : sx === -1 ? -1 : 0;
            const x = anchor[0] + sx * size.width + beside * (sy === 0 ? gap : 2);
            const y = anchor[1] + sy * (size.height / 2 + gap);
            const label: Label = { ...size, x, y, ...(ring > 0 && { anchor }) };
            const total = dislike + cost(label, index, (covered) => dislike + covered >= least);
            if (total >= least) return;
            least = total;
            placed[index] = label;
          }),
        );
      }
    });
  return placed.filter((label) => label !== undefined);
}
