/** What the files of one run of the tests share: made by the first file that asks, and gone after the run. */
import { createHash } from "node:crypto";
import { existsSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { deserialize, serialize } from "node:v8";

const FOLDER = "CLAYLEDGER_RUN_FOLDER";

/** Makes the folder of this run; called before the first test file. */
export function makeRunFolder(): void {
  process.env[FOLDER] ??= mkdtempSync(path.join(tmpdir(), "clayledger-tests-"));
}

/** Removes the folder of this run; called after the last test file. */
export function removeRunFolder(): void {
  const folder = process.env[FOLDER];
  if (folder) rmSync(folder, { recursive: true, force: true });
  Reflect.deleteProperty(process.env, FOLDER);
}

/**
 * What is made `of` some data, once per run; `what` is a part of a file name. Both are plain data, and every caller gets
 * a copy of its own. Two files that ask at the same time both make it.
 */
export async function oncePerRun<T>(what: string, of: unknown, make: () => T | Promise<T>): Promise<T> {
  const folder = process.env[FOLDER];
  if (!folder) throw new Error("the tests were started without test/setup.ts, which makes the folder of the run");
  const key = createHash("sha256").update(serialize(of)).digest("hex");
  const file = path.join(folder, `${what}-${key}`);
  // The file holds what an equal call has written.
  if (existsSync(file)) return deserialize(readFileSync(file)) as T;
  const bytes = serialize(await make());
  // Another process never sees half a file.
  writeFileSync(`${file}.${process.pid}`, bytes);
  renameSync(`${file}.${process.pid}`, file);
  return deserialize(bytes) as T;
}
