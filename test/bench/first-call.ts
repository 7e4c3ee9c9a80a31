/**
 * Prints the milliseconds that the first calls of a process take: 50,000 readings by the three methods of
 * dist/functions.js, cells included.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { runInThisContext } from "node:vm";
import { loggerColumns } from "./made";

const functions = new Map<string, (...cells: unknown[]) => unknown>();
const associate = (name: string, fn: (...cells: unknown[]) => unknown) => functions.set(name, fn);
Object.assign(globalThis, { CustomFunctions: { associate } });
runInThisContext(readFileSync(join(__dirname, "../../dist/functions.js"), "utf8"));

const [times, readings] = loggerColumns(50_000);
const start = performance.now();
for (const method of ["LOG_TIME", "ROOT_TIME", "FIT_TIME"]) functions.get(method)?.(times, readings, 20);
console.log(performance.now() - start);
