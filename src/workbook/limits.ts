/** How much a cell holds in Excel ("Excel specifications and limits", Microsoft); the embedded sheet saves for Excel, and holds to it. */

export const LONGEST_TEXT = 32_767;
export const LONGEST_FORMULA = 8_192;
