/** The review of the compression curve beside a real sheet: by pointer, by keys and by numbers; saved and taken back. */
import type { FrameLocator, Locator, Page } from "playwright-core";
import {
  eventually,
  paneFrame,
  paneViolations,
  paneWidths,
  readNames,
  setPaneWidth,
  settled,
  takePicture,
  withBrowser,
  type HostPage,
} from "../page";

const SHEET = "Demonstration";

withBrowser("the review of the compression curve", (openPage) => {
  let host: HostPage;
  let page: Page;
  let pane: FrameLocator;

  const handle = (name: string): Locator => pane.getByRole("slider", { name, exact: true });
  const valueOf = async (name: string): Promise<number> => Number(await handle(name).getAttribute("aria-valuenow"));
  const inSight = (): Locator => pane.getByRole("group", { name: "Stress and indices, and what is being changed" });
  const onSheet = async (name: string, row = 0) => (await readNames(page, SHEET, [name]))[name][row][0];
  const picks = async () => {
    const names = ["pick_load", "pick_of", "pick_before", "pick_after", "pick_reason", "pick_by"];
    const columns = await readNames(page, SHEET, names);
    return columns.pick_load.flatMap(([load], row) =>
      load === "" ? [] : [names.map((name) => columns[name][row][0])],
    );
  };
  const told = (sentence: string | RegExp) => pane.getByRole("status").filter({ hasText: sentence }).waitFor();

  beforeAll(async () => {
    host = await openPage();
    page = host.page;
    pane = page.frameLocator("#pane");
    await pane.getByRole("tab", { name: "Review" }).click();
    await pane.getByRole("heading", { name: "Review of the curves" }).waitFor();
    await pane.getByRole("combobox", { name: "Load" }).selectOption("curve");
    await handle("Greatest curvature").waitFor();
  });

  test.each([320, 480])("fits a pane of %d px, without violations", async (width) => {
    await setPaneWidth(page, width);
    await settled(paneFrame(page));
    await takePicture(page, `curve-review-${width}`);
    const { shown, content } = await paneWidths(page);
    expect(content).toBeLessThanOrEqual(shown);
    for (const name of ["Greatest curvature", "Virgin line from", "Recompression to", "Unloading from"]) {
      const box = (await handle(name).boundingBox())!;
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(24);
    }
    expect(await paneViolations(page)).toEqual([]);
  });

  test("the stress and Cc in sight are those of the sheet; dragging changes the stress, and writes nothing", async () => {
    const stress = Number(await onSheet("preconsolidation_stress"));
    await inSight()
      .getByText(`${Number(stress.toPrecision(3))} kPa`)
      .waitFor();
    await inSight()
      .getByText(Number(await onSheet("compression_index")).toPrecision(3))
      .waitFor();
    const before = await valueOf("Greatest curvature");
    const box = (await handle("Greatest curvature").boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 25, y, { steps: 5 });
    await page.mouse.up();
    await eventually(async () => (await valueOf("Greatest curvature")) > before);
    await inSight()
      .getByText(/^before .* kPa \([+−]/)
      .first()
      .waitFor();
    expect(await picks()).toEqual([]);
    await takePicture(page, "curve-review-dragged");
    expect(await paneViolations(page)).toEqual([]);
    await handle("Greatest curvature").press("Escape");
    await pane.getByText("Nothing is changed.").waitFor();
  });

  test("an end moved by a key and one typed are saved together, and the sheet's stress, Cc and the source named follow", async () => {
    const [stress, Cc] = [Number(await onSheet("preconsolidation_stress")), Number(await onSheet("compression_index"))];
    const [from, to] = [await valueOf("Virgin line from"), await valueOf("Virgin line to")];
    await handle("Virgin line to").press("ArrowLeft");
    const moved = await valueOf("Virgin line to");
    expect(moved).toBeLessThan(to);
    await pane.getByLabel("Greatest curvature (kPa)").fill("95");
    await pane.getByRole("textbox", { name: "Reason" }).fill("the last load is flatter");
    await pane.getByRole("textbox", { name: "Initials" }).fill("AB");
    await pane.getByRole("button", { name: "Save in “Demonstration”" }).click();
    await told("2 changes are in the table of picks");
    expect(await picks()).toEqual([
      ["curve", "greatest curvature", expect.any(Number), 95, "the last load is flatter", "AB"],
      ["curve", "virgin to", to, moved, "the last load is flatter", "AB"],
    ]);
    expect(from).toBeLessThan(moved);
    expect(Number(await onSheet("preconsolidation_stress"))).not.toBeCloseTo(stress, 2);
    expect(Number(await onSheet("compression_index"))).not.toBeCloseTo(Cc, 5);
    expect(await onSheet("adopted_source")).toBe("as by Casagrande, by a pick");
    await inSight()
      .getByText(`${Number(Number(await onSheet("preconsolidation_stress")).toPrecision(3))} kPa`)
      .waitFor();
    await pane.getByText("the last load is flatter; AB").first().waitFor();
    await takePicture(page, "curve-review-saved");
  });

  test("what was saved together is taken back together, and the sheet has its own numbers again", async () => {
    await pane.getByRole("button", { name: "Undo the last change…" }).click();
    await told(/clears rows 1 to 2 .*Compression curve/);
    await pane.getByRole("button", { name: "Take it back" }).click();
    await told("Cleared in the table of picks of “Demonstration”: rows 1 to 2.");
    expect(await picks()).toEqual([]);
    expect(await onSheet("adopted_source")).toBe("as by Casagrande");
  });

  test("another method is drawn in its own plane, and says how many handles it has", async () => {
    await pane.getByRole("combobox", { name: "Drawn by" }).selectOption("work");
    await pane.getByRole("img", { name: /^Work per unit volume/ }).waitFor();
    expect(await pane.getByRole("slider").count()).toBe(4);
    await takePicture(page, "curve-review-work");
    await pane.getByRole("combobox", { name: "Drawn by" }).selectOption("janbu");
    await pane.getByText("there is nothing to pick").waitFor();
    expect(await paneViolations(page)).toEqual([]);
  });

  test("the page reports no error and sends no request elsewhere", () => expect(host.complaints).toEqual([]));
});
