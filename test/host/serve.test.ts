import { spawn, type ChildProcess } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync, mkdirSync } from "node:fs";
import { createServer, request, type IncomingMessage } from "node:http";
import { request as secureRequest } from "node:https";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { generateCertificates } from "office-addin-dev-certs";

const PROGRAM = path.join(__dirname, "../../src/host/serve.mjs");
const outside = mkdtempSync(path.join(tmpdir(), "clayledger-serve-"));
const folder = path.join(outside, "dist");
const running: ChildProcess[] = [];

beforeAll(() => {
  mkdirSync(path.join(folder, "vendor"), { recursive: true });
  mkdirSync(`${folder}-beside`);
  writeFileSync(path.join(outside, "secret.txt"), "secret");
  writeFileSync(path.join(`${folder}-beside`, "secret.txt"), "secret");
  writeFileSync(path.join(folder, "index.html"), "<p>page</p>");
  writeFileSync(path.join(folder, "functions.js"), "1");
  writeFileSync(path.join(folder, "vendor/LICENSE"), "licence");
});

afterAll(() => {
  running.forEach((server) => server.kill());
  rmSync(outside, { recursive: true });
});

/** Starts the server; gives what it said until it printed its address or ended. */
function start(env: Record<string, string>, from = folder, ...certificate: string[]) {
  const server = spawn(process.execPath, [PROGRAM, from, ...certificate], { env: { ...process.env, ...env } });
  running.push(server);
  return new Promise<{ server: ChildProcess; said: string; port: number }>((resolve) => {
    let said = "";
    const listen = (chunk: Buffer) => {
      said += chunk;
      const port = /(?:127\.0\.0\.1|localhost):(\d+)/.exec(said);
      if (port) resolve({ server, said, port: Number(port[1]) });
    };
    server.stdout.on("data", listen);
    server.stderr.on("data", listen);
    server.on("close", () => resolve({ server, said, port: 0 }));
  });
}

/** As raw as can be: fetch would tidy the path first. */
function get(port: number, address: string, headers: Record<string, string> = {}, method = "GET") {
  return new Promise<{ status: number; headers: IncomingMessage["headers"]; text: string }>((resolve, reject) => {
    request({ host: "127.0.0.1", port, path: address, method, headers }, (response) => {
      let text = "";
      response.on("data", (chunk) => (text += chunk));
      response.on("end", () => resolve({ status: response.statusCode!, headers: response.headers, text }));
    })
      .on("error", reject)
      .end();
  });
}

describe("serving", () => {
  let port: number;
  beforeAll(async () => ({ port } = await start({ PORT: "0" })));

  test.each([
    ["/", "text/html; charset=utf-8"],
    ["/index.html?blankAs=0", "text/html; charset=utf-8"],
    ["/functions.js", "text/javascript; charset=utf-8"],
    ["/vendor/LICENSE", "text/plain; charset=utf-8"],
  ])("%s is %s, with a policy of own files only", async (address, type) => {
    const answer = await get(port, address);
    expect(answer.status).toBe(200);
    expect(answer.headers["content-type"]).toBe(type);
    expect(answer.headers["content-security-policy"]).toContain("default-src 'self'; script-src 'self' 'unsafe-eval'");
    expect(answer.headers["content-security-policy"]).not.toMatch(/https?:|\*/);
  });

  test.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/vendor/../../secret.txt",
    "/../dist-beside/secret.txt",
    "/..%5csecret.txt",
    "//etc/passwd",
    "/%00",
    "/%zz",
    "/vendor",
    "/nothing.js",
  ])("%s leads nowhere", async (address) => {
    const answer = await get(port, address);
    expect(answer.status).toBe(404);
    expect(answer.text).not.toContain("secret");
  });

  test("only reads, and answers to this machine's name only", async () => {
    expect((await get(port, "/", {}, "POST")).status).toBe(405);
    expect((await get(port, "/", {}, "HEAD")).text).toBe("");
    expect((await get(port, "/", { host: `elsewhere.example:${port}` })).status).toBe(403);
    expect((await get(port, "/", { host: `localhost:${port}` })).status).toBe(200);
  });
});

test("a busy port is said, and another taken; Ctrl-C ends it cleanly", async () => {
  const other = createServer().listen(0, "127.0.0.1");
  await new Promise((resolve) => other.once("listening", resolve));
  const busy = (other.address() as AddressInfo).port;
  const { server, said, port } = await start({ PORT: String(busy) });
  expect(said).toContain(`Port ${busy} is busy`);
  expect(port).not.toBe(busy);
  expect(said).toContain(`http://127.0.0.1:${port}/`);
  expect((await get(port, "/")).status).toBe(200);
  const ended = new Promise((resolve) => server.once("exit", (code, signal) => resolve({ code, signal })));
  server.kill("SIGINT");
  expect(await ended).toEqual({ code: 0, signal: null });
  other.close();
});

test.each([
  [{ PORT: "none" }, undefined, /give a port number/],
  [{ PORT: "0" }, "/nowhere/at/all", /run "npm run build" first/],
])("what cannot start says why", async (env, from, sentence) => {
  const { said, server } = await start(env, from);
  expect(said).toMatch(sentence);
  expect(server.exitCode).toBe(1);
});

describe("for Excel", () => {
  const [authority, certificate, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((file) =>
    path.join(outside, file),
  );
  beforeAll(async () => {
    jest.spyOn(console, "log").mockImplementation(() => undefined);
    await generateCertificates(authority, certificate, key);
  });

  const secureGet = (port: number, address: string) =>
    new Promise<IncomingMessage>((resolve, reject) => {
      secureRequest({ host: "localhost", port, path: address, ca: readFileSync(authority) })
        .on("response", resolve)
        .on("error", reject)
        .end();
    });

  test("https with the certificate given, open to Excel's origin, without a policy that shuts Excel's library out", async () => {
    const { port, said } = await start({ PORT: "0" }, folder, certificate, key);
    expect(said).toContain(`https://localhost:${port}/`);
    const { statusCode, headers } = await secureGet(port, "/functions.js");
    expect([statusCode, headers["access-control-allow-origin"]]).toEqual([200, "*"]);
    expect(headers["content-security-policy"]).toBeUndefined();
    const elsewhere = await start({ PORT: String(port) }, folder, certificate, key);
    expect(elsewhere.said).toMatch(/busy, and the manifest names it/);
    expect(elsewhere.server.exitCode).toBe(1);
  });
});
