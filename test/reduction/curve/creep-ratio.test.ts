import { CREEP_RATIOS, CREEP_SOILS, creepRatio, usualCreepRatio } from "../../../src/reduction/curve/creep-ratio";
import { english } from "../../../src/reduction/message";

const read = (ratio: number, soil?: (typeof CREEP_SOILS)[number]) => {
  const found = creepRatio(ratio * 0.4, 0.4, soil);
  if (!found.ok) throw new Error(english(found.reason));
  return { ...found.value, remarks: found.remarks.map(english) };
};

test("the usual ratio of a soil is that of the table, 0.01 more or less; of any soil 0.01 to 0.07", () => {
  for (const { soil, ratio } of CREEP_RATIOS) {
    const [low, high] = usualCreepRatio(soil);
    expect(low).toBeCloseTo(ratio - 0.01, 12);
    expect(high).toBeCloseTo(ratio + 0.01, 12);
  }
  expect(usualCreepRatio()).toEqual([0.01, 0.07]);
});

test("the nearest soil is named, up to 0.01 away", () => {
  for (const { soil, ratio } of CREEP_RATIOS)
    for (const off of [-0.004, 0, 0.004]) expect(read(ratio + off).soil).toBe(soil);
  expect(read(0.01).soil).toBe("granular soil");
  expect(read(0.07).soil).toBe("peat");
  expect(read(0.0099).soil).toBeUndefined();
  expect(read(0.0701).soil).toBeUndefined();
});

test("a ratio outside the limits of the soil gets a remark with the limits, and no other does", () => {
  expect(read(0.0325, "peat").remarks).toEqual([
    "outside 0.05 to 0.07, usual for peat: check that both are void ratio or both strain, and taken at the same stress",
  ]);
  for (const soil of CREEP_SOILS) {
    const [low, high] = usualCreepRatio(soil);
    expect(read(low + 1e-4, soil).remarks).toEqual([]);
    expect(read(high - 1e-4, soil).remarks).toEqual([]);
    for (const beyond of [low - 1e-4, high + 1e-4])
      expect(read(beyond, soil).remarks).toEqual([expect.stringContaining(`usual for ${soil}:`)]);
  }
  expect(read(0.0325).remarks).toEqual([]);
  for (const beyond of [0.0099, 0.0701])
    expect(read(beyond).remarks).toEqual([
      expect.stringMatching(/^outside 0.01 to 0.07: check that both are void ratio/),
    ]);
});
