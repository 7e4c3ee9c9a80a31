/**
 * What the sheet says when an entry breaks a rule: the rule's own words, as the add-in wrote them. The engine would list its bounds.
 * Casts: the engine's typings hide the plugin that is put right here, and do not say that a rule keeps the add-in's words.
 */
import { helpers, registries } from "@odoo/o-spreadsheet";
import { asTyped, say, verbatim, type Message } from "../../../reduction/message";
import type { Model } from "../engine";
import { wordFor } from "../engine-words";
import type { Place } from "../evaluation/engine-parts";
import { ADD_RULES } from "./rules-at-once";

interface Rule {
  readonly words?: { readonly error?: string };
}

interface Result {
  readonly isValid: boolean;
}

// The engine's typings hide the methods that check an entry and word a broken rule.
const Validation = registries.coreViewsPluginRegistry.get("data_validation_ui") as unknown as {
  new (...config: never[]): {
    readonly getters: any;
    /** By sheet; the engine empties it when values or rules change. */
    readonly validationResults: Record<string, Map<string, Result> | undefined>;
    getRuleErrorForCellValue(value: unknown, position: unknown, rule: Rule): string | undefined;
    getValidationResultForCellValue(value: unknown, position: Place): Result;
    beforeHandle(command: any): void;
    handle(command: any): void;
  };
  readonly getters: readonly string[];
};

const VALID: Result = { isValid: true };

/** Commands of undo and redo, which put rules back without the plugin that holds them. */
const HISTORY: ReadonlySet<string> = new Set(["REQUEST_UNDO", "REQUEST_REDO", "UNDO", "REDO"]);

/** Gives the words of the rule for the message that is shown on hover. */
class WordedValidation extends Validation {
  static override getters = Validation.getters;

  override getRuleErrorForCellValue(value: unknown, position: unknown, rule: Rule): string | undefined {
    const error = super.getRuleErrorForCellValue(value, position, rule);
    return error === undefined ? undefined : (rule.words?.error ?? error);
  }

  /**
   * Checks a cell when it is first asked for. The engine would prepare the check of every cell with a rule when a sheet is drawn: 24,000
   * for a data sheet, 22 MB, anew after each change.
   */
  getValidationResultForCell(place: Place): Result {
    const { sheetId, col, row } = place;
    const results = (this.validationResults[sheetId] ??= new Map());
    const key = `${col} ${row}`;
    const before = results.get(key);
    if (before) return before;
    const { type, value } = this.getters.getEvaluatedCell(place);
    const result = type === "empty" ? VALID : this.getValidationResultForCellValue(value, place);
    results.set(key, result);
    return result;
  }

  override beforeHandle(command: any): void {
    if (HISTORY.has(command.type)) this.getters.rulesMayChange();
    super.beforeHandle(command);
  }

  override handle(command: any): void {
    super.handle(command.type === ADD_RULES ? { ...command, type: "ADD_DATA_VALIDATION_RULE" } : command);
  }
}

registries.coreViewsPluginRegistry.replace("data_validation_ui", WordedValidation as never);

/** The engine's sentence with the cell and what its rule allows. */
const BROKEN_RULE = "The data you entered in %s violates the data validation rule set on the cell:\n%s";

/** The cell and what its rule allows, if `said` is the engine's sentence of a broken rule in the language of the page. */
function brokenRule(said: string): { readonly cell: string; readonly error: string } | undefined {
  const [before = "", between = ""] = wordFor(BROKEN_RULE).split("%s");
  const at = said.indexOf(between, before.length);
  if (!said.startsWith(before) || at < 0) return undefined;
  return { cell: said.slice(before.length, at), error: said.slice(at + between.length) };
}

/** What the engine says of a refused entry, in plain words, with the cell; other sentences stay as they are. */
export function plainRefusal({ getters }: Model, said: string): { readonly sentence: Message; readonly place?: Place } {
  const broken = brokenRule(said);
  if (!broken) return { sentence: asTyped(said) };
  const { cell, error } = broken;
  const position = { sheetId: getters.getActiveSheetId(), ...helpers.toCartesian(cell) };
  // The cast adds the words of the add-in: the engine keeps them with the rule, and its typings do not say so.
  const rule = getters.getValidationRuleForCell(position) as Rule | undefined;
  const own = rule?.words?.error;
  const sentence =
    own === undefined
      ? say`${verbatim(cell)} was not changed. What may stand there: ${verbatim(error)}`
      : say`${verbatim(cell)} was not changed. ${verbatim(own)}`;
  return { sentence, place: position };
}
