/**
 * Carries out batches of commands completely or not at all: a refused batch leaves no step for undo or redo.
 * Casts: the engine's types do not include the inner parts of the history plugin, nor the commands and getters that are added here.
 */
import { say, verbatim, type Message } from "../../../reduction/message";
import { registries } from "@odoo/o-spreadsheet";
import { pause, type Run } from "../../in-slices";
import { WorkbookError } from "../../port";
import { runBatch, withoutUseless, type Command, type Dispatching, type Model } from "../engine";
import { isBusy, redoInSlices, stepEnd, type Change, type StepAgain } from "./long-step";
import { isLifted, tellRefusal, whileLifted } from "../protection";
import { StepRoom, type KeptStep } from "./step-room";

/** Gives the lists of undo and redo back as they were before work that was taken back. */
const RESTORE = "CLAYLEDGER_RESTORE_STEPS";

const JOIN = "CLAYLEDGER_JOIN";

/** The engine's session for working together with other people; here it is never shared. */
interface Session {
  /**
   * Packs the commands of a step for sending. The engine passes them as arguments of one call, which fails above about
   * 120,000 commands. It unpacks a step that was sent, which compiles each of its formulas again, and then sees that the step is its own.
   */
  readonly commandSquisher: Record<"squish" | "unsquish", (commands: readonly Command[]) => readonly Command[]>;
  /** What was done, by step; and how the engine carries out a step again. */
  readonly revisions: {
    get(step: string): KeptStep & { readonly _commands: readonly Command[] };
    applyOperation: (step: { readonly id: string; setChanges(changes: readonly unknown[]): void }) => void;
  };
}

/** The steps that undo would take back, and those that redo would bring again; the next is the last of each. */
interface Steps {
  readonly undo: readonly string[];
  readonly redo: readonly string[];
  /** The last step that was made and not undone, also where undo does not reach it any more. */
  readonly last: string | undefined;
}

const LET_GO = say`Not undone: the steps before this one were let go, because the page has room for a limited number. A file that was saved has the workbook as it was when it was saved.`;

const paneWrites = (sheet: string): Message =>
  say`Not done: the pane is writing to “${verbatim(sheet)}”. Wait until it has ended, or stop it in the pane; then try again.`;

/** By the getters of a model: gives the sheet of the work of several steps that the pane has in hand. */
const sheetsWritten = new WeakMap<object, () => string | undefined>();

/**
 * Refuses undo and redo as long as `sheet` gives the sheet to which the pane writes in several steps: a step that a person took back in
 * between would lack in the work that then is said to be done.
 */
export const refuseStepsWhile = ({ getters }: Model, sheet: () => string | undefined): void =>
  void sheetsWritten.set(getters, sheet);

/** With more commands than this (a data sheet has 5,400), a redo goes in slices where somebody shows its progress. */
const MOST_REDONE_AT_ONCE = 6_000;

let beginLongRedo: (() => void) | undefined;

/** Sets what begins a long redo: it calls `redoSlowly`. Without it, every redo is done at once. */
export const onLongRedo = (begin: (() => void) | undefined): void => void (beginLongRedo = begin);

/** By the getters of a model: its steps. */
const histories = new WeakMap<object, ForgettingHistory>();

interface Stacks {
  undoStack: string[];
  redoStack: string[];
  readonly getters: any;
  readonly dispatch: (type: string, payload: object) => unknown;
  allowDispatch(command: StepCommand): unknown;
  onNewLocalStateUpdate(update: { readonly id: string }): void;
  handle(command: unknown): void;
}

interface StepCommand {
  readonly type: string;
  readonly step?: string;
  readonly before?: string;
  readonly steps?: Steps;
}

const History = registries.featurePluginRegistry.get("history") as unknown as {
  new (config: { readonly session: Session }): Stacks;
  readonly getters: readonly string[];
};

/**
 * Lets the engine tell its parts of the commands of a step without copying them: it copies all that it passes on, in depth, but asks an
 * object with a method `clone` for its copy. No part changes them. For 40 data sheets the copy took 0.3 s, in which the page did not react.
 */
function tellUncopied(commands: readonly Command[]): void {
  Object.defineProperty(commands, "clone", { value: () => commands, configurable: true });
}

class ForgettingHistory extends History {
  static override getters = [...History.getters, "getLastStep", "getSteps", "hasStep"];
  /** For a step that continues another step: that other step. Undo and redo treat both as one. */
  readonly #before = new Map<string, string>();
  readonly #revisions: Session["revisions"];
  /** Carries out a step again as the engine does. */
  readonly #apply: Session["revisions"]["applyOperation"];
  readonly #room = new StepRoom();
  /** The last of the steps that were let go. */
  #lastGone: string | undefined;

  /** The sheet that was in front when a step was made, and, where undo took that sheet's place away, when it was undone. */
  readonly #madeOn = new Map<string, string>();
  readonly #undoneOn = new Map<string, string>();

  /** What the commands of steps have changed that were carried out in slices, by step: redo then does not carry them out. */
  #madeAgain: ReadonlyMap<string, readonly Change[]> = new Map();

  constructor(config: { readonly session: Session; readonly getters: object }) {
    super(config);
    const { commandSquisher, revisions } = config.session;
    commandSquisher.squish = commandSquisher.unsquish = (commands) => commands;
    this.#revisions = revisions;
    this.#apply = revisions.applyOperation;
    revisions.applyOperation = (step) => {
      const changes = this.#madeAgain.get(step.id);
      if (changes) step.setChanges(changes);
      else this.#apply(step);
    };
    histories.set(config.getters, this);
  }

  getLastStep(): string | undefined {
    return this.undoStack.at(-1) ?? this.#lastGone;
  }

  getSteps(): Steps {
    return { undo: [...this.undoStack], redo: [...this.redoStack], last: this.getLastStep() };
  }

  hasStep(step: string): boolean {
    return this.undoStack.includes(step);
  }

  override allowDispatch(command: StepCommand): unknown {
    const isAsked = command.type === "REQUEST_UNDO" || command.type === "REQUEST_REDO";
    const written = isAsked && !isLifted() && !isBusy(this) ? sheetsWritten.get(this.getters)?.() : undefined;
    if (written !== undefined) {
      tellRefusal(paneWrites(written));
      return "CancelledForUnknownReason";
    }
    if (command.type === "REQUEST_UNDO" && this.undoStack.length === 0 && this.#lastGone !== undefined)
      tellRefusal(LET_GO);
    return super.allowDispatch(command);
  }

  override handle(command: StepCommand): void {
    const { type, step, before, steps } = command;
    if (type === RESTORE && steps) {
      this.undoStack = this.#withinReach(steps.undo);
      this.redoStack = this.#withinReach(steps.redo);
    } else if (type === JOIN && step !== undefined && before !== undefined) this.#before.set(step, before);
    else if (type === "REQUEST_REDO" && beginLongRedo && this.#madeAgain.size === 0 && this.#isLong()) beginLongRedo();
    // Without a step to redo the engine does the last entry again in the selected cell, which may be a protected one.
    else if (type === "REQUEST_REDO" && this.redoStack.length === 0) super.handle(command);
    // A step that is redone was allowed when it was first done, perhaps as one of the add-in.
    else if (type === "REQUEST_UNDO" || type === "REQUEST_REDO") whileLifted(() => this.#withSequels(command));
  }

  #withSequels(command: { readonly type: string }): void {
    const isUndo = command.type === "REQUEST_UNDO";
    for (;;) {
      const step = (isUndo ? this.undoStack : this.redoStack).at(-1);
      const front: string = this.getters.getActiveSheetId();
      if (step !== undefined) tellUncopied(this.#revisions.get(step)._commands);
      super.handle(command);
      if (step !== undefined) this.#keepFront(step, isUndo, front);
      if (isUndo ? step === undefined || this.#before.get(step) !== this.undoStack.at(-1) : !this.#isSequelNext())
        return;
      if (this.undoStack.length === 0) return;
    }
  }

  /** The steps that the next redo brings again, the first of them first. */
  #nextAgain(): string[] {
    const next: string[] = [];
    for (const step of [...this.redoStack].reverse()) {
      if (next.length > 0 && this.#before.get(step) !== next.at(-1)) break;
      next.push(step);
    }
    return next;
  }

  #isLong(): boolean {
    const count = this.#nextAgain().reduce((sum, step) => sum + this.#revisions.get(step)._commands.length, 0);
    return count > MOST_REDONE_AT_ONCE;
  }

  /** Redoes as `REQUEST_REDO` does, in slices. */
  async redoSlowly(model: Model, run: Run): Promise<void> {
    const made = new Map<string, Change[]>();
    const given = (): StepAgain[] =>
      this.#nextAgain().map((step) => {
        const changes: Change[] = [];
        made.set(step, changes);
        return { commands: this.#revisions.get(step)._commands, changes };
      });
    const ready = (): void => void (this.#madeAgain = made);
    try {
      await redoInSlices(model, given, (piece) => this.#apply({ id: "", ...piece }), ready, run);
    } finally {
      this.#madeAgain = new Map();
    }
  }

  override onNewLocalStateUpdate(update: { readonly id: string }): void {
    // The work of the step before may still go on in the new one: it is known later that the one continues the other.
    const recent = this.#recent();
    const [first] = this.undoStack;
    super.onNewLocalStateUpdate(update);
    // The engine itself lets the first of 100 steps go.
    if (first !== undefined && this.undoStack[0] !== first) {
      this.#lastGone = first;
      this.#letGo(first);
    }
    this.#madeOn.set(update.id, this.getters.getActiveSheetId());
    this.#room.add(update.id, this.#revisions.get(update.id));
    for (const step of this.#room.excess(recent.add(update.id))) this.#letGo(step);
  }

  /** The steps after the last one that was let go: a step can be undone or redone only after all that follow it in its list. */
  #withinReach(steps: readonly string[]): string[] {
    return steps.slice(steps.map((step) => this.#room.has(step)).lastIndexOf(false) + 1);
  }

  /** The last step with all that it continues. */
  #recent(): Set<string> {
    const steps = new Set<string>();
    for (let step = this.undoStack.at(-1); step !== undefined; step = this.#before.get(step)) steps.add(step);
    return steps;
  }

  #letGo(step: string): void {
    this.#room.letGo(step);
    for (const list of [this.#before, this.#madeOn, this.#undoneOn]) list.delete(step);
    if (!this.undoStack.includes(step)) return;
    this.undoStack = this.undoStack.filter((one) => one !== step);
    this.#lastGone = step;
  }

  /** After undo of an insertion the sheet from before it is in front again, and after redo the inserted one. */
  #keepFront(step: string, isUndo: boolean, front: string): void {
    const now: string = this.getters.getActiveSheetId();
    if (isUndo && now !== front) this.#undoneOn.set(step, front);
    const wanted = isUndo ? (now === front ? undefined : this.#madeOn.get(step)) : this.#undoneOn.get(step);
    if (wanted === undefined || wanted === now || !this.getters.getSheetIds().includes(wanted)) return;
    this.dispatch("ACTIVATE_SHEET", { sheetIdFrom: now, sheetIdTo: wanted });
  }

  /** True if redo would bring back the continuation of the last step. */
  #isSequelNext(): boolean {
    const next = this.redoStack.at(-1);
    const last = this.undoStack.at(-1);
    return next !== undefined && last !== undefined && this.#before.get(next) === last;
  }
}

registries.featurePluginRegistry.replace("history", ForgettingHistory as never);

/**
 * Redoes in slices that `run` carries out, as one redo; a step that continues another is done with it. Nothing is changed if it throws
 * (`Stopped`), and the redo can be asked for again.
 */
export async function redoSlowly(model: Model, run: Run): Promise<void> {
  await histories.get(model.getters)?.redoSlowly(model, run);
}

/** The step that undo would now take back; it is equal at two times if nothing changed between them. */
export const lastStep = ({ getters }: Model): string | undefined =>
  (getters as unknown as { getLastStep(): string | undefined }).getLastStep();

/**
 * Carries the commands out as one step. Returns the refusals; if there are any, nothing is changed. A cell that already
 * holds its content is not a refusal.
 */
export function carryOut(model: Model, commands: readonly Command[]): string[] {
  const before = stepsOf(model);
  const refused = run(model, commands);
  if (refused.length > 0) takeBack(model, before);
  return refused;
}

/** Used if the engine itself fails in the middle of the work: then nobody knows which cells were written. */
const IN_THE_MIDDLE = say`The sheet on this page failed in the middle of the work, and a part of it may stand in the workbook. Do not save it over your file: reload the page, and open the file that was saved last. Please report this.`;

function run(model: Model, commands: readonly Command[]): string[] {
  try {
    return withoutUseless(runBatch(model, commands));
  } catch (error) {
    throw new WorkbookError(say`${IN_THE_MIDDLE} (${verbatim(String(error))})`);
  }
}

const hasStep = ({ getters }: Model, step: string | undefined): boolean =>
  step !== undefined && (getters as unknown as { hasStep(step: string): boolean }).hasStep(step);

const stepsOf = ({ getters }: Model): Steps => (getters as unknown as { getSteps(): Steps }).getSteps();

const dispatch = (model: Model, type: string, payload?: object) =>
  (model as unknown as Dispatching).dispatch(type, payload);

/**
 * Undoes the steps that were made since, and gives undo and redo their lists of then: the first command of such a step emptied the list of
 * redo.
 */
function takeBack(model: Model, steps: Steps): void {
  const wanted = steps.last;
  if (lastStep(model) === wanted) return;
  for (let last = lastStep(model); last !== wanted; last = lastStep(model)) {
    whileLifted(() => dispatch(model, "REQUEST_UNDO"));
    if (lastStep(model) === last) throw new WorkbookError(IN_THE_MIDDLE);
  }
  dispatch(model, RESTORE, { steps });
}

/** The number of commands of a batch. A larger batch would block the page noticeably. */
const AT_ONCE = 20_000;

/** The error when the batches cannot continue; it says how many cells were written. */
function stoppedBatches(isOpen: boolean, done: number, of: number): WorkbookError {
  const share = say`${done} of ${of} cells were written`;
  return new WorkbookError(
    isOpen
      ? say`The workbook was changed while it was being written (an undo, perhaps): ${share}. Undo what is left of it, and write again.`
      : say`The sheet was deleted, or another workbook was opened, while it was being written: ${share}. Bring the sheet back (undo, or open its file), and write again.`,
  );
}

/**
 * Carries out any number of commands in batches, with pauses in which the page reacts. They are one step of undo unless
 * something else is done between them. Returns the refusals; if there are any, nothing is changed. If the batches
 * cannot go on, an error says how many cells are written.
 */
export async function carryOutInBatches(
  model: Model,
  commands: readonly Command[],
  isOpen: () => boolean,
): Promise<string[]> {
  const steps = stepsOf(model);
  const start = steps.last;
  let last = start;
  let isAlone = true;
  for (let from = 0; from < commands.length; from += AT_ONCE) {
    if (from > 0) {
      await pause();
      while (isBusy(model)) await stepEnd(model);
    }
    if (!isOpen() || (last !== start && !hasStep(model, last))) throw stoppedBatches(isOpen(), from, commands.length);
    const before = lastStep(model);
    isAlone &&= before === last;
    const refused = run(model, commands.slice(from, from + AT_ONCE));
    if (refused.length > 0) {
      if (!isAlone) throw stoppedBatches(true, from, commands.length);
      takeBack(model, steps);
      return refused;
    }
    const now = lastStep(model);
    if (isAlone && now !== before && before !== start) dispatch(model, JOIN, { step: now, before });
    last = now;
  }
  return [];
}
