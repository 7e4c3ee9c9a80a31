/** Makes a native chart of the plot on a sheet of its own. The series of the chart follow the cells of the data. */
import type { NamedValues, TestRecord } from "../../../record/record";
import type { PlotSpec } from "../../../plots/spec";
import {
  chartsSheet,
  everyLoad,
  seriesOf,
  seriesOfRange,
  type DataPlot,
  type RangePlot,
  type SeriesBlock,
} from "../../../report/charts/series";
import { nth } from "../../../reduction/numeric/lists";
import { asTyped } from "../../../reduction/message";
import { badInput, given, then, type Outcome } from "../../../reduction/outcome";
import type { SheetName, SheetPlan } from "../../../workbook/port";
import { isTimeCurve, type Choices } from "./range-drawing";
import { kindOf, loadDrawn, stageDrawn, pointsOf, type SheetChoices } from "./sheet-drawing";
import { pairOf, type Range } from "./selected-range";
import { inOneLanguage, languageOfLabels } from "../../live/sheet-language";
import { CATALOGUES, text } from "../../text";
import { language } from "../../text/language";
import { inWords } from "../../text/messages";
import { stressLabel } from "../../../plots/compression";
import { wordsOf } from "../../../specification/text/words";
import type { SheetLanguage } from "../../../specification/text/language";

/** The plan of a sheet, with its name in a language; the workbook shortens the name if necessary. */
const planOf = (of: string, blocks: Outcome<SeriesBlock[]>, language: SheetLanguage): Outcome<SheetPlan> =>
  then(blocks, (made) =>
    given({
      ...chartsSheet(CATALOGUES[language].plot.chartSheet(of), made, "A4", inOneLanguage(language)),
      hostWords: wordsOf(language).host,
    }),
  );

const one = (block: Outcome<SeriesBlock>): Outcome<SeriesBlock[]> => then(block, (made) => given([made]));

/** The plan of the chart of a range: it speaks the language of the pane, as the plot on the screen, because a range has none. */
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
          inWords,
        }),
      ),
      language(),
    ),
  );
}

export interface DataSheetCells {
  readonly sheet: string;
  readonly names: readonly SheetName[];
  readonly values: NamedValues;
}

type Worded = DataSheetCells & Required<Pick<RangePlot, "inWords">>;

/**
 * The series for points (end of load or d100) that the data sheet's own curve does not use; they come from the columns
 * of these points.
 */
function otherPoints(
  data: Worded,
  value: "e" | "strain",
  method: SheetChoices["method"],
  at: string,
  stressUnit: string,
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
  const { sheet, inWords } = data;
  const xLabel = inWords(stressLabel(stressUnit, true));
  return seriesOfRange({ plot: `compression ${value}`, sheet, x, y, xs, ys, method, xLabel, inWords });
}

/** The plan of the chart sheet. `spec` is the plot on the screen; it is undefined for the plots of all loads. */
export const chartOfSheet = (
  cells: DataSheetCells,
  record: TestRecord,
  choices: SheetChoices,
  spec: PlotSpec | undefined,
): Outcome<SheetPlan> =>
  then(drawnOfSheet(cells, record, choices, spec), (plan) =>
    given({ ...plan, reads: { sheet: cells.sheet, names: cells.names } }),
  );

function drawnOfSheet(
  cells: DataSheetCells,
  record: TestRecord,
  choices: SheetChoices,
  spec: PlotSpec | undefined,
): Outcome<SheetPlan> {
  // The chart stands in the workbook, and speaks the language of its sheet.
  const ofSheet = languageOfLabels();
  const data = { ...cells, inWords: inOneLanguage(ofSheet) };
  const { plot, value = kindOf(record), method, axis, at = pointsOf(record) } = choices;
  const time = `${axis} time` as const;
  if (plot === "all") return planOf(data.sheet, everyLoad(data, time), ofSheet);
  if (plot === "compression" && at !== pointsOf(record) && spec)
    return planOf(data.sheet, one(otherPoints(data, value, method, at, record.words.stress_unit ?? "kPa")), ofSheet);
  const load = loadDrawn(record, choices)?.number ?? 1;
  const asked: DataPlot =
    plot === "compression"
      ? { plot, value, method }
      : plot === "time"
        ? { plot: time, load }
        : plot === "swell"
          ? { plot, load: stageDrawn(record, choices)?.number }
          : plot === "field" || plot === "intrinsic"
            ? { plot }
            : plot === "cv"
              ? { plot, by: "both" }
              : { plot: "c alpha", stressScale: choices.stressScale };
  return planOf(data.sheet, one(seriesOf(data, asked)), ofSheet);
}
