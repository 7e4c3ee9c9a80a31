/**
 * The worksheet functions (dist/functions.js, described by dist/functions.json) as functions of the engine.
 * Casts: cells come from the engine and from functions without types; this module checks their contents.
 */
import { addFunction, helpers, registries } from "@odoo/o-spreadsheet";
import { nth } from "../../reduction/numeric/lists";
import { EvaluationError } from "./engine";

/**
 * A worksheet function as Excel calls it: ranges as rows of cells, single cells as values, omitted arguments as null.
 */
export type WorksheetFunction = (...args: unknown[]) => unknown;

/** The entry of one function in functions.json. */
export interface FunctionMetadata {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly parameters: readonly {
    readonly name: string;
    readonly description?: string;
    readonly dimensionality?: "scalar" | "matrix";
    readonly optional?: boolean;
    readonly repeating?: boolean;
  }[];
}

export interface FunctionSettings {
  /** How a blank cell is passed: null or "" like the web, 0 like desktop Excel. */
  blankAs: null | 0 | "";
}

/** The error that a worksheet function throws, or receives for a cell that holds an error. */
export class HostError extends Error {
  constructor(
    readonly code: string,
    message = "",
  ) {
    super(message);
  }
}

/** Replaces Excel's `CustomFunctions` while functions.js loads, and collects the functions that it associates. */
export function collectFunctions() {
  const associations = new Map<string, WorksheetFunction>();
  const CustomFunctions = {
    Error: HostError,
    associate: (id: string, compute: WorksheetFunction) => void associations.set(id, compute),
  };
  return { CustomFunctions, associations };
}

/** One cell as the engine passes it; the result of an inner formula has no place. */
interface EngineCell {
  readonly value: unknown;
  readonly format?: string;
  readonly message?: string;
  readonly position?: object;
}

/** A cell as the workbook holds it: its own format, and whether a formula stands in it. */
interface HeldCell {
  readonly isFormula: boolean;
  readonly format?: string;
}

type HeldAt = (position: object) => HeldCell | undefined;

const MAY_SHOW_TIME = /[ymdhs]/i;

/**
 * A cell as Excel passes it. The errors of the engine are texts that it knows as error codes. A number that shows a date or a
 * clock time keeps its format, as with the data types of Excel. The engine also gives `=(A2-A1)*1440` the format of A2: a
 * format that a formula takes from its cells does not count.
 */
function cellIn(cell: EngineCell, { blankAs }: FunctionSettings, heldAt: HeldAt): unknown {
  const { value, message, format, position } = cell;
  if (value === null || value === undefined) return blankAs;
  if (typeof value === "string" && helpers.isEvaluationError(value)) return new HostError(value, message);
  if (typeof value === "number" && format !== undefined && position !== undefined && MAY_SHOW_TIME.test(format)) {
    const held = heldAt(position);
    const shown = held?.isFormula ? held.format : format;
    if (shown !== undefined)
      return { type: "FormattedNumber", basicType: "Double", basicValue: value, numberFormat: shown };
  }
  return value;
}

/** An argument as Excel passes it. The ranges of the engine are columns of cells. */
function argumentIn(
  argument: EngineCell | EngineCell[][] | undefined,
  matrix: boolean,
  settings: FunctionSettings,
  heldAt: HeldAt,
) {
  if (argument === undefined) return null;
  if (!Array.isArray(argument))
    return matrix ? [[cellIn(argument, settings, heldAt)]] : cellIn(argument, settings, heldAt);
  return (argument[0] ?? []).map((_, row) => argument.map((column) => cellIn(nth(column, row), settings, heldAt)));
}

/** A format for numbers that the general format of the engine would show as 0 or with few digits. */
const formatOf = (value: number): string | undefined =>
  value !== 0 && (Math.abs(value) < 1e-4 || Math.abs(value) >= 1e12) ? "0.0000e" : undefined;

function cellOut(value: unknown, name: string): EngineCell {
  if (value === null || value === undefined) return { value: "" };
  if (typeof value === "string" || typeof value === "boolean") return { value };
  if (typeof value === "number" && Number.isFinite(value)) return { value, format: formatOf(value) };
  return new EvaluationError(
    `CLAY.${name} gave no usable number: please report it with the cells it was given`,
    "#NUM!",
  );
}

function answerOut(answer: unknown, name: string): EngineCell | EngineCell[][] {
  if (!Array.isArray(answer)) return cellOut(answer, name);
  const rows = answer as unknown[][];
  const width = rows.reduce((most, row) => Math.max(most, row.length), 0);
  return Array.from({ length: width }, (_, col) => rows.map((row) => cellOut(row[col], name)));
}

/** A thrown error as the cell shows it: its code, and its message on hover. */
function errorOut(error: unknown, name: string): EvaluationError {
  const { code, message } = error as Partial<HostError>;
  return typeof code === "string"
    ? new EvaluationError(message, code)
    : new EvaluationError(`CLAY.${name} failed inside (${String(error)}): please report it`, "#VALUE!");
}

/**
 * Gives the registered functions the descriptions of another language, with the names of their parameters; the sheet shows
 * them as a formula is typed. A function that is not registered is left out.
 */
export function describeFunctions(metadata: readonly FunctionMetadata[]): void {
  for (const { name, description, parameters } of metadata) {
    const known = registries.functionRegistry.content[`CLAY.${name}`];
    if (!known) continue;
    known.description = description ?? "";
    known.args.forEach((argument, index) => {
      argument.name = parameters[index]?.name ?? argument.name;
      argument.description = parameters[index]?.description ?? argument.description;
    });
  }
}

/**
 * Registers every described function in the engine as CLAY.NAME. Call it once, before the first workbook is made.
 */
export function registerFunctions(
  metadata: readonly FunctionMetadata[],
  associations: ReadonlyMap<string, WorksheetFunction>,
  settings: FunctionSettings,
): void {
  for (const { id, name, description, parameters } of metadata) {
    const compute = associations.get(id);
    if (!compute) throw new Error(`functions.json describes ${id}, which functions.js does not define`);
    const isMatrix = (index: number) => {
      const parameter = parameters[Math.min(index, parameters.length - 1)];
      return parameter?.dimensionality === "matrix";
    };
    addFunction(`CLAY.${name}`, {
      description: description ?? "",
      category: "Clay",
      isExported: true,
      args: parameters.map((parameter) => ({
        name: parameter.name,
        description: parameter.description ?? "",
        type: parameter.dimensionality === "matrix" ? ["ANY", "RANGE<ANY>"] : ["ANY"],
        acceptMatrix: parameter.dimensionality === "matrix",
        acceptErrors: true,
        optional: parameter.optional,
        repeating: parameter.repeating,
      })),
      compute(...cells: unknown[]) {
        const { getters } = this as unknown as { readonly getters: { getCell: HeldAt } };
        const heldAt: HeldAt = (position) => getters.getCell(position);
        try {
          const given = cells.map((cell, i) =>
            argumentIn(cell as EngineCell | undefined, isMatrix(i), settings, heldAt),
          );
          const omitted = Array(Math.max(0, parameters.length - given.length)).fill(null);
          return answerOut(compute(...given, ...omitted), name) as never;
        } catch (error) {
          return errorOut(error, name);
        }
      },
    });
  }
}
