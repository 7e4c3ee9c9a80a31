/** Charts that others made, which the engine writes in its own way, are written as Excel takes them. */
import "../workbook/embedded/engine-in-node";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { openXlsx, saveXlsx } from "../../src/workbook/embedded";
import { fileWithChart } from "../workbook/contract-files";
import { complaintsOfEach } from "./complaints";
import { elements, Package } from "./package";

const CHART = "xl/charts/chart1.xml";
const CATEGORIES: readonly (readonly [RegExp, string])[] = [
  [/xVal>/g, "cat>"],
  [/yVal>/g, "val>"],
  [/<c:valAx><c:axId val="1"\/>(.*?)<\/c:valAx>/, '<c:catAx><c:axId val="1"/>$1</c:catAx>'],
];
const PLOT = /<c:scatterChart><c:scatterStyle val="lineMarker"\/>(.*)<\/c:scatterChart>/;
const LETTERS = 'xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"';
type Change = readonly [RegExp, string];
const TITLED: Change = [
  /<c:chart>/,
  `<c:chart><c:title><c:tx><c:rich><a:bodyPr ${LETTERS}/><a:p ${LETTERS}><a:r><a:t>Ours</a:t></a:r></a:p></c:rich></c:tx></c:title>`,
];
/** The cells from row `row` on, under their name. */
const named = (row: number): Change[] => [
  [/\$1:/g, `$$${row}:`],
  [/<c:order val="0"\/>/, '<c:order val="0"/><c:tx><c:strRef><c:f>Curve!$$B$$1</c:f></c:strRef></c:tx>'],
];
const NAMED = named(2);
const TREND: Change = [/<c:cat>/, '<c:trendline><c:trendlineType val="poly"/><c:order val="3"/></c:trendline><c:cat>'];

/** A plot of another kind in place of the scattered points. */
const plot = (start: string): Change[] => [...CATEGORIES, [PLOT, `<c:${start}$1</c:${start.split(">")[0]}>`]];
const BAR = 'barChart><c:barDir val="col"/><c:grouping val="clustered"/>';

/** What the file has, and how to make it of a scatter chart. */
const CHARTS: readonly [string, string, readonly Change[]][] = [
  ["points", "scatterChart", NAMED],
  ["points without a name", "scatterChart", []],
  ["columns with a title and a trend", "barChart", [...plot(BAR), ...NAMED, TREND, TITLED]],
  ["columns whose name is not above them", "barChart", [...plot(BAR), ...named(1)]],
  [
    "columns with a line",
    "lineChart",
    [
      ...plot(BAR),
      ...NAMED,
      [
        /<c:ser>.*<\/c:barChart>/,
        '$&<c:lineChart><c:grouping val="standard"/><c:ser><c:idx val="1"/><c:order val="1"/><c:val><c:numRef><c:f>Curve!$$A$$2:$$A$$3</c:f></c:numRef></c:val></c:ser><c:axId val="1"/><c:axId val="2"/></c:lineChart>',
      ],
    ],
  ],
  ["lines with a trend", "lineChart", [...plot('lineChart><c:grouping val="standard"/>'), ...NAMED, TREND]],
  ["a net", "radarChart", [...plot('radarChart><c:radarStyle val="marker"/>'), ...NAMED]],
  ["a pie", "pieChart", [...plot("pieChart>"), ...NAMED]],
  ["a ring, which the engine takes as a pie", "pieChart", plot("doughnutChart>")],
];

const saved: Uint8Array[] = [];
let complaints: string[][];
beforeAll(async () => {
  for (const [, , changes] of CHARTS) {
    const parts = unzipSync(await fileWithChart());
    const text = changes.reduce((so, [from, to]) => so.replace(from, to), strFromU8(parts[CHART]));
    parts[CHART] = strToU8(text);
    saved.push(await saveXlsx(openXlsx(zipSync(parts)).workbook));
  }
  complaints = complaintsOfEach(saved);
});

test.each(CHARTS.map(([what, name], index) => ({ what, name, index })))("$what", ({ name, index }) => {
  expect(complaints[index]).toEqual([]);
  const file = new Package(saved[index]);
  expect(elements(file.xml(CHART), name)).toHaveLength(1);
});
