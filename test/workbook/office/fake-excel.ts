/**
 * The real Excel object model (from @microsoft/office-js) talking to a workbook that is only a list of sheets.
 *
 * `RequestContext.prototype._requestExecutor` is a private hook of the pinned library: it receives every batch as the
 * host would (actions and object paths) and answers it. What was asked for is answered and no more, so that reading a
 * property that was not loaded fails here as it does in Excel.
 */
import fs from "fs";

/** One action of a batch. `path` reads like the code that made it: 'Workbook.Worksheets.Add("Test").Names'. */
export interface Step {
  readonly request: number;
  readonly path: string;
  readonly verb: "make" | "load" | "call" | "set";
  readonly name: string;
  readonly args: readonly unknown[];
  /** Whether the object was made by an `add` method. */
  readonly adds: boolean;
}

type Answer = (path: string) => object | null;

const VERBS: Record<number, Step["verb"]> = { 1: "make", 2: "load", 3: "call", 4: "set" };

export class FakeExcel {
  readonly steps: Step[] = [];
  readonly sizes: number[] = [];
  readonly sheets: { id: string; name: string }[];
  private answers: [RegExp, Answer][] = [];
  private refusals: [RegExp, string, string, number][] = [];

  constructor(sheets: readonly string[] = ["Sheet1"]) {
    this.sheets = sheets.map((name, index) => ({ id: `{${index}}`, name }));
    load();
    (Excel.RequestContext.prototype as any)._requestExecutor = {
      executeAsync: async (_data: unknown, _flags: number, message: any) => this.execute(message.Body),
    };
  }

  /** What a load of a matching path, or a call ("Workbook.Calculate()"), gives, with the host's capital-letter keys; null is a null object. */
  when(path: RegExp, answer: object | null | Answer): this {
    this.answers.unshift([path, typeof answer === "function" ? (answer as Answer) : () => answer]);
    return this;
  }

  /** The host refuses the next `times` actions whose text matches. */
  refuse(action: RegExp, code: string, message = "refused", times = Infinity): this {
    this.refusals.push([action, code, message, times]);
    return this;
  }

  /** The steps in readable form: 'Workbook.Worksheets.Add("Test").Activate()'. Of the objects made, only the added ones. */
  get lines(): string[] {
    return this.steps.filter(({ verb, adds }) => verb !== "make" || adds).map(lineOf);
  }

  private execute(body: any): unknown {
    const request = this.sizes.push(JSON.stringify(body).length) - 1;
    const paths = renderer(body.ObjectPaths);
    const results: unknown[] = [];
    const kept = new Set(
      body.Actions.filter(({ Name }: any) => Name === "_KeepReference").map((action: any) => action.ObjectPathId),
    );
    const traces: number[] = [];
    let refused: unknown;
    for (const [index, action] of body.Actions.entries()) {
      // The library's own housekeeping.
      if (action.Name === "Trace") {
        traces.push(action.Id);
        results.push({ ActionId: action.Id, Value: null });
      }
      if (["_KeepReference", "_RemoveReference", "Trace"].includes(action.Name)) continue;
      const step: Step = {
        request,
        path: paths(action.ObjectPathId),
        verb: VERBS[action.ActionType],
        name: action.Name,
        args: argumentsOf(action.ArgumentInfo, paths),
        adds: body.ObjectPaths[action.ObjectPathId].Name === "Add",
      };
      const refusal = this.refusals.find(([pattern, , , times]) => times > 0 && pattern.test(lineOf(step)));
      if (refusal) {
        refusal[3] -= 1;
        refused = { Code: refusal[1], Message: refusal[2], Location: step.path, ActionIndex: index };
        break;
      }
      this.steps.push(step);
      const value = this.effect(step, action.QueryInfo);
      // An object that lives beyond its request is known by a reference from then on: here, its own path.
      const reference =
        value && step.verb === "make" && kept.has(action.ObjectPathId) ? { _ReferenceId: step.path } : {};
      results.push({ ActionId: action.Id, Value: Array.isArray(value) ? value : value && { ...value, ...reference } });
    }
    return {
      HttpStatusCode: refused ? 400 : 200,
      Headers: {},
      Body: { Results: results, TraceIds: traces, ...(refused ? { Error: refused } : {}) },
      ErrorCode: "",
      ErrorMessage: "",
    };
  }

  /** What an action does to the list of sheets, and what it gives. */
  private effect({ path, verb, name }: Step, query: any): object | null {
    const added = /^Workbook\.Worksheets\.Add\("(.*?)"\)$/.exec(path)?.[1];
    const isHere = (sheet: { id: string; name: string }): boolean =>
      path === `Workbook.Worksheets.GetItem("${sheet.id}")` ||
      path === `Workbook.Worksheets.GetItemOrNullObject("${sheet.name}")`;
    if (verb === "make" && added !== undefined) this.sheets.push({ id: `{${added}}`, name: added });
    if (verb === "make" && path.startsWith("Workbook.Worksheets.GetItemOrNullObject") && path.endsWith('")'))
      return /^[^()]*\("[^"]*"\)$/.test(path) && !this.sheets.some(isHere) ? null : {};
    if (verb === "make" && /OrNullObject\([^()]*\)$/.test(path)) return this.answered(path) && {};
    if (verb === "call" && name === "Delete" && this.sheets.some(isHere))
      this.sheets.splice(this.sheets.findIndex(isHere), 1);
    if (verb === "call") {
      const call = `${path}.${name}()`;
      return this.answers.find(([pattern]) => pattern.test(call))?.[1](call) ?? {};
    }
    if (verb !== "load") return {};
    if (path === "Workbook.Worksheets")
      return onlyAsked({ _Items: this.sheets.map((sheet) => ({ Id: sheet.id, Name: sheet.name })) }, query);
    return onlyAsked(added === undefined ? this.answered(path) : { Id: `{${added}}`, Name: added }, query);
  }

  private answered(path: string): object | null {
    const found = this.answers.find(([pattern]) => pattern.test(path));
    return found ? withSize(found[1](path)) : {};
  }
}

const lineOf = ({ path, verb, name, args }: Step): string =>
  verb === "make"
    ? path
    : verb === "set"
      ? `${path}.${name} = ${JSON.stringify(args[0])}`
      : `${path}.${verb === "load" ? "load" : name}(${args.map((arg) => (isPath(arg) ? arg : JSON.stringify(arg)))})`;

/** A call's arguments; one that is itself an object is given by its path. */
function argumentsOf(info: any, paths: (id: number) => string): unknown[] {
  const objects: (number | null)[] = info?.ReferencedObjectPathIds ?? [];
  return (info?.Arguments ?? []).map((arg: unknown, index: number) => (objects[index] ? paths(objects[index]) : arg));
}

/** An object path as the code that made it. */
function renderer(paths: Record<string, any>): (id: number) => string {
  const render = (id: number): string => {
    const { ObjectPathType: type, Name: name, ParentObjectPathId: parent, ArgumentInfo: info } = paths[id];
    if (type === 1) return "Workbook";
    if (type === 6) return name;
    if (type === 4) return parent === 1 && name === "Workbook" ? "Workbook" : `${render(parent)}.${name}`;
    const args = argumentsOf(info, render).map((arg) => (isPath(arg) ? arg : JSON.stringify(arg)));
    return `${render(parent)}.${name || "GetItem"}(${args})`;
  };
  return render;
}

/** A range of known cells knows how many they are. */
const withSize = (answer: any): object | null => {
  const cells: unknown[][] | undefined = answer?.Values ?? answer?.Formulas;
  return Array.isArray(cells) ? { RowCount: cells.length, ColumnCount: cells[0].length, ...answer } : answer;
};

const isPath = (arg: unknown): arg is string => typeof arg === "string" && arg.startsWith("Workbook.");

/** Cuts an answer to the properties that were asked for. */
function onlyAsked(value: any, query: any): object | null {
  if (value === null) return null;
  const asked = new Set((query?.Select ?? []).map((name: string) => name.split("/").pop()!.toLowerCase()));
  const cut = (item: object): object =>
    Object.fromEntries(Object.entries(item).filter(([key]) => key === "Id" || asked.has(key.toLowerCase())));
  return value._Items ? { _Items: value._Items.map(cut) } : cut(value);
}

/** What office.js itself provides to the object model: the host's context, and where its events come in. */
const host = {
  version: 17,
  selectionHandlers: [] as ((args: unknown) => void)[],
};

const context = {
  requirements: {
    isSetSupported: (name: string, wanted: string) =>
      name === "ExcelApi" && Number(wanted.split(".")[1]) <= host.version,
  },
  document: {
    addHandlerAsync: (_type: string, handler: () => void, done: (result: unknown) => void) => {
      host.selectionHandlers.push(handler);
      done({ status: "succeeded" });
    },
    removeHandlerAsync: (_type: string, { handler }: any, done: (result: unknown) => void) => {
      host.selectionHandlers = host.selectionHandlers.filter((one) => one !== handler);
      done({ status: "succeeded" });
    },
  },
};

/** Which ExcelApi the host claims: 17 for 1.17. */
export const supports = (version: number): void => void (host.version = version);

let loaded = false;

/** Loads the object model as a page in Excel on the web does; needs jsdom. */
function load(): void {
  if (loaded) return;
  loaded = true;
  history.pushState({}, "", "/?_host_Info=Excel$Web$16.01$en-US$$$$0");
  (0, eval)(fs.readFileSync(require.resolve("@microsoft/office-js/dist/excel-web-16.00.js"), "utf8"));
  (globalThis as any).OSF._OfficeAppFactory = { getContext: () => context };
  (OfficeExtension as any)._testSetRichApiMessageReadyImpl(async () => undefined);
}

/** The user moves the selection. */
export const moveSelection = (): void => host.selectionHandlers.forEach((handler) => handler({}));

const EVENTS = { changed: 10, activated: 11, calculated: 16 };

/** Excel reports something of a worksheet, in the object model's own numbers. */
export const report = (event: keyof typeof EVENTS): void =>
  (OfficeExtension as any)._testTriggerRichApiMessageEvent({
    entries: [{ messageCategory: 65536, messageType: EVENTS[event], targetId: "Workbook", message: "{}" }],
  });
