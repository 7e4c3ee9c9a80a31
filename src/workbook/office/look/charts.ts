/** The charts of a plan as native scatter charts of Excel (ExcelApi 1.9), in black and white. */
import { firstOf } from "../../../reduction/numeric/lists";
import { evenStep, labelFormat, stepsOf } from "../../look/chart-axis";
import { markSize } from "../../look/chart-marks";
import { nameAt, textSizes } from "../../look/chart-text";
import { seriesName } from "../../look/series-name";
import type { ChartAxis, ChartCells, ChartPlan, ChartSeries, NamePlace } from "../../port";
import { rangeOf } from "../reading/read";
import { send, type Step } from "../requests";

const INK = "#000000";
const PAPER = "#FFFFFF";
const MAJOR = "#A6A6A6";
const MINOR = "#E0E0E0";

type Line = Exclude<ChartSeries["style"], "points">;

/** Line weights in points. A thin line joins symbols; a line of a construction is heavier, a guide is dashed. */
const LINES: Readonly<Record<Line, { weight: number; lineStyle: Excel.ChartLineFormat["lineStyle"] }>> = {
  line: { weight: 1.5, lineStyle: "Continuous" },
  thin: { weight: 0.75, lineStyle: "Continuous" },
  dashed: { weight: 0.75, lineStyle: "Dash" },
};

const SCALES: Readonly<Record<ChartAxis["scale"], Excel.ChartAxis["scaleType"]>> = {
  log: "Logarithmic",
  linear: "Linear",
};

const SHAPES: Readonly<Record<NonNullable<ChartSeries["shape"]>, Excel.ChartSeries["markerStyle"]>> = {
  circle: "Circle",
  triangle: "Triangle",
};

/** Bytes of the actions that draw one series or one axis, beside the bytes that count for every step. */
const BYTES_PER_PART = 5_000;

function drawAxis(axis: Excel.ChartAxis, { label, scale, domain, reversed }: ChartAxis, isSmall?: boolean): void {
  const [low, high] = domain;
  const { axis: size } = textSizes(isSmall);
  axis.scaleType = SCALES[scale];
  if (scale === "log") axis.logBase = 10;
  axis.minimum = low;
  axis.maximum = high;
  if (scale === "linear") {
    const step = evenStep(domain, stepsOf(isSmall));
    axis.majorUnit = step;
    axis.minorUnit = step / 5;
  }
  axis.reversePlotOrder = reversed;
  // The other axis stays at the left, or at the bottom, even if this axis is reversed.
  axis.position = reversed ? "Maximum" : "Minimum";
  axis.tickLabelPosition = "NextToAxis";
  axis.majorTickMark = "Outside";
  axis.minorTickMark = "None";
  axis.numberFormat = labelFormat({ scale, domain }, isSmall);
  axis.visible = true;
  axis.title.text = label;
  axis.title.format.font.size = size;
  axis.title.format.font.color = INK;
  axis.format.font.size = size;
  // Excel would turn numbers that do not fit, which leaves no height for the curve.
  if (isSmall) axis.textOrientation = 0;
  axis.format.font.color = INK;
  axis.format.line.color = INK;
  axis.majorGridlines.visible = true;
  axis.majorGridlines.format.line.color = MAJOR;
  // In a small chart the lines between even steps would lie so close that they look grey.
  const isFine = scale === "log" || !isSmall;
  axis.minorGridlines.visible = isFine;
  if (isFine) axis.minorGridlines.format.line.color = MINOR;
}

function drawLook(
  series: Excel.ChartSeries,
  { style, symbol = "filled", shape = "circle", y }: ChartSeries,
  isSmall: boolean | undefined,
): void {
  series.smooth = false;
  if (style !== "points") {
    series.chartType = "XYScatterLinesNoMarkers";
    series.markerStyle = "None";
    const { weight, lineStyle } = LINES[style];
    series.format.line.color = INK;
    series.format.line.lineStyle = lineStyle;
    series.format.line.weight = weight;
    return;
  }
  series.chartType = "XYScatter";
  // Clearing the line may clear the borders of the markers too, so it comes before their colours.
  series.format.line.clear();
  series.markerStyle = symbol === "cross" ? "X" : SHAPES[shape];
  series.markerSize = markSize(symbol, y.box.rows, isSmall);
  series.markerForegroundColor = INK;
  series.markerBackgroundColor = symbol === "open" ? PAPER : INK;
}

const PLACES: Readonly<Record<NamePlace, Excel.ChartDataLabel["position"]>> = {
  above: "Top",
  below: "Bottom",
  left: "Left",
  right: "Right",
};

/** Writes the names of lines at their ends. */
function letter(chart: Excel.ChartSeriesCollection, plan: ChartPlan): void {
  plan.series.forEach((series, index) => {
    const { lettered, y, isUpright } = series;
    if (!lettered) return;
    const point = chart.getItemAt(index).points.getItemAt(y.box.rows - 1);
    point.hasDataLabel = true;
    const label = point.dataLabel;
    label.showSeriesName = true;
    label.showValue = false;
    label.showCategoryName = false;
    label.showLegendKey = false;
    label.position = PLACES[nameAt(series)];
    label.format.font.size = textSizes(plan.isSmall).letters;
    label.format.font.color = INK;
    if (isUpright) label.format.fill.setSolidColor(PAPER);
  });
}

/** A chart that Excel has made from the first cells of a plan, with the series that it guessed. */
interface Begun {
  readonly plan: ChartPlan;
  readonly chart: Excel.Chart;
  readonly guessed: Excel.ChartSeriesCollection;
}

function drawSteps(context: Excel.RequestContext, sheet: Excel.Worksheet, { plan, chart, guessed }: Begun): Step[] {
  const cells = ({ sheet: named, box }: ChartCells): Excel.Range =>
    rangeOf(named === undefined ? sheet : context.workbook.worksheets.getItem(named), box);
  const { box, series, title, isSmall } = plan;
  return [
    {
      bytes: BYTES_PER_PART,
      act: () => {
        chart.setPosition(
          sheet.getCell(box.row, box.col),
          sheet.getCell(box.row + box.rows - 1, box.col + box.cols - 1),
        );
        chart.title.text = title;
        chart.title.format.font.size = textSizes(isSmall).title;
        chart.title.format.font.color = INK;
        chart.legend.visible = false;
        chart.displayBlanksAs = "NotPlotted";
        chart.plotVisibleOnly = false;
      },
    },
    ...series.map((one) => ({
      bytes: BYTES_PER_PART,
      act: () => {
        const added = chart.series.add(seriesName(one.name));
        added.setXAxisValues(cells(one.x));
        added.setValues(cells(one.y));
        drawLook(added, one, isSmall);
      },
    })),
    {
      bytes: 2 * BYTES_PER_PART,
      act: () => {
        // The series that Excel guessed are deleted last: a chart without series loses its axes.
        for (let index = guessed.count - 1; index >= 0; index--) chart.series.getItemAt(index).delete();
        drawAxis(chart.axes.categoryAxis, plan.x, isSmall);
        drawAxis(chart.axes.valueAxis, plan.y, isSmall);
        chart.format.fill.setSolidColor(PAPER);
      },
    },
  ];
}

const letterSteps = (begun: readonly Begun[]): Step[] =>
  begun
    .filter(({ plan }) => plan.series.some(({ lettered }) => lettered))
    .map(({ plan, chart }) => ({
      bytes: BYTES_PER_PART * plan.series.length,
      act: () => letter(chart.series, plan),
    }));

/** A chart whose line labels fail gets a legend instead. */
const legendSteps = (begun: readonly Begun[]): Step[] =>
  begun
    .filter(({ plan }) => plan.series.some(({ lettered }) => lettered))
    .map(({ chart }) => ({
      act: () => {
        chart.legend.visible = true;
        chart.legend.position = "Bottom";
      },
    }));

/**
 * Draws the charts of a plan on its new sheet: the first request makes all charts, the next draws them, and the last
 * writes the line labels.
 */
export async function addCharts(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  charts: readonly ChartPlan[],
): Promise<void> {
  const begun = charts
    .filter(({ series }) => series.length > 0)
    .map((plan): Begun => {
      const { y } = firstOf(plan.series);
      const first = y.sheet === undefined ? sheet : context.workbook.worksheets.getItem(y.sheet);
      const chart = sheet.charts.add("XYScatter", rangeOf(first, y.box), "Columns");
      // Its id, by which the next batch finds the chart.
      chart.load("id");
      return { plan, chart, guessed: chart.series.load("count") };
    });
  if (begun.length === 0) return;
  await context.sync();
  await send(
    context,
    begun.flatMap((one) => drawSteps(context, sheet, one)),
  );
  try {
    await send(context, letterSteps(begun));
  } catch {
    await send(context, legendSteps(begun));
  }
}
