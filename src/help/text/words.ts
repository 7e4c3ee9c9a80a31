/** What a language must have for the help pages: the sentences of the pages, and how it writes formulas and numbers. */
import type { ReactNode } from "react";

/** How Excel in a language writes formulas and numbers. */
export interface Notation {
  /** Stands between the arguments of a formula. */
  readonly separator: "," | ";";
  readonly decimal: "." | ",";
  /** The errors of cells by their English names, where the language has its own: { "#N/A": "#NV" }. */
  readonly errors: Readonly<Record<string, string>>;
}

/** The sentences of the help page. */
export interface PageWords {
  /** Of the window, and the heading of the page. */
  readonly title: string;
  readonly version: (version: string) => string;
  readonly firstMinutes: (link: string) => ReactNode;
  readonly functions: string;
  readonly cautions: string;
  readonly rules: { readonly heading: string; readonly list: readonly ReactNode[] };
  readonly errors: { readonly heading: string; readonly list: readonly ReactNode[]; readonly end: string };
  readonly sheet: {
    readonly heading: string;
    readonly about: string;
    /** Headings of its columns by their English; those that are the same may be left out. */
    readonly columns: Readonly<Record<string, string>>;
  };
  readonly range: string;
  readonly optional: string;
  readonly gives: (what: string) => string;
  readonly examples: (count: number) => string;
  readonly refuses: string;
  readonly source: string;
  readonly moreRows: (count: number) => string;
  /** The name of the table that an example gives, for a screen reader. */
  readonly given: (formula: string) => string;
  /** Where a construction is drawn; `link` leads to the function. */
  readonly drawnUnder: (link: ReactNode) => ReactNode;
  readonly picture: (name: string) => string;
}

/** One of the twelve steps. */
export interface Step {
  readonly title: string;
  readonly action: ReactNode;
  readonly seen: ReactNode;
  readonly otherwise: ReactNode;
}

/** What is calculated for the steps, written as Excel in the language writes it. */
export interface Facts {
  /** The number of the pane's screens. */
  readonly screens: number;
  readonly waterContent: { readonly formula: string; readonly gives: string };
  readonly schedule: {
    readonly formula: string;
    readonly count: number;
    readonly first: string;
    readonly last: string;
  };
  /** Refused; `reason` as the cell says it where the pane is in the language of the page. */
  readonly swapped: {
    readonly formula: string;
    readonly error: string;
    readonly reason: string;
  };
  readonly ofAnError: { readonly formula: string; readonly error: string };
  /** Values of the worked demonstration (SI). */
  readonly demonstration: Readonly<
    Record<"preconsolidation_stress" | "compression_index" | "void_ratio_initial", string>
  >;
  /** The address of the help page in the language. */
  readonly help: string;
}

/** The sentences of the first ten minutes. */
export interface FirstMinutesWords {
  readonly title: string;
  readonly heading: string;
  readonly version: (version: string) => string;
  readonly about: string;
  readonly help: (link: string) => ReactNode;
  readonly seen: string;
  readonly otherwise: string;
  readonly steps: (facts: Facts) => readonly Step[];
  readonly report: { readonly heading: string; readonly about: string };
}

export interface HelpWords {
  readonly notation: Notation;
  readonly page: PageWords;
  readonly firstMinutes: FirstMinutesWords;
}
