/** Saves a plot as a file or on the clipboard: as SVG, or as PNG at print resolution. */

import { nth } from "../../reduction/numeric/lists";

export const DOTS_PER_INCH = 300;
const MM_PER_INCH = 25.4;

export const pixelsOf = (mm: number): number => Math.round((mm / MM_PER_INCH) * DOTS_PER_INCH);

/** A file name that every file system accepts: "Demonstration, load 3, log of time.svg". */
export const fileName = (words: readonly string[], ending: string): string =>
  `${words
    .filter((word) => word !== "")
    .join(", ")
    .replace(/[\\/:*?"<>|\p{Cc}]+/gu, "-")
    .trim()
    .slice(0, 120)}.${ending}`;

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
  return c >>> 0;
});

/** The checksum of a PNG chunk (PNG specification, annex D). */
const crc = (bytes: Uint8Array): number =>
  (bytes.reduce((c, byte) => nth(CRC_TABLE, (c ^ byte) & 0xff) ^ (c >>> 8), 0xffffffff) ^ 0xffffffff) >>> 0;

/** The number of bytes up to the end of the first chunk: the signature, then IHDR. */
const AFTER_HEADER = 8 + 25;

/** Adds the resolution to a PNG (chunk pHYs, dots per metre), so that a document shows it at the stated width. */
export function withResolution(png: Uint8Array, dotsPerInch: number): Uint8Array<ArrayBuffer> {
  const chunk = new Uint8Array(21);
  const view = new DataView(chunk.buffer);
  const perMetre = Math.round((dotsPerInch / MM_PER_INCH) * 1000);
  view.setUint32(0, 9);
  chunk.set([0x70, 0x48, 0x59, 0x73], 4);
  view.setUint32(8, perMetre);
  view.setUint32(12, perMetre);
  view.setUint8(16, 1);
  view.setUint32(17, crc(chunk.subarray(4, 17)));
  const whole = new Uint8Array(png.length + chunk.length);
  whole.set(png.subarray(0, AFTER_HEADER));
  whole.set(chunk, AFTER_HEADER);
  whole.set(png.subarray(AFTER_HEADER), AFTER_HEADER + chunk.length);
  return whole;
}

/** Draws an SVG file as a PNG at 300 dots per inch of its width in mm. Needs the canvas of a browser. */
export async function pngOf(svg: string, widthMm: number): Promise<Blob> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  canvas.width = pixelsOf(widthMm);
  canvas.height = Math.round((canvas.width * image.naturalHeight) / image.naturalWidth);
  const drawing = canvas.getContext("2d")!;
  // The last pixel is only partly covered: without a background it would be translucent.
  drawing.fillStyle = "#fff";
  drawing.fillRect(0, 0, canvas.width, canvas.height);
  drawing.drawImage(image, 0, 0, canvas.width, canvas.height);
  const drawn = await new Promise<Blob | null>((give) => canvas.toBlob(give, "image/png"));
  if (!drawn) throw new Error("the picture was not drawn");
  return new Blob([withResolution(new Uint8Array(await drawn.arrayBuffer()), DOTS_PER_INCH)], { type: "image/png" });
}

export const svgBlob = (svg: string): Blob => new Blob([svg], { type: "image/svg+xml" });

/** Passes a file to the browser, which saves it if the host allows it. */
export function download(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = Object.assign(document.createElement("a"), { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

/** Throws if the host does not allow a page to write to the clipboard. */
export const copyText = (words: string): Promise<void> => navigator.clipboard.writeText(words);
export const copyPicture = (png: Promise<Blob>): Promise<void> =>
  navigator.clipboard.write([new ClipboardItem({ "image/png": png })]);
