/** Many names are added to a workbook in one command, which is accepted or refused as a whole. */
import "./engine-in-node";
import { newWorkbook } from "../../../src/workbook/embedded";
import { runBatch } from "../../../src/workbook/embedded/engine";
import { addNames } from "../../../src/workbook/embedded/named-ranges";

const zone = (row: number) => ({ left: 0, right: 0, top: row, bottom: row });

const bench = () => {
  const { model } = newWorkbook();
  const sheetId = model.getters.getActiveSheetId();
  return {
    model,
    add: (...names: string[]) =>
      runBatch(model, [
        addNames(
          sheetId,
          names.map((name, row) => ({ name, zone: zone(row) })),
        ),
      ]),
    names: () => model.getters.getNamedRanges().map(({ name, range }) => [name, range.zone.top]),
  };
};

test("one command adds the names, one undo takes all of them away, and one redo brings them back", () => {
  const { model, add, names } = bench();
  expect(add("ring_mass", "depth", "boring")).toEqual([]);
  const added = [
    ["ring_mass", 0],
    ["depth", 1],
    ["boring", 2],
  ];
  expect(names()).toEqual(added);
  expect(model.getters.getNamedRange("DEPTH")?.range.zone).toEqual(zone(1));
  model.dispatch("REQUEST_UNDO");
  expect(names()).toEqual([]);
  expect(model.getters.getNamedRange("depth")).toBeUndefined();
  model.dispatch("REQUEST_REDO");
  expect(names()).toEqual(added);
});

test.each<[string, string[], string]>([
  ["a name that the workbook has", ["tin", "Ring_Mass"], "NamedRangeNameAlreadyExists"],
  ["the same name twice", ["tin", "TIN"], "NamedRangeNameAlreadyExists"],
  ["a name that is a cell", ["tin", "T50"], "NamedRangeNameLooksLikeCellReference"],
  ["a name with a blank", ["tin", "ring mass"], "NamedRangeInvalidName"],
])("%s refuses all of them", (_, given, reason) => {
  const { add, names } = bench();
  add("ring_mass");
  expect(add(...given)).toEqual([`CLAYLEDGER_ADD_NAMES (${reason})`]);
  expect(names()).toEqual([["ring_mass", 0]]);
});

test("a formula that was typed before the name shows its cell as soon as the name is added", () => {
  const { model, add } = bench();
  const sheetId = model.getters.getActiveSheetId();
  model.dispatch("UPDATE_CELL", { sheetId, row: 5, col: 5, content: "=ring_mass*2" });
  model.dispatch("UPDATE_CELL", { sheetId, row: 0, col: 0, content: "21" });
  add("ring_mass");
  expect(model.getters.getEvaluatedCell({ sheetId, row: 5, col: 5 }).value).toBe(42);
});

test("a name that is moved or called otherwise is found at once, and undo finds the former one", () => {
  const { model, add } = bench();
  add("ring_mass", "depth");
  const found = (name: string) => model.getters.getNamedRange(name)?.range.zone.top;
  const ranges = [{ _sheetId: model.getters.getActiveSheetId(), _zone: zone(7) }];
  model.dispatch("UPDATE_NAMED_RANGE", { oldRangeName: "ring_mass", newRangeName: "Mass", ranges });
  expect(["mass", "ring_mass", "depth"].map(found)).toEqual([7, undefined, 1]);
  model.dispatch("REQUEST_UNDO");
  expect(["mass", "ring_mass", "depth"].map(found)).toEqual([undefined, 0, 1]);
});
