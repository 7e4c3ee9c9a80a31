/**
 * The longest text of a cell in Excel ("Excel specifications and limits", Microsoft); the embedded sheet saves for
 * Excel, and has the same limit.
 */

export const LONGEST_TEXT = 32_767;
export const LONGEST_FORMULA = 8_192;
