/** @jest-environment jsdom */
/**
 * How many round trips to Excel each screen costs, on a workbook of 1 and of 40 data sheets, counted by the strict stand-in.
 * The last request of each piece of work only lets go of what the library kept; it is counted too.
 */
import { act, createElement, type ComponentType } from "react";
import { createRoot } from "react-dom/client";
import { demoSheet } from "../../../src/datasheet";
import { ByHandScreen } from "../../../src/pane/screens/by-hand/by-hand-screen";
import { ChecksScreen } from "../../../src/pane/screens/checks/checks-screen";
import { PlotScreen } from "../../../src/pane/screens/plots/plot-screen";
import { ReadingsScreen } from "../../../src/pane/screens/readings/readings-screen";
import { ReportScreen } from "../../../src/pane/screens/report/report-screen";
import { ResultsScreen } from "../../../src/pane/screens/results/results-screen";
import { ReviewScreen } from "../../../src/pane/screens/review/review-screen";
import { OfficePort } from "../../../src/workbook/office";
import type { WorkbookPort } from "../../../src/workbook/port";
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
jest.setTimeout(120_000);

const port = new OfficePort();

const sleep = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** A workbook of so many copies of the demonstration sheet. */
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

/** Waits until Excel is asked nothing more. */
async function quiet(excel: StrictExcel): Promise<void> {
  let before = -1;
  while (before !== excel.trips.length) {
    before = excel.trips.length;
    await act(async () => sleep(500));
  }
}

const SCREENS: readonly [string, ComponentType<{ port: WorkbookPort }>, number][] = [
  ["Results", ResultsScreen, 9],
  ["Plot", PlotScreen, 8],
  ["Review", ReviewScreen, 8],
  ["Checks", ChecksScreen, 20],
  ["By hand", ByHandScreen, 8],
  ["Report", ReportScreen, 20],
  ["Readings", ReadingsScreen, 8],
];

/** Trips to open a screen, and to follow one changed cell. */
async function costs(excel: StrictExcel, screen: ComponentType<{ port: WorkbookPort }>) {
  const place = document.body.appendChild(document.createElement("div"));
  const root = createRoot(place);
  const begun = excel.trips.length;
  await act(async () => root.render(createElement(screen, { port })));
  await quiet(excel);
  const open = excel.trips.length - begun;
  excel.tell("changed");
  await quiet(excel);
  const follow = excel.trips.length - begun - open;
  await act(async () => root.unmount());
  await sleep(50);
  place.remove();
  return { open, follow };
}

test("each screen costs as many round trips on 40 data sheets as on one", async () => {
  const found: Record<string, Record<number, { open: number; follow: number }>> = {};
  for (const count of [1, 40]) {
    const excel = await workbook(count);
    await quiet(excel);
    for (const [name, screen] of SCREENS) (found[name] ??= {})[count] = await costs(excel, screen);
    expect(excel.faults).toEqual([]);
  }
  for (const [name, , most] of SCREENS) {
    expect([name, found[name][40]]).toEqual([name, found[name][1]]);
    expect(found[name][1].open).toBeLessThanOrEqual(most);
    expect(found[name][1].open).toBeGreaterThan(0);
    expect(found[name][1].follow).toBeLessThanOrEqual(found[name][1].open);
  }
});
