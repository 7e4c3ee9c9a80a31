/** Runs the contract on the workbook of the pane's tests. */
import { cellAddress } from "../../src/workbook/address";
import type { Box, CellValue, ChartSeries } from "../../src/workbook/port";
import { boundsOf } from "../../src/workbook/rules/bounds";
import { LOOKS } from "../../src/workbook/look/look";
import { FakePort } from "../pane/fake-port";
import { blockOf, deleteRow, mayWrite, rulesAt, writeCell } from "../pane/fake-workbook";
import { contract } from "./contract";
import type { Bench } from "./contract-bench";

const addressOf = ({ row, col, rows, cols }: Box): string => {
  const last = cellAddress(row + rows - 1, col + cols - 1);
  return rows * cols === 1 ? last : `${cellAddress(row, col)}:${last}`;
};

function fits(value: CellValue, { operator, values }: ReturnType<typeof boundsOf>): boolean {
  if (typeof value !== "number") return false;
  if (operator === "between") return value >= values[0] && value <= values[1];
  return operator === "greaterThan" ? value > values[0] : value >= values[0];
}

function open(): Bench {
  const port = new FakePort();
  const { workbook } = port;
  const at = (cell: string): Box => blockOf(cell)!;
  return {
    port,
    addSheet: (name) => {
      port.addSheets(name);
      port.tell("sheets");
    },
    renameSheet: (sheet, name) => port.renameSheet(sheet, name),
    moveToFront: (sheet) => {
      const of = port.sheet(sheet);
      workbook.sheets.splice(workbook.sheets.indexOf(of), 1);
      workbook.sheets.unshift(of);
      port.tell("sheets");
    },
    deleteSheet: (sheet) => port.deleteSheet(sheet),
    type: (sheet, cell, content, shown) => {
      const { row, col } = at(cell);
      const isFormula = typeof content === "string" && content.startsWith("=");
      writeCell(port.sheet(sheet), row, col, isFormula ? shown! : content, isFormula ? content : undefined);
      port.tell("values");
    },
    select: (sheet, ...addresses) => {
      port.bringForward(sheet, addresses.map(at));
    },
    selectChart: (sheet) => {
      port.bringForward(sheet, "a chart");
    },
    hide: (sheet, { rows = [], cols = [] }) => {
      port.sheet(sheet).hiddenRows.push(...rows);
      port.sheet(sheet).hiddenCols.push(...cols);
    },
    hideSheet: (sheet) => void (port.sheet(sheet).isHidden = true),
    nameForAll: (name, sheet, address) => void workbook.names.set(name, { sheet, place: at(address) }),
    deleteRow: (sheet, row) => deleteRow(port.sheet(sheet), row),
    typeUnbound: (sheet, cell, known) => {
      const { row, col } = at(cell);
      writeCell(port.sheet(sheet), row, col, "#NAME?", known ? "=CLAY.SEVEN()" : "=CLAY.NOTHING()");
      port.functions.set("=CLAY.SEVEN()", 7);
    },
    mayType: (sheet, cell, value) => {
      const of = port.sheet(sheet);
      const { row, col } = at(cell);
      const { choices } = of.cells.get(cell) ?? {};
      if (!mayWrite(of, row, col)) return false;
      if (value === "") return true;
      if (choices && !choices.includes(String(value))) return false;
      return rulesAt(of, row, col).every((rule) => fits(value, boundsOf(rule)));
    },
    cell: (sheet, address) => {
      const cell = port.sheet(sheet).cells.get(address);
      const look = cell?.kind && LOOKS[cell.kind];
      return {
        value: cell?.value ?? "",
        format: cell?.format ?? "",
        bold: Boolean(look?.bold),
        italic: Boolean(look?.italic),
        fill: look?.fill,
        align: cell?.align,
        wrap: Boolean(cell?.wrap),
        note: cell?.note,
        choices: cell?.choices,
      };
    },
    sheet: (sheet) => {
      const of = port.sheet(sheet);
      const named = ({ sheet: owner = of.name, box }: ChartSeries["x"]): string => `${owner}!${addressOf(box)}`;
      return {
        merges: of.merges.map(addressOf),
        widths: of.columnWidths,
        heights: of.rowHeights,
        frozenRows: of.freezeRows,
        charts: of.charts.map(({ title, series }) => ({
          title,
          series: series.map(({ name, x, y }) => ({ name, x: named(x), y: named(y) })),
        })),
        paper: of.paper,
        footer: of.footer,
      };
    },
    state: () => structuredClone(workbook),
    settle: () => undefined,
    lockStructure: () => void (workbook.isStructureProtected = true),
    protectWithPassword: (sheet) => void (port.sheet(sheet).protection = "with password"),
    nameBlocks: (sheet, name, addresses) => void port.sheet(sheet).names.set(name, addresses.map(at)),
  };
}

contract({
  called: "over the workbook of the pane's tests",
  open,
  is: {
    calculates: false,
    undoes: false,
    locksStructure: true,
    locksSheets: false,
    hasPasswords: true,
    keepsApostrophes: false,
    losesNames: true,
    takesCharts: true,
    losesCells: true,
    namesBlocks: true,
  },
});
