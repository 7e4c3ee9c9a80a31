/** The cells of an answer: of its question, of its message, and of the load that the message names. */
import { CHECKS, type Answered } from "../../src/checks";
import { cannotAsk, gravest, type Answer } from "../../src/checks/check";
import { cellsOf } from "../../src/checks/whereabouts";
import { cellNamed, nameOf, RECORD_NAMES } from "../../src/record/record";
import { listed, namedIn, say, type Message } from "../../src/reduction/message";
import type { SheetName } from "../../src/workbook/port";

const column = (name: string, col: number, rows = 12): SheetName => ({
  name,
  scope: "sheet",
  place: { row: 20, col, rows, cols: 1 },
});
const NAMES = [
  column("load_number", 0),
  column("load_stress", 1),
  column("load_mass", 2),
  column("lever_ratio", 3, 1),
  column("readings_01", 4),
  column("readings_05", 5),
  column("times_05", 6),
];
/** A person put a row in above the fifth load. */
const VALUES = { load_number: [1, 2, 3, 4, "", 5, 6].map((number) => [number]) };

const load = (number: number): Message => ({ ...say`load ${number}`, load: number });
const said = (id: string, sentence: Message): Answered => ({
  check: CHECKS.find((check) => check.id === id)!,
  answer: { status: "stop", sentence },
});
const addresses = (id: string, sentence: Message): string[] =>
  cellsOf(said(id, sentence), NAMES, VALUES).map(({ address }) => address);

test("of a column, the cell of the load that the message names is given, found by the load number", () => {
  expect(addresses("Q19", say`${load(5)}: too heavy`)).toEqual(["B26", "C26", "D21"]);
  expect(addresses("Q19", say`all of them`)).toEqual(["B21", "C21", "D21"]);
});

test("a missing stress of inundation leads to the mark that gives it, in every question about missing cells alone", () => {
  const result = column("inundation_stress", 7, 1);
  const [seating, marks] = [column("seating_mark", 8, 1), column("load_mark", 9)];
  const leads = (id: string, names: readonly SheetName[]): string[] =>
    cellsOf(said(id, say`${cellNamed("inundation_stress")}`), names, VALUES).map(({ address }) => address);
  expect(leads("Q63", [result, seating, marks])).toEqual(["I21"]);
  expect(leads("Q63", [result, marks])).toEqual(["J21"]);
  expect(leads("Q63", [result])).toEqual(["H21"]);
  expect(leads("Q19", [result, seating, marks])).toEqual(["H21"]);
});

test("a cell that a question and its answer name twice is given once", () => {
  const seating = column("seating_mark", 8, 1);
  const sentence = say`${cellNamed("inundation_stress")}, ${cellNamed("seating_mark")}`;
  const given = cellsOf(said("Q63", sentence), [seating], VALUES);
  expect(given.map(({ address }) => address)).toEqual(["I21"]);
});

test("the readings of a load are given from their first row", () => {
  expect(addresses("Q23", say`${load(5)}: back`)).toEqual(["F21"]);
  expect(addresses("Q23", say`no load`)).toEqual(["E21"]);
});

test("the row of the readings that the answer is about is given", () => {
  const { check, answer } = said("Q23", say`${load(5)}: row 3 goes back`);
  expect(cellsOf({ check, answer: { ...answer, row: 3 } }, NAMES, VALUES)[0]?.address).toBe("F23");
});

test("times are given like readings; a row below the last one is the last one", () => {
  const { check, answer } = said("Q26", say`${load(5)}: a long step`);
  const at = (row: number) =>
    cellsOf({ check, answer: { ...answer, row } }, NAMES, VALUES).map(({ address }) => address);
  expect(at(3)).toEqual(["G23"]);
  expect(at(12)).toEqual(["G32"]);
  expect(at(40)).toEqual(["G32"]);
});

test("a cell that the sheet does not have is left out; a single cell stays the same for every load", () => {
  const needs = say`it needs ${listed([cellNamed("diameter"), cellNamed("lever_ratio")])}`;
  expect(addresses("Q58", say`${load(5)}: ${needs}`)).toEqual(["D21"]);
});

test("cells that the message names are added, wherever they stand in it; a number in a text is not a load", () => {
  const needs = say`it needs ${listed([cellNamed("lever_ratio"), nameOf("load_stress")])}`;
  expect(addresses("Q58", say`${load(2)}: ${needs}`)).toEqual(["D21", "B22"]);
  expect(addresses("Q58", say`load 3 (lever_ratio)`)).toEqual([]);
});

test("the gravest answer of several loads carries their numbers, its own first", () => {
  const of = (status: Answer["status"], number: number) => ({
    load: load(number),
    answer: { status, sentence: say`so` },
  });
  const loadsOf = (...cases: ReturnType<typeof of>[]) => namedIn(gravest(cases).sentence).loads;
  expect(loadsOf(of("pass", 1), of("explain", 2), of("stop", 4), of("stop", 6))).toEqual([4, 6]);
  expect(loadsOf(of("pass", 3), of("pass", 5))).toEqual([3]);
  expect(gravest([], say`none`)).toEqual(cannotAsk(say`none`));
});

test("a record is read from every cell that a question is about, except the cells that a sheet calculates", () => {
  const unread = CHECKS.flatMap(({ about }) => about).filter((name) => !RECORD_NAMES.includes(name));
  expect(unread.filter((name) => name !== "times" && name !== "readings")).toEqual([]);
});
