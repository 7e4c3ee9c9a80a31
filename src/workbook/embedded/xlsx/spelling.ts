/**
 * Asks the engine how it spells formulas for Excel, some thousands at a time: a whole workbook at once held the page for most of a
 * second.
 * Casts: the engine's types do not include the inner parts of a model and of its plugins.
 */
import { helpers, Model, UIPlugin } from "@odoo/o-spreadsheet";
import { pause } from "../../in-slices";
import { heldText } from "../../file/escapes";
import { all, first, parseXml } from "../../file/xml";

/** The number of formulas that are asked at a time. */
const AT_ONCE = 1500;
/** The number of them in a row. */
const ACROSS = 100;

/** Some formulas as cells of a sheet, which the engine writes as a file. */
async function written(formulas: readonly string[]): Promise<Document> {
  const cells = Object.fromEntries(
    formulas.map((formula, i) => [helpers.toXC(i % ACROSS, Math.floor(i / ACROSS)), heldText(formula)]),
  );
  const cellValues = Object.fromEntries(Object.keys(cells).map((at) => [at, 0]));
  const size = { colNumber: ACROSS, rowNumber: Math.ceil(formulas.length / ACROSS) };
  const plugin = Object.assign(Object.create(UIPlugin.prototype), {
    exportForExcel: (data: { readonly sheets: readonly object[] }) =>
      void Object.assign(data.sheets[0]!, { cells, cellValues, formulaSpillRanges: {}, ...size }),
  });
  const asked = { dispatch: () => undefined, handlers: [plugin] } as unknown as Model;
  const { files } = await Model.prototype.exportXLSX.call(asked);
  const sheet = files.find(({ path }) => path === "xl/worksheets/sheet0.xml");
  return parseXml(sheet && "content" in sheet ? sheet.content : "");
}

/** The spelling for Excel of each formula ("=..."), by the formula; the spelling is without "=". */
export async function spellings(formulas: Iterable<string>, withPauses: boolean): Promise<Map<string, string>> {
  const wanted = [...new Set(formulas)];
  const found = new Map<string, string>();
  for (let from = 0; from < wanted.length; from += AT_ONCE) {
    if (withPauses) await pause();
    const part = wanted.slice(from, from + AT_ONCE);
    for (const cell of all(await written(part), "c")) {
      const { row, col } = helpers.toCartesian(cell.getAttribute("r")!);
      const text = first(cell, "f")?.textContent;
      if (text != null) found.set(part[row * ACROSS + col]!, text);
    }
  }
  return found;
}
