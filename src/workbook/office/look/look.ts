/** The look of each kind of cell in Excel. */
import { fromLooks, type Look } from "../../look/look";

const thin = (color: string): Excel.CellBorder => ({ style: "Continuous", weight: "Thin", color });

function borders({ rule }: Look): Excel.CellBorderCollection | undefined {
  if (!rule) return undefined;
  const line = thin(rule.ink);
  return rule.at === "below" ? { bottom: line } : { top: line, bottom: line, left: line, right: line };
}

export const LOOK = fromLooks((look, kind): Excel.CellPropertiesFormat => {
  const { bold, italic, size, ink, fill, rule } = look;
  return {
    font: { ...(bold && { bold }), ...(italic && { italic }), ...(size && { size }), color: ink },
    ...(fill && { fill: { color: fill } }),
    ...(rule && { borders: borders(look) }),
    // Unlocked, so that the cell can be filled in while the sheet is protected.
    ...(kind === "input" && { protection: { locked: false } }),
  };
});
