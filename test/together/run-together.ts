/** Runs the test files of a group (groups.mjs) in one file. */
declare const TOGETHER: Readonly<Record<string, readonly string[]>>;

export function runTogether(group: string): void {
  for (const file of TOGETHER[group]!)
    describe(file, () => {
      // eslint-disable-next-line @typescript-eslint/no-require-imports -- describe does not wait for an import
      require(`../${file}`);
    });
}
