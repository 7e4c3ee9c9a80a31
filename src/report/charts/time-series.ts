/** The columns of a time curve and its construction. */
import type { PlotSpec } from "../../plots/spec";
import { LESS_THE_JUMP, logTimePlot, rootTimePlot } from "../../plots/time";
import type { InWords } from "../../plots/words";
import { say, verbatim } from "../../reduction/message";
import { given, type Outcome } from "../../reduction/outcome";
import { readingsName, timesName } from "../../specification/readings";
import { lengthOf, liesAcross } from "../../workbook/lists";
import type { Box } from "../../workbook/port";
import type { BlockColumn, SeriesBlock } from "./series-block";
import { callOf, constructionColumns } from "./series-lines";
import { ROOM, Sheet, frameOf, lastOf, picksOf, sourceOf, titled, type DrawnColumns, type Source } from "./sheet-cells";

interface TimeSource {
  readonly times: Source;
  readonly readings: Source;
  /** The number of readings that the chart shows now; the columns have more rows. */
  readonly shown: number;
  readonly picks?: string;
  /** A formula for the procedure of the construction; "aided" if the sheet has no cells for it. */
  readonly procedure?: string;
}

/** The columns of a time curve and its construction. */
export function timeBlock(
  plot: "log time" | "root time",
  { times, readings, shown, picks, procedure }: TimeSource,
  sheet: string,
  boxes: readonly [Box, Box],
  spec: PlotSpec,
  words: InWords,
): DrawnColumns {
  const frame = frameOf(spec);
  // The block has its cells in columns, whichever way the readings lie.
  const [t, r] = boxes.map((box) => {
    const { whole } = sourceOf(sheet, box, shown);
    return liesAcross(box) ? `TRANSPOSE(${whole})` : whole;
  });
  const root = plot === "root time";
  // Wrong readings are shown too: the reader judges what the method left out. Zero is a time in the first row only.
  const isRead = `ISNUMBER(${t})*ISNUMBER(${r})*${root ? `((${t}>0)*(${r}<>0)+(${t}=0))` : `(${t}>0)*(${r}<>0)`}`;
  const columns: BlockColumn[] = [
    {
      name: "x",
      heading: root ? "Root of time" : "Time",
      rows: shown,
      cells: () => [`=IF(${isRead},${root ? `SQRT(ABS(${t}))` : t},${frame.x.domain[0]})`],
    },
    { name: "y", heading: "Reading", rows: shown, cells: () => [`=IF(${isRead},${r},NA())`] },
  ];
  const name = root ? "ROOT_TIME_LINES" : "LOG_TIME_LINES";
  const call = (_: unknown, language?: string) =>
    callOf(name, [times.whole, readings.whole], [picks, procedure, language], '""');
  const jumps = spec.series.some(({ label }) => label === LESS_THE_JUMP);
  const drawn = constructionColumns(plot, call, frame, words, jumps);
  return {
    ...frame,
    columns: [...columns, ...drawn.columns],
    series: [...drawn.series, { name: "readings", style: "points", symbol: "filled", x: "x", y: "y" }],
  };
}

/** The cell with the procedure of a load in the load table. */
function procedureOf(sheet: Sheet, load: number): string | undefined {
  const numbers = sheet.address("load_number");
  const procedure = numbers && sheet.taken("load_procedure", `MATCH(${load},${numbers},0)`);
  return procedure && `IFERROR(${procedure},"aided")`;
}

export function timeOf(sheet: Sheet, plot: "log time" | "root time", load: number): Outcome<SeriesBlock> {
  const [timesOf, readingsOf] = [timesName(load), readingsName(load)];
  const lacking = sheet.lacks(timesOf, readingsOf);
  if (lacking) return lacking;
  const [xs, ys] = [sheet.numbers(timesOf), sheet.numbers(readingsOf)];
  const draw = plot === "log time" ? logTimePlot : rootTimePlot;
  const sense = sheet.word("dial_sense") === "fall" ? "fall" : "rise";
  const spec = draw(xs, ys, { readingLabel: sheet.words(say`Dial reading`), sense, inWords: sheet.words });
  if (!spec.ok) return spec;
  const boxes = [sheet.box(timesOf)!, sheet.box(readingsOf)!] as const;
  const stress = sheet.numbers("load_stress")[load - 1];
  const under = stress == null ? "" : `${Number(stress.toPrecision(4))} ${sheet.word("stress_unit")}`.trimEnd();
  const title = under ? say`Load ${load}, ${verbatim(under)}` : say`Load ${load}`;
  return given(
    {
      title: titled(sheet, sheet.words(title)),
      ...timeBlock(
        plot,
        {
          times: sheet.source(timesOf)!,
          readings: sheet.source(readingsOf)!,
          shown: Math.min(lengthOf(boxes[0]), lengthOf(boxes[1]), lastOf(ys) + ROOM),
          picks: picksOf(sheet, load),
          procedure: procedureOf(sheet, load),
        },
        sheet.name,
        boxes,
        spec.value,
        sheet.words,
      ),
    },
    spec.remarks,
  );
}
