/**
 * The engine's own words where they would mislead: its lock is another than the protection of results, which the pane
 * lifts.
 */
export const engine: Readonly<Record<string, string>> = {
  "Lock sheet": "Lock the whole sheet, inputs too",
  "Unlock sheet": "Unlock the whole sheet",
  "This sheet is locked and cannot be modified. Please unlock it first.":
    "The whole sheet is locked, inputs too. To change it, right click on its tab and choose “Unlock the whole sheet”.",
};
