import { placeLabels, visible, type Frame, type Label, type Pixel } from "../../src/plots/lettering";

const frame: Frame = { left: 0, top: 0, right: 300, bottom: 240 };
const overlaps = (a: Label, b: Label): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && Math.abs(a.y - b.y) < (a.height + b.height) / 2;
const inside = ({ x, y, width, height }: Label): boolean =>
  x >= frame.left && x + width <= frame.right && y - height / 2 >= frame.top && y + height / 2 <= frame.bottom;

/** Rays from one point, like those of a bisector, and levels close together. */
const crowded: { text: string; line: Pixel[]; near: "start" | "end" }[] = [
  {
    text: "horizontal",
    near: "end",
    line: [
      [150, 60],
      [200, 60],
    ],
  },
  {
    text: "bisector",
    near: "end",
    line: [
      [150, 60],
      [200, 72],
    ],
  },
  {
    text: "tangent",
    near: "end",
    line: [
      [120, 48],
      [200, 86],
    ],
  },
  { text: "greatest curvature", near: "end", line: [[150, 60]] },
  {
    text: "d90",
    near: "start",
    line: [
      [0, 180],
      [150, 180],
    ],
  },
  {
    text: "d100",
    near: "start",
    line: [
      [0, 190],
      [150, 190],
    ],
  },
];
const symbols = [20, 60, 100, 130].map((x): Pixel => [x, 40 + x / 10]);

test("labels of a crowded construction do not overlap, stay in the frame, and cover no symbol", () => {
  const labels = placeLabels(crowded, symbols, [], frame, 11);
  expect(labels.map(({ text }) => text).sort()).toEqual(crowded.map(({ text }) => text).sort());
  labels.forEach((label, index) => {
    expect(inside(label)).toBe(true);
    expect(labels.slice(index + 1).filter((other) => overlaps(label, other))).toEqual([]);
    for (const [x, y] of symbols)
      expect(x > label.x && x < label.x + label.width && Math.abs(y - label.y) < label.height / 2).toBe(false);
  });
});

test("a level has its label at the axis, a free line at its end", () => {
  const [level, line] = placeLabels(
    [
      {
        text: "d0",
        near: "start",
        line: [
          [0, 100],
          [250, 100],
        ],
      },
      {
        text: "tail",
        near: "end",
        line: [
          [20, 200],
          [250, 200],
        ],
      },
    ],
    [],
    [],
    frame,
    11,
  );
  expect(level.x).toBeLessThan(40);
  expect(line.x + line.width).toBeGreaterThan(220);
});

test("a line outside the frame has no label; of a line that leaves it, only the part inside counts", () => {
  expect(
    placeLabels(
      [
        {
          text: "out",
          line: [
            [400, 10],
            [500, 10],
          ],
        },
      ],
      [],
      [],
      frame,
      11,
    ),
  ).toEqual([]);
  expect(
    visible(
      [
        [150, 120],
        [450, 120],
      ],
      frame,
    ),
  ).toEqual([
    [
      [150, 120],
      [300, 120],
    ],
  ]);
  expect(
    visible(
      [
        [150, -120],
        [150, 500],
      ],
      frame,
    ),
  ).toEqual([
    [
      [150, 0],
      [150, 240],
    ],
  ]);
});
