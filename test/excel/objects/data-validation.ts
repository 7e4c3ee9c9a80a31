/** The data validation of a range. */
import type { Box } from "../book/address";
import type { Rule, Sheet } from "../book/book";
import { mustBeOpen } from "../book/cells";
import { checkAlert, checkPrompt, checkRule, clearRules, mustBeAlike, ruleAt, setRule } from "../book/rules";
import { Being, type Host } from "./being";

const TYPES: Readonly<Record<string, string>> = {
  wholeNumber: "WholeNumber",
  decimal: "Decimal",
  list: "List",
  date: "Date",
  time: "Time",
  textLength: "TextLength",
  custom: "Custom",
};

export class DataValidation extends Being {
  readonly className = "DataValidation";
  constructor(
    host: Host,
    private readonly sheet: Sheet,
    private readonly box: Box,
  ) {
    super(host);
  }
  private get here(): Rule | undefined {
    return ruleAt(this.sheet, this.box.row, this.box.col);
  }
  private change(change: Partial<Rule>): void {
    mustBeOpen(this.sheet);
    setRule(this.sheet, this.box, change);
  }
  get rule(): unknown {
    return this.here?.rule ?? {};
  }
  set rule(rule: unknown) {
    checkRule(rule as Record<string, unknown>);
    mustBeAlike(this.sheet, this.box);
    this.change({ rule: rule as Record<string, unknown> });
  }
  get errorAlert(): unknown {
    return this.here?.errorAlert ?? { message: "", showAlert: true, style: "Stop", title: "" };
  }
  set errorAlert(alert: unknown) {
    checkAlert(alert as Record<string, unknown>);
    this.change({ errorAlert: alert as Record<string, unknown> });
  }
  get prompt(): unknown {
    return this.here?.prompt ?? { message: "", showPrompt: true, title: "" };
  }
  set prompt(prompt: unknown) {
    checkPrompt(prompt as Record<string, unknown>);
    this.change({ prompt: prompt as Record<string, unknown> });
  }
  get ignoreBlanks(): boolean {
    return this.here?.ignoreBlanks ?? true;
  }
  set ignoreBlanks(ignoreBlanks: boolean) {
    this.change({ ignoreBlanks });
  }
  get type(): string {
    const [kind] = Object.keys(this.here?.rule ?? {});
    return TYPES[kind] ?? "None";
  }
  clear(): void {
    mustBeOpen(this.sheet);
    clearRules(this.sheet, this.box);
  }
}
