/** The stages of a test, without a page: from a blank sheet to a reported test. */
import { CHECKS, runChecks } from "../../../../src/checks";
import type { CellFinding } from "../../../../src/checks/integrity";
import { say } from "../../../../src/reduction/message";
import { nextOf, stagesOf, type Known, type Stage, type StageName } from "../../../../src/pane/screens/next/stages";
import { headOf } from "../../../../src/record/head-of-sheet";
import { partsOf } from "../../../../src/pane/screens/next/parts";
import { blankSheet, demoSheet } from "../../../../src/datasheet";
import { cellBeside } from "../../../../src/record/places";
import { readRecord, type NamedValues } from "../../../../src/record/record";
import { REQUIRED } from "../../../../src/specification/required";
import { SHEET_PARTS } from "../../../../src/specification/parts";
import type { CellValue, SheetName } from "../../../../src/workbook/port";
import { namedValues, withValues } from "../../../datasheet/read-sheet";

type Changes = Record<string, CellValue | readonly CellValue[]>;

const names: SheetName[] = Object.entries(demoSheet("SI").names).map(([name, place]) => ({
  name,
  place,
  scope: "sheet",
}));
let blank: NamedValues;
let demo: NamedValues;
beforeAll(async () => {
  blank = await namedValues(blankSheet("SI"));
  demo = await namedValues(demoSheet("SI"));
});

const stages = (values: NamedValues, known: Partial<Known> = {}): Record<StageName, Stage> =>
  Object.fromEntries(
    stagesOf({ record: readRecord(values), head: [], open: [], reports: [], ...known }).map((stage) => [
      stage.name,
      stage,
    ]),
  ) as Record<StageName, Stage>;
const states = (all: Record<StageName, Stage>): string[] => Object.values(all).map(({ state }) => state);
/** The first name of each cell that a stage lacks. */
const cells = ({ lacks }: Stage): string[] => lacks.flatMap((lack) => (lack.what === "cell" ? [lack.names[0]] : []));
const kinds = ({ lacks }: Stage): string[] => lacks.map(({ what }) => what);

const IDENTIFIED: Changes = {
  laboratory: "Own laboratory",
  sample_type: "Tube",
  specimen_orientation: "vertical",
};
const SIGNED: Changes = {
  ...IDENTIFIED,
  tested_by: "AB",
  date_tested: 48000,
  checked_by: "CD",
  date_checked: 48010,
  report_number: "R-1",
  deviations: "none",
};

test("a blank sheet has not begun, and lists nothing as missing", () => {
  const all = stages(blank);
  expect(states(all)).toEqual(Array(7).fill("not begun"));
  expect(Object.values(all).flatMap(({ lacks, looks }) => [...lacks, ...looks])).toEqual([]);
});

test("one filled cell begins a stage, which then lists what it lacks in the order of typing", () => {
  const { received, sized, loaded } = stages(withValues(blank, { project: "A road", ring_mass: 74.2 }));
  expect(received.state).toBe("begun");
  expect(cells(received).slice(0, 3)).toEqual(["laboratory", "boring", "sample"]);
  expect(cells(sized)).toEqual(expect.arrayContaining(["diameter", "initial_height", "ring_and_wet_before"]));
  expect(cells(sized)).not.toContain("ring_mass");
  expect(loaded.state).toBe("not begun");
});

test("a load without readings is listed; results that will follow form one line", () => {
  const { loaded, reduced } = stages(withValues(blank, { load_stress: [12.5, 25], strain_end: [0.01] }));
  expect(kinds(loaded).slice(0, 2)).toEqual(["no readings", "no readings"]);
  expect(cells(loaded)).toEqual(expect.arrayContaining(["dial_factor", "zero_reading"]));
  expect(kinds(reduced)).toContain("results follow");
  expect(cells(reduced)).toEqual(["ring_and_wet_after", "ring_and_dry", "inundation_stress"]);
});

test("if all inputs are filled, a missing result is listed itself", () => {
  const { reduced } = stages(withValues(demo, { preconsolidation_stress: "#N/A" }));
  expect(cells(reduced)).toEqual(["preconsolidation_stress"]);
});

test("the range of a refused preconsolidation stress is to be done until another stress is adopted", () => {
  const refused = { preconsolidation_low: "#N/A", preconsolidation_high: "#N/A" };
  const names = (changes: Parameters<typeof withValues>[1]) =>
    stages(withValues(demo, { ...refused, ...changes })).reduced.lacks.map((lack) => "name" in lack && lack.name);
  expect(names({})).toEqual(["preconsolidation_low", "preconsolidation_high"]);
  expect(names({ adopted_value: [180], adopted_by: ["AB"], adopted_reason: ["agreed"] })).toEqual([]);
});

test("a cell with an unusable value keeps the reduction open", () => {
  const { reduced } = stages(withValues(demo, { in_situ_stress: "sixty" }));
  expect(reduced.lacks).toEqual([expect.objectContaining({ what: "cell at fault", name: "in_situ_stress" })]);
});

test("loads whose construction is refused should be looked at, but do not keep the review open", () => {
  const { reviewed } = stages(withValues(demo, SIGNED));
  expect(reviewed.state).toBe("done");
  expect(reviewed.looks.length).toBeGreaterThan(0);
  expect(reviewed.looks.every(({ what }) => what === "no construction")).toBe(true);
});

test("signed before the readings are in, the review and the check are not done", () => {
  const { loaded, reviewed, checked } = stages(withValues(blank, { ...SIGNED, load_stress: [12.5, 25] }));
  expect([loaded, reviewed, checked].map(({ state }) => state)).toEqual(["begun", "not begun", "not begun"]);
});

test("a pick without a reason keeps the review open, and its row is listed", () => {
  const picks = { pick_load: [5], pick_of: ["d100"], pick_after: [812], pick_by: ["AB"] };
  expect(stages(withValues(demo, { ...SIGNED, ...picks })).reviewed.lacks).toEqual([
    { what: "pick unsigned", row: 1, load: 5 },
  ]);
});

test("an open question keeps the check open, and a missing report keeps the last stage open", () => {
  const [first] = runChecks(readRecord(demo));
  const values = withValues(demo, SIGNED);
  expect(kinds(stages(values, { open: [first!] }).checked)).toEqual(["question"]);
  const all = stages(values);
  expect(all.checked.state).toBe("done");
  expect(kinds(all.reported)).toEqual(["no report"]);
  expect(states(stages(values, { reports: ["Report of it"] }))).toEqual(Array(7).fill("done"));
});

test("an overwritten formula keeps the reduction open, and a hidden row does not", () => {
  const finding = (kind: CellFinding["kind"], address: string): CellFinding => ({
    kind,
    address,
    sentence: say`H9 is odd`,
  });
  const known = { reports: ["R"], findings: [finding("hidden", "12:12"), finding("overwritten", "H9")] };
  const all = stages(withValues(demo, SIGNED), known);
  expect(all.reduced.state).toBe("begun");
  expect(all.reduced.lacks).toEqual([{ what: "formulas changed", count: 1, sentence: say`H9 is odd`, address: "H9" }]);
  const hidden = stages(withValues(demo, SIGNED), { reports: ["R"], findings: known.findings.slice(0, 1) });
  expect(states(hidden)).toEqual(Array(7).fill("done"));
});

test("readings that were changed since the last issue keep the check and the report open, until both are done again", () => {
  // 48010 is 2031-06-11.
  const since = (day: string) =>
    stages(withValues(demo, SIGNED), { reports: ["R"], changedSince: { number: 1, report: "R", day } });
  const same = since("2031-06-11 10:00");
  expect([kinds(same.checked), kinds(same.reported)]).toEqual([["readings changed"], ["readings changed"]]);
  expect([same.checked.state, same.reported.state]).toEqual(["begun", "begun"]);
  const checkedAgain = since("2031-06-10 10:00");
  expect([kinds(checkedAgain.checked), kinds(checkedAgain.reported)]).toEqual([[], ["readings changed"]]);
});

test("the next stage is the first one that is not done", () => {
  const of = (values: NamedValues, known = {}) => nextOf(Object.values(stages(values, known)))?.name;
  expect(of(blank)).toBe("received");
  expect(of(withValues(demo, IDENTIFIED))).toBe("reviewed");
  expect(of(withValues(demo, SIGNED))).toBe("reported");
  expect(of(withValues(demo, SIGNED), { reports: ["R"] })).toBeUndefined();
});

describe("the parts of the sheet", () => {
  const half = () =>
    withValues(demo, { diameter: "", boring: "", load_stress: demo.load_stress!.map(([v], i) => (i === 2 ? "" : v!)) });

  test.each([
    ["blank", () => blank],
    ["the demonstration", () => demo],
    ["half filled", half],
  ])("%s: the parts and question Q63 count the same things", (_, values) => {
    const record = readRecord(values());
    const { parts, count } = partsOf(record, names);
    const [found] = CHECKS.find(({ id }) => id === "Q63")!.evaluate(record).compared!;
    expect(count!.missing).toBe(found.value);
    expect(parts.reduce((sum, { lacking }) => sum + lacking.length, 0)).toBe(found.value);
  });

  test("every required cell belongs to one part; the parts have the order of the work", () => {
    for (const { needs, ofLoads = [] } of REQUIRED)
      for (const name of [...needs.flat(), ...ofLoads])
        expect([name, SHEET_PARTS.filter(({ names: own }) => own.includes(name)).length]).toEqual([name, 1]);
    const { parts } = partsOf(readRecord(demo), names);
    expect(parts.map(({ title }) => title)).toEqual(SHEET_PARTS.map(({ title }) => title));
  });

  test("a sheet with a few names has only the parts of these names", () => {
    const few = names.filter(({ name }) => ["times_01", "readings_01", "load_stress"].includes(name));
    const values = { times_01: [[0]], readings_01: [[1]], load_stress: [[25]] };
    const { parts, count } = partsOf(readRecord(values), few);
    expect(parts.map(({ title }) => title)).toEqual(["Readings", "Loads and compression"]);
    expect(count).toBeUndefined();
  });
});

describe("an entry that cannot be", () => {
  /** The stages that name a sentence of the head, each with the address of its first cell there. */
  const named = (changes: Changes) => {
    const values = withValues(demo, { ...SIGNED, ...changes });
    const all = stages(values, { head: headOf({ values, names, record: readRecord(values) }) });
    return Object.values(all).flatMap(({ name, state, lacks }) =>
      lacks.flatMap((lack) => (lack.what === "head of sheet" ? [[name, state, lack.address]] : [])),
    );
  };
  const at = (name: string, row?: number) => cellBeside(names, name, row);

  test.each<[string, Changes, (readonly [StageName, string, number?])[]]>([
    ["the ring mass", { ring_mass: -5 }, [["sized", "ring_mass"]]],
    ["a ring as heavy as ring and soil", { ring_mass: 400 }, [["sized", "ring_mass"]]],
    ["the diameter", { diameter: -5 }, [["sized", "diameter"]]],
    ["the dial factor", { dial_factor: 0 }, [["loaded", "dial_factor"]]],
    ["the stress of a load", { load_stress: [12.5, -25] }, [["loaded", "load_stress", 2]]],
    ["the in-situ stress", { in_situ_stress: -62 }, [["reduced", "in_situ_stress"]]],
    ["the salt of the pore water", { pore_salt: -1 }, [["reduced", "pore_salt"]]],
    [
      "a date and a word",
      { sample_date: "March", date_ended: "soon" },
      [
        ["received", "sample_date"],
        ["loaded", "date_ended"],
      ],
    ],
  ])("%s keeps the stage of its cell from being done", (_, changes, expected) =>
    expect(named(changes)).toEqual(expected.map(([stage, name, row]) => [stage, "begun", at(name, row)])),
  );

  test("the stage names it although nothing else is missing there", () => {
    const values = { missing_in_full: [[""]], initial_height: [[-5]], diameter: [[""]] };
    const { sized } = stages(values, { head: headOf({ values, names, record: readRecord(values) }) });
    expect(sized?.lacks[0]).toMatchObject({ what: "head of sheet", address: at("initial_height") });
  });
});

test("a dial that was reset is to be looked at in the reduction, and keeps it from nothing", () => {
  const sentence = say`Load ${5}: ${say`the readings jump`}.`;
  const known = { head: [{ kind: "jump", sentence, address: "K9" }] } as const;
  const [without, reset] = [stages(demo), stages(demo, known)];
  expect(reset.reduced?.looks).toEqual([{ what: "head of sheet", sentence, address: "K9" }]);
  expect([reset.reduced?.state, reset.reduced?.lacks]).toEqual([without.reduced?.state, without.reduced?.lacks]);
});
