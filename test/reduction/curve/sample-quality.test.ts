import { isDisturbed, LUNNE, sampleQuality, type SampleQuality } from "../../../src/reduction/curve/sample-quality";
import { testCurve, type Kind } from "../../../src/reduction/curve/shape/points";
import { english } from "../../../src/reduction/message";
import { then } from "../../../src/reduction/outcome";

// A virgin line that begins at 10, Cc 0.3 per log cycle; e0 1.2.
const E0 = 1.2;
const S = [10, 20, 40, 80, 160, 320];
const E = S.map((stress) => 1.15 - 0.3 * Math.log10(stress / 10));
const STRAIN = E.map((e) => (E0 - e) / (1 + E0));

type Read = Partial<SampleQuality> & { readonly remarks: string };
const read = (stress: number, e0: number | undefined, ocr: number | undefined, kind: Kind = "e"): Read => {
  const found = then(testCurve(S, kind === "e" ? E : STRAIN, kind), (test) => sampleQuality(test, stress, e0, ocr));
  return found.ok
    ? { ...found.value, remarks: found.remarks.map(english).join("; ") }
    : { remarks: `refused (${found.fault}): ${english(found.reason)}` };
};

test("the change of void ratio and the strain are those of the curve at the in-situ stress, by void ratio and by strain", () => {
  const e = 1.15 - 0.3 * Math.log10(30 / 10);
  for (const kind of ["e", "strain"] as const) {
    const { strain, change } = read(30, E0, 1.5, kind);
    expect(strain).toBeCloseTo((E0 - e) / (1 + E0), 12);
    expect(change).toBeCloseTo((E0 - e) / E0, 12);
  }
});

test("by strain, the initial void ratio is needed for the change alone; by void ratio it is needed for both", () => {
  const { change, strainClass, lunneClass, remarks } = read(30, undefined, 1.5, "strain");
  expect([change, strainClass, lunneClass]).toEqual([undefined, "E", undefined]);
  expect(remarks).toMatch(/change of void ratio needs the initial void ratio$/);
  expect(read(30, undefined, 1.5).remarks).toBe("refused (input): this needs the initial void ratio too: give it");
});

test("a value at a limit gets the poorer class", () => {
  // The change is (1.2 - 1.15) / e0 at the first load.
  const classAt = (change: number, ocr: number) => read(10, 1.15 / (1 - change), ocr);
  const columns = [
    { ocr: 1.99, limits: LUNNE["OCR 1 to 2"] },
    { ocr: 2, limits: LUNNE["OCR 2 to 4"] },
  ];
  for (const { ocr, limits } of columns)
    limits.forEach((limit, i) => {
      expect(classAt(limit, ocr)).toMatchObject({ lunneClass: LUNNE.classes[i + 1] });
      expect(classAt(limit - 1e-6, ocr)).toMatchObject({ lunneClass: LUNNE.classes[i] });
    });
});

test("the remarks name what is lacking, an OCR outside the table, swelling, and disturbance", () => {
  expect(read(10, 1.18, undefined).remarks).toBe("Lunne's class needs the preconsolidation stress");
  expect(read(10, 1.18, 1).remarks).toBe("");
  expect(read(10, 1.18, 4).remarks).toBe("");
  expect(read(10, 1.18, 0.95).remarks).toBe("Lunne's table begins at OCR 1: its first column is used");
  expect(read(10, 1.18, 0.8).remarks).toMatch(/^OCR below 0.9: .*; Lunne's table begins at OCR 1/);
  expect(read(10, 1.18, 4.1).remarks).toBe("Lunne's table ends at OCR 4: its second column is used");
  expect(read(10, 1.18, 21).remarks).toMatch(/^OCR above 20: .*; Lunne's table ends/);
  expect(read(40, E0, 1.5).remarks).toBe("disturbed: yield and Cc read low");
  expect(read(10, 1.1, 1.5).remarks).toMatch(
    /^the specimen swelled up to the in-situ stress; above 3 % it has no class: check the zero reading$/,
  );
});

test("a specimen that swelled by more than 3 percent has no class, and less swelling keeps the best one", () => {
  // The void ratio at the first load is 1.15: the specimen swelled by (1.15 - e0) / (1 + e0).
  const swelledBy = (strain: number) => read(10, 2.15 / (1 + strain) - 1, 1.5);
  expect(swelledBy(0.0299)).toMatchObject({ lunneClass: "very good to excellent", strainClass: "A" });
  const { strain, change, lunneClass, strainClass, remarks } = swelledBy(0.0301);
  expect(strain).toBeCloseTo(-0.0301, 12);
  expect(change).toBeLessThan(-0.05);
  expect([lunneClass, strainClass]).toEqual([undefined, undefined]);
  expect(remarks).toMatch(/^the specimen swelled up to the in-situ stress; above 3 % it has no class/);
});

test("a stress outside the loads is refused, and the reason names the loads", () => {
  for (const stress of [9, 321])
    expect(read(stress, E0, 1.5).remarks).toBe(
      `refused (method): the in-situ stress ${stress} lies outside the loads (10 to 320): the change of volume there is not known`,
    );
});

test("the two poorer classes are disturbed", () =>
  expect(LUNNE.classes.map(isDisturbed)).toEqual([false, false, true, true]));
