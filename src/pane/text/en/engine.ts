/**
 * The engine's own words where they would mislead: its lock is another than the protection of results, which the pane
 * lifts.
 */
export const engine: Readonly<Record<string, string>> = {
  "Some used characters are not allowed in a sheet name (Forbidden characters are %s).":
    "The sheet keeps its name: in Excel the name of a sheet has 31 characters at most, none of : %s, and is not “History”.",
  "Lock sheet": "Lock the whole sheet, inputs too",
  "Unlock sheet": "Unlock the whole sheet",
  "This sheet is locked and cannot be modified. Please unlock it first.":
    "The whole sheet is locked, inputs too. To change it, right click on its tab and choose “Unlock the whole sheet”.",
};
