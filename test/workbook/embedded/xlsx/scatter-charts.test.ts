/** A scatter chart of a firm's file keeps the cells of its first series, and what is not kept of it is told when it is opened. */
import "../engine-in-node";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { english } from "../../../../src/reduction/message";
import { openXlsx, saveXlsx } from "../../../../src/workbook/embedded";
import { fileWithChart } from "../../contract-files";

const CHART = "xl/charts/chart1.xml";
const X = "Curve!A2:A3";
const Y = "Curve!B2:B3";
const NAMES = "cells that give the series of a scatter chart their names (the names stay as texts)";
const OWN_X = "x values of the second and further series of a scatter chart (all take those of the first)";

/** The file with a chart of others: its first series is named by the cell, which showed the text. */
async function withName(cell: string, shown: string, more = ""): Promise<Uint8Array> {
  const parts = unzipSync(await fileWithChart());
  const cache = shown && `<c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>${shown}</c:v></c:pt></c:strCache>`;
  const name = cell && `<c:tx><c:strRef><c:f>${cell}</c:f>${cache}</c:strRef></c:tx>`;
  const text = strFromU8(parts[CHART]!)
    .replace(/\$1:/g, "$$2:")
    .replace('<c:order val="0"/>', `<c:order val="0"/>${name}`)
    .replace("</c:ser>", `</c:ser>${more}`);
  return zipSync({ ...parts, [CHART]: strToU8(text) });
}
const second = (x: string): string =>
  `<c:ser><c:idx val="1"/><c:order val="1"/><c:xVal><c:numRef><c:f>${x}</c:f></c:numRef></c:xVal>` +
  `<c:yVal><c:numRef><c:f>Curve!$C$2:$C$3</c:f></c:numRef></c:yVal></c:ser>`;

test.each([
  ["named by the cell straight above its values", "Curve!$B$1", "settlement", "", [NAMES]],
  ["named by a cell in another column and row", "Curve!$D$5", "settlement", "", [NAMES]],
  ["named by a cell that showed nothing", "Curve!$D$5", "", "", [NAMES]],
  ["without a name", "", "", "", []],
  ["and a second one with the same x values", "", "", second("Curve!$A$2:$A$3"), []],
  ["and a second one with x values of its own", "Curve!$D$5", "settlement", second("Curve!$D$2:$D$3"), [NAMES, OWN_X]],
])("a scatter chart with a series, %s", async (_, cell, shown, more, told) => {
  const { workbook, remarks } = openXlsx(await withName(cell, shown, more));
  expect(remarks.map(english)).toEqual(
    told.length === 0
      ? []
      : [
          `The sheet on this page does not keep these contents of the file: ${told.join(", ")}. Keep the file, and save under another name.`,
        ],
  );
  const saved = await saveXlsx(workbook);
  const chart = strFromU8(unzipSync(saved)[CHART]!);
  const cells = [...chart.matchAll(/<c:f>(.*?)<\/c:f>/g)].map(([, one]) => one);
  expect(cells.slice(0, 2)).toEqual([X, Y]);
  expect(chart.includes("settlement")).toBe(shown !== "");
  // The file that was saved here has nothing more to lose.
  expect(openXlsx(saved).remarks).toEqual([]);
});
