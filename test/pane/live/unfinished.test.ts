import { cutOff, noted } from "../../../src/pane/live/unfinished";
import { FakePort } from "../fake-port";

const workbook = (): FakePort => {
  const port = new FakePort();
  port.onlySheets("Test 7", "Summary");
  return port;
};

test("a note stands as long as the work goes on, and is taken out when it ends or fails", async () => {
  const port = workbook();
  const seen = () => port.notes.map(({ kind, sheet }) => `${kind} of ${sheet}`);
  expect(await noted(port, "summary", "Summary", async () => seen())).toEqual(["summary of Summary"]);
  expect(port.notes).toEqual([]);
  const failing = noted(port, "summary", "Summary", () => Promise.reject(new Error("refused")));
  await expect(failing).rejects.toThrow("refused");
  expect(port.notes).toEqual([]);
});

test("the result of the work is given even if the note cannot be taken out", async () => {
  const port = workbook();
  port.failing.strikeWork = new Error("busy");
  expect(await noted(port, "layout", "Test 7", async () => 5)).toBe(5);
  expect(await cutOff(port)).toHaveLength(1);
});

test("work that was cut off is found, without sheets that are deleted since and protections that are on again", async () => {
  const port = workbook();
  for (const sheet of ["Test 7", "Gone"]) await port.noteWork("sheet", sheet);
  for (const sheet of ["Test 7", "Summary"]) await port.noteWork("protection", sheet);
  await port.noteWork("readings", "Gone");
  await port.protect("Summary", true);
  const open = (await cutOff(port)).map(({ kind, sheet }) => `${kind} of ${sheet}`);
  expect(open).toEqual(["sheet of Test 7", "protection of Test 7", "readings of Gone"]);
  expect(port.notes).toHaveLength(3);
});
