/** What a cell contains, as a person typed it. */
import type { CellValue } from "./port";

/** True for a formula; a text that only looks like one cannot be told from it here. */
export const isFormula = (content: CellValue | undefined): content is `=${string}` =>
  typeof content === "string" && content.startsWith("=");
