import {
  ANSWER_NAMES,
  answerRow,
  answersSheet,
  answerTo,
  asKept,
  appended,
  readAnswers,
  type Acknowledgement,
} from "../../src/checks/answers";
import { CHECKS } from "../../src/checks";
import { translateBy } from "../../src/record/told";
import { english, say } from "../../src/reduction/message";
import { nth } from "../../src/reduction/numeric/lists";
import type { NamedValues } from "../../src/record/record";

const one = (more: Partial<Acknowledgement> = {}): Acknowledgement => ({
  sheet: "BH1",
  id: "Q05",
  status: "explain",
  found: "w0 differs",
  reason: "two pieces",
  by: "AB",
  when: "2031-03-01 14:05",
  ...more,
});

/** The values of a sheet of answers with these rows, and blank rows below them. */
const sheetOf = (rows: readonly (readonly string[])[], length = rows.length + 2): NamedValues =>
  Object.fromEntries(
    ANSWER_NAMES.map((name, col) => [name, Array.from({ length }, (_, row) => [rows[row]?.[col] ?? ""])]),
  );

test("answers are read back as they were written, without the blanks about them", () => {
  const answers = [one(), one({ id: "Q07", sheet: "BH2", reason: "typed late" })];
  expect(readAnswers(sheetOf(answers.map(answerRow)))).toEqual(answers);
  expect(readAnswers(sheetOf([answerRow(one()).map((text) => ` ${text} `)]))).toEqual([one()]);
});

test("a row without a question or without a data sheet is no answer, and a workbook without the sheet has none", () => {
  expect(readAnswers(sheetOf([answerRow(one({ id: "" })), answerRow(one({ sheet: " " }))]))).toEqual([]);
  expect(readAnswers({})).toEqual([]);
  expect(readAnswers({ answer_check: [["Q05"]], answer_sheet: [["BH1"]] })).toEqual([
    { sheet: "BH1", id: "Q05", status: "", found: "", reason: "", by: "", when: "" },
  ]);
});

test("the columns of the sheet are in the order of a row, and the sheet has each by its name", () => {
  expect(ANSWER_NAMES.map((name) => name.replace("answer_", ""))).toEqual([
    ...["sheet", "check", "status", "found", "reason", "by", "when"],
  ]);
  expect(Object.keys(answersSheet().names)).toEqual(expect.arrayContaining([...ANSWER_NAMES]));
  // The sheet says how it is read, and only its inputs are open.
  expect(answersSheet().cells.map(({ value }) => value)).toEqual(
    expect.arrayContaining([
      "Answers to the reviewer's questions",
      "Each row answers one question of one data sheet. Of two for the same question, the lower counts.",
    ]),
  );
  expect(answersSheet().isProtected).toBe(true);
  expect(answersSheet().name).toBe("Answers to checks");
});

test("new rows are added after the last row with anything in it; the rows above stay as they are", () => {
  const names = ["a", "b"];
  const values = { a: [["x"], [""], [""], [""]], b: [["y"], ["z"], [""], [""]] };
  expect(appended(values, names, [["1", 2]])).toEqual({ a: [null, null, "1"], b: [null, null, 2] });
  expect(appended({ a: [[""]], b: [[""]] }, names, [["1", "2"]])).toEqual({ a: ["1"], b: ["2"] });
});

test("rows that do not fit are refused, and rows that fill the sheet are not", () => {
  const values = { a: [["x"], [""], [""]] };
  expect(appended(values, ["a"], [["1"], ["2"]])).toEqual({ a: [null, "1", "2"] });
  expect(appended(values, ["a"], [["1"], ["2"], ["3"]])).toBeUndefined();
  expect(appended({}, ["a"], [["1"]])).toBeUndefined();
});

test("of several answers to a question the latest counts; it is stale if the finding has changed since", () => {
  const check = nth(CHECKS, 4);
  const finding = { check, answer: { status: "explain", sentence: say`w0 differs` } } as const;
  const { id } = check;
  const given = [one({ id }), one({ id, reason: "later" }), one({ id, sheet: "BH2" }), one({ id: "Q99" })];
  expect(answerTo(given, "BH1", finding)).toEqual({ given: one({ id, reason: "later" }), stale: false });
  expect(answerTo(given, "BH1", { check, answer: { status: "explain", sentence: say`it differs more` } })?.stale).toBe(
    true,
  );
  expect(answerTo(given, "BH3", finding)).toBeUndefined();
});

test("an answer whose finding was kept in German, or on a sheet of an older program in English, is not stale", () => {
  const check = nth(CHECKS, 4);
  const finding = { check, answer: { status: "explain", sentence: say`w0 differs` } } as const;
  const before = translateBy((message, language) => (language === "de" ? "w0 weicht ab" : english(message)));
  try {
    expect(asKept("de", finding.answer.sentence)).toBe("w0 weicht ab");
    for (const [found, stale] of [
      ["w0 weicht ab", false],
      ["w0 differs", false],
      ["w0 fehlt", true],
    ] as const)
      expect(answerTo([one({ id: check.id, found })], "BH1", finding)?.stale).toBe(stale);
  } finally {
    translateBy(before);
  }
});

test("columns of different lengths: what a short one lacks is blank", () => {
  const answers: NamedValues = {
    answer_sheet: [["BH1"], ["BH1"]],
    answer_check: [["Q05"], ["Q06"]],
    answer_by: [["AB"]],
  };
  expect(readAnswers(answers).map(({ by }) => by)).toEqual(["AB", ""]);
  const names = ["answer_sheet", "answer_by", "answer_when"];
  const blank: NamedValues = { answer_sheet: [["BH1"], [""], [""]], answer_by: [["AB"]] };
  expect(appended(blank, names, [["BH2", "CD", "today"]])).toEqual({
    answer_sheet: [null, "BH2"],
    answer_by: [null, "CD"],
    answer_when: [null, "today"],
  });
});
