/**
 * The work of the sheet check in the workbook: it reads a sheet, enters formulas again, protects the sheet, inserts a
 * file.
 */
import { CONTENT_NAMES, formulaFindings } from "../../../checks/integrity";
import { checkSheet, CHECKED_NAMES, firmLayout } from "../../../datasheet";
import { layoutOf } from "../../../record/places";
import { NAMES_WITH_FORMULAS } from "../../../specification/placed-formulas";
import type { Course } from "../../../workbook/in-slices";
import { WorkbookError, type WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { language } from "../../text/language";
import { inWords } from "../../text/messages";
import type { LookedAt, Offer, Telling } from "./sheet-check-state";

const words = text.check;

/** The sheet that the work changed, and the report about it. */
export interface Done {
  readonly sheet: string;
  readonly telling?: Telling;
  readonly offer?: Offer;
}

/** Thrown if a name already refers to other cells; it is moved only if the person confirms. */
export class NameTaken extends WorkbookError {}

const CONTENTS = [...new Set([...CONTENT_NAMES, ...NAMES_WITH_FORMULAS])];

export async function lookAtSheet(port: WorkbookPort, sheet: string): Promise<LookedAt> {
  const [found] = await port.lookAt([{ sheet, values: CHECKED_NAMES, contents: CONTENTS, names: true }]);
  const { names = [], values = {}, contents = {} } = found ?? {};
  return {
    sheet,
    language: layoutOf(names, values, contents, language()).language ?? language(),
    seen: { names, values, contents },
    check: checkSheet(names, values),
    formulas: formulaFindings({ names, values, contents }, language()),
    layout: firmLayout(names, values, contents, language()),
    isProtected: await port.isProtected(sheet),
  };
}

export async function enterFormulasAgain(port: WorkbookPort, course: Course): Promise<Done> {
  const sheet = await port.activeSheet();
  const { found, left } = await port.reenterFormulas(sheet, course);
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

/**
 * Inserts a file. The last data sheet of the file is checked afterwards, or its first sheet if none is a data sheet.
 */
export async function insertOwnFile(
  port: WorkbookPort,
  file: Pick<File, "arrayBuffer">,
  course: Course,
): Promise<Done> {
  const { sheets, remarks } = await port.insertFile(new Uint8Array(await file.arrayBuffer()), course);
  let sheet = sheets[0] ?? (await port.activeSheet());
  for (const one of sheets) if ((await lookAtSheet(port, one)).check.isDataSheet) sheet = one;
  const sentence = [words.inserted(sheets), ...remarks.map(inWords)].join(" ");
  return { sheet, telling: { intent: remarks.length > 0 ? "warning" : "success", sentence } };
}
