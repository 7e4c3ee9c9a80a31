import { massesShown, massesTyped } from "../../../../src/pane/screens/bench/masses-typed";

test.each([
  ["10 5 2x2 0.5", [10, 5, 2, 2, 0.5]],
  ["0,5; 3×1", [0.5, 1, 1, 1]],
  ["", []],
  ["5 kg", undefined],
  ["0", undefined],
  ["-2", undefined],
])("%p is read as %p", (typed, masses) => expect(massesTyped(typed)).toEqual(masses));

test("equal masses are shown together", () => expect(massesShown([5, 2, 2, 0.5], String)).toBe("5 + 2x2 + 0.5"));
