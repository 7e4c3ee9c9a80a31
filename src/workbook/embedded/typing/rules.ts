/**
 * What the sheet says when an entry breaks a rule: the rule's own words, as the add-in wrote them. The engine would list its bounds.
 * Casts: the engine's typings hide the plugin that is put right here, and do not say that a rule keeps the add-in's words.
 */
import { helpers, registries } from "@odoo/o-spreadsheet";
import { asTyped, say, verbatim, type Message } from "../../../reduction/message";
import type { Model } from "../engine";

interface Rule {
  readonly words?: { readonly error?: string };
}

// The engine's typings hide the method that words a broken rule.
const Validation = registries.coreViewsPluginRegistry.get("data_validation_ui") as unknown as {
  new (...config: never[]): {
    getRuleErrorForCellValue(value: unknown, position: unknown, rule: Rule): string | undefined;
  };
  readonly getters: readonly string[];
};

/** Gives the words of the rule for the message that is shown on hover. */
class WordedValidation extends Validation {
  static override getters = Validation.getters;

  override getRuleErrorForCellValue(value: unknown, position: unknown, rule: Rule): string | undefined {
    const error = super.getRuleErrorForCellValue(value, position, rule);
    return error === undefined ? undefined : (rule.words?.error ?? error);
  }
}

registries.coreViewsPluginRegistry.replace("data_validation_ui", WordedValidation as never);

const BROKEN_RULE = /^The data you entered in ([A-Z]+\d+) violates the data validation rule set on the cell:\n(.*)$/s;

/** What the engine says of a refused entry, in plain words; other sentences stay as they are. */
export function plainRefusal({ getters }: Model, sentence: string): Message {
  const [, cell, error] = BROKEN_RULE.exec(sentence) ?? [];
  if (cell === undefined) return asTyped(sentence);
  const position = { sheetId: getters.getActiveSheetId(), ...helpers.toCartesian(cell) };
  // The cast adds the words of the add-in: the engine keeps them with the rule, and its typings do not say so.
  const rule = getters.getValidationRuleForCell(position) as Rule | undefined;
  const own = rule?.words?.error;
  return own === undefined
    ? say`${verbatim(cell)} was not changed. What may stand there: ${verbatim(error ?? "")}`
    : say`${verbatim(cell)} was not changed. ${verbatim(own)}`;
}
