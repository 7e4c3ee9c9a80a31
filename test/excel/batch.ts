/** Carries one batch of actions out on the workbook and answers it. */
import { Being, classOf, type Host } from "./objects/being";
import type { Action, Arguments, Request } from "./library";
import { NotModelled, Refusal } from "./refusal";
import type { Requirements } from "./requirements";
import { memberOf, shapeOf } from "./typings";
import { faultOf, faultOfCall, ObjectArgument } from "./typings/check";
import type { Member, Requirement } from "./typings/table";

/** One action. `path` reads like the code that made it: 'workbook.worksheets.add("Test").names'. */
export interface Step {
  readonly batch: number;
  readonly path: string;
  readonly verb: "make" | "load" | "call" | "set";
  readonly name: string;
  readonly args: readonly unknown[];
  /** The step in readable form: 'workbook.worksheets.getItem("Test").activate()'. */
  readonly line: string;
}

export interface Office extends Host {
  readonly requirements: Requirements;
  readonly root: Being;
  /** Objects that the library keeps after a batch. */
  readonly kept: Map<string, Known>;
  readonly faults: string[];
  /** Called before each action; may refuse it. */
  before(step: Step): void;
}

interface Known {
  /** null for a null object. */
  readonly being: Being | null;
  readonly className: string;
  readonly path: string;
}

const MAKE = 1;
const LOAD = 2;
const CALL = 3;
const SET = 4;
const TRACE = 5;

const GLOBAL = 1;
const METHOD = 3;
const PROPERTY = 4;
const INDEXER = 5;
const REFERENCE = 6;

const lower = (name: string): string => name[0].toLowerCase() + name.slice(1);
const upper = (name: string): string => name[0].toUpperCase() + name.slice(1);

export interface Answered {
  readonly results: { ActionId: number; Value: unknown }[];
  readonly traces: number[];
  readonly refused?: { Code: string; Message: string; Location: string; ActionIndex: number };
}

/** Events that the library registers under another name than that of the member. */
const EVENT_NAMES: Readonly<Record<string, string>> = { DataChanged: "Changed" };

export class Batch {
  private readonly known = new Map<number, Known>();

  constructor(
    private readonly office: Office,
    private readonly request: Request,
    private readonly number: number,
    private readonly steps: Step[],
  ) {}

  async carryOut(): Promise<Answered> {
    const results: Answered["results"] = [];
    const traces: number[] = [];
    const kept = new Set(
      this.request.Actions.filter(({ Name }) => Name === "_KeepReference").map(({ ObjectPathId }) => ObjectPathId),
    );
    for (const [index, action] of this.request.Actions.entries()) {
      if (action.ActionType === TRACE || action.Name === "Trace") {
        traces.push(action.Id);
        results.push({ ActionId: action.Id, Value: null });
        continue;
      }
      try {
        const Value = await this.action(action, kept);
        results.push({ ActionId: action.Id, Value: Value ?? null });
      } catch (error) {
        if (!(error instanceof Refusal)) throw error;
        return {
          results,
          traces,
          refused: {
            Code: error.code,
            Message: error.message,
            Location: this.steps.at(-1)?.path ?? "",
            ActionIndex: index,
          },
        };
      }
    }
    return { results, traces };
  }

  private async action(action: Action, kept: ReadonlySet<number>): Promise<unknown> {
    const { ActionType: type, ObjectPathId: id, Name: name } = action;
    if (name === "_RemoveReference") return null;
    const one = await this.object(id);
    if (type === MAKE) return one.being ? this.referenceOf(id, one, kept) : null;
    if (name === "_KeepReference") return null;
    if (type === LOAD) {
      const { Select = [], Expand = [] } = action.QueryInfo ?? {};
      this.keepStep(one.path, "load", "load", [[...Select, ...Expand].join(",")]);
      if (!one.being) return null;
      return { ...this.load(one.being, [...Select, ...Expand], action.QueryInfo), ...this.referenceOf(id, one, kept) };
    }
    if (type === SET) {
      const member = lower(name);
      const [value] = await this.args(action.ArgumentInfo);
      this.keepStep(one.path, "set", member, [value]);
      if (one.being) this.set(one, member, value);
      return null;
    }
    if (type === CALL) {
      const member = name.startsWith("_") ? name : lower(name);
      const args = await this.args(action.ArgumentInfo);
      if (/^_(Unr|R)egister/.test(name)) {
        const [, registered] = /^_(?:Unr|R)egister(?:Event)?(\w+?)(?:Event)?$/.exec(name)!;
        const event = EVENT_NAMES[registered] ?? registered;
        this.keepStep(one.path, "call", member, args);
        if (/^Work(sheet|book)/.test(one.className))
          this.need(this.memberOf(one, `on${event}`).needs, `${one.className}.on${event}`);
        return null;
      }
      this.keepStep(one.path, "call", member, args);
      if (!one.being) return null;
      return this.call(one, member, args);
    }
    throw new NotModelled(`an action of type ${type}`);
  }

  private referenceOf(id: number, one: Known, kept: ReadonlySet<number>): object {
    if (!kept.has(id)) return {};
    const reference = `${one.path} #${this.office.kept.size}`;
    this.office.kept.set(reference, one);
    return { _ReferenceId: reference };
  }

  private keepStep(path: string, verb: Step["verb"], name: string, args: readonly unknown[]): void {
    const step = new KeptStep(this.number, path, verb, name, args);
    this.office.before(step);
    this.steps.push(step);
  }

  /** The object of an object path; it is made when first needed, once per batch. */
  private async object(id: number): Promise<Known> {
    const before = this.known.get(id);
    if (before) return before;
    const made = await this.make(id);
    this.known.set(id, made);
    return made;
  }

  private async make(id: number): Promise<Known> {
    const {
      ObjectPathType: type,
      Name: name,
      ParentObjectPathId: parentId,
      ArgumentInfo,
    } = this.request.ObjectPaths[id];
    if (type === GLOBAL) return { being: this.office.root, className: "Workbook", path: "workbook" };
    if (type === REFERENCE) {
      const found = this.office.kept.get(name);
      if (!found) throw new Refusal("InvalidReference", `The object ${name} is known no more.`);
      return found;
    }
    const parent = await this.object(parentId!);
    if (type === PROPERTY) {
      const member = lower(name);
      if (parent.path === "workbook" && member === "workbook") return parent;
      const { kind, needs } = this.memberOf(parent, member);
      const className = kind && classOf(kind);
      if (!className) throw this.fault(`${parent.className}.${member} is no object`);
      this.need(needs, `${parent.className}.${member}`);
      const being = parent.being && (parent.being.read(member) as Being | null);
      return this.checked({ being, className, path: `${parent.path}.${member}` });
    }
    if (type === METHOD || type === INDEXER) {
      const member = name === "" || type === INDEXER ? "getItem" : lower(name);
      const args = await this.args(ArgumentInfo);
      const path = `${parent.path}.${member}(${trimmed(args.map((one) => this.readable(one))).join(",")})`;
      const { calls } = this.memberOf(parent, member);
      const className = calls && classOf(calls[0].gives);
      if (!className) throw this.fault(`${parent.className}.${member}() gives no object`);
      if (!/^get/.test(member)) this.keepStep(path, "make", "", []);
      else this.office.before({ batch: this.number, path, verb: "make", name: "", args: [], line: path });
      const being = parent.being && ((await this.call(parent, member, args)) as Being | null);
      if (being === null && parent.being && !/OrNullObject$/.test(member))
        throw new NotModelled(`${parent.className}.${member}() gave nothing`);
      return this.checked({ being, className, path });
    }
    throw new NotModelled(`an object path of type ${type}`);
  }

  private checked(one: Known): Known {
    if (one.being && one.being.className !== one.className)
      throw new NotModelled(`${one.path} is a ${one.className} by the typings, and a ${one.being.className} here`);
    return one;
  }

  /** Shows the ids of sheets as names, which a reader knows. */
  private readable(argument: unknown): string {
    const sheet = this.office.book.sheets.find(({ id }) => id === argument);
    return shownArgument(sheet ? sheet.name : argument);
  }

  private async args(info: Arguments | undefined): Promise<unknown[]> {
    const objects = info?.ReferencedObjectPathIds ?? [];
    const args: unknown[] = [];
    for (const [index, argument] of (info?.Arguments ?? []).entries()) {
      const id = objects[index];
      if (!id) args.push(argument);
      else {
        const { being, className, path } = await this.object(id);
        if (!being) throw new Refusal("InvalidArgument", `${path} is a null object.`);
        args.push(new KnownArgument(className, being, path));
      }
    }
    return args;
  }

  private memberOf({ className }: { className: string }, member: string): Member {
    const found = memberOf(className, member);
    if (!found) throw this.fault(`${className} has no member "${member}"`);
    return found;
  }

  private fault(sentence: string): Refusal {
    this.office.faults.push(sentence);
    return new Refusal(/needs \w+ [\d.]+, which/.test(sentence) ? "ApiNotFound" : "InvalidArgument", sentence);
  }

  private need(needs: Requirement | undefined, what: string): void {
    const sentence = needs && this.office.requirements.use(needs, what);
    if (sentence) throw this.fault(sentence);
  }

  private set(one: Known, member: string, value: unknown): void {
    const at = `${one.className}.${member}`;
    const found = this.memberOf(one, member);
    if (!found.kind || found.isReadonly) throw this.fault(`${at} cannot be set`);
    this.need(found.needs, at);
    if (found.isNotOnTheWeb && this.office.platform === "web")
      throw new Refusal("UnsupportedOperation", `${at} is not supported in Excel on the web.`);
    const needs: Requirement[] = [];
    const sentence = faultOf(value, found.kind, at, needs);
    if (sentence) throw this.fault(sentence);
    for (const need of needs) this.need(need, at);
    one.being!.write(member, value instanceof ObjectArgument ? value.value : value);
  }

  private async call(one: Known, member: string, args: readonly unknown[]): Promise<unknown> {
    const at = `${one.className}.${member}`;
    const given = args.map((argument) => (argument instanceof ObjectArgument ? argument.value : argument));
    if (member === "_ValidateArraySize") return one.being!.call(member, given);
    const { calls, needs } = this.memberOf(one, member);
    if (!calls) throw this.fault(`${at} cannot be called`);
    this.need(needs, at);
    const nested: Requirement[] = [];
    const sentence = faultOfCall(args, calls, at, nested);
    if (sentence) throw this.fault(sentence);
    for (const need of nested) this.need(need, at);
    return (await one.being!.call(member, given)) ?? null;
  }

  private load(being: Being, paths: readonly string[], query: Action["QueryInfo"] = {}): Record<string, unknown> {
    const wanted = new Map<string, string[]>();
    for (const path of paths) {
      const [first, ...rest] = path.split("/");
      wanted.set(first, [...(wanted.get(first) ?? []), ...(rest.length > 0 ? [rest.join("/")] : [])]);
    }
    const { className } = being;
    const isCollection = shapeOf(className).members.items !== undefined;
    const own = [...wanted].filter(([first]) => !isCollection || memberOf(className, first));
    const answer: Record<string, unknown> = idOf(being);
    for (const [first, rest] of own) {
      if (first === "*") Object.assign(answer, this.all(being));
      else answer[upper(first)] = this.property(being, first, rest);
    }
    if (paths.length === 0 && !isCollection) Object.assign(answer, this.all(being));
    const ofItems = paths.filter((path) => !own.some(([first]) => path.split("/")[0] === first));
    if (isCollection && (ofItems.length > 0 || paths.length === 0)) {
      const items = being.read("items") as Being[];
      const { Skip = 0, Top = Infinity } = query;
      answer._Items = items.slice(Skip, Skip + Top).map((item) =>
        this.load(
          item,
          ofItems.filter((path) => path !== "*"),
        ),
      );
    }
    return answer;
  }

  private property(being: Being, member: string, rest: readonly string[]): unknown {
    const at = `${being.className}.${member}`;
    const { kind, needs } = this.memberOf(being, member);
    if (!kind) throw this.fault(`${at} is no property`);
    this.need(needs, at);
    const value = being.read(member);
    if (!classOf(kind)) {
      if (rest.length > 0) throw this.fault(`${at} has no property "${rest[0]}"`);
      return value;
    }
    return value ? this.load(value as Being, rest) : null;
  }

  /** All simple properties that this Excel has and the stand-in models. */
  private all(being: Being): Record<string, unknown> {
    return Object.fromEntries(
      Object.entries(shapeOf(being.className).members).flatMap(([member, { kind, needs }]) => {
        if (!kind || classOf(kind) || member.startsWith("on") || member === "context" || member === "items") return [];
        if (needs && !this.office.requirements.has(needs.set, needs.version)) return [];
        try {
          return [[upper(member), being.read(member)]];
        } catch (error) {
          if (error instanceof NotModelled) return [];
          throw error;
        }
      }),
    );
  }
}

class KnownArgument extends ObjectArgument {
  constructor(
    className: string,
    value: unknown,
    readonly path: string,
  ) {
    super(className, value);
  }
}

const shownArgument = (argument: unknown): string =>
  argument instanceof KnownArgument ? argument.path : (JSON.stringify(argument) ?? "null");
const plainArgument = (argument: unknown): unknown => (argument instanceof KnownArgument ? argument.path : argument);
const trimmed = (shown: readonly string[]): string[] => {
  const kept = [...shown];
  while (kept.at(-1) === "null") kept.pop();
  return kept;
};

/** A step with its line put together when it is read: few tests read it, and the arguments may be the values of thousands of cells. */
class KeptStep implements Step {
  constructor(
    readonly batch: number,
    readonly path: string,
    readonly verb: Step["verb"],
    readonly name: string,
    private readonly given: readonly unknown[],
  ) {}

  get args(): readonly unknown[] {
    return this.given.map(plainArgument);
  }

  get line(): string {
    const { path, verb, name } = this;
    if (verb === "make") return path;
    const shown = this.given.map(shownArgument);
    return verb === "set" ? `${path}.${name} = ${shown[0]}` : `${path}.${name}(${trimmed(shown).join(",")})`;
  }
}

/** The id by which the library finds an object again. */
function idOf(being: Being): Record<string, unknown> {
  const id: unknown = "id" in being ? (being as { id: unknown }).id : undefined;
  return id === undefined ? {} : { _Id: id };
}
