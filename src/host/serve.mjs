/**
 * Serves dist on this machine only (127.0.0.1). PORT sets the port; a busy one is said so and the next free one is taken.
 * For Excel, https with a certificate: Excel knows the address from the manifest, so a busy port ends the server.
 * Usage: node src/host/serve.mjs [folder] [certificate key]
 */
import { createReadStream, readFileSync } from "node:fs";
import { stat } from "node:fs/promises";
import { createServer } from "node:http";
import { createServer as createSecureServer } from "node:https";
import path from "node:path";
import { fileURLToPath } from "node:url";

const HOST = "127.0.0.1";
const [, , given, certificate, key] = process.argv;
const forExcel = certificate !== undefined;
const DEFAULT_PORT = forExcel ? 3000 : 3210;
const folder = path.resolve(given ?? fileURLToPath(new URL("../../dist", import.meta.url)));

const TYPES = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".xml": "text/xml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  "": "text/plain; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
  ".otf": "font/otf",
  ".eot": "application/vnd.ms-fontobject",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

/** Own files only. The embedded sheet compiles its templates and formulas, hence 'unsafe-eval'. */
const OWN_FILES_ONLY = {
  "Content-Security-Policy": [
    "default-src 'self'",
    "script-src 'self' 'unsafe-eval'",
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'self'",
  ].join("; "),
};

/** Excel frames the pane, loads its own library into it, and on the web reads the functions from another origin. */
const FOR_EXCEL = { "Access-Control-Allow-Origin": "*" };

const HEADERS = {
  ...(forExcel ? FOR_EXCEL : OWN_FILES_ONLY),
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cache-Control": "no-cache",
};

function refuse(response, status, sentence) {
  response.writeHead(status, { ...HEADERS, "Content-Type": "text/plain; charset=utf-8" });
  response.end(`${sentence}\n`);
}

/** The file that an address names, or undefined where it leads out of the folder. */
function fileOf(address) {
  let wanted;
  try {
    wanted = decodeURIComponent(address.split(/[?#]/, 1)[0]);
  } catch {
    return undefined;
  }
  if (wanted.includes("\0") || wanted.includes("\\")) return undefined;
  const file = path.join(folder, wanted.endsWith("/") ? `${wanted}index.html` : wanted);
  return file.startsWith(folder + path.sep) ? file : undefined;
}

const answer = async (request, response) => {
  // A page elsewhere that gives its own name this machine's address must not read what is served here.
  const name = request.headers.host?.replace(/:\d+$/, "");
  if (name !== HOST && name !== "localhost") return refuse(response, 403, "This server answers to this machine only.");
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(response, 405, "Only GET and HEAD.");
  const file = fileOf(request.url ?? "/");
  const found = file && (await stat(file).catch(() => undefined));
  if (!found?.isFile()) return refuse(response, 404, "There is no such file here.");
  const type = TYPES[path.extname(file).toLowerCase()] ?? "application/octet-stream";
  response.writeHead(200, { ...HEADERS, "Content-Type": type, "Content-Length": found.size });
  if (request.method === "HEAD") return response.end();
  createReadStream(file)
    .on("error", () => response.destroy())
    .pipe(response);
};

const server = forExcel
  ? createSecureServer({ cert: readFileSync(certificate), key: readFileSync(key) }, answer)
  : createServer(answer);

const asked = Number(process.env.PORT || DEFAULT_PORT);
if (!Number.isInteger(asked) || asked < 0 || asked > 65535) {
  console.error(`PORT is "${process.env.PORT}": give a port number from 1 to 65535.`);
  process.exit(1);
}
if (!(await stat(path.join(folder, "index.html")).catch(() => undefined))) {
  console.error(`There is nothing to serve in ${folder}: run "npm run build" first, or "npm start", which does both.`);
  process.exit(1);
}

let port = asked;
server.on("error", (error) => {
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
