/** What the sheet check does with the workbook: it looks at a sheet, enters formulas again, protects, inserts a file. */
import { CONTENT_NAMES, formulaFindings } from "../../../checks/integrity";
import { checkSheet, CHECKED_NAMES, firmLayout } from "../../../datasheet";
import { NAMES_WITH_FORMULAS } from "../../../specification/placed-formulas";
import { WorkbookError, type WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import type { LookedAt, Offer, Telling } from "./sheet-check-state";

const words = text.check;

/** The sheet that something was done to, and what is told of it. */
export interface Done {
  readonly sheet: string;
  readonly telling?: Telling;
  readonly offer?: Offer;
}

/** A name leads to other cells already: it is moved only when the person says so. */
export class NameTaken extends WorkbookError {}

const CONTENTS = [...new Set([...CONTENT_NAMES, ...NAMES_WITH_FORMULAS])];

export async function lookAtSheet(port: WorkbookPort, sheet: string): Promise<LookedAt> {
  const [found] = await port.lookAt([{ sheet, values: CHECKED_NAMES, contents: CONTENTS, names: true }]);
  const { names = [], values = {}, contents = {} } = found ?? {};
  return {
    sheet,
    check: checkSheet(names, values),
    formulas: formulaFindings({ names, values, contents }),
    layout: firmLayout(names, values, contents),
    isProtected: await port.isProtected(sheet),
  };
}

export async function enterFormulasAgain(port: WorkbookPort): Promise<Done> {
  const sheet = await port.activeSheet();
  const { found, left } = await port.reenterFormulas(sheet);
  return {
    sheet,
    telling: {
      intent: left > 0 ? "warning" : "success",
      sentence: `${words.of(sheet)}: ${words.reentered(found, left)}`,
    },
  };
}

export async function protectSheet(port: WorkbookPort, on: boolean): Promise<Done> {
  const sheet = await port.activeSheet();
  await port.protect(sheet, on);
  return { sheet, telling: { intent: "success", sentence: on ? words.protected(sheet) : words.lifted(sheet) } };
}

/** The last data sheet of the file is looked at; the first sheet where none is a data sheet. */
export async function insertOwnFile(port: WorkbookPort, file: Pick<File, "arrayBuffer">): Promise<Done> {
  const { sheets, remarks } = await port.insertFile(new Uint8Array(await file.arrayBuffer()));
  let sheet = sheets[0] ?? (await port.activeSheet());
  for (const one of sheets) if ((await lookAtSheet(port, one)).check.isDataSheet) sheet = one;
  const sentence = [words.inserted(sheets), ...remarks].join(" ");
  return { sheet, telling: { intent: remarks.length > 0 ? "warning" : "success", sentence } };
}
