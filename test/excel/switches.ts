/** Failures that a test orders: at an action, at a batch, or by closing Excel. */
import type { Step } from "./batch";
import { Refusal } from "./refusal";

interface Order {
  readonly matches: (step: Step, action: number) => boolean;
  readonly code: string;
  readonly message: string;
  times: number;
}

export class Failures {
  private orders: Order[] = [];
  private actions = 0;
  /** Excel closes before this action. */
  private closesAt = Infinity;
  private isGone = false;

  /** Excel refuses the next `times` actions whose line matches. */
  refuse(line: RegExp, code: string, message = "refused", times = Infinity): void {
    this.orders.push({ matches: (step) => line.test(step.line), code, message, times });
  }

  /** Excel refuses the n-th action from now on (1 is the next one), once. */
  failAt(n: number, code = "GeneralException", message = "refused"): void {
    const wanted = this.actions + n;
    this.orders.push({ matches: (_, action) => action === wanted, code, message, times: 1 });
  }

  /** Excel closes before the n-th action from now on, and does not answer until `reopen`. */
  closeAt(n: number): void {
    this.closesAt = this.actions + n;
  }

  reopen(): void {
    this.closesAt = Infinity;
    this.isGone = false;
  }

  /** Cancels all orders. */
  clear(): void {
    this.orders = [];
    this.reopen();
  }

  /** How many actions there were. */
  get count(): number {
    return this.actions;
  }

  get isClosed(): boolean {
    return this.isGone;
  }

  before(step: Step): void {
    this.actions += 1;
    if (this.actions >= this.closesAt) {
      this.isGone = true;
      throw new Refusal("InvalidOrTimedOutSession", "The session is gone.");
    }
    const order = this.orders.find((one) => one.times > 0 && one.matches(step, this.actions));
    if (!order) return;
    order.times -= 1;
    throw new Refusal(order.code, order.message);
  }
}
