/** Adds the sheet which says that a file is a copy with values; it stands behind the others. */
import { freeSheetName } from "../../../rules/sheet-names";
import { all, append, textInXml } from "../../../file/xml";
import { heldText } from "../../../file/escapes";
import { MAIN, RELATIONS } from "../namespaces";
import { Parts, relationsOf } from "../parts";
import { WORKBOOK } from "../package";

/** What a copy with values says of itself: on a sheet with this name, its lines below one another in the first column. */
export interface ValuesNotice {
  readonly sheet: string;
  readonly lines: readonly string[];
}

const ID = "rIdValues";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";

export function addValuesSheet(parts: Parts, { sheet, lines }: ValuesNotice): void {
  const workbook = parts.document(WORKBOOK);
  const sheets = all(workbook, "sheet");
  const name = freeSheetName(
    sheet,
    sheets.map((one) => one.getAttribute("name") ?? ""),
  );
  const sheetId = Math.max(...sheets.map((one) => Number(one.getAttribute("sheetId")))) + 1;
  const path = `xl/worksheets/sheet${sheets.length}.xml`;
  const list = sheets[0]?.parentElement;
  if (!list) return;
  const entry = append(list, "sheet", { state: "visible", name: heldText(name), sheetId: String(sheetId) });
  entry.setAttributeNS(RELATIONS, "r:id", ID);
  append(parts.document(relationsOf(WORKBOOK)).documentElement, "Relationship", {
    ...{ Id: ID, Type: `${RELATIONS}/worksheet`, Target: path.slice("xl/".length) },
  });
  append(parts.document("[Content_Types].xml").documentElement, "Override", {
    ...{ PartName: `/${path}`, ContentType: TYPE },
  });
  const rows = lines.map(
    (line, index) => `<row r="${index + 1}"><c r="A${index + 1}" t="str"><v>${textInXml(heldText(line))}</v></c></row>`,
  );
  parts.set(
    path,
    `<worksheet xmlns="${MAIN}"><cols><col min="1" max="1" width="110" customWidth="1"/></cols><sheetData>${rows.join("")}</sheetData></worksheet>`,
  );
}
