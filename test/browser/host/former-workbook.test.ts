/** The page lets go of a workbook when another takes its place: one of 40 data sheets takes some 200 MB. */
import { eventually, withBrowser } from "../page";

withBrowser("a workbook that another has replaced", (openPage) => {
  // In dist alone: there the minimizer had written a function into another, and what it left with the engine held the first workbook.
  test("is held by nothing, whether the page began with it or opened it", async () => {
    const { page, complaints } = await openPage();
    const openAgain = (): Promise<void> =>
      page.evaluate(async () => {
        const { clayledger, former = [] } = window as any;
        (window as any).former = [...former, new WeakRef(clayledger.port.workbook.model)];
        await clayledger.open(await clayledger.save(), "again.xlsx");
      });
    await openAgain();
    await openAgain();
    const session = await page.context().newCDPSession(page);
    await eventually(async () => {
      await session.send("HeapProfiler.collectGarbage");
      const held = await page.evaluate(() => (window as any).former.filter((one: any) => one.deref()).length);
      return held === 0;
    });
    await session.detach();
    expect(complaints).toEqual([]);
  });
});
