/**
 * Where the pictures of a file stand: between two cells (ISO/IEC 29500-1, 20.5.2.33). The engine's reader takes the size
 * that stands with the picture, which Excel does not look at and other programs leave at 0.
 */
import { corner, spansOf, type Corner, type SheetData } from "./charts";
import { pathOf, relationsOf, type Parts } from "./parts";
import { all, first } from "../../file/xml";

/** The corners of a picture. */
export interface Frame {
  readonly from: Corner;
  readonly to: Corner;
}

/** The frames of the pictures of a sheet, in the order of its drawing. */
export function readFrames(parts: Parts, sheetPath: string): Frame[] {
  if (!parts.has(relationsOf(sheetPath))) return [];
  return all(parts.document(relationsOf(sheetPath)), "Relationship")
    .filter((relation) => relation.getAttribute("Type")?.endsWith("/drawing"))
    .map((relation) => pathOf(relation.getAttribute("Target") ?? "", sheetPath))
    .filter((path) => parts.has(path))
    .flatMap((path) => all(parts.document(path), "twoCellAnchor"))
    .filter((anchor) => first(anchor, "blip"))
    .map((anchor) => ({ from: corner(anchor, "from"), to: corner(anchor, "to") }));
}

interface Figure {
  readonly tag: string;
  readonly col?: number;
  readonly row?: number;
  offset?: { readonly x: number; readonly y: number };
  width: number;
  height: number;
}

/**
 * Corrects the figures of a sheet of the engine's data: a picture without a size gets that of its frame, and no figure
 * begins before its cell. (The engine's reader takes a pixel from every offset, and its writer puts a figure with an
 * offset below 0 at the end of the sheet.)
 */
export function placeFigures(sheet: SheetData & { readonly figures: object[] }, frames: readonly Frame[]): void {
  const left = [...frames];
  const { across, down } = spansOf(sheet);
  // The engine's reader gives each figure these fields.
  for (const figure of sheet.figures as Figure[]) {
    const { x = 0, y = 0 } = figure.offset ?? {};
    figure.offset = { x: Math.max(0, x), y: Math.max(0, y) };
    if (figure.tag !== "image") continue;
    const at = left.findIndex(({ from }) => from.col === figure.col && from.row === figure.row);
    const [frame] = at < 0 ? [] : left.splice(at, 1);
    if (!frame || (figure.width > 0 && figure.height > 0)) continue;
    const { from, to } = frame;
    figure.width = Math.max(1, Math.round(across(from.col, to.col) - from.x + to.x));
    figure.height = Math.max(1, Math.round(down(from.row, to.row) - from.y + to.y));
  }
}
