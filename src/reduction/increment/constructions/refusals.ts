/**
 * Refusals of the two constructions begin with the name of the method, so that the message says which one refuses. Many
 * end with advice to try the other construction.
 */
import { replaced, say, type Message } from "../../message";
import { notApplicable, type Refusal } from "../../outcome";

const LOG_TIME = say`the log-of-time method does not apply:`;
const ROOT_TIME = say`the root-of-time method does not apply:`;

const refuses =
  (method: Message) =>
  (cause: Message): Refusal =>
    notApplicable({ ...say`${method} ${cause}`, cause });

export const logTimeRefuses = refuses(LOG_TIME);
export const rootTimeRefuses = refuses(ROOT_TIME);

/** What log time and root time advise while nobody knows what the other construction gives. */
export const TRY_ROOT_TIME = say`try the root-of-time method`;
export const TRY_LOG_TIME = say`try the log-of-time method or the fit to theory`;

/** What both advise if both refuse: by whether the fit to theory applies, and the marks to pick. */
const TRY_THE_FIT = say`try the fit to theory`;
export const GO_ON = say`go on reading`;
const orPick = (advice: Message, marks: Message): Message => say`${advice}, or pick ${marks} by hand`;

/**
 * The refusal of a construction whose counterpart refuses too. It advises the fit to theory where the fit applies,
 * otherwise to go on reading, and to pick by hand; it never advises the other construction. A reason that advises
 * something else is returned unchanged.
 */
export function refusedWithBoth(refusal: Refusal, fitApplies: boolean): Refusal {
  const advice = fitApplies ? TRY_THE_FIT : GO_ON;
  const ofLogTime = replaced(refusal.reason, TRY_ROOT_TIME, orPick(advice, say`d0 and d100`));
  return { ...refusal, reason: replaced(ofLogTime, TRY_LOG_TIME, orPick(advice, say`d0 and d90`)) };
}
