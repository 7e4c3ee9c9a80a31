/** The columns of the strain on wetting against time. */
import type { PlotSpec } from "../../plots/spec";
import { swellPlot } from "../../plots/swell";
import { nameOf } from "../../record/record";
import { say } from "../../reduction/message";
import { firstOf } from "../../reduction/numeric/lists";
import { given, notApplicable, type Outcome } from "../../reduction/outcome";
import { readingsName, timesName } from "../../specification/readings";
import type { BlockColumn, BlockSeries, SeriesBlock } from "./series-block";
import { ROOM, Sheet, frameOf, lastOf, titled, type DrawnColumns, type Source } from "./sheet-cells";

/** The strain of the stage of wetting against time, with the line of its rate. Refuses a sheet without such a stage. */
export function swellOf(sheet: Sheet): Outcome<SeriesBlock> {
  const needed = ["wetting_load", "wetting_strain", "wetting_rate", "load_number", "end_reading", "dial_factor"];
  const lacking = sheet.lacks(...needed);
  if (lacking) return lacking;
  const load = sheet.number("wetting_load");
  const strain = sheet.number("wetting_strain");
  if (load === undefined || strain === undefined)
    return notApplicable(say`no stage of wetting has been read (${nameOf("load_mark")})`);
  const [timesOf, readingsOf] = [timesName(load), readingsName(load)];
  const lackingReadings = sheet.lacks(timesOf, readingsOf);
  if (lackingReadings) return lackingReadings;
  const row = sheet.numbers("load_number").indexOf(load);
  const [before, after] = ["wetting_height_before", "wetting_height_after"].map((name) => sheet.number(name) ?? NaN);
  const factor = (sheet.word("dial_sense") === "fall" ? -1 : 1) * (sheet.number("dial_factor") ?? NaN);
  const end = sheet.numbers("end_reading")[row] ?? NaN;
  // The height that the sheet refers the strain to.
  const reference = strain === 0 ? before! : (before! - after!) / strain;
  const ys = sheet.numbers(readingsOf);
  const strains = ys.map((reading) => (reading === null ? null : strain + ((reading - end) * factor) / reference));
  const stress = sheet.number("wetting_stress");
  const rate = sheet.number("wetting_rate");
  const spec = swellPlot(sheet.numbers(timesOf), strains, {
    rate,
    stress: stress === undefined ? undefined : `${Number(stress.toPrecision(4))} ${sheet.word("stress_unit")}`.trim(),
    inWords: sheet.words,
  });
  if (!spec.ok) return spec;
  const [times, readings] = [sheet.source(timesOf)!, sheet.source(readingsOf)!];
  const shown = Math.min(times.rows, readings.rows, lastOf(ys) + ROOM);
  return given({
    title: titled(sheet, spec.value.title),
    ...swellBlock(sheet, { times, readings, row, shown }, spec.value),
  });
}

function swellBlock(
  sheet: Sheet,
  { times, readings, row, shown }: { times: Source; readings: Source; row: number; shown: number },
  spec: PlotSpec,
): DrawnColumns {
  const frame = frameOf(spec);
  const at = (name: string): string => sheet.address(name)!;
  const end = sheet.source("end_reading")!.cell(row);
  const sense = sheet.address("dial_sense");
  const factor = `${sense ? `IF(${sense}="fall",-1,1)*` : ""}${at("dial_factor")}`;
  const reference = `IF(${at("wetting_strain")}=0,${at("wetting_height_before")},(${at("wetting_height_before")}-${at("wetting_height_after")})/${at("wetting_strain")})`;
  const isRead = (i: number): string =>
    `AND(ISNUMBER(${times.cell(i)}),ISNUMBER(${readings.cell(i)}),${times.cell(i)}>0)`;
  const strainAt = (i: number): string =>
    `100*(${at("wetting_strain")}+(${readings.cell(i)}-${end})*${factor}/${reference})`;
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
  const line = spec.series.find(({ label }) => label === "rate at the end");
  if (!line) return { ...frame, columns, series: [points] };
  const [[from], [to]] = [firstOf(line.points), line.points.at(-1)!];
  const rateColumns: BlockColumn[] = [
    { name: "rate x", heading: "Rate", rows: 2, cells: () => [`=${from}`, `=${to}`] },
    {
      name: "rate y",
      heading: "y",
      rows: 2,
      cells: () => [
        `=IF(ISNUMBER(${at("wetting_rate")}),100*(${at("wetting_strain")}-${at("wetting_rate")}*LOG10(${to}/${from})),NA())`,
        `=IF(ISNUMBER(${at("wetting_rate")}),100*${at("wetting_strain")},NA())`,
      ],
    },
  ];
  const rate: BlockSeries = { name: "rate at the end", style: "line", lettered: true, x: "rate x", y: "rate y" };
  return { ...frame, columns: [...columns, ...rateColumns], series: [rate, points] };
}
