/** Prints the milliseconds that the first calls of a process take: 50,000 readings by the three methods, cells included. */
import { FIT_TIME, LOG_TIME, ROOT_TIME } from "../../src/functions/increment";
import { loggerColumns } from "./made";

const [times, readings] = loggerColumns(50_000);
const start = performance.now();
for (const method of [LOG_TIME, ROOT_TIME, FIT_TIME]) method(times, readings, 20);
console.log(performance.now() - start);
