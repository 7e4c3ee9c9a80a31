import { plotArea } from "../../../src/workbook/look/chart-area";
import { markSize } from "../../../src/workbook/look/chart-marks";

const x = { label: "Time (min), log scale", scale: "log", domain: [0.1, 10000], reversed: false } as const;
const y = { label: "Dial reading", scale: "linear", domain: [350, 600], reversed: true } as const;

test("the curve of a small chart has half of its height and two thirds of its width, and stays inside", () => {
  const area = plotArea({ x, y, isSmall: true }, { width: 140, height: 112 });
  expect(area.h).toBeGreaterThan(0.5);
  expect(area.w).toBeGreaterThan(0.66);
  expect(area.x + area.w).toBeLessThan(1);
  expect(area.y + area.h).toBeLessThan(1);
});

test("an axis title that is longer than its axis gets the room of two lines", () => {
  const size = { width: 280, height: 190 };
  const usual = plotArea({ x, y }, size);
  const long = "x".repeat(80);
  expect(plotArea({ x: { ...x, label: long }, y }, size).h).toBeLessThan(usual.h);
  expect(plotArea({ x, y: { ...y, label: long } }, size).x).toBeGreaterThan(usual.x);
});

test("in a chart of any size the area has a part of the chart", () => {
  for (const width of [10, 60, 900])
    for (const height of [10, 60, 900]) {
      const area = plotArea({ x, y }, { width, height });
      expect(Math.min(area.x, area.y)).toBeGreaterThan(0);
      expect(Math.min(area.w, area.h)).toBeGreaterThanOrEqual(0.399);
    }
});

test("symbols are small in a small chart, and where there are many; Excel takes no size below 2", () => {
  expect(markSize("filled", 14, false)).toBe(6);
  expect(markSize("filled", 61, false)).toBe(3);
  expect(markSize("cross", 1, true)).toBe(4);
  expect(markSize("filled", 14, true)).toBe(3);
  expect(markSize("filled", 61, true)).toBe(2);
});
