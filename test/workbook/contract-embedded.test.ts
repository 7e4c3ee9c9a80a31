/** Runs the contract on the engine of the embedded sheet, in Node. */
import "./embedded/engine-in-node";
import { addFunction, helpers } from "@odoo/o-spreadsheet";
import type { CellValue } from "../../src/workbook/port";
import { CHART_TAG, chartGetters } from "../../src/workbook/embedded/look/chart";
import { toExcelFormat } from "../../src/workbook/embedded/look/formats";
import { noteGetters } from "../../src/workbook/embedded/notes";
import { EmbeddedPort } from "../../src/workbook/embedded/port";
import { printOf } from "../../src/workbook/embedded/look/print";
import { typed } from "../../src/workbook/embedded/typing/text";
import { newWorkbook } from "../../src/workbook/embedded/workbook";
import { addressOf, type Zone } from "../../src/workbook/embedded/zones";
import type { Bench } from "./contract-bench";
import { contract } from "./contract";

addFunction("CLAY.SEVEN", {
  description: "7",
  args: [],
  category: "Test",
  isExported: true,
  compute: () => ({ value: 7 }),
} as never);

function open(): Bench {
  const port = new EmbeddedPort(newWorkbook());
  const { model } = port.workbook;
  const getters = model.getters as any;
  const dispatch = (type: string, payload: object) => {
    const { isSuccessful, reasons } = (model as any).dispatch(type, payload);
    if (!isSuccessful) throw new Error(`${type}: ${reasons.join(", ")}`);
  };
  const idOf = (sheet: string): string => getters.getSheetIdByName(sheet);
  const at = (sheet: string, cell: string) => ({ sheetId: idOf(sheet), ...helpers.toCartesian(cell) });
  const asTyped = (content: CellValue): string =>
    typeof content === "string" && content.startsWith("=") ? content : typed(content);
  const activate = (sheet: string): void => {
    const sheetIdFrom = getters.getActiveSheetId();
    if (sheetIdFrom !== idOf(sheet)) dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo: idOf(sheet) });
  };
  const named = ({ sheetId, zone }: { sheetId: string; zone: Zone }): string =>
    `${getters.getSheetName(sheetId)}!${addressOf(zone)}`;

  return {
    port,
    addSheet: (name) =>
      dispatch("CREATE_SHEET", { sheetId: name, name, position: getters.getSheetIds().length, cols: 26, rows: 100 }),
    renameSheet: (sheet, newName) => dispatch("RENAME_SHEET", { sheetId: idOf(sheet), oldName: sheet, newName }),
    moveToFront: (sheet) =>
      dispatch("MOVE_SHEET", { sheetId: idOf(sheet), delta: -getters.getSheetIds().indexOf(idOf(sheet)) }),
    deleteSheet: (sheet) => dispatch("DELETE_SHEET", { sheetId: idOf(sheet), sheetName: sheet }),
    type: (sheet, cell, content) => dispatch("UPDATE_CELL", { ...at(sheet, cell), content: asTyped(content) }),
    select: (sheet, ...addresses) => {
      activate(sheet);
      addresses.forEach((address, index) => {
        const { zone } = getters.getRangeFromSheetXC(idOf(sheet), address);
        const { selection } = model;
        if (index === 0) selection.selectZone({ cell: { col: zone.left, row: zone.top }, zone });
        else {
          selection.addCellToSelection(zone.left, zone.top);
          selection.setAnchorCorner(zone.right, zone.bottom);
          selection.commitSelection();
        }
      });
    },
    selectChart: (sheet) => {
      activate(sheet);
      dispatch("SELECT_FIGURE", { figureId: getters.getFigures(idOf(sheet))[0].id });
    },
    hide: (sheet, { rows = [], cols = [] }) => {
      for (const [dimension, elements] of [
        ["ROW", rows],
        ["COL", cols],
      ] as const)
        if (elements.length > 0) dispatch("HIDE_COLUMNS_ROWS", { sheetId: idOf(sheet), dimension, elements });
    },
    hideSheet: (sheet) => dispatch("HIDE_SHEET", { sheetId: idOf(sheet) }),
    nameForAll: (name, sheet, address) =>
      dispatch("CREATE_NAMED_RANGE", {
        sheetId: idOf(sheet),
        name,
        ranges: [{ _sheetId: idOf(sheet), _zone: helpers.toZone(address) }],
      }),
    deleteRow: (sheet, row) =>
      dispatch("REMOVE_COLUMNS_ROWS", { sheetId: idOf(sheet), sheetName: sheet, dimension: "ROW", elements: [row] }),
    typeUnbound: (sheet, cell, known) =>
      dispatch("UPDATE_CELL", {
        ...at(sheet, cell),
        content: known ? "=_xldudf_CLAY_SEVEN()" : "=_xldudf_CLAY_NOTHING()",
      }),
    mayType: (sheet, cell, value) => {
      const position = at(sheet, cell);
      const fits = value === "" || getters.getValidationResultForCellValue(value, position).isValid;
      return (
        fits && (model as any).canDispatch("UPDATE_CELL", { ...position, content: `${typed(value)} ` }).isSuccessful
      );
    },
    cell: (sheet, cell) => {
      const position = at(sheet, cell);
      const { bold, italic, fillColor, align, wrapping } = getters.getCellStyle(position);
      const { criterion } = getters.getValidationRuleForCell(position) ?? {};
      return {
        value: getters.getEvaluatedCell(position).value ?? "",
        format: toExcelFormat(getters.getCell(position)?.format ?? ""),
        bold: Boolean(bold),
        italic: Boolean(italic),
        fill: fillColor,
        align,
        wrap: wrapping === "wrap",
        note: noteGetters(model).getNote(position),
        choices: criterion?.type === "isValueInList" ? criterion.values : undefined,
      };
    },
    sheet: (sheet) => {
      const sheetId = idOf(sheet);
      const sizes = (count: number, size: (index: number) => number) =>
        Object.fromEntries(Array.from({ length: count }, (_, index) => [index, size(index)]));
      const print = printOf(model, sheetId);
      return {
        merges: getters.getMerges(sheetId).map(addressOf),
        widths: sizes(getters.getNumberCols(sheetId), (col) => (getters.getColSize(sheetId, col) - 5) / 7),
        heights: sizes(getters.getNumberRows(sheetId), (row) => getters.getRowSize(sheetId, row) * 0.75),
        frozenRows: getters.getPaneDivisions(sheetId).ySplit,
        charts: getters
          .getFigures(sheetId)
          .filter(({ tag }: any) => tag === CHART_TAG)
          .map(({ id }: any) => {
            const { title, series } = chartGetters(model).getChartOf(id)!;
            return { title, series: series.map(({ name, x, y }) => ({ name, x: named(x), y: named(y) })) };
          }),
        paper: print?.paper,
        footer: print?.footer,
      };
    },
    state: async () => ({
      ...JSON.parse(JSON.stringify({ ...model.exportData(), revisionId: "" })),
      local: [...port.workbook.localNames].map(([id, names]) => [id, [...names]]),
      front: getters.getActiveSheetId(),
      selected: getters.getSelectedZones(),
      undo: getters.canUndo(),
      redo: getters.canRedo(),
    }),
    settle: () => undefined,
    undo: () => dispatch("REQUEST_UNDO", {}),
    lockSheet: (sheet) => dispatch("LOCK_SHEET", { sheetId: idOf(sheet) }),
  };
}

contract({
  called: "over the embedded sheet",
  open,
  is: {
    calculates: true,
    undoes: true,
    locksStructure: false,
    locksSheets: true,
    hasPasswords: false,
    keepsApostrophes: false,
    losesNames: false,
    takesCharts: true,
    losesCells: false,
    namesBlocks: false,
  },
});
