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
 * What the file has, rounded up. The goals are 230 and 75 kB: all texts of the file together take 23 kB by gzip. Who raises a
 * limit says in the commit what the bytes are for.
 */
export const SIZE_LIMITS: Readonly<Record<string, SizeLimit>> = {
  "functions.js": { bytes: 236_550, gzip: 86_600 },
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
