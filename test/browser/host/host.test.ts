import { readFileSync } from "node:fs";
import path from "node:path";
import { isDeepStrictEqual } from "node:util";
import type { Page } from "playwright-core";
import { complaintsOf } from "../../ooxml/complaints";
import {
  clickCell,
  fileOf,
  placeOf,
  readNames,
  sheetMade,
  sheetNames,
  showSheet,
  takePicture,
  typeInCell,
  valuesOf,
  withBrowser,
  type HostPage,
} from "../page";

const DEMO = "Demonstration";
const ERROR = /^#[A-Z]/;

interface Everything {
  readonly sheets: Record<string, Record<string, { value: unknown; formula: string; choices?: string[] }>>;
  readonly names: Record<string, string>;
}

/** Everything that a file must keep: every value, formula, shown text and list of choices, and every name. */
async function everything(page: Page): Promise<Everything> {
  // As one text: the browser hands over thousands of objects far more slowly.
  const text = await page.evaluate(() => {
    const { model } = (window as any).clayledger.port.workbook;
    const { getters } = model;
    const sheets = getters.getSheetIds().map((sheetId: string) => {
      const cells: Record<string, unknown> = {};
      for (const { id } of Object.values<any>(getters.getCells(sheetId))) {
        const position = getters.getCellPosition(id);
        const { value, formattedValue } = getters.getEvaluatedCell(position);
        const text = getters.getCellText(position, { showFormula: true });
        const choices = getters.getValidationRuleForCell(position)?.criterion.values;
        if (text === "" && !choices) continue;
        const formula = text.startsWith("=") ? text : "";
        cells[`${position.col},${position.row}`] = { value: value ?? "", formattedValue, formula, choices };
      }
      return [getters.getSheetName(sheetId), cells];
    });
    const names = getters.getNamedRanges().map(({ name, range }: any) => [name, getters.getRangeString(range)]);
    return JSON.stringify({ sheets: Object.fromEntries(sheets), names: Object.fromEntries(names) });
  });
  return JSON.parse(text) as Everything;
}

/** Jest compares cell by cell only what differs: it takes seconds for a workbook. */
function expectSame(found: Everything, expected: Everything): void {
  if (!isDeepStrictEqual(found, expected)) expect(found).toEqual(expected);
}

/** The cells of a sheet that show an error. */
async function errorsOf(page: Page, sheet: string): Promise<unknown[]> {
  const { sheets } = await everything(page);
  return Object.entries(sheets[sheet]).filter(([, { value }]) => typeof value === "string" && ERROR.test(value));
}

const cellAddress = ({ col, row }: { col: number; row: number }) => `${String.fromCharCode(65 + col)}${row + 1}`;

const value = async (page: Page, sheet: string, cell: string) => (await valuesOf(page, sheet, cell))[0][0];

const named = async (page: Page, sheet: string, name: string) => (await readNames(page, sheet, [name]))[name][0][0];

/** Types into a cell through the engine, as the keyboard does, by name. */
const fill = (page: Page, sheet: string, values: Record<string, number | string>) =>
  page.evaluate(
    ([sheet, values]) => {
      const { model, localNames } = (window as any).clayledger.port.workbook;
      const sheetId = model.getters.getSheetIdByName(sheet);
      for (const [name, content] of Object.entries(values)) {
        const { zone } = model.getters.getNamedRange(localNames.get(sheetId).get(name)).range;
        model.dispatch("UPDATE_CELL", { sheetId, col: zone.left, row: zone.top, content: String(content) });
      }
    },
    [sheet, values] as const,
  );

withBrowser("the page of npm start", (openPage) => {
  let host: HostPage;
  let page: Page;
  /** Other pages by their address: one test compares each before anything is done on it, and a later test works on it. */
  const others = new Map<string, HostPage>();
  const pageWith = async (query: string): Promise<HostPage> => {
    const other = others.get(query) ?? (await openPage(query, { reducedMotion: "no-preference" }));
    others.set(query, other);
    return other;
  };
  /** What a page has that has just started. */
  let atFirst: Awaited<ReturnType<typeof everything>>;

  beforeAll(async () => {
    host = await openPage("", { reducedMotion: "no-preference" });
    page = host.page;
    atFirst = await everything(page);
  });

  afterAll(() => expect(host.complaints).toEqual([]));

  test("opens on the demonstration, reduced, without an error cell or an error message", async () => {
    expect(await page.evaluate(async () => (await (window as any).clayledger.port.selection()).sheet)).toBe(DEMO);
    await takePicture(page, "host");
    expect(await errorsOf(page, DEMO)).toEqual([]);
    expect(await named(page, DEMO, "void_ratio_initial")).toBeGreaterThan(0.3);
    expect(await named(page, DEMO, "preconsolidation_stress")).toBeGreaterThan(10);
    expect(host.complaints).toEqual([]);
  });

  test("a formula typed by keyboard gives its answer", async () => {
    await showSheet(page, "Sheet1");
    await typeInCell(page, "B2", "=CLAY.WATER_CONTENT(12,10)");
    expect(await value(page, "Sheet1", "B2")).toBeCloseTo(0.2, 12);
  });

  test("functions are offered while a person types", async () => {
    await typeInCell(page, "B4", "=CLAY.LOG", "");
    const offered = page.locator(".o-autocomplete-value");
    // The list shrinks with every letter, and the words of the letters before may still stand there.
    await offered.getByText("CLAY.LOG_TIME", { exact: true }).waitFor();
    await takePicture(page, "autocomplete");
    await page.keyboard.press("Escape");
    await offered.first().waitFor({ state: "hidden" });
    await page.keyboard.press("Escape");
    expect(await value(page, "Sheet1", "B4")).toBe("");
  });

  test("a load schedule spills", async () => {
    await typeInCell(page, "D2", "=CLAY.LOAD_SCHEDULE(12.5,800)");
    expect((await valuesOf(page, "Sheet1", "D2:D9")).flat()).toEqual([12.5, 25, 50, 100, 200, 400, 800, ""]);
  });

  test("blocks selected with Ctrl are one selection, side by side; blocks in different rows are refused", async () => {
    await showSheet(page, "Sheet1");
    for (const [cell, text] of Object.entries({ A20: "1", A21: "2", C20: "10", C21: "20" }))
      await typeInCell(page, cell, text);
    const drag = async (from: { x: number; y: number }, to: { x: number; y: number }) => {
      await page.mouse.move(from.x, from.y);
      await page.mouse.down();
      await page.mouse.move(to.x, to.y, { steps: 3 });
      await page.mouse.up();
    };
    const at: Record<string, { x: number; y: number }> = {};
    for (const cell of ["A20", "A21", "C20", "C21", "C22"]) at[cell] = await placeOf(page, cell);
    const pick = async (last: string) => {
      await drag(at.C20, at[last]);
      await page.keyboard.down("Control");
      await drag(at.A20, at.A21);
      await page.keyboard.up("Control");
      return page.evaluate(() => (window as any).clayledger.port.selection().catch((error: Error) => error.message));
    };
    const values = [
      [1, 10],
      [2, 20],
    ];
    expect(await pick("C21")).toEqual({ sheet: "Sheet1", address: "A20:A21,C20:C21", values });
    expect(await pick("C22")).toMatch(/in different rows \(20 to 21, 20 to 22\): pick blocks/);
    await clickCell(page, "A3");
  });

  test("a changed cell recalculates the cells that depend on it", async () => {
    await typeInCell(page, "F2", "12");
    await typeInCell(page, "F3", "=CLAY.WATER_CONTENT(F2,10)");
    expect(await value(page, "Sheet1", "F3")).toBeCloseTo(0.2, 12);
    await typeInCell(page, "F2", "13");
    expect(await value(page, "Sheet1", "F3")).toBeCloseTo(0.3, 12);
  });

  test("keys that come at once replace the old content of a cell, and are taken once each", async () => {
    await typeInCell(page, "F5", "12");
    for (const keys of ["13", "=F2+1", "1.25"]) {
      await clickCell(page, "F5");
      // A busy page gets several keys before it draws again.
      await page.evaluate((keys) => [...keys].forEach((key) => document.execCommand("insertText", false, key)), keys);
      await page.keyboard.press("Enter");
      expect([keys, await value(page, "Sheet1", "F5")]).toEqual([keys, keys.startsWith("=") ? 14 : Number(keys)]);
    }
  });

  test("a click on an entry that Enter has just ended selects its cell, and opens no editor", async () => {
    await typeInCell(page, "F6", "7");
    for (const cell of ["F5", "G5"]) {
      const { x, y } = await placeOf(page, cell);
      await clickCell(page, "F5");
      // A long entry covers the cell beside its own.
      await page.keyboard.type("34 of many words");
      // A busy page gets the key and the click before it draws again.
      await page.evaluate(
        ([x, y]) => {
          const key = { key: "Enter", code: "Enter", bubbles: true, cancelable: true };
          document.activeElement!.dispatchEvent(new KeyboardEvent("keydown", key));
          const at = { clientX: x, clientY: y, bubbles: true, cancelable: true, view: window };
          const events = [
            new PointerEvent("pointerdown", at),
            new PointerEvent("pointerup", at),
            new MouseEvent("click", at),
          ];
          for (const event of events) document.elementFromPoint(x, y)!.dispatchEvent(event);
        },
        [x, y] as const,
      );
      expect((await page.evaluate(() => (window as any).clayledger.port.selection())).address).toBe(cell);
      await page.keyboard.type("9");
      await page.keyboard.press("Enter");
      expect([await value(page, "Sheet1", cell), await value(page, "Sheet1", "F6")]).toEqual([9, 7]);
    }
  });

  test("an error says what to do when the pointer is on it", async () => {
    await typeInCell(page, "H2", "=CLAY.WATER_CONTENT(8,10)");
    expect(await value(page, "Sheet1", "H2")).toBe("#VALUE!");
    const { x, y } = await placeOf(page, "H2");
    await clickCell(page, "J9");
    await page.mouse.move(x, y, { steps: 5 });
    const tip = page.locator(".o-error-tooltip");
    await tip.waitFor();
    expect(await tip.innerText()).toMatch(/dry mass/);
    await takePicture(page, "error-on-hover");
    await typeInCell(page, "H2", "=IFERROR(CLAY.WATER_CONTENT(8,10),-1)");
    expect(await value(page, "Sheet1", "H2")).toBe(-1);
  });

  test("the note of a cell shows when the pointer is on the cell", async () => {
    await showSheet(page, DEMO);
    const note = await page.evaluate(() => {
      const { getters } = (window as any).clayledger.port.workbook.model;
      return getters.getNotes(getters.getActiveSheetId()).find(({ row }: any) => row < 25);
    });
    const { x, y } = await placeOf(page, cellAddress(note));
    await clickCell(page, "A3");
    await page.mouse.move(x, y, { steps: 5 });
    await page.locator(".clayledger-note", { hasText: note.text.slice(0, 20) }).waitFor();
    await takePicture(page, "note-on-hover");
  });

  test.each([1440, 480])(
    "the note of a cell at the right edge of the sheet is as wide as elsewhere, %i px",
    async (width) => {
      const size = page.viewportSize()!;
      await page.setViewportSize({ width, height: 900 });
      await showSheet(page, DEMO);
      // The columns of notes in sight, of which the last is brought to the right edge.
      const notes = await page.evaluate(() => {
        const { model } = (window as any).clayledger.port.workbook;
        const { getters } = model;
        const sheetId = getters.getActiveSheetId();
        const { top, bottom } = getters.getActiveMainViewport();
        const inSight = getters
          .getNotes(sheetId)
          .filter(({ row, col, text }: any) => text.length > 80 && row >= top && row < bottom && col < 16)
          .map(({ row, col, text }: any) => ({ row, col, text }));
        const end = Math.max(...inSight.map(({ col }: any) => getters.getColDimensions(sheetId, col).end));
        const offsetX = Math.max(0, end - getters.getSheetViewDimension().width);
        model.dispatch("SET_VIEWPORT_OFFSET", { offsetX, offsetY: 0 });
        return inSight;
      });
      const last = Math.max(...notes.map(({ col }: { col: number }) => col));
      const note = notes.find(({ col }: { col: number }) => col === last);
      const { x, y } = await placeOf(page, cellAddress(note));
      await page.mouse.move(x, y, { steps: 5 });
      const shown = page.locator(".clayledger-note", { hasText: note.text.slice(0, 20) });
      await shown.waitFor();
      const rect = (await shown.boundingBox())!;
      await takePicture(page, `note-at-edge-${width}`);
      const most = Math.min(320, width === 480 ? 0.42 * width : 0.25 * width);
      expect(rect.x + rect.width).toBeLessThanOrEqual(width);
      // The box around the note cuts nothing of it off.
      const around = (await page.locator(".o-popover", { has: shown }).boundingBox())!;
      expect(around.width).toBeGreaterThanOrEqual(rect.width - 1);
      expect(Math.abs(rect.width - most)).toBeLessThan(40);
      await page.setViewportSize(size);
    },
  );

  test("a click on a cell under a shown note reaches the cell, and what is typed stands there", async () => {
    const [over, under] = ["D20", "I20"];
    const { x, y } = await placeOf(page, over);
    await clickCell(page, over);
    await page.mouse.move(x, y, { steps: 5 });
    await page.locator(".clayledger-note").waitFor();
    const rect = await page.locator(".clayledger-note").boundingBox();
    const place = await placeOf(page, under);
    expect(place.x).toBeLessThan(rect!.x + rect!.width);
    await page.mouse.click(place.x, place.y);
    await page.keyboard.type("186.01", { delay: 20 });
    await page.keyboard.press("Enter");
    expect(await value(page, DEMO, under)).toBe(186.01);
    await page.keyboard.press("Control+z");
  });

  test("a changed reading of the demonstration changes its cv, and undo restores it", async () => {
    const cvOf = async () => (await readNames(page, DEMO, ["cv_log_time"])).cv_log_time.flat();
    const before = await cvOf();
    const load = before.findIndex((cv) => typeof cv === "number");
    const name = `times_${String(load + 1).padStart(2, "0")}`;
    const times = (await readNames(page, DEMO, [name]))[name].flat();
    const row = times.findIndex((time) => typeof time === "number" && time >= 4);
    await page.evaluate(
      ([sheet, name, row]) => {
        const { model, localNames } = (window as any).clayledger.port.workbook;
        const sheetId = model.getters.getSheetIdByName(sheet);
        const { zone } = model.getters.getNamedRange(localNames.get(sheetId).get(name)).range;
        const position = { sheetId, col: zone.left + 1, row: zone.top + (row as number) };
        const reading = model.getters.getEvaluatedCell(position).value;
        model.dispatch("UPDATE_CELL", { ...position, content: String(reading * 1.002) });
      },
      [DEMO, name, row] as const,
    );
    const after = await cvOf();
    expect(after[load]).not.toBe(before[load]);
    expect(after.map((cv, i) => (i === load ? before[load] : cv))).toEqual(before);
    await page.evaluate(() => (window as any).clayledger.port.workbook.model.dispatch("REQUEST_UNDO"));
    expect(await cvOf()).toEqual(before);
  });

  test("a blank sheet is inserted from the pane, filled by name, and calculates", async () => {
    const before = await sheetNames(page);
    await page.frameLocator("#pane").getByRole("tab", { name: "Data sheet" }).click();
    await page.frameLocator("#pane").getByRole("button", { name: "Insert blank sheet" }).click();
    const sheet = await sheetMade(page, before, "was made");
    expect(await errorsOf(page, sheet)).toEqual([]);
    await fill(page, sheet, { diameter: 63.5, initial_height: 20, ring_mass: 70, ring_and_wet_before: 190 });
    await fill(page, sheet, { ring_and_wet_after: 180, ring_and_dry: 150, specific_gravity: 2.7 });
    // w = (190 - 150) / (150 - 70); Hs = 80 g / (2.70 g/cm3 * area); e = (H - Hs) / Hs
    const solids = 80 / 2.7 / ((Math.PI * 6.35 ** 2) / 4);
    expect(await named(page, sheet, "water_content_initial")).toBeCloseTo(0.5, 12);
    expect(await named(page, sheet, "void_ratio_initial")).toBeCloseTo(2 / solids - 1, 9);
    expect(await errorsOf(page, sheet)).toEqual([]);
    await takePicture(page, "blank-sheet-filled");
  });

  test.each([
    ["?blankAs=0", 0],
    ["?blankAs=", ""],
  ])("blank cells passed like desktop Excel or as text (%s) give the same answers", async (query, blank) => {
    const handedOver = (of: HostPage) => of.page.evaluate(() => (window as any).clayledger.settings.blankAs);
    const other = await pageWith(query);
    expect([await handedOver(host), await handedOver(other)]).toEqual([null, blank]);
    expect(Object.keys(atFirst.sheets[DEMO]).length).toBeGreaterThan(500);
    expectSame(await everything(other.page), atFirst);
  });

  test("after saving as .xlsx and opening again, everything is there", async () => {
    const before = await everything(page);
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save .xlsx" }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/\.xlsx$/);
    const file = await fileOf(download);
    expect(complaintsOf(new Uint8Array(readFileSync(file)))).toEqual([]);
    const second = await pageWith("?blankAs=");
    await second.page.locator("#file").setInputFiles({
      name: "again.xlsx",
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: readFileSync(file),
    });
    await second.page.locator("#message", { hasText: "again.xlsx is open" }).waitFor();
    const after = await everything(second.page);
    expect(Object.keys(after.sheets)).toEqual(Object.keys(before.sheets));
    expect(Object.keys(before.names).length).toBeGreaterThan(100);
    expectSame(after, before);
    // The pane works with the workbook that is open now.
    await second.page.frameLocator("#pane").getByRole("tab", { name: "Data sheet" }).click();
    await second.page.frameLocator("#pane").getByRole("button", { name: "Insert blank sheet" }).click();
    await sheetMade(second.page, Object.keys(before.sheets), "was made");
    expect(second.complaints).toEqual([]);
    await second.page.context().close();
  });

  test("unsaved work is asked about before another file replaces it, and before the page is left", async () => {
    const { page, complaints } = await pageWith("?blankAs=0");
    const asksBeforeLeaving = () =>
      page.evaluate(() => !window.dispatchEvent(new Event("beforeunload", { cancelable: true })));
    const choose = (name: string, buffer: Buffer) =>
      page.locator("#file").setInputFiles({ name, mimeType: "", buffer });
    const save = async () => {
      const [download] = await Promise.all([
        page.waitForEvent("download"),
        page.getByRole("button", { name: "Save .xlsx" }).click(),
      ]);
      return readFileSync(await fileOf(download));
    };
    expect(await asksBeforeLeaving()).toBe(false);
    await showSheet(page, "Sheet1");
    await clickCell(page, "C3");
    expect(await asksBeforeLeaving()).toBe(false);
    await typeInCell(page, "B2", "12");
    expect(await asksBeforeLeaving()).toBe(true);
    const file = await save();
    expect(await asksBeforeLeaving()).toBe(false);
    await typeInCell(page, "B2", "13");
    expect(await asksBeforeLeaving()).toBe(true);

    await choose("again.xlsx", file);
    await page.locator("#question").getByText("has changes that are not saved").waitFor();
    await takePicture(page, "unsaved-question");
    await page.locator('#question button[value="no"]').click();
    await page.locator("#message", { hasText: "again.xlsx was not opened." }).waitFor();
    expect(await value(page, "Sheet1", "B2")).toBe(13);

    await page.evaluate(() => (window as any).clayledger.port.workbook.model.dispatch("REQUEST_UNDO"));
    expect(await asksBeforeLeaving()).toBe(false);
    await typeInCell(page, "B2", "14");
    expect(await asksBeforeLeaving()).toBe(true);
    await choose("again.xlsx", file);
    await page.locator('#question button[value="yes"]').click();
    await page.locator("#message", { hasText: "again.xlsx is open" }).waitFor();
    expect(await value(page, "Sheet1", "B2")).toBe(12);
    expect(await asksBeforeLeaving()).toBe(false);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("a broken file is refused with a sentence, and the workbook stays", async () => {
    const before = await sheetNames(page);
    await page
      .locator("#file")
      .setInputFiles({ name: "broken.xlsx", mimeType: "", buffer: Buffer.from("not a workbook") });
    await page.locator("#message.is-failure").waitFor();
    expect(await page.locator("#message").innerText()).toMatch(/a file of text.* and not an \.xlsx workbook/);
    expect(await sheetNames(page)).toEqual(before);
    expect(await errorsOf(page, DEMO)).toEqual([]);
  });

  test("the licences of other packages can be opened, and so can their files", async () => {
    await page.getByRole("button", { name: "Components and licences" }).click();
    const links = page.locator("#licences a");
    await links.first().waitFor();
    await takePicture(page, "licences");
    const addresses = await links.evaluateAll((all) => all.map((link) => (link as HTMLAnchorElement).href));
    expect(addresses.length).toBeGreaterThanOrEqual(5);
    for (const address of addresses)
      expect([address, (await page.request.get(address)).status()]).toEqual([address, 200]);
    await page.locator("#licences button").click();
  });

  test.each([
    ["vendor/o-spreadsheet/o_spreadsheet.min.iife.js", "@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js"],
    ["vendor/o-spreadsheet/o_spreadsheet.xml", "@odoo/o-spreadsheet/dist/o_spreadsheet.xml"],
    ["vendor/o-spreadsheet/o_spreadsheet.css", "@odoo/o-spreadsheet/dist/o_spreadsheet.css"],
    ["vendor/owl/owl.iife.min.js", "@odoo/owl/dist/owl.iife.min.js"],
  ])("%s is served byte for byte as it was published", async (served, published) => {
    const answer = await page.request.get(new URL(served, page.url()).href);
    const original = readFileSync(path.join(__dirname, "../../../node_modules", published));
    expect(original.equals(await answer.body())).toBe(true);
  });

  test("the divider moves by keyboard and by mouse", async () => {
    const width = async () => (await page.locator("#pane").boundingBox())!.width;
    const before = await width();
    await page.locator("#divider").focus();
    await page.keyboard.press("ArrowLeft");
    expect(await width()).toBeCloseTo(before + 24, 0);
    const { x, y } = (await page.locator("#divider").boundingBox())!;
    await page.mouse.move(x + 3, y + 300);
    await page.mouse.down();
    await page.mouse.move(x + 103, y + 300, { steps: 4 });
    await page.mouse.up();
    expect(await width()).toBeLessThan(before);
  });

  test("a chart inserted by its menu is drawn, and the page keeps working", async () => {
    await showSheet(page, "Sheet1");
    await typeInCell(page, "L1", "1");
    await page.locator(".o-topbar-menu", { hasText: "Insert" }).click();
    await page.locator(".o-menu-item", { hasText: /^\s*Chart/ }).click();
    await page.locator(".o-figure canvas").waitFor();
    await typeInCell(page, "A2", "2");
    expect(await value(page, "Sheet1", "A2")).toBe(2);
  });
});
