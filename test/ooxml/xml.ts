/**
 * XML as the tests of files read it: elements with the members of the browser's elements that the rules ask for. jsdom, which has all of
 * them, took a quarter of the time of these tests.
 */
import { SaxesParser } from "saxes";

export class XmlElement {
  readonly childNodes: (string | XmlElement)[] = [];
  firstElementChild: XmlElement | null = null;
  nextElementSibling: XmlElement | null = null;
  #last: XmlElement | undefined;

  /** `attributes` by their names with prefix. */
  constructor(
    readonly localName: string,
    readonly attributes: ReadonlyMap<string, string>,
    readonly parentElement: XmlElement | null,
  ) {
    if (!parentElement) return;
    parentElement.childNodes.push(this);
    if (parentElement.#last) parentElement.#last.nextElementSibling = this;
    else parentElement.firstElementChild = this;
    parentElement.#last = this;
  }

  getAttribute(name: string): string | null {
    return this.attributes.get(name) ?? null;
  }

  hasAttribute(name: string): boolean {
    return this.attributes.has(name);
  }

  get children(): readonly XmlElement[] {
    return this.childNodes.filter((one) => typeof one !== "string");
  }

  /** The text of the element and of those within. */
  get textContent(): string {
    return this.childNodes.map((one) => (typeof one === "string" ? one : one.textContent)).join("");
  }
}

export interface XmlDocument {
  readonly documentElement: XmlElement;
  readonly firstElementChild: XmlElement;
}

/** Reads an XML text; throws at what is no XML with namespaces. */
export function parsed(text: string): XmlDocument {
  let root: XmlElement | undefined;
  let open: XmlElement | null = null;
  const parser = new SaxesParser({ xmlns: true, position: false });
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ local, attributes }) => {
    const values = new Map(Object.values(attributes).map(({ name, value }) => [name, value] as const));
    open = new XmlElement(local, values, open);
    root ??= open;
  });
  const add = (piece: string): void => void open?.childNodes.push(piece);
  parser.on("text", add);
  parser.on("cdata", add);
  parser.on("closetag", () => (open = open?.parentElement ?? null));
  parser.write(text).close();
  if (!root) throw new Error("there is no element");
  return { documentElement: root, firstElementChild: root };
}
