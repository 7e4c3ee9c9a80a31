/**
 * Builds dist: webpack makes the bundles and lists the licences of their contents, and other processes make the help
 * pages and the workbook on which the page opens. Usage: tsx src/host/build/build.ts [--if-changed] [--development]
 */
import { spawn } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import type { Configuration, MultiStats } from "webpack";
import project from "../../../package.json";
import { bundledIn } from "./licences/bundled";
import { componentsOf, licencesText, packageOf } from "./licences/components";
import { overLimit, SIZE_LIMITS } from "./size-limits";
import { inputsOf, isUpToDate, markBuilt, unmark } from "./up-to-date";

const root = path.join(__dirname, "../../..");
const dist = path.join(root, "dist");
const mode = process.argv.includes("--development") ? "development" : "production";

interface Configured {
  (mode: string): Configuration[];
  /** Files that are copied into dist/vendor: file there, file in node_modules. */
  readonly VENDOR: Readonly<Record<string, string>>;
}

/** The configuration is plain JavaScript, which has no types. */
const configured = (): Configured => createRequire(__filename)(path.join(root, "webpack.config.js"));

/** Writes dist/licences.txt: licences of the packages in the bundles, and of the files copied beside them. */
function writeLicences(stats: MultiStats, vendor: Configured["VENDOR"]): void {
  const copied = Object.entries(vendor).flatMap(([file, source]) => {
    const folder = packageOf(path.join(root, "node_modules", source));
    return folder === undefined || /LICENSE/.test(file) ? [] : [{ folder, file: `vendor/${file}` }];
  });
  const components = componentsOf([...stats.stats.flatMap(({ compilation }) => bundledIn(compilation)), ...copied]);
  const own = readFileSync(path.join(root, "LICENSE"), "utf8");
  writeFileSync(path.join(dist, "licences.txt"), licencesText(own, components));
}

const say = (sentence: string): unknown => process.stdout.write(`${sentence}\n`);

/** Refuses a file of dist that has grown beyond its limit. */
function checkSizes(): void {
  const over = Object.entries(SIZE_LIMITS).flatMap(([file, limit]) =>
    overLimit(file, readFileSync(path.join(dist, file)), limit),
  );
  if (over.length > 0) throw new Error(over.join("\n"));
}

async function bundle(): Promise<void> {
  const { default: webpack } = await import("webpack");
  const configuration = configured();
  const compiler = webpack(configuration(mode));
  const stats = await new Promise<MultiStats>((resolve, reject) =>
    compiler.run((error, result) => (error ? reject(error) : resolve(result!))),
  );
  await new Promise<void>((resolve) => compiler.close(() => resolve()));
  if (stats.hasErrors() || stats.hasWarnings()) say(stats.toString("errors-warnings"));
  if (stats.hasErrors()) throw new Error("The bundles were not built.");
  if (mode === "production") checkSizes();
  writeLicences(stats, configuration.VENDOR);
}

/** Runs a module that writes to a place within dist, in a process of its own, so that both processors work. */
const run = (module: string, place: string, failure: string): Promise<void> =>
  new Promise((resolve, reject) =>
    spawn(process.execPath, ["--import", "tsx", path.join(root, module), place], {
      cwd: root,
      stdio: ["ignore", "ignore", "inherit"],
    }).on("exit", (code) => (code === 0 ? resolve() : reject(new Error(failure)))),
  );

const help = (): Promise<void> => run("src/help/make.ts", dist, "The help pages were not made.");

const firstWorkbook = (): Promise<void> =>
  run("src/host/build/first-workbook.ts", path.join(dist, "first-workbook.json"), "The first workbook was not made.");

/** Packages that package.json names and that are not installed, for instance after an update of the code. */
const missingPackages = (): string[] =>
  Object.keys({ ...project.dependencies, ...project.devDependencies }).filter(
    (name) => !existsSync(path.join(root, "node_modules", name)),
  );

async function build(): Promise<void> {
  const inputs = inputsOf(root, [mode, process.env.CLAYLEDGER_URL ?? "", process.version]);
  if (process.argv.includes("--if-changed") && isUpToDate(dist, inputs)) return;
  const missing = missingPackages();
  if (missing.length > 0) throw new Error(`Packages are missing (${missing.join(", ")}): run "npm ci" first.`);
  const start = Date.now();
  mkdirSync(dist, { recursive: true });
  unmark(dist);
  await Promise.all([bundle(), help(), firstWorkbook()]);
  markBuilt(dist, inputs);
  say(`Built in ${((Date.now() - start) / 1000).toFixed(1)} s.`);
}

build().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
});
