/**
 * Rewrites an XML part of a file for the engine's reader, which looks for prefixes and not for namespaces. A file may
 * choose its prefixes freely, and "Strict Open XML" has other namespaces (ISO/IEC 29500-1, annex A).
 */
import { attributeInXml, textInXml } from "../../file/xml";
import { parsePart, safeText } from "../../file/xml-part";

const OPEN = "http://schemas.openxmlformats.org";
const STRICT = "http://purl.oclc.org/ooxml";

export const MAIN = `${OPEN}/spreadsheetml/2006/main`;
export const RELATIONS = `${OPEN}/officeDocument/2006/relationships`;
export const PACKAGE_RELATIONS = `${OPEN}/package/2006/relationships`;
const DRAWING = `${OPEN}/drawingml/2006`;

/** The usual prefix of each namespace. */
const PREFIXES: Readonly<Record<string, string>> = {
  [MAIN]: "",
  [PACKAGE_RELATIONS]: "",
  [RELATIONS]: "r",
  [`${DRAWING}/spreadsheetDrawing`]: "xdr",
  [`${DRAWING}/main`]: "a",
  [`${DRAWING}/chart`]: "c",
  "http://schemas.microsoft.com/office/spreadsheetml/2009/9/main": "x14",
  "http://schemas.microsoft.com/office/excel/2006/main": "xm",
};

/** The usual namespace for each namespace of Strict Open XML. */
const FROM_STRICT: Readonly<Record<string, string>> = {
  [`${STRICT}/spreadsheetml/main`]: MAIN,
  [`${STRICT}/officeDocument/relationships`]: RELATIONS,
  [`${STRICT}/drawingml/spreadsheetDrawing`]: `${DRAWING}/spreadsheetDrawing`,
  [`${STRICT}/drawingml/main`]: `${DRAWING}/main`,
  [`${STRICT}/drawingml/chart`]: `${DRAWING}/chart`,
};

const XML = "http://www.w3.org/XML/1998/namespace";
const USUAL = new Set(Object.values(PREFIXES));

/** Whether each namespace has its usual prefix, and no other namespace has that prefix. */
function isUsual(text: string): boolean {
  for (const [, prefix = "", double, single] of text.matchAll(
    /\sxmlns(?::([\w.-]+))?\s*=\s*(?:"([^"]*)"|'([^']*)')/g,
  )) {
    const uri = double ?? single ?? "";
    if (PREFIXES[uri] === undefined ? USUAL.has(prefix) || uri in FROM_STRICT : PREFIXES[uri] !== prefix) return false;
  }
  return true;
}

const keptText = (text: string): string => textInXml(text).replaceAll("\r", "&#13;");
const keptAttribute = (text: string): string =>
  attributeInXml(text).replaceAll("\r", "&#13;").replaceAll("\n", "&#10;").replaceAll("\t", "&#9;");

const known = (uri: string | null): string | undefined => {
  const open = FROM_STRICT[uri ?? ""] ?? uri ?? "";
  return open in PREFIXES ? open : undefined;
};

/**
 * The document written with the usual prefixes, without elements and attributes of unknown namespaces. "" if the root
 * is in an unknown namespace.
 */
function rewritten(document: Document): string {
  const used = new Set<string>();
  const out: string[] = [];
  const named = (uri: string, name: string): string => {
    used.add(uri);
    const prefix = PREFIXES[uri]!;
    return prefix ? `${prefix}:${name}` : name;
  };
  const attributesOf = (element: Element): string =>
    [...element.attributes]
      .flatMap(({ namespaceURI, localName, value }) => {
        if (namespaceURI === null) return ` ${localName}="${keptAttribute(value)}"`;
        if (namespaceURI === XML) return ` xml:${localName}="${keptAttribute(value)}"`;
        const uri = known(namespaceURI);
        return uri === undefined ? [] : ` ${named(uri, localName)}="${keptAttribute(value)}"`;
      })
      .join("");
  const write = (element: Element): void => {
    const uri = known(element.namespaceURI);
    if (uri === undefined) return;
    const name = named(uri, element.localName);
    out.push(`<${name}${attributesOf(element)}>`);
    for (const child of element.childNodes)
      // Node type 1 is an element, 3 a text, 4 a CDATA section (a text without escapes).
      if (child.nodeType === 1) write(child as Element);
      else if (child.nodeType === 3 || child.nodeType === 4) out.push(keptText(child.textContent ?? ""));
    out.push(`</${name}>`);
  };
  write(document.documentElement);
  const declarations = [...used].map((uri) => ` xmlns${PREFIXES[uri] ? `:${PREFIXES[uri]}` : ""}="${uri}"`).join("");
  return out.length === 0 ? "" : out[0]!.replace(/^<[^\s>]+/, (start) => start + declarations) + out.slice(1).join("");
}

/**
 * A part as text, with the usual prefixes. Refuses a part that is not XML or declares a document type, with a sentence.
 */
export function partText(bytes: Uint8Array, path: string): string {
  const text = safeText(bytes, path);
  return isUsual(text) ? text : rewritten(parsePart(text, path)) || text;
}
