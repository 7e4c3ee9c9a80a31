import { preconsolidation } from "../../../src/reduction/curve/preconsolidation";
import { METHOD_NAMES } from "../../../src/reduction/curve/method-words";
import { testCurve } from "../../../src/reduction/curve/shape/points";
import { logTimeLines, rootTimeLines } from "../../../src/reduction/increment/constructions/lines";
import { reduceIncrement } from "../../../src/reduction/increment/reduce";
import type { ConstructionLine } from "../../../src/reduction/construction";
import { LINES, type Construction } from "../../../src/report/charts/series-lines";
import { makeCurve, RECIPES } from "../../generators/compression-curves";

/** Lines of the methods that are drawn from the cells, or not at all. */
const LEFT_OUT = new Set(["readings"]);

/** Checks that the table has every line of a construction, with its points, and no other line. */
function expectTable(construction: Construction, lines: readonly ConstructionLine[]): void {
  const table = LINES[construction];
  const isTest = (label: string): boolean =>
    LEFT_OUT.has(label) || (label === "first loading" && !table.some((line) => line.label === label));
  const given = lines.filter(({ label }) => !isTest(label));
  expect(new Set(table.map(({ label }) => label))).toEqual(new Set(given.map(({ label }) => label)));
  for (const { label, points, as, of = 1 } of table) {
    const found = given.filter((line) => line.label === label);
    expect([label, found.length]).toEqual([label, of]);
    if (as === "read" || as === "joined") expect(found[0].points.length).toBeLessThanOrEqual(points);
    else expect([label, found[0].points.length]).toEqual([label, points]);
    if (as === "upright") expect(found[0].points[0][0]).toBe(found[0].points[1][0]);
    if (as === "level") expect(found[0].points[0][1]).toBe(found[0].points[1][1]);
  }
}

test("the table of lines agrees with the lines of every method, on many made curves", () => {
  const seen = new Map<string, number>();
  for (const scenario of Object.keys(RECIPES))
    for (let seed = 1; seed <= 4; seed++) {
      const { stresses, values } = makeCurve(scenario, seed);
      const test = testCurve(stresses, values, "e");
      if (!test.ok) continue;
      for (const method of METHOD_NAMES) {
        const reading = preconsolidation(test.value, { method });
        if (!reading.ok) continue;
        expectTable(method, reading.value.lines);
        seen.set(method, (seen.get(method) ?? 0) + 1);
      }
    }
  expect([...seen.keys()].sort()).toEqual([...METHOD_NAMES].sort());
  for (const count of seen.values()) expect(count).toBeGreaterThan(0);
});

test("the names of lines that end side by side stand on different sides", () => {
  const places = ["horizontal", "tangent", "bisector"].map(
    (name) => LINES.casagrande.find(({ label }) => label === name)?.nameAt,
  );
  expect(new Set(places)).toEqual(new Set(["above", "below", "right"]));
});

test("the table of lines agrees with the lines of the time constructions", () => {
  const times = [0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1440];
  const readings = [917, 932, 948, 972, 1005, 1053, 1121, 1206, 1317, 1406, 1446, 1467, 1490, 1528];
  const { cleaned, logTime, rootTime } = reduceIncrement(times, readings);
  if (!cleaned.ok || !logTime.ok || !rootTime.ok) throw new Error("the readings must reduce");
  expectTable("log time", logTimeLines(cleaned.value, logTime.value));
  expectTable("root time", rootTimeLines(cleaned.value, rootTime.value));
});
