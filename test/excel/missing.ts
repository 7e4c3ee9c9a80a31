/**
 * Classes and members that the typings have and the library of the npm package lacks: the library ends before ExcelApi
 * 1.18, while Excel itself loads a later one from Microsoft's servers. They are made from parts of the library.
 */
import { classOf } from "./objects/being";
import { excelTypings } from "./typings";
import type { Member, Shape } from "./typings/table";

const upper = (name: string): string => name[0].toUpperCase() + name.slice(1);

/** Members that every object has. */
const COMMON = ["context", "items", "load", "set", "toJSON", "track", "untrack", "retrieve", "isNullObject"];

export function addMissing(): void {
  const excel = Excel as any;
  const { shapes } = excelTypings();
  const classes = Object.entries(shapes).filter(([, { isClass, bases }]) => isClass && bases.includes("ClientObject"));
  const made = new Set<string>();
  for (const [name, shape] of classes)
    if (!excel[name]) {
      excel[name] = classFor(name, shape);
      made.add(name);
    }
  for (const [name, shape] of classes)
    for (const [member, what] of Object.entries(shape.members))
      if (!COMMON.includes(member) && !(member in excel[name].prototype))
        define(excel[name].prototype, member, what, made.has(name));
}

function classFor(name: string, shape: Shape): unknown {
  const { Utility, BatchApiHelper } = OfficeExtension as any;
  const scalars = Object.entries(shape.members).filter(
    ([member, { kind }]) => kind && !classOf(kind) && member !== "items",
  );
  const itemKind = shape.members.items?.kind;
  const itemClass = itemKind?.is === "list" ? classOf(itemKind.of) : undefined;
  return class extends (OfficeExtension.ClientObject as any) {
    get _className(): string {
      return name;
    }
    get _isCollection(): boolean {
      return itemClass !== undefined;
    }
    get items(): unknown {
      Utility.throwIfNotLoaded("items", this.m__items, name, this._isNull);
      return this.m__items;
    }
    load(options: unknown): unknown {
      return Utility.load(this, options);
    }
    _handleResult(value: any): void {
      super._handleResult(value);
      if (value === null || value === undefined) return;
      Utility.fixObjectPathIfNecessary(this, value);
      for (const [member] of scalars) if (value[upper(member)] !== undefined) this[`_${member}`] = value[upper(member)];
      if (itemClass && value._Items)
        this.m__items = value._Items.map((data: unknown, index: number) => {
          const item = BatchApiHelper.createChildItemObject((Excel as any)[itemClass], true, this, data, index);
          item._handleResult(data);
          return item;
        });
    }
  };
}

function define(prototype: object, member: string, { kind, calls, isReadonly }: Member, isNewClass: boolean): void {
  const { BatchApiHelper, Utility } = OfficeExtension as any;
  const isCollection = (name: string): boolean => excelTypings().shapes[name].members.items !== undefined;
  if (calls) {
    const gives = classOf(calls[0].gives);
    const value = function (this: object, ...args: unknown[]): unknown {
      return gives
        ? BatchApiHelper.createMethodObject(
            (Excel as any)[gives],
            this,
            upper(member),
            0,
            args,
            isCollection(gives),
            false,
            null,
            0,
          )
        : BatchApiHelper.invokeMethod(this, upper(member), 0, args, 0, 0);
    };
    return void Object.defineProperty(prototype, member, { value, configurable: true });
  }
  const name = kind && classOf(kind);
  if (name) {
    const get = function (this: any): unknown {
      return (this[`_${member}`] ??= BatchApiHelper.createPropertyObject(
        (Excel as any)[name],
        this,
        upper(member),
        isCollection(name),
        4,
      ));
    };
    return void Object.defineProperty(prototype, member, { get, configurable: true });
  }
  if (!isNewClass) return;
  const get = function (this: any): unknown {
    Utility.throwIfNotLoaded(member, this[`_${member}`], this._className, this._isNull);
    return this[`_${member}`];
  };
  const set = function (this: any, value: unknown): void {
    this[`_${member}`] = value;
    BatchApiHelper.invokeSetProperty(this, upper(member), value, 0);
  };
  Object.defineProperty(prototype, member, { get, ...(!isReadonly && { set }), configurable: true });
}
