/**
 * Before the real-browser runs: finds Chromium (installs Debian's where that is possible), and serves dist on a free port.
 * What the tests need is left in the environment: CLAYLEDGER_CHROMIUM and CLAYLEDGER_PAGE, or CLAYLEDGER_BROWSER_MISSING with
 * the reason why there is none.
 */
import { execFileSync, spawn } from "node:child_process";
import { accessSync, constants, existsSync } from "node:fs";
import path from "node:path";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

const loudly = (sentence: string) => process.stderr.write(`\n*** ${sentence}\n\n`);

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function findChromium(): string | undefined {
  const named = process.env.CHROMIUM;
  if (named) return isProgram(named) ? named : undefined;
  const folders = ["/usr/bin", ...(process.env.PATH ?? "").split(path.delimiter)];
  return folders.flatMap((folder) => NAMES.map((name) => path.join(folder, name))).find(isProgram);
}

/** Debian's Chromium, where this is Debian and we may install. */
function installChromium(): string | undefined {
  if (process.env.CHROMIUM || !existsSync("/etc/debian_version") || process.getuid?.() !== 0) return undefined;
  loudly("No Chromium on this machine: installing Debian's package `chromium` for the browser tests.");
  try {
    const options = { stdio: ["ignore", 2, 2] as ["ignore", number, number] };
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    execFileSync("apt-get", ["update"], { ...options, env });
    execFileSync("apt-get", ["install", "--yes", "--no-install-recommends", "chromium"], { ...options, env });
  } catch (error) {
    loudly(`The installation failed: ${String(error)}`);
  }
  return findChromium();
}

/** Starts src/host/serve.mjs on any free port, over dist or the folder of CLAYLEDGER_DIST; gives its address once it has printed it. */
function serve(): Promise<string> {
  const { CLAYLEDGER_DIST: dist } = process.env;
  const server = spawn(process.execPath, [path.join(__dirname, "../../src/host/serve.mjs"), ...(dist ? [dist] : [])], {
    env: { ...process.env, PORT: "0" },
    stdio: ["ignore", "pipe", "pipe"],
  });
  process.on("exit", () => server.kill());
  let said = "";
  return new Promise((resolve, reject) => {
    const listen = (chunk: Buffer) => {
      said += chunk;
      const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(said);
      if (!address) return;
      // Nothing of the server may keep jest from ending; it is ended with jest.
      server.unref();
      for (const stream of [server.stdout, server.stderr]) (stream as unknown as { unref(): void }).unref();
      resolve(address[0]);
    };
    server.stdout.on("data", listen);
    server.stderr.on("data", listen);
    server.on("exit", () => reject(new Error(`The page of the browser tests could not be served. ${said}`)));
  });
}

export default async function setup(): Promise<void> {
  const isSkipped = process.env.CLAYLEDGER_NO_BROWSER === "1" && !process.env.CI;
  const chromium = findChromium() ?? (isSkipped ? undefined : installChromium());
  if (!chromium || isSkipped) {
    const reason = process.env.CHROMIUM
      ? `CHROMIUM names ${process.env.CHROMIUM}, which is no program`
      : "no Chromium was found or could be installed";
    process.env.CLAYLEDGER_BROWSER_MISSING = isSkipped
      ? "CLAYLEDGER_NO_BROWSER=1"
      : `The real-browser tests cannot run: ${reason}. Install Chromium, or give its path in CHROMIUM; to leave them out on ` +
        "your own machine set CLAYLEDGER_NO_BROWSER=1.";
    loudly(
      isSkipped
        ? "CLAYLEDGER_NO_BROWSER=1: THE REAL-BROWSER TESTS ARE LEFT OUT. The page is not tested."
        : process.env.CLAYLEDGER_BROWSER_MISSING,
    );
    return;
  }
  process.env.CLAYLEDGER_CHROMIUM = chromium;
  process.env.CLAYLEDGER_PAGE = await serve();
}
