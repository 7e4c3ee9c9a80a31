/** A native chart of what is drawn, over series that follow their cells, on a sheet of its own. */
import type { NamedValues, TestRecord } from "../../../record/record";
import type { PlotSpec } from "../../../plots/spec";
import {
  chartsSheet,
  everyLoad,
  seriesOf,
  seriesOfRange,
  type DataPlot,
  type SeriesBlock,
} from "../../../report/charts/series";
import { nth } from "../../../reduction/numeric/lists";
import { asTyped } from "../../../reduction/message";
import { badInput, given, then, type Outcome } from "../../../reduction/outcome";
import type { SheetName, SheetPlan } from "../../../workbook/port";
import { isTimeCurve, type Choices } from "./range-drawing";
import { loadDrawn, pointsOf, type SheetChoices } from "./sheet-drawing";
import { pairOf, type Range } from "./selected-range";
import { text } from "../../text";

/** The workbook shortens it where it has to. */
const sheetCalled = (of: string): string => `Chart of ${of}`;

const planOf = (of: string, blocks: Outcome<SeriesBlock[]>): Outcome<SheetPlan> =>
  then(blocks, (made) => given(chartsSheet(sheetCalled(of), made)));

const one = (block: Outcome<SeriesBlock>): Outcome<SeriesBlock[]> => then(block, (made) => given([made]));

export function chartOfRange(
  range: Range,
  first: number,
  second: number,
  { plot, method }: Choices,
  spec: PlotSpec,
): Outcome<SheetPlan> {
  const [x, y] = [nth(range.lines, first).box, nth(range.lines, second).box];
  if (!x || !y) return badInput(asTyped(text.plot.onItsSide));
  return then(pairOf(range, first, second), ({ first: xs, second: ys }) =>
    planOf(
      range.sheet,
      one(
        seriesOfRange({
          plot: isTimeCurve(plot) ? `${plot} time` : `compression ${plot}`,
          sheet: range.sheet,
          x: { ...x, rows: xs.length },
          y: { ...y, rows: ys.length },
          xs,
          ys,
          method,
          xLabel: spec.x.label,
          yLabel: spec.y.label,
        }),
      ),
    ),
  );
}

export interface DataSheetCells {
  readonly sheet: string;
  readonly names: readonly SheetName[];
  readonly values: NamedValues;
}

/** Points that the sheet does not carry on itself are taken from their own columns. */
function otherPoints(
  data: DataSheetCells,
  { value, method }: SheetChoices,
  at: string,
  spec: PlotSpec,
): Outcome<SeriesBlock> {
  const columnOf = (wanted: string) => ({
    wanted,
    box: data.names.flatMap(({ name, place }) => (name === wanted && place !== "lost" ? [place] : []))[0],
    cells: (data.values[wanted] ?? []).map(([cell]) => (typeof cell === "number" ? cell : null)),
  });
  const [across, up] = [columnOf("load_stress"), columnOf(`${value === "e" ? "void_ratio" : "strain"}_${at}`)];
  if (!across.box || !up.box) {
    const lacking = [across, up].flatMap(({ wanted, box }) => (box ? [] : [wanted]));
    return badInput(asTyped(text.plot.noCells(data.sheet, lacking.join(", "))));
  }
  const [x, y, xs, ys] = [across.box, up.box, across.cells, up.cells];
  const { label: xLabel } = spec.x;
  const { label: yLabel } = spec.y;
  return seriesOfRange({ plot: `compression ${value}`, sheet: data.sheet, x, y, xs, ys, method, xLabel, yLabel });
}

/** `spec` is what is drawn of it; of all loads there is none. */
export function chartOfSheet(
  data: DataSheetCells,
  record: TestRecord,
  choices: SheetChoices,
  spec: PlotSpec | undefined,
): Outcome<SheetPlan> {
  const { plot, value, method, axis, at = pointsOf(record) } = choices;
  const time = `${axis} time` as const;
  if (plot === "all") return planOf(data.sheet, everyLoad(data, time));
  if (plot === "compression" && at !== pointsOf(record) && spec)
    return planOf(data.sheet, one(otherPoints(data, choices, at, spec)));
  const load = loadDrawn(record, choices)?.number ?? 1;
  const asked: DataPlot =
    plot === "compression"
      ? { plot, value, method }
      : plot === "time"
        ? { plot: time, load }
        : plot === "cv"
          ? { plot, by: "both" }
          : { plot: "c alpha" };
  return planOf(data.sheet, one(seriesOf(data, asked)));
}
