/**
 * Certified non-linear regressions: NIST Statistical Reference Datasets (StRD), National Institute of Standards and
 * Technology, US government work, public domain. The .dat files are as published. The engine is the one that FIT_TIME uses.
 */
import { readdirSync, readFileSync } from "fs";
import { join } from "path";
import { leastSquares } from "../../src/reduction/numeric/least-squares";

const FOLDER = join(__dirname, "data", "nist-strd");

const cubicRatio = (b: readonly number[], x: number) =>
  (b[0] + b[1] * x + b[2] * x ** 2 + b[3] * x ** 3) / (1 + b[4] * x + b[5] * x ** 2 + b[6] * x ** 3);

const MODELS: Record<string, (b: readonly number[], x: number) => number> = {
  Bennett5: (b, x) => b[0] * (b[1] + x) ** (-1 / b[2]),
  BoxBOD: (b, x) => b[0] * (1 - Math.exp(-b[1] * x)),
  Chwirut2: (b, x) => Math.exp(-b[0] * x) / (b[1] + b[2] * x),
  DanWood: (b, x) => b[0] * x ** b[1],
  Eckerle4: (b, x) => (b[0] / b[1]) * Math.exp(-0.5 * ((x - b[2]) / b[1]) ** 2),
  Hahn1: cubicRatio,
  MGH09: (b, x) => (b[0] * (x * x + x * b[1])) / (x * x + x * b[2] + b[3]),
  Misra1a: (b, x) => b[0] * (1 - Math.exp(-b[1] * x)),
  Rat42: (b, x) => b[0] / (1 + Math.exp(b[1] - b[2] * x)),
  Thurber: cubicRatio,
};

interface Certified {
  readonly starts: readonly number[][];
  readonly certified: readonly number[];
  readonly rss: number;
  readonly data: readonly (readonly [y: number, x: number])[];
}

function read(name: string): Certified {
  const lines = readFileSync(join(FOLDER, `${name}.dat`), "utf8").split(/\r?\n/);
  const rows = lines
    .filter((line) => /^\s*b\d+ =/.test(line))
    .map((line) => line.split("=")[1].trim().split(/\s+/).map(Number));
  const rss = lines.find((line) => line.startsWith("Residual Sum of Squares"))?.split(":")[1];
  const from = lines.findIndex((line, i) => i > 55 && line.startsWith("Data:")) + 1;
  const data = lines
    .slice(from)
    .map((line) => line.trim().split(/\s+/).map(Number))
    .filter((row): row is [number, number] => row.length === 2 && row.every(Number.isFinite));
  return {
    starts: [0, 1].map((k) => rows.map((row) => row[k])),
    certified: rows.map((row) => row[2]),
    rss: Number(rss),
    data,
  };
}

test("every data file has its model", () => {
  expect(
    readdirSync(FOLDER)
      .map((file) => file.replace(".dat", ""))
      .sort(),
  ).toEqual(Object.keys(MODELS).sort());
});

describe.each(Object.keys(MODELS))("%s", (name) => {
  const { starts, certified, rss, data } = read(name);

  test.each([1, 2])("certified values to six digits from start %d", (start) => {
    expect(data.length).toBeGreaterThan(certified.length);
    const found = leastSquares({
      residuals: (b) => data.map(([y, x]) => MODELS[name](b, x) - y),
      start: starts[start - 1],
    });
    expect(found.converged).toBe(true);
    certified.forEach((value, i) => expect(Math.abs(found.parameters[i] / value - 1)).toBeLessThan(1e-6));
    expect(Math.abs(found.rss / rss - 1)).toBeLessThan(1e-6);
  });
});
