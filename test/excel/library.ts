/**
 * The real object model of Excel (from @microsoft/office-js), loaded as a page in Excel on the web loads it; needs
 * jsdom. `RequestContext.prototype._requestExecutor` is a private hook of the pinned library: it receives every batch
 * in place of the host.
 */
import fs from "fs";
import { addMissing } from "./missing";

export interface Request {
  readonly Actions: readonly Action[];
  readonly ObjectPaths: Readonly<Record<string, ObjectPath>>;
}

export interface Action {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly ArgumentInfo?: Arguments;
  readonly QueryInfo?: { Select?: string[]; Expand?: string[]; Top?: number; Skip?: number };
}

export interface ObjectPath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: Arguments;
}

export interface Arguments {
  readonly Arguments?: readonly unknown[];
  readonly ReferencedObjectPathIds?: readonly (number | null)[];
}

/** The host behind the object model. */
export interface Behind {
  execute(body: Request, flags: number): Promise<unknown>;
  /** `isByLibrary`: the library asks for itself, and no other code gets the answer. */
  isSetSupported(set: string, version: string | undefined, isByLibrary: boolean): boolean;
  readonly officePlatform: string;
  readonly locale: string;
}

let behind: Behind;
let selectionHandlers: ((args: unknown) => void)[] = [];
let isLoaded = false;

/** The script whose code called the function that asks. Jest would write the frames as text and map them to the sources, a tenth of some test files. */
function askingScript(): string {
  const { stackTraceLimit, prepareStackTrace } = Error;
  let script: string | null | undefined;
  // This function, the one that asks, and its caller.
  Error.stackTraceLimit = 3;
  Error.prepareStackTrace = (_, [, , caller]) => (script = caller?.getScriptNameOrSourceURL());
  void new Error().stack;
  Object.assign(Error, { stackTraceLimit, prepareStackTrace });
  return script ?? "";
}

const SOURCE = "excel-web-16.00.js";

const context = {
  requirements: {
    isSetSupported: (set: string, version?: string) =>
      behind.isSetSupported(set, version, askingScript().includes(SOURCE)),
  },
  get platform() {
    return behind.officePlatform;
  },
  get diagnostics() {
    return { host: "Excel", platform: behind.officePlatform, version: "16.0.0.0" };
  },
  get displayLanguage() {
    return behind.locale;
  },
  get contentLanguage() {
    return behind.locale;
  },
  document: {
    addHandlerAsync: (_type: string, handler: () => void, done: (result: unknown) => void) => {
      selectionHandlers.push(handler);
      done({ status: "succeeded" });
    },
    removeHandlerAsync: (_type: string, { handler }: { handler?: () => void }, done: (result: unknown) => void) => {
      selectionHandlers = selectionHandlers.filter((one) => one !== handler);
      done({ status: "succeeded" });
    },
  },
};

/**
 * Puts a host behind the object model, in place of the host before. A context that has sent a request keeps its host:
 * the library repeats a release that failed after 5 s, and a test that runs by then must not count it.
 */
export function putBehind(host: Behind): void {
  behind = host;
  if (!isLoaded) load();
  Object.defineProperty(Excel.RequestContext.prototype, "_requestExecutor", {
    configurable: true,
    get() {
      const executor = {
        executeAsync: (_data: unknown, flags: number, message: { Body: Request }) => host.execute(message.Body, flags),
      };
      Object.defineProperty(this, "_requestExecutor", { value: executor });
      return executor;
    },
  });
}

/**
 * In the context of a test in jsdom every use of a global is slow; as constants of the block around the library these are not (jest.config.mjs does the
 * same for modules). What the library declares by `var` is global as before.
 */
const BUILT_IN = ["Array", "Boolean", "Error", "JSON", "Math", "Number", "Object", "Promise", "RegExp", "String"];

function load(): void {
  isLoaded = true;
  history.pushState({}, "", "/?_host_Info=Excel$Web$16.01$en-US$$$$0");
  const text = fs.readFileSync(require.resolve(`@microsoft/office-js/dist/${SOURCE}`), "utf8");
  const constants = BUILT_IN.map((name) => `${name} = globalThis.${name}`).join(", ");
  (0, eval)(`{ const ${constants}; ${text}\n}\n//# sourceURL=${SOURCE}`);
  (globalThis as any).OSF._OfficeAppFactory = { getContext: () => context };
  (OfficeExtension as any)._testSetRichApiMessageReadyImpl(async () => undefined);
  addMissing();
}

/** The user moves the selection. */
export const selectionMoved = (): void => [...selectionHandlers].forEach((handler) => handler({}));

/** The numbers of events in the object model. */
const EVENTS = {
  changed: 10,
  activated: 11,
  added: 13,
  deleted: 15,
  calculated: 16,
  rowHidden: 22,
  renamed: 25,
  moved: 27,
  workbookActivated: 2203,
};

export type SheetEvent = keyof typeof EVENTS;

/** Excel reports an event of a worksheet or of the workbook. */
export const reported = (event: SheetEvent): void =>
  (OfficeExtension as any)._testTriggerRichApiMessageEvent({
    entries: [{ messageCategory: 65536, messageType: EVENTS[event], targetId: "Workbook", message: "{}" }],
  });
