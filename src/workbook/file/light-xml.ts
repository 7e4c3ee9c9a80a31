/**
 * Reads XML of which there is much: the rows of sheets. The browser keeps an element of its own parser many times as long, and in many
 * times the room: with 40 data sheets the page took 2.4 GB.
 */
import { SaxesParser } from "saxes";
import { nth } from "../../reduction/numeric/lists";
import { childrenOf, type Linked } from "./xml";

/** What stands within an element that has text beside its elements, in the order of the file. */
type Mixed = (string | LightElement)[];

/**
 * An element, with the few members of the browser's elements that reading needs. A file has a million of them: an element holds a list or
 * a text only if it has one, and its attributes as one list of names and values.
 */
export class LightElement implements Linked<LightElement> {
  nextElementSibling: LightElement | null = null;
  #first: LightElement | null = null;
  #last: LightElement | null = null;
  /** The text, if no elements are within. */
  #text = "";
  #mixed: Mixed | undefined;
  #attributes: string[] | undefined;

  constructor(readonly localName: string) {}

  append(child: LightElement): void {
    if (this.#mixed) this.#mixed.push(child);
    else if (this.#text !== "") this.#mixed = [this.#text, child];
    if (this.#last) this.#last.nextElementSibling = child;
    else this.#first = child;
    this.#last = child;
  }

  addText(piece: string): void {
    if (!this.#mixed && this.#first === null) this.#text += piece;
    else (this.#mixed ??= [...this.children]).push(piece);
  }

  get firstElementChild(): LightElement | null {
    return this.#first;
  }

  get children(): readonly LightElement[] {
    return [...childrenOf(this)];
  }

  /** The text between the tags, and that of the elements within. */
  get textContent(): string {
    if (this.#first === null) return this.#text;
    const within: Iterable<string | LightElement> = this.#mixed ?? childrenOf(this);
    return Array.from(within, (one) => (typeof one === "string" ? one : one.textContent)).join("");
  }

  /** Names and values of the attributes. */
  get attributes(): readonly (readonly [name: string, value: string])[] {
    const list = this.#attributes ?? [];
    return Array.from({ length: list.length / 2 }, (_, i) => [nth(list, 2 * i), nth(list, 2 * i + 1)] as const);
  }

  #placeOf(name: string): number {
    const list = this.#attributes;
    if (list) for (let at = 0; at < list.length; at += 2) if (list[at] === name) return at;
    return -1;
  }

  getAttribute(name: string): string | null {
    const at = this.#placeOf(name);
    return at < 0 ? null : (this.#attributes?.[at + 1] ?? null);
  }

  hasAttribute(name: string): boolean {
    return this.#placeOf(name) >= 0;
  }

  setAttribute(name: string, value: string): void {
    const at = this.#placeOf(name);
    if (at >= 0) this.#attributes![at + 1] = value;
    else if (this.#attributes) this.#attributes.push(name, value);
    else this.#attributes = [name, value];
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
    open.at(-1)?.addText(piece);
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

/** Throws at what is no XML, as `lightElements` does; makes no elements. */
export function checkXml(part: string): void {
  let depth = 0;
  const parser = new SaxesParser({ fragment: true, position: false });
  parser.on("opentag", () => void depth++);
  parser.on("closetag", () => void depth--);
  const add = (piece: string): void => {
    if (depth === 0 && piece.trim() !== "") throw new Error("text stands outside the elements");
  };
  parser.on("text", add);
  parser.on("cdata", add);
  parser.write(part.replace(DECLARATION, ""));
  parser.close();
}

/** An element of the browser's parser as one of these. */
export function lightOf(element: Element): LightElement {
  const made = new LightElement(element.localName);
  for (const { name, value } of element.attributes) made.setAttribute(name, value);
  for (const node of element.childNodes)
    // Node type 1 is an element, 3 a text, 4 a CDATA section (a text without escapes).
    // Cast: its type says that it is one.
    if (node.nodeType === 1) made.append(lightOf(node as Element));
    else if (node.nodeType === 3 || node.nodeType === 4) made.addText(node.textContent ?? "");
  return made;
}
