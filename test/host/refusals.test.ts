/** @jest-environment jsdom */
/** The entries that the sheet did not take, at the head of the page. */
import { makeRefusals } from "../../src/host/refusals";
import { say, verbatim } from "../../src/reduction/message";

let list: HTMLElement;
let refusals: ReturnType<typeof makeRefusals>;
/** What the cells hold. */
let cells: Record<string, string>;
const left = jest.fn();

beforeEach(() => {
  list = document.createElement("ul");
  document.body.replaceChildren(list);
  refusals = makeRefusals(list, left);
  cells = {};
  left.mockClear();
});

afterAll(() => document.body.replaceChildren());

const refuse = (cell: string, why = "was not changed"): void => {
  const before = cells[cell];
  refusals.add(say`${verbatim(cell)} ${verbatim(why)}`, { cells: cell, isAsItWas: () => cells[cell] === before });
};
const lines = (): string[] => [...list.children].map(({ textContent }) => textContent);
const dismiss = (at: number): void => list.querySelectorAll("button")[at]!.click();

test("a refusal stays while other cells change, and goes when its cell does", () => {
  refuse("M12");
  cells.M13 = "5";
  refusals.look();
  expect(lines()).toEqual(["M12 was not changed Dismiss"]);
  cells.M12 = "5";
  refusals.look();
  expect(lines()).toEqual([]);
});

test("the newest stands first, three at most, and an older one follows when one goes", () => {
  ["M1", "M2", "M3", "M4", "M5"].forEach((cell) => refuse(cell));
  const named = (): string[] => lines().map((line) => line.replace(/ was not changed Dismiss/, ""));
  expect(named()).toEqual(["M5", "M4", "M3", "2 older entries were not taken."]);
  cells.M4 = "1";
  refusals.look();
  expect(named()).toEqual(["M5", "M3", "M2", "1 older entry was not taken."]);
  dismiss(0);
  expect(named()).toEqual(["M3", "M2", "M1"]);
});

test("a later refusal of the same cell takes the place of the older one", () => {
  refuse("M1");
  refuse("M2");
  refuse("M1", "must be a number");
  expect(lines()).toEqual(["M1 must be a number Dismiss", "M2 was not changed Dismiss"]);
});

test("a line that stays is not put in anew, which a screen reader would read again", () => {
  refuse("M1");
  const [first] = list.children;
  const added: Node[] = [];
  const observer = new MutationObserver(() => undefined);
  observer.observe(list, { childList: true });
  refuse("M2");
  observer.takeRecords().forEach(({ addedNodes }) => added.push(...addedNodes));
  expect(added).toHaveLength(1);
  expect(list.children[1]).toBe(first);
});

test("each is dismissed by a button that names it; the focus goes to the next one, and from the last to the sheet", () => {
  refuse("M1");
  refuse("M2");
  const names = [...list.querySelectorAll("button")].map((button) => button.getAttribute("aria-label"));
  expect(names).toEqual(["Dismiss: M2 was not changed", "Dismiss: M1 was not changed"]);
  dismiss(0);
  expect(document.activeElement?.getAttribute("aria-label")).toBe("Dismiss: M1 was not changed");
  expect(left).not.toHaveBeenCalled();
  dismiss(0);
  expect(left).toHaveBeenCalledTimes(1);
});
