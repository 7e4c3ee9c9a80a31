/**
 * Many commands as one step of undo, carried out in slices between which the page reacts. The engine carries out a step at once,
 * whatever it takes: the insertion of 13 data sheets held the page for 7 s. Here the changes of all slices are collected
 * and given to the engine's history together at the end. Until then nothing else changes the workbook: an entry is refused with a
 * sentence, and the requests of the pane wait; what is written to sheets that are there is read when the whole of it is done. A step that is
 * stopped or refused is taken back whole.
 * Casts: the engine's types do not include the inner parts of a model.
 */
import { say, type Message } from "../../../reduction/message";
import { nth } from "../../../reduction/numeric/lists";
import { coreTypes, registries, UIPlugin } from "@odoo/o-spreadsheet";
import { inSlices, unwatched, type Course, type Run } from "../../in-slices";
import { WorkbookError } from "../../port";
import { BATCH, dispatchOne, withoutUseless, type Command, type Dispatching, type Model } from "../engine";
import { evaluationOf } from "../evaluation/plugin";
import { tellRefusal, whileLifted } from "../protection";

/** A change of one field of the engine's state. */
export interface Change {
  readonly target: Record<PropertyKey, unknown>;
  readonly key: PropertyKey;
  readonly before: unknown;
}

/** The parts of a model that its own `dispatch` uses. */
interface Inside {
  /** 0: at rest; 1: in the middle of a command. */
  status: number;
  readonly state: { changes?: Change[]; commands: Command[] };
  readonly session: { save(root: Command, commands: readonly Command[], changes: readonly Change[]): void };
  dispatchFromCorePlugin(type: string, payload: object): unknown;
  finalize(): void;
  trigger(event: string): void;
}

/** A step that is being made. */
interface Going {
  /** The sheets that the step makes; undefined until its commands are known. */
  sheetIds?: ReadonlySet<string>;
  readonly isOver: Promise<void>;
  /** What a person is told who changes something meanwhile. */
  readonly wait: Message;
  isAtWork: boolean;
}

interface WithGetters {
  readonly getters: object;
}

/** By the getters of a model: the step that is being made, and the number of changes that the engine's history does not tell. */
const steps = new WeakMap<object, Going>();
const counts = new WeakMap<object, number>();
const filters = new WeakMap<object, number>();
const count = (getters: object, of = counts): void => void of.set(getters, (of.get(getters) ?? 0) + 1);

/** Whether a step is being made. */
export const isBusy = ({ getters }: WithGetters): boolean => steps.has(getters);

/** Waits for the end of the step that is being made. Another may begin at once: `while (isBusy(model)) await stepEnd(model);`. */
export const stepEnd = async ({ getters }: WithGetters): Promise<void> => steps.get(getters)?.isOver;

/** The number of changes that the engine's history does not tell: steps that were begun in slices, and filters that were set. */
export const changesBeside = ({ getters }: WithGetters): number => (counts.get(getters) ?? 0) + filtersSet({ getters });

/** The number of times that a person set a filter. */
export const filtersSet = ({ getters }: WithGetters): number => filters.get(getters) ?? 0;

/** Whether a sheet is made by a step that has not ended. */
export const isUnfinished = ({ getters }: WithGetters, sheetId: string): boolean =>
  steps.get(getters)?.sheetIds?.has(sheetId) === true;

/** Whether a step writes to sheets that were there before it: until it ends, some of their cells are old and some new. */
export const isWriting = ({ getters }: WithGetters): boolean => steps.get(getters)?.sheetIds?.size === 0;

/** Commands that change the workbook, besides those that the engine keeps in its history. */
const CHANGING = new Set(["REQUEST_UNDO", "REQUEST_REDO", "EVALUATE_CELLS", BATCH]);

/** Refuses every other change while a step is being made, and shows no sheet of it; counts filters that are set. */
class OneAtATime extends UIPlugin {
  override allowDispatch(command: any): any {
    const going = steps.get(this.getters);
    if (!going || going.isAtWork) return "Success";
    const isOfStep = command.type === "ACTIVATE_SHEET" && going.sheetIds?.has(command.sheetIdTo);
    if (!isOfStep && !CHANGING.has(command.type) && !coreTypes.has(command.type)) return "Success";
    tellRefusal(going.wait);
    return "CancelledForUnknownReason";
  }

  override handle({ type }: { readonly type: string }): void {
    if (type === "UPDATE_FILTER") count(this.getters, filters);
  }
}

registries.featurePluginRegistry.add("clayledger_one_at_a_time", OneAtATime as never);

/** The root of the step in the engine's history. */
const ROOT: Command = { type: "CLAYLEDGER_LONG_STEP" };

/** The commands of a step, and the sheets that they make. */
export interface StepPlan {
  readonly commands: readonly Command[];
  readonly sheetIds: readonly string[];
}

/** The shares of the work that are done when the commands are known, and when they are carried out. */
const PLAN_SHARE = 0.1;
const COMMANDS_SHARE = 0.6;

/** The length of a slice of commands in ms: what ends a slice takes some milliseconds itself. */
const SLICE = 60;

/** The number of commands of a redo after which the time is looked at. */
const PIECE = 200;

/** A step that is done again: its commands, and the changes that these make, which are collected. */
export interface StepAgain {
  readonly commands: readonly Command[];
  readonly changes: Change[];
}

/** Carries out commands as the engine does at a redo. */
export type Apply = (step: {
  readonly commands: readonly Command[];
  setChanges(changes: readonly Change[]): void;
}) => void;

/** A step on a model: its changes and commands so far. */
class LongStep {
  readonly refused: string[] = [];
  readonly #model: Inside;
  /** The changes, in lists that follow one another. */
  readonly #changes: Change[][] = [];
  readonly #commands: Command[] = [];

  constructor(
    readonly model: Model,
    readonly going: Going,
  ) {
    this.#model = model as unknown as Inside;
    evaluationOf(model).hold();
  }

  #atWork(changes: Change[], work: () => void): void {
    const { going } = this;
    const model = this.#model;
    going.isAtWork = true;
    model.status = 1;
    Object.assign(model.state, { changes, commands: this.#commands });
    try {
      whileLifted(work);
    } finally {
      Object.assign(model.state, { changes: [], commands: [] });
      model.status = 0;
      going.isAtWork = false;
    }
  }

  *making(plan: Generator<number, StepPlan>): Generator<number> {
    let next = plan.next();
    for (; !next.done; next = plan.next()) yield PLAN_SHARE * next.value;
    const { commands, sheetIds } = next.value;
    this.going.sheetIds = new Set(sheetIds);
    const changes: Change[] = [];
    this.#changes.push(changes);
    for (let at = 0; at < commands.length;) {
      this.#atWork(changes, () => {
        const end = performance.now() + SLICE;
        do dispatchOne(this.model as unknown as Dispatching, nth(commands, at++), this.refused);
        while (at < commands.length && performance.now() < end);
        // In the pause the sheet may be drawn: the plugins end what they have begun, such as the places of rows.
        this.#model.finalize();
      });
      yield PLAN_SHARE + ((COMMANDS_SHARE - PLAN_SHARE) * at) / commands.length;
    }
    if (withoutUseless(this.refused).length > 0) return;
    for (const share of evaluationOf(this.model).evaluatingHeld()) yield COMMANDS_SHARE + (1 - COMMANDS_SHARE) * share;
  }

  /** Carries out the commands of a step by `apply`. */
  *makingAgain({ commands, changes }: StepAgain, apply: Apply): Generator<number> {
    const all = commands.filter(({ type }) => type === "CREATE_SHEET");
    this.going.sheetIds = new Set(all.map(({ sheetId }) => String(sheetId)));
    this.#changes.push(changes);
    for (let at = 0; at < commands.length;) {
      this.#atWork(changes, () => {
        const end = performance.now() + SLICE;
        do {
          const piece = commands.slice(at, at + PIECE);
          at += piece.length;
          piece.forEach((command) => this.#commands.push(command));
          apply({ commands: piece, setChanges: (made) => made.forEach((change) => changes.push(change)) });
        } while (at < commands.length && performance.now() < end);
        // The engine has collected the changes of the commands in a list of its own.
        this.#model.state.changes = changes;
        this.#model.finalize();
      });
      yield (COMMANDS_SHARE * at) / commands.length;
    }
    for (const share of evaluationOf(this.model).evaluatingHeld()) yield COMMANDS_SHARE + (1 - COMMANDS_SHARE) * share;
  }

  end(): void {
    const changes = this.#changes.flat();
    this.#atWork(changes, () => {
      // What depends on values is drawn anew; nothing is evaluated again.
      this.#model.dispatchFromCorePlugin("EVALUATE_CELLS", {});
      evaluationOf(this.model).release(false);
      this.#model.finalize();
    });
    this.#model.session.save(ROOT, this.#commands, changes);
  }

  /** Ends a redo by the engine's own, which then finds its commands carried out. */
  endAgain(): void {
    const { going } = this;
    evaluationOf(this.model).release(false);
    going.isAtWork = true;
    try {
      (this.model as unknown as Dispatching).dispatch("REQUEST_REDO");
    } finally {
      going.isAtWork = false;
    }
  }

  /** Takes the changes back as the engine's own undo does; no step of undo is left. */
  takeBack(): void {
    for (const { target, key, before } of this.#changes.flat().reverse())
      if (before === undefined) Reflect.deleteProperty(target, key);
      else target[key] = before;
    evaluationOf(this.model).release(true);
    this.#model.dispatchFromCorePlugin("UNDO", { commands: this.#commands });
    this.#model.finalize();
  }
}

/** Steps that go on only while the workbook is open; `gone` says that it is not. */
function* whileOpen(isOpen: () => boolean, gone: Message, work: Generator<number>): Generator<number, void> {
  for (const share of work) {
    if (!isOpen()) throw new WorkbookError(gone);
    yield share;
  }
}

/** Makes a step by `work` while nothing else changes the workbook, and takes the step back unless `work` says that it is done. */
async function alone(model: Model, wait: Message, work: (step: LongStep) => Promise<boolean>): Promise<void> {
  while (isBusy(model)) await stepEnd(model);
  const { getters } = model;
  let over = (): void => undefined;
  const isOver = new Promise<void>((resolve) => (over = resolve));
  const going: Going = { isOver, wait, isAtWork: false };
  steps.set(getters, going);
  count(getters);
  const step = new LongStep(model, going);
  let isDone = false;
  try {
    isDone = await work(step);
  } finally {
    if (!isDone) step.takeBack();
    steps.delete(getters);
    over();
    (model as unknown as Inside).trigger("update");
  }
}

/** What a person is told of a step in slices. */
interface Told {
  /** To someone who changes something meanwhile. */
  readonly wait: Message;
  /** When the workbook is no longer open. */
  readonly gone: Message;
}

async function madeInSlices(
  model: Model,
  plan: () => Generator<number, StepPlan>,
  isOpen: () => boolean,
  { wait, gone }: Told,
  { tell, signal }: Course,
): Promise<string[]> {
  let refused: string[] = [];
  await alone(model, wait, async (step) => {
    await inSlices(whileOpen(isOpen, gone, step.making(plan())), tell, signal);
    refused = withoutUseless(step.refused);
    if (refused.length > 0) return false;
    step.end();
    return true;
  });
  return refused;
}

/**
 * Makes sheets as one step of undo, by the commands of a plan, which is made when no other step goes on. Returns the refusals; if
 * there are any, nothing is changed. Nothing is changed either if it throws: Stopped when the signal is aborted, a sentence when the
 * workbook is no longer open.
 */
export function carryOutInSlices(
  model: Model,
  plan: () => Generator<number, StepPlan>,
  isOpen: () => boolean,
  course: Course,
): Promise<string[]> {
  const told = {
    wait: say`Not done: sheets are being inserted. Wait until they are there, or stop it in the pane; then try again.`,
    gone: say`Another workbook was opened while sheets were inserted. Nothing was inserted: insert them again.`,
  };
  return madeInSlices(model, plan, isOpen, told, course);
}

/** Writes cells by these commands as `carryOutInSlices` makes sheets. */
export function writeInSlices(model: Model, commands: readonly Command[], isOpen: () => boolean): Promise<string[]> {
  const told = {
    wait: say`Not done: cells are being written. Wait until they are there, then try again.`,
    gone: say`Another workbook was opened while cells were written. Nothing was written: write them again.`,
  };
  const plan = function* (): Generator<number, StepPlan> {
    yield 0;
    return { commands, sheetIds: [] };
  };
  return madeInSlices(model, plan, isOpen, told, unwatched());
}

/**
 * Does a step again by `apply`, in slices that `run` carries out. `given` gives the step once no other step goes on; without one, nothing
 * is done. `ready` is called when its commands are carried out, just before the engine's own redo. If `run` throws, nothing is changed.
 */
export async function redoInSlices(
  model: Model,
  given: () => StepAgain | undefined,
  apply: Apply,
  ready: () => void,
  run: Run,
): Promise<void> {
  const wait = say`Not done: a step is being done again. Wait until it is done, or stop it at the top of the page; then try again.`;
  await alone(model, wait, async (step) => {
    const again = given();
    if (!again) return false;
    await run(step.makingAgain(again, apply));
    ready();
    step.endAgain();
    return true;
  });
}
