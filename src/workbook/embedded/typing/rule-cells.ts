/**
 * Finds the rule of entry of a cell, row by row. The engine asks for it up to eight times for each cell that it draws, and would look
 * through all rules of the sheet each time.
 */
import type { Place, SheetRange } from "../evaluation/engine-parts";

interface Ruled {
  readonly ranges: readonly SheetRange[];
}

interface Piece<Rule> {
  readonly left: number;
  readonly right: number;
  readonly rule: Rule;
}

/** The columns of a row that have a rule, in the order of the rules. */
const piecesOf = <Rule extends Ruled>(rules: readonly Rule[], row: number): Piece<Rule>[] =>
  rules.flatMap((rule) =>
    rule.ranges
      .filter(({ zone }) => zone.top <= row && row <= zone.bottom)
      .map(({ zone: { left, right } }) => ({ left, right, rule })),
  );

/** The rules of the rows that were asked for. Whoever changes a rule clears it. */
export class RuleCells<Rule extends Ruled> {
  readonly #rows = new Map<string, Map<number, readonly Piece<Rule>[]>>();

  clear(): void {
    this.#rows.clear();
  }

  /** The first of the rules of a sheet that holds for a cell. */
  find(rules: readonly Rule[], { sheetId, row, col }: Place): Rule | undefined {
    let rows = this.#rows.get(sheetId);
    if (!rows) this.#rows.set(sheetId, (rows = new Map()));
    let pieces = rows.get(row);
    if (!pieces) rows.set(row, (pieces = piecesOf(rules, row)));
    return pieces.find(({ left, right }) => left <= col && col <= right)?.rule;
  }
}
