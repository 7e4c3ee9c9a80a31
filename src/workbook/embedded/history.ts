/** Carries out batches of commands completely or not at all: a refused batch leaves no step for undo or redo. */
import { registries } from "@odoo/o-spreadsheet";
import { runBatch, type Command, type Dispatching, type Model } from "./engine";
import { whileLifted } from "./protection";

const FORGET = "CLAYLEDGER_FORGET";

interface Stacks {
  readonly undoStack: readonly string[];
  readonly redoStack: string[];
  handle(command: unknown): void;
}

const History = registries.featurePluginRegistry.get("history") as unknown as {
  new (config: unknown): Stacks;
  readonly getters: readonly string[];
};

class ForgettingHistory extends History {
  static override getters = [...History.getters, "getLastStep"];

  getLastStep(): string | undefined {
    return this.undoStack.at(-1);
  }

  override handle(command: { readonly type: string }): void {
    if (command.type === FORGET) this.redoStack.pop();
    // A step that is redone was allowed when it was first done, perhaps as one of the add-in.
    else whileLifted(() => super.handle(command));
  }
}

registries.featurePluginRegistry.replace("history", ForgettingHistory as never);

/** The step that undo would now take back; it is equal at two times if nothing changed between them. */
export const lastStep = ({ getters }: Model): string | undefined =>
  (getters as unknown as { getLastStep(): string | undefined }).getLastStep();

/**
 * Carries the commands out as one step. Returns the refusals; if there are any, nothing is changed. A cell that already
 * holds its content is not a refusal.
 */
export function carryOut(model: Model, commands: readonly Command[]): string[] {
  const before = lastStep(model);
  const refused = runBatch(model, commands).filter((reason) => !reason.endsWith("(NoChanges)"));
  if (refused.length > 0 && lastStep(model) !== before) {
    const dispatching = model as unknown as Dispatching;
    dispatching.dispatch("REQUEST_UNDO");
    dispatching.dispatch(FORGET);
  }
  return refused;
}
