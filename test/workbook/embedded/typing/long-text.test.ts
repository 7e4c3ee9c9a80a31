/** A text that no cell of Excel takes, typed or pasted by a person: refused like those that the pane writes, and like those of a file. */
import "../engine-in-node";
import { EmbeddedPort, newWorkbook } from "../../../../src/workbook/embedded";
import { tellRefusals, whileLifted } from "../../../../src/workbook/embedded/protection";
import { english } from "../../../../src/reduction/message";

afterEach(() => tellRefusals(() => undefined));

const LINES = "x\n".repeat(254);

test("is refused with its cell and the limit, and the cell stays as it was", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const { model } = port.workbook;
  const sheetId = model.getters.getActiveSheetId();
  const said: unknown[] = [];
  tellRefusals((sentence, place) => said.push([english(sentence), place]));
  const put = (row: number, content: string) => model.dispatch("UPDATE_CELL", { sheetId, row, col: 1, content });
  put(0, "as it was");
  expect(put(0, LINES).isSuccessful).toBe(false);
  expect(put(1, "x".repeat(32_768)).isSuccessful).toBe(false);
  const taken = ["x\n".repeat(253), "x".repeat(32_767)];
  expect(taken.map((content, at) => put(2 + at, content).isSuccessful)).toEqual([true, true]);
  expect(said).toEqual([
    [
      "B1 was not changed: its text has 254 line feeds, and 253 at most are taken. Shorten the text.",
      { sheetId, row: 0, col: 1 },
    ],
    [
      "B2 was not changed: its text has 32768 characters, and 32767 at most are taken. Shorten the text.",
      { sheetId, row: 1, col: 1 },
    ],
  ]);
  expect(await port.values("Sheet1", "B1:B2")).toEqual([["as it was"], [""]]);
});

test("is not asked of what the add-in itself writes, which it has checked", () => {
  const { model } = newWorkbook();
  const sheetId = model.getters.getActiveSheetId();
  const done = whileLifted(() => model.dispatch("UPDATE_CELL", { sheetId, row: 0, col: 0, content: LINES }));
  expect(done.isSuccessful).toBe(true);
});
