import { asksForReport, holds, lackingNamed, requiredOf } from "../../src/checks/lacking";
import { readRecord } from "../../src/record/record";
import { english } from "../../src/reduction/message";
import { REQUIRED_CELLS } from "../../src/record/cell-rows";

const lackingOf = (values: Parameters<typeof readRecord>[0]) => requiredOf(readRecord(values)).lacking;
const isLacking = (values: Parameters<typeof readRecord>[0], name: string): boolean =>
  lackingOf(values).some(({ names }) => names.includes(name));

test("a blank sheet lacks every required item, and they are counted", () => {
  const { lacking, asked } = requiredOf(readRecord({}));
  expect(asked).toBe(REQUIRED_CELLS.length);
  expect(lacking).toHaveLength(asked);
});

test("no cell that is asked for by itself is asked for again as one of several", () => {
  const asked = REQUIRED_CELLS.flatMap((required) => ("ofLoads" in required ? [] : [...required]));
  expect(asked.filter((name, at) => asked.indexOf(name) !== at)).toEqual([]);
});

test("an item that has any of its cells is not lacking", () => {
  for (const required of REQUIRED_CELLS) {
    if ("ofLoads" in required) continue;
    for (const name of required) expect([name, isLacking({}, name)]).toEqual([name, true]);
  }
  expect(isLacking({ project: [["A"]] }, "project")).toBe(false);
  expect(isLacking({ initial_height: [[20]], length_unit: [["mm"]] }, "initial_height")).toBe(false);
});

test("a column is lacking for the loads that have no value in it", () => {
  const columns = REQUIRED_CELLS.flatMap((required) => ("ofLoads" in required ? [required.ofLoads] : []));
  expect(columns).toContain("load_stress");
  const values = { stress_unit: [["kPa"]], load_stress: [[25], [50], [100]] };
  expect(isLacking(values, "load_stress")).toBe(false);
  for (const name of columns.filter((one) => one !== "load_stress"))
    expect(lackingOf(values).find(({ names }) => names[0] === name)?.loads).toEqual([1, 2, 3]);
  const strains = (...cells: (number | string)[]) => ({ ...values, strain_end: cells.map((cell) => [cell]) });
  const loads = (...cells: (number | string)[]) =>
    lackingOf(strains(...cells)).find(({ names }) => names[0] === "strain_end")?.loads;
  expect(loads(0.01, "", 0.02)).toEqual([2]);
  expect(loads(0.01, 0.015, 0.02)).toBeUndefined();
});

test("a cell holds something if it has a word, a number, a result or a remark", () => {
  const record = readRecord({
    project: [["A"]],
    initial_height: [[20]],
    length_unit: [["mm"]],
    void_ratio_initial: [[0.9]],
  });
  expect(["project", "initial_height", "void_ratio_initial", "sample"].map((name) => holds(record, name))).toEqual([
    true,
    true,
    true,
    false,
  ]);
});

test("a sheet with a cell for the project or for the number of the report asks for a report", () => {
  expect(asksForReport(readRecord({}))).toBe(false);
  expect(asksForReport(readRecord({ project: [[""]] }))).toBe(true);
  expect(asksForReport(readRecord({ report_number: [[""]] }))).toBe(true);
});

test("a lacking item is named by its cells and loads", () => {
  expect(english(lackingNamed({ names: ["ring_number"] }))).toMatch(/^Ring.* \(ring_number\)$/);
  expect(english(lackingNamed({ names: ["ring_number", "ring_mass"] }))).toMatch(/\(ring_number\) or .*\(ring_mass\)$/);
  expect(english(lackingNamed({ names: ["strain_end"], loads: [2, 3] }))).toMatch(/\(strain_end\) of load 2, 3$/);
});

test("the stress and the strain of inundation have names of their own in the list of what is missing", () => {
  const [stress, strain] = (["inundation_stress", "inundation_strain"] as const).map((name) =>
    english(lackingNamed({ names: [name] })),
  );
  expect(stress).toBe("Inundated under (inundation_stress)");
  expect(strain).toBe("Strain of the inundated load (inundation_strain)");
});
