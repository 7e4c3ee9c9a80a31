/** What the heading of a column names: by the words of the trade in English and German, and by the usual symbols. */

/** What a column of a reduction holds; "e" is the void ratio. */
export type Named = "time" | "reading" | "stress" | "e" | "strain";

/** A symbol at the beginning of a heading, alone or before a unit: "t (min)", "σ'v [kPa]", "p', kPa", "e". */
const symbol = (letters: string): RegExp => new RegExp(`^(?:${letters})\\s*(?:$|[[(,/]|\\bin\\b)`, "iu");

/** Primes of a symbol, and the letters behind them: σ', σ′v, p'z. */
const EFFECTIVE = "\\s*['′’`´]?\\s*(?:v0?|z|1|eff)?\\s*['′’`´]?";

/** The first that fits decides: "Uhrzeit" is a time, though "Uhr" is also the dial. */
const WORDS: readonly (readonly [Named, ...RegExp[]])[] = [
  ["time", /\btime|elapsed|zeit|\bdauer|(?<![/\d])\bmin\b|\bminute/iu, symbol("t|Δt")],
  [
    "stress",
    /stress|pressure|spannung|druck|auflast|sigma|σ/iu,
    symbol(`(?:p|sig)${EFFECTIVE}|s['′’\`´]\\s*(?:v0?|z)?`),
    /\(\s*(?:kPa|MPa|psf|ksf|tsf|psi|k?N\/m[2²]|kgf?\/cm[2²]|bar)\s*\)/iu,
  ],
  ["e", /void|porenzahl/iu, symbol("e\\d?|e\\s*end")],
  ["strain", /strain|stauchung|dehnung|ε|epsilon|(?:settlement|compression|deform|setzung|zusammendr|verform)[^%]*%/iu],
  [
    "reading",
    /reading|dial|gau?ge|deform|displac|transducer|lvdt|compression|settlement|ablesung|messuhr|messwert|\bweg|setzung|zusammendr|verform|verschieb/iu,
    symbol("[Δδd]\\s?[hls]|delta\\s?h|[hsr]|dr"),
  ],
];

/**
 * What a heading names; undefined if no word of it tells.
 * @example namedBy("Setzung (mm)") // "reading"
 * @example namedBy("p' (kPa)") // "stress"
 */
export const namedBy = (heading: string): Named | undefined =>
  WORDS.find(([, ...words]) => words.some((word) => word.test(heading.trim())))?.[0];

/** Whether a heading of a time names the clock, and not the time since the load was applied. */
export const isClock = (heading: string): boolean => /clock|uhr|date|datum/iu.test(heading);
