/** A deflection set from the loads of a sheet that hold a run on a disk, written into blank rows of a register. */
import { cellsOfSet, setOfRun, type NewSet } from "../../../../src/pane/screens/register/new-set";
import { READ_NAMES } from "../../../../src/pane/screens/register/source";
import { registerSheet } from "../../../../src/datasheet/register-sheet";
import { readRecord } from "../../../../src/record/record";
import { readRegister } from "../../../../src/record/register";
import { readSets } from "../../../../src/record/register-sets";
import type { CellValue, Looked } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";
import { sheetOf } from "../../fake-workbook";

const column = (...cells: CellValue[]): CellValue[][] => cells.map((cell) => [cell]);

/** Three loads up to 100 kPa and back to 50, read in divisions of 0.002 mm. */
const RUN = readRecord({
  length_unit: column("mm"),
  stress_unit: column("kPa"),
  dial_factor: column(0.002),
  zero_reading: column(100),
  seating_stress: column(5),
  load_stress: column(50, 100, 50),
  times_01: column(0, 5),
  readings_01: column(100, 110),
  times_02: column(0, 5),
  readings_02: column(110, 118),
  times_03: column(0, 5),
  readings_03: column(118, 113),
});
const run = setOfRun(RUN);
const SET: NewSet = {
  ...{ number: "D-2", frame: "LF-1", disks: "fine disks", paper: "none", by: "NN", day: 46_388 },
  rows: run.ok ? run.value : [],
};

async function register(
  system: "SI" | "US",
  kinds: CellValue[] = [],
  numbers: CellValue[] = [],
  sets: CellValue[] = [],
) {
  const port = new FakePort();
  port.workbook.sheets.push(sheetOf(registerSheet(system), "Equipment"));
  await port.fillNames("Equipment", { register_kind: kinds, register_number: numbers, register_set: sets });
  const look = async (): Promise<Looked> =>
    (await port.lookAt([{ sheet: "Equipment", values: [...READ_NAMES], names: true }]))[0]!;
  return { port, look };
}

test("the readings at the end of the loads, less that under seating, are the set", () =>
  expect(SET.rows).toEqual([
    { stress: 5, loading: 0 },
    { stress: 50, loading: expect.closeTo(0.02, 12), unloading: expect.closeTo(0.026, 12) },
    { stress: 100, loading: expect.closeTo(0.036, 12), unloading: expect.closeTo(0.036, 12) },
  ]));

test("it is written below what the register has, and read back as it was", async () => {
  const { port, look } = await register("SI", ["ring", "frame"], ["R-1", "LF-1"], ["D-1", "D-1"]);
  const cells = cellsOfSet(await look(), SET);
  if (typeof cells === "string") throw new Error(cells);
  await port.writeCells("Equipment", cells);
  const { values } = await look();
  expect(readRegister(values)?.map(({ row, kind, number, frame, about }) => [row, kind, number, frame, about])).toEqual(
    [
      [1, "ring", "R-1", undefined, undefined],
      [2, "frame", "LF-1", undefined, undefined],
      [3, "deflection set", "D-2", "LF-1", "2027-01-01, fine disks, none"],
    ],
  );
  expect(readSets(values).map(({ set, stress, loading, unloading }) => [set, stress, loading, unloading])).toEqual([
    ["D-2", 5, 0, undefined],
    ["D-2", 50, 0.02, 0.026],
    ["D-2", 100, 0.036, 0.036],
  ]);
});

test("its kind is written in the words that the register has, otherwise in those of the data sheet", async () => {
  const kindOf = (looked: Looked, language?: "de") => {
    const cells = cellsOfSet(looked, { ...SET, language });
    return typeof cells === "string" ? cells : cells.flatMap((cell) => ("value" in cell ? [cell.value] : []))[0];
  };
  const [blank, english, german] = [
    await register("SI"),
    await register("SI", ["frame"], ["LF-1"]),
    await register("SI", ["Rahmen"], ["LF-1"]),
  ];
  expect([kindOf(await blank.look()), kindOf(await blank.look(), "de")]).toEqual(["deflection set", "Verformungssatz"]);
  expect(kindOf(await english.look(), "de")).toBe("deflection set");
  expect(kindOf(await german.look())).toBe("Verformungssatz");
  expect(readRegister((await german.look()).values)?.map(({ kind }) => kind)).toEqual(["frame"]);
});

test("in a register in inches and tsf, its values come back in mm and kPa", async () => {
  const { port, look } = await register("US");
  const cells = cellsOfSet(await look(), SET);
  if (typeof cells === "string") throw new Error(cells);
  await port.writeCells("Equipment", cells);
  const last = readSets((await look()).values)[2];
  expect(last?.stress).toBeCloseTo(100, 3);
  expect(last?.loading).toBeCloseTo(0.036, 6);
});

test.each([
  ["no number", {}, { number: " " }],
  ["number taken", { kinds: ["deflection set"], numbers: ["d-2"] }, {}],
  ["number taken", { sets: ["D-2"] }, {}],
  ["no room", { kinds: Array<string>(60).fill("ring"), numbers: Array.from({ length: 60 }, (_, i) => `R-${i}`) }, {}],
] as const)(
  "it is refused: %s",
  async (why, held: { kinds?: readonly string[]; numbers?: readonly string[]; sets?: readonly string[] }, changes) => {
    const { look } = await register("SI", [...(held.kinds ?? [])], [...(held.numbers ?? [])], [...(held.sets ?? [])]);
    expect(cellsOfSet(await look(), { ...SET, ...changes })).toBe(why);
  },
);

test("a register without the table of sets, or without its units, is refused", async () => {
  const { look } = await register("SI");
  const whole = await look();
  expect(cellsOfSet({ ...whole, names: whole.names?.filter(({ name }) => name !== "register_set") }, SET)).toBe(
    "no table",
  );
  expect(cellsOfSet({ ...whole, values: { ...whole.values, register_stress_unit: column("") } }, SET)).toBe("no units");
});
