/** @jest-environment jsdom */
/**
 * The round trips to Excel that the pane costs, on a workbook of 1 and of 40 data sheets, counted by the strict
 * stand-in: to open the pane, to come to each screen, and for actions of a person beside it. The last request of each
 * piece of work only releases what the library kept; it counts too.
 */
import { act, createElement } from "react";
import { createRoot } from "react-dom/client";
import { blankSheet, demoSheet, wettingSeries } from "../../../src/datasheet";
import { Pane } from "../../../src/pane/shell/pane";
import { text } from "../../../src/pane/text";
import { OfficePort } from "../../../src/workbook/office";
import { copyOf } from "../../excel/book/book";
import { StrictExcel } from "../../excel/strict-excel";

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });
Object.assign(globalThis, {
  ResizeObserver: class {
    observe() {}
    unobserve() {}
    disconnect() {}
  },
});
const port = new OfficePort();

/** A workbook with `count` copies of the demonstration sheet. */
async function workbook(count: number): Promise<StrictExcel> {
  const excel = new StrictExcel({ sheets: ["Sheet1"] });
  const plan = demoSheet("SI");
  await port.insertSheet(plan);
  const [, first] = excel.book.sheets;
  for (let number = 2; number <= count; number++) {
    const id = excel.newId("sheet");
    const lead = { ...copyOf(first), id, name: `${first.name} ${number}` };
    lead.names = lead.names.map((one) =>
      one.refers.kind === "cells"
        ? { ...one, refers: { ...one.refers, areas: one.refers.areas.map((area) => ({ ...area, sheet: id })) } }
        : one,
    );
    excel.book.sheets.push(lead);
  }
  return excel;
}

/** Waits until no request to Excel is pending. */
async function quiet(excel: StrictExcel): Promise<void> {
  let before = -1;
  while (before !== excel.trips.length) {
    before = excel.trips.length;
    await act(() => jest.advanceTimersByTimeAsync(700));
  }
}

/** Round trips for actions beside a screen. */
interface Costs {
  /** Trips to come to the screen. */
  readonly open: number;
  /** Trips after a value was typed on the current test. */
  readonly keystroke: number;
  /** Trips after the cursor moved on its sheet. */
  readonly move: number;
}

/** The most trips of each screen, for any number of sheets. */
const MOST: Readonly<Record<string, Costs>> = {
  // The first screen opens with the pane, which asks once for unfinished work, and registers once for the event that the workbook comes to the
  // front.
  next: { open: 8, keystroke: 3, move: 0 },
  sheet: { open: 0, keystroke: 0, move: 0 },
  bench: { open: 3, keystroke: 3, move: 0 },
  summary: { open: 2, keystroke: 0, move: 0 },
  results: { open: 3, keystroke: 3, move: 0 },
  plot: { open: 0, keystroke: 3, move: 0 },
  review: { open: 0, keystroke: 3, move: 0 },
  byHand: { open: 0, keystroke: 3, move: 0 },
  checks: { open: 4, keystroke: 4, move: 0 },
  report: { open: 4, keystroke: 4, move: 0 },
  readings: { open: 5, keystroke: 3, move: 0 },
  about: { open: 0, keystroke: 0, move: 0 },
};

/** Trips beside all screens. */
const ELSEWHERE = { front: 4, rangeOpen: 5, rangeMove: 3, rangeKeystroke: 3 };

/** Bytes sent and received for a keystroke on 40 data sheets, over those on one. */
const MOST_BYTES = 1.05;

test("a keystroke and a move of the cursor cost as little on 40 data sheets as on one", async () => {
  const found: Record<number, Record<string, unknown>> = {};
  const bytes: Record<number, number> = {};
  for (const count of [1, 40]) {
    const excel = await workbook(count);
    const { name } = excel.book.sheets[1];
    jest.useFakeTimers();
    excel.select(name, "A1");
    await quiet(excel);
    const place = document.body.appendChild(document.createElement("div"));
    const root = createRoot(place);
    const trips = async (work: () => unknown): Promise<number> => {
      const before = excel.trips.length;
      await act(async () => void (await work()));
      await quiet(excel);
      return excel.trips.length - before;
    };
    const press = (what: string): Promise<number> =>
      trips(() =>
        [...place.querySelectorAll<HTMLElement>("label")].find(({ textContent }) => textContent === what)!.click(),
      );
    const show = (screen: string): Promise<number> =>
      trips(() => place.querySelector<HTMLElement>(`#tab-${screen}`)!.click());
    let typed = 0;
    const keystroke = (): Promise<number> =>
      trips(() => {
        excel.sheet(name).put("A200", [[++typed]]);
        excel.tell("changed");
        excel.tell("calculated");
      });
    const move = (): Promise<number> => trips(() => excel.select(name, typed % 2 ? "C3" : "D4"));

    const costs: Record<string, unknown> = {};
    costs.next = {
      open: await trips(() =>
        root.render(createElement(Pane, { port, sheets: { blankSheet, demoSheet, wettingSeries }, look: "light" })),
      ),
      keystroke: await keystroke(),
      move: await move(),
    };
    for (const screen of Object.keys(MOST).filter((one) => one !== "next")) {
      const open = await show(screen);
      const before = excel.trips.length;
      const key = await keystroke();
      if (screen === "results")
        bytes[count] = excel.trips.slice(before).reduce((sum, { sent, received }) => sum + sent + received, 0);
      costs[screen] = { open, keystroke: key, move: await move() };
    }
    await show("plot");
    const rangeOpen = await press(text.plot.sources.range);
    excel.select(name, "A1:B4");
    await quiet(excel);
    costs.elsewhere = { rangeOpen, rangeMove: await move(), rangeKeystroke: await keystroke() };
    await press(text.plot.sources.sheet);
    await show("results");
    const copy = excel.copySheet(name, "Another test");
    await quiet(excel);
    costs.elsewhere = { ...(costs.elsewhere as object), front: await trips(() => excel.select(copy.sheet.name, "A1")) };
    expect(excel.faults).toEqual([]);
    await act(async () => root.unmount());
    await quiet(excel);
    place.remove();
    jest.useRealTimers();
    found[count] = costs;
  }
  expect(found[40]).toEqual(found[1]);
  expect(found[1]).toEqual({ ...MOST, elsewhere: ELSEWHERE });
  expect(bytes[40] / bytes[1]).toBeLessThan(MOST_BYTES);
});
