/**
 * Valid files in the forms that other programs write: each opens with the same contents as the file it was made from.
 */
import { english } from "../../../../src/reduction/message";
import ExcelJS from "exceljs";
import { strToU8, zipSync } from "fflate";
import { EmbeddedPort, newWorkbook, openXlsx, saveXlsx, type OpenWorkbook } from "../../../../src/workbook/embedded";
import { shifted } from "../../../../src/workbook/embedded/xlsx/cells";
import { Package } from "../../../ooxml/package";
import { baseFile, contentsOf, fileOf, textsOf, type Texts } from "./base-file";

let texts: Texts;
let contents: ReturnType<typeof contentsOf>;

beforeAll(async () => {
  const file = await baseFile();
  texts = textsOf(file);
  contents = contentsOf(openXlsx(file).workbook);
});

const FIRST = "xl/worksheets/sheet1.xml";
const everywhere = (change: (text: string, path: string) => string): Texts =>
  Object.fromEntries(Object.entries(texts).map(([path, text]) => [path, change(text, path)]));
const edited = (path: string, change: (text: string) => string): Texts => {
  const changed = change(texts[path]!);
  expect(changed).not.toBe(texts[path]);
  return { ...texts, [path]: changed };
};
const renamed = (from: string, to: string): Texts =>
  Object.fromEntries(Object.entries(texts).map(([path, text]) => [path.replace(from, to), text.replaceAll(from, to)]));

const STRICT = "http://purl.oclc.org/ooxml";
/** The text with the namespaces of Strict Open XML in place of the usual ones. */
const strict = (text: string): string =>
  text
    .replaceAll("http://schemas.openxmlformats.org/spreadsheetml/2006/main", `${STRICT}/spreadsheetml/main`)
    .replaceAll(
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
      `${STRICT}/officeDocument/relationships`,
    );
/** The text with a prefix on the elements of spreadsheets, as the Open XML SDK writes them. */
const prefixed = (text: string, path: string): string =>
  /^xl\/(workbook|styles|sharedStrings|comments\d+|worksheets\/[^/]+)\.xml$/.test(path)
    ? text.replace(/<(\/?)([A-Za-z]\w*)(?=[\s/>])/g, "<$1x:$2").replace(/ xmlns="/, ' xmlns:x="')
    : text;

test.each<[string, () => Texts]>([
  [
    "absolute targets",
    () =>
      everywhere((text, path) =>
        path === "xl/_rels/workbook.xml.rels" ? text.replace(/Target="/g, 'Target="/xl/') : text,
      ),
  ],
  [
    "targets with steps back and forth",
    () => edited("xl/_rels/workbook.xml.rels", (text) => text.replace(/Target="/g, 'Target="./theme/../')),
  ],
  ["parts under other names", () => renamed("sheet1.xml", "first%20page.xml")],
  [
    "parts in capitals that differ from their targets",
    () => Object.fromEntries(Object.entries(texts).map(([path, text]) => [path.replace("xl/w", "XL/W"), text])),
  ],
  [
    "a wrong kind of content",
    () =>
      edited("[Content_Types].xml", (text) =>
        text.replace(/ContentType="[^"]*worksheet\+xml"/g, 'ContentType="text/plain"'),
      ),
  ],
  [
    "the kind of a workbook with macros",
    () =>
      edited("[Content_Types].xml", (text) =>
        text.replace(
          "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml",
          "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
        ),
      ),
  ],
  ["a prefix for all elements", () => everywhere(prefixed)],
  ["Strict Open XML", () => everywhere(strict)],
  [
    "foreign elements with the names of cells",
    () =>
      edited(FIRST, (text) =>
        text.replace(
          "</sheetData>",
          '</sheetData><extLst><ext><c xmlns="urn:x" r="A1"><v>9</v></c><row xmlns="urn:x" r="2"/></ext></extLst>',
        ),
      ),
  ],
  [
    "comments and a declaration in front",
    () =>
      edited(
        FIRST,
        (text) => `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<!-- <!DOCTYPE a> -->\n${text}`,
      ),
  ],
  ["cells and rows without address", () => edited(FIRST, withoutAddresses)],
  [
    "texts in their cells",
    () => ({
      ...everywhere(inlineStrings),
      "xl/sharedStrings.xml": '<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"/>',
    }),
  ],
  [
    "a theme that is named and absent",
    () =>
      edited("xl/_rels/workbook.xml.rels", (text) =>
        text.replace(
          "</Relationships>",
          '<Relationship Id="t" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/theme" Target="theme/theme1.xml"/></Relationships>',
        ),
      ),
  ],
  [
    "a colour of the theme, without a theme",
    () => edited("xl/styles.xml", (text) => text.replace(/<color rgb="[^"]*"/g, '<color theme="1"')),
  ],
  [
    "a second bound that says nothing",
    () => edited(FIRST, (text) => text.replace(/<\/formula1>/g, "</formula1><formula2>0</formula2>")),
  ],
])("%s", (_, make) => {
  const { workbook, remarks } = openXlsx(fileOf(make()));
  expect(contentsOf(workbook)).toEqual(contents);
  expect(remarks).toEqual([]);
});

/**
 * Without addresses: in this sheet rows and cells follow one another without gaps once the blank ones are written too.
 */
function withoutAddresses(text: string): string {
  const rows = new Map(
    [...text.matchAll(/<row r="(\d+)"[^>]*>([^]*?)<\/row>/g)].map(([, row, cells]) => [Number(row), cells!]),
  );
  const last = Math.max(...rows.keys());
  const written = Array.from({ length: last }, (_, i) => {
    const cells = new Map(
      [...(rows.get(i + 1) ?? "").matchAll(/<c r="([A-Z])\d+"([^>]*?)(?:\/>|>([^]*?)<\/c>)/g)].map(
        ([, col, rest, inside]) => [col!, `<c${rest}>${inside ?? ""}</c>`],
      ),
    );
    return `<row>${["A", "B", "C", "D"].map((col) => cells.get(col) ?? "<c/>").join("")}</row>`;
  });
  return text.replace(/<sheetData>[^]*<\/sheetData>/, `<sheetData>${written.join("")}</sheetData>`);
}

function inlineStrings(text: string, path: string): string {
  if (!/worksheets\/[^/]+\.xml$/.test(path)) return text;
  const strings = [...texts["xl/sharedStrings.xml"]!.matchAll(/<si>([^]*?)<\/si>/g)].map(([, inside]) => inside!);
  return text.replace(/t="s">\s*<v>(\d+)<\/v>/g, (_, index) => `t="inlineStr"><is>${strings[Number(index)]}</is>`);
}

test("parts in UTF-16 with a byte order mark are read", () => {
  const wide = (text: string): Uint8Array =>
    new Uint8Array(
      Uint16Array.from(`\ufeff<?xml version="1.0" encoding="UTF-16"?>${text}`, (one) => one.charCodeAt(0)).buffer,
    );
  const parts = Object.entries(texts).map(([path, text]): [string, Uint8Array] => [
    path,
    /sheet1|sharedStrings/.test(path) ? wide(text) : strToU8(text),
  ]);
  expect(contentsOf(openXlsx(zipSync(Object.fromEntries(parts))).workbook)).toEqual(contents);
});

test("the order of the tabs is that of the workbook, whatever the names of the parts, and a remark names a chart sheet between them", () => {
  const workbook = texts["xl/workbook.xml"]!;
  const entries = workbook.match(/<sheet [^>]*>/g)!;
  const relations = "xl/_rels/workbook.xml.rels";
  const turned = fileOf({
    ...texts,
    "xl/workbook.xml": workbook
      .replace(
        /<sheets>[^]*<\/sheets>/,
        `<sheets>${entries[2]}<sheet name="Chart" sheetId="9" r:id="c"/>${entries[1]}${entries[0]}</sheets>`,
      )
      .replace(/localSheetId="(\d)"/g, (_, at) => `localSheetId="${[3, 2, 0][Number(at)]}"`),
    [relations]: texts[relations]!.replace(
      "</Relationships>",
      '<Relationship Id="c" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/chartsheet" Target="chartsheets/sheet1.xml"/></Relationships>',
    ),
  });
  const { workbook: opened, remarks } = openXlsx(turned);
  const found = contentsOf(opened);
  expect(found.map(({ name }) => name)).toEqual(["Second", "First", "Sheet1"]);
  expect(found.map(({ cells }) => cells.A3?.[1])).toEqual([4720, 2360, undefined]);
  expect(found.map(({ names }) => names.length)).toEqual([2, 2, 0]);
  expect(remarks.map(english)).toEqual(['The chart sheet "Chart" was left out: it has no cells.']);
});

test("a rule with a second bound that has no meaning is kept in another workbook", async () => {
  const file = fileOf(edited(FIRST, (text) => text.replace(/<\/formula1>/g, "</formula1><formula2>0</formula2>")));
  const port = new EmbeddedPort(newWorkbook());
  expect((await port.insertFile(file)).remarks).toEqual([]);
});

test.each([
  ["A1+$A1+A$1+$A$1", 2, 1, "B3+$A3+B$1+$A$1"],
  ["SUM(A1:B2,A:B,$1:2)", 1, 1, "SUM(B2:C3,B:C,$1:3)"],
  ["LOG10(A1)&\"A1\"&'A1 x'!A1", 1, 0, "LOG10(A2)&\"A1\"&'A1 x'!A2"],
  ["mass+XFD1048576", 1, 1, "mass+A1"],
])("a shared formula %s is correct %d rows lower and %d columns to the right", (formula, rows, cols, wanted) => {
  expect(shifted(formula, rows, cols)).toBe(wanted);
});

test("shared formulas, dates, links, groups and pictures of exceljs are read", async () => {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("Firm");
  sheet.getCell("A1").value = 1;
  sheet.fillFormula("B1:B3", 'LOG10(A1)&"B1"', [0, 0, 0]);
  sheet.getCell("C1").value = new Date(Date.UTC(2024, 0, 31));
  sheet.getCell("D1").value = { text: "a page", hyperlink: "https://example.org/x" };
  sheet.getCell("D2").value = { text: "run", hyperlink: "javascript:alert(1)" };
  sheet.getCell("A5").value = 5;
  sheet.getRow(5).hidden = true;
  sheet.getRow(2).height = 30;
  const { workbook, remarks } = openXlsx(new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer));
  const [{ cells }] = contentsOf(workbook) as [ReturnType<typeof contentsOf>[number]];
  // The engine has no LOG10: the formula comes with LOG, which is the same with one argument.
  expect([cells.B1![0], cells.B2![0], cells.B3![0]]).toEqual(['=LOG(A1)&"B1"', '=LOG(A2)&"B1"', '=LOG(A3)&"B1"']);
  expect(cells.C1![1]).toBe(45_322);
  const { getters } = workbook.model;
  const [sheetId] = getters.getSheetIds() as [string];
  const [page, script] = [0, 1].map((row) => getters.getEvaluatedCell({ sheetId, col: 3, row }));
  expect([page!.value, page!.link?.url, script!.value, script!.link]).toEqual([
    "a page",
    "https://example.org/x",
    "run",
    undefined,
  ]);
  expect(remarks.map(english)).toEqual([expect.stringMatching(/^1 links of "Firm" were left out/)]);
  const port = new EmbeddedPort(workbook);
  expect(await port.hidden("Firm")).toEqual({ rows: [4], cols: [] });
  expect(getters.getRowSize(sheetId, 1)).toBe(40);
});

test.each([
  ["d-mmm-yy", "9-Mar-26"],
  ["d-mmm", "9-Mar"],
  ["mmm-yy", "Mar-26"],
  ["h:mm AM/PM", "01:37 PM"],
  ["h:mm:ss AM/PM", "01:37:12 PM"],
  ["h:mm", "13:37"],
  ["h:mm:ss", "13:37:12"],
  ["mm:ss", "37:12"],
  ["[h]:mm:ss", "1106173:37:12"],
  ["[h]:mm", "1106173:37"],
  ["0.00", "46090.57"],
])(
  "a day with a time in Excel's own format %s shows %s, also when it is saved here and opened again",
  async (numFmt, wanted) => {
    const made = new ExcelJS.Workbook();
    const cell = made.addWorksheet("Days").getCell("A1");
    cell.value = 46_090.567_5;
    cell.numFmt = numFmt;
    const bytes = new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer);
    // The file has a number for each format but the one without seconds, and does not spell it.
    expect(textsOf(bytes)["xl/styles.xml"]!.includes("formatCode")).toBe(numFmt === "[h]:mm");
    const shown = ({ model: { getters } }: OpenWorkbook) =>
      getters.getEvaluatedCell({ sheetId: getters.getActiveSheetId(), col: 0, row: 0 }).formattedValue;
    const { workbook } = openXlsx(bytes);
    expect([shown(workbook), shown(openXlsx(await saveXlsx(workbook)).workbook)]).toEqual([wanted, wanted]);
  },
);

/** A black dot of one pixel. */
const DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==";

test("pictures stand where another program put them, in a file saved again and again", async () => {
  const made = new ExcelJS.Workbook();
  const sheet = made.addWorksheet("Firm");
  sheet.getColumn(8).width = 20;
  const dot = made.addImage({ base64: DOT, extension: "png" });
  // exceljs writes no size beside a frame of two cells, and none of the frames begins within a cell.
  sheet.addImage(dot, "H2:I4");
  sheet.addImage(dot, { tl: { col: 1, row: 9 }, ext: { width: 120, height: 60 } });
  let file = new Uint8Array((await made.xlsx.writeBuffer()) as ArrayBuffer);
  for (const round of ["first", "second", "third"]) {
    const { workbook } = openXlsx(file);
    const { getters } = workbook.model;
    const [sheetId] = getters.getSheetIds() as [string];
    const placed = getters.getFigures(sheetId).map(({ col, row, width, height }) => [col, row, width, height]);
    const across = getters.getColSize(sheetId, 7) + getters.getColSize(sheetId, 8);
    const down = [1, 2, 3].reduce((sum, row) => sum + getters.getRowSize(sheetId, row), 0);
    expect([round, placed]).toEqual([
      round,
      [
        [7, 1, across, down],
        [1, 9, 120, 60],
      ],
    ]);
    file = new Uint8Array(await saveXlsx(workbook));
  }
});

test("a formula that only the page can calculate stays a formula in the file when it shows a text with = in front", async () => {
  const workbook = newWorkbook();
  const { dispatch, getters } = workbook.model;
  const [sheetId] = getters.getSheetIds() as [string];
  ["'=1+", '=JOIN("",A1,2)', "=OFFSET(A1,0,0)"].forEach((content, row) =>
    dispatch("UPDATE_CELL", { sheetId, col: 0, row, content }),
  );
  const [{ cells }] = contentsOf(openXlsx(await saveXlsx(workbook)).workbook) as [
    ReturnType<typeof contentsOf>[number],
  ];
  expect(cells.A2).toEqual(['=JOIN("",A1,2)', "=1+2", ""]);
  expect(cells.A3).toEqual(["=OFFSET(A1,0,0)", "=1+", ""]);
});

test("an answer that has no room to spill is saved as an error that a file can hold", async () => {
  const port = new EmbeddedPort(newWorkbook());
  const sheet = port.workbook.model.getters.getActiveSheetId();
  for (const [row, col, content] of [
    [0, 0, "1"],
    [1, 0, "2"],
    [0, 2, "=TRANSPOSE(A1:A2)"],
    [0, 3, "in the way"],
  ] as const)
    port.workbook.model.dispatch("UPDATE_CELL", { sheetId: sheet, row, col, content });
  const file = new Package(await saveXlsx(port.workbook));
  expect(file.text(file.sheets[0].path)).toMatch(/<c r="C1"[^>]* t="e"><f[^>]*>TRANSPOSE\(A1:A2\)<\/f><v>#VALUE!<\/v>/);
});

test("a workbook saved here, then by exceljs, is read back equal", async () => {
  const other = new ExcelJS.Workbook();
  // exceljs keeps one of two equal names on two sheets: this file has one sheet.
  const file = await baseFile(1);
  await other.xlsx.load(file.buffer as ArrayBuffer);
  const { workbook } = openXlsx(new Uint8Array((await other.xlsx.writeBuffer()) as ArrayBuffer));
  const wanted = contentsOf(openXlsx(file).workbook);
  expect(contentsOf(workbook)).toEqual(wanted);
  expect(contentsOf(openXlsx(await saveXlsx(workbook)).workbook)).toEqual(wanted);
});
