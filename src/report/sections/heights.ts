/** The levels of each load and the heights that follow from them: what a reviewer needs to calculate e and cv again. */
import { say, type Message } from "../../reduction/message";
import { LEVELS } from "../../workbook/look/number-format";
import { formatOfDeformation, formatOfWorking, typedFormat, unitOfReadings } from "../page/cells";
import { gap, paragraph, type Block } from "../page/page";
import type { DataCells, ReportedLoad } from "../page/source";
import { always, cellOfLoad, loadColumn, loadTable, perLoad, type LoadColumn } from "./loads";

export function heightsOfTest(cells: DataCells, loads: readonly ReportedLoad[]): Block[] {
  const levels = always(cells.text("length_unit") === "in" ? LEVELS.US : LEVELS.SI);
  const column = (heading: LoadColumn["heading"], name: string, unit: string, format = levels): LoadColumn => ({
    heading,
    unit,
    formula: cellOfLoad(cells, name),
    format,
  });
  const ofLevel = (heading: LoadColumn["heading"], name: string) => column(heading, name, unitOfReadings(cells));
  const ofHeight = (heading: LoadColumn["heading"], name: string, format = formatOfWorking(cells)) =>
    column(heading, name, "length_unit", always(format));
  const ofConstruction = (by: Message, d0: string, d100: string, height: string): LoadColumn[] => [
    ofLevel([say`d0`, by], d0),
    ofLevel([say`d100`, by], d100),
    ofHeight([say`H at 50%`, by], height, formatOfDeformation(cells)),
  ];
  // Readings as they were typed: rounded, they would not give the height.
  const typed = typedFormat(loads.flatMap(({ row }) => cells.number("end_reading", row) ?? []));
  const columns: LoadColumn[] = [
    loadColumn,
    { ...ofLevel([say`Last`, say`reading`], "end_reading"), format: always(typed) },
    ofHeight([say`Frame`, say`deflect.`], "apparatus_deflection"),
    ofHeight([say`Deform.`, say`corrected`], "corrected_deformation", formatOfDeformation(cells)),
    ofHeight([say`Height`, say`at end`], "height_end"),
    ...ofConstruction(say`log time`, "log_d0", "log_d100", "height_middle"),
    ...ofConstruction(say`root time`, "root_d0", "root_d100", "height_middle_root"),
    // One figure more than the C alpha that follows from it.
    { ...ofLevel([say`Tail, per`, say`log cycle`], "tail_slope"), format: perLoad(cells, "tail_slope", 3) },
  ];
  return [
    ...loadTable(cells, say`Levels and heights of the loads`, columns, loads, {}),
    ...paragraph(
      cells.words(
        say`A height is H0 less the compression from the zero reading to the level, by the dial factor, plus the deflection of the apparatus since the seating stress. It gives e = H / Hs - 1, at the end of the load as at d100 of the construction in the column "cv by". C alpha, strain per log cycle, is the slope of the tail by the dial factor, over H0. The levels are those in use, picks by hand included.`,
      ),
      { kind: "note" },
    ),
    gap,
  ];
}
