/**
 * Lets the engine of the embedded sheet run in Node 20; to be imported before the engine. The engine was written for
 * Node 22 (Object.groupBy) and reads .xlsx with the XML parser of the browser, which a test in jsdom already has. Its
 * timings are kept off the console.
 */
import { haveGroupBy } from "../../../src/host/build/group-by";

haveGroupBy();

if (typeof DOMParser === "undefined" || typeof XMLSerializer === "undefined") {
  let parsers: Pick<typeof globalThis, "DOMParser" | "XMLSerializer"> | undefined;
  // jsdom takes most of a second to load: it is loaded when the engine first reads a file.
  const load = () => {
    const { JSDOM } = jest.requireActual<typeof import("jsdom")>("jsdom");
    const { DOMParser, XMLSerializer } = new JSDOM("").window;
    return (parsers ??= { DOMParser, XMLSerializer });
  };
  for (const name of ["DOMParser", "XMLSerializer"] as const)
    Object.defineProperty(globalThis, name, { configurable: true, get: () => (parsers ?? load())[name] });
}
jest.spyOn(console, "debug").mockImplementation(() => undefined);
