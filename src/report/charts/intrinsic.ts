/** The void index of the loads beside the intrinsic and the sedimentation line, as columns of live formulas. */
import { intrinsicPlot } from "../../plots/intrinsic";
import { cellNamed } from "../../record/record";
import { listed, say } from "../../reduction/message";
import { badInput, given, type Outcome } from "../../reduction/outcome";
import { Sheet, frameOf, titled } from "./sheet-cells";
import { INTRINSIC_LABELS } from "../../plots/intrinsic";
import { LINE_STRESSES } from "../../reduction/curve/intrinsic";
import { intrinsicLineAt, sedimentationLineAt } from "../../specification/formulas";
import type { BlockColumn, BlockSeries, SeriesBlock } from "./series-block";
import type { Frame } from "./series-lines";

/** The cells to which the formulas refer. */
export interface IntrinsicSource {
  /** A cell of the column of stresses and of void ratios by its row, counted from 0. */
  readonly stress: (row: number) => string;
  readonly voidRatio: (row: number) => string;
  readonly rows: number;
  readonly intrinsicVoidRatio: string;
  readonly intrinsicIndex: string;
  readonly initial: string;
  readonly stressUnit: string;
  /** Left out if the sheet has no cell for it. */
  readonly inSitu?: string | undefined;
}

const SERIES: readonly BlockSeries[] = [
  { name: INTRINSIC_LABELS.test, style: "thin", x: "x", y: "y" },
  { name: INTRINSIC_LABELS.loads, style: "points", symbol: "filled", x: "x", y: "y" },
  { name: INTRINSIC_LABELS.intrinsic, style: "line", lettered: true, x: "line x", y: "line y" },
  { name: INTRINSIC_LABELS.sedimentation, style: "dashed", lettered: true, x: "line x", y: "sediment y" },
];
const IN_SITU: BlockSeries = {
  name: INTRINSIC_LABELS.inSitu,
  style: "points",
  symbol: "open",
  lettered: true,
  x: "in situ x",
  y: "in situ y",
};

function intrinsicBlock(source: IntrinsicSource, frame: Frame): Pick<SeriesBlock, "x" | "y" | "columns" | "series"> {
  const { stress, voidRatio, rows, intrinsicVoidRatio, intrinsicIndex, initial, stressUnit, inSitu } = source;
  const low = frame.x.domain[0];
  const index = (e: string): string => `(${e}-${intrinsicVoidRatio})/${intrinsicIndex}`;
  const isKnown = `ISNUMBER(${intrinsicVoidRatio}),ISNUMBER(${intrinsicIndex})`;
  const each = (cell: (row: number) => string) => () => Array.from({ length: rows }, (_, row) => cell(row));
  const pair = (x: string, e: string): readonly [string, string] => [
    `=IF(ISNUMBER(${x}),${x},${low})`,
    `=IF(AND(ISNUMBER(${x}),ISNUMBER(${e}),${isKnown}),${index(e)},NA())`,
  ];
  const lines = (name: string, heading: string, cell: (stress: string) => string): BlockColumn => ({
    ...{ name, heading, rows: LINE_STRESSES.length },
    cells: () => LINE_STRESSES.map((at) => `=${cell(String(at))}`),
  });
  const columns: BlockColumn[] = [
    { name: "x", heading: "Stress", rows, cells: each((row) => pair(stress(row), voidRatio(row))[0]) },
    { name: "y", heading: "Void index", rows, cells: each((row) => pair(stress(row), voidRatio(row))[1]) },
    lines("line x", "Line, stress", (at) => `CLAY.CONVERT_UNIT(${at},"kPa",${stressUnit})`),
    lines("line y", "Intrinsic line", intrinsicLineAt),
    lines("sediment y", "Sedimentation line", sedimentationLineAt),
  ];
  if (inSitu === undefined) return { ...frame, columns, series: SERIES };
  const [x, y] = pair(inSitu, initial);
  const inSituColumns: BlockColumn[] = [
    { name: "in situ x", heading: "In situ, x", rows: 1, cells: () => [x] },
    { name: "in situ y", heading: "In situ, y", rows: 1, cells: () => [y] },
  ];
  return { ...frame, columns: [...columns, ...inSituColumns], series: [...SERIES, IN_SITU] };
}

/** The void index beside the intrinsic line; refuses, and names the missing input, if the sheet has no liquid limit. */
export function intrinsicOf(sheet: Sheet): Outcome<SeriesBlock> {
  const results = ["intrinsic_void_ratio", "intrinsic_index"];
  const typed = ["liquid_limit", "specific_gravity", "void_ratio_initial"];
  const lacking = sheet.lacks("load_stress", "void_ratio_curve", "stress_unit", ...typed, ...results);
  if (lacking) return lacking;
  const [liquidLimit, specificGravity, initial] = typed.map((name) => sheet.number(name));
  if (liquidLimit === undefined || specificGravity === undefined || initial === undefined)
    return badInput(
      say`the void index needs ${listed(typed.filter((name) => sheet.number(name) === undefined).map(cellNamed))}`,
    );
  const spec = intrinsicPlot(sheet.numbers("load_stress"), sheet.numbers("void_ratio_curve"), {
    stressUnit: sheet.word("stress_unit") || undefined,
    ...{ liquidLimit, specificGravity, initialVoidRatio: initial },
    inSituStress: sheet.number("in_situ_stress"),
    inWords: sheet.words,
  });
  if (!spec.ok) return spec;
  const stresses = sheet.source("load_stress")!;
  const block = intrinsicBlock(
    {
      stress: stresses.cell,
      voidRatio: sheet.source("void_ratio_curve")!.cell,
      rows: stresses.rows,
      intrinsicVoidRatio: sheet.address("intrinsic_void_ratio")!,
      intrinsicIndex: sheet.address("intrinsic_index")!,
      initial: sheet.address("void_ratio_initial")!,
      stressUnit: sheet.address("stress_unit")!,
      inSitu: sheet.address("in_situ_stress"),
    },
    frameOf(spec.value),
  );
  return given({ title: titled(sheet, spec.value.title), ...block }, spec.remarks);
}
