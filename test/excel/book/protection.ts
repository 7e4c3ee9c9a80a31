/** What a protected sheet allows beside writing into unlocked cells. */
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

/** All options of a protection: those not given are off. */
export const allOptions = (given: Readonly<Record<string, unknown>>): Record<string, unknown> => ({
  ...Object.fromEntries(OPTIONS.map((option) => [option, false])),
  selectionMode: "Normal",
  ...given,
});
