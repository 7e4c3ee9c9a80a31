/** Looks at what a person reads in the made-up language: the data sheet, the report, and every screen of the pane. */
import { act, createElement } from "react";
import { createRoot } from "react-dom/client";
import { blankSheet, demoSheet, FIELDS, firmLayout, wettingSeries, workings } from "../../../src/datasheet";
import { WORKING_NAMES } from "../../../src/specification/placed-formulas";
import { isIn } from "../../../src/workbook/lists";
import { inOneLanguage, speakOfSheet } from "../../../src/pane/live/sheet-language";
import { Pane } from "../../../src/pane/shell/pane";
import { runChecks } from "../../../src/checks";
import { readRecord, RECORD_NAMES } from "../../../src/record/record";
import { COLUMNS } from "../../../src/report/page/page";
import { reportSheet } from "../../../src/report/report";
import { choices } from "../../../src/specification/text/de/choices";
import type { Box, SheetName, SheetPlan } from "../../../src/workbook/port";
import { calculate } from "../../datasheet/sheet-in-engine";
import { englishWords } from "../../datasheet/german/english-words";
import { FakePort } from "../../pane/fake-port";
import { outside } from "./brackets";

const LANGUAGE = "nl" as never;

/** What every language repeats: names of languages and of paper, and the names of cells for formulas, behind their labels. */
const REPEATED = /\b(?:English|Deutsch|Letter)\b| \(\w+\)/g;

/** What a formula asks a function for, in English on every sheet. */
const ASKED = "meets the laboratory line";

const left = (texts: readonly string[]): string[] => [
  ...new Set(texts.filter((text) => englishWords(outside(text).replace(REPEATED, "")).length > 0)),
];

/**
 * The sentences that a formula shows. Words without a space are compared, or passed to a function; words of lists stand in their cells,
 * and formulas compare them with those of every language.
 */
const quotedIn = (formula: string): string[] =>
  [...formula.matchAll(/([=<>])?"((?:[^"]|"")*)"/g)].flatMap(([, compared, text = ""]) =>
    compared || !text.trim().includes(" ") || text in choices || text === ASKED ? [] : [text],
  );

const textsOf = ({ name, cells, entries = [], charts = [], footer = "" }: SheetPlan): string[] => [
  name,
  footer,
  ...cells.flatMap(({ value, note = "", choices = [], formula = "" }) => [
    ...(typeof value === "string" ? [value] : []),
    note,
    ...choices,
    ...quotedIn(formula),
  ]),
  ...entries.map(({ message }) => message),
  ...charts.flatMap(({ title, x, y, series }) => [title, x.label, y.label, ...series.map(({ name: one }) => one)]),
];

/** The texts of a report, column by column: a paragraph goes on in the cell below, and so do its brackets. */
const textsOfReport = ({ cells, ...plan }: SheetPlan): string[] => {
  const lines = [...cells]
    .sort((a, b) => a.col - b.col || a.row - b.row)
    .map(({ value, formula = "" }) => (typeof value === "string" ? value : quotedIn(formula).join("")));
  return [...textsOf({ ...plan, cells: [] }), ...outside(lines.join("\n")).split("\n")];
};

/** What a person reads of an element: its texts, and the names that a screen reader says. */
const readIn = (place: Element): string[] =>
  [...place.querySelectorAll("*")].flatMap((element) => [
    ...[...element.childNodes].flatMap((node) => (node.nodeType === 3 ? [node.textContent ?? ""] : [])),
    ...["aria-label", "title", "placeholder", "alt"].flatMap((name) => element.getAttribute(name) ?? []),
  ]);

async function screens(port: FakePort): Promise<Record<string, string[]>> {
  const place = document.body.appendChild(document.createElement("div"));
  const root = createRoot(place);
  const rest = async (): Promise<void> => {
    for (let turn = 0; turn < 4; turn++) await act(() => new Promise((resolve) => setTimeout(resolve, 30)));
  };
  await act(async () =>
    root.render(createElement(Pane, { port, sheets: { blankSheet, demoSheet, wettingSeries }, look: "light" })),
  );
  await rest();
  const found: Record<string, string[]> = {};
  for (const tab of place.querySelectorAll<HTMLElement>('[role="tab"]')) {
    await act(async () => tab.click());
    await rest();
    found[tab.textContent ?? ""] = readIn(place);
  }
  return found;
}

/** A firm's own sheet that has cells for its inputs only: the results that get cells and formulas, and those that cannot have one. */
function onOwnLayout(plan: SheetPlan): { readonly laidOut: string[]; readonly without: string[] } {
  const inputs = new Set(["load_number", ...FIELDS.flatMap(({ kind, name }) => (kind === "input" ? [name] : []))]);
  const names = Object.entries(plan.names).flatMap(([name, place]): SheetName[] =>
    inputs.has(name) ? [{ name, scope: "sheet", place }] : [],
  );
  const { namings } = workings(names, {}, { row: 3000, col: 12_000, rows: 1, cols: 1 }, LANGUAGE);
  const all = [...names, ...namings.map(({ name, box }): SheetName => ({ name, scope: "sheet", place: box }))];
  const { unwritten, waiting } = firmLayout(
    all,
    {},
    Object.fromEntries(WORKING_NAMES.map((name) => [name, []])),
    LANGUAGE,
  );
  const isWritten = ({ box }: { readonly box: Box }) => unwritten.some((cell) => isIn(cell, box));
  return {
    laidOut: namings.filter(isWritten).map(({ name }) => name),
    without: waiting.map(({ name }) => name),
  };
}

export async function leftByPlace(): Promise<{
  left: Record<string, string[]>;
  seen: Record<string, number>;
  ownLayout: { readonly laidOut: string[]; readonly without: string[] };
}> {
  speakOfSheet(LANGUAGE);
  const plan = demoSheet("SI", LANGUAGE);
  const calculated = await calculate(plan);
  const port = new FakePort();
  const sheet = await port.insertSheet(plan);
  const { cells } = port.sheet(sheet);
  for (const [address, value] of calculated.values) cells.set(address, { ...cells.get(address), value });
  port.tell("values");
  const values = await port.readNames(sheet, RECORD_NAMES);
  const record = readRecord(values);
  const inWords = inOneLanguage(LANGUAGE);
  const report = reportSheet({
    ...{ sheet, names: await port.listNames(sheet), values, record, answered: runChecks(record), paper: "A4" },
    ...{ preparedBy: "AB", now: new Date(2031, 2, 21), language: LANGUAGE, inWords },
  }).plan;
  const shown = [...calculated.values.values()].filter((value) => typeof value === "string");
  const places = {
    "blank sheet": textsOf(blankSheet("US", { language: LANGUAGE })),
    "data sheet": [...textsOf(plan), ...shown],
    report: textsOfReport({ ...report, cells: report.cells.filter(({ col }) => col < COLUMNS) }),
    ...(await screens(port)),
  };
  return {
    ownLayout: onOwnLayout(blankSheet("SI", { language: LANGUAGE })),
    left: Object.fromEntries(Object.entries(places).map(([place, texts]) => [place, left(texts)])),
    seen: Object.fromEntries(Object.entries(places).map(([place, texts]) => [place, texts.length])),
  };
}
