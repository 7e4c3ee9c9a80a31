/**
 * For every command the engine calls three methods of each of its 68 parts, though half of these methods are inherited and do nothing:
 * these calls took a twentieth of an insertion. Here the engine calls only methods that a part has of its own.
 * Casts: the engine's types do not include the inner parts of a model.
 */
import { CorePlugin, coreTypes, Model } from "@odoo/o-spreadsheet";

interface Command {
  readonly type: string;
}

/** A part of the engine. */
interface Handler {
  allowDispatch(command: Command): unknown;
  beforeHandle(command: Command): void;
  handle(command: Command): void;
}

/** What a part inherits that has no method of its own: it allows every command, and does nothing. */
const INHERITED = Object.getPrototypeOf(CorePlugin.prototype) as Handler;

/** The parts of a list with methods of their own. */
interface Told {
  /** The length of the list: it grows while the engine is made. */
  readonly count: number;
  readonly allow: readonly Handler[];
  readonly before: readonly Handler[];
  readonly handle: readonly Handler[];
  /** Those that are told of a command which is not kept in the file. */
  readonly beforeLocal: readonly Handler[];
  readonly handleLocal: readonly Handler[];
}

const told = new WeakMap<readonly Handler[], Told>();

function toldOf(handlers: readonly Handler[]): Told {
  const known = told.get(handlers);
  if (known?.count === handlers.length) return known;
  const having = (method: keyof Handler) => handlers.filter((one) => one[method] !== INHERITED[method]);
  const isLocal = (one: Handler): boolean => !(one instanceof CorePlugin);
  const [before, handle] = [having("beforeHandle"), having("handle")];
  const found: Told = {
    count: handlers.length,
    allow: having("allowDispatch"),
    before,
    handle,
    beforeLocal: before.filter(isLocal),
    handleLocal: handle.filter(isLocal),
  };
  told.set(handlers, found);
  return found;
}

interface Inside {
  readonly handlers: readonly Handler[];
  readonly uiHandlers: readonly Handler[];
  trigger(event: string, payload: unknown): void;
  dispatchToHandlers(handlers: readonly Handler[], command: Command): void;
  checkDispatchAllowedCoreCommand(command: Command): unknown[];
  checkDispatchAllowedLocalCommand(command: Command): unknown[];
}

const inside = Model.prototype as unknown as Inside;

inside.dispatchToHandlers = function (handlers, command) {
  const found = toldOf(handlers);
  const isKept = coreTypes.has(command.type as never);
  for (const handler of isKept ? found.before : found.beforeLocal) handler.beforeHandle(command);
  for (const handler of isKept ? found.handle : found.handleLocal) handler.handle(command);
  this.trigger("command-dispatched", command);
};

inside.checkDispatchAllowedCoreCommand = function (command) {
  return toldOf(this.handlers).allow.map((handler) => handler.allowDispatch(command));
};

inside.checkDispatchAllowedLocalCommand = function (command) {
  return toldOf(this.uiHandlers).allow.map((handler) => handler.allowDispatch(command));
};
