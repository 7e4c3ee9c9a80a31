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

/** The part of the engine's evaluator that is corrected; it is not part of the public export interface of the engine. */
export interface Evaluator {
  getters: any;
  evaluatedCells: object;
  getEvaluatedPositions(): Iterable<Place>;
  evaluate(ranges: readonly { readonly sheetId: string; readonly zone: Zone }[]): void;
  evaluateAllCells(): void;
  computeCell(place: Place): Evaluated & { readonly link?: unknown };
}

export const Evaluation = registries.coreViewsPluginRegistry.get("evaluation") as unknown as {
  new (...config: never[]): {
    readonly evaluator: Evaluator;
    getEvaluatedCell(position: unknown): Evaluated;
    handle(command: { readonly type: string }): void;
    exportForExcel(data: unknown): void;
  };
  readonly getters: readonly string[];
};
