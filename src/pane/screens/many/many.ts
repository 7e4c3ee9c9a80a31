/**
 * Reports, one AGS4 file, or pictures of several data sheets. A sheet that fails is listed with the reason, and the others go
 * on. Work that is stopped leaves whole reports, and no file.
 */
import { strToU8 } from "fflate";
import { toAgs4OfAll, type Transmission } from "../../../exchange/ags4";
import { paperPlot, svgFile } from "../../../plots/paper";
import { loadsRead } from "../../../record/load-curve";
import { stressText } from "../../../record/reduced/inputs";
import { readRecord, RECORD_NAMES, type TestRecord } from "../../../record/record";
import { asTyped } from "../../../reduction/message";
import { isoDay, localDayNumber } from "../../../workbook/day-number";
import { Packing } from "../../../workbook/file/packing";
import { isStopped, pause, Stopped } from "../../../workbook/in-slices";
import { WorkbookError, type WorkbookPort } from "../../../workbook/port";
import { text } from "../../text";
import { inWords } from "../../text/messages";
import { sentence, sentenceOf } from "../../text/sentence";
import { fileName, pngOf } from "../../ui/save-file";
import { drawSheet, SHEET_CHOICES, timeCurve, type SheetChoices } from "../plots/sheet-drawing";
import { makeReport, type ReportChoices } from "../report/make-report";

const words = text.many;

/** Reports the share of the work that is done, and tells the work whether to stop. */
export interface Course {
  readonly tell: (share: number) => void;
  readonly signal: AbortSignal;
  readonly now: Date;
}

export interface Failure {
  /** The sheet, or the sheet and the plot. */
  readonly called: string;
  readonly reason: string;
}

/** A file that is handed to the browser. */
export interface MadeFile {
  readonly name: string;
  readonly content: Uint8Array<ArrayBuffer> | string;
}

export interface ManyDone {
  /** What was done, in one sentence. */
  readonly sentence: string;
  readonly others: readonly string[];
  readonly failed: readonly Failure[];
  readonly file?: MadeFile;
}

/** Does the work for one sheet after the other. After a stop, the sheets that were not begun are left out. */
async function each<T>(
  sheets: readonly string[],
  { tell, signal }: Course,
  work: (sheet: string) => Promise<T>,
): Promise<{ readonly done: readonly T[]; readonly failed: readonly Failure[]; readonly isStopped: boolean }> {
  const done: T[] = [];
  const failed: Failure[] = [];
  for (const [index, sheet] of sheets.entries()) {
    if (signal.aborted) return { done, failed, isStopped: true };
    try {
      done.push(await work(sheet));
    } catch (error) {
      if (isStopped(error)) return { done, failed, isStopped: true };
      failed.push({ called: sheet, reason: sentenceOf(error) });
    }
    tell((index + 1) / sheets.length);
    await pause();
  }
  return { done, failed, isStopped: false };
}

export interface ReportsWanted extends ReportChoices {
  readonly preparedBy: string;
  /** If it is left out, each report has the paper of its sheet's units. */
  readonly paper?: "A4" | "Letter" | undefined;
}

/** A report of each sheet. Each is made whole or not at all; those that were made before a stop remain. */
export async function reportsOf(
  port: WorkbookPort,
  sheets: readonly string[],
  wanted: ReportsWanted,
  course: Course,
): Promise<ManyDone> {
  const made = await each(sheets, course, (sheet) =>
    // A stop in the middle of a report takes that report back.
    makeReport(port, sheet, { ...wanted, now: course.now }, { ...course, tell: () => undefined }),
  );
  const reports = made.done.map(({ report }) => report);
  return {
    sentence: made.isStopped ? words.reportsStopped(reports) : words.reportsMade(reports),
    others: made.done.flatMap(({ remarks }) => remarks),
    failed: made.failed,
  };
}

async function recordOf(port: WorkbookPort, sheet: string): Promise<TestRecord> {
  const [looked] = await port.lookAt([{ sheet, values: RECORD_NAMES }]);
  if (!looked) throw new WorkbookError(asTyped(words.gone(sheet)));
  return readRecord(looked.values);
}

/** One AGS4 file of the sheets. Throws `Stopped` after a stop: a part of the tests is no file. */
export async function ags4Of(
  port: WorkbookPort,
  sheets: readonly string[],
  transmission: Transmission,
  course: Course,
): Promise<ManyDone> {
  const read = await each(sheets, course, async (called) => ({ called, record: await recordOf(port, called) }));
  if (read.isStopped) throw new Stopped();
  const made = toAgs4OfAll(read.done, transmission);
  if (!made.ok) throw new WorkbookError(asTyped(sentence(inWords(made.reason))));
  const { text: content, leftOut, written, failed } = made.value;
  const job = read.done.find(({ called }) => called === written[0])?.record.words.job_number ?? "";
  const name = fileName([job, "consolidation"], "ags");
  return {
    sentence: words.ags4Made(name, written.length),
    others: [
      ...(leftOut.length > 0 ? [words.leftOut(leftOut.map(inWords))] : []),
      ...made.remarks.map((remark) => sentence(inWords(remark))),
    ],
    failed: [...read.failed, ...failed.map(({ called, reason }) => ({ called, reason: sentence(inWords(reason)) }))],
    file: { name, content },
  };
}

/** The plots that pictures are made of; "time" stands for the time curves of all loads. */
export const PICTURES = ["compression", "field", "intrinsic", "cv", "cAlpha", "time"] as const;
export type Picture = (typeof PICTURES)[number];

export interface PicturesWanted {
  readonly plots: readonly Picture[];
  readonly format: "svg" | "png";
  readonly widthMm: number;
}

/** The plots of one sheet with their names; a plot that its method refuses is listed. */
function plotsOf(sheet: string, record: TestRecord, plots: readonly Picture[]) {
  const drawn = plots.flatMap((plot) =>
    plot === "time"
      ? loadsRead(record).map((load) => ({
          called: `${sheet}, ${text.plot.loadName(load.number, stressText(record, load))}`,
          plot: timeCurve(record, load, "log"),
        }))
      : [
          {
            called: `${sheet}, ${words.picturesOf[plot]}`,
            plot: drawSheet(record, { ...SHEET_CHOICES, plot } satisfies SheetChoices),
          },
        ],
  );
  return {
    specs: drawn.flatMap(({ plot }) => (plot.ok ? [plot.value] : [])),
    refused: drawn.flatMap(({ called, plot }): Failure[] =>
      plot.ok ? [] : [{ called, reason: sentence(inWords(plot.reason)) }],
    ),
  };
}

/** The name, or "name (2).svg" where it is taken: two sheets may be called alike but for characters that no file name has. */
function freeName(name: string, taken: ReadonlySet<string>): string {
  let free = name;
  for (let number = 2; taken.has(free); number++) free = name.replace(/(\.\w+)$/, ` (${number})$1`);
  return free;
}

/** All pictures in one zip file. Throws `Stopped` after a stop: nothing is saved then. */
export async function picturesOf(
  port: WorkbookPort,
  sheets: readonly string[],
  { plots, format, widthMm }: PicturesWanted,
  course: Course,
): Promise<ManyDone> {
  const [zip, names] = [new Packing(), new Set<string>()];
  const refused: Failure[] = [];
  const picture = async (sheet: string): Promise<void> => {
    const found = plotsOf(sheet, await recordOf(port, sheet), plots);
    refused.push(...found.refused);
    for (const spec of found.specs) {
      if (course.signal.aborted) throw new Stopped();
      const called = [sheet, spec.title];
      const svg = svgFile(paperPlot(spec, { widthMm, heading: called.join(", "), inWords }));
      const isPng = format === "png";
      const content = isPng ? new Uint8Array(await (await pngOf(svg, widthMm)).arrayBuffer()) : strToU8(svg);
      const name = freeName(fileName(called, format), names);
      names.add(name);
      zip.part(name, { mtime: course.now, isCompressed: isPng }).endBytes(content);
      await pause();
    }
  };
  const drawn = await each(sheets, course, picture);
  if (drawn.isStopped) throw new Stopped();
  const failed = [...drawn.failed, ...refused];
  if (names.size === 0) throw new WorkbookError(asTyped(words.noPictures(failed.map(({ reason }) => reason))));
  const name = fileName([text.plot.heading, isoDay(localDayNumber(course.now))], "zip");
  return {
    sentence: words.picturesMade(name, names.size),
    others: [],
    failed,
    file: { name, content: zip.file() },
  };
}
