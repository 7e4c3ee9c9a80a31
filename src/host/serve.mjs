/**
 * Serves dist on this machine only (127.0.0.1). PORT sets the port; if it is busy, the server says so and takes the
 * next free port. For Excel, it serves https with a certificate: Excel knows the address from the manifest, so a busy
 * port ends the server. Usage: node src/host/serve.mjs [folder] [certificate key]
 */
import { readFileSync } from "node:fs";
import { realpath, stat } from "node:fs/promises";
import { createServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { answerFrom } from "./answer.mjs";

const HOST = "127.0.0.1";
const [, , given, certificate, key] = process.argv;
const forExcel = certificate !== undefined;
const DEFAULT_PORT = forExcel ? 3000 : 3210;
/**
 * A browser opens six connections to one server. With one open file each, this many stay below the 256 files that a
 * system may allow.
 */
const MOST_CONNECTIONS = 100;
/** After this many ms without a byte read or written a connection is ended: a stalled reader makes room for others. */
const IDLE = 60_000;

const asked = Number(process.env.PORT || DEFAULT_PORT);
if (!Number.isInteger(asked) || asked < 0 || asked > 65535) {
  console.error(`PORT is "${process.env.PORT}": give a port number from 1 to 65535.`);
  process.exit(1);
}
const folder = path.resolve(given ?? fileURLToPath(new URL("../../dist", import.meta.url)));
if (!(await stat(path.join(folder, "index.html")).catch(() => undefined))) {
  console.error(`There is nothing to serve in ${folder}: run "npm run build" first, or "npm start", which does both.`);
  process.exit(1);
}

const answer = answerFrom(await realpath(folder), { names: [HOST, "localhost"], forExcel });
const server = forExcel
  ? createSecureServer({ cert: readFileSync(certificate), key: readFileSync(key) }, answer)
  : createServer(answer);
server.maxConnections = MOST_CONNECTIONS;
server.timeout = IDLE;

let port = asked;
server.on("error", (error) => {
  // A connection that could not be accepted does not end the server.
  if (error.syscall === "accept") return;
  if (error.code !== "EADDRINUSE" && error.code !== "EACCES") throw error;
  if (forExcel) {
    console.error(`Port ${port} is busy, and the manifest names it: end what uses it, and start again.`);
    process.exit(1);
  }
  const next = port >= 65535 || port - asked >= 20 ? 0 : Math.max(port + 1, 1024);
  console.log(
    `Port ${port} is ${error.code === "EACCES" ? "not allowed" : "busy"}: trying ${next === 0 ? "any free port" : next}.`,
  );
  port = next;
  server.listen(port, HOST);
});
server.on("listening", () => {
  const at = forExcel ? `https://localhost:${server.address().port}/` : `http://${HOST}:${server.address().port}/`;
  console.log(`Clayledger is at ${at} (Ctrl-C ends it)`);
});
server.listen(port, HOST);

for (const signal of ["SIGINT", "SIGTERM"])
  process.on(signal, () => {
    server.close(() => process.exit(0));
    server.closeAllConnections();
  });
