/** The columns of the strain on wetting against time. */
import type { PlotSpec } from "../../plots/spec";
import { RATE_LABEL, swellPlot } from "../../plots/swell";
import { nameOf } from "../../record/record";
import { say } from "../../reduction/message";
import { firstOf } from "../../reduction/numeric/lists";
import { given, notApplicable, then, type Outcome } from "../../reduction/outcome";
import { isWord } from "../../specification/list-words";
import { readingsName, timesName } from "../../specification/readings";
import type { BlockColumn, BlockSeries, SeriesBlock } from "./series-block";
import { ROOM, Sheet, frameOf, lastOf, titled, type DrawnColumns, type Source } from "./sheet-cells";

/** A number of the sheet: its value, and its address or a formula for it. */
interface Held {
  readonly value: number | undefined;
  readonly at: string;
}

/** A stage of wetting as the sheet has it: the load, and its strain, heights and rate. */
interface Stage {
  readonly load: number;
  /** The load's place in the table, from 0. */
  readonly row: number;
  readonly strain: Held;
  readonly before: Held;
  readonly after: Held;
  readonly rate: Held;
  readonly stress: number | undefined;
}

const senseOf = (sheet: Sheet): number => (sheet.word("dial_sense") === "fall" ? -1 : 1);

/** Dial units to height, with the sign of the dial, as a formula. */
function factorOf(sheet: Sheet): string {
  const sense = sheet.address("dial_sense");
  return `${sense ? `IF(${isWord(sense, "fall")},-1,1)*` : ""}${sheet.address("dial_factor")!}`;
}

const heldIn = (sheet: Sheet, name: string, row = 0): Held => ({
  value: sheet.numbers(name)[row] ?? undefined,
  at: sheet.source(name)!.cell(row),
});

/** The height that the sheet refers the strain to. */
const referenceOf = ({ strain, before, after }: Pick<Stage, "strain" | "before" | "after">): string =>
  `IF(${strain.at}=0,${before.at},(${before.at}-${after.at})/${strain.at})`;

function referenceValue({ strain, before, after }: Pick<Stage, "strain" | "before" | "after">): number {
  const [from, to, by] = [before.value ?? NaN, after.value ?? NaN, strain.value ?? NaN];
  return by === 0 ? from : (from - to) / by;
}

/** A stage, from the table of loads. */
function stageInTable(sheet: Sheet, load: number): Outcome<Stage> {
  const lacking = sheet.lacks("load_wetting_strain", "height_end", "initial_height", "tail_slope");
  if (lacking) return lacking;
  const row = sheet.numbers("load_number").indexOf(load);
  const heights = {
    strain: heldIn(sheet, "load_wetting_strain", row),
    before: row === 0 ? heldIn(sheet, "initial_height") : heldIn(sheet, "height_end", row - 1),
    after: heldIn(sheet, "height_end", row),
  };
  const slope = heldIn(sheet, "tail_slope", row);
  return given({
    load,
    row,
    ...heights,
    rate: {
      value:
        slope.value === undefined
          ? undefined
          : (slope.value * senseOf(sheet) * (sheet.number("dial_factor") ?? NaN)) / referenceValue(heights),
      at: `${slope.at}*${factorOf(sheet)}/${referenceOf(heights)}`,
    },
    stress: sheet.numbers("load_stress")[row] ?? undefined,
  });
}

/** The stage of a load, or that of the results. Refuses a load that is no stage, or a stage without a strain. */
function stageOf(sheet: Sheet, asked: number | undefined): Outcome<Stage> {
  const lacking = sheet.lacks("wetting_load", "load_number", "end_reading", "dial_factor");
  if (lacking) return lacking;
  const load = asked ?? sheet.number("wetting_load");
  const none =
    asked === undefined
      ? notApplicable(say`no stage of wetting has been read (${nameOf("load_mark")})`)
      : notApplicable(say`load ${asked} is no stage of wetting that has been read (${nameOf("load_mark")})`);
  if (load === undefined || !sheet.numbers("load_number").includes(load)) return none;
  return then(stageInTable(sheet, load), (found) => (found.strain.value === undefined ? none : given(found)));
}

/**
 * The strain of a stage of wetting against time, with the line of its rate: the stage of the load asked for, or the one
 * that the results of the sheet are of. Refuses a sheet without such a stage, and a load that is none.
 */
export const swellOf = (sheet: Sheet, asked?: number): Outcome<SeriesBlock> =>
  then(stageOf(sheet, asked), (stage) => drawnStage(sheet, stage, asked));

function drawnStage(sheet: Sheet, stage: Stage, asked: number | undefined): Outcome<SeriesBlock> {
  const { load, row, stress } = stage;
  const [timesOf, readingsOf] = [timesName(load), readingsName(load)];
  const lackingReadings = sheet.lacks(timesOf, readingsOf);
  if (lackingReadings) return lackingReadings;
  const factor = senseOf(sheet) * (sheet.number("dial_factor") ?? NaN);
  const end = sheet.numbers("end_reading")[row] ?? NaN;
  const strain = stage.strain.value ?? NaN;
  const reference = referenceValue(stage);
  const ys = sheet.numbers(readingsOf);
  const strains = ys.map((reading) => (reading === null ? null : strain + ((reading - end) * factor) / reference));
  const spec = swellPlot(sheet.numbers(timesOf), strains, {
    rate: stage.rate.value,
    load: asked,
    stress: stress === undefined ? undefined : `${Number(stress.toPrecision(4))} ${sheet.word("stress_unit")}`.trim(),
    inWords: sheet.words,
  });
  if (!spec.ok) return spec;
  const [times, readings] = [sheet.source(timesOf)!, sheet.source(readingsOf)!];
  const shown = Math.min(times.rows, readings.rows, lastOf(ys) + ROOM);
  return given({
    title: titled(sheet, spec.value.title),
    ...swellBlock(sheet, stage, { times, readings, shown }, spec.value),
  });
}

function swellBlock(
  sheet: Sheet,
  stage: Stage,
  { times, readings, shown }: { times: Source; readings: Source; shown: number },
  spec: PlotSpec,
): DrawnColumns {
  const frame = frameOf(spec);
  const { strain, rate } = stage;
  const end = sheet.source("end_reading")!.cell(stage.row);
  const [factor, reference] = [factorOf(sheet), referenceOf(stage)];
  const isRead = (i: number): string =>
    `AND(ISNUMBER(${times.cell(i)}),ISNUMBER(${readings.cell(i)}),${times.cell(i)}>0)`;
  const strainAt = (i: number): string => `100*(${strain.at}+(${readings.cell(i)}-${end})*${factor}/${reference})`;
  const each = (cell: (i: number) => string): string[] => Array.from({ length: shown }, (_, i) => cell(i));
  const columns: BlockColumn[] = [
    {
      name: "x",
      heading: "Time",
      rows: shown,
      cells: () => each((i) => `=IF(${isRead(i)},${times.cell(i)},${frame.x.domain[0]})`),
    },
    { name: "y", heading: "Strain, %", rows: shown, cells: () => each((i) => `=IF(${isRead(i)},${strainAt(i)},NA())`) },
  ];
  const points: BlockSeries = { name: "readings", style: "points", symbol: "filled", x: "x", y: "y" };
  const line = spec.series.find(({ label }) => label === RATE_LABEL);
  if (!line) return { ...frame, columns, series: [points] };
  const [[from], [to]] = [firstOf(line.points), line.points.at(-1)!];
  const rateColumns: BlockColumn[] = [
    { name: "rate x", heading: "Rate", rows: 2, cells: () => [`=${from}`, `=${to}`] },
    {
      name: "rate y",
      heading: "y",
      rows: 2,
      cells: () => [
        `=IF(ISNUMBER(${rate.at}),100*(${strain.at}-${rate.at}*LOG(${to}/${from},10)),NA())`,
        `=IF(ISNUMBER(${rate.at}),100*${strain.at},NA())`,
      ],
    },
  ];
  const ofRate: BlockSeries = { name: RATE_LABEL, style: "line", lettered: true, x: "rate x", y: "rate y" };
  return { ...frame, columns: [...columns, ...rateColumns], series: [ofRate, points] };
}
