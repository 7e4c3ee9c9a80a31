/** German is German: a walk over the page collects every text that is seen, and finds none that is left in English. */
import { readFileSync } from "node:fs";
import path from "node:path";
import type { Frame, Page } from "playwright-core";
import { de } from "../../../src/pane/text/de";
import { engine as deEngine } from "../../../src/pane/text/de/engine";
import { host as deHost } from "../../../src/pane/text/de/host";
import { messages as deMessages } from "../../../src/pane/text/de/messages";
import { en } from "../../../src/pane/text/en";
import { host as enHost } from "../../../src/pane/text/en/host";
import { cellCalled, RECORD_NAMES } from "../../../src/record/record";
import { FIELDS, MORE_FIELDS } from "../../../src/specification/fields";
import { labelOf } from "../../../src/record/cells";
import { demoSheet } from "../../../src/datasheet";
import { choices as listWords } from "../../../src/specification/text/de/choices";
import { wordsOf as sheetWordsOf } from "../../../src/specification/text/words";
import { cellAddress } from "../../../src/workbook/address";
import type { SheetPlan } from "../../../src/workbook/port";
import {
  eventually,
  fileOf,
  paneFrame,
  readNames,
  settled,
  sheetNames,
  showSheet,
  takePicture,
  typeInCell,
  valuesOf,
  withBrowser,
  type HostPage,
} from "../page";

/** The texts of a table: its strings, and the strings in the code of its functions. */
function textsOf(table: unknown): string[] {
  if (typeof table === "string") return [table];
  if (typeof table === "function") {
    const quoted = [...String(table).matchAll(/`([^`]*)`|"((?:[^"\\]|\\.)*)"/g)];
    return quoted.map(([, template, text]) => (template ?? text ?? "").replace(/\$\{[^}]*\}/g, " "));
  }
  return typeof table === "object" && table !== null ? Object.values(table).flatMap(textsOf) : [];
}

/** Words of three letters and more, in small letters. */
const wordsOf = (text: string): string[] => text.toLowerCase().match(/\p{L}{3,}/gu) ?? [];

const GERMAN = new Set(
  [de, deHost, Object.values(deMessages), Object.values(deEngine)].flatMap(textsOf).flatMap(wordsOf),
);

/** Words that stand in an English table and in no German one. */
const ENGLISH = new Set(
  [en, enHost, Object.keys(deMessages), Object.keys(deEngine)]
    .flatMap(textsOf)
    .flatMap(wordsOf)
    .filter((word) => !GERMAN.has(word)),
);

/** What every language repeats: the labels of the cells of the data sheet, which are English. */
const LABELS = RECORD_NAMES.flatMap((name) => [
  cellCalled(name),
  cellCalled(name).replace(/ \([a-z_0-9]+\)$/, ""),
  labelOf(name),
]).concat([...FIELDS, ...MORE_FIELDS].flatMap(({ name, label }) => [label.trim(), `${label.trim()} (${name})`]));

/** The name of a cell behind its label: "Projekt (project)". */
const NAME = new RegExp(
  `\\((?:${[...RECORD_NAMES, ...[...FIELDS, ...MORE_FIELDS].map(({ name }) => name)].join("|")})\\)`,
  "g",
);

/** Words of the trade and names that German has too, and the codes of AGS4, which are English by its standard. */
const REPEATED = [
  ...["demonstration.xlsx", "Consolidation test", "licences.txt", "Chart.js", "Ctrl", "Shift"],
  "Demonstration",
  "Letter",
  "div",
  "Draft",
  "Checked",
  "Final",
];

const SHEET_WORDS = sheetWordsOf("de");
const SHEET_TABLES = [SHEET_WORDS.titles, SHEET_WORDS.labels, SHEET_WORDS.formulas, listWords];

/** Words of the English sheet that the German one does not have. */
const ENGLISH_ON_SHEET = new Set(SHEET_TABLES.flatMap((table) => Object.keys(table)).flatMap(wordsOf));
for (const word of SHEET_TABLES.flatMap((table) => Object.values(table)).flatMap(wordsOf))
  ENGLISH_ON_SHEET.delete(word);

/** Every text that is seen in a document, and every name that a screen reader reads. */
const seenIn = (frame: Frame | Page): Promise<string[]> =>
  frame.evaluate(() => {
    const { document } = globalThis as any;
    const seen = new Set<string>();
    for (const element of document.querySelectorAll("body *")) {
      if (
        /^(SCRIPT|STYLE|NOSCRIPT)$/.test(element.tagName) ||
        element.closest("[lang=en], .o-composer, .clayledger-note")
      )
        continue;
      if (!element.checkVisibility({ visibilityProperty: true }) && !element.closest("select")) continue;
      for (const name of ["aria-label", "title", "placeholder"]) seen.add(element.getAttribute(name) ?? "");
      for (const node of element.childNodes) if (node.nodeType === 3) seen.add(node.data);
    }
    return [...seen].map((text) => text.replace(/\s+/g, " ").trim()).filter((text) => text !== "");
  });

withBrowser("in German", (openPage) => {
  let host: HostPage;
  let page: Page;
  let frame: Frame;
  /** Texts of cells, and others that the pane repeats as they are. */
  let repeated: RegExp;
  const left = new Set<string>();

  beforeAll(async () => {
    host = await openPage("", { locale: "de-DE" });
    page = host.page;
    frame = paneFrame(page);
    const typed = await page.evaluate(() => {
      const { getters } = (globalThis as any).clayledger.port.workbook.model;
      const texts = getters.getSheetIds().flatMap((sheetId: string) =>
        Object.values(getters.getCells(sheetId)).map((cell: any) => {
          const { value } = getters.getEvaluatedCell(getters.getCellPosition(cell.id));
          return typeof value === "string" ? value : "";
        }),
      );
      return [...new Set<string>(texts)];
    });
    const known = [...typed, ...LABELS, ...REPEATED].filter((text) => text.length > 2);
    const longestFirst = known.sort((a, b) => b.length - a.length);
    const spelled = longestFirst.map((text) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&"));
    repeated = new RegExp(`(?<!\\p{L})(?:${spelled.join("|")})(?!\\p{L})`, "gu");
  });
  afterAll(() => host.page.context().close());

  /** Adds the texts with English words, without what is repeated unchanged. */
  const look = async (where: string, at: Frame | Page = frame): Promise<void> => {
    for (const text of await seenIn(at)) {
      const own = text.replace(NAME, " ").replace(repeated, " ");
      const english = wordsOf(own).filter((word) => ENGLISH.has(word));
      if (english.length > 0) left.add(`${where}: ${text.slice(0, 160)} (${english.slice(0, 4).join(", ")})`);
    }
  };
  const none = (): void => {
    const found = [...left];
    left.clear();
    expect(found).toEqual([]);
  };

  test("every screen of the demonstration, with its folded parts", async () => {
    const tabs = await frame.getByRole("tab").allTextContents();
    for (const [index, tab] of tabs.entries()) {
      await frame.getByRole("tab").nth(index).click();
      await settled(frame);
      await frame.evaluate(() => {
        for (const one of (globalThis as any).document.querySelectorAll("details")) one.open = true;
      });
      await settled(frame);
      await look(tab);
    }
    none();
  });

  test("the header, the menus and the licences of the page", async () => {
    await look("page", page);
    const openMenu = page.locator(".o-menu").first();
    for (const menu of ["Datei", "Bearbeiten", "Ansicht", "Einfügen", "Format", "Daten"]) {
      await page.locator(".o-topbar-menu", { hasText: menu }).first().click();
      await openMenu.waitFor();
      await look(menu, page);
      await page.keyboard.press("Escape");
    }
    await page.locator(".o-sheet").first().click({ button: "right" });
    await openMenu.waitFor();
    await look("sheet tab", page);
    await takePicture(page, "german-tab-menu");
    await page.keyboard.press("Escape");
    await page.locator("#licences-open").click();
    await look("licences", page);
    await page.keyboard.press("Escape");
    none();
  });

  /** What the sheet says of a function while its formula is typed, unfolded. */
  const helperOf = async (start: string): Promise<string> => {
    await showSheet(page, "Sheet1");
    await typeInCell(page, "B2", start, "");
    await page.locator(".o-formula-assistant .collapsor.collapsed").first().click();
    await page.locator(".o-formula-assistant-arg").first().waitFor();
    const said = await page.locator(".o-formula-assistant").first().innerText();
    await takePicture(page, `helper-${await page.locator("html").getAttribute("lang")}`);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
    return said;
  };

  test("the help for a function while it is typed, and the link to the help", async () => {
    const said = await helperOf("=CLAY.LOG_TIME(");
    for (const german of ["Zeiten", "Ablesungen", "BESCHREIBUNG", "Wertet eine Laststufe nach log t"])
      expect(said).toContain(german);
    expect(said).not.toMatch(/times|readings|Reduces|ABOUT|optional/);
    expect(await page.locator("[data-page='help.html']").getAttribute("href")).toBe("help-de.html");
    expect(await valuesOf(page, "Sheet1", "B2:B2")).toEqual([[""]]);
  });

  test("what the page says of entries that it does not take", async () => {
    await showSheet(page, "Demonstration");
    const cellOf = (name: string): Promise<string> =>
      page.evaluate(async (wanted) => {
        const { port } = (globalThis as any).clayledger;
        const { place } = (await port.listNames("Demonstration")).find((one: any) => one.name === wanted);
        const cell = `${String.fromCharCode(65 + place.col)}${place.row + 1}`;
        await port.show("Demonstration", cell);
        return cell;
      }, name);
    const said = (start: string) =>
      page.waitForFunction((begin) => document.querySelector("#message")!.textContent!.includes(begin), start);
    const type = async (name: string, text: string, start: string) => {
      await cellOf(name);
      await page.keyboard.type(text, { delay: 30 });
      await page.keyboard.press("Enter");
      await said(start);
      await look(name, page);
    };
    await type("void_ratio_initial", "1", "ist geschützt");
    await takePicture(page, "german-protected");
    none();
  });

  test("what the check of a sheet finds, and what a file is told that cannot be opened", async () => {
    await frame.getByRole("tab", { name: "Datenblatt" }).click();
    await showSheet(page, "Sheet1");
    const check = frame.getByRole("button", { name: de.check.look });
    await check.click();
    await settled(frame);
    await look("another sheet");
    const old = readFileSync(path.join(__dirname, "../../datasheet/versions/clayledger-si-version-1.xlsx"));
    await page.evaluate(
      async (bytes) => {
        const { port } = (globalThis as any).clayledger;
        const { sheets } = await port.insertFile(Uint8Array.from(bytes));
        await port.nameAll(sheets[0], [{ name: "ring_mass", address: "B2:B4", replace: true }]);
        await port.nameAll(sheets[0], [{ name: "ring_and_dry", address: "B2:B4", replace: true }]);
      },
      [...old],
    );
    await check.click();
    await settled(frame);
    await look("an older sheet");
    await takePicture(page, "german-check");
    for (const bytes of [[], [0x25, 0x50, 0x44, 0x46], [0x50, 0x4b, 3, 4, 1, 2, 3]]) {
      const chooser = page.locator("#file");
      await chooser.setInputFiles({ name: "Probe.xlsx", mimeType: "", buffer: Buffer.from(bytes) });
      await page.waitForFunction(() => document.querySelector("#message.is-failure") !== null);
      await look("a file", page);
    }
    none();
    expect((await sheetNames(page)).length).toBeGreaterThan(2);
  });

  /** Types a reading that does not fit: the remark on the load comes in German, and stands there again in the saved file. */
  const remarkComes = async ({ names }: SheetPlan): Promise<void> => {
    const remarks = async (): Promise<string[]> => {
      const read = await readNames(page, "Beispiel", ["load_remark", "remarks_on_loads"]);
      return [String(read.load_remark[6]?.[0]), String(read.remarks_on_loads[0]?.[0])];
    };
    const [before] = await remarks();
    const { row, col } = names.readings_07;
    await page.evaluate(
      (cell) => (globalThis as any).clayledger.port.show("Beispiel", cell),
      cellAddress(row + 5, col),
    );
    await page.keyboard.type("99", { delay: 30 });
    await page.keyboard.press("Enter");
    await eventually(async () => (await remarks())[0] !== before);
    const said = await remarks();
    expect(said.flatMap(wordsOf).filter((word) => ENGLISH.has(word))).toEqual([]);
    expect(said[1]).toMatch(/^Laststufe/);
    await showSheet(page, "Beispiel");
    await takePicture(page, "german-remark");
    const coming = page.waitForEvent("download");
    await page.locator("#save").click();
    await page.locator("#file").setInputFiles(await fileOf(await coming));
    await eventually(async () => (await page.locator("#message").textContent())?.endsWith("ist geöffnet.") === true);
    expect(await remarks()).toEqual(said);
  };

  test("a German sheet, chosen in the pane, shows no English word of its own, and the pane speaks of it in its words", async () => {
    await frame.getByRole("tab", { name: "Datenblatt" }).click();
    await frame.getByRole("radio", { name: de.sheet.languages.de }).check();
    await frame.getByRole("button", { name: de.sheet.demo }).click();
    await frame.getByText(de.sheet.done("Beispiel")).waitFor();
    await showSheet(page, "Beispiel");
    await settled(frame);
    await takePicture(page, "german-sheet");
    const plan = demoSheet("SI", "de");
    const values = await valuesOf(page, "Beispiel", `A1:${cellAddress(plan.rows - 1, plan.cols - 1)}`);
    const english = plan.cells.flatMap(({ row, col, kind, choices, formula = "" }) => {
      const shown = values[row]?.[col];
      // A person types what they like, but in a list; the head of the sheet repeats the name of the project.
      const isTyped = (kind === "input" && !choices) || formula.includes("{project}");
      if (typeof shown !== "string" || isTyped) return [];
      return wordsOf(shown).some((word) => ENGLISH_ON_SHEET.has(word)) ? [`${cellAddress(row, col)}: ${shown}`] : [];
    });
    expect(english).toEqual([]);
    await remarkComes(plan);
    await frame.getByRole("tab", { name: "Wie weiter" }).click();
    await settled(frame);
    await frame.getByText("Ring, Maße und Massen", { exact: true }).waitFor();
    await takePicture(page, "german-sheet-next");
    await frame.getByRole("tab", { name: "Datenblatt" }).click();
    await frame.getByRole("button", { name: de.check.look }).click();
    await settled(frame);
    await frame.getByText(de.check.whole).waitFor();
    await frame.getByRole("radio", { name: de.sheet.languages.en }).check();
  });

  test("another language chosen in the pane goes over to the header and the menus", async () => {
    await frame.getByRole("tab", { name: "Info" }).click();
    await frame.getByRole("combobox", { name: de.about.language }).selectOption("en");
    await frame.getByRole("button", { name: de.about.languageUse }).click();
    await page.getByRole("button", { name: enHost.save }).waitFor();
    await page.locator(".o-topbar-menu", { hasText: "Edit" }).first().waitFor();
    expect(await page.locator("html").getAttribute("lang")).toBe("en");
    expect(await helperOf("=CLAY.LOG_TIME(")).toMatch(/times[^]*Reduces a load increment by the log-of-time method/);
    expect(await page.locator("[data-page='help.html']").getAttribute("href")).toBe("help.html");
    expect(host.complaints).toEqual([]);
  });
});
