/** Picks by hand on the sheet: the cells that they change, the cells that they leave, and the remarks on them. */
import { english } from "../../src/reduction/message";
import { demoSheet, fillSheet } from "../../src/datasheet";
import { demoTest } from "../../src/datasheet/demo-test";
import { HAND_TIMES } from "../../src/specification/readings";
import { methodOfLoad, PICK_COLUMNS, picksOfLoad } from "../../src/record/picks";
import { readRecord, type TestRecord } from "../../src/record/record";
import { checkSheet } from "../../src/datasheet/sheet-check";
import { COMPRESSION_INDEX, PRECONSOLIDATION, SWELLING_INDEX } from "../../src/functions/curve";
import { TIME_CURVE } from "../../src/functions/increment";
import { inOneLanguage } from "../../src/pane/live/sheet-language";
import { reduced } from "../../src/record/reduced-test";
import type { Outcome } from "../../src/reduction/outcome";
import { LOAD_PARTS } from "../../src/specification/load-table";
import type { CellValue, SheetName } from "../../src/workbook/port";
import { cellAddress } from "../../src/workbook/address";
import { namedValues } from "../datasheet/read-sheet";
import { calculate, type Calculated } from "../datasheet/sheet-in-engine";

const plan = demoSheet("SI");
/** Rows as they are typed: load, pick, before, new value, reason, initials, when. */
type Row = readonly (CellValue | undefined)[];
const typed = (...rows: readonly Row[]) =>
  fillSheet(plan, Object.fromEntries(PICK_COLUMNS.map((name, col) => [name, rows.map((row) => row[col])])));

/** The names of the sheet, as a port lists them. */
const names = Object.entries(plan.names).map(([name, place]): SheetName => ({ name, scope: "sheet", place }));

/** The columns into which the formula of a load spills: from log_d0 to the end of the row. */
const NAMES = LOAD_PARTS[2].columns.map(({ name }) => name);
const CURVE = NAMES.slice(NAMES.indexOf("log_d0"));
const row = (sheet: Calculated, load: number, names: readonly string[]) =>
  names.map((name) => sheet.value(name, load - 1));

let blank: Calculated;
beforeAll(async () => {
  blank = await calculate(plan);
});

test("without picks the time curve of every load is that of its readings alone", () => {
  demoTest("SI").readings.forEach((readings, index) => {
    const alone = TIME_CURVE(
      HAND_TIMES.map((time) => [time]),
      readings.map((reading) => [reading]),
    );
    expect(row(blank, index + 1, CURVE)).toEqual(alone[0]);
    expect(blank.value("load_method", index)).toBe("log time");
    expect(blank.value("cv_chosen", index)).toBe(blank.value("cv_log_time", index));
  });
});

describe("picks of a load", () => {
  const d100 = 2270;
  let sheet: Calculated;
  let record: TestRecord;
  beforeAll(async () => {
    const filled = typed(
      [6, "d100", 2261.1, 2000, "first look", "XY", 48_000.5],
      [6, "cv by", "log time", "root time", "root plot is straighter", "XY", 48_000.5],
      [6, "d100", 2000, d100, "tail drawn anew", "XY", 48_000.75],
      [6, "d90", "", 2100, "by eye", "XY", "on Friday"],
      [5, "d100", "", 3, "", ""],
      [5, "d100", 3, "automatic", "slip of the pen", "XY"],
    );
    sheet = await calculate(filled);
    record = readRecord(await namedValues(filled));
  });

  test("change the constructions, cv, and strain and void ratio at d100", () => {
    expect(sheet.errors).toEqual([]);
    const at = (name: string) => sheet.value(name, 5) as number;
    expect([at("log_d100"), at("root_d90")]).toEqual([d100, 2100]);
    expect(at("log_d50")).toBeCloseTo((at("log_d0") + d100) / 2, 9);
    expect(at("root_d100")).toBeCloseTo(at("root_d0") + (2100 - at("root_d0")) / 0.9, 9);
    expect(at("load_method")).toBe("root time");
    expect(at("cv_chosen")).toBe(at("cv_root_time"));
    expect(at("cv_root_time")).not.toBeCloseTo(blank.value("cv_root_time", 5) as number, 3);
    // d100 by root time, which the load picks: (reading - zero) x factor - deflection of the apparatus.
    const deformation = (at("root_d100") - 400) * 0.002 - at("apparatus_deflection");
    expect(at("deformation_d100")).toBeCloseTo(deformation, 9);
    expect(at("strain_d100")).toBeCloseTo(deformation / 25.4, 9);
    expect(at("void_ratio_d100")).toBeCloseTo((25.4 - deformation) / (sheet.value("solids_height") as number) - 1, 9);
    expect(at("time_remark")).toMatch(/picked by hand: d100 = 2270/);
  });

  test('leave every other load unchanged, and "automatic" cancels them', () => {
    for (const load of [4, 5, 7]) expect(row(sheet, load, CURVE)).toEqual(row(blank, load, CURVE));
    expect(sheet.value("load_method", 4)).toBe("log time");
  });

  test("have a note in each row that says which counts, and what is missing", () => {
    expect([0, 1, 2, 3, 4, 5, 6].map((index) => sheet.value("pick_remark", index))).toEqual([
      "replaced further down",
      "used",
      "used",
      "used",
      "replaced further down, no reason, no initials",
      "automatic again",
      "",
    ]);
  });

  test("are in the record with the value before, and as replaced values if they count", () => {
    expect(record.faults).toEqual([]);
    expect(record.picks).toHaveLength(6);
    expect(record.picks[0]).toEqual({
      row: 1,
      load: 6,
      of: "d100",
      before: 2261.1,
      after: 2000,
      reason: "first look",
      by: "XY",
      when: "2031-06-01 12:00",
    });
    expect(record.picks[3].when).toBe("on Friday");
    expect(record.overrides.map(({ of }) => of)).toEqual(["cv by of load 6", "d100 of load 6", "d90 of load 6"]);
    expect(picksOfLoad(record.picks, 6)).toEqual({ d100, d90: 2100 });
    expect(picksOfLoad(record.picks, 5)).toEqual({});
    expect([5, 6].map((load) => methodOfLoad(record, load))).toEqual(["log time", "root time"]);
    expect(record.loads[5].words.load_method).toBe("root time");
  });

  test("give the same answer if blank cells arrive as 0", async () => {
    const filled = typed([6, "d100", "", d100], [7, "tail_from"], [undefined, "d0", "", 5], [8]);
    const [web, desktop] = [await calculate(filled, null), await calculate(filled, 0)];
    expect([...desktop.values]).toEqual([...web.values]);
    expect(web.errors).toEqual([]);
    expect([0, 1, 2, 3].map((index) => web.value("pick_remark", index))).toEqual([
      "used, no reason, no initials",
      ...Array(3).fill("unfinished: not used"),
    ]);
  });
});

test("a pick that cannot be used is named by its row in the remark of its load, and found by the check", async () => {
  const filled = typed(
    [6, "d0", "", "late", "r", "XY"],
    [7, "cv by", "", "logtime", "r", "XY"],
    [99, "d0", "", 5, "r", "XY"],
    [8, "d100"],
    [9, "tail_from", 480, 240],
  );
  const sheet = await calculate(filled);
  expect(sheet.value("time_remark", 5)).toMatch(
    /^the time curve is refused: row 1 of the table of picks holds the text "late"/,
  );
  expect(sheet.value("choice_remark")).toMatch(/^Pick by hand of cv by, [A-Z]+\d+: enter log time or root time/);
  expect(row(sheet, 5, CURVE)).toEqual(row(blank, 5, CURVE));
  expect(sheet.value("remarks_on_loads")).toMatch(
    /^Load 6: the time curve is refused: row 1 of the table of picks holds the text "late"/m,
  );
  const first = plan.names.pick_load.row;
  const said = checkSheet(names, await namedValues(filled)).findings.map((finding) => ({
    ...finding,
    sentence: english(finding.sentence),
  }));
  const about = (index: number) => said.filter(({ sentence }) => sentence.startsWith(`Row ${first + index} `));
  expect(about(1)).toEqual([
    { weight: "stop", sentence: expect.stringMatching(/picks "late" as d0 of load 6.*enter a number, or automatic/) },
  ]);
  expect(about(2)).toEqual([
    {
      weight: "stop",
      sentence: expect.stringMatching(/"logtime" as cv by of load 7.*log time, root time or automatic/),
    },
  ]);
  expect(about(3)).toEqual([{ weight: "stop", sentence: expect.stringContaining("there is no such load") }]);
  expect(about(4)).toEqual([{ weight: "look", sentence: expect.stringContaining("unfinished and not used") }]);
  expect(about(5)).toEqual([
    { weight: "look", sentence: expect.stringContaining("tail from of load 9 without reason and initials") },
  ]);
});

test("the check names the words of picks as a German sheet has them", async () => {
  const values = await namedValues(typed([7, "cv by", "", "drawn", "r", "XY"], [8, "procedure", "", "aided"]));
  const said = checkSheet(names, values).findings.map(({ sentence }) => inOneLanguage("de")(sentence));
  expect(said).toEqual(
    expect.arrayContaining([
      expect.stringMatching(/„gezeichnet“ als cv nach .*log t, Wurzel t oder automatisch/),
      expect.stringMatching(/Verfahren .*Grund und Kürzel/),
    ]),
  );
});

describe("picks of the compression curve", () => {
  const picked = [
    ["curve", "virgin from", 200, 400, "flatter at first", "XY", 48_000.5],
    ["curve", "virgin to", 3200, 1600, "flatter at first", "XY", 48_000.5],
    ["curve", "greatest curvature", "", 90, "by eye", "XY", 48_000.75],
    ["curve", "unloading from", "", 100, "by eye", "XY", 48_000.75],
  ];
  let sheet: Calculated;
  let record: TestRecord;
  beforeAll(async () => {
    const filled = typed(...picked);
    sheet = await calculate(filled);
    record = readRecord(await namedValues(filled));
  });
  const number = (name: string): number => sheet.value(name) as number;

  test("change the stress, the indices and the field curve as the worksheet functions do with the same picks", () => {
    expect(sheet.errors).toEqual([]);
    const column = (name: string) => demoTest("SI").readings.map((_, index) => [sheet.value(name, index)]);
    const [stresses, values] = [column("load_stress"), column("void_ratio_curve")];
    const picks = picked.map(([, name, , value]) => [name, value]);
    const e0 = number("void_ratio_initial");
    expect(number("preconsolidation_stress")).toBe(
      PRECONSOLIDATION(stresses, values, "casagrande", "stress", "e", picks, null, e0)[0][0],
    );
    expect(number("compression_index")).toBe(COMPRESSION_INDEX(stresses, values, null, null, "e", picks));
    expect(number("swelling_index")).toBe(SWELLING_INDEX(stresses, values, null, null, "e", picks));
    for (const name of ["preconsolidation_stress", "compression_index", "swelling_index", "field_compression_index"])
      expect(number(name)).not.toBeCloseTo(blank.value(name) as number, 4);
    expect(sheet.value("preconsolidation_spread")).toEqual(blank.value("preconsolidation_spread"));
  });

  test("are named beside the values that they change, and leave the loads as they are", () => {
    expect([0, 1, 2, 3].map((index) => sheet.value("pick_remark", index))).toEqual(Array(4).fill("used"));
    expect(sheet.value("adopted_source", 0)).toBe("as by Casagrande, by a pick");
    expect(sheet.value("adopted_source", 1)).toBe("as by the virgin line, by a pick");
    expect(sheet.value("adopted_source", 2)).toBe("as by loop or unloading");
    expect(sheet.value("preconsolidation_remark")).toMatch(
      /picked by hand: virgin from = 400, virgin to = 1600.*picked by hand: greatest curvature = 90/,
    );
    for (const load of [4, 5, 6]) expect(row(sheet, load, CURVE)).toEqual(row(blank, load, CURVE));
  });

  test("are in the record, and the test is reduced again with them to the numbers of the sheet", () => {
    expect(record.faults).toEqual([]);
    expect(record.picks[0]).toMatchObject({ load: "curve", of: "virgin_from", before: 200, after: 400 });
    expect(record.overrides.map(({ of }) => of)).toEqual([
      "virgin_from of the curve",
      "virgin_to of the curve",
      "greatest_curvature of the curve",
      "unloading_from of the curve",
    ]);
    const again = reduced(record);
    expect(again.preconsolidation).toMatchObject({ ok: true, value: { stress: expect.any(Number) } });
    const value = (outcome: Outcome<{ value: number }>) => (outcome.ok ? outcome.value.value : NaN);
    expect(value(again.compressionIndex)).toBeCloseTo(number("compression_index"), 9);
    expect(value(again.swellingIndex)).toBeCloseTo(number("swelling_index"), 9);
    expect(again.preconsolidation.ok && again.preconsolidation.value.stress).toBeCloseTo(
      number("preconsolidation_stress"),
      9,
    );
  });

  test("are named beside the stress only if its method uses them", async () => {
    const byWork = async (...rows: readonly Row[]): Promise<CellValue> => {
      const filled = fillSheet(typed(...rows), { preconsolidation_method: ["Work"] });
      return (await calculate(filled)).value("adopted_source", 0);
    };
    expect(await byWork(...picked.slice(2))).toBe("as by Work");
    expect(await byWork(...picked)).toBe("as by Work, by a pick");
  });

  test("of a sheet of version 5 are no picks: its formulas do not read them", async () => {
    const filled = fillSheet(typed(...picked), { template_version: [5] });
    const old = readRecord({ ...(await namedValues(filled)), template_version: [[5]] });
    expect(old.picks.map(({ load }) => load)).toEqual([undefined, undefined, undefined, undefined]);
    expect(old.overrides).toEqual([]);
    expect(old.faults[0].name).toBe("pick_load");
  });

  test("that do not fit the curve are refused by name", async () => {
    const wrong = await calculate(
      typed(["curve", "virgin from", "", 1600, "r", "XY"], ["curve", "virgin to", "", 400, "r", "XY"]),
    );
    expect(wrong.errors.some((error) => /the picked virgin from \(1600\) must lie below virgin to/.test(error))).toBe(
      true,
    );
    const other = await calculate(typed(["curve", "d0", "", 400, "r", "XY"], [6, "virgin from", "", 400, "r", "XY"]));
    expect([0, 1].map((index) => other.value("pick_remark", index))).toEqual(Array(2).fill("cannot be used"));
  });
});

test("a word that is no construction, or no procedure, is refused by its cell, and no cell shows an error", async () => {
  const filled = typed(
    [6, "cv by", "", "square root", "typed by mistake", "XY"],
    [5, "procedure", "", "by hand", "x", "XY"],
  );
  const sheet = await calculate(filled);
  expect(sheet.errors).toEqual([]);
  const box = filled.names.pick_after!;
  const at = (row: number) => cellAddress(box.row + row, box.col);
  expect(sheet.value("choice_remark")).toBe(
    `Pick by hand of cv by, ${at(0)}: enter log time or root time, or automatic. ` +
      `Pick by hand of procedure, ${at(1)}: enter aided or drawn, or automatic. `,
  );
  expect(String(sheet.value("missing_inputs"))).toContain(
    `Pick by hand of cv by, ${at(0)}: enter log time or root time`,
  );
  // The load whose construction is not known has none of its results; the others keep theirs.
  expect(["load_method", "cv_chosen", "deformation_d100"].map((name) => sheet.value(name, 5))).toEqual(["", "", ""]);
  expect(sheet.value("cv_chosen", 6)).toBe(blank.value("cv_chosen", 6));
});
