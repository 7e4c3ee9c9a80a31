/** @jest-environment jsdom */
/** A missing object is a null object, and events have the names of the typings. */
import { StrictExcel } from "./strict-excel";
import { turns } from "../turns";

test("a missing name is a null object, an existing one is not", async () => {
  const excel = new StrictExcel();
  excel.sheet("Sheet1").name("there", "=Sheet1!$A$1");
  await Excel.run(async (context) => {
    const { names } = context.workbook.worksheets.getItem("Sheet1");
    const there = names.getItemOrNullObject("there").load("name");
    const absent = names.getItemOrNullObject("absent").load("name");
    const used = context.workbook.worksheets.getItem("Sheet1").getUsedRangeOrNullObject(true).load("address");
    await context.sync();
    expect([there.isNullObject, absent.isNullObject, used.isNullObject]).toEqual([false, true, true]);
    expect(there.name).toBe("there");
  });
});

test("changes of cells and results on all sheets are reported", async () => {
  const excel = new StrictExcel();
  const heard: string[] = [];
  await Excel.run(async (context) => {
    context.workbook.worksheets.onChanged.add(async () => void heard.push("changed"));
    context.workbook.worksheets.onCalculated.add(async () => void heard.push("calculated"));
    await context.sync();
  });
  excel.tell("changed");
  excel.tell("calculated");
  await turns(5);
  expect(heard).toEqual(["changed", "calculated"]);
  expect(excel.faults).toEqual([]);
});
