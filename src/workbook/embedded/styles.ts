/** How each kind of cell looks in the engine: told apart by weight, slant and border, so that black and white suffices. */
import type { CellKind } from "../port";

export interface EngineStyle {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly fontSize?: number;
  readonly textColor?: string;
  readonly fillColor?: string;
  readonly align?: "left" | "center" | "right";
  readonly wrapping?: "overflow" | "wrap" | "clip";
}

export interface EngineBorder {
  readonly position: "all" | "bottom" | "external";
  readonly style: "thin" | "medium" | "dotted";
  readonly color: string;
}

const INK = "#1F2328";
const PALE_INK = "#4A4F55";

export const STYLES: Readonly<Record<CellKind, EngineStyle>> = {
  title: { bold: true, fontSize: 14, textColor: INK },
  heading: { bold: true, fillColor: "#E9E6DF", textColor: INK },
  label: { textColor: INK },
  unit: { textColor: PALE_INK, italic: true },
  input: { fillColor: "#FFF8E1", textColor: INK },
  result: { bold: true, textColor: INK },
  remark: { italic: true, textColor: INK },
  note: { italic: true, fontSize: 9, textColor: PALE_INK },
};

export const BORDERS: Readonly<Partial<Record<CellKind, EngineBorder>>> = {
  heading: { position: "bottom", style: "thin", color: INK },
  input: { position: "all", style: "thin", color: PALE_INK },
};

/** A column width in characters of the default font, in pixels as Excel reckons them. */
export const charactersToPixels = (characters: number): number => Math.round(characters * 7 + 5);
