/**
 * Reads a logger's file of as many lines as the argument says, and finds its loads. Prints, as JSON, the milliseconds
 * of the processor and the most memory that the process held, in MB.
 */
import { decode } from "../../src/exchange/logger/decode";
import type { Layout } from "../../src/exchange/logger/layout";
import { findLoads } from "../../src/exchange/logger/loads";
import { readRows } from "../../src/exchange/logger/rows";
import { atOnce } from "../../src/workbook/in-slices";
import { LOADS_OF_LOGGER, loggerLines } from "./made";

const count = Number(process.argv[2]);

const layout: Layout = {
  ...{ delimiter: ";", decimal: ".", firstLine: 2, time: 0, timeForm: "s", date: null, dateOrder: "ymd" },
  ...{ timesRun: "test", reading: 2, readingUnit: "mm", sense: "rise", load: 1, loadKind: "stress" },
  ...{ loadUnit: "kPa", lever: 1, noReading: [] },
};

const bytes = new TextEncoder().encode(loggerLines(count));

const before = process.cpuUsage();
const file = decode(bytes);
if (!file.ok) throw new Error("the lines were refused");
const rows = atOnce(readRows(file.value, layout));
const loads = findLoads(rows, layout, "load");
if (loads.length !== LOADS_OF_LOGGER) throw new Error(`${loads.length} loads were found`);
const { user, system } = process.cpuUsage(before);
console.log(JSON.stringify({ ms: (user + system) / 1000, mb: process.resourceUsage().maxRSS / 1024 }));
