/**
 * Runs before the real-browser tests: finds Chromium (installs Debian's if possible), starts it once for all files, and
 * serves dist on a free port. The results are in the environment: CLAYLEDGER_BROWSER (where a file connects to the
 * browser), CLAYLEDGER_CHROMIUM and CLAYLEDGER_PAGE, or CLAYLEDGER_BROWSER_MISSING with the reason.
 */
import { spawn } from "node:child_process";
import path from "node:path";
import { chromium } from "playwright-core";
import { PATIENCE } from "./started-page";
import { endBrowserWith } from "./teardown";
import { provide, type Program } from "../programs";

/** The headless shell is Chromium without its window, which no test sees: a page takes 15 % less processor time in it. */
const CHROMIUM: Program = {
  called: "Chromium",
  files: ["chromium-headless-shell", "chromium", "chromium-browser", "google-chrome", "google-chrome-stable"],
  debian: ["chromium-headless-shell", "chromium"],
  variable: "CHROMIUM",
  without: "CLAYLEDGER_NO_BROWSER",
  tests: "real-browser tests",
};

/**
 * What Chromium leaves out. Chromium follows only the last list that it is given: what Playwright leaves out for the sake of tests
 * stands here again.
 */
const LEFT_OUT = [
  "AimEnabled",
  "AvoidCorsURLLoaderRestartOnRedirect",
  "AvoidUnnecessaryBeforeUnloadCheckSync",
  "DestroyProfileOnBrowserClose",
  "HttpsFirstBalancedModeAutoEnable",
  "HttpsUpgrades",
  "LensOverlay",
  "MediaRouter",
  "NetworkTimeServiceQuerying",
  "OptimizationHints",
  "PaintHolding",
  "PreconnectToSearch",
  "TcpPortRandomizationWin",
  "ThirdPartyStoragePartitioning",
  // Two pages for the suggestions below the address bar, which nobody sees: 0.5 s of processor time for each context.
  "WebUIOmniboxAimPopup",
  "WebUIOmniboxPopup",
];

/** Chromium that sends requests to the page only. */
const ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  // A page lives for seconds: code that is optimised to the last costs more than it saves, a tenth of the whole run.
  "--js-flags=--no-turbofan",
  `--disable-features=${LEFT_OUT.join(",")}`,
];

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

/** Finds Chromium and serves the page; returns false if there is no Chromium. */
export async function provideChromium(): Promise<boolean> {
  const program = provide(CHROMIUM);
  if ("missing" in program) {
    process.env.CLAYLEDGER_BROWSER_MISSING = program.missing;
    return false;
  }
  process.env.CLAYLEDGER_CHROMIUM = program.file;
  process.env.CLAYLEDGER_PAGE = await serve();
  return true;
}

export default async function setup(): Promise<void> {
  if (!(await provideChromium())) return;
  const { CLAYLEDGER_CHROMIUM: executablePath } = process.env;
  const browser = await chromium.launchServer({ executablePath, args: ARGUMENTS, timeout: PATIENCE });
  endBrowserWith(browser);
  process.env.CLAYLEDGER_BROWSER = browser.wsEndpoint();
}
