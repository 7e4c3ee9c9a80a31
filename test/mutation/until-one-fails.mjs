/**
 * Jest's runner for a changed formula: it loads only the files whose tests run the changed place, the quickest first, and
 * stops after the first file with a failing test. Without it Jest loads every file for every change.
 */
import { existsSync, readFileSync, writeFileSync } from "fs";
import path from "path";
import TestRunner from "jest-runner";

export default class UntilOneFails extends TestRunner {
  constructor(globalConfig, context) {
    super(globalConfig, context);
    this.pattern = globalConfig.testNamePattern;
    // The names of the tests of each file, and its time. Another process of Stryker reads what the first run has written.
    this.file = path.join(globalConfig.rootDir, "reports/mutation/test-files.json");
  }

  /** The files with a test of the pattern, the quickest first. */
  chosen(tests) {
    const learned = JSON.parse(readFileSync(this.file, "utf8"));
    const named = new RegExp(this.pattern, "i");
    return tests
      .filter((test) => learned[test.path].names.some((name) => named.test(name)))
      .toSorted((a, b) => learned[a.path].took - learned[b.path].took);
  }

  async runTests(tests, watcher, options) {
    const learned = {};
    let failed = false;
    this.on("test-file-failure", () => (failed = true));
    this.on("test-file-success", ([test, { testResults, perfStats, numFailingTests }]) => {
      failed ||= numFailingTests > 0;
      learned[test.path] = { names: testResults.map(({ fullName }) => fullName), took: perfStats.runtime };
    });
    const isFirst = !existsSync(this.file);
    for (const test of isFirst || !this.pattern ? tests : this.chosen(tests)) {
      if (failed && !isFirst) break;
      await super.runTests([test], watcher, options);
    }
    if (isFirst) writeFileSync(this.file, JSON.stringify(learned));
  }
}
