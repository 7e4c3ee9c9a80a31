/**
 * `npm run excel`: builds what has changed, makes a certificate, serves the add-in to this machine over https, and
 * opens Excel with it if Microsoft's tools can; otherwise it prints the steps. `npm run excel -- stop` removes the
 * add-in from Excel.
 */
import { spawn, spawnSync } from "node:child_process";
import { X509Certificate } from "node:crypto";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import * as devCerts from "office-addin-dev-certs";
import * as defaults from "office-addin-dev-certs/lib/defaults";
import { stepsFor } from "./excel-steps";

const root = path.join(__dirname, "../..");
const manifest = path.join(root, "dist/manifest.xml");
const say = (text: string): unknown => process.stdout.write(`${text}\n`);

/**
 * Microsoft's tool is downloaded when it is needed and is not a dependency: it installs 590 packages and 450 MB, mostly
 * a peer dependency that a manifest in XML does not use; and it needs semver, which it does not declare.
 */
const DEBUGGING = ["--yes", "--package=office-addin-debugging@7.0.0", "--package=semver@7.7.2", "--"];
const canOpenExcel = process.platform === "win32" || process.platform === "darwin";

const debugging = (...command: string[]) =>
  spawnSync("npx", [...DEBUGGING, "office-addin-debugging", ...command], {
    stdio: "inherit",
    shell: process.platform === "win32",
    env: { ...process.env, npm_config_legacy_peer_deps: "true" },
  }).status === 0;

/** A certificate that is valid for at least another day; the tool makes the system trust it if it can. */
async function certificate(): Promise<{ cert: string; key: string }> {
  const files = { cert: defaults.localhostCertificatePath, key: defaults.localhostKeyPath };
  if (canOpenExcel) {
    await devCerts.ensureCertificatesAreInstalled();
    return files;
  }
  const lasts = (file: string): boolean =>
    Date.parse(new X509Certificate(readFileSync(file)).validTo) > Date.now() + 86_400_000;
  const isThere = [files.cert, files.key].every((file) => existsSync(file)) && lasts(files.cert);
  if (!isThere) {
    devCerts.deleteCertificateFiles(defaults.certificateDirectory);
    await devCerts.generateCertificates();
  }
  return files;
}

async function main(): Promise<void> {
  if (process.argv.includes("stop")) {
    if (canOpenExcel) debugging("stop", manifest);
    else say("On this system nothing was put into Excel: take the add-in out under My Add-ins in Excel on the web.");
    return;
  }
  // The manifest must name this machine, even if the last build was for another address.
  const built = spawnSync(
    process.execPath,
    ["--import", "tsx", path.join(__dirname, "build/build.ts"), "--if-changed"],
    {
      cwd: root,
      stdio: "inherit",
      env: { ...process.env, CLAYLEDGER_URL: "" },
    },
  );
  if (built.status !== 0) throw new Error("There is nothing to serve: mend the build first.");
  const { cert, key } = await certificate();
  const server = spawn(process.execPath, [path.join(__dirname, "serve.mjs"), path.join(root, "dist"), cert, key], {
    stdio: ["ignore", "pipe", "inherit"],
    env: { ...process.env, PORT: "" },
  });
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.on(signal, () => server.kill(signal));
  server.on("exit", (code) => (process.exitCode = code ?? 0));
  server.stdout.once("data", () => {
    say("Clayledger is at https://localhost:3000/, for this machine only (Ctrl-C ends it).");
    if (canOpenExcel) {
      say("Microsoft's tool opens Excel with the add-in; the first time, npm fetches it (about 50 MB).");
      if (debugging("start", manifest, "desktop", "--app", "excel", "--no-debug", "--no-live-reload")) return;
      say("That did not work. By hand:");
    } else say("There is no desktop Excel for this system. In Excel on the web:");
    say(stepsFor(process.platform, manifest));
  });
}

main().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
});
