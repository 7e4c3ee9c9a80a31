export const summary = {
  heading: "Summary of the project",
  purpose:
    "One row for each data sheet of the workbook, on a sheet of its own, by formulas that follow the data sheets. Values in other units are converted; the headings say the unit.",
  units: "Units of the summary",
  SI: "SI (kPa, m, Mg/m3, m2/yr)",
  US: "US customary (tsf, ft, pcf, ft2/day)",
  insert: "Insert a summary",
  insertHint: "Makes a new sheet. No other sheet is changed.",
  update: (sheet: string) => `Bring “${sheet}” up to date`,
  updateHint: "Adds rows for new data sheets and counts open checks again. Rows, columns and cells of your own stay.",
  charts: "Insert charts",
  chartsHint:
    "Stresses against depth; compression curves in void ratio, strain, e/e0 and void index, and cv, over each other; Cc against w0 and liquid limit, on a new sheet.",
  files: "Add specimens from files…",
  filesHint:
    "Each .xlsx is read by its names and is not inserted. Its values go in as constants, with the file, the day and the SHA-256 of the file.",
  reading: "Reading the data sheets…",
  readingFiles: "Reading the files…",
  writing: "Writing the summary…",
  stop: "Stop",
  stopped: "Stopped. Nothing was written.",
  none: "There is no summary in this workbook yet: insert one first.",
  noSheets: "There is no data sheet in this workbook: insert one first (Data sheet).",
  nothingToDraw: "None of the data sheets has a result to draw yet.",
  movedMeanwhile: (sheet: string) =>
    `Rows of “${sheet}” were inserted or deleted in the meantime, or its names were changed.`,
  changedMeanwhile: (sheet: string) =>
    `“${sheet}” was changed in the meantime, and no charts were inserted: insert them again.`,
  inserted: (sheet: string) => `Inserted: “${sheet}”.`,
  upToDate: (sheet: string) => `“${sheet}” is up to date.`,
  chartsInserted: (sheet: string) => `The charts are on “${sheet}”.`,
  undrawn: (sheets: readonly string[]) =>
    `Without curves, because names of loads or units are missing: ${sheets.map((sheet) => `“${sheet}”`).join(", ")}. Attach the names (Data sheet, Sheet check), and insert the charts again.`,
  added: (called: readonly string[]) => `Added: ${called.join("; ")}.`,
  left: (cells: readonly string[]) => `Left as they are, because something else was typed there: ${cells.join(", ")}.`,
  gone: (rows: readonly number[]) =>
    rows.length === 1
      ? `Row ${rows[0]} belongs to a data sheet that no longer exists. The row was left: delete it if it is not wanted.`
      : `Rows ${rows.join(", ")} belong to data sheets that no longer exist. The rows were left: delete them if they are not wanted.`,
  changed: (files: readonly string[]) =>
    `Changed since they were read before, and read again: ${files.join("; ")}. Compare the rows with what you took from them.`,
  same: (files: readonly string[]) => `Unchanged since they were read before: ${files.join("; ")}.`,
  withoutRoom: (called: readonly string[]) =>
    `There is no free row for: ${called.join("; ")}. Insert a further summary for them.`,
  unread: (sheets: readonly string[]) =>
    `Not read, because they have none of the data sheet's names: ${sheets.map((sheet) => `“${sheet}”`).join(", ")}.`,
  twins: (pairs: readonly (readonly [string, string])[]) =>
    `Of the same specimen: ${pairs.map((pair) => [...pair].map((sheet) => `“${sheet}”`).join(" and ")).join("; ")}. Check whether one of them is a copy.`,
  skipped: (file: string, why: string) => `“${file}” was skipped. ${why}`,
  noDataSheet: "It has no data sheet: none of its sheets has the names.",
  noResults: "It shows no results: open it in Excel with the add-in, save it, and choose it again.",
};
