/** Remarks of data sheets up to version 11, in whose place newer sheets say something else. */
import { say, type Message, type Value } from "../../reduction/message";

export const STRESS_TURNS_ALONE: Message = say`the stress turns back under this load alone: correct it if it was mistyped`;
/** In the place of MOMENT_BACK, from version 6 on. */
export const BEFORE_LOAD_ABOVE: Message = say`applied before the load above it: correct one of the two moments`;
/** In the place of COMPRESSED, from version 7 on. */
export const COMPRESSED_BEFORE_12: Message = say`the specimen compressed while load was taken off: check the stress and the readings`;
/** In the place of halfDay, on sheets of version 11. */
export const halfDayAlone = (last: Value, next: Value): Message =>
  say`check whether a moment of loading is half a day off, as 1:30 for 13:30: the last time is ${last} min, and the next load was applied ${next} min after this one`;
