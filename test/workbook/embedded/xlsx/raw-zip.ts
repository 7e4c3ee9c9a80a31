/** Makes zip archives that no sound program writes: with any name, size, check sum and flag. */
import { deflateRawSync } from "node:zlib";
import { crc32 } from "../../../../src/workbook/file/zip";

export interface RawEntry {
  readonly path: string;
  readonly content: Uint8Array;
  /** What the archive states about the part, if it is not true. */
  readonly size?: number;
  readonly crc?: number;
  readonly flags?: number;
  readonly method?: number;
}

/** Numbers of 2 and 4 bytes, low byte first. */
const bytesOf = (...numbers: readonly (readonly [value: number, bytes: 2 | 4])[]): number[] =>
  numbers.flatMap(([value, bytes]) => Array.from({ length: bytes }, (_, i) => Math.floor(value / 256 ** i) % 256));

/** An archive of the entries, packed. PKWARE's APPNOTE 6.3: 4.3.7 local headers, 4.3.12 the directory, 4.3.16 its end. */
export function rawZip(entries: readonly RawEntry[]): Uint8Array {
  const chunks: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const { path, content, size = content.length, crc = crc32(content), flags = 0, method = 8 } of entries) {
    const name = new TextEncoder().encode(path);
    const packed = method === 8 ? deflateRawSync(content, { level: 9 }) : content;
    const about = bytesOf([20, 2], [flags, 2], [method, 2], [0, 4], [crc, 4], [packed.length, 4], [size, 4]);
    const local = Uint8Array.from([
      ...bytesOf([0x04034b50, 4]),
      ...about,
      ...bytesOf([name.length, 2], [0, 2]),
      ...name,
    ]);
    directory.push(
      Uint8Array.from([
        ...bytesOf([0x02014b50, 4], [20, 2]),
        ...about,
        ...bytesOf([name.length, 2], [0, 2], [0, 2], [0, 2], [0, 2], [0, 4], [offset, 4]),
        ...name,
      ]),
    );
    chunks.push(local, packed);
    offset += local.length + packed.length;
  }
  const length = directory.reduce((sum, one) => sum + one.length, 0);
  const end = bytesOf(
    ...([
      [0x06054b50, 4],
      [0, 2],
      [0, 2],
      [entries.length, 2],
      [entries.length, 2],
    ] as const),
    ...([
      [length, 4],
      [offset, 4],
      [0, 2],
    ] as const),
  );
  const all = [...chunks, ...directory, Uint8Array.from(end)];
  const out = new Uint8Array(all.reduce((sum, one) => sum + one.length, 0));
  let at = 0;
  for (const one of all) {
    out.set(one, at);
    at += one.length;
  }
  return out;
}
