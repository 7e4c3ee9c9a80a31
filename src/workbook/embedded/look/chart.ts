/**
 * Charts of the port as figures of the engine: the charts of the engine have no log axes, no axes that run downward,
 * and no lines that differ without colour. A chart holds ranges, so that it follows moved rows, undo, copies and the
 * deletion of its sheet.
 * Casts: the engine's types do not include the plugins, commands, getters and components that are added here.
 */
import { quoted } from "../../address";
import { CorePlugin, coreTypes, helpers, registries } from "@odoo/o-spreadsheet";
import type { ChartAxis, ChartPlan, ChartSeries } from "../../port";
import type { Command } from "../engine";
import { toZone, type Zone } from "../zones";

const ADD_CHART = "CLAYLEDGER_ADD_CHART";
export const CHART_TAG = "clayledger_chart";

/** Cells of a sheet; the sheet is named by its id in the engine. */
export interface SheetZone {
  readonly sheetId: string;
  readonly zone: Zone;
}

export interface KeptSeries<R = SheetZone> extends Omit<ChartSeries, "x" | "y"> {
  readonly x: R;
  readonly y: R;
}

/** A chart as the engine and the data of a workbook hold it. */
export interface KeptChart<R = SheetZone> {
  readonly title: string;
  readonly x: ChartAxis;
  readonly y: ChartAxis;
  readonly series: readonly KeptSeries<R>[];
  readonly isSmall?: boolean;
}

/** A chart for drawing: the numbers in its cells now; the line has a gap where x or y is missing. */
export interface ChartDrawing extends Omit<KeptChart, "series"> {
  readonly series: readonly (Omit<ChartSeries, "x" | "y"> & {
    readonly points: readonly (readonly [x: number, y: number] | null)[];
  })[];
}

export interface ChartGetters {
  getChartOf(figureId: string): KeptChart | undefined;
}

/** The position of a figure: its first cell, the offset within that cell, and its size in pixels. */
export interface FigurePlace {
  readonly col: number;
  readonly row: number;
  readonly offset: { readonly x: number; readonly y: number };
  readonly size: { readonly width: number; readonly height: number };
}

const ROW_HEIGHT = 23;

class ChartPlugin extends CorePlugin {
  static override getters = ["getChartOf"] as never;
  readonly charts: Readonly<Record<string, KeptChart | undefined>> = {};

  getChartOf(figureId: string): KeptChart | undefined {
    const chart = this.charts[figureId];
    return chart && plain(chart);
  }

  override allowDispatch(command: any): any {
    if (command.type !== ADD_CHART) return "Success";
    if (!this.getters.tryGetSheet(command.sheetId)) return "InvalidSheetId";
    const sheets = (command.chart as KeptChart).series.flatMap(({ x, y }) => [x.sheetId, y.sheetId]);
    return sheets.every((id) => this.getters.tryGetSheet(id)) ? "Success" : "InvalidSheetId";
  }

  override handle(command: any): void {
    const { type, sheetId, figureId } = command;
    if (type === ADD_CHART) {
      const place: FigurePlace = command.place ?? this.#placeOf(sheetId, command.zone);
      (this as any).dispatch("CREATE_FIGURE", { sheetId, figureId, tag: CHART_TAG, ...place });
      this.#keep(figureId, command.chart);
    }
    if (type === "DELETE_FIGURE" && this.charts[figureId]) (this.history as any).update("charts", figureId, undefined);
    if (type === "DUPLICATE_SHEET") {
      const { sheetIdTo } = command;
      for (const { id, tag } of this.getters.getFigures(sheetId)) {
        const chart = tag === CHART_TAG ? this.getChartOf(id) : undefined;
        // The engine gives this id to the copy of a figure.
        if (chart)
          this.#keep(
            `${sheetIdTo}??${id.split("??").pop()}`,
            onSheets(chart, (one) => (one === sheetId ? sheetIdTo : one)),
          );
      }
    }
  }

  override adaptRanges({ applyChange }: any): void {
    for (const [figureId, chart] of Object.entries(this.charts)) {
      if (!chart) continue;
      let changed = false;
      const series = chart.series.flatMap((one) => {
        const [x, y] = [one.x, one.y].map(applyChange) as any[];
        if (x.changeType === "NONE" && y.changeType === "NONE") return [one];
        changed = true;
        if (x.changeType === "REMOVE" || y.changeType === "REMOVE") return [];
        return [{ ...one, x: x.range, y: y.range }];
      });
      if (changed) (this.history as any).update("charts", figureId, { ...chart, series });
    }
  }

  override import(data: any): void {
    for (const { figures = [] } of data.sheets)
      for (const { id, tag, data: chart } of figures) if (tag === CHART_TAG && chart) this.#keep(id, chart);
  }

  override export(data: any): void {
    for (const { figures } of data.sheets)
      for (const figure of figures) if (figure.tag === CHART_TAG) figure.data = this.getChartOf(figure.id);
  }

  #keep(figureId: string, chart: KeptChart): void {
    const range = ({ sheetId, zone }: SheetZone) => this.getters.getRangeFromZone(sheetId, zone);
    const series = chart.series.map((one) => ({ ...one, x: range(one.x), y: range(one.y) }));
    (this.history as any).update("charts", figureId, { ...chart, series });
  }

  /** The place of a figure that covers exactly these cells. */
  #placeOf(sheetId: string, { left, right, top, bottom }: Zone): FigurePlace {
    let width = 0;
    for (let col = left; col <= right; col++) width += this.getters.getColSize(sheetId, col);
    let height = 0;
    for (let row = top; row <= bottom; row++) height += this.getters.getUserRowSize(sheetId, row) ?? ROW_HEIGHT;
    return { col: left, row: top, offset: { x: 0, y: 0 }, size: { width, height } };
  }
}

const onSheets = (chart: KeptChart, change: (sheetId: string) => string): KeptChart => ({
  ...chart,
  series: chart.series.map((one) => ({
    ...one,
    x: { ...one.x, sheetId: change(one.x.sheetId) },
    y: { ...one.y, sheetId: change(one.y.sheetId) },
  })),
});

/** The chart without the fields that the engine adds to its ranges. */
const plain = (chart: KeptChart): KeptChart => ({
  ...chart,
  series: chart.series.map((one) => ({
    ...one,
    x: { sheetId: one.x.sheetId, zone: one.x.zone },
    y: { sheetId: one.y.sheetId, zone: one.y.zone },
  })),
});

coreTypes.add(ADD_CHART as never);
// The engine asks for the inverse of a command in a shared session; no session is shared here.
registries.inverseCommandRegistry.add(ADD_CHART, (command) => [command]);
registries.corePluginRegistry.add("clayledger_chart", ChartPlugin as never);

/** The commands that put the charts of a plan on the sheet `sheetId`; `idOf` finds the sheets of their cells. */
export function chartCommands(
  charts: readonly ChartPlan[],
  sheetId: string,
  idOf: (sheet: string) => string | undefined,
): Command[] {
  const zoneOf = ({ sheet, box }: ChartSeries["x"]): SheetZone => {
    const named = sheet === undefined ? sheetId : idOf(sheet);
    if (named === undefined) throw new Error(`a chart shows cells of the sheet "${sheet}", which is not there`);
    return { sheetId: named, zone: toZone(box) };
  };
  // The engine accepts only objects that were made in its own frame.
  const own = JSON.parse(JSON.stringify(charts)) as ChartPlan[];
  return own.map(({ box, series, ...chart }, index) => ({
    type: ADD_CHART,
    sheetId,
    figureId: `${sheetId}-chart-${index + 1}`,
    zone: toZone(box),
    chart: { ...chart, series: series.map((one) => ({ ...one, x: zoneOf(one.x), y: zoneOf(one.y) })) },
  }));
}

/** The command that puts a chart on another sheet, with the new names of its sheets. */
export const copyChart = (
  sheetId: string,
  figureId: string,
  place: FigurePlace,
  chart: KeptChart,
  idOf: (sheetId: string) => string,
): Command => ({ type: ADD_CHART, sheetId, figureId, place, chart: onSheets(chart, idOf) });

/** The getters of the engine that this module needs, with those of its plugin. */
type Getters = ChartGetters & {
  getEvaluatedCell(position: { sheetId: string; col: number; row: number }): { readonly value: unknown };
};

export const chartGetters = (model: { readonly getters: unknown }): ChartGetters => model.getters as ChartGetters;

/** A chart with the numbers in its cells now. */
export function drawingOf(model: { readonly getters: unknown }, figureId: string): ChartDrawing | undefined {
  const getters = model.getters as Getters;
  const chart = getters.getChartOf(figureId);
  if (!chart) return undefined;
  const numbers = ({ sheetId, zone }: SheetZone): (number | null)[] =>
    Array.from({ length: zone.bottom - zone.top + 1 }, (_, index) => {
      const { value } = getters.getEvaluatedCell({ sheetId, col: zone.left, row: zone.top + index });
      return typeof value === "number" ? value : null;
    });
  return {
    ...chart,
    series: chart.series.map(({ x, y, ...series }) => {
      const [xs, ys] = [numbers(x), numbers(y)];
      return {
        ...series,
        points: xs.map((at, i) => (at === null || ys[i] == null ? null : ([at, ys[i]!] as const))),
      };
    }),
  };
}

/** A range of a chart, fixed and with its sheet: "'Load 3'!$B$4:$B$20" from B4:B20. */
export const rangeText = (sheet: string, { left, top, bottom }: Zone): string => {
  const column = helpers.numberToLetters(left);
  return `${quoted(sheet)}!$${column}$${top + 1}:$${column}$${bottom + 1}`;
};
