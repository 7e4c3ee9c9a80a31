/** What the check of the cells finds on a sheet of the embedded workbook, in English. */
import { CONTENT_NAMES, integrity } from "../../src/checks/integrity";
import { readRecord, RECORD_NAMES } from "../../src/record/record";
import type { EmbeddedPort } from "../../src/workbook/embedded";
import { inEnglish } from "../in-english";

export async function integrityOfSheet(port: EmbeddedPort, sheet: string) {
  const values = await port.readNames(sheet, [...new Set([...RECORD_NAMES, ...CONTENT_NAMES])]);
  return inEnglish(
    integrity({
      names: await port.listNames(sheet),
      values,
      contents: await port.readContents(sheet, CONTENT_NAMES),
      hidden: await port.hidden(sheet),
      record: readRecord(values),
    }),
  );
}
