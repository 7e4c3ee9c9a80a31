/** The look of each kind of cell in the engine. */
import { FONT, fromLooks } from "../../look/look";

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

export const STYLES = fromLooks(({ bold, italic, size, ink, fill }): EngineStyle => ({
  ...(bold && { bold }),
  ...(italic && { italic }),
  fontSize: size ?? FONT.size,
  ...(fill && { fillColor: fill }),
  textColor: ink,
}));

export const BORDERS = fromLooks(
  ({ rule }): EngineBorder | undefined =>
    rule && { position: rule.at === "below" ? "bottom" : "all", style: "thin", color: rule.ink },
);

/** At 96 pixels per inch. */
export const pointsToPixels = (points: number): number => Math.round((points * 96) / 72);

/** A column width in characters of the default font to pixels, as Excel counts them. */
export const charactersToPixels = (characters: number): number => Math.round(characters * 7 + 5);
