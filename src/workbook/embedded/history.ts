/** Batches of commands, all of them or none: a refused one leaves no step to be undone or done again. */
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
    // What is done again was allowed when it was done, by the add-in itself perhaps.
    else whileLifted(() => super.handle(command));
  }
}

registries.featurePluginRegistry.replace("history", ForgettingHistory as never);

/** The step that a person could undo now: the same as at another time where nothing differs from then. */
export const lastStep = ({ getters }: Model): string | undefined =>
  (getters as unknown as { getLastStep(): string | undefined }).getLastStep();

/** Carries the commands out as one step. Gives what was refused, and then nothing is changed; a cell that holds its content already is none. */
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
