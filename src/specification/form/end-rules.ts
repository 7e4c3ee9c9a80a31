/** The contract's rules for the end of a load, as the sheet words them. */
export const END_RULES = ["fixed time", "t100 by log time", "t100 by root time", "multiple of t100"] as const;
export type EndRuleWords = (typeof END_RULES)[number];
