/**
 * Changes the formulas of src/reduction or of src/checks one place at a time (Stryker) and counts the changes that no test
 * sees. Run by a person, for files or for folders:
 *
 *   npm run mutation -- src/reduction/settlement.ts src/reduction/water.ts
 *   npm run mutation -- --sample 200 --seed 2 src/reduction
 *
 * With --sample it tries so many of all changes, chosen by the seed, and estimates the share of the whole. Emptied bodies of
 * functions, which tests nearly always see, are left out of a sample.
 *
 * A change is tried by those tests that run the changed place: for src/reduction of test/reduction and test/published, for
 * src/checks of test/checks, or of the files named by --tests. Three slow files are left out unless they are named. A change
 * of a value that is made when its file is loaded is not tried, and counted apart. The changes that no test sees are listed
 * with their lines; Stryker's whole answer is kept in reports/mutation.
 */
import { spawnSync } from "child_process";
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "fs";
import path from "path";
import { parseArgs } from "util";
import { drawn, LEFT_OUT, ofSample, rangeOf, type Change } from "./drawn";
import { summary, survivors, type Mutant } from "./summary";

const root = path.join(__dirname, "../..");
const reports = "reports/mutation";

const { values, positionals } = parseArgs({
  options: {
    sample: { type: "string" },
    seed: { type: "string", default: "1" },
    tests: { type: "string", multiple: true },
  },
  allowPositionals: true,
});

/** Tests that take seconds for every change, since they look at hundreds of made curves: they run if --tests names them. */
const SLOW = ["no-consolidation", "progress-study", "scenarios"].map(
  (name) => `test/reduction/increment/made-curves/${name}.test.ts`,
);

/** The tests of a source file or folder. */
function testsOf(source: string): readonly string[] {
  if (source.startsWith("src/reduction")) return ["test/reduction/**/*.test.ts", "test/published/*.test.ts"];
  if (source.startsWith("src/checks")) return ["test/checks/*.test.ts"];
  throw new Error(`${source}: name files or folders of src/reduction or of src/checks`);
}

const inFolder = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => `${folder}/${name}`);
const files = positionals.flatMap((one) => (statSync(one).isDirectory() ? inFolder(one) : [one]));
const tests = values.tests ?? [...new Set(positionals.flatMap(testsOf))];

/** What Stryker changes, and for a sample the count of all changes and the options that try the sample alone. */
async function chosen(): Promise<{
  mutate: readonly string[];
  all?: number;
  sampled?: { readonly sample: readonly Change[]; readonly [option: string]: unknown };
}> {
  if (!values.sample) return { mutate: files };
  const { all, sample } = await drawn(files, Number(values.sample), values.seed);
  const plugins = ["@stryker-mutator/*", "./test/mutation/sample.mjs"];
  return {
    mutate: sample.map(rangeOf),
    all,
    sampled: { plugins, checkers: ["sample"], sample, mutator: { excludedMutations: LEFT_OUT } },
  };
}

async function main(): Promise<void> {
  process.chdir(root);
  rmSync(reports, { recursive: true, force: true });
  mkdirSync(reports, { recursive: true });

  const { mutate, sampled, all } = await chosen();
  const config: { default: { projects: object[] } } = await import(path.join(root, "jest.config.mjs"));
  const jestFile = `${reports}/jest.config.json`;
  writeFileSync(
    jestFile,
    JSON.stringify({
      ...config.default.projects[0],
      displayName: undefined,
      testEnvironment: "node",
      // What the tests of one run share is made once, by the first run, in which nothing is changed.
      globalSetup: undefined,
      globalTeardown: undefined,
      rootDir: "../..",
      roots: ["<rootDir>/src", "<rootDir>/test"],
      testMatch: tests.map((name) => `<rootDir>/${name}`),
      testPathIgnorePatterns: SLOW.filter((name) => !tests.includes(name)),
      runner: "<rootDir>/test/mutation/until-one-fails.mjs",
    }),
  );
  const jsonFile = `${reports}/answer.json`;
  const optionsFile = `${reports}/stryker.config.json`;
  writeFileSync(
    optionsFile,
    JSON.stringify({
      ...sampled,
      mutate,
      testRunner: "jest",
      disableTypeChecks: false,
      coverageAnalysis: "perTest",
      ignoreStatic: true,
      ignorePatterns: ["dist", "artifacts"],
      jest: { projectType: "custom", configFile: jestFile, enableFindRelatedTests: false },
      reporters: ["json", "progress-append-only"],
      jsonReporter: { fileName: jsonFile },
      concurrency: 1,
      timeoutMS: 120_000,
      dryRunTimeoutMinutes: 60,
      tempDirName: `${reports}/temp`,
      warnings: { unknownOptions: false },
    }),
  );
  const env = { ...process.env, CLAYLEDGER_RUN_FOLDER: path.join(root, reports, "shared") };
  mkdirSync(env.CLAYLEDGER_RUN_FOLDER);
  const { status } = spawnSync("npx", ["stryker", "run", optionsFile], { stdio: "inherit", env });
  if (status !== 0) throw new Error("Stryker failed: its message stands above");
  const answer: { files: Record<string, { mutants: Mutant[] }> } = JSON.parse(readFileSync(jsonFile, "utf8"));
  const reported = Object.fromEntries(Object.entries(answer.files).map(([file, { mutants }]) => [file, mutants]));
  const found = sampled ? ofSample(reported, sampled.sample) : reported;
  console.log([...survivors(found), "", ...summary(found, all)].join("\n"));
}

void main();
