/** @jest-environment jsdom */
/**
 * Manual calculation: Excel keeps the result of a formula until somebody asks for a calculation (Microsoft,
 * Excel.CalculationMode: "Calculations only occur when the user or add-in requests them").
 */
import { OfficePort } from "../../../src/workbook/office";
import { StrictExcel } from "../../excel/strict-excel";

const port = new OfficePort();
const ASKED = [{ sheet: "Data", values: ["mass", "double"] }];

function open(): StrictExcel {
  const evaluator = (): number => 2 * Number(excel.sheet("Data").sheet.cells.get(0)!.value);
  const excel: StrictExcel = new StrictExcel({ sheets: ["Data"], platform: "desktop", evaluator });
  excel
    .sheet("Data")
    .put("A1", [[3, "=2*A1"]])
    .name("mass", "A1")
    .name("double", "B1");
  return excel;
}

test("a reading says that Excel calculates on request, and only then", async () => {
  const excel = open();
  const values = { mass: [[3]], double: [[6]] };
  expect(await port.lookAt(ASKED)).toEqual([{ sheet: "Data", values, contents: {} }]);
  excel.evaluation.isManual = true;
  expect(await port.lookAt(ASKED)).toEqual([{ sheet: "Data", values, contents: {}, isOnRequest: true }]);
});

test("a result is old after a change until the add-in asks Excel to calculate, which a listener hears", async () => {
  const excel = open();
  await port.lookAt(ASKED);
  excel.evaluation.isManual = true;
  await port.fillNames("Data", { mass: [5] });
  const [before] = await port.lookAt(ASKED);
  expect(before!.values).toEqual({ mass: [[5]], double: [[6]] });

  const heard = new Promise((resolve) => void port.onChange(resolve));
  await port.calculate();
  const [after] = await port.lookAt(ASKED);
  expect(after!.values).toEqual({ mass: [[5]], double: [[10]] });
  expect(await heard).toBe("values");
});

test("a formula that is entered is calculated at once", async () => {
  const excel = open();
  excel.evaluation.isManual = true;
  await port.writeCells("Data", [{ row: 4, col: 0, formula: "={mass}*2" }]);
  expect(excel.sheet("Data").values("A5")).toEqual([[6]]);
});

test("a calculation that Excel refuses is told in a sentence", async () => {
  open().failures.refuse(/calculate/, "GeneralException");
  await expect(port.calculate()).rejects.toThrow(/calculate the workbook/);
});
