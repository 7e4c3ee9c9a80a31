/** @jest-environment jsdom */
/** Excel refuses any one step, or closes at it: nothing is left half made, and a second try works. */
import { english } from "../../../../src/reduction/message";
import { OfficePort } from "../../../../src/workbook/office";
import { WorkbookError, type ChartPlan, type SheetPlan } from "../../../../src/workbook/port";
import { blankSheet } from "../../../../src/datasheet";
import { toXlsx } from "../../../../src/datasheet/xlsx";
import type { Book } from "../../../excel/book/book";
import { StrictExcel } from "../../../excel/strict-excel";
import { PLAN } from "../plan";
import { differences } from "../reading/read-back";

const port = new OfficePort();

const box = (row: number, col: number, rows: number): { row: number; col: number; rows: number; cols: number } => ({
  row,
  col,
  rows,
  cols: 1,
});
const CHART: ChartPlan = {
  title: "Load 1",
  box: { row: 9, col: 0, rows: 12, cols: 4 },
  x: { label: "Time (min)", scale: "log", domain: [0.1, 1000], reversed: false },
  y: { label: "Dial reading", scale: "linear", domain: [0, 10], reversed: true },
  series: [
    { name: "tangent", x: { box: box(2, 1, 2) }, y: { box: box(3, 1, 2) }, style: "line", lettered: true },
    {
      name: "readings",
      x: { sheet: "Data", box: box(0, 0, 3) },
      y: { sheet: "Data", box: box(0, 1, 3) },
      style: "points",
      symbol: "open",
    },
  ],
};
const WHOLE: SheetPlan = {
  ...PLAN,
  isProtected: true,
  paper: "A4",
  footer: "Data sheet 3",
  open: [{ row: 6, col: 2, rows: 1, cols: 1 }],
  charts: [CHART],
};

interface Told {
  readonly resolved: unknown;
  readonly message: string;
}

/** Runs work and returns its result; a failure must be a sentence that the pane can show. */
const outcome = (work: () => Promise<unknown>): Promise<Told> =>
  work().then(
    (resolved) => ({ resolved, message: "" }),
    (error: unknown) => {
      expect(error).toBeInstanceOf(WorkbookError);
      return { resolved: undefined, message: (error as Error).message };
    },
  );

/** Runs work once for each of its steps, with `order` for that step; `look` examines the result. */
async function atEachStep(
  open: () => StrictExcel | Promise<StrictExcel>,
  work: () => Promise<unknown>,
  order: (excel: StrictExcel, step: number) => void,
  look: (excel: StrictExcel, told: Told, before: Book) => void | Promise<void>,
): Promise<number> {
  const whole = await open();
  const first = whole.failures.count;
  await work();
  const steps = whole.failures.count - first;
  for (let step = 1; step <= steps; step++) {
    const excel = await open();
    const before = excel.picture();
    order(excel, step);
    const told = await outcome(work);
    try {
      await look(excel, told, before);
    } catch (error) {
      throw new Error(
        `at step ${step} of ${steps}, ${excel.lines.at(-1)?.slice(0, 200)}; told ${JSON.stringify(told)}: ${(error as Error).message}`,
      );
    }
    expect(excel.faults).toEqual([]);
  }
  return steps;
}

const CODES = ["GeneralException", "AccessDenied"];

describe("a new sheet", () => {
  const open = (): StrictExcel => {
    const excel = new StrictExcel({ sheets: ["Data"], platform: "desktop" });
    excel.sheet("Data").put("A1", [
      [0.1, 1],
      [1, 2],
      [10, 3],
    ]);
    return excel;
  };
  let sentences: string[] = [];
  const insert = (): Promise<string> => port.insertSheet(WHOLE, (sentence) => sentences.push(english(sentence)));
  beforeEach(() => void (sentences = []));

  test.each(CODES)(
    "one step refused with %s: the workbook is unchanged, or the sheet lacks only what the sentences say",
    async (code) => {
      let [gone, stayed] = [0, 0];
      const steps = await atEachStep(
        open,
        insert,
        (excel, step) => excel.failures.failAt(step, code),
        async (excel, { resolved, message }, before) => {
          if (resolved === undefined) {
            gone += 1;
            expect(message).toMatch(/The workbook is as it was\.$/);
            expect(excel.picture()).toEqual(before);
            sentences = [];
            expect(differences(excel, await insert(), WHOLE, true)).toEqual([]);
          } else {
            stayed += 1;
            const lacking = differences(excel, resolved as string, WHOLE, true);
            const isLegend = lacking.every((one) => one.includes("lettered"));
            // A chart whose line labels fail has a legend instead.
            if (isLegend && lacking.length > 0)
              expect(excel.sheet("Test").sheet.charts[0].properties["legend.visible"]).toBe(true);
            else if (lacking.length > 0)
              expect([lacking, sentences]).toEqual([lacking, [expect.stringMatching(/^Excel did not take/)]]);
            // Parts that a sheet can do without: notes, printed pages, labels at the ends of lines.
            for (const one of lacking) expect(one).toMatch(/its note|paper|repeated rows|footer|pages|breaks|lettered/);
          }
          sentences = [];
        },
      );
      expect(gone).toBeGreaterThan(60);
      expect(gone + stayed).toBe(steps);
    },
  );

  test("Excel closes at a step: the sentence names the unfinished sheet, and the next sheet is complete", async () => {
    await atEachStep(
      open,
      insert,
      (excel, step) => excel.failures.closeAt(step),
      async (excel, { message }, before) => {
        excel.failures.reopen();
        const left = excel
          .picture()
          .sheets.slice(1)
          .map(({ name }) => name);
        expect(excel.picture().sheets.slice(0, 1)).toEqual(before.sheets);
        // A sheet that Excel made before it closed, without answering, cannot be named.
        if (left.length > 0 && excel.trips.length > 2)
          expect(message).toMatch(/An unfinished sheet "Test" was left behind: delete it\.$/);
        const name = await insert();
        expect(differences(excel, name, WHOLE, true)).toEqual([]);
        expect(excel.sheetNames).toEqual(["Data", ...left, name]);
      },
    );
  });
});

describe("values written into named cells", () => {
  const VALUES = { times: [1, null, 3], readings: [7, "1/2"], remarks: ["wet"] };
  const open = (): StrictExcel => {
    const excel = new StrictExcel({ sheets: ["Data"] });
    excel.sheet("Data").put("A1", [
      ["'00", "", "dry"],
      ["=B9", "", ""],
      ["", "", ""],
    ]);
    excel.sheet("Data").name("times", "A1:A3").name("readings", "B1:B3").name("remarks", "C1:C3");
    return excel;
  };
  const AFTER = [
    [1, 7, "wet"],
    [0, "1/2", ""],
    [3, "", ""],
  ];
  const work = (): Promise<void> => port.fillNames("Data", VALUES);

  test.each(CODES)("one step refused with %s: the cells are unchanged", async (code) => {
    await atEachStep(
      open,
      work,
      (excel, step) => excel.failures.failAt(step, code),
      async (excel, { message }, before) => {
        if (message) {
          expect(excel.picture()).toEqual(before);
          expect(message).not.toMatch(/may have been written/);
          await work();
        }
        expect(excel.sheet("Data").values("A1:C3")).toEqual(AFTER);
      },
    );
  });

  test("Excel closes at a step: no sentence says that the cells are unchanged if they are not", async () => {
    await atEachStep(
      open,
      work,
      (excel, step) => excel.failures.closeAt(step),
      async (excel, { message }, before) => {
        excel.failures.reopen();
        const isAsBefore =
          JSON.stringify(excel.sheet("Data").values("A1:C3")) ===
          JSON.stringify([
            ["00", "", "dry"],
            [0, "", ""],
            ["", "", ""],
          ]);
        if (!isAsBefore) expect(message).not.toMatch(/cells are as they were/);
        expect(before.sheets).toHaveLength(1);
        await work();
        expect(excel.sheet("Data").values("A1:C3")).toEqual(AFTER);
      },
    );
  });
});

describe("formulas entered again on a protected sheet", () => {
  const open = (): StrictExcel => {
    const excel = new StrictExcel({ sheets: ["Data"], evaluator: () => 7 });
    excel
      .sheet("Data")
      .put("A1", [
        ["=_xldudf_CLAY_STRAIN(B1)"],
        ["='C:\\FUNCRES.XLAM'!CLAY.STRAIN(B1)"],
        ['=IFERROR(_xldudf_CLAY_STRAIN(B1),"")'],
        ["=SUM(B1)"],
      ]);
    excel.sheet("Data").protect({ allowInsertRows: true });
    return excel;
  };
  const work = (): Promise<unknown> => port.reenterFormulas("Data");

  test.each(CODES)(
    "one step refused with %s: the protection is unchanged, and the next try enters all formulas",
    async (code) => {
      await atEachStep(
        open,
        work,
        (excel, step) => excel.failures.failAt(step, code),
        async (excel, _told, before) => {
          expect(excel.picture().sheets[0].protection).toEqual(before.sheets[0].protection);
          await work();
          expect(excel.sheet("Data").values("A1:A4").flat()).toEqual([7, 7, 7, 7]);
          expect(excel.picture().sheets[0].protection).toEqual(before.sheets[0].protection);
        },
      );
    },
  );
});

test("a sentence says if Excel does not restore a protection, whatever else happened", async () => {
  const excel = new StrictExcel({ sheets: ["Data"], evaluator: () => 7 });
  excel
    .sheet("Data")
    .put("A1", [["=_xldudf_CLAY_STRAIN(B1)"]])
    .protect();
  excel.failures.refuse(/protection\.protect\(/, "GeneralException");
  await expect(port.reenterFormulas("Data")).rejects.toThrow(/protection was lifted, .* protect the sheet again/);
});

describe("names and protection", () => {
  const open = (): StrictExcel => {
    const excel = new StrictExcel({ sheets: ["Data"] });
    excel
      .sheet("Data")
      .name("mass", "A1")
      .put("B1", [["=mass"]]);
    return excel;
  };
  const WORK: readonly [string, () => Promise<unknown>, (excel: StrictExcel) => unknown, unknown][] = [
    [
      "a name given",
      () => port.nameAll("Data", [{ name: "ring", address: "B4" }]),
      (excel) => excel.sheet("Data").names.ring,
      "=Data!$B$4",
    ],
    [
      "a name moved",
      () => port.nameAll("Data", [{ name: "mass", address: "B4", replace: true }]),
      (excel) => excel.sheet("Data").names.mass,
      "=Data!$B$4",
    ],
    ["protection put on", () => port.protect("Data", true), (excel) => excel.sheet("Data").sheet.protection.on, true],
  ];
  test.each(WORK)("%s: one refused step leaves everything unchanged", async (_, work, seen, wanted) => {
    for (const code of CODES)
      await atEachStep(
        open,
        work,
        (excel, step) => excel.failures.failAt(step, code),
        async (excel, { message }, before) => {
          if (message) {
            expect(excel.picture()).toEqual(before);
            await work();
          }
          expect(seen(excel)).toEqual(wanted);
        },
      );
  });

  test("lifting the protection: one refused step leaves it on", async () => {
    const closed = (): StrictExcel => {
      const excel = open();
      excel.sheet("Data").protect({ allowSort: true });
      return excel;
    };
    const work = (): Promise<void> => port.protect("Data", false);
    await atEachStep(
      closed,
      work,
      (excel, step) => excel.failures.failAt(step),
      async (excel, { message }, before) => {
        if (message) {
          expect(excel.picture()).toEqual(before);
          await work();
        }
        expect(excel.sheet("Data").sheet.protection.on).toBe(false);
      },
    );
  });
});

describe("sheets of a file", () => {
  let file: Uint8Array;
  beforeAll(async () => {
    file = await toXlsx(blankSheet("SI", { loads: 1 }));
  });
  const open = (): StrictExcel => new StrictExcel({ sheets: ["Data"], platform: "desktop" });

  test("one step refused: no sheet is inserted, or the next try inserts it", async () => {
    await atEachStep(
      open,
      () => port.insertFile(file),
      (excel, step) => excel.failures.failAt(step),
      async (excel, { message }, before) => {
        if (message) {
          expect(excel.picture()).toEqual(before);
          await port.insertFile(file);
        }
        expect(excel.sheetNames).toEqual(["Data", "Consolidation test"]);
      },
    );
  });
});
