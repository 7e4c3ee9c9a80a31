/** A zip archive that is packed part by part, each in pieces. */
import { strToU8, Zip, ZipDeflate } from "fflate";

/** A part that is being packed. */
export interface PartInPieces {
  add(text: string): void;
  end(text: string): void;
  endBytes(bytes: Uint8Array): void;
}

export class Packing {
  readonly #chunks: Uint8Array[] = [];
  readonly #zip = new Zip((error, chunk) => {
    if (error) throw error;
    this.#chunks.push(chunk);
  });

  /** Begins a part, after the one before has ended. */
  part(path: string): PartInPieces {
    const file = new ZipDeflate(path, { level: 6 });
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
