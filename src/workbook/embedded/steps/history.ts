/**
 * Carries out batches of commands completely or not at all: a refused batch leaves no step for undo or redo.
 * Casts: the engine's types do not include the inner parts of the history plugin, nor the commands and getters that are added here.
 */
import { say, verbatim, type Message } from "../../../reduction/message";
import { registries } from "@odoo/o-spreadsheet";
import type { Run } from "../../in-slices";
import { WorkbookError } from "../../port";
import { runBatch, withoutUseless, type Command, type Dispatching, type Model } from "../engine";
import { sizeOf } from "../evaluation/column-bands";
import { isBusy, redoInSlices, writeInSlices, type Change, type StepAgain } from "./long-step";
import { isLifted, tellRefusal, whileLifted } from "../protection";
import { StepRoom, type KeptStep } from "./step-room";

/** Gives the lists of undo and redo back as they were before work that was taken back. */
const RESTORE = "CLAYLEDGER_RESTORE_STEPS";

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
  static override getters = [...History.getters, "getLastStep", "getSteps"];
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
    const { type, steps } = command;
    if (type === RESTORE && steps) {
      this.undoStack = this.#withinReach(steps.undo);
      this.redoStack = this.#withinReach(steps.redo);
    } else if (type === "REQUEST_REDO" && beginLongRedo && this.#madeAgain.size === 0 && this.#isLong())
      beginLongRedo();
    // Without a step to redo the engine does the last entry again in the selected cell, which may be a protected one.
    else if (type === "REQUEST_REDO" && this.redoStack.length === 0) super.handle(command);
    // A step that is redone was allowed when it was first done, perhaps as one of the add-in.
    else if (type === "REQUEST_UNDO" || type === "REQUEST_REDO") whileLifted(() => this.#carryOut(command));
  }

  #carryOut(command: { readonly type: string }): void {
    const isUndo = command.type === "REQUEST_UNDO";
    const step = (isUndo ? this.undoStack : this.redoStack).at(-1);
    const front: string = this.getters.getActiveSheetId();
    if (step !== undefined) tellUncopied(this.#revisions.get(step)._commands);
    super.handle(command);
    if (step !== undefined) this.#keepFront(step, isUndo, front);
  }

  #isLong(): boolean {
    const next = this.redoStack.at(-1);
    return next !== undefined && this.#revisions.get(next)._commands.length > MOST_REDONE_AT_ONCE;
  }

  /** Redoes as `REQUEST_REDO` does, in slices. */
  async redoSlowly(model: Model, run: Run): Promise<void> {
    const made = new Map<string, Change[]>();
    const given = (): StepAgain | undefined => {
      const step = this.redoStack.at(-1);
      if (step === undefined) return undefined;
      const changes: Change[] = [];
      made.set(step, changes);
      return { commands: this.#revisions.get(step)._commands, changes };
    };
    const ready = (): void => void (this.#madeAgain = made);
    try {
      await redoInSlices(model, given, (piece) => this.#apply({ id: "", ...piece }), ready, run);
    } finally {
      this.#madeAgain = new Map();
    }
  }

  override onNewLocalStateUpdate(update: { readonly id: string }): void {
    const [first] = this.undoStack;
    const recent = new Set(this.undoStack.slice(-1)).add(update.id);
    super.onNewLocalStateUpdate(update);
    // The engine itself lets the first of 100 steps go.
    if (first !== undefined && this.undoStack[0] !== first) {
      this.#lastGone = first;
      this.#letGo(first);
    }
    this.#madeOn.set(update.id, this.getters.getActiveSheetId());
    this.#room.add(update.id, this.#revisions.get(update.id));
    for (const step of this.#room.excess(recent)) this.#letGo(step);
  }

  /** The steps after the last one that was let go: a step can be undone or redone only after all that follow it in its list. */
  #withinReach(steps: readonly string[]): string[] {
    return steps.slice(steps.map((step) => this.#room.has(step)).lastIndexOf(false) + 1);
  }

  #letGo(step: string): void {
    this.#room.letGo(step);
    for (const list of [this.#madeOn, this.#undoneOn]) list.delete(step);
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
}

registries.featurePluginRegistry.replace("history", ForgettingHistory as never);

/**
 * Redoes in slices that `run` carries out. Nothing is changed if it throws
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

/** What may be written at once, in values (`sizeOf`). 2,000 lines of a logger's file take 0.1 s. */
const AT_ONCE = 2_500;

/**
 * Carries out any number of commands as one step: at once if they are few, otherwise in slices between which the page reacts. Returns the
 * refusals; if there are any, nothing is changed.
 */
export async function carryOutAny(
  model: Model,
  commands: readonly Command[],
  isOpen: () => boolean,
): Promise<string[]> {
  const size = commands.reduce((sum, { content }) => sum + sizeOf(content), 0);
  return size > AT_ONCE ? writeInSlices(model, commands, isOpen) : carryOut(model, commands);
}
