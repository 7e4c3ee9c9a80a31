/** @jest-environment jsdom */
/**
 * Two people write the same test, each with a pane: the other one enters the same kind of thing between two requests
 * of ours, in the next free place. Both entries stand at the end, or ours is refused with a sentence and theirs stands.
 */
import { ANSWER_NAMES } from "../../../../src/checks/answers";
import { acknowledge } from "../../../../src/pane/screens/checks/workbook-answers";
import { writeReading, writeStart, type Written } from "../../../../src/pane/screens/bench/enter-reading";
import { takeLines, writeSet } from "../../../../src/pane/screens/register/register-work";
import { READ_NAMES } from "../../../../src/pane/screens/register/source";
import { RECORD } from "../../../../src/pane/live/want";
import { readTest } from "../../../../src/pane/live/workbook-store";
import { PICK_COLUMNS } from "../../../../src/record/picks";
import { OfficePort } from "../../../../src/workbook/office";
import { StrictExcel } from "../../../excel/strict-excel";

const port = new OfficePort();

/**
 * A sheet "Data" with the columns of picks, and of readings, and with the lever ratio; a sheet "Answers"; a sheet "Register". One row of
 * each is filled.
 */
const open = (): StrictExcel => {
  const excel = new StrictExcel({ sheets: ["Data", "Answers", "Register"], platform: "desktop" });
  const columns = (sheet: string, names: readonly string[], row: readonly (string | number)[]): void => {
    const at = excel.sheet(sheet).put("A2", [[...row]]);
    names.forEach((name, col) => at.name(name, `${letter(col)}2:${letter(col)}6`));
  };
  columns(
    "Data",
    [...PICK_COLUMNS, "times_01", "readings_01", "load_started"],
    [1, "t50", 2, 3, "why", "AB", 46000, 0, 7],
  );
  excel
    .sheet("Data")
    .put("M2", [[10]])
    .name("lever_ratio", "M2");
  const register = READ_NAMES.map((name) => REGISTER_ROW[name] ?? "");
  columns("Register", READ_NAMES, register);
  columns("Answers", ANSWER_NAMES, ["Data", "a", "open", "found", "why", "AB", "2026-03-09"]);
  return excel;
};
const letter = (col: number): string => String.fromCharCode(65 + col);

const REGISTER_ROW: Readonly<Record<string, string | number>> = {
  ...{ register_kind: "frame", register_number: "F 1", register_lever_ratio: 11 },
  ...{ register_length_unit: "mm", register_stress_unit: "kPa" },
};
/** The column of a name of the register. */
const inRegister = (name: string): string => letter(READ_NAMES.indexOf(name));

const OURS = "ours";
const THEIRS = "theirs";
const answer = { sheet: "Data", id: "b", status: "open", found: "found", reason: OURS, by: "CD", when: "2026-03-09" };
const pick = (value: string): (string | number)[] => [1, "t90", 4, 5, value, "CD", 46000];

interface Case {
  readonly work: () => Promise<unknown>;
  readonly they: (excel: StrictExcel) => void;
  /** The cells in which both write. */
  readonly at: readonly [sheet: string, address: string];
  readonly seen: string;
}

/** The bench says that cells have changed, and writes nothing. */
function written(came: Written): void {
  if (came !== "written") throw new Error(came);
}

/** The register as a screen has read it; then a set is written to it. */
async function setWritten(): Promise<unknown> {
  const [register] = await port.lookAt([{ sheet: "Register", values: READ_NAMES, names: true }]);
  const about = { number: OURS, frame: "F 1", disks: "", paper: "", by: "CD", day: 46000 };
  return writeSet(port, register!, { ...about, rows: [{ stress: 100, loading: 0.01, unloading: undefined }] });
}

/** The data sheet as a screen has read it; then the lever ratio is taken from the register. */
async function ratioTaken(): Promise<unknown> {
  const reading = await readTest(port, "Data", RECORD);
  const line = { cell: "lever_ratio", kind: "frame", registered: 11, held: 10, state: "differs" } as const;
  return takeLines(port, reading, { source: { called: "Register", values: {} }, lines: [line], mode: "frozen" });
}

const CASES: Readonly<Record<string, Case>> = {
  "a deflection set": {
    work: setWritten,
    they: (excel) => void excel.sheet("Register").put(`${inRegister("register_number")}3`, [[THEIRS]]),
    at: ["Register", `${inRegister("register_number")}3:${inRegister("register_number")}4`],
    seen: "theirs and ours; theirs (changed in the meantime); theirs (it holds theirs already); theirs (Somebody else changed)",
  },
  "a value of the register": {
    work: ratioTaken,
    they: (excel) => void excel.sheet("Data").put("M2", [[12]]),
    at: ["Data", "M2:M2"],
    // A value is taken in place of another: it comes first or last, or it is refused.
    seen: "11; 12 (changed in the meantime); 12 (somebody else has changed it); 12 (Somebody else changed)",
  },
  "an answer to a question": {
    work: () => acknowledge(port, answer),
    they: (excel) =>
      void excel.sheet("Answers").put("A3", [["Data", "c", "open", "found", THEIRS, "EF", "2026-03-09"]]),
    at: ["Answers", "E3:E4"],
    seen: "theirs and ours; theirs (filled in the meantime); theirs (Somebody else changed)",
  },
  "a pick": {
    work: async () => {
      const rows = pick(OURS).map((value) => [null, value]);
      await port.fillNames(
        "Data",
        Object.fromEntries(PICK_COLUMNS.map((name, col) => [name, rows[col]])),
        [],
        PICK_COLUMNS,
      );
    },
    they: (excel) => void excel.sheet("Data").put("A3", [pick(THEIRS)]),
    at: ["Data", "E3:E4"],
    seen: "theirs (filled in the meantime); theirs (Somebody else changed)",
  },
  "a reading": {
    work: () => writeReading(port, "Data", { load: 1, row: 2, time: 1, reading: 8, timeBefore: "" }).then(written),
    they: (excel) => void excel.sheet("Data").put("H3", [[1, 9]]),
    at: ["Data", "I3:I4"],
    seen: "9 (changed meanwhile); 9 (filled in the meantime); 9 (Somebody else changed)",
  },
  "the time at which a load was applied": {
    work: () => writeStart(port, "Data", 2, 46000.5).then(written),
    they: (excel) => void excel.sheet("Data").put("J3", [[46000.25]]),
    at: ["Data", "J3:J4"],
    seen: "46000.25 (changed meanwhile); 46000.25 (filled in the meantime); 46000.25 (Somebody else changed)",
  },
};

test.each(Object.entries(CASES))("%s", async (_, { work, they, at: [sheet, address], seen }) => {
  const held = (excel: StrictExcel): string =>
    excel
      .sheet(sheet)
      .values(address)
      .flat()
      .filter((value) => value !== "")
      .join(" and ");
  const { trips } = await open().cost(work);
  const ends: string[] = [];
  for (let n = 1; n <= trips; n++) {
    const excel = open();
    excel.beforeRequest(n, () => they(excel));
    const refusal = await work().then(
      () => "",
      (error: Error) =>
        ` (${error.message.replace(/.*(filled in the meantime|Somebody else changed|somebody else has changed it|changed meanwhile|changed in the meantime|it holds theirs already).*/, "$1")})`,
    );
    const end = held(excel) + refusal;
    if (end !== ends.at(-1)) ends.push(end);
  }
  expect(ends.join("; ")).toBe(seen);
});
