/**
 * A construction as columns: one formula spills all its lines, and the columns of each line pick the rows of that line
 * by label.
 */
import { MOST_LOADS } from "../../specification/readings";
import { LESS_THE_JUMP } from "../../plots/time";
import { labelIn, type InWords } from "../../plots/words";
import type { LineLabel } from "../../reduction/construction";
import { LINE_FACTOR } from "../../reduction/increment/cv";
import { listWord } from "../../reduction/message";
import type { MethodName } from "../../reduction/curve/method-words";
import type { ChartAxis, NamePlace } from "../../workbook/port";
import type { BlockColumn, BlockSeries, Where } from "./series-block";

/**
 * level: from the axis at the left to the curve. upright: from the curve down to the axis below. read: the points that
 * the method reads, as many as there are loads.
 */
interface Line {
  readonly label: LineLabel;
  readonly as: "curve" | "line" | "level" | "upright" | "cross" | "read" | "joined";
  readonly points: number;
  /** How many lines with that label the function gives, one after the other; the first is taken. */
  readonly of?: number;
  readonly letters?: string;
  /** Where its name stands, if not where those of such lines usually do. */
  readonly nameAt?: NamePlace;
}

export type Construction = "log time" | "root time" | MethodName;

const line = (label: LineLabel, nameAt?: NamePlace): Line => ({ label, as: "line", points: 2, nameAt });
const level = (label: LineLabel): Line => ({ label, as: "level", points: 2 });
const upright = (label: LineLabel, letters?: string): Line => ({ label, as: "upright", points: 2, letters });
const SMOOTH: Line = { label: "smooth curve", as: "curve", points: 61 };
const YIELD = upright("preconsolidation stress", "σ′p");
/** The most points that a method reads: the rows of the load table. */
const READ = MOST_LOADS;

/** The lines of every construction that are drawn. A test compares labels and numbers of points with the functions. */
export const LINES: Readonly<Record<Construction, readonly Line[]>> = {
  "log time": [
    { label: "early parabola", as: "curve", points: 13 },
    { label: "4:1 pair", as: "cross", points: 2 },
    { label: "offset", as: "curve", points: 2 },
    { label: "same offset", as: "curve", points: 2 },
    line("steepest tangent"),
    line("secondary tail"),
    level("d0"),
    level("d50"),
    level("d100"),
    { label: "half distance", as: "curve", points: 3 },
    upright("t50"),
    upright("t100"),
  ],
  "root time": [
    line("straight part"),
    line(`${LINE_FACTOR} line`),
    { label: `${LINE_FACTOR} abscissae`, as: "curve", points: 3 },
    level("d0"),
    level("d90"),
    level("d100"),
    upright("root t90"),
  ],
  casagrande: [
    SMOOTH,
    line("virgin line"),
    { label: "greatest curvature", as: "cross", points: 1, nameAt: "left" },
    // These three end side by side.
    line("horizontal", "above"),
    line("tangent", "below"),
    line("bisector", "right"),
    YIELD,
  ],
  intersection: [line("recompression line"), line("virgin line"), YIELD],
  pacheco_silva: [
    SMOOTH,
    line("virgin line"),
    line("initial value"),
    line("vertical to the curve"),
    line("horizontal to the virgin line"),
    YIELD,
  ],
  work: [line("line before yield"), line("line after yield"), YIELD, { label: "work", as: "read", points: READ }],
  bilog: [
    line("line before yield"),
    line("line after yield"),
    YIELD,
    { label: "first loading", as: "read", points: READ },
  ],
  janbu: [
    YIELD,
    { label: "modulus", as: "joined", points: READ, of: 2 },
    { label: "modulus", as: "read", points: READ, of: 2 },
  ],
};

const LOOKS: Readonly<Record<Line["as"], Pick<BlockSeries, "style" | "symbol" | "lettered" | "isUpright">>> = {
  curve: { style: "thin", lettered: true },
  line: { style: "line", lettered: true },
  level: { style: "dashed", lettered: true },
  upright: { style: "dashed", lettered: true, isUpright: true },
  cross: { style: "points", symbol: "cross", lettered: true },
  read: { style: "points", symbol: "filled" },
  joined: { style: "thin" },
};

/**
 * Rows reserved for the spilled lines: a time curve of more than 120 readings is averaged in 20 steps per log cycle,
 * over at most 8 cycles, and its lines have 39 points.
 */
const SPILL_ROWS = 200;

export interface Frame {
  readonly x: ChartAxis;
  readonly y: ChartAxis;
}

/** A point of a line as formulas: whether it exists, and its coordinates. */
const point = (where: Where, column: string, index: number) => {
  const [start, count] = [where.head(`${column} x`), where.head(`${column} y`)];
  const at = (of: "line x" | "line y", n: number) => `INDEX(${where.column(of)},${start}+${n})`;
  return {
    at,
    when: (value: string, otherwise: string) => `=IF(${index}<${count},${value},${otherwise})`,
  };
};

/** The argument that names the language in which the function labels its lines, by the words of the chart; undefined for English. */
function languageOfLines(words: InWords): string | undefined {
  const own = words(listWord("English"));
  return own === "English" ? undefined : `"${own}"`;
}

/** The labels of a line: in the language that is asked for, and in English, as a function answers without its page. */
const labelsOf = (label: LineLabel, words: InWords): string[] => [
  ...new Set(languageOfLines(words) ? [labelIn(words, label), label] : [label]),
];

/** The most readings of a time curve that are drawn: averages in 20 steps per log cycle, over at most 8 cycles. */
const MOST_MOVED = 160;
/** The readings after a jump of the dial as the construction uses them; only a load whose dial jumped has them. */
const MOVED: Line = { label: LESS_THE_JUMP, as: "cross", points: MOST_MOVED };

/** The columns of one line; if the construction does not apply, they show nothing. */
function lineColumns(
  { label, as, points, of = 1 }: Line,
  column: string,
  { x, y }: Frame,
  words: InWords,
): BlockColumn[] {
  const labels = labelsOf(label, words);
  const nowhere = String(x.domain[0]);
  const below = String(y.domain[y.reversed ? 1 : 0]);
  const cells = (of: "x" | "y") => (where: Where) =>
    Array.from({ length: points }, (_, index) => {
      const { at, when } = point(where, column, index);
      if (of === "y") {
        const value =
          as === "upright" ? (index === 0 ? at("line y", 0) : below) : at("line y", as === "level" ? 0 : index);
        return when(value, "NA()");
      }
      const value =
        as === "upright"
          ? at("line x", 0)
          : as === "level"
            ? index === 0
              ? nowhere
              : `MAX(${at("line x", 0)},${at("line x", 1)})`
            : at("line x", index);
      return when(value, nowhere);
    });
  return [
    {
      name: `${column} x`,
      heading: `${label}, x`,
      rows: points,
      head: (where) =>
        `=${labels.reduceRight((otherwise, one) => `IFERROR(MATCH("${one}",${where.column("line label")},0),${otherwise})`, "0")}`,
      cells: cells("x"),
    },
    {
      name: `${column} y`,
      heading: `${label}, y`,
      rows: points,
      head: (where) => {
        const counts = labels.map((one) => `COUNTIF(${where.column("line label")},"${one}")`).join("+");
        return `=${labels.length > 1 ? `(${counts})` : counts}/${of}`;
      },
      cells: cells("y"),
    },
  ];
}

/**
 * A call of a worksheet function as text; optional arguments that are not given are left out at the end, and are blank before another.
 * @example callOf("WORK_LINES", ["A1", "B1"], [undefined, "C1", undefined], '""') // 'CLAY.WORK_LINES(A1,B1,"",C1)'
 */
export function callOf(
  name: string,
  needed: readonly string[],
  optional: readonly (string | undefined)[],
  blank: string,
): string {
  const given = [...optional];
  while (given.length > 0 && !given[given.length - 1]) given.pop();
  return `CLAY.${name}(${[...needed, ...given.map((one) => one ?? blank)].join(",")})`;
}

/**
 * The columns and series of a construction; `call` is the function that gives its lines, "CLAY.LOG_TIME_LINES(...)", with
 * labels in the language that is given to it, in English without one. `jumps`: whether the dial jumped.
 */
export function constructionColumns(
  construction: Construction,
  call: (where: Where, language?: string) => string,
  frame: Frame,
  words: InWords,
  jumps = false,
): { columns: BlockColumn[]; series: BlockSeries[] } {
  const lines = [...LINES[construction], ...(jumps ? [MOVED] : [])];
  const rows = SPILL_ROWS + (jumps ? MOST_MOVED : 0);
  const columns = lines.flatMap((one, index) => lineColumns(one, `line ${index + 1}`, frame, words));
  const spill: BlockColumn[] = [
    {
      name: "line label",
      heading: "Construction",
      rows,
      cells: (where) => [`=${call(where, languageOfLines(words))}`],
    },
    { name: "line x", heading: "x", rows, cells: () => [] },
    { name: "line y", heading: "y", rows, cells: () => [] },
  ];
  const series = lines.map(({ label, as, letters, nameAt }, index): BlockSeries => ({
    ...LOOKS[as],
    ...(nameAt && { nameAt }),
    name: letters ?? label,
    x: `line ${index + 1} x`,
    y: `line ${index + 1} y`,
  }));
  return { columns: [...columns, ...spill], series };
}

/** A dashed vertical line at the stress in a cell; nothing while the cell is blank. */
export function markAt(letters: string, heading: string, cell: string, { x, y }: Frame) {
  const [across, up] = [`${letters} x`, `${letters} y`];
  const columns: BlockColumn[] = [
    { name: across, heading, rows: 2, cells: () => Array(2).fill(`=IF(ISNUMBER(${cell}),${cell},${x.domain[0]})`) },
    { name: up, heading: "y", rows: 2, cells: () => y.domain.map((end) => `=IF(ISNUMBER(${cell}),${end},NA())`) },
  ];
  const series: BlockSeries = { name: letters, style: "dashed", lettered: true, isUpright: true, x: across, y: up };
  return { columns, series };
}
