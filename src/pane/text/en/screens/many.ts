const listed = (sheets: readonly string[]): string => sheets.map((sheet) => `“${sheet}”`).join(", ");

export const many = {
  heading: "Many at once",
  purpose:
    "For all data sheets of the workbook, or for those chosen. A sheet that fails is listed with the reason; the others go on.",
  what: "What to make",
  kinds: { reports: "Reports", ags4: "One AGS4 file", pictures: "Pictures" },
  sheets: "Data sheets",
  all: "All",
  none: "None",
  noneChosen: "Choose at least one data sheet.",
  paper: "Paper",
  papers: { sheet: "by the units of the sheet", A4: "A4", Letter: "Letter" },
  plots: "Plots",
  picturesOf: {
    compression: "Compression curve",
    field: "Field curve",
    intrinsic: "Void index",
    cv: "cv against stress",
    cAlpha: "C alpha against stress",
    time: "Time curves of all loads",
  },
  noPlot: "Choose at least one plot.",
  format: "Format",
  formats: { svg: "SVG", png: "PNG, 300 dots per inch" },
  asOnSheets: "as on each sheet",
  makeReports: (count: number) => (count === 1 ? "Make 1 report" : `Make ${count} reports`),
  makeAgs4: (count: number) =>
    count === 1 ? "Make the AGS4 file of 1 sheet" : `Make one AGS4 file of ${count} sheets`,
  makePictures: (count: number) =>
    count === 1 ? "Save the pictures of 1 sheet" : `Save the pictures of ${count} sheets`,
  working: "Working, one sheet after the other…",
  stopped: "Stopped. No file was made.",
  reportsMade: (reports: readonly string[]) =>
    reports.length === 0
      ? "No report was made."
      : reports.length === 1
        ? `1 report was made: ${listed(reports)}.`
        : `${reports.length} reports were made: ${listed(reports)}.`,
  reportsStopped: (reports: readonly string[]) =>
    reports.length === 0
      ? "Stopped. No report was made."
      : `Stopped. ${reports.length === 1 ? "1 report was" : `${reports.length} reports were`} made before, and ${reports.length === 1 ? "stays" : "stay"}: ${listed(reports)}. None is half made.`,
  ags4Made: (name: string, count: number) =>
    `${name} was made, with ${count === 1 ? "1 test" : `${count} tests`}. If nothing was saved, copy its text from here.`,
  leftOut: (what: readonly string[]) => `The file has no place for: ${what.join("; ")}.`,
  picturesMade: (name: string, count: number) =>
    `${name} was made, with ${count === 1 ? "1 picture" : `${count} pictures`}, and passed to the browser to be saved.`,
  noPictures: (reasons: readonly string[]) => `There is nothing to draw. ${[...new Set(reasons)].join(" ")}`,
  noSaving:
    "Excel does not let a pane save files here: pictures of many sheets cannot be saved. Insert charts (Plots), or copy single pictures there.",
  gone: (sheet: string) => `“${sheet}” was not found.`,
  failed: (count: number) => (count === 1 ? "1 thing failed" : `${count} things failed`),
  failure: (called: string, reason: string) => `“${called}”: ${reason}`,
  noSheets: "There is no data sheet in this workbook yet.",
};
