/**
 * The component that shows a chart on the embedded sheet: it draws the values of the cells, and draws again when they
 * change.
 * Casts: the engine's types do not include the plugins, commands, getters and components that are added here.
 */
import { helpers, registries } from "@odoo/o-spreadsheet";
import { Component, onMounted, onPatched, useRef, xml } from "@odoo/owl";
import { decimalMarkOf, type DecimalMark } from "../typing/locale";
import { CHART_TAG, drawingOf, type ChartDrawing } from "./chart";

/** Draws a chart as a picture of a size in pixels, with the decimal mark of the workbook. */
export type ChartDrawer = (drawing: ChartDrawing, width: number, height: number, mark: DecimalMark) => Element;

let drawChart: ChartDrawer | undefined;

/** Sets the function that draws the charts: the page gives it, since the page knows how plots look. */
export const drawChartsWith = (draw: ChartDrawer): void => void (drawChart = draw);

class ChartFigure extends Component {
  static override template = xml`<div class="clayledger-chart w-100 h-100" style="background: #fff" t-ref="picture"/>`;
  static override props = ["figureUI", "editFigureStyle?", "openContextMenu?"];
  #picture = useRef("picture");
  #shown = "";

  override setup(): void {
    onMounted(() => this.#draw());
    // The engine renders its figures whenever anything in the workbook changes.
    onPatched(() => this.#draw());
  }

  #draw(): void {
    const { id, width, height } = (this.props as any).figureUI;
    const { model } = this.env as any;
    const [drawing, mark] = [drawingOf(model, id), decimalMarkOf(model)];
    const wanted = JSON.stringify([width, height, mark, drawing]);
    if (wanted === this.#shown || !this.#picture.el) return;
    this.#shown = wanted;
    this.#picture.el.replaceChildren(...(drawing && drawChart ? [drawChart(drawing, width, height, mark)] : []));
  }
}

registries.figureRegistry.add(CHART_TAG, {
  Component: ChartFigure,
  borderWidth: 1,
  minFigSize: 120,
  menuBuilder: (figureId: string, env: any) =>
    helpers.createActions([
      {
        id: "delete",
        name: "Delete",
        execute: () => env.model.dispatch("DELETE_FIGURE", { sheetId: env.model.getters.getActiveSheetId(), figureId }),
        icon: "o-spreadsheet-Icon.TRASH",
      },
    ]),
} as never);
