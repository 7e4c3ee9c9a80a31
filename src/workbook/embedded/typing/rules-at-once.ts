/**
 * Adds the rules of a sheet at once, and finds the rule of a cell. The engine copies every rule of the sheet for each rule that is added,
 * and keeps the copies for undo: 3 MB for a data sheet.
 * Casts: the engine's types do not include the inner parts of its plugins.
 */
import { coreTypes, helpers, registries } from "@odoo/o-spreadsheet";
import type { Command } from "../engine";
import type { Place, SheetRange } from "../evaluation/engine-parts";
import { shareParts } from "../evaluation/range-parts";
import type { Zone } from "../zones";
import { RuleCells } from "./rule-cells";

/** Adds many rules of entry in one command. */
export const ADD_RULES = "CLAYLEDGER_ADD_RULES";

/** A rule as the command of the engine has it. */
export interface NewRule {
  readonly ranges: readonly { readonly _sheetId: string; readonly _zone: Zone }[];
  readonly rule: {
    readonly id: string;
    readonly criterion: { readonly type: string; readonly values: readonly string[] };
  };
}

interface HeldRule {
  readonly id: string;
  readonly criterion: NewRule["rule"]["criterion"];
  readonly ranges: readonly SheetRange[];
}

interface RulesPlugin {
  readonly rules: Readonly<Record<string, readonly HeldRule[]>>;
  readonly getters: any;
  readonly history: { update(path: "rules", sheetId: string, value: readonly HeldRule[]): void };
  allowDispatch(command: any): string | readonly string[];
  beforeHandle(command: any): void;
  handle(command: any): void;
  finalize(): void;
  getValidationRuleForCell(place: Place): HeldRule | undefined;
  removeRangesFromRules(
    sheetId: string,
    ranges: readonly SheetRange[],
    rules: readonly HeldRule[],
    id: string,
  ): HeldRule[];
}

const Rules = registries.corePluginRegistry.get("dataValidation") as unknown as {
  new (...config: never[]): RulesPlugin;
  readonly getters: readonly string[];
};

const single = (sheetId: string, added: NewRule): Command => ({ type: "ADD_DATA_VALIDATION_RULE", sheetId, ...added });

class RulesAtOnce extends Rules {
  static override getters = [...Rules.getters, "rulesMayChange"];
  readonly #cells = new RuleCells<HeldRule>();
  /** Whether a command is being carried out: it may change the rules in place. */
  #isChanging = true;

  /** Undo and redo change the rules without this plugin: ./rules.ts tells of them. */
  rulesMayChange(): void {
    this.#isChanging = true;
    this.#cells.clear();
  }

  // The engine tells this plugin of each command that changes the workbook, and of no other.
  override beforeHandle(command: any): void {
    this.rulesMayChange();
    super.beforeHandle(command);
  }

  override finalize(): void {
    super.finalize();
    this.#isChanging = false;
  }

  override getValidationRuleForCell(place: Place): HeldRule | undefined {
    if (this.#isChanging) return super.getValidationRuleForCell(place);
    return this.#cells.find(this.rules[place.sheetId] ?? [], place);
  }

  override allowDispatch(command: any): string | readonly string[] {
    if (command.type !== ADD_RULES) return super.allowDispatch(command);
    const added = command.rules as readonly NewRule[];
    const refused = added.flatMap((one) => super.allowDispatch(single(command.sheetId, one)));
    return refused.find((one) => one !== "Success") ?? "Success";
  }

  override handle(command: any): void {
    if (command.type !== ADD_RULES) return super.handle(command);
    const sheetId: string = command.sheetId;
    let rules = [...(this.rules[sheetId] ?? [])];
    for (const { ranges: given, rule } of command.rules as readonly NewRule[]) {
      const ranges: SheetRange[] = given.map((range) => shareParts(this.getters.getRangeFromRangeData(range)));
      // A later rule takes its cells from the earlier ones.
      const isOver = rules.some(
        (one) => one.id === rule.id || one.ranges.some((a) => ranges.some((b) => helpers.overlap(a.zone, b.zone))),
      );
      if (isOver) rules = this.removeRangesFromRules(sheetId, ranges, rules, rule.id);
      const { criterion } = rule;
      const values = criterion.type === "isValueInList" ? [...new Set(criterion.values)] : criterion.values;
      const held = { ...rule, criterion: { ...criterion, values }, ranges };
      const at = rules.findIndex(({ id }) => id === rule.id);
      if (at >= 0) rules.splice(at, 1, held);
      else rules.push(held);
    }
    this.history.update("rules", sheetId, rules);
  }
}

coreTypes.add(ADD_RULES as never);
// The engine asks for the inverse of a command in a shared session; no session is shared here.
registries.inverseCommandRegistry.add(ADD_RULES, (command) => [command]);
registries.corePluginRegistry.replace("dataValidation", RulesAtOnce as never);

/**
 * The commands that add rules to a sheet. A box to tick is added by the engine's own command, which also centres it.
 */
export function addRules(sheetId: string, rules: readonly NewRule[]): Command[] {
  const isBox = ({ rule }: NewRule): boolean => rule.criterion.type === "isBoolean";
  const others = rules.filter((one) => !isBox(one));
  return [
    ...(others.length > 0 ? [{ type: ADD_RULES, sheetId, rules: others }] : []),
    ...rules.filter(isBox).map((one) => single(sheetId, one)),
  ];
}
