/**
 * Changes the formulas of src/reduction and src/checks one place at a time (Stryker) and counts the changes that no test
 * sees. Run by a person:
 *
 *   npm run mutation -- src/reduction/settlement.ts src/reduction/water.ts
 *
 * Each file is held by the tests of the same name and by those that hold it against print: the score is a lower bound. The
 * survivors are listed with their lines, and kept in reports/mutation.
 */
import { spawnSync } from "child_process";
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "fs";
import path from "path";

const root = path.join(__dirname, "../..");
const reports = path.join(root, "reports/mutation");

const TRANSFORM = ["@swc/jest", { jsc: { target: "es2022", parser: { syntax: "typescript", tsx: true } } }];

/** The tests of a file: of its own name, of its folder's name, and the published checks that name it in an import. */
function testsOf(file: string): string[] {
  const own = file.replace(/^src/, "test").replace(/\.tsx?$/, ".test.ts");
  const folder = `${path.dirname(own)}.test.ts`;
  const published = readdirSync(path.join(root, "test/published"))
    .filter((name) => name.endsWith(".test.ts"))
    .map((name) => `test/published/${name}`)
    .filter((name) => readFileSync(path.join(root, name), "utf8").includes(`/${path.basename(file, ".ts")}"`));
  return [own, folder, ...published].filter((name) => existsSync(path.join(root, name)));
}

interface Mutant {
  readonly status: string;
  readonly mutatorName: string;
  readonly replacement?: string;
  readonly location: { readonly start: { readonly line: number } };
}

function mutate(file: string): readonly Mutant[] {
  const tests = testsOf(file);
  if (tests.length === 0) return [];
  const jestFile = path.join(reports, "jest.config.json");
  writeFileSync(
    jestFile,
    JSON.stringify({
      rootDir: path.relative(reports, root),
      testEnvironment: "node",
      testMatch: tests.map((name) => `<rootDir>/${name}`),
      transform: { "^.+\\.(t|j|mj)sx?$": TRANSFORM },
    }),
  );
  const configFile = path.join(reports, "stryker.config.json");
  const jsonFile = path.join(reports, `${file.replaceAll("/", ".")}.json`);
  writeFileSync(
    configFile,
    JSON.stringify({
      testRunner: "jest",
      disableTypeChecks: false,
      coverageAnalysis: "perTest",
      ignoreStatic: true,
      mutate: [file],
      jest: { projectType: "custom", configFile: path.relative(root, jestFile), enableFindRelatedTests: false },
      reporters: ["json"],
      jsonReporter: { fileName: jsonFile },
      concurrency: 1,
      timeoutMS: 30_000,
      dryRunTimeoutMinutes: 30,
      tempDirName: "reports/mutation/temp",
    }),
  );
  const { status, stderr, stdout } = spawnSync("npx", ["stryker", "run", configFile], { cwd: root, encoding: "utf8" });
  if (status !== 0) throw new Error(`${file}: ${stderr}${stdout}`);
  const report: { files: Record<string, { mutants: Mutant[] }> } = JSON.parse(readFileSync(jsonFile, "utf8"));
  return Object.values(report.files).flatMap(({ mutants }) => mutants);
}

mkdirSync(reports, { recursive: true });
let [seen, all] = [0, 0];
for (const file of process.argv.slice(2)) {
  const mutants = mutate(file).filter(({ status }) => status !== "Ignored" && status !== "CompileError");
  const survived = mutants.filter(({ status }) => status === "Survived" || status === "NoCoverage");
  seen += mutants.length - survived.length;
  all += mutants.length;
  console.log(`${file}: ${mutants.length - survived.length} of ${mutants.length} changes seen`);
  for (const { location, mutatorName, replacement = "" } of survived)
    console.log(`  line ${location.start.line}: ${mutatorName} ${replacement.replace(/\s+/g, " ").slice(0, 100)}`);
}
console.log(`${all === 0 ? 0 : Math.round((1000 * seen) / all) / 10} % of ${all} changes seen`);
