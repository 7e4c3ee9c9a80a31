/** Refusals of the two constructions begin with the name of the method, so that the message says which one refuses. */
import { say, type Message } from "../../message";
import { notApplicable, type Refusal } from "../../outcome";

const LOG_TIME = say`the log-of-time method does not apply:`;
const ROOT_TIME = say`the root-of-time method does not apply:`;

const refuses =
  (method: Message) =>
  (cause: Message): Refusal =>
    notApplicable({ ...say`${method} ${cause}`, cause });

export const logTimeRefuses = refuses(LOG_TIME);
export const rootTimeRefuses = refuses(ROOT_TIME);
