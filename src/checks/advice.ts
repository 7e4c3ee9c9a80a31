/** What a test that still runs should be looked at for before the next load goes on: those of the reviewer's questions that a load can still mend. */
import type { TestRecord } from "../record/record";
import type { Answered } from "./index";
import { CHECKS } from "./table";

/** Questions whose remedy is another schedule, a longer load, another frame, or a further load. */
const BEFORE_THE_NEXT_LOAD: readonly string[] = [
  // The schedule resolves t50.
  "Q27",
  "Q28",
  // Primary was over before the load was changed.
  "Q30",
  // The dial resolves the movement; the share of the apparatus is small.
  "Q37",
  "Q40",
  // The virgin line goes far enough beyond yield.
  "Q44",
  // The sample is good enough at the in-situ stress.
  "Q51",
];

const SPOKEN = ["stop", "explain", "note"] as const;

/** Their answers where they do not pass, the gravest first. A question that cannot be asked yet is left out. */
export const adviceOn = (record: TestRecord): Answered[] =>
  CHECKS.filter(({ id }) => BEFORE_THE_NEXT_LOAD.includes(id))
    .map((check) => ({ check, answer: check.evaluate(record) }))
    .filter(({ answer: { status } }) => SPOKEN.some((one) => one === status))
    .sort((a, b) => rank(a) - rank(b));

const rank = ({ answer: { status } }: Answered): number => SPOKEN.findIndex((one) => one === status);
