/**
 * A whole job with the keys alone, from the blank sheet to the signed report and the AGS4 file. It can be read as a
 * manual: each step is what a person does, and what the page then says. It is done four times, so that every pair of
 * units, language and decimal mark comes once.
 */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { de } from "../../../src/pane/text/de";
import { host as deHost } from "../../../src/pane/text/de/host";
import { en } from "../../../src/pane/text/en";
import { host as enHost } from "../../../src/pane/text/en/host";
import { keyboard } from "../keys-of-a-person";
import { fileOf, giveBack, readNames, sheetNames, takePicture, withBrowser, type HostPage } from "../page";
import { CC, CV, DIAMETER, DRY, E0, eAt, GS, H0, KNEE, loggerText, STEPS, UNITS, WATER_BEFORE } from "./invented-test";

const LANGUAGES = {
  English: { locale: "en-GB", words: en, hostWords: enHost },
  German: { locale: "de-DE", words: de, hostWords: deHost },
} as const;

/** A decimal mark other than the language's own is chosen on the page. */
const WAYS = [
  { language: "English", units: "SI", mark: ".", called: "point" },
  { language: "English", units: "US", mark: ",", called: "comma" },
  { language: "German", units: "SI", mark: ",", called: "comma" },
  { language: "German", units: "US", mark: ".", called: "point" },
] as const;

withBrowser("a whole job with the keys alone", (openPage) => {
  describe.each(WAYS)("in $language, $units units, decimal $called", (way) => {
    const { locale, words, hostWords } = LANGUAGES[way.language];
    const units = UNITS[way.units];
    const { length, stress } = units;
    const picture = (name: string) => takePicture(page, `job-${name}-${way.language}-${way.units}`);
    let host: HostPage;
    let page: Page;
    let hands: ReturnType<typeof keyboard>;
    let complaints: string[];
    let sheet: string;

    beforeAll(async () => {
      host = await openPage("", { locale });
      ({ page, complaints } = host);
      hands = keyboard(page);
    });
    afterAll(() => giveBack(host));
    afterEach(() => expect(complaints).toEqual([]));

    const number = (value: number): string => String(value).replace(".", way.mark);
    const valueOf = async (name: string, row = 0) => Number((await readNames(page, sheet, [name]))[name]![row]![0]);
    /** Goes to the cell of a name, as the labels of the sheet say where it is. */
    const goToCell = async (name: string): Promise<void> => {
      const place = await page.evaluate(
        async ([of, wanted]) => {
          const names = await (globalThis as any).clayledger.port.listNames(of);
          const { row, col } = names.find((one: any) => one.name === wanted).place;
          return { row, col };
        },
        [sheet, name],
      );
      await hands.goTo(place);
    };
    const holds = async (name: string, value: string | number): Promise<void> =>
      expect([name, (await readNames(page, sheet, [name]))[name]![0]![0]]).toEqual([name, value]);
    const enter = async (name: string, value: string | number): Promise<void> => {
      await goToCell(name);
      await hands.type(typeof value === "number" ? number(value) : value);
      await holds(name, value);
    };
    /** Begins to type a word of the list of a cell, goes down to the word in the list that opens, and takes it. */
    const choose = async (name: string, begun: string, word: string): Promise<void> => {
      await goToCell(name);
      await page.keyboard.type(begun);
      await page.locator(".o-autocomplete-value", { hasText: word }).waitFor();
      await picture("list");
      await hands.press("ArrowDown");
      await hands.press("Enter");
      await holds(name, word);
    };

    test("Shift+F6 goes to the header; there the decimal mark is chosen", async () => {
      await hands.chooseInHeader("decimal-mark", hostWords[way.called]);
      expect(await page.locator("#decimal-mark").inputValue()).toBe(way.mark);
    });

    test("F6 goes to the pane; there a blank sheet for eight loads is inserted", async () => {
      const before = await sheetNames(page);
      await hands.screen(words.tabs.sheet);
      await hands.pick(words.sheet[way.units], words.sheet[way.units === "SI" ? "US" : "SI"]);
      // The person in German takes a German sheet.
      if (way.language === "German") await hands.pick(words.sheet.languages.de, words.sheet.languages.en);
      await hands.fill(words.sheet.loads, String(STEPS));
      await hands.push(words.sheet.blank);
      while ((await sheetNames(page)).length === before.length) await page.waitForTimeout(50);
      sheet = (await sheetNames(page)).find((name) => !before.includes(name))!;
    });

    test("F6 goes back to the sheet; the specimen is described and weighed", async () => {
      await enter("project", "Example");
      await enter("laboratory", "Example");
      await enter("job_number", "J-1");
      await enter("report_number", "R-1");
      await enter("boring", "BH-1");
      await enter("sample", "U1");
      await enter("specimen", "a");
      await enter("sample_top", 4);
      await enter("depth", 4.5);
      await enter("diameter", DIAMETER / length.mm);
      await enter("initial_height", H0 / length.mm);
      await enter("specific_gravity", GS);
      await enter("ring_mass", 70);
      await enter("ring_and_wet_before", 70 + DRY + WATER_BEFORE);
      await enter("ring_and_wet_after", 70 + DRY + 25);
      await enter("ring_and_dry", 70 + DRY);
      expect(await valueOf("void_ratio_initial")).toBeCloseTo(E0, 6);
      expect(await valueOf("water_content_initial")).toBeCloseTo(WATER_BEFORE / DRY, 9);
    });

    test("the rows of the logger are pasted, and written to the sheet", async () => {
      const heading = (name: string) => page.frameLocator("#pane").getByRole("heading", { name }).waitFor();
      await hands.screen(words.tabs.readings);
      await hands.fill(words.readings.paste, loggerText(units, way.mark));
      await hands.push(words.readings.usePasted);
      await heading(words.readings.columnsHeading);
      await hands.push(words.readings.confirm);
      await heading(words.readings.loadsHeading);
      await picture("loads");
      await hands.push(words.readings.write(STEPS, sheet));
      await hands.told(way.language === "English" ? "8 loads were written" : /8 Laststufen/);
    });

    test("the results are those from which the readings were calculated", async () => {
      await hands.screen(words.tabs.results);
      await picture("results");
      for (const step of [1, 5, 7]) {
        expect(await valueOf("load_stress", step)).toBeCloseTo(stress.first * 2 ** step, 6);
        expect(Math.abs((await valueOf("void_ratio_end", step)) - eAt(step))).toBeLessThan(0.002);
      }
      const cv = await valueOf("cv_log_time", 6);
      expect(Math.abs(cv / (CV * units.cv) - 1)).toBeLessThan(0.1);
      expect(Math.abs((await valueOf("compression_index")) / CC - 1)).toBeLessThan(0.03);
      const preconsolidation = (await valueOf("preconsolidation_stress")) / (stress.first * 2 ** KNEE);
      expect(preconsolidation).toBeGreaterThan(0.7);
      expect(preconsolidation).toBeLessThan(1.5);
    });

    test("the other construction is chosen from the list of its cell, in the word of the sheet, and its cv is reported", async () => {
      const [word, begun] = way.language === "German" ? ["Wurzel t", "Wu"] : ["root time", "roo"];
      const byLog = await valueOf("cv_chosen", 6);
      expect(byLog).toBe(await valueOf("cv_log_time", 6));
      await choose("time_method", begun, word);
      expect((await readNames(page, sheet, ["load_method"])).load_method![6]![0]).toBe(word);
      expect(await valueOf("cv_chosen", 6)).toBe(await valueOf("cv_root_time", 6));
      await choose("time_method", "log", way.language === "German" ? "log t" : "log time");
      expect(await valueOf("cv_chosen", 6)).toBe(byLog);
    });

    test("the sheet is signed, and the report is made", async () => {
      await enter("tested_by", "AB");
      await enter("checked_by", "CD");
      await hands.screen(words.tabs.report);
      await hands.fill(words.report.preparedBy, "AB");
      await hands.push(words.report.make(sheet));
      const report = `${words.tabs.report} ${sheet}`;
      await hands.told(words.report.made(sheet, report));
      const { report_prepared_by } = await readNames(page, report, ["report_prepared_by"]);
      expect(report_prepared_by![0]![0]).toBe("AB");
      await picture("report");
    });

    test("the AGS4 file is downloaded", async () => {
      await hands.screen(words.tabs.checks);
      await hands.fill(words.checks.ags.producer, "Example laboratory (invented)");
      await hands.fill(words.checks.ags.recipient, "Example office (invented)");
      await hands.tabTo(words.checks.ags.sampleType);
      await page.keyboard.type("U:", { delay: 20 });
      const saved = page.waitForEvent("download");
      await hands.push(words.checks.ags.make);
      const text = readFileSync(await fileOf(await saved), "latin1");
      expect(text).toContain('"GROUP","CONS"');
      expect(text).toContain("BH-1");
    });
  });
});
