/** What somebody else does in the middle of an operation: in a second window, in a co-authored workbook, or while it goes on. */
import { OfficePort } from "../../../src/workbook/office";
import { boxOf } from "../../../src/workbook/address";
import { Refusal } from "../../excel/refusal";
import type { StrictExcel } from "../../excel/strict-excel";
import type { Operation } from "./operations";

type Act = (excel: StrictExcel, operation: Operation) => void | Promise<void>;

const sheetOf = (excel: StrictExcel, { sheet = "Data" }: Operation) => excel.sheet(sheet);

/** The row of the cell that the operation writes, counted from 0. */
const rowOf = ({ cell }: Operation): number => boxOf(cell)!.row;

export const SECOND_PANE = "the same is done in a second pane";
/** On the page: Excel's stand-in has no undo. */
export const UNDO = "the last step is taken back";

export const FAULTS: Readonly<Record<string, Act>> = {
  "the sheet is deleted": (excel, of) => sheetOf(excel, of).remove(),
  "the sheet is renamed": (excel, of) => void sheetOf(excel, of).rename("Another name"),
  "the sheet is moved": (excel, of) => void sheetOf(excel, of).moveTo(0),
  "the sheet is protected": (excel, of) => void sheetOf(excel, of).protect(),
  "the sheet is protected with a password": (excel, of) => void sheetOf(excel, of).protect({}, "secret"),
  "the workbook's structure is protected": (excel) => excel.structure(true),
  "a row is inserted above": (excel, of) => void sheetOf(excel, of).insertRows(0),
  "a row is inserted in the middle": (excel, of) => void sheetOf(excel, of).insertRows(rowOf(of)),
  "rows are filtered": (excel, of) => void sheetOf(excel, of).hideRows(rowOf(of)),
  "a name is deleted": (excel, of) => {
    const { sheet } = sheetOf(excel, of);
    sheet.names = sheet.names.filter(({ name }) => name !== of.name);
    excel.recalculate();
  },
  "a sheet is added": (excel) => void excel.copySheet("Notes", "Notes (2)"),
  "another cell is written": (excel, of) => void sheetOf(excel, of).put("A40", [[5]]),
  "a cell to be written is typed into": (excel, of) => void sheetOf(excel, of).put(of.cell, [["typed"]]),
  // The second pane may be refused, and says so.
  [SECOND_PANE]: async (_, of) => void (await of.work(new OfficePort()).catch(() => undefined)),
  "another sheet comes to the front": (excel) => excel.select("Notes", "A1"),
  "calculation is set to manual": (excel) => void (excel.evaluation.isManual = true),
  "the person types into a cell for a moment": (excel) => {
    excel.startEdit();
    setTimeout(() => excel.endEdit(), 5);
  },
};

/** Excel may refuse what the other person does. */
export async function carryOut(act: Act, excel: StrictExcel, operation: Operation): Promise<void> {
  try {
    await act(excel, operation);
  } catch (error) {
    if (!(error instanceof Refusal) && !/the workbook has no sheet/.test(String(error))) throw error;
  }
}
