/**
 * Reads XML of which there is much: the rows of sheets. The browser keeps an element of its own parser many times as long, and in many
 * times the room: with 40 data sheets the page took 2.4 GB.
 */
import { SaxesParser } from "saxes";
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

/** The characters that the parser takes at once: elements follow one another while it reads. */
const PIECE = 65_536;

const localOf = (name: string): string => name.slice(name.indexOf(":") + 1);

/** The declaration of a whole part; its rows alone have none. */
const DECLARATION = /^<\?xml[^>]*\?>/;

/** The elements of a text one after another, each with all that is within. Throws at what is no XML. */
export function* lightElements(part: string): Generator<LightElement> {
  const text = part.replace(DECLARATION, "");
  const open: LightElement[] = [];
  let whole: LightElement[] = [];
  const parser = new SaxesParser({ fragment: true, position: false });
  parser.on("opentag", ({ name, attributes }) => {
    const element = new LightElement(localOf(name));
    for (const [attribute, value] of Object.entries(attributes)) element.setAttribute(attribute, value);
    open.at(-1)?.append(element);
    open.push(element);
  });
  const add = (piece: string): void => {
    if (open.length === 0 && piece.trim() !== "") throw new Error("text stands outside the elements");
    for (const element of open) element.textContent += piece;
  };
  parser.on("text", add);
  parser.on("cdata", add);
  parser.on("closetag", () => {
    const closed = open.pop();
    if (closed && open.length === 0) whole.push(closed);
  });
  for (let at = 0; at < text.length; at += PIECE) {
    parser.write(text.slice(at, at + PIECE));
    yield* whole;
    whole = [];
  }
  parser.close();
  yield* whole;
}

/** An element of the browser's parser as one of these. */
export function lightOf(element: Element): LightElement {
  const made = new LightElement(element.localName);
  for (const { name, value } of element.attributes) made.setAttribute(name, value);
  made.textContent = element.textContent ?? "";
  for (const child of element.children) made.append(lightOf(child));
  return made;
}
