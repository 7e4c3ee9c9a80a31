/** Puts messages anywhere in a value into English, for comparisons in tests. */
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
  // The type describes the result of `worded`; no type checker can follow the recursion.
  return worded(value) as InEnglish<T>;
}
