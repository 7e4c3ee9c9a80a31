/**
 * The limits of a firm in cells: they are listed, read, remarked on, and passed to CLAY.CHECKS as they stand on the
 * sheet.
 */
import { CHECKS as TABLE, unknownThresholds } from "../../src/checks";
import { limitCalled, limitReader } from "../../src/checks/limit-words";
import { LIMIT_NAMES, LIMITS, limitsSheet, readLimits } from "../../src/checks/limits";
import { CHECKS } from "../../src/functions/checking";
import { inOneLanguage } from "../../src/pane/live/sheet-language";
import { english } from "../../src/reduction/message";
import type { CellValue, SheetName } from "../../src/workbook/port";
import { calculate } from "../datasheet/sheet-in-engine";
import { refusal } from "../functions/refusal";
import { inEnglish } from "../in-english";
import { translatesAnswers } from "../translates-answers";

const limitNamed = (called: string): string => limitReader()(called);
const plan = limitsSheet();
const names: SheetName[] = Object.entries(plan.names).map(([name, place]) => ({ name, scope: "sheet", place }));
const top = plan.names.limit_name.row;
const rowOf = (name: string): number => LIMITS.findIndex((one) => one.name === name);

/** The values of the sheet with some limits typed. */
function typed(values: Record<string, { value?: CellValue; by?: string; why?: string; name?: string }>) {
  const column = (of: (name: string) => CellValue | undefined) => LIMITS.map(({ name }) => [of(name) ?? ""]);
  return {
    limit_name: column((name) => values[name]?.name ?? name),
    limit_value: column((name) => values[name]?.value),
    limit_by: column((name) => values[name]?.by),
    limit_why: column((name) => values[name]?.why),
  };
}

/** The limits read from a sheet, with remarks in English. */
const read = (...sheet: Parameters<typeof readLimits>) => inEnglish(readLimits(...sheet));

test("every limit of every question is listed once, with its default and unit", () => {
  const wanted = TABLE.flatMap(({ id, limits }) => Object.keys(limits).map((name) => `${id}.${name}`));
  expect(LIMITS.map(({ name }) => name)).toEqual(wanted);
  expect(new Set(wanted).size).toBe(wanted.length);
  for (const { limits, units = {} } of TABLE) expect(Object.keys(units).sort()).toEqual(Object.keys(limits).sort());
  expect(unknownThresholds(Object.fromEntries(LIMITS.map(({ name, value }) => [name, value])))).toEqual([]);
  expect(Object.keys(plan.names).sort()).toEqual([...LIMIT_NAMES, "limits"].sort());
});

test("each limit has the value and the unit that a firm reads on the sheet, with its question", () => {
  expect(
    LIMITS.map(({ name, value, unit }) =>
      `${english(limitCalled(name))}: ${Number(value.toPrecision(4))} ${unit}`.trim(),
    ),
  ).toMatchSnapshot();
  for (const { name, question } of LIMITS)
    expect(question).toBe(TABLE.find(({ id }) => name.startsWith(`${id}.`))?.question);
});

test("the sheet shows each limit in words, which lead back to its name", () => {
  const shown = plan.cells.filter(({ col, row }) => col === plan.names.limit_name.col && row >= top);
  expect(shown.map(({ value }) => limitNamed(String(value)))).toEqual(LIMITS.map(({ name }) => name));
  for (const { value } of shown) expect(value).not.toMatch(/_|\.\w/);
  expect(limitNamed("Q08.explain")).toBe("Q08.explain");
});

describe("a German sheet of limits", () => {
  translatesAnswers();
  const german = limitsSheet("de", inOneLanguage("de"));
  const shown = german.cells.flatMap(({ col, row, value }) =>
    col === plan.names.limit_name.col && row >= top ? [String(value)] : [],
  );

  test("calls each limit in German, by a word of its own, and the words lead back to its name", () => {
    expect(german.names).toEqual(plan.names);
    expect(shown).toContain("Q08, erklären jenseits von");
    expect(new Set(shown).size).toBe(LIMITS.length);
    expect(shown.map(limitNamed)).toEqual(LIMITS.map(({ name }) => name));
    expect(LIMITS.map(({ name }) => limitNamed(english(limitCalled(name))))).toEqual(LIMITS.map(({ name }) => name));
  });

  test("is read by the pane and by CLAY.CHECKS as an English one is", () => {
    const row = { name: "Q08, erklären jenseits von", value: 0.2, by: "AB", why: "grobe Messuhr" };
    expect(read(typed({ "Q08.explain": row }), names)).toMatchObject({
      thresholds: { "Q08.explain": 0.2 },
      remarks: [],
    });
    expect(CHECKS([["initial_height", 20]], [[row.name, row.value]])).toEqual(
      CHECKS([["initial_height", 20]], [["Q08.explain", row.value]]),
    );
    expect(refusal(() => CHECKS([["initial_height", 20]], [["Q08, erklären über", 1]]))).toMatch(
      /which no question has/,
    );
  });
});

test("a blank sheet changes nothing", () =>
  expect(readLimits(typed({}), names)).toEqual({ thresholds: {}, changed: [], remarks: [] }));

test("a changed limit with who and why is used without a remark", () => {
  const { thresholds, changed, remarks } = read(
    typed({ "Q08.explain": { value: 0.2, by: "AB", why: "coarse dial" } }),
    names,
  );
  expect(thresholds).toEqual({ "Q08.explain": 0.2 });
  expect(changed).toEqual([expect.objectContaining({ name: "Q08.explain", default: 0.1, value: 0.2, by: "AB" })]);
  expect(remarks).toEqual([]);
});

test("a limit without who or why is used, with a remark that names its cell", () => {
  const { thresholds, remarks } = read(typed({ "Q08.explain": { value: 0.2 } }), names);
  expect(thresholds).toEqual({ "Q08.explain": 0.2 });
  expect(remarks).toEqual([
    `C${top + rowOf("Q08.explain") + 1} changes “Q08, explain beyond” from 0.1 to 0.2: enter who and why`,
  ]);
});

test("a limit that is not a number, or belongs to no question, is not used; the remark names its cell", () => {
  const { thresholds, remarks } = read(
    typed({ "Q08.explain": { value: "much" }, "Q08.stop": { value: 1, name: "Q99.stop" } }),
    names,
  );
  expect(thresholds).toEqual({});
  expect(remarks).toEqual([
    expect.stringMatching(new RegExp(`^C${top + rowOf("Q08.explain") + 1} holds “much”.*default 0.1 is in force`)),
    expect.stringMatching(
      new RegExp(`^C${top + rowOf("Q08.stop") + 1} is a limit of “Q99.stop”, which no question has`),
    ),
  ]);
});

describe("what is read of a changed limit", () => {
  const cells = (row: Record<string, CellValue>) => ({
    limit_name: [["Q08, explain beyond"]],
    ...Object.fromEntries(Object.entries(row).map(([name, value]) => [`limit_${name}`, [[value]]])),
  });

  test("who, why and since when, without the blanks about them; what is blank is left out", () => {
    expect(read(cells({ value: 0.2, by: " AB ", why: " dial ", since: 48_000 })).changed).toEqual([
      {
        ...{ name: "Q08.explain", question: expect.stringMatching(/^Is the measured final height/), unit: "mm" },
        ...{ value: 0.2, default: 0.1, by: "AB", why: "dial", since: 48_000 },
      },
    ]);
    const bare = read(cells({ value: 0.2, by: "", why: " ", since: "" })).changed[0];
    expect(Object.keys(bare)).toEqual(["name", "question", "value", "unit", "default"]);
    expect(read(cells({ value: 0.2, since: "spring" })).changed[0].since).toBe("spring");
    expect(read(cells({ value: 0.2, since: true })).changed[0].since).toBeUndefined();
  });

  test("what is lacking, who or why", () => {
    const lacking = (row: Record<string, CellValue>) => read(cells({ value: 0.2, ...row })).remarks;
    const changes = "row 1 of limit_value changes “Q08, explain beyond” from 0.1 to 0.2: enter";
    expect(lacking({})).toEqual([`${changes} who and why`]);
    expect(lacking({ by: "AB" })).toEqual([`${changes} why`]);
    expect(lacking({ why: "dial" })).toEqual([`${changes} who`]);
    expect(lacking({ by: "AB", why: "dial" })).toEqual([]);
  });

  test("the default typed again is in force, and is no change", () => {
    expect(read(cells({ value: 0.1 }))).toEqual({ thresholds: { "Q08.explain": 0.1 }, changed: [], remarks: [] });
  });

  test("a workbook without the sheet of limits changes nothing", () => {
    expect(read({})).toEqual({ thresholds: {}, changed: [], remarks: [] });
  });

  test("a cell is named by its row where the place of its name is lost, or another name has it", () => {
    const named = (place: SheetName["place"], name = "limit_value") =>
      read(cells({ value: "x" }), [{ name, scope: "sheet", place }]).remarks[0];
    const at = { row: 4, col: 2, rows: 3, cols: 1 };
    expect(named(at)).toMatch(
      /^C5 holds “x” where the limit Q08, explain beyond is a number: the default 0.1 is in force; enter a number$/,
    );
    expect(named(at, "LIMIT_VALUE")).toMatch(/^C5 holds/);
    expect(named("lost")).toMatch(/^row 1 of limit_value holds/);
    expect(named(at, "limit_why")).toMatch(/^row 1 of limit_value holds/);
  });

  test("a name that is no limit's stays as it is, in words and back", () => {
    expect(english(limitCalled("Q08.most"))).toBe("Q08.most");
    expect(english(limitCalled("Q08"))).toBe("Q08");
    expect(limitNamed(" Q08 , explain beyond ")).toBe("Q08.explain");
    expect(limitNamed("Q08, most beyond")).toBe("Q08, most beyond");
    expect(limitNamed(" stop beyond ")).toBe("stop beyond");
  });
});

test.each([null, 0] as const)("CLAY.CHECKS takes the sheet as its limits when a blank cell is %p", async (blankAs) => {
  const cells = plan.cells.map((cell) =>
    cell.row === top + rowOf("Q08.explain") && cell.col === plan.names.limit_value.col ? { ...cell, value: 0.2 } : cell,
  );
  const sheet = await calculate({ ...plan, cells, behind: false }, blankAs);
  expect(sheet.errors).toEqual([]);
  const range = LIMITS.map((_, row) => [sheet.value("limit_name", row), sheet.value("limit_in_force", row)]);
  expect(range[rowOf("Q08.explain")]).toEqual(["Q08, explain beyond", 0.2]);
  expect(range[rowOf("Q08.stop")]).toEqual(["Q08, stop beyond", 0.3]);
  const test = [
    ["initial_height", 20],
    ["final_height_measured", 18.15],
    ["length_unit", "mm"],
    ["zero_reading", 0],
    ["dial_factor", 1],
    ["load_stress", 100],
    ["times_01", 0, 1, 2],
    ["readings_01", 0, 1, 2],
    ["stress_unit", "kPa"],
  ];
  const width = 4;
  const wide = test.map((row) => [...row, ...new Array(width - row.length).fill("")]);
  const of = (limits?: unknown[][]) => CHECKS(wide, limits).find(([id]) => id === "Q08")![1];
  expect(of()).toBe("explain");
  expect(of(range)).toBe("pass");
});

test("a remark names the row of the column where the name of the column has lost its place, and a short column is blank", () => {
  const values = { limit_name: [["Q05.explain"], ["Q05.stop"]], limit_value: [["high"]] };
  const lost: SheetName = { name: "limit_value", scope: "sheet", place: "lost" };
  const place = { sheet: "Limits", row: 4, col: 2, rows: 2, cols: 1 };
  expect(read(values, [lost]).remarks).toEqual([expect.stringMatching(/^row 1 of limit_value holds “high”/)]);
  expect(read(values, [lost, { name: "Limit_Value", scope: "sheet", place }]).remarks).toEqual([
    expect.stringMatching(/^C5 holds “high”/),
  ]);
  expect(readLimits(values).thresholds).toEqual({});
});
