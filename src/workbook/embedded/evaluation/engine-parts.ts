/**
 * The parts of the engine's evaluation that are corrected; they are not part of its public interface.
 * Casts: the engine's types do not include them.
 */
import { registries } from "@odoo/o-spreadsheet";
import type { Zone } from "../zones";

export interface Evaluated {
  readonly value: unknown;
  readonly formattedValue?: string;
  readonly type?: string;
  readonly format?: string;
  readonly position?: Place;
  readonly link?: unknown;
  /** Where an error comes from. */
  readonly errorOriginPosition?: object;
  readonly isAutoSummable?: boolean;
  readonly defaultAlign?: string;
}

export interface Place {
  readonly sheetId: string;
  readonly col: number;
  readonly row: number;
}

export interface HeldCell {
  readonly isFormula: boolean;
  readonly content: string;
  readonly format?: string;
}

/** A part of a sheet. */
export interface SheetRange {
  readonly sheetId: string;
  readonly zone: Zone;
}

/** The engine's set of ranges, by sheet. */
export interface RangeSet extends Iterable<SheetRange> {
  readonly setsBySheetId: Record<string, unknown>;
  addMany(ranges: Iterable<SheetRange>): void;
  clear(): void;
  isEmpty(): boolean;
}

/** The range of one cell. */
export const rangeOf = ({ sheetId, col, row }: Place): SheetRange => ({
  sheetId,
  zone: { left: col, right: col, top: row, bottom: row },
});

/** Values by position. */
interface PositionMap<T = Evaluated> {
  get(place: Place): T | undefined;
  has(place: Place): boolean;
  set(place: Place, value: T): void;
  clearSheet(sheetId: string): void;
  /** By column, then by row. */
  getSheet(sheetId: string): Record<number, Record<number, T> | undefined> | undefined;
}

/** The engine's set of positions: a grid of bits for each sheet, made for its size. */
interface PositionSet {
  readonly sheets: Record<string, unknown>;
  has(place: Place): boolean;
}

/** The formulas that read a column of a sheet, by the rows that they read. */
interface ReadersOfColumn {
  query(rows: { readonly top: number; readonly bottom: number }): readonly { readonly dependents: SheetRange }[];
}

interface DependencyGraph {
  /** By the sheet that formulas read, and by its column. */
  readonly forest: Record<string, Record<string, ReadersOfColumn>>;
  addDependencies(formula: Place, read: readonly SheetRange[]): void;
}

/** The part of the engine's evaluator that is corrected. */
export interface Evaluator {
  getters: any;
  evaluatedCells: PositionMap;
  readonly blockedArrayFormulas: PositionSet;
  readonly spreadingRelations: {
    readonly resultsToArrayFormulas: { readonly rTrees: Record<string, unknown> };
    /** The cells that a formula gives values to. */
    readonly arrayFormulasToResults: PositionMap<Zone>;
    /** Tells that a formula gives values to the cells around it. */
    addRelation: (relation: { readonly arrayFormulaPosition: Place; readonly resultZone: Zone }) => void;
    removeNode: (place: Place) => void;
    isArrayFormula(place: Place): boolean;
    searchFormulaPositionsSpreadingOn(sheetId: string, zone: Zone): Iterable<Place>;
  };
  readonly compilationParams: {
    /** With the place and the sheet of the formula that is evaluated now. */
    readonly evalContext: { readonly __originCellPosition?: Place; readonly __originSheetId?: string; forms?: object };
    /** The cells of a range, by columns. */
    ensureRange: (range: SheetRange) => Evaluated[][];
  };
  readonly formulaDependencies: () => DependencyGraph;
  getEvaluatedPositions(): Iterable<Place>;
  /** What the present evaluation evaluates again when it has gone through its cells. */
  readonly nextRangesToUpdate: RangeSet;
  /** Tells that a formula reads these ranges, and evaluates them. */
  addDependencies(formula: Place, read: readonly SheetRange[]): void;
  getCellsDependingOn(ranges: Iterable<SheetRange>): RangeSet;
  evaluate(ranges: readonly SheetRange[]): void;
  clearEvaluatedRanges(ranges: readonly SheetRange[]): void;
  evaluateAllCells(): void;
  computeCell(place: Place): Evaluated;
  computeFormulaCell(place: Place, cell: HeldCell): Evaluated;
  computeAndSave(place: Place): Evaluated;
  updateCompilationParameters(): void;
}

/** A command as the engine carries it out. */
export interface EngineCommand {
  readonly type: string;
  readonly [field: string]: any;
}

export const Evaluation = registries.coreViewsPluginRegistry.get("evaluation") as unknown as {
  new (...config: never[]): {
    readonly evaluator: Evaluator;
    getEvaluatedCell(position: unknown): Evaluated;
    /** True if everything is evaluated again at the end of the step. */
    shouldRebuildDependenciesGraph: boolean;
    /** The cells that were written in this step. */
    positionsToUpdate: Place[];
    allowDispatch(command: EngineCommand): string | readonly string[];
    beforeHandle(command: EngineCommand): void;
    handle(command: EngineCommand): void;
    finalize(): void;
    exportForExcel(data: unknown): void;
  };
  readonly getters: readonly string[];
};
