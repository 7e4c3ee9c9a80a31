/** What the sheet check does with the workbook: it looks at a sheet, names cells, enters formulas again, protects, inserts a file. */
import { boxAddress, boxOf, cellsToName, checkSheet, CHECKED_NAMES } from "../../../datasheet";
import { WorkbookError, type WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { sentenceOf } from "../../text/sentence";
import type { LookedAt, Telling } from "./sheet-check-state";

const words = text.check;

/** The sheet that something was done to, and what is told of it. */
export interface Done {
  readonly sheet: string;
  readonly telling?: Telling;
}

/** A name leads to other cells already: it is moved only when the person says so. */
export class NameTaken extends WorkbookError {}

export async function lookAtSheet(port: WorkbookPort, sheet: string): Promise<LookedAt> {
  const names = await port.listNames(sheet);
  const values = await port.readNames(sheet, CHECKED_NAMES);
  return { sheet, check: checkSheet(names, values), isProtected: await port.isProtected(sheet) };
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

/** Gives the selected cells a name. Throws `NameTaken` where the name leads to other cells and may not be replaced. */
export async function attachName(port: WorkbookPort, name: string, replace: boolean): Promise<Done> {
  const { sheet, address, values } = await port.selection();
  const box = boxOf(address);
  if (!box) throw new WorkbookError(words.oneBlock);
  const cells = cellsToName(name, box, values.flat().filter((value) => value !== "").length);
  if ("sentence" in cells) throw new WorkbookError(cells.sentence);
  const place = boxAddress(cells.box).replaceAll("$", "");
  const isPresent = (await port.listNames(sheet)).some(
    (one) => one.name.toLowerCase() === name.toLowerCase() && one.place !== "lost" && one.scope === "sheet",
  );
  try {
    await port.nameCells(sheet, name, place, replace);
  } catch (error) {
    if (!isPresent || replace) throw error;
    throw new NameTaken(sentenceOf(error), { cause: error });
  }
  return { sheet, telling: { intent: "success", sentence: words.attached(name, place, sheet) } };
}
