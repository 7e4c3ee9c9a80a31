/** Each schema and each rule is broken once on purpose, and complains; a sound file gets no complaint. */
import { strToU8, zipSync } from "fflate";
import { broken, complainOf, edit, long, soundEntries, type Edit, type Fault } from "./broken";
import { complaintsOf, schemaComplaintsOfEach } from "./complaints";
import { EXCEL_RULES } from "./excel-rules";
import { PACKAGE_RULES } from "./package-rules";

beforeAll(soundEntries);

const [WORKBOOK, STYLES, STRINGS, METADATA] = ["workbook", "styles", "sharedStrings", "metadata"].map(
  (name) => `xl/${name}.xml`,
);
const [FOREIGN, TABLE_SHEET, SMALL] = [0, 1, 2].map((sheet) => `xl/worksheets/sheet${sheet}.xml`);
const [TYPES, RELATIONS] = ["[Content_Types].xml", "xl/_rels/workbook.xml.rels"];
const [CHART, DRAWING] = ["xl/charts/clayledger3-1.xml", "xl/drawings/clayledger3.xml"];
const [NOTES, BOXES, TABLE] = ["xl/comments3.xml", "xl/drawings/vmlDrawing3.vml", "xl/tables/table1.xml"];
test("a sound file gets no complaint", async () => {
  expect(complaintsOf(zipSync(await soundEntries()))).toEqual([]);
});

test("the schemas find a fault in each kind of part", () => {
  const faults: Record<string, Edit> = {
    [WORKBOOK]: edit(WORKBOOK, 'state="visible"', 'state="seen"'),
    [SMALL]: edit(SMALL, "<pageMargins", "<sheetPr/><pageMargins"),
    [STYLES]: edit(STYLES, 'rgb="FF', 'rgb="'),
    [STRINGS]: edit(STRINGS, "<t>", "<text/><t>"),
    [METADATA]: edit(METADATA, 'copy="1"', 'copy="perhaps"'),
    [DRAWING]: edit(DRAWING, "<xdr:clientData/>", ""),
    [CHART]: edit(CHART, /<c:axId val="1"\/>/, '<c:axId val="one"/>'),
    [NOTES]: edit(NOTES, 'authorId="0"', 'authorId="a"'),
    [TABLE]: edit(TABLE, "<tableColumns", "<columns/><tableColumns"),
    [RELATIONS]: edit(RELATIONS, / Target="[^"]*"/, ""),
    [TYPES]: edit(TYPES, /ContentType="[^"]*"/, ""),
  };
  // The types themselves are broken by hand: the schema of a part is found from them.
  const { [TYPES]: types, ...parts } = faults;
  const said = schemaComplaintsOfEach([broken(...Object.values(parts)), broken(types)]).flat();
  for (const path of Object.keys(faults))
    expect([path, said.some((one) => one.startsWith(`${path}: `))]).toEqual([path, true]);
});

test("what a reader may ignore is removed before the schema check, and nothing else", () => {
  const root = '<worksheet xmlns:a="urn:a" xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006"';
  const mark = (ignorable: string) => edit(SMALL, /<worksheet(?=[^>]*>)/, `${root}${ignorable} a:b="1"`);
  const [ignored, others] = schemaComplaintsOfEach([broken(mark(' mc:Ignorable="a"')), broken(mark(""))]);
  expect(ignored).toEqual([]);
  expect(others.length).toBeGreaterThan(0);
});

test("a part of a type without a schema is listed", () => {
  const other = broken(edit(TYPES, "spreadsheetml.comments+xml", "spreadsheetml.other+xml"));
  expect(schemaComplaintsOfEach([other])).toEqual([[expect.stringMatching(/for which there is no schema/)]]);
});

/** How each rule is broken, and its complaint. */
const FAULTS: readonly Fault[] = [
  [
    "names of parts are plain, and differ by more than capitals",
    [(entries) => (entries["xl/"] = new Uint8Array()), /is no name/],
    [(entries) => (entries["xl/Styles.xml"] = entries[STYLES]), /is there twice/],
  ],
  [
    "every part has one content type, and no type is of a part that is not there",
    [(entries) => (entries["xl/more.bin"] = new Uint8Array(1)), /more\.bin has no content type/],
    [(entries) => delete entries[STRINGS], /sharedStrings\.xml, which is not there/],
    [edit(TYPES, /<Override [^>]*\/>/, "$&$&"), /has two content types/],
  ],
  [
    "a part's content type is that of the relationship that leads to it",
    [edit(RELATIONS, "relationships/styles", "relationships/theme"), /styles\.xml is led to as theme/],
  ],
  [
    "every relationship has an id of its own and leads to a part that is there",
    [edit(RELATIONS, /Target="styles\.xml"/, 'Target="style.xml"'), /style\.xml, which is not there/],
    [edit(RELATIONS, /<Relationship [^>]*\/>/, "$&$&"), /two relationships are called/],
    [(entries) => (entries["xl/_rels/none.xml.rels"] = entries[RELATIONS]), /belongs to no part/],
  ],
  [
    "every relationship that a part speaks of is there",
    [edit(SMALL, 'r:id="charts"', 'r:id="chart"'), /speaks of chart, which is no relationship/],
  ],
  [
    "every part is led to",
    [edit(RELATIONS, /<Relationship [^>]*sharedStrings[^>]*\/>/, ""), /leads to xl\/sharedStrings/],
  ],
  [
    "core properties stand once each",
    [withCore("<dc:title>a</dc:title><dc:title>b</dc:title>"), /title stands twice/],
    [withCore("<dc:subtitle>a</dc:subtitle>"), /subtitle is no core property/],
  ],
  [
    "counts are those of what is listed",
    [edit(SMALL, /<mergeCells count="2"/, '<mergeCells count="3"'), /counts 3 and lists 2/],
  ],
  ["no part declares entities", [edit(SMALL, /^/, "<!DOCTYPE worksheet>"), /has a DOCTYPE/]],
  [
    "names of sheets have up to 31 characters, none of []:*?/\\, and differ",
    [edit(WORKBOOK, 'name="Small"', `name="${long(32)}"`), /no name of a sheet/],
    [edit(WORKBOOK, 'name="Small"', 'name="a/b"'), /no name of a sheet/],
    [edit(WORKBOOK, 'name="Small"', 'name="TABLE"'), /two sheets are called/],
    [edit(WORKBOOK, 'sheetId="3"', 'sheetId="2"'), /two sheets have the id 2/],
    [edit(WORKBOOK, /state="visible"/g, 'state="hidden"'), /no sheet is visible/],
  ],
  [
    "the view of each sheet is one of the workbook's, and the sheet in front is there",
    [edit(WORKBOOK, /<bookViews>.*<\/bookViews>/s, ""), /has not/],
    [edit(WORKBOOK, 'activeTab="2"', 'activeTab="3"'), /none that can be seen/],
  ],
  [
    "defined names are of the right form, once in each scope, of sheets that are there",
    [edit(WORKBOOK, 'name="mass"', 'name="m2"'), /"m2" is no name/],
    [edit(WORKBOOK, 'name="mass"', 'name="r1c1"'), /is no name/],
    [edit(WORKBOOK, 'name="mass"', 'name="the mass"'), /is no name/],
    [edit(WORKBOOK, 'name="mass" localSheetId="2"', 'name="mass" localSheetId="3"'), /belongs to sheet 3/],
    [edit(WORKBOOK, 'name="mass"', 'name="NUMBER"'), /number of 2 is there twice/],
    [edit(WORKBOOK, "'Small'!$A$2<", "'Large'!$A$2<"), /of the sheet "Large"/],
    [edit(WORKBOOK, "'Small'!$A$2<", "<"), /stands for nothing/],
  ],
  [
    "the workbook says that its values are worked out, or asks for the calculation",
    [edit(WORKBOOK, /<calcPr [^>]*>/, ""), /calcId is 0/],
    [edit(WORKBOOK, 'calcId="191029"', 'calcId="171027"'), /calcId is 171027/],
    [edit(WORKBOOK, /<extLst>.*<\/extLst>/s, ""), /no features/],
  ],
  [
    "print areas and titles have up to 255 characters, as the object model takes them",
    [edit(WORKBOOK, /('Small'!\$A\$1:\$C\$30),/, "$1,".repeat(25)), /has 2\d\d characters/],
    [edit(WORKBOOK, /'Small'!\$A\$1:\$C\$30,/, "A1:C30,"), /no list of areas/],
    [
      edit(WORKBOOK, '<definedName name="_xlnm.Print_Area" localSheetId="2"', '<definedName name="_xlnm.Print_Area"'),
      /belongs to no sheet/,
    ],
    [
      edit(
        WORKBOOK,
        "</definedNames>",
        `<definedName name="_xlnm.Print_Titles" localSheetId="2">Small!A1</definedName></definedNames>`,
      ),
      /no list of areas/,
    ],
  ],
  [
    "rows and cells stand in order, each cell in its row",
    [edit(SMALL, '<row r="3"', '<row r="1"'), /row 1 stands behind row 2/],
    [edit(SMALL, 'r="B2"', 'r="B9"'), /B9 is out of order/],
    [edit(SMALL, 'r="B2"', 'r="A2"'), /A2 is out of order/],
  ],
  [
    "columns are described once, and no width or height is over Excel's",
    [edit(SMALL, /<col min="2" max="2"/, '<col min="1" max="2"'), /described twice/],
    [edit(SMALL, /(<col min="2" max="2" width=)"[^"]*"/, '$1"256"'), /wider than 255/],
    [edit(SMALL, '<row r="3"', '<row r="3" ht="410" customHeight="1"'), /higher than 409/],
  ],
  [
    "styles are there",
    [edit(SMALL, /(<c r="A2" s=)"\d+"/, '$1"999"'), /c A2 has a style/],
    [edit(FOREIGN, 'dxfId="0"', 'dxfId="7"'), /a look that is not there/],
    [edit(STYLES, /fontId="\d+"/, 'fontId="99"'), /fontId 99/],
    [edit(STYLES, /numFmtId="\d+"(?=[^>]*fillId)/, 'numFmtId="999"'), /numFmtId 999/],
    [edit(STYLES, 'patternType="gray125"', 'patternType="solid"'), /first two fills/],
    [edit(STYLES, /<numFmt [^>]*\/>/, "$&$&"), /two number formats/],
    [edit(STYLES, /formatCode="[^"]*"/, `formatCode="${long(256)}"`), /is none/],
  ],
  [
    "a cell holds what its type says",
    [edit(SMALL, /(<c r="A1"[^>]*>\s*<v>)\d+/, "$1999"), /A1 holds "999" as s/],
    [edit(SMALL, /(<c r="A2"[^>]*>\s*<v>)1</, "$1one<"), /A2 holds "one" as n/],
    [edit(FOREIGN, "#N/A", "#NA"), /A6 holds "#NA" as e/],
    [edit(FOREIGN, /(<c r="A7"[^>]*t="b"[^>]*>\s*<v>)1</, "$1TRUE<"), /A7 holds "TRUE" as b/],
  ],
  [
    "a cell's metadata are there, and only arrays have them",
    [edit(SMALL, 'cm="1"', 'cm="2"'), /has metadata that are not there/],
    [edit(METADATA, '<rc t="1" v="0"/>', '<rc t="1" v="1"/>'), /leads to no type or value/],
  ],
  [
    "merged cells are of more than one cell and do not overlap",
    [edit(SMALL, 'ref="A7:C7"', 'ref="A6:C7"'), /A6:C6 and A6:C7 overlap/],
    [edit(SMALL, 'ref="A7:C7"', 'ref="A7"'), /merged with nothing/],
    [edit(SMALL, 'ref="A7:C7"', 'ref="C7:A7"'), /is no reference/],
  ],
  [
    "an array begins at its own cell, and stands in no merged cell and in no other array",
    [
      edit(SMALL, 'ref="A7:C7"', 'ref="A3:B3"'),
      /the array of B3 \(B3:C3\) (and A3:B3|.*)overlap|A3:B3 and the array of B3/,
    ],
    [edit(SMALL, 'ref="B3:C3"', 'ref="C3:D3"'), /the array of B3 covers C3:D3/],
    [edit(SMALL, 'ref="B2"', 'ref="B2:B3"'), /and the (formula|array) of B3/],
    [edit(SMALL, /(<c r="A6"[^>]*>\s*<f)>/, '$1 t="array" ref="A6">'), /the array of A6 \(A6\)/],
  ],
  [
    "no cell has two rules of entry",
    [edit(SMALL, 'sqref="A4"', 'sqref="A2:A4"'), /share a cell/],
    [edit(SMALL, 'sqref="A4"', 'sqref="4A"'), /is no reference/],
  ],
  [
    "a rule of entry is within Excel's limits, and the bounds of dates are day numbers",
    [edit(SMALL, 'error="A day."', `error="${long(226)}"`), /error of A3 has more than 225/],
    [edit(SMALL, 'errorTitle="Not a date"', `errorTitle="${long(33)}"`), /errorTitle of A3 has more than 32/],
    [edit(SMALL, 'error="A day."', `prompt="${long(256)}"`), /prompt of A3 has more than 255/],
    [edit(SMALL, "&quot;rise,fall&quot;".replaceAll("&quot;", '"'), `"${long(256)}"`), /list of A4/],
    [edit(SMALL, "<formula1>32874<", "<formula1>25569.00038048611<"), /is no day/],
    [edit(SMALL, "<formula2>73050</formula2>", ""), /one bound of two/],
    [edit(SMALL, "<formula1>32874<", "<formula1>=32874<"), /is no bound/],
    [edit(SMALL, /<formula1>"rise,fall"<\/formula1>/, ""), /has no bound/],
  ],
  [
    "formulas have up to 8192 characters, are written without =, and are of sheets that are there",
    [edit(SMALL, ">mass*2<", `>${long(8193)}<`), /the formula of B2 is none/],
    [edit(SMALL, ">mass*2<", ">=mass*2<"), /the formula of B2/],
    [edit(SMALL, ">mass*2<", ">CLAY.STRAIN(mass,2)<"), /the formula of B2/],
    [edit(SMALL, ">mass*2<", ">'No sheet'!A1<"), /the formula of B2/],
  ],
  [
    "texts have up to 32767 characters",
    [edit(STRINGS, "<t>Small<", `<t>${long(32_768)}<`), /a text of 32768/],
    [edit(FOREIGN, /(<f[^>]*>IF.*?<\/f>\s*<v>)[^<]*/s, `$1${long(32_768)}`), /A9 shows 32768/],
  ],
  [
    "headers and footers have up to 255 characters, and breaks of pages are counted",
    [edit(SMALL, "<oddFooter>", `<oddFooter>${long(250)}`), /oddFooter has/],
    [edit(SMALL, '<rowBreaks count="2"', '<rowBreaks count="3"'), /rowBreaks counts 3/],
    [edit(SMALL, '<brk id="20"', '<brk id="10"'), /rowBreaks is out of order/],
  ],
  [
    "notes have an author, a cell of their own and a box",
    [edit(NOTES, 'authorId="0"', 'authorId="1"'), /has no author/],
    [edit(NOTES, 'ref="A3"', 'ref="A2"'), /A2 has two notes/],
    [edit(BOXES, /<x:Row>1</, "<x:Row>7<"), /note of A2 has no box/],
    [edit(BOXES, /id="_x0000_s(\d+)(?=".*id="_x0000_s(\d+)")/s, 'id="_x0000_s$2'), /two boxes have the id/],
    [edit(NOTES, "a number", long(32_768)), /is too long/],
  ],
  [
    "figures have ids of their own, and end behind where they begin",
    [
      edit(DRAWING, "</xdr:wsDr>", '<xdr:cNvPr xmlns:xdr="urn:x" id="1001" name="x"/></xdr:wsDr>'),
      /two figures have the id 1001/,
    ],
    [edit(DRAWING, /(<xdr:from>.*?<xdr:row>)\d+/s, "$1900"), /ends before it begins/],
  ],
  [
    "charts have axes that cross, series of their own, and cells of sheets that are there",
    [edit(CHART, '<c:crossAx val="2"/>', '<c:crossAx val="3"/>'), /axes 1,2 are crossed by 3,1/],
    [edit(CHART, '<c:idx val="1"/>', '<c:idx val="0"/>'), /two series have idx 0/],
    [edit(CHART, /<c:max val="100"\/>/, '<c:max val="1"/>'), /has no length/],
    [edit(CHART, /<c:min val="1"\/>/, '<c:min val="0"/>'), /begins at 0/],
    [edit(CHART, "Small", "Large"), /no cells of a sheet/],
    [edit(CHART, '<c:ptCount val="2"/>', '<c:ptCount val="1"/>'), /past the last one/],
  ],
  [
    "tables have names of their own, and the names of their columns stand in their cells",
    [edit(WORKBOOK, "<definedNames>", '<definedNames><definedName name="TABLE1">1</definedName>'), /table1 is no name/],
    [
      edit(TABLE, /<tableColumn id="1" name="Tin"\/>/, '<tableColumn id="1" name="Can"/>'),
      /column "Can" holds something else/,
    ],
    [edit(TABLE, 'ref="B2:C4"', 'ref="B2:D4"'), /columns for other cells/],
    [edit(TABLE, 'ref="B2:C4"', 'ref="B2:C2"'), /has no row of data/],
    [
      (entries) => {
        entries["xl/tables/table2.xml"] = entries[TABLE];
        edit(
          TYPES,
          "</Types>",
          `<Override PartName="/xl/tables/table2.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"/></Types>`,
        )(entries);
        edit(
          TABLE_SHEET.replace("worksheets/", "worksheets/_rels/") + ".rels",
          /<Relationship ([^>]*)Id="rId1"([^>]*)table1\.xml/,
          '<Relationship $1Id="rId9"$2table2.xml"/>$&'
            .replace('"/>$&', '" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/table"/>$&')
            .replace('Id="rId9"$2table2.xml"', 'Id="rId9" Target="../tables/table2.xml"'),
        )(entries);
      },
      /two tables are called table1/,
    ],
  ],
];

test("a reference that led to deleted cells names no sheet", () => {
  const rule = "formulas have up to 8192 characters, are written without =, and are of sheets that are there";
  expect(EXCEL_RULES[rule](broken(edit(SMALL, ">mass*2<", ">SUM(#REF!,mass)*2<")))).toEqual([]);
});

test("the name of a sheet may hold a quote", () => {
  const named = [edit(WORKBOOK, 'name="Small"', 'name="a &quot;b"'), edit(WORKBOOK, /'Small'!/g, `'a "b'!`)];
  const rule = "defined names are of the right form, once in each scope, of sheets that are there";
  expect(EXCEL_RULES[rule](broken(...named))).toEqual([]);
  expect(EXCEL_RULES[rule](broken(named[1])).join("\n")).toMatch(/of the sheet "a "b", which is not there/);
});

test("a long name of a sheet does not make its print area too long", () => {
  const named = broken(
    edit(WORKBOOK, /('Small'!\$A\$1:\$C\$30),/, "$1,".repeat(7)),
    edit(WORKBOOK, /'Small'!/g, `'${long(31)}'!`),
  );
  const rule = "print areas and titles have up to 255 characters, as the object model takes them";
  expect(named.text(WORKBOOK)).toMatch(/Print_Area"[^>]*>[^<]{256}/);
  expect(EXCEL_RULES[rule](named)).toEqual([]);
});

/** Adds core properties, which the page does not write. */
function withCore(inside: string): Edit {
  return (entries) => {
    entries["docProps/core.xml"] = strToU8(
      `<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/">${inside}</cp:coreProperties>`,
    );
    edit(
      "_rels/.rels",
      "</Relationships>",
      '<Relationship Id="core" Target="docProps/core.xml" Type="http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties"/></Relationships>',
    )(entries);
  };
}

complainOf(FAULTS, { ...PACKAGE_RULES, ...EXCEL_RULES });
