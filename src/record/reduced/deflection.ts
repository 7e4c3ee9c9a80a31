/** The deflection of the apparatus under a load, mm, from the calibration table of the sheet. */
import { apparatusDeflection } from "../../reduction/loading";
import { say, type Message } from "../../reduction/message";
import { badInput, given, then, type Outcome } from "../../reduction/outcome";
import { rulesOf } from "../../specification/versions";
import type { LoadRecord, TestRecord } from "../record";
import { inSheetStress } from "./inputs";

/**
 * The deflection of the apparatus: 0 without a calibration table; on unloading from the unloading column if the table
 * has one; less the deflection at the seating stress if the version of the sheet deducts it.
 */
export function deflectionOf(
  record: TestRecord,
  load: LoadRecord,
  unloading: boolean,
  called: Message,
): Outcome<number> {
  const whole = wholeDeflection(record, load, unloading, called);
  return rulesOf(record).deflectionSinceSeating
    ? then(whole, (at) => then(seatingDeflection(record), (seating) => given(at - seating)))
    : whole;
}

/** The rows of the table that have a stress. */
const tableOf = ({ deflections }: TestRecord): TestRecord["deflections"] =>
  deflections.filter(({ stress }) => stress !== undefined);

/** The deflection that a column of the table gives at a stress, kPa; 0 without a table. */
function deflectionAt(record: TestRecord, stress: number, branch: "loading" | "unloading"): Outcome<number> {
  const table = tableOf(record);
  if (table.length === 0) return given(0);
  return apparatusDeflection(
    inSheetStress(record, stress),
    table.map((row) => inSheetStress(record, row.stress!)),
    table.map((row) => row[branch] ?? null),
  );
}

/**
 * The deflection that the table gives on loading at the seating stress, where the zero reading was taken; 0 without a
 * table or a seating stress.
 */
export function seatingDeflection(record: TestRecord): Outcome<number> {
  const { seating_stress: seating = 0 } = record.numbers;
  const found = seating === 0 ? given(0) : deflectionAt(record, seating, "loading");
  return found.ok
    ? found
    : {
        ...found,
        reason: say`the deflection at the seating stress, which is deducted from that of each load: ${found.reason}; or enter a row for the seating stress, with deflection 0 where the blank test was zeroed under it`,
      };
}

function wholeDeflection(record: TestRecord, load: LoadRecord, unloading: boolean, called: Message): Outcome<number> {
  const table = tableOf(record);
  if (table.length === 0) return given(0);
  if (load.stress === undefined) return badInput(say`${called} has no stress`);
  const branch = unloading && table.some((row) => row.unloading !== undefined) ? "unloading" : "loading";
  return deflectionAt(record, load.stress, branch);
}
