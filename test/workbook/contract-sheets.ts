/** The contract of `WorkbookPort`: the sheets of a workbook, and sheets made from plans. */
import type { CellValue, ChartPlan, SheetPlan } from "../../src/workbook/port";
import { box, RING, type Host } from "./contract-bench";
import { CANNOT_UNDO, columnOf, columnPlan, either, refuses, withRing } from "./contract-steps";

/** Texts that a spreadsheet takes for something else when a person types them. */
const TEXTS = [
  ...["00123", "1/2", "=1+1", "+1", "-5", "@x", "1e5", "5%", "$5", "(3)", "1:30", "1,5", ".5"],
  ...["TRUE", "false", "#N/A", "Mar 4", "2024-05-01", "4 May 2024", "'quoted", "''", " 7", "7 ", "[x]", '="x"'],
  ...["line one\nline two", "=line one\nline two", "kPa", "é ’ µm", "#", "=", "'"],
];

const CHART: ChartPlan = {
  title: "Readings",
  box: box(2, 0, 20, 8),
  x: { label: "Time", scale: "linear", domain: [0, 10], reversed: false },
  y: { label: "Reading", scale: "linear", domain: [0, 10], reversed: false },
  series: [{ name: "readings", x: { box: box(0, 0, 2) }, y: { box: box(0, 1, 2) }, style: "points" }],
};

export function sheetsContract(host: Host): void {
  test("sheetNames lists the sheets in the order of their tabs", async () => {
    const bench = await host.open();
    await bench.addSheet("Other");
    await bench.port.insertSheet(RING);
    expect(await bench.port.sheetNames()).toEqual(["Sheet1", "Other", "Ring"]);
  });

  describe("activeSheet", () => {
    test("is the sheet in front: one that was made, shown, or selected by hand", async () => {
      const bench = await host.open();
      const { port } = bench;
      expect(await port.activeSheet()).toBe("Sheet1");
      await port.insertSheet(RING);
      expect(await port.activeSheet()).toBe("Ring");
      await port.insertSheet({ ...RING, behind: true });
      expect(await port.activeSheet()).toBe("Ring");
      await port.show("Sheet1", "A1");
      expect(await port.activeSheet()).toBe("Sheet1");
      await bench.select("Ring 2", "B2");
      expect(await port.activeSheet()).toBe("Ring 2");
    });

    test("is known while blocks are selected that do not fit together", async () => {
      const bench = await host.open();
      await bench.select("Sheet1", "A1:A3", "C2:C3");
      expect(await bench.port.activeSheet()).toBe("Sheet1");
    });

    either(
      host,
      "losesCells",
      [
        "is told while a chart is selected, and the selection is refused with what to select",
        async (bench) => {
          await bench.port.insertSheet({ ...columnPlan("Chart", []), rows: 30, cols: 9, charts: [CHART] });
          await bench.selectChart("Chart");
          expect(await bench.port.activeSheet()).toBe("Chart");
          await refuses(bench, () => bench.port.selection(), /chart.*select cells/);
        },
      ],
      [
        "is told while a chart is selected, and so are the selected cells",
        async (bench) => {
          await bench.port.insertSheet({ ...columnPlan("Chart", []), rows: 30, cols: 9, charts: [CHART] });
          await bench.selectChart("Chart");
          expect(await bench.port.activeSheet()).toBe("Chart");
          expect(await bench.port.selection()).toEqual({ sheet: "Chart", address: "A1", values: [[""]] });
        },
      ],
    );
  });

  describe("insertSheet", () => {
    test("returns the name of the sheet; the sheet is the last one, and in front with its first cell selected", async () => {
      const { port } = await host.open();
      expect(await port.insertSheet({ ...RING, merges: [] })).toBe("Ring");
      expect(await port.sheetNames()).toEqual(["Sheet1", "Ring"]);
      expect(await port.selection()).toEqual({ sheet: "Ring", address: "A1", values: [["Ring"]] });
    });

    test("reports nothing on a sheet that the host made completely", async () => {
      const { port } = await host.open();
      const tell = jest.fn();
      await port.insertSheet({ ...RING, pages: [box(0, 0, 12, 3)], paper: "A4", footer: "version 7" }, tell);
      expect(tell).not.toHaveBeenCalled();
    });

    test("is not made if it would show other cells of a sheet than it was made for", async () => {
      const bench = await withRing(host);
      const { port } = bench;
      const plan = { ...RING, name: "Second", reads: { sheet: "Ring", names: await port.listNames("Ring") } };
      expect(await port.insertSheet(plan)).toBe("Second");
      await bench.deleteRow("Ring", 0);
      const elsewhere = /The new sheet would show other cells of the sheet "Ring".*Nothing was inserted/;
      await refuses(bench, () => port.insertSheet(plan), elsewhere);
      await refuses(bench, () => port.insertSheet({ ...plan, reads: { sheet: "Gone", names: [] } }), /"Gone"/);
    });

    test("leaves the sheet in front and its selection, if the plan says so", async () => {
      const bench = await host.open();
      await bench.select("Sheet1", "B2:C3");
      expect(await bench.port.insertSheet({ ...RING, behind: true })).toBe("Ring");
      expect(await bench.port.selection()).toMatchObject({ sheet: "Sheet1", address: "B2:C3" });
    });

    test.each([
      ["is taken", "Sheet1", "Sheet1 2"],
      ["is taken in other letters", "SHEET1", "SHEET1 2"],
      ["is too long", "A name of more than thirty-one characters", "A name of more than thirty-one"],
      ["holds forbidden characters", "a:b\\c/d?e*f[g]", "a-b-c-d-e-f-g-"],
      ["has apostrophes at its ends", "'Ring'", "Ring"],
      ["is one that Excel keeps for itself", "History", "History 2"],
      ["is blank", "  ", "Sheet"],
    ])("makes the name %s valid and free", async (_, wanted, given) => {
      const { port } = await host.open();
      expect(await port.insertSheet({ ...RING, name: wanted })).toBe(given);
      expect(await port.sheetNames()).toEqual(["Sheet1", given]);
      expect((await port.readNames(given, ["ring"])).ring).toEqual([[74.36]]);
    });

    test("shortens a long name that is taken, to make room for its number", async () => {
      const { port } = await host.open();
      const long = "Specimen of thirty-one letters.";
      expect(long).toHaveLength(31);
      const made = [
        await port.insertSheet({ ...RING, name: long }),
        await port.insertSheet({ ...RING, name: long }),
        await port.insertSheet({ ...RING, name: long }),
      ];
      expect(made).toEqual([long, "Specimen of thirty-one letter 2", "Specimen of thirty-one letter 3"]);
    });

    either(
      host,
      "keepsApostrophes",
      [
        "keeps an apostrophe within a name",
        async ({ port }) => {
          expect(await port.insertSheet({ ...RING, name: "O'Brien's" })).toBe("O'Brien's");
          expect((await port.readNames("O'Brien's", ["ring"])).ring).toEqual([[74.36]]);
        },
      ],
      [
        "writes ’ for an apostrophe within a name",
        async ({ port }) => {
          expect(await port.insertSheet({ ...RING, name: "O'Brien's" })).toBe("O’Brien’s");
          expect((await port.readNames("O’Brien’s", ["ring"])).ring).toEqual([[74.36]]);
        },
      ],
    );

    either(
      host,
      "locksStructure",
      [
        "is refused where the workbook's structure is protected",
        async (bench) => {
          await bench.lockStructure!();
          await refuses(bench, () => bench.port.insertSheet(RING), /structure is protected.*unprotect/);
        },
      ],
      [
        "has no protected structure to meet",
        async (bench) => {
          expect(bench.lockStructure).toBeUndefined();
          expect(await bench.port.insertSheet(RING)).toBe("Ring");
        },
      ],
    );

    test("changes no other sheet, and each sheet of the same plan reads its own cells", async () => {
      const bench = await host.open();
      const { port } = bench;
      await bench.type("Sheet1", "A1", 5);
      await port.insertSheet(RING);
      await port.fillNames("Ring", { ring: [70] });
      const names = Object.keys(RING.names);
      const before = [
        await port.values("Sheet1", "A1:D12"),
        await port.readNames("Ring", names),
        await port.readContents("Ring", names),
        await port.listNames("Ring"),
      ];
      expect(await port.insertSheet(RING)).toBe("Ring 2");
      await port.fillNames("Ring 2", { wet: [300] });
      expect([
        await port.values("Sheet1", "A1:D12"),
        await port.readNames("Ring", names),
        await port.readContents("Ring", names),
        await port.listNames("Ring"),
      ]).toEqual(before);
      expect(await columnOf(bench, "Ring 2", "masses")).toEqual([74.36, 300]);
      expect((await port.readContents("Ring 2", ["soil"])).soil).toEqual([["=wet-ring"]]);
    });

    test.each<[string, string | undefined]>([
      ["of no format", undefined],
      ["of the text format", "@"],
    ])("keeps every text unchanged, in cells %s", async (_, format) => {
      const bench = await host.open();
      const sheet = await bench.port.insertSheet(
        columnPlan(
          "Texts",
          TEXTS.map((value) => ({ kind: "label", value, format })),
        ),
      );
      expect(await columnOf(bench, sheet, "cells")).toEqual(TEXTS);
    });

    test("keeps every digit of a number, and logical values", async () => {
      const bench = await host.open();
      const values: CellValue[] = [0, -1.5, 0.1 + 0.2, 1e-12, 123456789.123, 45000, true, false];
      const sheet = await bench.port.insertSheet(
        columnPlan(
          "Numbers",
          values.map((value) => ({ kind: "input", value })),
        ),
      );
      expect(await columnOf(bench, sheet, "cells")).toEqual(values);
    });

    test("replaces names in braces by names of the sheet, but not within texts and sheet names", async () => {
      const bench = await host.open();
      const other = await bench.port.insertSheet({ ...RING, name: "Test {ring}" });
      const plan: SheetPlan = {
        ...columnPlan("Formulas", [
          { kind: "input", value: 4 },
          { kind: "result", formula: '="{mass}"' },
          { kind: "result", formula: `='${other}'!$B$2` },
          { kind: "result", formula: "=SUM({mass},{masses})" },
        ]),
        names: { mass: box(0, 0), masses: box(0, 0, 1), text: box(1, 0), far: box(2, 0), sum: box(3, 0) },
      };
      const sheet = await bench.port.insertSheet(plan);
      const contents = await bench.port.readContents(sheet, ["text", "far", "sum"]);
      expect(contents.text).toEqual([['="{mass}"']]);
      expect(String(contents.far[0][0]).replaceAll("$", "")).toBe(`='${other}'!B2`);
      expect(contents.sum).toEqual([["=SUM(mass,masses)"]]);
    });

    either(
      host,
      "calculates",
      [
        "shows what formulas give",
        async ({ port }) => {
          await port.insertSheet(RING);
          expect((await port.readNames("Ring", ["soil"])).soil).toEqual([[expect.closeTo(136.67, 10)]]);
          await port.fillNames("Ring", { ring: [11.03] });
          expect((await port.readNames("Ring", ["soil"])).soil).toEqual([[expect.closeTo(200, 10)]]);
        },
      ],
      [
        "shows of a formula what the test gives",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.type("Ring", "B4", "=wet-ring", 12);
          expect((await bench.port.readNames("Ring", ["soil"])).soil).toEqual([[12]]);
          expect((await bench.port.readContents("Ring", ["soil"])).soil).toEqual([["=wet-ring"]]);
        },
      ],
    );

    test("sets formats, and the look of each cell and of no other", async () => {
      const bench = await host.open();
      await bench.port.insertSheet(RING);
      const look = (cell: string) => bench.cell("Ring", cell);
      expect(await look("A1")).toMatchObject({ bold: true });
      expect(await look("A2")).toMatchObject({ bold: false, italic: false, format: "", wrap: false });
      expect(await look("B2")).toMatchObject({ format: "0.00", fill: "#FFF8E1" });
      expect((await look("C2")).italic).toBe(true);
      expect(await look("B4")).toMatchObject({ format: "0.000", bold: true, fill: undefined });
      expect((await look("B6")).format).toBe("yyyy-mm-dd");
      expect(await look("A10")).toMatchObject({ wrap: true, align: "center" });
      expect(await look("D4")).toMatchObject({ format: "", bold: false, fill: undefined });
    });

    test("puts a note on its own cell only", async () => {
      const bench = await host.open();
      await bench.port.insertSheet(RING);
      expect((await bench.cell("Ring", "B4")).note).toBe("Mass of the wet soil");
      expect((await bench.cell("Ring", "B5")).note).toBeUndefined();
    });

    test("merges cells, and sets widths, heights and frozen rows", async () => {
      const bench = await host.open();
      await bench.port.insertSheet(RING);
      const { merges, widths, heights, frozenRows } = await bench.sheet("Ring");
      expect([...merges].sort()).toEqual(["A10:C10", "A1:C1"]);
      expect(widths[0]).toBeCloseTo(20, 0);
      expect(widths[1]).toBeCloseTo(12, 0);
      expect(heights[9]).toBeCloseTo(42, 0);
      expect(frozenRows).toBe(1);
    });

    test("offers the choices of a cell, and accepts no other entry there", async () => {
      const bench = await host.open();
      await bench.port.insertSheet(RING);
      expect((await bench.cell("Ring", "B5")).choices).toEqual(["kPa", "psf"]);
      expect((await bench.cell("Ring", "B4")).choices).toBeUndefined();
      expect(await bench.mayType("Ring", "B5", "psf")).toBe(true);
      expect(await bench.mayType("Ring", "B5", "bar")).toBe(false);
      expect(await bench.mayType("Ring", "B8", "bar")).toBe(true);
    });

    test("accepts in a cell what its rule allows, and a blank", async () => {
      const bench = await host.open();
      const entry = { message: "Type what fits." };
      const day = 45_000;
      await bench.port.insertSheet({
        ...columnPlan(
          "Rules",
          Array.from({ length: 6 }, () => ({ kind: "input" })),
        ),
        entries: [
          { ...entry, box: box(0, 0, 2), kind: "number", least: 0 },
          { ...entry, box: box(2, 0), kind: "number", least: 0, above: true, most: 10 },
          { ...entry, box: box(3, 0), kind: "date", least: day },
          { ...entry, box: box(4, 0), kind: "number" },
        ],
      });
      const allowed = async (cell: string, values: readonly CellValue[]) => {
        const answers: boolean[] = [];
        for (const value of values) answers.push(await bench.mayType("Rules", cell, value));
        return answers;
      };
      expect(await allowed("A1", [0, -1, 5, "five", ""])).toEqual([true, false, true, false, true]);
      expect(await allowed("A2", [-1])).toEqual([false]);
      expect(await allowed("A3", [0, 0.001, 10, 11])).toEqual([false, true, true, false]);
      expect(await allowed("A4", [day, day - 1, day + 1])).toEqual([true, false, true]);
      expect(await allowed("A5", [-1e9, "five"])).toEqual([true, false]);
      expect(await allowed("A6", ["five"])).toEqual([true]);
    });

    test("protects everything except inputs and open cells", async () => {
      const bench = await host.open();
      await bench.port.insertSheet({ ...RING, isProtected: true, open: [box(3, 3, 2)] });
      expect(await bench.port.isProtected("Ring")).toBe(true);
      const open = async (cell: string) => bench.mayType("Ring", cell, 5);
      expect([await open("B2"), await open("B8"), await open("D4"), await open("D5")]).toEqual([
        true,
        true,
        true,
        true,
      ]);
      expect([await open("A2"), await open("B4"), await open("D6"), await open("A11")]).toEqual([
        false,
        false,
        false,
        false,
      ]);
    });

    test("does not protect a sheet if the plan does not say so", async () => {
      const bench = await host.open();
      await bench.port.insertSheet(RING);
      expect(await bench.port.isProtected("Ring")).toBe(false);
      expect(await bench.mayType("Ring", "A2", "text")).toBe(true);
    });

    test("draws charts of cells on the sheet, and on other sheets", async () => {
      const bench = await host.open();
      await bench.port.insertSheet(RING);
      const axis = { label: "Mass", scale: "linear", domain: [0, 10], reversed: false } as const;
      const cells = { box: box(1, 1, 2) };
      await bench.port.insertSheet({
        ...columnPlan("Chart", [{ kind: "title", value: "Chart" }]),
        rows: 30,
        cols: 10,
        charts: [
          {
            title: "Masses",
            box: box(2, 0, 20, 8),
            x: axis,
            y: { ...axis, scale: "log", domain: [1, 100] },
            series: [
              { name: "readings", x: cells, y: { sheet: "Ring", ...cells }, style: "points" },
              { name: "line", x: cells, y: cells, style: "line", lettered: true },
            ],
          },
        ],
      });
      expect((await bench.sheet("Chart")).charts).toEqual([
        {
          title: "Masses",
          series: [
            { name: "readings", x: "Chart!B2:B3", y: "Ring!B2:B3" },
            { name: "line", x: "Chart!B2:B3", y: "Chart!B2:B3" },
          ],
        },
      ]);
      expect((await bench.sheet("Ring")).charts).toEqual([]);
    });

    test("sets paper and footer for printing", async () => {
      const bench = await host.open();
      await bench.port.insertSheet({ ...RING, pages: [box(0, 0, 12, 3)], paper: "Letter", footer: "version 7" });
      const { paper, footer } = await bench.sheet("Ring");
      expect(paper).toBe("Letter");
      expect(footer).toContain("version 7");
    });

    const wrong: readonly (readonly [string, Partial<SheetPlan>, RegExp])[] = [
      [
        "a formula with a name that the plan does not have",
        { cells: [...RING.cells, { row: 11, col: 0, kind: "result", formula: "={nowhere}" }] },
        /nowhere/,
      ],
      ["a name with a space", { names: { ...RING.names, "wet mass": box(2, 1) } }, /wet mass/],
      ["two names that differ in capitals only", { names: { ...RING.names, Ring: box(1, 1) } }, /ring/i],
      [
        "a cell beyond the plan's columns",
        { cells: [...RING.cells, { row: 1, col: 500, kind: "label", value: "far" }] },
        /./,
      ],
      [
        "a cell beyond the plan's rows",
        { cells: [...RING.cells, { row: 5000, col: 1, kind: "label", value: "far" }] },
        /./,
      ],
      [
        "a text of more than 32767 characters",
        { cells: [...RING.cells, { row: 11, col: 0, kind: "note", value: "x".repeat(32_768) }] },
        /./,
      ],
      [
        "a text of more than 253 line feeds",
        { cells: [...RING.cells, { row: 11, col: 0, kind: "note", value: "x\n".repeat(254) }] },
        /254 line feeds/,
      ],
      [
        "a choice with a comma, which Excel takes for two choices",
        { cells: [...RING.cells, { row: 11, col: 0, kind: "input", choices: ["by weight, dry", "by volume"] }] },
        /comma/,
      ],
      [
        "choices of more than 255 characters together",
        { cells: [...RING.cells, { row: 11, col: 0, kind: "input", choices: ["x".repeat(128), "y".repeat(127)] }] },
        /256 characters together/,
      ],
      [
        "a formula of more than 8192 characters",
        { cells: [...RING.cells, { row: 11, col: 0, kind: "result", formula: `=${"1+".repeat(4096)}1` }] },
        /./,
      ],
      [
        "a formula of 8192 characters that grows by the underscore of a name in Excel (t50_)",
        {
          names: { ...RING.names, t50: box(11, 1) },
          cells: [...RING.cells, { row: 11, col: 0, kind: "result", formula: `={t50}${"+1".repeat(4_094)}` }],
        },
        /8193 characters/,
      ],
      [
        "a chart over cells of a sheet that is not there",
        {
          charts: [
            {
              title: "Lost",
              box: box(13, 0, 10, 3),
              x: { label: "x", scale: "linear", domain: [0, 1], reversed: false },
              y: { label: "y", scale: "linear", domain: [0, 1], reversed: false },
              series: [{ name: "s", x: { box: box(0, 0) }, y: { sheet: "Nowhere", box: box(0, 0) }, style: "points" }],
            },
          ],
        },
        /./,
      ],
    ];

    test.each(wrong)(
      "%s: a refused insertSheet leaves the workbook unchanged, and the corrected plan is accepted",
      async (_, fault, says) => {
        const bench = await host.open();
        await bench.port.insertSheet(RING);
        await bench.select("Sheet1", "B2:C3");
        await refuses(bench, () => bench.port.insertSheet({ ...RING, ...fault }), says);
        expect(await bench.port.insertSheet(RING)).toBe("Ring 2");
      },
    );

    either(
      host,
      "undoes",
      [
        "is one step of undo",
        async (bench) => {
          await bench.port.insertSheet(RING);
          await bench.undo!();
          expect(await bench.port.sheetNames()).toEqual(["Sheet1"]);
          expect(await bench.port.listNames("Sheet1")).toEqual([]);
        },
      ],
      CANNOT_UNDO,
    );
  });

  describe("show", () => {
    test("brings a sheet to the front and selects cells on it", async () => {
      const { port } = await host.open();
      await port.insertSheet({ ...RING, behind: true });
      await port.show("Ring", "B2:B3");
      expect(await port.selection()).toEqual({ sheet: "Ring", address: "B2:B3", values: [[74.36], [211.03]] });
      await port.show("Sheet1", "C4");
      expect(await port.selection()).toEqual({ sheet: "Sheet1", address: "C4", values: [[""]] });
      await port.show("Ring", "C2:C3,D2:D3");
      expect(await port.selection()).toMatchObject({ sheet: "Ring", address: "C2:C3" });
    });

    test("says why it cannot, and the sheet in front stays there", async () => {
      const bench = await host.open();
      await bench.port.insertSheet({ ...RING, behind: true });
      await refuses(bench, () => bench.port.show("Nowhere", "A1"), /no sheet called "Nowhere"/);
      await refuses(bench, () => bench.port.show("Ring", "rubbish cells"), /rubbish/);
      await bench.hideSheet("Ring");
      await refuses(bench, () => bench.port.show("Ring", "B2"), /"Ring" is hidden: show it/);
    });

    test("reads and writes a hidden sheet too", async () => {
      const bench = await host.open();
      await bench.port.insertSheet({ ...RING, behind: true });
      await bench.hideSheet("Ring");
      expect(await bench.port.sheetNames()).toEqual(["Sheet1", "Ring"]);
      await bench.port.fillNames("Ring", { ring: [70] });
      expect(await columnOf(bench, "Ring", "ring")).toEqual([70]);
    });
  });
}
