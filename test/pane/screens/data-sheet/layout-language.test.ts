/** A name is attached with its formula in the language of the pane, or in that of the formulas that stand there. */
import { attachName } from "../../../../src/pane/screens/data-sheet/firm-cells";
import { setLanguage } from "../../../../src/pane/text/language";
import { FakePort } from "../../fake-port";

afterEach(() => setLanguage("en"));

/** Attaches a name to the cells, and returns the formula of the first of them. */
async function attached(port: FakePort, name: string, address: string, rows: number): Promise<unknown> {
  port.select(
    Array.from({ length: rows }, () => [""]),
    address,
  );
  await attachName(port, name, false);
  return port.sheet(port.workbook.front).cells.get(address.split(":")[0]!)?.formula;
}

test("the first formula of a firm's sheet is in the language of the pane, and the later ones in its language", async () => {
  const port = new FakePort();
  port.addSheets("Formular");
  port.workbook.front = "Formular";
  for (const [name, col] of [
    ["load_number", "A"],
    ["load_stress", "B"],
    ["load_mark", "C"],
  ] as const)
    await attached(port, name, `${col}5:${col}8`, 4);
  setLanguage("de");
  expect(await attached(port, "load_branch", "D5:D8", 4)).toMatch(/"belastet"/);
  setLanguage("en");
  expect(await attached(port, "load_method", "E5:E8", 4)).toMatch(/"log t"/);
});
