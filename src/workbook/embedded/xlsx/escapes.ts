/**
 * Characters of texts that XML cannot hold, as a file spells them: "_x0007_" (ISO/IEC 29500-1, 22.9.2.19). A text that itself looks
 * like that spells its underscore so. Of cells the engine reads them by itself.
 */
const UNHELD = /_(?=x[0-9a-f]{4}_)|[\0-\x08\x0b-\x1f\ufffe\uffff]/gi;

export const heldText = (text: string): string =>
  text.replace(UNHELD, (one) => `_x${one.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`);

export const plainText = (held: string): string =>
  held.replace(/_x([0-9a-f]{4})_/gi, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
