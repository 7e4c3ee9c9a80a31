/** The data sheet as data. */
export { blankSheet, fillSheet, type SheetOptions, type SheetValues } from "./sheet";
export { demoSheet } from "./demo";
export { FIELDS, type NamedField } from "./fields";
export type { System } from "./measures";
export { boxAddress, boxOf } from "./address";
export { cellsToName, checkSheet, CHECKED_NAMES, type Finding, type SheetCheck } from "./sheet-check";
