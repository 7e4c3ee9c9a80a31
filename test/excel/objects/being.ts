/**
 * The base classes of the objects that answer the object model. A class here has getters, setters and methods with the
 * names of the class in the typings. For a member that the typings have and the class lacks, the stand-in says that it
 * is not modelled yet.
 */
import type { Book, Sheet } from "../book/book";
import type { Evaluation } from "../book/evaluation";
import type { Moved } from "../book/lines";
import type { SheetEvent } from "../library";
import { invalidArgument, NotModelled } from "../refusal";
import { excelTypings, memberOf } from "../typings";
import type { Kind } from "../typings/table";

export interface Host {
  readonly book: Book;
  readonly evaluation: Evaluation;
  readonly platform: Platform;
  readonly locale: string;
  /** Conditions that a test can set and that are not part of the workbook. */
  readonly switches: Switches;
  newId(prefix: string): string;
  /** Formulas are calculated again before anything is read. */
  recalculate(): void;
  /** Somebody asks for a calculation: every formula is calculated, with manual calculation too. */
  calculate(): void;
  /** Rows were inserted or deleted on a sheet: ranges that the library keeps follow their cells. */
  moved(sheet: Sheet, to: Moved): void;
  /** Reports an event of the workbook that a listener may hear. */
  raise(event: HostEvent): void;
}

export type Platform = "web" | "desktop" | "mac";
export type HostEvent = SheetEvent | "selection";

export interface Switches {
  /** A machine without a printer refuses page set-up. */
  hasNoPrinter: boolean;
  /** Print areas above 255 characters are refused, as in VBA; whether the API refuses them is not documented. */
  limitsPrintArea: boolean;
  /**
   * What stands between the areas of a print area: the list separator of the computer's region, as for `getRanges` in German desktop Excel
   * (office-js issues 1167 and 1985). For `setPrintArea` it is not documented.
   */
  listSeparator: "," | ";";
  /** The workbook counts its days from 1904 (an option of Excel), and not from 1900. */
  countsFrom1904: boolean;
  /**
   * The letters of row and column if Excel's option "R1C1 reference style" is on. The value of a name is then an address such as
   * Sheet1!R1C1 on Windows (office-js issue 1831). Whether a German Excel gives Z1S1 is not documented; the formula of a name is localized
   * (issue 2834).
   */
  numberedColumns: "R C" | "Z S" | undefined;
  /**
   * Another window of Excel is in front. Names are then given without their type (desktop, office-js issue 5504), nothing is selected (issues
   * 561 and 5319), and on the Mac the names of a sheet are refused (issue 6365).
   */
  isInBackground: boolean;
}

export abstract class Being {
  abstract readonly className: string;
  constructor(readonly host: Host) {}

  read(member: string): unknown {
    if (member in this) return (this as unknown as Record<string, unknown>)[member];
    throw new NotModelled(`${this.className}.${member}`);
  }

  write(member: string, value: unknown): void {
    let proto: object | null = Object.getPrototypeOf(this);
    for (; proto; proto = Object.getPrototypeOf(proto)) {
      const set = Object.getOwnPropertyDescriptor(proto, member)?.set;
      if (set) return set.call(this, value);
    }
    throw new NotModelled(`${this.className}.${member} = ...`);
  }

  call(member: string, args: readonly unknown[]): unknown {
    const method = (this as unknown as Record<string, unknown>)[member];
    if (typeof method !== "function") throw new NotModelled(`${this.className}.${member}()`);
    return (method as (...all: unknown[]) => unknown).apply(this, [...args]);
  }
}

/** A collection: its `items`, each a being. */
export abstract class Collection<T extends Being> extends Being {
  abstract get items(): T[];

  getCount(): number {
    return this.items.length;
  }

  get count(): number {
    return this.items.length;
  }
}

export type Check = (bag: Bag, value: unknown) => void;
export type Method = (bag: Bag, ...args: unknown[]) => unknown;

/** Rules for the bags of one part of the object model, by "Class.member". */
export interface BagRules {
  readonly checks?: Readonly<Record<string, Check>>;
  readonly methods?: Readonly<Record<string, Method>>;
  readonly defaults?: Readonly<Record<string, unknown>>;
}

/** An object that only stores what is set on it; the objects below it are bags too. */
export class Bag extends Being {
  constructor(
    host: Host,
    readonly className: string,
    readonly held: Record<string, unknown>,
    readonly path: string,
    readonly rules: BagRules,
    /** Called before each change: a protected sheet refuses it. */
    readonly mayChange: () => void,
  ) {
    super(host);
  }

  get(member: string): unknown {
    return this.held[`${this.path}${member}`] ?? this.rules.defaults?.[`${this.className}.${member}`];
  }

  put(member: string, value: unknown): void {
    this.held[`${this.path}${member}`] = value;
  }

  override read(member: string): unknown {
    const kind = memberOf(this.className, member)?.kind;
    const name = kind && classOf(kind);
    if (name) return new Bag(this.host, name, this.held, `${this.path}${member}.`, this.rules, this.mayChange);
    return this.get(member) ?? null;
  }

  override write(member: string, value: unknown): void {
    this.mayChange();
    if (/color$/i.test(member)) checkColor(value);
    this.rules.checks?.[`${this.className}.${member}`]?.(this, value);
    this.put(member, value);
  }

  override call(member: string, args: readonly unknown[]): unknown {
    const method = this.rules.methods?.[`${this.className}.${member}`];
    if (!method) throw new NotModelled(`${this.className}.${member}()`);
    return method(this, ...args);
  }
}

/** The class that a member leads to, if there is one. */
export function classOf(kind: Kind): string | undefined {
  if (kind.is === "named") return isClass(kind.name) ? kind.name : undefined;
  return kind.is === "either" ? kind.of.map(classOf).find(Boolean) : undefined;
}

const isClass = (name: string): boolean => excelTypings().shapes[name]?.isClass === true;

const NAMED =
  /^(aqua|black|blue|fuchsia|gray|green|lime|maroon|navy|olive|orange|purple|red|silver|teal|white|yellow)$/i;

export function checkColor(value: unknown): void {
  if (value === "" || value === null) return;
  if (typeof value !== "string" || !(/^#?[0-9a-f]{6}$/i.test(value) || NAMED.test(value)))
    throw invalidArgument(`Excel does not know the color ${JSON.stringify(value)}.`);
}
