/** How each kind of cell looks in Excel: told apart by weight, slant and rule, so that black and white suffices. */
import type { CellKind } from "../port";

const INK = "#1F2328";
const PALE_INK = "#4A4F55";

const thin = (color: string): Excel.CellBorder => ({ style: "Continuous", weight: "Thin", color });

export const LOOK: Readonly<Record<CellKind, Excel.CellPropertiesFormat>> = {
  title: { font: { bold: true, size: 14, color: INK } },
  heading: { font: { bold: true, color: INK }, fill: { color: "#E9E6DF" }, borders: { bottom: thin(INK) } },
  label: { font: { color: INK } },
  unit: { font: { italic: true, color: PALE_INK } },
  input: {
    font: { color: INK },
    fill: { color: "#FFF8E1" },
    borders: { top: thin(PALE_INK), bottom: thin(PALE_INK), left: thin(PALE_INK), right: thin(PALE_INK) },
    // Unlocked, so that a firm may protect the sheet and still fill it in.
    protection: { locked: false },
  },
  result: { font: { bold: true, color: INK } },
  remark: { font: { italic: true, color: INK } },
  note: { font: { italic: true, size: 9, color: PALE_INK } },
};
