/** Each rule of what Excel repairs is broken once on purpose, and complains. */
import { strToU8 } from "fflate";
import { broken, complainOf, edit, long, soundEntries, type Edit, type Fault } from "./broken";
import { CHART_RULES } from "./chart-rules";
import { REPAIR_RULES } from "./repair-rules";

beforeAll(soundEntries);

const [WORKBOOK, STYLES, STRINGS] = ["workbook", "styles", "sharedStrings"].map((name) => `xl/${name}.xml`);
const [FOREIGN, TABLE_SHEET, SMALL] = [0, 1, 2].map((sheet) => `xl/worksheets/sheet${sheet}.xml`);
const [CHART, DRAWING, BOXES] = [
  "charts/clayledger3-1.xml",
  "drawings/clayledger3.xml",
  "drawings/vmlDrawing3.vml",
].map((name) => `xl/${name}`);
const TABLE = "xl/tables/table1.xml";
const FORMULA = ">mass*2<";
const all =
  (...edits: readonly Edit[]): Edit =>
  (entries) =>
    edits.forEach((one) => one(entries));

const FAULTS: readonly Fault[] = [
  [
    "formulas have texts, arguments and depths that Excel takes",
    [edit(SMALL, FORMULA, `>mass&amp;"${long(256)}"<`), /B2: a text between quotes has 256 characters/],
    [edit(SMALL, FORMULA, `>SUM(${"1,".repeat(255)}1)<`), /SUM has 256 arguments/],
    [edit(SMALL, FORMULA, `>${"ABS(".repeat(65)}1${")".repeat(65)}<`), /65 functions stand within one another/],
    [edit(SMALL, FORMULA, ">FIND(mass)<"), /FIND has 1 arguments, and takes 2 to 3/],
    [edit(SMALL, FORMULA, `>A2${"&amp;A3".repeat(2_000)}<`), /it takes about \d+ bytes/],
    [edit(SMALL, FORMULA, ">BH1!A2<"), /B2: the sheet BH1 stands without apostrophes/],
  ],
  [
    "names of sheets that look like cells or numbers stand in apostrophes, outside cells too",
    [edit(WORKBOOK, />'Small'!/, ">R1C1!"), /definedName: the sheet R1C1 stands without apostrophes/],
    [edit(CHART, />'Small'!/, ">RC12Test!"), /f: the sheet RC12Test stands without apostrophes/],
    [edit(SMALL, /<formula1>[^<]*/, "<formula1>2026!A1"), /formula1: the sheet 2026 stands without apostrophes/],
    [edit(FOREIGN, /<formula>[^<]*/, "<formula>true!A1"), /formula: the sheet true stands without apostrophes/],
  ],
  [
    "formulas of conditional formats and of rules of entry are read by Excel",
    ...([
      ["sand", /sand is no name of the workbook/],
      ['5" pipe', /a text does not end/],
      ["1,234.5", /a comma outside of a function/],
      ["STDEV.S(A1:A3)", /STDEV\.S has no prefix/],
      ["OR(A1={1,2})", /constants in braces/],
      ["CLAY.STRAIN(A1,A2)", /a function of the add-in has not the name/],
      ["FIND(A1)", /FIND has 1 arguments/],
    ].flatMap(([formula, said]) => [
      [edit(FOREIGN, /<formula>[^<]*/, `<formula>${formula as string}`), said] as const,
      [edit(SMALL, /<formula1>0/, `<formula1>${formula as string}`), said] as const,
    ]) as [Edit, RegExp][]),
  ],
  [
    "functions newer than the format have their prefix",
    [edit(SMALL, FORMULA, ">STDEV.S(A2:A3)<"), /STDEV\.S of B2 has no prefix/],
    [edit(SMALL, FORMULA, ">_xlfn.FILTER(A2:A3,A2:A3)<"), /FILTER of B2 has no prefix, or not the whole/],
  ],
  [
    "a shared formula has the cell that holds it",
    [edit(SMALL, /<f>mass\*2<\/f>|<f [^>]*>mass\*2<\/f>/, '<f t="shared" si="0"/>'), /B2 shares a formula that no/],
    [
      edit(SMALL, /<f>mass\*2<\/f>|<f [^>]*>mass\*2<\/f>/, '<f t="shared" si="0" ref="C2:C9">1</f>'),
      /B2 shares a form/,
    ],
  ],
  ["an error is one that Office reads", [edit(FOREIGN, ">#N/A<", ">#SPILL!<"), /A6 holds #SPILL!/]],
  [
    "no defined name is one that Excel keeps for itself",
    [edit(WORKBOOK, 'name="mass"', 'name="_xlmass"'), /_xlmass is a name of Excel's own/],
    [edit(WORKBOOK, 'name="mass"', 'name="True"'), /True is a name/],
    [edit(WORKBOOK, 'name="mass"', `comment="${long(256)}" name="mass"`), /comment of definedName has more than 255/],
  ],
  [
    "no name is that of the print area, or of the titles, beside Excel's own",
    [edit(WORKBOOK, 'name="mass"', 'name="print_Area"'), /print_area of sheet 2 is there as Excel's own too/],
  ],
  [
    "blanks at the ends of texts are kept",
    [edit(STRINGS, ' xml:space="preserve"', ""), /blanks of "  two spaces in front & behind  " may be lost/],
  ],
  ["a text has at most 253 line feeds", [edit(STRINGS, "<t>Small<", `<t>Small${"\n".repeat(254)}x<`), /too many line/]],
  ["shared strings are counted", [edit(STRINGS, /uniqueCount="\d+"/, 'uniqueCount="1"'), /counts 1 texts and lists/]],
  [
    "a text within its cell is marked so",
    [edit(SMALL, /<c r="A2"([^>]*)t="n"><v>1<\/v>/, '<c r="A2"$1t="inlineStr"><v>1</v>'), /A2 is of kind inlineStr/],
    [edit(SMALL, /<c r="A2"([^>]*)t="n"><v>1<\/v>/, '<c r="A2"$1t="n"><is><t>1</t></is>'), /A2 is of kind n/],
  ],
  [
    "styles are not more than Excel takes, and their codes are read",
    [edit(STYLES, /<font>.*?<\/font>/s, "$&".repeat(520)), /fonts are \d+, and 512 may be/],
    [edit(STYLES, 'name val="Arial"', `name val="${long(32)}"`), /val of name has more than 31/],
    [edit(STYLES, 'formatCode="0.0%"', 'formatCode="0.0 mm"'), /does not read the number format 0\.0 mm/],
    [styled('<cellStyle name="a" xfId="0" builtinId="0"/><cellStyle name="b" xfId="0" builtinId="1"/>'), /xfId 0/],
    [styled('<cellStyle name="a" xfId="0" builtinId="54"/>'), /builtinId 54 is none/],
    [styled(`<cellStyle name="${long(256)}" xfId="0" builtinId="0"/>`), /name of cellStyle has more than 255/],
  ],
  [
    "a view has selections of its panes, the cells that it names, and a zoom of Excel's",
    [edit(SMALL, /<pane [^>]*\/>/, ""), /the pane bottomLeft is not there/],
    [edit(SMALL, '<selection pane="bottomLeft"/>', '<selection pane="bottomLeft"/>'.repeat(2)), /two selections/],
    [edit(SMALL, 'activePane="bottomLeft"', 'activePane="topRight"'), /active pane topRight is not there/],
    [edit(SMALL, '<selection pane="bottomLeft"', '$& activeCell="B9" sqref="A1:A3"'), /B9 is not selected/],
    [edit(SMALL, "<sheetView ", '<sheetView zoomScale="500" '), /zoomScale is 500/],
  ],
  [
    "no sheets are grouped",
    [
      all(...[FOREIGN, SMALL].map((sheet) => edit(sheet, "<sheetView ", '<sheetView tabSelected="1" '))),
      /Small are selected together/,
    ],
  ],
  [
    "headers and footers have codes that Excel knows, and breaks of pages are not too many",
    [edit(SMALL, "<oddFooter>", "<oddFooter>A &amp; Co"), /oddFooter has no code at "& Co/],
    [edit(SMALL, "<oddFooter>", "<oddFooter>&amp;K12345"), /oddFooter has no code at "&K12345/],
    [edit(SMALL, /<brk [^>]*\/>/, "$&".repeat(1_027)), /rowBreaks has 1028 breaks/],
  ],
  [
    "page set-up is within Excel's limits",
    [edit(SMALL, 'scale="100"', 'scale="5"'), /scale 5/],
    [edit(SMALL, "<pageSetup ", '<pageSetup fitToHeight="40000" '), /fitToHeight 40000/],
    [edit(SMALL, '<pageMargins left="0.4"', '<pageMargins left="50"'), /margin left is 50/],
  ],
  [
    "links lead from cells, and are not more or longer than Excel takes",
    [linked(`ref="4A" location="A1"`), /4A is no cell/],
    [linked(`ref="A1" location="A1" tooltip="${long(256)}"`), /tooltip of hyperlink has more than 255/],
    [linked(`ref="A1" location="${long(2_080)}"`), /location of hyperlink has more than 2079/],
  ],
  [
    "tables have numbers and columns of their own, and cells of their own",
    [edit(TABLE, '<tableColumn id="2" name="Mass"', '<tableColumn id="1" name="tin"'), /two columns have the id 1/],
    [edit(TABLE, 'name="Mass"', 'name="tin "'), /two columns are called tin/],
    [edit(TABLE, '<tableColumn id="2"', '<tableColumn id="0"'), /a column has the id 0/],
    [edit(TABLE, 'name="Mass"', `name="${long(256)}"`), /name of tableColumn has more than 255/],
    [edit(TABLE, '<autoFilter ref="B2:C4"', '<autoFilter ref="B2:B4"'), /the filter is not over the columns/],
    [
      edit(TABLE_SHEET, "</sheetData>", '</sheetData><mergeCells count="1"><mergeCell ref="C4:D4"/></mergeCells>'),
      /the table and mergeCell C4:D4 overlap/,
    ],
  ],
  [
    "figures stand on the sheet",
    [edit(DRAWING, /(<xdr:to>.*?<xdr:row>)\d+/s, "$11048576"), /stands beside the sheet/],
    [edit(DRAWING, /(<xdr:from>.*?<xdr:colOff>)\d+/s, "$1-12925425"), /stands beside the sheet/],
  ],
  [
    "charts have series as Excel takes them, and caches of their cells",
    [edit(CHART, "<c:tx><c:v>a<", `<c:tx><c:v>${long(256)}<`), /name of a series has more than 255/],
    [edit(CHART, '<c:ptCount val="2"/>', '<c:ptCount val="3"/>'), /is of other cells/],
    [edit(CHART, '<c:pt idx="1">', '<c:pt idx="0">'), /out of order/],
    [edit(CHART, /<c:ser>.*?<\/c:ser>/s, "$&".repeat(255)), /256 series/],
  ],
  [
    "labels stand where Excel puts those of the plot",
    [labelled("outEnd"), /a label of a scatterChart stands at outEnd/],
    [all(labelled("t"), edit(CHART, /scatterChart>/g, "barChart>")), /a label of a barChart stands at t/],
    [
      all(
        labelled("outEnd"),
        edit(CHART, /<c:scatterChart>/, '<c:barChart><c:grouping val="stacked"/>'),
        edit(CHART, "</c:scatterChart>", "</c:barChart>"),
      ),
      /a label of a barChart stands at outEnd/,
    ],
    [all(labelled("ctr"), edit(CHART, /scatterChart>/g, "radarChart>")), /a label of a radarChart stands at ctr/],
  ],
  [
    "axes are shown and lines are straight, as it is written",
    [edit(CHART, '<c:delete val="0"/>', ""), /a valAx has no delete/],
    [edit(CHART, '<c:crossBetween val="midCat"/>', ""), /a valAx has no crossBetween/],
    [edit(CHART, '<c:smooth val="0"/>', "<c:smooth/>"), /a ser has no smooth/],
  ],
  [
    "boxes of notes are one for each note, with a place on the sheet",
    [edit(BOXES, /<v:shape .*?<\/v:shape>/s, ""), /1 boxes and 2 notes/],
    [edit(BOXES, /<x:Anchor>\d+/, "<x:Anchor>20000"), /has no place/],
  ],
  [
    "conditional formats have a priority of their own",
    [edit(FOREIGN, /<cfRule [^>]*>/, "$&<formula>1</formula></cfRule>$&"), /two rules have the priority/],
    [edit(FOREIGN, /(<cfRule [^>]*priority=)"\d+"/, '$1"0"'), /a rule has no priority/],
    [edit(FOREIGN, /(<conditionalFormatting sqref=)"[^"]*"/, '$1"8C"'), /8C are no cells/],
    [edit(FOREIGN, /<formula>/, "<formula>="), /the formula =.* of a rule is none/],
  ],
  [
    "rules of entry are not more or longer than Excel takes",
    [edit(SMALL, "<formula1>0<", `<formula1>${"A1+".repeat(100)}A1<`), /a bound has 302 characters/],
  ],
  [
    "a password is kept whole",
    [
      edit(SMALL, "<sheetProtection ", '<sheetProtection algorithmName="SHA-512" '),
      /hash of the password lacks a part/,
    ],
  ],
  ["lines are grouped up to seven deep", [edit(SMALL, '<row r="3"', '<row r="3" outlineLevel="8"'), /row 3 is 8 deep/]],
  [
    "colours of a theme are there",
    [edit(STYLES, 'rgb="FF000000"', 'theme="1"'), /the colour 1 of the theme is not there/],
  ],
];

/** Adds labels to the first series of the chart. */
function labelled(place: string): Edit {
  return edit(CHART, "<c:xVal>", `<c:dLbls><c:dLblPos val="${place}"/></c:dLbls><c:xVal>`);
}

/** Adds named styles, which the page does not write. */
function styled(list: string): Edit {
  return (entries) => {
    edit(STYLES, /<cellStyles[^]*<\/cellStyles>|(?=<dxfs|<\/styleSheet>)/, `<cellStyles>${list}</cellStyles>`)(entries);
  };
}

/** Adds a link within the workbook. */
function linked(attributes: string): Edit {
  return edit(SMALL, "</sheetData>", `</sheetData><hyperlinks><hyperlink ${attributes}/></hyperlinks>`);
}

complainOf(FAULTS, { ...REPAIR_RULES, ...CHART_RULES });

test("a part that is not XML is not passed over", () => {
  expect(() => REPAIR_RULES["no sheets are grouped"](broken((entries) => (entries[SMALL] = strToU8("<a"))))).toThrow();
});
