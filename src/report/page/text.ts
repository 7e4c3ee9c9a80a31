/** Texts of the report and their lines. The report is in English in every language of the pane. */

/**
 * Text in lines of at most `width` characters, broken at spaces; a longer word is broken at the width. Nothing is cut
 * off.
 */
export function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter(Boolean)) {
    let rest = word;
    if (line && line.length + 1 + rest.length > width) {
      lines.push(line);
      line = "";
    }
    while (!line && rest.length > width) {
      lines.push(rest.slice(0, width));
      rest = rest.slice(width);
    }
    line = line ? `${line} ${rest}` : rest;
  }
  if (line) lines.push(line);
  return lines;
}

/** Source: README, Cautions. */
export const CAUTIONS: readonly string[] = [
  "These results feed settlement design. They support, and do not replace, the judgement of a licensed engineer or authorised signatory. The contract's standard and edition, local codes and licensing law come first.",
  "Preconsolidation stress, d0, d100 and the indices are interpretations: several answers can be defended. Look at the construction, the interval and the remarks.",
  "Terzaghi's theory assumes a saturated soil, small strain, constant cv and drainage in one direction; a small specimen may not represent the field. cv is not valid for unsaturated soil.",
  "Disturbance of the sample lowers the preconsolidation stress and the compression index.",
  "Checks and remarks can be wrong both ways; no remark is no proof of quality.",
  "Not for constant-rate-of-strain, hydraulic-cell or radial-drainage tests. The text of standards is not reproduced here.",
  "The uncertainties stated do not cover the disturbance of the sample, the variability of the ground, or the choice of a construction.",
  "Protection of the sheets keeps formulas from slips and is no security: they have no password.",
];
