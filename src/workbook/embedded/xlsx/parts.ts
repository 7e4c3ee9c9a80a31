/**
 * The text parts of an .xlsx file by path. A part that is changed as XML is parsed once, and written once at the end. A part that is
 * wanted later is read when it is first asked for: the texts of 40 data sheets take 120 MB.
 */
import { parseXml, writeXml } from "../../file/xml";

export class Parts {
  readonly #texts: Map<string, string | (() => string)>;
  readonly #documents = new Map<string, Document>();

  constructor(texts: Iterable<readonly [string, string]>) {
    this.#texts = new Map(texts);
  }

  has(path: string): boolean {
    return this.#texts.has(path);
  }

  get(path: string): string | undefined {
    this.#write(path);
    return this.#text(path);
  }

  /** Adds a part that is read when it is first asked for. */
  setLater(path: string, read: () => string): void {
    this.#documents.delete(path);
    this.#texts.set(path, read);
  }

  set(path: string, text: string): void {
    this.#documents.delete(path);
    this.#texts.set(path, text);
  }

  delete(path: string): void {
    this.#documents.delete(path);
    this.#texts.delete(path);
  }

  /** The part as XML, to be changed in place; `otherwise` is its text if the file has no such part. */
  document(path: string, otherwise?: string): Document {
    let document = this.#documents.get(path);
    if (document) return document;
    const text = this.#text(path) ?? otherwise;
    if (text === undefined) throw new Error(`the file has no part ${path}`);
    document = parseXml(text);
    this.#texts.set(path, text);
    this.#documents.set(path, document);
    return document;
  }

  /** Returns the text of a part and removes the part. */
  take(path: string): string {
    const text = this.get(path) ?? "";
    this.delete(path);
    return text;
  }

  /** Writes every part that was parsed as text again: parsed, a part takes many times the memory. */
  settle(): void {
    for (const path of [...this.#documents.keys()]) this.#write(path);
  }

  paths(): string[] {
    return [...this.#texts.keys()];
  }

  entries(): [string, string][] {
    this.settle();
    return [...this.#texts.keys()].map((path) => [path, this.#text(path)!]);
  }

  #text(path: string): string | undefined {
    const text = this.#texts.get(path);
    if (typeof text !== "function") return text;
    const read = text();
    this.#texts.set(path, read);
    return read;
  }

  #write(path: string): void {
    const document = this.#documents.get(path);
    if (!document) return;
    this.#documents.delete(path);
    this.#texts.set(path, writeXml(document));
  }
}

/** The path that a relationship of the part `from` leads to; the relationship must lead to a part of the file. */
export function pathOf(target: string, from: string): string {
  const steps = target.startsWith("/") ? [] : from.split("/").slice(0, -1);
  for (const step of target.split("/"))
    if (step === "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  return steps.join("/");
}

/** The path of the relationships of a part. */
export const relationsOf = (path: string): string => path.replace(/([^/]+)$/, "_rels/$1.rels");
