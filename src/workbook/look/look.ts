/**
 * The look of each kind of cell, for every host. Weight, slant and border distinguish the kinds, so that black and
 * white suffices.
 */
import type { CellKind } from "../port";

export interface Look {
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** Size in points, if it differs from the other cells. */
  readonly size?: number;
  readonly ink: string;
  readonly fill?: string;
  /** A border below or around the cell. */
  readonly rule?: { readonly at: "below" | "around"; readonly ink: string };
}

/** The font of every sheet; column widths and row heights were made for it. Points. */
export const FONT = { name: "Arial", size: 9 } as const;

const INK = "#1F2328";
const PALE_INK = "#4A4F55";

export const LOOKS: Readonly<Record<CellKind, Look>> = {
  title: { bold: true, size: 14, ink: INK },
  heading: { bold: true, ink: INK, fill: "#E9E6DF", rule: { at: "below", ink: INK } },
  label: { ink: INK },
  unit: { italic: true, ink: PALE_INK },
  input: { ink: INK, fill: "#FFF8E1", rule: { at: "around", ink: PALE_INK } },
  result: { bold: true, ink: INK },
  remark: { italic: true, ink: INK },
  note: { italic: true, size: 9, ink: PALE_INK },
};

/** A record with a value for each kind, made from its look. */
export const fromLooks = <T>(make: (look: Look, kind: CellKind) => T): Readonly<Record<CellKind, T>> =>
  // Object.entries and Object.fromEntries have keys of type string; here the keys are all the kinds.
  Object.fromEntries(Object.entries(LOOKS).map(([kind, look]) => [kind, make(look, kind as CellKind)])) as Record<
    CellKind,
    T
  >;
