import { execFileSync, spawn, type ChildProcess } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { Agent, createServer, request, type IncomingMessage } from "node:http";
import { request as secureRequest } from "node:https";
import { connect, type AddressInfo, type Socket } from "node:net";
import { networkInterfaces, tmpdir } from "node:os";
import path from "node:path";
import { generateCertificates } from "office-addin-dev-certs";

const PROGRAM = path.join(__dirname, "../../src/host/serve.mjs");
const outside = realpathSync(mkdtempSync(path.join(tmpdir(), "clayledger-serve-")));
const folder = path.join(outside, "dist");
const running: ChildProcess[] = [];
/** More bytes than the system buffers between two programs. */
const LARGE = 20_000_000;

/** Waits until a condition holds; the time limit of the test ends it. */
async function until(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise((resolve) => setTimeout(resolve, 20));
}

beforeAll(() => {
  mkdirSync(path.join(folder, "vendor"), { recursive: true });
  mkdirSync(`${folder}-beside`);
  writeFileSync(path.join(outside, "secret.txt"), "secret");
  writeFileSync(path.join(`${folder}-beside`, "secret.txt"), "secret");
  writeFileSync(path.join(folder, "index.html"), "<p>page</p>");
  writeFileSync(path.join(folder, "functions.js"), "0123456789");
  writeFileSync(path.join(folder, "vendor/LICENSE"), "licence");
  writeFileSync(path.join(folder, "icon-32.png"), "picture");
  writeFileSync(path.join(folder, "empty.txt"), "");
  writeFileSync(path.join(folder, "large.bin"), Buffer.alloc(LARGE));
  writeFileSync(path.join(folder, ".secret.txt"), "secret");
  mkdirSync(path.join(folder, ".git"));
  writeFileSync(path.join(folder, ".git/secret.txt"), "secret");
  if (process.platform === "win32") return;
  symlinkSync(path.join(outside, "secret.txt"), path.join(folder, "link.txt"));
  symlinkSync(`${folder}-beside`, path.join(folder, "linked"));
  symlinkSync(path.join(folder, "functions.js"), path.join(folder, "within.txt"));
  execFileSync("mkfifo", [path.join(folder, "pipe")]);
});

afterAll(() => {
  running.forEach((server) => server.kill());
  rmSync(outside, { recursive: true });
});

/** Starts the server; returns its output up to the printed address or its end. */
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

/** Sends the address unchanged: fetch would normalize the path first. */
function get(port: number, address: string, headers: Record<string, string> = {}, method = "GET", agent?: Agent) {
  return new Promise<{ status: number; headers: IncomingMessage["headers"]; text: string }>((resolve, reject) => {
    request({ host: "127.0.0.1", port, path: address, method, headers, agent }, (response) => {
      let text = "";
      response.on("data", (chunk) => (text += chunk));
      response.on("end", () => resolve({ status: response.statusCode!, headers: response.headers, text }));
    })
      .on("error", reject)
      .end();
  });
}

/** How many files of the folder the server has open, as Linux lists them; none on other systems. */
function openFiles({ pid }: ChildProcess): number {
  const listed = `/proc/${pid}/fd`;
  if (!existsSync(listed)) return 0;
  const file = (descriptor: string): string => {
    try {
      return readlinkSync(path.join(listed, descriptor));
    } catch {
      return "closed meanwhile";
    }
  };
  return readdirSync(listed).filter((descriptor) => file(descriptor).startsWith(folder)).length;
}

describe("serving", () => {
  let port: number;
  let server: ChildProcess;
  beforeAll(async () => ({ port, server } = await start({ PORT: "0" })));

  test.each([
    ["/", "text/html; charset=utf-8", /object-src 'none'; .*frame-ancestors 'self'/],
    ["/index.html?blankAs=0", "text/html; charset=utf-8", /base-uri 'none'/],
    ["/functions.js", "text/javascript; charset=utf-8", /^default-src 'none'/],
    ["/vendor/LICENSE", "text/plain; charset=utf-8", /^default-src 'none'/],
  ])("%s is %s, and no page of another site may frame or load it", async (address, type, policy) => {
    const answer = await get(port, address);
    expect(answer.status).toBe(200);
    expect(answer.headers["content-type"]).toBe(type);
    expect(answer.headers["content-security-policy"]).toMatch(policy);
    expect(answer.headers["cross-origin-resource-policy"]).toBe("same-origin");
    expect(answer.headers["x-content-type-options"]).toBe("nosniff");
  });

  test.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/vendor/../../secret.txt",
    "/../dist-beside/secret.txt",
    "/..%5csecret.txt",
    "//etc/passwd",
    "http://127.0.0.1/index.html",
    "/index.html::$DATA",
    "/%00",
    "/%zz",
    "/vendor",
    "/vendor/LICENSE/",
    "/nothing.js",
    "/.secret.txt",
    "/.git/secret.txt",
    "/%2esecret.txt",
    "/link.txt",
    "/linked/secret.txt",
    "/within.txt",
    "/pipe",
  ])("%s is not found", async (address) => {
    const answer = await get(port, address);
    expect(answer.status).toBe(404);
    expect(answer.text).not.toContain("secret");
  });

  test("a name longer than any file name is not found", async () => {
    expect((await get(port, `/${"a".repeat(5000)}`)).status).toBe(404);
  });

  test("only reads, and answers only to the name of this machine", async () => {
    for (const method of ["POST", "PUT", "DELETE", "OPTIONS"])
      expect((await get(port, "/", {}, method)).status).toBe(405);
    for (const host of [
      `elsewhere.example:${port}`,
      "127.0.0.1.elsewhere.example",
      "localhost.elsewhere.example",
      "[::1]",
    ])
      expect([host, (await get(port, "/", { host })).status]).toEqual([host, 403]);
    for (const host of [`localhost:${port}`, "127.0.0.1", "LOCALHOST"])
      expect([host, (await get(port, "/", { host })).status]).toEqual([host, 200]);
  });

  test("listens at 127.0.0.1 and at no other address of this machine", async () => {
    const others = Object.values(networkInterfaces()).flatMap((all) => all ?? []);
    for (const { address, scopeid } of others) {
      if (address === "127.0.0.1") continue;
      const reached = await new Promise((resolve) => {
        const socket = connect({ host: scopeid ? `${address}%${scopeid}` : address, port })
          .on("connect", () => resolve(true))
          .on("error", () => resolve(false));
        socket.setTimeout(2000, () => resolve(false));
      });
      expect([address, reached]).toEqual([address, false]);
    }
  });

  test("HEAD gives the headers of GET, without the file", async () => {
    const [whole, head] = [await get(port, "/functions.js"), await get(port, "/functions.js", {}, "HEAD")];
    const withoutDate = ({ headers }: typeof whole) => ({ ...headers, date: "" });
    expect([head.status, head.text, withoutDate(head)]).toEqual([200, "", withoutDate(whole)]);
    expect(head.headers["content-length"]).toBe("10");
  });

  test.each<[string, number, string, string | undefined]>([
    ["bytes=0-3", 206, "0123", "bytes 0-3/10"],
    ["bytes=7-", 206, "789", "bytes 7-9/10"],
    ["bytes=-2", 206, "89", "bytes 8-9/10"],
    ["bytes=-99", 206, "0123456789", "bytes 0-9/10"],
    ["bytes=8-99", 206, "89", "bytes 8-9/10"],
    ["bytes=10-", 416, "The file has 10 bytes.\n", "bytes */10"],
    ["bytes=-0", 416, "The file has 10 bytes.\n", "bytes */10"],
    ["bytes=5-2", 200, "0123456789", undefined],
    ["bytes=0-1,4-5", 200, "0123456789", undefined],
    ["lines=0-1", 200, "0123456789", undefined],
    ["bytes=-", 200, "0123456789", undefined],
  ])("of the ten bytes 0123456789, %s answers %i", async (range, status, text, told) => {
    const answer = await get(port, "/functions.js", { range });
    expect([answer.status, answer.text, answer.headers["content-range"]]).toEqual([status, text, told]);
  });

  test("a file that the reader has is not sent again, and is sent when it has changed", async () => {
    const file = path.join(folder, "changing.js");
    writeFileSync(file, "first");
    const { etag } = (await get(port, "/changing.js")).headers;
    const again = await get(port, "/changing.js", { "if-none-match": `"other", W/${etag}` });
    expect([again.status, again.text, again.headers.etag]).toEqual([304, "", etag]);
    expect(again.headers["content-security-policy"]).toMatch(/^default-src 'none'/);
    expect((await get(port, "/changing.js", { "if-none-match": '"other"' })).status).toBe(200);
    writeFileSync(file, "second");
    const changed = await get(port, "/changing.js", { "if-none-match": etag! });
    expect([changed.status, changed.text]).toEqual([200, "second"]);
  });

  test("a range of the version that the reader has is sent; of another version, the whole file", async () => {
    const { etag } = (await get(port, "/functions.js")).headers;
    const part = (mark: string) => get(port, "/functions.js", { range: "bytes=0-3", "if-range": mark });
    expect(await part(etag!)).toMatchObject({ status: 206, text: "0123" });
    expect(await part('"other"')).toMatchObject({ status: 200, text: "0123456789" });
  });

  test("a file without a byte is served, whole and by range", async () => {
    expect(await get(port, "/empty.txt")).toMatchObject({ status: 200, text: "" });
    expect(await get(port, "/empty.txt", { range: "bytes=0-" })).toMatchObject({ status: 416 });
  });

  test("10,000 requests are answered, and leave no file open", async () => {
    const agent = new Agent({ keepAlive: true, maxSockets: 20 });
    let answered = 0;
    const asker = async () => {
      for (let turn = 0; turn < 500; turn++)
        if ((await get(port, "/functions.js", {}, "GET", agent)).text === "0123456789") answered++;
    };
    await Promise.all(Array.from({ length: 20 }, asker));
    agent.destroy();
    expect(answered).toBe(10_000);
    await until(() => openFiles(server) === 0);
  });

  /** Connections that ask for the large file and read only its beginning. */
  const stalled = (count: number) =>
    Promise.all(
      Array.from(
        { length: count },
        () =>
          new Promise<Socket>((resolve) => {
            const socket = connect(port, "127.0.0.1").on("error", () => undefined);
            socket.write("GET /large.bin HTTP/1.1\r\nHost: localhost\r\n\r\n");
            socket.once("data", () => resolve(socket.pause()));
          }),
      ),
    );

  test("220 interrupted downloads leave no file open", async () => {
    for (let round = 0; round < 4; round++) for (const socket of await stalled(55)) socket.destroy();
    await until(() => openFiles(server) === 0);
    expect((await get(port, "/functions.js")).text).toBe("0123456789");
  });

  test("readers that stop in the middle do not stop other readers, and get the rest when they read on", async () => {
    const slow = await stalled(60);
    if (existsSync("/proc")) expect(openFiles(server)).toBe(60);
    expect((await get(port, "/functions.js")).text).toBe("0123456789");
    const [reader] = slow;
    let received = 0;
    reader.on("data", (chunk) => (received += chunk.length)).resume();
    await until(() => received > LARGE - 100_000);
    slow.forEach((socket) => socket.destroy());
  });
});

test("Ctrl-C ends the server in the middle of a download", async () => {
  const { server, port } = await start({ PORT: "0" });
  const socket = connect(port, "127.0.0.1").on("error", () => undefined);
  socket.write("GET /large.bin HTTP/1.1\r\nHost: localhost\r\n\r\n");
  await new Promise((resolve) => socket.once("data", () => resolve(socket.pause())));
  const ended = new Promise((resolve) => server.once("exit", (code, signal) => resolve({ code, signal })));
  server.kill("SIGINT");
  expect(await ended).toEqual({ code: 0, signal: null });
  socket.destroy();
});

test("if a port is busy, the server says so and takes another; Ctrl-C ends it cleanly", async () => {
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
])("a server that cannot start says why", async (env, from, sentence) => {
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

  test("serves https with the certificate given, open to the origin of Excel, and Excel may frame it", async () => {
    const { port, said } = await start({ PORT: "0" }, folder, certificate, key);
    expect(said).toContain(`https://localhost:${port}/`);
    const { statusCode, headers } = await secureGet(port, "/functions.js");
    expect([statusCode, headers["access-control-allow-origin"]]).toEqual([200, "*"]);
    expect(headers["cross-origin-resource-policy"]).toBeUndefined();
    const page = await secureGet(port, "/index.html");
    expect(page.headers["content-security-policy"]).toBe("object-src 'none'; base-uri 'none'; form-action 'none'");
    // Office shows no picture of the ribbon that comes with this header.
    const caching = async (address: string) => (await secureGet(port, address)).headers["cache-control"];
    expect([await caching("/icon-32.png"), await caching("/functions.js")]).toEqual([undefined, "no-cache"]);
    const elsewhere = await start({ PORT: String(port) }, folder, certificate, key);
    expect(elsewhere.said).toMatch(/busy, and the manifest names it/);
    expect(elsewhere.server.exitCode).toBe(1);
  });
});
