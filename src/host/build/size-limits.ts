/**
 * The limits of the files that Excel must load before a function answers. The build fails if a file has grown beyond
 * them, so that it does not grow unnoticed.
 */
import { gzipSync } from "node:zlib";

export interface SizeLimit {
  readonly bytes: number;
  /** By gzip at level 9, as a server sends the file. */
  readonly gzip: number;
}

/**
 * The goals are 230 and 75 kB. All texts of the file together take 23 kB by gzip, and none of them may change. The German words
 * of lists, which the cells of a German sheet pass to the functions and to the checks, take 1.6 kB, 1.0 kB by gzip. The reason of
 * a refused curve, runs of loads in answers, and movements in the unit of the readings take 0.7 kB, 0.3 kB by gzip. The
 * German words by which a person's remarks tell of swelling, collapse and water, the cell of a load that an answer names by its
 * row, and words of lists in refusals take 0.4 kB, 0.1 kB by gzip. Other spellings of units, and the remarks on a specimen
 * that compressed as load was taken off, on a doubtful virgin line and on a stress wrong by three decades take 1.3 kB, 0.5 kB
 * by gzip. The jump of a dial, dates in the place of minutes, readings in another unit than the height, void ratios that no soil
 * has, values without a stress and the time of a reading beside its row take 2.2 kB, 1 kB by gzip.
 * That every refusal is a message with its values, and that an answer is in the language of the word that asks, takes
 * 1.6 kB, 0.6 kB by gzip: the page in which the file runs can then say each text in German. The line of a calculation book
 * with the decimal sign of its language, and the names of limits read in each language, take 0.3 kB, 0.2 kB by gzip.
 * Levels and readings that are shown to the step of the readings, in answers and in the working of a formula, and the time
 * beside every row of readings, take 0.5 kB, 0.3 kB by gzip. That Q23 names the reading that is ahead of the others, and not
 * the right one after it, takes 0.2 kB, 0.1 kB by gzip. The units of time in each language of a sheet take 0.1 kB,
 * and times typed as minutes and seconds, which a sheet takes for hours and minutes, 0.1 kB.
 * Labels and units of whole tables and of lines of constructions in the language that is asked for take 0.2 kB, 0.1 kB by
 * gzip; the lines that several methods draw alike are made in one place, so that the file has not grown by them.
 */
export const SIZE_LIMITS: Readonly<Record<string, SizeLimit>> = {
  "functions.js": { bytes: 233_500, gzip: 84_900 },
};

const inWords = (bytes: number): string => bytes.toLocaleString("en-GB");

/**
 * One sentence for each limit that a file exceeds.
 * @example overLimit("functions.js", Buffer.alloc(9), { bytes: 8, gzip: 99 }) // ["functions.js has 9 bytes, ..."]
 */
export function overLimit(file: string, content: Uint8Array, { bytes, gzip }: SizeLimit): string[] {
  const zipped = gzipSync(content, { level: 9 }).length;
  const remedy = "find what has grown, or raise the limit in src/host/build/size-limits.ts and say why";
  return [
    ...(content.length > bytes
      ? [`${file} has ${inWords(content.length)} bytes, more than its limit of ${inWords(bytes)}: ${remedy}.`]
      : []),
    ...(zipped > gzip
      ? [`${file} has ${inWords(zipped)} bytes by gzip, more than its limit of ${inWords(gzip)}: ${remedy}.`]
      : []),
  ];
}
