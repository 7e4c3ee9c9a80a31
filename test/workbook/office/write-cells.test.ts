/** @jest-environment jsdom */
/** Writes formulas and constants into cells of the strict stand-in for Excel, which refuses in the middle of the work. */
import { OfficePort } from "../../../src/workbook/office";
import type { CellContent } from "../../../src/workbook/port";
import { StrictExcel } from "../../excel/strict-excel";

const port = new OfficePort();
let excel: StrictExcel;
afterEach(() => expect(excel.faults).toEqual([]));

const CELLS: readonly CellContent[] = [
  { row: 0, col: 0, formula: "={wet}*2" },
  { row: 1, col: 0, value: "=no formula" },
  { row: 0, col: 2, formula: "={wet}*3", format: "0.0%" },
];

function open(): void {
  excel = new StrictExcel({ evaluator: () => 4 });
  const sheet = excel.sheet("Sheet1");
  sheet.put("A1", [[7], ["=D1"]]);
  sheet.put("C1", [["'=text"]]);
  sheet.put("D1", [[3]]);
  sheet.name("wet", "=Sheet1!$D$1");
}

const held = (): unknown[] =>
  ["A1", "A2", "C1"].map((address) => {
    const { formula, value, format } = excel.sheet("Sheet1").cell(address);
    return [formula ?? value, format];
  });

test.each(["AccessDenied", "InvalidOperationInCellEditMode", "RequestPayloadSizeLimitExceeded"])(
  "a refusal at any action (%s) restores every cell and its format, and a second try writes them all",
  async (code) => {
    open();
    const before = held();
    await port.writeCells("Sheet1", CELLS, true);
    const [actions, after] = [excel.failures.count, held()];
    expect(after).not.toEqual(before);
    for (let at = 1; at <= actions; at++) {
      open();
      excel.failures.failAt(at, code);
      const failure = await port.writeCells("Sheet1", CELLS, true).then(
        () => undefined,
        (error: Error) => error.message,
      );
      if (failure === undefined) continue;
      expect(failure).toMatch(/^Excel could not write into the sheet "Sheet1": .*(?:try again|choose fewer cells)/);
      expect(held()).toEqual(before);
      await port.writeCells("Sheet1", CELLS, true);
      expect(held()).toEqual(after);
    }
  },
);

test("names that were made before Excel refused one are deleted again", async () => {
  open();
  excel.failures.refuse(/names\.add\("second"/, "InvalidArgument");
  const names = [
    { name: "first", address: "A1" },
    { name: "second", address: "A2" },
  ];
  await expect(port.nameAll("Sheet1", names)).rejects.toThrow(/Excel could not name cells/);
  expect((await port.listNames("Sheet1")).map(({ name }) => name)).toEqual(["wet"]);
});

test("a text stays a text when it is written back", async () => {
  open();
  await port.writeCells("Sheet1", CELLS, true);
  expect(held().map((cell) => (cell as unknown[])[0])).toEqual(["=wet*2", "=no formula", "=wet*3"]);
});
