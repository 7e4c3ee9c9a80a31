import { FORMULAS } from "../../src/book/formulas";
import { inNumbers, working } from "../../src/book/line";
import { CHECKS, COMPARE, WORKING } from "../../src/functions/checking";
import { english } from "../../src/reduction/message";
import { refusal } from "./refusal";

test("one pair gives difference, relative difference and verdict", () => {
  expect(COMPARE([[1.005]], [[1]])).toEqual([[expect.closeTo(0.005, 12), expect.closeTo(0.005, 12), "agrees"]]);
  expect(COMPARE([[1.02]], [[1]])[0][2]).toBe("differs");
  expect(COMPARE([[1.02]], [[1]], 0.05)[0][2]).toBe("agrees");
  expect(COMPARE([[-2]], [[-4]])).toEqual([[2, 0.5, "differs"]]);
});

test("a difference equal to the tolerance agrees", () => {
  expect(COMPARE([[1.1]], [[1]], 0.1)[0][2]).toBe("agrees");
  expect(COMPARE([[0.9]], [[1]], 0.1)[0][2]).toBe("agrees");
});

test("in a column of pairs, a row without a hand value stays blank, and a row without our value differs", () => {
  for (const blank of [null, "", 0])
    expect(COMPARE([[2], [3], [blank]], [[2], [blank], [5]])).toEqual([
      [0, 0, "agrees"],
      ["", "", ""],
      [-5, -1, "differs"],
    ]);
});

test("WORKING writes the line of each formula in the calculation book, or gives the formula's refusal", () => {
  const written: string[] = [];
  for (const formula of FORMULAS) {
    const numbers = formula.arguments.map(({ symbol, fallback }, index) =>
      symbol === "n" ? 2 : (fallback ?? 1 / (index + 2)),
    );
    const line = working(formula, numbers, {});
    const asked = () => WORKING(formula.id, ...numbers);
    if (line.ok) written.push(formula.id);
    if (line.ok) expect(asked()).toBe(english(inNumbers(line.value.text)));
    else expect(refusal(asked)).toContain(english(line.reason));
  }
  expect(written.length).toBeGreaterThan(FORMULAS.length / 2);
});

test("refusals", () => {
  for (const blank of [null, 0])
    expect(refusal(() => COMPARE([[2]], [[blank]]))).toMatch(/value by hand is blank or zero: enter it/);
  expect(refusal(() => COMPARE([[2]], [[2]], 5))).toMatch(/tolerance is 5: enter it as a ratio, 0.05 for 5 %/);
  expect(refusal(() => COMPARE([["#N/A"]], [[2]]))).toMatch(/cell 1 of the reduced values holds the error #N\/A/);
});

describe("CHECKS", () => {
  /** A specimen as a person would lay it out: names, with values to the right. */
  const rows: unknown[][] = [
    ["length_unit", "mm", ""],
    ["stress_unit", "kPa", null],
    ["diameter", 63.5, null],
    ["initial_height", 25.4, null],
    ["ring_mass", 74.36, null],
    ["ring_and_wet_before", 211.03, null],
    ["ring_and_wet_after", 186.32, null],
    ["ring_and_dry", 163.66, null],
    ["specific_gravity", 2.72, null],
    ["final_height_measured", 17.43, null],
    ["load_stress", 12.5, 25],
  ];
  const changed = (name: string, ...values: unknown[]) =>
    rows.map((row) => (row[0] === name ? [name, ...values] : row));
  const row = (answer: any[][], id: string) => answer.find(([first]) => first === id)!;

  test("asks the questions that the names cover, and says why the others cannot be asked", () => {
    const answer = CHECKS(rows);
    expect(row(answer, "Q01")).toEqual([
      "Q01",
      "pass",
      expect.closeTo(99.5, 1),
      105,
      "%",
      expect.stringMatching(/^initial saturation S0 is 99.5 %, within 90 % to 105 %$/),
    ]);
    expect(row(answer, "Q18").slice(0, 5)).toEqual(["Q18", "pass", 1, 0.5, ""]);
    expect(row(answer, "Q30")).toEqual(["Q30", "cannot be asked", "", "", "", expect.stringMatching(/readings/)]);
    for (const line of answer) expect(line).toHaveLength(6);
  });

  test("blanks from the desktop, which arrive as 0, give the same answers", () => {
    const desktop = rows.map((line) => line.map((cell) => (cell === null || cell === "" ? 0 : cell)));
    expect(CHECKS(desktop)).toEqual(CHECKS(rows));
  });

  test('"open" lists only open questions, or one line that says that there are none', () => {
    const open = CHECKS(changed("specific_gravity", 2.95, null), undefined, "open");
    expect(open.map(([id]) => id)).toContain("Q03");
    expect(open.every(([, status]) => status !== "pass" && status !== "cannot be asked")).toBe(true);
    expect(CHECKS([["largest_particle", ""]], null as never, "open")).toEqual([
      ["", "pass", "", "", "", "every question that could be asked passes"],
    ]);
  });

  test("takes the limits of a firm, with who and why beside them", () => {
    const height = changed("final_height_measured", 17.41, null);
    const q11 = (limits?: unknown[][]) => row(CHECKS(height, limits as any[][]), "Q11")[1];
    expect(q11()).toBe("pass");
    expect(q11([["Q11.diameter", 70, "NN", "our contract"]])).toBe("explain");
    expect(refusal(() => CHECKS(rows, [["Q11.width", 70]]))).toMatch(/"Q11.width", which no question has/);
    expect(refusal(() => CHECKS(rows, [["Q11.diameter", "wide"]]))).toMatch(
      /row 1 of the limits holds the text "wide"/,
    );
  });

  test("names that no question reads are listed; text and errors in cells for numbers are listed, not used", () => {
    const answer = CHECKS([...changed("ring_mass", "74.36", null), ["ring_weight", 74, null]]);
    expect(answer[answer.length - 1][5]).toBe("names that no question reads: ring_weight");
    expect(row(answer, "Q60")[5]).toMatch(/"74.36" stored as text/);
    expect(row(answer, "Q01")[5]).toMatch(/it needs Mass of the ring \(ring_mass\)/);
    const error = { type: "Error", basicType: "Error", basicValue: "#REF!" };
    expect(row(CHECKS(changed("ring_mass", error, null)), "Q01")[1]).toBe("cannot be asked");
  });

  test("refusals", () => {
    expect(refusal(() => CHECKS([["ring_mass"]]))).toMatch(/names in the first column and values to their right/);
    expect(refusal(() => CHECKS([[null, null]]))).toMatch(/hold no name/);
    expect(refusal(() => CHECKS([...rows, ["diameter", 60, null]]))).toMatch(/row 12 .* names diameter a second time/);
  });
});
