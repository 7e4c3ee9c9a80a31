import { straightParts } from "../../../../src/reduction/curve/shape/straight-parts";

const x = [1, 1.3, 1.6, 1.9, 2.2, 2.5, 2.8, 3.1];
/** Points from the slopes of their segments. */
const curve = (...slopes: number[]) => slopes.reduce((u, slope, i) => [...u, u[i] + slope * (x[i + 1] - x[i])], [0]);
const parts = (u: number[], scatter = 0.002) => straightParts(x, u, x, scatter);

test("two straight lines give the recompression and virgin points and their slopes", () => {
  const { recompression, virgin, recompressionLine, virginLine } = parts(curve(0.1, 0.1, 0.1, 0.5, 1, 1, 1));
  expect(recompression).toEqual({ from: 0, to: 3 });
  expect(virgin).toEqual({ from: 4, to: 7 });
  expect(recompressionLine.slope).toBeCloseTo(0.1, 9);
  expect(virginLine.slope).toBeCloseTo(1, 9);
});

test("a virgin part that flattens ends where it is no longer as steep", () => {
  expect(parts(curve(0.1, 0.1, 0.2, 1.4, 1.1, 0.9, 0.7)).virgin).toEqual({ from: 3, to: 4 });
});

test("a last step that is steeper alone takes two or more steps before it that are nearly as steep", () => {
  expect(parts(curve(0.1, 0.1, 0.1, 0.5, 1, 1, 1.2)).virgin).toEqual({ from: 4, to: 7 });
  expect(parts(curve(0.1, 0.1, 0.1, 0.5, 1, 1, 1.3)).virgin).toEqual({ from: 6, to: 7 });
  expect(parts(curve(0.1, 0.1, 0.1, 0.1, 0.5, 1, 1.2)).virgin).toEqual({ from: 6, to: 7 });
});

test("scatter does not shorten a straight stretch", () => {
  const u = curve(0.1, 0.1, 0.1, 0.5, 1, 1, 1).map((v, i) => v + (i % 2 ? 0.004 : -0.004));
  const { recompression, virgin } = parts(u, 0.004);
  expect(recompression).toEqual({ from: 0, to: 3 });
  expect(virgin).toEqual({ from: 4, to: 7 });
});

test("a first step that beds in, or still swells, is left out of the recompression line", () => {
  expect(parts(curve(0.5, 0.1, 0.1, 0.1, 1, 1, 1)).recompression).toEqual({ from: 1, to: 4 });
  expect(parts(curve(0.0, 0.2, 0.2, 0.2, 1, 1, 1)).recompression).toEqual({ from: 1, to: 4 });
});
