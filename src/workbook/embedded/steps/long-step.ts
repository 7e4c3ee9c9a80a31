/**
 * Many commands as one step of undo, carried out in slices between which the page reacts. The engine carries out a step at once,
 * whatever it takes: the insertion of 13 data sheets held the page for 7 s. Here the changes of all slices are collected
 * and given to the engine's history together at the end. Until then nothing else changes the workbook: an entry is refused with a
 * sentence, and the requests of the pane wait. A step that is stopped or refused is taken back whole.
 * Casts: the engine's types do not include the inner parts of a model.
 */
import { say } from "../../../reduction/message";
import { nth } from "../../../reduction/numeric/lists";
import { coreTypes, registries, UIPlugin } from "@odoo/o-spreadsheet";
import { inSlices, type Course } from "../../in-slices";
import { WorkbookError } from "../../port";
import { BATCH, dispatchOne, withoutUseless, type Command, type Dispatching, type Model } from "../engine";
import { evaluationOf } from "../evaluation/plugin";
import { tellRefusal, whileLifted } from "../protection";

/** A change of one field of the engine's state. */
interface Change {
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
  /** The sheets that the step makes. */
  sheetIds: ReadonlySet<string>;
  readonly isOver: Promise<void>;
  isAtWork: boolean;
}

interface WithGetters {
  readonly getters: object;
}

/** By the getters of a model: the step that is being made, and the number of steps that were begun. */
const steps = new WeakMap<object, Going>();
const counts = new WeakMap<object, number>();

/** Whether a step is being made. */
export const isBusy = ({ getters }: WithGetters): boolean => steps.has(getters);

/** Waits for the end of the step that is being made. Another may begin at once: `while (isBusy(model)) await stepEnd(model);`. */
export const stepEnd = async ({ getters }: WithGetters): Promise<void> => steps.get(getters)?.isOver;

/** The number of steps that were begun in slices. */
export const stepsBegun = ({ getters }: WithGetters): number => counts.get(getters) ?? 0;

/** Whether a sheet is made by a step that has not ended. */
export const isUnfinished = ({ getters }: WithGetters, sheetId: string): boolean =>
  steps.get(getters)?.sheetIds.has(sheetId) === true;

/** Commands that change the workbook, besides those that the engine keeps in its history. */
const CHANGING = new Set(["REQUEST_UNDO", "REQUEST_REDO", "EVALUATE_CELLS", BATCH]);

const WAIT = say`Not done: sheets are being inserted. Wait until they are there, or stop it in the pane; then try again.`;

/** Refuses every other change while a step is being made, and shows no sheet of it. */
class OneAtATime extends UIPlugin {
  override allowDispatch(command: any): any {
    const going = steps.get(this.getters);
    if (!going || going.isAtWork) return "Success";
    const isOfStep = command.type === "ACTIVATE_SHEET" && going.sheetIds.has(command.sheetIdTo);
    if (!isOfStep && !CHANGING.has(command.type) && !coreTypes.has(command.type)) return "Success";
    tellRefusal(WAIT);
    return "CancelledForUnknownReason";
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
const SLICE = 100;

/** A step on a model: its changes and commands so far. */
class LongStep {
  readonly refused: string[] = [];
  readonly #model: Inside;
  readonly #changes: Change[] = [];
  readonly #commands: Command[] = [];

  constructor(
    readonly model: Model,
    readonly going: Going,
  ) {
    this.#model = model as unknown as Inside;
    evaluationOf(model).hold();
  }

  #atWork(work: () => void): void {
    const { going } = this;
    const model = this.#model;
    going.isAtWork = true;
    model.status = 1;
    Object.assign(model.state, { changes: this.#changes, commands: this.#commands });
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
    for (let at = 0; at < commands.length;) {
      this.#atWork(() => {
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

  end(): void {
    this.#atWork(() => {
      // What depends on values is drawn anew; nothing is evaluated again.
      this.#model.dispatchFromCorePlugin("EVALUATE_CELLS", {});
      evaluationOf(this.model).release(false);
      this.#model.finalize();
    });
    this.#model.session.save(ROOT, this.#commands, this.#changes);
  }

  /** Takes the changes back as the engine's own undo does; no step of undo is left. */
  takeBack(): void {
    for (const { target, key, before } of [...this.#changes].reverse())
      if (before === undefined) Reflect.deleteProperty(target, key);
      else target[key] = before;
    evaluationOf(this.model).release(true);
    this.#model.dispatchFromCorePlugin("UNDO", { commands: this.#commands });
    this.#model.finalize();
  }
}

/** Steps that go on only while the workbook is open. */
function* whileOpen(isOpen: () => boolean, work: Generator<number>): Generator<number, void> {
  for (const share of work) {
    if (!isOpen())
      throw new WorkbookError(
        say`Another workbook was opened while sheets were inserted. Nothing was inserted: insert them again.`,
      );
    yield share;
  }
}

/**
 * Makes sheets as one step of undo, by the commands of a plan, which is made when no other step goes on. Returns the refusals; if
 * there are any, nothing is changed. Nothing is changed either if it throws: Stopped when the signal is aborted, a sentence when the
 * workbook is no longer open.
 */
export async function carryOutInSlices(
  model: Model,
  plan: () => Generator<number, StepPlan>,
  isOpen: () => boolean,
  { tell, signal }: Course,
): Promise<string[]> {
  while (isBusy(model)) await stepEnd(model);
  const { getters } = model;
  let over = (): void => undefined;
  const isOver = new Promise<void>((resolve) => (over = resolve));
  const going: Going = { sheetIds: new Set(), isOver, isAtWork: false };
  steps.set(getters, going);
  counts.set(getters, stepsBegun(model) + 1);
  const step = new LongStep(model, going);
  let isDone = false;
  try {
    await inSlices(whileOpen(isOpen, step.making(plan())), tell, signal);
    const refused = withoutUseless(step.refused);
    if (refused.length > 0) return refused;
    step.end();
    isDone = true;
    return [];
  } finally {
    if (!isDone) step.takeBack();
    steps.delete(getters);
    over();
    (model as unknown as Inside).trigger("update");
  }
}
