/** The contract of `WorkbookPort`: reading the selection, cells and names, and writing named cells. */
import type { CellValue } from "../../src/workbook/port";
import { box, RING, type Bench, type Host } from "./contract-bench";
import { CANNOT_UNDO, LOCKS_NO_SHEET, columnOf, either, refuses, withRing } from "./contract-steps";

/** "Sheet1" with numbers in A1:C3: 11, 12, 13; 21, ... */
async function numbered(host: Host): Promise<Bench> {
  const bench = await host.open();
  for (const row of [1, 2, 3])
    for (const [index, letter] of ["A", "B", "C"].entries())
      await bench.type("Sheet1", `${letter}${row}`, 10 * row + index + 1);
  return bench;
}

export function cellsContract(host: Host): void {
  describe("selection", () => {
    test("gives a cell, or a block row by row, with blanks as empty texts", async () => {
      const bench = await numbered(host);
      await bench.select("Sheet1", "B2");
      expect(await bench.port.selection()).toEqual({ sheet: "Sheet1", address: "B2", values: [[22]] });
      await bench.select("Sheet1", "B3:D4");
      expect(await bench.port.selection()).toEqual({
        sheet: "Sheet1",
        address: "B3:D4",
        values: [
          [32, 33, ""],
          ["", "", ""],
        ],
      });
    });

    test("is read on the sheet in front", async () => {
      const bench = await numbered(host);
      await bench.addSheet("Other");
      await bench.type("Other", "A2", "text");
      await bench.select("Other", "A2:A3");
      expect(await bench.port.selection()).toEqual({ sheet: "Other", address: "A2:A3", values: [["text"], [""]] });
    });

    test("joins blocks of the same rows side by side, in the order of their columns", async () => {
      const bench = await numbered(host);
      await bench.select("Sheet1", "C1:C3", "A1:A3");
      expect(await bench.port.selection()).toEqual({
        sheet: "Sheet1",
        address: "A1:A3,C1:C3",
        values: [
          [11, 13],
          [21, 23],
          [31, 33],
        ],
      });
    });

    test("refuses blocks in different rows, and overlapping blocks", async () => {
      const bench = await numbered(host);
      await bench.select("Sheet1", "A1:A3", "C2:C3");
      await refuses(bench, () => bench.port.selection(), /different rows \(1 to 3, 2 to 3\): pick blocks/);
      await bench.select("Sheet1", "A1:B3", "B1:C3");
      await refuses(bench, () => bench.port.selection(), /picked twice/);
    });

    test("cuts whole columns to the filled rows", async () => {
      const bench = await numbered(host);
      await bench.select("Sheet1", "B:C");
      expect(await bench.port.selection()).toEqual({
        sheet: "Sheet1",
        address: "B1:C3",
        values: [
          [12, 13],
          [22, 23],
          [32, 33],
        ],
      });
    });

    test("cuts whole columns selected apart to the same rows", async () => {
      const bench = await numbered(host);
      await bench.type("Sheet1", "A5", 51);
      await bench.select("Sheet1", "C:C", "A:A");
      const { address, values } = await bench.port.selection();
      expect(address).toBe("A1:A5,C1:C5");
      expect(values).toEqual([
        [11, 13],
        [21, 23],
        [31, 33],
        ["", ""],
        [51, ""],
      ]);
    });
  });

  describe("values", () => {
    test("are those of the range, with blanks as empty texts, to the end of the address", async () => {
      const bench = await numbered(host);
      expect(await bench.port.values("Sheet1", "C3:D4")).toEqual([
        [33, ""],
        ["", ""],
      ]);
      expect(await bench.port.values("Sheet1", "A999:B1002")).toEqual(Array(4).fill(["", ""]));
      expect(await bench.port.values("Sheet1", "ZZ1:ZZ2")).toEqual([[""], [""]]);
    });

    test("of two blocks are joined side by side", async () => {
      const bench = await numbered(host);
      expect(await bench.port.values("Sheet1", "C1:C2, A1:A2")).toEqual([
        [11, 13],
        [21, 23],
      ]);
      await refuses(bench, () => bench.port.values("Sheet1", "A1:A2,B1:B3"), /different rows/);
    });

    test("give the code of an error cell, and a logical value unchanged", async () => {
      const bench = await host.open();
      await bench.type("Sheet1", "A1", "=1/0", "#DIV/0!");
      await bench.type("Sheet1", "A2", "=NA()", "#N/A");
      await bench.type("Sheet1", "A3", true);
      expect(await bench.port.values("Sheet1", "A1:A3")).toEqual([["#DIV/0!"], ["#N/A"], [true]]);
    });

    test("are refused for a sheet that does not exist, and for text that is not an address", async () => {
      const bench = await host.open();
      await refuses(bench, () => bench.port.values("Nowhere", "A1"), /no sheet called "Nowhere"/);
      await refuses(bench, () => bench.port.values("Sheet1", "rubbish cells"), /rubbish/);
    });
  });

  describe("readNames and readContents", () => {
    test("give the cells of each name row by row, and leave out a name that does not exist", async () => {
      const { port } = await withRing(host);
      const read = {
        ring: [[74.36]],
        readings: [[""], [""]],
        table: [
          ["Mass of the ring", 74.36, "g"],
          ["Mass of ring and soil", 211.03, ""],
        ],
      };
      expect(await port.readNames("Ring", ["ring", "absent", "readings", "table"])).toEqual(read);
      expect(await port.readContents("Ring", ["ring", "absent", "readings", "table"])).toEqual(read);
      expect(await port.readNames("Sheet1", ["ring"])).toEqual({});
      expect(await port.readNames("Ring", [])).toEqual({});
    });

    test("give the value and the text of a formula, with names as in the plan, on every sheet of the plan", async () => {
      const bench = await withRing(host);
      await bench.port.insertSheet(RING);
      for (const sheet of ["Ring", "Ring 2"])
        expect((await bench.port.readContents(sheet, ["soil"])).soil).toEqual([["=wet-ring"]]);
    });

    test("accept names like t50, which a spreadsheet reads as a cell", async () => {
      const { port } = await host.open();
      const plan = {
        ...RING,
        cells: [
          ...RING.cells,
          { row: 10, col: 1, kind: "input", value: 3 },
          { row: 11, col: 1, kind: "result", formula: "={t50}+{ring}" },
        ],
        names: { ...RING.names, t50: box(10, 1), twice: box(11, 1) },
      } as const;
      for (const sheet of [await port.insertSheet(plan), await port.insertSheet(plan)]) {
        expect((await port.readNames(sheet, ["t50"])).t50).toEqual([[3]]);
        expect((await port.readContents(sheet, ["twice"])).twice).toEqual([["=t50+ring"]]);
        await port.fillNames(sheet, { t50: [4] });
        expect((await port.readNames(sheet, ["t50"])).t50).toEqual([[4]]);
      }
    });

    test("ignore upper and lower case in a name", async () => {
      const { port } = await withRing(host);
      await port.insertSheet(RING);
      for (const sheet of ["Ring", "Ring 2"])
        expect(await port.readNames(sheet, ["RING"])).toEqual({ RING: [[74.36]] });
    });

    test("read a name of the workbook that leads to cells of the sheet, and no name of another sheet", async () => {
      const bench = await withRing(host);
      await bench.type("Sheet1", "C3", 9);
      await bench.nameForAll("mass_of_tin", "Sheet1", "C3");
      expect(await bench.port.readNames("Sheet1", ["mass_of_tin", "wet"])).toEqual({ mass_of_tin: [[9]] });
      expect(await bench.port.readNames("Ring", ["mass_of_tin"])).toEqual({});
      expect(await bench.port.readContents("Ring", ["mass_of_tin"])).toEqual({});
    });

    test("read a name of the sheet before an equal name of the workbook", async () => {
      const bench = await withRing(host);
      await bench.nameForAll("tin", "Ring", "C2");
      await bench.port.nameAll("Ring", [{ name: "tin", address: "B2" }]);
      expect(await bench.port.readNames("Ring", ["tin"])).toEqual({ tin: [[74.36]] });
      await bench.port.fillNames("Ring", { tin: [70] });
      expect((await bench.port.readNames("Ring", ["table"])).table[0]).toEqual(["Mass of the ring", 70, "g"]);
      expect((await bench.port.listNames("Ring")).filter(({ name }) => name === "tin")).toEqual([
        { name: "tin", scope: "sheet", place: box(1, 1) },
        { name: "tin", scope: "workbook", place: box(1, 2) },
      ]);
    });

    test("leave out a name whose cells were deleted, and read the others at their new places", async () => {
      const bench = await withRing(host);
      await bench.deleteRow("Ring", 1);
      expect(await bench.port.readNames("Ring", ["ring", "wet", "masses"])).toEqual({
        wet: [[211.03]],
        masses: [[211.03]],
      });
    });

    either(
      host,
      "namesBlocks",
      [
        "a name of several blocks is left out, and the others are read",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.nameBlocks!("Ring", "both", ["B2", "B4"]);
          expect(await bench.port.readNames("Ring", ["ring", "both", "wet"])).toEqual({
            ring: [[74.36]],
            wet: [[211.03]],
          });
          expect(await bench.port.readContents("Ring", ["both", "wet"])).toEqual({ wet: [[211.03]] });
        },
      ],
      ["no name has several blocks", async (bench) => expect(bench.nameBlocks).toBeUndefined()],
    );

    test("are refused for a sheet that does not exist", async () => {
      const bench = await host.open();
      await refuses(bench, () => bench.port.readNames("Nowhere", ["ring"]), /no sheet called "Nowhere"/);
      await refuses(bench, () => bench.port.readContents("Nowhere", ["ring"]), /no sheet called "Nowhere"/);
    });
  });

  describe("readSheets", () => {
    test("gives every sheet in the order of the tabs, says which is in front, and gives the names that each has", async () => {
      const bench = await host.open();
      const { port } = bench;
      await port.insertSheet(RING);
      await port.insertSheet({ ...RING, behind: true });
      await port.fillNames("Ring 2", { ring: [70], readings: [1] });
      await bench.nameForAll("tin", "Sheet1", "A1");
      await bench.type("Sheet1", "A1", 9);
      expect(await port.readSheets(["ring", "readings", "absent", "tin"])).toEqual([
        { sheet: "Sheet1", isActive: false, values: { tin: [[9]] } },
        { sheet: "Ring", isActive: true, values: { ring: [[74.36]], readings: [[""], [""]] } },
        { sheet: "Ring 2", isActive: false, values: { ring: [[70]], readings: [[1], [""]] } },
      ]);
      expect(await port.readSheets([])).toEqual(
        ["Sheet1", "Ring", "Ring 2"].map((sheet) => ({ sheet, isActive: sheet === "Ring", values: {} })),
      );
    });

    test("reads hidden sheets too, and leaves out names whose cells were deleted", async () => {
      const bench = await host.open();
      await bench.port.insertSheet({ ...RING, behind: true });
      await bench.deleteRow("Ring", 1);
      await bench.hideSheet("Ring");
      expect(await bench.port.readSheets(["ring", "wet", "t50"])).toEqual([
        { sheet: "Sheet1", isActive: true, values: {} },
        { sheet: "Ring", isActive: false, values: { wet: [[211.03]] } },
      ]);
    });
  });

  describe("findSheets", () => {
    test("gives for every sheet the names that it has, and says which sheet is in front", async () => {
      const bench = await host.open();
      const { port } = bench;
      await port.insertSheet(RING);
      await port.insertSheet({ ...RING, behind: true });
      await bench.deleteRow("Ring 2", 1);
      await bench.nameForAll("tin", "Sheet1", "A1");
      const found = await port.findSheets(["ring", "wet", "absent", "tin"]);
      expect(found.map(({ sheet, isActive, has }) => [sheet, isActive, [...has]])).toEqual([
        ["Sheet1", false, ["tin"]],
        ["Ring", true, ["ring", "wet"]],
        ["Ring 2", false, ["wet"]],
      ]);
      expect(new Set(found.map(({ id }) => id)).size).toBe(3);
    });

    test("knows a sheet by the same id after it was renamed and moved", async () => {
      const bench = await host.open();
      await bench.port.insertSheet(RING);
      const [, { id }] = await bench.port.findSheets([]);
      await bench.renameSheet("Ring", "Ring of load 1");
      await bench.moveToFront("Ring of load 1");
      const [first] = await bench.port.findSheets(["ring"]);
      expect(first).toEqual({ id, sheet: "Ring of load 1", isActive: true, has: ["ring"] });
    });
  });

  describe("lookAt", () => {
    test("gives for several sheets what is asked of each, equal to the answers of the other methods", async () => {
      const bench = await host.open();
      const { port } = bench;
      await port.insertSheet(RING);
      await port.insertSheet({ ...RING, behind: true });
      await port.fillNames("Ring 2", { ring: [70] });
      await bench.hide("Ring", { rows: [5] });
      const [first, second] = await port.lookAt([
        { sheet: "Ring", values: ["ring", "masses", "absent"], contents: ["soil", "ring"], names: true, hidden: true },
        { sheet: "Ring 2", values: ["ring"] },
      ]);
      expect(first).toEqual({
        sheet: "Ring",
        values: await port.readNames("Ring", ["ring", "masses"]),
        contents: await port.readContents("Ring", ["soil", "ring"]),
        names: await port.listNames("Ring"),
        hidden: { rows: [5], cols: [] },
      });
      expect(second).toEqual({ sheet: "Ring 2", values: { ring: [[70]] }, contents: {} });
    });

    test("gives the same if so many names are asked for that all names are searched", async () => {
      const { port } = await host.open();
      await port.insertSheet(RING);
      const many = ["ring", ...Array.from({ length: 60 }, (_, index) => `absent_${index}`), "wet"];
      expect(await port.lookAt([{ sheet: "Ring", values: many }])).toEqual([
        { sheet: "Ring", values: { ring: [[74.36]], wet: [[211.03]] }, contents: {} },
      ]);
    });

    test("answers nothing if nothing is asked for, and refuses a sheet that does not exist", async () => {
      const bench = await host.open();
      expect(await bench.port.lookAt([])).toEqual([]);
      const asked = ["Sheet1", "Nowhere"].map((sheet) => ({ sheet, values: ["ring"] }));
      await refuses(bench, () => bench.port.lookAt(asked), /no sheet called "Nowhere"/);
    });
  });

  describe("countsFrom1904", () => {
    test("is false in a workbook that counts its days from 1900", async () => {
      const { port } = await host.open();
      expect(await port.countsFrom1904()).toBe(false);
    });
  });

  describe("calculate", () => {
    test("leaves the results of a workbook as they are if nothing has changed", async () => {
      const { port } = await host.open();
      await port.insertSheet(RING);
      const before = await port.readNames("Ring", ["ring", "wet"]);
      await port.calculate();
      expect(await port.readNames("Ring", ["ring", "wet"])).toEqual(before);
    });
  });

  describe("hidden", () => {
    test("lists the hidden rows and columns within the filled ones, counted from 0", async () => {
      const bench = await numbered(host);
      expect(await bench.port.hidden("Sheet1")).toEqual({ rows: [], cols: [] });
      await bench.hide("Sheet1", { rows: [1], cols: [0, 1] });
      expect(await bench.port.hidden("Sheet1")).toEqual({ rows: [1], cols: [0, 1] });
    });

    test("lists nothing on a blank sheet, and refuses a sheet that does not exist", async () => {
      const bench = await host.open();
      expect(await bench.port.hidden("Sheet1")).toEqual({ rows: [], cols: [] });
      await refuses(bench, () => bench.port.hidden("Nowhere"), /no sheet called "Nowhere"/);
    });
  });

  describe("fillNames", () => {
    test("writes from the top of each name; null and cells beyond the list stay unchanged, an empty text clears", async () => {
      const bench = await withRing(host);
      await bench.port.fillNames("Ring", { readings: [1.5, 2.5] });
      expect(await columnOf(bench, "Ring", "readings")).toEqual([1.5, 2.5]);
      await bench.port.fillNames("Ring", { readings: [null, 3.5], ring: [70] });
      expect(await columnOf(bench, "Ring", "readings")).toEqual([1.5, 3.5]);
      await bench.port.fillNames("Ring", { readings: [""] });
      expect(await columnOf(bench, "Ring", "readings")).toEqual(["", 3.5]);
      expect(await columnOf(bench, "Ring", "masses")).toEqual([70, 211.03]);
    });

    test("writes across a name of one row, from its first cell on", async () => {
      const bench = await withRing(host);
      await bench.port.nameAll("Ring", [{ name: "lying", address: "E20:H20" }]);
      await bench.port.fillNames("Ring", { lying: [1.5, null, 3.5] });
      expect((await bench.port.readNames("Ring", ["lying"])).lying).toEqual([[1.5, "", 3.5, ""]]);
      await refuses(
        bench,
        () => bench.port.fillNames("Ring", { lying: [1, 2, 3, 4, 5] }),
        /has 4 cells, and 5 are needed/,
      );
      await refuses(bench, () => bench.port.fillNames("Ring", { lying: [1] }, ["lying"]), /holds 2 values already/);
    });

    test("writes the first column of a name only", async () => {
      const bench = await withRing(host);
      await bench.port.fillNames("Ring", { table: ["A ring", null] });
      expect((await bench.port.readNames("Ring", ["table"])).table).toEqual([
        ["A ring", 74.36, "g"],
        ["Mass of ring and soil", 211.03, ""],
      ]);
    });

    test("keeps texts and logical values unchanged", async () => {
      const bench = await withRing(host);
      const texts = [
        "00123",
        "1/2",
        "=1+1",
        "+1",
        "-1",
        "@a",
        "#N/A",
        "'quoted",
        "TRUE",
        "2024-05-01",
        "  a\tb ",
        "1,5;2",
      ];
      for (const value of [...texts, true, false, 0] as CellValue[]) {
        await bench.port.fillNames("Ring", { readings: [value] });
        expect(await columnOf(bench, "Ring", "readings")).toEqual([value, ""]);
      }
    });

    test("writes into the name of this sheet, and into no other sheet of the same plan", async () => {
      const bench = await withRing(host);
      await bench.port.insertSheet(RING);
      await bench.port.fillNames("Ring", { ring: [1] });
      await bench.port.fillNames("Ring 2", { ring: [2] });
      expect([await columnOf(bench, "Ring", "ring"), await columnOf(bench, "Ring 2", "ring")]).toEqual([[1], [2]]);
    });

    test("refuses, and writes none of the values", async () => {
      const bench = await withRing(host);
      const { port } = bench;
      const values = { ring: [1] };
      const says = (more: object, blank: string[], sentence: RegExp) =>
        refuses(bench, () => port.fillNames("Ring", { ...values, ...more }, blank), sentence);
      await says({ absent: [1] }, [], /no cells named "absent"/);
      await says({ readings: [1, 2, 3] }, [], /"readings".*has 2 cells, and 3/);
      await says({ soil: [1] }, [], /Row 1 of "soil".*holds a formula/);
      await says({}, ["wet"], /"wet".*holds 1 value already/);
      await says({}, ["masses"], /"masses".*holds 2 values already/);
      await says({}, ["soil"], /"soil".*holds 1 value already/);
      await says({ readings: [1, "x".repeat(32_768)] }, [], /Row 2 of "readings".*32767/);
      await says({ readings: [1, "x\n".repeat(254)] }, [], /Row 2 of "readings".*253 line feeds/);
      await refuses(bench, () => port.fillNames("Sheet1", values), /no cells named "ring"/);
      await refuses(bench, () => port.fillNames("Nowhere", values), /no sheet called "Nowhere"/);
    });

    test("leaves a formula if no value is given for its cell, and accepts a blank name as blank", async () => {
      const bench = await withRing(host);
      await bench.port.fillNames("Ring", { soil: [null], readings: [5] }, ["readings"]);
      expect((await bench.port.readContents("Ring", ["soil", "readings"])).soil).toEqual([["=wet-ring"]]);
      expect(await columnOf(bench, "Ring", "readings")).toEqual([5, ""]);
    });

    test("fills only blank cells of a free name, and may clear the others", async () => {
      const bench = await withRing(host);
      const { port } = bench;
      const taken = /Row 2 of "masses" on the sheet "Ring" was filled in the meantime/;
      await refuses(bench, () => port.fillNames("Ring", { ring: [1], masses: [null, 5] }, [], ["masses"]), taken);
      await port.fillNames("Ring", { readings: [5, null], ring: [1] }, [], ["readings"]);
      await port.fillNames("Ring", { readings: ["", 6] }, [], ["readings"]);
      expect(await columnOf(bench, "Ring", "readings")).toEqual(["", 6]);
    });

    test("writes only if the cells hold what was seen: a number, a text, a day, a blank cell", async () => {
      const bench = await withRing(host);
      const { port } = bench;
      const [{ ring, wet, readings }] = [await port.readNames("Ring", ["ring", "wet", "readings"])];
      const seen = (values: typeof ring) => values!.map(([value]) => value!);
      const held = { ring: seen(ring), wet: seen(wet), readings: seen(readings) };
      await port.fillNames("Ring", { ring: [1], readings: ["a text", 46_000] }, [], [], held);
      const changed = /Row 1 of "ring" on the sheet "Ring" was changed in the meantime/;
      await refuses(bench, () => port.fillNames("Ring", { ring: [2] }, [], [], held), changed);
      await port.fillNames("Ring", { ring: [2] }, [], [], { ring: [1], readings: ["a text", 46_000] });
      await port.fillNames("Ring", { ring: [3] }, [], [], { readings: [null, 46_000] });
      expect(await columnOf(bench, "Ring", "ring")).toEqual([3]);
    });

    test("writes beside a formula that shows what was seen, and not if it shows something else", async () => {
      const bench = await withRing(host);
      const { port } = bench;
      const [shown = ""] = (await columnOf(bench, "Ring", "soil")) ?? [];
      await port.fillNames("Ring", { readings: [1] }, [], [], { soil: [shown] });
      const changed = /Row 1 of "soil" on the sheet "Ring" was changed in the meantime/;
      await refuses(bench, () => port.fillNames("Ring", { readings: [2] }, [], [], { soil: ["other"] }), changed);
      expect(await columnOf(bench, "Ring", "readings")).toEqual([1, ""]);
    });

    test("fills blank cells of a protected sheet that are locked below an input of the same name", async () => {
      const bench = await host.open();
      const { port } = bench;
      // As other programs save a sheet: they leave out blank rows, and with them that their cells are inputs.
      const long = { ...RING.names, long: box(7, 1, 5) };
      const cells = [...RING.cells, { row: 11, col: 1, kind: "label" as const, value: "locked" }];
      await port.insertSheet({ ...RING, cells, names: long, isProtected: true, merges: [] });
      await port.fillNames("Ring", { long: [1, 2, 3, 4] });
      expect(await columnOf(bench, "Ring", "long")).toEqual([1, 2, 3, 4, "locked"]);
      expect(await port.isProtected("Ring")).toBe(true);
      await refuses(bench, () => port.fillNames("Ring", { long: [null, null, 5, 6, 7] }), /"Ring".*it is protected/);
      expect([await bench.mayType("Ring", "B10", 1), await bench.mayType("Ring", "B12", 1)]).toEqual([true, false]);
    });

    test("fills inputs of a protected sheet, which stays protected, and refuses its other cells", async () => {
      const bench = await withRing(host, true);
      await bench.port.fillNames("Ring", { ring: [70], readings: [1, 2] });
      expect(await columnOf(bench, "Ring", "masses")).toEqual([70, 211.03]);
      expect(await bench.port.isProtected("Ring")).toBe(true);
      await refuses(
        bench,
        () => bench.port.fillNames("Ring", { ring: [1], table: ["A ring"] }),
        /"Ring".*it is protected/,
      );
      await bench.port.protect("Ring", false);
      await bench.port.fillNames("Ring", { ring: [1], table: ["A ring"] });
      expect((await bench.port.readNames("Ring", ["table"])).table[0]).toEqual(["A ring", 1, "g"]);
    });

    either(
      host,
      "undoes",
      [
        "is one step of undo",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.port.fillNames("Ring", { ring: [1], readings: [2, 3] });
          await bench.undo!();
          expect(await bench.port.readNames("Ring", ["ring", "readings"])).toEqual({
            ring: [[74.36]],
            readings: [[""], [""]],
          });
        },
      ],
      CANNOT_UNDO,
    );

    either(
      host,
      "locksSheets",
      [
        "is refused on a sheet that a person locked",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.lockSheet!("Ring");
          await refuses(bench, () => bench.port.fillNames("Ring", { ring: [1] }), /"Ring" is locked: unlock it/);
          await refuses(
            bench,
            () => bench.port.nameAll("Ring", [{ name: "tin", address: "A2" }]),
            /"Ring" is locked: unlock it/,
          );
        },
      ],
      LOCKS_NO_SHEET,
    );
  });
}
