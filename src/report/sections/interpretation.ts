/** The indices with the stresses that they were read from, and the preconsolidation stress by every method. */
import { englishWord } from "../../record/cells";
import { METHOD_NAMES, METHOD_SAID, spreadRowNamed, type MethodName } from "../../reduction/curve/method-words";
import type { Index } from "../../reduction/curve/indices";
import { OF_CURVE } from "../../reduction/curve/picks";
import { rulesOf } from "../../specification/versions";
import { english, say, type Message } from "../../reduction/message";
import type { Outcome } from "../../reduction/outcome";
import { reduced } from "../../record/reduced-test";
import { answered, saidInCell, type Remark } from "../../record/sheet-remarks";
import { isError } from "../../workbook/cell-error";
import type { CellPlan } from "../../workbook/port";
import { FORMATS, NOTHING, shownCell, twoFigures, unitIf } from "../page/cells";
import { band, gap, paragraph, type Block } from "../page/page";
import type { DataCells } from "../page/source";
import { LABEL_COLUMNS } from "./fields";

/** The names of the other rows of the table. */
const OTHER_ROWS: Readonly<Record<string, Message>> = {
  median: say`Median`,
  spread: say`Spread over the median`,
  low: say`Points allow from`,
  high: say`Points allow to`,
  verdict: say`All in all`,
  remark: say`Remarks`,
};

/** What a cell of remarks says, in the language of the report. What a person typed is kept. */
export const inLanguage = (cells: DataCells, text: string, remark: Remark | undefined): string =>
  cells.words(saidInCell(cells.source.record, text, remark));

/** The message for a row of the table: the note on a method, or the verdict. */
function messageFor(cells: DataCells, row: string): Message | undefined {
  const { spread } = reduced(cells.source.record);
  if (!spread.ok) return undefined;
  if (row === "verdict") return spread.value.verdict;
  return spread.value.methods.find(({ method }) => method === row)?.note;
}

const RANGE = say`range that these points allow, about 95 percent`;
const OVER = say`greatest less least, over the median`;

/** The row of a method in the table, from 0; undefined if the table has no such row. */
export function rowOfMethod(cells: DataCells, method: MethodName): number | undefined {
  const given = cells.source.values.preconsolidation_spread ?? [];
  const row = given.findIndex(([label]) => spreadRowNamed(englishWord(String(label))) === method);
  return row < 0 ? undefined : row;
}

/** An expression for the number in a row of the table. */
const inSpread = (cells: DataCells, row: number): string =>
  `INDEX(${cells.block("preconsolidation_spread")},${row + 1},2)`;

/** The number in a row of the table, in two columns: a stress with its unit, or the spread. */
function numberOf(cells: DataCells, row: number, format: string, col: number): CellPlan[] {
  const part = inSpread(cells, row);
  const isStress = nameOfRow(cells, row) !== "spread";
  return [
    {
      row: 0,
      col,
      kind: "result",
      formula: `=IFERROR(IF(${part}="","${NOTHING}",${part}),"${NOTHING}")`,
      align: "right",
      format: isStress ? format : "0%",
    },
    ...(isStress ? unitIf(cells, `ISNUMBER(${part})`, "stress_unit", 0, col + 1) : []),
  ];
}

/** The name of a row of the table: of a method, or of another row. */
const nameOfRow = (cells: DataCells, row: number): string =>
  spreadRowNamed(englishWord(String(cells.source.values.preconsolidation_spread?.[row]?.[0] ?? "")));

/** One row of the table of methods; the ends of the range that the points allow stand in one row. */
function line(cells: DataCells, row: number, format: string): Block[] {
  const given = cells.source.values.preconsolidation_spread ?? [];
  const words = (col: number): string => String(given[row]?.[col] ?? "");
  const name = nameOfRow(cells, row);
  if (name === "high" && nameOfRow(cells, row - 1) === "low") return [];
  if (name === "remark" && englishWord(words(1) || words(2)) === "ok") return [];
  const label = METHOD_NAMES.find((method) => method === name);
  const called = label ? METHOD_SAID[label] : OTHER_ROWS[name];
  const lead = called ? cells.words(called) : words(0);
  // The verdict may be long: it is a snapshot, in as many lines as it needs.
  if (/^(verdict|remark)$/.test(name))
    return paragraph(inLanguage(cells, words(1) || words(2), answered(messageFor(cells, name))) || NOTHING, {
      col: 3,
      lead,
      kind: "remark",
    });
  const usual = name === "spread" ? OVER : RANGE;
  const said = inLanguage(cells, words(2), answered(messageFor(cells, name) ?? usual));
  if (name === "low" && nameOfRow(cells, row + 1) === "high")
    return [
      {
        rows: 1,
        cells: [
          { row: 0, col: 0, kind: "label", value: lead },
          ...numberOf(cells, row, format, LABEL_COLUMNS),
          { row: 0, col: 5, kind: "label", value: cells.words(say`to`), align: "right" },
          ...numberOf(cells, row + 1, format, 6),
          { row: 0, col: 8, kind: "remark", value: cells.words(say`about 95 percent`) },
        ],
      },
    ];
  const [first, ...others] = paragraph(said || NOTHING, { col: 5, kind: "remark" });
  const number: CellPlan[] = [
    { row: 0, col: 0, kind: "label", value: lead },
    ...numberOf(cells, row, format, LABEL_COLUMNS),
  ];
  return [{ ...(first ?? gap), cells: [...number, ...(first?.cells ?? [])] }, ...others];
}

/** The spread of the methods: live, from the spill on the data sheet. */
export function interpretation(cells: DataCells): Block[] {
  const t = cells.words;
  const heading = band(t(say`Interpretation: the preconsolidation stress by every method`));
  if (cells.rows("preconsolidation_spread") === 0)
    return [heading, ...paragraph(t(say`The data sheet has no table of methods (preconsolidation_spread).`)), gap];
  const format = twoFigures(cells.number("preconsolidation_stress"), 3);
  const given = cells.source.values.preconsolidation_spread ?? [];
  // Where no method reads the curve, the one cell of the table shows #N/A.
  const lines = given.flatMap(([label], row) => (label && !isError(String(label)) ? line(cells, row, format) : []));
  const none = say`The methods gave nothing: the curve has no points, or they do not apply to it.`;
  return [
    heading,
    ...(lines.length ? lines : paragraph(t(none))),
    ...paragraph(
      t(
        say`This is a spread of interpretation, shown apart: it is no uncertainty of measurement, has no probability, and is added to none of the intervals. The constructions of cv spread likewise: see the table of time curves.`,
      ),
      { kind: "note" },
    ),
    gap,
  ];
}

const INDICES = [
  [say`Compression index Cc`, "compression_index", "Cc", "compressionIndex"],
  [say`Recompression index Cr`, "recompression_index", "Cr", "recompressionIndex"],
  [say`Swelling index Cs`, "swelling_index", "Cs", "swellingIndex"],
] as const;

/** The indices, each with the part of the test that it was read from: live in English, in other languages a snapshot. */
export function indices(cells: DataCells): Block[] {
  const [stresses, curve] = [cells.column("load_stress"), cells.column("void_ratio_curve")];
  const table = ["pick_load", "pick_of", "pick_after"].map((name) => cells.column(name));
  const isPicked = rulesOf(cells.source.record).curveIsPicked && table.every((column) => column !== undefined);
  const picks = isPicked ? `,,"e",,CLAY.LOAD_PICKS("${OF_CURVE}",${table.join(",")})` : "";
  const unit = cells.has("stress_unit") ? `&" "&${cells.at("stress_unit")}` : "";
  const ofRecord = reduced(cells.source.record);
  const basis = (item: string, read: Outcome<Index>): Pick<CellPlan, "formula" | "value"> => {
    if (!stresses || !curve) return { value: NOTHING };
    const told = read.ok ? read.value.basis : undefined;
    // An adopted index does not come from points of the curve.
    if (read.ok && read.value.readings.length === 0) return { value: cells.words(read.value.basis) };
    if (told && cells.words(told) !== english(told))
      return { value: `${cells.words(told)} ${cells.text("stress_unit")}` };
    return {
      formula: `=IFERROR(VLOOKUP("${item}",CLAY.COMPRESSION_INDICES(${stresses},${curve}${picks}),3,FALSE)${unit},"${NOTHING}")`,
    };
  };
  return [
    band(cells.words(say`Indices and what they were read from`)),
    ...INDICES.map(([label, name, item, of]): Block => ({
      rows: 1,
      cells: [
        { row: 0, col: 0, kind: "label", value: cells.words(label) },
        shownCell(cells, { label: "", name, format: FORMATS.index }, 0, LABEL_COLUMNS),
        { row: 0, col: LABEL_COLUMNS + 1, kind: "unit", value: cells.words(say`by void ratio, from the`) },
        { row: 0, col: LABEL_COLUMNS + 4, kind: "result", align: "left", ...basis(item, ofRecord[of]) },
      ],
    })),
    gap,
  ];
}
