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

/** A file with the headings and the points of a German logger; its days can be read as months. */
const GERMAN = [
  "Datum;Uhrzeit;Auflast [kPa];Ablesung [Skt]",
  ...Array.from({ length: 8 }, (_, line) => `0${2 + Math.floor(line / 4)}.11.2026;09:0${line}:00;25,0;${500 + line}`),
];

test("a day with points between its parts stands before the month; one with strokes is left to the person", () => {
  expect(offerLayout(GERMAN).draft.dateOrder).toBe("dmy");
  expect(
    offerLayout(GERMAN.map((line) => line.replace(/(\d\d)\.(\d\d)\.(\d{4})/, "$1/$2/$3"))).draft.dateOrder,
  ).toBeUndefined();
});

test("the words of a German data sheet name their columns and units", () => {
  const { draft } = offerLayout(GERMAN);
  expect([draft.reading, draft.readingUnit, draft.load, draft.loadKind, draft.loadUnit]).toEqual([3, "div", 2, "stress", "kPa"]); // prettier-ignore
  const pasted = offerLayout(["Zeit [min]\tAblesung [Skt]", "0,1\t500", "0,25\t507", "0,5\t512"]).draft;
  expect([pasted.time, pasted.timeForm, pasted.reading, pasted.readingUnit]).toEqual([0, "min", 1, "div"]);
  const numbered = offerLayout(["Sek;Laststufe;Weg mm", ...Array.from({ length: 12 }, (_, line) => `${line};${line < 6 ? 1 : 2};${line / 100}`)]).draft; // prettier-ignore
  expect([numbered.timeForm, numbered.load, numbered.loadKind, numbered.reading]).toEqual(["s", 1, "number", 2]);
});
