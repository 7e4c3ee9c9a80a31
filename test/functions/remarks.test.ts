/** A remark that many loads share appears once. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
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

test("a slope of the tail that is not given stays with its reason, and one that is that of the fit stands apart, as in German", () => {
  expect(text([1, "short; the slope of the tail is not given"])).toBe(
    "Load 1: short; the slope of the tail is not given",
  );
  const ofFit = "the slope of the tail is that of the fit to theory: it is uncertain";
  expect(text([1, `noisy; ${ofFit}`])).toBe(`Load 1: noisy\nLoad 1: ${ofFit}`);
});

test('a load with another remark is not "ok", and the mark at the end of a remark is left out', () => {
  expect(text([1, "not corrected; ok"], [2, "ok"], [3, "enter the stress; "])).toBe(
    "Load 1: not corrected\nLoad 3: enter the stress\nLoad 2: ok",
  );
});

describe("no remark of the reduction is parted in the middle", () => {
  const folder = path.join(__dirname, "../../src/reduction/increment");
  const sources = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts"));
  const remarks = sources.flatMap((file) => {
    const source = readFileSync(path.join(folder, file), "utf8");
    return [...source.matchAll(/say`([^`]*; [^`]*)`/g)].map(([, template = ""]) => template.replaceAll("$", ""));
  });
  // Texts that are put behind another reason; the readings of a load never show them.
  const others = /\{(?:advice|TRY_ROOT_TIME|TRY_LOG_TIME|GO_ON|short|logTime\.reason)\}|the fit of theory|give a ratio/;

  test("the sources have such remarks", () => expect(remarks.length).toBeGreaterThan(15));
  test.each(remarks.filter((remark) => !others.test(remark)))("%s", (remark) => {
    expect(text([1, remark])).toBe(`Load 1: ${remark}`);
  });
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
