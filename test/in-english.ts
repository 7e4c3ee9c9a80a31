/** Messages in English, wherever they stand in a value: what tests compare with. */
import { english, type Message } from "../src/reduction/message";

type InEnglish<T> = T extends Message
  ? string
  : T extends readonly (infer U)[]
    ? InEnglish<U>[]
    : T extends object
      ? { [Key in keyof T]: InEnglish<T[Key]> }
      : T;

const isMessage = (value: object): value is Message => "said" in value && "values" in value;

export function inEnglish<T>(value: T): InEnglish<T> {
  const worded = (one: unknown): unknown => {
    if (typeof one !== "object" || one === null) return one;
    if (Array.isArray(one)) return one.map(worded);
    if (isMessage(one)) return english(one);
    return Object.fromEntries(Object.entries(one).map(([key, held]) => [key, worded(held)]));
  };
  // The type says what `worded` does with each part: no type checker follows the walk.
  return worded(value) as InEnglish<T>;
}
