import { pairOf, rangeOf, unitOf, type Range } from "../../../../src/pane/screens/plots/selected-range";
import type { CellValue } from "../../../../src/workbook/port";
import { inEnglish } from "../../../in-english";

const range = (values: CellValue[][], address = "B4:C9"): Range | null => rangeOf({ sheet: "Test", address, values });
const known = (values: CellValue[][], address?: string): Range => {
  const found = range(values, address);
  if (!found) throw new Error("no range");
  return found;
};

describe("the content of a selection", () => {
  test("two columns under headings are named by their letters and headings", () => {
    const { lines, begins } = known([
      ["Time", "Reading"],
      ["(min)", "(mm)"],
      [0, 1.2],
      [1, 1.5],
    ]);
    expect(lines.map(({ name }) => name)).toEqual(["B: Time (min)", "C: Reading (mm)"]);
    expect(lines[1].cells).toEqual([1.2, 1.5]);
    expect(begins).toBe("sheet row 6");
    expect(lines.map(({ cellName }) => cellName(1))).toEqual(["B7", "C7"]);
  });

  test("a number among the headings belongs to them; a unit on its own is put in brackets", () => {
    const { lines, begins } = known([
      ...Array.from({ length: 9 }, () => ["", ""]),
      ["Load 1", ""],
      [12.5, "kPa"],
      ["Time", "Reading"],
      ["min", "div"],
      [0, 400],
      [0.1, 436],
    ]);
    expect(lines.map(({ heading }) => heading)).toEqual(["Time (min)", "Reading (div)"]);
    expect(lines.map(({ cells }) => cells)).toEqual([
      [0, 0.1],
      [400, 436],
    ]);
    expect(begins).toBe("sheet row 17");
  });

  test("text below a reading is not a heading", () => {
    const { lines } = known([
      [0, 400],
      ["", "missed"],
      ["not", "read"],
      [1, 436],
    ]);
    expect(lines[1].cells).toEqual([400, "missed", "read", 436]);
  });

  test.each([
    ["Reading (mm)", "mm"],
    ["Stress, kPa", "kPa"],
    ["Stress [tsf]", "tsf"],
    ["Void ratio", undefined],
    ["", undefined],
  ])("the unit of %j is %s", (heading, unit) => expect(unitOf(heading)).toBe(unit));

  test("a selection of rows is read by rows", () => {
    const { lines, begins } = known(
      [
        ["Time", 0, 1, 2],
        ["Reading", 5, 6, 7],
      ],
      "AA10:AD11",
    );
    expect(lines.map(({ name }) => name)).toEqual(["10: Time", "11: Reading"]);
    expect(lines[1].cells).toEqual([5, 6, 7]);
    expect(lines[0].cellName(2)).toBe("AD10");
    expect(begins).toBe("column AB");
  });

  test("blocks selected together keep the places of their columns and rows", () => {
    const picked: CellValue[][] = [
      ["Time", "Reading"],
      [0, 400],
      [1, "5oo"],
    ];
    const { lines, begins } = known(picked, "B4:B6,D4:D6");
    expect(lines.map(({ name }) => name)).toEqual(["B: Time", "D: Reading"]);
    expect(lines[1].cellName(1)).toBe("D6");
    expect(lines.map(({ box }) => box)).toEqual([
      { row: 4, col: 1, rows: 2, cols: 1 },
      { row: 4, col: 3, rows: 2, cols: 1 },
    ]);
    expect(begins).toBe("sheet row 5");
    const wide = known(picked.map((row, n) => [...row, n ? 7 : "Force"]), "$A$4:$B$6,$F$4:$F$6"); // prettier-ignore
    expect(wide.lines.map(({ cellName }) => cellName(0))).toEqual(["A5", "B5", "F5"]);
  });

  test("blocks of rows can be selected together", () => {
    const { lines } = known([["Time", 0, 1, 2], ["Reading", 5, 6, 7]], "A1:B2,E1:F2"); // prettier-ignore
    expect(lines[1].cellName(2)).toBe("F2");
    expect(lines[1].box).toBeUndefined();
  });

  test("empty columns are skipped", () => {
    const { lines } = known([
      [0, "", 1.2],
      [1, "", 1.5],
      [2, "", 1.6],
    ]);
    expect(lines.map(({ name }) => name)).toEqual(["Column B", "Column D"]);
  });

  test.each<[string, CellValue[][]]>([
    ["one cell", [[1]]],
    ["one column", [[1], [2], [3]]],
    [
      "no numbers",
      [
        ["Time", "Reading"],
        ["", ""],
      ],
    ],
    ["nothing", []],
  ])("%s is not a curve", (_, values) => expect(range(values)).toBeNull());
});

describe("two lines as numbers", () => {
  test("a blank in the middle stays, blanks after the last entry are dropped", () => {
    const pair = pairOf(
      known([
        [0, 1],
        [1, ""],
        [2, 3],
        ["", " "],
      ]),
      0,
      1,
    );
    expect(pair).toMatchObject({ ok: true, value: { first: [0, 1, 2], second: [1, null, 3] } });
  });

  test.each<[string, CellValue, string]>([
    ["text", "1.2x", `C5 holds the text "1.2x"`],
    ["a logical value", true, "C5 holds TRUE"],
    ["an error cell", "#DIV/0!", "C5 shows #DIV/0!"],
  ])("%s is refused by the name of its cell", (_, cell, message) => {
    const pair = pairOf(
      known([
        [0, 1],
        [1, cell],
        [2, 3],
      ]),
      0,
      1,
    );
    expect(inEnglish(pair)).toMatchObject({ ok: false, fault: "input", reason: expect.stringContaining(message) });
  });

  test("cells of an absolute address with a sheet have the right names", () => {
    const { lines } = known(
      [
        [0, 1],
        [1, 2],
      ],
      "'My test'!$Z$100:$AA$101",
    );
    expect(lines[1].cellName(1)).toBe("AA101");
  });
});
