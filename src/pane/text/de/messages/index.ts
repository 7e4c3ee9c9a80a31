/** The messages of reductions, records and checks in German, by their English templates. */
export const messages: Readonly<Record<string, string>> = {};
