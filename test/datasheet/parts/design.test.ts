/** The design values on the sheet, held against the functions' own parts and by their definitions. */
import { blankSheet, demoSheet, fillSheet } from "../../../src/datasheet";
import { wordIn } from "../../../src/specification/list-words";
import { REMARKS } from "../../../src/specification/remarks";
import { calculate } from "../sheet-in-engine";

test("stand on the sheet over 100 kPa, and follow from one another by their definitions", async () => {
  const sheet = await calculate(demoSheet("SI"));
  const n = (name: string) => Number(sheet.value(name));
  const [e1, e2] = [n("design_e_in_situ"), n("design_e_final")];
  expect(e1).toBeGreaterThan(e2);
  // mv in m2/MN over 100 kPa, on the height at the in-situ stress.
  expect(n("design_mv")).toBeCloseTo((1000 * (e1 - e2)) / (1 + e1) / 100, 9);
  expect(n("design_modulus")).toBeCloseTo(1000 / n("design_mv"), 6);
  expect(n("design_cr")).toBeCloseTo(n("compression_index") / (1 + n("void_ratio_initial")), 12);
  expect(n("design_modulus_number")).toBeCloseTo(Math.LN10 / n("design_cr"), 4);
  // k = cv mv 9.81 kN/m3: m2/yr and m2/MN give m/s.
  const k = (n("design_cv") / (365.25 * 86400)) * (n("design_mv") / 1000) * 9.81;
  expect(n("design_k") / k).toBeCloseTo(1, 2);
  expect([n("design_c_alpha"), sheet.value("design_from")]).toEqual([n("c_alpha_chosen"), "lab. curve over 100 kPa"]);
});

test("without an in-situ stress the table says so, and gives the ratios", async () => {
  const demo = demoSheet("SI");
  const { row, col } = demo.names.in_situ_stress!;
  const cells = demo.cells.map((cell) => (cell.row === row && cell.col === col ? { ...cell, value: undefined } : cell));
  const sheet = await calculate({ ...demo, cells });
  expect(sheet.errors).toEqual([]);
  expect(sheet.value("design_from")).toBe("no in-situ stress: ratios only");
  expect([sheet.value("design_mv"), sheet.value("design_cv")]).toEqual(["", ""]);
  expect(Number(sheet.value("design_rr"))).toBeCloseTo(0.065 / 2.45, 3);
});

test("a stress beyond the curve leaves its cells blank and is named in the remark; an adopted index counts", async () => {
  const sheet = await calculate(
    fillSheet(demoSheet("SI"), { design_increase: 20_000, adopted_value: [undefined, 0.6] }),
  );
  expect(sheet.errors).toEqual([]);
  expect([sheet.value("design_mv"), sheet.value("design_cv")]).toEqual(["", ""]);
  expect(sheet.value("design_from")).toBe("beyond the curve: see Remarks");
  expect(sheet.value("design_cv_from")).toBe("no load with a cv there");
  expect(sheet.value("design_remark")).toMatch(
    /^the in-situ stress plus the increase \(20062\) lies beyond the loading curve, from .*: give a stress between/,
  );
  expect(Number(sheet.value("design_cr"))).toBeCloseTo(0.6 / 2.45, 3);
});

test("an in-situ stress beyond the curve leaves the field curve and the quality blank, with the reason in their remarks", async () => {
  const sheet = await calculate(fillSheet(demoSheet("SI"), { in_situ_stress: 9000 }));
  expect(sheet.errors).toEqual([]);
  for (const name of [
    "field_compression_index",
    "field_meeting_stress",
    "quality_change",
    "quality_class",
    "design_mv",
  ])
    expect([name, sheet.value(name)]).toEqual([name, ""]);
  expect(sheet.value("field_remark")).toMatch(/check e0 and the in-situ stress$/);
  expect(sheet.value("quality_remark")).toMatch(/^the in-situ stress 9000 lies outside the loads/);
  expect(sheet.value("design_remark")).toMatch(/^the in-situ stress \(9000\) lies beyond the loading curve/);
});

test("with the field curve e, mv and CR are those of its three points, and the sheet says so", async () => {
  const sheet = await calculate(fillSheet(demoSheet("SI"), { design_curve: "field" }));
  const n = (name: string) => Number(sheet.value(name));
  const [e0, yieldStress, Cr, Cc] = [
    "void_ratio_initial",
    "preconsolidation_stress",
    "recompression_index",
    "field_compression_index",
  ].map(n) as [number, number, number, number];
  // Schmertmann (1955): e0 at the in-situ stress, Cr to the preconsolidation stress, and the field Cc beyond it.
  const atYield = e0 - Cr * Math.log10(yieldStress / 62);
  expect(n("design_e_in_situ")).toBeCloseTo(e0, 9);
  expect(n("design_e_final")).toBeCloseTo(atYield - Cc * Math.log10(162 / yieldStress), 9);
  expect(n("design_mv")).toBeCloseTo((1000 * (e0 - n("design_e_final"))) / (1 + e0) / 100, 9);
  expect(n("design_cr")).toBeCloseTo(Cc / (1 + e0), 9);
  expect(n("design_rr")).toBeCloseTo(Cr / (1 + e0), 9);
  expect(sheet.value("design_from")).toBe("field curve over 100 kPa");
});

test("a blank sheet shows none", async () => {
  const sheet = await calculate(blankSheet("US", { loads: 6, readingRows: 60 }));
  expect(sheet.errors).toEqual([]);
  for (const name of ["design_mv", "design_cr", "design_cv", "design_from"]) expect(sheet.value(name)).toBe("");
});

test.each(["en", "de"] as const)(
  "readings whose sense is chosen wrongly leave words or a blank, never an error, in %s",
  async (language) => {
    const sheet = await calculate(fillSheet(demoSheet("SI", language), { dial_sense: wordIn(language, "fall") }));
    // The head says what is wrong, and no result shows an error.
    const said = {
      en: /^The specimen swelled under load 1 and is highest under the greatest stress: .*, the sense of the readings, \w+,/,
      de: /^Der Probekörper schwoll unter Laststufe 1 und ist unter der größten Spannung am höchsten: .*, den Sinn der Ablesungen, \w+,/,
    }[language];
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("preconsolidation_stress")).toBe("");
    expect(sheet.value("missing_in_full")).toMatch(said);
    for (const { name } of REMARKS) expect([name, sheet.value(name)]).toEqual([name, expect.not.stringMatching(/^#/)]);
  },
);
