/** What Stryker found, as lines to read: the changes that no test saw, and a table of the files. */

export interface Mutant {
  readonly status: string;
  readonly statusReason?: string;
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly location: { readonly start: Place; readonly end: Place };
}

interface Place {
  readonly line: number;
  readonly column: number;
}

export type Files = Readonly<Record<string, readonly Mutant[]>>;

const isTried = ({ status }: Mutant): boolean => status !== "Ignored" && status !== "CompileError";
const isUnseen = ({ status }: Mutant): boolean => status === "Survived" || status === "NoCoverage";
const isOnLoading = ({ status, statusReason = "" }: Mutant): boolean =>
  status === "Ignored" && statusReason.startsWith("Static");

const percent = (share: number): string => (100 * share).toFixed(1);

export const survivors = (files: Files): string[] =>
  Object.entries(files).flatMap(([file, mutants]) =>
    mutants
      .filter(isUnseen)
      .map(
        ({ location, mutatorName, replacement = "", status }) =>
          `${file}:${location.start.line}:${location.start.column}: ${mutatorName} ${replacement.replace(/\s+/g, " ").slice(0, 100)}${status === "NoCoverage" ? " (no test runs it)" : ""}`,
      ),
  );

/**
 * The share of changes seen in a sample of `tried` out of `all`, with the half width of its 95 % range: Wilson's interval,
 * narrowed by the part of all changes that was tried.
 */
export function estimate(seen: number, tried: number, all: number): { share: number; margin: number } {
  const z = 1.96;
  const left = all > 1 ? (all - tried) / (all - 1) : 0;
  const n = left > 0 ? tried / left : Infinity;
  const share = seen / tried;
  const spread =
    n === Infinity ? 0 : (z / (1 + z ** 2 / n)) * Math.sqrt((share * (1 - share)) / n + z ** 2 / (4 * n ** 2));
  return { share, margin: spread };
}

interface Counts {
  readonly tried: number;
  readonly seen: number;
  readonly late: number;
  readonly onLoading: number;
}

const counted = (mutants: readonly Mutant[]): Counts => ({
  tried: mutants.filter(isTried).length,
  seen: mutants.filter((one) => isTried(one) && !isUnseen(one)).length,
  late: mutants.filter(({ status }) => status === "Timeout").length,
  onLoading: mutants.filter(isOnLoading).length,
});

const row = (name: string, { tried, seen, late, onLoading }: Counts): string =>
  `| ${name} | ${tried} | ${seen} | ${late} | ${tried - seen} | ${tried ? percent(seen / tried) : ""} | ${onLoading} |`;

/**
 * A row for each file and one for all of them, as a table of Markdown, and the score. `all` is the number of changes from
 * which a sample was taken.
 */
export function summary(files: Files, all?: number): string[] {
  const together = counted(Object.values(files).flat());
  const { tried, seen, onLoading } = together;
  const { share, margin } = estimate(seen, tried, all === undefined ? tried : all * (tried / (tried + onLoading)));
  return [
    "| file | tried | seen | of these by time-out | not seen | score, % | made on loading, not tried |",
    "|---|---|---|---|---|---|---|",
    ...Object.entries(files).map(([file, mutants]) => row(file, counted(mutants))),
    row("together", together),
    "",
    all === undefined
      ? `${percent(share)} % of ${tried} changes seen`
      : `${percent(share)} ± ${percent(margin)} % (95 %) of all ${all} changes are seen, by ${tried} of them`,
  ];
}
