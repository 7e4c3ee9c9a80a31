/**
 * Programs that tests need and that are not npm packages: found on the machine, or installed from Debian's packages.
 */
import { execFileSync } from "node:child_process";
import { accessSync, constants, existsSync } from "node:fs";
import path from "node:path";

export interface Program {
  /** The usual name: "Chromium". */
  readonly called: string;
  /** Names of its executable. */
  readonly files: readonly string[];
  /** Names of Debian packages that have it, tried in this order. */
  readonly debian: readonly string[];
  /** The environment variable that names its executable. */
  readonly variable: string;
  /** The environment variable that, set to 1, skips its tests, but not in CI. */
  readonly without: string;
  /** The tests that need it: "real-browser tests". */
  readonly tests: string;
}

const loudly = (sentence: string) => process.stderr.write(`\n*** ${sentence}\n\n`);

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function find({ files, variable }: Program): string | undefined {
  const named = process.env[variable];
  if (named) return isProgram(named) ? named : undefined;
  const folders = ["/usr/bin", ...(process.env.PATH ?? "").split(path.delimiter)];
  return folders.flatMap((folder) => files.map((file) => path.join(folder, file))).find(isProgram);
}

/** Installs a Debian package, if this is Debian and installing is allowed; returns the executable. */
function install(program: Program): string | undefined {
  const { called, debian, variable, tests } = program;
  if (process.env[variable] || !existsSync("/etc/debian_version") || process.getuid?.() !== 0) return undefined;
  const options = { stdio: ["ignore", 2, 2] as ["ignore", number, number] };
  const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const name of debian) {
    loudly(`No ${called} on this machine: installing Debian's package \`${name}\` for the ${tests}.`);
    try {
      execFileSync("apt-get", ["update"], { ...options, env });
      execFileSync("apt-get", ["install", "--yes", "--no-install-recommends", name], { ...options, env });
    } catch (error) {
      loudly(`The installation failed: ${String(error)}`);
    }
    const file = find(program);
    if (file) return file;
  }
  return undefined;
}

/** The executable of the program, or why there is none; if its tests are skipped, a loud message says so. */
export function provide(program: Program): { readonly file: string } | { readonly missing: string } {
  const { called, debian, variable, without, tests } = program;
  if (process.env[without] === "1" && !process.env.CI) {
    loudly(`${without}=1: THE ${tests.toUpperCase()} ARE LEFT OUT.`);
    return { missing: `${without}=1` };
  }
  const file = find(program) ?? install(program);
  if (file) return { file };
  const named = process.env[variable];
  const reason = named
    ? `${variable} names ${named}, which is no program`
    : `no ${called} was found or could be installed`;
  const missing =
    `The ${tests} cannot run: ${reason}. Install ${called} (on Debian the package ${debian.join(" or ")}), or give its path in ` +
    `${variable}; to leave them out on your own machine set ${without}=1.`;
  loudly(missing);
  return { missing };
}
