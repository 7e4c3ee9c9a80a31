/** Sheets that read one another by names, cells and texts, and what a workbook shows of them. */
import "../engine-in-node";
import { addFunction } from "@odoo/o-spreadsheet";
import type { Command, Model } from "../../../../src/workbook/embedded/engine";
import { addNames } from "../../../../src/workbook/embedded/named-ranges";

/** The calls of COUNTED. */
export const counter = { calls: 0 };

/** The number of times that COUNTED was calculated while the work was done. */
export const counted = (work: () => unknown): number => {
  counter.calls = 0;
  work();
  return counter.calls;
};

addFunction("COUNTED", {
  description: "Gives its argument, and counts its calls.",
  args: [{ name: "value", description: "", type: ["ANY"] }],
  compute: ((cell: { value: unknown }) => {
    counter.calls++;
    return { value: cell.value };
  }) as never,
});

export const zone = (row: number, col = 0, rows = 1) => ({ left: col, right: col, top: row, bottom: row + rows - 1 });

/** The commands that add a sheet with names of its own, numbered, and formulas that read them and other sheets. */
export function sheetCommands(number: number): Command[] {
  const sheetId = `s${number}`;
  const put = (row: number, col: number, content: string): Command => ({
    type: "UPDATE_CELL",
    sheetId,
    row,
    col,
    content,
  });
  const other = number === 1 ? 2 : 1;
  return [
    { type: "CREATE_SHEET", sheetId, name: `Sheet ${number}`, position: 1, cols: 8, rows: 20 },
    addNames(sheetId, [
      { name: `mass_${number}`, zone: zone(0) },
      { name: `list_${number}`, zone: zone(0, 0, 3) },
    ]),
    put(0, 0, String(10 * number)),
    put(1, 0, "2"),
    put(2, 0, `=COUNTED(mass_${number})+1`),
    put(0, 1, `=SUM(list_${number})`),
    put(1, 1, `=IFERROR(mass_${other}*2,"none")`),
    put(2, 1, `=IFERROR(INDIRECT("'Sheet ${other}'!A1"),"gone")`),
    put(3, 1, `='Sheet ${number}'!A1+1`),
    put(5, 1, `=SEQUENCE(A2)`),
    put(6, 3, "=SUM(B6:B9)"),
  ];
}

/** Every value that the workbook shows, by sheet and cell. */
export function shown(model: Model): Record<string, unknown> {
  const { getters } = model;
  return Object.fromEntries(
    getters.getSheetIds().flatMap((sheetId) =>
      Array.from({ length: 12 * 6 }, (_, i) => ({ sheetId, row: Math.floor(i / 6), col: i % 6 })).flatMap((place) => {
        const { value } = getters.getEvaluatedCell(place);
        return value === null || value === "" ? [] : [[`${sheetId} ${place.row} ${place.col}`, value]];
      }),
    ),
  );
}
