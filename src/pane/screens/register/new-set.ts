/** A new deflection set from the loads of a data sheet that hold a run on a disk, and its rows in a register. */
import { boxesByName } from "../../../record/places";
import { readRegister, REGISTER_KINDS, REGISTER_MARK } from "../../../record/register";
import { REGISTER_STRESS_UNIT, REGISTER_UNIT, same, word } from "../../../record/register-cells";
import { SET_NUMBER } from "../../../record/register-sets";
import { dialSense } from "../../../record/load-curve";
import type { TestRecord } from "../../../record/record";
import { reduced } from "../../../record/reduced-test";
import { inputs } from "../../../record/reduced/inputs";
import { diskRun, type DiskLoad, type SetDeflection } from "../../../reduction/disk-run";
import { then, type Outcome } from "../../../reduction/outcome";
import { convert, unitNamed } from "../../../reduction/units";
import { LENGTH_UNITS, STRESS_UNITS } from "../../../specification/form/unit-choices";
import { wordIn } from "../../../specification/list-words";
import { SHEET_LANGUAGES, type SheetLanguage } from "../../../specification/text/language";
import type { Box, CellContent, CellValue, Looked } from "../../../workbook/port";

/** The set of a run that was entered like a test, the disk in the place of the specimen; kPa and mm. */
export const setOfRun = (record: TestRecord): Outcome<readonly SetDeflection[]> =>
  then(inputs(record, "zero_reading", "dial_factor"), ({ zero_reading, dial_factor }) => {
    const loads = reduced(record).loads.flatMap(({ record: { stress }, end }): DiskLoad[] =>
      stress === undefined || !end.ok ? [] : [{ stress, reading: end.value.reading }],
    );
    return diskRun(loads, {
      seatingStress: record.numbers.seating_stress,
      seatingReading: zero_reading,
      factor: dial_factor,
      sense: dialSense(record),
    });
  });

export interface NewSet {
  readonly number: string;
  readonly frame: string;
  readonly disks: string;
  readonly paper: string;
  readonly by: string;
  /** The day of the run as a day number. */
  readonly day: number;
  readonly rows: readonly SetDeflection[];
  /** The language of the data sheet; English if it is left out. */
  readonly language?: SheetLanguage;
}

/** The language of a register: that of the kinds in its rows, otherwise that of the data sheet. */
function languageIn({ values }: Looked, otherwise: SheetLanguage): SheetLanguage {
  const kinds = (values.register_kind ?? []).map(([kind]) => word(kind));
  const isUsed = (language: SheetLanguage): boolean =>
    REGISTER_KINDS.some((kind) => kinds.includes(wordIn(language, kind)));
  return SHEET_LANGUAGES.find(isUsed) ?? otherwise;
}

/** Why a set cannot be written. */
export type Refused = "no number" | "number taken" | "no table" | "no units" | "no room";

/** The first rows in which all columns are blank, counted from 0 in the columns. */
function freeRows(register: Looked, columns: readonly string[], rows: number): readonly number[] {
  const isBlank = (row: number): boolean => columns.every((name) => word(register.values[name]?.[row]?.[0]) === "");
  return Array.from({ length: rows }, (_, row) => row).filter(isBlank);
}

/**
 * The cells of a register for a new set: one row of equipment, and one row for each stress. Only blank rows are filled.
 */
export function cellsOfSet(register: Looked, set: NewSet): readonly CellContent[] | Refused {
  const { values, names = [] } = register;
  const boxes = boxesByName(names);
  const unit = (name: string) => word(values[name]?.[0]?.[0]);
  const length = unitNamed(unit(REGISTER_UNIT), LENGTH_UNITS);
  const stress = unitNamed(unit(REGISTER_STRESS_UNIT), STRESS_UNITS);
  const [equipment, table] = [boxes.get(REGISTER_MARK), boxes.get(SET_NUMBER)];
  if (!equipment || !table) return "no table";
  if (!length || !stress) return "no units";
  if (set.number.trim() === "") return "no number";
  const taken = [
    ...(readRegister(values) ?? []).filter(({ kind }) => kind === "deflection set").map(({ number }) => number),
    ...(values[SET_NUMBER] ?? []).map(([number]) => word(number)),
  ];
  if (taken.some((number) => same(number, set.number.trim()))) return "number taken";
  const [line] = freeRows(register, ["register_kind", REGISTER_MARK], equipment.rows);
  const free = freeRows(register, [SET_NUMBER, "register_set_stress"], table.rows);
  if (line === undefined || free.length < set.rows.length) return "no room";
  const put = (name: string, row: number, value: CellValue | undefined): CellContent[] => {
    const box: Box | undefined = boxes.get(name);
    return box && row < box.rows && value !== undefined && value !== ""
      ? [{ row: box.row + row, col: box.col, value }]
      : [];
  };
  const inUnit = (value: number | undefined) =>
    value === undefined ? undefined : Number(convert(value, "length", "mm", length).toPrecision(6));
  const about = {
    register_kind: wordIn(languageIn(register, set.language ?? "en"), "deflection set"),
    [REGISTER_MARK]: set.number.trim(),
    register_frame: set.frame.trim(),
    register_disks: set.disks.trim(),
    register_paper: set.paper.trim(),
    register_calibrated: set.day,
    register_by: set.by.trim(),
  };
  return [
    ...Object.entries(about).flatMap(([name, value]) => put(name, line, value)),
    ...set.rows.flatMap((row, index) => {
      const at = free[index] ?? table.rows;
      return [
        ...put(SET_NUMBER, at, set.number.trim()),
        ...put("register_set_stress", at, Number(convert(row.stress, "stress", "kPa", stress).toPrecision(6))),
        ...put("register_set_loading", at, inUnit(row.loading)),
        ...put("register_set_unloading", at, inUnit(row.unloading)),
      ];
    }),
  ];
}
