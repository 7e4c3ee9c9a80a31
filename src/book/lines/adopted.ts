import type { Adopted } from "../../record/adopted";
import { listed, say, verbatim, type Message, type Value } from "../../reduction/message";
import type { Line, Sheet } from "./sheet";

/** The line of an adopted value: nothing is worked out. Undefined if none is adopted. */
export function adoptedLine({ record, cell }: Sheet, name: keyof Adopted): Line {
  const adopted = record.adopted?.[name];
  if (!adopted) return undefined;
  const typed = (text: string | undefined, otherwise: Message): Value => (text ? verbatim(text) : otherwise);
  const by = typed(adopted.by, say`no initials`);
  const who = adopted.day ? listed([by, verbatim(adopted.day)]) : by;
  return { said: say`adopted by ${who}: ${typed(adopted.reason, say`no reason given`)}`, result: cell(name) };
}
