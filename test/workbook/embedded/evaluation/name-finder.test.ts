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
