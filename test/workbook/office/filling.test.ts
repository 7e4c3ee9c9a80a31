/** @jest-environment jsdom */
/** Writing into named cells, in the strict stand-in for Excel. */
import { linesName, LINES_AT_ONCE } from "../../../src/exchange/logger/file-sheet";
import { OfficePort } from "../../../src/workbook/office";
import type { CellValue, NamedColumns } from "../../../src/workbook/port";
import { StrictExcel } from "../../excel/strict-excel";
import { PLAN } from "./plan";

const port = new OfficePort();
let excel: StrictExcel;
afterEach(() => expect(excel.faults).toEqual([]));

const HELD: Record<string, (CellValue | null)[]> = {
  times: [0, "'", "=D1"],
  readings: [7, "=D2", null],
  remarks: ["'1/2", null, "dry"],
};

/** A sheet with three named columns, which hold numbers, texts and formulas. */
function open(): void {
  excel = new StrictExcel({ evaluator: () => 4 });
  const sheet = excel.sheet("Sheet1");
  sheet.put("D1", [[1], [2]]);
  Object.entries(HELD).forEach(([name, list], i) => {
    const letter = "ABC"[i];
    sheet.put(
      `${letter}1`,
      list.map((content) => [content]),
    );
    sheet.name(name, `=Sheet1!$${letter}$1:$${letter}$3`);
  });
}

const cells = (): unknown =>
  Object.fromEntries(
    ["A", "B", "C"].map((letter) => [
      letter,
      [1, 2, 3].map((row) => {
        const { formula, value } = excel.sheet("Sheet1").cell(`${letter}${row}`);
        return formula ?? value;
      }),
    ]),
  );

test("constants are written from the top; null leaves a cell unchanged, a text stays a text", async () => {
  open();
  await port.fillNames("Sheet1", { times: [5, null], readings: [8, null, "1/2"], remarks: ["=x", "new"] });
  expect(cells()).toEqual({ A: [5, "", "=D1"], B: [8, "=D2", "1/2"], C: ["=x", "new", "dry"] });
  expect(excel.sheet("Sheet1").cell("C1").formula).toBeUndefined();
});

test.each<[string, NamedColumns, readonly string[], RegExp]>([
  ["cells that must be blank and are not", { readings: [1] }, ["readings"], /holds 2 values already/],
  ["a formula in the way", { readings: [1, 2] }, [], /Row 2 of "readings".*formula/],
  ["more values than cells", { readings: [1, null, 3, 4] }, [], /has 3 cells, and 4 are needed/],
  ["a name that is not there", { absent: [1] }, [], /no cells named "absent"/],
])("%s: refused, and nothing is written", async (_, values, blank, reason) => {
  open();
  const before = cells();
  await expect(port.fillNames("Sheet1", values, blank)).rejects.toThrow(reason);
  await expect(port.fillNames("Sheet1", values, blank)).rejects.toThrow(/Nothing was written/);
  expect(cells()).toEqual(before);
});

describe("a refusal half-way", () => {
  const VALUES: NamedColumns = { times: [5, 6], readings: [8, null, 9], remarks: ["=x", "new"] };
  const DONE = { A: [5, 6, "=D1"], B: [8, "=D2", 9], C: ["=x", "new", "dry"] };

  test.each(["AccessDenied", "InvalidOperationInCellEditMode", "RequestPayloadSizeLimitExceeded"])(
    "at any action (%s) restores every cell, and a second try writes them all",
    async (code) => {
      open();
      await port.fillNames("Sheet1", VALUES);
      const actions = excel.failures.count;
      for (let at = 1; at <= actions; at++) {
        open();
        const before = cells();
        excel.failures.failAt(at, code);
        const failure = await port.fillNames("Sheet1", VALUES).then(
          () => undefined,
          (error: Error) => error.message,
        );
        if (failure === undefined) continue;
        expect(failure).toMatch(/^Excel could not write into the sheet "Sheet1": .*try again|choose fewer cells/);
        expect(cells()).toEqual(before);
        await port.fillNames("Sheet1", VALUES);
        expect(cells()).toEqual(DONE);
      }
    },
  );

  test("a column with locked cells does not stop the others from being restored", async () => {
    open();
    const before = cells();
    excel.sheet("Sheet1").unlock("A1:A3").unlock("C1:C3").protect();
    await expect(port.fillNames("Sheet1", VALUES)).rejects.toThrow(
      /protected.*try again\. The cells are as they were\.$/,
    );
    expect(cells()).toEqual(before);
    excel.sheet("Sheet1").unprotect();
    await port.fillNames("Sheet1", VALUES);
    expect(cells()).toEqual(DONE);
  });

  test("if the cells cannot be restored, the sentence does not say that they were", async () => {
    open();
    excel.failures.refuse(/\.values = \[\[8\]/, "AccessDenied");
    excel.failures.refuse(/\.values = \[\[0\]/, "AccessDenied");
    await expect(port.fillNames("Sheet1", VALUES)).rejects.toThrow(/Some cells may have been written: compare them/);
  });

  test("Excel closes while it writes: the sentence says so", async () => {
    open();
    const counted = excel.failures.count;
    await port.fillNames("Sheet1", VALUES);
    const actions = excel.failures.count - counted;
    open();
    excel.failures.closeAt(actions);
    await expect(port.fillNames("Sheet1", VALUES)).rejects.toThrow(
      /the connection to Excel was lost: reload the workbook, and try again\. Some cells may have been written/,
    );
  });
});

test("3,000 lines of 3,000 characters are kept, on the web too, where a request is limited to 5 MB", async () => {
  excel = new StrictExcel({ platform: "web" });
  const lines = Array.from({ length: LINES_AT_ONCE }, (_, i) => `${i};${"0.123;".repeat(499)}`.padEnd(3_000, "é"));
  const sheet = await port.insertSheet({
    ...PLAN,
    rows: LINES_AT_ONCE,
    cols: 6,
    names: { ...PLAN.names, [linesName(0)]: { row: 0, col: 5, rows: LINES_AT_ONCE, cols: 1 } },
  });
  await port.fillNames(sheet, { [linesName(0)]: lines });
  expect(excel.sheet(sheet).at(LINES_AT_ONCE - 1, 5).value).toBe(lines.at(-1));
  expect((await port.readNames(sheet, [linesName(0)]))[linesName(0)]).toEqual(lines.map((line) => [line]));
});

test("a hidden sheet is read and written by its names like any other", async () => {
  open();
  excel.sheet("Sheet1").hide("VeryHidden");
  await port.fillNames("Sheet1", { remarks: ["wet"] });
  await expect(port.readNames("Sheet1", ["remarks"])).resolves.toEqual({ remarks: [["wet"], [""], ["dry"]] });
});
