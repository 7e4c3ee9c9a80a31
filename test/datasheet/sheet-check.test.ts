/** The findings of the sheet check on sound and on damaged sheets, in the embedded workbook. */
import { english, say } from "../../src/reduction/message";
import "../workbook/embedded/engine-in-node";
import { readFileSync } from "node:fs";
import path from "node:path";
import {
  blankSheet,
  boxAddress,
  boxOf,
  cellsToName,
  checkSheet,
  CHECKED_NAMES,
  demoSheet,
  FIELDS,
} from "../../src/datasheet";
import { demoTest } from "../../src/datasheet/demo-test";
import { methodOfLoad } from "../../src/record/picks";
import { OLD_WORDS } from "../../src/record/names";
import { readRecord } from "../../src/record/record";
import { messageOf, remarkOfLoad } from "../../src/record/sheet-remarks";
import { MOMENT_SAME, STRESS_LEAPS } from "../../src/specification/sentences/of-remarks";
import { resultsFrom } from "../../src/specification/uses";
import { differing } from "../../src/checks/questions/record";
import { NEWS, newsAsMessage, TEMPLATE_VERSION } from "../../src/specification/versions";
import { EmbeddedPort, newWorkbook } from "../../src/workbook/embedded";
import type { SheetName, SheetPlan } from "../../src/workbook/port";
import { integrityOfSheet } from "../checks/integrity-of-sheet";
import { opened } from "../workbook/embedded/opened";
import { haveRealFunctions } from "../workbook/embedded/real-functions";

beforeAll(haveRealFunctions);

const plan = demoSheet("SI");

const open = (of: SheetPlan = plan) => opened(of);

async function check(port: EmbeddedPort, sheet: string) {
  return checkSheet(await port.listNames(sheet), await port.readNames(sheet, CHECKED_NAMES));
}
const sentences = async (port: EmbeddedPort, sheet: string) =>
  (await check(port, sheet)).findings.map(({ sentence }) => english(sentence));

const dispatch = (port: EmbeddedPort, type: string, payload: object) =>
  (port.workbook.model as any).dispatch(type, { sheetId: port.workbook.model.getters.getActiveSheetId(), ...payload });
const typeIn = (port: EmbeddedPort, name: string, content: string, row = 0) =>
  dispatch(port, "UPDATE_CELL", { col: plan.names[name].col, row: plan.names[name].row + row, content });

describe("a sound sheet", () => {
  test.each<[string, SheetPlan]>([
    ["blank, SI", blankSheet("SI")],
    ["demonstration, US", demoSheet("US")],
    ["blank, of 12 loads", blankSheet("SI", { loads: 12 })],
  ])("%s gives no finding", async (_, of) => {
    const { port, sheet } = await open(of);
    expect(await check(port, sheet)).toEqual({
      isDataSheet: true,
      version: TEMPLATE_VERSION,
      findings: [],
      unbound: 0,
    });
  });
});

describe("damage", () => {
  test("a deleted name is named with the values lost, and can be given again", async () => {
    const { port, sheet } = await open();
    dispatch(port, "DELETE_NAMED_RANGE", { name: "ring_mass" });
    const { findings } = await check(port, sheet);
    const [missing] = findings.filter(({ attach }) => attach?.includes("ring_mass"));
    expect(missing.weight).toBe("stop");
    expect(english(missing.sentence)).toMatch(
      /^Mass of the ring \(ring_mass\) is missing\. Without it there is no answer for: .*Dry mass/,
    );
    await port.nameAll(sheet, [{ name: "ring_mass", address: boxAddress(plan.names.ring_mass).replaceAll("$", "") }]);
    expect((await check(port, sheet)).findings).toEqual([]);
  });

  test("for a name that occurs twice both places are named, and the one that is read", () => {
    const names: SheetName[] = Object.entries(plan.names).map(([name, place]) => ({ name, scope: "sheet", place }));
    const { row, col } = plan.names.ring_mass;
    const doubled = checkSheet(
      [...names, { name: "RING_MASS", scope: "workbook", place: { row: row + 40, col, rows: 1, cols: 1 } }],
      {},
    );
    expect(english(doubled.findings[0].sentence)).toMatch(
      /Mass of the ring \(ring_mass\) is there 2 times, at \w+, \w+\. The sheet's own/,
    );
  });

  test("two names of one cell are named", () => {
    const names: SheetName[] = Object.entries(plan.names).map(([name, place]) => ({
      name,
      scope: "sheet",
      place: name === "ring_and_dry" ? plan.names.ring_mass : place,
    }));
    const said = checkSheet(names, {}).findings.map(({ sentence }) => english(sentence));
    expect(said).toEqual([expect.stringMatching(/\(ring_mass\) and .*\(ring_and_dry\) stand at the same cells/)]);
  });

  test("a name at #REF! is distinguished from a missing one", () => {
    const names: SheetName[] = Object.entries(plan.names).map(([name, place]) => ({
      name,
      scope: "sheet",
      place: name === "diameter" ? "lost" : place,
    }));
    const [finding, ...more] = checkSheet(names, {}).findings;
    expect(more).toEqual([]);
    expect(english(finding.sentence)).toMatch(/Diameter \(diameter\) leads to no cell: .*#REF!.* Height of solids/);
    expect(finding.attach).toEqual(["diameter"]);
  });

  test("a pick is named in words, and not by its short name", () => {
    const names = Object.entries(plan.names).map(([name, place]): SheetName => ({ name, scope: "sheet", place }));
    const picks = { pick_load: [[2]], pick_of: [["tail from"]], pick_after: [[30]] };
    const { findings } = checkSheet(names, { load_number: [[1], [2]], ...picks });
    const said = findings.map(({ sentence }) => english(sentence)).filter((sentence) => sentence.includes("picks"));
    expect(said).toEqual([expect.stringContaining("picks tail from of load 2 without reason and initials")]);
  });

  test("a row inserted into the load table is named, nothing typed in it is used, and every result stays", async () => {
    const { port, sheet } = await open();
    const names = ["preconsolidation_stress", "final_height", "compression_index", "void_ratio_final"];
    const before = await port.readNames(sheet, names);
    const at = plan.names.load_stress.row + 7;
    dispatch(port, "ADD_COLUMNS_ROWS", {
      dimension: "ROW",
      base: at,
      quantity: 1,
      position: "before",
      sheetName: sheet,
    });
    expect(await port.readNames(sheet, names)).toEqual(before);
    expect(await sentences(port, sheet)).toEqual([
      expect.stringContaining(`Row ${at + 1} was put into the load table`),
    ]);
    await port.protect(sheet, false);
    dispatch(port, "UPDATE_CELL", { col: plan.names.load_stress.col, row: at, content: "150" });
    const record = readRecord(await port.readNames(sheet, CHECKED_NAMES));
    expect(record.loads.map(({ number }) => number)).toEqual(Array.from({ length: 16 }, (_, index) => index + 1));
    expect(record.loads[8].readings[0].reading).toBe(readRecord(await whole()).loads[8].readings[0].reading);
    expect((await check(port, sheet)).findings[0]).toMatchObject({ weight: "stop" });
  });

  test("deleting a row of an unused load gives no error, and every result stays", async () => {
    const { port, sheet } = await open();
    const names = ["preconsolidation_stress", "final_height", "void_ratio_curve", "volume_compressibility"];
    const before = await port.readNames(sheet, names);
    dispatch(port, "REMOVE_COLUMNS_ROWS", {
      dimension: "ROW",
      elements: [plan.names.load_stress.row + 18, plan.names.load_stress.row + 21],
      sheetName: sheet,
    });
    const after = await port.readNames(sheet, names);
    expect(after.preconsolidation_stress).toEqual(before.preconsolidation_stress);
    expect(after.final_height).toEqual(before.final_height);
    expect(after.void_ratio_curve).toEqual(before.void_ratio_curve.slice(0, 22));
    expect(after.volume_compressibility).toEqual(before.volume_compressibility.slice(0, 22));
    expect(await sentences(port, sheet)).toEqual([]);
  });

  test("rows inserted into the readings belong to every range, and readings in them count", async () => {
    const { port, sheet } = await open();
    const { row } = plan.names.readings_06;
    dispatch(port, "ADD_COLUMNS_ROWS", {
      dimension: "ROW",
      base: row + 5,
      quantity: 3,
      position: "before",
      sheetName: sheet,
    });
    const names = await port.listNames(sheet);
    const rowsOf = (name: string) => (names.find((one) => one.name === name)!.place as { rows: number }).rows;
    for (const name of ["times_01", "readings_06", "readings_24"]) expect([name, rowsOf(name)]).toEqual([name, 2003]);
    expect(await sentences(port, sheet)).toEqual([]);
    await port.protect(sheet, false);
    for (const [name, content] of [
      ["times_06", "2880"],
      ["readings_06", "2600"],
    ])
      dispatch(port, "UPDATE_CELL", { col: plan.names[name].col, row: row + 6, content });
    expect((await port.readNames(sheet, ["end_reading"])).end_reading[5]).toEqual([2600]);
  });

  test("a decimal comma that stayed a text, and a date in a cell for a mass, are named with the remedy", async () => {
    const { port, sheet } = await open();
    typeIn(port, "initial_height", "'25,4");
    typeIn(port, "ring_mass", "46085");
    const said = await sentences(port, sheet);
    expect(said).toEqual(
      expect.arrayContaining([
        expect.stringMatching(/Initial height \(initial_height\) holds "25,4" stored as text: re-enter it as a number/),
        expect.stringMatching(/Mass of the ring \(ring_mass\) holds 46085, which looks like a date \(2026-03-04\)/),
      ]),
    );
  });

  test("a sheet of another kind is named as such, and nothing is read from it", async () => {
    const { port } = await open();
    const found = await check(port, "Sheet1");
    expect(found).toMatchObject({ isDataSheet: false, unbound: 0 });
    expect(found.findings).toMatchObject([{ weight: "stop" }]);
    expect(english(found.findings[0].sentence)).toContain("sheet of another kind");
  });

  const whole = async () => {
    const { port, sheet } = await open();
    return port.readNames(sheet, CHECKED_NAMES);
  };
});

describe("an older template", () => {
  /** As `npm run templates` wrote the sheet when its version was the latest. */
  const insertOld = async (version: number) => {
    const port = new EmbeddedPort(newWorkbook());
    const file = readFileSync(path.join(__dirname, `versions/clayledger-si-version-${version}.xlsx`));
    return { port, old: (await port.insertFile(file)).sheets[0] };
  };

  /** What version 4 calculates in another way: cv with the height at 50 % of consolidation, and not on unloading. */
  const CHANGED = ["height_middle", "cv_log_time", "cv_root_time", "cv_chosen", "conductivity"];
  const without = (results: object, names: readonly string[]) =>
    Object.fromEntries(Object.entries(results).filter(([name]) => !names.includes(name)));

  test.each([2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13])(
    "of version %d, which has fewer names, has no damaged cell; filled with the demonstration, it has results, lists what is new, and gives no fault",
    async (number) => {
      const { port, old } = await insertOld(number);
      expect(await integrityOfSheet(port, old)).toEqual([]);
      const { version, findings } = await check(port, old);
      expect(version).toBe(number);
      const news = NEWS.filter((one) => one.version > number);
      expect(findings).toEqual(
        news.flatMap((one) =>
          one.sentences.map((sentence) => ({
            weight: "news",
            sentence: say`Since data sheet ${one.version}: ${newsAsMessage(sentence)}`,
          })),
        ),
      );
      const { readings, cells, columns } = demoTest("SI");
      const names = new Set((await port.listNames(old)).map(({ name }) => name));
      const known = ([name]: [string, unknown]) => names.has(name);
      // The demonstration has a notice in a cell that is not an input.
      await port.protect(old, false);
      await port.fillNames(old, {
        ...Object.fromEntries(
          Object.entries(cells)
            .filter(known)
            .map(([name, value]) => [name, [value]]),
        ),
        ...Object.fromEntries(
          Object.entries(columns)
            .filter(known)
            .map(([name, list]) => [name, list.map((value) => value ?? null)]),
        ),
        ...Object.fromEntries(readings.map((list, index) => [`readings_${String(index + 1).padStart(2, "0")}`, list])),
      });
      const now = await open();
      const [before, after] = [
        readRecord(await port.readNames(old, CHECKED_NAMES)),
        readRecord(await now.port.readNames(now.sheet, CHECKED_NAMES)),
      ];
      expect(before.faults).toEqual([]);
      // The language is of the sheet, not of the test.
      const brought = news.flatMap((one) => one.names).filter((name) => name !== "sheet_language");
      expect([...before.missing].sort()).toEqual([...brought].sort());
      expect(before.results).toEqual(without(after.results, brought));
      before.loads.forEach(({ results }, index) => {
        const now_ = after.loads[index].results;
        if (number >= 4) return expect(results).toEqual(without(now_, brought));
        expect(without(results, CHANGED)).toEqual(without(now_, [...CHANGED, ...brought]));
        // The older sheet takes the mean of the heights at both ends of the load.
        const [H0, H1] = [
          before.loads[index - 1]?.results.height_end ?? before.numbers.initial_height!,
          results.height_end!,
        ];
        expect(results.height_middle).toBeCloseTo((H0 + H1) / 2, 9);
        if (results.cv_log_time !== undefined && now_.cv_log_time !== undefined)
          expect(results.cv_log_time / now_.cv_log_time).toBeCloseTo(
            (results.height_middle! / now_.height_middle!) ** 2,
            9,
          );
      });
      expect([before.version, after.version]).toEqual([number, TEMPLATE_VERSION]);
      expect([before, after].map(differing)).toEqual([[], []]);
      expect([before.picks, before.overrides]).toEqual([[], []]);
      expect(methodOfLoad(before, 6)).toBe("log time");
    },
  );

  test.each([12, 13])(
    "of version %d says nothing of a second load that leaps or of two loads at one moment, and neither does its record",
    async (number) => {
      const { port, old } = await insertOld(number);
      await port.fillNames(old, {
        load_stress: [0.8, 16, 3.2, 6.4, 128],
        load_started: [48_000.5, 48_001.5, 48_001.5, 48_002.5],
      });
      const values = await port.readNames(old, CHECKED_NAMES);
      const record = readRecord(values);
      expect(record.version).toBe(number);
      const said = record.loads.map((load) => english(messageOf(remarkOfLoad(record, load.number)!)));
      expect(said).toEqual(record.loads.map(({ row }) => values.load_remark[row - 1][0]));
      expect(said).toEqual(["", "", "", "", english(STRESS_LEAPS)]);
      const now = readRecord({ ...values, template_version: [[TEMPLATE_VERSION]] });
      expect([2, 3].map((load) => english(messageOf(remarkOfLoad(now, load)!)))).toEqual([
        english(STRESS_LEAPS),
        english(MOMENT_SAME),
      ]);
    },
  );

  test("is still read, and what is new is news, not a fault", async () => {
    const { port, old } = await insertOld(1);
    const { version, findings } = await check(port, old);
    expect(version).toBe(1);
    expect(new Set(findings.map(({ weight }) => weight))).toEqual(new Set(["news"]));
    expect(findings).toHaveLength(NEWS.flatMap(({ sentences }) => sentences).length);
    await port.fillNames(old, {
      diameter: [63.5],
      ring_mass: [74.36],
      ring_and_dry: [180.1],
      specific_gravity: [2.7],
    });
    const record = readRecord(await port.readNames(old, CHECKED_NAMES));
    expect(record.numbers.diameter).toBe(63.5);
    expect(record.results.dry_mass).toBeCloseTo(105.74, 9);
    expect(record.words.depth_unit).toBe("m");
  });

  test("the names that came with a version are those that the version before lacked", () => {
    const news = NEWS.flatMap(({ names }) => names);
    // The limits as text gave way to numbers in version 6.
    expect(news.filter((name) => !(name in plan.names))).toEqual([...OLD_WORDS]);
  });
});

test("everything that needs a name is listed, to the end of the chain", () => {
  const usesOf = (name: string): string[] => resultsFrom(name).map(({ label }) => label);
  expect(usesOf("ring_mass")).toEqual(
    expect.arrayContaining(["Dry mass of soil", "Void ratio, initial e0", "Compression index Cc"]),
  );
  expect(usesOf("readings_07")).toEqual(expect.arrayContaining(["Reading at the end of the load", "cv by log time"]));
  expect(usesOf("project")).toEqual([]);
  for (const { name } of FIELDS) expect(usesOf(name)).not.toContain(undefined);
});

describe("naming cells", () => {
  const box = (address: string) => boxOf(address)!;
  test("one cell for a value, the first of a merged selection, a column for a column", () => {
    expect(cellsToName("ring_mass", box("D4"), 1)).toEqual({ box: box("D4") });
    expect(cellsToName("project", box("B5:D5"), 1)).toEqual({ box: box("B5") });
    expect(cellsToName("load_stress", box("B4:B20"), 9)).toEqual({ box: box("B4:B20") });
    const refusal = (cells: ReturnType<typeof cellsToName>) => ("sentence" in cells ? english(cells.sentence) : "");
    expect(refusal(cellsToName("ring_mass", box("D4:D9"), 3))).toContain("select one cell");
    expect(refusal(cellsToName("load_stress", box("B4:C20"), 9))).toContain("in one column");
    expect(boxOf("A1:B2,D4")).toBeUndefined();
  });

  test("a row for a column of a table that lies on its side; its lists must cover the same columns", () => {
    expect(cellsToName("load_stress", box("B4:J4"), 9)).toEqual({ box: box("B4:J4") });
    const placed = (name: string, address: string) => ({ name, scope: "sheet" as const, place: box(address) });
    const level = [placed("load_number", "B3:J3"), placed("load_stress", "B4:J4"), placed("cv_chosen", "B9:J9")];
    const said = (names: typeof level) =>
      checkSheet(names, {})
        .findings.map(({ sentence }) => english(sentence))
        .filter((sentence) => sentence.includes("cover the same"));
    expect(said(level)).toEqual([]);
    expect(said([...level, placed("c_alpha", "B12:I12")])).toEqual([
      expect.stringMatching(/c_alpha.* does not cover the same columns as .*\(B4:J4\): name the same of each\.$/),
    ]);
    expect(said([...level, placed("c_alpha", "B12:B20")])).toHaveLength(1);
  });

  test("a column that was put into a table on its side is no load, and the finding names the column", () => {
    const names = [{ name: "load_number", scope: "sheet" as const, place: box("B3:E3") }];
    const found = checkSheet(names, { load_number: [[1, "", 2, 2]] }).findings.map(({ sentence }) => english(sentence));
    expect(found).toContainEqual(expect.stringMatching(/^Column C was put into the load table/));
    expect(found).toContainEqual(
      expect.stringMatching(/^Column D and Column E of the load table both have the number 2/),
    );
  });

  test("a name that leads to cells is not moved without `replace`", async () => {
    const { port, sheet } = await open();
    await expect(port.nameAll(sheet, [{ name: "ring_mass", address: "Z300" }])).rejects.toThrow(
      /already at [A-Z]+\d+ and was left there/,
    );
    expect((await port.readNames(sheet, ["ring_mass"])).ring_mass).toEqual([[74.36]]);
    await port.nameAll(sheet, [{ name: "ring_mass", address: "Z300", replace: true }]);
    expect((await port.readNames(sheet, ["ring_mass"])).ring_mass).toEqual([[""]]);
  });
});
