/**
 * A made-up language: English, with each text in brackets and 30 % longer. What a text repeats, such as a number or a name, stands outside of them,
 * and what is read outside of all brackets has not gone through a catalogue.
 */
const [OPEN, CLOSE] = ["⟦", "⟧"];

/** How much longer each text is, its brackets among it: German is 5 to 20 % longer than English. */
const LONGER = 0.3;
const FILLER = "~";

const longer = (text: string): string =>
  OPEN + text + FILLER.repeat(Math.max(0, Math.ceil(LONGER * text.length) - 2)) + CLOSE;

/** Punctuation at the end of a text stays outside: sentences of the sheet are put together there. */
const PART = /^(\s*)(.*?)([;,:]?\s*)$/s;

function partInBrackets(part: string): string {
  const [, before = "", text = "", after = ""] = PART.exec(part) ?? [];
  return /\p{L}/u.test(text) ? before + longer(text) + after : part;
}

/** A text, or a template: its places {0}, {1} are filled with what stands outside. */
export const inBrackets = (text: string): string =>
  text
    .split(/(\{\d+\})/)
    .map((part) => (/^\{\d+\}$/.test(part) ? part : partInBrackets(part)))
    .join("");

const plain = (text: string): string => text.replaceAll(OPEN, "").replaceAll(CLOSE, "");

/** A function of a catalogue: what it is given stands outside, unless the function asks what it is. */
function saidInBrackets(say: (...put: unknown[]) => unknown, put: readonly unknown[]): unknown {
  const whole = say(...put);
  if (typeof whole !== "string") return whole;
  const apart = say(...put.map((one) => (typeof one === "string" ? CLOSE + one + OPEN : one)));
  const said = typeof apart === "string" && plain(apart) === plain(whole) ? apart : whole;
  return `${OPEN}${said}${CLOSE}`.replaceAll(OPEN + CLOSE, "");
}

/** A catalogue with all its texts in brackets. */
export function allInBrackets<T>(value: T): T {
  // The shape stays the same; only texts change.
  const changed = (): unknown => {
    if (typeof value === "string") return inBrackets(value);
    if (typeof value === "function") return (...put: unknown[]) => saidInBrackets(value as never, put);
    if (Array.isArray(value)) return value.map(allInBrackets);
    if (typeof value === "object" && value !== null && Object.getPrototypeOf(value) === Object.prototype)
      return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, allInBrackets(one)]));
    return value;
  };
  return changed() as T;
}

/** A table that has each of the English texts in brackets. */
export const tableOf = (english: Readonly<Record<string, unknown>>): Record<string, string> =>
  Object.fromEntries(Object.keys(english).map((text) => [text, inBrackets(text)]));

/** What stands outside of all brackets. */
export function outside(text: string): string {
  let depth = 0;
  return [...text]
    .filter((letter) => {
      if (letter === OPEN) depth++;
      else if (letter === CLOSE) depth--;
      return depth === 0 && letter !== CLOSE;
    })
    .join("");
}
