import { adoptRow, cellsToAdopt, cellsToTakeBack, rangeGiven } from "../../../../src/pane/screens/results/adopt-rows";
import {
  adoptingOf,
  adoptState,
  START,
  type AdoptAct,
  type AdoptState,
  type Entry,
} from "../../../../src/pane/screens/results/adopt-state";
import { readRecord, type NamedValues } from "../../../../src/record/record";

const column = (...cells: (number | string)[]) => cells.map((cell) => [cell]);

/** The tables of a sheet with a Cc of AB, and loads with cv at 50, 100, 200 and 400 kPa. */
const VALUES: NamedValues = {
  stress_unit: column("kPa"),
  cv_unit: column("m2/yr"),
  load_stress: column(50, 100, 200, 400),
  cv_chosen: column(9, 4, 2, 3),
  adopted_constructed: column(120, 0.4, 0.05, "#N/A", ""),
  adopted_value: column("", 0.45, "", "", ""),
  adopted_by: column("", "AB", "", "", ""),
  adopted_day: column("", 46_000, "", "", ""),
  adopted_reason: column("", "the field curve", "", "", ""),
  adopted_cv_from: column("", "", ""),
  adopted_cv_to: column("", "", ""),
  adopted_cv_low: column(60, 120, ""),
  adopted_cv_high: column(120, 400, ""),
  adopted_cv_constructed: column(4, 2.4, ""),
  adopted_cv: column("", "", ""),
  adopted_cv_by: column("", "", ""),
  adopted_cv_day: column("", "", ""),
  adopted_cv_reason: column("", "", ""),
};
const RECORD = readRecord(VALUES);
const METHODS = { methods: [], least: 100, greatest: 140, median: 120, count: 3, format: undefined, unit: "kPa" };
const DAY = 46_355;

const after = (...acts: AdoptAct[]): AdoptState => acts.reduce(adoptState, START);
const typed = (entries: Partial<Record<Entry, string>>, quantity = START.quantity): AdoptState =>
  after(
    { does: "choose", quantity },
    // Object.entries returns keys of type string; these are entries.
    ...Object.entries(entries).map(([entry, text]): AdoptAct => ({ does: "type", entry: entry as Entry, typed: text })),
  );
const tried = (state: AdoptState) => {
  const row = adoptRow(VALUES, state.quantity);
  return adoptingOf(state, row, rangeGiven(row, VALUES, RECORD, METHODS), DAY);
};

test("another quantity empties the entries and keeps the initials; typing takes a fault and a question away", () => {
  const full = typed({ value: "110", reason: "why", by: "CD" });
  expect(adoptState(full, { does: "choose", quantity: "cv_virgin" })).toEqual({
    quantity: "cv_virgin",
    typed: { value: "", from: "", to: "", reason: "", by: "CD" },
  });
  const refused = adoptState(full, { does: "refuse", fault: { entry: "by", why: "no initials" } });
  const asked = adoptState(refused, { does: "ask", about: "replace" });
  expect([refused.fault?.entry, asked.fault, asked.asking]).toEqual(["by", undefined, "replace"]);
  expect(adoptState(asked, { does: "keep" })).toEqual(full);
  expect(adoptState(asked, { does: "type", entry: "value", typed: "111" }).asking).toBeUndefined();
  const done = adoptState(full, { does: "adopted", sentence: "done" });
  expect([done.typed.value, done.typed.by, done.telling?.intent]).toEqual(["", "CD", "success"]);
  // What was typed stays if the workbook refused it.
  const failed = adoptState(full, { does: "tell", telling: { intent: "error", sentence: "busy" } });
  expect([failed.typed, failed.telling?.sentence]).toEqual([full.typed, "busy"]);
});

test.each([
  ["a blank value", { value: "", by: "AB" }, { entry: "value", why: "not above 0" }],
  ["a value that is no number", { value: "about 110", by: "AB" }, { entry: "value", why: "not above 0" }],
  ["zero", { value: "0", by: "AB" }, { entry: "value", why: "not above 0" }],
  ["a value below zero", { value: "-3", by: "AB" }, { entry: "value", why: "not above 0" }],
  ["blank initials", { value: "110", by: " " }, { entry: "by", why: "no initials" }],
  ["a reason that is a formula", { value: "110", by: "AB", reason: "=A1" }, { entry: "reason", why: "formula" }],
  ["initials that are a formula", { value: "110", by: "@AB" }, { entry: "by", why: "formula" }],
  ["a value outside the methods without a reason", { value: "141", by: "AB" }, { entry: "reason", why: "outside" }],
] as const)("%s is refused with its field", (_, entries, fault) => {
  expect(tried(typed(entries))).toEqual({ fault });
});

test("a value within the range of the methods needs no reason; outside of it a reason is enough", () => {
  expect(tried(typed({ value: "140", by: "AB" }))).toEqual({
    adopting: { value: 140, reason: "", by: "AB", day: DAY },
  });
  expect(tried(typed({ value: "150", by: "AB", reason: "aged clay" }))).toMatchObject({ adopting: { value: 150 } });
});

test("where the test gives no value to compare with, a reason is required", () => {
  expect(tried(typed({ value: "0.02", by: "AB" }, "swelling_index"))).toEqual({
    fault: { entry: "reason", why: "no range" },
  });
});

test("cv is held against the loads that end between its stresses, those typed or those of the sheet", () => {
  const row = adoptRow(VALUES, "cv_virgin");
  expect(rangeGiven(row, VALUES, RECORD, METHODS)).toEqual([2, 3]);
  expect(rangeGiven(row, VALUES, RECORD, METHODS, { from: 40 })).toEqual([2, 9]);
  expect(rangeGiven(adoptRow(VALUES, "cv_another"), VALUES, RECORD, METHODS)).toBeUndefined();
});

test.each([
  ["cv_another", { from: "", to: "200" }, { entry: "from", why: "no stress" }],
  ["cv_another", { from: "100", to: "" }, { entry: "to", why: "no stress" }],
  ["cv_another", { from: "200", to: "100" }, { entry: "to", why: "not above the lower" }],
  ["cv_virgin", { from: "500" }, { entry: "to", why: "not above the lower" }],
  ["cv_virgin", { from: "-5" }, { entry: "from", why: "not above 0" }],
] as const)("%s with the stresses %j is refused", (quantity, stresses, fault) => {
  expect(tried(typed({ value: "2.5", by: "AB", reason: "why", ...stresses }, quantity))).toEqual({ fault });
});

test("the cells go into the row of the quantity; stresses that were not typed stay, and taking back leaves stresses", () => {
  const adopting = { value: 2.5, from: 100, reason: "", by: "AB", day: DAY };
  expect(cellsToAdopt("cv_virgin", adopting)).toEqual({
    adopted_cv: [null, 2.5],
    adopted_cv_from: [null, 100],
    adopted_cv_by: [null, "AB"],
    adopted_cv_day: [null, DAY],
    adopted_cv_reason: [null, ""],
  });
  expect(cellsToTakeBack("cv_virgin")).toEqual({
    adopted_cv: [null, ""],
    adopted_cv_by: [null, ""],
    adopted_cv_day: [null, ""],
    adopted_cv_reason: [null, ""],
  });
});

test("cells that the sheet does not have are named", () => {
  const { missing } = adoptRow({ ...VALUES, adopted_cv_day: [] }, "cv_virgin");
  expect(missing).toEqual(["adopted_cv_day"]);
  expect(adoptRow(VALUES, "cv_virgin").missing).toEqual([]);
});
