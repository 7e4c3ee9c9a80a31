/** The contract of `WorkbookPort`: names, formulas entered again, protection, and sheets from files. */
import { english } from "../../src/reduction/message";
import type { CellValue, SheetName } from "../../src/workbook/port";
import { box, RING, type Bench, type Host } from "./contract-bench";
import { fileWithChart, foreignFile, POINTS } from "./contract-files";
import { CANNOT_UNDO, HAS_NO_PASSWORD, columnOf, either, refuses, withRing } from "./contract-steps";

const sorted = (names: readonly SheetName[]): SheetName[] =>
  [...names].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));

/** The places of names after the row of the name "ring" was deleted. The other names have moved up by then. */
async function placesAfterDeletion(bench: Bench): Promise<Map<string, SheetName["place"]>> {
  await bench.port.insertSheet(RING);
  await bench.deleteRow("Ring", 1);
  const places = new Map((await bench.port.listNames("Ring")).map(({ name, place }) => [name, place]));
  expect(places.get("wet")).toEqual(box(1, 1));
  expect(places.get("masses")).toEqual(box(1, 1));
  return places;
}

export function upkeepContract(host: Host): void {
  describe("listNames", () => {
    test("lists the names of the sheet, then the names of the workbook that lead to it, each with its place", async () => {
      const bench = await withRing(host);
      await bench.nameForAll("tin", "Ring", "C4:C5");
      await bench.nameForAll("elsewhere", "Sheet1", "A1");
      const names = await bench.port.listNames("Ring");
      const own = Object.entries(RING.names).map(([name, place]): SheetName => ({ name, scope: "sheet", place }));
      expect(sorted(names.slice(0, -1))).toEqual(sorted(own));
      expect(names.at(-1)).toEqual({ name: "tin", scope: "workbook", place: box(3, 2, 2) });
      expect(await bench.port.listNames("Sheet1")).toEqual([
        { name: "elsewhere", scope: "workbook", place: box(0, 0) },
      ]);
      await refuses(bench, () => bench.port.listNames("Nowhere"), /no sheet called "Nowhere"/);
    });

    test("gives names like t50 as in the plan", async () => {
      const { port } = await host.open();
      const plan = { ...RING, cells: RING.cells.filter(({ formula }) => !formula), names: { t50: box(1, 1) } };
      for (const sheet of [await port.insertSheet(plan), await port.insertSheet(plan)])
        expect(await port.listNames(sheet)).toEqual([{ name: "t50", scope: "sheet", place: box(1, 1) }]);
    });

    either(
      host,
      "losesNames",
      [
        "a name whose cells were deleted is lost",
        async (bench) => expect((await placesAfterDeletion(bench)).get("ring")).toBe("lost"),
      ],
      [
        "a name whose cells were deleted is gone",
        async (bench) => expect((await placesAfterDeletion(bench)).has("ring")).toBe(false),
      ],
    );
  });

  describe("nameAll, of one name", () => {
    test("gives cells a name of the sheet, and changes no cell", async () => {
      const bench = await withRing(host);
      await bench.port.insertSheet(RING);
      await bench.port.nameAll("Ring", [{ name: "tin", address: "C2:C3" }]);
      expect(await columnOf(bench, "Ring", "tin")).toEqual(["g", ""]);
      expect(await columnOf(bench, "Ring 2", "tin")).toBeUndefined();
      expect(await bench.port.listNames("Ring")).toContainEqual({ name: "tin", scope: "sheet", place: box(1, 2, 2) });
      await bench.port.nameAll("Ring 2", [{ name: "tin", address: "B2" }]);
      expect([await columnOf(bench, "Ring", "tin"), await columnOf(bench, "Ring 2", "tin")]).toEqual([
        ["g", ""],
        [74.36],
      ]);
    });

    test("accepts names like t50", async () => {
      const bench = await withRing(host);
      await bench.port.nameAll("Ring", [{ name: "t50", address: "B2" }]);
      await bench.port.nameAll("Ring", [{ name: "r1c1", address: "B3" }]);
      expect(await bench.port.readNames("Ring", ["t50", "r1c1"])).toEqual({ t50: [[74.36]], r1c1: [[211.03]] });
    });

    test("moves a name that leads to cells only with `replace`", async () => {
      const bench = await withRing(host);
      for (const name of ["ring", "RING"])
        await refuses(
          bench,
          () => bench.port.nameAll("Ring", [{ name, address: "B3" }]),
          /"ring" is already at B2 and was left/i,
        );
      await bench.port.nameAll("Ring", [{ name: "ring", address: "B3", replace: true }]);
      expect(await columnOf(bench, "Ring", "ring")).toEqual([211.03]);
      expect((await bench.port.listNames("Ring")).filter(({ name }) => /^ring$/i.test(name))).toHaveLength(1);
      expect((await bench.port.readContents("Ring", ["soil"])).soil).toEqual([["=wet-ring"]]);
    });

    test("gives a lost name its cells again", async () => {
      const bench = await withRing(host);
      await bench.deleteRow("Ring", 1);
      await bench.port.nameAll("Ring", [{ name: "ring", address: "B2" }]);
      expect(await columnOf(bench, "Ring", "ring")).toEqual([211.03]);
    });

    test("leaves a name of the workbook that leads elsewhere unchanged", async () => {
      const bench = await withRing(host);
      await bench.type("Sheet1", "A1", 9);
      await bench.nameForAll("tin", "Sheet1", "A1");
      await bench.port.nameAll("Ring", [{ name: "tin", address: "B2" }]);
      expect([await columnOf(bench, "Ring", "tin"), await columnOf(bench, "Sheet1", "tin")]).toEqual([[74.36], [9]]);
    });

    test("refuses bad names, several blocks, text that is not an address, and a sheet that does not exist", async () => {
      const bench = await withRing(host);
      const { port } = bench;
      for (const name of ["wet mass", "1st", "", "a-b", "x".repeat(256)])
        await refuses(bench, () => port.nameAll("Ring", [{ name, address: "C2" }]), /./);
      for (const address of ["C2:C3,D2:D3", "rubbish cells", ""])
        await refuses(bench, () => port.nameAll("Ring", [{ name: "tin", address }]), /./);
      await refuses(
        bench,
        () => port.nameAll("Nowhere", [{ name: "tin", address: "A1" }]),
        /no sheet called "Nowhere"/,
      );
    });
  });

  describe("nameAll", () => {
    test("gives several cells their names, and changes no cell", async () => {
      const bench = await withRing(host);
      await bench.port.nameAll("Ring", [
        { name: "tin", address: "C2:C3" },
        { name: "t50", address: "B3" },
      ]);
      await bench.port.nameAll("Ring", []);
      expect(await bench.port.readNames("Ring", ["tin", "t50"])).toEqual({ tin: [["g"], [""]], t50: [[211.03]] });
      const names = await bench.port.listNames("Ring");
      expect(names).toContainEqual({ name: "tin", scope: "sheet", place: box(1, 2, 2) });
      expect(names).toContainEqual({ name: "t50", scope: "sheet", place: box(2, 1) });
    });

    test("gives none if one of them already refers to cells or is not a valid name", async () => {
      const bench = await withRing(host);
      const tin = { name: "tin", address: "C2" };
      const says = (name: string, address: string, what: RegExp) =>
        refuses(bench, () => bench.port.nameAll("Ring", [tin, { name, address }]), what);
      await says("ring", "B3", /"ring" is already at B2 and was left/);
      await says("wet mass", "B3", /wet mass/);
      await says("other", "rubbish cells", /./);
      await refuses(bench, () => bench.port.nameAll("Nowhere", [tin]), /no sheet called "Nowhere"/);
    });

    test("gives none if the first or the last cell shows something else than when it was found", async () => {
      const bench = await withRing(host);
      const [[first], [last]] = await bench.port.values("Ring", "B2:B3");
      const named = (ends: readonly [CellValue, CellValue]) =>
        bench.port.nameAll("Ring", [
          { name: "lid", address: "C3" },
          { name: "tin", address: "B2:B3", ends },
        ]);
      const changed = /Somebody else changed cells of the sheet "Ring" in the meantime\. Nothing was written/;
      await refuses(bench, () => named([5, last!]), changed);
      await refuses(bench, () => named([first!, ""]), changed);
      await named([first!, last!]);
      expect(await bench.port.readNames("Ring", ["tin"])).toEqual({ tin: [[first], [last]] });
    });

    either(
      host,
      "undoes",
      [
        "is one step of undo",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.port.nameAll("Ring", [
            { name: "tin", address: "C2" },
            { name: "lid", address: "C3" },
          ]);
          await bench.undo!();
          expect(await bench.port.readNames("Ring", ["tin", "lid"])).toEqual({});
        },
      ],
      CANNOT_UNDO,
    );
  });

  describe("reenterFormulas", () => {
    test("enters formulas that show #NAME? again, counts them, and leaves all other cells", async () => {
      const bench = await withRing(host);
      expect(await bench.port.reenterFormulas("Ring")).toEqual({ found: 0, left: 0 });
      await bench.typeUnbound("Ring", "D3", true);
      await bench.typeUnbound("Ring", "D4", false);
      const before = await bench.port.values("Ring", "A1:C12");
      expect(await bench.port.reenterFormulas("Ring")).toEqual({ found: 2, left: 1 });
      expect(await bench.port.values("Ring", "D3")).toEqual([[7]]);
      expect(await bench.port.values("Ring", "A1:C12")).toEqual(before);
      expect(await bench.port.reenterFormulas("Ring")).toEqual({ found: 1, left: 1 });
    });

    test("enters formulas of a protected sheet too, and the sheet stays protected", async () => {
      const bench = await withRing(host);
      await bench.typeUnbound("Ring", "D3", true);
      await bench.port.protect("Ring", true);
      expect(await bench.port.reenterFormulas("Ring")).toEqual({ found: 1, left: 0 });
      expect(await bench.port.isProtected("Ring")).toBe(true);
      expect(await bench.mayType("Ring", "D3", 5)).toBe(false);
      expect(await bench.mayType("Ring", "B2", 5)).toBe(true);
    });

    test("is refused for a sheet that does not exist", async () => {
      const bench = await host.open();
      await refuses(bench, () => bench.port.reenterFormulas("Nowhere"), /no sheet called "Nowhere"/);
    });
  });

  describe("protect", () => {
    test("protects everything except the inputs, can be lifted, and can be asked for twice", async () => {
      const bench = await withRing(host);
      const may = async () => [await bench.mayType("Ring", "A2", "x"), await bench.mayType("Ring", "B2", 5)];
      for (const on of [true, true, false, false]) {
        await bench.port.protect("Ring", on);
        expect(await bench.port.isProtected("Ring")).toBe(on);
        expect(await may()).toEqual([!on, true]);
      }
      expect(await bench.port.isProtected("Sheet1")).toBe(false);
    });

    test("is refused for a sheet that does not exist", async () => {
      const bench = await host.open();
      await refuses(bench, () => bench.port.isProtected("Nowhere"), /no sheet called "Nowhere"/);
      await refuses(bench, () => bench.port.protect("Nowhere", true), /no sheet called "Nowhere"/);
    });

    either(
      host,
      "hasPasswords",
      [
        "a protection with a password is not lifted",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.typeUnbound("Ring", "D3", true);
          await bench.protectWithPassword!("Ring");
          expect(await bench.port.isProtected("Ring")).toBe(true);
          await refuses(bench, () => bench.port.protect("Ring", false), /password.*Unprotect Sheet/);
          await refuses(bench, () => bench.port.reenterFormulas("Ring"), /password.*Unprotect Sheet/);
        },
      ],
      HAS_NO_PASSWORD,
    );
  });

  describe("insertFile", () => {
    test("inserts the sheets of a file after the others under free names, and changes no other sheet", async () => {
      const bench = await withRing(host);
      await bench.type("Sheet1", "A1", 5);
      const names = Object.keys(RING.names);
      const before = [
        await bench.port.values("Sheet1", "A1:D12"),
        await bench.port.values("Ring", "A1:D12"),
        await bench.port.readContents("Ring", names),
        await bench.port.listNames("Ring"),
      ];
      const { sheets } = await bench.port.insertFile(await foreignFile());
      const [ring, other] = sheets;
      expect(sheets).toHaveLength(2);
      expect(ring).toMatch(/^Ring \(?2\)?$/);
      expect(other).toBe("Other");
      expect(await bench.port.sheetNames()).toEqual(["Sheet1", "Ring", ring, other]);
      expect([
        await bench.port.values("Sheet1", "A1:D12"),
        await bench.port.values("Ring", "A1:D12"),
        await bench.port.readContents("Ring", names),
        await bench.port.listNames("Ring"),
      ]).toEqual(before);
      expect(await bench.port.values(ring, "A1:B3")).toEqual([
        ["Mass", 12.5],
        ["", "00123"],
        ["", 25],
      ]);
      expect(await bench.port.values(other, "A1")).toEqual([[13.5]]);
      expect(await columnOf(bench, ring, "tin")).toEqual([12.5]);
    });

    test("keeps the notes of a file, or says that they were left out", async () => {
      const bench = await host.open();
      const { sheets, remarks } = await bench.port.insertFile(await foreignFile());
      const { note } = await bench.cell(sheets[0], "B1");
      if (note === undefined) expect(remarks.map(english).join(" ")).toMatch(/notes/);
      else expect(note).toContain("Weighed twice");
    });

    either(
      host,
      "takesCharts",
      [
        "takes a file with a chart in: the chart comes along, or it is told that it did not",
        async (bench) => {
          const { sheets, remarks } = await bench.port.insertFile(await fileWithChart());
          expect(await bench.port.values(sheets[0], "A1:B3")).toEqual(POINTS);
          const { charts } = await bench.sheet(sheets[0]);
          expect([charts.length, remarks.map(english)]).toEqual(
            charts.length === 1 ? [1, []] : [0, ['1 chart of "Curve" did not come along.']],
          );
        },
      ],
      [
        "refuses a file with a chart, and says what to do",
        async (bench) => {
          const file = await fileWithChart();
          await refuses(bench, () => bench.port.insertFile(file), /charts.*move or copy/);
        },
      ],
    );

    test("inserting a file twice makes sheets that do not share cells", async () => {
      const bench = await host.open();
      const file = await foreignFile();
      const [first] = (await bench.port.insertFile(file)).sheets;
      const [second] = (await bench.port.insertFile(file)).sheets;
      expect(second).not.toBe(first);
      await bench.port.nameAll(first, [{ name: "mass", address: "B1" }]);
      await bench.port.nameAll(second, [{ name: "mass", address: "B1" }]);
      await bench.port.fillNames(second, { mass: [99] });
      expect([await columnOf(bench, first, "mass"), await columnOf(bench, second, "mass")]).toEqual([[12.5], [99]]);
    });

    test.each<[string, () => Uint8Array]>([
      ["rubbish", () => new Uint8Array([1, 2, 3])],
      ["nothing", () => new Uint8Array()],
      ["an old .xls workbook", () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1])],
      ["the beginning of a package", () => new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])],
    ])("%s is refused because it is not an .xlsx workbook, and nothing is inserted", async (_, file) => {
      const bench = await withRing(host);
      await refuses(bench, () => bench.port.insertFile(file()), /\.xlsx/);
    });
  });

  test("a note on work stands until it is taken out; taking it out twice does nothing", async () => {
    const { port } = await host.open();
    const first = await port.noteWork("readings", "Sheet1");
    const second = await port.noteWork("sheet", "Ring's");
    const [one, two] = await port.unfinishedWork();
    expect(one).toMatchObject({ id: first, kind: "readings", sheet: "Sheet1" });
    expect(one.since).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d$/);
    expect(two).toMatchObject({ id: second, kind: "sheet", sheet: "Ring's" });
    await port.strikeWork(first);
    await port.strikeWork(first);
    expect((await port.unfinishedWork()).map(({ id }) => id)).toEqual([second]);
  });
}
