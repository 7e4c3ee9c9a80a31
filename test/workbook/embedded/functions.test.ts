import "./engine-in-node";
import { helpers, registries } from "@odoo/o-spreadsheet";
import { Model } from "../../../src/workbook/embedded/engine";
import {
  describeFunctions,
  HostError,
  registerFunctions,
  type FunctionMetadata,
  type FunctionSettings,
} from "../../../src/workbook/embedded/functions";

const given: unknown[][] = [];
const settings: FunctionSettings = { blankAs: null };

const parameter = (name: string, more: object = {}) => ({ name, description: `What ${name} means`, ...more });
const describeFunction = (name: string, ...parameters: FunctionMetadata["parameters"][number][]): FunctionMetadata => ({
  id: name,
  name,
  description: `Does ${name}`,
  parameters,
});

beforeAll(() => {
  const record =
    (answer: unknown) =>
    (...args: unknown[]) => {
      given.push(args);
      return answer;
    };
  const functions = new Map(
    Object.entries({
      TAKE: record(1),
      TABLE: record([
        ["t50", 3.5, "min"],
        ["cv", 1.25e-9, "m2/s"],
        ["remark", null, ""],
      ]),
      ROWS_OF: (cells: unknown) => (cells as unknown[][]).length,
      NOT_A_NUMBER: () => NaN,
      REFUSE: () => {
        throw new HostError("#VALUE!", 'row 3 of the times holds the text "x": correct or clear that cell');
      },
      NOT_APPLICABLE: () => {
        throw new HostError("#N/A", "no inflection");
      },
      BREAK: () => (undefined as any).height,
    }),
  );
  registerFunctions(
    [
      describeFunction(
        "TAKE",
        parameter("series", { dimensionality: "matrix" }),
        parameter("height", { optional: true }),
        parameter("item", { optional: true }),
      ),
      describeFunction("TABLE"),
      describeFunction("ROWS_OF", parameter("cells", { dimensionality: "matrix" })),
      describeFunction("NOT_A_NUMBER"),
      describeFunction("REFUSE"),
      describeFunction("NOT_APPLICABLE"),
      describeFunction("BREAK"),
    ],
    functions,
    settings,
  );
});

beforeEach(() => {
  given.length = 0;
  settings.blankAs = null;
});

function sheet(cells: Record<string, string>) {
  const model = new Model({ sheets: [{ id: "s", name: "S", cells }] });
  return (xc: string) => model.getters.getEvaluatedCell({ sheetId: "s", ...helpers.toCartesian(xc) });
}

/** Types into the cells of a blank sheet, one after another. */
function typed(cells: Record<string, string>): void {
  const model = new Model({ sheets: [{ id: "s", name: "S" }] });
  for (const [xc, content] of Object.entries(cells))
    model.dispatch("UPDATE_CELL", { sheetId: "s", ...helpers.toCartesian(xc), content });
}

describe("arguments", () => {
  test("a range arrives as rows of cells, an omitted argument as null", () => {
    sheet({ A1: "1", B1: "2", A2: "3", B2: "text", D1: "=CLAY.TAKE(A1:B2)" });
    expect(given).toEqual([
      [
        [
          [1, 2],
          [3, "text"],
        ],
        null,
        null,
      ],
    ]);
  });

  test("one cell, a number and an array literal in place of a range arrive as rows too", () => {
    sheet({ A1: "7", D1: "=CLAY.TAKE(A1,A1)", D2: '=CLAY.TAKE(5,,"cv")', D3: "=CLAY.TAKE({1,2;3,4})" });
    expect(given).toContainEqual([[[7]], 7, null]);
    expect(given).toContainEqual([[[5]], null, "cv"]);
    expect(given).toContainEqual([
      [
        [1, 2],
        [3, 4],
      ],
      null,
      null,
    ]);
  });

  test.each([null, 0, ""] as const)("a blank cell arrives as %j when blankAs says so", (blankAs) => {
    settings.blankAs = blankAs;
    sheet({ A1: "1", A3: "3", D1: "=CLAY.TAKE(A1:A3,B1)" });
    expect(given).toEqual([[[[1], [blankAs], [3]], blankAs, null]]);
  });

  test("a number that was typed as a clock time or a day arrives with its format, as in Excel", () => {
    typed({ A1: "0:15", A2: "2", A3: "2026-11-30", D1: "=CLAY.TAKE(A1:A3,A1)" });
    const clock = { type: "FormattedNumber", basicType: "Double", basicValue: 15 / 1440, numberFormat: "hh:mm" };
    const day = { type: "FormattedNumber", basicType: "Double", basicValue: 46356, numberFormat: "yyyy-m-d" };
    expect(given).toEqual([[[[clock], [2], [day]], clock, null]]);
  });

  test("minutes that a formula makes of two clock times arrive as a number", () => {
    typed({ A1: "8:00", A2: "8:15", B2: "=(A2-A1)*1440", D1: "=CLAY.TAKE(B1:B2,B2,(A2-A1)*1440)" });
    const [[range, alone, inner]] = given as [[unknown[][], unknown, unknown]];
    expect([range[1][0], alone, inner].map((value) => Math.round(Number(value) * 1e6) / 1e6)).toEqual([15, 15, 15]);
  });

  test("an error in a cell arrives as an error object, in a range and alone", () => {
    sheet({ A1: "=1/0", D1: "=CLAY.TAKE(A1:A2,A1)" });
    const [[range, alone]] = given as [[unknown[][], unknown]];
    expect(range[0][0]).toMatchObject({ code: "#DIV/0!" });
    expect(alone).toMatchObject({ code: "#DIV/0!" });
  });
});

describe("answers", () => {
  test("a table spills, with blanks blank and tiny numbers shown", () => {
    const at = sheet({ A1: "=CLAY.TABLE()" });
    expect(["A1", "B1", "C1"].map((xc) => at(xc).value)).toEqual(["t50", 3.5, "min"]);
    expect(at("B2").value).toBe(1.25e-9);
    expect(at("B2").formattedValue).toBe("1.2500e-09");
    expect(at("B3").value).toBe("");
    expect(at("A3").value).toBe("remark");
  });

  test("a thrown error shows its code and its message, and IFERROR catches it", () => {
    const at = sheet({
      A1: "=CLAY.REFUSE()",
      A2: "=IFERROR(CLAY.REFUSE(),5)",
      A3: "=CLAY.NOT_APPLICABLE()",
      A4: "=A1+1",
    });
    expect(at("A1")).toMatchObject({
      type: "error",
      value: "#VALUE!",
      message: expect.stringContaining("row 3 of the times"),
    });
    expect(at("A2").value).toBe(5);
    expect(at("A3")).toMatchObject({ type: "error", value: "#N/A", message: "no inflection" });
    expect(at("A4").value).toBe("#VALUE!");
  });

  test("an infinite number or NaN never shows as a number", () => {
    expect(sheet({ A1: "=CLAY.NOT_A_NUMBER()" })("A1")).toMatchObject({ type: "error", value: "#NUM!" });
  });

  test("a fault inside a function shows a message of our own", () => {
    const cell = sheet({ A1: "=CLAY.BREAK()" })("A1");
    expect(cell).toMatchObject({ type: "error", value: "#VALUE!" });
    expect((cell as any).message).toMatch(/CLAY\.BREAK failed inside/);
  });
});

test("descriptions in another language take the place of the first ones; a function that is not there is left out", () => {
  const known = (): any => registries.functionRegistry.get("CLAY.TAKE");
  const before = { ...known(), args: known().args.map((argument: object) => ({ ...argument })) };
  const [first, ...rest] = known().args.map(({ name }: { name: string }) => name);
  describeFunctions([
    {
      id: "TAKE",
      name: "TAKE",
      description: "Nimmt Zellen",
      parameters: [{ name: "Zelle", description: "Was die Zelle ist" }],
    },
    describeFunction("NOT_REGISTERED"),
  ]);
  expect(known()).toMatchObject({ description: "Nimmt Zellen", compute: before.compute });
  expect(known().args[0]).toEqual({ ...before.args[0], name: "Zelle", description: "Was die Zelle ist" });
  expect(known().args.slice(1)).toEqual(before.args.slice(1));
  describeFunctions([describeFunction("TAKE", ...[first, ...rest].map((name) => parameter(name)))]);
  expect(known()).toMatchObject({ description: before.description, args: before.args });
});

test("a described function without code is refused", () => {
  expect(() => registerFunctions([describeFunction("ABSENT")], new Map(), settings)).toThrow(/ABSENT/);
});

test("a formula whose function comes later is read when it is typed again", () => {
  const model = new Model({ sheets: [{ id: "s", name: "S", cells: { B1: "=CLAY.COMES_LATER(1)" } }] } as object);
  const value = (row: number): unknown => model.getters.getEvaluatedCell({ sheetId: "s", col: 1, row }).value;
  expect(value(0)).toBe("#NAME?");
  registerFunctions(
    [describeFunction("COMES_LATER", parameter("value"))],
    new Map([["COMES_LATER", () => 4]]),
    settings,
  );
  model.dispatch("UPDATE_CELL", { sheetId: "s", col: 1, row: 1, content: "=CLAY.COMES_LATER(1)" } as never);
  expect(value(1)).toBe(4);
});
