/** Whatever others have in a file, what the page saves of it has no complaint. */
import "../workbook/embedded/engine-in-node";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx } from "../../src/workbook/embedded";
import { complaintsOfEach } from "./complaints";
import { richFile } from "./files/rich-file";
import { elements, Package } from "./package";

let rich: Uint8Array;
beforeAll(async () => void (rich = await richFile()));

async function inserted(): Promise<Uint8Array> {
  const port = new EmbeddedPort(newWorkbook());
  await port.insertFile(rich);
  return saveXlsx(port.workbook);
}

const SAVED: Readonly<Record<string, () => Promise<Uint8Array>>> = {
  "opened and saved": () => saveXlsx(openXlsx(rich).workbook),
  "opened and saved twice": async () => saveXlsx(openXlsx(await saveXlsx(openXlsx(rich).workbook)).workbook),
  "opened and saved with values": () =>
    saveXlsx(openXlsx(rich).workbook, undefined, { sheet: "Values", lines: ["A copy with values."] }),
  "inserted and saved": inserted,
};

describe("a file of others", () => {
  let complaints: string[][];
  beforeAll(async () => {
    const files: Uint8Array[] = [];
    for (const make of Object.values(SAVED)) files.push(await make());
    complaints = complaintsOfEach(files);
  });

  test.each(Object.keys(SAVED).map((how, index) => ({ how, index })))("$how", ({ index }) => {
    expect(complaints[index]).toEqual([]);
  });
});

test("conditional formats keep their order, and those of a text their text", async () => {
  const file = new Package(await saveXlsx(openXlsx(rich).workbook));
  const rules = elements(file.xml(file.sheets[0].path), "cfRule");
  expect(rules.map((rule) => [rule.getAttribute("type"), rule.getAttribute("priority")])).toEqual([
    ["containsText", "1"],
    ["colorScale", "2"],
    ["expression", "3"],
    ["top10", "4"],
  ]);
  expect(rules[0].getAttribute("text")).toBe("x");
});

test("newer functions keep their prefixes, and FILTER spills as before", async () => {
  const file = new Package(await saveXlsx(openXlsx(rich).workbook));
  const text = file.text(file.sheets[0].path);
  for (const formula of [
    "_xlfn.STDEV.S(A2:A9)",
    '_xlfn.TEXTJOIN(",",TRUE,A2:A4)',
    "_xlfn.XLOOKUP(1,A2:A9,A2:A9)",
    "_xlfn.LET(_xlpm.a,2,_xlpm.a*3)",
  ])
    expect(text).toContain(`>${formula}</f>`);
  expect(text).toMatch(/<c r="C5" cm="1"[^>]*><f t="array" ref="C5">_xlfn\._xlws\.FILTER\(A2:A9,A2:A9&gt;0\)<\/f>/);
});
