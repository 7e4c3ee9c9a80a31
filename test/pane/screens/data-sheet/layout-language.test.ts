/** A name is attached with its formula in the language of the pane, or in that of the formulas that stand there. */
import { attachName } from "../../../../src/pane/screens/data-sheet/firm-cells";
import { lookAtSheet } from "../../../../src/pane/screens/data-sheet/sheet-upkeep";
import { setLanguage } from "../../../../src/pane/text/language";
import type { CellValue } from "../../../../src/workbook/port";
import { FakePort } from "../../fake-port";

afterEach(() => setLanguage("en"));

/** Attaches a name to cells with this content, and returns the formula of the first of them. */
async function attached(
  port: FakePort,
  name: string,
  address: string,
  rows: number,
  content: CellValue = "",
): Promise<unknown> {
  port.select(
    Array.from({ length: rows }, () => [content]),
    address,
  );
  await attachName(port, name, false);
  return port.sheet(port.workbook.front).cells.get(address.split(":")[0]!)?.formula;
}

/** A firm's sheet with the inputs of the branch of a load, and no formula yet. */
async function firmSheet(): Promise<FakePort> {
  const port = new FakePort();
  port.addSheets("Formular");
  port.workbook.front = "Formular";
  for (const [name, col, content] of [
    ["load_number", "A", 1],
    ["load_stress", "B", ""],
    ["load_mark", "C", ""],
  ] as const)
    await attached(port, name, `${col}5:${col}8`, 4, content);
  return port;
}

test("the first formula of a firm's sheet is in the language of the pane, and the later ones in its language", async () => {
  const port = await firmSheet();
  setLanguage("de");
  expect(await attached(port, "load_branch", "D5:D8", 4)).toMatch(/"belastet"/);
  setLanguage("en");
  expect(await attached(port, "load_method", "E5:E8", 4)).toMatch(/"log t"/);
});

test("a formula that takes the place of a constant is in the language of the pane where no formula says the sheet's", async () => {
  const port = await firmSheet();
  await attached(port, "load_branch", "D5:D8", 4, "x");
  setLanguage("de");
  const { formulas } = await lookAtSheet(port, "Formular");
  expect(formulas.map(({ kind }) => kind)).toContain("overwritten");
  for (const { mend } of formulas) expect(mend?.[0]?.formula).toMatch(/"belastet"/);
});
