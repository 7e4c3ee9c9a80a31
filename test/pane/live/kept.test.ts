import fc from "../../properties";
import { kept } from "../../../src/pane/live/kept";

test("an equal value, or an equal part of a value, is the object from before", () => {
  const before = { times: [[0], [1]], readings: [[100], [110]], name: "a" };
  expect(kept(before, structuredClone(before))).toBe(before);
  const next = kept(before, { ...structuredClone(before), readings: [[100], [111]] });
  expect(next).not.toBe(before);
  expect(next.times).toBe(before.times);
  expect(next.readings[0]).toBe(before.readings[0]);
  expect(next.readings[1]).toEqual([111]);
});

test("a value with more or fewer parts is a new object", () => {
  const list: number[] = [1, 2];
  expect(kept(list, [1])).toEqual([1]);
  expect(kept([1], list)).toEqual([1, 2]);
  const more: Record<string, number | undefined> = { a: 1, b: undefined };
  expect(kept(more, { a: 1 })).toEqual({ a: 1 });
  expect(Object.keys(kept<typeof more>({ a: 1 }, more))).toEqual(["a", "b"]);
  expect(kept<unknown>([], {})).toEqual({});
  expect(kept<unknown>({ 0: 1 }, [1])).toEqual([1]);
});

test("for any plain data the result equals the next value, and is the object from before if both are equal", () => {
  // JSON has no -0, and neither does a cell.
  const plain = fc.jsonValue({ maxDepth: 3 });
  fc.assert(
    fc.property(plain, plain, (one, other) => {
      expect(kept<unknown>(one, other)).toStrictEqual(other);
      expect(kept<unknown>(one, structuredClone(one))).toBe(one);
    }),
  );
});
