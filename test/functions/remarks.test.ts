/** A remark that many loads share appears once. */
import { REMARKS_BY_LOAD } from "../../src/functions/remarks";

const column = (cells: readonly unknown[]): any[][] => cells.map((cell) => [cell]);
const text = (...rows: readonly (readonly [unknown, unknown])[]) =>
  REMARKS_BY_LOAD(column(rows.map(([load]) => load)), column(rows.map(([, remark]) => remark)));

test('each remark stands once, with its loads in runs, and "ok" comes last', () => {
  expect(
    text([1, "ok"], [2, "bent; noisy"], [3, "noisy; noisy"], [4, "noisy"], [7, "noisy"], [8, "noisy"], [9, "ok"]),
  ).toBe("Load 2: bent\nLoads 2 to 4, 7, 8: noisy\nLoads 1, 9: ok");
});

test('the part that begins with "try" stays with its reason', () => {
  expect(text([5, "no inflection; try ROOT_TIME"])).toBe("Load 5: no inflection; try ROOT_TIME");
});

test.each([[null], [""], [0]])(
  "a blank that arrives as %p is not a remark, and a row without a number is not a load",
  (blank) => {
    expect(text([1, blank], [blank || "", "noisy"], [3, "bent"])).toBe("Load 3: bent");
    expect(text([1, blank])).toBe("");
  },
);

test("an error in the row of one load is shown, and the remarks of the other loads stay", () => {
  const said = "Load 1: there is an error in its row: look at the cells that show it\nLoad 2: bent";
  for (const error of ["#VALUE!", { code: "#VALUE!", message: "why" }, { type: "Error", basicValue: "#REF!" }])
    expect(text([1, error], [2, "bent"])).toBe(said);
});

test("columns with different rows are refused", () => {
  expect(() => REMARKS_BY_LOAD(column([1, 2]), column(["ok"]))).toThrow(
    /2 load numbers and 1 remarks: choose the same/,
  );
});
