/**
 * The report of a data sheet: every required item is shown or listed as missing, is live, and the report is always
 * complete.
 */
import { blankSheet, demoSheet, fillSheet } from "../../src/datasheet";
import { runChecks } from "../../src/checks";
import { readRecord, type NamedValues } from "../../src/record/record";
import { REQUIRED } from "../../src/specification/required";
import { reportSheet, type ReportSource } from "../../src/report/report";
import { loadSteps } from "../../src/reduction/curve/loads";
import { LOG_TIME } from "../../src/functions/increment";
import { BELOW_HEADING, COLUMNS, HEADING_HEIGHT, ROW_HEIGHT, roomFrom, TITLE_HEIGHT } from "../../src/report/page/page";
import { english, say, verbatim } from "../../src/reduction/message";
import { cellAddress, quoted } from "../../src/workbook/address";
import { DataCells } from "../../src/report/page/source";
import { pointsOf, wrapped } from "../../src/report/page/text";
import type { EmbeddedPort } from "../../src/workbook/embedded";
import type { Box, CellValue, SheetPlan } from "../../src/workbook/port";
import { withoutNames, withValues } from "../datasheet/read-sheet";
import { opened } from "../workbook/embedded/opened";
import { cellsOf, reported, sourceOf, type Reported } from "./report-in-engine";

let port: EmbeddedPort;
let sheet: string;
let source: ReportSource;

beforeAll(async () => {
  ({ port, sheet } = await opened(demoSheet("SI")));
  source = await sourceOf(port, sheet);
});

/** The source with cells changed by a person, or names removed. */
function changed(
  changes: Record<string, CellValue | readonly CellValue[]>,
  without: readonly string[] = [],
): ReportSource {
  const values = withoutNames(withValues(source.values, changes), ...without);
  const names = source.names.filter(({ name }) => !without.includes(name));
  return { ...source, values, names, record: readRecord(values) };
}

const onPages = (plan: SheetPlan) => plan.cells.filter(({ col }) => col < COLUMNS);
const texts = (plan: SheetPlan): string =>
  onPages(plan)
    .map(({ value }) => value)
    .filter((value) => typeof value === "string")
    .join(" ")
    // A line of a list begins with blanks in the place of its mark.
    .replaceAll(/\s+/g, " ");

/** Values that the demonstration lacks, so that every required cell is filled. */
const FILLED = {
  laboratory: "Invented laboratory",
  tested_by: "AB",
  date_tested: 46100,
  checked_by: "CD",
  date_checked: 46101,
  date_ended: 46099,
  sample_type: "tube",
  deviations: "none",
  specimen_orientation: "vertical",
};

describe("the nineteen items", () => {
  const cases = REQUIRED.flatMap(({ item, needs, whereMeasured = [], ofLoads = [], ofSomeLoads = [] }) => [
    ...needs.map((need) => [item, typeof need === "string" ? [need] : [...need], true] as const),
    ...whereMeasured.map((need) => [item, typeof need === "string" ? [need] : [need[0]!], false] as const),
    ...ofLoads.map((name) => [item, [name], true] as const),
    ...ofSomeLoads.map((name) => [item, [name], false] as const),
  ]);

  test("have numbers 1 to 19, each with cells to look for", () => {
    expect(REQUIRED.map(({ item }) => item)).toEqual(Array.from({ length: 19 }, (_, i) => i + 1));
    expect(cases.length).toBeGreaterThan(45);
  });

  /**
   * With every cell of the table filled, with every cell blank, and with none of their names: three reports for all
   * cases.
   */
  const names = [...new Set(cases.flatMap(([, group]) => group))].filter((name) => name !== "load_stress");
  let made: Record<"filled" | "blank" | "without", ReturnType<typeof reportSheet> & { cells: DataCells }>;

  beforeAll(() => {
    const all = (value: (name: string) => CellValue) =>
      Object.fromEntries(
        names.map((name) => {
          const rows = source.values[name]?.length ?? 1;
          return [name, rows > 1 ? Array<CellValue>(rows).fill(value(name)) : value(name)];
        }),
      );
    const typed = (name: string): CellValue => {
      const before = source.values[name]?.[0]?.[0] ?? "";
      return name in FILLED ? FILLED[name as keyof typeof FILLED] : before === "" ? 0.5 : before;
    };
    const of = (one: ReportSource) => ({ ...reportSheet(one), cells: new DataCells(one) });
    made = {
      filled: of(changed({ ...FILLED, ...all(typed) })),
      blank: of(changed(all(() => ""))),
      without: of(changed({}, names)),
    };
  });

  test("nothing is missing if every cell is filled", () => expect(made.filled.missing).toEqual([]));

  test.each(cases)("item %i, %j: shown if it is there, otherwise listed with its cell", (item, group, isRequired) => {
    const references = group.map((name) => made.filled.cells.at(name)!);
    const isShown = onPages(made.filled.plan).some(({ formula }) =>
      references.some((reference) => formula?.includes(reference)),
    );
    const said = group.map((name) => made.filled.cells.text(name)).filter((text) => text.length > 3);
    expect(isShown || said.some((text) => texts(made.filled.plan).includes(text))).toBe(true);
    if (group.includes("load_stress")) return;

    const about = (report: ReturnType<typeof reportSheet>) =>
      report.missing.filter((one) => one.item === item && english(one.sentence).includes(`(${group[0]})`));
    expect(about(made.blank)).toEqual([expect.objectContaining({ isRequired })]);
    for (const name of group) {
      const place = made.blank.cells.place(name)!;
      expect(english(about(made.blank)[0].sentence)).toContain(`${place.includes(":") ? "cells" : "cell"} ${place}`);
    }
    expect(texts(made.blank.plan)).toContain(english(about(made.blank)[0].sentence).split(",")[0]);
    expect(about(made.without)).toEqual([expect.objectContaining({ isRequired })]);
    expect(english(about(made.without)[0].sentence)).toContain("no cell of this name on the sheet");
  });

  test("a sheet without a load says so, and lists the plots that cannot be drawn", () => {
    const { missing } = reportSheet(changed({ load_stress: Array(24).fill(""), ...noReadings() }));
    expect(missing.find(({ item, sentence }) => item === 12 && english(sentence).includes("holds none"))).toBeDefined();
    expect(
      missing
        .filter(({ item }) => item === 15)
        .map(({ sentence }) => english(sentence))
        .join(),
    ).toMatch(/compression curve.*cv against stress.*time curves/s);
  });

  test("loads with the same remark are listed in runs", () => {
    const { plan } = reportSheet(changed({ load_remark: Array(16).fill("not corrected for the apparatus") }));
    expect(texts(plan)).toContain("Loads 1 to 16: not corrected for the apparatus");
    expect(texts(plan)).toContain("On the specimen; On the curve; On the field curve; On the sample: ok");
    // The table of methods says it already, unless a person typed another verdict.
    expect(texts(plan)).not.toContain("On every method: ");
    const { plan: typed } = reportSheet(changed({ preconsolidation_verdict: "agreed with the client" }));
    expect(texts(typed)).toContain("On every method: agreed with the client");
  });

  test("loads with remarks that differ in one number are listed together, with their numbers in the order of the loads", () => {
    const said = "initial compression is 28, 28, 23, 24, 29, 30, 28 % of the movement: gas, bedding";
    expect(texts(reportSheet(source).plan)).toContain(`Loads 7 to 10, 14 to 16: ${said}`);
  });

  test("the numbers that a check compared follow its sentence only where the sentence does not have them", () => {
    const text = texts(reportSheet(source).plan);
    expect(text).toContain("more than 15 %; look at both plots Basis: common practice.");
    expect(text).toContain("[cells missing 5 against cells required 42] Basis:");
  });

  test("the required items of one number are listed in one line", () => {
    expect(texts(reportSheet(source).plan)).toMatch(/\(1\) Laboratory [^;]*; Tested by [^;]*; Date tested /);
  });

  test("loads that lack the same item are listed in runs", () => {
    const lacking = (name: string): string[] =>
      reportSheet(changed({}))
        .missing.map(({ sentence }) => english(sentence))
        .filter((sentence) => sentence.includes(`(${name})`));
    expect(lacking("load_temperature")).toEqual([
      expect.stringMatching(/, of loads 1 to 16: no temperature was entered$/),
    ]);
    expect(lacking("c_alpha")).toEqual([expect.stringMatching(/, of loads 1, 7, 8, 14 to 16: /)]);
  });

  test("a load without readings is listed as missing its duration", () => {
    const { missing } = reportSheet(changed({ readings_03: Array(2000).fill("") }));
    expect(missing.find(({ item, sentence }) => item === 11 && english(sentence).includes("load 3"))).toBeDefined();
  });

  test.each(["A4", "Letter"] as const)("on %s the last page has more than a few lines", (paper) => {
    const { pages = [] } = reportSheet({ ...source, paper }).plan;
    expect(pages.at(-1)!.rows).toBeGreaterThanOrEqual(12);
    for (const { rows } of pages.slice(0, -1)) expect(rows).toBeGreaterThan(paper === "A4" ? 57 : 50);
  });

  test("a row of headings is higher than a line, so that the rule below it cuts no letter", () => {
    const { cells, rowHeights } = reportSheet(source).plan;
    const rows = new Set(cells.flatMap(({ kind, col, row }) => (kind === "heading" && col < COLUMNS ? [row] : [])));
    expect(rows.size).toBeGreaterThan(20);
    expect(new Set([...rows].map((row) => rowHeights![row]))).toEqual(new Set([HEADING_HEIGHT]));
    const below = [...rows].filter((row) => !rows.has(row + 1)).map((row) => rowHeights![row + 1]);
    expect(new Set(below)).toEqual(new Set([BELOW_HEADING]));
  });

  test("no unit stands beside a value that is missing", async () => {
    const unitsOf = async (made: Promise<Reported>) => {
      const cells = cellsOf(await made);
      const beside = (label: string) => {
        const { row, col } = cells.find(({ text }) => text === label)!;
        return [3, 4].map((right) => cells.find((one) => one.row === row && one.col === col + right)!.text);
      };
      return ["Swelling pressure", "Seating stress", "Janbu"].map(beside);
    };
    expect(await unitsOf(reported(demoSheet("SI")))).toEqual([
      ["-", ""],
      ["5.0", "kPa"],
      ["-", ""],
    ]);
    const typed = { swelling_pressure: 40, seating_stress: "" };
    expect(await unitsOf(reported(fillSheet(demoSheet("SI"), typed)))).toEqual([
      ["40.0", "kPa"],
      ["-", ""],
      ["-", ""],
    ]);
  });

  test("temperatures have a table of their own, and a test without them has no blank columns for them", () => {
    const headings = (plan: SheetPlan) => onPages(plan).map(({ value }) => value);
    const title = "Temperatures of the loads, and points of the curve";
    expect(headings(reportSheet(source).plan)).not.toContain(title);
    const { plan } = reportSheet(changed({ load_temperature: [20, 20.5], cv_20: ["", 14.1] }));
    expect(headings(plan)).toEqual(expect.arrayContaining([title, "Temper-", "cv at"]));
    expect(headings(plan)).not.toContain("point at");
    const from = new DataCells(source).at("load_temperature", 1)!;
    expect(onPages(plan).some(({ formula }) => formula?.includes(from))).toBe(true);
  });

  test("a reviewer finds d0 of each load, the wet masses, the zero reading and the dial factor", async () => {
    const made = await reported(demoSheet("SI"));
    const cells = cellsOf(made).filter(({ col }) => col < COLUMNS);
    const at = (text: string, right: number) => {
      const label = cells.find((one) => one.text === text)!;
      return cells.find(({ row, col }) => row === label.row && col === label.col + right)!;
    };
    const value = (name: string): number => Number(source.values[name]![0]![0]);
    expect(at("Initial wet mass", 3).value).toBeCloseTo(value("ring_and_wet_before") - value("ring_mass"), 9);
    expect(at("Final wet mass", 3).value).toBeCloseTo(value("ring_and_wet_after") - value("ring_mass"), 9);
    expect(at("Zero reading", 3).value).toBe(value("zero_reading"));
    expect(at("Dial factor", 3).value).toBe(value("dial_factor"));
    const [log, root] = cells.filter(({ text }) => text === "d0");
    for (const [{ row, col }, name] of [
      [log!, "log_d0"],
      [root!, "root_d0"],
    ] as const) {
      const column = cells.filter((one) => one.col === col && one.row > row + 2 && one.row <= row + 18);
      const known = source.values[name]!.slice(0, 16).map(([one]) => (typeof one === "number" ? one : "-"));
      expect(column.map((one) => one.value)).toEqual(known);
    }
  });

  test("k is a number under a unit with its power of ten: k is never shown as 3.0E-09", async () => {
    const made = await reported(demoSheet("SI"));
    const cells = cellsOf(made).filter(({ col }) => col < COLUMNS);
    expect(cells.filter(({ text }) => /\dE-\d/.test(text))).toEqual([]);
    const heading = cells.find(({ text }) => text === "k")!;
    expect(cells.find(({ row, col }) => row === heading.row + 2 && col === heading.col)!.text).toBe("10⁻⁹ m/s");
    const second = cells.find(({ row, col }) => row === heading.row + 4 && col === heading.col)!;
    expect(second.value).toBeCloseTo(Number(source.values.conductivity![1]![0]) * 1e9, 9);
    expect(second.text).toBe("3.0");
  });

  test.each(["A4", "Letter"] as const)(
    "on %s the time curves of all 16 loads stand on one page, in small charts",
    (paper) => {
      const { plan } = reportSheet({ ...source, paper });
      const small = plan.charts!.filter(({ isSmall }) => isSmall);
      expect(small).toHaveLength(16);
      const pageOf = ({ row }: Box) => plan.pages!.findIndex((page) => row >= page.row && row < page.row + page.rows);
      expect(new Set(small.map(({ box }) => pageOf(box))).size).toBe(1);
      expect(Math.min(...small.map(({ box }) => box.rows))).toBeGreaterThanOrEqual(paper === "A4" ? 11 : 8);
      // The larger plots: the curve of the first page apart.
      const large = plan.charts!.filter(({ isSmall, box }) => !isSmall && pageOf(box) > 0);
      expect(Math.min(...large.map(({ box }) => box.rows))).toBeGreaterThanOrEqual(paper === "A4" ? 20 : 14);
    },
  );

  test("the time curve of each load is plotted, and the compression curve and cv", () => {
    const { plan } = reportSheet(source);
    expect(plan.charts).toHaveLength(16 + 5);
    expect(
      plan.charts!.every(({ box }) =>
        plan.pages!.some((page) => box.row >= page.row && box.row + box.rows <= page.row + page.rows),
      ),
    ).toBe(true);
  });
});

const noReadings = () =>
  Object.fromEntries(
    Array.from({ length: 24 }, (_, i) => [
      `readings_${String(i + 1).padStart(2, "0")}`,
      [...Array(2000)].map(() => ""),
    ]),
  );

test("the first page and the check Q22 name a dial that was reset, in the words of the load's remark", () => {
  const readings = source.values.readings_05!.map(([reading], index) => Number(reading) + (index > 8 ? 600 : 0));
  const { record, ...reset } = changed({ readings_05: readings });
  const plan = reportSheet({ ...reset, record, answered: runChecks(record) }).plan;
  const said = "the readings jump by";
  const rows = onPages(plan).filter(({ value }) => String(value).includes(said));
  const signed = onPages(plan).find(({ value }) => value === "Signed")!.row;
  expect(rows.filter(({ row }) => row < signed).map(({ value }) => String(value))).toEqual([
    expect.stringMatching(/^Load 5: the readings jump by \d+ at row 10 \(30 min\), and follow/),
  ]);
  expect(rows.map(({ value }) => String(value)).join(" ")).toMatch(/Q22 \(explain\).*readings jump by/);
});

describe("entries of a person", () => {
  test("a long remark is printed in full, in lines that fit", () => {
    const long = Array.from({ length: 120 }, (_, i) => `word${i}`).join(" ");
    const { plan } = reportSheet(changed({ test_remarks: long }));
    expect(texts(plan)).toContain(long);
    for (const { value, kind, col } of onPages(plan))
      if (typeof value === "string")
        expect([value, pointsOf(value, kind) <= roomFrom(col) + 40]).toEqual([value, true]);
  });

  test("picks by hand are listed with before, after, reason, who and when; a replaced one says so", () => {
    const { plan } = reportSheet(
      changed({
        pick_load: [3, 3],
        pick_of: ["d100", "d100"],
        pick_before: [512.3, 515],
        pick_after: [515, 516],
        pick_reason: ["the tail is bent", "read again"],
        pick_by: ["AB", "CD"],
        pick_when: [46100.5, 46101.5],
      }),
    );
    const text = texts(plan);
    expect(text).toContain(
      "Load 3, d100: 512.3 was replaced by 515. Reason: the tail is bent. By AB, 2026-03-19 12:00. Replaced again below.",
    );
    expect(text).toContain("515 was replaced by 516. Reason: read again. By CD, 2026-03-20 12:00.");
  });

  test("a pick of the compression curve is listed, named among the methods, and passed to the indices", () => {
    const { plan } = reportSheet(
      changed({
        pick_load: ["curve"],
        pick_of: ["virgin to"],
        pick_before: [3200],
        pick_after: [1600],
        pick_reason: ["the last load is flatter"],
        pick_by: ["AB"],
        pick_when: [46100.5],
      }),
    );
    expect(texts(plan)).toContain("The curve, virgin to: 3200 was replaced by 1600. Reason: the last load is flatter.");
    expect(texts(plan)).toContain("Lines of the compression curve were picked by hand");
    const formulas = plan.cells.flatMap(({ formula }) => formula ?? []);
    expect(formulas.some((formula) => /COMPRESSION_INDICES\(.*CLAY.LOAD_PICKS\("curve"/.test(formula))).toBe(true);
    expect(formulas.some((formula) => /PRECONSOLIDATION_LINES\(.*CLAY.LOAD_PICKS\("curve"/.test(formula))).toBe(true);
  });

  test("the first page names the method of the preconsolidation stress, unless another stress was adopted", () => {
    const said = (one: ReportSource) => reportSheet(one).plan.cells.map(({ value }) => String(value));
    expect(said(changed({}))).toContainEqual(
      expect.stringMatching(/^Preconsolidation stress \(Casagrande\): well defined/),
    );
    expect(said(changed({ preconsolidation_method: "Work" }))).toContainEqual(
      expect.stringMatching(/^Preconsolidation stress \(Work\): /),
    );
    const adopted = said(changed({ adopted_value: [180], adopted_reason: ["agreed"], adopted_by: ["AB"] }));
    expect(adopted).toContainEqual(expect.stringMatching(/^On the preconsolidation stress: /));
    expect(adopted).not.toContainEqual(expect.stringMatching(/^Preconsolidation stress \(Casagrande\): /));
  });

  test("the method chosen and the adopted values are named among the methods, beside picks as well", () => {
    const { plan } = reportSheet(
      changed({
        preconsolidation_method: "Work",
        adopted_value: ["", 0.6],
        adopted_reason: ["", "agreed"],
        adopted_by: ["", "AB"],
        adopted_cv: ["", 1.25],
        adopted_cv_by: ["", "CD"],
        adopted_cv_day: ["", 46100],
        pick_load: [3],
        pick_of: ["d100"],
        pick_after: [515],
        pick_reason: ["bent"],
        pick_by: ["AB"],
      }),
    );
    expect(texts(plan)).toContain("Preconsolidation stress: Work, Becker et al. (1987).");
    expect(texts(plan)).toContain("used in all that follows: Compression index Cc, cv, virgin; by whom");
    expect(texts(plan)).toContain("cv, virgin, adopted: 1.25 m2/yr. Reason: (not said). By CD, 2026-03-19.");
    expect(texts(plan)).toContain("Compression index Cc, adopted: 0.6. Reason: agreed. By AB, (not said).");
  });

  test("checks that did not pass are printed with the numbers compared and with their acknowledgement", () => {
    const { plan } = reportSheet({ ...source, acknowledged: { Q63: say`seen by ${verbatim("EF")}` } });
    const open = source.answered.filter(({ answer }) => ["stop", "explain", "note"].includes(answer.status));
    expect(open.length).toBeGreaterThan(0);
    for (const { check } of open) expect(texts(plan)).toContain(`${check.id} (`);
    expect(texts(plan)).toContain("Acknowledged: seen by EF.");
  });

  test("single drainage is mentioned where the constructions are described; double drainage, the usual, is not", () => {
    const said = "Single drainage was chosen: Hdr is that whole height, and cv is 4 times that of double drainage.";
    expect(texts(reportSheet(changed({ drainage: "single" })).plan)).toContain(said);
    expect(texts(reportSheet(changed({ drainage: "einseitig" })).plan)).toContain(said);
    expect(texts(reportSheet(changed({ drainage: "double" })).plan)).not.toContain("Single drainage");
  });

  test("an assumed specific gravity is mentioned twice", () => {
    const { plan } = reportSheet(changed({ specific_gravity_basis: "assumed" }));
    expect(texts(plan)).toContain("ASSUMED: the specific gravity");
    const limit = plan.cells.find(
      ({ row, col }) => row === plan.names.limit_gravity.row && col === plan.names.limit_gravity.col,
    );
    expect(limit!.value).toBe(0.05);
  });
});

describe("a reviewer who recomputes from the printed figures", () => {
  /** A number as a format of fixed decimals prints it. */
  const inPrint = (value: number, format: string): number =>
    Number(value.toFixed(/^0(?:\.(0+))?$/.exec(format)?.[1]?.length ?? 0));

  test.each([
    ["log time", "log_t50", "height_middle", "cv_log_time", 0.197],
    ["root time", "root_t90", "height_middle_root", "cv_root_time", 0.848],
  ])("by %s finds cv from the time and the height, within half a percent", async (_, ofTime, ofHeight, ofCv, T) => {
    const { cells } = reportSheet(source).plan;
    const data = await port.readNames(sheet, [ofTime, ofHeight, ofCv]);
    const place = (name: string, row: number): string => new DataCells(source).at(name, row)!;
    const rows = data[ofCv]!.flatMap(([cv], row) => (typeof cv === "number" ? [row] : []));
    expect(rows.length).toBeGreaterThan(8);
    for (const row of rows) {
      const [time, height, cv] = [ofTime, ofHeight, ofCv].map((name) => Number(data[name]![row]![0]));
      const { format } = cells.find(({ formula }) => formula?.includes(place(ofTime, row)))!;
      // mm2 in a minute are 0.52596 m2 in a year of 365.25 days.
      const found = ((T * (inPrint(height!, "0.000") / 2) ** 2) / inPrint(time!, format!)) * 0.52596;
      expect(Math.abs(found / cv! - 1)).toBeLessThan(0.0052);
    }
  });

  test("finds the final void ratio from the two heights, within a unit of its last digit", async () => {
    const { cells } = reportSheet(source).plan;
    const names = ["solids_height", "final_height", "void_ratio_final"];
    const data = await port.readNames(sheet, names);
    const [Hs, Hf, e] = names.map((name) => {
      const reference = new DataCells(source).at(name)!;
      const { format } = cells.find(({ formula }) => formula?.includes(reference))!;
      return inPrint(Number(data[name]![0]![0]), format!);
    });
    expect([Hs, Hf].map((height) => String(height).split(".")[1]?.length)).toEqual([3, 3]);
    expect(Math.abs(Hf! / Hs! - 1 - e!)).toBeLessThan(0.001);
  });

  test("reads a modulus in kPa without decimals that nobody measured", () => {
    const { formula, format } = reportSheet(source).plan.cells.find(({ formula }) =>
      formula?.includes(new DataCells(source).at("design_modulus")!),
    )!;
    expect(formula).toBeDefined();
    expect([source.values.design_modulus?.[0]?.[0], format]).toEqual([expect.any(Number), "0"]);
  });
});

describe("the two procedures of a construction", () => {
  const printed = (given: ReportSource) => texts(reportSheet(given).plan);

  /** What stands in a column of the table of time curves beside a load, by the two lines of the heading. */
  const besideLoad = (plan: SheetPlan, load: number, first: string, second: string) => {
    const cells = onPages(plan);
    const heading = cells.find(
      ({ row, col, value }) =>
        value === first && cells.some((one) => one.row === row + 1 && one.col === col && one.value === second),
    )!;
    const { row } = cells.find((one) => one.row > heading.row && one.col === 0 && one.value === load)!;
    return cells.find((one) => one.row === row && one.col === heading.col)!;
  };

  test.each([
    ["aided", {}],
    ["drawn", { pick_load: [6], pick_of: ["procedure"], pick_after: ["drawn"] }],
  ] as const)("beside the %s construction in use stands what the function gives the other way", (inUse, picks) => {
    const { plan } = reportSheet(changed(picks));
    const column = (name: string) => source.values[name].map(([cell]) => [cell]);
    const none = [undefined, undefined, undefined, undefined] as const;
    const by = (way: string, item: string) =>
      LOG_TIME(column("times_06"), column("readings_06"), undefined, item, ...none, way)[0][0] as number;
    const other = inUse === "aided" ? "drawn" : "aided";
    for (const item of ["t50", "d100"]) {
      expect(by(inUse, item)).not.toBe(by(other, item));
      expect(besideLoad(plan, 6, `${item} log`, "other way").value).toBeCloseTo(by(other, item), 9);
    }
    expect(besideLoad(plan, 6, "t50", "log time").formula).toContain(new DataCells(source).at("log_t50", 5));
  });

  test("levels have the decimals of the readings and one more", () => {
    const { plan } = reportSheet(source);
    const loads = [...Array(15).keys()].map((index) => index + 2);
    const levels = ["d100 log", "d100 root"].flatMap((level) =>
      loads.map((load) => besideLoad(plan, load, level, "other way")),
    );
    expect(levels.filter(({ value }) => typeof value === "number").length).toBeGreaterThan(20);
    expect(new Set(levels.map(({ format }) => format))).toEqual(new Set(["0.0"]));
  });

  test("the methods name the procedure that counts, for the test and for a load", () => {
    expect(printed(source)).toContain("The constructions are made aided");
    expect(printed(changed({ time_procedure: "drawn" }))).toContain("The constructions of every load are drawn");
    const one = changed({ pick_load: [6], pick_of: ["procedure"], pick_after: ["drawn"] });
    expect(printed(one)).toContain("The constructions of load 6 are drawn");
  });

  test("the methods name the temperature of the water whose density is used", () => {
    expect(printed(source)).toContain("taken as 1.000 g/cm3");
    expect(printed(changed({ test_temperature: 22 }))).toContain(
      "The density of water is that at the temperature of the test",
    );
  });
});

test("a sheet's name is quoted, and an apostrophe doubled", () => {
  expect(quoted("Bob's {a} 5\" ring")).toBe("'Bob''s {a} 5\" ring'");
  const { plan } = reportSheet({ ...source, sheet: "Bob's test" });
  const formulas = onPages(plan).flatMap(({ formula }) => formula ?? []);
  expect(formulas.some((formula) => formula.includes("'Bob''s test'!$"))).toBe(true);
  expect(formulas.some((formula) => formula.includes("'Bob's"))).toBe(false);
});

test("lines keep the whole text, however long its words", () => {
  const text = `a ${"x".repeat(95)} bc ${"y".repeat(10)}`;
  const lines = wrapped(text, 40);
  expect(Math.max(...lines.map(({ length }) => length))).toBeLessThanOrEqual(40);
  expect(lines.join("").replace(/ /g, "")).toBe(text.replace(/ /g, ""));
});

test.each([
  ["A4", 72, 6],
  ["Letter", 65, 6],
] as const)(
  "no page of %s has more rows than fit on the paper, and none cuts a chart or a name",
  (paper, most, pages) => {
    const { plan } = reportSheet({ ...source, paper });
    expect(plan.paper).toBe(paper);
    expect(plan.pages).toHaveLength(pages);
    const points = ({ row, rows }: Box) =>
      Array.from({ length: rows }, (_, index) => plan.rowHeights![row + index]).reduce(
        (sum, height) => sum + height,
        0,
      );
    for (const page of plan.pages!)
      expect(points(page)).toBeLessThanOrEqual(most * ROW_HEIGHT + (page.row === 0 ? TITLE_HEIGHT - ROW_HEIGHT : 0));
    plan.pages!.slice(1).forEach((page, i) => expect(page.row).toBe(plan.pages![i].row + plan.pages![i].rows));
  },
);

describe("in the workbook", () => {
  let made: Reported;

  beforeAll(async () => {
    made = { port, sheet, ...reportSheet(source), report: "" };
    made = { ...made, report: await port.insertSheet(made.plan) };
  });

  const at = (name: string) => {
    const { row, col } = made.plan.names[name];
    return cellsOf(made).find((cell) => cell.row === row && cell.col === col)!;
  };

  test("no cell of its pages shows an error or NaN", () => {
    const wrong = cellsOf(made).filter(({ col, text }) => col < COLUMNS && /^#|NaN|Infinity|^error$/.test(text));
    expect(wrong).toEqual([]);
    expect(at("report_state").text).toBe("The data sheet still says what it said when this report was made.");
  });

  test("digits are e 0.001, strain 0.01 %, w 0.1 %, and the preconsolidation stress in two figures beside the full one", () => {
    const shown = cellsOf(made);
    const beside = (label: string): string => {
      const { row, col } = shown.find(({ text, col: at }) => at === 0 && text.startsWith(label))!;
      return shown.find((cell) => cell.row === row && cell.col === col + 3)!.text;
    };
    expect(beside("Initial void ratio e0")).toMatch(/^\d\.\d{3}$/);
    expect(beside("Initial water content w0")).toMatch(/^\d+\.\d%$/);
    expect(beside("Preconsolidation stress, kPa")).toMatch(/^1\d0$/);
    expect(beside("  before rounding (for OCR)")).toMatch(/^1\d\d\.\d$/);
    const notes = shown.filter(({ col, text }) => col === 0 && text !== "").map(({ text }) => text);
    expect(notes.join(" ")).toContain("OCR and design values follow from the number before rounding");
  });

  test("beside an adopted stress stands the one that the constructions give", () => {
    const adopted = { adopted_value: [183.5], adopted_reason: ["agreed"], adopted_by: ["AB"] };
    const { plan } = reportSheet(changed({ ...adopted, preconsolidation_stress: [183.5] }));
    const label = plan.cells.find(({ value }) => value === "  by the construction")!;
    const cell = plan.cells.find(({ row, col }) => row === label.row && col === 3)!;
    const { formula, format } = plan.cells.find(({ row, col }) => row === label.row - 1 && col === 3)!;
    expect(cell.formula).not.toBe(formula);
    // The adopted stress keeps the digits that the engineer typed.
    expect(formula).not.toContain("ROUND(");
    expect(format).toBe("0.0");
    const { row, col } = source.names.find(({ name }) => name === "adopted_constructed")!.place as Box;
    expect(cell.formula?.replaceAll("$", "")).toContain(cellAddress(row, col));
  });

  test("where the constructions refuse the curve, the first page shows no error, and says why", async () => {
    const refused =
      "no bend in the curve: it is steep from the first loads on, so yield lies below them; begin at lower loads";
    const { plan } = reportSheet(
      changed({
        adopted_value: [180],
        adopted_reason: ["agreed"],
        adopted_by: ["AB"],
        preconsolidation_spread: ["#N/A", ...Array<string>(source.values.preconsolidation_spread!.length - 1).fill("")],
        preconsolidation_verdict: "",
        preconsolidation_remark: refused,
      }),
    );
    const beside = (label: string, col: number): string | undefined => {
      const { row } = plan.cells.find(({ value, col: at }) => at === 0 && value === label)!;
      return plan.cells.find((cell) => cell.row === row && cell.col === col)?.formula;
    };
    expect(beside("  by the construction", 3)).toMatch(/^=IF\(ISNA\(.*\),"-",/);
    const first = plan.cells.filter(({ col }) => col === 0).map(({ value }) => String(value));
    expect(first.find((one) => one.startsWith("On the preconsolidation stress: "))).toContain("no bend in the curve");
    expect(first).toContain("The methods gave nothing: the curve has no points, or they do not apply to it.");
  });

  test("cv of virgin loads leaves out reloads beyond the preconsolidation stress", async () => {
    const shown = cellsOf(made);
    const { row } = shown.find(({ text, col }) => col === 0 && text.startsWith("cv of virgin loads"))!;
    const [from, to] = [4, 5].map((col) => Number(shown.find((cell) => cell.row === row && cell.col === col)!.value));
    const column = (name: string) => source.values[name]!.map(([value]) => (typeof value === "number" ? value : null));
    const [yieldStress] = column("preconsolidation_stress");
    const steps = loadSteps(column("load_stress"), { before: 5, preconsolidationStress: yieldStress! });
    const cvs = (kind: string) => column("cv_chosen").filter((cv, index) => cv !== null && steps[index]?.kind === kind);
    const virgin = cvs("virgin").map(Number);
    expect([from, to]).toEqual([Math.min(...virgin), Math.max(...virgin)]);
    // The demonstration has a reload beyond the preconsolidation stress with a greater cv.
    expect(Math.max(...cvs("reload").map(Number))).toBeGreaterThan(to! * 2);
  });

  const places = ["preconsolidation_stress", "preconsolidation_low", "preconsolidation_high"];
  const stressReported = { col: 3, label: "Preconsolidation stress, kPa" };

  test.each([
    [[194.2, 188.4, 215], "190"],
    [[194.2, 194, 215], "194"],
    [[86, "", ""], "86"],
  ] as const)("of %j, the stress and its range, %s is reported: it lies in its range", async (values, shown) => {
    await port.protect(sheet, false);
    const { model } = made.port.workbook;
    const sheetId = model.getters.getSheetIdByName(sheet)!;
    const cells = places.map((name) => source.names.find((one) => one.name === name)!.place as Box);
    const before = cells.map(({ row, col }) => model.getters.getCellText({ sheetId, row, col }, { showFormula: true }));
    const fill = (contents: readonly CellValue[]) =>
      cells.forEach(({ row, col }, index) =>
        model.dispatch("UPDATE_CELL", { sheetId, row, col, content: String(contents[index]) }),
      );
    fill(values);
    const all = cellsOf(made);
    fill(before);
    await port.protect(sheet, true);
    const { row } = all.find(({ text, col }) => col === 0 && text.startsWith(stressReported.label))!;
    expect(all.find((cell) => cell.row === row && cell.col === stressReported.col)!.text).toBe(shown);
  });

  test.each([
    [[2.036, 2.02, 2.1], "0.00"],
    [[2.036, 1.9, 2.1], "0.0"],
  ] as const)("of %j, the stress and its range, the stress has the format %s", ([value, low, high], format) => {
    const { cells } = reportSheet(
      changed({ preconsolidation_stress: value, preconsolidation_low: low, preconsolidation_high: high }),
    ).plan;
    const { row } = cells.find((one) => one.col === 0 && String(one.formula).includes("Preconsolidation stress, "))!;
    expect(cells.find((cell) => cell.row === row && cell.col === stressReported.col)!.format).toBe(format);
  });

  test("a second report of the sheet gets a name of its own", async () => {
    const before = await port.sheetNames();
    const again = await port.insertSheet(reportSheet(source).plan);
    expect(before).not.toContain(again);
    expect(await port.sheetNames()).toEqual([...before, again]);
  });

  test("a changed limit of error changes the interval of e0", async () => {
    const half = () => Number(at("report_void_ratio_high").value) - Number(at("report_void_ratio_low").value);
    const before = half();
    await port.fillNames(made.report, { limit_gravity: [0.04] });
    expect(half() / before).toBeGreaterThan(1.9);
    await port.fillNames(made.report, { limit_gravity: [0.02] });
    expect(half()).toBeCloseTo(before, 12);
  });

  test("the dial factor is followed by the sense of a dial that falls on compression, and a change of it makes the report out of date", async () => {
    const { row } = cellsOf(made).find(({ text, col }) => col === 6 && text === "Dial factor")!;
    const unit = () => cellsOf(made).find((cell) => cell.row === row && cell.col === 10)!.text;
    expect(unit()).toBe("mm/div");
    await port.fillNames(sheet, { dial_sense: ["fall"] });
    expect(unit()).toBe("mm/div, falling");
    const list = cellsOf(made).find(({ text, col }) => col === COLUMNS + 1 && text.includes("dial_sense"))!;
    expect(cellsOf(made).find((cell) => cell.row === list.row && cell.col === COLUMNS + 5)!.value).toBe(1);
    await port.fillNames(sheet, { dial_sense: ["rise"] });
    expect(unit()).toBe("mm/div");
    expect(at("report_state").text).toBe("The data sheet still says what it said when this report was made.");
    // The two columns up to the edge of the page.
    for (const words of ["mm/div, falling", "mm/Skt, fallend"])
      expect(pointsOf(words, "unit")).toBeLessThan(roomFrom(10));
  });

  test("a changed reading changes the report, which says that it is out of date", async () => {
    const strains = () => port.readNames(made.report, ["report_strain"]);
    const before = await strains();
    const [readings] = [source.values.readings_06.map(([value]) => value)];
    const last = readings.filter((value) => value !== "").length - 1;
    await port.fillNames(sheet, { readings_06: [...Array(last).fill(null), Number(readings[last]) + 25] });
    expect((await strains()).report_strain[5][0]).toBeGreaterThan(Number(before.report_strain[5][0]) + 0.001);
    expect(at("report_state").text).toMatch(/^OUT OF DATE: \d+ of \d+ compared differ/);
  });
});

test("a blank sheet gives a report without errors, which lists nearly everything as missing", async () => {
  const made = await reported(blankSheet("US"), { paper: "Letter" });
  expect(cellsOf(made).filter(({ col, text }) => col < COLUMNS && /^#|NaN|^error$/.test(text))).toEqual([]);
  expect(made.missing.filter(({ isRequired }) => isRequired).length).toBeGreaterThan(30);
});

test("a firm's sheet with few names gives a report too", async () => {
  const plan = fillSheet(blankSheet("SI"), { project: "Invented", diameter: 50, initial_height: 20 });
  const kept = ["project", "diameter", "initial_height", "length_unit", "times_01", "readings_01"];
  const names = Object.fromEntries(Object.entries(plan.names).filter(([name]) => kept.includes(name)));
  const made = await reported({ ...plan, names, cells: plan.cells.filter(({ formula }) => !formula) });
  expect(cellsOf(made).filter(({ col, text }) => col < COLUMNS && /^#|NaN|^error$/.test(text))).toEqual([]);
  expect(made.missing.map(({ sentence }) => english(sentence)).join()).toContain("no cell of this name on the sheet");
});

test("the design values are live, and the report says which curve they come from and whose cv it is", () => {
  const cellsOf = (changes: NamedValues) => {
    const values = { ...source.values, ...changes };
    const { plan } = reportSheet({ ...source, values, record: readRecord(values) });
    const { cells } = plan;
    const labelled = (label: string) => {
      const at = cells.find(({ value }) => value === label);
      return cells.find(({ row, col, kind }) => row === at?.row && col === (at?.col ?? 0) + 3 && kind === "result");
    };
    return {
      labelled,
      texts: cells
        .map(({ value }) => String(value ?? ""))
        .filter(Boolean)
        .join(" "),
    };
  };
  const plain = cellsOf({});
  for (const label of ["mv over the increase", "Compression ratio CR", "cv, virgin", "Modulus number (Janbu)"])
    expect([label, plain.labelled(label)?.formula]).toEqual([label, expect.stringMatching(/^=IF.*\$[A-Z]+\$\d+/)]);
  expect(plain.texts).toContain("e, mv and M are read from the laboratory loading curve over 100 kPa.");
  expect(plain.texts).toContain("cv is interpolated between the loads on log stress.");
  expect(plain.texts).toContain("cv of a range of stress is the geometric mean of its loads of first loading");
  /** A cv adopted for another range of stress. */
  const adopted = (low: number, high: number): NamedValues => ({
    adopted_cv: [[""], [""], [0.9]],
    adopted_cv_low: [[""], [""], [low]],
    adopted_cv_high: [[""], [""], [high]],
  });
  const field = cellsOf({ design_curve: [["field"]], ...adopted(1, 2000) });
  expect(field.texts).toContain("e, mv, M and CR are read from Schmertmann's field curve");
  expect(field.texts).toContain("cv is the one adopted for the range of stress.");
  expect(cellsOf(adopted(1, 2)).texts).toContain("cv is interpolated between the loads on log stress.");
  expect(cellsOf({ in_situ_stress: [[""]] }).texts).toContain("No in-situ stress is given: only the ratios are shown.");
});
