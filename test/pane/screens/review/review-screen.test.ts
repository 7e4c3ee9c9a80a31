/** @jest-environment jsdom */
import { act } from "react";
import { PICK_COLUMNS } from "../../../../src/record/picks";
import { ReviewScreen } from "../../../../src/pane/screens/review/review-screen";
import { CATALOGUES } from "../../../../src/pane/text";
import { coefficientOfConsolidation, T50 } from "../../../../src/reduction/increment/cv";
import { reduceIncrement } from "../../../../src/reduction/increment/reduce";
import { convert } from "../../../../src/reduction/units";
import type { CellValue } from "../../../../src/workbook/port";
import { SCENARIOS } from "../../../generators/time-curves";
import { FAILURES, FakePort } from "../../fake-port";
import { inPane } from "../../in-pane";
import { onPage } from "../../on-page";
import { english } from "../../../../src/reduction/message";

const words = CATALOGUES.en.review;
const SHEET = "Demonstration";
const curves = [5, 6].map((seed) => SCENARIOS.find(({ name }) => name === "dial of 0.0001 in")!.make(seed));
const column = (length: number, values: readonly CellValue[] = []): CellValue[] =>
  Array.from({ length }, (_, index) => values[index] ?? "");

const sheet = (): Record<string, CellValue[]> => ({
  ...Object.fromEntries(PICK_COLUMNS.map((name) => [name, column(4)])),
  length_unit: ["mm"],
  stress_unit: ["kPa"],
  cv_unit: ["m2/yr"],
  drainage: ["double"],
  time_method: ["log time"],
  load_stress: column(24, [50, 100]),
  height_middle: column(
    24,
    curves.map(({ height }) => height),
  ),
  cv_log_time: column(24, [1.5, 2.5]),
  times_01: column(40, curves[0].times),
  readings_01: column(40, curves[0].readings),
  times_02: column(40, curves[1].times),
  readings_02: column(40, curves[1].readings),
});

const { place, settle, show: showOnPage, clear } = onPage("real");
let port: FakePort;

async function show(columns = sheet()): Promise<void> {
  port = new FakePort();
  port.onlySheets(SHEET);
  port.lay(SHEET, columns);
  await showOnPage(inPane(ReviewScreen, port));
}

const columns = () => port.columns(SHEET);
const rows = () =>
  columns().pick_load.flatMap((load, index) =>
    load === "" ? [] : [PICK_COLUMNS.slice(0, 6).map((name) => columns()[name][index])],
  );
function one<T extends Element>(selector: string, text?: string): T {
  const found = [...place.querySelectorAll<T>(selector)].find(
    ({ textContent }) => text === undefined || textContent === text,
  );
  if (!found) throw new Error(`there is no ${selector} "${text ?? ""}" in: ${place.textContent}`);
  return found;
}
const press = async (name: string): Promise<void> => {
  await act(async () => one<HTMLButtonElement>("button", name).click());
  await settle();
};
const handle = (pick: string) => one<HTMLElement>(`[data-pick="${pick}"]`);
const valueOf = (pick: string) => Number(handle(pick).getAttribute("aria-valuenow"));
const key = (pick: string, name: string, shiftKey = false) =>
  act(
    async () => void handle(pick).dispatchEvent(new KeyboardEvent("keydown", { key: name, shiftKey, bubbles: true })),
  );
const field = (label: string) => {
  const id = one<HTMLLabelElement>("label", label).htmlFor;
  return document.getElementById(id) as HTMLInputElement;
};
async function type(label: string, typed: string): Promise<void> {
  const input = field(label);
  const set = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(input), "value")!.set!;
  await act(async () => {
    set.call(input, typed);
    input.dispatchEvent(new Event("input", { bubbles: true }));
  });
}
const status = (): string =>
  [...place.querySelectorAll('[role="status"], [role="alert"]')].map(({ textContent }) => textContent).join(" ");
const cvShown = (): number => Number(one<HTMLElement>("tr.main td").textContent);
const cvByHand = (picks: Record<string, number>, load = 0): number => {
  const { times, readings, height } = curves[load];
  const { logTime } = reduceIncrement(times, readings, picks);
  if (!logTime.ok) throw new Error(english(logTime.reason));
  return convert(coefficientOfConsolidation(T50, logTime.value.t50, height, "double"), "cv", "mm2/min", "m2/yr");
};
async function sign(reason = "bedding", by = "AB"): Promise<void> {
  await type(`${words.reason}*`, reason);
  await type(`${words.initials}*`, by);
}

test("shows a load with its construction, the numbers of both methods and cv of the sheet", async () => {
  await show();
  expect(place.querySelector("svg[role=img]")?.getAttribute("aria-label")).toContain("Log of time");
  expect(cvShown()).toBeCloseTo(cvByHand({}), 2);
  expect(place.textContent).toContain("1.5");
  expect(place.textContent).toContain(words.suggested("log time").slice(0, 10));
  expect(handle("d100").getAttribute("role")).toBe("slider");
  expect(handle("d100").getAttribute("aria-valuetext")).toMatch(/div\., automatic; cv, [\d.]+ m2\/yr$/);
  expect(port.filled).toEqual([]);
});

test("the numbers of both procedures stand side by side, and the plot draws the chosen one", async () => {
  await show();
  const heads = [...place.querySelectorAll("table thead tr:last-child th")].map(({ textContent }) => textContent);
  expect(heads).toEqual(["aided *", "drawn", "aided", "drawn"]);
  const shown = [...place.querySelectorAll("table tbody tr:first-child td")].map(
    ({ textContent }) => textContent ?? "",
  );
  const d0 = shown.map(Number);
  // The readings come in steps of 0.001.
  for (const value of shown) expect(value).toMatch(/^\d\.\d{4}$/);
  expect(d0.every((value) => Number.isFinite(value))).toBe(true);
  const before = valueOf("d100");
  await act(async () => one<HTMLInputElement>('input[type=radio][value="drawn"]').click());
  expect(valueOf("d100")).not.toBe(before);
  expect(port.filled).toEqual([]);
});

test("while a handle moves, cv, its value before and the change are shown at the foot", async () => {
  await show();
  const foot = () => one<HTMLElement>(`[role=group][aria-label="${words.inSight}"]`).textContent;
  expect(foot()).toMatch(/^cv, log time[\d.]+ m2\/yr$/);
  const before = cvShown();
  await key("d100", "ArrowUp", true);
  expect(foot()).toContain(words.cvBefore(String(before), "").trim());
  expect(foot()).toMatch(/\([+−][\d.]+ %\)d100: [\d.]+ → [\d.]+$/);
  expect(place.querySelector("figure")!.textContent).toContain("Load 1, 50 kPa: Log of time");
});

test("the pair that gives d0 and the ends of the tangent can be moved too, and are saved under their names", async () => {
  await show();
  await key("tangent_to", "ArrowRight");
  await key("pair_at", "ArrowRight");
  await sign("bends at the middle");
  await press(words.save(SHEET));
  expect(rows().map(([, of]) => of)).toEqual(["4:1 pair at", "tangent to"]);
});

test("the next load is a step away; the compression curve follows the last load, and nothing follows the curve", async () => {
  await show();
  await act(async () => one<HTMLButtonElement>(`button[aria-label="${words.next}"]`).click());
  expect(one<HTMLSelectElement>("select").value).toBe("2");
  expect(cvShown()).toBeCloseTo(cvByHand({}, 1), 2);
  await act(async () => one<HTMLButtonElement>(`button[aria-label="${words.next}"]`).click());
  await settle();
  expect(one<HTMLSelectElement>("select").value).toBe("curve");
  // This sheet has no heights: the curve says what it needs.
  expect(status()).toMatch(/It needs/);
  expect(one(`button[aria-label="${words.next}"]`).getAttribute("aria-disabled")).toBe("true");
});

test("arrow keys move a pick, and cv follows before anything is written", async () => {
  await show();
  const before = valueOf("d100");
  await key("d100", "ArrowUp", true);
  await key("d100", "ArrowUp", true);
  expect(valueOf("d100")).toBeLessThan(before);
  expect(cvShown()).toBeCloseTo(cvByHand({ d100: valueOf("d100") }), 2);
  expect(cvShown()).toBeGreaterThan(cvByHand({}));
  expect(handle("d100").getAttribute("aria-valuetext")).toMatch(/by hand; cv, /);
  expect(port.filled).toEqual([]);
  await key("d100", "Escape");
  expect(valueOf("d100")).toBe(before);
  expect(place.textContent).toContain(words.nothingChanged);
});

test("a pointer that drags a handle picks the point below it", async () => {
  await show();
  const before = valueOf("d100");
  const grip = handle("d100");
  grip.setPointerCapture = () => undefined;
  const at = (name: string, clientY: number) =>
    act(async () => void grip.dispatchEvent(new MouseEvent(name, { clientX: 0, clientY, button: 0, bubbles: true })));
  await at("pointermove", 40);
  expect(valueOf("d100")).toBe(before);
  await at("pointerdown", 0);
  await at("pointermove", 200);
  const dragged = valueOf("d100");
  expect(dragged).not.toBe(before);
  await at("pointerup", 200);
  await at("pointermove", 100);
  expect(valueOf("d100")).toBe(dragged);
});

test("a typed pick is saved only with a reason and initials, with the value before", async () => {
  await show();
  const automatic = valueOf("d100");
  const wanted = Number((automatic * 0.99).toFixed(3));
  await type(`d100 (${words.readingUnit})`, String(wanted).replace(".", ","));
  await press(words.save(SHEET));
  expect(status()).toContain(words.needsReason);
  expect(port.filled).toEqual([]);
  await sign();
  await press(words.save(SHEET));
  expect(rows()).toEqual([[1, "d100", expect.closeTo(automatic, 4), wanted, "bedding", "AB"]]);
  expect(columns().pick_when[0]).toBeGreaterThan(46_000);
  expect(port.filled).toHaveLength(1);
  expect(status()).toContain(words.savedTelling(1, SHEET));
  expect(place.textContent).toContain(words.nothingChanged);
  expect(place.textContent).toContain("bedding; AB; ");
  expect(one<HTMLSelectElement>("select").textContent).toContain(words.loadMarks.picked);
});

test("initials stay for the next change, the reason does not", async () => {
  await show();
  await key("d0", "ArrowDown");
  await sign("first", "XY");
  await press(words.save(SHEET));
  await key("d100", "ArrowDown");
  expect(field(`${words.initials}*`).value).toBe("XY");
  expect(field(`${words.reason}*`).value).toBe("");
});

test("going back to automatic is a change like any other", async () => {
  const columns = sheet();
  Object.assign(columns, {
    pick_load: column(4, [1]),
    pick_of: column(4, ["d100"]),
    pick_after: column(4, [curves[0].truth.d100 + 0.001]),
    pick_before: column(4, [curves[0].truth.d100]),
    pick_reason: column(4, ["kink"]),
    pick_by: column(4, ["CD"]),
  });
  await show(columns);
  expect(valueOf("d100")).toBe(curves[0].truth.d100 + 0.001);
  await act(async () => one<HTMLButtonElement>(`button[aria-label="${words.backToAutomaticOf("d100")}"]`).click());
  await sign("kink was a slip");
  await press(words.save(SHEET));
  expect(rows()[1]).toEqual([1, "d100", expect.any(Number), "automatic", "kink was a slip", "AB"]);
  expect(valueOf("d100")).toBeCloseTo(d100Of(reduceIncrement(curves[0].times, curves[0].readings)), 6);
});
const d100Of = ({ logTime }: ReturnType<typeof reduceIncrement>): number => (logTime.ok ? logTime.value.d100 : NaN);

test("the last change is named before it is cancelled, and only its row is cleared", async () => {
  const columns = sheet();
  Object.assign(columns, {
    pick_load: column(4, [1, 2]),
    pick_of: column(4, ["d0", "cv by"]),
    pick_after: column(4, [0.03, "root time"]),
    pick_before: column(4, [0.02, "log time"]),
    pick_reason: column(4, ["bedding", "no tail"]),
    pick_by: column(4, ["CD", "EF"]),
  });
  await show(columns);
  await press(words.undo);
  expect(status()).toContain("row 2");
  expect(status()).toContain("Load 2, 100 kPa");
  expect(status()).toContain("log time → root time");
  expect(port.filled).toEqual([]);
  await press(words.undoNo);
  await press(words.undo);
  await press(words.undoYes);
  expect(rows()).toEqual([[1, "d0", 0.02, 0.03, "bedding", "CD"]]);
  expect(port.filled).toHaveLength(1);
  expect(status()).toContain(words.undone(2, 2, SHEET));
});

test("changes saved together are cancelled together, in one writing", async () => {
  const columns = sheet();
  Object.assign(columns, {
    pick_load: column(5, [1, 2, 2]),
    pick_of: column(5, ["d0", "tail_from", "tail_to"]),
    pick_after: column(5, [0.03, 120, 1440]),
    pick_before: column(5, [0.02, 240, 900]),
    pick_reason: column(5, ["bedding", "late bend", "late bend"]),
    pick_by: column(5, ["EF", "EF", "EF"]),
    pick_when: column(5, [46100.5, 46100.5, 46100.5]),
  });
  await show(columns);
  await press(words.undo);
  expect(status()).toContain("rows 2 to 3");
  await press(words.undoYes);
  expect(rows()).toEqual([[1, "d0", 0.02, 0.03, "bedding", "EF"]]);
  expect(port.filled).toHaveLength(1);
});

test("the method whose cv counts is chosen in the same way", async () => {
  await show();
  const radio = [...place.querySelectorAll<HTMLInputElement>('input[type="radio"]')].filter(
    ({ value }) => value === "root time",
  );
  await act(async () => radio[radio.length - 1].click());
  await sign("tail too short");
  await press(words.save(SHEET));
  expect(rows()).toEqual([[1, "cv by", "log time", "root time", "tail too short", "AB"]]);
});

test("an impossible pick is refused with a sentence, and not saved", async () => {
  await show();
  await type(`d100 (${words.readingUnit})`, "99999");
  expect(status()).toContain(words.refusedPick);
  expect(status()).toMatch(/picked d100 .*outside the readings/);
  await sign();
  await press(words.save(SHEET));
  expect(status()).toContain(words.unusable);
  expect(port.filled).toEqual([]);
  await press(words.discard);
  expect(status()).not.toContain(words.refusedPick);
});

test("a full table says so with the remedy", async () => {
  await show({ ...sheet(), pick_load: column(4, ["", "", "", 2]) });
  await key("d100", "ArrowUp");
  await sign();
  await press(words.save(SHEET));
  expect(status()).toContain(words.full(4));
  expect(port.filled).toEqual([]);
});

test("on a sheet without the table picks can be tried, and the pane says how to get the table", async () => {
  const old = Object.fromEntries(Object.entries(sheet()).filter(([name]) => !name.startsWith("pick_")));
  await show(old);
  expect(status()).toContain(words.noTable(PICK_COLUMNS.join(", ")));
  await key("d100", "ArrowUp", true);
  expect(cvShown()).not.toBeCloseTo(cvByHand({}), 4);
  expect([...place.querySelectorAll("button")].map(({ textContent }) => textContent)).not.toContain(words.save(SHEET));
});

test("a protected sheet, or a table changed in between, gives a sentence; the change stays to be saved", async () => {
  await show();
  await key("d100", "ArrowUp");
  await sign();
  port.failing.fillNames = FAILURES.protected(SHEET);
  await press(words.save(SHEET));
  expect(status()).toContain("it is protected");
  expect(rows()).toEqual([]);
  expect(place.textContent).not.toContain(words.nothingChanged);

  delete port.failing.fillNames;
  port.put(SHEET, "pick_load", 0, 2);
  await type(`${words.reason}*`, "again");
  await press(words.save(SHEET));
  expect(status()).toContain(words.changedMeanwhile);
  expect(port.filled).toEqual([]);
});

test("a workbook without a data sheet, and one without readings, say what to do", async () => {
  await show({ ring_mass: [74] });
  expect(place.textContent).toContain(words.empty);
  await clear();
  await show({ times_01: column(40), readings_01: column(40) });
  expect(place.textContent).toContain(words.noReadings);
});

test("a workbook that cannot be read says so, and can be read again", async () => {
  await show();
  await clear();
  port = new FakePort();
  port.failure = FAILURES.gone(SHEET);
  await showOnPage(inPane(ReviewScreen, port));
  expect(status()).toContain("There is no sheet called");
});

test("every reason of a suggestion is said in both languages", () => {
  for (const { review } of Object.values(CATALOGUES)) {
    expect(review.why.nearer("99 %", "103 %")).toMatch(/99 %.*103 %/);
    expect(review.full(48)).toContain("48");
    expect(review.undoAsk("L", "c", "d", 7, 7)).toContain("7");
    expect(review.undoAsk("L", "c", "d", 7, 8)).toMatch(/7.*8/);
  }
});
