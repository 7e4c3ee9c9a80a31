/** A new sheet, and what is said of it. */
import type { SheetPlan, WorkbookPort } from "../../workbook/port";

export interface NewSheet {
  readonly sheet: string;
  readonly intent: "success" | "warning";
  /** What was made, then what the host did not take of it. */
  readonly sentence: string;
}

/** `said` gives the sentence for the sheet's name. */
export async function newSheet(
  port: WorkbookPort,
  plan: SheetPlan,
  said: (sheet: string) => string,
): Promise<NewSheet> {
  const remarks: string[] = [];
  const sheet = await port.insertSheet(plan, (remark) => void remarks.push(remark));
  return {
    sheet,
    intent: remarks.length > 0 ? "warning" : "success",
    sentence: [said(sheet), ...remarks].join(" "),
  };
}
