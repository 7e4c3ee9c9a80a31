/** A zip archive that is packed part by part, each in pieces. */
import { strToU8, Zip, ZipDeflate, ZipPassThrough } from "fflate";

/** A part that is being packed. */
export interface PartInPieces {
  add(text: string): void;
  end(text: string): void;
  endBytes(bytes: Uint8Array): void;
}

interface PartOptions {
  /** When the part was made. */
  readonly mtime?: Date;
  /** True if the content is compressed already, as that of a PNG is. */
  readonly isCompressed?: boolean;
}

/**
 * How much memory finds what repeats in a part: 128 kB. fflate would take 2 MB for each part and hold them until the archive is whole: 90 MB
 * for 40 data sheets.
 */
const MEMORY = 4;

export class Packing {
  readonly #chunks: Uint8Array[] = [];
  readonly #zip = new Zip((error, chunk) => {
    if (error) throw error;
    this.#chunks.push(chunk);
  });

  /** Begins a part, after the one before has ended. */
  part(path: string, { mtime, isCompressed = false }: PartOptions = {}): PartInPieces {
    const file = isCompressed ? new ZipPassThrough(path) : new ZipDeflate(path, { level: 6, mem: MEMORY });
    if (mtime) file.mtime = mtime;
    this.#zip.add(file);
    return {
      add: (text) => file.push(strToU8(text)),
      end: (text) => file.push(strToU8(text), true),
      endBytes: (bytes) => file.push(bytes, true),
    };
  }

  /** The whole archive. */
  file(): Uint8Array<ArrayBuffer> {
    this.#zip.end();
    const whole = new Uint8Array(this.#chunks.reduce((sum, { length }) => sum + length, 0));
    let at = 0;
    for (const chunk of this.#chunks) {
      whole.set(chunk, at);
      at += chunk.length;
    }
    return whole;
  }
}
