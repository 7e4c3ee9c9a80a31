/** Numbers of loads in words. */
import { listed, say, type Listed, type Message } from "../../reduction/message";
import { runsOf } from "../../reduction/numeric/runs";

/** Whole numbers in rising order, three neighbours or more as a run: "1, 2, 5 to 9". */
export const inRuns = (numbers: readonly number[]): Listed =>
  listed(
    runsOf(numbers).flatMap<number | Message>(([from, to]) =>
      to > from + 1 ? [say`${from} to ${to}`] : to > from ? [from, to] : [from],
    ),
  );
