/**
 * Answers the requests to the server of `npm start`: with a file of one folder, in whole or in part, or with a refusal.
 */
import { constants } from "node:fs";
import { lstat, open, realpath } from "node:fs/promises";
import path from "node:path";
import { pipeline } from "node:stream/promises";

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
  ".woff2": "font/woff2",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
};

const ALWAYS = {
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
};

/**
 * A browser asks for each file again. The pictures for Excel go without this header: Office keeps the pictures of the ribbon, and shows
 * a picture of its own in place of one that comes with any Cache-Control (Microsoft, manifest reference, "Image element").
 */
const cachingOf = (type, forExcel) => (forExcel && type.startsWith("image/") ? {} : { "Cache-Control": "no-cache" });

/** No page of another origin may frame or load the files served here. */
const FOR_THIS_PAGE = { "Cross-Origin-Resource-Policy": "same-origin", "Cross-Origin-Opener-Policy": "same-origin" };

/** Excel frames the pane, and Excel on the web reads the functions from its own origin. */
const FOR_EXCEL = { "Access-Control-Allow-Origin": "*" };

/** The policy in each page says what the page may load and run, on every server. */
const policyOf = (type, forExcel) =>
  [
    ...(type.startsWith("text/html")
      ? ["object-src 'none'", "base-uri 'none'", "form-action 'none'"]
      : ["default-src 'none'"]),
    ...(forExcel ? [] : ["frame-ancestors 'self'"]),
  ].join("; ");

/**
 * The path below `folder` for an address; undefined if the address names no file, leads out of the folder, or has a
 * part that begins with a dot. A colon or a backslash has another meaning on Windows.
 */
export function pathOf(folder, address) {
  let wanted;
  try {
    wanted = decodeURIComponent(address.split(/[?#]/, 1)[0]);
  } catch {
    return undefined;
  }
  if (!wanted.startsWith("/") || /[\0\\:]/.test(wanted)) return undefined;
  const parts = (wanted.endsWith("/") ? `${wanted}index.html` : wanted).split("/");
  return parts.some((part) => part.startsWith(".")) ? undefined : path.join(folder, ...parts);
}

/**
 * The bytes that a Range header asks for, of a file of `size` bytes: { start, end }, both included; "none" if the file
 * has no such bytes; undefined if the whole file is the answer: without the header, and for several ranges, which this
 * server does not support.
 */
export function rangeOf(header, size) {
  const asked = /^bytes=(\d*)-(\d*)$/.exec(header?.trim() ?? "");
  if (!asked || (asked[1] === "" && asked[2] === "")) return undefined;
  const [first, last] = asked.slice(1).map((digits) => (digits === "" ? undefined : Number(digits)));
  if (first === undefined)
    return last === 0 || size === 0 ? "none" : { start: Math.max(0, size - last), end: size - 1 };
  if (last !== undefined && last < first) return undefined;
  return first >= size ? "none" : { start: first, end: Math.min(last ?? size - 1, size - 1) };
}

/** The mark (ETag) of a version of a file: its size, and the time of its last change in microseconds. */
const versionOf = ({ size, mtimeMs }) => `"${size.toString(36)}-${Math.round(mtimeMs * 1000).toString(36)}"`;

/** Whether an If-None-Match header names this version; a proxy may have put W/ before the mark. */
const isNamed = (header, version) =>
  header?.split(",").some((mark) => mark.trim() === "*" || mark.trim().replace(/^W\//, "") === version) ?? false;

/** Opens a plain file. Undefined if it does not exist, or if the file or a folder on its path is a symbolic link. */
async function openPlain(file) {
  try {
    if (!(await lstat(file)).isFile() || (await realpath(file)) !== file) return undefined;
    return await open(file, constants.O_RDONLY | (constants.O_NOFOLLOW ?? 0));
  } catch (error) {
    if (["ENOENT", "ENOTDIR", "ELOOP", "EACCES", "ENAMETOOLONG"].includes(error.code)) return undefined;
    throw error;
  }
}

/**
 * The listener of a server that serves the plain files of `folder` (a real path) to this machine. `names` are the names
 * of this machine, without the port, that a request may use.
 */
export function answerFrom(folder, { names, forExcel }) {
  const headers = (type) => ({
    ...ALWAYS,
    ...cachingOf(type, forExcel),
    ...(forExcel ? FOR_EXCEL : FOR_THIS_PAGE),
    "Content-Type": type,
    "Content-Security-Policy": policyOf(type, forExcel),
  });

  const refuse = (response, status, sentence, more = {}) => {
    response.writeHead(status, { ...headers(TYPES[".txt"]), ...more });
    response.end(`${sentence}\n`);
  };

  async function answer(request, response) {
    // A page of another site could give its own host name the address of this machine: it must not read the files
    // served here.
    const name = request.headers.host?.replace(/:\d+$/, "").toLowerCase();
    if (!names.includes(name)) return refuse(response, 403, "This server answers to this machine only.");
    if (request.method !== "GET" && request.method !== "HEAD")
      return refuse(response, 405, "Only GET and HEAD.", { Allow: "GET, HEAD" });
    const file = pathOf(folder, request.url ?? "/");
    const opened = file && (await openPlain(file));
    if (!opened) return refuse(response, 404, "There is no such file here.");
    try {
      const stat = await opened.stat();
      const { size } = stat;
      const version = versionOf(stat);
      const type = TYPES[path.extname(file).toLowerCase()] ?? "application/octet-stream";
      if (isNamed(request.headers["if-none-match"], version)) {
        response.writeHead(304, { ...headers(type), ETag: version });
        return response.end();
      }
      // A part of another version than the reader has would not fit to it: then the whole file is the answer.
      const isPartial = request.method === "GET" && (request.headers["if-range"] ?? version) === version;
      const range = isPartial ? rangeOf(request.headers.range, size) : undefined;
      if (range === "none")
        return refuse(response, 416, `The file has ${size} bytes.`, { "Content-Range": `bytes */${size}` });
      const { start, end } = range ?? { start: 0, end: size - 1 };
      response.writeHead(range ? 206 : 200, {
        ...headers(type),
        ETag: version,
        "Accept-Ranges": "bytes",
        "Content-Length": end - start + 1,
        ...(range && { "Content-Range": `bytes ${start}-${end}/${size}` }),
      });
      if (request.method === "HEAD" || size === 0) return response.end();
      // The pipeline also closes the file if the reader disconnects in the middle.
      await pipeline(opened.createReadStream({ start, end }), response);
    } finally {
      await opened.close().catch(() => undefined);
    }
  }

  return (request, response) =>
    answer(request, response).catch(() => {
      if (response.headersSent) response.destroy();
      else refuse(response, 503, "The file could not be read. Try again.");
    });
}
