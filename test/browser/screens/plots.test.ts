/** The plots of a data sheet: a person looks at them and saves them. */
import { readFileSync } from "node:fs";
import type { Download, Frame, FrameLocator, Page } from "playwright-core";
import { cellAddress } from "../../../src/workbook/address";
import {
  eventually,
  fileOf,
  paneFrame,
  paneViolations,
  paneWidths,
  settled,
  sheetNames,
  takePicture,
  typeInCell,
  valuesOf,
  withBrowser,
} from "../page";

const SHEET = "Demonstration";

declare const document: {
  activeElement: { textContent: string; value: string };
};

withBrowser("plots of a data sheet", (openPage) => {
  let page: Page;
  let pane: FrameLocator;
  let frame: Frame;
  let complaints: string[];

  beforeAll(async () => {
    ({ page, complaints } = await openPage());
    pane = page.frameLocator("#pane");
    frame = paneFrame(page);
    await pane.getByRole("tab", { name: "Plots" }).click();
  });

  const plot = () => pane.getByRole("img", { name: /Drawn:/ });
  const choose = (name: string) => pane.getByRole("radio", { name, exact: true }).click();

  test("the compression curve has the in-situ stress and the preconsolidation stress", async () => {
    await plot().filter({ hasText: "virgin line" }).waitFor();
    for (const letters of ["σ′v0", "σ′p", "bisector"]) expect(await plot().textContent()).toContain(letters);
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "plots-compression");
  });

  test("cv and C alpha are drawn against stress", async () => {
    await choose("cv against stress");
    await plot().filter({ hasText: "cv (m2/yr)" }).waitFor();
    await pane.getByText("Circles: log time; triangles: root time.").waitFor();
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "plots-cv");
    await choose("C alpha against stress");
    await plot().filter({ hasText: "per log cycle of time" }).waitFor();
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "plots-c-alpha");
  });

  test("all loads can be reached by keyboard, and one is opened", async () => {
    await choose("All loads");
    const loads = pane.getByRole("listitem").getByRole("button");
    await eventually(async () => (await loads.count()) > 10);
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "plots-all-loads");
    await pane.getByRole("combobox", { name: "Time axis" }).focus();
    for (let step = 0; step < 5; step++) await page.keyboard.press("Tab");
    expect(await frame.evaluate(() => document.activeElement.textContent)).toContain("Load 5");
    await page.keyboard.press("Enter");
    await plot().filter({ hasText: "d100" }).waitFor();
    await eventually(async () => (await frame.evaluate(() => document.activeElement.value)) === "5");
    expect(await paneViolations(page)).toEqual([]);
  });

  test("the time curve follows a reading changed on the sheet", async () => {
    const names = await page.evaluate((sheet) => (globalThis as any).clayledger.port.listNames(sheet), SHEET);
    const { place } = names.find((one: { name: string }) => one.name === "readings_05");
    const cell = cellAddress(place.row + 12, place.col);
    const [[before]] = await valuesOf(page, SHEET, cell);
    const drawn = await plot().innerHTML();
    await typeInCell(page, cell, String(Number(before) + 60));
    await eventually(async () => (await plot().innerHTML()) !== drawn);
    await page.keyboard.press("Control+Z");
    await eventually(async () => Number((await valuesOf(page, SHEET, cell))[0][0]) === Number(before));
  });

  const saved = async (button: string): Promise<{ name: string; bytes: Buffer }> => {
    const [download]: [Download, void] = await Promise.all([
      page.waitForEvent("download"),
      pane.getByRole("button", { name: button }).click(),
    ]);
    return { name: download.suggestedFilename(), bytes: readFileSync(await fileOf(download)) };
  };

  test("SVG is saved under the name of the sheet, black on white, without variables of the page", async () => {
    await choose("Compression curve");
    await plot().filter({ hasText: "virgin line" }).waitFor();
    const { name, bytes } = await saved("Save SVG");
    expect(name).toBe("Demonstration, Compression curve.svg");
    const svg = bytes.toString("utf8");
    expect(svg).toContain('width="160mm"');
    expect(svg).not.toMatch(/var\(|<style|class=/);
  });

  test.each([
    ["85 mm, a column", 1004],
    ["160 mm, a page", 1890],
  ])("PNG %s wide has %i pixels, and states 300 dots per inch", async (width, pixels) => {
    await pane.getByRole("combobox", { name: "Width in print" }).selectOption({ label: width });
    const { name, bytes } = await saved("Save PNG");
    expect(name).toBe("Demonstration, Compression curve.png");
    expect(bytes.readUInt32BE(16)).toBe(pixels);
    expect(bytes.readUInt32BE(20)).toBeGreaterThan(pixels / 2);
    const at = bytes.indexOf("pHYs");
    expect(bytes.readUInt32BE(at + 4)).toBe(11811);
    // The browser reads the picture, and its background is white.
    const corner = await page.evaluate(async (png) => {
      const dom = globalThis as any;
      const image = new dom.Image();
      image.src = `data:image/png;base64,${png}`;
      await image.decode();
      const canvas = dom.document.createElement("canvas");
      [canvas.width, canvas.height] = [image.naturalWidth, image.naturalHeight];
      const drawing = canvas.getContext("2d");
      drawing.drawImage(image, 0, 0);
      const { data } = drawing.getImageData(0, 0, canvas.width, canvas.height);
      let dark = 0;
      for (let i = 0; i < data.length; i += 4) if (data[i] < 60) dark++;
      return { width: canvas.width, first: [...data.slice(0, 4)], dark };
    }, bytes.toString("base64"));
    expect(corner).toMatchObject({ width: pixels, first: [255, 255, 255, 255] });
    expect(corner.dark).toBeGreaterThan(2000);
  });

  test("a native chart is inserted on a sheet of its own; no other sheet changes", async () => {
    const names = await sheetNames(page);
    const before = await valuesOf(page, SHEET, "A1:P250");
    await pane.getByRole("button", { name: "Insert chart" }).click();
    await pane.getByRole("status").filter({ hasText: "was made" }).waitFor();
    const after = await sheetNames(page);
    expect(after.filter((name) => !names.includes(name))).toEqual(["Chart of Demonstration"]);
    expect(await valuesOf(page, SHEET, "A1:P250")).toEqual(before);
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "plots-chart");
  });

  test("in dark and high contrast nothing is lost, and axe finds nothing", async () => {
    await page.emulateMedia({ colorScheme: "dark" });
    await settled(paneFrame(page));
    expect(await paneViolations(page)).toEqual([]);
    await takePicture(page, "plots-dark");
    await page.emulateMedia({ colorScheme: "light", forcedColors: "active" });
    await settled(paneFrame(page));
    await takePicture(page, "plots-high-contrast");
    await page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
  });

  test("nothing is cut off in 320 px", async () => {
    await page.getByRole("separator", { name: "Width of the pane" }).focus();
    for (let step = 0; step < 4; step++) await page.keyboard.press("ArrowRight");
    for (const name of ["Compression curve", "Time curve of a load", "cv against stress", "All loads"]) {
      await choose(name);
      const { shown, content } = await paneWidths(page);
      expect(shown).toBeLessThanOrEqual(320);
      expect([name, content]).toEqual([name, shown]);
      await takePicture(page, `plots-320-${name.split(" ")[0].toLowerCase()}`);
    }
    expect(await paneViolations(page)).toEqual([]);
  });

  test("the page reports no error and sends no request elsewhere", () => expect(complaints).toEqual([]));
});
