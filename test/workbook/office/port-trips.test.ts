/** @jest-environment jsdom */
/**
 * Round trips to Excel for the screens' requests to the port, on a workbook of 1, 10 and 40 data sheets, counted by the
 * strict stand-in. The trip by which the library releases ranges after a piece of work is left out: it comes when the
 * library finds time.
 */
import { blankSheet } from "../../../src/datasheet";
import { DATA_SHEET_NAME } from "../../../src/specification/readings";
import { RECORD_NAMES } from "../../../src/record/record";
import { OfficePort } from "../../../src/workbook/office";
import { StrictExcel } from "../../excel/strict-excel";

const SHEET = "Consolidation test";
/** The most that the present code needs. */
const MOST: Readonly<Record<string, number>> = { names: 1, list: 3, record: 2, selection: 2, sheet: 5 };

test.each([1, 10, 40])("a workbook of %d data sheets", async (sheets) => {
  const excel = new StrictExcel({ version: "1.17" });
  const port = new OfficePort();
  await port.insertSheet(blankSheet("SI", { name: SHEET, loads: 4, readingRows: 60 }));
  for (let copy = 2; copy <= sheets; copy++) excel.copySheet(SHEET, `${SHEET} ${copy}`);
  const trips = async (work: () => Promise<unknown>): Promise<number> => {
    const { trips, releases } = await excel.cost(work);
    return trips - releases;
  };
  const asked = {
    names: await trips(() => port.sheetNames()),
    list: await trips(async () =>
      expect((await port.readSheets([DATA_SHEET_NAME])).filter(({ values }) => values[DATA_SHEET_NAME])).toHaveLength(
        sheets,
      ),
    ),
    record: await trips(() => port.readNames(SHEET, RECORD_NAMES)),
    selection: await trips(() => port.selection()),
    sheet: await trips(() => port.insertSheet(blankSheet("SI", { loads: 4, readingRows: 60 }))),
  };
  const beyond = Object.entries(asked).filter(([what, count]) => count > MOST[what]);
  expect([asked, beyond]).toEqual([asked, []]);
  expect(excel.faults).toEqual([]);
});
