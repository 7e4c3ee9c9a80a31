/** Exports the functions that build the data sheet as data. */
export { blankSheet, type SheetOptions } from "./layout";
export { fillSheet, type SheetValues } from "./fill-sheet";
export { demoSheet } from "./demo";
export { wettingSeries } from "./wetting-series";
export { FIELDS, type NamedField } from "../specification/fields";
export type { System } from "../specification/measures";
export { boxAddress, boxOf } from "../workbook/address";
export { cellsToName, checkSheet, CHECKED_NAMES, type Finding, type SheetCheck } from "./sheet-check";
export {
  ATTACHABLE,
  calledAll,
  labelOf,
  firmLayout,
  inPairs,
  placeOfCell,
  readingLines,
  type SeriesLie,
  type Workings,
  workings,
  type FirmLayout,
  type MissingName,
} from "./firm-layout";
export { cellsOfLines, looksLikeTimes } from "./firm-times";
