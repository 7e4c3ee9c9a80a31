/**
 * Where to letter each line so that the labels can be read: for every line a set of places along its visible part is tried
 * and the one that covers the fewest symbols, lines and other labels is taken.
 */

export type Pixel = readonly [x: number, y: number];

export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Lettered {
  readonly text: string;
  /** The line in pixels; what lies outside the frame is not drawn. */
  readonly line: readonly Pixel[];
}

/** A label's box: `x` its left edge, `y` its middle. */
export interface Label {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

type Segment = readonly [Pixel, Pixel];

/** The part of a segment inside the frame (Liang and Barsky's clipping), or null. */
function clip([[x0, y0], [x1, y1]]: Segment, frame: Frame): Segment | null {
  const dx = x1 - x0;
  const dy = y1 - y0;
  let from = 0;
  let to = 1;
  for (const [p, q] of [
    [-dx, x0 - frame.left],
    [dx, frame.right - x0],
    [-dy, y0 - frame.top],
    [dy, frame.bottom - y0],
  ]) {
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
  if (line.length === 1) line = [line[0], line[0]];
  return line
    .slice(1)
    .map((point, index) => clip([line[index], point], frame))
    .filter((segment) => segment !== null);
}

/** The point a share of the way along the segments. */
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
  return segments[segments.length - 1][1];
}

const SHARES = [1, 0, 0.85, 0.15, 0.7, 0.3, 0.5, 0.93, 0.07, 0.6, 0.4];
const GAP = 4;

/** How much two intervals overlap. */
const overlap = (a0: number, a1: number, b0: number, b1: number): number =>
  Math.max(0, Math.min(a1, b1) - Math.max(a0, b0));

/** A label for every line that has a visible part. `symbols` are the readings, which a label should not cover. */
export function placeLabels(
  lines: readonly Lettered[],
  symbols: readonly Pixel[],
  obstacles: readonly (readonly Pixel[])[],
  frame: Frame,
  fontSize: number,
): Label[] {
  const segments = [...lines.map(({ line }) => line), ...obstacles].flatMap((line) => visible(line, frame));
  const placed: Label[] = [];
  for (const { text, line } of lines) {
    const own = visible(line, frame);
    if (own.length === 0) continue;
    const width = text.length * fontSize * 0.56;
    const height = fontSize * 1.15;
    let best: Label | undefined;
    let bestCost = Infinity;
    SHARES.forEach((share, rank) => {
      const [px, py] = pointAt(own, share);
      for (const [sx, sy] of [
        [-0.5, -1],
        [-0.5, 1],
        [0, 0],
        [-1, 0],
        [0, -1],
        [-1, -1],
        [0, 1],
        [-1, 1],
      ]) {
        const x = px + sx * width + (sx === 0 ? GAP : sx === -1 ? -GAP : 0);
        const y = py + sy * (height / 2 + GAP / 2);
        const box: Frame = { left: x, right: x + width, top: y - height / 2, bottom: y + height / 2 };
        const outside =
          Math.max(0, frame.left - box.left) +
          Math.max(0, box.right - frame.right) +
          Math.max(0, frame.top - box.top) +
          Math.max(0, box.bottom - frame.bottom);
        const onLabels = placed.reduce(
          (sum, other) =>
            sum +
            overlap(box.left - 3, box.right + 3, other.x, other.x + other.width) *
              overlap(box.top, box.bottom, other.y - other.height / 2, other.y + other.height / 2),
          0,
        );
        const onSymbols = symbols.filter(
          ([x1, y1]) => x1 > box.left - 4 && x1 < box.right + 4 && y1 > box.top - 4 && y1 < box.bottom + 4,
        ).length;
        const onLines = segments.reduce((sum, segment) => {
          const inside = clip(segment, box);
          return sum + (inside ? length(inside) : 0);
        }, 0);
        const cost = outside * 50 + onLabels * 20 + onSymbols * 12 + onLines * 1.2 + rank * 1.5;
        if (cost < bestCost) {
          bestCost = cost;
          best = { text, x, y, width, height };
        }
      }
    });
    if (best) placed.push(best);
  }
  return placed;
}
