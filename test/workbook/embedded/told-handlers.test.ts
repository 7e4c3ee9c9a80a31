/** Commands reach the parts of the engine that have methods of their own, as the engine itself would call them. */
import "./engine-in-node";
import { CorePlugin } from "@odoo/o-spreadsheet";
import { Model } from "../../../src/workbook/embedded/engine";

/** A part that notes what it is asked and told; `answer` is what it answers. */
class Listening {
  readonly heard: string[] = [];
  answer = "Success";
  allowDispatch({ type }: { type: string }): string {
    this.heard.push(`allow ${type}`);
    return this.answer;
  }
  beforeHandle({ type }: { type: string }): void {
    this.heard.push(`before ${type}`);
  }
  handle({ type }: { type: string }): void {
    this.heard.push(`handle ${type}`);
  }
  finalize(): void {
    this.heard.push("end");
  }
}

function listening(as: object) {
  const model = new Model({ sheets: [{ id: "s", name: "S", cells: {} }] } as object);
  const part = Object.setPrototypeOf(new Listening(), Object.assign(Object.create(as), methodsOf(Listening.prototype)));
  const { handlers, uiHandlers } = model as unknown as { handlers: unknown[]; uiHandlers: unknown[] };
  handlers.push(part);
  if (!(part instanceof CorePlugin)) uiHandlers.push(part);
  return { model, part: part as Listening };
}

const methodsOf = (prototype: object): object =>
  Object.fromEntries(
    Object.entries(Object.getOwnPropertyDescriptors(prototype)).flatMap(([name, { value }]) =>
      name === "constructor" ? [] : [[name, value as unknown]],
    ),
  );

const write = (model: Model, content: string) =>
  model.dispatch("UPDATE_CELL", { sheetId: "s", col: 0, row: 0, content } as never);

test("a part with methods of its own is asked, told before, and told, in this order", () => {
  const { model, part } = listening(Object.getPrototypeOf(CorePlugin.prototype) as object);
  write(model, "1");
  expect(part.heard.filter((one) => one.includes("UPDATE_CELL") && !one.includes("POSITION"))).toEqual([
    "allow UPDATE_CELL",
    "before UPDATE_CELL",
    "handle UPDATE_CELL",
  ]);
  expect(part.heard).toContain("handle UPDATE_CELL_POSITION");
  model.dispatch("EVALUATE_CELLS" as never);
  expect(part.heard.slice(-4)).toEqual([
    "allow EVALUATE_CELLS",
    "before EVALUATE_CELLS",
    "handle EVALUATE_CELLS",
    "end",
  ]);
});

test("a part of the file is not told of a command that is not kept in the file", () => {
  const { model, part } = listening(CorePlugin.prototype);
  write(model, "1");
  model.dispatch("EVALUATE_CELLS" as never);
  expect(part.heard).toContain("handle UPDATE_CELL");
  expect(part.heard.filter((one) => one.includes("EVALUATE_CELLS"))).toEqual([]);
});

test("a command that one part refuses is not done, and the refusal is told", () => {
  const { model, part } = listening(Object.getPrototypeOf(CorePlugin.prototype) as object);
  part.answer = "Readonly";
  const { isSuccessful, reasons } = write(model, "1");
  expect([isSuccessful, reasons]).toEqual([false, ["Readonly"]]);
  expect(model.getters.getEvaluatedCell({ sheetId: "s", col: 0, row: 0 }).value).toBe(null);
});
