/** Chooses a sample of the changes that Stryker makes in some files. */
import { createHash } from "crypto";
import { readFileSync } from "fs";
import type { Files, Mutant } from "./summary";

/** A change, as Stryker names it; lines and columns count from 0. */
export interface Change {
  readonly fileName: string;
  readonly location: {
    readonly start: { readonly line: number; readonly column: number };
    readonly end: { readonly line: number; readonly column: number };
  };
  readonly mutatorName: string;
  readonly replacement: string;
}

const no = (): boolean => false;
const nothing = (): void => undefined;
const SILENT = {
  ...{ isTraceEnabled: no, isDebugEnabled: no, isInfoEnabled: no, isWarnEnabled: no },
  ...{ isErrorEnabled: no, isFatalEnabled: no },
  ...{ trace: nothing, debug: nothing, info: nothing, warn: nothing, error: nothing, fatal: nothing },
};

/**
 * Emptied bodies are left out: tests nearly always see them, and Stryker would also change everything within them, which
 * makes the tests three times as slow.
 */
export const LEFT_OUT = ["BlockStatement"];

/** All changes in the files. */
async function changesIn(files: readonly string[]): Promise<Change[]> {
  const { Instrumenter } = await import("@stryker-mutator/instrumenter");
  const sources = files.map((name) => ({ name, mutate: true, content: readFileSync(name, "utf8") }));
  const options = { plugins: null, excludedMutations: LEFT_OUT, ignorers: [] };
  const { mutants } = await new Instrumenter(SILENT).instrument(sources, options);
  const tried = mutants.filter(({ status }) => status !== "Ignored");
  return tried.map(({ fileName, location, mutatorName, replacement }) => ({
    fileName,
    location,
    mutatorName,
    replacement,
  }));
}

/** Stryker's name for a range of a file: its lines count from 1, its columns from 0. */
export const rangeOf = ({ fileName, location: { start, end } }: Change): string =>
  `${fileName}:${start.line + 1}:${start.column}-${end.line + 1}:${end.column}`;

/**
 * The count of all changes in the files, and `size` of them. The same seed chooses the same changes, in whatever order the
 * files are named.
 */
export async function drawn(
  files: readonly string[],
  size: number,
  seed: string,
): Promise<{ readonly all: number; readonly sample: readonly Change[] }> {
  const changes = await changesIn(files);
  const placed = changes.map((change) => ({
    change,
    place: createHash("sha256")
      .update(seed + JSON.stringify(change))
      .digest("hex"),
  }));
  placed.sort((a, b) => (a.place < b.place ? -1 : 1));
  return { all: changes.length, sample: placed.slice(0, size).map(({ change }) => change) };
}

/** Of what Stryker reports, in which lines and columns count from 1, the changes of the sample. */
export function ofSample(files: Files, sample: readonly Change[]): Files {
  const key = (file: string, from: number, { mutatorName, replacement, location: { start, end } }: Mutant | Change) =>
    [
      ...[file, mutatorName, replacement],
      ...[start.line - from, start.column - from, end.line - from, end.column - from],
    ].join(" ");
  const keys = new Set(sample.map((change) => key(change.fileName, 0, change)));
  const found = Object.entries(files).map(
    ([file, mutants]) => [file, mutants.filter((mutant) => keys.has(key(file, 1, mutant)))] as const,
  );
  return Object.fromEntries(found.filter(([, mutants]) => mutants.length > 0));
}
