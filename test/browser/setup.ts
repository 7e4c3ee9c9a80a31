/**
 * Runs before the real-browser tests: finds Chromium (installs Debian's if possible), and serves dist on a free port.
 * The results are in the environment: CLAYLEDGER_CHROMIUM and CLAYLEDGER_PAGE, or CLAYLEDGER_BROWSER_MISSING with the
 * reason.
 */
import { spawn } from "node:child_process";
import path from "node:path";
import { provide, type Program } from "../programs";

const CHROMIUM: Program = {
  called: "Chromium",
  files: ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"],
  debian: "chromium",
  variable: "CHROMIUM",
  without: "CLAYLEDGER_NO_BROWSER",
  tests: "real-browser tests",
};

/**
 * Starts src/host/serve.mjs on any free port, for dist or the folder of CLAYLEDGER_DIST; returns its address once it is
 * printed.
 */
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
      // The server must not keep jest from ending; it ends with jest.
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
  const chromium = provide(CHROMIUM);
  if ("missing" in chromium) {
    process.env.CLAYLEDGER_BROWSER_MISSING = chromium.missing;
    return;
  }
  process.env.CLAYLEDGER_CHROMIUM = chromium.file;
  process.env.CLAYLEDGER_PAGE = await serve();
}
