import { offerLayout } from "../../../src/exchange/logger/offer";

/** A file of 40 lines: time, a column with this heading, reading. */
const file = (heading: string, value: (line: number) => number): string[] => [
  `Time s,${heading},Reading mm`,
  ...Array.from({ length: 40 }, (_, line) => `${line},${value(line)},${1 + line / 100}`),
];

test("a column that numbers the loads is offered as such", () => {
  const { draft } = offerLayout(file("Step", (line) => 1 + Math.floor(line / 10)));
  expect([draft.load, draft.loadKind]).toEqual([1, "number"]);
});

test.each<[string, (line: number) => number]>([
  ["each line", (line) => line + 1],
  ["three lines of four", (line) => line - (line % 4 === 0 ? 0 : 1)],
])("a counter of steps that continues with %s does not number loads", (_, value) => {
  expect(offerLayout(file("Step", value)).draft.load).toBeNull();
});
