/**
 * Somebody changes the workbook of the embedded sheet between two calls of an operation to the port, takes steps back, opens another
 * workbook, or the pane is closed there. The workbook is as if one of the two had come first, or nothing was changed and it is said.
 * New sheets are left out: while they are made the port refuses other changes (embedded/long-step.test.ts).
 */
import "../embedded/engine-in-node";
import { EmbeddedPort, newWorkbook } from "../../../src/workbook/embedded";
import { boxOf } from "../../../src/workbook/address";
import type { WorkbookPort } from "../../../src/workbook/port";
import { cutOff } from "../../../src/pane/live/unfinished";
import { opened } from "../embedded/opened";
import { turns } from "../../turns";
import { called, once, type Compared, type End } from "./ends";
import { SECOND_PANE, UNDO } from "./faults";
import { OPERATIONS, type Operation } from "./operations";
import { both } from "./sheets";
import { CLOSED, SEEN, STEPS } from "./seen-in-embedded";
import { expectEnds, tried, upTo } from "./tried";

async function begin({ plans = both, sheet = "Data", selected, isProtected, prepare }: Operation) {
  const { port } = await opened(...plans());
  await prepare?.(port);
  if (isProtected) await port.protect(sheet, true);
  await port.show(sheet, selected ?? "A1");
  return port;
}

/** The methods of a port that a pane calls while it works. */
const isMethod = (value: unknown): value is (...given: unknown[]) => Promise<unknown> => typeof value === "function";

/** The same port; `before` is awaited before the n-th call of one of its methods. */
function watched(port: EmbeddedPort, before: (n: number) => Promise<void> | undefined): WorkbookPort {
  let calls = 0;
  return new Proxy(port, {
    get: (_, name) => {
      const value: unknown = Reflect.get(port, name, port);
      if (!isMethod(value)) return value;
      return async (...given: unknown[]) => {
        await before(++calls);
        return value.apply(port, given);
      };
    },
  });
}

const dispatch = ({ workbook: { model } }: EmbeddedPort, type: string, payload: object = {}): void =>
  // The engine types list commands with their payloads.
  void (model.dispatch as unknown as (type: string, payload: object) => unknown)(type, payload);

const idOf = ({ workbook: { model } }: EmbeddedPort, { sheet = "Data" }: Operation): string =>
  model.getters.getSheetIdByName(sheet) ?? "";

const insertRow = (port: EmbeddedPort, of: Operation, base: number): void =>
  dispatch(port, "ADD_COLUMNS_ROWS", {
    ...{ sheetId: idOf(port, of), sheetName: of.sheet ?? "Data", dimension: "ROW" },
    ...{ base, quantity: 1, position: "before" },
  });

type Act = (port: EmbeddedPort, of: Operation) => void | Promise<unknown>;

const FAULTS: Readonly<Record<string, Act>> = {
  "the sheet is deleted": (port, of) =>
    dispatch(port, "DELETE_SHEET", { sheetId: idOf(port, of), sheetName: of.sheet ?? "Data" }),
  "the sheet is renamed": (port, of) =>
    dispatch(port, "RENAME_SHEET", { sheetId: idOf(port, of), oldName: of.sheet ?? "Data", newName: "Another name" }),
  "the sheet is protected": (port, of) => port.protect(of.sheet ?? "Data", true),
  "a row is inserted above": (port, of) => insertRow(port, of, 0),
  "a row is inserted in the middle": (port, of) => insertRow(port, of, boxOf(of.cell)!.row),
  "a name is deleted": (port, of) =>
    dispatch(port, "DELETE_NAMED_RANGE", { name: port.workbook.localNames.get(idOf(port, of))?.get(of.name) }),
  "a cell to be written is typed into": (port, of) => {
    const { row, col } = boxOf(of.cell)!;
    dispatch(port, "UPDATE_CELL", { sheetId: idOf(port, of), row, col, content: "typed" });
  },
  [UNDO]: (port) => dispatch(port, "REQUEST_UNDO"),
  "another workbook is opened": (port) => port.attach(newWorkbook()),
  [SECOND_PANE]: (port, of) => of.work(port).catch(() => undefined),
};

/** The sheets with their cells, names and protection, as text. */
async function bookOf(port: EmbeddedPort): Promise<string> {
  const { getters } = port.workbook.model;
  const sheets = await port.sheetNames();
  const told = sheets.map(async (sheet) => {
    const cells = Object.values(getters.getCells(getters.getSheetIdByName(sheet)!)).map((cell) => {
      const { col, row } = getters.getCellPosition(cell.id);
      return [
        row,
        col,
        getters.getCellText({ sheetId: getters.getSheetIdByName(sheet)!, row, col }, { showFormula: true }),
      ];
    });
    const filled = cells.filter(([, , content]) => content !== "").map(String);
    return [sheet, filled.sort(), await port.listNames(sheet), await port.isProtected(sheet)];
  });
  return JSON.stringify(await Promise.all(told));
}

async function endOf(port: EmbeddedPort, message = ""): Promise<End> {
  const book = await bookOf(port);
  const sheets = JSON.parse(book) as [string, string[]][];
  return { book, cells: sheets.flatMap(([, cells]) => cells.map((cell) => cell.replace(/^\d+,\d+,/, ""))), message };
}

const run = async (port: EmbeddedPort, work: () => Promise<unknown>): Promise<End> => {
  const message = await work().then(
    () => "",
    (error: Error) => error.message || error.constructor.name,
  );
  return endOf(port, message);
};

// Formulas that wait for their functions: this engine has all functions, or none of them (embedded/upkeep.test.ts).
const ON_SHEETS = Object.entries(OPERATIONS).filter(
  ([name, { isOneSheet }]) => !isOneSheet && !/formulas again/.test(name),
);

/** An operation that nobody disturbs, for every change that is compared with it. */
interface Undisturbed {
  readonly begun: End;
  readonly ours: End;
  /** How often it calls the port. */
  readonly calls: number;
  /** How many of its steps are taken back until the workbook is as it was. */
  readonly steps: number;
}

async function undisturbed(operation: Operation): Promise<Undisturbed> {
  const port = await begin(operation);
  const begun = await endOf(port);
  let calls = 0;
  await operation.work(watched(port, (n) => void (calls = n)));
  const ours = await endOf(port);
  let steps = 0;
  for (; (await bookOf(port)) !== begun.book && steps < 9; steps++) dispatch(port, "REQUEST_UNDO");
  return { begun, ours, calls, steps };
}

async function ends(operation: Operation, what: string, { begun, ours, calls }: Undisturbed): Promise<string[]> {
  const act = FAULTS[what]!;
  const compared: Compared = {
    ...{ what, begun, ours },
    theirs: once(async () => {
      const alone = await begin(operation);
      await act(alone, operation);
      return endOf(alone);
    }),
    oursFirst: once(async () => {
      const second = await begin(operation);
      await operation.work(second);
      await act(second, operation);
      return endOf(second);
    }),
    theirsFirst: once(async () => {
      const first = await begin(operation);
      await act(first, operation);
      return run(first, () => operation.work(first));
    }),
  };
  const all: string[] = [];
  for (const n of tried(upTo(calls))) {
    const port = await begin(operation);
    const meantime = async (at: number): Promise<void> => void (at === n && (await act(port, operation)));
    all.push(await called(await run(port, () => operation.work(watched(port, meantime))), compared));
  }
  return all;
}

describe.each(ON_SHEETS)("%s", (name, operation) => {
  let made: Undisturbed;
  beforeAll(async () => void (made = await undisturbed(operation)));

  test.each(Object.keys(FAULTS))("%s", async (what) => {
    expectEnds(await ends(operation, what, made), SEEN[name]?.[what] ?? "done");
  });

  test("each of its steps is taken back", () => {
    const got = String(made.steps);
    expect(got).toBe(String(STEPS[name] ?? 1));
  });

  test("the pane is closed", async () => {
    const { begun, ours, calls } = made;
    const all: string[] = [];
    for (const n of tried(upTo(calls))) {
      const port = await begin(operation);
      const never = new Promise<void>(() => undefined);
      void operation.work(watched(port, (at) => (at >= n ? never : undefined))).catch(() => undefined);
      await turns(20);
      const book = await bookOf(port);
      const end = book === begun.book ? "as it was" : book === ours.book ? "done" : "half done";
      const said = (await cutOff(port)).map(({ kind, sheet }) => `${kind} of ${sheet}`);
      const told = said.length > 0 ? `${end}, says: ${said.join(", ")}` : end;
      all.push(told);
    }
    expectEnds(all, CLOSED[name] ?? "as it was", "; ");
  });
});
