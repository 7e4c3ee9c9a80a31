/** Places the readings: below the load table, two columns for each load. */
import { atLoad } from "../specification/formulas";
import { HAND_TIMES, readingsOf } from "../specification/readings";
import { formatOf } from "../specification/measures";
import { labelIn, titleIn } from "../specification/text/words";
import { type Draft, PAGE_COLUMNS, placeBand, placeUnit, ruleEntries } from "./draft";

/** The number of rows of readings that have the frame of an input; a longer series continues below them. */
export const FRAMED_READING_ROWS = 24;

const READINGS_NOTE =
  "Minutes since the load was applied; the reading at time 0 is the last one before it. Leave out what was not read. " +
  "A logger's series is pasted over the schedule ({0} rows for each load).";

/** Places two columns per load: time and reading. The cells below them stay blank, so that a long series has room. */
export function placeReadings(draft: Draft, top: number, rows: number): number {
  const { system, words, cells, names } = draft;
  // Each printed page begins with the title.
  for (let col = 0; col < 2 * draft.loads; col += PAGE_COLUMNS)
    placeBand(draft, top, col, Math.min(PAGE_COLUMNS, 2 * draft.loads - col), titleIn(words, "Readings"));
  cells.push({
    row: top + 1,
    col: 0,
    kind: "note",
    value: titleIn(words, READINGS_NOTE, rows),
  });
  const first = top + 6;
  for (let load = 1; load <= draft.loads; load++) {
    const col = 2 * (load - 1);
    const stress = atLoad("load_stress", String(load));
    cells.push(
      {
        row: first - 3,
        col,
        kind: "result",
        formula: `=IFERROR(IF(${stress}="","",${stress}),"")`,
        format: formatOf("stress", system),
      },
      { row: first - 2, col, kind: "heading", value: titleIn(words, "Time"), align: "right" },
      { row: first - 2, col: col + 1, kind: "heading", value: titleIn(words, "Reading"), align: "right" },
    );
    placeBand(draft, first - 4, col, 2, titleIn(words, "Load {0}", load));
    placeUnit(draft, first - 3, col + 1, "stress");
    placeUnit(draft, first - 1, col, "time", "right");
    placeUnit(draft, first - 1, col + 1, "reading", "right");
    for (let index = 0; index < Math.min(FRAMED_READING_ROWS, rows); index++) {
      cells.push({ row: first + index, col, kind: "input", value: HAND_TIMES[index] });
      cells.push({ row: first + index, col: col + 1, kind: "input" });
    }
    for (const field of readingsOf(load)) {
      const box = { row: first, col: col + Number(field.measure === "reading"), rows, cols: 1 };
      names[field.name] = box;
      ruleEntries(draft, { ...field, label: labelIn(words, field.label) }, box);
    }
  }
  return first + rows;
}
