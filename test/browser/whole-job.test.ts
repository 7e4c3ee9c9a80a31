/**
 * A whole job with the keys alone, from the blank sheet to the signed report and the AGS4 file. It can be read as a
 * manual: each step is what a person does, and what the page then says.
 *
 * The test is invented. Its curves are calculated from Terzaghi's theory with a known cv, and its compression curve
 * from a known Cr, Cc and preconsolidation stress, so that the results are known before the program is asked.
 */
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { de } from "../../src/pane/text/de";
import { en } from "../../src/pane/text/en";
import { keyboard } from "./keyboard";
import { fileOf, readNames, sheetNames, takePicture, withBrowser } from "./page";

/** A way to work: language, units and decimal mark. Lengths are in `length`, stresses in `stress`. */
interface Way {
  readonly called: string;
  readonly locale: string;
  readonly words: typeof en | typeof de;
  readonly system: "SI" | "US";
  readonly decimal: "." | ",";
  readonly length: { readonly unit: string; readonly mm: number; readonly decimals: number };
  readonly stress: { readonly unit: string; readonly first: number };
  /** What the sheet shows cv in, per mm2 in a minute. */
  readonly cv: number;
}

/** Minutes of a year of 365.25 days, and of a day. */
const YEAR = 525_960;
const DAY = 1440;
const WAYS: readonly Way[] = [
  {
    ...{ called: "English, SI, decimal point", locale: "en-GB", words: en, system: "SI", decimal: "." },
    ...{ length: { unit: "mm", mm: 1, decimals: 4 }, stress: { unit: "kPa", first: 12.5 }, cv: YEAR / 1e6 },
  },
  {
    ...{ called: "German, US units, decimal comma", locale: "de-DE", words: de, system: "US", decimal: "," },
    ...{ length: { unit: "in", mm: 25.4, decimals: 6 }, stress: { unit: "tsf", first: 0.125 } },
    // The US sheet shows cv in ft2/day.
    cv: DAY / 304.8 ** 2,
  },
];

const H0 = 20;
const DIAMETER = 63.5;
const GS = 2.7;
const DRY = 85;
const WATER_BEFORE = 36;
/** The height of solids in mm: the dry mass over the density of the solids and the area. */
const SOLIDS = (1000 * DRY) / GS / ((Math.PI * DIAMETER ** 2) / 4);
const E0 = H0 / SOLIDS - 1;
const CR = 0.04;
const CC = 0.45;
/** mm2 a minute. */
const CV = 1.5;
/** Eight loads, each twice the one before; the preconsolidation stress is that of the fourth. */
const STEPS = 8;
const KNEE = 3;

const eAt = (step: number): number => E0 - CR * Math.log10(2) * (Math.min(step, KNEE) + 1) - CC * Math.log10(2) * Math.max(0, step - KNEE); // prettier-ignore
const heightAt = (step: number): number => (step < 0 ? H0 : SOLIDS * (1 + eAt(step)));

/** Terzaghi's degree of consolidation for double drainage. */
function degree(T: number): number {
  if (T < 1e-9) return 0;
  let sum = 0;
  for (let m = 0; m < 200; m++) {
    const M = (Math.PI * (2 * m + 1)) / 2;
    sum += (2 / M ** 2) * Math.exp(-(M ** 2) * T);
  }
  return 1 - sum;
}

/** The file of the logger: seconds, stress, displacement; a reading at usual times of each load of a day. */
function loggerText({ decimal, length, stress }: Way): string {
  const minutes = [0, 0.1, 0.25, 0.5, 1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 1439];
  const number = (value: number, decimals: number) => value.toFixed(decimals).replace(".", decimal);
  const rows = Array.from({ length: STEPS }, (_, step) =>
    minutes.map((minute) => {
      const [before, after] = [heightAt(step - 1), heightAt(step)];
      const drained = (before + after) / 4;
      const moved = H0 - before + (before - after) * degree((CV * minute) / drained ** 2);
      const time = String(Math.round((step * 1440 + minute) * 60));
      return [time, number(stress.first * 2 ** step, 4), number(moved / length.mm, length.decimals)].join(";");
    }),
  );
  return [`Time;Stress;Displacement`, `s;${stress.unit};${length.unit}`, ...rows.flat()].join("\n");
}

withBrowser("a whole job with the keys alone", (openPage) => {
  describe.each(WAYS)("$called", (way) => {
    const { words } = way;
    let page: Page;
    let hands: ReturnType<typeof keyboard>;
    let complaints: string[];
    let sheet: string;
    const typed = new Map<string, string>();

    beforeAll(async () => {
      ({ page, complaints } = await openPage("", { locale: way.locale, reducedMotion: "reduce" }));
      hands = keyboard(page);
    });
    afterAll(() => page.context().close());
    afterEach(() => expect(complaints).toEqual([]));

    const number = (value: number): string => String(value).replace(".", way.decimal);
    const valueOf = async (name: string, row = 0) => Number((await readNames(page, sheet, [name]))[name]![row]![0]);
    /** Goes to the cell of a name, as the labels of the sheet say where it is, and types into it. */
    const enter = async (name: string, text: string): Promise<void> => {
      const place = await page.evaluate(
        async ([of, wanted]) => {
          const names = await (globalThis as any).clayledger.port.listNames(of);
          const { row, col } = names.find((one: any) => one.name === wanted).place;
          return { row, col };
        },
        [sheet, name],
      );
      typed.set(name, text);
      // A person looks at the cell, and types again if a key was lost while the sheet calculated.
      for (let attempt = 0; attempt < 3; attempt++) {
        await hands.goTo(place);
        await hands.type(text);
        if (!(await lostOf()).some((lost) => lost.startsWith(`${name}:`))) return;
      }
    };
    /** What was typed and does not stand in its cell. */
    const lostOf = async (): Promise<string[]> => {
      const held = await readNames(page, sheet, [...typed.keys()]);
      return [...typed].flatMap(([name, text]) => {
        const value = held[name]?.[0]?.[0];
        const stands = typeof value === "number" ? number(value) : value;
        return stands === text ? [] : [`${name}: ${String(stands)} in place of ${text}`];
      });
    };

    test("F6 goes to the pane; there a blank sheet for eight loads is inserted", async () => {
      const before = await sheetNames(page);
      await hands.screen(words.tabs.sheet);
      await hands.tabTo(words.sheet.SI);
      if (way.system === "US") await hands.press("ArrowDown");
      await hands.fill(words.sheet.loads, String(STEPS));
      await hands.push(words.sheet.blank);
      await page.waitForFunction(
        async (count) => (await (globalThis as any).clayledger.port.sheetNames()).length > count,
        before.length,
      );
      sheet = (await sheetNames(page)).find((name) => !before.includes(name))!;
    });

    test("F6 goes back to the sheet; the specimen is described and weighed", async () => {
      await enter("project", "Example embankment (invented)");
      await enter("laboratory", "Example laboratory (invented)");
      await enter("job_number", "J-1");
      await enter("report_number", "R-1");
      await enter("boring", "BH-1");
      await enter("sample", "U1");
      await enter("specimen", "a");
      await enter("sample_top", number(4));
      await enter("depth", number(4.5));
      await enter("diameter", number(DIAMETER / way.length.mm));
      await enter("initial_height", number(H0 / way.length.mm));
      await enter("specific_gravity", number(GS));
      await enter("ring_mass", number(70));
      await enter("ring_and_wet_before", number(70 + DRY + WATER_BEFORE));
      await enter("ring_and_wet_after", number(70 + DRY + 25));
      await enter("ring_and_dry", number(70 + DRY));
      expect(await lostOf()).toEqual([]);
      expect(await valueOf("void_ratio_initial")).toBeCloseTo(E0, 6);
      expect(await valueOf("water_content_initial")).toBeCloseTo(WATER_BEFORE / DRY, 9);
    });

    test("the rows of the logger are pasted, and written to the sheet", async () => {
      await hands.screen(words.tabs.readings);
      await hands.fill(words.readings.paste, loggerText(way));
      await hands.push(words.readings.usePasted);
      await page.frameLocator("#pane").getByRole("heading", { name: words.readings.columnsHeading }).waitFor();
      await hands.push(words.readings.confirm);
      await page.frameLocator("#pane").getByRole("heading", { name: words.readings.loadsHeading }).waitFor();
      await takePicture(page, `job-loads-${way.system}`);
      await hands.push(way.locale === "en-GB" ? /^Write 8 loads/ : /^8 Laststufen/);
      await hands.told(way.locale === "en-GB" ? "8 loads were written" : /8 Laststufen/);
    });

    test("the results are those from which the readings were calculated", async () => {
      await hands.screen(words.tabs.results);
      await takePicture(page, `job-results-${way.system}`);
      for (const step of [1, 5, 7]) {
        expect(await valueOf("load_stress", step)).toBeCloseTo(way.stress.first * 2 ** step, 6);
        expect(Math.abs((await valueOf("void_ratio_end", step)) - eAt(step))).toBeLessThan(0.002);
      }
      const cv = await valueOf("cv_log_time", 6);
      expect(Math.abs(cv / (CV * way.cv) - 1)).toBeLessThan(0.1);
      expect(Math.abs((await valueOf("compression_index")) / CC - 1)).toBeLessThan(0.03);
      const stress = (await valueOf("preconsolidation_stress")) / (way.stress.first * 2 ** KNEE);
      expect(stress).toBeGreaterThan(0.7);
      expect(stress).toBeLessThan(1.5);
    });

    test("the sheet is signed, and the report is made", async () => {
      await enter("tested_by", "AB");
      await enter("checked_by", "CD");
      await hands.screen(words.tabs.report);
      await hands.fill(words.report.preparedBy, "AB");
      await hands.push(words.report.make(sheet));
      const report = `Report ${sheet}`;
      await hands.told(words.report.made(sheet, report));
      const { report_prepared_by } = await readNames(page, report, ["report_prepared_by"]);
      expect(report_prepared_by![0]![0]).toBe("AB");
      await takePicture(page, `job-report-${way.system}`);
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
