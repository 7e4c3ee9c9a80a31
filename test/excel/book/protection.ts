/** The actions that a protected sheet allows besides writing into unlocked cells. */
const OPTIONS = [
  "allowAutoFilter",
  "allowDeleteColumns",
  "allowDeleteRows",
  "allowEditObjects",
  "allowEditScenarios",
  "allowFormatCells",
  "allowFormatColumns",
  "allowFormatRows",
  "allowInsertColumns",
  "allowInsertHyperlinks",
  "allowInsertRows",
  "allowPivotTables",
  "allowSort",
];

/** All options of a protection: options that were not given are off. */
export const allOptions = (given: Readonly<Record<string, unknown>>): Record<string, unknown> => ({
  ...Object.fromEntries(OPTIONS.map((option) => [option, false])),
  selectionMode: "Normal",
  ...given,
});
