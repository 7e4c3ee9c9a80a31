/** What the files of one run of the tests share: made by the first file that asks, and gone after the run. */
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
 * The value of a name (a file name), made once per run. The value is plain data; every caller gets a copy of its own. Two
 * files that ask at the same time both make it.
 */
export async function oncePerRun<T>(name: string, make: () => T | Promise<T>): Promise<T> {
  const folder = process.env[FOLDER];
  if (!folder) throw new Error("the tests were started without test/setup.ts, which makes the folder of the run");
  const file = path.join(folder, name);
  // The file holds what a call with the same name has written.
  if (existsSync(file)) return deserialize(readFileSync(file)) as T;
  const bytes = serialize(await make());
  // Another process never sees half a file.
  writeFileSync(`${file}.${process.pid}`, bytes);
  renameSync(`${file}.${process.pid}`, file);
  return deserialize(bytes) as T;
}
