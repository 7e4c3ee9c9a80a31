/** The contract of `WorkbookPort` for writing formulas and constants into cells by their position. */
import type { CellValue } from "../../src/workbook/port";
import { RING, type Host } from "./contract-bench";
import { CANNOT_UNDO, HAS_NO_PASSWORD, LOCKS_NO_SHEET, columnOf, either, refuses, withRing } from "./contract-steps";

export function writingContract(host: Host): void {
  describe("writeCells", () => {
    test("writes formulas that refer to names of the sheet, and constants", async () => {
      const bench = await withRing(host);
      await bench.port.nameAll("Ring", [{ name: "dry", address: "D3:D4" }]);
      await bench.port.writeCells("Ring", [
        { row: 3, col: 3, formula: "={wet}-{ring}" },
        { row: 2, col: 3, formula: '=IF({ring}="","{ring}",{wet})' },
        { row: 5, col: 3, value: "=1" },
        { row: 6, col: 3, value: 4 },
      ]);
      expect((await bench.port.readContents("Ring", ["dry"])).dry).toEqual([
        ['=IF(ring="","{ring}",wet)'],
        ["=wet-ring"],
      ]);
      expect(await bench.port.values("Ring", "D6:D7")).toEqual([["=1"], [4]]);
      await bench.port.writeCells("Ring", []);
    });

    test("refers to the names of the sheet itself if several sheets have the same names", async () => {
      const bench = await withRing(host);
      await bench.port.insertSheet(RING);
      for (const sheet of ["Ring", "Ring 2"]) {
        await bench.port.nameAll(sheet, [{ name: "dry", address: "D3" }]);
        await bench.port.writeCells(sheet, [{ row: 2, col: 3, formula: "={wet}-{ring}" }]);
        expect((await bench.port.readContents(sheet, ["dry"])).dry).toEqual([["=wet-ring"]]);
      }
    });

    test("reads back a formula that refers to names of other sheets together with the sheets", async () => {
      const bench = await host.open();
      await bench.port.insertSheet(RING);
      await bench.port.insertSheet(RING);
      await bench.port.nameAll("Sheet1", [{ name: "both", address: "A1" }]);
      await bench.port.writeCells("Sheet1", [{ row: 0, col: 0, formula: "={'Ring'!ring}+{'Ring 2'!wet}" }]);
      expect((await bench.port.readContents("Sheet1", ["both"])).both).toEqual([["='Ring'!ring+'Ring 2'!wet"]]);
    });

    either(
      host,
      "calculates",
      [
        "a formula reads the name of another sheet, and follows it, whatever that sheet is called",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.port.insertSheet(RING);
          await bench.renameSheet("Ring 2", "Ring of load 2");
          await bench.port.writeCells("Sheet1", [
            { row: 0, col: 0, formula: "={'Ring'!ring}+1" },
            { row: 0, col: 1, formula: "={'Ring of load 2'!ring}+{'Ring'!wet}" },
          ]);
          await bench.port.fillNames("Ring of load 2", { ring: [1] });
          expect(await bench.port.values("Sheet1", "A1:B1")).toEqual([[75.36, 212.03]]);
          await bench.port.nameAll("Sheet1", [{ name: "second", address: "B1" }]);
          expect((await bench.port.readContents("Sheet1", ["second"])).second).toEqual([
            ["='Ring of load 2'!ring+'Ring'!wet"],
          ]);
        },
      ],
      [
        "a formula shows what a test says",
        async (bench) => expect(await bench.port.values("Sheet1", "A1")).toEqual([[""]]),
      ],
    );

    test("leaves the formats of the cells unchanged", async () => {
      const bench = await withRing(host);
      await bench.port.writeCells(
        "Ring",
        [
          { row: 3, col: 1, formula: "={wet}*2" },
          { row: 7, col: 1, formula: "={wet}*3" },
        ],
        true,
      );
      const [formatted, plain] = [await bench.cell("Ring", "B4"), await bench.cell("Ring", "B8")];
      expect([formatted.format, formatted.note, plain.format]).toEqual(["0.000", "Mass of the wet soil", ""]);
    });

    test("gives a cell a number format if the content has one", async () => {
      const bench = await withRing(host);
      await bench.port.writeCells("Ring", [{ row: 10, col: 3, formula: "={wet}", format: "0.0%" }]);
      expect((await bench.cell("Ring", "D11")).format).toBe("0.0%");
    });

    test("overwrites nothing unless the cells may be replaced", async () => {
      const bench = await withRing(host);
      const cells = [
        { row: 10, col: 3, formula: "={wet}" },
        { row: 1, col: 1, formula: "={wet}" },
      ];
      await refuses(bench, () => bench.port.writeCells("Ring", cells), /B2 .*holds 74\.36 already/);
      await refuses(bench, () => bench.port.writeCells("Ring", [{ row: 3, col: 1, value: 1 }]), /B4 .*holds =/);
      await bench.port.writeCells("Ring", cells, true);
      expect((await bench.port.readContents("Ring", ["ring"])).ring).toEqual([["=wet"]]);
      await bench.port.writeCells("Ring", [{ row: 3, col: 1, value: "" }], true);
      expect(await columnOf(bench, "Ring", "soil")).toEqual([""]);
    });

    test("refuses, and then writes none of the contents", async () => {
      const bench = await withRing(host);
      const good = { row: 10, col: 3, formula: "={wet}" };
      const says = (cell: { row: number; col: number } & ({ formula: string } | { value: CellValue }), what: RegExp) =>
        refuses(bench, () => bench.port.writeCells("Ring", [good, cell], true), what);
      await says({ row: 11, col: 3, formula: "={absent}" }, /D12 .*refers to "absent", which has no cells on .*"Ring"/);
      await says(
        { row: 11, col: 3, formula: "={'Sheet1'!ring}" },
        /refers to "ring", which has no cells on .*"Sheet1"/,
      );
      await says({ row: 11, col: 3, formula: "={'Nowhere'!ring}" }, /refers to "ring", .*"Nowhere"/);
      await says({ row: 11, col: 3, formula: "wet" }, /begins with =/);
      await says({ row: 11, col: 3, formula: `="${"x".repeat(8_192)}"` }, /8192/);
      await says({ row: 11, col: 3, value: "x".repeat(32_768) }, /32767/);
      await says({ row: 11, col: 3, value: "x\n".repeat(254) }, /254 line feeds, and 253/);
      await says({ row: -1, col: 3, value: 1 }, /no sheet has/);
      await says({ row: 10, col: 3, value: 1 }, /written twice/);
      await refuses(bench, () => bench.port.writeCells("Nowhere", [good]), /no sheet called "Nowhere"/);
    });

    test("refuses a formula in a cell with the format of text, where it would stay a text", async () => {
      const bench = await host.open();
      await bench.port.insertSheet({
        ...RING,
        cells: [...RING.cells, { row: 10, col: 1, kind: "input", format: "@" }],
      });
      const write = (content: { formula: string } | { value: string }) =>
        bench.port.writeCells("Ring", [{ row: 10, col: 1, ...content }]);
      await refuses(bench, () => write({ formula: "={wet}" }), /B11 .*format of a text.*General/);
      await write({ value: "00123" });
      expect(await bench.port.values("Ring", "B11")).toEqual([["00123"]]);
    });

    test("writes into a protected sheet, which stays protected", async () => {
      const bench = await withRing(host, true);
      await bench.port.writeCells("Ring", [{ row: 3, col: 1, formula: "={wet}" }], true);
      expect((await bench.port.readContents("Ring", ["soil"])).soil).toEqual([["=wet"]]);
      expect(await bench.port.isProtected("Ring")).toBe(true);
      expect(await bench.mayType("Ring", "B4", 5)).toBe(false);
    });

    test("writes nothing if rows were inserted, or a name was moved, since the places were found", async () => {
      const bench = await withRing(host);
      const { port } = bench;
      const names = await port.listNames("Ring");
      const write = () => port.writeCells("Ring", [{ row: 10, col: 3, value: 1 }], false, names);
      await write();
      await port.nameAll("Ring", [{ name: "wet", address: "B9", replace: true }]);
      await refuses(bench, write, /Rows or columns of the sheet "Ring" were inserted or deleted in the meantime/);
      await port.writeCells("Ring", [{ row: 10, col: 3, value: 2 }], true);
      await bench.deleteRow("Ring", 0);
      await refuses(bench, write, /Nothing was written/);
    });

    test("writes nothing if a cell shows another value than was seen", async () => {
      const bench = await withRing(host);
      const cell = { row: 1, col: 1, value: 2, shown: 74.36 };
      await bench.port.writeCells("Ring", [cell], true);
      await refuses(bench, () => bench.port.writeCells("Ring", [cell], true), /B2 .*somebody else has changed it/);
    });

    test("overwrites the cells that say that they may be", async () => {
      const bench = await withRing(host);
      const cells = [
        { row: 10, col: 3, value: 1 },
        { row: 1, col: 1, value: 2, replaces: true },
      ];
      await bench.port.writeCells("Ring", cells);
      expect(await columnOf(bench, "Ring", "ring")).toEqual([2]);
    });

    test("adds rows to a sheet if cells beyond its last row are written", async () => {
      const bench = await withRing(host);
      await bench.port.writeCells("Ring", [{ row: 400, col: 40, value: "below" }]);
      expect(await bench.port.values("Ring", "AO401")).toEqual([["below"]]);
    });

    either(
      host,
      "undoes",
      [
        "is one step of undo",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.port.writeCells("Ring", [
            { row: 7, col: 1, formula: "={wet}" },
            { row: 8, col: 1, value: 3 },
          ]);
          await bench.undo!();
          expect(await columnOf(bench, "Ring", "readings")).toEqual(["", ""]);
        },
      ],
      CANNOT_UNDO,
    );

    either(
      host,
      "hasPasswords",
      [
        "is refused by a protection with a password",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.protectWithPassword!("Ring");
          const write = () => bench.port.writeCells("Ring", [{ row: 7, col: 1, value: 3 }]);
          await refuses(bench, write, /password.*Unprotect Sheet/);
        },
      ],
      HAS_NO_PASSWORD,
    );

    either(
      host,
      "locksSheets",
      [
        "is refused on a sheet that a person locked",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.lockSheet!("Ring");
          const write = () => bench.port.writeCells("Ring", [{ row: 7, col: 1, value: 3 }]);
          await refuses(bench, write, /"Ring" is locked: unlock it/);
        },
      ],
      LOCKS_NO_SHEET,
    );
  });
}
