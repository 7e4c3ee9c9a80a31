import { CONDUCTIVITY, C_ALPHA_RATIO, SAMPLE_QUALITY, TEMPERATURE_FACTOR } from "../../src/functions/curve";
import published from "./data/correlations.json";

test(`sample quality by change of void ratio: ${published.lunne.source}`, () => {
  const { upperLimits, classes } = published.lunne;
  const e0 = 1;
  const classAt = (change: number, yieldStress: number) =>
    SAMPLE_QUALITY([[50], [200]], [[e0 - change], [e0 - change - 0.3]], 50, yieldStress, e0, "e", "class")[0][0];
  const columns = [
    { limits: upperLimits["OCR 1 to 2"], yieldStress: 75 },
    { limits: upperLimits["OCR 2 to 4"], yieldStress: 150 },
  ];
  for (const { limits, yieldStress } of columns) {
    limits.forEach((limit, i) => expect(classAt(limit - 0.001, yieldStress)).toBe(classes[i]));
    expect(classAt(limits[2] + 0.001, yieldStress)).toBe(classes[3]);
  }
});

test(`sample quality by volumetric strain: ${published.sqd.source}`, () => {
  const { upperLimitsPercent, classes } = published.sqd;
  const classAt = (percent: number) =>
    SAMPLE_QUALITY([[50], [200]], [[percent / 100], [0.3]], 50, 100, 1, "strain", "strain_class")[0][0];
  upperLimitsPercent.forEach((limit, i) => expect(classAt(limit - 0.01)).toBe(classes[i]));
  expect(classAt(8.01)).toBe("E");
});

test(`temperature factor within 1 percent of viscosity ratios: ${published.viscosity.source}`, () => {
  const { celsius, mPaS } = published.viscosity;
  const at20 = mPaS[celsius.indexOf(20)];
  celsius.forEach((temperature, i) => {
    const factor = TEMPERATURE_FACTOR(temperature);
    expect(Math.abs(factor / (mPaS[i] / at20) - 1)).toBeLessThan(0.01);
  });
});

test(`C-alpha / Cc names the soil: ${published.creep.source}`, () => {
  for (const [soil, ratio] of Object.entries(published.creep.ratios)) {
    expect(C_ALPHA_RATIO(ratio * 0.4, 0.4, "soil")[0][0]).toBe(soil);
    expect(C_ALPHA_RATIO(ratio * 0.4, 0.4, "ratio")[0][0]).toBeCloseTo(ratio, 12);
  }
});

test(`conductivity from cv and mv: ${published.conductivity.source}`, () => {
  expect(CONDUCTIVITY(2, 0.5) / published.conductivity.factor).toBeCloseTo(1, 2);
});
