/** The reader of much XML sees what the browser's parser sees, and refuses what that refuses. */
import "../embedded/engine-in-node";
import fc from "../../properties";
import { checkXml, lightElements, type LightElement } from "../../../src/workbook/file/light-xml";

interface Seen {
  readonly name: string;
  readonly attributes: Record<string, string | null>;
  readonly text: string;
  readonly children: readonly Seen[];
}

const ATTRIBUTES = ["r", "s", "t", "xml:space"];

const seen = (element: Element | LightElement): Seen => ({
  name: element.localName,
  attributes: Object.fromEntries(ATTRIBUTES.map((name) => [name, element.getAttribute(name)])),
  text: element.textContent ?? "",
  children: [...(element.children as Iterable<Element | LightElement>)].map(seen),
});

/** What the browser's parser sees; undefined if it refuses the text. */
function byParser(text: string): Seen | undefined {
  const document = new DOMParser().parseFromString(text, "text/xml");
  return document.getElementsByTagName("parsererror").length > 0 ? undefined : seen(document.documentElement);
}

function byReader(text: string): Seen | undefined {
  try {
    const elements = [...lightElements(text)];
    return elements.length === 1 ? seen(elements[0]!) : undefined;
  } catch {
    return undefined;
  }
}

function isRead(text: string): boolean {
  try {
    return [...lightElements(text)].length >= 0;
  } catch {
    return false;
  }
}

const written = fc.string({
  unit: fc.constantFrom("a", "é", " ", "\n", "\r", "\t", "&lt;", "&gt;", "&amp;", "&quot;", "&#10;", "&#x1F600;", "😀", ">", "_x0007_"), // prettier-ignore
  maxLength: 6,
});

const { element } = fc.letrec<{ element: string }>((tie) => ({
  element: fc
    .record({
      name: fc.constantFrom("row", "c", "v", "x:f", "is"),
      attributes: fc.uniqueArray(fc.tuple(fc.constantFrom(...ATTRIBUTES), written, fc.constantFrom('"', "'")), { selector: ([name]) => name, maxLength: 3 }), // prettier-ignore
      content: fc.array(fc.oneof({ depthSize: "small" }, written, fc.constantFrom("<!-- a & b -->", "<![CDATA[a<b&c]]>", "<?p q?>"), tie("element")), { maxLength: 4 }), // prettier-ignore
    })
    .map(({ name, attributes, content }) => {
      const start = `${name}${attributes.map(([key, value, quote]) => ` ${key} = ${quote}${value}${quote}`).join("")}`;
      return content.length === 0 ? `<${start} />` : `<${start}>${content.join("")}</${name} >`;
    }),
}));

const whole = element.map((inner) => `<sheetData xmlns:x="urn:x">${inner}</sheetData>`);

test("elements, attributes and texts are those of the browser's parser", () => {
  fc.assert(
    fc.property(whole, (text) => {
      const expected = byParser(text);
      expect(expected).toBeDefined();
      expect(byReader(text)).toEqual(expected);
    }),
  );
});

test("a text with a character changed, lost or added is refused where the browser's parser refuses it", () => {
  const change = fc.record({ at: fc.nat(), lost: fc.nat(2), put: fc.constantFrom("", "<", ">", "&", '"', "'", "/", "=", "]]>", "\u0007", "\uffff", "</c>", "&x;", "&#0;") }); // prettier-ignore
  fc.assert(
    fc.property(whole, change, (text, { at, lost, put }) => {
      const from = at % text.length;
      const changed = text.slice(0, from) + put + text.slice(from + lost);
      expect(byReader(changed)).toEqual(byParser(changed));
      // The check before a file is offered refuses the same, but for several elements side by side, which rows are.
      const check = (): void => checkXml(changed);
      if (isRead(changed)) expect(check).not.toThrow();
      else expect(check).toThrow();
    }),
    { numRuns: 400 },
  );
});

test("elements come one after another, each with its neighbour in a row", () => {
  const rows = [...lightElements('<row r="1"><c r="A1"><v>1</v></c><c r="B1"/></row>\n<row r="2"/>')];
  expect(rows.map((row) => row.getAttribute("r"))).toEqual(["1", "2"]);
  expect(rows[0]!.firstElementChild!.nextElementSibling!.getAttribute("r")).toBe("B1");
  expect(rows[0]!.firstElementChild!.textContent).toBe("1");
});
