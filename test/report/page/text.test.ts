import fc from "../../properties";
import { pointsOf, wrapped } from "../../../src/report/page/text";

test("no line is wider than the width, and nothing of the text is lost", () => {
  const words = fc.array(fc.string({ unit: fc.constantFrom("a", "i", "W", "1", "-"), minLength: 1, maxLength: 40 }));
  fc.assert(
    fc.property(words, fc.double({ min: 20, max: 200, noNaN: true }), (list, width) => {
      const lines = wrapped(list.join(" "), width, pointsOf);
      expect(lines.join("").replaceAll(" ", "")).toBe(list.join(""));
      for (const line of lines) if (line.length > 1) expect(pointsOf(line)).toBeLessThanOrEqual(width);
    }),
  );
});

test("a long word is broken where the next letter would not fit", () => {
  expect(wrapped("abcdefgh ij", 3)).toEqual(["abc", "def", "gh", "ij"]);
  expect(wrapped("abcdefg", 0.5)).toEqual([..."abcdefg"]);
  expect(wrapped("abcd", 4)).toEqual(["abcd"]);
});

test("a word as long as a cell takes measures each line a few times, not letter by letter", () => {
  let measured = 0;
  const lines = wrapped("x".repeat(32_767), 60, (piece) => {
    measured++;
    return piece.length;
  });
  expect(lines).toHaveLength(Math.ceil(32_767 / 60));
  expect(measured / lines.length).toBeLessThan(20);
});
