/** The embedded sheet: the open-source spreadsheet of `npm start`, behind the workbook port. */
export type { ChartDrawing } from "./look/chart";
export { drawChartsWith, type ChartDrawer } from "./look/chart-figure";
export {
  collectFunctions,
  describeFunctions,
  registerFunctions,
  type FunctionMetadata,
  type FunctionSettings,
  type WorksheetFunction,
} from "./functions";
export { speakWith } from "./engine-words";
export { wordErrorsAgain } from "./steps/error-words";
export { onLongRedo, redoSlowly } from "./steps/history";
export { workOf } from "./steps/moment";
export { decimalMarkIn, decimalMarkOf, setDecimalMark, type DecimalMark } from "./typing/locale";
export { EmbeddedPort } from "./port";
export { sheetView, type RefusedEntry, type SheetView, type Voice } from "./view";
export { asText, fromText, newWorkbook, type OpenWorkbook } from "./workbook";
export { opening, openXlsx, type Opened } from "./xlsx/open";
export { saveUnlessChanged, saveXlsx } from "./xlsx/saving/save";
