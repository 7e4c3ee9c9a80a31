/**
 * What functions of the engine are given, and how their computations are read and changed.
 * Casts: the engine's type of a computation does not tell the arguments of one function.
 */
import { helpers, registries } from "@odoo/o-spreadsheet";

export interface Held {
  readonly value: unknown;
  readonly message?: string;
  /** The cell from which the value comes; absent for a value that was calculated or typed into the formula. */
  readonly position?: object;
}

/** A value, a range (columns of cells), or an argument that is left out. */
export type Argument = Held | readonly (readonly Held[])[] | undefined;

export type Compute = (this: { readonly locale: unknown }, ...args: Argument[]) => unknown;

export const { functionRegistry } = registries;

export const isRange = (argument: Argument): argument is readonly (readonly Held[])[] => Array.isArray(argument);

export const isError = ({ value }: Held): boolean => typeof value === "string" && helpers.isEvaluationError(value);

/** The one value of an argument; undefined for a range of several cells. */
export function single(argument: Argument): Held | undefined {
  if (!isRange(argument)) return argument;
  const [first = [], ...others] = argument;
  return others.length === 0 && first.length === 1 ? first[0] : undefined;
}

/** The first error among the cells of some arguments. */
export const errorIn = (given: readonly Argument[]): Held | undefined =>
  given.flatMap((one) => (isRange(one) ? one.flat() : (one ?? []))).find(isError);

/** The computation of a function of the engine. */
export const computeOf = (name: string): Compute =>
  // Every computation takes cells and ranges.
  functionRegistry.get(name).compute as Compute;

/** The number of one value, as the engine reads it; throws the engine's error for a text that is none. */
export const numberOf = (argument: Argument, locale: unknown): number =>
  // The engine's types of a cell and of a locale are its own.
  helpers.toNumber(single(argument) as never, locale as never);

/** The text of one value, as the engine reads it. */
export const textIn = (argument: Argument): string =>
  // The engine's type of a cell is its own.
  helpers.toString(single(argument) as never);
