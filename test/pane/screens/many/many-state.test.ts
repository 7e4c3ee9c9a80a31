/** The state of the part for many sheets, without a page. */
import { AT_REST, manyChanged, taken, type ManyAction } from "../../../../src/pane/screens/many/many-state";

const after = (...actions: readonly ManyAction[]) => actions.reduce(manyChanged, AT_REST);
const SHEETS = ["A", "B", "C"];

test("every sheet is in until a person leaves it out; a sheet that was added later is in", () => {
  const state = after({ do: "take", sheets: ["B"], isIn: false });
  expect(taken(AT_REST, SHEETS)).toEqual(SHEETS);
  expect(taken(state, SHEETS)).toEqual(["A", "C"]);
  expect(taken(state, [...SHEETS, "D"])).toEqual(["A", "C", "D"]);
  expect(taken(manyChanged(state, { do: "take", sheets: SHEETS, isIn: true }), SHEETS)).toEqual(SHEETS);
});

test("work shows its share, then its result; the next choice removes the result and keeps the choices", () => {
  const chosen: ManyAction = { do: "choose", change: { kind: "pictures", format: "png" } };
  const working = after(chosen, { do: "begin" }, { do: "go on", share: 0.4 });
  expect(working).toEqual({ ...AT_REST, kind: "pictures", format: "png", share: 0.4 });
  const done = { sentence: "Made.", others: [], failed: [] };
  const ended = manyChanged(working, { do: "end", done });
  expect(ended).toEqual({ ...AT_REST, kind: "pictures", format: "png", done });
  expect(manyChanged(ended, { do: "go on", share: 1 })).toBe(ended);
  expect(manyChanged(ended, { do: "choose", change: { widthMm: 85 } }).done).toBeUndefined();
  expect(manyChanged(working, { do: "fail", sentence: "No." })).toMatchObject({ kind: "pictures", failure: "No." });
});
