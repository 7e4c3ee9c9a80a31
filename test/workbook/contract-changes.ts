/** The contract of `WorkbookPort`: the changes of a workbook that listeners hear of. */
import type { Change } from "../../src/workbook/port";
import { RING, type Bench, type Host } from "./contract-bench";

interface Ears {
  readonly bench: Bench;
  /** The kinds of change heard since the last call, each once, and "selection". */
  readonly heard: () => Promise<string[]>;
  readonly leave: () => Promise<void>;
}

async function listening(host: Host): Promise<Ears> {
  const bench = await host.open();
  const kinds = new Set<string>();
  await bench.port.insertSheet(RING);
  await bench.addSheet("Other");
  await bench.select("Sheet1", "A1");
  await bench.settle();
  const leaveChanges = await bench.port.onChange((change: Change) => void kinds.add(change));
  const leaveSelection = await bench.port.onSelect(() => void kinds.add("selection"));
  const heard = async (): Promise<string[]> => {
    await bench.settle();
    const found = [...kinds].sort();
    kinds.clear();
    return found;
  };
  await heard();
  const leave = async (): Promise<void> => {
    leaveChanges();
    leaveSelection();
    await bench.settle();
  };
  return { bench, heard, leave };
}

export function changesContract(host: Host): void {
  describe("onChange and onSelect", () => {
    test("a move of the selection on one sheet is reported as a selection, and not as a change", async () => {
      const { bench, heard } = await listening(host);
      await bench.select("Sheet1", "C3");
      expect(await heard()).toEqual(["selection"]);
      await bench.select("Sheet1", "A1:B4");
      expect(await heard()).toEqual(["selection"]);
    });

    test('a value that a person types is reported as "values" only', async () => {
      const { bench, heard } = await listening(host);
      await bench.type("Sheet1", "A1", 77);
      expect(await heard()).toEqual(["values"]);
    });

    test('cells that the port writes are reported as "values"', async () => {
      const { bench, heard } = await listening(host);
      await bench.port.fillNames("Ring", { ring: [1] });
      expect(await heard()).toEqual(["values"]);
    });

    test("a sheet that comes to the front is reported, and so is its selection", async () => {
      const { bench, heard } = await listening(host);
      await bench.select("Ring", "B2");
      expect(await heard()).toEqual(["front", "selection"]);
      await bench.port.show("Sheet1", "A1");
      expect(await heard()).toEqual(["front", "selection"]);
    });

    test('a sheet that the port makes is reported as "sheets", "values" and "front"', async () => {
      const { bench, heard } = await listening(host);
      await bench.port.insertSheet(RING);
      expect(await heard()).toEqual(["front", "selection", "sheets", "values"]);
    });

    test("sheets that a person adds, renames, moves and deletes are reported", async () => {
      const { bench, heard } = await listening(host);
      await bench.addSheet("New");
      expect(await heard()).toContain("sheets");
      await bench.renameSheet("New", "Newer");
      expect(await heard()).toContain("sheets");
      await bench.moveToFront("Newer");
      expect(await heard()).toContain("sheets");
      await bench.deleteSheet("Newer");
      expect(await heard()).toContain("sheets");
    });

    test('cells that the port gives a name are reported as "sheets"', async () => {
      const { bench, heard } = await listening(host);
      await bench.port.nameAll("Sheet1", [{ name: "tin", address: "B2" }]);
      expect(await heard()).toContain("sheets");
    });

    test("reading is not reported", async () => {
      const { bench, heard } = await listening(host);
      const { port } = bench;
      await port.selection();
      await port.values("Sheet1", "A1:C3");
      await port.readNames("Ring", ["ring"]);
      await port.readSheets(["ring"]);
      await port.hidden("Ring");
      expect(await heard()).toEqual([]);
    });

    test("a listener that has unsubscribed hears nothing, while others still hear", async () => {
      const { bench, heard, leave } = await listening(host);
      const other = jest.fn();
      await bench.port.onChange(other);
      await leave();
      await heard();
      other.mockClear();
      await bench.type("Sheet1", "A1", 78);
      await bench.select("Sheet1", "C3");
      expect(await heard()).toEqual([]);
      expect(other).toHaveBeenCalledWith("values");
    });
  });
}
