/**
 * Reads XML of which there is much: the rows of sheets. The browser keeps an element of its own parser many times as long, and in many
 * times the room: with 40 data sheets the page took 2.4 GB.
 */
import type { Linked } from "./xml";

/** An element, with the few members of the browser's elements that reading needs. */
export class LightElement implements Linked<LightElement> {
  readonly children: LightElement[] = [];
  /** The text between the tags, and that of the elements within. */
  textContent = "";
  nextElementSibling: LightElement | null = null;
  readonly #attributes = new Map<string, string>();

  constructor(readonly localName: string) {}

  append(child: LightElement): void {
    const before = this.children.at(-1);
    if (before) before.nextElementSibling = child;
    this.children.push(child);
  }

  get firstElementChild(): LightElement | null {
    return this.children[0] ?? null;
  }

  get attributes(): ReadonlyMap<string, string> {
    return this.#attributes;
  }

  getAttribute(name: string): string | null {
    return this.#attributes.get(name) ?? null;
  }

  hasAttribute(name: string): boolean {
    return this.#attributes.has(name);
  }

  setAttribute(name: string, value: string): void {
    this.#attributes.set(name, value);
  }
}

const wrong = (): Error => new Error("the text is not valid XML");

const NAME = String.raw`[\p{L}_:][\p{L}\p{M}\p{N}_:.\-\u00b7]*`;
const START = new RegExp(`<(${NAME})`, "uy");
const ATTRIBUTE = new RegExp(String.raw`\s+(${NAME})\s*=\s*(?:"([^"<]*)"|'([^'<]*)')`, "uy");
const END = new RegExp(String.raw`</(${NAME})\s*>`, "uy");
const INSTRUCTION = new RegExp(String.raw`<\?(${NAME})(?=\s|\?>)`, "uy");
const CLOSE = /\s*(\/?)>/y;

const NAMED: Readonly<Record<string, string>> = { lt: "<", gt: ">", amp: "&", quot: '"', apos: "'" };

/** Characters that XML 1.0 forbids (2.2): controls, halves of pairs, U+FFFE and U+FFFF. */
const FORBIDDEN =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/;

/** A text without references: "&lt;" becomes "<". */
function plain(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(/&([^&;]*;)?/g, (_, held: string | undefined) => {
    const name = held?.slice(0, -1) ?? "";
    const named = NAMED[name];
    if (named !== undefined) return named;
    const [, hex, decimal] = /^#(?:x([\da-f]+)|(\d+))$/i.exec(name) ?? [];
    const code = hex !== undefined ? parseInt(hex, 16) : Number(decimal ?? NaN);
    if (!(code <= 0x10ffff)) throw wrong();
    const character = String.fromCodePoint(code);
    if (FORBIDDEN.test(character)) throw wrong();
    return character;
  });
}

const localOf = (name: string): string => name.slice(name.indexOf(":") + 1);

/** Reads one text from start to end. */
class Reading {
  #at = 0;
  readonly #open: { readonly name: string; readonly element: LightElement }[] = [];

  constructor(readonly text: string) {}

  *topElements(): Generator<LightElement> {
    const { text } = this;
    for (;;) {
      const next = text.indexOf("<", this.#at);
      this.#takeText(next < 0 ? text.slice(this.#at) : text.slice(this.#at, next));
      if (next < 0) break;
      this.#at = next;
      const whole = this.#takeTag();
      if (whole && this.#open.length === 0) yield whole;
    }
    if (this.#open.length > 0) throw wrong();
  }

  #takeText(raw: string): void {
    if (raw === "") return;
    const text = plain(raw.includes("\r") ? raw.replace(/\r\n?/g, "\n") : raw);
    if (raw.includes("]]>") || (this.#open.length === 0 && text.trim() !== "")) throw wrong();
    for (const { element } of this.#open) element.textContent += text;
  }

  #match(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.#at;
    const found = pattern.exec(this.text);
    if (found) this.#at = pattern.lastIndex;
    return found;
  }

  /** Takes what begins with "<". Returns an element that ends there. */
  #takeTag(): LightElement | undefined {
    const { text } = this;
    if (text.startsWith("<!--", this.#at)) {
      this.#at += "<!--".length;
      this.#skip("--");
      if (text[this.#at++] !== ">") throw wrong();
      return undefined;
    }
    if (text.startsWith("<![CDATA[", this.#at)) {
      const from = this.#at + "<![CDATA[".length;
      this.#skip("]]>");
      for (const { element } of this.#open) element.textContent += text.slice(from, this.#at - "]]>".length);
      return undefined;
    }
    if (text.startsWith("<?", this.#at)) {
      const name = this.#match(INSTRUCTION)?.[1];
      if (name === undefined || name.toLowerCase() === "xml") throw wrong();
      return this.#skip("?>");
    }
    const end = this.#match(END);
    if (!end) return this.#start();
    const closed = this.#open.pop();
    if (closed === undefined || closed.name !== end[1]) throw wrong();
    return closed.element;
  }

  #skip(end: string): undefined {
    const found = this.text.indexOf(end, this.#at);
    if (found < 0) throw wrong();
    this.#at = found + end.length;
  }

  #start(): LightElement | undefined {
    const name = this.#match(START)?.[1];
    if (name === undefined) throw wrong();
    const element = new LightElement(localOf(name));
    for (let found = this.#match(ATTRIBUTE); found; found = this.#match(ATTRIBUTE)) {
      const [, attribute = "", double, single] = found;
      if (element.hasAttribute(attribute)) throw wrong();
      element.setAttribute(attribute, plain((double ?? single ?? "").replace(/\r\n|[\t\n\r]/g, " ")));
    }
    const close = this.#match(CLOSE);
    if (!close) throw wrong();
    this.#open.at(-1)?.element.append(element);
    if (close[1] === "/") return element;
    this.#open.push({ name, element });
    return undefined;
  }
}

/** The elements of a text one after another, each with all that is within. Throws at what is no XML. */
export function lightElements(text: string): Generator<LightElement> {
  if (FORBIDDEN.test(text)) throw wrong();
  return new Reading(text).topElements();
}

/** An element of the browser's parser as one of these. */
export function lightOf(element: Element): LightElement {
  const made = new LightElement(element.localName);
  for (const { name, value } of element.attributes) made.setAttribute(name, value);
  made.textContent = element.textContent ?? "";
  for (const child of element.children) made.append(lightOf(child));
  return made;
}
