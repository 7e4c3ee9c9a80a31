/** Runs the browser tests of a group (test/together/groups.mjs) in one file: they follow one another on one page. */
import { sharePages } from "../page";

declare const TOGETHER: Readonly<Record<string, readonly string[]>>;

export function runTogether(group: string): void {
  sharePages();
  for (const file of TOGETHER[group]!)
    describe(file, () => {
      // eslint-disable-next-line @typescript-eslint/no-require-imports -- describe does not wait for an import
      require(`../${file}`);
    });
}
