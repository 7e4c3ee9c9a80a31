/** The finder of names answers as a search through all names, whatever is added, renamed or deleted between two questions. */
import "../engine-in-node";
import fc from "../../../properties";
import { nameFinder } from "../../../../src/workbook/embedded/evaluation/name-finder";

const NAMES = ["depth", "Depth_2", "ring_mass", "times_01", "readings_01"];

test("finds what a search finds, in upper and lower case, after every change of the list", () =>
  fc.assert(
    fc.property(fc.array(fc.subarray(NAMES), { minLength: 1, maxLength: 6 }), (states) => {
      let names: { name: string }[] = [];
      const find = nameFinder(() => names);
      for (const state of states) {
        names = state.map((name) => ({ name }));
        for (const asked of [...NAMES, ...NAMES.map((name) => name.toUpperCase()), "no_name"]) {
          const wanted = names.find(({ name }) => name.toLowerCase() === asked.toLowerCase());
          expect(find(asked)).toBe(wanted);
        }
      }
    }),
  ));

test("a list that is changed in place is noticed too", () => {
  const names = [{ name: "depth" }, { name: "ring_mass" }];
  const find = nameFinder(() => names);
  expect(find("ring_mass")).toBe(names[1]);
  names[1] = { name: "ring_mass_2" };
  expect([find("ring_mass"), find("ring_mass_2")]).toEqual([undefined, names[1]]);
  names.splice(0, 1);
  expect([find("depth"), find("RING_MASS_2")]).toEqual([undefined, names[0]]);
});
