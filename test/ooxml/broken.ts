/** The small workbook with faults put in by hand. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { Package } from "./package";
import type { Rule } from "./package-rules";
import { smallFile } from "./small-file";

export type Entries = Record<string, Uint8Array>;
export type Edit = (entries: Entries) => void;
/** A rule, and how it is broken, each time with its complaint. */
export type Fault = readonly [rule: string, ...cases: readonly (readonly [Edit, RegExp])[]];

let sound: Entries | undefined;
/** The parts of a sound file; the same for all callers. */
export const soundEntries = async (): Promise<Entries> => (sound ??= unzipSync(await smallFile()));

export const edit =
  (path: string, from: string | RegExp, to: string): Edit =>
  (entries) => {
    const before = strFromU8(entries[path]);
    const after = before.replace(from, to);
    if (after === before) throw new Error(`${path} has nothing like ${from} to break`);
    entries[path] = strToU8(after);
  };

/** A file with faults; `soundEntries` must have been awaited. It is not packed small: nobody keeps it. */
export function broken(...edits: readonly Edit[]): Package {
  const entries = { ...sound! };
  for (const one of edits) one(entries);
  return new Package(zipSync(entries, { level: 0 }));
}

export const long = (length: number): string => "x".repeat(length);

/** Each rule of a list is broken at least once, and complains; it has no complaint about the sound file. */
export function complainOf(faults: readonly Fault[], rules: Readonly<Record<string, Rule>>): void {
  test("every rule is broken at least once", () => {
    expect(faults.map(([rule]) => rule).sort()).toEqual(Object.keys(rules).sort());
  });

  describe.each(faults.map(([rule, ...cases]) => ({ rule, cases })))("$rule", ({ rule, cases }) => {
    test("has no complaint about the sound file", () => {
      expect(rules[rule](broken())).toEqual([]);
    });

    test.each(cases.map(([fault, said]) => ({ fault, said })))("complains $said", ({ fault, said }) => {
      expect(rules[rule](broken(fault)).join("\n")).toMatch(said);
    });
  });
}
