/** A long redo: the page tells its progress, and its stop leaves the workbook as it was. */
import { showSheet, withBrowser } from "../page";

withBrowser("a long redo", (openPage) => {
  test("is stopped, and asked for again", async () => {
    const { page, complaints } = await openPage();
    const sheets = (): Promise<string[]> => page.evaluate(() => (window as any).clayledger.port.sheetNames());
    const step = (type: string) =>
      page.evaluate((type) => (window as any).clayledger.port.workbook.model.dispatch(type), type);
    const untilThere = (count: number) =>
      page.evaluate(async (n) => {
        const { port } = (window as any).clayledger;
        while ((await port.sheetNames()).length !== n) await new Promise((next) => setTimeout(next, 50));
      }, count);
    // The sheets of the workbook, inserted into itself three times, are more commands than a redo does at once.
    for (let time = 0; time < 3; time++)
      await page.evaluate(async () => {
        const { port, save } = (window as any).clayledger;
        await port.insertFile(await save());
      });
    const after = await sheets();
    await step("REQUEST_UNDO");
    const before = await sheets();
    expect(before.length).toBe(after.length / 2);
    await showSheet(page, "Demonstration");
    const row = (): Promise<number> =>
      page.evaluate(() => (window as any).clayledger.port.workbook.model.getters.getActivePosition().row);

    await page.evaluate(() => {
      const stop = document.querySelector<HTMLButtonElement>("#work-stop")!;
      new MutationObserver((_, observer) => {
        if (document.querySelector<HTMLProgressElement>("#work-share")!.value === 0) return;
        observer.disconnect();
        (window as any).told = document.querySelector("#work-words")!.textContent;
        stop.focus();
        stop.click();
      }).observe(document.querySelector("#work")!, { attributes: true, subtree: true });
    });
    await page.keyboard.press("Control+y");
    await page.locator("#message", { hasText: /^Stopped: the workbook is as it was/ }).waitFor();
    expect(await page.evaluate(() => (window as any).told)).toBe("Doing the step again");
    expect(await sheets()).toEqual(before);
    expect(await page.locator("#work").isVisible()).toBe(false);

    // The button that stopped it has gone: the keys go to the sheet.
    const at = await row();
    await page.keyboard.press("ArrowDown");
    expect(await row()).toBe(at + 1);
    await page.keyboard.press("Control+y");
    await untilThere(after.length);
    expect(await sheets()).toEqual(after);
    expect(complaints).toEqual([]);
  });
});
