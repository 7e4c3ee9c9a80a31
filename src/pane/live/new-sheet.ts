/** Inserts a new sheet and writes the sentence about it. */
import { inWords } from "../text/messages";
import type { Course } from "../../workbook/in-slices";
import type { SheetPlan, WorkbookPort } from "../../workbook/port";

export interface NewSheet {
  readonly sheet: string;
  readonly intent: "success" | "warning";
  /** Says what was made, and then what the host did not accept. */
  readonly sentence: string;
}

/** `said` makes the sentence from the name of the sheet. */
export async function newSheet(
  port: WorkbookPort,
  plan: SheetPlan,
  said: (sheet: string) => string,
  course?: Course,
): Promise<NewSheet> {
  const remarks: string[] = [];
  const sheet = await port.insertSheet(plan, (remark) => void remarks.push(inWords(remark)), course);
  return {
    sheet,
    intent: remarks.length > 0 ? "warning" : "success",
    sentence: [said(sheet), ...remarks].join(" "),
  };
}
