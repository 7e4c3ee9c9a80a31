/** A firm's file may have what the sheet on the page does not keep: one sentence says what, and everything else opens as it was. */
import { english } from "../../../../src/reduction/message";
import { openXlsx, saveXlsx } from "../../../../src/workbook/embedded";
import { baseFile, contentsOf, fileOf, textsOf, type Texts } from "./base-file";

let texts: Texts;
let wanted: ReturnType<typeof contentsOf>;

beforeAll(async () => {
  const file = await baseFile();
  texts = textsOf(file);
  wanted = contentsOf(openXlsx(file).workbook);
});

const FIRST = "xl/worksheets/sheet1.xml";
const BOOK = "xl/workbook.xml";
const TYPES = "[Content_Types].xml";

const edited = (path: string, change: (text: string) => string): Texts => {
  const changed = change(texts[path]!);
  expect(changed).not.toBe(texts[path]);
  return { [path]: changed };
};
/** A part of another kind, with its content type. */
const part = (path: string, type: string, text = "<x/>"): Texts => ({
  ...edited(TYPES, (types) =>
    types.replace("</Types>", `<Override PartName="/${path}" ContentType="application/${type}"/></Types>`),
  ),
  [path]: text,
});
/** Something at the end of the first sheet. */
const atEnd = (element: string): Texts =>
  edited(FIRST, (text) => text.replace("</worksheet>", `${element}</worksheet>`));
/** An extension, which only Excel knows. */
const extension = (uri: string): Texts => atEnd(`<extLst><ext uri="{${uri}}"><y/></ext></extLst>`);
/** A conditional format of a type. */
const format = (type: string): Texts =>
  edited(FIRST, (text) =>
    text.replace(
      "<dataValidations",
      `<conditionalFormatting sqref="A3"><cfRule type="${type}" dxfId="0" priority="1"/></conditionalFormatting><dataValidations`,
    ),
  );
/** The first shared text with runs of its own. */
const inText = (run: string): Texts =>
  edited("xl/sharedStrings.xml", (text) => text.replace(/<si>(<t[^>]*>[^<]*<\/t>)<\/si>/, `<si>${run}</si>`));

test.each<[string, () => Texts]>([
  [
    "pivot tables (the values stay)",
    () => part("xl/pivotTables/p1.xml", "vnd.openxmlformats-officedocument.spreadsheetml.pivotTable+xml"),
  ],
  ["slicers and timelines", () => part("xl/slicers/s1.xml", "vnd.ms-excel.slicer+xml")],
  [
    "comments with answers (as notes they stay)",
    () => part("xl/threadedComments/t1.xml", "vnd.ms-excel.threadedcomments+xml"),
  ],
  [
    "queries and connections to data",
    () => part("xl/connections.xml", "vnd.openxmlformats-officedocument.spreadsheetml.connections+xml"),
  ],
  ["buttons and other controls", () => part("xl/ctrlProps/c1.xml", "vnd.ms-excel.controlproperties+xml")],
  ["diagrams", () => part("xl/charts/chartEx1.xml", "vnd.ms-office.chartex+xml")],
  [
    "data of other programs (custom XML)",
    () => part("customXml/itemProps1.xml", "vnd.openxmlformats-officedocument.customXmlProperties+xml"),
  ],
  [
    "the digital signature",
    () => part("_xmlsignatures/sig1.xml", "vnd.openxmlformats-package.digital-signature-xmlsignature+xml"),
  ],
  ["sparklines", () => extension("05C60535-1F16-4fd2-B633-F4F36F0B64E0")],
  ["conditional formats of Excel 2010 and later", () => extension("78C0D931-6437-407d-A8EE-F0AAD7539E65")],
  ["rules of entry that read another sheet", () => extension("CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF")],
  ["scenarios", () => atEnd('<scenarios><scenario name="high"/></scenarios>')],
  ["conditional formats for averages, errors or days", () => format("aboveAverage")],
  [
    "the password of a protected sheet",
    () =>
      edited(FIRST, (text) =>
        text.includes("<sheetProtection")
          ? text.replace("<sheetProtection", '<sheetProtection password="CC1A"')
          : text.replace("</sheetData>", '</sheetData><sheetProtection sheet="1" password="CC1A"/>'),
      ),
  ],
  ["rows and columns printed on every page", () => printTitles()],
  [
    "sheets that only a macro can show (they are hidden as others are)",
    () => edited(BOOK, (text) => text.replace('state="visible" name="Second"', 'state="veryHidden" name="Second"')),
  ],
  [
    "the protection of the workbook's structure",
    () => edited(BOOK, (text) => text.replace("<bookViews", '<workbookProtection lockStructure="1"/><bookViews')),
  ],
  [
    "properties of the document",
    () => ({
      "docProps/core.xml": `<cp:coreProperties xmlns:cp="a" xmlns:dc="b"><dc:title>Bore 7</dc:title></cp:coreProperties>`,
    }),
  ],
])("of %s", (called, added) => {
  const { workbook, remarks } = openXlsx(fileOf({ ...texts, ...added() }));
  expect(remarks.map(english)).toEqual([
    `The sheet on this page does not keep these contents of the file: ${called}. Keep the file, and save under another name.`,
  ]);
  expect(contentsOf(workbook)).toEqual(wanted);
});

function printTitles(): Texts {
  return edited(BOOK, (text) =>
    text.replace(
      "<definedNames>",
      `<definedNames><definedName name="_xlnm.Print_Titles" localSheetId="0">First!$1:$2</definedName>`,
    ),
  );
}

test("of words with a look of their own, and of phonetic text; the text stays", () => {
  const text = /<si><t[^>]*>([^<]*)<\/t><\/si>/.exec(texts["xl/sharedStrings.xml"]!)![1]!;
  const bold = `<r><rPr><b/></rPr><t xml:space="preserve">${text}</t></r><rPh sb="0" eb="1"><t>sound</t></rPh>`;
  const { workbook, remarks } = openXlsx(fileOf({ ...texts, ...inText(bold) }));
  expect(remarks.map(english)).toEqual([
    "The sheet on this page does not keep these contents of the file: the look of single words in a cell, phonetic text. Keep the file, and save under another name.",
  ]);
  expect(contentsOf(workbook)).toEqual(wanted);
});

test("several conditional formats of the same cells are all kept", async () => {
  const rules = [1, 2, 3].map(
    (limit) =>
      `<cfRule type="cellIs" operator="greaterThan" dxfId="0" priority="${limit}"><formula>${limit}</formula></cfRule>`,
  );
  const added = edited(FIRST, (text) =>
    text.replace(
      "<dataValidations",
      `<conditionalFormatting sqref="A3:A6">${rules.join("")}</conditionalFormatting><dataValidations`,
    ),
  );
  const dxf = edited("xl/styles.xml", (text) =>
    text.replace(
      /<dxfs[^>]*?(?:\/>|>.*<\/dxfs>)|(?=<\/styleSheet>)/s,
      '<dxfs count="1"><dxf><font><b/></font></dxf></dxfs>',
    ),
  );
  const limitsOf = (bytes: Uint8Array): unknown => {
    const { getters } = openXlsx(bytes).workbook.model;
    return getters
      .getConditionalFormats(getters.getSheetIds()[1]!)
      .map(({ rule }) => ("values" in rule ? rule.values : rule));
  };
  const file = fileOf({ ...texts, ...added, ...dxf });
  expect(limitsOf(file)).toEqual([["1"], ["2"], ["3"]]);
  expect(limitsOf(await saveXlsx(openXlsx(file).workbook))).toEqual([["1"], ["2"], ["3"]]);
});

test("nothing is said of a workbook that was saved here", () => {
  expect(openXlsx(fileOf(texts)).remarks).toEqual([]);
});
