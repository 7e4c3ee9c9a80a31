/** The field curve of a made clay by its geometry, and its refusals; its values are held against print in test/published. */
import { fieldCurve, type FieldCurveInput } from "../../../src/reduction/curve/field-curve";
import { virginLineOf } from "../../../src/reduction/curve/methods/reading";
import { preconsolidation } from "../../../src/reduction/curve/preconsolidation";
import { testCurve, type Kind, type TestCurve } from "../../../src/reduction/curve/shape/points";
import { remarksOnRatio } from "../../../src/reduction/curve/stress-history";
import { english } from "../../../src/reduction/message";
import { clay } from "../example-data";

const read = (change: Partial<FieldCurveInput>) =>
  fieldCurve({ test: clay, inSituStress: 30, initialVoidRatio: 1.5, preconsolidationStress: 80, ...change });
const reason = (change: Partial<FieldCurveInput>): string => {
  const found = read(change);
  return found.ok ? JSON.stringify(found.value) : english(found.reason);
};

test("a factor outside 0 to 1 is refused, with the usual one", () => {
  for (const factor of [0, 1, -0.4, NaN])
    expect(reason({ factor })).toMatch(/it must lie between 0 and 1; 0.42 is usual/);
  expect(read({ factor: 0.4 }).ok).toBe(true);
});

test("a laboratory line that reaches the meeting point before yield is refused", () => {
  expect(reason({ preconsolidationStress: 1e6 })).toMatch(/reaches 0.42 e0 at stress .*, before yield/);
  expect(reason({ factor: 0.99, preconsolidationStress: 1e3 })).toMatch(
    /before yield: check e0 and the in-situ stress/,
  );
});

describe("the points by their geometry (Schmertmann 1955)", () => {
  const [e0, CC, CR] = [1.2, 0.5, 0.05];
  const LOADED = [12.5, 25, 50, 100, 200, 400, 800, 1600];
  /** Two straight lines on log of stress that meet at 100 kPa, and a rebound. */
  const voidRatio = (stress: number): number => 1.1 - (stress > 100 ? CC : CR) * Math.log10(stress / 100);
  const rebound = (stress: number): number => voidRatio(1600) + CR * Math.log10(1600 / stress);
  const made = (kind: Kind, unloaded: readonly number[] = [400, 100]): TestCurve => {
    const values = [...LOADED.map(voidRatio), ...unloaded.map(rebound)];
    const test = testCurve(
      [...LOADED, ...unloaded],
      values.map((e) => (kind === "e" ? e : (e0 - e) / (1 + e0))),
      kind,
    );
    if (!test.ok) throw new Error(english(test.reason));
    return test.value;
  };
  const picks = { virgin_from: 200, virgin_to: 1600 };
  const given = { inSituStress: 40, initialVoidRatio: e0, preconsolidationStress: 100, picks };
  const found = (change: Partial<FieldCurveInput> = {}) => {
    const outcome = fieldCurve({ test: made("e"), ...given, recompressionIndex: CR, ...change });
    if (!outcome.ok) throw new Error(english(outcome.reason));
    return { ...outcome.value, said: outcome.remarks.map(english) };
  };
  const meeting = (factor: number) => ({ stress: 100 * 10 ** ((1.1 - factor * e0) / CC), voidRatio: factor * e0 });

  test("in situ, preconsolidation and the meeting point, with the index of the line between the last two", () => {
    const { points, compressionIndex, recompression, said } = found();
    const bend = e0 - CR * Math.log10(100 / 40);
    const end = meeting(0.42);
    expect(points.map(({ label }) => label)).toEqual(["in situ", "preconsolidation", "meets the laboratory line"]);
    [
      [40, e0],
      [100, bend],
      [end.stress, end.voidRatio],
    ].forEach(([stress = NaN, e = NaN], i) => {
      expect(points[i]?.stress).toBeCloseTo(stress, 6);
      expect(points[i]?.voidRatio).toBeCloseTo(e, 9);
    });
    expect(compressionIndex).toBeCloseTo((bend - end.voidRatio) / Math.log10(end.stress / 100), 9);
    expect(recompression).toMatchObject({ value: CR, basis: { said: ["the value given"] } });
    expect(said).toEqual(["picked by hand: virgin from = 200, virgin to = 1600"]);
  });

  test("strains give the points of the void ratios", () => {
    const ofStrain = found({ test: made("strain"), recompressionIndex: CR / (1 + e0) });
    const ofE = found();
    ofE.points.forEach(({ label, stress, voidRatio: e }, i) => {
      expect(ofStrain.points[i]).toEqual({ label, stress: expect.closeTo(stress, 6), voidRatio: expect.closeTo(e, 9) });
    });
    expect(ofStrain.compressionIndex).toBeCloseTo(ofE.compressionIndex, 9);
    expect(ofStrain.recompression?.value).toBeCloseTo(CR, 12);
  });

  test("the recompression is that of the rebound where none is given, with its remark", () => {
    const remark = "Cr from the final unloading: the test has no reload loop";
    for (const kind of ["e", "strain"] as const) {
      const { recompression, said } = found({ test: made(kind), recompressionIndex: undefined });
      expect(recompression?.value).toBeCloseTo(CR, 9);
      expect(said).toContain(remark);
    }
    // The field curve of a normally consolidated clay has no recompression to remark.
    expect(found({ recompressionIndex: undefined, preconsolidationStress: 41 }).said).not.toContain(remark);
  });

  test("a recompression that is refused refuses the curve, unless the clay is normally consolidated", () => {
    const without = { picks: { ...picks, loop_from: 100 }, recompressionIndex: undefined };
    const refused = fieldCurve({ test: made("e"), ...given, ...without });
    expect(!refused.ok && english(refused.reason)).toMatch(/^a line through a loop is picked, and the test has no/);
    expect(found({ ...without, preconsolidationStress: 41 })).toMatchObject({ recompression: undefined });
  });

  test("clay whose preconsolidation stress is up to 1.05 times the in-situ stress has no bend", () => {
    const { points, compressionIndex } = found({ preconsolidationStress: 42 });
    const end = meeting(0.42);
    expect(points).toHaveLength(2);
    expect(compressionIndex).toBeCloseTo((e0 - end.voidRatio) / Math.log10(end.stress / 40), 9);
    expect(found({ preconsolidationStress: 42.1 }).points).toHaveLength(3);
  });

  test("a field curve that would rise to the meeting point is refused", () => {
    const flat = fieldCurve({
      ...{ test: made("e"), ...given, recompressionIndex: CR },
      ...{ initialVoidRatio: 1, factor: 0.985 },
    });
    expect(!flat.ok && english(flat.reason)).toMatch(/reaches 0.985 e0 at stress .*, before yield/);
  });

  test("a meeting point beyond the greatest load is said, one within the loads is not", () => {
    const extended = "the meeting point lies beyond the greatest load (1600): the virgin line is extended";
    expect(found({ factor: 0.4 }).said).toContain(extended);
    expect(found({ factor: 0.4 }).points[2]?.stress).toBeCloseTo(meeting(0.4).stress, 6);
    expect(found().said).not.toContain(extended);
    // The limit is a thousandth beyond the load.
    const at = (stress: number) => (1.1 - CC * Math.log10(stress / 100)) / e0;
    expect(found({ factor: at(1601) }).said).not.toContain(extended);
    expect(found({ factor: at(1602.5) }).said).toContain(extended);
    // A stress that was converted from tsf and back is off in its last digit.
    const test = made("e");
    const points = test.points.map((point) => ({ ...point, stress: point.stress * (1 + 4e-16) }));
    expect(String(points.at(-1)!.stress)).not.toBe("1600");
    expect(found({ factor: 0.4, test: { ...test, points } }).said).toContain(extended);
  });

  test("the preconsolidation stress is Casagrande's where none is given, with the remarks of its reading", () => {
    const read = preconsolidation(made("e"), { picks });
    if (!read.ok) throw new Error(english(read.reason));
    const own = found({ preconsolidationStress: undefined });
    expect(own.points[1]?.stress).toBe(read.value.stress);
    for (const remark of read.remarks) expect(own.said.filter((said) => said === english(remark))).toHaveLength(1);
  });

  test("a preconsolidation stress below the in-situ stress is remarked", () => {
    const remarks = remarksOnRatio(20 / 40).map(english);
    expect(remarks).not.toEqual([]);
    expect(found({ preconsolidationStress: 20 }).said).toEqual(expect.arrayContaining(remarks));
  });

  test("a curve without a virgin line is refused with the reason of its reading", () => {
    const short = testCurve([50, 100], [1, 0.9], "e");
    if (!short.ok) throw new Error(english(short.reason));
    const [own, line] = [fieldCurve({ ...given, test: short.value, picks: {} }), virginLineOf(short.value)];
    if (own.ok || line.ok) throw new Error("a curve of two points was read");
    expect(english(own.reason)).toBe(english(line.reason));
  });
});
