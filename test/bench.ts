/**
 * `npm run bench`: how long the program takes and how large it is, as JSON on standard output.
 *
 * Each row has the measured value, its goal, and the ratio of the two: above 1 is too slow or too large. `before` is
 * the value when the goal was set. Times are medians, so that a pause elsewhere does not count; a computation gets
 * other data in each run, so that no cache answers.
 *
 * Rows of dist need `npm run build` first; without it they say so. `npm run bench -- --build` also measures the build,
 * which makes dist again. `npm run bench -- --browser` measures only the memory of the page, for some minutes, and
 * `npm run bench -- --actions` only what each action on a workbook of 1, 10 and 40 data sheets costs.
 */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { PRECONSOLIDATION_SPREAD } from "../src/functions/curve";
import { FIT_TIME, LOG_TIME, ROOT_TIME } from "../src/functions/increment";
import { PROGRESS } from "../src/functions/progress";
import { preconsolidationSpread } from "../src/reduction/curve/preconsolidation";
import { testCurve } from "../src/reduction/curve/shape/points";
import { reduceIncrement } from "../src/reduction/increment/reduce";
import { column, curvesOf, loggerColumns } from "./bench/made";
import { makeCurve } from "./generators/compression-curves";

const root = path.join(__dirname, "..");
const dist = path.join(root, "dist");
const functionsFile = path.join(dist, "functions.js");

interface Row {
  readonly name: string;
  readonly unit: "ms" | "s" | "bytes" | "MB" | "times";
  readonly before?: number;
  readonly goal: number;
  /** Undefined if there is nothing to measure because dist is not built. */
  readonly measure: () => number | undefined;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? NaN;
}

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

/** Median time of the second half of the runs: in the first half the engine is still compiling. */
function warm(runs: number, make: () => (run: number) => unknown): () => number {
  return () => {
    const work = make();
    const times = Array.from({ length: runs }, (_, run) => timed(() => work(run)));
    return median(times.slice(runs >> 1));
  };
}

const node = (args: readonly string[]) =>
  spawnSync(process.execPath, ["--import", "tsx", ...args], { cwd: root, encoding: "utf8" });

/** Median of the numbers that a script prints in five processes of its own. */
const cold = (script: string) => (): number =>
  median(Array.from({ length: 5 }, () => Number(node([path.join(__dirname, "bench", script)]).stdout)));

/** What tasks on the page cost, by name. It is measured once, and only if a row needs it. */
let onPage: Record<string, { readonly spent: number; readonly longest: number }> | undefined;
const waited = (name: string, of: "spent" | "longest") => (): number | undefined => {
  onPage ??= JSON.parse(node([path.join(__dirname, "bench/workbook.ts")]).stdout.trim() || "{}");
  return onPage?.[name]?.[of];
};

/** The rows for a task on the page: its processor time, and that of the longest part in which the page does not react. */
const page = (name: string, before: number | undefined, goal: number, still: number): Row[] => [
  { name: `${name}: processor time`, unit: "ms", before, goal, measure: waited(name, "spent") },
  { name: `${name}: page stands still`, unit: "ms", goal: still, measure: waited(name, "longest") },
];

/** Processor time of the page on a workbook of several data sheets, by their number; measured once. */
let ofProject: Record<string, Record<string, number>> | undefined;
const spent = (sheets: number, what: string) => (): number | undefined => {
  ofProject ??= JSON.parse(node([path.join(__dirname, "bench/project.ts")]).stdout.trim() || "{}");
  return ofProject?.[sheets]?.[what];
};

/** The rows for a task on 1, 10 and 40 data sheets; the goal holds for 40. */
const project = (what: string, goal: number): Row[] =>
  [1, 10, 40].map((sheets) => ({
    name: `${what}, ${sheets} data sheets: processor time`,
    unit: "ms",
    goal,
    measure: spent(sheets, what),
  }));

/** What reading a logger's file of so many lines costs: time of the processor, and memory of the process. */
const linesRead = (count: number): { readonly ms: number; readonly mb: number } =>
  JSON.parse(node([path.join(__dirname, "bench/logger-lines.ts"), String(count)]).stdout);
const MILLION = 1_000_000;

const ofDist = (measure: () => number) => () => (existsSync(functionsFile) ? measure() : undefined);

/** Seconds that a build takes. */
const built = (...args: string[]): number =>
  timed(() => {
    if (node(["src/host/build/build.ts", ...args]).status !== 0) throw new Error("the build failed");
  }) / 1000;

/** Enough runs for the engine to have compiled the code before the second half begins. */
const WHOLE_TESTS = 200;

const ROWS: readonly Row[] = [
  {
    name: "whole test: 12 loads of 14 readings by three methods, and the spread of preconsolidation stress; warm",
    unit: "ms",
    before: 60,
    goal: 20,
    measure: warm(WHOLE_TESTS, () => {
      const loads = curvesOf("dial of 0.0001 in", 12 * WHOLE_TESTS);
      const tests = Array.from({ length: WHOLE_TESTS }, (_, seed) => makeCurve("twelve points", seed));
      return (run) => {
        for (const { times, readings } of loads.slice(12 * run, 12 * run + 12)) reduceIncrement(times, readings);
        const made = tests[run];
        const test = made && testCurve(made.stresses, made.values, made.kind);
        if (test?.ok) preconsolidationSpread(test.value);
      };
    }),
  },
  {
    name: "50,000 readings by three methods, cells included; the first calls of a process",
    unit: "ms",
    before: 110,
    goal: 40,
    measure: ofDist(cold("first-call.ts")),
  },
  {
    name: "50,000 readings by three methods, cells included; warm",
    unit: "ms",
    goal: 40,
    measure: warm(25, () => {
      const [times, readings] = loggerColumns(50_000);
      return (run) => {
        readings[readings.length - 1] = [(run + 1) / 1000];
        return [LOG_TIME, ROOT_TIME, FIT_TIME].map((method) => method(times, readings, 20));
      };
    }),
  },
  {
    name: "another item of the same 50,000 readings",
    unit: "ms",
    goal: 10,
    measure: warm(50, () => {
      const [times, readings] = loggerColumns(50_000);
      LOG_TIME(times, readings, 20);
      return () => ROOT_TIME(times, readings, 20, "cv");
    }),
  },
  {
    name: "one increment of 14 readings by three methods",
    unit: "ms",
    goal: 2,
    measure: warm(400, () => {
      const curves = curvesOf("dial of 0.0001 in", 400);
      return (run) => {
        const curve = curves[run];
        if (curve) reduceIncrement(curve.times, curve.readings);
      };
    }),
  },
  {
    name: "PROGRESS of 14 readings, cells included",
    unit: "ms",
    goal: 5,
    measure: warm(200, () => {
      const curves = curvesOf("dial of 0.0001 in", 200);
      return (run) => PROGRESS(column(curves[run]?.times ?? []), column(curves[run]?.readings ?? []));
    }),
  },
  {
    name: "PROGRESS of 80 logger readings, cells included",
    unit: "ms",
    goal: 20,
    measure: warm(100, () => {
      const curves = curvesOf("logger of 0.001 mm", 100);
      return (run) => PROGRESS(column(curves[run]?.times ?? []), column(curves[run]?.readings ?? []));
    }),
  },
  {
    name: "preconsolidation stress of 12 points by every method, cells included",
    unit: "ms",
    goal: 5,
    measure: warm(200, () => {
      const tests = Array.from({ length: 200 }, (_, seed) => makeCurve("twelve points", seed));
      return (run) => {
        const test = tests[run];
        if (test) PRECONSOLIDATION_SPREAD(column(test.stresses), column(test.values), test.kind);
      };
    }),
  },
  {
    name: "a logger's file of 1,000,000 lines: time per line over that of 100,000 lines",
    unit: "times",
    goal: 1.3,
    measure: () => linesRead(MILLION).ms / linesRead(MILLION / 10).ms / 10,
  },
  { name: "a logger's file of 1,000,000 lines: memory", unit: "MB", goal: 1500, measure: () => linesRead(MILLION).mb },
  {
    name: "functions.js",
    unit: "bytes",
    before: 435_000,
    goal: 230_000,
    measure: ofDist(() => readFileSync(functionsFile).length),
  },
  {
    name: "functions.js by gzip",
    unit: "bytes",
    before: 131_000,
    goal: 75_000,
    measure: ofDist(() => gzipSync(readFileSync(functionsFile), { level: 9 }).length),
  },
  { name: "start-up of functions.js", unit: "ms", before: 115, goal: 40, measure: ofDist(cold("start-up.ts")) },
  ...page("insert the demonstration", undefined, 1500, 1000),
  ...page("undo the insertion", undefined, 500, 500),
  ...page("redo the insertion", undefined, 1500, 1000),
  ...page("report", undefined, 2000, 1000),
  ...page("save two demonstrations with a report", undefined, 2000, 1000),
  ...page("open two demonstrations with a report", undefined, 2000, 1000),
  ...page("insert the file of two demonstrations with a report", undefined, 2000, 1000),
  ...page("keep 50,000 lines", undefined, 5000, 1000),
  ...page("save the same with 50,000 kept lines", undefined, 5000, 1000),
  ...page("open the same with 50,000 kept lines", undefined, 5000, 1000),
  ...project("changed reading", 500),
  ...project("changed reading: longest task", 200),
  ...project("summary", 2000),
  ...project("summary: longest task", 200),
  ...project("summary brought up to date", 2000),
];

/** Memory of the page in MB for a workbook of so many data sheets, or of one long test; measured once. */
let ofMemory: Record<string, Record<string, number>> | undefined;
const memory = (workbook: string, figure: string) => (): number | undefined => {
  ofMemory ??= JSON.parse(node([path.join(__dirname, "bench/memory.ts")]).stdout.trim() || "{}");
  return ofMemory?.[workbook]?.[figure];
};
const HELD = ["held at the start, MB", "held at the end, MB"] as const;
/** What the objects of the page hold for each data sheet. */
const heldBySheet = (sheets: number): number => {
  const [start, end] = HELD.map((figure) => memory(String(sheets), figure)() ?? NaN);
  return ((end ?? NaN) - (start ?? NaN)) / sheets;
};

/** What a person does with 40 data sheets, and needs most memory for. */
const HEAVY_STEPS: readonly string[] = [
  ...["make the workbook", "summary", "report", "AGS4 of all sheets", "save and open", "reports of all sheets"],
];

const BROWSER_ROWS: readonly Row[] = [
  ...["1", "10", "40", "long"].flatMap((workbook): Row[] => {
    const name = workbook === "long" ? "48 loads of 2,000 readings" : `${workbook} data sheets`;
    return [
      { name: `${name}: memory at most`, unit: "MB", goal: 1500, measure: memory(workbook, "process at most, MB") },
      { name: `${name}: held by objects at the end`, unit: "MB", goal: 700, measure: memory(workbook, HELD[1]) },
      { name: `${name}: make the workbook`, unit: "s", goal: 60, measure: memory(workbook, "make the workbook, s") },
    ];
  }),
  ...HEAVY_STEPS.map((step): Row => ({
    name: `40 data sheets, ${step}: memory at most`,
    unit: "MB",
    goal: 1500,
    measure: memory("40", `${step}, MB at most`),
  })),
  {
    name: "a logger's file of 1,000,000 lines, chosen and its loads found: memory at most",
    unit: "MB",
    goal: 1500,
    measure: memory("logger", "process at most, MB"),
  },
  {
    name: "held for a data sheet: 40 data sheets over 10",
    unit: "times",
    goal: 1.3,
    measure: () => (memory("1", HELD[0])() === undefined ? undefined : heldBySheet(40) / heldBySheet(10)),
  },
];

/** What each action costs the page, by the number of data sheets and by its name; measured once. */
const ofActions: Record<number, Record<string, { readonly spent: number; readonly longest: number }>> = {};
const action = (sheets: number, name: string, of: "spent" | "longest"): number | undefined => {
  ofActions[sheets] ??= JSON.parse(
    node([path.join(__dirname, "bench/actions.ts"), String(sheets)]).stdout.trim() || "{}",
  );
  return ofActions[sheets]?.[name]?.[of];
};

/** What is done to all sheets of a workbook, and what is done to one of them. */
const ACTIONS: Readonly<Record<"all" | "one", readonly string[]>> = {
  all: [
    ...["insert a summary", "bring the summary up to date", "many at once: One AGS4 file", "many at once: Pictures"],
    ...["save", "open", "insert the file", "undo the insertion", "redo the insertion", "many at once: Reports"],
  ],
  one: [
    ...["lock an issue", "compare with the issue", "check the sheet", "enter the formulas again"],
    ...["write all missing formulas", "mend a formula"],
  ],
};

const ratio = (name: string, sheets: number, fewer: number) => (): number | undefined => {
  const [more, less] = [action(sheets, name, "spent"), action(fewer, name, "spent")];
  return more !== undefined && less !== undefined ? more / less : undefined;
};

/** Growth in proportion is 4 from 10 to 40 data sheets, and 10 from 1 to 10; what is done to one sheet does not grow. */
const ACTION_ROWS: readonly Row[] = (["all", "one"] as const).flatMap((kind) =>
  ACTIONS[kind].flatMap((name): Row[] => [
    {
      name: `${name}, 40 data sheets: page stands still`,
      unit: "ms",
      goal: 250,
      measure: () => action(40, name, "longest"),
    },
    {
      name: `${name}, 40 data sheets: processor time`,
      unit: "ms",
      goal: kind === "one" ? 1000 : 40_000,
      measure: () => action(40, name, "spent"),
    },
    {
      name: `${name}: 40 data sheets over 10`,
      unit: "times",
      goal: kind === "one" ? 1.5 : 4.4,
      measure: ratio(name, 40, 10),
    },
    {
      name: `${name}: 10 data sheets over 1`,
      unit: "times",
      goal: kind === "one" ? 1.5 : 11,
      measure: ratio(name, 10, 1),
    },
  ]),
);

const BUILD_ROWS: readonly Row[] = [
  {
    name: "npm run build, from nothing",
    unit: "s",
    before: 48,
    goal: 25,
    measure: () => {
      for (const folder of [dist, path.join(root, "node_modules/.cache")]) rmSync(folder, { recursive: true, force: true }); // prettier-ignore
      return built();
    },
  },
  {
    name: "npm start, nothing changed: up to the server",
    unit: "s",
    before: 48,
    goal: 3,
    measure: () => built("--if-changed"),
  },
];

const isAsked = (option: string): boolean => process.argv.includes(option);
const rows = isAsked("--actions")
  ? ACTION_ROWS
  : isAsked("--browser")
    ? BROWSER_ROWS
    : isAsked("--build")
      ? [...BUILD_ROWS, ...ROWS]
      : ROWS;
const results = rows.map(({ name, unit, before, goal, measure }) => {
  const measured = measure();
  if (measured === undefined) return { name, unit, goal, measured: `nothing: run "npm run build" first` };
  return { name, unit, before, goal, measured, ratio: measured / goal };
});
console.log(
  JSON.stringify(
    { node: process.version, results },
    (_, v) => (typeof v === "number" ? Number(v.toPrecision(3)) : v),
    2,
  ),
);
