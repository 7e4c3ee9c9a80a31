/** Parses, searches and writes XML parts of an .xlsx file. */

export function parseXml(text: string): Document {
  const document = new DOMParser().parseFromString(text, "text/xml");
  if (document.getElementsByTagName("parsererror").length > 0) throw new Error("a part of the file is not valid XML");
  return document;
}

export const writeXml = (document: Document): string => new XMLSerializer().serializeToString(document);

/** An element of the browser's parser, or of `light-xml.ts`. */
export interface Linked<E> {
  readonly localName: string;
  readonly textContent: string | null;
  readonly firstElementChild: E | null;
  readonly nextElementSibling: E | null;
}

/** The child elements one by one. Each access to `children` would take a time that grows with their number. */
export function* childrenOf<E extends Linked<E>>(parent: Linked<E>): Generator<E> {
  for (let child = parent.firstElementChild; child; child = child.nextElementSibling) yield child;
}

/** The first child element with a name, with any namespace prefix. */
export function child<E extends Linked<E>>(parent: Linked<E>, name: string): E | undefined {
  for (const one of childrenOf(parent)) if (one.localName === name) return one;
  return undefined;
}

/** The elements with a name below `within`, in document order, with any namespace prefix. */
export function all(within: Document | Element, name: string, found: Element[] = []): Element[] {
  for (let child = within.firstElementChild; child; child = child.nextElementSibling) {
    if (child.localName === name) found.push(child);
    all(child, name, found);
  }
  return found;
}

export const first = (within: Document | Element, name: string): Element | undefined => all(within, name)[0];

/** A text between tags, as XML spells it. */
export const textInXml = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");

/** A text between the quotation marks of an attribute, as XML spells it. */
export const attributeInXml = (text: string): string => textInXml(text).replaceAll('"', "&quot;");

/** Appends a new element to `parent`, in its namespace, with attributes and text. */
export function append(parent: Element, name: string, attributes: Record<string, string> = {}, text?: string): Element {
  const made = parent.ownerDocument.createElementNS(parent.namespaceURI, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text !== undefined) made.textContent = text;
  parent.append(made);
  return made;
}
