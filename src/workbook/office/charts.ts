/** The charts of a plan as native scatter charts of Excel (ExcelApi 1.9), in black and white. */
import { evenStep } from "../chart-axis";
import type { Box, ChartAxis, ChartCells, ChartPlan, ChartSeries } from "../port";

const INK = "#000000";
const PAPER = "#FFFFFF";
const MAJOR = "#A6A6A6";
const MINOR = "#E0E0E0";

/** Points of type. */
const SIZES = { title: 11, axis: 9, letters: 8 };

/** Weights in points. A thin line joins symbols; a line of a construction is heavier, a guide is dashed. */
const LINES = {
  line: { weight: 1.5, lineStyle: "Continuous" },
  thin: { weight: 0.75, lineStyle: "Continuous" },
  dashed: { weight: 0.75, lineStyle: "Dash" },
} as const;

/** Above this many cells symbols are small, so that a logger's series stays a line of dots. */
const MANY = 60;

const rangeOf = (sheet: Excel.Worksheet, { row, col, rows, cols }: Box): Excel.Range =>
  sheet.getRangeByIndexes(row, col, rows, cols);

function drawAxis(axis: Excel.ChartAxis, { label, scale, domain, reversed }: ChartAxis): void {
  const [low, high] = domain;
  axis.scaleType = scale === "log" ? "Logarithmic" : "Linear";
  if (scale === "log") axis.logBase = 10;
  axis.minimum = low;
  axis.maximum = high;
  if (scale === "linear") {
    const step = evenStep(domain);
    axis.majorUnit = step;
    axis.minorUnit = step / 5;
  }
  axis.reversePlotOrder = reversed;
  // Where the other axis stands: always at the left, or at the bottom, also on an axis that runs downward.
  axis.position = reversed ? "Maximum" : "Minimum";
  axis.tickLabelPosition = "NextToAxis";
  axis.majorTickMark = "Outside";
  axis.minorTickMark = "None";
  axis.numberFormat = "General";
  axis.visible = true;
  axis.title.text = label;
  axis.title.format.font.size = SIZES.axis;
  axis.title.format.font.color = INK;
  axis.format.font.size = SIZES.axis;
  axis.format.font.color = INK;
  axis.format.line.color = INK;
  axis.majorGridlines.visible = true;
  axis.majorGridlines.format.line.color = MAJOR;
  axis.minorGridlines.visible = true;
  axis.minorGridlines.format.line.color = MINOR;
}

function drawLook(series: Excel.ChartSeries, { style, symbol = "filled", shape, y }: ChartSeries): void {
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
  series.markerStyle = symbol === "cross" ? "X" : shape === "triangle" ? "Triangle" : "Circle";
  series.markerSize = symbol === "cross" ? 8 : y.box.rows > MANY ? 3 : 6;
  series.markerForegroundColor = INK;
  series.markerBackgroundColor = symbol === "open" ? PAPER : INK;
  series.format.line.clear();
}

/** Letters the ends of lines with their names. */
function letter(chart: Excel.ChartSeriesCollection, plan: ChartPlan): void {
  plan.series.forEach(({ lettered, style, y }, index) => {
    if (!lettered) return;
    const point = chart.getItemAt(index).points.getItemAt(y.box.rows - 1);
    point.hasDataLabel = true;
    const label = point.dataLabel;
    label.showSeriesName = true;
    label.showValue = false;
    label.showCategoryName = false;
    label.showLegendKey = false;
    label.position = style === "line" || style === "dashed" ? "Top" : "Bottom";
    label.format.font.size = SIZES.letters;
    label.format.font.color = INK;
  });
}

async function addChart(context: Excel.RequestContext, sheet: Excel.Worksheet, plan: ChartPlan): Promise<void> {
  const cells = ({ sheet: named, box }: ChartCells): Excel.Range =>
    rangeOf(named === undefined ? sheet : context.workbook.worksheets.getItem(named), box);
  const { box, series, title } = plan;
  const chart = sheet.charts.add("XYScatter", cells(series[0].y), "Columns");
  // Its number, by which it is known in the next batch.
  chart.load("id");
  const guessed = chart.series.load("count");
  await context.sync();

  chart.setPosition(sheet.getCell(box.row, box.col), sheet.getCell(box.row + box.rows - 1, box.col + box.cols - 1));
  chart.title.text = title;
  chart.title.format.font.size = SIZES.title;
  chart.title.format.font.color = INK;
  chart.legend.visible = false;
  chart.displayBlanksAs = "NotPlotted";
  chart.plotVisibleOnly = false;
  for (const one of series) {
    const added = chart.series.add(one.name);
    added.setXAxisValues(cells(one.x));
    added.setValues(cells(one.y));
    drawLook(added, one);
  }
  // What Excel guessed from the cells goes last: a chart that is empty for a moment loses its axes.
  for (let index = guessed.count - 1; index >= 0; index--) chart.series.getItemAt(index).delete();
  drawAxis(chart.axes.categoryAxis, plan.x);
  drawAxis(chart.axes.valueAxis, plan.y);
  chart.format.fill.setSolidColor(PAPER);
  await context.sync();

  if (!series.some(({ lettered }) => lettered)) return;
  try {
    letter(chart.series, plan);
    await context.sync();
  } catch {
    // A chart whose lines cannot be lettered is whole with a legend.
    chart.legend.visible = true;
    chart.legend.position = "Bottom";
    await context.sync();
  }
}

/** Draws the plan's charts on its new sheet. */
export async function addCharts(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  charts: readonly ChartPlan[],
): Promise<void> {
  for (const plan of charts) if (plan.series.length > 0) await addChart(context, sheet, plan);
}
