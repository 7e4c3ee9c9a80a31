/** A sheet that a person is filling in: blank, with half a test, with impossible values, and complete. */
import { blankSheet, demoSheet, fillSheet, type SheetValues } from "../../src/datasheet";
import { demoTest } from "../../src/datasheet/demo-test";
import { cellAddress } from "../../src/workbook/address";
import type { CellValue, SheetPlan } from "../../src/workbook/port";
import { calculate } from "./sheet-in-engine";

const LOADS = 12;
const { readings, cells, columns } = demoTest("SI");

/**
 * The demonstration with readings for the first loads only, without some of its cells, and with other values in some
 * cells.
 */
function partly(loads: number, without: readonly string[] = [], changes: SheetValues = {}): SheetPlan {
  const kept = Object.entries(cells).filter(([name]) => name !== "notice" && !without.includes(name));
  const cut = Object.entries(columns).map(([name, list]): [string, readonly (CellValue | undefined)[]] => [
    name,
    name.startsWith("load_") ? list.slice(0, loads) : list,
  ]);
  const series = readings
    .slice(0, loads)
    .map((list, index): [string, readonly number[]] => [`readings_${String(index + 1).padStart(2, "0")}`, list]);
  return fillSheet(blankSheet("SI", { loads: LOADS, readingRows: 60 }), {
    ...Object.fromEntries([...kept, ...cut, ...series]),
    ...changes,
  });
}

const addressIn = (plan: SheetPlan, name: string): string => cellAddress(plan.names[name].row, plan.names[name].col);

describe("a blank sheet", () => {
  const plan = blankSheet("SI", { loads: LOADS, readingRows: 60 });

  test.each([null, 0] as const)("shows no error and no result; blanks are passed as %p", async (blankAs) => {
    const sheet = await calculate(plan, blankAs);
    expect(sheet.errors).toEqual([]);
    for (const name of ["dry_mass", "void_ratio_initial", "preconsolidation_stress", "compression_index", "test_state"])
      expect([name, sheet.value(name)]).toEqual([name, ""]);
  });

  test("lists what is missing in the order of the form, each item with its cell", async () => {
    const said = String((await calculate(plan)).value("missing_inputs"));
    expect(said).toMatch(/^Missing: specific gravity, .*stresses of the loads, from B\d+\. $/);
    for (const [name, words] of [
      ["ring_mass", "ring mass"],
      ["ring_and_dry", "ring + dry soil"],
      ["dial_factor", "dial factor"],
      ["zero_reading", "zero reading"],
      ["in_situ_stress", "in-situ stress (for OCR, field curve and quality)"],
    ])
      expect(said).toContain(`${words}, ${addressIn(plan, name)}; `);
  });
});

test.each([
  [{ boring: "BH-7", sample: "U3" }, "BH-7  |  U3"],
  [{ project: "Quay", specimen: "b" }, "Quay  |  b"],
  [{ project: "Quay" }, "Quay"],
])("the line at the top tells of %j without a stroke for what is blank", async (cells, line) => {
  const sheet = await calculate(fillSheet(blankSheet("SI", { loads: LOADS, readingRows: 60 }), cells));
  expect(sheet.values.get("J1")).toBe(line);
});

test("where the constructions refuse the preconsolidation stress, design values stand all the same", async () => {
  const plan = partly(LOADS);
  const { row, col } = plan.names.preconsolidation_stress;
  const sheet = await calculate({
    ...plan,
    cells: plan.cells.map((cell) => (cell.row === row && cell.col === col ? { ...cell, formula: "=NA()" } : cell)),
  });
  expect(sheet.value("preconsolidation_stress")).toBe("#N/A");
  for (const name of ["design_e_in_situ", "design_e_final", "design_mv", "design_modulus", "design_k"])
    expect([name, typeof sheet.value(name)]).toEqual([name, "number"]);
  expect(sheet.value("design_from")).toMatch(/^lab. curve over/);
});

describe("half a test", () => {
  const stresses = [12.5, 25, 50, 100, 200, 400, 100, 25, 100, 400, 800, 1600];

  test.each([null, 0] as const)(
    "shows no error with readings for loads 1 to 5 of 12; blanks are passed as %p",
    async (blankAs) => {
      const sheet = await calculate(partly(5, [], { load_stress: stresses }), blankAs);
      expect(sheet.errors).toEqual([]);
      expect([sheet.value("test_state"), sheet.value("next_load")]).toEqual(["running", 6]);
      expect(sheet.value("preconsolidation_stress")).toBe("");
      expect(sheet.value("void_ratio_end", 4)).toBeGreaterThan(0.5);
      expect(sheet.value("missing_inputs")).toMatch(
        /^Missing: readings of load 6, in row \d+ and below\. The loads so far give no preconsolidation stress yet: read further loads\. $/,
      );
    },
  );

  test("shows no error either if only the stresses of five loads are typed", async () => {
    const sheet = await calculate(partly(5));
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("missing_inputs")).toBe(
      "The loads so far give no preconsolidation stress yet: read further loads. ",
    );
  });

  test("says nothing of swelling while the zero reading is blank; the head asks for the zero reading", async () => {
    const plan = partly(12, ["zero_reading"], { load_stress: stresses });
    const sheet = await calculate(plan);
    expect(sheet.value("missing_inputs")).toBe(`Missing: zero reading, ${addressIn(plan, "zero_reading")}. `);
    const remarks = stresses.map((_, index) => sheet.value("load_remark", index));
    expect([...remarks, sheet.value("remarks_on_loads")].join()).not.toMatch(/swell/);
    expect(remarks).not.toContain("");
  });

  test("lacks only the final masses before the specimen is removed", async () => {
    const plan = partly(12, ["ring_and_wet_after", "ring_and_dry", "final_height_measured"]);
    const sheet = await calculate(plan);
    expect(sheet.errors).toEqual([]);
    expect(sheet.value("missing_inputs")).toBe(
      `Missing: ring + wet soil after, ${addressIn(plan, "ring_and_wet_after")}; ring + dry soil, ${addressIn(plan, "ring_and_dry")}. `,
    );
  });
});

describe("a value of the curve that does not fit the others", () => {
  const stresses = [12.5, 25, 50, 100, 200, 400, 100, 25, 100, 400, 800, 1600];
  const mistyped = stresses.map((stress, index) => (index === 3 ? 1000 : stress));
  const SLIP = "row 4: the stress 1000 does not fit the rows around it, where about 100 would: check it";

  test.each([6, 12])("is named at the head and in the remark with readings for %d loads of 12", async (loads) => {
    const plan = partly(loads, [], { load_stress: mistyped });
    const sheet = await calculate(plan);
    expect(sheet.value("test_state")).toBe(loads === 12 ? "over" : "running");
    expect(sheet.value("missing_inputs")).toMatch(
      new RegExp(`^Loads, from ${addressIn(plan, "load_stress")} on: ${SLIP}.*\\. `),
    );
    expect(sheet.value("missing_inputs")).not.toContain("no virgin line");
    expect(sheet.value("preconsolidation_remark")).toContain(SLIP);
    expect(sheet.value("load_remark", 4)).toMatch(
      /^the specimen compressed while load was taken off: check this stress, that of the load before, and the readings/,
    );
  });

  test("a load that is taken off and rises above the initial height is remarked", async () => {
    const low = readings[6]!.map((reading) => reading - 5000);
    const sheet = await calculate(partly(12, [], { load_stress: stresses, readings_07: low }));
    expect(sheet.value("load_remark", 6)).toMatch(/^the specimen rose above its initial height: check the readings/);
    expect(String(sheet.value("load_remark", 7))).toMatch(/^the specimen compressed while load was taken off/);
  });

  test("readings without a stress are named at the head, with the cell of the stress", async () => {
    const plan = partly(6, [], { load_stress: stresses.slice(0, 5) });
    const sheet = await calculate(plan);
    const { row, col } = plan.names.load_stress;
    expect(sheet.value("missing_inputs")).toContain(`Missing: stress of load 6, ${cellAddress(row + 5, col)}. `);
    expect(sheet.value("load_remark", 5)).toBe("readings and no stress: enter it");
    expect(sheet.value("remarks_on_loads")).toMatch(/^Load 6: readings and no stress: enter it$/m);
  });

  test("the head names the last load without a stress, even if its time curve is refused, and none whose next load has one", async () => {
    const plan = partly(6, [], { load_stress: stresses.slice(0, 4), readings_06: [1200] });
    const { row, col } = plan.names.load_stress;
    expect((await calculate(plan)).value("missing_inputs")).toContain(
      `Missing: stress of load 6, ${cellAddress(row + 5, col)}. `,
    );
    const between = partly(6, [], { load_stress: [12.5, 25, 50, undefined, 200, 400] });
    expect((await calculate(between)).value("missing_inputs")).not.toContain("stress of load");
  });
});

describe("impossible masses", () => {
  test.each([
    ["ring_and_dry", 20, "ring_mass", /^Ring \+ dry soil, (\w+), must be heavier than the ring, (\w+): correct/],
    [
      "ring_and_wet_before",
      90,
      "ring_and_dry",
      /^Ring \+ wet soil before, (\w+), must be heavier than ring \+ dry soil, (\w+), or/,
    ],
    [
      "ring_and_wet_after",
      90,
      "ring_and_dry",
      /^Ring \+ wet soil after, (\w+), must be heavier than ring \+ dry soil, (\w+), or/,
    ],
  ])("%s of %p g: the line names its cell and that of %s", async (name, mass, other, said) => {
    const plan = partly(12, [], { [name]: mass });
    const sheet = await calculate(plan);
    expect(sheet.errors).toEqual([]);
    const [, one, two] = said.exec(String(sheet.value("missing_inputs"))) ?? [];
    expect([one, two]).toEqual([addressIn(plan, name), addressIn(plan, other)]);
  });

  test("an impossible volume of solids: the line names the cells that it follows from", async () => {
    const plan = partly(12, [], { initial_height: 9 });
    const said = String((await calculate(plan)).value("missing_inputs"));
    for (const name of ["initial_height", "diameter", "ring_mass", "ring_and_dry", "specific_gravity"])
      expect(said).toContain(addressIn(plan, name));
  });
});

test("the whole demonstration lacks nothing, and its test is finished", async () => {
  const sheet = await calculate(demoSheet("SI"));
  expect([sheet.value("missing_inputs"), sheet.value("test_state"), sheet.value("next_load")]).toEqual([
    "",
    "over",
    "",
  ]);
  expect(sheet.value("preconsolidation_stress")).toBeCloseTo(125.3, 1);
});

test("a finished test shows #N/A if a method does not apply", async () => {
  const sheet = await calculate(partly(6));
  expect(sheet.value("test_state")).toBe("over");
  expect(sheet.errors).toContainEqual(expect.stringMatching(/#N\/A the test has no unloading/));
});
