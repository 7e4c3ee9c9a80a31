/** Which sheet is in front: through a file, and past undo and redo. */
import "./engine-in-node";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../../src/workbook/embedded";
import { RING } from "../contract-bench";

async function workbook() {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertSheet({ ...RING, name: "First" });
  await port.insertSheet({ ...RING, name: "Second" });
  // The engine lists its own commands only: a loosening for plain ones.
  const dispatch = (type: string) => (port.workbook.model.dispatch as unknown as (type: string) => unknown)(type);
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
