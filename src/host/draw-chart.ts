/** A chart of the embedded sheet in the look of the pane's plots. */
import { drawPlot } from "../plots/svg";
import type { PlotSeries, PlotSpec } from "../plots/spec";
import { english, type Value } from "../reduction/message";
import type { ChartDrawing, DecimalMark } from "../workbook/embedded";

const STYLES: Readonly<Record<ChartDrawing["series"][number]["style"], PlotSeries["style"]>> = {
  points: "points",
  line: "construction",
  thin: "joined",
  dashed: "guide",
};

/** The parts of a line between its gaps. */
function stretches(points: ChartDrawing["series"][number]["points"]): (readonly [number, number])[][] {
  let run: (readonly [number, number])[] = [];
  const runs = [run];
  for (const point of points)
    if (point) run.push(point);
    else if (run.length > 0) runs.push((run = []));
  return runs.filter((run) => run.length > 0);
}

const seriesOf = ({ name, style, lettered, points, ...looks }: ChartDrawing["series"][number]): PlotSeries<string>[] =>
  (style === "points" ? [points.filter((point) => point !== null)] : stretches(points))
    .filter((run) => run.length > 0)
    .map((run, index) => ({
      label: name,
      style: STYLES[style],
      ...looks,
      points: run,
      ...(lettered && index === 0 && { letters: name }),
    }));

const specOf = ({ title, x, y, series }: ChartDrawing): PlotSpec<string> => ({
  title,
  x,
  y,
  series: series.flatMap(seriesOf),
  remarks: [],
  notes: [],
});

const TITLE_HEIGHT = 24;

/** The words of a chart stand in its cells; only the numbers of its axes are written here. */
const withMark =
  (mark: string) =>
  (value: Value): string =>
    typeof value === "number" ? String(value).replace(".", mark) : english(value);

/** The chart with its title, as a picture that fills its figure; its axes have the decimal mark of the workbook. */
export function drawChart(drawing: ChartDrawing, width: number, height: number, mark: DecimalMark): Element {
  const picture = document.createElement("figure");
  picture.style.cssText = "margin: 0; height: 100%; overflow: hidden; background: #fff; color: #111";
  const title = document.createElement("figcaption");
  title.textContent = drawing.title;
  title.style.cssText = `height: ${TITLE_HEIGHT}px; line-height: ${TITLE_HEIGHT}px; font: 600 13px/${TITLE_HEIGHT}px system-ui, sans-serif; text-align: center; white-space: nowrap; overflow: hidden; text-overflow: ellipsis; padding: 0 8px`;
  picture.append(
    title,
    drawPlot(specOf(drawing), { width, height: Math.max(80, height - TITLE_HEIGHT), inWords: withMark(mark) }),
  );
  return picture;
}
