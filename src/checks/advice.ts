/**
 * Finds what a person should look at before the next load of a running test: the reviewer's questions that another load
 * can still improve.
 */
import type { TestRecord } from "../record/record";
import type { Answered } from "./index";
import { CHECKS } from "./table";

/** Questions whose remedy is another schedule, a longer load, another frame, or a further load. */
const BEFORE_THE_NEXT_LOAD: readonly string[] = [
  // Does the schedule resolve t50?
  "Q27",
  "Q28",
  // Was primary over before the load was changed?
  "Q30",
  // Does the dial resolve the movement, and is the share of the apparatus small?
  "Q37",
  "Q40",
  // Does the virgin line extend far enough beyond yield?
  "Q44",
  // Is the sample good enough at the in-situ stress?
  "Q51",
];

const SPOKEN = ["stop", "explain", "note"] as const;

/** The answers that do not pass; the gravest comes first. A question that cannot be asked yet is left out. */
export const adviceOn = (record: TestRecord): Answered[] =>
  CHECKS.filter(({ id }) => BEFORE_THE_NEXT_LOAD.includes(id))
    .map((check) => ({ check, answer: check.evaluate(record) }))
    .filter(({ answer: { status } }) => SPOKEN.some((one) => one === status))
    .sort((a, b) => rank(a) - rank(b));

const rank = ({ answer: { status } }: Answered): number => SPOKEN.findIndex((one) => one === status);
