/** Which sheet is in front: through a file, and past undo and redo. */
import "./engine-in-node";
import { blankSheet } from "../../../src/datasheet";
import { HAND_TIMES } from "../../../src/specification/readings";
import { cellAddress } from "../../../src/workbook/address";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../src/workbook/embedded";
import { RING } from "../contract-bench";

async function workbook() {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet({ ...RING, name: "First" });
  await port.insertSheet({ ...RING, name: "Second" });
  // The engine lists its own commands only: a loosening for plain ones.
  const dispatch = (type: string, payload: object = {}) =>
    (port.workbook.model.dispatch as unknown as (type: string, payload: object) => unknown)(type, payload);
  return { port, dispatch };
}

test.each(["Sheet1", "First", "Second"])(
  "a file that was saved with %s in front opens with it in front",
  async (sheet) => {
    const { port } = await workbook();
    await port.show(sheet, "A1");
    expect(await new EmbeddedPort(openXlsx(await saveXlsx(port.workbook)).workbook).activeSheet()).toBe(sheet);
  },
);

test("undo of an insertion shows the sheet from before it, and redo shows the inserted one", async () => {
  const { port, dispatch } = await workbook();
  await port.show("Sheet1", "A1");
  await port.insertSheet({ ...RING, name: "Third" });
  expect(await port.activeSheet()).toBe("Third");
  dispatch("REQUEST_UNDO");
  expect(await port.activeSheet()).toBe("Sheet1");
  dispatch("REQUEST_REDO");
  expect(await port.activeSheet()).toBe("Third");
  expect(await port.sheetNames()).toEqual(["Sheet1", "First", "Second", "Third"]);
});

test("undo of a change on another sheet leaves the sheet in front that is there", async () => {
  const { port, dispatch } = await workbook();
  await port.show("First", "A1");
  await port.fillNames("First", { ring: [80] });
  await port.show("Sheet1", "A1");
  dispatch("REQUEST_UNDO");
  expect(await port.activeSheet()).toBe("Sheet1");
  dispatch("REQUEST_REDO");
  expect(await port.activeSheet()).toBe("Sheet1");
});

test("a person who goes to another sheet after undo stays there", async () => {
  const { port, dispatch } = await workbook();
  await port.insertSheet({ ...RING, name: "Third" });
  dispatch("REQUEST_UNDO");
  await port.show("First", "A1");
  await port.fillNames("First", {});
  expect(await port.activeSheet()).toBe("First");
});

describe("a cell of a data sheet that is shown", () => {
  const plan = blankSheet("SI");

  /** The port with the data sheet in a window of 930 by 690 pixels, and what the window shows below the frozen row. */
  async function inWindow() {
    const { port, dispatch } = await workbook();
    await port.insertSheet(plan);
    const payload = { width: 930, height: 690, gridOffsetX: 0, gridOffsetY: 0 };
    dispatch("RESIZE_SHEETVIEW", payload);
    return { port, inSight: () => port.workbook.model.getters.getActiveMainViewport() };
  }

  test("of the readings: their title is at the top of the window, and the schedule below it", async () => {
    const { port, inSight } = await inWindow();
    const { row, col } = plan.names.times_01;
    await port.show(plan.name, cellAddress(row, col));
    const title = plan.cells.find(({ value, kind }) => value === "Readings" && kind === "heading");
    expect(inSight().top).toBe(title?.row);
    expect(inSight().bottom).toBeGreaterThanOrEqual(row + HAND_TIMES.length - 1);
  });

  test("of the results: its label is in sight beside it", async () => {
    const { port, inSight } = await inWindow();
    const { row, col } = plan.names.preconsolidation_stress;
    await port.show(plan.name, cellAddress(row, col));
    expect(inSight().left).toBeLessThanOrEqual(col - 3);
    expect(inSight().right).toBeGreaterThan(col);
  });

  test("that is in sight already: nothing moves", async () => {
    const { port, inSight } = await inWindow();
    const before = inSight();
    await port.show(plan.name, "D12");
    expect(inSight()).toEqual(before);
  });
});
