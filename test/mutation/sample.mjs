/** Stryker's checker for a sample: it rejects the changes that lie within the chosen ranges and are not of the sample. */
import { commonTokens, declareClassPlugin, PluginKind, tokens } from "@stryker-mutator/api/plugin";

/** What tells one change from every other; the file is named from src on. */
const keyOf = ({ fileName, location, mutatorName, replacement }) =>
  JSON.stringify([fileName.replaceAll("\\", "/").replace(/^.*\/(?=src\/)/, ""), location, mutatorName, replacement]);

class Sample {
  static inject = tokens(commonTokens.options);

  constructor({ sample }) {
    this.keys = new Set(sample.map(keyOf));
  }

  async init() {}

  async check(mutants) {
    const result = (mutant) =>
      this.keys.has(keyOf(mutant)) ? { status: "passed" } : { status: "compileError", reason: "not in the sample" };
    return Object.fromEntries(mutants.map((mutant) => [mutant.id, result(mutant)]));
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Checker, "sample", Sample)];
