/**
 * Checks data sent to Excel against the typings: kinds of values, words, keys of nested options, numbers of arguments.
 */
import { excelTypings, memberOf, shapeOf } from "./index";
import type { Call, Kind, Member, Parameter, Requirement } from "./table";

/** An argument that is itself an object of the object model, by its class. */
export class ObjectArgument {
  constructor(
    readonly className: string,
    readonly value: unknown,
  ) {}
}

/** The fault of a value, in words; undefined if it is right. `needs` collects the requirement sets of nested keys. */
export function faultOf(value: unknown, kind: Kind, at: string, needs: Requirement[] = []): string | undefined {
  switch (kind.is) {
    case "any":
      return undefined;
    case "void":
      return value === null || value === undefined ? undefined : `${at} takes no value`;
    case "string":
    case "number":
    case "boolean":
      return typeof value === kind.is ? undefined : `${at} takes a ${kind.is}, not ${shown(value)}`;
    case "words":
      return kind.words.includes(value as string) ? undefined : `${at} has no word ${shown(value)}`;
    case "list": {
      if (!Array.isArray(value)) return `${at} takes a list, not ${shown(value)}`;
      for (const [index, one] of value.entries()) {
        const fault = faultOf(one, kind.of, `${at}[${index}]`, needs);
        if (fault) return fault;
      }
      return undefined;
    }
    case "either":
      return faultOfAny(value, kind.of, at, needs);
    case "record":
      return faultOfKeys(value, (key) => kind.members[key], Object.keys(kind.members), at, needs);
    case "answer":
      return undefined;
    case "named":
      return faultOfNamed(value, kind.name, at, needs);
  }
}

function faultOfAny(value: unknown, kinds: readonly Kind[], at: string, needs: Requirement[]): string | undefined {
  const faults: string[] = [];
  for (const kind of kinds) {
    const own: Requirement[] = [];
    const fault = faultOf(value, kind, at, own);
    if (!fault) {
      needs.push(...own);
      return undefined;
    }
    faults.push(fault);
  }
  return faults.at(typeof value === "object" ? -1 : 0);
}

function faultOfNamed(value: unknown, name: string, at: string, needs: Requirement[]): string | undefined {
  const { kinds, shapes } = excelTypings();
  if (kinds[name]) return faultOf(value, kinds[name], at, needs);
  if (name === "Date") return typeof value === "string" ? undefined : `${at} takes a date, not ${shown(value)}`;
  if (!shapes[name]) return undefined;
  if (shapeOf(name).isClass)
    return value instanceof ObjectArgument && value.className === name
      ? undefined
      : `${at} takes an object ${name}, not ${shown(value)}`;
  return faultOfKeys(value, (key) => memberOf(name, key), keysOf(name), at, needs);
}

const keysOf = (name: string): string[] => {
  const { bases, members } = shapeOf(name);
  return [...bases.flatMap((base) => (excelTypings().shapes[base] ? keysOf(base) : [])), ...Object.keys(members)];
};

function faultOfKeys(
  value: unknown,
  member: (key: string) => Member | undefined,
  keys: readonly string[],
  at: string,
  needs: Requirement[],
): string | undefined {
  if (typeof value !== "object" || value === null || Array.isArray(value) || value instanceof ObjectArgument)
    return `${at} takes an object with ${keys.slice(0, 5).join(", ")}, not ${shown(value)}`;
  for (const [key, one] of Object.entries(value)) {
    const found = member(key);
    if (!found) return `${at} has no key "${key}"`;
    if (found.needs) needs.push(found.needs);
    if (one === null && found.isOptional) continue;
    const fault = found.kind && faultOf(one, found.kind, `${at}.${key}`, needs);
    if (fault) return fault;
  }
  const missing = keys.find(
    (key) => !Object.hasOwn(value, key) && member(key)?.isOptional === false && !member(key)?.calls,
  );
  return missing && `${at} lacks "${missing}"`;
}

/** Checks the arguments of a call against its signatures; arguments omitted at the end arrive as null. */
export function faultOfCall(
  args: readonly unknown[],
  calls: readonly Call[],
  at: string,
  needs: Requirement[],
): string | undefined {
  const faults: string[] = [];
  for (const { parameters } of calls) {
    const own: Requirement[] = [];
    const fault = faultOfArguments(args, parameters, at, own);
    if (!fault) {
      needs.push(...own);
      return undefined;
    }
    faults.push(fault);
  }
  return faults[0];
}

function faultOfArguments(
  args: readonly unknown[],
  parameters: readonly Parameter[],
  at: string,
  needs: Requirement[],
): string | undefined {
  const given = [...args];
  while (given.length > 0 && (given.at(-1) ?? null) === null) given.pop();
  const rest = parameters.at(-1)?.isRest;
  if (!rest && given.length > parameters.length)
    return `${at} takes ${parameters.length} arguments, not ${given.length}`;
  for (const [index, { name, kind, isOptional, isRest }] of parameters.entries()) {
    if (isRest) return faultOf(given.slice(index).flat(), kind, `${at}(${name})`, needs);
    const value = given[index];
    if (value === null || value === undefined) {
      if (isOptional || kind.is === "any") continue;
      return `${at} needs its argument "${name}"`;
    }
    const fault = faultOf(value, kind, `${at}(${name})`, needs);
    if (fault) return fault;
  }
  return undefined;
}

function shown(value: unknown): string {
  if (value instanceof ObjectArgument) return `an object ${value.className}`;
  const text = JSON.stringify(value) ?? "nothing";
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}
