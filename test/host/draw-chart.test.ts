/** @jest-environment jsdom */
/** Charts of the embedded sheet as pictures. */
import { drawChart } from "../../src/host/draw-chart";
import type { ChartDrawing } from "../../src/workbook/embedded";

const DRAWING: ChartDrawing = {
  title: "Druck-Setzungs-Kurve",
  x: { label: "Spannung (kPa)", scale: "log", domain: [10, 1000], reversed: false },
  y: { label: "Porenzahl e", scale: "linear", domain: [0.5, 0.8], reversed: false },
  series: [
    {
      name: "Belastung",
      style: "points",
      points: [
        [10, 0.75],
        [100, 0.7],
        [1000, 0.5],
      ],
    },
  ],
} as unknown as ChartDrawing;

test.each([",", "."] as const)("the axes have the decimal mark %s of the workbook", (mark) => {
  const { textContent } = drawChart(DRAWING, 400, 300, mark);
  expect(textContent).toMatch(mark === "," ? /0,\d/ : /0\.\d/);
  expect(textContent).not.toMatch(mark === "," ? /0\.\d/ : /0,\d/);
});
